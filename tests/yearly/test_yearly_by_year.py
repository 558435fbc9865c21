"""Years side by side: the shares, whether they differ by more than luck, and whether a change helped."""

import numpy as np
import pandas as pd
import pytest

import hatchkit as hk
from hatchkit import say
from hatchkit.findings.years import each_year
from hatchkit.yearly.by_year import by_year, dispersion_within, same, what_changed, years_by_luck
from hatchkit.yearly.helped import helped
from hatchkit.yearly.outcomes import classes, outcomes


@pytest.fixture(scope="module")
def demo(demo_years):
    return demo_years


def test_shares_of_the_years_are_those_of_the_sheets(demo):
    table = by_year(demo).set_index(["season", "outcome"])
    batches = demo.batches
    for year in (2023, 2024, 2025):
        own = batches[batches["season"] == year]
        good = own["hatched"].sum() - own["culled"].fillna(0).sum()
        assert table.loc[(year, "hatch"), "count"] == good
        assert table.loc[(year, "hatch"), "share"] == pytest.approx(good / own["eggs_set"].sum())
    assert (table["low"] < table["share"]).all() and (table["share"] < table["high"]).all()


def test_the_interval_allows_for_batches_and_not_only_for_eggs(demo):
    from hatchkit.losses.proportions import interval

    table = by_year(demo).set_index(["season", "outcome"]).loc[(2024, "hatch")]
    low, high = interval(table["count"], table["total"])
    assert table["high"] - table["low"] > 1.3 * (high - low)


def test_dispersion_within_groups_by_hand():
    """Two groups of two: squares 2 (5-4)^2/(10 x .4 x .6) and 2 (8-7)^2/(10 x .7 x .3), two degrees of freedom."""
    phi, freedom = dispersion_within(np.array([3.0, 5, 6, 8]), np.full(4, 10.0), np.array([1, 1, 2, 2]))
    assert freedom == 2 and phi == 1.0
    phi, _ = dispersion_within(np.array([1.0, 7, 6, 8]), np.full(4, 10.0), np.array([1, 1, 2, 2]))
    assert phi == pytest.approx((2 * 9 / 2.4 + 2 / 2.1) / 2)


def test_fertility_of_the_demo_years_differs_by_more_than_luck(demo):
    found = what_changed(demo).set_index("outcome")
    assert bool(found.loc["fertility", "more_than_luck"]) and found.loc["fertility", "lowest"] == 2024
    assert not found.loc["early", "more_than_luck"]


def hatch_told(season):
    """Code and facts of the answer to how each year hatched."""
    (found,) = each_year(season)
    return found.answer, found.facts


def test_the_order_of_the_years_is_told_as_counted_and_whether_luck_makes_it(demo):
    code, facts = hatch_told(demo)
    assert code == "years_hatch_told" and facts["luck"] == "beyond"
    assert (facts["highest"], facts["lowest"]) == ("2025", "2024")
    two = demo.batches[demo.batches["season"] < 2025]
    code, facts = hatch_told(demo.with_batches(two))
    assert code == "years_hatch_told" and facts["luck"] == "within"
    assert (facts["highest"], facts["lowest"]) == ("2023", "2024")


def test_years_of_different_machines_are_told_in_order_but_luck_is_not(demo):
    apart = demo.batches["incubator"].astype(str) + demo.batches["season"].astype(str)
    assert hatch_told(demo.with_batches(demo.batches.assign(incubator=apart)))[1]["luck"] == "untold"


def test_one_year_has_no_order(demo):
    code, facts = hatch_told(demo.with_batches(demo.batches[demo.batches["season"] == 2024]))
    assert code == "years_hatch_one" and not facts["ordered"]


@pytest.mark.parametrize("language", say.LANGUAGES)
def test_the_years_are_not_called_best_and_poorest_where_luck_may_make_the_order(demo, language):
    code, facts = hatch_told(demo)
    ways = ("beyond", "within", "untold")
    words = [say.text(code, {**facts, "told": [], "luck": luck}, language) for luck in ways]
    assert len(set(words)) == 3 and all("2025" in one and "2024" in one for one in words)


def test_years_alike_but_for_their_batches_are_called_alike():
    """Batches that differ (sd 0.5) in years that do not: at most 5 in 100 are called more than luck."""
    rng = np.random.default_rng(8)
    year, strata = np.repeat([1, 2, 3], 8), np.tile(["A", "B"], 12)
    called = 0
    for _ in range(300):
        share = 1 / (1 + np.exp(-(0.8 + 0.5 * rng.normal(size=24) + 0.5 * (strata == "B"))))
        total = rng.integers(24, 41, 24)
        called += (
            years_by_luck(rng.binomial(total, share), total, year, strata, draws=199, seed=int(rng.integers(1e9)))
            <= 0.05
        )
    assert called <= 25


def test_a_year_with_more_eggs_of_a_poor_pen_is_not_poor_for_that():
    year = np.array([1] * 6 + [2] * 6)
    pen = np.array(["good"] * 5 + ["poor"] + ["good"] + ["poor"] * 5)
    total = np.full(12, 40.0)
    count = np.where(pen == "good", 34.0, 18.0) + np.tile([1, -1], 6)
    assert years_by_luck(count, total, year, pen) > 0.2
    assert years_by_luck(count, total, year, np.full(12, "all")) < 0.2


def test_years_with_no_machine_in_common_cannot_be_told():
    assert np.isnan(
        years_by_luck(
            np.array([9.0, 8, 3, 4]), np.full(4, 10.0), np.array([1, 1, 2, 2]), np.array(["a", "a", "b", "b"])
        )
    )


def test_the_same_machine_in_each_year(demo):
    table = same(demo, "incubator")
    assert set(table["group"]) == {"A", "B"} and table.groupby(["group", "outcome"]).size().eq(3).all()
    assert same(demo, "breed").empty


def test_of_the_demo_changes_one_helped_one_did_not_and_one_was_only_a_poor_year(demo):
    table = helped(demo).set_index(["where", "outcome"])
    assert table.loc[("B", "hatch_of_fertile"), "verdict"] == "helped"
    assert set(table.loc["A"]["verdict"]) == {"not_seen"}
    lane = table.loc[("Lane", "fertility")]
    # From 65 % to 91 %: by itself it was to be expected to rise to about 86 %.
    assert lane["before"] < 0.7 < 0.8 < lane["expected"] and lane["after"] > 0.85
    assert lane["verdict"] == "not_seen" and lane["by_itself"] > 0.15


def test_a_change_before_all_records_or_after_them_says_so(demo):
    from dataclasses import replace

    when = pd.to_datetime(["2020-01-01", "2030-01-01"]).tz_localize("UTC").as_unit("us")
    changes = demo.changes.iloc[:2].assign(date=when, where="")
    table = helped(replace(demo, changes=changes))
    assert table["verdict"].tolist() == ["no_before"] * 3 + ["no_after"] * 3


def test_a_change_of_a_place_that_is_nowhere_concerns_no_batch(demo):
    from dataclasses import replace

    table = helped(replace(demo, changes=demo.changes.iloc[:1].assign(where="the moon")))
    assert set(table["verdict"]) <= {"no_before", "no_after"}


def test_egg_ages_and_months_are_classes(demo):
    words = classes(pd.Series([2, 5.0, 9, 20, None]), "stored_days")
    assert words.tolist() == ["0-3", "4-7", "8-10", "11 and more", None]
    assert set(outcomes(demo)["month"]) == {3, 4, 5, 6}


def test_the_page_of_the_years_has_its_questions_in_order(demo):
    found = hk.years(demo)
    assert [one.question for one in found][:3] == ["years_hatch", "years_differ", "years_helped"]
    with pytest.raises(hk.HatchkitError, match="one season"):
        hk.years(hk.load_season("demo"))
