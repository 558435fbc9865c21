"""A table of raw cells -> a DataFrame with the documented columns, each cell read for what its column holds."""

from __future__ import annotations

from functools import cache
from itertools import islice

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.problems import problem
from hatchkit.records import dates, values
from hatchkit.records.headers import known_columns, recognise
from hatchkit.records.likely import tell_unknown
from hatchkit.records.sheets import Table
from hatchkit.records.values import TEXT, Column
from hatchkit.records.words import split_words

#: Counts and dates that one word can mean; the cells decide ("Set" over dates is set_at).
_UNITS = {"g": "grams", "days": "days", "weeks": "weeks"}
#: A log of candlings is turned into looks, so its columns are in no table of their own.
_CANDLINGS = {"batch": ("", "text"), "name": ("", "text"), "looked_at": ("UTC", "time"), "day": ("days", "number"),
              "clear": ("eggs", "count"), "dead": ("eggs", "count"), "removed": ("eggs", "count"),
              "left": ("eggs", "count"), "notes": ("", "text")}
_OTHER_MEANING = {"eggs_set": "set_at", "hatched": "taken_off_at", "day": "looked_at"}


@cache
def facts_of(kind: str) -> tuple[tuple[str, str, str], ...]:
    """(column, unit, kind of value) of a table in the order of ``columns_records.csv``."""
    facts = reference.load("columns_records")
    facts = facts[facts["table"] == kind].fillna("")
    return tuple(facts[["column", "unit", "kind"]].itertuples(index=False, name=None))


def empty_frame(kind: str) -> pd.DataFrame:
    """The documented table with no rows."""
    return _joined({name: _blank(form, 0) for name, _, form in facts_of(kind)})


def _joined(columns: dict) -> pd.DataFrame:
    # Arrays instead of Series: nothing to align, so it takes a third of the time.
    return pd.DataFrame({name: column.array for name, column in columns.items()})


def _blank(form: str, n: int) -> pd.Series:
    if form == "time":
        return pd.Series(pd.NaT, index=range(n), dtype=dates.TIME)
    if form == "count":
        return pd.Series(pd.NA, index=range(n), dtype="Int64")
    if form == "number":
        return pd.Series(np.nan, index=range(n), dtype=float)
    return pd.Series([None] * n, dtype=TEXT)


def heal_meanings(table: Table) -> None:
    """Where a heading fits two columns, let the cells decide: dates under "Set" are dates of setting."""
    for name, other in _OTHER_MEANING.items():
        cells = table.column(name)
        if not cells or other in table.names or other not in known_columns(table.kind):
            continue
        seen = _first_filled(cells)
        are_dates = sum(dates.date_of(cell, True)[0] is not None and not _small(cell) for cell in seen)
        if seen and are_dates > len(seen) / 2:
            table.names[table.names.index(name)] = other
            _give_freed(table, name)
    for place, name in enumerate(table.names):
        if name and name.endswith("_at"):
            seen = _first_filled(table.columns[place])
            if seen and sum(map(_small, seen)) > len(seen) / 2:
                # Small numbers are days of incubation only where the heading says so.
                by_day = "day" in split_words(table.headings[place]) and table.column("set_at") is not None
                table.names[place] = name + ".day" if by_day and name != "set_at" else None
    _heal_infertile(table)


def _give_freed(table: Table, name: str) -> None:
    """A heading that had to stand back ("Eggs" beside "Set") takes the column that has become free."""
    for place, heading in enumerate(table.headings):
        if table.names[place] is None and recognise(heading, table.kind)[0] == name:
            table.names[place] = name
            table.problems[:] = [row for row in table.problems
                                 if row["column"] != heading or "means the same" not in row["found"]]
            return


def _heal_infertile(table: Table) -> None:
    """"Infertile" beside a candling, with no egg opened and no clears, is what candling shows: clears."""
    opened = [name for name in table.names if name and name.startswith("broken_")]
    if opened == ["broken_infertile"] and "candle1_at" in table.names and "clear1" not in table.names:
        place = table.names.index("broken_infertile")
        table.names[place] = "clear1"
        table.problems.append(problem(
            "note", file=table.file, sheet=table.sheet, column=table.headings[place],
            found=f"heading '{table.headings[place]}' beside a candling, and no column of opened eggs",
            done="Read as the clears of the first candling: an early dead embryo looks clear too.",
            mend='If these eggs were opened, name the column broken_infertile.'))


def _first_filled(cells, most: int = 50) -> list:
    return list(islice((cell for cell in cells if not values.is_empty(cell)), most))


def _small(cell) -> bool:
    if isinstance(cell, str):
        cell = cell.strip()
        return cell.isdigit() and len(cell) < 5
    return isinstance(cell, (int, float)) and not isinstance(cell, bool) and cell < 10_000


def column_of(table: Table, name: str) -> Column | None:
    """One column of a table, with what a message needs to name it."""
    cells = table.column(name)
    if cells is None:
        return None
    heading = table.headings[table.names.index(name)]
    return Column(name, heading, cells, table.rows, table.file, table.sheet, table.problems)


def frame_of(table: Table, *, day_first: bool, zone: str, hours: list) -> pd.DataFrame:
    """The typed table.

    Parameters
    ----------
    table : Table
    day_first : bool
        How 04/05/2026 is meant in this table.
    zone : str
        Zone of the person's wall clock.
    hours : list
        Filled with (file, sheet, heading, number of dates without an hour), for one note about them all.

    Returns
    -------
    DataFrame
        Every documented column (all missing where not kept), then the person's own further columns.
    """
    n, made = len(table.rows), {}
    known = {name: (unit, form) for name, unit, form in facts_of(table.kind)}
    if table.kind == "candlings":
        known = _CANDLINGS
    for name, (unit, form) in known.items():
        column = column_of(table, name) if name not in ("file", "sheet", "sheet_row") else None
        if form == "time" and column is None and name + ".day" in table.names:
            made[name] = _days_after_setting(table, name, made["set_at"])
        elif column is None or (table.kind == "batches" and name == "row"):
            made[name] = _blank(form, n)
        elif table.kind == "eggs" and name in ("candle1", "candle2", "transfer", "outcome"):
            made[name] = values.meanings(column, "outcome" if name == "outcome" else "look")
        elif form == "time":
            made[name] = _times(table, column, day_first, zone, hours)
        elif form == "count":
            made[name] = values.counts(column)
        elif form == "number":
            made[name] = values.measures(column, _UNITS.get(unit, "number"))
        else:
            made[name] = values.texts(column)
    made["file"] = pd.Series([table.file] * n, dtype=TEXT)
    made["sheet"] = pd.Series([table.sheet] * n, dtype=TEXT)
    made["sheet_row" if table.kind == "eggs" else "row"] = pd.Series(pd.array(table.rows, dtype="Int64"))
    _carry_unknown(table, made)
    return _joined(made)


def _times(table: Table, column: Column, day_first: bool, zone: str, hours: list) -> pd.Series:
    clocks = column_of(table, column.name + ".time")
    times, kept = dates.wall_times(column, clocks, day_first=day_first)
    without = int((~kept & ~np.isnat(times)).sum())
    if without:
        hours.append((table.file, table.sheet, column.heading, without))
    return dates.to_utc(times, zone, column)


def _days_after_setting(table: Table, name: str, set_at: pd.Series) -> pd.Series:
    column = column_of(table, name + ".day")
    days = values.measures(column, "days")
    column.tell("note", found="days of incubation in place of dates", done="Counted from the hour of setting.")
    return (set_at + pd.to_timedelta(days, unit="D")).astype(dates.TIME)


def _carry_unknown(table: Table, made: dict) -> None:
    """Columns that hatchkit does not know stay, under their own heading, and are told."""
    carried = []
    for place, heading in enumerate(table.headings):
        cells = table.columns[place] if table.columns else []
        if table.names[place] or (not heading and all(map(values.is_empty, cells))):
            continue
        heading = heading or f"column {place + 1}"
        name, again = heading, 2
        while name in made:
            name, again = f"{heading} ({again})", again + 1
        made[name] = pd.Series([None if values.is_empty(cell) else cell for cell in cells], dtype=object)
        carried.append((place, name))
    table.problems += tell_unknown(table, carried)


def choose_order(tables: list[Table], told: bool | None):
    """Whether text dates are day first, for all tables of a season, and how sure that is.

    Parameters
    ----------
    tables : list of Table
    told : bool or None
        What season.toml says.

    Returns
    -------
    day_first : bool
    problems : list of dict
    """
    by_column = [(table, table.columns[place]) for table in tables for place, name in enumerate(table.names)
                 if name and name.endswith("_at")]
    texts = [(table, cells) for table, cells in by_column if str in set(map(type, cells))]
    if not texts:
        return True if told is None else told, []
    proofs = {}
    for table, cells in texts:
        for mark in dates.order_marks(cells):
            proofs.setdefault(mark, table)
    open_in = [table for table, cells in texts if dates.has_open_order(cells)]
    if told is not None or not open_in:
        return next(iter(proofs), True) if told is None else told, []
    where = dict(file=open_in[0].file, sheet=open_in[0].sheet)
    mend = "Say it in season.toml: [sheets] day_first = true (or false)."
    if len(proofs) == 1:
        return next(iter(proofs)), []
    fits = {order: sum(_fit(table, order) for table in open_in) for order in (True, False)}
    if not proofs and fits[True] != fits[False]:
        order = fits[True] > fits[False]
        done = (f"Read with the {'day' if order else 'month'} first: so the candlings and the hatch fall at the "
                "right ages.")
        return order, [problem("note", found="dates that can be read with day or month first", done=done, mend=mend,
                               **where)]
    text = ("dates with the day first and dates with the month first side by side" if proofs
            else "dates that can be read with day or month first, and nothing shows which")
    return True, [problem("doubtful", found=text, done="What can be read two ways is read with the day first.",
                          mend=mend, **where)]


def _fit(table: Table, day_first: bool) -> int:
    """How many later dates lie 0 to 60 days after the date of setting in the same row, read in this order."""
    start = table.column("set_at")
    if start is None:
        return 0
    start = [dates.date_of(cell, day_first)[0] for cell in start]
    fits = 0
    for place, name in enumerate(table.names):
        if name and name.endswith("_at") and name != "set_at":
            for begun, cell in zip(start, table.columns[place], strict=True):
                when = dates.date_of(cell, day_first)[0]
                fits += begun is not None and when is not None and 0 <= (when - begun).days <= 60
    return fits
