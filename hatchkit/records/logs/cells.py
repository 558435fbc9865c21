"""The cells of a line, and which of them are numbers."""

from __future__ import annotations

import csv
import re

_NUMBER = re.compile(r"[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:[eE][+-]?\d+)?\s*(?:°?\s*[CFK]|°?\s*%(?:\s*r\.?h\.?)?)?",
                     re.IGNORECASE)

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
    """Whether a cell is a number, perhaps with its unit."""
    return bool(_NUMBER.fullmatch(text))
