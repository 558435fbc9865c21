"""Which column of a sheet of eggs holds what."""

from __future__ import annotations

import numpy as np

from hatchkit.records.sheets.fields import Meaning
from hatchkit.records.sheets.lexicon import all_roles, tokens

#: Share of cells that are words of fate from which a column tells what became of the eggs.
FATES = 0.6


def choose(columns, options) -> list:
    """One reading per column of a sheet of eggs: fates by look, the result, and what tells eggs and batches apart."""
    ranked = sorted(
        (
            (-_fits(meaning, column), column.place, number)
            for column, found in zip(columns, options, strict=True)
            for number, meaning in enumerate(found)
        ),
        key=lambda item: item[:2],
    )
    chosen: list = [None] * len(columns)
    taken = set()
    for cost, place, number in ranked:
        meaning = options[place][number]
        key = (meaning.field, meaning.look) if meaning.field in ("fate", "weight", "look_at") else meaning.field
        if chosen[place] is None and cost < 50 and (key not in taken or meaning.field in ("notes", "ignore")):
            chosen[place] = meaning
            taken.add(key)
    fates = [place for place, meaning in enumerate(chosen) if meaning is not None and meaning.field == "fate"]
    ends = [place for place in fates if not chosen[place].look]
    if columns and not any(m is not None and m.field == "egg" for m in chosen):
        first = chosen[0]
        if (first is None or first.field in ("ignore", "batch")) and columns[0].distinct == 1.0:
            chosen[0] = Meaning("egg")
    if ends and not any(m is not None and m.field == "result" for m in chosen):
        chosen[ends[-1]] = Meaning("result", weight=chosen[ends[-1]].weight)
    if not any(m is not None and m.field == "result" for m in chosen):
        _told_elsewhere(columns, chosen)
    if any(m is not None and m.field == "result" for m in chosen):
        _days_of_results(columns, chosen)
    return chosen


def _told_elsewhere(columns, chosen) -> None:
    """What became of the eggs stands in some column, whatever its heading: the last whose cells are words of fate."""
    for column in reversed(columns):
        meaning = chosen[column.place]
        if column.share_fate >= FATES and (meaning is None or meaning.field not in ("fate", "result")):
            chosen[column.place] = Meaning("result")
            return


def _days_of_results(columns, chosen) -> None:
    """A column of days beside the result says when each egg came out ("out on day")."""
    for column, meaning in zip(columns, chosen, strict=True):
        free = meaning is None or meaning.field == "ignore"
        if free and column.share_count > 0.8 and not column.running and 3 <= np.nanmax(column.values) <= 60:
            if "day" in all_roles(tokens(column.heading)) and np.nanmin(column.values) >= 1:
                chosen[column.place] = Meaning("look_day")
                return


def _fits(meaning, column) -> float:
    name = meaning.field
    if name in (
        "eggs_set",
        "clear",
        "dead",
        "left",
        "hatched",
        "dis",
        "fertile",
        "removed",
        "rotten",
        "cracked",
        "pipped",
    ):
        return -100.0
    if name in ("result", "fate") and column.share_fate >= 0.5:
        return meaning.weight + 3.0
    if name == "batch" and column.distinct == 1.0 or name == "egg" and column.distinct < 0.5 and not column.running:
        return meaning.weight - 3.0
    if name == "batch" and column.share_text > 0.8 and column.distinct < 0.5 and not column.share_fate:
        return meaning.weight + 1.0
    if name == "result" and column.share_fate < 0.3:
        return meaning.weight - 3.0
    return meaning.weight
