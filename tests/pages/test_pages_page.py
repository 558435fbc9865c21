"""Findings become one page that stands alone: escaped, without script or request, the answer first."""

import datetime as dt
import re

import pandas as pd
import pytest

from hatchkit.findings.finding import Finding, Findings, Picture, Said, Table
from hatchkit.pages.page import file_name, page, write_page
from hatchkit.problems import HatchkitError
from hatchkit.say import speak

WORDS = """
page_try_title = { $name }: a try
page_try_counts = { $eggs } eggs.
page_try_file = { $name } try
ask_try = Why?
ask_other = What else?
try_because = Because of { $why }.
try_sure = It was counted.
try_do = Wait.
alt_try = A line that rises from 1 to 2.
table_try = Some <rows>
"""


@pytest.fixture
def findings(monkeypatch, tmp_path):
    """Findings whose words are made for the test."""
    from hatchkit.say import catalogue

    shelf = catalogue._shelf("en")
    names = [line.split(" =")[0] for line in WORDS.strip().splitlines()]
    for name, line in zip(names, WORDS.strip().splitlines(), strict=True):
        monkeypatch.setitem(shelf.found, name, line + "\n")
    speak._speaker.cache_clear()
    rows = pd.DataFrame({"stage": ["early"], "share_of_set": [0.034], "low": [0.01], "high": [0.12], "temp_c": [37.5]})
    table = Table("try", rows, ("stage", ("share_of_set", "low", "high"), "temp_c"))
    one = Finding(
        "try",
        "try_because",
        dict(why="<b>cold</b>\x1b"),
        "sure",
        why_sure=Said("try_sure"),
        do=Said("try_do"),
        picture=Picture("losses.season_chart", None, Said("alt_try")),
        table=table,
    )
    other = Finding("other", "try_because", dict(why="heat"), "guess", more=(Said("try_do"),))
    records = Finding("records", "try_because", dict(why="reading"), "sure")
    monkeypatch.setattr("hatchkit.figures.losses.season_chart", _line)
    yield Findings("try", dict(name="A & B", eggs=3, folder=tmp_path), (one, other), records, (Said("try_sure"),))
    speak._speaker.cache_clear()


def _line(table, ax=None):
    from hatchkit.figures.style import axes

    ax = axes(size=(3, 2))
    ax.plot([1, 2])
    return ax


@pytest.fixture
def words_of_the_records(monkeypatch):
    from hatchkit.say import catalogue

    catalogue._shelf("en").source("")  # all files are read, so that none brings the message a second time
    monkeypatch.setitem(catalogue._shelf("en").found, "ask_records", "ask_records = What was read?\n")


def test_the_page_stands_alone_and_escapes_what_comes_from_files(findings, words_of_the_records):
    html = page(findings, today=dt.date(2026, 4, 3))
    assert not re.search(r"<script|<link|src=|url\((?!#)|https?:", html)
    assert '<html lang="en">' in html and "Content-Security-Policy" in html and "viewport" in html
    assert "<title>A &amp; B: a try</title>" in html and "Some &lt;rows&gt;" in html
    assert "&lt;b&gt;cold&lt;/b&gt;" in html and "\x1b" not in html
    assert 'aria-label="A line that rises from 1 to 2."' in html
    assert "on 3 April 2026" in html


def test_the_answer_how_sure_and_what_to_do_come_before_all_else(findings, words_of_the_records):
    html = page(findings)
    places = [
        html.index(word)
        for word in (
            "Because of",
            "It was counted.",
            "Wait.",
            "<nav",
            "Because of heat",
            'id="unknown"',
            'id="records"',
        )
    ]
    assert places == sorted(places)


def test_tables_write_shares_degrees_and_what_is_missing_as_the_unit_asks(findings, words_of_the_records):
    from dataclasses import replace

    assert "3.4 % (1.0 % to 12 %)" in page(findings) and "37.5\u00a0°C" in page(findings)
    assert "99.5\u00a0°F" in page(replace(findings, unit="F"))


def test_what_is_folded_stands_open_where_all_is_asked_for(findings, words_of_the_records):
    assert "<details open>" not in page(findings) and page(findings, full=True).count("<details open>") == 2


def test_a_page_is_named_after_what_it_is_about_and_never_written_over_the_season(
    findings, words_of_the_records, tmp_path
):
    assert file_name(findings) == "A_B_try.html"
    seen = []
    out = write_page(findings, tmp_path / "out.html", progress=lambda *step: seen.append(step))
    assert out.read_text(encoding="utf-8").startswith("<!DOCTYPE html>") and seen[-1] == (3, 3)
    with pytest.raises(HatchkitError):
        write_page(findings, tmp_path / "batches.csv")


def test_a_sureness_that_is_none_is_a_mistake():
    with pytest.raises(ValueError, match="sureness"):
        Finding("try", "try_because", {}, "perhaps")
