"""What each window weighs, and fits of seasons in which nothing died: worked by hand."""

from types import SimpleNamespace

import numpy as np
import pytest

from hatchkit.relate.cloglog import fit_many
from hatchkit.relate.hazard import window_weights


def test_a_window_weighs_as_the_root_of_what_it_tells():
    """10 x 0.1 / (1 + 9/2) = 0.1818 and 20 x 0.2 / (1 + 19/2) = 0.3810; root of their ratio 0.6908."""
    design = SimpleNamespace(at_risk=np.array([10.0, 20.0]), cell=np.array([0, 1]))
    weights = window_weights(design, np.array([0.1, 0.2]), 0.5)
    assert weights == pytest.approx([0.69085, 1.0], abs=1e-5)


def test_a_season_without_a_death_is_fitted_and_its_risk_is_next_to_nothing():
    died = np.array([[0.0, 0.0], [5.0, 5.0]])
    _, _, share = fit_many(died, [20.0, 20.0], np.ones((2, 1)), ridge=1e-3)
    assert np.isfinite(share).all() and share[0].max() < 0.01
    assert share[1] == pytest.approx([0.25, 0.25], abs=1e-3)
