"""Dates in cells, titles and sentences of a sheet, by the one reader of times (`hatchkit.records.times`)."""

from __future__ import annotations

import datetime as dt
import re
from functools import cache

import numpy as np

from hatchkit.records import times
from hatchkit.records.sheets.cells import is_empty


@cache
def looks_like_date(text: str) -> bool:
    """Whether a text is a date in either order, with or without its year; "12.5" is a number."""
    if not isinstance(text, str) or not 3 <= len(text) <= 40 or not any(c.isdigit() for c in text):
        return False
    if re.fullmatch(r"[+-]?\d+[.,]\d+", text):
        return False
    text = _end_of_range(text)
    stamp = times.stamp_of(text)
    if stamp is None or stamp.wrong or stamp.seconds is not None and not any(stamp.numbers):
        return False
    first, second = stamp.numbers[:2]
    return not stamp.layout.startswith("ab") or 1 <= min(first, second) <= 12 and max(first, second) <= 31


def _end_of_range(text: str) -> str:
    """ "14-15 Mar" is its last day, on which all was done."""
    match = re.fullmatch(r"\s*\d{1,2}\.?\s*(?:-|–|/|to|bis|au|al|tot|do)\s*(\d{1,2}\.?\s*[^\W\d_]{3,}.*)", text)
    if match:
        return match[1]
    # "16/2 2025", and "22.02.2025 r." (roku, year) in Polish.
    text = re.sub(r"^(\d{1,2})([/.])(\d{1,2})\.? (\d{4})$", r"\1\2\3\2\4", text)
    return re.sub(r"(?<=\d)\s*r\.?$", "", text)


def is_dateish(cell) -> bool:
    """Whether a cell holds a date."""
    if is_empty(cell):
        return False
    if isinstance(cell, (dt.datetime, dt.date)):
        return True
    return isinstance(cell, str) and looks_like_date(_without_words(cell.strip()))


@cache
def _without_words(text: str) -> str:
    """ "Good Friday, 29.03.2024" is its date: one word or two before a date with its year, behind a comma or colon."""
    match = re.fullmatch(r"[^\W\d_]+(?: [^\W\d_]+)?[,:] *(\d{1,2}[./-]\d{1,2}[./-]\d{2,4}|\d{4}-\d{2}-\d{2})", text)
    return match[1] if match else text


def read_dates(cells, day_first: bool, year=None, near=None):
    """Cells as wall-clock times.

    Parameters
    ----------
    cells : list
    day_first : bool
    year : int, optional
        The year of dates that have none.
    near : ndarray of datetime64, optional
        For each cell the moment that a date without a year lies nearest to.

    Returns
    -------
    hatchkit.records.times.Times
    """
    plain = [
        _end_of_range(_without_words(cell.strip()))
        if isinstance(cell, str)
        else cell
        if isinstance(cell, dt.date) or cell is None
        else times.Serial(cell)
        if isinstance(cell, float) and 25_000 < cell < 80_000
        else str(cell)  # a day of the month alone is no date
        if isinstance(cell, float)
        else cell
        for cell in cells
    ]
    return times.read(plain, day_first, year=year, near=near, serials=True)


def leading_date(text: str, day_first: bool, year: int | None):
    """(datetime64 or None, the rest) of a line that begins with a date: "Sun 12 Mar: set 24 Sussex"."""
    for found in times.find(text, day_first, year):
        if found.kind == "date" and found.moment is not None and not np.isnat(np.datetime64(found.moment)):
            before = text[: found.start].strip(" .,:-–(").split()
            if len(before) <= 1:
                return np.datetime64(found.moment, "us"), text[found.end :].lstrip(" .,:;)-–")
        break
    return None, text
