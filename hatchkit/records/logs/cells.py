"""The cells of a line, and which of them are numbers."""

from __future__ import annotations

import csv
import re

_NUMBER = re.compile(
    r"[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:[eE][+-]?\d+)?\s*"
    r"(?:°?\s*[CFK]|°?\s*%(?:\s*r\.?\s?[hf]\.?)?)?",
    re.IGNORECASE,
)

_BLANKS = re.compile(r'"([^"]*)"|(\S+)')


def split_line(line: str, separator: str) -> list[str]:
    """The cells of one line, quotes taken off."""
    if separator == " ":
        return [quoted or bare for quoted, bare in _BLANKS.findall(line)] if '"' in line else line.split()
    if '"' in line:
        try:
            return [cell.strip() for cell in next(csv.reader([line], delimiter=separator), [])]
        except csv.Error:
            pass
    return [cell.strip() for cell in line.split(separator)]


def is_number(text: str) -> bool:
    """Whether a cell is a number, perhaps with its unit and a mark behind it."""
    return bool(_NUMBER.fullmatch(text) or _NUMBER.fullmatch(without_mark(text)))


# Letters are marks behind a decimal only: "24 h" is no reading.
_MARK = re.compile(r"(.*\d.*?)\s*[*!?#†‡^~]{1,3}|([+-]?\d+[.,]\d+(?:\s*°?\s*[CFK%])?)\s*(?:HH?|LL?|HI|LO|AL|ALM|ALARM)")
_LONE = re.compile(rb"(?<=\d)([ \t]+)([*!?#]{1,3}|HH?|LL?|HI|LO|AL|ALM|ALARM)(?=[ \t\r]|$)")
_SIGNS = (b"*", b"!", b"?", b"#", b" H", b" L", b" A", b"\tH", b"\tL", b"\tA")


def without_mark(text: str) -> str:
    """A cell without the mark that some loggers put behind a value of doubt or alarm: "37.5*", "37,5 !", "37.5 H"."""
    match = _MARK.fullmatch(text)
    return text if match is None else match[1] or match[2]


def marks_joined(data: bytes, width: int) -> bytes:
    """Lines parted by blanks, each mark that stands apart put to its value, or the cells behind it would move.

    Only lines with as many cells too many as they have marks; where each line has one, it is a column of its own.
    """
    if not any(sign in data for sign in _SIGNS):
        return data
    lines = data.split(b"\n")
    for number, line in enumerate(lines):
        marks = len(_LONE.findall(line))
        if marks and len(line.split()) - marks == width:
            lines[number] = _LONE.sub(rb"\2\1", line)
    return b"\n".join(lines)
