"""How warm was the egg? Air temperature made sluggish, plus the embryo's own heat, with a band.

The egg follows the air with a lag (one time constant) and lies below it early, when evaporation
cools it, and above it late, when the embryo warms it (French 1997, Poult. Sci. 76:124). The lag is
one linear recurrence; as a bidiagonal system of equations it is solved in one call, exactly, for
any mixture of steps.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.climate import egg_heat
from hatchkit.problems import HatchkitError

#: Standard normal deviate of the 90 % point: bands run from the 10 % to the 90 % point.
Z90 = 1.2815515655446004

#: A silence longer than this many time constants tells nothing about the egg: it starts anew.
RESTART_TAUS = 3.0


def egg_temperature(time, air_c, *, age_days, egg_mass_g, air="fan", incubation_days=egg_heat.HEN_DAYS,
                    damped=False, sensor_sd_c=None, tau_h=None) -> pd.DataFrame:
    """Estimated temperature of a living egg, with a 10-90 % band.

    Parameters
    ----------
    time : array of datetimes, or of hours
        When the air was read; rising; any steps.
    air_c : array
        Air temperature at the eggs, degC; missing where it is not known.
    age_days : array
        Days since setting at each reading.
    egg_mass_g : float
        Weight of one egg at setting.
    air : {"fan", "still", "weak fan", "strong fan"}
        How the air moves; "fan" is a weak fan, about 0.3 m/s. In still air give the air at the
        height of the eggs' middle (``batch_track`` takes off the difference to their top).
    incubation_days : float
        Of the species; stretches the hen's heat curve.
    damped : bool
        The probe already lags like an egg (in gel, water or a dummy egg): no second lag.
    sensor_sd_c : float, optional
        Standard deviation of the probe's error; default: an unchecked probe, 0.3.
    tau_h : float, optional
        Time constant in hours instead of the one from weight and air.

    Returns
    -------
    DataFrame
        egg_c, low_c, high_c, lagged_air_c (the air with the lag alone, which the development clock
        runs on); missing where `air_c` is missing.

    Raises
    ------
    HatchkitError
        If times do not rise.

    Notes
    -----
    Between readings the air is taken as their mean, and the update is exact for that. Heat grows
    with Q10 = 2 of the lagged air plus the embryo's usual offset, and is held above 41.5 degC.
    After a silence of more than 3 time constants the egg starts anew at its balance with the air;
    what it felt meanwhile is not known. The band adds the three uncertainties (probe, conductance,
    lag) in quadrature, each side by itself; 200 random draws give the same within 0.05 K.
    Confidence: medium. An embryo of days 1 to 5 lies under the shell and follows the air faster
    than the whole egg (8 K in 10 minutes, Am J Physiol 234:R183, 1978).
    """
    hours, air_c = _hours(time), np.asarray(air_c, dtype=float)
    age_days = np.broadcast_to(np.asarray(age_days, dtype=float), air_c.shape)
    used = np.isfinite(air_c)
    result = np.full((4, len(air_c)), np.nan)
    if used.any():
        tau = egg_heat.time_constant(egg_mass_g, air) if tau_h is None else tau_h
        sd = egg_heat.constant("sensor_sd") if sensor_sd_c is None else sensor_sd_c
        eggs = _Egg(egg_heat.embryo_heat(age_days[used], egg_mass_g, incubation_days),
                    egg_heat.evaporation_heat(egg_mass_g, incubation_days),
                    egg_heat.conductance(egg_mass_g, air))
        result[:, used] = _with_band(hours[used], air_c[used], eggs, 0.0 if damped else tau, sd)
    return pd.DataFrame(dict(zip(["egg_c", "low_c", "high_c", "lagged_air_c"], result, strict=True)))


class _Egg:
    """Heat balance of one kind of egg: mW made and lost, and mW per K that the air carries off."""

    def __init__(self, heat, evaporation, conductance):
        self.heat, self.evaporation, self.conductance = heat, evaporation, conductance
        self.offset = (heat - evaporation) / conductance

    def offset_at(self, lagged_c):
        """Balance of the egg above the air, K, when the lagged air is `lagged_c`."""
        felt = np.clip(lagged_c + self.offset, 15.0, egg_heat.constant("heat_top_c"))
        warmth = np.exp((felt - 37.5) * (np.log(egg_heat.constant("heat_q10")) / 10))
        return (self.heat * warmth - self.evaporation) / self.conductance


def _with_band(hours, air_c, eggs, tau, sensor_sd):
    """Rows egg, low, high, lagged air for one series without missing values."""
    lagged, warming = _respond(hours, air_c, eggs, tau)
    egg = lagged + warming
    if tau > 0:
        factor = np.exp(Z90 * egg_heat.constant("tau_spread"))
        other = [np.add(*_respond(hours, air_c, eggs, tau * f, restart=RESTART_TAUS * tau))
                 for f in (1 / factor, factor)]
    else:
        other = [egg, egg]
    # The offset is proportional to 1 / conductance, so its spread needs no further filter; a probe
    # that reads b too high moves the egg by b and its heat by 7 % per K.
    spread = np.exp(Z90 * egg_heat.constant("k_spread"))
    by_k = np.abs(warming) * (spread - 1), np.abs(warming) * (1 - 1 / spread)
    up_k, down_k = np.where(warming > 0, by_k, by_k[::-1])
    by_probe = Z90 * sensor_sd * (1 + 0.0693 * (warming + eggs.evaporation / eggs.conductance))
    up_tau = np.maximum(np.maximum(*other) - egg, 0)
    down_tau = np.maximum(egg - np.minimum(*other), 0)
    low = egg - np.sqrt(by_probe**2 + down_k**2 + down_tau**2)
    high = egg + np.sqrt(by_probe**2 + up_k**2 + up_tau**2)
    return egg, low, high, lagged


def _respond(hours, air_c, eggs, tau, restart=None):
    """Lagged air, and what the embryo adds to it, K."""
    step = np.diff(hours)
    if tau <= 0:
        return air_c, eggs.offset_at(air_c)
    keep = np.zeros(len(hours))
    keep[1:] = np.exp(-step / tau)
    keep[1:][step > (RESTART_TAUS * tau if restart is None else restart)] = 0.0
    toward = air_c.copy()
    toward[1:] = np.where(keep[1:] > 0, (air_c[1:] + air_c[:-1]) / 2, air_c[1:])
    lagged = _recur(keep, (1 - keep) * toward)
    # Heat over a step is that at its start; at a start anew, that of the reading itself.
    before = np.where(keep > 0, np.roll(lagged, 1), lagged)
    return lagged, _recur(keep, (1 - keep) * eggs.offset_at(before))


def _recur(keep, gain):
    """y[i] = keep[i] y[i-1] + gain[i]: a triangular system with two diagonals, solved by BLAS."""
    from scipy.linalg.blas import dtbsv

    diagonals = np.zeros((2, len(keep)), order="F")
    diagonals[1, :-1] = -keep[1:]
    return dtbsv(1, diagonals, gain, lower=1, diag=1, overwrite_x=1)


def _hours(time):
    """Hours from the first time; HatchkitError if they do not rise."""
    if pd.api.types.is_numeric_dtype(pd.Index(time)):
        hours = np.asarray(time, dtype=float)
    else:
        stamps = pd.DatetimeIndex(time)
        hours = ((stamps - stamps[0]) / pd.Timedelta(hours=1)).to_numpy() if len(stamps) else np.empty(0)
    if (np.diff(hours) < 0).any():
        raise HatchkitError("Readings must be in the order of time before the egg's temperature is worked out.")
    return hours
