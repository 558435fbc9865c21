"""A text written by hand in an editor -> rows of cells: parted by a mark, lined up with blanks, or a line to a cell."""

from __future__ import annotations

import csv
import re

#: Marks that may part the cells of a line.
_MARKS = ("\t", ";", "|", ",")
#: Share of the lines that a mark must cut into one and the same number of cells; commas stand in sentences, too.
MOSTLY = 0.8
#: Lines that must be lined up, each in so many cells at least, to be a table; and blanks that part two columns.
LEAST_LINES, LEAST_CELLS, LEAST_BLANKS = 3, 3, 2
#: Lines by which the mark is known; and letters of the longest line that may be lined up.
SAMPLE, LONGEST = 400, 1000
#: Blanks to which a tab in a line goes on.
_TAB = 8


def rows_of(text: str) -> list[list[str]]:
    """The rows of a text, one to a line, so that row numbers are those of its lines.

    Parameters
    ----------
    text : str

    Returns
    -------
    list of list of str
        Cells without blanks around them; a line that is in no table is one cell, one of dashes alone an empty row.
    """
    lines = ["" if _is_rule(line) else line for line in re.split(r"\r\n|\r|\n", text)]
    mark = _mark_of([line for line in lines if line.strip()][:SAMPLE])
    if mark is not None:
        return [[cell.strip() for cell in row] for row in csv.reader(lines, delimiter=mark)]
    lines = [line.expandtabs(_TAB).rstrip() for line in lines]
    starts = _column_starts([line for line in lines if _is_lined_up(line)])
    return [_cut(line, starts) if _is_lined_up(line) else [line.strip()] for line in lines]


def _is_rule(line: str) -> bool:
    return not line.strip(" \t-=_+*|")


def _mark_of(lines: list[str]) -> str | None:
    """The mark that cuts most lines into one and the same number of cells, or None."""
    for mark in _MARKS:
        widths = [len(row) for row in csv.reader(lines, delimiter=mark)]
        common = max(set(widths), key=widths.count, default=1)
        least = LEAST_CELLS if mark == "," else 2
        if common >= least and widths.count(common) >= MOSTLY * len(lines):
            return mark
    return None


def _is_lined_up(line: str) -> bool:
    return len(line) <= LONGEST and len(re.split(rf" {{{LEAST_BLANKS},}}", line.strip())) >= LEAST_CELLS


def _column_starts(lines: list[str]) -> list[int]:
    """Where the columns of lined-up lines begin: behind blanks that all of them have; empty for too few lines."""
    if len(lines) < LEAST_LINES:
        return []
    width = max(map(len, lines))
    written = [any(place < len(line) and line[place] != " " for line in lines) for place in range(width)]
    starts = [
        place for place in range(width) if written[place] and not any(written[max(place - LEAST_BLANKS, 0) : place])
    ]
    return starts if len(starts) >= LEAST_CELLS else []


def _cut(line: str, starts: list[int]) -> list[str]:
    if not starts:
        return [line.strip()]
    ends = [*starts[1:], len(line)]
    return [line[start:end].strip() for start, end in zip([0, *starts[1:]], ends, strict=True)]
