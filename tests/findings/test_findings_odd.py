"""Seasons that hold almost nothing, or nothing good: every page is written and every sentence has its facts."""

import pytest

import hatchkit as hk
from hatchkit.findings.finding import Finding, Findings
from hatchkit.pages import parts
from hatchkit.pages.page import page

HEAD = "batch,species,incubator,set_at,eggs_set,hatched"
SEASONS = {
    "one batch": f"{HEAD}\nB1,hen,A,2026-03-01,24,18\n",
    "two batches": f"{HEAD}\nB1,hen,A,2026-03-01,24,18\nB2,hen,A,2026-04-01,30,5\n",
    "no hatch yet": f"{HEAD}\nB1,hen,A,2026-03-01,24,\n",
    "all clear": f"{HEAD},clear1\nB1,hen,A,2026-03-01,24,0,24\nB2,hen,A,2026-04-01,24,20,2\n",
    "all hatched": f"{HEAD}\nB1,hen,A,2026-03-01,24,24\nB2,hen,A,2026-04-01,24,24\n",
    "none hatched": f"{HEAD}\nB1,goose,A,2026-03-01,24,0\n",
    "one egg": f"{HEAD}\nB1,hen,A,2026-03-01,1,1\n",
    "ends not known": "batch,species,set_at,eggs_set,clear1,dead1,hatched\nB1,hen,2026-03-01,24,2,1,12\n"
    "B2,hen,2026-04-01,30,5,0,20\nB3,hen,2026-05-01,30,,,21\n",
}


@pytest.fixture(params=SEASONS)
def season(request, tmp_path):
    (tmp_path / "batches.csv").write_text(SEASONS[request.param], encoding="utf-8")
    return hk.load_season(tmp_path)


def undrawn(*_):
    """In place of a picture, where the same season's is drawn beside it."""
    return ""


def test_every_page_is_whole(season):
    for unit, draw in (("C", undrawn), ("F", parts.picture)):
        html = page(hk.review(season, unit=unit), full=True, draw=draw)
        assert html.rstrip().endswith("</html>") and ">none<" not in html and "nan" not in html.split("</style>")[1]
    for batch in season.batches["batch"]:
        html = page(hk.poor_hatch(season, str(batch)), full=True)
        assert html.rstrip().endswith("</html>") and " nan" not in html.split("</style>")[1]


def test_a_batch_of_nothing_but_clears_is_a_poor_hatch(tmp_path):
    (tmp_path / "batches.csv").write_text(SEASONS["all clear"], encoding="utf-8")
    found = hk.poor_hatch(hk.load_season(tmp_path))
    assert (found.facts["batch"], found.facts["poor"]) == ("B1", "clears")


def test_a_question_without_records_is_told_so_and_an_unknown_one_is_an_error():
    found = Findings("season", {}, (), Finding("records", "records", {}, "sure"), asked=("lost",))
    assert found["lost"].answer == "shown_not_asked" and found["lost"].sure == "cannot_tell"
    with pytest.raises(KeyError):
        _ = found["weather"]
