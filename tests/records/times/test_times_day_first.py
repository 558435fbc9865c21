"""The order of day and month, the century and years that are not written."""

import datetime as dt

import numpy as np
import pytest

from hatchkit.records import times


def column(style, start="2026-05-04", days=6):
    first = dt.date.fromisoformat(start)
    return [f"{first + dt.timedelta(days=n):{style}}" for n in range(days)]


@pytest.mark.parametrize(
    "style, order", [("%d/%m/%Y", "dmy"), ("%m/%d/%Y", "mdy"), ("%d.%m.%y", "dmy"), ("%y-%m-%d", "ymd")]
)
def test_days_that_follow_each_other_settle_the_order(style, order):
    found = times.decide(times.gather(column(style)))
    assert (found.order, found.how) == (order, "continuity") and found.sure > 0.9


@pytest.mark.parametrize("style, order", [("%d/%m/%Y", "dmy"), ("%m/%d/%Y", "mdy")])
def test_a_day_above_twelve_settles_it_for_the_other_columns_too(style, order):
    ambiguous = [f"{dt.date(2026, m, d):{style}}" for m, d in ((3, 4), (5, 9), (7, 2))]
    proof = [f"{dt.date(2026, m, d):{style}}" for m, d in ((3, 25), (6, 3))]
    found = times.decide([times.gather(ambiguous), times.gather(proof)])
    assert (found.order, found.how, found.sure, found.against) == (order, "a day above 12", 1.0, ())


def test_a_weekday_beside_the_date_settles_it():
    assert times.decide(times.gather(["Sat 05/04/2025"])).order == "dmy"
    assert times.decide(times.gather(["Sun 05/04/2025"])).order == "mdy"


def test_nothing_to_settle_is_sure_and_nothing_known_is_a_guess():
    assert times.decide(times.gather(["2026-03-04", "4 March 2026", "5/5/2026"])).sure == 1.0
    guess = times.decide(times.gather(["03/04/2026", "05/09/2026"]))
    assert (guess.how, guess.sure) == ("nothing", 0.5)


def test_the_persons_word_and_other_files_settle_what_is_open_and_are_told_where_they_disagree():
    unclear, clear = times.gather(["03/04/2026", "05/09/2026"]), times.gather(["25/04/2026", "26/04/2026"])
    assert times.decide(unclear, hint=False).order == "mdy"
    sure = times.decide(clear, hint=False)
    assert (sure.order, sure.against) == ("dmy", ("said",))
    other = times.decide(times.gather(["04/25/2026", "04/26/2026"]))
    assert times.decide(unclear, others=[other]).how == "other files"
    assert times.decide(clear, others=[other]).against == ("other files",)


def test_the_season_settles_what_else_stays_open():
    spans = [(np.datetime64("2026-04-01"), np.datetime64("2026-04-25"))]
    assert times.decide(times.gather(["03/04/2026"]), spans=spans).order == "dmy"
    assert times.decide(times.gather(["04/03/2026"]), spans=spans).order == "mdy"


def test_one_stray_date_does_not_turn_the_order_and_fails_alone():
    texts = column("%d/%m/%Y") + ["12/13/2026"] + column("%d/%m/%Y", "2026-05-10", 3)
    order = times.decide(times.gather(texts))
    assert (order.order, order.against) == ("dmy", ("a day above 12",))
    assert times.read(texts, order).reasons == {6: "order"}


@pytest.mark.parametrize("near, year", [([], 1985), (["1.1.1984"], 1985), (["1.1.2080"], 2085)])
def test_one_century_for_sheets_and_logs(near, year):
    evidence = [times.gather(["04.05.85"])] + [times.gather(near)] * bool(near)
    assert str(times.read(evidence[0], times.decide(evidence)).moments[0])[:4] == str(year)


def test_the_year_goes_on_from_december_to_january_but_not_in_a_sheet_sorted_by_pen():
    rolling = times.read(["20 Nov", "3 Dec", "5 Jan", "20 Jan"], True, 2024)
    assert rolling.moments.astype("datetime64[Y]").astype(str).tolist() == ["2024", "2024", "2025", "2025"]
    backwards = times.read(["20 Jan", "5 Jan", "3 Dec"], True, 2025)
    assert backwards.moments.astype("datetime64[Y]").astype(str).tolist() == ["2025", "2025", "2024"]
    by_pen = times.read(["3 Mar", "20 Nov", "5 Feb", "18 Oct", "2 Jan", "9 Dec", "1 Mar"], True, 2025)
    assert set(by_pen.moments.astype("datetime64[Y]").astype(str)) == {"2025"}


def test_a_moment_of_the_same_row_gives_the_year():
    found = times.read(["8 Jan", "3.4."], True, near=np.array(["2025-12-18", "2026-03-12"], dtype="datetime64[us]"))
    assert found.moments.astype("datetime64[D]").astype(str).tolist() == ["2026-01-08", "2026-04-03"]
