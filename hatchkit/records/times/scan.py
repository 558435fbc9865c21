"""A column of cells taken apart: three numbers, seconds of the day and offset of each, before any order is chosen."""

from __future__ import annotations

import datetime as dt
import re

import numpy as np
import pandas as pd

from hatchkit.records.times.forms import Stamp, clock_of, epoch_micros, is_epoch, stamp_of
from hatchkit.records.times.grid import Scan, scan_grid

_DAY0, _UNIX = dt.datetime(1899, 12, 30), dt.datetime(1970, 1, 1)  # from which spreadsheets and computers count


class Serial(float):
    """A spreadsheet's number of the day (45719.5 is noon of 3 March 2025), marked as such by whoever read the cell."""


def scan(values, clocks=None, *, serials=False) -> Scan:
    """Take the cells of a column apart.

    Parameters
    ----------
    values : sequence, or a Scan
        Text, datetime, date, `Serial`, number, or nothing.
    clocks : sequence, optional
        Times of day of the same rows as text, from a column of their own.
    serials : bool
        Take plain numbers, and texts of five figures, as a spreadsheet's numbers of the day.
    """
    if isinstance(values, Scan):
        return values
    values = _as_objects(values)
    if clocks is None and len(values) > 1000:
        found = scan_grid(values)
        if found is not None:
            return _with_odd(*found, values, serials)
    return _by_text(values, None if clocks is None else _as_objects(clocks), serials)


def _as_objects(values) -> np.ndarray:
    if isinstance(values, np.ndarray) and values.dtype == object:
        return values
    out = np.empty(len(values), dtype=object)
    out[:] = list(values)
    return out


def _by_text(values, clocks, serials) -> Scan:
    halves = [_halves(cell) for cell in values] if clocks is None else None
    dates = np.array([half[0] for half in halves], dtype=object) if halves is not None else values
    times = np.array([half[1] for half in halves], dtype=object) if halves is not None else clocks
    codes, cells = _distinct(dates)
    parts = [_part(cell, serials) for cell in cells]
    time_codes, time_cells = _distinct(times)
    read = [_time_of_day(cell) for cell in time_cells]
    stamps = [part if isinstance(part, Stamp) else None for part in parts]
    known = np.array([stamp is not None and stamp.layout != "" for stamp in stamps] + [False])
    own = _floats([stamp.seconds if stamp else None for stamp in stamps])[codes]
    apart = _floats([r[0] if isinstance(r, tuple) else None for r in read])[time_codes]
    offset = _floats([stamp.offset if stamp else None for stamp in stamps])[codes]
    zones = _floats([r[1] if isinstance(r, tuple) else None for r in read])[time_codes]
    offset = np.where(np.isnan(offset), zones, offset)
    out = Scan(
        np.array([s.numbers if s else (0, 0, 0) for s in stamps] or [(0, 0, 0)]),
        np.array([s.layout if s else "" for s in stamps] or [""], dtype=object),
        np.where(known[codes], codes, -1),
        np.where(np.isnan(own), apart, own),
        None if np.isnan(offset).all() else offset,
        weekdays=[s.weekdays if s else frozenset() for s in stamps] or [frozenset()],
        half=any(s.half for s in stamps if s) or any(isinstance(r, tuple) and r[2] for r in read),
        dots=any(s.dots for s in stamps if s),
    )
    _put_reasons(out, parts, codes, stamps, read, time_codes, clocks is not None)
    return out


def _floats(values) -> np.ndarray:
    return np.array([np.nan if v is None else v for v in values] + [np.nan], dtype=float)


def _distinct(cells) -> tuple[np.ndarray, list]:
    """Codes and distinct cells; 1, 1.0, True and Serial(1) stay different cells."""
    if all(type(cell) is str for cell in cells):
        codes, found = pd.factorize(cells)
        return codes, list(found)
    known: dict = {}
    codes = np.array(
        [-1 if _is_nothing(cell) else known.setdefault((type(cell), cell), len(known)) for cell in cells],
        dtype=np.int64,
    )
    return codes, [cell for _, cell in known]


def _is_nothing(cell) -> bool:
    return (
        cell is None
        or cell is pd.NaT
        or (isinstance(cell, float) and cell != cell)
        or (isinstance(cell, str) and not cell.strip())
    )


def _halves(cell) -> tuple:
    """Date and clock of a text, cut at its only blank or T, which most have; else the whole text as the date.

    So that each distinct date and each distinct clock time of a long log is read once.
    """
    if not isinstance(cell, str):
        return cell, None
    cell = cell.strip(' "')
    date, mark, clock = cell.partition(" ")
    if not mark:
        date, mark, clock = cell.partition("T")
    if (
        clock
        and ":" in clock
        and " " not in clock
        and len(date) > 5
        and date[:1].isdigit()
        and date[-1:].isdigit()
        and clock[:1].isdigit()
    ):
        return date, clock
    return cell, None


def _part(cell, serials):
    """A Stamp, or the reason why the cell is none."""
    if isinstance(cell, str):
        text = cell.strip()
        if is_epoch(text):
            micros = round(float(text) * epoch_micros(float(text)))
            return _of_datetime(_UNIX + dt.timedelta(microseconds=micros), True, offset=0.0)
        if serials and re.fullmatch(r"\d{5}(?:[.,]\d+)?", text):
            return _serial(float(text.replace(",", ".")))
        stamp = stamp_of(text)
        return "not a date" if stamp is None or stamp.layout == "" else "no day" if stamp.layout == "my" else stamp
    if isinstance(cell, dt.datetime):
        # A cell of a spreadsheet that holds a day only comes as its midnight.
        return _of_datetime(cell, cell.time() != dt.time())
    if isinstance(cell, dt.date):
        return Stamp((cell.year, cell.month, cell.day), "ymd")
    if isinstance(cell, (int, float)) and not isinstance(cell, bool):
        if not isinstance(cell, Serial) and 19_000_101 <= cell <= 21_001_231:
            return stamp_of(str(int(cell))) or "not a date"
        return _serial(float(cell)) if serials or isinstance(cell, Serial) else "not a date"
    return "not a date"


def _of_datetime(cell: dt.datetime, hour: bool, **said) -> Stamp:
    seconds = (cell - dt.datetime.combine(cell, dt.time())).total_seconds()
    return Stamp((cell.year, cell.month, cell.day), "ymd", seconds if hour else None, **said)


def _serial(value: float):
    # 1 January 1900 to the end of 2100.
    if not 1 <= value < 73_416:
        return "not a date"
    return _of_datetime(_DAY0 + dt.timedelta(seconds=round(value * 86_400)), value != int(value), wrong="serial")


def _time_of_day(cell: str):
    """(seconds, offset, half), or the reason why a cell of a column of times is none."""
    stamp = clock_of(cell)
    return (stamp.seconds, stamp.offset, stamp.half) if stamp and stamp.seconds is not None else "hour"


def _put_reasons(out, parts, codes, stamps, read, time_codes, apart) -> None:
    why = [
        part if isinstance(part, str) else stamp.wrong if stamp else ""
        for part, stamp in zip(parts, stamps, strict=True)
    ]
    why = np.array([*why, ""], dtype=object)[codes]
    for row in np.flatnonzero(why != ""):
        out.reasons[int(row)] = why[row]
    bad = np.array([*(isinstance(found, str) for found in read), False])[time_codes]
    for row in np.flatnonzero(bad & (codes >= 0)):
        out.reasons.setdefault(int(row), "no hour" if apart else "hour")


def _with_odd(out: Scan, odd: np.ndarray, values, serials) -> Scan:
    """The grid, in which the rows that are written otherwise than the rest are read by their text."""
    bad = np.flatnonzero(np.isnan(out.seconds))
    out.codes[bad] = -1
    out.reasons.update((int(row), "hour") for row in np.setdiff1d(bad, odd))
    if not len(odd):
        return out
    other = _by_text(values[odd], None, serials)
    out.codes[odd] = np.where(other.codes < 0, -1, other.codes + len(out.dates))
    out.dates, out.layouts = np.vstack([out.dates, other.dates]), np.concatenate([out.layouts, other.layouts])
    out.weekdays = [*out.weekdays, *other.weekdays]
    out.seconds[odd], out.half, out.dots = other.seconds, other.half, out.dots or other.dots
    if out.offset is not None or other.offset is not None:
        out.offset = np.full(len(values), np.nan) if out.offset is None else out.offset
        out.offset[odd] = np.nan if other.offset is None else other.offset
    out.reasons.update({int(odd[row]): why for row, why in other.reasons.items()})
    return out
