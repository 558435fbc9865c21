"""Tables as CSV files that are safe to open in a spreadsheet: no cell is run as a formula."""

from __future__ import annotations

import csv
import json
from pathlib import Path

import pandas as pd

from hatchkit.problems import COLUMNS, HatchkitError
from hatchkit.records.places import given_paths, root_of
from hatchkit.records.writing import whole_file

_RUNS = tuple("=+-@")  # a spreadsheet takes text that starts with one of these for a formula
_CONTROLS = ("\t", "\r", "\n")
#: The tables that `write_tables` writes, as attributes of a season.
TABLES = ("batches", "fates", "looks", "readings", "eggs", "weights")


def safe_cell(value) -> str:
    """Text that no spreadsheet runs as a formula: one that starts with = + - @ gets an apostrophe in front."""
    text = "" if pd.isna(value) else str(value)
    return "'" + text if text[:1] in _CONTROLS or text.lstrip()[:1] in _RUNS else text


def write_problems_csv(problems: pd.DataFrame, path) -> None:
    """Write the table `problems` as CSV that is safe to open in a spreadsheet; facts as JSON.

    Parameters
    ----------
    problems : DataFrame
    path : path
    """
    with whole_file(path) as part, open(part, "w", newline="", encoding="utf-8-sig") as handle:
        writer = csv.writer(handle)
        writer.writerow(COLUMNS)
        for row in problems[COLUMNS].to_dict("records"):
            row["facts"] = json.dumps(row["facts"], ensure_ascii=False, default=str) if row["facts"] else ""
            number = "" if pd.isna(row["row"]) else int(row["row"])
            writer.writerow([number if name == "row" else safe_cell(row[name]) for name in COLUMNS])


def tables_folder(path, *, season) -> Path:
    """`path` in full, if the tables of a season may be written there; it is made if it is not there.

    Parameters
    ----------
    path : path
        A new or empty folder, or one that holds what an earlier `write_tables` wrote and nothing else.
    season : path
        Season folder (or "demo"), in which nothing is written.

    Raises
    ------
    HatchkitError
    """
    out, home = Path(path).expanduser().resolve(), root_of(given_paths(season))
    names = {f"{name}.csv" for name in TABLES}
    if out == home or home in out.parents:
        raise HatchkitError("tables_in_season", dict(path=str(out)))
    try:
        out.mkdir(parents=True, exist_ok=True)
        there = {entry.name for entry in out.iterdir()}
    except OSError as error:
        raise HatchkitError("tables_unwritable", dict(path=str(out), why=error.strerror)) from None
    if there and there != names:
        raise HatchkitError("tables_not_empty", dict(path=str(out), names=sorted(there)[:3]))
    return out


def write_tables(season, folder: Path) -> list[Path]:
    """Write what was read as tidy CSV files; times are UTC.

    Parameters
    ----------
    season : Season
    folder : Path
        From `tables_folder`.

    Returns
    -------
    list of Path
    """
    written = []
    for name in TABLES:
        table = getattr(season, name)
        safe = pd.DataFrame({safe_cell(column): _safe_column(table[column]) for column in table.columns})
        written.append(folder / f"{name}.csv")
        with whole_file(written[-1]) as part:
            safe.to_csv(part, index=False, encoding="utf-8-sig", date_format="%Y-%m-%dT%H:%M:%SZ", lineterminator="\n")
    return written


def _safe_column(column: pd.Series) -> pd.Series:
    if pd.api.types.is_numeric_dtype(column) or pd.api.types.is_datetime64_any_dtype(column):
        return column
    return column.map(safe_cell)
