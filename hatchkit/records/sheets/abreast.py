"""What a sheet holds side by side -> a grid or a block for each: tables, rounds, headings in two languages.

And forms that call one thing by two names -> one column.
"""

from __future__ import annotations

from dataclasses import replace

from hatchkit.records.sheets.birds import species_in
from hatchkit.records.sheets.cells import is_empty, text_of
from hatchkit.records.sheets.fields import COUNTS
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.meanings import meanings


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
