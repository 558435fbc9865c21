"""From a folder to a page: named, whole, never over the season's own files."""

import re

import pytest

from hatchkit.pages import report
from hatchkit.problems import HatchkitError


@pytest.fixture(scope="module")
def pages(tmp_path_factory):
    folder = tmp_path_factory.mktemp("pages")
    seen = []
    paths = [
        report.write_report(
            "demo", "1_season_review", folder / "season.html", progress=lambda *step: seen.append(step)
        ),
        report.write_report("demo", "2_poor_hatch", folder / "batch.html", batch="Q4", unit="F"),
    ]
    return [path.read_text(encoding="utf-8") for path in paths], seen


def test_the_pages_stand_alone(pages):
    for html in pages[0]:
        assert not re.search(r"<script|<link|src=|url\((?!#)|@import", html)
        assert '<html lang="en">' in html and "Content-Security-Policy" in html and "<main" in html


def test_the_title_names_season_and_batch(pages):
    assert "<title>Demo season (invented): season review</title>" in pages[0][0]
    assert "<title>Demo season (invented), batch Q4: why was this hatch poor?</title>" in pages[0][1]


def test_every_page_says_version_date_and_what_was_assumed(pages):
    for html in pages[0]:
        assert "Made by hatchkit 0.1.0 on " in html and "Assumed in reading (likely)" in html


def test_progress_runs_to_its_end_and_never_back(pages):
    done = [step[0] for step in pages[1]]
    assert done == sorted(done) and pages[1][-1] == (100, 100) and len(done) > 20


@pytest.mark.parametrize("name", ["batches.csv", "season.toml", "sensors/a.html"])
def test_a_page_is_never_written_over_the_season(tmp_path, name):
    (tmp_path / "sensors").mkdir()
    (tmp_path / name).write_text("mine", encoding="utf-8")
    with pytest.raises(HatchkitError):
        report.write_report(tmp_path, "1_season_review", tmp_path / name)
    assert (tmp_path / name).read_text(encoding="utf-8") == "mine"


def test_what_cannot_be_written_or_is_no_page_is_said(tmp_path):
    with pytest.raises(HatchkitError, match="cannot be written"):
        report.write_report("demo", "1_season_review", tmp_path / "nowhere" / "out.html")
    with pytest.raises(HatchkitError, match="nbconvert"):
        report.write_report("demo", "3_course", tmp_path / "out.html")
    with pytest.raises(HatchkitError, match="no batch 'B77'"):
        report.write_report("demo", "2_poor_hatch", tmp_path / "out.html", batch="B77")
