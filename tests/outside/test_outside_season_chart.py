"""Chart limits against a textbook example: 30 samples of 50 orange juice cans.

Data: Montgomery, Introduction to Statistical Quality Control (data set orangejuice of R package qcc).
"""

import numpy as np
import pytest

from hatchkit.losses.season_chart import _quantile_limits, usual_spread

CANS = [12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6]


def limits_of(cans, spread=1.0):
    """Limits of samples of 50 in which nothing but chance is at work, and their centre."""
    low, high, centre = _quantile_limits(np.array(cans), np.full(len(cans), 50.0), spread)
    return low[0], high[0], centre


def test_p_chart_limits_and_the_two_samples_outside():
    low, high, centre = limits_of(CANS)
    assert centre == pytest.approx(0.2313333, abs=1e-6)
    assert (high, low) == pytest.approx((0.4102391, 0.0524276), abs=0.03)  # quantiles of whole cans, not 3 sigma
    share = np.array(CANS) / 50
    assert (np.flatnonzero((share > high) | (share < low)) + 1).tolist() == [15, 23]


def test_after_removing_them_the_limits_come_nearer():
    rest = [cans for number, cans in enumerate(CANS, start=1) if number not in (15, 23)]
    low, high, centre = limits_of(rest)
    assert centre == pytest.approx(0.215, abs=1e-6)
    assert (high, low) == pytest.approx((0.3892972, 0.0407028), abs=0.03)


def test_p_prime_spread_and_limit():
    # Laney 2002 with the mean moving range over 1.128: 1.6608667, upper limit 0.5284720; here with the median range.
    assert usual_spread(CANS, [50] * 30) == pytest.approx(1.6608667, rel=0.15)
    assert limits_of(CANS, 1.6608667)[1] == pytest.approx(0.5284720, abs=0.06)
