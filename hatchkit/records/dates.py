"""Dates and hours as people write them -> times; the order of day and month is decided once for a sheet."""

from __future__ import annotations

import datetime as dt
import re

import numpy as np
import pandas as pd

from hatchkit.records.values import Column, is_empty
from hatchkit.records.words import plain, value_words
from hatchkit.spelling import many

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


def order_marks(cells) -> set[bool]:
    """What the text dates themselves prove: {True} day first, {False} month first, both, or nothing."""
    marks = set()
    for cell in dict.fromkeys(cell for cell in cells if isinstance(cell, str)):
        match = _NUMERIC.match(_strip_weekday(plain(cell)))
        if match:
            first, second = int(match[1]), int(match[2])
            if 12 < first <= 31 and second <= 12:
                marks.add(True)
            elif 12 < second <= 31 and first <= 12:
                marks.add(False)
    return marks


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


def wall_times(column: Column, clocks: Column | None, *, day_first: bool):
    """A column of dates, with the hours of a second column where there is one, as wall-clock times.

    Returns
    -------
    times : ndarray of datetime64[us], shape (n,)
    hour_kept : ndarray of bool, shape (n,)
        False where only a date was written; those times stand at noon.
    """
    kinds = set(map(type, column.cells))
    if kinds and kinds <= {dt.datetime, dt.date} and clocks is None:
        # pandas turns date objects into numbers ten times as fast as numpy does.
        times = pd.to_datetime(column.cells).to_numpy().astype("datetime64[us]")
        hour_kept = times != times.astype("datetime64[D]")
        if times.min() >= np.datetime64("1990") and times.max() < np.datetime64("2101"):
            return np.where(hour_kept, times, times + np.timedelta64(12, "h")), hour_kept
    known = {cell: (None, False, "") if is_empty(cell) else date_of(cell, day_first)
             for cell in dict.fromkeys(column.cells)}
    parsed = [known[cell] for cell in column.cells]
    times = pd.to_datetime([when for when, _, _ in parsed]).to_numpy().astype("datetime64[us]")
    hour_kept = np.array([kept for _, kept, _ in parsed], dtype=bool)
    if any(odd for _, _, odd in known.values()):
        _tell_odd_dates(column, parsed)
    if clocks is not None:
        _add_clocks(clocks, times, hour_kept)
    return np.where(hour_kept, times, times + np.timedelta64(12, "h")), hour_kept


def _add_clocks(clocks: Column, times, hour_kept) -> None:
    odd, unsaid = [], []
    for place, cell in enumerate(clocks.cells):
        if is_empty(cell):
            continue
        if plain(cell) in value_words("unknown"):
            unsaid.append((clocks.rows[place], cell))
            continue
        clock = clock_of(cell)
        if clock is None:
            odd.append((clocks.rows[place], cell))
        elif not hour_kept[place]:
            times[place] += np.timedelta64(clock)
            hour_kept[place] = True
    if unsaid:
        clocks.tell_unsaid(unsaid, done="Noon is taken.", mend="Write the hour if it can still be found.")
    clocks.tell_cells("doubtful", odd, found="{cell} is no time of day", done="Noon is taken.",
                      mend="Write it like 07:30.")


def _tell_odd_dates(column: Column, parsed) -> None:
    odd = {}
    for row, cell, (_, _, state) in zip(column.rows, column.cells, parsed, strict=True):
        if state:
            odd.setdefault(state, []).append((row, cell))
    blank = "The cell counts as not kept."
    if hits := odd.pop("serial", None):
        column.tell("note", row=hits[0][0], mend="Format these cells as dates.",
                    found=f"{many(len(hits), 'date')} written as a spreadsheet's number of the day, "
                    f"the first {hits[0][1]}", done="Turned into dates (day 1 = 1 January 1900).")
    if hits := odd.pop("unknown", None):
        column.tell_unsaid(hits, done="Taken as not kept.", mend="Write the date if it can still be found.")
    for state, hits in odd.items():
        found = {"year": "{cell} has a year that can't be right", "no year": "{cell} has no year",
                 "zone": "{cell} carries a time zone of its own"}.get(state, "{cell} is not a date")
        column.tell_cells("doubtful", hits, found=found, done=blank,
                          mend="Write the date like 2026-03-05 07:30, in your own wall clock.")


def to_utc(times, zone: str, column: Column) -> pd.Series:
    """Wall-clock times as UTC; the hour that came twice in autumn is taken as the first, and told.

    Parameters
    ----------
    times : ndarray of datetime64, shape (n,)
    zone : str
        Name from the time zone database; "UTC" leaves the wall clock as it stands.
    """
    wall = pd.Series(times)
    if zone == "UTC" or wall.isna().all():
        return wall.dt.tz_localize("UTC").astype(TIME)
    first = wall.dt.tz_localize(zone, ambiguous=np.ones(len(wall), bool), nonexistent="shift_forward")
    second = wall.dt.tz_localize(zone, ambiguous=np.zeros(len(wall), bool), nonexistent="NaT")
    twice = (first != second) & first.notna() & second.notna()
    missing = second.isna() & wall.notna()
    column.tell_cells("doubtful", [(column.rows[i], str(wall[i])) for i in np.flatnonzero(twice)],
                      found="{cell} came twice: the clocks went back that night", done="The first is taken.",
                      mend="Write an hour that came once.")
    column.tell_cells("doubtful", [(column.rows[i], str(wall[i])) for i in np.flatnonzero(missing)],
                      found="{cell} never came: the clocks went forward then", done="The next real hour is taken.",
                      mend="Write the hour that the clock showed.")
    return first.dt.tz_convert("UTC").astype(TIME)
