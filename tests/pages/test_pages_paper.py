"""Paper: candling sheet and plan print on one side of A4 and of Letter in every language, and read on a phone too."""

import re
import shutil
import subprocess

import pytest

from hatchkit import reference
from hatchkit.advice.plan import next_set
from hatchkit.pages.candling_sheet import LOOKS, SPARE, candling_sheet, write_candling_sheet
from hatchkit.pages.next_set import next_set_sheet
from hatchkit.say import LANGUAGES

BROWSER = shutil.which("chromium") or shutil.which("chromium-browser")


@pytest.fixture(scope="module")
def season(demo):
    return demo


@pytest.fixture(scope="module")
def sheets(season):
    """Every sheet in every language."""
    made = {}
    for language in LANGUAGES:
        here = season.spoken_in(language)
        made["blank", language] = candling_sheet(language=language)
        made["batch", language] = candling_sheet(here, "H2")
        made["plan", language] = next_set_sheet(next_set(here, "chicken", 20, set_at="2026-09-01 18:00"))
    return made


def printed_pages(html, size, folder):
    """How many sheets of paper a browser prints."""
    page, pdf = folder / "sheet.html", folder / "sheet.pdf"
    page.write_text(html.replace("@page {", f"@page {{ size: {size};"), encoding="utf-8")
    subprocess.run(
        [
            BROWSER,
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            f"--user-data-dir={folder / 'profile'}",
            "--no-pdf-header-footer",
            f"--print-to-pdf={pdf}",
            page.as_uri(),
        ],
        capture_output=True,
        check=True,
    )
    return len(re.findall(rb"/Type\s*/Page[^s]", pdf.read_bytes()))


@pytest.mark.skipif(BROWSER is None, reason="no Chromium here to print with")
@pytest.mark.parametrize("size", ["A4", "letter"])
@pytest.mark.parametrize("what", ["blank", "batch", "plan"])
def test_a_sheet_is_one_side_of_paper(sheets, what, size, tmp_path):
    assert {language: printed_pages(sheets[what, language], size, tmp_path) for language in LANGUAGES} == dict.fromkeys(
        LANGUAGES, 1
    )


def test_every_sheet_has_a_viewport_a_main_and_its_language(sheets):
    for (_, language), page in sheets.items():
        assert f'<html lang="{language}">' in page and 'name="viewport"' in page and page.count("<main>") == 1
        assert "<script" not in page and "http" not in page.replace("http-equiv", "")


def test_every_sign_has_a_box_and_every_look_its_date(season, sheets):
    page = sheets["batch", "en"]
    seen = reference.load("signs").query("kind == 'seen'")
    assert page.count("<li><i></i>") == len(seen)
    start = season.batch("H2")["set_at"].tz_convert(season.timezone)
    assert f"{start.day} {start:%B %Y}" in page and page.count("<tr>") == 1 + len(LOOKS) + SPARE
    for column in ("candle1_at", "candle2_at", "transfer_at"):
        when = season.batch("H2")[column].tz_convert(season.timezone)
        assert f"{when.day} {when:%B %Y}" in page, column
    assert "Rotten eggs burst" in page and "Wash hands" in page


def test_a_sheet_for_any_batch_names_the_usual_days_of_birds(sheets):
    assert "hens 7, 14, 18 and 21" in sheets["blank", "en"] and "Hühner 7, 14, 18 und 21" in sheets["blank", "de"]


def test_the_plan_holds_its_numbers_in_every_language(sheets):
    for language in LANGUAGES:
        assert re.search(r"\b46\b.*\b20\b.*\b31\b", sheets["plan", language].replace("\n", " ")), language


def test_a_candling_sheet_is_written_where_it_was_asked_for(season, tmp_path):
    path = write_candling_sheet(tmp_path / "sheet.html", season, "H2")
    assert path.read_text(encoding="utf-8").startswith("<!DOCTYPE html>")
