"""Days of the month alone ("Mis le (jour): 3") under a title or on a sheet that names the month -> whole dates."""

from __future__ import annotations

import datetime as dt
from functools import cache

from hatchkit.records import times
from hatchkit.records.sheets.block import Block
from hatchkit.records.sheets.cells import is_empty, is_number, text_of
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.when import is_dateish

#: What a heading of days says.
_OF = frozenset({"date", "day", "in"})
_COUNTED = frozenset("egg number count clear dead left alive hatched chicks storage age".split())


def with_months(block: Block, around, language: str | None) -> Block:
    """The block with its days of the month made dates, where the month and its year stand around it.

    Parameters
    ----------
    block : Block
    around : list of str
        Titles, the sheet's and the file's name, nearest first.
    language : str or None
    """
    if block.shape == "lines" or not block.rows:
        return block
    if any(is_dateish(cell) for cells in block.columns for cell in cells[:20]):
        return block
    places = [place for place in range(len(block.columns)) if _holds_days(block, place, language)]
    if not places:
        return block
    whole = next(filter(None, map(month_in, around)), None)
    months = [month_in(text) or whole for text in (block.sections or [""] * len(block.rows))]
    first: list = [None] * len(block.rows)
    for place in places if all(months) else ():
        for i, (cell, month) in enumerate(zip(block.columns[place], months, strict=True)):
            if is_empty(cell):
                continue
            day = _day_of(month, int(float(text_of(cell))), first[i])
            block.columns[place][i] = "" if day is None else day
            first[i] = first[i] or day
    return block


def _holds_days(block: Block, place: int, language) -> bool:
    """Whether a column's heading speaks of a day or of setting, and its cells are days of a month."""
    roles = all_roles(tokens(f"{block.groups[place]} {block.headings[place]}", language))
    dated = roles == {"date"} or roles & _OF and roles & {"set", "date", "hatch", "candle", "transfer"}
    if not dated or roles & _COUNTED:
        return False
    cells = [cell for cell in block.columns[place] if not is_empty(cell)]
    return bool(cells) and all(is_number(cell) and float(text_of(cell)) in range(1, 32) for cell in cells)


def _day_of(month: tuple[int, int], day: int, after: dt.date | None) -> dt.date | None:
    """That day of the month, or of the first month in which it comes after `after`."""
    for further in range(3):
        year, number = month[0] + (month[1] - 1 + further) // 12, (month[1] - 1 + further) % 12 + 1
        try:
            found = dt.date(year, number, day)
        except ValueError:
            continue
        if after is None or found >= after:
            return found
    return None


@cache
def month_in(text) -> tuple[int, int] | None:
    """(year, month) that a text names ("Avril 2025"), or None."""
    for found in times.find(str(text or ""), True, None):
        if found.kind == "month":
            return found.moment.astype(object).year, found.moment.astype(object).month
    return None
