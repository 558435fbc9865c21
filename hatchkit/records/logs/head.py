"""How is a log laid out? Separator, decimal mark, headings, and the line on which the readings begin.

Judged from the first lines; the whole is then parsed once with what was decided here.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import partial
from statistics import mode

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.cells import is_number, split_line
from hatchkit.records.logs.headings import heading_lines, headings_of, is_shifted
from hatchkit.records.logs.names import part_of_time, role_of
from hatchkit.records.logs.stamps import kind_of

HEAD_BYTES = 65_536
_PLAIN_HEAD, _LONG_HEAD = 120, 350
SEPARATORS = (";", "\t", "|", ",", " ")


@dataclass(frozen=True)
class Head:
    """How one log is written; `first` and `header_lines` count lines from 0.

    Attributes
    ----------
    header : list of str or None
        One name for each column; None where the log has no headings.
    units : list of str
        Cells of the line of units below the headings; empty where there is none.
    dated_by : str
        "stamp" (a date in each line), "parts" (year, month, day in columns), "clock" (only the time of day), "serial"
        (a spreadsheet's number of the day) or "since" (counted from the start).
    shifted : bool
        One name fewer than cells: the line numbers at the left have none.
    """

    separator: str
    decimal: str
    width: int
    first: int
    header: list | None
    header_lines: list
    units: list
    preamble: list
    sample: list
    quoted: bool
    spaced: bool = False
    dated_by: str = "stamp"
    shifted: bool = False


def read_head(data: bytes) -> Head:
    """Decide how the UTF-8 text `data` is laid out.

    Raises HatchkitError saying why it is no sensor log. A file with headings and no line below them gives a Head whose
    `sample` is empty.
    """
    text = data[:HEAD_BYTES].decode("utf-8", "ignore").lstrip("\ufeff")
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    best = _best_cut(lines[:_PLAIN_HEAD])
    # A file whose first lines are nearly all readings has shown what it is; any other is looked at further down.
    if best is None or best.score[0] < 0.8 * _PLAIN_HEAD:
        seen, lines = len(lines[:_PLAIN_HEAD]), lines[:_LONG_HEAD]
        best = best if seen == len(lines) else _best_cut(lines)
    else:
        lines = lines[:_PLAIN_HEAD]
    if best is None:
        return _head_without_readings(lines)
    cells, width = best.cells, best.width
    fits = [number for number in best.good if abs(len(cells[number]) - width) <= 1]
    first = _first_alike(cells, fits) if best.dated_by == "stamp" else fits[0]
    first = _first_stamped(cells, first) if best.dated_by == "stamp" else first
    sample = [cells[number] for number in best.good if number >= first]
    block = heading_lines(cells, first, width, best.separator)
    names, units, main = headings_of(cells, block, lines, best.separator, sample)
    shifted = bool(names) and is_shifted(names, sample)
    names = ["", *names] if shifted else names
    return Head(
        separator=best.separator,
        decimal=_decimal(sample),
        width=max(width, len(sample[0])),
        first=first,
        header_lines=block if names else [],
        units=["", *units] if shifted and units else units,
        header=names or None,
        preamble=lines[: main if names and block else first],
        sample=sample,
        quoted='"' in "".join(lines[first:]),
        spaced=any(best.separator + " " in line for line in lines[first:]),
        dated_by=best.dated_by,
        shifted=shifted,
    )


@dataclass(frozen=True)
class _Cut:
    score: tuple
    separator: str
    cells: list
    good: list
    width: int
    dated_by: str


def _best_cut(lines: list) -> _Cut | None:
    """The separator that gives the most lines of readings of one width; None where no separator gives any.

    What is found in a few lines only (the date above a log that counts seconds) gives way to what most lines are.
    """
    few = None
    for dated_by, is_data in (
        ("stamp", _has_stamp),
        ("parts", None),
        ("clock", _has_clock),
        ("serial", None),
        ("since", None),
        ("stamp", partial(_has_stamp, blanks_too=True)),
    ):
        best = _best_of_kind(lines, dated_by, is_data)
        if best and best.score[0] >= 0.05 * len(lines):
            return best
        few = few or best
    return few


def _best_of_kind(lines: list, dated_by: str, is_data) -> _Cut | None:
    best = None
    for separator in SEPARATORS:
        # Blanks part the columns only where nothing else does in most lines.
        if sum(separator in line for line in lines) < 1 or (best and best.score[0] > len(lines) // 2):
            continue
        cells = [split_line(line, separator) for line in lines]
        below = {"parts": _below_parts, "serial": _below_serials, "since": _below_numbers}.get(dated_by)
        good = below(cells) if below else [number for number, row in enumerate(cells) if len(row) > 1 and is_data(row)]
        if not good or dated_by == "clock" and len(good) < 3:
            continue
        widths = [len(cells[number]) for number in good]
        usual = mode(widths)
        score = (widths.count(usual), len(good))
        if best is None or score > best.score:
            best = _Cut(score, separator, cells, good, usual, dated_by)
    return best


def _has_stamp(cells: list, blanks_too: bool = False) -> bool:
    kinds = [kind_of(cell) for cell in cells]
    if not any(kind in ("both", "date", "epoch") for kind in kinds):
        return False
    rest = [cell for cell, kind in zip(cells, kinds, strict=True) if kind in ("", "epoch")]
    return any(is_number(cell) for cell in rest if kind_of(cell) == "") or (
        blanks_too and len(rest) > 0 and all(cell == "" or not re.search(r"\d", cell) for cell in rest)
    )


def _has_clock(cells: list) -> bool:
    kinds = [kind_of(cell) for cell in cells]
    return kinds.count("time") == 1 and any(
        is_number(cell) for cell, kind in zip(cells, kinds, strict=True) if not kind
    )


#: Letters in which date forms are written, in twelve languages.
_LETTERS = {
    "yyyy": ("year",),
    "yy": ("year",),
    "jjjj": ("year",),
    "aaaa": ("year",),
    "rrrr": ("year",),
    "åååå": ("year",),
    "éééé": ("year",),
    "mm": ("month", "minute"),
    "dd": ("day",),
    "tt": ("day",),
    "gg": ("day",),
    "jj": ("day",),
    "nn": ("minute",),
    "hh": ("hour",),
    "uu": ("hour",),
    "mi": ("minute",),
    "mn": ("minute",),
    "ss": ("second",),
    "doy": ("yearday",),
}


def parts_of(row: list) -> dict:
    """Part of the date or time -> column, for a line of headings such as year, month, day, hour."""
    found: dict = {}
    for n, cell in enumerate(row):
        part = part_of_time(cell)
        letters = re.sub(r"[^a-zåé]", "", cell.lower())
        if letters in _LETTERS and (found or _LETTERS[letters][0] == "year"):
            # MM is the month the first time and the minute the second.
            part = next((name for name in _LETTERS[letters] if name not in found), "")
        if part:
            found.setdefault(part, n)
    if {"year", "day"} <= set(found) and not {"month", "yearday"} & set(found):
        found["yearday"] = found.pop("day")
    return found


def _below_parts(cells: list) -> list:
    for number, row in enumerate(cells):
        places = parts_of(row)
        if {"year", "month", "day"} <= set(places) or {"year", "yearday"} <= set(places):
            return [
                n
                for n, line in enumerate(cells)
                if n > number
                and len(line) > len(places)
                and all(
                    p < len(line)
                    and re.fullmatch(r"\d{1,4}(?:\.0+)?" if part != "yearday" else r"\d{1,3}(?:\.\d+)?", line[p])
                    for part, p in places.items()
                )
            ]
    return []


def _below_serials(cells: list) -> list:
    """Lines below a heading of one stamp that hold a spreadsheet's number of the day (46082.75)."""
    for number, row in enumerate(cells[:60]):
        at = [n for n, cell in enumerate(row) if role_of(cell) in ("stamp", "date", "time")]
        if len(at) == 1 and any(role_of(cell) in ("temp", "rh") for cell in row):
            return [
                n
                for n, line in enumerate(cells)
                if n > number and at[0] < len(line) and re.fullmatch(r"[2-6]\d{4}(?:[.,]\d+)?", line[at[0]])
            ]
    return []


def _below_numbers(cells: list) -> list:
    """Lines of numbers below a heading that names a temperature or humidity and no date."""
    for number, row in enumerate(cells[:60]):
        if any(role_of(cell) in ("temp", "rh") for cell in row if not re.search(r"\d{3}", cell)):
            return [
                n
                for n, line in enumerate(cells)
                if n > number and any(line) and all(is_number(cell) or cell == "" for cell in line)
            ]
    return []


def _first_alike(cells: list, fits: list) -> int:
    """The first line whose stamp stands where that of nearly all others does.

    What the lines at the top say of the log ("barn box,2025-05-31T17:00,1.0002") may look like a reading.
    """
    places = {
        number: next((n for n, cell in enumerate(cells[number]) if kind_of(cell) in ("both", "date", "epoch")), None)
        for number in fits
    }
    found = list(places.values())
    usual = mode(found)
    return next(number for number in fits if places[number] == usual or found.count(usual) < 0.8 * len(found))


def _first_stamped(cells: list, first: int) -> int:
    """The first of the lines above `first` that are readings too, though their values are missing.

    A header that was written once more among them does not stop the search.
    """
    kinds = [kind_of(cell) for cell in cells[first]]
    at = [n for n, kind in enumerate(kinds) if kind in ("both", "date", "epoch")][:1]
    for number in range(first - 1, -1, -1):
        row = cells[number]
        if not any(row):
            continue
        if all(n < len(row) and kind_of(row[n]) == kinds[n] for n in at) and len(row) > 1:
            first = number
        elif row not in cells[:number]:
            break
    return first


_COMMA, _DOT = re.compile(r"[+-]?\d*,\d+"), re.compile(r"[+-]?\d*\.\d+")


def _decimal(sample: list) -> str:
    cells = [cell for row in sample for cell in row if not kind_of(cell)]
    commas = sum(bool(_COMMA.match(cell)) for cell in cells)
    dots = sum(bool(_DOT.match(cell)) for cell in cells)
    return "," if commas > dots else "."


def _head_without_readings(lines: list) -> Head:
    """A Head without readings where some line is a header and nothing stands below; else HatchkitError says why not."""
    for number, line in enumerate(lines[:60]):
        for separator in SEPARATORS:
            cells = split_line(line, separator)
            roles = [role_of(cell) for cell in cells if cell]
            if any(role in ("stamp", "date", "time") for role in roles) and any(
                role in ("temp", "rh", "wet_bulb", "value") for role in roles
            ):
                below = [n for n in range(number + 1, len(lines)) if re.search(r"\d", lines[n])]
                if not below:
                    return Head(separator, ".", len(cells), number + 1, cells, [number], [], lines[:number], [], False)
                facts = dict(line=number + 1, below=below[0] + 1, example=lines[below[0]].strip()[:60])
                raise HatchkitError("refuse_nothing_below", facts)
    if not any(line.strip() for line in lines):
        raise HatchkitError("refuse_empty", {})
    number, lacks = _nearest(lines)
    facts = dict(line=None, example="") if number is None else dict(line=number + 1, example=lines[number].strip()[:60])
    raise HatchkitError("refuse_no_reading", dict(lacks=lacks, **facts))


def _nearest(lines: list) -> tuple[int | None, str]:
    """The line that comes nearest to a reading, and what it lacks: "number", "date" or "both"."""
    for number, line in enumerate(lines):
        for separator in SEPARATORS:
            kinds = [kind_of(cell) for cell in split_line(line, separator)]
            if "both" in kinds or "date" in kinds:
                return number, "number"
    for number, line in enumerate(lines):
        if re.search(r"\d+[.,]\d", line):
            return number, "date"
    return None, "both"
