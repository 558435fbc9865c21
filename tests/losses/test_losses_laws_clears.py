"""Fertility from opened clears, deaths shared out by age, places on a tray and what is unusual: worked by hand."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest
from scipy import stats
from tiny_season import tiny_season

from hatchkit.losses import bad_luck, clears, death_shape, norms, season_chart, tray
from hatchkit.losses.proportions import interval
from hatchkit.losses.two_phase_shape import cumulative
from hatchkit.problems import HatchkitError

NAN = math.nan


def row_of(**more):
    return {"set": 100.0, "clear": 20.0, "opened": 10.0, "opened_dead": 4.0, "infertile_at_hatch": 5.0} | more


def test_what_fertility_can_be_whatever_the_unopened_clears_were():
    """20 clear of 100, of ten opened 4 held an embryo; 5 infertile at the end: 6 + 5 known, 10 more may be."""
    found = clears._shares(row_of(), 1.0, 1.0)
    assert [found[name] for name in ("candled_fertile", "fertile_least", "fertile_most")] == pytest.approx(
        [0.75, 0.79, 0.89]
    )
    assert found["fertile"] == pytest.approx(1 - 0.2 * 0.6 - 0.05)
    told = clears.true_infertile(100, 20, 10, 4)
    assert found["fertile_low"] == pytest.approx(found["fertile"] - (told.high - told.share))
    assert found["fertile_high"] == pytest.approx(found["fertile"] + (told.share - told.low))


def test_a_spread_between_batches_takes_eggs_away_and_t_stretches_the_ends():
    """Dispersion 2: as of 50 set, 10 clear, 5 opened, 2 with an embryo; ends half as far again."""
    found, told = clears._shares(row_of(), 2.0, 1.5), clears.true_infertile(50, 10, 5, 2)
    assert found["fertile"] == pytest.approx(0.83)
    assert found["fertile_low"] == pytest.approx(0.83 - 1.5 * (told.high - told.share))
    assert found["fertile_high"] == pytest.approx(min(1.0, 0.83 + 1.5 * (told.share - told.low)))


def test_without_a_clear_fertility_is_a_plain_share():
    """5 infertile at the end of 100; with a dispersion of 2 Wilson's ends of 2.5 of 50, stretched."""
    found = clears._shares(row_of(clear=0.0, opened=0.0, opened_dead=0.0), 2.0, 1.5)
    low, high = interval(2.5, 50.0)
    assert found["fertile"] == pytest.approx(0.95)
    assert found["fertile_low"] == pytest.approx(0.95 - 1.5 * (high - 0.05))
    assert found["fertile_high"] == pytest.approx(min(1.0, 0.95 + 1.5 * (0.05 - low)))
    closed = clears._shares(row_of(opened=0.0, opened_dead=0.0), 1.0, 1.0)
    assert all(math.isnan(closed[name]) for name in ("fertile", "fertile_low", "fertile_high"))
    assert closed["fertile_least"] == pytest.approx(0.75) and closed["fertile_most"] == pytest.approx(0.95)


def test_ends_stay_between_nought_and_one():
    assert clears._ends(0.5, 0.6, 0.6, 1.0) == dict(fertile=0.5, fertile_low=0.0, fertile_high=1.0)
    assert clears._ends(0.5, 0.1, 0.2, 2.0) == dict(
        fertile=0.5, fertile_low=pytest.approx(0.3), fertile_high=pytest.approx(0.9)
    )


def test_the_interval_of_double_sampling_is_that_of_two_beta_draws():
    """Means of beta(20.5, 80.5) and beta(6.5, 4.5); ends found again by integrating one over the other."""
    found = clears.true_infertile(100, 20, 10, 4, draws=200_000, level=0.9)

    def below(value):
        grid = (np.arange(4000) + 0.5) / 4000
        return np.mean(stats.beta.cdf(value / stats.beta.ppf(grid, 6.5, 4.5), 20.5, 80.5))

    assert below(found.low) == pytest.approx(0.05, abs=0.003) and below(found.high) == pytest.approx(0.95, abs=0.003)
    every = clears.true_infertile(100, 20, 20, 4, level=0.9)
    assert (every.low, every.high) == pytest.approx(interval(16, 100, level=0.9))


@pytest.mark.parametrize(
    "counts", [(100, 20, 0, 0), (100, 20, 21, 0), (19, 20, 5, 0), (100, 20, 5, 6), (100, 20, 5, -1)]
)
def test_samples_that_cannot_be(counts):
    with pytest.raises(HatchkitError):
        clears.true_infertile(*counts)
    assert clears.true_infertile(20, 20, 20, 20).share == 0.0


def test_opened_clears_of_egg_rows_are_those_taken_out_as_clear():
    made = tiny_season([dict(batch="1", eggs_set=6, day1=7)])
    record, looks = made.batches.to_dict("records")[0], made.looks.to_dict("records")
    marks = [("clear", "infertile"), ("clear", "dead"), ("clear", ""), ("alive", "dead"), ("dead", "dead"),
             ("clear", "hatched")]  # fmt: skip
    eggs = [dict(candle1=look, outcome=outcome) for look, outcome in marks]
    assert clears.opened_clears(record, eggs, looks, made.species_table) == (2, 1)


def test_groups_sum_only_batches_whose_clears_were_counted():
    table = pd.DataFrame([dict(batch="a", counted=True, **row_of()), dict(batch="b", counted=False, **row_of(set=30.0)),
                          dict(batch="c", counted=True, **row_of(clear=30.0))])  # fmt: skip
    found = clears._group(table)
    assert (found["set"], found["clear"], found["uncounted"], found["uncounted_in"]) == (200, 50, 30, "b")
    assert found["candled_fertile"] == pytest.approx(1 - 60 / 200)
    none = clears._group(table[1:2])
    assert math.isnan(none["set"]) and math.isnan(none["fertile"]) and none["uncounted"] == 30


def test_deaths_are_shared_by_a_shape_within_their_stretches():
    """6 deaths over cells 1 and 2 of shape 0.2 and 0.4, 3 in cell 3 alone."""
    shape = np.array([0.1, 0.2, 0.4, 0.3])
    found = death_shape._shared(shape, np.array([1, 3]), np.array([3, 4]), np.array([6.0, 3.0]))
    assert found == pytest.approx([0, 2, 4, 3])


def test_one_wide_stretch_is_shared_as_published_and_a_narrow_one_stays():
    whole = death_shape.smooth_shape([0.0], [21.0], [5.0])
    for day in (1.0, 3.0, 7.0, 14.0, 19.0):
        assert whole(day) == pytest.approx(cumulative(day) / cumulative(21.0), abs=2e-3)
    both = death_shape.smooth_shape([0.0, 7.0], [21.0, 7.5], [5.0, 5.0])
    assert both(7.5) - both(7.0) > 0.5 and both(21.0) == pytest.approx(1.0) and both(0.0) == 0.0
    none = death_shape.smooth_shape([3.0, 3.0], [math.inf, 9.0], [5.0, 0.0], 28.0)
    assert none(9.0) == pytest.approx(cumulative(9.0, 28.0))


def test_smoothing_is_over_a_day_on_the_hens_scale():
    """10 deaths on day 9 and 1 over all: the one falls near day 9 more often; 28-day eggs the same on 4/3 days."""
    hen = death_shape.smooth_shape([8.75, 0.0], [9.0, 21.0], [10.0, 1.0])
    duck = death_shape.smooth_shape([8.75 * 4 / 3, 0.0], [12.0, 28.0], [10.0, 1.0], 28.0)
    for day in (3.0, 8.0, 8.75, 9.0, 10.0, 18.0):
        assert duck(day * 4 / 3) == pytest.approx(hen(day), abs=1e-6)
    wide = death_shape.smooth_shape([8.75, 0.0], [9.0, 21.0], [10.0, 1.0], smooth_days=3.0)
    near = [shape(10.0) - shape(9.0) for shape in (hen, wide)]
    assert near[0] > near[1] > 0


def test_each_kind_of_bird_has_the_shape_of_its_own_deaths():
    rows = pd.DataFrame(dict(batch=["a", "a", "b"], fate=["dead", "hatched", "dead"], after_day=[7.0, 0, 0.0],
                             by_day=[7.25, 21, 3.0], eggs=[4.0, 30, 2]))  # fmt: skip
    shapes = death_shape.season_shapes(rows, dict(a="hen", b="duck"), dict(hen=21.0, duck=28.0, goose=30.0))
    assert shapes["hen"](7.25) - shapes["hen"](7.0) == pytest.approx(1) and shapes["duck"](3.0) == pytest.approx(1)
    assert shapes["goose"](9.0) == pytest.approx(cumulative(9.0, 30.0))


def test_own_levels_are_checked_and_come_first():
    own = dict(species="chicken", stage="late", share=0.05)
    table = norms.norms("chicken", [own])
    assert table.loc[0, ["norm", "share", "denominator", "limits"]].tolist() == ["own", 0.05, "set", ""]
    assert len(norms.norms("chicken", [own | dict(denominator="fertile")])) == len(table)
    for share in (0, 1.0):
        assert norms.norms("chicken", [own | dict(share=share)]).loc[0, "share"] == share
    for wrong, code in ((dict(share=1.01), "own_level_lacks"), (dict(share=-0.01), "own_level_lacks"),
                        (dict(share="5"), "own_level_lacks"), (dict(denominator="laid"), "own_level_of")):  # fmt: skip
        with pytest.raises(HatchkitError) as told:
            norms.norms("chicken", [own | wrong])
        assert told.value.code == code
    with pytest.raises(HatchkitError):
        norms.norms("chicken", [dict(species="chicken", share=0.5)])


def test_the_first_level_that_fits_is_taken():
    table = pd.DataFrame(dict(species=["duck", "hen", "hen", "hen"], stage="late", limits=["", "thirds", "", "weeks"],
                              share=[1, 2, 3, 4]))  # fmt: skip
    assert [norms.level_for(table, "hen", "late", limits)["share"] for limits in ("thirds", "weeks", "own")] == [
        2,
        3,
        3,
    ]
    assert norms.level_for(table, "hen", "mid", "weeks") is None and norms.level_for(table, "emu", "late", "") is None


def places(*rows):
    table = pd.DataFrame(rows, columns=["batch", "egg", "tray", "row", "col", "fate"])
    fates = table[["batch", "egg", "fate"]]
    batches = pd.DataFrame(dict(batch=[1, 2], incubator=["m", None]))
    return SimpleNamespace(eggs=table.drop(columns="fate"), fates=fates, batches=batches)


def test_places_over_all_batches_of_a_machine():
    made = places((1, "1", "t", 1, 1, "dead"), (1, "2", "t", 1, 2, "clear"), (2, "1", "t", 1, 1, "pipped_dead"),
                  (1, "3", "t", 1, 1, "hatched"), (1, "4", "t", NAN, 1, "dead"))  # fmt: skip
    found = tray.tray_season(made)
    assert found[["machine", "row", "col", "batches", "at_risk", "died"]].to_numpy().tolist() == [
        ["", 1, 1, 1, 1, 1], ["m", 1, 1, 1, 2, 1], ["m", 1, 2, 1, 0, 0],
    ]  # fmt: skip
    assert found["share"].tolist() == pytest.approx([1, 0.5, NAN], nan_ok=True)


def test_eggs_that_touch_and_places_at_the_edge():
    """Places (0, 0), (1, 1), (1, 2) and (3, 2): two pairs touch, by a corner and by a side."""
    row, col = [0, 1, 1, 3], [0, 1, 2, 2]
    pairs = tray.neighbours(row, col)
    assert pairs.tolist() == [[0, 1], [1, 2]]
    assert tray.joins([[True, True, True, False], [True, False, True, True]], pairs).tolist() == [2, 0]
    assert tray.at_edge(row, col).tolist() == [True, False, True, True]


def test_answers_of_a_tray_by_hand():
    """Draws of 0, 1, 2, 1 touching pairs (mean 1, sd 0.7071) and 3, 1, 1, 3 at the edge (mean 2, sd 1); 4 deaths."""
    drawn = np.array([[0.0, 3], [1, 1], [2, 1], [1, 3]])
    near, edge, both = tray._answers(np.array([2.0, 1.0]), drawn, 4)
    assert (near["seen"], near["expected"], edge["seen"], edge["expected"]) == (2, 1, 0.25, 0.5)
    # Scores: touching 1.414, edge |-1| = 1; of draws -1.414, 0, 1.414, 0 one is as high, of the edge's all four.
    assert (near["chance"], near["smallest"]) == (2 / 5, 2 / 5) and (edge["chance"], edge["smallest"]) == (1, 1)
    assert (both["chance"], both["smallest"]) == (2 / 5, 2 / 5) and math.isnan(both["seen"])
    low = tray._answers(np.array([0.0, 2.0]), drawn, 4)
    assert (low[0]["chance"], low[1]["chance"]) == (1, 1)
    same = tray._answers(np.array([3.0, 3.0]), np.full((4, 2), 3.0), 4)
    assert same[0]["chance"] == 1


def test_a_count_unusual_beside_the_others(monkeypatch):
    """Of four comparisons one is flagged: another would need 0.1 x 2/4 and the flagged one 0.1 x 1/4, at most 0.025."""
    seen = []
    monkeypatch.setattr(bad_luck, "count_for", lambda chance, rare, fewer: seen.append((rare, fewer)) or 7)
    table = pd.DataFrame(dict(chance=[0.01, 0.2, 0.3, NAN], unusual=[True, False, False, False],
                              stage=["late", "hatched", "late", "late"]))  # fmt: skip
    assert bad_luck._unusual_from(table, ["x", "x", "x", None])[:3] == [7, 7, 7]
    assert seen == [(0.025, False), (0.025, True), (0.025, False)]
    many = pd.concat([table] * 4, ignore_index=True).assign(chance=0.5, unusual=[True] + [False] * 15)
    seen.clear()
    assert np.isnan(bad_luck._unusual_from(many, ["x"] * 15 + [None])[-1])
    assert seen[0][0] == pytest.approx(0.1 / 16) and seen[1][0] == pytest.approx(0.2 / 16)


def test_chances_allowed_for_their_number():
    """Benjamini & Hochberg: 0.01 x 3, 0.02 x 3/2, 0.5; the smallest never above the next."""
    found = bad_luck.adjusted([0.5, NAN, 0.01, 0.02])
    assert found.tolist() == pytest.approx([0.5, NAN, 0.03, 0.03], nan_ok=True)
    assert bad_luck.adjusted([0.9, 0.95]).tolist() == pytest.approx([0.95, 0.95])
    assert len(bad_luck.adjusted([])) == 0


def test_which_stages_can_be_compared_and_clears_with_infertile_ones():
    book = pd.DataFrame(dict(batch="a", stage=["clear", "infertile", "late", "hatched", "unaccounted"],
                             eggs=[3.0, 2, 4, 30, 1], at_hatch=[0.0, 2, 4, 30, 0], set=40, transferred=33,
                             fertile=[35.0, 35, NAN, NAN, 35], counted=[True, True, True, True, False]))  # fmt: skip
    assert bad_luck.comparable(book).tolist() == [True, True, False, True, False]
    found = bad_luck._combined(book).set_index("stage")
    assert found["eggs"].to_dict() == dict(clear=5, late=4, hatched=30) and found.at["clear", "at_hatch"] == 2


def test_a_chart_is_provisional_below_twenty_batches():
    rows = [dict(batch=str(n), eggs_set=40, day1=7, clear1=2, dead1=1, hatched=33, broken_mid=0, broken_early=0,
                 broken_late=4) for n in range(20)]  # fmt: skip
    for batches, provisional in ((20, False), (19, True)):
        table = season_chart.season_chart(tiny_season(rows[:batches]), draws=9)
        assert table.attrs["provisional"] == provisional and table.attrs["of"] == "fertile"
        assert table["share"].tolist() == pytest.approx([4 / 38] * batches) and not table["outside"].any()
        assert table.attrs["others"] == {} and table.attrs["not_counted"] == []
