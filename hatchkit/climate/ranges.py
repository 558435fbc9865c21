"""Which temperature is right: the range in force for a species, a stage and a kind of air."""

from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.climate.egg_heat import air_kind

#: Levels of distance from the range, 0 to 3.
LEVELS = ("in band", "watch", "alarm", "serious")

#: Days that a batch is followed after its species' hatch day when no take-off is recorded.
DAYS_AFTER_HATCH = 2.0


def limits(figures, *, stage="setting", air="fan") -> np.ndarray:
    """``temperature_range`` as an array of (low, high) for in band, watch and alarm."""
    centre = float(figures["hatcher_c" if stage == "hatching" else "setter_c"])
    return centre + _steps(str(figures.name), stage, _kind(air))


def _kind(air) -> str:
    if air == "egg":
        return "egg"
    return "still" if air_kind(air) == "still" else "fan"


@cache
def _steps(species, stage, kind):
    """Distances of ranges.csv by level, K: the species' own where there are any, else those for any species."""
    table = reference.load("ranges")
    table = table[(table["stage"] == stage) & (table["air"] == kind)]
    own = table[table["species"] == species]
    own = own if len(own) else table[table["species"] == "any"]
    return own.set_index("level").loc[["in_band", "watch", "alarm"], ["low_k", "high_k"]].to_numpy(float)


def level_of(temp_c, steps):
    """How far out of the range: 0 in band, 1 watch, 2 alarm, 3 serious; below the range negative.

    Parameters
    ----------
    temp_c : array
        degC; missing gives 0.
    steps : array
        From ``limits``.
    """
    temp_c = np.asarray(temp_c, dtype=float)
    level = np.zeros(temp_c.shape, dtype=int)
    for low, high in steps:
        level += (temp_c > high).astype(int) - (temp_c < low).astype(int)
    return level


def stages(batch, figures) -> dict:
    """When a batch was being set, hatched, and over.

    Returns
    -------
    dict
        set_at, transfer_at, end_at (UTC): transfer and end as recorded, else by the species' days.
    """
    set_at = batch["set_at"]
    transfer = batch.get("transfer_at", pd.NaT)
    if pd.isna(transfer):
        transfer = set_at + pd.Timedelta(days=float(figures["transfer_day"]))
    end = batch.get("taken_off_at", pd.NaT)
    if pd.isna(end):
        end = batch.get("last_hatch_at", pd.NaT)
    if pd.isna(end):
        end = set_at + pd.Timedelta(days=float(figures["incubation_days"]) + DAYS_AFTER_HATCH)
    return {"set_at": set_at, "transfer_at": transfer, "end_at": end}
