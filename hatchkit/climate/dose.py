"""How much heat and cold: doses over a stretch of time, each with the share of the time that was logged."""

from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.climate.egg_heat import constant
from hatchkit.climate.machine_air import position

#: Of the dose that halved the hatch at that age: under the first "low", over the second "high".
BAND_SHARES = (0.2, 0.7)
HEAT_BANDS = ("none", "low", "watch", "high")

#: Span over which heat is added up. Over longer times embryos adapt and repair (Aust. J. Agric. Res. 28:551, 1977).
ROLLING_H = 24.0

#: Columns of a track that doses are made from.
DOSE_COLUMNS = [
    "age_days",
    "air_c",
    "egg_c",
    "egg_low_c",
    "egg_high_c",
    "low_c",
    "high_c",
    "egg_range_low_c",
    "egg_range_high_c",
    "rate",
    "hen_days",
]

MISSING = dict.fromkeys(
    [
        "hours_warm",
        "hours_cold",
        "degree_hours_warm",
        "degree_hours_cold",
        "egg_degree_hours_warm",
        "egg_degree_hours_cold",
        "egg_peak_c",
        "egg_peak_low_c",
        "egg_peak_high_c",
        "egg_min_c",
        "heat_dose_h",
    ],
    np.nan,
) | {"heat_band": None, "lost_hours": np.nan, "hours_egg_below_20": np.nan, "hours_egg_below_10": np.nan}


def heat_per_hour(egg_c):
    """Hours at an egg temperature of 43 degC that do as much harm as one hour at `egg_c`.

    3 times more for each K above 43, 4 times less for each K below, nothing up to 39 degC.

    Notes
    -----
    Orders seven published exposures of 16-day hens' embryos rightly, where degree-hours of any base
    do not. The factors lie inside a wide range (2.5 to 8) that does as well: an aid to ordering, not
    a predicted mortality.
    """
    egg_c = np.asarray(egg_c, dtype=float)
    above = np.clip(egg_c, 39.0, 60.0) - 43.0
    dose = np.exp(above * np.where(above >= 0, np.log(3.0), np.log(4.0)))
    return np.where(egg_c <= 39.0, 0.0, dose)


def half_dose(hen_days):
    """Dose that halved the hatch at this age, h at 43 degC (Ande & Wilson 1981; the lower of two kinds of air).

    Parameters
    ----------
    hen_days : float or array
        Age in hen's days (days x 21 / days of the species); between the five ages tested the line
        is straight, outside it is level.
    """
    return np.interp(np.asarray(hen_days, float), *_half_doses())


@cache
def _half_doses():
    table = reference.load("heat_doses")
    table = table[table["kind"] == "half"]
    lower = table[["dose_weak_fan_h", "dose_strong_fan_h"]].min(axis=1)
    return table["age_days"].to_numpy(float), lower.to_numpy(float)


def rolling_dose(clock_h, egg_c, speaks_h):
    """Heat of the last 24 hours at each reading, in hours at 43 degC.

    Parameters
    ----------
    clock_h : array
        Time of each reading, hours, rising.
    egg_c, speaks_h : array
        Egg temperature (missing counts nothing) and the hours that each reading speaks for.
    """
    clock_h, speaks_h = np.asarray(clock_h, float), np.asarray(speaks_h, float)
    gained = np.nan_to_num(heat_per_hour(egg_c)) * speaks_h
    total = np.concatenate([[0.0], np.cumsum(gained)])
    first = np.searchsorted(clock_h, clock_h - ROLLING_H, side="right")
    return total[1:] - total[first]


def heat_band(dose_h, hen_days) -> str:
    """none, low, watch or high: the worst of the doses next to the half-effect dose of their age."""
    share = np.asarray(dose_h, float) / half_dose(hen_days)
    worst = float(np.nanmax(share)) if share.size else 0.0
    if worst < 0.001:
        return "none"
    return HEAT_BANDS[1 + sum(worst > limit for limit in BAND_SHARES)]


def window_dose(track: pd.DataFrame, start, end) -> dict:
    """Heat and cold between two times.

    Parameters
    ----------
    track : DataFrame
        From ``batch_track``.
    start, end : Timestamp
        UTC; readings from `start` up to but not including `end`.

    Returns
    -------
    dict
        Keys in ``reference/columns_climate.csv`` under `dose`. Where nothing is logged the doses are
        missing, not zero; where a part is logged they count that part only: see `share_logged`.
    """
    hours = (end - start) / pd.Timedelta(hours=1)
    part = track.iloc[position(track["time"], start) : position(track["time"], end)]
    speaks = _clipped_hours(part, end)
    logged = float(speaks.sum())
    share = min(logged / hours, 1.0) if hours > 0 else np.nan
    columns = {name: part[name].to_numpy() for name in DOSE_COLUMNS}
    return {"hours": hours, "hours_logged": logged, "share_logged": share} | dose_of(columns, speaks)


def dose_of(columns: dict, speaks) -> dict:
    """The doses of ``window_dose`` from columns of a track as arrays.

    Parameters
    ----------
    columns : dict of arrays
        `DOSE_COLUMNS` of the track.
    speaks : array
        Hours that each reading speaks for; 0 where it has no temperature.
    """
    known = speaks > 0
    if not known.any():
        return dict(MISSING)
    if not known.all():
        columns, speaks = {name: values[known] for name, values in columns.items()}, speaks[known]
    air, egg = columns["air_c"], columns["egg_c"]
    low, high = columns["low_c"], columns["high_c"]
    egg_low, egg_high = columns["egg_range_low_c"], columns["egg_range_high_c"]
    rolling = rolling_dose(columns["age_days"] * 24, egg, speaks)
    peak = int(egg.argmax())
    return {
        "hours_warm": float(speaks[air > high].sum()),
        "hours_cold": float(speaks[air < low].sum()),
        "degree_hours_warm": _beyond(air - high, speaks),
        "degree_hours_cold": _beyond(low - air, speaks),
        "egg_degree_hours_warm": _beyond(egg - egg_high, speaks),
        "egg_degree_hours_cold": _beyond(egg_low - egg, speaks),
        "egg_peak_c": float(egg[peak]),
        "egg_peak_low_c": float(columns["egg_low_c"][peak]),
        "egg_peak_high_c": float(columns["egg_high_c"][peak]),
        "egg_min_c": float(egg.min()),
        "heat_dose_h": float(rolling.max()),
        "heat_band": heat_band(rolling, columns["hen_days"]),
        "lost_hours": float((1 - columns["rate"]) @ speaks),
        "hours_egg_below_20": float(speaks[egg < constant("cold_watch_c")].sum()),
        "hours_egg_below_10": float(speaks[egg < constant("cold_harm_c")].sum()),
    }


def _beyond(degrees, speaks) -> float:
    """Degree-hours of what lies above zero."""
    return float(np.maximum(degrees, 0.0) @ speaks)


def _clipped_hours(part, end):
    """Hours each reading speaks for, none beyond the end of the stretch."""
    if part.empty:
        return np.empty(0)
    left = ((end - part["time"]) / pd.Timedelta(hours=1)).to_numpy()
    return np.minimum(part["hours"].to_numpy(), left)
