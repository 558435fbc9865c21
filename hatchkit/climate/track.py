"""What one batch met, reading by reading: air, egg, range in force, speed of development."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.climate import egg_heat, machine_air, ranges
from hatchkit.climate.development import rate
from hatchkit.climate.egg_temperature import egg_temperature

COLUMNS = ["time", "age_days", "stage", "air_c", "rh_pct", "doubt", "hours", "gap", "egg_c", "egg_low_c",
           "egg_high_c", "lagged_air_c", "low_c", "high_c", "level", "egg_range_low_c", "egg_range_high_c",
           "rate", "hen_days"]


def batch_track(season, batch) -> pd.DataFrame:
    """The climate of one batch from setting to take-off.

    Parameters
    ----------
    season : Season
    batch : str

    Returns
    -------
    DataFrame
        One row per reading of the batch's incubator; columns in ``reference/columns_climate.csv``
        under `track`. Empty where nothing was logged. Times without a reading have no row: see
        `hours` (what each reading speaks for) and `gap` (a hole lies before it).
    """
    row = season.batch(batch)
    incubator = machine_air.incubator_of(season, row)
    air = machine_air.machine_air(season, incubator) if incubator is not None else None
    return track_from(season, row, air)


def track_from(season, row, air) -> pd.DataFrame:
    """``batch_track`` for a row of batches, from its incubator's ``machine_air`` already at hand."""
    figures = season.species_table.loc[row["species"]] if row["species"] in season.species_table.index else None
    if air is None or air.empty or figures is None or pd.isna(row["set_at"]):
        return _empty()
    when = ranges.stages(row, figures)
    first, last = (machine_air.position(air["time"], when[name]) for name in ("set_at", "end_at"))
    part = air.iloc[first:last].reset_index(drop=True)
    if part.empty:
        return _empty()
    setting = machine_air.settings_of(season, machine_air.incubator_of(season, row))
    track = part[["time", "air_c", "rh_pct", "doubt"]].copy()
    track["age_days"] = (part["time"] - when["set_at"]) / pd.Timedelta(days=1)
    hatching = (part["time"] >= when["transfer_at"]).to_numpy()
    track["stage"] = np.where(hatching, "hatching", "setting")
    hours = track["age_days"].to_numpy() * 24
    step = machine_air.usual_step(air["time"])
    track["hours"], track["gap"] = machine_air.coverage(hours, track["air_c"].notna(), step)
    kind = setting.get("air", "fan")
    _put_egg(track, hours, season, row, figures, kind, setting)
    _put_ranges(track, hatching, figures, kind)
    # The trade's days already contain the cooler hatching stage, so that stage is its own measure.
    track["rate"] = rate(track["lagged_air_c"], np.where(hatching, figures["hatcher_c"], figures["setter_c"]))
    track["hen_days"] = track["age_days"] * egg_heat.HEN_DAYS / float(figures["incubation_days"])
    return track[COLUMNS]


def egg_grams(season, batch, figures) -> float:
    """Mean weight of the batch's eggs at setting where they were weighed, else the species' usual weight."""
    eggs = season.eggs
    if len(eggs) and "weight_g" in eggs:
        own = eggs.loc[eggs["batch"] == batch, "weight_g"].dropna()
        if len(own):
            return float(own.mean())
    return float(figures["egg_grams"])


def _put_egg(track, hours, season, row, figures, kind, setting):
    still = egg_heat.air_kind(kind) == "still"
    around = track["air_c"].to_numpy() - (egg_heat.constant("still_air_top_k") if still else 0.0)
    checked = setting.get("probe_offset_c") is not None
    egg = egg_temperature(
        hours, around, age_days=track["age_days"].to_numpy(), egg_mass_g=egg_grams(season, row["batch"], figures),
        air=kind, incubation_days=float(figures["incubation_days"]), damped=bool(setting.get("damped_probe")),
        sensor_sd_c=egg_heat.constant("sensor_sd_checked" if checked else "sensor_sd"))
    track[["egg_c", "egg_low_c", "egg_high_c", "lagged_air_c"]] = egg.to_numpy()


def _put_ranges(track, hatching, figures, kind):
    """Range in force and level for each reading: the setting range until transfer, then the hatching one."""
    air_c = track["air_c"].to_numpy()
    for prefix, what in (("", kind), ("egg_range_", "egg")):
        setting = ranges.limits(figures, stage="setting", air=what)
        moved = ranges.limits(figures, stage="hatching", air=what)
        for side, name in enumerate(("low_c", "high_c")):
            track[prefix + name] = np.where(hatching, moved[0, side], setting[0, side])
        if what != "egg":
            level = np.where(hatching, ranges.level_of(air_c, moved), ranges.level_of(air_c, setting))
    track["level"] = level


def _empty() -> pd.DataFrame:
    track = pd.DataFrame(np.empty((0, len(COLUMNS))), columns=COLUMNS)
    return track.astype({"time": "datetime64[us, UTC]", "stage": object, "doubt": object, "gap": bool,
                         "level": int})
