"""Sheets as read -> the tables of the contract: documented columns and types, times in UTC."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records import times
from hatchkit.reference import contract


def tidy(table: pd.DataFrame, kind: str, zone: str, found: list, *, extra: bool = False) -> pd.DataFrame:
    """A table with the documented columns and types; times on the wall clock become UTC.

    Parameters
    ----------
    table : DataFrame
    kind : str
        Name of the table in ``columns_records.csv``.
    zone : str
        Zone of the person's wall clock.
    found : list of dict
        Problem rows are added to it.
    extra : bool
        Keep further columns of text (the person's own) behind the documented ones.
    """
    n = len(table)
    if kind == "batches" and "flock" not in table and "pen" in table:
        table = table.assign(flock=table["pen"])
    columns = {}
    for name, _, form in contract.described(kind):
        columns[name] = _typed(table[name], form, zone, found, table) if name in table else contract.blank(form, n)
    if extra:
        for name in table:
            if name not in columns and isinstance(name, str) and name not in _INNER and not name.endswith("_hour"):
                values = table[name]
                if values.map(lambda cell: cell is None or isinstance(cell, str) or cell != cell).all():
                    columns[name] = values.astype(object).where(values.notna(), None).astype(contract.TEXT)
    return pd.DataFrame({name: series.array for name, series in columns.items()})


#: Columns of the assembly that are no business of the person's.
_INNER = frozenset(
    {
        "titles",
        "table",
        "kind",
        "section",
        "rest",
        "broken",
        "dis_derived",
        "all_hatched",
        "yearless",
        "set_at_blank",
        "part",
        "hatch_name",
        "species_how",
        "due_at",
        "place",
        "derived",
        "species_text",
    }
)


def _typed(values: pd.Series, form: str, zone: str, found: list, table: pd.DataFrame) -> pd.Series:
    values = values.reset_index(drop=True)
    if form == "time":
        return to_utc(pd.to_datetime(values), zone, found, table, values.name)
    if form == "count":
        numbers = pd.to_numeric(values, errors="coerce").astype(float)
        return numbers.where(numbers.eq(numbers.round())).astype("Int64")
    if form == "number":
        return pd.to_numeric(values, errors="coerce").astype(float)
    return values.astype(object).where(values.notna(), None).astype(contract.TEXT)


def to_utc(wall: pd.Series, zone: str, found: list, table: pd.DataFrame, column: str) -> pd.Series:
    """Wall-clock times as UTC; the hour that came twice in autumn is taken as the first, and told.

    Parameters
    ----------
    wall : Series of datetime64
    zone : str
        Name from the time zone database; "UTC" leaves the wall clock as it stands.
    found : list of dict
    table : DataFrame
        Where the rows of problems are looked up (file, sheet, row).
    column : str
    """
    utc, twice, missing = times.cells_to_utc(wall.to_numpy("datetime64[us]"), zone)
    for code, mask in (("clock_twice", twice), ("clock_never", missing)):
        for place in np.flatnonzero(mask)[:12]:
            row = table.iloc[place]
            line = row.get("sheet_row", row.get("row"))
            found.append(
                problem(
                    "doubtful",
                    code=code,
                    facts=dict(time=str(wall.iloc[place])),
                    file=row.get("file", ""),
                    sheet=row.get("sheet", ""),
                    row=None if line is None else int(line),
                    column=column,
                )
            )
    return pd.Series(utc).dt.tz_localize("UTC").astype(contract.TIME)
