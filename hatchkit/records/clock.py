"""From stamps as text to times, each distinct text converted once."""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit.records import clock_words

#: Places of year, month and day among the three numbers of a date.
_ORDERS = {"dmy": (2, 1, 0), "mdy": (2, 0, 1), "ymd": (0, 1, 2)}
ORDER_WORDS = {"dmy": "day, month, year", "mdy": "month, day, year", "ymd": "year, month, day"}
_SHAPE = re.compile(
    r"(?:(?P<y>\d{4})[-/.](?P<m>\d\d)[-/.](?P<d>\d\d)|(?P<a>\d\d)[-/.](?P<b>\d\d)[-/.](?P<c>\d{4}|\d\d))"
    r"[ T](?P<H>\d\d):(?P<M>\d\d)(?::(?P<S>\d\d)(?:[.,](?P<f>\d{1,6}))?)?(?P<zone>Z|[+-]\d\d:?\d\d)?")
_NAT = np.datetime64("NaT", "us")


@dataclass
class Stamps:
    """Times of a column of stamps.

    Attributes
    ----------
    local : ndarray of datetime64[us]
        What the clock showed; NaT where the text is no stamp.
    offset : ndarray of float or None
        Seconds east of UTC that the text itself carries (NaN where it carries none).
    order : str
        "dmy", "mdy" or "ymd".
    decided : str
        What settled the order: "" (nothing to settle), "a day above 12", "continuity", "rule",
        "batches", "dots" (dates with dots are written day first) or "nothing".
    """

    local: np.ndarray
    offset: np.ndarray | None = None
    order: str = "ymd"
    decided: str = ""


@dataclass
class _Parts:
    """Distinct dates as three numbers, which of them each row has, and seconds of the day."""

    dates: np.ndarray
    codes: np.ndarray
    seconds: np.ndarray
    offset: np.ndarray
    written: set
    half_day: bool = False
    dots: bool = False


def read_stamps(texts, clocks=None, *, day_first=None, spans=()) -> Stamps:
    """Times of stamps written as text.

    Parameters
    ----------
    texts : array of object, shape (n,)
        Stamps, or dates where `clocks` is given.
    clocks : array of object, shape (n,), optional
        Clock times of a separate column.
    day_first : bool, optional
        Order of day and month where the stamps leave it open.
    spans : sequence of (start, end) of datetime64
        Times in which readings are expected; decides where nothing else does.
    """
    parts = _fixed_width(texts) if clocks is None else None
    if parts is None:
        parts = _by_text(texts, clocks)
    order, decided = _choose_order(parts, day_first, spans)
    days, valid = _days(parts.dates, order)
    days, valid = np.append(days, 0), np.append(valid, False)
    good = valid[parts.codes] & np.isfinite(parts.seconds)
    micros = days[parts.codes] * 86_400_000_000 + np.where(good, np.round(parts.seconds * 1e6), 0).astype(np.int64)
    local = micros.view("datetime64[us]")
    local[~good] = _NAT
    offset = None if np.isnan(parts.offset).all() else parts.offset
    return Stamps(local, offset, order, decided)


def read_epoch(values) -> Stamps:
    """Times of Unix seconds or milliseconds."""
    values = np.asarray(values, dtype=float)
    finite = values[np.isfinite(values)]
    scale = 1e3 if len(finite) and np.median(finite) > 1e11 else 1e6
    local = np.full(len(values), _NAT)
    good = np.isfinite(values) & (values * scale > 9e14) & (values * scale < 4e15)
    local[good] = np.round(values[good] * scale).astype("int64").astype("datetime64[us]")
    return Stamps(local, np.where(good, 0.0, np.nan))


def _by_text(texts, clocks) -> _Parts:
    texts = np.asarray(texts, dtype=object)
    if clocks is None:
        halves = [_halves(text) for text in texts]
        texts = np.array([half[0] for half in halves], dtype=object)
        clocks = np.array([half[1] for half in halves], dtype=object)
    date_codes, dates = pd.factorize(texts)
    clock_codes, times = pd.factorize(np.asarray(clocks, dtype=object))
    parts = [clock_words.date_parts(text) if isinstance(text, str) else None for text in dates]
    read = [clock_words.clock_seconds(text) if isinstance(text, str) else None for text in times]
    seconds = np.array([np.nan if r is None else r[0] for r in read] + [np.nan])
    offset = np.array([np.nan if r is None or r[1] is None else r[1] for r in read] + [np.nan])
    known = np.array([p is not None for p in parts] + [False])
    table = np.array([(0, 0, 0) if p is None else p[:3] for p in parts] or [(0, 0, 0)])
    return _Parts(table, np.where(known[date_codes], date_codes, -1), seconds[clock_codes], offset[clock_codes],
                  {p[3] for p in parts if p is not None},
                  any(isinstance(t, str) and re.search(r"[ap]\.?\s?m\.?$", t, re.IGNORECASE) for t in times[:50]),
                  any(isinstance(t, str) and re.match(r"\d+\.\s?\d+\.", t) for t in dates[:50]))


def _halves(text) -> tuple:
    """Date and clock of a stamp: cut at the only blank or T, which most have; else by the full pattern."""
    if not isinstance(text, str):
        return None, None
    text = text.strip(' "')
    date, mark, clock = text.partition(" ")
    if not mark:
        date, mark, clock = text.partition("T")
    if clock and date[-1:].isdigit() and ":" in clock and " " not in clock and date[:1].isdigit() and len(date) > 5:
        return date, clock
    date, clock = clock_words.split_stamp(text)
    return (date, clock or "00:00") if date else (None, None)


def _fixed_width(texts) -> _Parts | None:
    """Parts of stamps that are written digit under digit, read as a grid of bytes; None if they are not."""
    first = next((text for text in texts if isinstance(text, str) and text.strip()), "")
    match = _SHAPE.fullmatch(first)
    if not match:
        return None
    names = ("y", "m", "d") if match["y"] else ("a", "b", "c")
    spans = [match.span(name) for name in names]
    clock = [match.span(name) for name in ("H", "M", "S", "f") if match[name]]
    try:
        rows = np.asarray(texts, dtype=object).astype(f"S{len(first) + 1}")
    except UnicodeEncodeError:
        return None
    grid = rows.view(np.uint8).reshape(len(rows), -1)
    digits = {place for span in spans + clock for place in range(*span)}
    fits = grid[:, -1] == 0
    for place, character in enumerate(first):
        fits &= (grid[:, place] - np.uint8(48)) < 10 if place in digits else grid[:, place] == ord(character)
    odd = np.flatnonzero(~fits)
    if len(odd) > max(1000, len(rows) // 10):
        return None

    def number(span):
        total = np.zeros(len(rows), dtype=np.int32)
        for place in range(*span):
            total *= 10
            total += grid[:, place] - np.uint8(48)
        return total

    numbers = [number(span) for span in spans]
    key = (numbers[0] * 100 + numbers[1]) * (10_000 if len(first[slice(*spans[2])]) == 4 else 100) + numbers[2]
    del numbers
    changed = np.flatnonzero(np.diff(key, prepend=key[0] - 1))
    codes = np.repeat(np.arange(len(changed), dtype=np.int32), np.diff(changed, append=len(key)))
    dates = np.column_stack([sum((grid[changed, p] - np.uint8(48)).astype(int) * 10 ** (stop - 1 - p)
                                 for p in range(start, stop)) for start, stop in spans])
    hour, minute = number(clock[0]), number(clock[1])
    bad = (hour > 24) | (minute > 59) | ((hour == 24) & (minute > 0))
    seconds = (hour * 3600 + minute * 60).astype(float)
    if len(clock) > 2:
        second = number(clock[2])
        bad |= second > 60
        seconds += second
    if len(clock) > 3:
        seconds += number(clock[3]) / 10.0 ** (clock[3][1] - clock[3][0])
    tail = clock_words.offset_seconds(match["zone"])
    offset = np.full(len(rows), np.nan if tail is None else tail)
    seconds[bad | ~fits] = np.nan
    written = {"ymd" if match["y"] else "abY" if len(match["c"]) == 4 else "abc"}
    parts = _Parts(dates, codes, seconds, offset, written, dots="." in first[: clock[0][0]])
    return _put_odd(parts, odd, texts) if len(odd) else parts


def _put_odd(parts: _Parts, odd: np.ndarray, texts) -> _Parts:
    """Rows that are written otherwise than the rest, read by their text."""
    other = _by_text(np.asarray(texts, dtype=object)[odd], None)
    nowhere = len(parts.dates) + len(other.dates)
    parts.codes[odd] = np.where(other.codes < 0, nowhere, other.codes + len(parts.dates))
    parts.seconds[odd], parts.offset[odd] = other.seconds, other.offset
    if other.written - parts.written:
        return _by_text(texts, None)
    used = np.unique(parts.codes[np.isfinite(parts.seconds)])
    table = np.vstack([parts.dates, other.dates, [(0, 0, 0)]])
    renumber = np.full(len(table), -1)
    renumber[used] = np.arange(len(used))
    parts.codes, parts.dates = renumber[parts.codes], table[used]
    return parts


def _days(dates: np.ndarray, order: str) -> tuple[np.ndarray, np.ndarray]:
    """Days since 1970 of dates given as three numbers, and which of them exist."""
    year, month, day = (dates[:, place].astype(np.int64) for place in _ORDERS[order])
    year = np.where(year < 100, year + 2000, year)
    known = (month >= 1) & (month <= 12) & (day >= 1) & (day <= 31) & (year >= 1900) & (year <= 2200)
    months = (np.where(known, year, 2000) - 1970) * 12 + np.where(known, month, 1) - 1
    month_start = months.astype("datetime64[M]")
    days = month_start.astype("datetime64[D]") + (np.where(known, day, 1) - 1)
    known &= days.astype("datetime64[M]") == month_start
    return days.astype(np.int64), known


def _choose_order(parts: _Parts, day_first, spans) -> tuple[str, str]:
    """Order of day and month, and what settled it."""
    if parts.written <= {"ymd"}:
        return "ymd", ""
    if "ymd" in parts.written and len(parts.written) > 1:
        return ("dmy" if day_first is not False else "mdy"), "nothing"
    orders = ["dmy", "mdy"] if parts.written == {"abY"} else ["dmy", "mdy", "ymd"]
    found = {order: _days(parts.dates, order) for order in orders}
    wrong = {order: int((~valid).sum()) for order, (_, valid) in found.items()}
    orders = [order for order in orders if wrong[order] == min(wrong.values())]
    if len(orders) == 1:
        return orders[0], "a day above 12"
    if all(np.array_equal(found[order][0], found[orders[0]][0]) for order in orders):
        return orders[0], ""
    jumps = {order: int((np.abs(np.diff(found[order][0][found[order][1]])) > 1).sum()) for order in orders}
    steady = [order for order in orders if jumps[order] == min(jumps.values())]
    if len(steady) == 1:
        return steady[0], "continuity"
    wanted = {None: None, True: "dmy", False: "mdy"}[day_first]
    if wanted in steady:
        return wanted, "rule"
    if len(spans):
        inside = {order: _days_inside(found[order][0], spans) for order in steady}
        best = [order for order in steady if inside[order] == max(inside.values())]
        if len(best) == 1:
            return best[0], "batches"
    if parts.dots and "dmy" in steady:
        return "dmy", "dots"
    likely = "mdy" if parts.half_day else "dmy"
    return (likely if likely in steady else steady[0]), "nothing"


def _days_inside(days: np.ndarray, spans) -> int:
    total = np.zeros(len(days), dtype=bool)
    for start, end in spans:
        low, high = (np.datetime64(edge, "D").astype(np.int64) for edge in (start, end))
        total |= (days >= low) & (days <= high)
    return int(total.sum())


def is_plain_iso(text) -> bool:
    """Whether a stamp is year-month-day with a clock time and no zone, which the parser reads by itself."""
    return bool(re.fullmatch(r"\d{4}-\d\d-\d\d[ T]\d\d:\d\d(:\d\d(\.\d{1,6})?)?", text))
