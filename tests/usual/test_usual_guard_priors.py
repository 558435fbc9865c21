"""What is assumed before any batch is seen, as it is stated."""

import math

import pytest

from hatchkit.usual import beta_binomial, stages


def test_two_thirds_of_spreads_lie_between_a_third_and_three_quarters():
    ends = [stages.SPREAD_MIDDLE * math.exp(sign * stages.SPREAD_LOG_SD) for sign in (-1, 1)]
    assert ends == pytest.approx([0.33, 0.75], abs=0.01)


def test_two_thirds_of_correlations_lie_between_two_and_twelve_hundredths():
    ends = [beta_binomial.RHO_MIDDLE * math.exp(sign * beta_binomial.RHO_LOG_SD) for sign in (-1, 1)]
    assert ends == pytest.approx([0.02, 0.12], abs=0.005)
