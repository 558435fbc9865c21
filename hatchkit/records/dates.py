"""Dates and hours as people write them -> times; the order of day and month is decided once for a sheet."""

from __future__ import annotations

import datetime as dt
import re

from hatchkit.records.words import plain, value_words

TIME = "datetime64[us, UTC]"

_NUMERIC = re.compile(r"(\d{1,2})\s*[-./ ]\s*(\d{1,2})\s*[-./ ]\s*(\d{4}|\d{2})(?!\d)[,T ]*(.*)")
_YEAR_FIRST = re.compile(r"(\d{4})\s*[-./ ]\s*(\d{1,2})\s*[-./ ]\s*(\d{1,2})(?!\d)[,tT ]*(.*)")
_COMPACT = re.compile(r"((?:19|20)\d{2})(\d{2})(\d{2})[tT ]*(.*)")
_YEAR = r"(\d{4}|\d{2})(?!\d)[, ]*(.*)"
_DAY_NAME = re.compile(r"(\d{1,2})(?:st|nd|rd|th|er|\.|º)?[\s\-/.]*(?:de |di )?([a-z]+)\.?,?[\s\-/.]*(?:de |del )?"
                       + _YEAR)
_NAME_DAY = re.compile(r"([a-z]+)\.?[\s\-/.]*(\d{1,2})(?:st|nd|rd|th)?[, \-/.]+" + _YEAR)
_CLOCK = re.compile(r"(\d{1,2})(?:\s*[:.h]\s*(\d{2})(?::(\d{2})(?:\.\d+)?)?|\s*h)?"
                    r"\s*(a\.? ?m\.?|p\.? ?m\.?)?\s*(?:uhr|h|hrs|u)?")
_EPOCH = dt.datetime(1899, 12, 30)  # day 0 of spreadsheet day numbers


def clock_of(cell) -> dt.timedelta | None:
    """A time of day, or None: 07:30, 7.30, 7h30, 0730, "7 pm", a spreadsheet's time or part of a day."""
    if isinstance(cell, dt.datetime):
        cell = cell.time()
    if isinstance(cell, dt.time):
        return dt.timedelta(hours=cell.hour, minutes=cell.minute, seconds=cell.second)
    if isinstance(cell, dt.timedelta):
        return cell if dt.timedelta(0) <= cell < dt.timedelta(days=1) else None
    if isinstance(cell, (int, float)) and not isinstance(cell, bool):
        if 0 <= cell < 1:
            return dt.timedelta(seconds=round(cell * 86400))
        return dt.timedelta(hours=int(cell)) if cell == int(cell) and cell < 24 else None
    if not isinstance(cell, str):
        return None
    text = plain(cell)
    if re.fullmatch(r"\d{4}", text):
        text = text[:2] + ":" + text[2:]
    match = _CLOCK.fullmatch(text)
    if not match or not text or (text.isdigit() and len(text) > 2):
        return None
    hour, minute, second = int(match[1]), int(match[2] or 0), int(match[3] or 0)
    if match[4]:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if match[4].startswith("p") else 0)
    if hour > 23 or minute > 59 or second > 59:
        return None
    return dt.timedelta(hours=hour, minutes=minute, seconds=second)


def has_open_order(cells) -> bool:
    """Whether some text date could be read both ways (04/05/2026, not 05/05/2026)."""
    for cell in dict.fromkeys(cell for cell in cells if isinstance(cell, str)):
        match = _NUMERIC.match(_strip_weekday(plain(cell)))
        if match and int(match[1]) <= 12 and int(match[2]) <= 12 and match[1].lstrip("0") != match[2].lstrip("0"):
            return True
    return False


def _strip_weekday(text: str) -> str:
    match = re.match(r"([a-z]{2,10})[.,]*\s+(?=\d)", text)
    return text[match.end():] if match and match[1] not in value_words("month") else text


def date_of(cell, day_first: bool):
    """(date and time or None, whether an hour was written, what was odd).

    Parameters
    ----------
    cell : object
    day_first : bool
        How 04/05/2026 is meant; a date that can be read only one way is read that way.
    """
    if isinstance(cell, dt.datetime):
        if cell.tzinfo is not None:
            return None, False, "zone"
        return (cell, cell.time() != dt.time(0), "") if 1990 <= cell.year <= 2100 else (None, False, "year")
    if isinstance(cell, dt.date):
        when = dt.datetime(cell.year, cell.month, cell.day)
        return (when, False, "") if 1990 <= cell.year <= 2100 else (None, False, "year")
    if isinstance(cell, (int, float)) and not isinstance(cell, bool):
        if 32874 <= cell <= 73051:  # 1990 to 2100
            when = _EPOCH + dt.timedelta(seconds=round(cell * 86400))
            return when, cell != int(cell), "serial"
        match = _COMPACT.fullmatch(str(int(cell))) if cell == int(cell) else None
        return _made(*map(int, match.groups()[:3]), "") if match else (None, False, "bad")
    if not isinstance(cell, str):
        return None, False, "bad"
    text = _strip_weekday(plain(cell))
    if text in value_words("unknown"):
        return None, False, "unknown"
    if re.fullmatch(r"\d{5}(?:[.,]\d+)?", text):
        return date_of(float(text.replace(",", ".")), day_first)
    if match := (_YEAR_FIRST.fullmatch(text) or _COMPACT.fullmatch(text)):
        return _made(int(match[1]), int(match[2]), int(match[3]), match[4])
    if match := _NUMERIC.fullmatch(text):
        first, second, year = int(match[1]), int(match[2]), _full_year(match[3])
        day, month = (first, second) if day_first else (second, first)
        if month > 12 >= day:
            day, month = month, day
        return _made(year, month, day, match[4])
    months = value_words("month")
    if (match := _DAY_NAME.fullmatch(text)) and match[2] in months:
        return _made(_full_year(match[3]), int(months[match[2]]), int(match[1]), match[4])
    if (match := _NAME_DAY.fullmatch(text)) and match[1] in months:
        return _made(_full_year(match[3]), int(months[match[1]]), int(match[2]), match[4])
    if re.fullmatch(r"\d{1,2}[-./]\d{1,2}\.?|\d{1,2}\.?[ -]?[a-z]{3,9}|[a-z]{3,9} \d{1,2}", text):
        return None, False, "no year"
    return None, False, "bad"


def _full_year(text: str) -> int:
    year = int(text)
    return year if len(text) == 4 else 2000 + year if year < 70 else 1900 + year


def _made(year: int, month: int, day: int, clock: str):
    zone = re.search(r"(z|[+-]\d{2}:?\d{2})$", clock.strip())
    if zone and ":" in clock:
        return None, False, "zone"
    hour = clock_of(clock.strip()) if clock and clock.strip() else None
    if clock and clock.strip() and hour is None:
        return None, False, "bad"
    try:
        when = dt.datetime(year, month, day)
    except ValueError:
        return None, False, "bad"
    if not 1990 <= year <= 2100:
        return None, False, "year"
    return when + (hour or dt.timedelta(0)), hour is not None, ""
