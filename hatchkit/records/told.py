"""How problem rows are put: times as on the wall clock, headings as the person wrote them."""

from __future__ import annotations

import re
from functools import cache

import pandas as pd

from hatchkit import say
from hatchkit.problems import problem


def of_row(severity: str, row, code: str, *, column: str = "", **facts) -> dict:
    """A problem row with the place that `row` came from.

    Parameters
    ----------
    severity, code, column : str
        As in `hatchkit.problems.problem`.
    row : Series
        A row of batches, eggs, weights or candlings: file, sheet, and sheet_row or row.
    **facts
        Of the message.
    """
    number = row["sheet_row"] if "sheet_row" in row.index else row["row"]
    return problem(severity, file=row["file"], sheet=row["sheet"], row=number, column=column, code=code, facts=facts)


def local_minute(time, zone: str | None, *, day_only: bool = False) -> str:
    """A UTC time as the person's wall clock shows it: "2026-05-20 03:10"; with "UTC" where no zone is known.

    Parameters
    ----------
    time : datetime64 or Timestamp
    zone : str or None
        Name from the time zone database.
    day_only : bool
        Leave out the hour.
    """
    when = pd.Timestamp(time)
    when = when.tz_localize("UTC") if when.tzinfo is None else when
    when = when.tz_convert(zone) if zone else when
    return f"{when:%Y-%m-%d}" if day_only else f"{when:%Y-%m-%d %H:%M}{'' if zone else ' UTC'}"


def with_headings(problems: pd.DataFrame, headings: dict) -> pd.DataFrame:
    """Problems in which a column of the kit stands beside the heading that the person gave it.

    Parameters
    ----------
    problems : DataFrame
    headings : dict
        (file, sheet) -> {column of the kit: the person's heading}.

    Returns
    -------
    DataFrame
        "taken_off_at" of a sheet that calls it "Out" is "Out (taken_off_at)" as column and where it is to be
        fixed, and "Out" in what was found.
    """
    rows = problems.to_dict("records")
    writers = {place: _writer(names) for place, names in headings.items() if names}
    for row in rows:
        put = writers.get((row["file"], row["sheet"]))
        if put is None:
            continue
        names = headings[row["file"], row["sheet"]]
        if row["code"]:
            row["facts"] = {name: _called(name, fact, names) for name, fact in row["facts"].items()}
            row |= say.problem(row["code"], row["facts"])
        if row["column"] in names:
            row["column"] = f"{names[row['column']]} ({row['column']})"
        row["found"] = put(row["found"], "{0}")
        row["fix"] = put(row["fix"], "{0} ({1})")
    told = pd.DataFrame(rows, columns=problems.columns, index=problems.index)
    return told.astype(problems.dtypes.to_dict())


def _called(name: str, fact, names: dict):
    """A fact whose name begins with "column" holds columns of the kit; each gets the person's heading beside it."""
    if not name.startswith("column"):
        return fact
    if isinstance(fact, list):
        return [_called(name, one, names) for one in fact]
    return f"{names[fact]} ({fact})" if fact in names else fact


def _writer(names: dict):
    """A function that puts the person's headings beside the kit's names in a text."""
    # Names such as "hatched" are plain words too; only those with a bar or a number are column names for sure.
    sure = [re.escape(name) for name in names if re.search(r"[_\d]", name)]
    if not sure:
        return lambda text, form: text
    pattern = re.compile(rf"(?<![\w.\"(])(?:{'|'.join(sure)})(?!\w|\.\w|[\")])")
    return cache(lambda text, form: pattern.sub(lambda name: form.format(names[name[0]], name[0]), text))
