"""What is usual, worked out again by scipy's distributions over the grid, with the stated priors."""

import numpy as np
import pytest
from scipy import stats

from hatchkit.usual import beta_binomial as chicks
from hatchkit.usual.gauges import usual_of
from hatchkit.usual.stages import usual


def likes(lost, there, mean, tau):
    """Chance of each count where shares have this mean and a variance of (tau m (1 - m))^2; a + b at least 0.1."""
    size = np.maximum(mean * (1 - mean) / (tau * mean * (1 - mean)) ** 2 - 1, 0.1)
    return [stats.betabinom.pmf(k, n, mean * size, (1 - mean) * size) for k, n in zip(lost, there, strict=True)]


def stage_by_sums(lost, there, level, sd):
    """One stage of `usual` for the first batch by the others: middle, spread, rho, ordinary."""
    logit, tau = np.meshgrid(-6.5 + 0.15 * np.arange(61), [0.2, 0.3, 0.4, 0.5, 0.65, 0.8, 1.0, 1.25])
    mean = 1 / (1 + np.exp(-logit))
    ordinary, struck = likes(lost, there, mean, tau), likes(lost, there, mean, 2.0)
    mixed = [0.85 * one + 0.15 * other for one, other in zip(ordinary, struck, strict=True)]
    weight = stats.norm.pdf(logit, np.log(level / (1 - level)), sd) * stats.norm.pdf(np.log(tau), np.log(0.5), 0.4)
    weight = weight * np.prod(mixed[1:], axis=0)
    weight /= weight.sum()
    middle, square, tau2, rho, own = (
        (weight * value).sum()
        for value in (logit, logit**2, tau**2, mean * (1 - mean) * tau**2, 0.85 * ordinary[0] / mixed[0])
    )
    return middle, np.sqrt(tau2 + square - middle**2), min(rho, 0.5), own


@pytest.mark.parametrize("sd", [0.7, 0.3])
def test_what_is_usual_is_the_sum_over_the_grid(sd):
    """Three batches, two stages; good chicks 20, 30 and 9 of 27, 34 and 22 eggs; half a weight of an odd batch."""
    lost, rest = np.array([[2, 5], [1, 3], [3, 10]]), np.array([20, 30, 9])
    published = np.array([0.10, 0.18])
    found = usual(lost, rest, published, level_sd=sd)[0]
    first = stage_by_sums([2, 1, 3], [27, 34, 22], 0.10, sd)
    second = stage_by_sums([5, 3, 10], [25, 33, 19], 0.18 / 0.90, sd)  # of those that the first stage left
    rate = stage_by_sums(rest, [27, 34, 22], 0.72, sd)
    assert found.logits == pytest.approx([first[0], second[0]], rel=1e-9)
    assert found.spread == pytest.approx([first[1], second[1]], rel=1e-9)
    assert found.rho == pytest.approx(rate[2], rel=1e-9)
    assert found.ordinary == pytest.approx((first[3] + second[3]) / 2, rel=1e-9)
    one, two = 1 / (1 + np.exp(-found.logits))
    assert found.shares == pytest.approx([(1 - one) * (1 - two), one, (1 - one) * two], rel=1e-9)
    assert (found.batches, found.eggs) == (2, 56)


def test_the_published_level_is_taken_as_wide_as_stated():
    bare = usual([[2, 5], [1, 3]], [20, 30], [0.10, 0.18])
    told = usual([[2, 5], [1, 3]], [20, 30], [0.10, 0.18], level_sd=0.7)
    assert bare[0].logits == pytest.approx(told[0].logits, rel=1e-12)


#: Grid of the plan, written out.
MEANS = 0.005 + 0.01 * np.arange(100)
ALIKE = np.array([1, 3, 6, 10, 15, 22, 30, 40, 55, 75, 100, 130, 170, 220, 300, 400, 500]) / 1000
MEAN, RHO = np.meshgrid(MEANS, ALIKE, indexing="ij")
A, B = MEAN * (1 / RHO - 1), (1 - MEAN) * (1 / RHO - 1)


def learned_by_scipy(counts, totals, level, sd, weights):
    """Prior of the mean: the beta with mean `level` and this sd; of rho: normal on the log about 0.05 by 0.9."""
    size = level * (1 - level) / sd**2 - 1
    out = stats.beta.pdf(MEAN, level * size, (1 - level) * size) * stats.norm.pdf(np.log(RHO), np.log(0.05), 0.9)
    for count, total, weight in zip(counts, totals, weights, strict=True):
        out *= stats.betabinom.pmf(count, total, A, B) ** weight
    return out / out.sum()


def test_own_batches_are_learned_from_as_scipy_does():
    found = chicks.learn([20, 9], [27, 22], 0.7, 0.15, [1.0, 0.4])
    by_hand = learned_by_scipy([20, 9], [27, 22], 0.7, 0.15, [1.0, 0.4])
    assert found == pytest.approx(by_hand, rel=1e-7, abs=1e-15)
    assert chicks.learn([20], [27], 0.7, 0.15) == pytest.approx(learned_by_scipy([20], [27], 0.7, 0.15, [1]), abs=1e-12)
    mean, low, high, rho = chicks.summary(found)
    running = np.cumsum(by_hand.sum(axis=1))
    assert mean == pytest.approx(by_hand.sum(axis=1) @ MEANS) and rho == pytest.approx(by_hand.sum(axis=0) @ ALIKE)
    ends = [next(m for m, below in zip(MEANS, running, strict=True) if below >= share) for share in (0.05, 0.95)]
    assert [low, high] == pytest.approx(ends)


def test_a_future_set_is_the_mean_of_beta_binomials():
    weight = chicks.learn([20, 9], [27, 22], 0.7, 0.15)
    whole = np.array([(weight * stats.betabinom.pmf(count, 12, A, B)).sum() for count in range(13)])
    found = chicks.predicted(weight, 12)
    # Grid points of less than a millionth are left out, 2e-5 of the whole here.
    assert len(found) == 13 and found.sum() == pytest.approx(1) and found == pytest.approx(whole, abs=3e-5)
    assert chicks.chance_learned(weight, 7, 12) == pytest.approx(found[7:].sum(), abs=1e-9)
    running = np.cumsum(found)
    for cover in (0.8, 0.5):
        ends = [int((running < share).sum()) for share in ((1 - cover) / 2, 0.5, (1 + cover) / 2)]
        assert list(chicks.range_of_chicks(weight, 12, cover=cover)) == ends
    assert chicks.range_of_chicks(weight, 12) == chicks.range_of_chicks(weight, 12, cover=0.8)


def test_unlikely_grid_points_are_left_out_below_a_millionth():
    """All weight on a mean of 0.505 but for one thousandth, a hundred-thousandth (kept) or a ten-millionth (not)."""
    for small, kept in ((1e-3, True), (1e-5, True), (1e-7, False)):
        weight, only = np.zeros((100, 17)), np.zeros((100, 17))
        weight[50, 5], weight[99, 5], only[50, 5] = 1 - small, small, 1
        assert (chicks.chance_learned(weight, 40, 40) > chicks.chance_learned(only, 40, 40) * (1 + 1e-9)) == kept
        assert (chicks.predicted(weight, 40)[40] > chicks.predicted(only, 40)[40] * (1 + 1e-9)) == kept


def test_the_fewest_eggs_are_found_on_both_sides_of_every_doubling():
    """A chance that reaches its mark with n eggs exactly: n comes back, and none beyond 5,000."""
    for needed in (1, 2, 3, 7, 8, 9, 4999, 5000):
        for wanted in (1, 2, needed):
            if wanted <= needed:
                assert chicks._fewest(lambda eggs, n=needed: float(eggs >= n), wanted, 0.9) == needed
    assert chicks._fewest(lambda eggs: float(eggs >= 5001), 3, 0.9) is None
    assert chicks._fewest(lambda eggs: 1.0, 5001, 0.9) is None
    asked = []
    assert chicks._fewest(lambda eggs: asked.append(eggs) or float(eggs >= 6), 4, 0.9) == 6
    assert min(asked) >= 4 and max(asked) == 8
    # Rounding must not cost an egg, a real lack does.
    assert chicks._fewest(lambda eggs: 0.9 - (5e-13 if eggs >= 6 else 1e-11), 4, 0.9) == 6


def test_a_level_that_cannot_have_its_spread_is_refused():
    """A share of 1/2 has a spread below 1/2: at 0.5 exactly there is no beta."""
    with pytest.raises(ValueError, match="spread"):
        chicks.learn([], [], 0.5, 0.5)
    assert chicks.learn([], [], 0.5, 0.49).sum() == pytest.approx(1)


def test_a_gauge_by_hand():
    """Published 1 as a quarter of a batch, values 3 and 5 of weight 1 and 0.5: middle (0.25 + 3 + 2.5) / 1.75 = 23/7.

    Around it: 1 x (2/7)^2 + 0.5 x (12/7)^2 = 76/49; with three parts of the stated spread of 2:
    (3 x 4 + 76/49) / 4.5. A weight of just one half is not a good batch.
    """
    found = usual_of([3.0, 5.0, 100.0, np.nan], [1.0, 0.5, 0.0, 1.0], published=1.0, spread=2.0)
    assert found.middle == pytest.approx(23 / 7)
    assert found.spread == pytest.approx(np.sqrt((12 + 76 / 49) / 4.5))
    assert found.batches == 1
    assert usual_of([3.0], [0.6], published=1.0, spread=2.0).batches == 1
