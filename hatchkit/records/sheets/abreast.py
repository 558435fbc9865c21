"""What a sheet holds side by side -> a grid or a block for each, or one column of several.

Tables, rounds and headings in two languages are parted; one thing under two names, an hour in a column of its own and
days below the name of their month are joined.
"""

from __future__ import annotations

import datetime as dt
import re
from dataclasses import replace
from functools import cache

from hatchkit.records import times
from hatchkit.records.sheets.birds import species_in
from hatchkit.records.sheets.cells import cell_words, is_empty, is_number, text_of
from hatchkit.records.sheets.fields import COUNTS
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.meanings import meanings
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
            day = _day_of(month, int(_plain(cell)), first[i])
            block.columns[place][i] = "" if day is None else day
            first[i] = first[i] or day
    return block


def _plain(cell) -> float:
    """A plain number, with a dot or a comma."""
    return float(text_of(cell).replace(",", "."))


def _holds_days(block: Block, place: int, language) -> bool:
    """Whether a column's heading speaks of a day or of setting, and its cells are days of a month."""
    roles = all_roles(tokens(f"{block.groups[place]} {block.headings[place]}", language))
    dated = roles == {"date"} or roles & _OF_DAYS and roles & {"set", "date", "hatch", "candle", "transfer"}
    if not dated or roles & _COUNTED:
        return False
    cells = [cell for cell in block.columns[place] if not is_empty(cell)]
    return bool(cells) and all(is_number(cell) and _plain(cell) in range(1, 32) for cell in cells)


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


def with_one_name(block, language: str | None):
    """The block of forms with columns joined that mean the same number and are never both filled.

    Parameters
    ----------
    block : Block
    language : str or None
    """
    if block.shape != "form" or len(block.rows) < 2:
        return block
    kept: dict = {}
    drop = []
    for place, (heading, group) in enumerate(zip(block.headings, block.groups, strict=True)):
        named = meanings(heading, group, language)
        if not named or named[0].field not in COUNTS:
            continue
        key = (named[0].field, named[0].look)
        first = kept.setdefault(key, place)
        pairs = list(zip(block.columns[first], block.columns[place], strict=True))
        if first != place and not any(not is_empty(one) and not is_empty(other) for one, other in pairs):
            block.columns[first] = [other if is_empty(one) else one for one, other in pairs]
            drop.append(place)
    for name in ("headings", "groups", "columns"):
        setattr(block, name, [value for place, value in enumerate(getattr(block, name)) if place not in drop])
    return block


#: Headings that must come again under each group.
LEAST_SHARED = 3


def by_round(block) -> list:
    """The block as one block per group of columns, where the groups hold the same headings.

    Columns outside the groups (the nest, the pair) belong to each.

    Parameters
    ----------
    block : Block
    """
    groups = [group for group in dict.fromkeys(block.groups) if group]
    places = {group: [i for i, other in enumerate(block.groups) if other == group] for group in groups}
    heads = [[block.headings[i].strip().lower() for i in places[group]] for group in groups]
    alike = len(groups) > 1 and len(heads[0]) >= LEAST_SHARED and all(head == heads[0] for head in heads[1:])
    if not alike or not _of_eggs(block, places[groups[0]]):
        return [block]
    shared = [i for i, group in enumerate(block.groups) if not group]
    return [_one(block, shared, places[group], group, first=group == groups[0]) for group in groups]


def _of_eggs(block, places) -> bool:
    """Whether a group's headings name eggs or their setting."""
    return any(
        meaning.field in ("set_at", "eggs_set", "egg", "eggs_weighed")
        for place in places
        for meaning in meanings(block.headings[place], "", None)
    )


def _one(block, shared, mine, group: str, *, first: bool):
    """One round; rows in which it says nothing are no rows of it."""
    order = [*shared, *mine]
    rows = [row for row in range(len(block.rows)) if first or any(not is_empty(block.columns[i][row]) for i in mine)]
    return replace(
        block,
        headings=[block.headings[i] for i in order],
        groups=[""] * len(order),
        columns=[[block.columns[i][row] for row in rows] for i in order],
        rows=[block.rows[row] for row in rows],
        sections=[block.sections[row] or group for row in rows],
        titles=[*block.titles, group],
        skipped=list(block.skipped) if first else [],
    )


#: Rows and columns that a part must fill to be a table of its own.
LEAST_ROWS, LEAST_COLUMNS = 3, 3


def side_by_side(grid) -> list:
    """The grid cut at blank columns, where what stands right of them names again what the left part names.

    A blank column alone parts nothing: many keep one before their notes. A key that comes again ("No.") does.

    Parameters
    ----------
    grid : Grid
    """
    width = max((len(row) for row in grid.cells), default=0)
    filled = [any(place < len(row) and not is_empty(row[place]) for row in grid.cells[:400]) for place in range(width)]
    edges = [place for place in range(1, width) if filled[place] and not filled[place - 1] and any(filled[:place])]
    for edge in edges:
        left = [row[:edge] for row in grid.cells]
        right = [row[edge:] for row in grid.cells]
        if _is_table(left) and _is_table(right) and _same_key(left, right):
            return [replace(grid, cells=left), *side_by_side(replace(grid, cells=right))]
    return [grid]


def _is_table(cells) -> bool:
    full = [sum(not is_empty(cell) for cell in row) for row in cells]
    return sum(count >= LEAST_COLUMNS for count in full) >= LEAST_ROWS


def _same_key(left, right) -> bool:
    """Whether the right part's first heading is one of the left part's, in the same row."""
    for one, other in zip(left, right, strict=True):
        key = text_of(other[0]) if other and isinstance(other[0], str) else None
        if key and sum(not is_empty(cell) for cell in other) >= LEAST_COLUMNS:
            return any(text_of(cell) == key for cell in one if isinstance(cell, str))
    return False


def _says(text: str) -> bool:
    """Whether words of a text name a field, as those of a heading do and those of a bird do not."""
    return bool(all_roles(tokens(text)) & _FIELDS)


#: What headings of batches name; a row of two birds each ("Makou / Muscovy") holds none of it.
_FIELDS = frozenset("batch set egg date clear dead hatched chicks left candle notes hatch".split())


def in_one_language(grid):
    """The grid with its row of headings in the first of two languages ("Clears / Clairs"), if it is in two.

    Parameters
    ----------
    grid : Grid
    """
    cells = list(grid.cells)
    for row, line in enumerate(cells[:8]):
        texts = [cell for cell in line if isinstance(cell, str) and not is_empty(cell)]
        doubled = sum(" / " in text for text in texts)
        birds = sum(bool(species_in(text)) for text in texts)
        headed = sum(map(_says, texts)) >= 0.5 * doubled and birds < 0.5 * len(texts)
        if len(texts) >= 4 and doubled >= 0.6 * len(texts) and headed:
            cells[row] = [cell.partition(" / ")[0] if isinstance(cell, str) else cell for cell in line]
            return replace(grid, cells=cells)
    return grid
