"""Dates of a sheet, by the one reader of times (`hatchkit.records.times`): cells, order of day and month, year."""

from __future__ import annotations

import datetime as dt
import os
import re
from collections import Counter
from functools import cache

import numpy as np

from hatchkit.records import times
from hatchkit.records.sheets.cells import CLASSES, is_empty
from hatchkit.records.sheets.lexicon import all_roles, tokens

#: From this on the order is not asked for (`times.decide` says how it knows).
SURE = 0.9
#: Rows (`_plausible`) by which one order must fit better; and what a language other than English weighs, none of which
#: writes the month first (Unicode CLDR, date formats).
LEAD, LANGUAGE = 1.5, 4.0


def decide_order(understood, hint: bool | None):
    """Whether dates written in numbers have the day first.

    Parameters
    ----------
    understood : list of Understood
    hint : bool or None
        What season.toml or a person said, or what the logs of the folder prove.

    Returns
    -------
    day_first : bool
    questions : list of dict
    """
    texts = [[cell for cell in column if isinstance(cell, str)] for item in understood for column in date_columns(item)]
    evidence = [times.gather(column, serials=True) for column in texts if column]
    if not evidence:
        return True if hint is None else hint, []
    if hint is None and _with_dots(texts):
        return True, []
    order = times.decide(evidence, hint=hint)
    if order.sure >= SURE or not any(column.open for column in evidence):
        return order.day_first, []
    scores = {first: _plausible(understood, first) for first in (True, False)}
    languages = {item.language for item in understood if any(date_columns(item))}
    scores[True] += LANGUAGE if languages and not languages & {"en", None} else 0.0
    if abs(scores[True] - scores[False]) >= LEAD:
        return max(scores, key=scores.get), []
    where = next(item for item in understood if item.block.rows)
    best = not ("en" in languages and any("/" in cell for cells in texts for cell in cells))
    rows = list(where.block.rows)
    asked = dict(code="day_first", file=where.block.file, sheet=where.block.sheet, taken=str(best), rows=rows)
    return best, [asked]


def _with_dots(texts) -> bool:
    """Most dates have dots ("12.04.2026"), with which no language writes the month first (CLDR), and none denies it."""
    dates = [re.match(r"\s*\d{1,2}\.\s?(\d{1,2})\.", text) for column in texts for text in column if text.strip()]
    dotted = [date for date in dates if date]
    return len(dotted) > 0.5 * len(dates) and all(int(date[1]) <= 12 for date in dotted)


def date_columns(item) -> list:
    """The cells of a sheet that hold its dates, by column."""
    if item.kind == "lines":
        return [[str(cells[0]) for cells in item.block.columns[0] if len(cells) > 1]]
    fields = {"set_at", "look_at", "hatch_at", "first_hatch_at", "last_hatch_at", "date", "due"}
    return [item.block.columns[place] for place, meaning in enumerate(item.chosen) if meaning.field in fields]


def _plausible(understood, day_first: bool) -> float:
    """How well dates follow each other: rows in order, looks and hatch after setting within two months."""
    score = 0.0
    for item in understood:
        if item.kind == "lines":
            continue
        columns = [
            read_dates(column, day_first, item.year or 2024).moments.astype("datetime64[D]")
            for column in date_columns(item)
        ]
        for column in columns:
            step = np.diff(column[~np.isnat(column)]).astype(int)
            score += float(((step >= 0) & (step < 100)).sum()) - 0.5 * float((step < 0).sum())
            score -= float(np.isnat(column).sum())
        for column in columns[1:]:
            apart = (column - columns[0]).astype("timedelta64[D]").astype(float)
            score += float(((apart > 0) & (apart < 60)).sum()) - float(((apart <= 0) | (apart >= 60)).sum())
    return score


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


@cache
def looks_like_date(text: str) -> bool:
    """Whether a text is a date in either order, with or without its year; "12.5" is a number."""
    if not isinstance(text, str) or not 3 <= len(text) <= 40 or not any(c.isdigit() for c in text):
        return False
    if re.fullmatch(r"[+-]?\d+[.,]\d+", text):
        return False
    text = _end_of_range(text)
    stamp = times.stamp_of(text)
    if stamp is None or stamp.wrong or stamp.seconds is not None and not any(stamp.numbers):
        return False
    first, second = stamp.numbers[:2]
    return not stamp.layout.startswith("ab") or 1 <= min(first, second) <= 12 and max(first, second) <= 31


def _end_of_range(text: str) -> str:
    """ "14-15 Mar" is its last day, on which all was done."""
    match = re.fullmatch(r"\s*\d{1,2}\.?\s*(?:-|–|/|to|bis|au|al|tot|do)\s*(\d{1,2}\.?\s*[^\W\d_]{3,}.*)", text)
    if match:
        return match[1]
    # "16/2 2025", and "22.02.2025 r." (roku, year) in Polish.
    text = re.sub(r"^(\d{1,2})([/.])(\d{1,2})\.? (\d{4})$", r"\1\2\3\2\4", text)
    return re.sub(r"(?<=\d)\s*r\.?$", "", text)


def is_dateish(cell) -> bool:
    """Whether a cell holds a date."""
    if is_empty(cell):
        return False
    if isinstance(cell, (dt.datetime, dt.date)):
        return True
    return isinstance(cell, str) and looks_like_date(_without_words(cell.strip()))


@cache
def _without_words(text: str) -> str:
    """ "Good Friday, 29.03.2024" is its date: one word or two before a date with its year, behind a comma or colon."""
    match = re.fullmatch(r"[^\W\d_]+(?: [^\W\d_]+)?[,:] *(\d{1,2}[./-]\d{1,2}[./-]\d{2,4}|\d{4}-\d{2}-\d{2})", text)
    return match[1] if match else text


def read_dates(cells, day_first: bool, year=None, near=None):
    """Cells as wall-clock times.

    Parameters
    ----------
    cells : list
    day_first : bool
    year : int, optional
        The year of dates that have none.
    near : ndarray of datetime64, optional
        For each cell the moment that a date without a year lies nearest to.

    Returns
    -------
    hatchkit.records.times.Times
    """
    plain = [
        _end_of_range(_without_words(cell.strip()))
        if isinstance(cell, str)
        else cell
        if isinstance(cell, dt.date) or cell is None
        else times.Serial(cell)
        if isinstance(cell, float) and 25_000 < cell < 80_000
        else str(cell)  # a day of the month alone is no date
        if isinstance(cell, float)
        else cell
        for cell in cells
    ]
    return times.read(plain, day_first, year=year, near=near, serials=True)


def leading_date(text: str, day_first: bool, year: int | None):
    """(datetime64 or None, the rest) of a line that begins with a date: "Sun 12 Mar: set 24 Sussex"."""
    for found in times.find(text, day_first, year):
        if found.kind == "date" and found.moment is not None and not np.isnat(np.datetime64(found.moment)):
            before = text[: found.start].strip(" .,:-–(").split()
            if len(before) <= 1:
                end = _before_count(text, found, year)
                if end < found.end:
                    return leading_date(text[:end], day_first, year)[0], text[end:].strip()
                return np.datetime64(found.moment, "us"), text[found.end :].lstrip(" .,:;)-–")
        break
    return None, text


#: "22 March 13": a day and a month in words, and two figures that may be a year.
_MAYBE_YEAR = re.compile(r"\d{1,2}\S*\s+[^\W\d_]+\.?(?=\s+(\d\d)$)")


def _before_count(text: str, found, year: int | None) -> int:
    """Where a date ends: before two figures that count eggs ("22 March 13 hatched", in a diary of another year)."""
    told = _MAYBE_YEAR.match(text[found.start : found.end])
    if told is None or year is None or int(told[1]) == year % 100:
        return found.end
    after = tokens(text[found.end :])[:1]
    return found.start + told.end() if all_roles(after) & CLASSES else found.end
