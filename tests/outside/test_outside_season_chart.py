"""Chart limits against a textbook example: 30 samples of 50 orange juice cans.

Data: Montgomery, Introduction to Statistical Quality Control (data set orangejuice of R package qcc).
"""

import numpy as np
import pytest

from hatchkit.losses.season_chart import p_limits, sigma_z

CANS = [12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6]


def test_p_chart_limits_and_the_two_samples_outside():
    limits = p_limits(CANS, [50] * 30)
    assert (limits.centre, limits.high[0], limits.low[0]) == pytest.approx((0.2313333, 0.4102391, 0.0524276), abs=1e-6)
    share = np.array(CANS) / 50
    assert (np.flatnonzero((share > limits.high) | (share < limits.low)) + 1).tolist() == [15, 23]


def test_after_removing_them_sample_21_lies_outside():
    rest = [cans for number, cans in enumerate(CANS, start=1) if number not in (15, 23)]
    limits = p_limits(rest, [50] * 28)
    assert (limits.centre, limits.high[0], limits.low[0]) == pytest.approx((0.215, 0.3892972, 0.0407028), abs=1e-6)
    assert 20 / 50 > limits.high[0]


def test_p_prime_spread_and_limit():
    # Formula: Laney 2002; moving range of z scores over 1.128.
    spread = sigma_z(CANS, [50] * 30)
    assert spread == pytest.approx(1.6608667, abs=1e-6)
    assert p_limits(CANS, [50] * 30, sigma_z=spread).high[0] == pytest.approx(0.5284720, abs=1e-6)
