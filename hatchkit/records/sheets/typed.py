"""Whole columns of a block -> arrays of counts, times and texts, with what was odd about each cell."""

from __future__ import annotations

import dataclasses
import datetime as dt
import re
from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit.records.sheets.amounts import measure_of
from hatchkit.records.sheets.cells import count_of, is_empty, is_number, text_of
from hatchkit.records.sheets.lexicon import cell_words
from hatchkit.records.sheets.when import read_dates
from hatchkit.records.words import plain

#: Units of measures and their factors.
GRAMS = {
    "": 1.0,
    "g": 1.0,
    "gr": 1.0,
    "gm": 1.0,
    "gms": 1.0,
    "gram": 1.0,
    "grams": 1.0,
    "grammes": 1.0,
    "gramm": 1.0,
    "kg": 1000.0,
    "oz": 28.349523125,
    "lb": 453.59237,
    "lbs": 453.59237,
}
DAYS = {
    "": 1.0,
    "d": 1.0,
    "day": 1.0,
    "days": 1.0,
    "tag": 1.0,
    "tage": 1.0,
    "jours": 1.0,
    "jour": 1.0,
    "j": 1.0,
    "dias": 1.0,
    "dia": 1.0,
    "dagen": 1.0,
    "giorni": 1.0,
    "dni": 1.0,
    "dnu": 1.0,
    "dagar": 1.0,
    "dage": 1.0,
    "nap": 1.0,
    "weeks": 7.0,
    "week": 7.0,
    "wk": 7.0,
    "h": 1 / 24,
}
WEEKS = {
    "": 1.0,
    "w": 1.0,
    "wk": 1.0,
    "wks": 1.0,
    "week": 1.0,
    "weeks": 1.0,
    "months": 4.348,
    "month": 4.348,
    "mo": 4.348,
    "wochen": 1.0,
    "monate": 4.348,
    "years": 52.18,
    "year": 52.18,
    "yr": 52.18,
    "y": 52.18,
    "jahre": 52.18,
    "jahr": 52.18,
    "ans": 52.18,
    "anni": 52.18,
    "años": 52.18,
    "mois": 4.348,
    "mesi": 4.348,
    "meses": 4.348,
}

#: Eggs stored longer than this are none that anybody set; the same for a hen's age in weeks (20 years).
MOST_STORED_DAYS, MOST_WEEKS = 400.0, 1_050.0
#: Dates outside these years are slips of writing.
FIRST_DATE, LAST_DATE = np.datetime64("1950-01-01", "us"), np.datetime64("2101-01-01", "us")


def factor_in(heading: str, units: dict) -> float:
    """The factor of the unit that a heading names ("Age (months)"); 1 for none."""
    words = re.findall(r"[^\W\d_]+", heading.lower())
    return next((units[word] for word in words if units.get(word, 1.0) != 1.0), 1.0)


@dataclass
class Odd:
    """Cells of one column that could not be taken as they stand, by what was odd about them."""

    heading: str
    field: str
    hits: dict = dataclasses.field(default_factory=dict)

    def add(self, code: str, row: int, cell) -> None:
        """Keep a cell under a code."""
        self.hits.setdefault(code, []).append((row, cell))


@dataclass
class Counts:
    """A column as counts: values (NaN where none), how many "all" leaves out, and the Count of each odd cell."""

    values: np.ndarray
    everything: np.ndarray
    special: dict


def counts(cells, rows, language, odd: Odd) -> Counts:
    """A column of numbers of eggs."""
    kinds = set(map(type, cells))
    if kinds and kinds <= {float, int}:
        numbers = np.array(cells, dtype=float)
        if np.isfinite(numbers).all() and ((numbers >= 0) & (numbers < 100_000) & (numbers == np.floor(numbers))).all():
            return Counts(numbers, np.full(len(cells), np.nan), {})
    values, everything, special = np.full(len(cells), np.nan), np.full(len(cells), np.nan), {}
    for place, count in _each_once(cells, count_of, language):
        values[place] = np.nan if count.value is None else count.value
        if count.code:
            everything[place] = count.all_but
            special[place] = count
            odd.add(count.code, rows[place], cells[place])
    return Counts(values, everything, special)


def _each_once(cells, read, *how):
    """Place of each filled cell with what `read` makes of it; cells that are the same are read once."""
    known: dict = {}
    for place, cell in enumerate(cells):
        if not is_empty(cell):
            key = (type(cell), cell)
            if key not in known:
                known[key] = read(cell, *how)
            yield place, known[key]


def texts(cells) -> list:
    """A column as texts; None where empty."""
    known = {cell: text_of(cell) for cell in set(cells)}
    return [known[cell] for cell in cells]


def measures(cells, rows, units: dict, odd: Odd) -> np.ndarray:
    """A column of numbers with decimals."""
    most = MOST_STORED_DAYS if units is DAYS else MOST_WEEKS if units is WEEKS else np.inf
    if set(map(type, cells)) == {float}:
        numbers = np.array(cells)
        if (np.abs(numbers) < min(most, 1e9)).all():
            return numbers
    values = np.full(len(cells), np.nan)
    for place, (value, code) in _each_once(cells, _within, units, most):
        values[place] = np.nan if value is None else value
        if code:
            odd.add(code, rows[place], cells[place])
    return values


def _within(cell, units: dict, most: float):
    """A measure as it was read, or none with the code "too much" where no keeper's could be so large."""
    value, code = measure_of(cell, units)
    if np.isfinite(most) and (value is not None and value > most or value is None and is_number(cell)):
        return None, "too much"
    return value, code


def times(cells, rows, day_first: bool, year, odd: Odd, near=None):
    """A column of dates as wall-clock times.

    Parameters
    ----------
    cells, rows : list
    day_first : bool
    year : int or None or list
        The year of dates that have none, one for all or one per row.
    odd : Odd
    near : ndarray of datetime64, optional
        For each cell the moment that a date without a year lies nearest to.

    Returns
    -------
    times : ndarray of datetime64[us], shape (n,)
        NaT where there is none; midnight where no hour was written.
    hour_kept : ndarray of bool, shape (n,)
    """
    if {dt.datetime} <= set(map(type, cells)) <= {dt.datetime, dt.date} and all(
        1950 <= cell.year <= 2100 for cell in cells
    ):
        moments = pd.to_datetime(cells).to_numpy().astype("datetime64[us]")
        return moments, moments != moments.astype("datetime64[D]")
    cells = ["" if isinstance(cell, str) and plain(cell) in cell_words("unknown") else cell for cell in cells]
    if isinstance(year, list) and len(set(year)) > 1:
        moments, hours = np.full(len(cells), np.datetime64("NaT", "us")), np.zeros(len(cells), bool)
        for one in dict.fromkeys(year):
            mine = [place for place, own in enumerate(year) if own == one]
            part = times([cells[i] for i in mine], [rows[i] for i in mine], day_first, one, odd)
            moments[mine], hours[mine] = part
        return moments, hours
    year = year[0] if isinstance(year, list) and year else None if isinstance(year, list) else year
    found = read_dates(cells, day_first, year, near)
    for place, code in found.reasons.items():
        if not is_empty(cells[place]):
            odd.add(f"date {code}", rows[place], cells[place])
    moments = found.moments.astype("datetime64[us]")
    for place in np.flatnonzero((moments < FIRST_DATE) | (moments >= LAST_DATE)):
        odd.add("date year", rows[place], cells[place])
        moments[place] = np.datetime64("NaT", "us")
    return moments, np.asarray(found.hour_written)
