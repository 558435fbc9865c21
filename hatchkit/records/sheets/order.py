"""Day first or month first: decided once for all sheets of a folder."""

from __future__ import annotations

import numpy as np

from hatchkit.problems import problem
from hatchkit.records import dates
from hatchkit.records.sheets.cells import is_empty
from hatchkit.records.sheets.when import read_date


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
    problems : list of dict
    questions : list of dict
    """
    cells = [cell for item in understood for column in _date_columns(item) for cell in column if isinstance(cell, str)]
    marks = dates.order_marks(cells)
    if len(marks) == 1:
        return marks.pop(), [], []
    if hint is not None:
        return hint, [], []
    if not dates.has_open_order(cells):
        return True, [], []
    scores = {first: _plausible(understood, first) for first in (True, False)}
    best = max(scores, key=scores.get)
    if scores[True] == scores[False]:
        where = next(item for item in understood if item.block.rows)
        best = not any(item.language == "en" and _american(item) for item in understood)
        return best, [problem("doubtful", code="date_order_open", facts=dict(day_first=best), file=where.block.file,
                              sheet=where.block.sheet)], []
    return best, [], []


def _american(item) -> bool:
    return any(isinstance(cell, str) and "/" in cell for column in _date_columns(item) for cell in column)


def _date_columns(item):
    if item.kind == "lines":
        return [[cell for cells in item.block.columns[0] for cell in cells if isinstance(cell, str)]]
    fields = {"set_at", "look_at", "hatch_at", "first_hatch_at", "last_hatch_at", "date", "due"}
    return [item.block.columns[place] for place, meaning in enumerate(item.chosen)
            if meaning is not None and meaning.field in fields]


def _plausible(understood, day_first: bool) -> float:
    """How well dates follow each other: rows in order, looks and hatch after setting within two months."""
    score = 0.0
    for item in understood:
        columns = [np.array([np.datetime64("NaT") if is_empty(cell) else _stamp(cell, day_first, item.year) for cell in column],
                            dtype="datetime64[D]") for column in _date_columns(item) if item.kind != "lines"]
        for column in columns:
            step = np.diff(column[~np.isnat(column)]).astype(int)
            score += float(((step >= 0) & (step < 100)).sum()) - 0.5 * float((step < 0).sum())
            score -= float(np.isnat(column).sum())
        for column in columns[1:]:
            apart = (column - columns[0]).astype("timedelta64[D]").astype(float)
            score += float(((apart > 0) & (apart < 60)).sum()) - float(((apart <= 0) | (apart >= 60)).sum())
    return score


def _stamp(cell, day_first: bool, year):
    when, _, _ = read_date(cell, day_first, year or 2024)
    return np.datetime64("NaT") if when is None else np.datetime64(when, "D")
