"""How warm was the egg? Air temperature made sluggish, plus the embryo's own heat, with a band.

The egg follows the air with a lag (one time constant) and lies below it early, when evaporation
cools it, and above it late, when the embryo warms it (French 1997, Poult. Sci. 76:124). The lag is
a linear recurrence; as a bidiagonal system of equations it is solved exactly, thousands of readings
in one call, for any mixture of steps.
"""

import numpy as np
import pandas as pd

from hatchkit.climate import egg_heat
from hatchkit.problems import HatchkitError

#: Standard normal deviate of the 90 % point: bands run from the 10 % to the 90 % point.
Z90 = 1.2815515655446004

#: A silence longer than this many time constants tells nothing about the egg: it starts anew.
RESTART_TAUS = 3.0


def egg_temperature(
    time,
    air_c,
    *,
    age_days,
    egg_mass_g,
    air="fan",
    incubation_days=egg_heat.HEN_DAYS,
    damped=False,
    sensor_sd_c=None,
    tau_h=None,
) -> pd.DataFrame:
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
    air_c = np.asarray(air_c, dtype=float)
    age_days = np.broadcast_to(np.asarray(age_days, dtype=float), air_c.shape)
    tau = egg_heat.time_constant(egg_mass_g, air) if tau_h is None else tau_h
    sd = egg_heat.constant("sensor_sd") if sensor_sd_c is None else sensor_sd_c
    rows = estimate(
        _hours(time),
        air_c,
        age_days,
        grams=egg_mass_g,
        air=air,
        incubation_days=incubation_days,
        tau=0.0 if damped else tau,
        sensor_sd=sd,
    )
    return pd.DataFrame(dict(zip(["egg_c", "low_c", "high_c", "lagged_air_c"], rows, strict=True)))


def unseen_share(step_h, tau_h) -> float:
    """Share of an air spike shorter than the step of the log that may reach the egg without being seen.

    1 - exp(-step / tau): with readings half an hour apart a hen's egg in still air may rise by half of
    a spike that fell between two of them.
    """
    return float(1 - np.exp(-step_h / tau_h))


def estimate(hours, air_c, age_days, *, grams, air, incubation_days, tau, sensor_sd):
    """``egg_temperature`` on arrays, with all figures given: rows egg, low, high, lagged air."""
    used = np.isfinite(air_c)
    rows = np.full((4, len(air_c)), np.nan)
    if not used.any():
        return rows
    eggs = _Egg(age_days[used], grams, air, incubation_days)
    rows[:, used] = _with_band(hours[used], air_c[used], eggs, tau, sensor_sd)
    return rows


class _Egg:
    """Heat balance of the usual egg of a weight and age: K above the air from the embryo, and K lost by evaporation."""

    def __init__(self, age_days, grams, air, incubation_days):
        conductance = egg_heat.conductance(grams, air)
        self.made = egg_heat.embryo_heat(age_days, grams, incubation_days) / conductance
        self.lost = egg_heat.evaporation_heat(grams, incubation_days) / conductance
        self.per_k = np.log(egg_heat.constant("heat_q10")) / 10

    def offset_at(self, lagged_c):
        """Balance of the egg above the air, K, when the lagged air is `lagged_c`."""
        felt = np.clip(lagged_c + self.made - self.lost, 15.0, egg_heat.constant("heat_top_c"))
        return self.made * np.exp(self.per_k * (felt - 37.5)) - self.lost


def _with_band(hours, air_c, eggs, tau, sensor_sd):
    """Rows egg, low, high, lagged air for one series without missing values."""
    spread = np.exp(Z90 * egg_heat.constant("tau_spread"))
    taus = [tau, tau / spread, tau * spread] if tau > 0 else [tau]
    (lagged, warming), *others = (respond(hours, air_c, eggs, each, RESTART_TAUS * tau) for each in taus)
    low, high = _band(lagged + warming, warming, [sum(other) for other in others], eggs, sensor_sd)
    return lagged + warming, low, high, lagged


def _band(egg, warming, others, eggs, sensor_sd):
    """10 and 90 % points: doubts of probe, conductance and lag added in quadrature on each side.

    The offset is proportional to 1 / conductance, so its spread needs no filter of its own; a probe
    that reads b too high moves the egg by b and its heat by 7 % per K.
    """
    spread = np.exp(Z90 * egg_heat.constant("k_spread"))
    more, less = np.abs(warming) * (spread - 1), np.abs(warming) * (1 - 1 / spread)
    warm = warming > 0
    by_probe = (Z90 * sensor_sd * (1 + eggs.per_k * (warming + eggs.lost))) ** 2
    up, down = by_probe + np.where(warm, more, less) ** 2, by_probe + np.where(warm, less, more) ** 2
    if others:
        up += np.maximum(np.maximum(*others) - egg, 0) ** 2
        down += np.maximum(egg - np.minimum(*others), 0) ** 2
    return egg - np.sqrt(down), egg + np.sqrt(up)


def respond(hours, air, eggs, tau, restart):
    """The lagged air, and what the embryo adds to it, K; both begin anew after `restart` hours of silence."""
    if tau <= 0:
        return air, eggs.offset_at(air)
    step = np.diff(hours, prepend=-np.inf)
    anew = step > restart
    keep = np.where(anew, 0.0, np.exp(-step / tau))
    before = np.where(anew, air, np.roll(air, 1))
    lagged = _recurrence(keep, (1 - keep) * (air + before) / 2)
    # Heat over a step is that at its start; at a start anew, that of the reading itself.
    felt = np.where(anew, lagged, np.roll(lagged, 1))
    return lagged, _recurrence(keep, (1 - keep) * eggs.offset_at(felt))


def _recurrence(keep, gain):
    """y[i] = keep[i] y[i-1] + gain[i]: a triangular system with two diagonals, solved by BLAS."""
    from scipy.linalg.blas import dtbsv

    diagonals = np.zeros((2, len(keep)), order="F")  # its first row, all ones, is not read
    diagonals[1, :-1] = -keep[1:]
    return dtbsv(1, diagonals, gain, lower=1, diag=1)


def _hours(time):
    """Hours from the first time; HatchkitError if they do not rise."""
    if pd.api.types.is_numeric_dtype(pd.Index(time)):
        hours = np.asarray(time, dtype=float)
    else:
        stamps = pd.DatetimeIndex(time)
        hours = ((stamps - stamps[0]) / pd.Timedelta(hours=1)).to_numpy() if len(stamps) else np.empty(0)
    if (np.diff(hours) < 0).any():
        raise HatchkitError("readings_in_disorder", {})
    return hours
