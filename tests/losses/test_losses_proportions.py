"""Pooled shares, the widened interval, and refusals."""

import math

import numpy as np
import pytest

from hatchkit.losses.proportions import dispersion, interval, pooled
from hatchkit.problems import HatchkitError


def test_parts_of_an_egg_and_arrays_are_allowed():
    low, high = interval(np.array([2.5, 0, 12]), 12)
    assert low.shape == (3,) and low[1] == 0 and high[2] == 1
    assert low[0] < 2.5 / 12 < high[0]


def test_no_eggs_give_a_missing_interval():
    assert all(math.isnan(edge) for edge in interval(0, 0))
    assert math.isnan(pooled([], []).share)


@pytest.mark.parametrize(("count", "total", "method"), [(5, 4, "wilson"), (-1, 4, "wilson"), (1, 4, "wald")])
def test_impossible_counts_and_unknown_methods_are_refused(count, total, method):
    with pytest.raises(HatchkitError):
        interval(count, total, method)


def test_spread_between_batches_widens_the_pooled_interval():
    even, uneven = pooled([5] * 8, [48] * 8), pooled([0, 0, 20, 0, 0, 20, 0, 0], [48] * 8)
    assert even.share == uneven.share
    assert uneven.high - uneven.low > 1.5 * (even.high - even.low)


def test_little_spread_never_makes_it_narrower_than_chance():
    season = pooled([5] * 8, [48] * 8)
    low, high = interval(40, 384)
    assert season.low <= low and season.high >= high


def test_one_batch_is_wilson_and_two_batches_are_not_absurd():
    assert pooled([3], [48])[1:3] == interval(3, 48)
    assert pooled([0, 0], [48, 48]).high < 0.08


def test_spread_cannot_be_seen_when_no_egg_is_lost():
    assert math.isnan(dispersion([0, 0], [12, 12])) and math.isnan(dispersion([1], [12]))
