"""°C inside, °F for the reader."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hatchkit import units
from hatchkit.problems import HatchkitError


@pytest.mark.parametrize(("fahrenheit", "celsius"), [(99.5, 37.5), (100, 37.8), (102, 38.9), (98.5, 36.9), (32, 0)])
def test_the_pairs_printed_in_incubation_charts(fahrenheit, celsius):
    """Pairs as printed in extension charts (Texas A&M B-6092; Penn State 4-H embryology), one decimal."""
    assert units.f_to_c(fahrenheit) == pytest.approx(celsius, abs=0.05)


@given(st.floats(-50, 120))
def test_there_and_back_changes_nothing(temp_c):
    assert units.f_to_c(units.c_to_f(temp_c)) == pytest.approx(temp_c, abs=1e-9)


@given(st.floats(-50, 120), st.floats(-50, 120))
def test_a_step_is_the_difference_of_two_temperatures(one, other):
    assert units.shown_step(one - other, "F") == pytest.approx(
        units.shown(one, "F") - units.shown(other, "F"), abs=1e-9
    )


def test_words_carry_the_unit():
    assert units.temperature(37.5) == "37.5 °C"
    assert units.temperature(37.5, "°f") == "99.5 °F"


def test_another_unit_is_refused_in_plain_words():
    with pytest.raises(HatchkitError, match="C or F"):
        units.temperature(37.5, "K")
