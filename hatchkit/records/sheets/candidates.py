"""One column -> what it may be: its words, changed by what its cells hold, and what the cells alone suggest."""

from __future__ import annotations

import math
import operator
import re
from dataclasses import replace
from functools import cache

import numpy as np

from hatchkit.records.sheets.cells import is_empty
from hatchkit.records.sheets.fields import COUNTS, DATES, PLAIN, POSSIBLE, USUAL, Look, Meaning, meaning_of
from hatchkit.records.sheets.meanings import meanings
from hatchkit.records.words import csv_rows

#: What a column costs that words or values name but the reading leaves out, and what an unknown one costs.
LEFT_OUT, UNKNOWN_OUT, PLAIN_OUT = -1.0, 0.0, -3.0
#: Numbers that are no eggs, if their heading says so.
_NO_EGGS = frozenset(
    "weight percent temperature humidity year flock_age_weeks stored_days eggs_weighed egg stage_day tray_row tray_col "
    "batch".split()
)
#: Clears are told apart at the first look, by this day (common practice, no source: hens' day 7, geese's day 10).
FIRST_LOOK_BY = 12
#: Nobody sees anything in an egg before this day, and no bird sits longer than the other.
FIRST_DAY, LAST_DAY = 3, 45
#: The weight of what a person confirmed.
TOLD = 20.0
#: What a plain heading keeps where none of its cells can be read so.
AGAINST_VALUES = -0.5


def candidates(column, language, fixed: str | None = None) -> list[Meaning]:
    """What a column may be: its words' readings that its values allow, and what the values alone suggest."""
    if fixed is not None:
        return [meaning_of(fixed, TOLD), Meaning("ignore", weight=-TOLD)]
    named = meanings(column.heading, column.group, language)
    if not column.filled:
        return (
            [*named[:1], Meaning("ignore", weight=0.0)]
            if named and named[0].weight >= PLAIN
            else [Meaning("ignore", weight=0.0)]
        )
    kept = [meaning for meaning in (_with_values(meaning, column) for meaning in named) if meaning is not None]
    figures = bool(named) and named[0].field == "notes" and not column.share_text  # of the weather, say
    if named and named[0].weight >= PLAIN and not figures and all(meaning.weight < POSSIBLE for meaning in kept):
        # A plain heading over cells that are none of it: each cell is told of, the column is not dropped.
        kept = [replace(named[0], weight=AGAINST_VALUES), *(m for m in kept if m.field != named[0].field)]
    found = {(m.field, m.look, m.within): m for m in reversed(kept)}
    look = next((m.look for m in kept if m.look), Look())
    for extra in [
        *([] if _are_keys(column, named) else _by_values(column, bool(named))),
        *_by_sums(column, kept, look),
    ]:
        if extra.field not in {m.field for m in kept}:
            found.setdefault((extra.field, extra.look, extra.within), extra)
    if "ignore" not in {key[0] for key in found} and "percent" not in {key[0] for key in found}:
        plain_word = bool(kept) and kept[0].weight >= PLAIN and kept[0].field in COUNTS
        found["ignore", Look(), False] = Meaning(
            "ignore", weight=PLAIN_OUT if plain_word else LEFT_OUT if kept else UNKNOWN_OUT
        )
    return sorted(found.values(), key=lambda meaning: -meaning.weight)


def _with_values(meaning: Meaning, column) -> Meaning | None:
    """The reading with its weight changed by what the cells hold; None if they rule it out."""
    weight = meaning.weight + _by_rules(meaning, column)
    if meaning.field in COUNTS:
        weight += 0.5 * (column.share_count - 1.0)
    elif meaning.field == "batch":
        weight += 0.5 * (column.distinct - 0.5)
    elif meaning.field == "look_day" and not _are_days(column.values, meaning.look.day):
        return None
    return replace(meaning, weight=weight) if np.isfinite(weight) else None


def _by_rules(meaning: Meaning, column) -> float:
    """What the rules of `reference/column_rules.csv` add to a reading; minus infinity where one rules it out."""
    added = 0.0
    for when, weight in _rules().get(meaning.field, ()):
        held = (meaning.weight if name == "weight" else float(getattr(column, name)) for name, _, _ in when)
        if all(_COMPARED[sign](value, limit) for value, (_, sign, limit) in zip(held, when, strict=True)):
            added += weight
    return added


_COMPARED = {"<": operator.lt, ">": operator.gt, "<=": operator.le, ">=": operator.ge, "=": operator.eq}


@cache
def _rules() -> dict[str, list]:
    """Field -> rules: what must hold of its column, as (measure, sign, limit), and the weight that this adds."""
    groups, found = {"counts": COUNTS, "dates": DATES}, {}
    for row in csv_rows("column_rules"):
        told = re.findall(r"(\w+)([<>=]+)(\S+)", row["when"])
        when = [(name, sign, float(limit)) for name, sign, limit in told]
        weight = -math.inf if row["weight"] == "out" else float(row["weight"])
        for field in groups.get(row["fields"], row["fields"].split()):
            found.setdefault(field, []).append((when, weight))
    return found


def _are_days(values, named: int | None) -> bool:
    """Whether numbers can be the days on which eggs were looked at; beside a day that the heading names, near it."""
    days = values[~np.isnan(values)]
    if not len(days) or np.median(days) < FIRST_DAY or days.max() > LAST_DAY:
        return False
    return named is None or bool(np.abs(days - named).max() <= 3)


def _by_sums(column, kept, look: Look) -> list[Meaning]:
    """Classes that a column of whole numbers may hold whose words name none: only if the eggs then add up.

    A look without a class ("Penoy D7") may be of clears as well as of dead: both are offered alike, and asked about.
    """
    if column.share_count < 0.8 or column.share_fraction or column.running or column.share_text > 0.5 or not kept:
        return []
    plain_enough = 1.5
    if any(m.weight > plain_enough and (m.field in COUNTS or m.field in _NO_EGGS and not look) for m in kept):
        return []
    if look:
        later = (look.day or 0) > FIRST_LOOK_BY or (look.order or 1) > 1 or look.transfer
        clear = Meaning("clear", look, weight=-3.5 if later else -1.5)
        return [clear, Meaning("dead", look, weight=-1.5), Meaning("left", look, weight=-1.5)]
    return [Meaning(name, weight=-4.0) for name in "eggs_set hatched clear dis dead left removed pipped".split()]


def _are_keys(column, named) -> bool:
    """Whether numbers of batches look like days without a year ("26/1", "26/2" below "No."): they name no date."""
    if not named or named[0].field != "batch" or column.distinct < 1.0:
        return False
    kept = [cell for cell in column.cells if not is_empty(cell)]
    return all(isinstance(cell, str) and re.fullmatch(r"\s*\d{1,4}\s*[/-]\s*\d{1,3}\s*", cell) for cell in kept)


def _by_values(column, named: bool) -> list[Meaning]:
    """What the cells alone suggest; weaker where words say something else."""
    step = -2.0 if named else 0.0
    found = []
    if column.share_date >= 0.7:
        found += [
            Meaning("set_at", weight=-0.5 + step),
            Meaning("hatch_at", weight=-1.0 + step),
            Meaning("look_at", weight=-2.0 + step),
        ]
    elif column.birds >= 0.6:
        found += [Meaning("breed", weight=USUAL + 0.5 * step)]
    elif column.steps and not column.numbered:
        found += [Meaning("what", weight=USUAL)]
    elif column.share_fate >= 0.7 and column.share_text > 0.7 and column.mean_length < 25:
        found += [Meaning("fate", weight=POSSIBLE)]
    elif column.share_count >= 0.8 and not column.share_fraction:
        if column.running:
            found += [Meaning("batch", weight=0.5 + step)]
        if not named:
            names = ("eggs_set", "hatched", "clear", "dis", "pipped", "removed")
            found += [Meaning(name, weight=-3.0) for name in names]
            found += [Meaning("dead", weight=-3.0), Meaning("left", weight=-3.5)]
        elif column.place == 0:
            found += [Meaning("batch", weight=-1.0)]
    elif column.share_text >= 0.6:
        first = column.place == 0
        found += [
            Meaning("batch", weight=(0.5 if first else -2.0) + (2.5 if column.numbered else 0.0) + step),
            Meaning("notes", weight=(0.4 if column.mean_length > 12 else -0.5) + step),
        ]
    return found
