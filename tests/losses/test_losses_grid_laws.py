"""What other batches let one expect, and shares over batches: by integrals, score equations and scipy."""

import math

import numpy as np
import pytest
from scipy import special, stats

from hatchkit.losses import predictive, season_chart
from hatchkit.losses.proportions import (
    _wilson,
    dispersion,
    interval,
    pooled,
    t_quantile,
    widened,
)

SPREADS = [0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.95, 1.1, 1.3, 1.55, 1.9, 2.4]
LOGITS = np.arange(-72, 73) / 8


@pytest.mark.parametrize("middle", [-7.0, -2.0, 0.3, 4.0])
def test_two_eggs_of_a_batch_are_as_alike_as_a_normal_spread_of_log_odds_makes_them(middle):
    """Mean and variance of the share by a fine sum over the normal; the beta has the same."""
    normal = np.linspace(-9, 9, 4001)
    weight = stats.norm.pdf(normal) / stats.norm.pdf(normal).sum()
    for place, spread in enumerate(SPREADS[1:], start=1):
        share = special.expit(middle + spread * normal)
        mean = weight @ share
        rho = (weight @ share**2 - mean**2) / (mean * (1 - mean))
        a, b = (shape[0, place] for shape in predictive._shapes(special.logit(mean)))
        assert a / (a + b) == pytest.approx(mean) and a + b == pytest.approx(1 / rho - 1, rel=2e-3)
    a, b = predictive._shapes(middle)
    assert a.shape == (1, 15) and a[0, 0] + b[0, 0] == pytest.approx(1e7 - 1)  # no spread: the binomial


def grid_by_hand():
    """Shapes and prior: Jeffreys' for the share (on log odds), half a normal of sd 0.7 for the spread."""
    a, b = predictive._shapes(LOGITS)
    share, spread = special.expit(LOGITS), np.array(SPREADS)
    width = np.array([0.1, *(spread[2:] - spread[:-2]) / 2, 0.5])
    return a, b, np.sqrt(share * (1 - share))[:, None] * stats.norm.pdf(spread, 0, 0.7) * width


@pytest.mark.parametrize("total", [30, 130])
def test_what_to_expect_is_the_sum_over_the_grid(total):
    counts, totals = [3, 9, 4], [40, 52, 35]
    a, b, weight = grid_by_hand()
    for count, eggs in zip(counts, totals, strict=True):
        weight = weight * stats.betabinom.pmf(count, eggs, a, b)
    weight /= weight.sum()
    found = predictive.weights(predictive.log_likelihoods(counts, totals).sum(axis=0))
    assert found == pytest.approx(weight.ravel(), abs=1e-10)
    want = np.array([(weight * stats.betabinom.pmf(count, total, a, b)).sum() for count in range(total + 1)])
    chance = predictive.distribution(total, found)
    assert len(chance) == total + 1 and chance.sum() == pytest.approx(1)
    # Points of less than a hundred-thousandth of the heaviest are left out for large batches.
    assert chance == pytest.approx(want, abs=1e-9 if total <= 100 else 2e-5)
    of_spread = weight.sum(axis=0)
    a, b = predictive._shapes(math.log(0.12 / 0.88))
    level = [(of_spread * stats.betabinom.pmf(count, total, a[0], b[0])).sum() for count in range(total + 1)]
    assert predictive.distribution(total, found, share=0.12) == pytest.approx(level, abs=2e-5)


def test_points_that_hardly_count_are_left_out_of_large_batches():
    """One point with the weight of 1, another with 2e-5 (kept) or 5e-6 (not) that alone expects every egg."""
    for small, kept in ((2e-5, True), (5e-6, False)):
        weight = np.zeros((145, 15))
        weight[20, 0], weight[144, 0] = 1, small
        chance = predictive.distribution(150, weight.ravel() / weight.sum())
        assert (chance[150] > 1e-9) == kept


@pytest.mark.parametrize("share", [0.0, 1.0])
def test_a_level_of_none_or_all_is_held_a_millionth_inside(share):
    weight = predictive.weights(predictive.log_likelihoods([0], [40])[0])
    chance = predictive.distribution(20, weight, share=share)
    assert chance[0 if share == 0 else -1] == pytest.approx(1, abs=3e-5) and chance.max() < 1


def test_summaries_at_the_ends():
    chance = np.array([0.2, 0.3, 0.5])
    for count, more, fewer in ((0, 1.0, 0.2), (-3, 1.0, 0.2), (1, 0.8, 0.5), (2, 0.5, 1.0), (7, 0.5, 1.0)):
        assert predictive.summary(chance, count)["chance"] == pytest.approx(more)
        assert predictive.summary(chance, count, fewer=True)["chance"] == pytest.approx(fewer)
    assert predictive.summary(chance, 1.4)["chance"] == pytest.approx(0.8)
    assert math.isnan(predictive.count_for(chance, 0.49)) and predictive.count_for(chance, 0.51) == 2
    assert math.isnan(predictive.count_for(chance, 0.19, fewer=True))
    assert predictive.count_for(chance, 0.2, fewer=True) == 0
    assert predictive.count_for(np.array([0.5, 0.25, 0.25]), 0.5) == 1


def test_wilsons_ends_solve_the_score_equation():
    """At each end |found - p| is z standard errors of p itself (Wilson 1927)."""
    for level, z in ((0.95, 1.959964), (0.9, 1.644854)):
        for count, total in ((3, 48), (2.5, 12), (40, 44)):
            for end in interval(count, total, level=level):
                assert abs(count / total - end) == pytest.approx(z * math.sqrt(end * (1 - end) / total), rel=1e-5)
    assert interval(0, 20)[0] == 0.0 and interval(20, 20)[1] == 1.0
    assert interval(0, 20)[1] == pytest.approx(1.959964**2 / (20 + 1.959964**2), rel=1e-5)
    low, high = _wilson(np.array([0.0, 0.0, 5.0]), np.array([np.nan, 5.0, 5.0]), 2.0)
    assert np.isnan([low[0], high[0]]).all() and (low[1], high[2]) == (0, 1)
    assert high[1] == pytest.approx(4 / 9) and low[2] == pytest.approx(5 / 9)


def test_exact_and_jeffreys_ends_are_points_of_beta_distributions():
    for count, total in ((3, 48), (47, 48), (2.5, 12)):
        low, high = interval(count, total, "clopper_pearson", level=0.9)
        assert low == pytest.approx(stats.beta.ppf(0.05, count, total - count + 1))
        assert high == pytest.approx(stats.beta.ppf(0.95, count + 1, total - count))
        ends = stats.beta.ppf([0.05, 0.95], count + 0.5, total - count + 0.5)
        assert interval(count, total, "jeffreys", level=0.9) == pytest.approx(ends)
    for method, half in (("clopper_pearson", 0), ("jeffreys", 0.5)):
        assert interval(0, 9, method) == pytest.approx((0, stats.beta.ppf(0.975, 1 - half, 9 + half)))
        assert interval(9, 9, method) == pytest.approx((stats.beta.ppf(0.025, 9 + half, 1 - half), 1))
        assert np.isnan(interval(0, 0, method)).all()
    for count in (-1e-6, 9.001):
        with pytest.raises(Exception, match="total"):
            interval(count, 9)
    assert interval(9 + 5e-10, 9)[1] == 1.0


#: Two-sided points of Student's t (any table): 95 % with 4, 5 and 9 degrees of freedom, 90 % with 4.
T_TABLE = [(2, 0.95, 2.7764), (5, 0.95, 2.7764), (6, 0.95, 2.5706), (10, 0.95, 2.2622), (3, 0.9, 2.1318)]


@pytest.mark.parametrize(("batches", "level", "t"), T_TABLE)
def test_a_share_over_batches_has_fewer_eggs_and_the_t_table(batches, level, t):
    """40 of 400 with a dispersion of 4 is told like 10 of 100, and never surer than by chance alone."""
    assert t_quantile(batches, level) == pytest.approx(t, abs=1e-4)
    for phi, eggs in ((4.0, 100), (1.0, 400), (0.3, 400), (np.nan, 400)):
        for end in widened(40, 400, phi, batches, level=level):
            assert abs(0.1 - end) == pytest.approx(t * math.sqrt(end * (1 - end) / eggs), rel=1e-4)
    low, high = widened(np.array([40.0, 0]), 400, np.array([4.0, 1.0]), batches, level=level)
    assert (low[0], high[0]) == pytest.approx(widened(40, 400, 4.0, batches, level=level)) and low[1] == 0


def test_dispersion_and_the_pooled_share_by_hand():
    """10 of 40, 20 of 40, none of 0, missing: share 0.375; two gaps of 5 eggs over 40 x 0.375 x 0.625 = 9.375."""
    found = pooled([10, 20, 0, np.nan], [40, 40, 0, 30], level=0.9)
    assert dispersion([10, 20], [40, 40]) == pytest.approx(2 * 25 / 9.375)
    assert found.share == 0.375
    assert (found.low, found.high) == pytest.approx(widened(30, 80, 50 / 9.375, 2, level=0.9))
    one = pooled([10], [40], level=0.9)
    assert (one.low, one.high) == pytest.approx(interval(10, 40, level=0.9)) and math.isnan(dispersion([10], [40]))
    assert dispersion([[10, 20], [40, 40], [0, 0]], [40, 40]) == pytest.approx(
        [50 / 9.375, np.nan, np.nan], nan_ok=True
    )


def test_limits_of_a_season_chart_are_quantiles_of_the_beta_binomial():
    """30 of 240 lost; p' with a spread of 1.5: rho (2.25 - 1) / (n - 1); tails of 0.00135 on either side."""
    eggs, out_of = np.array([5.0, 12, 3, 10]), np.array([40.0, 80, 60, 60])
    for spread, phi in ((1.5, 2.25), (0.7, 1.0), (math.nan, 1.0)):
        low, high, centre = season_chart._quantile_limits(eggs, out_of, spread)
        assert centre == 0.125
        for n, below, above in zip(out_of, low, high, strict=True):
            rho = max((phi - 1) / (n - 1), 1e-7)
            law = stats.betabinom(int(n), 0.125 * (1 / rho - 1), 0.875 * (1 / rho - 1))
            assert [below * n, above * n] == pytest.approx([law.ppf(0.00135), law.ppf(0.99865)])
    assert np.isnan(season_chart._quantile_limits(np.zeros(2), out_of[:2], 1.0)[0]).all()


def test_the_spread_between_neighbours_by_hand():
    """Shares 0.2, 0.4, 0.3 of 100: z -2.182, 2.182, 0; ranges 4.364 and 2.182, median 3.273 / 0.954."""
    assert season_chart.usual_spread([20, 40, 30], [100] * 3) == pytest.approx(0.15 / math.sqrt(0.0021) / 0.954)
    assert math.isnan(season_chart.usual_spread([20], [100])) and math.isnan(season_chart.usual_spread([0, 0], [9, 9]))


def test_a_slide_by_spearman_and_by_every_order():
    """Of 24 orders of four batches 2 rise or fall throughout; ranks beside the order are Spearman's."""
    counts, totals = [2, 9, 7, 20, 11], [40, 60, 40, 80, 30]
    z = [(k - n * 49 / 250) / math.sqrt(n) for k, n in zip(counts, totals, strict=True)]
    assert season_chart.slide_test(counts, totals)[0] == pytest.approx(stats.spearmanr(range(5), z)[0])
    seen, chance = season_chart.slide_test([1, 2, 3, 4], [40] * 4, draws=4000)
    assert seen == pytest.approx(1) and chance == pytest.approx(2 / 24, abs=0.02)
    assert season_chart.slide_test([4, 3, 2, 1], [40] * 4, draws=9) == (pytest.approx(-1), pytest.approx(0.1, abs=0.21))
    assert np.isnan(season_chart.slide_test([1, 2, 3], [40] * 3)).all()
    assert np.isnan(season_chart.slide_test([2] * 4, [40] * 4)).all()
