"""What a block is a table of: batches, eggs, looks (a log), weighings; or nothing that the kit uses."""

from __future__ import annotations

from hatchkit.records.sheets.cells import is_empty, text_of
from hatchkit.records.sheets.expand import told_by_day
from hatchkit.records.sheets.profile import SAMPLE

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
