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


def test_a_sentence_in_the_readers_unit():
    text = "fell 25.0 K over 7 h, at most 14 K per hour, down to 12.5 °C"
    assert units.worded(text) == "fell 25.0 °C over 7 h, at most 14 °C per hour, down to 12.5 °C"
    assert units.worded(text, "F") == "fell 45.0 °F over 7 h, at most 25 °F per hour, down to 54.5 °F"


def test_where_a_source_gives_both_units_the_reader_gets_hers():
    text = "Advice warns of 40.6 °C (105 °F) for 15 minutes; 40.6 °C for 24 h did no harm"
    assert units.worded(text) == text
    assert units.worded(text, "F") == "Advice warns of 105 °F for 15 minutes; 105.1 °F for 24 h did no harm"


def test_a_sentence_without_degrees_stays():
    assert units.worded("humidity rose 5 %RH in 3 Kelder batches", "F") == "humidity rose 5 %RH in 3 Kelder batches"
