"""When was each line written? Every way in which a log says so, put to the one reader of times."""

from __future__ import annotations

import re
from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records import times
from hatchkit.records.logs import stamps as _stamps
from hatchkit.records.logs.since import moments
from hatchkit.records.logs.zone import put_zones
from hatchkit.records.times.forms import FIRST_YEAR, LAST_YEAR


def times_of(raw, head, plan, wishes, name) -> _stamps.Stamps:
    """When each line was written; HatchkitError where the lines do not say so for sure."""
    found = _written(raw, head, plan, wishes, name)
    refuse_twelve_hours(found.local)
    if plan.zone is not None:
        put_zones(found, raw[plan.zone].to_numpy(dtype=object), plan.zone_numbers)
    return found


def _written(raw, head, plan, wishes, name) -> _stamps.Stamps:
    if plan.parts:
        at = plan.parts.get("hour", head.width)
        written = [row[at] for row in head.sample if at < len(row)]
        return _stamps.read_parts(raw, plan.parts, written, head.header[at] if written else "")
    if plan.since:
        column = plan.stamp[0] if plan.stamp else None
        name = head.header[column] if head.header and column is not None and column < len(head.header) else ""
        return _in_years(moments(raw, column, name, head.preamble))
    first = raw[plan.stamp[0]]
    if first.dtype.kind == "M":
        return _in_years(first.to_numpy().astype("datetime64[us]", copy=False))
    if plan.epoch:
        return _stamps.read_epoch(pd.to_numeric(first, errors="coerce").to_numpy())
    texts = first.to_numpy(dtype=object)
    if head.dated_by == "serial":
        return _stamps.Stamps(times.read(texts, serials=True).moments)
    if plan.clock_only:
        day = _stamps.day_above([*head.preamble, Path(name).stem.replace("_", " ")])
        if day is None:
            raise HatchkitError("refuse_no_day", {})
        return _stamps.read_clocks(texts, day, _days_between(raw, texts))
    clocks = None
    if len(plan.stamp) > 1:
        clocks = raw[plan.stamp[1]].to_numpy(dtype=object)
        at = plan.stamp[1]
        clocks = plain_clocks(clocks, head.header[at] if head.header and at < len(head.header) else f"{at + 1}")
        if plan.minute is not None:
            clocks = np.array(
                [
                    f"{a}:{b:>02}" if isinstance(a, str) and isinstance(b, str) else np.nan
                    for a, b in zip(clocks, raw[plan.minute].to_numpy(dtype=object), strict=True)
                ],
                dtype=object,
            )
        days = [_stamps.midnight_off(text) if isinstance(text, str) else text for text in texts]
        texts = _days_below(np.array(days, dtype=object), clocks)
        if len(plan.stamp) > 2:
            half = raw[plan.stamp[2]].to_numpy(dtype=object)
            clocks = np.array(
                [
                    f"{a} {b}" if isinstance(a, str) and isinstance(b, str) else a
                    for a, b in zip(clocks, half, strict=True)
                ],
                dtype=object,
            )
    told = wishes.answers.get(order_heading(head, plan)) if wishes.day_first is None else wishes.day_first
    return _stamps.read_stamps(
        texts,
        clocks,
        day_first=told,
        spans=wishes.spans,
        others=wishes.others,
        year=_stamps.year_above(head.preamble, name),
    )


def _days_between(raw, texts) -> dict:
    """Row -> day of the lines among the readings that hold a date and no reading."""
    found = {}
    odd = [row for row, text in enumerate(texts) if not isinstance(text, str) or _stamps.kind_of(text) != "time"]
    for row in odd[:20_000]:
        cells = [str(cell) for cell in raw.iloc[row] if cell == cell]
        day = _stamps.day_above([" ".join(cells)]) if cells else None
        if day is not None:
            found[row] = day
    return found


def order_heading(head, plan) -> str:
    """What the question on the order of day and month calls the column of dates."""
    column = head.header[plan.stamp[0]] if head.header and plan.stamp[0] < len(head.header) else ""
    return column or f"column {plan.stamp[0] + 1}"


def _days_below(texts: np.ndarray, clocks: np.ndarray) -> np.ndarray:
    """Days that are written only beside the first of their readings, as people do in spreadsheets."""
    blank = np.array([not isinstance(text, str) or not text.strip() for text in texts])
    timed = np.array([isinstance(clock, str) and _stamps.kind_of(clock) == "time" for clock in clocks])
    if (blank & timed).sum() < 0.3 * len(texts) or blank[:1].any():
        return texts
    return np.where(blank & timed, pd.Series(texts).mask(blank).ffill(), texts)


def _in_years(local: np.ndarray) -> _stamps.Stamps:
    """Times that the parser read; a year that no log has is no time."""
    low, high = np.datetime64(str(FIRST_YEAR), "us"), np.datetime64(str(LAST_YEAR + 1), "us")
    micros = local.view(np.int64)
    # As whole numbers, of which NaT is the least, the two ends are found in a quarter of the time.
    if len(local) and (micros.min() < low.view(np.int64) or micros.max() >= high.view(np.int64)):
        odd = (local < low) | (local >= high)
        local = local.copy()
        local[odd] = np.datetime64("NaT", "us")
        return _stamps.Stamps(local, reasons={int(row): "year" for row in np.flatnonzero(odd)})
    return _stamps.Stamps(local)


_HOUR = 3_600_000_000
_HALVES = re.compile(r"(\d{1,2})[.,](\d{1,2})")
_STRETCH = re.compile(r"(\d{1,2})(?::00)?\s*[-–]\s*(\d{1,2})(?::00)?")


def plain_clocks(clocks: np.ndarray, name: str) -> np.ndarray:
    """Clock times of a column of their own, bare numbers among them put as hours and minutes.

    22.5 is half past ten in the evening, 22.30 too; which of them a column holds is seen from all of it.

    Parameters
    ----------
    clocks : array of object, shape (n,)
        Text or NaN.
    name : str
        Heading, for the words.

    Raises
    ------
    HatchkitError
        Where the numbers can be read in two ways, or are no clock.
    """
    codes, cells = pd.factorize(clocks)
    cells = [str(cell).strip() for cell in cells]
    if not cells:
        return clocks
    if sum(bool(match and _follows(match)) for match in map(_STRETCH.fullmatch, cells)) > 0.8 * len(cells):
        raise HatchkitError("refuse_stretches", dict(column=name, example=cells[0]))
    halves = [_HALVES.fullmatch(cell) for cell in cells]
    if all(halves):
        return _of_halves(halves, codes, cells, name)
    if all(cell.isdigit() for cell in cells) and max(map(len, cells)) > 2:
        minutes = np.array([int(cell[:-4] or 0) if len(cell) > 4 else int(cell) for cell in cells])
        if (minutes % 100 >= 60).any() and max(map(len, cells)) <= 4 or (minutes >= 2401).any() and len(cells[0]) < 5:
            raise HatchkitError("refuse_minutes", dict(column=name, example=max(cells, key=int)))
    return clocks


def _follows(match) -> bool:
    return (int(match[2]) - int(match[1])) % 24 == 1


def _of_halves(halves, codes, cells, name) -> np.ndarray:
    hours = np.array([int(match[1]) for match in halves])
    as_clock = np.array([int(match[2]) * (10 if len(match[2]) == 1 else 1) for match in halves])
    as_part = np.array([60 * float(f"0.{match[2]}") for match in halves])
    if (as_clock >= 60).any():
        minutes = as_part
    elif not as_clock.any():
        minutes = as_clock
    else:
        even = [_is_even((hours * 60 + minutes)[codes[codes >= 0]]) for minutes in (as_clock, as_part)]
        if even[0] == even[1]:
            raise HatchkitError("refuse_hour_parts", dict(column=name, example=cells[0]))
        minutes = as_clock if even[0] else as_part
    total = np.round((hours * 60 + minutes) * 60).astype(int)
    texts = [f"{s // 3600:02d}:{s // 60 % 60:02d}:{s % 60:02d}" for s in total]
    return np.array([*texts, np.nan], dtype=object)[codes]


def _is_even(minutes: np.ndarray) -> bool:
    """Whether nearly all steps of a column are alike, as they are in the reading that is meant."""
    step = np.diff(minutes) % 1440
    return len(step) > 2 and bool((np.abs(step - np.median(step)) < 1).mean() > 0.9)


def refuse_twelve_hours(local: np.ndarray) -> None:
    """HatchkitError where a clock goes from 12 to 1 and never shows an hour beyond: am and pm are lost."""
    micros = local.view(np.int64)
    if not (micros[1:] < micros[:-1]).any():
        return
    good = local[~np.isnat(local)].view(np.int64)
    step = np.diff(good)
    back = np.flatnonzero((step < -10 * _HOUR) & (step >= -12 * _HOUR))
    if not len(back):
        return
    hours = good // _HOUR % 24
    if (
        hours.min() >= 1
        and hours.max() <= 12
        and (hours[back] == 12).mean() > 0.5
        and len(back) > 0.4 * len(np.unique(good // (24 * _HOUR)))
    ):
        raise HatchkitError("refuse_twelve_hours", {})


def refuse_written_days(cells: list) -> None:
    """HatchkitError where numbers of ten figures are days with times (2509112205) rather than seconds since 1970."""
    numbers = [cell for cell in dict.fromkeys(cells) if re.fullmatch(r"\d{10}", cell)]
    for form, year in (("YYMMDDHHMM", 2), ("YYYYMMDDHH", 4)):
        parts = [[int(cell[n : n + 2]) for n in range(year, 10, 2)] for cell in numbers]
        valid = all(1 <= part[0] <= 12 and 1 <= part[1] <= 31 and part[2] < 24 and part[-1] < 60 for part in parts)
        if len(numbers) > 2 and valid and (year == 2 or all(cell[:2] in ("19", "20") for cell in numbers)):
            raise HatchkitError("refuse_written_days", dict(example=numbers[0], form=form))
