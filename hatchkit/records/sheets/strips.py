"""Tables that stand side by side on one sheet -> a grid for each; headings in two languages -> in the first."""

from __future__ import annotations

from dataclasses import replace

from hatchkit.records.sheets.birds import species_in
from hatchkit.records.sheets.cells import is_empty, text_of
from hatchkit.records.sheets.lexicon import all_roles, tokens

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
