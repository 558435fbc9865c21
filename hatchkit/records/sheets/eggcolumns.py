"""Which column of a sheet of eggs holds what."""

from __future__ import annotations

import numpy as np

from hatchkit.records.sheets.cells import text_of
from hatchkit.records.sheets.fatewords import fate_of
from hatchkit.records.sheets.fields import POSSIBLE, Meaning
from hatchkit.records.sheets.lexicon import all_roles, tokens

#: Fields that a column of fates gives up to be the end of each egg ("What happened", "Hatch" over "keet, keet, DIS").
_GIVES_WAY = frozenset({"notes", "ignore", "breed", "species", "what", "place"})
#: Share of the filled cells that name a fate.
MOSTLY = 0.5


def choose(columns, options, language: str | None = None) -> list:
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
        _end_in_words(columns, options, chosen, language)
    if any(m is not None and m.field == "result" for m in chosen):
        _days_of_results(columns, chosen)
    return chosen


def _end_in_words(columns, options, chosen, language) -> None:
    """Where no heading names the end of the eggs, the column whose words tell of it, if no look does."""

    def hatched(column) -> bool:
        return any((fate := fate_of(cell, language)) and fate.fate == "hatched" for cell in map(text_of, column.cells))

    looks = [c for c, meaning in zip(columns, chosen, strict=True) if meaning is not None and meaning.field == "fate"]
    if any(map(hatched, looks)):
        return
    for column, found, meaning in reversed(list(zip(columns, options, chosen, strict=True))):
        free = len(found) > 1 and (meaning is None or meaning.field in _GIVES_WAY)
        if free and column.share_fate >= MOSTLY and (not looks or hatched(column)):
            chosen[column.place] = Meaning("result", weight=POSSIBLE)
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
    if name == "batch" and column.share_fate >= MOSTLY and column.share_text >= MOSTLY:
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
