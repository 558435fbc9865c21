"""What kind of text a sensor file is, judged from its first lines: encoding, separator, decimal
mark, header, and the line on which the readings begin.

The whole file is then parsed once with what was decided here; nothing is guessed row by row.
"""

from __future__ import annotations

import csv
import re
from dataclasses import dataclass

from hatchkit.problems import HatchkitError
from hatchkit.records import clock_words
from hatchkit.records.sensors_names import role_of

HEAD_BYTES = 65_536
_MOST_PREAMBLE = 200
_PLAIN_HEAD = 120
SEPARATORS = (";", "\t", "|", ",", " ")
NAMES = {";": "semicolon", "\t": "tab", "|": "bar", ",": "comma", " ": "spaces"}
_NUMBER = re.compile(r"[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:[eE][+-]?\d+)?\s*(?:°?\s*[CFK]|%(?:\s*r\.?h\.?)?)?",
                     re.IGNORECASE)


@dataclass(frozen=True)
class Head:
    """How one file is written; `first` and `header_line` count lines from 0."""

    separator: str
    decimal: str
    width: int
    first: int
    header: list | None
    header_line: int | None
    units: list | None
    preamble: list
    sample: list
    quoted: bool
    spaced: bool = False


def as_utf8(data: bytes) -> tuple[bytes, str]:
    """The same text as UTF-8 without a byte order mark, and the encoding it was in.

    Raises HatchkitError where the bytes are not text (NUL bytes that are no UTF-16).
    """
    start = data[:HEAD_BYTES]
    if start.startswith(b"PK\x03\x04") or start.startswith(b"\xd0\xcf\x11\xe0"):
        raise HatchkitError("it is a workbook, not a text file; export the log as CSV")
    if start.startswith(b"%PDF"):
        raise HatchkitError("it is a PDF, not a text file; export the log as CSV")
    if start.startswith((b"\xff\xfe", b"\xfe\xff")):
        return data.decode("utf-16", "replace").encode(), "utf-16"
    nuls = start.count(0)
    if nuls > len(start) // 4:
        odd = start[1::2].count(0)
        name = "utf-16-le" if odd > nuls // 2 else "utf-16-be"
        text = data.decode(name, "replace")
        if sum(c.isprintable() or c.isspace() for c in text[:2000]) > 0.9 * len(text[:2000]):
            return text.encode(), name
    binary = sum(start.count(bytes([code])) for code in range(32) if code not in (0, 9, 10, 12, 13, 26, 27))
    if binary > len(start) // 100:
        raise HatchkitError("it holds bytes that are no text")
    if start.startswith(b"\xef\xbb\xbf"):
        return data[3:], "utf-8"
    # A character may be cut at the end of the head; judge by what comes before.
    try:
        start[: max(len(start) - 4, 0) if len(data) > len(start) else None].decode("utf-8")
        return data, "utf-8"
    except UnicodeDecodeError:
        return data.decode("cp1252", "replace").encode(), "cp1252"


def split_line(line: str, separator: str) -> list[str]:
    """The cells of one line, quotes taken off."""
    if separator == " ":
        return line.split()
    if '"' in line:
        return [cell.strip() for cell in next(csv.reader([line], delimiter=separator), [])]
    return [cell.strip() for cell in line.split(separator)]


def is_number(text: str) -> bool:
    """Whether a cell is a number, perhaps with its unit."""
    return bool(_NUMBER.fullmatch(text))


def _is_data(cells: list, blanks_too: bool) -> bool:
    kinds = [clock_words.kind_of(cell) for cell in cells]
    if not any(kind in ("both", "date", "epoch") for kind in kinds):
        return False
    rest = [cell for cell, kind in zip(cells, kinds, strict=True) if kind in ("", "epoch")]
    if sum(kind == "epoch" for kind in kinds) == len(rest):
        return len(rest) > 1
    return any(is_number(cell) for cell in rest if clock_words.kind_of(cell) == "") or (
        blanks_too and len(rest) > 0 and all(cell == "" or not re.search(r"\d", cell) for cell in rest))


def read_head(data: bytes) -> Head:
    """Decide how the UTF-8 text `data` is laid out.

    Raises HatchkitError saying why it is no sensor log. A file with a header and no reading gives
    a Head whose `sample` is empty.
    """
    text = data[:HEAD_BYTES].decode("utf-8", "replace").lstrip("\ufeff")
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    if len(data) > HEAD_BYTES:
        lines = lines[:-1] or lines
    best = _best_cut(lines[:_PLAIN_HEAD])
    # A file whose first lines are nearly all readings has shown what it is; any other is looked at further down.
    if best is None or best[0][0] < 0.8 * _PLAIN_HEAD:
        lines = lines[: _MOST_PREAMBLE + 150]
        best = _best_cut(lines)
    else:
        lines = lines[:_PLAIN_HEAD]
    if best is None:
        return _head_without_readings(lines)
    _, separator, cells, good, width = best
    first = next(number for number in good if abs(len(cells[number]) - width) <= 1)
    first = _first_stamped(cells, first)
    if first > _MOST_PREAMBLE:
        raise HatchkitError(f"the first line with a date and a number is line {first + 1}, too far down for a log")
    header_line, units = _header_line(cells, first, width), None
    below = _filled_above(cells, first)
    if below is not None and _is_units(cells[below]):
        above = _header_line(cells, below, width)
        if above is not None:
            header_line, units = above, cells[below]
    if header_line is not None and not _has_known_word(cells[header_line]):
        header_line = units = None
    sample = [cells[number] for number in good if number >= first]
    return Head(separator=separator, decimal=_decimal(sample, separator), width=max(width, len(sample[0])),
                first=first, header_line=header_line, units=units,
                header=None if header_line is None else _aligned(lines[header_line], separator, sample[0]),
                preamble=lines[: first if header_line is None else header_line], sample=sample,
                quoted='"' in "".join(lines[first:]), spaced=any(separator + " " in line for line in lines[first:]))


def _best_cut(lines: list) -> tuple | None:
    """The separator that gives the most lines of readings of one width.

    Returns (score, separator, cells of every line, numbers of the lines with readings, width), or
    None where no separator gives any.
    """
    best = None
    for blanks_too in (False, True):
        for separator in SEPARATORS:
            # Blanks part the columns only where nothing else does in most lines.
            if sum(separator in line for line in lines) < 1 or (best and best[0][0] > len(lines) // 2):
                continue
            cells = [split_line(line, separator) for line in lines]
            good = [number for number, row in enumerate(cells) if len(row) > 1 and _is_data(row, blanks_too)]
            if not good:
                continue
            widths = [len(cells[number]) for number in good]
            usual = max(set(widths), key=widths.count)
            score = (widths.count(usual), len(good))
            if best is None or score > best[0]:
                best = (score, separator, cells, good, usual)
        if best:
            break
    return best


def _first_stamped(cells: list, first: int) -> int:
    """The first of the lines above `first` that are readings too, though their values are missing.

    A header that was written once more among them does not stop the search.
    """
    kinds = [clock_words.kind_of(cell) for cell in cells[first]]
    at = [n for n, kind in enumerate(kinds) if kind in ("both", "date", "epoch")][:1]
    for number in range(first - 1, -1, -1):
        row = cells[number]
        if not any(row):
            continue
        if all(n < len(row) and clock_words.kind_of(row[n]) == kinds[n] for n in at):
            first = number
        elif row not in cells[:number]:
            break
    return first


def _aligned(line: str, separator: str, data: list) -> list:
    """Names of the columns, one for each cell of the readings.

    Between blanks a name may itself hold a blank, and one name may stand over a date and a time.
    """
    names = split_line(line, separator)
    if separator == " ":
        wide = [name.strip() for name in re.split(r"\s{2,}|\t", line.strip())]
        names = wide if len(data) - 2 <= len(wide) <= len(data) else names
    kinds = [clock_words.kind_of(cell) for cell in data]
    for place in range(1, len(kinds)):
        if (kinds[place - 1: place + 1] == ["date", "time"] and len(names) < len(data)
                and place <= len(names) and role_of(names[place - 1]) in ("stamp", "date", "time")
                and (place == len(names) or role_of(names[place]) != "time")):
            names = [*names[:place], "", *names[place:]]
    return names


def _has_known_word(row: list) -> bool:
    return any(role_of(cell) not in ("", "record", "text", "summary") for cell in row if cell)


def _filled_above(cells: list, before: int) -> int | None:
    """The nearest line above `before` that is not blank, at most five up."""
    return next((n for n in range(before - 1, max(before - 6, -1), -1) if any(cells[n])), None)


def _header_line(cells: list, before: int, width: int) -> int | None:
    """The line above `before` if it has words in about as many cells as the readings have."""
    number = _filled_above(cells, before)
    if number is None:
        return None
    filled = [cell for cell in cells[number] if cell]
    worded = sum(bool(re.search(r"[^\W\d_]|[°%#]", cell)) for cell in filled)
    wide = len(cells[number]) >= max(2, width - 1) or len(filled) >= max(2, width - 2)
    return number if wide and worded >= 2 and worded >= len(filled) / 2 else None


_UNIT = re.compile(r"[\[(]?\s*(?:°\s*[CFK]|[CFK]|deg\.?\s*[CFK]|%(?:\s*r\.?[hf]\.?)?)\s*[\])]?", re.IGNORECASE)
_SHORT = re.compile(r"[\[(]?\s*(?:[-a-z:./ ]{1,19}|.{0,3})\s*[\])]?", re.IGNORECASE)


def _is_units(row: list) -> bool:
    """Whether a line below the header holds units: one at least, and else only short words."""
    filled = [cell for cell in row if cell]
    return any(_UNIT.fullmatch(cell) for cell in filled) and all(
        _UNIT.fullmatch(cell) or _SHORT.fullmatch(cell) for cell in filled)


_COMMA, _DOT = re.compile(r"[+-]?\d*,\d+"), re.compile(r"[+-]?\d*\.\d+")


def _decimal(sample: list, separator: str) -> str:
    cells = [cell for row in sample for cell in row if not clock_words.kind_of(cell)]
    commas = sum(bool(_COMMA.match(cell)) for cell in cells)
    dots = sum(bool(_DOT.match(cell)) for cell in cells)
    return "," if commas > dots else "."


def _head_without_readings(lines: list) -> Head:
    """A Head without readings where some line is a header; else HatchkitError says why not."""
    for number, line in enumerate(lines[:60]):
        for separator in SEPARATORS:
            cells = split_line(line, separator)
            roles = [role_of(cell) for cell in cells if cell]
            if any(role in ("stamp", "date", "time") for role in roles) and any(
                    role in ("temp", "rh", "wet_bulb", "value") for role in roles):
                return Head(separator, ".", len(cells), number + 1, cells, number, None, lines[:number], [], False)
    if not any(line.strip() for line in lines):
        raise HatchkitError("the file is empty")
    raise HatchkitError("no line of it holds both a date with a time and a number")
