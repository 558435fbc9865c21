"""Day first or month first: decided once for all sheets of a folder."""

from __future__ import annotations

import re

import numpy as np

from hatchkit.records import times
from hatchkit.records.sheets.when import read_dates

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
    scores[True] += _written_like(understood)
    if abs(scores[True] - scores[False]) >= LEAD:
        return max(scores, key=scores.get), []
    where = next(item for item in understood if item.block.rows)
    best = not any(item.language == "en" and _american(item) for item in understood)
    rows = list(where.block.rows)
    asked = dict(code="day_first", file=where.block.file, sheet=where.block.sheet, taken=str(best), rows=rows)
    return best, [asked]


def _with_dots(texts) -> bool:
    """Most dates have dots ("12.04.2026"), with which no language writes the month first (CLDR), and none denies it."""
    dates = [re.match(r"\s*\d{1,2}\.\s?(\d{1,2})\.", text) for column in texts for text in column if text.strip()]
    dotted = [date for date in dates if date]
    return len(dotted) > 0.5 * len(dates) and all(int(date[1]) <= 12 for date in dotted)


def _written_like(understood) -> float:
    """What the way of writing says for the day first."""
    languages = {item.language for item in understood if any(date_columns(item))}
    return LANGUAGE if languages and not languages & {"en", None} else 0.0


def _american(item) -> bool:
    return any(isinstance(cell, str) and "/" in cell for column in date_columns(item) for cell in column)


def date_columns(item) -> list:
    """The cells of a sheet that hold its dates, by column."""
    if item.kind == "lines":
        return [[str(cells[0]) for cells in item.block.columns[0] if len(cells) > 1]]
    fields = {"set_at", "look_at", "hatch_at", "first_hatch_at", "last_hatch_at", "date", "due"}
    return [
        item.block.columns[place]
        for place, meaning in enumerate(item.chosen)
        if meaning is not None and meaning.field in fields
    ]


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
