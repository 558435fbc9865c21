"""What was read and is not used until the person has answered: tables with too many eggs, losses worked out in doubt.

Where the eggs left are written, the losses between are worked out: with a column left out these are of the wrong look
or class, and nothing on the sheet would show it. What is written stays; the rest is unaccounted for until told.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records.sheets.assign import LIKELY, Rival
from hatchkit.records.sheets.candidates import PLAIN_OUT, TOLD
from hatchkit.records.sheets.fields import COUNTS, USUAL, Meaning
from hatchkit.records.sheets.ledger import FEW
from hatchkit.records.sheets.meanings import meanings
from hatchkit.records.sheets.parts import Part
from hatchkit.records.sheets.profile import SAMPLE

#: Share of the eggs set that a slip of counting may be; rows from which too many eggs speak against a reading.
SLIP_SHARE, LEAST_TRIED = 0.05, 2
#: A slip in most of this many rows is none.
LEAST_SLIPS = 3
#: Share of whole numbers from which a column may be one of eggs.
NUMBERS = 0.8
#: What a column of eggs under an unknown heading is offered as.
_OFFERED = ("clear", "dead", "left", "dis", "hatched")


def without_too_many(item, part: Part) -> tuple[Part | None, list[dict]]:
    """A table less its batches, and the question about them, where most rows tell of more eggs than were set.

    A keeper miscounts in a row or two; where most rows hold too many, the columns were misread.
    """
    table = part.batches
    if not len(table) or {"eggs_set", "set_at"} <= set(item.block.headings):
        return part, []
    rest = table["rest"].astype(float)
    tried = rest.notna() & table["hatched"].notna()
    slip = np.maximum(FEW, SLIP_SHARE * table["eggs_set"].astype(float))
    over = tried & ((rest < -slip) | table["broken"].astype(bool))
    if tried.sum() >= LEAST_SLIPS and (tried & (rest < 0)).sum() > 0.5 * tried.sum():
        over |= tried & (rest < 0)
    if (tried & (rest == 0)).sum() <= 0.5 * tried.sum():
        # A column of losses that was left out because the eggs exceed with it is no way out.
        over |= tried & (rest < _left_out_losses(item, table))
    if tried.sum() < LEAST_TRIED or over.sum() <= 0.5 * tried.sum():
        return part, []
    asked = dict(
        code="sums",
        file=item.block.file,
        sheet=item.block.sheet,
        taken="left_out",
        rows=[int(row) for row in table.loc[over, "row"]],
        names=[str(name or "") for name in table.loc[over].get("name", [])],
    )
    return None, [asked]


def _left_out_losses(item, table: pd.DataFrame) -> np.ndarray:
    """Eggs by row of the table in columns that words plainly name as losses and that the reading left out."""
    eggs = pd.Series(0.0, item.block.rows[:SAMPLE])
    for column, meaning in zip(item.columns, item.chosen, strict=True):
        if meaning.field == "ignore" and meaning.weight <= PLAIN_OUT:
            words = meanings(column.heading, column.group, item.language)
            if words and words[0].field in ("clear", "dead", "dis", "hatched", "pipped", "removed"):
                eggs += np.nan_to_num(column.values)
    return table["row"].map(eggs).fillna(0.0).to_numpy() if eggs.index.is_unique else np.zeros(len(table))


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
        if item.reading.margins[place] >= LIKELY or not item.reading.rivals[place]:
            item.reading.rivals[place] = [Rival(each, 0.0, item.reading.adds_up, item.reading.rows) for each in offered]
        item.reading.margins[place] = 0.0
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
