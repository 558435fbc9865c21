"""An hour that stands in a column of its own -> part of the date beside it."""

from __future__ import annotations

import datetime as dt
import re

from hatchkit.records.sheets.block import Block
from hatchkit.records.sheets.cells import cell_words, is_empty, text_of
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.when import is_dateish
from hatchkit.records.words import plain

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
