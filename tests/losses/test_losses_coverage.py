"""Intervals hold the truth as often as they promise; ordinary batches are seldom called unusual.

The full table is printed by ``tests/benchmarks/losses_coverage.py``.
"""

import numpy as np
import pytest
from coverage_trials import RATES, false_flags, one_batch, season_coverage


@pytest.mark.parametrize("eggs", [12, 24, 48, 300])
def test_one_batch_covers_93_to_98_percent_over_the_rates(eggs):
    _, cover = one_batch(eggs)
    assert 0.93 <= cover.mean() <= 0.98
    # Small counts make the coverage jump; the worst rate is shown by the benchmark and stays above this.
    assert cover.min() > 0.85


def test_the_exact_interval_never_covers_less_than_it_promises():
    assert min(one_batch(eggs, "clopper_pearson")[1].min() for eggs in (12, 24, 48)) >= 0.95


@pytest.mark.parametrize("sd", [0.0, 0.4, 0.8])
@pytest.mark.parametrize(("batches", "eggs"), [(6, 12), (6, 300), (12, 48), (60, 300)])
def test_season_intervals_carry_the_spread_between_batches(batches, eggs, sd):
    random = np.random.default_rng(3)
    cover = [season_coverage(random, rate=rate, sd=sd, batches=batches, eggs=eggs, trials=2000) for rate in RATES]
    # 6 x 2000 trials: standard error of the mean about 0.2 points.
    assert np.mean(cover) >= 0.93
    assert min(cover) >= 0.90


def test_an_interval_without_the_spread_would_not_hold():
    from coverage_trials import draw_counts

    from hatchkit.losses.proportions import interval

    counts = draw_counts(np.random.default_rng(3), rate=0.1, sd=0.8, batches=12, eggs=300, trials=1000).sum(axis=1)
    low, high = interval(counts, 3600)
    assert np.mean((low <= 0.1) & (0.1 <= high)) < 0.5


@pytest.mark.parametrize(
    ("batches", "eggs", "rate", "sd"), [(6, 48, 0.08, 0.4), (6, 48, 0.2, 0.8), (12, 24, 0.2, 0.8), (12, 48, 0.02, 0.4)]
)
def test_with_nothing_wrong_few_batches_are_called_unusual(batches, eggs, rate, sd):
    flagged, _, small = false_flags(np.random.default_rng(6), rate=rate, sd=sd, batches=batches, eggs=eggs, trials=100)
    assert flagged <= 0.05
    assert small <= 0.10
