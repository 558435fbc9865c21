"""How much water the air holds: saturation pressure, dew point, wet bulb, and pressure at an altitude.

All functions work on numbers or arrays and return numpy values; missing in, missing out. Valid from
0 to 100 degC over water, which covers every incubator, bench and egg store.
"""

import numpy as np

#: One torr in kPa; egg physiologists publish shell conductance per torr.
TORR_KPA = 0.1333224

#: Psychrometer coefficients per K. Ventilated: WMO-No. 8 (from memory; Sprung's classical value is 6.62e-4).
#: Still: a wick without a fan, FAO Irrigation and Drainage Paper 56 (from memory).
VENTILATED_WICK = 6.53e-4
STILL_WICK = 8.0e-4


def saturation_pressure(temp_c):
    """Pressure of water vapour in air that can hold no more, over liquid water.

    Parameters
    ----------
    temp_c : float or array
        Temperature, degC, 0 to 100.

    Returns
    -------
    float or array
        kPa. Within 0.03 % of the steam tables between 10 and 45 degC.

    Notes
    -----
    Hyland & Wexler 1983, the form printed in the ASHRAE Handbook of Fundamentals, chapter 1.
    """
    kelvin = np.asarray(temp_c, dtype=float) + 273.15
    log_pa = (
        -5.8002206e3 / kelvin
        + 1.3914993
        - 4.8640239e-2 * kelvin
        + 4.1764768e-5 * kelvin**2
        - 1.4452093e-8 * kelvin**3
        + 6.5459673 * np.log(kelvin)
    )
    return np.exp(log_pa)[()] / 1000


def vapour_pressure(temp_c, rh_pct):
    """Pressure of the water vapour in the air, kPa, from temperature (degC) and humidity (%RH)."""
    return saturation_pressure(temp_c) * np.asarray(rh_pct, dtype=float) / 100


def rh_from_wet_bulb(dry_c, wet_c, pressure_kpa=101.325, coefficient=VENTILATED_WICK):
    """Relative humidity from a dry and a wet thermometer.

    Parameters
    ----------
    dry_c, wet_c : float or array
        The two readings, degC.
    pressure_kpa : float or array
        Air pressure where the incubator stands (``standard_pressure`` of the altitude).
    coefficient : float
        Psychrometer coefficient per K: `VENTILATED_WICK` (air moving over the wick at 3 m/s or more)
        or `STILL_WICK`. A still wick taken for a ventilated one reads about 1.8 %RH too high at
        37.5 degC and 55 %RH.

    Returns
    -------
    float or array
        %RH. Below 0 or above 100 means that the readings cannot both be right.

    Notes
    -----
    WMO-No. 8, annex 4.B: e = es(wet) - A (1 + 0.000944 wet) P (dry - wet).
    """
    dry_c, wet_c = np.asarray(dry_c, dtype=float), np.asarray(wet_c, dtype=float)
    vapour = saturation_pressure(wet_c) - coefficient * (1 + 9.44e-4 * wet_c) * pressure_kpa * (dry_c - wet_c)
    return (100 * vapour / saturation_pressure(dry_c))[()]


def standard_pressure(altitude_m):
    """Air pressure, kPa, at an altitude in metres above the sea in the standard atmosphere.

    101.325 (1 - 2.25577e-5 z)^5.2559: ASHRAE Handbook of Fundamentals, chapter 1. Weather moves it
    by 2 or 3 %.
    """
    return (101.325 * (1 - 2.25577e-5 * np.asarray(altitude_m, dtype=float)) ** 5.2559)[()]
