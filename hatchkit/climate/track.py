"""What one batch met, reading by reading: air, egg, range in force, speed of development."""

import numpy as np
import pandas as pd

from hatchkit.climate import egg_heat, machine_air, ranges
from hatchkit.climate.egg_temperature import estimate
from hatchkit.reference import contract

COLUMNS = contract.columns("track")


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
    own = season.part(row["batch"])  # each year's own log, step and settings
    return season.once(("track", row["batch"]), lambda: _track(own, row)).copy(deep=False)


def _track(season, row) -> pd.DataFrame:
    incubator = machine_air.incubator_of(season, row)
    air = machine_air.machine_air(season, incubator) if incubator is not None else None
    figures = season.species_table.loc[row["species"]] if row["species"] in season.species_table.index else None
    if air is None or air.empty or figures is None or pd.isna(row["set_at"]):
        return _empty()
    when = ranges.stages(row, figures)
    first, last = (machine_air.position(air["time"], when[name]) for name in ("set_at", "end_at"))
    part = air.iloc[first:last]
    if part.empty:
        return _empty()
    setting = machine_air.settings_of(season, machine_air.incubator_of(season, row))
    kind = setting.get("air", "fan")
    clock_h = ((part["time"] - when["set_at"]) / pd.Timedelta(hours=1)).to_numpy()
    hatching = (part["time"] >= when["transfer_at"]).to_numpy()
    air_c = part["air_c"].to_numpy()
    hours, gap = machine_air.coverage(clock_h, np.isfinite(air_c), air.attrs["step_h"])
    egg = _egg(
        clock_h, air_c, grams=egg_grams(season, row["batch"], figures), figures=figures, kind=kind, setting=setting
    )
    # The trade's days already contain the cooler hatching stage, so that stage is its own measure.
    usual_c = np.where(hatching, figures["hatcher_c"], figures["setter_c"])
    columns = {
        "time": part["time"].array,
        "age_days": clock_h / 24,
        "stage": _stage(hatching),
        "air_c": air_c,
        "rh_pct": part["rh_pct"].to_numpy(),
        "doubt": part["doubt"].array,
        "hours": hours,
        "gap": gap,
        "egg_c": egg[0],
        "egg_low_c": egg[1],
        "egg_high_c": egg[2],
        "lagged_air_c": egg[3],
        **_ranges(air_c, hatching, figures, kind),
        "rate": egg_heat.rate(egg[3], usual_c),
        "hen_days": clock_h / 24 * egg_heat.HEN_DAYS / float(figures["incubation_days"]),
        "probe_spread_c": part["probe_spread_c"].to_numpy(),
    }
    return pd.DataFrame({name: columns[name] for name in COLUMNS}, copy=False)


def _stage(hatching):
    return pd.array(["setting", "hatching"], dtype="str").take(hatching.astype(int))


def egg_grams(season, batch, figures) -> float:
    """Mean weight of the batch's eggs at setting where they were weighed, else the species' usual weight."""
    eggs = season.eggs
    if len(eggs) and "weight_g" in eggs:
        own = eggs.loc[eggs["batch"] == batch, "weight_g"].dropna()
        if len(own):
            return float(own.mean())
    return float(figures["egg_grams"])


def _egg(clock_h, air_c, *, grams, figures, kind, setting):
    """Rows egg, low, high, lagged air; in still air the probe is taken to hang at the top of the eggs."""
    still = egg_heat.air_kind(kind) == "still"
    around = air_c - egg_heat.constant("still_air_top_k") if still else air_c
    checked = setting.get("probe_offset_c") is not None
    tau = 0.0 if setting.get("damped_probe") else egg_heat.time_constant(grams, kind)
    return estimate(
        clock_h,
        around,
        clock_h / 24,
        grams=grams,
        air=kind,
        tau=tau,
        incubation_days=float(figures["incubation_days"]),
        sensor_sd=egg_heat.constant("sensor_sd_checked" if checked else "sensor_sd"),
    )


def _ranges(air_c, hatching, figures, kind) -> dict:
    """Range in force and level for each reading: the setting range until transfer, then the hatching one."""
    out = {}
    for prefix, what in (("", kind), ("egg_range_", "egg")):
        setting = ranges.limits(figures, stage="setting", air=what)
        moved = ranges.limits(figures, stage="hatching", air=what)
        for side, name in enumerate(("low_c", "high_c")):
            out[prefix + name] = np.where(hatching, moved[0, side], setting[0, side])
        if what != "egg":
            out["level"] = np.where(hatching, ranges.level_of(air_c, moved), ranges.level_of(air_c, setting))
    return out


def _empty() -> pd.DataFrame:
    track = pd.DataFrame(np.empty((0, len(COLUMNS))), columns=COLUMNS)
    return track.astype({"time": "datetime64[us, UTC]", "stage": object, "doubt": object, "gap": bool, "level": int})
