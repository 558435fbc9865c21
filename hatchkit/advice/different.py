"""What was different this time? The items in which a batch differs from the keeper's good ones, most first."""

from __future__ import annotations

import numpy as np
import pandas as pd

COLUMNS = ["item", "unit", "digits", "value", "usual", "good_batches", "away"]

#: A difference is told from this many spreads of ordinary batches on.
TOLD = 1.5

#: Things told by name: the batch's own beside those of the good batches.
BY_NAME = ("flock", "pen", "incubator", "shelf", "hatcher", "posted", "broody")

#: Another flock or machine than the good batches had is sorted as if it lay so many spreads away.
OTHER = 2.0

#: So many good batches must share a thing before another one is worth a word.
LEAST_GOOD = 3

#: Items that are no circumstances but other batches' or the tray's losses told in another way.
NOT_TOLD = ("flock_clears", "flock_deaths", "flock_own", "clock_machine", "tray", "clears_opened")


def different(gathered, batch, items) -> pd.DataFrame:
    """Differences of one batch from the keeper's good batches of its species.

    Parameters
    ----------
    gathered : evidence.Gathered
    batch : str
    items : DataFrame
        `evidence.evidence`.

    Returns
    -------
    DataFrame
        item, unit, digits, value, usual (with this keeper; published where no good batch knows it),
        good_batches (how many stand behind `usual`), away (in spreads of ordinary batches). For a thing told by name
        value and usual are words.
    """
    known = items[items["away"].notna() & (items["away"].abs() >= TOLD) & ~items["item"].isin(NOT_TOLD)]
    rows = known[COLUMNS].astype(object).to_dict("records") + _by_name(gathered, batch)
    table = pd.DataFrame(rows, columns=COLUMNS)
    order = table["away"].astype(float).abs().sort_values(ascending=False, kind="stable").index
    return table.loc[order].reset_index(drop=True)


def _by_name(gathered, batch) -> list[dict]:
    own, rows = gathered.rows[batch], []
    good = [
        gathered.rows[name]
        for name, worth in gathered.good.items()
        if name != batch and worth > 0.5 and gathered.rows[name]["species"] == own["species"]
    ]
    for column in BY_NAME:
        mine, theirs = _text(own.get(column)), [_text(row.get(column)) for row in good]
        theirs = [name for name in theirs if name]
        if mine and len(theirs) >= LEAST_GOOD and mine not in theirs:
            most = max(dict.fromkeys(theirs), key=theirs.count)
            rows.append(
                dict(
                    item=column,
                    unit="",
                    digits=0,
                    value=mine,
                    usual=most,
                    good_batches=len(theirs),
                    away=OTHER,
                )
            )
    return rows


def _text(value) -> str:
    return "" if value is None or (isinstance(value, float) and np.isnan(value)) or value is pd.NA else str(value)
