"""Evidence from the log, the weights and the hatching hours of one batch."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.climate.dose import half_dose, rolling_dose
from hatchkit.climate.track import batch_track

THIRDS = {"early": (0, 7), "mid": (7, 14), "late": (14, 30)}

#: Less of a third logged than this, and nothing is said about it.
LEAST_LOGGED = 0.5

#: Eggs go in cold: the first hours are warming up, not a spell of cold.
WARMING_DAYS = 0.75

#: How many levels below the range (see `climate.ranges`) make a spell of cold: alarm or worse.
COLD_LEVEL = -2


def find(gathered, batch) -> dict:
    """Values of the items that come from climate, weights and clock."""
    season = gathered.season
    track = batch_track(season, batch)
    species = season.species(batch)
    values = {}
    for third, limits in THIRDS.items():
        start, end = limits
        part = track.iloc[slice(*np.searchsorted(track["hen_days"], limits))]
        known = _logged(part, species, start, min(end, 20)) >= LEAST_LOGGED
        values[f"heat_{third}"] = heat_share(part) if known else np.nan
        values[f"cold_{third}"] = cold_hours(part) if known else np.nan
    setting = (track["stage"] == "setting") & (track["age_days"] > WARMING_DAYS)
    hatching = track["stage"] == "hatching"
    from_middle = track["air_c"] - (track["low_c"] + track["high_c"]) / 2
    values["log_level"] = float(from_middle[setting].median())
    humid = track["rh_pct"]
    values["rh_set"] = _outside(humid[setting], species["setter_rh_low_pct"], species["setter_rh_high_pct"])
    values["rh_hatch"] = _outside(humid[hatching], species["hatcher_rh_low_pct"], species["hatcher_rh_high_pct"])
    values["clock"] = _of(gathered.clock, batch, "difference_h")
    values["clock_machine"] = _machine_clock(gathered.clock, season.batch(batch))
    values["hatch_spread"] = _spread(season.batch(batch))
    values["water_loss"] = _water(gathered.water, batch, species)
    return values


def _logged(part, species, start, end) -> float:
    """Share of a third (in hen's days) for which readings stand."""
    hours = (end - start) * species["incubation_days"] / 21 * 24
    return float(part["hours"].sum()) / hours


def heat_share(part) -> float:
    """Largest heat dose of 24 h as a share of the dose that halved the hatch at that age (`climate.dose`)."""
    if part.empty:
        return float("nan")
    dose = rolling_dose(part["age_days"].to_numpy() * 24, part["egg_c"].to_numpy(), part["hours"].to_numpy())
    return float(np.max(dose / half_dose(part["hen_days"].to_numpy())))


def cold_hours(part) -> float:
    """Hours of development lost while the air was far below its range, warming up left out."""
    level, age, rate, hours = (part[name].to_numpy() for name in ("level", "age_days", "rate", "hours"))
    spell = (level <= COLD_LEVEL) & (age > WARMING_DAYS)
    return float(np.nansum(np.clip(1 - rate[spell], 0, None) * hours[spell]))


def _outside(rh_pct, low, high) -> float:
    """Median humidity's distance from its range; 0 inside, NaN where none was logged."""
    middle = rh_pct.median() if rh_pct.notna().sum() else float("nan")
    return float(middle - np.clip(middle, low, high))


def _of(table, batch, column) -> float:
    rows = table[table["batch"].astype(str) == str(batch)]
    if rows.empty or column not in rows:
        return float("nan")
    value = rows[column].iloc[0]
    return float("nan") if pd.isna(value) else float(value)


def _machine_clock(clock, row) -> float:
    """Middle clock difference of the other batches of the same incubator; NaN below two of them."""
    if "difference_h" not in clock or pd.isna(row.get("incubator")):
        return float("nan")
    others = clock[(clock["incubator"] == row["incubator"]) & (clock["batch"] != row["batch"])][
        "difference_h"
    ].dropna()
    return float(others.median()) if len(others) >= 2 else float("nan")


def _spread(row) -> float:
    first, last = row.get("first_hatch_at"), row.get("last_hatch_at")
    if first is None or last is None or pd.isna(first) or pd.isna(last):
        return float("nan")
    return (last - first).total_seconds() / 3600


def _water(table, batch, species) -> float:
    """Loss expected at transfer against the middle of the target, points of set weight; NaN without weighings."""
    rows = table[table["batch"].astype(str) == str(batch)]
    if rows.empty or rows["weighed"].iloc[0] == "no":
        return float("nan")
    loss = _of(table, batch, "projected_share")
    return 100 * (loss - (species["loss_low_share"] + species["loss_high_share"]) / 2)
