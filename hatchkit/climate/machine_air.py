"""One air temperature for each incubator from all that its probes logged."""

import numpy as np
import pandas as pd

#: A stretch without a usable reading is "not known" when longer than this many usual steps ...
GAP_STEPS = 3.0
#: ... and than this many hours.
GAP_HOURS = 0.5
#: A reading speaks for the time to the next one if that comes within this many usual steps; otherwise
#: a reading is missing, and what happened meanwhile is not known.
SPEAKS_FOR_STEPS = 1.9

COLUMNS = ["time", "air_c", "rh_pct", "doubt", "probes", "probe_spread_c"]


def settings_of(season, incubator) -> dict:
    """What season.toml says of one incubator; empty if nothing."""
    return dict(season.settings.get("incubators", {}).get(str(incubator), {}))


def incubator_of(season, batch) -> str | None:
    """The incubator of a batch; where the sheet does not say and only one was logged, that one."""
    named = batch.get("incubator")
    if isinstance(named, str) and named.strip():
        return named
    logged = season.readings["incubator"].dropna().unique()
    return str(logged[0]) if len(logged) == 1 else None


def by_machine(season) -> dict:
    """Readings of each incubator, split once: looking each up by itself costs a pass over all of them."""
    return season.once(
        ("readings", "by machine"), lambda: dict(tuple(season.readings.groupby("incubator", sort=False)))
    )


def machine_air(season, incubator) -> pd.DataFrame:
    """Readings of one incubator, one row a time.

    Readings with a `doubt` are kept as rows without a temperature: they are not used, and their
    time is not known to be normal. Where several probes log one incubator, readings that fall in
    the same step are averaged (the mean of the probes that are not doubted).

    Returns
    -------
    DataFrame
        time (rising), air_c, rh_pct, doubt, probes (how many gave the temperature),
        probe_spread_c (highest less lowest of several); the usual step, hours, is ``attrs["step_h"]``.
    """
    none = season.readings.iloc[:0]
    return season.once(("air", incubator), lambda: _one_air(by_machine(season).get(incubator, none)))


def _one_air(rows) -> pd.DataFrame:
    """Clean readings of one incubator, one row a time."""
    doubt = rows["doubt"].astype("str").fillna("")
    clean = (doubt == "").to_numpy()
    time = pd.DatetimeIndex(rows["time"])
    table = pd.DataFrame(
        {
            "time": time,
            "doubt": doubt.array,
            "air_c": np.where(clean, rows["temp_c"].to_numpy(float), np.nan),
            "rh_pct": np.where(clean, rows["rh_pct"].to_numpy(float), np.nan),
        }
    )
    probe = rows["probe"]
    if len(probe) and (probe != probe.iloc[0]).any():
        table = _together(table, probe.to_numpy(dtype=object))
    else:
        table["probes"] = np.isfinite(table["air_c"]).astype(int)
        table["probe_spread_c"] = np.nan
    if not table["time"].is_monotonic_increasing:
        table = table.sort_values("time", kind="stable")
    table = table.reset_index(drop=True)[COLUMNS]
    table.attrs["step_h"] = usual_step(table["time"])
    return table


def _together(table, probe):
    """Probes of one incubator put in common steps: mean of the clean readings of each step."""
    steps = [usual_step(part["time"]) for _, part in table.groupby(pd.Series(probe, index=table.index))]
    steps = [step for step in steps if np.isfinite(step) and step > 0]
    width = pd.Timedelta(hours=max(steps, default=1 / 60))
    step = (table["time"] - table["time"].min()) // width
    grouped = table.groupby(step)
    joined = grouped.agg(
        time=("time", "min"),
        air_c=("air_c", "mean"),
        rh_pct=("rh_pct", "mean"),
        doubt=("doubt", "max"),
        probes=("air_c", "count"),
        low=("air_c", "min"),
        high=("air_c", "max"),
    )
    joined["probe_spread_c"] = (joined["high"] - joined["low"]).where(joined["probes"] > 1)
    joined["doubt"] = joined["doubt"].where(joined["probes"] == 0, "")
    return joined


def usual_step(time) -> float:
    """Median time between readings, hours; NaN for fewer than two."""
    stamps = pd.DatetimeIndex(time)
    if len(stamps) < 2:
        return float("nan")
    steps = np.diff(stamps.asi8)
    steps = steps[steps > 0]
    unit = {"s": 1, "ms": 1e3, "us": 1e6, "ns": 1e9}[stamps.unit]
    return float(np.median(steps)) / unit / 3600 if len(steps) else float("nan")


def position(time, stamp, side="left") -> int:
    """Row at which `stamp` falls in a rising column of times, whatever the units of the two."""
    index = pd.DatetimeIndex(time)
    return int(index.searchsorted(pd.Timestamp(stamp).as_unit(index.unit), side=side))


def gap_limit(step_h: float) -> float:
    """Hours without a reading from which a stretch is a gap: 3 usual steps, at least half an hour."""
    return max(GAP_STEPS * step_h, GAP_HOURS) if np.isfinite(step_h) else GAP_HOURS


def coverage(hours, known, step_h: float):
    """What each reading speaks for, and where holes lie.

    Parameters
    ----------
    hours : array
        Time of each reading in hours, rising.
    known : array of bool
        Whether the reading gives a temperature.
    step_h : float
        Usual step.

    Returns
    -------
    speaks : array
        Hours to the next reading where that comes in its usual time, else 0: with a reading missing,
        what happened is not known. The last reading speaks for one usual step.
    gap : array of bool
        A stretch longer than the gap limit without a temperature lies before this (known) reading.
    """
    hours, known = np.asarray(hours, float), np.asarray(known, bool)
    if len(hours) == 0:
        return np.empty(0), np.empty(0, dtype=bool)
    step = step_h if np.isfinite(step_h) else 0.0
    ahead = np.append(np.diff(hours), step)
    speaks = np.where(known & (ahead <= SPEAKS_FOR_STEPS * step + 1e-9), ahead, 0.0)
    gap = np.zeros(len(hours), dtype=bool)
    used = np.flatnonzero(known)
    gap[used[1:]] = np.diff(hours[used]) > gap_limit(step_h) + 1e-9
    return speaks, gap
