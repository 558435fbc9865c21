"""A column of cells -> moments, what could not be read and why, and how exactly each was written."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from hatchkit.records.times.day_first import ORDERS, Evidence, Order, day_numbers, days_of, full_year
from hatchkit.records.times.grid import NAT, Scan
from hatchkit.records.times.scan import scan

_MICROS = 86_400_000_000
#: Oddities of a cell that give a time all the same.
_HARMLESS = ("serial", "no hour", "other order")


@dataclass
class Times:
    """Moments of a column.

    Attributes
    ----------
    moments : ndarray of datetime64[us], shape (n,)
        What the clock on the wall showed; midnight where no hour is written; NaT where nothing could be read.
    hour_written : ndarray of bool, shape (n,)
        Whether the cell says the hour too.
    reasons : dict
        Row -> "not a date", "no year", "no day" (March 2025), "no such day" (31.02.), "year" (before 1900, after
        2100), "hour" (25:10), "order" (a 12/13 among dates written day first); and, where a time was read all the
        same, "serial", "no hour" (the cell of the column of times is none), "other order".
    offset : ndarray of float, shape (n,), or None
        Seconds east of UTC, where cells say so themselves; NaN elsewhere.
    """

    moments: np.ndarray
    hour_written: np.ndarray
    reasons: dict
    offset: np.ndarray | None
    order: Order


def read(values, order=None, year=None, *, clocks=None, near=None, serials=False, swap=False) -> Times:
    """Read a column of cells.

    Parameters
    ----------
    values : sequence, Scan or Evidence
        See `scan.scan`.
    order : Order or bool
        From `decide`; a bool means day first or not.
    year : int, optional
        For dates without a year: that of the first of them. Where the dates go on from autumn into winter and the next
        is of spring, the year goes on too.
    clocks, serials
        See `scan.scan`.
    near : ndarray of datetime64, shape (n,), optional
        A moment near which a date without a year lies (when the eggs of the same row were set); NaT where not known.
    swap : bool
        Read a 12/13/2025 among dates written day first in the only way it can be read, and say so in `reasons`;
        otherwise it fails.
    """
    order = Order("dmy" if order else "mdy", "said") if isinstance(order, bool) else order or Order()
    part = scan(values.scan if isinstance(values, Evidence) else values, clocks, serials=serials)
    days, good = days_of(part.dates, part.layouts, order.order, near=order.near)
    reasons = dict(part.reasons)
    swapped = _other_way(part, order, good)
    if swap:
        days, good = np.where(swapped[1], swapped[0], days), good | swapped[1]
    days, good, other = np.append(days, 0), np.append(good, False), np.append(swapped[1], False)
    row_days, row_good = days[part.codes], good[part.codes]
    yearless = np.append(np.isin(part.layouts, ("ab", "md")), False)[part.codes] & (part.codes >= 0)
    if yearless.any():
        _fill_years(part, order, year, near, yearless, row_days, row_good, reasons)
    seconds = np.where(np.isnan(part.seconds), 0.0, part.seconds)
    moments = (row_days * _MICROS + np.round(seconds * 1e6).astype(np.int64)).view("datetime64[us]")
    moments[~row_good] = NAT
    _say_why(part, row_good, yearless, other, swap, reasons)
    for row, why in reasons.items():
        if why not in _HARMLESS:
            moments[row] = NAT
    return Times(moments, ~np.isnan(part.seconds) & ~np.isnat(moments), reasons, part.offset, order)


def _other_way(part: Scan, order: Order, good) -> tuple[np.ndarray, np.ndarray]:
    """Days of dates that exist only with day and month the other way round, and which those are."""
    other = {"dmy": "mdy", "mdy": "dmy"}.get(order.order)
    if other is None:
        return np.zeros(len(good), dtype=np.int64), np.zeros(len(good), dtype=bool)
    days, there = days_of(part.dates, part.layouts, other, near=order.near)
    return days, there & ~good & np.isin(part.layouts, ("abY", "abc", "ab"))


def _say_why(part, row_good, yearless, other, swap, reasons) -> None:
    for row in np.flatnonzero((part.codes >= 0) & ~row_good):
        reasons.setdefault(int(row), "order" if other[part.codes[row]] else _why(part, part.codes[row], yearless[row]))
    for row in np.flatnonzero(other[part.codes]) if swap else ():
        reasons.setdefault(int(row), "other order")


def _why(part, code, yearless) -> str:
    numbers, layout = part.dates[code], part.layouts[code]
    year = numbers[0] if layout in ("ymd", "my") else numbers[2] if layout == "abY" else 2000
    return "no such day" if yearless or 1900 <= year <= 2100 else "year"


def _fill_years(part, order, year, near, yearless, row_days, row_good, reasons) -> None:
    """Days of the dates without a year, row by row, from `near`, else from the year of the cell before."""
    rows = np.flatnonzero(yearless)
    dates, named = part.dates[part.codes[rows]], part.layouts[part.codes[rows]] == "md"
    _, month, day = ORDERS["mdy" if order.order == "mdy" else "dmy"]
    months = np.where(named, dates[:, 1], dates[:, month])
    days = np.where(named, dates[:, 2], dates[:, day])
    written = np.flatnonzero(row_good & ~yearless)
    if year is None and len(written):
        year = np.datetime64(int(row_days[written[0]]), "D").astype(object).year
    for row, month, day, turn in zip(rows, months, days, _turns(months), strict=True):
        year = None if year is None else year + turn
        candidates = [] if year is None else [year]
        start = None if near is None or np.isnat(near[row]) else near[row].astype("datetime64[D]")
        if start is not None:
            candidates = [start.astype(object).year + more for more in (-1, 0, 1)]
        if not candidates:
            reasons.setdefault(int(row), "no year")
            continue
        found, good = day_numbers(np.array(candidates), month, day)
        if good.any():
            apart = np.abs(found[good] - (0 if start is None else start.astype(np.int64)))
            row_days[row], row_good[row] = found[good][np.argmin(apart)], True


def _turns(months: np.ndarray) -> list:
    """For each date whether its year is one later (or earlier) than that of the date before it: 1, -1 or 0.

    Only where the months otherwise go one way: a sheet sorted by pen jumps to and fro within its year.
    """
    step = np.diff(months)
    for way, back in ((1, -step), (-1, step)):
        turns = back >= 8
        against = (back > 0).sum() - turns.sum()
        if turns.any() and against <= len(step) // 5 and turns.sum() <= 1 + len(step) // 6:
            return [0, *(way * turns).tolist()]
    return [0] * len(months)


def from_columns(year, month, day, hour=None, minute=None, second=None) -> np.ndarray:
    """Moments of a table that gives year, month, day, hour, minute and second in columns of their own.

    Parameters
    ----------
    year, month, day, hour, minute, second : ndarray of float, shape (n,)
        NaN where the cell is no number; years of two figures are 1969 to 2068.

    Returns
    -------
    ndarray of datetime64[us], shape (n,)
        NaT where the numbers are no moment.
    """
    parts = [np.asarray(part, dtype=float) for part in (year, month, day)]
    clock = [
        np.zeros(len(parts[0])) if part is None else np.asarray(part, dtype=float) for part in (hour, minute, second)
    ]
    whole = np.all([np.isfinite(part) & (part == np.round(part)) for part in parts], axis=0)
    years, months, days = (np.where(whole, part, 0).astype(np.int64) for part in parts)
    years = np.where(years < 100, full_year(years, None), years)
    number, good = day_numbers(years, months, days)
    good &= whole & np.all([np.isfinite(part) & (part >= 0) for part in clock], axis=0)
    good &= (clock[0] < 24) & (clock[1] < 60) & (clock[2] < 61)
    seconds = np.where(good, clock[0] * 3600 + clock[1] * 60 + clock[2], 0.0)
    moments = (number * _MICROS + np.round(seconds * 1e6).astype(np.int64)).view("datetime64[us]")
    moments[~good] = NAT
    return moments
