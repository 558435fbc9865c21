"""Humid air: round trips, arrays, missing values."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from hatchkit.climate import air

temps = st.floats(5, 45)
humidities = st.floats(5, 100)


@given(temps, humidities)
def test_dew_point_gives_back_the_vapour_pressure(temp, rh):
    dew = air.dew_point(temp, rh)
    assert dew <= temp
    assert air.saturation_pressure(dew) == pytest.approx(air.vapour_pressure(temp, rh), rel=1e-9)


@given(temps, humidities, st.floats(60, 105), st.sampled_from([air.VENTILATED_WICK, air.STILL_WICK]))
def test_wet_bulb_and_humidity_are_inverse(temp, rh, pressure, coefficient):
    wet = air.wet_bulb(temp, rh, pressure, coefficient)
    assert air.rh_from_wet_bulb(temp, wet, pressure, coefficient) == pytest.approx(rh, abs=1e-6)


def test_arrays_keep_their_shape_and_missing_stays_missing():
    temp = np.array([[37.5, np.nan], [20.0, 38.0]])
    for function in (air.dew_point, air.wet_bulb):
        result = function(temp, 50.0)
        assert result.shape == (2, 2)
        assert np.isnan(result[0, 1]) and np.isfinite(result[[0, 1, 1], [0, 0, 1]]).all()


def test_number_in_number_out():
    for value in (
        air.saturation_pressure(37.5),
        air.dew_point(37.5, 50),
        air.wet_bulb(37.5, 50),
        air.standard_pressure(500),
        air.rh_from_wet_bulb(37.5, 29),
    ):
        assert np.ndim(value) == 0


def test_dry_air_has_no_dew_point():
    assert np.isnan(air.dew_point(37.5, 0.0))


def test_a_still_wick_read_as_a_ventilated_one_shows_too_much_humidity():
    shown = air.wet_bulb(37.5, 55, coefficient=air.STILL_WICK)
    assert shown - air.wet_bulb(37.5, 55) == pytest.approx(0.39, abs=0.03)
    assert air.rh_from_wet_bulb(37.5, shown) == pytest.approx(56.8, abs=0.1)


def test_a_wet_bulb_reading_must_carry_the_altitude():
    assert air.rh_from_wet_bulb(37.5, 29.0) == pytest.approx(53.2, abs=0.1)
    assert air.rh_from_wet_bulb(37.5, 29.0, air.standard_pressure(2000)) == pytest.approx(55.1, abs=0.1)
