"""Where does another export begin within one file, and what is only the heading of a further page?"""

from __future__ import annotations

import numpy as np

from hatchkit.records.logs.cells import split_line
from hatchkit.records.logs.headings import is_units
from hatchkit.records.logs.lines import line_text
from hatchkit.records.logs.names import role_of

_MOST_SECTIONS = 200
_MOST_ODD_LINES = 5000
_LONGEST_HEADING = 2000


def cuts_of(data: bytes, head, raw, when) -> list:
    """Numbers of the lines, from 0, at which the file begins anew with other headings: several exports put together.

    Headings that are written once more as they stand above, as a printer does on each page, part nothing: what is
    below them is read by the columns of the first.
    """
    bad = np.flatnonzero(np.isnat(when.local))
    if not len(bad) or len(bad) > _MOST_ODD_LINES or head.header is None:
        return []
    known = {_cells(line_text(data, number), head) for number in head.header_lines}
    known.add(tuple(name for name in head.header if name))
    ends = np.flatnonzero(np.frombuffer(data, dtype=np.uint8) == 10)
    cuts, again = [], None
    for row in bad:
        number = head.first + int(row)
        if number - 1 >= len(ends):
            break
        start = int(ends[number - 1]) + 1 if number else 0
        stop = int(ends[number]) if number < len(ends) else len(data)
        if stop - start > _LONGEST_HEADING:
            continue
        cells = _cells(data[start:stop].decode("utf-8", "replace"), head)
        roles = {role_of(cell) for cell in cells}
        # A heading of the measures alone is one too: the word for the time may be broken or unknown.
        named = roles & {"stamp", "date", "time"} and roles & {"temp", "rh", "value"} or {"temp", "rh"} <= roles
        if len(cells) < 2 or not named:
            continue
        if cells not in known:
            # Other units below the same headings: the section begins with these headings.
            cuts.append(again if again == number - 1 and is_units(list(cells)) else number)
        elif _begins_anew(when.local, int(row)):
            cuts.append(number - 1)
        again = number if cells in known else None
    return sorted(set(cuts))[:_MOST_SECTIONS]


def _cells(line: str, head) -> tuple:
    return tuple(cell for cell in split_line(line, head.separator) if cell)


def _begins_anew(local, row: int) -> bool:
    """Whether a heading written once more has a title above it and readings of earlier times below it: another log.

    In a log that is written newest first every further page is of earlier times; there it is no sign.
    """
    after, before = local[row + 1 :], local[:row]
    after, before = after[~np.isnat(after)], before[~np.isnat(before)]
    if row < 2 or not np.isnat(local[row - 1]) or not len(after) or not len(before) or after[0] >= before[-1]:
        return False
    return len(before) < 2 or np.median(np.diff(before).astype(np.int64)) >= 0
