"""A table of weights -> weighings: a column per day, or a date and a weight in each row."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records.sheets import typed
from hatchkit.records.sheets.fields import PLAIN, Meaning
from hatchkit.records.sheets.kinds import best_of_each
from hatchkit.records.sheets.parts import Context


def choose(columns, options) -> list:
    """One reading per column of a table of weights.

    "Egg" and "Eggs" are one word: the column whose cells differ names the egg, the other counts the eggs on the scale.
    """
    chosen = best_of_each(options, {"weight": 3.0, "date": 1.0}, several=("notes", "ignore", "weight"))
    eggs = [i for i, found in enumerate(options) if _of_eggs(chosen[i], found)]
    # "Eggs on the scale" says it plainly; "egg" and "eggs" do not.
    open_ = [i for i in eggs if chosen[i] is None or chosen[i].field != "eggs_weighed"]
    named = max(open_, key=lambda i: columns[i].distinct, default=None)
    if len(eggs) == 1 and named is not None and chosen[named].field != "egg" and _whole_trays(columns, chosen):
        named = None
    for place in eggs:
        chosen[place] = Meaning("egg" if place == named else "eggs_weighed", weight=PLAIN)
    return chosen


def _of_eggs(meaning, found) -> bool:
    fields = {m.field for m in found if m.weight > 0}
    return (
        bool(fields & {"egg", "eggs_set", "eggs_weighed"})
        and "weight" not in fields
        and (meaning is None or meaning.field in ("egg", "eggs_set", "eggs_weighed", "left"))
    )


def _whole_trays(columns, chosen) -> bool:
    """Whether more than one egg lay on the scale: no egg of the kit's birds weighs above 250 g (memory, no source)."""
    grams = [
        value * typed.factor_in(column.heading, typed.GRAMS)
        for column, meaning in zip(columns, chosen, strict=True)
        if meaning is not None and meaning.field == "weight"
        for value in typed.measures(column.cells, range(len(column.cells)), typed.GRAMS, typed.Odd("", ""))
    ]
    return bool(grams) and np.nanmedian(grams) > 250


def read_weights(block, chosen, context: Context) -> tuple[pd.DataFrame, list]:
    """Weighings of eggs or trays.

    Returns
    -------
    weights : DataFrame
        name (batch as written), egg, tray, day, at, grams, eggs_weighed, row.
    odd : list of typed.Odd
    """
    odd, parts, base = [], [], {}
    n = len(block.rows)
    days: dict = {}
    for place, meaning in enumerate(chosen):
        if meaning is None:
            continue
        mark = typed.Odd(block.headings[place], meaning.field)
        odd.append(mark)
        cells = block.columns[place]
        if meaning.field == "batch":
            base["name"] = pd.Series(typed.texts(cells), dtype=object).ffill()
        elif meaning.field in ("egg", "tray"):
            base[meaning.field] = typed.texts(cells)
        elif meaning.field in ("date", "look_at", "set_at"):
            base["at"] = typed.times(cells, block.rows, context.day_first, context.year, mark)[0]
        elif meaning.field == "look_day":
            base["day"] = typed.measures(cells, block.rows, typed.DAYS, mark)
        elif meaning.field in ("eggs_weighed", "eggs_set", "left"):
            base["eggs_weighed"] = typed.measures(cells, block.rows, {"": 1.0}, mark)
        elif meaning.field == "weight":
            days[place] = (
                meaning.look.day,
                typed.measures(cells, block.rows, typed.GRAMS, mark) * typed.factor_in(mark.heading, typed.GRAMS),
            )
    for day, grams in days.values():
        frame = pd.DataFrame(base, index=range(n))
        if day is not None:
            frame["day"] = float(day)
        elif "at" not in frame and "day" not in frame:
            frame["day"] = 0.0
        frame["grams"], frame["row"], frame["section"] = grams, block.rows, block.sections
        parts.append(frame[~np.isnan(grams)])
    table = pd.concat(parts, ignore_index=True) if parts else pd.DataFrame()
    if len(table) and "eggs_weighed" not in table and "egg" in table:
        table["eggs_weighed"] = np.where(table["egg"].notna(), 1.0, np.nan)
    return table, odd
