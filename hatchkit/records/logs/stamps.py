"""Where does a line say when it was written, and when was that? One front end of `hatchkit.records.times`."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import lru_cache

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records import times
from hatchkit.records.logs.names import part_of_time
from hatchkit.records.times.forms import epoch_micros, is_epoch
from hatchkit.records.times.grid import NAT

_DAY = np.timedelta64(1, "D")
#: A plain number, which no stamp is: too short for a day, a day with a clock time, or Unix seconds.
_SHORT_NUMBER = re.compile(r"[+-]?\d{1,7}(?:[.,]\d{0,9})?|[+-]?\d{1,6}[.,]\d+")
_MIDNIGHT = re.compile(r"(?<=\d)[ T]+(?:0?0:00(?::00(?:\.0+)?)?|12:00(?::00)?\s*a\.?m\.?)$", re.IGNORECASE)


@dataclass
class Stamps:
    """Times of the lines of a log.

    Attributes
    ----------
    local : ndarray of datetime64[us], shape (n,)
        What the clock showed; NaT where the line has no time that can be read.
    offset : ndarray of float, shape (n,), or None
        Seconds east of UTC that the text itself carries (NaN where it carries none).
    order : times.Order
    reasons : dict
        Row -> why its stamp could not be read, as in `times.Times`.
    """

    local: np.ndarray
    offset: np.ndarray | None = None
    order: times.Order = field(default_factory=times.Order)
    reasons: dict = field(default_factory=dict)


@lru_cache(maxsize=16_384)
def kind_of(text: str) -> str:
    """What a cell is as a stamp: "both" (date and time), "date", "time", "epoch" or "" (none)."""
    text = text.strip(" \"'")
    if not text or _SHORT_NUMBER.fullmatch(text) or not any(map(str.isdigit, text)):
        return ""
    if is_epoch(text):
        return "epoch"
    stamp = times.stamp_of(text)
    if stamp is None or stamp.layout == "my":
        return ""
    has_clock = stamp.seconds is not None or stamp.wrong
    if has_clock and (1899 in stamp.numbers or 1900 in stamp.numbers):
        return "time"  # a spreadsheet's time of day, shown with the day from which it counts
    return ("both" if has_clock else "date") if stamp.layout else "time"


def midnight_off(text: str) -> str:
    """A day without the midnight that a spreadsheet shows with it; any other text as it is."""
    return _MIDNIGHT.sub("", text)


def read_stamps(texts, clocks=None, *, day_first=None, spans=(), year=None, others=()) -> Stamps:
    """Times of stamps written as text.

    Parameters
    ----------
    texts : array of object, shape (n,)
        Stamps, or dates where `clocks` is given.
    clocks : array of object, shape (n,), optional
        Clock times of a separate column.
    day_first : bool or str, optional
        The person's word, where the stamps leave the order open; see `times.decide`.
    spans : sequence of (start, end) of datetime64
        Times in which readings are expected; decides where nothing else does.
    year : int, optional
        For stamps without one.
    others : sequence of times.Order
        Of the other files of the logger.
    """
    evidence = times.gather(np.asarray(texts, dtype=object), clocks)
    if (both := times.two_orders(evidence)) is not None:
        (first, one), (second, two) = both
        raise HatchkitError("refuse_two_orders", dict(one=texts[one], first=first, two=texts[two], second=second))
    order = times.decide(evidence, day_first, spans=spans, others=others)
    found = times.read(evidence, order, year)
    found.moments[[row for row, why in found.reasons.items() if why == "no hour"]] = NAT
    return Stamps(found.moments, found.offset, order, found.reasons)


def read_epoch(values) -> Stamps:
    """Times of Unix seconds, milli-, micro- or nanoseconds."""
    finite = values[np.isfinite(values)]
    scale = epoch_micros(float(np.median(finite))) if len(finite) else 1e6
    local = np.full(len(values), NAT)
    good = np.isfinite(values) & (values * scale > 6e14) & (values * scale < 4.1e15)
    local[good] = np.round(values[good] * scale).astype("int64").astype("datetime64[us]")
    return Stamps(local, np.where(good, 0.0, np.nan))


def read_clocks(clocks, day: np.datetime64, days: dict | None = None) -> Stamps:
    """Times of a log that writes the time of day only, from a date that stands above its readings.

    Where the clock goes back by more than half a day, the next day has begun. `days` holds rows at which a line with a
    date of its own stands among the readings: from there on that day counts.
    """
    found = times.read([str(day.astype("datetime64[D]"))] * len(clocks), clocks=clocks)
    local = found.moments
    local[~found.hour_written] = NAT
    good = np.flatnonzero(~np.isnat(local))
    if (np.diff(local[good]) < np.timedelta64(0, "us")).mean() > 0.5:
        raise HatchkitError("refuse_backwards", {})
    back = np.diff(local[good]) < np.timedelta64(-12, "h")
    over = np.concatenate([[0], np.cumsum(back)]).astype(int) if len(good) else np.zeros(0, dtype=int)
    for row, own in sorted((days or {}).items()):
        behind = good > row
        if behind.any():
            over[behind] += int((own - day) / _DAY) - over[np.argmax(behind)]
    local[good] += over * _DAY
    return Stamps(local, found.offset, found.order, found.reasons)


def read_parts(raw, places: dict, written=(), name: str = "") -> Stamps:
    """Times of a table with year, month, day and perhaps hour, minute and second in columns of their own.

    Parameters
    ----------
    raw : DataFrame
    places : dict
        Part -> column.
    written : sequence of str
        The hours as they stand in the first lines: 0007 is seven minutes past midnight, which its number hides.
    name : str
        Heading of the hours.
    """
    numbers = {
        part: pd.to_numeric(raw[n], errors="coerce").replace([np.inf, -np.inf], np.nan).to_numpy(dtype=float)
        for part, n in places.items()
    }
    hour = numbers.get("hour")
    if "yearday" in numbers:
        seconds = np.round(numbers.pop("yearday") * 86_400)
        if hour is None:
            numbers["hour"], numbers["minute"] = seconds % 86_400 // 3600, seconds % 3600 // 60
            numbers["second"] = seconds % 60
        days = pd.Series(numbers["year"] * 1000 + seconds // 86_400).astype("Int64").astype("str")
        days = pd.to_datetime(days, format="%Y%j", errors="coerce")
        # The parser takes day 366 of a year of 365 for one of the next year.
        days = days.where(days.dt.year == numbers["year"]).dt
        numbers["month"], numbers["day"] = days.month.to_numpy(dtype=float), days.day.to_numpy(dtype=float)
    if hour is not None and "minute" not in numbers:
        most = np.nanmax(hour, initial=0)
        figures = max((len(cell) for cell in written if cell.isdigit()), default=0)
        if most < 24 and figures < 3 and part_of_time(name) != "hour" and _within_one_day(numbers, hour):
            raise HatchkitError("refuse_hours_or_minutes", dict(column=name, most=round(most)))
        if figures > 4 or most >= 2500:
            numbers["second"], hour = hour % 100, hour // 100
            numbers["minute"], numbers["hour"] = hour % 100, hour // 100
        elif figures > 2 or most >= 100:
            numbers["minute"], numbers["hour"] = hour % 100, hour // 100
    return Stamps(
        times.from_columns(*(numbers.get(part) for part in ("year", "month", "day", "hour", "minute", "second")))
    )


def _within_one_day(numbers: dict, hour: np.ndarray) -> bool:
    return hour[:1] == 0 and len(np.unique(numbers.get("day", numbers.get("month")))) < 2


def day_above(preamble) -> np.datetime64 | None:
    """The one date that the lines above the readings name; None where there is none or there are several."""
    days = {
        found.moment.astype("datetime64[D]")
        for line in preamble
        for found in times.find(line, True)
        if found.kind == "date" and found.year_written and not np.isnat(found.moment)
    }
    return days.pop() if len(days) == 1 else None


def year_above(preamble, name: str) -> int | None:
    """The one year that the lines above the readings, or else the name of the file, speak of."""
    for texts in (preamble, [re.sub(r"[_.]", " ", name)]):
        years = {
            int(str(found.moment)[:4])
            for text in texts
            for found in times.find(text, True)
            if found.kind in ("year", "date", "month") and not np.isnat(found.moment) and found.year_written
        }
        if len(years) == 1:
            return years.pop()
    return None
