"""What is usual: near the own batches when there are many, the published level when there are none."""

import numpy as np
import pytest
from scipy import special, stats

from hatchkit.usual.gauges import PUBLISHED_BATCHES, usual_of
from hatchkit.usual.stages import LOGITS, log_beta_binomial, usual

#: clear, removed, early, mid, late, pipped, culled of eggs set.
PUBLISHED = np.array([0.10, 0.01, 0.06, 0.025, 0.06, 0.02, 0.025])


def test_one_stage_is_a_beta_binomial_by_scipy():
    # 5 of 20 lost at a mean of 0.2 with a spread of 0.5 log odds: a + b = 1 / (0.25 x 0.16) - 1 = 24.
    place = int(np.argmin(np.abs(LOGITS - np.log(0.2 / 0.8))))
    mean = 1 / (1 + np.exp(-LOGITS[place]))
    told = log_beta_binomial(np.array([5.0]), np.array([20.0]), np.array([0.5]))[0, place, 0]
    size = 1 / (0.25 * mean * (1 - mean)) - 1
    whole = stats.betabinom(20, size * mean, size * (1 - mean)).logpmf(5)
    assert told == pytest.approx(whole - np.log(special.comb(20, 5)))


def test_many_batches_outweigh_the_published_level():
    rows = np.tile([8.0, 1, 6, 2, 8, 3, 2], (60, 1))
    one = usual(rows, np.full(60, 70.0), PUBLISHED)[0]
    assert one.shares == pytest.approx(np.array([70, 8, 1, 6, 2, 8, 3, 2]) / 100, abs=0.012)
    assert one.batches == 59 and one.eggs == 5900


def test_a_lone_batch_is_set_beside_the_published_level():
    one = usual([[5.0, 0, 1, 0, 2, 0, 0]], [30.0], PUBLISHED)[0]
    assert one.batches == 0
    assert one.shares == pytest.approx(np.array([0.70, *PUBLISHED]), abs=0.01)


def test_struck_batches_do_not_become_the_usual():
    good, struck = [6.0, 1, 4, 1, 5, 2, 1], [6.0, 3, 4, 1, 80, 1, 0]
    every = usual([good] * 4 + [struck] * 4, [80.0] * 4 + [5.0] * 4, PUBLISHED)
    assert every[-1].shares[5] < 0.2
    assert every[0].ordinary > 0.88 > every[-1].ordinary


def test_a_batch_is_never_compared_with_itself():
    rng = np.random.default_rng(4)
    rows = rng.multinomial(40, [*PUBLISHED, 1 - PUBLISHED.sum()], size=6).astype(float)
    whole = usual(rows[:, :7], rows[:, 7], PUBLISHED)[2]
    changed = rows.copy()
    changed[2] = [0, 0, 40, 0, 0, 0, 0, 0]
    assert usual(changed[:, :7], changed[:, 7], PUBLISHED)[2].shares == pytest.approx(whole.shares)


def test_batches_that_differ_more_widen_the_spread():
    even = np.tile([4.0, 0, 4, 1, 4, 1, 1], (20, 1))
    uneven = even.copy()
    uneven[::2, 2], uneven[1::2, 2] = 1, 12
    narrow, wide = (usual(rows, np.full(20, 40.0), PUBLISHED)[0].spread[2] for rows in (even, uneven))
    assert wide > narrow + 0.15


def test_what_good_batches_share_becomes_usual_and_poor_ones_do_not_count():
    stored = np.array([14.0, 14, 14, 14, 2])
    told = usual_of(stored, [1, 1, 1, 1, 0], published=0.0, spread=2.0)
    assert told.middle == pytest.approx(4 * 14 / (4 + PUBLISHED_BATCHES)) and told.batches == 4


def test_without_good_batches_the_published_value_stands_in():
    told = usual_of([14.0, np.nan], [0, 1], published=0.5, spread=2.0)
    assert told.middle == 0.5 and told.spread == pytest.approx(2.0) and told.batches == 0
