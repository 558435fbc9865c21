"""More than bad luck: against the other batches, against a level, and allowed for many looks."""

import numpy as np
import pytest
from tiny_season import tiny_season

from hatchkit.findings import more_losses
from hatchkit.losses.bad_luck import adjusted, bad_luck
from hatchkit.losses.norms import level_for, norms
from hatchkit.losses.predictive import distribution, log_likelihoods, summary, weights
from hatchkit.problems import HatchkitError


def season(bad=12, batches=10, **more):
    rows = [
        dict(
            batch=n,
            eggs_set=48,
            day1=7,
            clear1=2,
            dead1=3,
            day2=14,
            dead2=0,
            day3=18,
            dead3=1,
            hatched=40,
            dead_in_shell=2,
        )
        for n in range(batches)
    ]
    rows[3].update(dead3=1 + bad, hatched=40 - bad)
    return tiny_season(rows, **more)


def test_a_batch_with_many_late_deaths_stands_out_and_the_others_do_not():
    table = bad_luck(season())
    found = table[table["unusual"]]
    assert set(zip(found["batch"], found["stage"], strict=True)) >= {("3", "late")}
    assert set(found["batch"]) == {"3"}
    row = found[found["stage"] == "late"].iloc[0]
    assert (row["eggs"], row["out_of"], row["others"]) == (15, 46, 9)
    assert row["high"] < 15 and row["expected"] == pytest.approx(3, abs=0.7)


def test_a_batch_is_not_held_against_itself():
    rows = bad_luck(season(bad=30)).query("stage == 'late'").set_index("batch")
    assert rows.loc["3", "expected"] < 4 < rows.loc["0", "expected"]


def test_ordinary_luck_is_not_called_unusual():
    table = bad_luck(season(bad=1))
    assert not table["unusual"].any()


def test_relabelling_and_reordering_batches_changes_nothing():
    plain = bad_luck(season()).drop(columns="batch")
    other = season()
    names = {str(n): f"x{9 - n}" for n in range(10)}
    for part in (other.batches, other.fates, other.looks):
        part["batch"] = part["batch"].map(names)
    assert bad_luck(other).drop(columns="batch").equals(plain)


def test_a_lone_batch_has_only_the_published_level():
    table = bad_luck(season(batches=4, bad=0)).query("batch == '0'")
    lone = bad_luck(tiny_season([dict(batch=1, eggs_set=24, day1=7, dead1=9, hatched=15)]))
    assert lone["chance"].isna().all() and not lone["unusual"].any()
    assert table["chance"].notna().all()
    early = lone.set_index("stage").loc["early"]
    assert early["norm"] == "heavy_breeders" and early["norm_high"] < 9 and early["norm_unusual"]
    assert [one.code for one in more_losses.luck(lone)] == ["luck_published", "luck_not_why"]


def test_own_levels_come_first_and_are_checked():
    own = [dict(species="chicken", stage="late", share=0.10, denominator="fertile")]
    assert level_for(norms("chicken", own), "chicken", "late", "weeks")["share"] == 0.10
    assert norms("chicken")["share"].between(0, 1).all()
    with pytest.raises(HatchkitError, match="between 0 and 1"):
        norms(own=[dict(species="chicken", stage="late", share=10)])


def test_adjusting_never_lowers_a_chance_and_keeps_missing_ones():
    raised = adjusted([0.01, np.nan, 0.04, 0.03])
    assert np.isnan(raised[1])
    assert raised[[0, 2, 3]] == pytest.approx([0.03, 0.04, 0.04])


def test_more_spread_between_batches_widens_what_is_expected():
    even = weights(log_likelihoods([5] * 10, [48] * 10).sum(axis=0))
    uneven = weights(log_likelihoods([0, 15] * 5, [48] * 10).sum(axis=0))
    narrow, wide = (summary(distribution(48, part), 5) for part in (even, uneven))
    assert wide["high"] > narrow["high"] + 5
    assert abs(narrow["expected"] - 5) < 1


def test_chances_of_counts_are_those_of_the_beta_binomial():
    from scipy.stats import betabinom

    from hatchkit.losses.predictive import chances

    a, b = np.array([0.3, 2.0, 40.0]), np.array([5.0, 30.0, 7.0])
    for size in (1, 12, 300):
        want = [betabinom.pmf(np.arange(size + 1), size, one, other) for one, other in zip(a, b, strict=True)]
        assert chances(size, a, b) == pytest.approx(np.array(want).T, abs=1e-12)


def test_few_chicks_are_bad_and_many_are_not():
    weight = weights(log_likelihoods([40] * 10, [48] * 10).sum(axis=0))
    chance = distribution(48, weight)
    assert summary(chance, 25, fewer=True)["chance"] < 0.01 < summary(chance, 48, fewer=True)["chance"]
    assert summary(chance, 0)["chance"] == 1.0


def test_a_count_from_which_a_batch_is_unusual_is_where_the_flag_turns():
    table = bad_luck(season(bad=1)).set_index(["batch", "stage"])
    end = table.loc[("3", "late"), "unusual_from"]
    # The batch has 3 late dead plus `bad`; one less than that count is not flagged, that count is.
    flags = [
        bad_luck(season(bad=int(end) - 3 + more)).set_index(["batch", "stage"]).loc[("3", "late"), "unusual"]
        for more in (-1, 0)
    ]
    assert flags == [False, True]
    assert table.loc[("3", "hatched"), "unusual_from"] < table.loc[("3", "hatched"), "low"]


def test_published_levels_are_told_with_their_range_and_luck():
    said = {one.code: one.facts for one in more_losses.luck(bad_luck(season()))}
    assert {level.facts["level"] for level in said["luck_published"]["levels"]} >= {"heavy_breeders"}
    worst = said["luck_published"]["unusual"][0].facts
    assert (worst["batch"], worst["stage"], worst["eggs"]) == ("3", "late", 15)
    assert worst["high"] < 15 and worst["one_in"] > 100


def test_a_count_that_is_rare_alone_is_named_with_what_it_would_have_taken():
    late = [2, 1, 1, 0, 2, 9, 0]
    one = tiny_season(
        [
            dict(batch=n, eggs_set=48, day1=7, clear1=2 + n % 3, dead1=n % 4, day2=14, dead2=n % 2, day3=18,
                 dead3=dead, hatched=44 - dead - n % 3 - n % 4 - n % 2, dead_in_shell=2)
            for n, dead in enumerate(late)
        ]
    )  # fmt: skip
    table = bad_luck(one)
    row = table.set_index(["batch", "stage"]).loc[("5", "late")]
    assert not row["unusual"] and row["chance"] <= 0.02
    near = {one.code: one.facts for one in more_losses.luck(table)}["luck_near"]["near"]
    assert ("5", "late", row["unusual_from"]) in [
        tuple(one.facts[name] for name in ("batch", "stage", "unusual_from")) for one in near
    ]


def test_nothing_is_unusual_within_the_range_that_is_told_beside_it():
    """Six comparisons of one bad batch: the mildest of four passes the allowance for six, and lies in its range."""
    season = tiny_season(
        [dict(batch=1, eggs_set=24, day1=7, clear1=5, dead1=2, hatched=9, broken_late=5, pipped_dead=2, broken_mid=1)]
    )
    table = bad_luck(season)
    for before in ("", "norm_"):
        found = table[table[before + "unusual"].astype(bool)]
        assert not found[before + "chance"].gt(0.025).any()
    told = table[table["norm_chance"].between(0.025, 0.05)]
    assert (told["norm_adjusted"] <= 0.10).any() and not told["norm_unusual"].any()
