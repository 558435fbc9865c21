"""Rows of eggs, weights and candlings -> the batch that they belong to."""

from __future__ import annotations

import re

import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.values import TEXT
from hatchkit.records.words import plain


def name_key(name) -> str:
    """Batch names that a person takes for the same: case, spaces, points and leading zeros aside."""
    bare = re.sub(r"[^a-z0-9]+", "", plain(name)) or plain(name)
    bare = re.sub(r"^(batch|lot|hatch|brut)(?=\d)", "", bare)
    return re.sub(r"(?<!\d)0+(?=\d)", "", bare)


def link_to_batches(frame: pd.DataFrame, batches: pd.DataFrame, kind: str):
    """The rows whose batch is known, with the batch named as in `batches`.

    A blank batch takes the one above (a name written once for a block of rows); a row whose batch is not
    known, and a row with no batch at all, is lost and told.

    Parameters
    ----------
    frame : DataFrame
    batches : DataFrame
    kind : str

    Returns
    -------
    frame : DataFrame
    problems : list of dict
    """
    if frame.empty:
        return frame, []
    found, row_name = [], "sheet_row" if kind == "eggs" else "row"
    names = frame["batch"]
    blank = names.isna()
    if blank.any():
        filled = names.groupby([frame["file"], frame["sheet"]], dropna=False).ffill()
        if filled.isna().any() and len(batches) == 1:
            filled = filled.fillna(batches["batch"].iloc[0])
        took = blank & filled.notna()
        if took.any():
            first = frame[took].iloc[0]
            found.append(problem("note", file=first["file"], sheet=first["sheet"], row=first[row_name], column="batch",
                                 found=f"{int(took.sum())} row(s) without a batch", mend="Write the batch in each row.",
                                 done="The batch of the row above is taken."))
        names = filled
    known = set(batches["batch"])
    keys = {}
    for name in batches["batch"]:
        keys.setdefault(name_key(name), set()).add(name)
    meant = {}
    for name in names.dropna().unique():
        fits = keys.get(name_key(name), set())
        meant[name] = name if name in known else next(iter(fits)) if len(fits) == 1 else None
    linked = names.map(meant)
    for name, other in meant.items():
        if other is not None and other != name:
            first = frame[names == name].iloc[0]
            found.append(problem("note", file=first["file"], sheet=first["sheet"], row=first[row_name], column="batch",
                                 found=f"batch '{name}'", done=f"Taken as batch '{other}'.", mend=""))
    for index in frame.index[linked.isna()]:
        row, name = frame.loc[index], names[index]
        found.append(problem(
            "lost", file=row["file"], sheet=row["sheet"], row=row[row_name], column="batch",
            found=f"there is no batch '{name}' in the table of batches" if pd.notna(name) else "the row names no batch",
            done="The row is not used.", mend="Correct the name, or add the batch to the table of batches."))
    frame = frame.assign(batch=linked.astype(TEXT))[linked.notna()].reset_index(drop=True)
    return frame, found
