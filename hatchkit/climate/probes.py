"""Can the probe be believed, and how steady is the machine? Numbers that a person can compare."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.climate import clock, egg_heat, excursions, machine_air, ranges
from hatchkit.climate.egg_temperature import unseen_share
from hatchkit.climate.track import batch_track
from hatchkit.reference import contract

#: Two probes of one machine within this, K, agree as well as unchecked probes can.
PROBES_AGREE_K = 0.3
#: A bias by the hatch clock is worth telling from this size, degC.
BIAS_TOLD_K = 0.25
#: Readings this long after setting or an opening are left out of steadiness, hours.
SETTLED_H = 12.0

TRUTH_COLUMNS = contract.columns("probe_truth")
STEADY_COLUMNS = contract.columns("steadiness")


def probe_truth(season) -> pd.DataFrame:
    """What is known of each probe's error.

    Parameters
    ----------
    season : Season
        With its readings in degrees C.

    Returns
    -------
    DataFrame
        One row per incubator and probe (and other probe in the same machine); columns in
        ``reference/columns_climate.csv`` under `probe_truth`. Three independent witnesses: an offset
        from a check beside a reference thermometer (season.toml), a second probe in
        the same machine, and the times at which the eggs hatched.
    """
    timing = _clock_bias(season)
    rows = []
    for incubator, readings in season.readings.groupby("incubator"):
        setting = machine_air.settings_of(season, incubator)
        pairs = _pairs(readings)
        for probe, own in readings.groupby("probe"):
            offset = _offset(setting, probe, own)
            row = dict.fromkeys(TRUTH_COLUMNS, np.nan) | {
                "incubator": incubator,
                "probe": str(probe),
                "readings": int(own["temp_c"].notna().sum()),
                "doubted": int(own["doubt"].fillna("").ne("").sum()),
                "offset_c": offset,
                "checked": bool(np.isfinite(offset)),
                "other_probe": "",
                "compared": 0,
                "clock_batches": 0,
            }
            row |= timing.get(incubator, {})
            for other in pairs.get(str(probe), [{}]):
                full = row | other
                rows.append(full | {"verdict": _verdict(full)})
    table = pd.DataFrame(rows, columns=TRUTH_COLUMNS)
    return table[table["readings"] > 0].reset_index(drop=True)


def steadiness(season) -> pd.DataFrame:
    """How steadily each incubator held its temperature and humidity while eggs were in.

    Parameters
    ----------
    season : Season
        With its readings in degrees C.

    Returns
    -------
    DataFrame
        One row per incubator; columns in ``reference/columns_climate.csv`` under `steadiness`. Mean,
        swing and the difference of day and night use the setting stage, from 12 h after setting,
        outside excursions of alarm size, so that one power cut does not hide the everyday.
    """
    found = excursions.find_excursions(season)
    rows = []
    for incubator, batches in excursions.by_incubator(season):
        air = machine_air.machine_air(season, incubator)
        tracks = [batch_track(season, batch) for batch in batches["batch"]]
        tracks = [track for track in tracks if len(track)]
        if tracks:
            own = found[found["incubator"] == incubator]
            rows.append(
                _steadiness_row(season, incubator, tracks, own)
                | _step(season, incubator, air)
                | {"share_logged": _share_logged(season, batches, tracks)}
            )
    return pd.DataFrame(rows, columns=STEADY_COLUMNS)


def _share_logged(season, batches, tracks) -> float:
    """Share of the time from setting to end of all its batches for which readings stand; the unlogged ones count."""
    spans = []
    for _, row in batches[batches["set_at"].notna() & batches["species"].isin(season.species_table.index)].iterrows():
        when = ranges.stages(row, season.species_table.loc[row["species"]])
        spans.append((when["end_at"] - when["set_at"]) / pd.Timedelta(hours=1))
    hours = sum(float(track["hours"].sum()) for track in tracks)
    return min(hours / sum(spans), 1.0) if sum(spans) > 0 else np.nan


def _steadiness_row(season, incubator, tracks, found) -> dict:
    together = pd.concat(tracks, ignore_index=True)
    once = together.drop_duplicates("time")
    quiet = once[
        (once["stage"] == "setting")
        & (once["age_days"] * 24 > SETTLED_H)
        & (once["level"].abs() < 2)
        & once["air_c"].notna()
    ]
    hours = float(together["hours"].sum())
    level = together["level"].abs()
    openings = found[found["looks_like"] == "opening"].drop_duplicates("event")
    set_point = machine_air.settings_of(season, incubator).get("set_point_c", np.nan)
    mean = float(quiet["air_c"].mean()) if len(quiet) else np.nan
    days_logged = float(once["hours"].sum()) / 24
    return {
        "incubator": incubator,
        "batches": len(tracks),
        "hours": hours,
        "mean_c": mean,
        "set_point_c": float(set_point),
        "off_set_point_c": mean - float(set_point),
        "swing_c": _spread(quiet["air_c"]),
        "day_night_c": day_night(quiet["time"], quiet["air_c"], season.timezone),
        "share_in_band": _share(together, level == 0),
        "share_watch": _share(together, level == 1),
        "share_alarm": _share(together, level >= 2),
        "openings_per_day": len(openings) / days_logged if days_logged > 0 else np.nan,
        "opening_minutes": float(openings["hours"].median() * 60) if len(openings) else np.nan,
        "rh_mean_pct": float(quiet["rh_pct"].mean()) if quiet["rh_pct"].notna().any() else np.nan,
        "rh_swing_pct": _spread(quiet["rh_pct"]),
    }


def _step(season, incubator, air) -> dict:
    """Usual step of the log, and the share of a spike between two readings that a hen's egg would feel."""
    step_h = air.attrs["step_h"]
    kind = machine_air.settings_of(season, incubator).get("air", "fan")
    tau_h = egg_heat.time_constant(egg_heat.HEN_GRAMS, kind)
    return {"step_minutes": 60 * step_h, "unseen_share": unseen_share(step_h, tau_h)}


def day_night(time, values, timezone) -> float:
    """Middle of the day's readings (10 to 18 h, local clock) less that of the night's (22 to 6 h).

    Each day and night first gives its own median; NaN with fewer than three of either.
    """
    local = pd.DatetimeIndex(time).tz_convert(timezone or "UTC")
    # The night belongs to the evening on which it began.
    shifted = local - pd.Timedelta(hours=6)
    table = pd.DataFrame(
        {
            "day": shifted.floor("D", ambiguous="NaT", nonexistent="shift_forward"),
            "hour": local.hour,
            "value": np.asarray(values, float),
        }
    )
    is_day, is_night = table["hour"].between(10, 17), (table["hour"] >= 22) | (table["hour"] < 6)
    day = table[is_day].groupby("day")["value"].median()
    night = table[is_night].groupby("day")["value"].median()
    if len(day) < 3 or len(night) < 3:
        return float("nan")
    return float(day.median() - night.median())


def _spread(values) -> float:
    """Width that holds 80 % of the readings: 90 % point less 10 % point."""
    values = values.dropna()
    return float(np.diff(np.quantile(values, [0.1, 0.9]))[0]) if len(values) else float("nan")


def _share(track, mark) -> float:
    total = track["hours"].sum()
    return float(track.loc[mark, "hours"].sum() / total) if total > 0 else float("nan")


def _offset(setting, probe, readings) -> float:
    """The probe's offset: what was added to its readings, or the 0 that season.toml gives for it."""
    added = (readings["temp_c"] - readings["temp_logged_c"]).median() if "temp_logged_c" in readings else 0.0
    if added:  # NaN too: without a temperature there is nothing to go by
        return round(float(added), 6)
    offset = setting.get("probe_offset_c")
    offset = offset.get(str(probe)) if isinstance(offset, dict) else offset
    return float(offset) if offset is not None else float("nan")


def _pairs(readings) -> dict:
    """For each probe with temperatures, its difference to every other probe of the machine."""
    clean = readings[readings["doubt"].fillna("").eq("") & readings["temp_c"].notna()]
    probes = {str(name): part for name, part in clean.groupby("probe")}
    pairs = {}
    for name, own in probes.items():
        pairs[name] = [
            _difference(own, other) | {"other_probe": label} for label, other in probes.items() if label != name
        ] or [{}]
    return pairs


def _difference(own, other) -> dict:
    """Median and 10-90 % of one probe less another, at readings within half a usual step of each other."""
    # A probe with one reading has no step: fmax then takes the minute.
    near = pd.Timedelta(hours=0.5 * float(np.fmax(machine_air.usual_step(own["time"]), 1 / 60)))
    left = own[["time", "temp_c"]].sort_values("time")
    right = other[["time", "temp_c"]].rename(columns={"temp_c": "other_c"}).sort_values("time")
    both = pd.merge_asof(left, right, on="time", direction="nearest", tolerance=near).dropna()
    if both.empty:
        return {"compared": 0}
    low, middle, high = np.quantile(both["temp_c"] - both["other_c"], [0.1, 0.5, 0.9])
    return {
        "differs_c": float(middle),
        "differs_low_c": float(low),
        "differs_high_c": float(high),
        "compared": len(both),
    }


def _clock_bias(season) -> dict:
    """Per incubator: constant error that the hatch times of its batches point to, with a 95 % interval."""
    from scipy.special import stdtrit

    table = clock.hatch_clock(season)
    table = table[table["difference_h"].notna() & (table["share_logged"] >= clock.ENOUGH_LOGGED)]
    found = {}
    for incubator, own in table.groupby("incubator"):
        bias = clock.bias_of(own, season).to_numpy()
        count = len(bias)
        out = {"clock_bias_c": float(bias.mean()), "clock_batches": count}
        if count > 1:
            half = float(stdtrit(count - 1, 0.975) * bias.std(ddof=1) / np.sqrt(count))
            out |= {"clock_low_c": out["clock_bias_c"] - half, "clock_high_c": out["clock_bias_c"] + half}
        found[incubator] = out
    return found


def _verdict(row) -> str:
    """probes agree or disagree, reads high or low (by the hatch times), checked or not checked."""
    bias = row["clock_bias_c"]
    sure = np.isfinite(row["clock_low_c"]) and row["clock_low_c"] * row["clock_high_c"] > 0
    if sure and abs(bias) >= BIAS_TOLD_K:
        return "reads high" if bias > 0 else "reads low"
    if row["compared"] and abs(row["differs_c"]) > PROBES_AGREE_K:
        return "probes disagree"
    if row["checked"]:
        return "checked"
    return "probes agree" if row["compared"] else "not checked"
