"""Rows of eggs, weights and candlings -> the batch that they belong to."""

from __future__ import annotations

import re

import pandas as pd

from hatchkit.records.told import of_row
from hatchkit.records.values import TEXT
from hatchkit.records.words import plain
from hatchkit.spelling import many


def name_key(name) -> str:
    """Batch names that a person takes for the same: case, spaces, points and leading zeros aside."""
    bare = re.sub(r"[^a-z0-9]+", "", plain(name)) or plain(name)
    bare = re.sub(r"^(batch|lot|hatch|brut)(?=\d)", "", bare)
    return re.sub(r"(?<!\d)0+(?=\d)", "", bare)


def link_to_batches(frame: pd.DataFrame, batches: pd.DataFrame):
    """The rows whose batch is known, with the batch named as in `batches`.

    A blank batch takes the one above (a name written once for a block of rows); a row whose batch is not
    known, and a row with no batch at all, is lost and told.

    Parameters
    ----------
    frame : DataFrame
    batches : DataFrame

    Returns
    -------
    frame : DataFrame
    problems : list of dict
    """
    if frame.empty:
        return frame, []
    found = []
    names = frame["batch"]
    blank = names.isna()
    if blank.any():
        filled = names.groupby([frame["file"], frame["sheet"]], dropna=False).ffill()
        if filled.isna().any() and len(batches) == 1:
            filled = filled.fillna(batches["batch"].iloc[0])
        took = blank & filled.notna()
        if took.any():
            found.append(of_row("note", frame[took].iloc[0], column="batch", mend="Write the batch in each row.",
                                found=f"{many(int(took.sum()), 'row')} without a batch",
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
            found.append(of_row("note", frame[names == name].iloc[0], column="batch",
                                found=f"batch '{name}'", done=f"Taken as batch '{other}'."))
    for index in frame.index[linked.isna()]:
        name = names[index]
        text = f"there is no batch '{name}' among the batches" if pd.notna(name) else "the row names no batch"
        found.append(of_row("lost", frame.loc[index], column="batch", found=text, done="The row is not used.",
                            mend="Correct the name, or add the batch to the table of batches."))
    frame = frame.assign(batch=linked.astype(TEXT))[linked.notna()].reset_index(drop=True)
    return frame, found
