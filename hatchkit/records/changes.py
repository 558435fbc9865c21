"""What a keeper changed and when: a sheet named "changes", or [[changes]] in season.toml."""

from __future__ import annotations

import datetime as dt

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.words import plain

COLUMNS = ["date", "what", "where", "keeper", "file", "sheet", "row"]
#: Words of the sheet's name and of its headings (common words, no source).
NAMES = {"changes", "change", "aenderungen", "anderungen", "modifiche", "changements", "cambios", "wijzigingen"}
_WHEN = {"date", "when", "day", "datum", "data", "fecha", "from", "since"}
_WHAT = {"what", "change", "changed", "changes", "was", "cosa", "quoi", "que", "wat", "what changed"}
_WHERE = {"where", "machine", "incubator", "pen", "breed", "wo", "dove", "ou", "donde", "waar", "for", "only"}


def empty_changes() -> pd.DataFrame:
    """The table without rows."""
    table = pd.DataFrame({name: pd.Series(dtype="object") for name in COLUMNS})
    return table.astype({"date": "datetime64[us, UTC]"})


def is_changes(grid) -> bool:
    """Whether a sheet (or a file, where it has no sheets) is the list of changes."""
    name = grid.sheet or grid.file.rsplit("/", 1)[-1].rsplit(".", 1)[0]
    return plain(name) in NAMES or plain(grid.file.rsplit("/", 1)[-1].rsplit(".", 1)[0]) in NAMES


def read_changes(grids, settings: dict, zone: str, found: list) -> pd.DataFrame:
    """The list of changes.

    Parameters
    ----------
    grids : list of grids
        Sheets for which `is_changes` holds.
    settings : dict
        season.toml; [[changes]] with date, what and, where it held for some eggs only, where (a machine, pen or breed).
    zone : str
    found : list of dict
        Problem rows are added: an entry without a day or without words.

    Returns
    -------
    DataFrame
        date (UTC, midnight of the keeper's clock), what, where ("" for all), keeper, file, sheet, row; by time.
    """
    rows = [_entry(entry, number, found) for number, entry in enumerate(settings.get("changes") or [], start=1)]
    for grid in grids:
        rows += _sheet(grid, settings, found)
    rows = [row for row in rows if row is not None]
    if not rows:
        return empty_changes()
    table = pd.DataFrame(rows, columns=COLUMNS)
    table["date"] = (
        pd.to_datetime(table["date"])
        .dt.tz_localize(zone, ambiguous=True, nonexistent="shift_forward")
        .dt.tz_convert("UTC")
        .astype("datetime64[us, UTC]")
    )
    return table.sort_values("date", kind="stable", ignore_index=True)


def _entry(entry: dict, number: int, found: list):
    day = _day([entry.get("date")], None)[0]
    what = str(entry.get("what") or "").strip()
    if day is None or not what:
        found.append(
            problem("lost", code="change_unread", facts=dict(number=number), file="season.toml", column="changes")
        )
        return None
    return [day, what, str(entry.get("where") or "").strip(), "", "season.toml", "", None]


def _sheet(grid, settings: dict, found: list) -> list:
    head, columns = _headings(grid.cells)
    if head is None:
        found.append(problem("lost", code="changes_no_heading", file=grid.file, sheet=grid.sheet, row=1))
        return []
    body = grid.cells[head + 1 :]
    told = (settings.get("sheets") or {}).get("day_first")
    days = _day([_cell(row, columns["when"]) for row in body], told)
    rows = []
    for place, (row, day) in enumerate(zip(body, days, strict=True)):
        line = head + 2 + place
        what = str(_cell(row, columns["what"]) or "").strip()
        if not any(row):
            continue
        if day is None or not what:
            found.append(
                problem(
                    "lost", code="change_unread", facts=dict(number=line), file=grid.file, sheet=grid.sheet, row=line
                )
            )
            continue
        where = str(_cell(row, columns.get("where")) or "").strip()
        rows.append([day, what, where, "", grid.file, grid.sheet, line])
    return rows


def _headings(cells):
    """Row of the headings and the places of when, what and where; (None, {}) where there are none."""
    for at, row in enumerate(cells[:10]):
        words = [plain(str(cell)) if cell else "" for cell in row]
        columns = {}
        for name, known in (("when", _WHEN), ("what", _WHAT), ("where", _WHERE)):
            place = next(
                (place for place, word in enumerate(words) if word in known and place not in columns.values()), None
            )
            if place is not None:
                columns[name] = place
        if {"when", "what"} <= set(columns):
            return at, columns
    return None, {}


def _cell(row, place):
    return row[place] if place is not None and place < len(row) else None


def _day(cells, day_first) -> list:
    """Each cell as a day, or None."""
    from hatchkit.records.sheets.when import read_dates

    plainly = [dt.datetime(cell.year, cell.month, cell.day) if isinstance(cell, dt.date) else cell for cell in cells]
    moments = read_dates(plainly, True if day_first is None else day_first, None).moments.astype("datetime64[D]")
    return [None if np.isnat(moment) else pd.Timestamp(moment) for moment in moments]
