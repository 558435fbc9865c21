"""When was each line written? Every way in which a log says so, put to the one reader of times."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records import times
from hatchkit.records.logs import stamps as _stamps
from hatchkit.records.logs.clocks import plain_clocks, refuse_twelve_hours
from hatchkit.records.logs.lines import as_text
from hatchkit.records.logs.since import moments
from hatchkit.records.logs.zone import put_zones
from hatchkit.records.times.forms import FIRST_YEAR, LAST_YEAR


def times_of(raw, head, plan, wishes, name) -> _stamps.Stamps:
    """When each line was written; HatchkitError where the lines do not say so for sure."""
    found = _written(raw, head, plan, wishes, name)
    refuse_twelve_hours(found.local)
    if plan.zone is not None:
        put_zones(found, as_text(raw[plan.zone]), plan.zone_numbers)
    return found


def _written(raw, head, plan, wishes, name) -> _stamps.Stamps:
    if plan.parts:
        at = plan.parts.get("hour", head.width)
        written = [row[at] for row in head.sample if at < len(row)]
        return _stamps.read_parts(raw, plan.parts, written, head.header[at] if written else "")
    if plan.since:
        column = plan.stamp[0] if plan.stamp else None
        name = head.header[column] if head.header and column is not None and column < len(head.header) else ""
        return _in_years(moments(raw, column, name, head.preamble))
    first = raw[plan.stamp[0]]
    if first.dtype.kind == "M":
        return _in_years(first.to_numpy().astype("datetime64[us]", copy=False))
    if plan.epoch:
        return _stamps.read_epoch(pd.to_numeric(first, errors="coerce").to_numpy())
    texts = as_text(first)
    if plan.clock_only:
        day = _stamps.day_above([*head.preamble, Path(name).stem.replace("_", " ")])
        if day is None:
            raise HatchkitError("refuse_no_day", {})
        return _stamps.read_clocks(texts, day, _days_between(raw, texts))
    if plan.serial:
        found = times.read([cell.replace(",", ".") if isinstance(cell, str) else None for cell in texts], serials=True)
        return _stamps.Stamps(found.moments)
    clocks = None
    if len(plan.stamp) > 1:
        clocks = as_text(raw[plan.stamp[1]])
        at = plan.stamp[1]
        clocks = plain_clocks(clocks, head.header[at] if head.header and at < len(head.header) else f"{at + 1}")
        if plan.minute is not None:
            clocks = np.array(
                [
                    f"{a}:{b:>02}" if isinstance(a, str) and isinstance(b, str) else np.nan
                    for a, b in zip(clocks, as_text(raw[plan.minute]), strict=True)
                ],
                dtype=object,
            )
        days = np.array([_stamps.midnight_off(text) if isinstance(text, str) else text for text in texts], dtype=object)
        texts = _days_below(days, clocks)
        if len(plan.stamp) > 2:
            half = as_text(raw[plan.stamp[2]])
            clocks = np.array(
                [
                    f"{a} {b}" if isinstance(a, str) and isinstance(b, str) else a
                    for a, b in zip(clocks, half, strict=True)
                ],
                dtype=object,
            )
    told = wishes.answers.get(order_heading(head, plan)) if wishes.day_first is None else wishes.day_first
    return _stamps.read_stamps(
        texts,
        clocks,
        day_first=told,
        spans=wishes.spans,
        others=wishes.others,
        year=_stamps.year_above(head.preamble, name),
    )


def _days_between(raw, texts) -> dict:
    """Row -> day of the lines among the readings that hold a date and no reading."""
    found = {}
    odd = [row for row, text in enumerate(texts) if not isinstance(text, str) or _stamps.kind_of(text) != "time"]
    for row in odd[:20_000]:
        cells = [str(cell) for cell in raw.iloc[row] if cell == cell]
        day = _stamps.day_above([" ".join(cells)]) if cells else None
        if day is not None:
            found[row] = day
    return found


def order_heading(head, plan) -> str:
    """What the question on the order of day and month calls the column of dates."""
    column = head.header[plan.stamp[0]] if head.header and plan.stamp[0] < len(head.header) else ""
    return column or f"column {plan.stamp[0] + 1}"


def _days_below(texts: np.ndarray, clocks: np.ndarray) -> np.ndarray:
    """Days that are written only beside the first of their readings, as people do in spreadsheets."""
    blank = np.array([not isinstance(text, str) or not text.strip() for text in texts])
    timed = np.array([isinstance(clock, str) and _stamps.kind_of(clock) == "time" for clock in clocks])
    if (blank & timed).sum() < 0.3 * len(texts) or blank[:1].any():
        return texts
    last = np.maximum.accumulate(np.where(blank, 0, np.arange(len(texts))))
    return np.where(blank & timed, texts[last], texts)


def _in_years(local: np.ndarray) -> _stamps.Stamps:
    """Times that the parser read; a year that no log has is no time."""
    low, high = np.datetime64(str(FIRST_YEAR), "us"), np.datetime64(str(LAST_YEAR + 1), "us")
    micros = local.view(np.int64)
    # As whole numbers, of which NaT is the least, the two ends are found in a quarter of the time.
    if len(local) and (micros.min() < low.view(np.int64) or micros.max() >= high.view(np.int64)):
        odd = (local < low) | (local >= high)
        local = local.copy()
        local[odd] = np.datetime64("NaT", "us")
        return _stamps.Stamps(local, reasons={int(row): "year" for row in np.flatnonzero(odd)})
    return _stamps.Stamps(local)
