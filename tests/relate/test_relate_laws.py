"""Chance, doses, designs and limits of the verdict by hand: boundary values on both sides, small whole examples."""

import math
from itertools import permutations

import numpy as np
import pandas as pd
import pytest

from hatchkit.relate import confounding, late, measures, permutation, turns
from hatchkit.relate.design import design
from hatchkit.relate.effect import _moment, _ran_away, effect, spread_moment
from hatchkit.relate.hazard import enough_to_test
from hatchkit.relate.verdict import CLEAR, NONE, SOME, UNTOLD, verdict

RARE = dict(floor=1.3, low=1.2, high=6.0, power=0.9)


def table_of(batches=8, *, exposed=3, eggs=40, died=4, **more):
    rows = dict(batch=[f"b{b}" for b in range(batches)], window=1, days=7.0, at_risk=eggs, died=died)
    return pd.DataFrame(rows | dict(dose=(np.arange(batches) < exposed).astype(float))).assign(**more)


@pytest.mark.parametrize(("given", "code"), [
    # Without redrawn seasons: 5 % of arrangements, and a floor above 1.
    (dict(more=0.05, **RARE), CLEAR), (dict(more=0.0501, **RARE), SOME),
    (dict(more=0.05, **RARE | dict(floor=1.0)), SOME),
    # With them 4.8 %; exchange may speak against it where it could give 2 % or less, and then above 10 %.
    (dict(drawn=0.048, more=0.5, smallest=0.0201, **RARE), CLEAR), (dict(drawn=0.0481, more=0.01, **RARE), SOME),
    (dict(drawn=0.048, more=0.101, smallest=0.02, **RARE), SOME),
    (dict(drawn=0.048, more=0.10, smallest=0.02, **RARE), CLEAR),
    # Some sign: 10 %, or an interval above 1; of an effect of at least 1.25 in its middle.
    (dict(more=0.10, **RARE | dict(low=0.8, high=2.0)), SOME),
    (dict(more=0.101, **RARE | dict(low=0.8, high=2.0)), UNTOLD),
    (dict(more=0.9, **RARE | dict(low=1.01, high=2.0)), SOME),
    (dict(more=0.9, **RARE | dict(low=1.0, high=2.0)), UNTOLD),
    (dict(more=0.10, **RARE | dict(low=0.9, high=1.25**2 / 0.9 + 1e-9)), SOME),
    (dict(more=0.10, **RARE | dict(low=0.9, high=1.25**2 / 0.9 - 1e-3)), NONE),
    (dict(more=0.10, floor=math.nan, low=math.nan, high=math.nan), SOME), (dict(drawn=0.09, more=0.5, **RARE), SOME),
    # No sign: a doubling would have shown in 80 %, and lies above the interval.
    (dict(more=0.5, floor=0.6, low=0.5, high=1.99, power=0.8), NONE),
    (dict(more=0.5, low=0.5, high=2.0, power=0.8), UNTOLD),
    (dict(more=0.5, low=0.5, high=1.9, power=0.799), UNTOLD), (dict(more=0.01, enough=False, **RARE), UNTOLD),
])  # fmt: skip
def test_where_the_verdict_turns(given, code):
    assert verdict(**given)[0] == code


@pytest.mark.parametrize(("power", "missed"), [(0.0, 10), (0.44, 6), (0.46, 5), (0.97, 1), (1.0, 1)])
def test_in_how_many_of_ten_a_doubling_would_be_missed(power, missed):
    assert verdict(more=0.5, low=0.5, high=9.0, power=power)[1] == dict(missed=missed)
    assert verdict(more=0.5, low=0.5, high=9.0, power=power, enough=False)[1] == dict(missed=10)


def test_residuals_and_the_likeness_of_eggs_by_hand():
    """10 of 40 at 0.2: (10 - 8) / root(6.4 x (1 + 39 x 0.1)); X2 = 4/6.4 + 16/6.4 = 3.125 over 78 pairs."""
    assert permutation.standardised(10.0, 40.0, 0.2, 0.1) == pytest.approx(2 / math.sqrt(6.4 * 4.9))
    assert permutation.standardised(0.0, 40.0, 0.0, 0.1) == 0.0
    died, eggs, share = np.array([10.0, 4]), np.array([40.0, 40]), np.array([0.2, 0.2])
    assert permutation.intra_batch_correlation(died, eggs, share, 1) == pytest.approx((3.125 - 1) / 78)
    assert permutation.intra_batch_correlation(died, eggs, share, 4) == 0.0
    assert permutation.intra_batch_correlation(np.array([1.0, 0]), np.ones(2), np.full(2, 0.001), 0) == 0.9
    assert permutation.intra_batch_correlation(died, eggs, np.array([0.2, 0.0]), 0) == pytest.approx(0.625 / 78)


def test_shares_of_arrangements_by_hand():
    found = permutation.chances([3.0, 1, 3, 5, -4, 0], exact=True)
    assert found == pytest.approx(dict(more=3 / 6, either=4 / 6, smallest=1 / 6))
    assert permutation.chances([3.0, 1, 3, 5, -4, 0], exact=False)["smallest"] == pytest.approx(1 / 6)
    tied = permutation.chances([3.0, 3 + 2e-9, 3 - 2e-9, 1], exact=True)
    assert tied["more"] == 0.75 and tied["smallest"] == 0.5
    apart = permutation.chances([3.0, 3 - 1e-8, 1, 1], exact=True)
    assert apart["more"] == 0.25


def test_every_way_to_deal_three_histories_within_two_strata():
    ids, strata = np.array([1, 0, 0, 2, 2, 1, 1]), np.array([0, 0, 0, 1, 1, 1, 1])
    order, exact = permutation.deal(ids, strata)
    want = {one + two for one in set(permutations([1, 0, 0])) for two in set(permutations([2, 2, 1, 1]))}
    assert exact and len(order) == len(want) == 18 == permutation.arrangements_count(ids, strata)
    assert {tuple(ids[row]) for row in order.tolist()} == want and (ids[order[0]] == ids).all()
    assert all(sorted(row) == list(range(7)) for row in order.tolist())


def test_beyond_twenty_thousand_ways_a_sample_is_drawn(monkeypatch):
    ids, strata = np.arange(4), np.zeros(4, int)
    for limit, exact in ((24, True), (23, False)):
        monkeypatch.setattr(permutation, "EXACT_LIMIT", limit)
        order, found = permutation.deal(ids, strata, draws=50)
        assert found == exact and len(order) == (24 if exact else 50) and order[0].tolist() == [0, 1, 2, 3]
    assert len({tuple(row) for row in order.tolist()}) > 15


def test_doses_on_the_scale_of_doublings():
    line = measures.measures().loc[measures.PARTS[0]]
    least, half = line["least"], line["half"]
    found = measures.score([least, least * (1 - 1e-9), 0.0, -3.0, np.nan, 3 * half + least], measures.PARTS[0])
    assert found[:4] == pytest.approx([math.log2(1 + least / half), 0, 0, 0]) and np.isnan(found[4])
    assert found[5] == pytest.approx(math.log2(4 + least / half))
    both = measures.together(np.array([1.0, np.nan, np.nan, 0, 0]), np.array([2.0, 2.0, 0.0, 0, np.nan]))
    assert both[[0, 1, 3]] == pytest.approx([3, 2, 0]) and np.isnan(both[[2, 4]]).all()


def test_a_window_logged_in_part_is_known_only_by_what_was_logged():
    heat, cold = measures.PARTS
    hot = float(measures.measures().loc[heat, "least"]) * 3
    table = pd.DataFrame({"share_logged": [0.8, 0.79, 0.79, np.nan, 1.0], heat: [0.0, 0, hot, hot, 0],
                          cold: [0.0, 0, 0, 0, 1e4]})  # fmt: skip
    found = measures.known_dose(table)
    assert np.isnan(found).tolist() == [False, True, False, False, False] and found[0] == 0


def test_a_turn_of_the_log_by_hand():
    """A log of five hours, the fourth not written: what lies between two hours after each turn, its end joined on."""
    rate = np.array([1.0, 2, 4, np.nan, 8])
    part = measures.PARTS[0]
    least = float(measures.measures().loc[part, "least"])
    rate = rate * least  # every hour alone counts
    first, last = np.array([0.0, 1.5]), np.array([2.0, 4.0])
    found = turns._turn(rate, first, last, np.array([0, 1, 2, 3, 4]), part)
    want = [[3, 1 + 4], [6, 2 + 8], [4, 8 + 1 * 0.5 + 0.5], [8, 8 + 1 + 1], [9, 8 * 0.5 + 3]]
    want[2][1] = 0.5 * 0 + 8 + 1  # hours 3.5 to 6
    want[3][1] = 0.5 * 8 + 1 + 2  # hours 4.5 to 7
    want[4][1] = 0.5 * 1 + 2 + 4  # hours 5.5 to 8
    assert found == pytest.approx(measures.score(np.array(want) * least, part))
    still = turns._turn(np.array([0.0, np.nan, np.nan, 0]), np.array([0.0, 0]), np.array([2.0, 3]), np.array([0]), part)
    assert still[0, 0] == 0 and np.isnan(still[0, 1])


def test_rates_of_a_log_are_means_of_the_hours_that_speak():
    """Half an hour 1 K too warm and a quarter at 3 K in one hour: 1.25 K h over 0.75 h; the next hour is not known."""
    track = pd.DataFrame(dict(
        time=pd.to_datetime(["2024-03-01 00:00", "2024-03-01 00:30", "2024-03-01 01:10", "2024-03-01 02:00"], utc=True),
        hours=[0.5, 0.25, np.nan, 1.0], egg_c=[39.0, 41.0, 50.0, 35.0], egg_range_high_c=38.0, egg_range_low_c=37.0,
    ))  # fmt: skip
    found = turns.log_rates([track])
    assert len(found) == 3 and found.iloc[1].isna().all()
    assert found.iloc[0].tolist() == pytest.approx([1.25 / 0.75, 0]) and found.iloc[2].tolist() == pytest.approx(
        [0, 2.0]
    )


@pytest.mark.parametrize(("spans", "overlap"), [
    ([(0, 5), (4, 9)], True), ([(0, 5), (5, 9)], False), ([(0, 5), (4, 9), (20, 25), (30, 35)], True),
    ([(0, 5), (4, 9), (20, 25), (30, 35), (40, 45)], False), ([(0, 5)], False),
])  # fmt: skip
def test_half_of_the_batches_must_share_their_machine(spans, overlap):
    start = pd.Timestamp("2024-03-01", tz="UTC")
    rows = [dict(batch=n, incubator="a", start=start + pd.Timedelta(days=a), end=start + pd.Timedelta(days=b))
            for n, (a, b) in enumerate(spans)]  # fmt: skip
    assert turns.batches_overlap(pd.DataFrame(rows)) == overlap


def test_which_rows_can_be_used():
    rows = table_of(8)
    rows.loc[1, "died"], rows.loc[2, "died"] = 41, 40
    rows.loc[3, "at_risk"], rows.loc[4, "days"], rows.loc[5, "died"] = 0, 0, np.nan
    rows = pd.concat([rows, rows.iloc[[7]]])
    made = design(rows)
    assert made.left_out["batch"].tolist() == ["b1", "b3", "b4", "b5", "b7"]
    assert made.left_out["exposed"].tolist() == [True, False, False, False, False]
    least = design(table_of(4).assign(dose=[0.5, 0.51, 2.0, np.nan]), least=0.5)
    assert least.exposed.tolist() == [False, True, True, False] and least.step == pytest.approx(1.255)
    assert least.dose[:3].tolist() == [0, 0.51, 2] and least.known.tolist() == [True, True, True, False]


def test_a_covariate_needs_four_fifths_of_its_values():
    ages = np.r_[np.arange(20.0, 28), np.nan, np.nan]
    rows = table_of(10, died=9, stored_days=ages)
    made = design(rows)
    assert made.extra_names == ["stored_days"] and made.extra[8:, 0].tolist() == [0, 0]
    assert made.extra[:8, 0] == pytest.approx((ages[:8] - 23.5) / ages[:8].std())
    ages[7] = np.nan
    made = design(rows.assign(stored_days=ages))
    assert made.extra_names == [] and made.not_carried == ["stored_days"]
    assert design(rows.assign(stored_days=3.0)).not_carried == []


def test_batches_alone_in_their_looks_form_one_pool():
    rows = pd.concat([table_of(4), table_of(2).assign(window=2), table_of(1).assign(window=3)])
    pools = design(rows).pools
    assert pools[2] == pools[3] and pools[0] == pools[1] and pools[0].endswith("mixed") and pools[2] != pools[0]


@pytest.mark.parametrize(("batches", "exposed", "died", "enough"), [
    (6, 2, 1, True), (5, 2, 1, False), (6, 1, 1, False), (6, 2, 0.8, False), (6, 2, 5 / 6, True),
])  # fmt: skip
def test_the_least_numbers_for_a_test(batches, exposed, died, enough):
    assert enough_to_test(design(table_of(batches, exposed=exposed, died=died))) == enough


@pytest.mark.parametrize(("batches", "exposed", "weighted"), [(12, 3, True), (11, 3, False), (12, 2, False)])
def test_from_which_numbers_on_the_weighted_fit_is_taken(batches, exposed, weighted):
    died = 3 + np.arange(batches) % 3
    found = effect(design(table_of(batches, exposed=exposed, died=died)), draws=200)
    assert (found["method"] == "weighted quasi-binomial") == weighted
    assert (found["batches"], found["exposed"], found["deaths"]) == (batches, exposed, died.sum())
    assert found["deaths_exposed"] == died[:exposed].sum() and found["rows"] == batches


@pytest.mark.parametrize(("first", "second", "ran"), [
    (6.0, -9.0, False), (6.001, -9.0, True), (-6.001, 0.0, True), (1.0, 2.5, False), (1.0, 2.501, True),
    (math.nan, 0, True),
])  # fmt: skip
def test_a_fit_that_ran_away(first, second, ran):
    fit = type("Fit", (), dict(params=np.array([first, second])))
    assert _ran_away(fit, np.array([[1.0, 1], [0, 1]]), 0.0) == ran


def test_the_spread_that_brings_the_squares_to_their_freedom():
    """Gaps of 4 and 2 on variances of 2: 8 + 2; with k x 3 added both: 20 / (2 + 3 k) = 1 at k = 6."""
    squares, variance = np.array([16.0, 4]), np.array([2.0, 2])
    assert _moment(squares, variance, np.array([3.0, 3]), 1) == pytest.approx(6)
    assert _moment(squares, variance, np.array([3.0, 3]), 10) == 0.0
    assert _moment(squares, variance, np.array([0.03, 0.03]), 1) == 100.0
    k = spread_moment(np.array([10.0, 2]), np.array([40.0, 40]), np.array([0.15, 0.15]), 1)
    assert 2 * 16 / (5.1 * (1 + 39 * k * 0.15 / 0.85)) == pytest.approx(1)


def test_losses_of_the_window_after_an_exposed_one():
    rows = pd.concat([table_of(5, exposed=2, died=5), table_of(5, exposed=0, died=7).assign(window=2)])
    made = design(rows)
    after, before = late._followers(made)
    assert made.rows.loc[after, ["batch", "window"]].values.tolist() == [["b0", 2], ["b1", 2]]
    assert made.rows.loc[before, "window"].tolist() == [1, 1]
    would = np.arange(1, 201) % 20.0
    line = late._line("a", 1, 2, 40, 18, would)
    assert line[3:] == [40, 18, 9.5, 0, 19, 0.1]
    wide = late._line("a", 1, 2, 40, 101, np.arange(1.0, 101))
    assert wide[6:] == [3, 98, 0.0]


@pytest.mark.parametrize(("value", "apart", "how", "side"), [
    ([1, 2, 3, 4, 5, 6, 7, 8], False, "exact", "fewer"), ([9, 8, 7, 4, 5, 6, 6, 6], False, "exact", "more"),
    ([1, 2, 4, 4, 5, 6, 7, 8], True, "together", "fewer"), ([6, 1, 5, 6, 1, 5, 6, 1], True, "hardly", "fewer"),
    ([1, 2, 6, 4, 3, 6, 7, 5], True, "in_part", "fewer"),
])  # fmt: skip
def test_amounts_beside_the_exposure(value, apart, how, side):
    """Three of eight exposed: 56 ways, so that all of them at one end is no accident."""
    made = design(table_of(8, stored_days=np.array(value, float)), covariates=[])
    row = confounding.confounding(made).set_index("factor").loc["stored_days"]
    assert (row["apart"], row["how"], row["hit"]) == (apart, how, [side])
    hit = np.arange(8) < 3
    assert row["explained"] == pytest.approx(np.corrcoef(value, hit)[0, 1] ** 2)


def test_few_ways_to_be_at_one_end_tell_nothing():
    """Two of nine can be at one end in 36 ways, two of ten in 45; 40 are asked for. One exposed batch says nothing."""
    for batches, apart in ((9, True), (10, False)):
        made = design(table_of(batches, exposed=2, stored_days=np.arange(batches, dtype=float)), covariates=[])
        assert confounding.confounding(made).set_index("factor").loc["stored_days", "apart"] == apart
    for exposed in (1, 7):
        made = design(table_of(8, exposed=exposed, stored_days=np.arange(8.0)), covariates=[])
        assert len(confounding.confounding(made)) == 0


def test_the_share_of_a_dose_that_a_group_explains():
    value, level = np.array([1.0, 3, 5, 7]), np.array(["a", "a", "b", "b"])
    assert confounding._between_share(value, level) == pytest.approx(16 / 20)
    assert confounding._between_share(np.ones(4), level) == 0.0
