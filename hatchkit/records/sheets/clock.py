"""Dates written in two places: an hour in a column of its own; days below or beside the name of their month."""

from __future__ import annotations

import datetime as dt
import re
from functools import cache

from hatchkit.records import times
from hatchkit.records.sheets.cells import cell_words, is_empty, is_number, text_of
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.parts import Block
from hatchkit.records.sheets.when import is_dateish
from hatchkit.records.words import plain

#: What a heading of days says.
_OF_DAYS = frozenset({"date", "day", "in"})
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
    dated = roles == {"date"} or roles & _OF_DAYS and roles & {"set", "date", "hatch", "candle", "transfer"}
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


_CLOCK = re.compile(r"\d{1,2}(?:[:.h]\d{2}){0,2}\s*(?:h|hrs?|uhr|u|kl|a\.?m\.?|p\.?m\.?|o'?clock)?", re.I)
#: What a date is of, by the words of its heading.
_OF = frozenset({"set", "in", "hatch", "hatched", "candle", "transfer", "takeoff", "first", "second", "late"})


def with_hours(block: Block, language: str | None) -> Block:
    """The block with the hours of such columns written into their dates; the hours' own column stays to be seen.

    Parameters
    ----------
    block : Block
    language : str or None
    """
    if block.shape == "lines" or not block.rows:
        return block
    roles = [all_roles(tokens(heading, language)) for heading in block.headings]
    dates = [place for place, cells in enumerate(block.columns) if _share(cells, is_dateish) >= 0.5]
    for place, cells in enumerate(block.columns):
        if "time" in roles[place] and place not in dates and _share(cells, _is_clock) >= 0.6:
            target = _date_of(place, roles, dates)
            if target is not None:
                block.columns[target] = [_joined(*pair) for pair in zip(block.columns[target], cells, strict=True)]
                block.hours = (*block.hours, place)
    return block


def _share(cells, is_one) -> float:
    kept = [cell for cell in cells[:60] if not is_empty(cell) and plain(cell) not in cell_words("unknown")]
    return sum(map(is_one, kept)) / len(kept) if kept else 0.0


def _is_clock(cell) -> bool:
    return isinstance(cell, dt.time) or isinstance(cell, str) and bool(_CLOCK.fullmatch(cell.strip()))


def _date_of(place: int, roles, dates) -> int | None:
    """The date that an hour belongs to: one of the same step of the work, else the nearest on its left."""
    same = [date for date in dates if roles[place] & roles[date] & _OF]
    left = [date for date in dates if date < place]
    return next(iter(same or left[-1:] or dates[:1]), None)


def _joined(date, hour):
    if is_empty(hour) or is_empty(date) or not _is_clock(hour):
        return date
    if isinstance(date, dt.datetime) and (date.hour or date.minute):
        return date
    if isinstance(date, dt.date) and isinstance(hour, dt.time):
        return dt.datetime.combine(date, hour)
    day = f"{date:%Y-%m-%d}" if isinstance(date, dt.date) else text_of(date)
    clock = f"{hour:%H:%M}" if isinstance(hour, dt.time) else text_of(hour)
    return f"{day} {clock}"
