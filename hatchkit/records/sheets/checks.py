"""What a sheet's own sums and percentages say of the reading: where they differ, that is a doubt, and told."""

from __future__ import annotations

import numpy as np

from hatchkit.problems import problem
from hatchkit.records.sheets.amounts import measure_of
from hatchkit.records.sheets.cells import is_empty, is_number
from hatchkit.records.sheets.fields import COUNTS
from hatchkit.records.sheets.lexicon import all_roles, tokens

#: A percentage that was worked out lies this near the share read, in points; further off than FAR it is another number.
NEAR, FAR = 0.6, 1.0
#: What a heading says whose percentages are those of a hatch.
_OF_HATCH = frozenset({"hatched", "hatch", "fertile", "chicks", "clear"})


def checked(item, part) -> list[dict]:
    """Problem rows for totals and percentages of a table of batches that its reading does not give.

    Parameters
    ----------
    item : Understood
    part : Part
    """
    return _totals(item) + _percentages(item, part)


def _totals(item) -> list[dict]:
    """A row of totals that differs from the counts above it, where another of its totals agrees."""
    block, found = item.block, []
    rows, since = np.array(block.rows), 0
    for row, cells in block.totals:
        above, part = rows < row, (rows < row) & (rows > since)
        since = row
        differ, agree = [], 0
        for column, meaning in zip(item.columns, item.chosen, strict=True):
            cell = cells.get(column.heading)
            if meaning is None or meaning.field not in COUNTS or len(column.values) != len(rows):
                continue
            if cell is None or is_empty(cell) or not is_number(cell):
                continue
            written = measure_of(cell, {"": 1.0})[0]
            sums = [float(np.nansum(column.values[own])) for own in (above, part)]
            if written in sums:
                agree += 1
            elif written is not None and written == int(written):
                differ.append((column.heading, int(written), int(sums[0])))
        if differ and agree:
            headings, written, worked = map(list, zip(*differ, strict=True))
            facts = dict(headings=headings, written=written, sums=worked)
            found.append(_doubt(block, "total_differs", row, headings[0], facts))
    return found


def _percentages(item, part) -> list[dict]:
    """Rows whose percentage is not what the counts give, in a column that most rows agree with."""
    table, block = part.batches, item.block
    if "hatched" not in table or "eggs_set" not in table or len(set(block.rows)) < len(block.rows):
        return []
    clear = np.zeros(len(table))
    if len(part.looks):
        sums = part.looks.groupby("place")["clear"].sum()
        clear = sums.reindex(range(len(table)), fill_value=0.0).to_numpy(float)
    eggs, hatched = (table[name].to_numpy(float) for name in ("eggs_set", "hatched"))
    with np.errstate(divide="ignore", invalid="ignore"):
        shares = [100 * hatched / eggs, 100 * hatched / (eggs - clear), 100 * (eggs - clear) / eggs, 100 * clear / eggs]
    found = []
    for column in item.columns:
        roles = all_roles(tokens(column.heading, item.language))
        if column.percents is None or not roles & _OF_HATCH or len(column.percents) != len(block.rows):
            continue
        at = {row: place for place, row in enumerate(block.rows)}
        told = np.array([column.percents[at[row]] if row in at else np.nan for row in table["row"]], float)
        tried = ~np.isnan(told) & ~np.isnan(hatched) & (eggs > 0)
        if tried.sum() < 2:
            continue
        best = max(shares, key=lambda share: int((np.abs(share - told)[tried] <= NEAR).sum()))
        near = np.abs(best - told) <= NEAR
        if 2 * (near & tried).sum() <= tried.sum():
            continue  # a percentage of something else: no telling what
        for place in np.flatnonzero(tried & ~(np.abs(best - told) <= FAR)):
            facts = dict(heading=column.heading, written=round(told[place], 1), worked=round(float(best[place]), 1))
            found.append(_doubt(block, "percent_differs", int(table["row"].iloc[place]), column.heading, facts))
    return found


def _doubt(block, code: str, row, heading: str, facts: dict) -> dict:
    return problem("doubtful", code=code, facts=facts, file=block.file, sheet=block.sheet, row=int(row), column=heading)
