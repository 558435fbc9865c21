"""Ages at death of a season: what is identified, what is not, and the band."""

import numpy as np
import pandas as pd
import pytest
from age_trials import HEAVY, USUAL, cover
from tiny_season import tiny_season

import hatchkit as hk
from hatchkit.findings import more_losses
from hatchkit.losses.death_age import age_at_death_from
from hatchkit.losses.proportions import interval, pooled
from hatchkit.problems import HatchkitError

HEN = dict(
    eggs_set=48,
    day1=7,
    clear1=4,
    dead1=3,
    day2=14,
    dead2=1,
    day3=18,
    dead3=1,
    hatched=34,
    pipped_dead=1,
    dead_in_shell=4,
)


def test_one_batch_gives_the_counts_over_the_living_at_its_looks():
    result = hk.age_at_death(tiny_season([{**HEN, "batch": 1}]), draws=50)
    curve = result.curve.set_index("day")
    living = 44
    for day, dead in ((7, 3), (14, 4), (18, 5), (21.5, 10)):
        assert curve.loc[day, "at_least"] == pytest.approx(dead / living, abs=1e-6)
    assert result.fits["deaths"].iloc[0] == 10 and result.fits["eggs"].iloc[0] == living
    assert result.fits["band_from"].iloc[0] == "eggs"


def test_between_looks_the_loss_is_a_range_and_not_a_curve():
    # Candled on day 7 and on day 9: what died between 7 and 9 in the second batch may have died before 7.
    season = tiny_season(
        [
            dict(batch=1, eggs_set=20, day1=7, dead1=2, hatched=18),
            dict(batch=2, eggs_set=20, day1=9, dead1=2, hatched=18),
        ]
    )
    result = hk.age_at_death(season, draws=0)
    assert result.curve["day"].tolist() == [0, 7, 21.5]
    assert (result.curve["at_least"] == result.curve["at_most"])[1:].all()
    assert result.table[["after_day", "by_day"]].to_numpy().tolist() == [[0, 7]]
    one = hk.age_at_death(tiny_season([dict(batch=1, eggs_set=20, day1=7, hatched=15, dead_in_shell=5)]), draws=0)
    assert one.table[["after_day", "by_day", "share"]].to_numpy().tolist() == [[7, 21.5, pytest.approx(0.25)]]


def test_hatched_chicks_never_count_as_late_deaths_of_another_batch():
    # Taken off on day 21 and day 23: the first batch's chicks must not lend mass to the days after 21.
    season = tiny_season(
        [
            dict(batch=1, eggs_set=30, taken_off_day=21, hatched=30),
            dict(batch=2, eggs_set=10, taken_off_day=23, hatched=8, dead_in_shell=2),
        ]
    )
    assert hk.age_at_death(season, draws=0).table["share"].sum() == pytest.approx(2 / 40, abs=1e-7)


def test_the_daily_risk_between_looks_multiplies_up_to_the_loss():
    result = hk.age_at_death(tiny_season([{**HEN, "batch": 1}]), draws=0)
    alive = np.prod((1 - result.hazard["daily_low"]) ** (result.hazard["by_day"] - result.hazard["after_day"]))
    assert 1 - alive == pytest.approx(10 / 44, abs=1e-6)


def test_species_are_kept_apart_and_groups_can_be_split():
    season = tiny_season(
        [
            {**HEN, "batch": 1, "flock": "a"},
            {**HEN, "batch": 2, "flock": "b"},
            dict(batch=3, species="quail", flock="a", eggs_set=24, taken_off_day=18, hatched=20, dead_in_shell=4),
        ]
    )
    assert hk.age_at_death(season, draws=5).fits["species"].tolist() == ["chicken", "quail"]
    assert set(hk.age_at_death(season, by="flock", draws=5).fits["group"]) == {"a", "b"}
    with pytest.raises(HatchkitError, match="no column"):
        hk.age_at_death(season, by="moon")


def test_the_band_holds_the_estimate_and_is_the_same_each_time():
    season = tiny_season([{**HEN, "batch": n, "dead1": n % 4, "hatched": 37 - n % 4} for n in range(8)])
    first, second = hk.age_at_death(season, draws=200), hk.age_at_death(season, draws=200)
    assert first.curve.equals(second.curve)
    assert (first.curve["band_low"] <= first.curve["at_least"] + 1e-9).all()
    assert (first.curve["band_high"] >= first.curve["at_most"] - 1e-9).all()


def test_no_death_at_all_still_leaves_doubt():
    result = hk.age_at_death(tiny_season([dict(batch=n, eggs_set=12, hatched=12) for n in range(3)]), draws=20)
    assert result.curve["at_most"].max() == 0
    # Wilson, 0 of 36, with Student's t for few batches, as for every share over batches.
    assert result.curve["band_high"].max() == pytest.approx(pooled([0, 0, 0], [12, 12, 12]).high)
    assert [one.code for one in more_losses.ages(result)] == ["ages_alive", "ages_method"]
    one = hk.age_at_death(tiny_season([dict(batch=1, eggs_set=36, hatched=36)]), draws=20)
    assert one.curve["band_high"].max() == pytest.approx(0.0964, abs=1e-3)  # Wilson, 0 of 36


@pytest.mark.parametrize("deaths", [USUAL, HEAVY])
@pytest.mark.parametrize(
    ("batches", "eggs", "sd"), [(3, 48, 0.4), (6, 48, 0.4), (6, 150, 0.8), (12, 48, 0.4), (12, 150, 0.8)]
)
def test_the_bands_hold_the_truth_at_the_sizes_that_people_have(batches, eggs, sd, deaths):
    # Percentiles of the draws alone held 78 to 93 % (loss) and 66 to 91 % (risk). The full table:
    # tests/benchmarks/death_age_coverage.py; 150 seasons, standard error of one look 2 points.
    held, kept = cover(np.random.default_rng(3), deaths, batches=batches, eggs=eggs, sd=sd, seasons=150)
    assert min(held.mean(), kept.mean()) >= 0.91 and min(held.min(), kept.min()) >= 0.88


def test_a_stretch_without_a_death_still_leaves_doubt_of_its_risk():
    rows = [dict(batch=n, eggs_set=24, day1=7, dead1=n % 3, day2=14, dead2=0, hatched=24 - n % 3) for n in range(5)]
    hazard = hk.age_at_death(tiny_season(rows), draws=100).hazard
    quiet = hazard[hazard["after_day"] == 7].iloc[0]
    assert quiet["daily_high"] == 0 == quiet["band_low"]
    # No death among 115: at most 3.2 % by Wilson, 0.46 % a day in seven days; more with few batches.
    assert 0.0046 < quiet["band_high"] < 0.01


def test_bands_never_shrink_with_age_nor_inside_the_chance_of_single_eggs():
    season = tiny_season([{**HEN, "batch": n, "dead1": n % 4, "hatched": 37 - n % 4} for n in range(8)])
    result = hk.age_at_death(season, draws=200)
    curve, eggs = result.curve, result.fits["eggs"].iloc[0]
    assert (curve[["band_low", "band_high"]].diff().dropna() >= 0).all(axis=None)
    assert (curve["band_low"] <= interval(curve["at_least"] * eggs, np.full(len(curve), eggs))[0] + 1e-12).all()
    later = curve[curve["day"] > 0]
    assert (later["band_high"] >= interval(later["at_most"] * eggs, np.full(len(later), eggs))[1] - 1e-12).all()
    hazard = result.hazard
    assert (hazard["band_low"] < hazard["daily_low"]).all() and (hazard["band_high"] > hazard["daily_high"]).all()


def test_eggs_taken_out_alive_early_say_nothing_of_later_risk():
    rows = [dict(batch=n, eggs_set=24, day1=7, dead1=2, hatched=22) for n in range(4)]
    kept = hk.age_at_death(tiny_season(rows), draws=100).hazard["band_high"].iloc[-1]
    rows = [{**row, "removed1": 12, "hatched": 10} for row in rows]
    taken = hk.age_at_death(tiny_season(rows), draws=100).hazard["band_high"].iloc[-1]
    assert taken > 1.5 * kept


def test_nothing_known_gives_empty_tables():
    result = hk.age_at_death(tiny_season([dict(batch=1, eggs_set=12, day1=7, clear1=12, hatched=0)]))
    assert result.fits.empty and result.curve.empty
    assert [one.code for one in more_losses.ages(result)] == ["ages_none"]


def test_all_dead_and_one_look_works():
    result = hk.age_at_death(tiny_season([dict(batch=1, eggs_set=12, day1=7, dead1=12, taken_off_day=None)]), draws=10)
    assert result.curve["at_least"].max() == pytest.approx(1)
    assert np.isfinite(result.hazard.select_dtypes("number").to_numpy()).all()


def told(*rows, **more):
    result = hk.age_at_death(tiny_season(list(rows), **more), draws=5)
    return {one.code: one.facts for one in more_losses.ages(result)}


def test_what_the_looks_cannot_tell_is_told():
    said = told({**HEN, "batch": 1})
    assert (said["ages_died"]["deaths"], said["ages_died"]["eggs"], said["ages_died"]["batches"]) == (10, 44, 1)
    assert said["ages_wide"]["spans"] and "ages_method" in said


def test_an_egg_taken_out_alive_is_told_where_the_share_is_not_that_of_the_two_counts():
    counts = dict(day1=7, clear1=0, dead1=2, hatched=9, dead_in_shell=7)
    gone = [dict(batch="1", egg="x", candle1="alive", transfer="removed")]
    said = told(dict(batch=1, eggs_set=19, day3=18, **counts), eggs=gone)
    assert said["ages_died"]["share"] == pytest.approx(0.497, abs=1e-3) and said["ages_removed"] == dict(removed=1)
    assert "ages_removed" not in told(dict(batch=1, eggs_set=18, **counts))


def test_eggs_nobody_can_account_for_are_told_beside_the_share_that_died():
    said = told(dict(batch=1, eggs_set=42, day1=7, clear1=6, dead1=2, hatched=17, dead_in_shell=4))
    assert (said["ages_died"]["deaths"], said["ages_died"]["eggs"]) == (6, 23)
    assert said["ages_unaccounted"] == dict(unaccounted=13, most=pytest.approx(19 / 36))


@pytest.mark.parametrize("other, alone", [((0.001, 0.006), True), ((0.006, 0.02), False), ((0.01, 0.03), False)])
def test_a_highest_risk_is_alone_only_where_its_band_stands_clear_of_the_others(other, alone):
    rows = [(0.001, 0.0005, 0.003), (0.02, 0.01, 0.04), (0.002, *other)]
    hazard = pd.DataFrame(
        [
            dict(after_day=7 * at, by_day=7 * at + 7, daily_low=risk, daily_high=risk, band_low=low, band_high=high)
            for at, (risk, low, high) in enumerate(rows)
        ]
    )
    facts = more_losses._risk(hazard)[0].facts
    assert (facts["after"], facts["by"], facts["alone"]) == (7, 14, alone)


@pytest.mark.parametrize(
    ("after", "by", "eggs"), [([0], [0], [1]), ([0, 1], [2, 3], [1]), ([0], [1], [0]), ([np.nan], [1], [1])]
)
def test_impossible_intervals_are_refused(after, by, eggs):
    with pytest.raises(HatchkitError):
        age_at_death_from(after, by, eggs)
