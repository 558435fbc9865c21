"""Humid air: round trips, arrays, missing values."""

import numpy as np
import pytest
from hypothesis import strategies as st

from hatchkit.climate import air

temps = st.floats(5, 45)
humidities = st.floats(5, 100)


def test_arrays_keep_their_shape_and_missing_stays_missing():
    temp = np.array([[37.5, np.nan], [20.0, 38.0]])
    for function in (air.vapour_pressure, air.rh_from_wet_bulb):
        result = function(temp, 15.0)
        assert result.shape == (2, 2)
        assert np.isnan(result[0, 1]) and np.isfinite(result[[0, 1, 1], [0, 0, 1]]).all()


def test_number_in_number_out():
    for value in (
        air.saturation_pressure(37.5),
        air.vapour_pressure(37.5, 50),
        air.standard_pressure(500),
        air.rh_from_wet_bulb(37.5, 29),
    ):
        assert np.ndim(value) == 0


def test_a_still_wick_read_as_a_ventilated_one_shows_too_much_humidity():
    shown = 29.781  # what a still wick shows at 37.5 degC and 55 %RH
    assert air.rh_from_wet_bulb(37.5, shown, coefficient=air.STILL_WICK) == pytest.approx(55, abs=0.1)
    assert air.rh_from_wet_bulb(37.5, shown) == pytest.approx(56.8, abs=0.1)


def test_a_wet_bulb_reading_must_carry_the_altitude():
    assert air.rh_from_wet_bulb(37.5, 29.0) == pytest.approx(53.2, abs=0.1)
    assert air.rh_from_wet_bulb(37.5, 29.0, air.standard_pressure(2000)) == pytest.approx(55.1, abs=0.1)
