"""What a block is a table of: batches, eggs, looks (a log), weighings, or nothing; and what columns of eggs hold."""

from __future__ import annotations

import numpy as np

from hatchkit.records.sheets.cells import is_empty, text_of
from hatchkit.records.sheets.entries import fate_of
from hatchkit.records.sheets.expand import told_by_day
from hatchkit.records.sheets.fields import POSSIBLE, Meaning
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.profile import SAMPLE

#: Fields that a column of fates gives up to be the end of each egg ("What happened", "Hatch" over "keet, keet, DIS").
_GIVES_WAY = frozenset({"notes", "ignore", "breed", "species", "what", "place"})
#: Share of the filled cells that name a fate.
MOSTLY = 0.5


#: Fields of which any number of columns may be.
SEVERAL = ("notes", "ignore", "percent")


def best_of_each(options, prefer: dict, several: tuple = SEVERAL) -> list:
    """The likeliest reading of each column, a field once unless it is one of `several`; `prefer` adds to its weight."""
    chosen, taken = [], set()
    for found in options:
        ranked = sorted(found, key=lambda meaning: -(meaning.weight + prefer.get(meaning.field, 0.0)))
        best = next(meaning for meaning in ranked if meaning.field not in taken)
        taken |= {best.field} - {*several}
        chosen.append(best)
    return chosen


def columns_of_eggs(columns, options, language: str | None = None) -> list:
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
        if chosen[place] is None and cost < 50 and (key not in taken or meaning.field in SEVERAL):
            chosen[place] = meaning
            taken.add(key)
    fates = [place for place, meaning in enumerate(chosen) if meaning.field == "fate"]
    ends = [place for place in fates if not chosen[place].look]
    if columns and not any(m.field == "egg" for m in chosen):
        first = chosen[0]
        if first.field in ("ignore", "batch") and columns[0].distinct == 1.0:
            chosen[0] = Meaning("egg")
    if ends and not any(m.field == "result" for m in chosen):
        chosen[ends[-1]] = Meaning("result", weight=chosen[ends[-1]].weight)
    if not any(m.field == "result" for m in chosen):
        _end_in_words(columns, options, chosen, language)
    if any(m.field == "result" for m in chosen):
        _days_of_results(columns, chosen)
    return chosen


def _end_in_words(columns, options, chosen, language) -> None:
    """Where no heading names the end of the eggs, the column whose words tell of it, if no look does."""

    def hatched(column) -> bool:
        return any((fate := fate_of(cell, language)) and fate.fate == "hatched" for cell in map(text_of, column.cells))

    looks = [c for c, meaning in zip(columns, chosen, strict=True) if meaning.field == "fate"]
    if any(map(hatched, looks)):
        return
    for column, found, meaning in reversed(list(zip(columns, options, chosen, strict=True))):
        free = len(found) > 1 and (meaning.field in _GIVES_WAY)
        if free and column.share_fate >= MOSTLY and (not looks or hatched(column)):
            chosen[column.place] = Meaning("result", weight=POSSIBLE)
            return


def _days_of_results(columns, chosen) -> None:
    """A column of days beside the result says when each egg came out ("out on day")."""
    for column, meaning in zip(columns, chosen, strict=True):
        free = meaning.field == "ignore"
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


_LOSSES = ("clear", "dead", "left", "hatched", "dis", "unhatched", "pipped", "fertile")


def kind_of(block, columns, options) -> str:
    """batches, eggs, looks, weights, lines, or "" for none.

    Parameters
    ----------
    block : Block
    columns : list of profile.Column
    options : list of list of Meaning
        Readings of each column (`assign.candidates`).
    """
    if block.shape == "lines" or told_by_day(block) is not None:
        return "lines"
    own = _own_table({heading.strip().lower() for heading in block.headings})
    if own:
        return own
    first = [found[0].field if found else "ignore" for found in options]
    possible = [{meaning.field for meaning in found if meaning.weight > -2.5} for found in options]
    fates = [
        column
        for column, fields in zip(columns, possible, strict=True)
        if column.share_fate >= 0.6
        and (column.birds < 0.5 or fields & {"result", "fate"})
        and column.filled
        and fields & {"fate", "result", "what", "notes", "species"}
    ]
    counted = [
        column for column, name in zip(columns, first, strict=True) if name in _LOSSES and column.share_count > 0.5
    ]
    if _is_diary(block, columns, counted):
        return "lines"
    upright = block.shape not in ("form", "sideways")
    if upright and fates and len(block.rows) >= 4 and len(counted) <= 1 and not _has_events(columns, first):
        return "eggs"
    if _are_weights(first, possible, counted):
        return "weights"
    if _is_log(block, columns, options, first, possible, counted):
        return "looks"
    if any("eggs_set" in fields for fields in possible) and (counted or any("set_at" in fields for fields in possible)):
        return "batches"
    if len(counted) >= 2:
        return "batches"
    return ""


def _are_weights(first, possible, counted) -> bool:
    """Weights with a date or an egg to each, and neither losses nor a date of setting."""
    if "weight" not in first or counted or "set_at" in first:
        return False
    return "eggs_set" not in first or any("date" in fields or "eggs_weighed" in fields for fields in possible)


def _own_table(headings: set) -> str:
    """The table that the kit's own headings name; "" for a keeper's sheet."""
    if {"eggs_set", "set_at"} <= headings:
        return "batches"
    if {"batch", "egg"} <= headings and headings & {"outcome", "candle1", "weight_g", "stage_day", "candle2"}:
        return "eggs"
    if {"weighed_at", "grams"} <= headings:
        return "weights"
    return "looks" if "looked_at" in headings and headings & {"clear", "dead", "left"} else ""


_DAYS = ("date", "look_at", "look_day")


def _has_events(columns, first) -> bool:
    return any(name == "what" and column.steps for column, name in zip(columns, first, strict=True))


def _is_diary(block, columns, counted) -> bool:
    """A day and a text, and nothing else: a diary that has headings."""
    filled = [column for column in columns if column.filled]
    texts = [column for column in filled if column.share_text > 0.6 and column.mean_length > 18]
    return (
        block.shape == "table"
        and len(filled) <= 3
        and len(texts) == 1
        and not counted
        and any(column.share_date > 0.6 for column in filled)
        and all(
            column.share_date > 0.6 or column is texts[0] or column.share_count > 0.6 or column.share_text > 0.6
            for column in filled
        )
    )


def _is_log(block, columns, options, first, possible, counted) -> bool:
    """One row per look: batches come back on other days, and the eggs set stand in few rows only."""
    if block.shape in ("form", "sideways"):
        return False
    rows = len(block.rows)
    whole = {name for name, column in zip(first, columns, strict=True) if column.filled >= 0.8 * min(rows, SAMPLE)}
    events = _has_events(columns, first)
    if {"eggs_set", "hatched"} <= whole and not events:
        return False
    dated = any(name in _DAYS or "date" in fields for name, fields in zip(first, possible, strict=True))
    if not dated:
        return False
    if "batch" in first and counted and not {"eggs_set", "set_at", "hatched"} & set(first):
        # Losses by batch and day without a number set: a log beside a table of batches, if each row is of one look.
        looks = {found[0].look for found in options if found and found[0].look}
        return len(looks) < 2 or columns[first.index("batch")].distinct < 1
    if len(block.rows) < 3:
        return False
    set_at = any(
        name == "set_at" and column.filled >= 0.6 * len(block.rows) for column, name in zip(columns, first, strict=True)
    )
    if events and (counted or any("notes" in fields for fields in possible)):
        return not set_at or _repeats(columns, first)
    return bool(counted) and not set_at and _repeats(columns, first)


def _repeats(columns, first) -> bool:
    """Whether the names of batches (or breeds) come back, on other days."""
    days = next((c.cells for c, name in zip(columns, first, strict=True) if name in _DAYS and c.filled), None)
    for column, name in zip(columns, first, strict=True):
        if name in ("batch", "breed", "species", "pen") and column.filled:
            names = [text_of(cell) for cell in column.cells if not is_empty(cell)]
            if days is not None:
                pairs = {(text_of(n), text_of(d)) for n, d in zip(column.cells, days, strict=True) if not is_empty(n)}
                if len(pairs) < 1.5 * len(set(names)):
                    return False
            return len(set(names)) <= 0.6 * len(names)
    return False
