"""What is worked out around a column of eggs that the reading leaves out is not used, and the column is asked about.

Where the eggs left are written, the losses between are worked out: with a column left out these are of the wrong look
or class, and nothing on the sheet would show it. What is written stays; the rest is unaccounted for until told.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records.sheets.assign import LIKELY, Rival
from hatchkit.records.sheets.fields import COUNTS, USUAL, Meaning
from hatchkit.records.sheets.meanings import meanings
from hatchkit.records.sheets.parts import Part

#: Share of whole numbers from which a column may be one of eggs; a reading of this weight was told by the person.
NUMBERS, TOLD = 0.8, 20.0
#: What a column of eggs under an unknown heading is offered as.
_OFFERED = ("clear", "dead", "left", "hatched")


def without_unexplained(item, part: Part) -> Part:
    """A table less the losses that were worked out around a column of eggs that the reading leaves out.

    Parameters
    ----------
    item : Understood
        Of kind "batches"; its reading gets rivals for the column, so that it is asked about.
    part : Part
    """
    derived, short = _derived(part), (part.batches["rest"] > 0).to_numpy()
    if not derived.any() and 2 * short.sum() <= len(short):
        return part
    columns = _unexplained(item)
    for place, offered in columns:
        item.reading.margins[place] = 0.0
        item.reading.rivals[place] = [Rival(each, 0.0, item.reading.adds_up, item.reading.rows) for each in offered]
    return _less_derived(part) if columns and derived.any() else part


def _less_derived(part: Part) -> Part:
    """A table of which only what is written counts."""
    batches, looks = part.batches, part.looks
    shell = batches["dis_derived"].astype(bool) & batches["dead_in_shell"].notna()
    batches["rest"] += np.where(shell, batches["dead_in_shell"], 0.0)
    batches.loc[shell, "dead_in_shell"] = np.nan
    mine = looks["derived"].astype(bool)
    lost = looks.loc[mine, ["clear", "dead"]].astype(float).sum(axis=1).groupby(looks.loc[mine, "place"]).sum()
    batches["rest"] += pd.Series(lost).reindex(range(len(batches)), fill_value=0.0).to_numpy()
    looks.loc[mine, ["clear", "dead", "left"]] = np.nan
    looks["left"] = np.nan
    every = batches["all_hatched"].astype(bool)
    batches["rest"] += np.where(every, batches["hatched"], 0.0)
    batches.loc[every, "hatched"] = np.nan
    return part


def _derived(part: Part) -> np.ndarray:
    """Batches for which something was worked out: dead in the shell, chicks, losses of a look."""
    batches, looks = part.batches, part.looks
    found = (batches["dis_derived"] | batches["all_hatched"]).to_numpy(bool, copy=True)
    if len(looks):
        found[looks.loc[looks["derived"].astype(bool), "place"].to_numpy(int)] = True
    return found


def _unexplained(item) -> list[tuple[int, list[Meaning]]]:
    """Columns of whole numbers among the counts that the reading leaves out, with what they may be."""
    chosen = item.reading.chosen
    counted = [place for place, meaning in enumerate(chosen) if meaning.field in COUNTS]
    sets = [place for place in counted if chosen[place].field == "eggs_set"]
    if not sets:
        return []
    eggs, found = item.columns[sets[0]].values, []
    for place, column in enumerate(item.columns):
        if chosen[place].field in COUNTS or chosen[place].weight >= TOLD or not _may_be_eggs(column, eggs):
            continue
        words = meanings(column.heading, column.group, item.language)
        plain = [meaning for meaning in words if meaning.field in COUNTS and meaning.weight >= USUAL]
        if plain and chosen[place].field in ("ignore", "look_day"):
            found.append((place, plain))
        elif not words and chosen[place].field == "ignore" and sets[0] < place < max(counted):
            found.append((place, [Meaning(name, weight=-LIKELY) for name in _OFFERED]))
    return found


def _may_be_eggs(column, eggs: np.ndarray) -> bool:
    """Whole numbers, no running ones, none above the eggs set, not all the same."""
    if column.share_count < NUMBERS or column.share_fraction or column.running or 2 * column.filled < len(column.cells):
        return False
    values = column.values
    return bool(np.nanmax(np.append(values - eggs, 0.0)) <= 0) and len(set(values[~np.isnan(values)])) > (
        len(values) > 2
    )
