"""Dates in cells, titles and sentences of a sheet, by the one reader of times."""

from __future__ import annotations

import datetime as dt
import re

from hatchkit.records import dates
from hatchkit.records.sheets.cells import is_empty
from hatchkit.records.words import plain


def looks_like_date(text) -> bool:
    """Whether a text may be a date in either order."""
    if not isinstance(text, str) or not 3 <= len(text) <= 40 or not any(c.isdigit() for c in text):
        return False
    return read_date(text, True, 2024)[0] is not None or read_date(text, False, 2024)[0] is not None


def read_date(cell, day_first: bool, year: int | None):
    """(datetime or None, hour kept, code)."""
    when, kept, code = dates.date_of(cell, day_first)
    if when is None and code in ("no year", "bad") and year is not None and isinstance(cell, str):
        text = plain(cell).strip(" .")
        text = re.sub(r"(?<=\d)(st|nd|rd|th)\b", "", text)
        for form in (f"{text} {year}", f"{text}.{year}", f"{text}/{year}", f"{text}-{year}"):
            when, kept, code2 = dates.date_of(form, day_first)
            if when is not None:
                return when, kept, "no year"
    return when, kept, code


def is_dateish(cell) -> bool:
    if is_empty(cell):
        return False
    if isinstance(cell, (dt.datetime, dt.date)):
        return True
    return isinstance(cell, str) and looks_like_date(cell)


def leading_date(text: str, day_first: bool, year: int | None):
    """(datetime or None, the rest) of a line that begins with a date: "3 March - set 24 Sussex"."""
    words = text.split()
    for count in (5, 4, 3, 2, 1):
        head = " ".join(words[:count]).rstrip(":,-–")
        if len(words) >= count and any(c.isdigit() for c in head) and not re.fullmatch(r"\d+\W?", head):
            when, _, _ = read_date(head, day_first, year)
            if when is not None:
                return when, " ".join(words[count:]).lstrip(":,-– ")
    return None, text
