"""Clocks that are easily taken for others: bare numbers, stretches of an hour, twelve hours without am or pm."""

from __future__ import annotations

import re

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError

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
