"""Spread between two and three batches, and the risk where nothing is left alive: worked by hand."""

import math

import numpy as np
import pandas as pd
import pytest

from hatchkit.losses.clears import _spread
from hatchkit.losses.death_age import _hazard
from hatchkit.losses.proportions import dispersion


@pytest.mark.parametrize(
    ("counts", "phi"),
    [
        ([2, 4], 2 / 2.1),  # share 0.3, chance 10 x 0.3 x 0.7 = 2.1, squares 1 + 1, one degree of freedom
        ([1, 3, 5], 8 / 2.1 / 2),  # squares 4 + 0 + 4, two degrees
    ],
)
def test_dispersion_has_one_degree_less_than_batches(counts, phi):
    assert dispersion(counts, [10] * len(counts)) == pytest.approx(phi)


def test_one_batch_has_no_dispersion():
    assert math.isnan(dispersion([3], [10]))


@pytest.mark.parametrize(("clear", "phi"), [([0, 8], 32 / 2.4), ([2, 4], 1.0)])
def test_two_batches_show_a_spread_and_t_with_four_degrees(clear, phi):
    """Share 0.4: chance 2.4, squares 16 + 16. Student's t at 97.5 %, 4 degrees: 2.776 (any table), over 1.960."""
    table = pd.DataFrame({"clear": clear, "opened_dead": 0, "infertile_at_hatch": 0, "set": 10})
    assert _spread(table) == (pytest.approx(phi), pytest.approx(2.776 / 1.960, abs=1e-3))


def test_one_batch_shows_none():
    assert _spread(pd.DataFrame({"clear": [3], "opened_dead": 0, "infertile_at_hatch": 0, "set": 10})) == (1.0, 1.0)


def test_where_no_embryo_is_left_alive_the_risk_is_anything():
    """All dead by day 7: of the stretches after it nothing is known, 0 to 1."""
    edges, ages, mass = np.array([0.0, 7.0, 14.0]), np.array([[0.0, 7.0]]), np.array([[1.0]])
    risk = _hazard(edges, ages, mass, mass, np.array([20.0, 20.0, 20.0]), 1, 0.95)
    assert (risk["band_low"][1], risk["band_high"][1]) == (0.0, 1.0)
    assert risk["band_low"][0] > 0.2 and risk["daily_low"][0] == 1.0
