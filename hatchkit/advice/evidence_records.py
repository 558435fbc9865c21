"""Evidence that the person's own records hold: storage, flock, tray, rotten eggs, remarks."""

from __future__ import annotations

import re

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.losses.tray import clustering

#: Weeks of age between which hens hatch well; before and after it wears off (Grochowska et al. 2019 put the
#: best at 31-50 weeks; the wider range is taken so that only plain cases count).
FLOCK_BEST_WEEKS = (26, 60)

#: Fewer eggs than this on the tray, or fewer dead, cannot show a pattern.
TRAY_LEAST_EGGS, TRAY_LEAST_DEAD = 20, 5
TRAY_DRAWS = 1999


def find(gathered, batch) -> dict:
    """Values of the items that come from records."""
    season = gathered.season
    row = season.batch(batch)
    species = season.species(batch)
    return {
        "storage": _number(row, "stored_days") - species["storage_best_days"],
        "flock_age": _outside(_number(row, "flock_age_weeks")),
        "flock_clears": _flock_clears(gathered, row),
        "tray": _tray(season, batch),
        "malpositions": _malpositions(gathered, row),
        "contaminated": _number(row, "contaminated") / row["eggs_set"],
        "cracked": _number(row, "cracked") / row["eggs_set"],
        **_remarks(row),
    }


def _number(row, column) -> float:
    value = row.get(column)
    return float("nan") if value is None or pd.isna(value) else float(value)


def _outside(weeks) -> float:
    low, high = FLOCK_BEST_WEEKS
    return max(low - weeks, weeks - high, 0.0) if np.isfinite(weeks) else weeks


def _flock_clears(gathered, row) -> float:
    """Clears of the flock's other batches against the other flocks', in doublings (half an egg added to each)."""
    batches = gathered.season.batches
    if pd.isna(row.get("flock")):
        return float("nan")
    # A batch whose clears were never counted says nothing of its flock's clears.
    counted = gathered.tally.clears_counted
    counted = batches["batch"].astype(str).isin(counted.index[counted])
    same_kind = (batches["species"] == row["species"]) & batches["flock"].notna() & counted
    same_flock = batches["flock"] == row["flock"]
    own = batches.loc[same_kind & same_flock & (batches["batch"] != row["batch"]), "batch"]
    other = batches.loc[same_kind & ~same_flock, "batch"]
    if len(own) == 0 or len(other) < 2:
        return float("nan")
    return float(np.log2(_clear_odds(gathered.counts, own) / _clear_odds(gathered.counts, other)))


def _clear_odds(counts, batches) -> float:
    part = counts.reindex(batches).fillna(0.0)
    return (part["clear"].sum() + 0.5) / (part.to_numpy().sum() - part["clear"].sum() + 0.5)


def _malpositions(gathered, row) -> float:
    """Share of the opened late dead that lay wrongly; not known below four of them."""
    late = _number(row, "broken_late")
    wrong = _number(row, "malpositioned")
    return wrong / late if late >= 4 and np.isfinite(wrong) else float("nan")


def _remarks(row) -> dict:
    """1 where a remark names the thing, 0 where remarks are kept and do not, NaN without remarks."""
    items = reference.load("evidence_items")
    items = items[items["kind"] == "noted"]
    notes = row.get("notes")
    if notes is None or pd.isna(notes) or not str(notes).strip():
        return dict.fromkeys(items["item"], float("nan"))
    return {
        item: float(bool(re.search(rf"\b(?:{words})", str(notes), flags=re.IGNORECASE)))
        for item, words in zip(items["item"], items["words"], strict=True)
    }


def _tray(season, batch) -> float:
    """How rare so gathered or edge-bound a tray is by chance, as -log10 of `losses.tray.clustering`'s chance."""
    eggs = season.eggs
    if not {"batch", "row", "col"} <= set(eggs) or not (eggs["row"].notna() & (eggs["batch"] == batch)).any():
        return float("nan")
    table = clustering(season, batch, draws=TRAY_DRAWS)
    if table.empty or table["eggs"].iloc[0] < TRAY_LEAST_EGGS or table["deaths"].iloc[0] < TRAY_LEAST_DEAD:
        return float("nan")
    return float(-np.log10(table.set_index("question").at["together", "chance"]))
