"""A key of the keeper's own marks on the sheet ("C = clear, BR = blood ring") -> the words in place of the marks."""

from __future__ import annotations

import re
from dataclasses import replace

from hatchkit.records.sheets.cells import is_empty
from hatchkit.records.sheets.fatewords import fate_of
from hatchkit.records.words import plain

_ENTRY = re.compile(r"\s*([^\s=:,;]{1,4})\s*(?:=|:|–|->)\s*([^=;]{2,40}?)\s*")


def with_legend(grid, language: str | None):
    """The grid with its marks written out, where it holds a key of two marks or more; and the key's cells.

    Parameters
    ----------
    grid : Grid
    language : str or None

    Returns
    -------
    grid : Grid
    told : list of (int, str)
        Row (from 1) and text of each cell of the key; they are no data and blank in the grid.
    """
    marks, places = {}, []
    for row, cells in enumerate(grid.cells[:200]):
        for column, cell in enumerate(cells):
            found = _entries(cell, language)
            if found:
                marks |= found
                places.append((row, column))
    if len(marks) < 2:
        return grid, []
    keys = set(places)
    told = [(row + 1, str(grid.cells[row][column])) for row, column in places]
    cells = [
        [
            "" if (row, column) in keys else _written_out(cell, marks) if isinstance(cell, str) else cell
            for column, cell in enumerate(line)
        ]
        for row, line in enumerate(grid.cells)
    ]
    return replace(grid, cells=cells), told


def _written_out(cell: str, marks: dict) -> str:
    """The words of a mark, also where more is said behind it: "H late", "H (helped)"."""
    if plain(cell) in marks:
        return marks[plain(cell)]
    first = re.match(r"[^\s,;(]+(?=[\s,;(])", cell)
    if first and len(cell) < 40 and plain(first[0]) in marks and (len(first[0]) > 1 or first[0].isupper()):
        return marks[plain(first[0])] + cell[first.end() :]
    return cell


def _entries(cell, language) -> dict:
    """Mark -> words of a cell of a key; empty where the cell is none."""
    if not isinstance(cell, str) or is_empty(cell) or not re.search(r"=|->", cell):
        return {}
    found = {}
    for part in re.split(r"[;,\n](?=\s*[^\s=:,;]{1,4}\s*(?:=|->))", cell):
        match = _ENTRY.fullmatch(part)
        if match is None:
            return {}
        for words in re.split(r"\s*/\s*", match[2]):
            if fate_of(words, language) is not None:
                found[plain(match[1])] = words
                break
    return found
