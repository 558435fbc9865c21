"""The interval, the one-sided floor and the weights of the effect, on seasons whose answer can be written down.

With the same eggs and windows of one day in all batches of a group the fit is the share p of the group, its log hazard
is log(-log(1 - p)), and the variance of that is p / (n (1 - p) lambda^2) from n eggs (delta method).
"""

import numpy as np
import pandas as pd
import pytest

from hatchkit.relate.design import design
from hatchkit.relate.effect import effect, spread_moment
from hatchkit.relate.permutation import intra_batch_correlation

#: Student's t with 10 degrees of freedom, 95 % and 97.5 % points: any table, such as Fisher & Yates 1938, Table III.
T10_95, T10_975 = 1.812, 2.228


def season(unexposed, exposed, eggs):
    """One window of a day; the dead of each batch."""
    died = [*unexposed, *exposed]
    return design(pd.DataFrame({"batch": [f"b{n}" for n in range(len(died))], "window": 1, "days": 1.0, "at_risk": eggs,
                                "died": died, "dose": [0.0] * len(unexposed) + [1.0] * len(exposed)}))  # fmt: skip


def test_floor_and_interval_of_two_even_groups_are_those_of_the_t_table():
    """30 of 300 against 90 of 300: hazards 0.10536 and 0.35667, ratio 3.385, and no spread between batches.

    Variances 0.1 / (300 x 0.9 x 0.011101) = 0.03336 and 0.3 / (300 x 0.7 x 0.12722) = 0.01123, so the error is 0.2112,
    with 12 batches less 2 terms = 10 degrees of freedom.
    """
    found = effect(season([5] * 6, [15] * 6, 50))
    error = np.sqrt(0.03336 + 0.01123)
    assert found["freedom"] == 10 and found["error"] == pytest.approx(error, abs=1e-4)
    assert found["hazard_ratio"] == pytest.approx(3.385, abs=0.001)
    assert found["floor"] == pytest.approx(3.385 * np.exp(-T10_95 * error), abs=0.003)  # 2.309; at 97.5 % 2.115
    assert found["low"] == pytest.approx(3.385 * np.exp(-T10_975 * error), abs=0.003)
    assert found["high"] == pytest.approx(3.385 * np.exp(T10_975 * error), abs=0.01)


def test_floor_of_the_small_model_lies_at_five_percent_and_the_low_end_at_two_and_a_half():
    """Of a normal posterior the floor lies 1.645 and the low end 1.960 deviations below the middle: a ratio of 0.84.

    The spread between batches gives it tails like those of t with 4 to 10 degrees of freedom: 2.132 / 2.776 = 0.77 to
    1.812 / 2.228 = 0.81 (t table). A floor at the low end would give 1, one at 10 % at most 0.65.
    """
    found = effect(season([5] * 3, [15] * 2, 50), draws=4000)
    assert found["method"] == "small Bayesian model"
    below = np.log([found["floor"], found["low"]]) - found["log_ratio"]
    assert 0.75 < below[0] / below[1] < 0.85


def test_williams_weights_and_spread_of_twelve_batches_by_hand():
    """Ten eggs a batch, p = 0.2 and 0.5. Squared gaps 32 and 0, so X2 = 32 / 1.6 = 20 with 10 degrees of freedom.

    X2 / (1 + (n - 1) k p / (1 - p)) = 10 gives 1 + 9 k / 4 = 2, so k = 4/9. Weights 1 / (1 + 9 x 4/9 x 0.25) = 1/2 and
    1 / (1 + 9 x 4/9 x 1) = 1/5 leave phi = 1. Variances: 0.25 / (60 x 1/2 x 0.22314^2) = 0.16736 and
    1 / (60 x 1/5 x 0.69315^2) = 0.17345. With n for n - 1 in the weight they would be 0.177 and 0.189.
    """
    found = effect(season([6, 0, 0, 4, 0, 2], [5] * 6, 10))
    assert found["spread"] == pytest.approx(np.sqrt(np.log(1 + 4 / 9)), abs=1e-6)
    assert found["phi"] == pytest.approx(1.0, abs=1e-6)
    assert found["error"] == pytest.approx(np.sqrt(0.16736 + 0.17345), abs=1e-4)
    assert found["hazard_ratio"] == pytest.approx(0.69315 / 0.22314, abs=1e-3)
    assert found["floor"] == pytest.approx(0.69315 / 0.22314 * np.exp(-T10_95 * 0.58379), abs=2e-3)


def test_the_spread_counts_pairs_of_eggs_n_less_one_for_each_egg():
    """0 and 4 dead of 10 at p = 0.2: X2 = 4 / 1.6 + 4 / 1.6 = 5; 5 / (1 + 9 k / 4) = 1 gives k = 16/9."""
    died, eggs, share = np.array([0.0, 4.0]), np.array([10.0, 10.0]), np.array([0.2, 0.2])
    assert spread_moment(died, eggs, share, 1) == pytest.approx(16 / 9)
    # rho = (X2 - df) / sum (n - 1) = (5 - 1) / 18, first step of Williams 1982 (Appl Stat 31:144, from memory)
    assert intra_batch_correlation(died, eggs, share, 1) == pytest.approx(4 / 18)


def test_a_single_egg_has_no_pairs_and_keeps_its_whole_weight():
    """Batches of one egg cannot spread beyond the binomial: k is found from the others alone."""
    died, eggs = np.array([0.0, 4.0, 0.0]), np.array([10.0, 10.0, 1.0])
    # X2 = 5 / (1 + 9 k / 4) + 0.2 / 0.8 = 1.25 at k = 16/9
    assert spread_moment(died, eggs, np.full(3, 0.2), 1.25) == pytest.approx(16 / 9)
