"""A table of weights -> weighings: a column per day, or a date and a weight in each row."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records.sheets import typed
from hatchkit.records.sheets.parts import Context


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
        elif meaning.field == "eggs_set" or meaning.field == "left":
            base["eggs_weighed"] = typed.measures(cells, block.rows, {"": 1.0}, mark)
        elif meaning.field == "weight":
            days[place] = (
                meaning.look.day,
                typed.measures(cells, block.rows, typed.GRAMS, mark) * _factor(block.headings[place]),
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


def _factor(heading: str) -> float:
    words = heading.lower().replace("(", " ").replace(")", " ").split()
    return next((factor for unit, factor in typed.GRAMS.items() if unit in words and unit and factor != 1.0), 1.0)
