"""The year of dates that are written without one."""

from __future__ import annotations

import datetime as dt
import os
from collections import Counter

from hatchkit.records.sheets.order import date_columns
from hatchkit.records.sheets.when import read_dates


def today() -> dt.date:
    """The day on which a season is read; HATCHKIT_TODAY (ISO) stands in for it, as in tests."""
    told = os.environ.get("HATCHKIT_TODAY")
    return dt.date.fromisoformat(told) if told else dt.date.today()


def decide_year(understood, told: int | None) -> tuple[int | None, list[dict]]:
    """The year for dates without one on sheets whose title names none, and the question where nothing tells it.

    Parameters
    ----------
    understood : list of Understood
    told : int or None
        What a person said.

    Returns
    -------
    year : int or None
    questions : list of dict
        "year", if it was taken from the calendar: the last in which none of the dates lies ahead.
    """
    if told is not None:
        return int(told), []
    bare = [(item, _without_year(item)) for item in understood if not item.year]
    bare = [(item, days) for item, days in bare if days]
    if not bare:
        return None, []
    years = Counter(year for item in understood for year in _written(item))
    years.update(item.year for item in understood if item.year)
    if years:
        return years.most_common(1)[0][0], []
    last = max(day for _, days in bare for day in days)
    now = today()
    year = now.year if last <= (now.month, now.day) else now.year - 1
    item = bare[0][0]
    return year, [
        dict(code="year", file=item.block.file, sheet=item.block.sheet, taken=str(year), rows=list(item.block.rows))
    ]


def _without_year(item) -> list[tuple[int, int]]:
    """(month, day) of the dates of a sheet that have no year."""
    found = []
    for column in ([cell for cell in cells if isinstance(cell, str)] for cells in date_columns(item)):
        reasons = read_dates(column, True, None).reasons if column else {}
        cells = [column[place] for place, code in reasons.items() if code == "no year"]
        moments = read_dates(cells, True, 2024).moments.astype("datetime64[D]").tolist() if cells else []
        found += [(day.month, day.day) for day in moments if day is not None]
    return found


def _written(item) -> list[int]:
    """Years of the dates that have one."""
    return [
        day.year
        for column in date_columns(item)
        for day in read_dates(column[:60], True, None).moments.astype("datetime64[D]").tolist()
        if day is not None
    ]
