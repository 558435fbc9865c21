"""One account of the season: every egg that gave no good chick, put down to one thing and counted once.

The list at the top of a review, the verdicts' eggs, what-if and the plan are all read from this table.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice.causes import CONFIDENT, UNNAMED
from hatchkit.advice.published import STAGES

COLUMNS = ["key", "kind", "eggs", "firmest", "batches"]

#: A cause's eggs count only in batches in which it has at least this weight; small doubts add up to nothing.
LEAST_SHARE = 0.1

#: The rows that are no causes: what batches usually lose, what is not explained, eggs without a known end.
REST = ("usual", "not_explained", "unaccounted")


def account(causes: dict) -> pd.DataFrame:
    """Eggs lost by cause over a season.

    Parameters
    ----------
    causes : dict
        From `causes.season_causes`.

    Returns
    -------
    DataFrame
        key, kind (cause, usual, not_explained, unaccounted), eggs, firmest (highest share in any batch, kept
        below `CONFIDENT` where the records allow no firm verdict), batches (in which it comes first, as a list).
        Causes with most eggs first, then the rows that are none. The eggs add up to those set less the good chicks.

    Notes
    -----
    Stage by stage of each batch, the eggs put down to causes (times their weight, together never more than were lost
    there) come first; of the rest up to the usual number is what batches usually lose, and what then is left is not
    explained.
    """
    names = [cause for cause in reference.load("causes")["cause"] if cause not in UNNAMED]
    eggs, firmest = dict.fromkeys(names, 0.0), dict.fromkeys(names, 0.0)
    first, rest = {name: [] for name in names}, dict.fromkeys(REST, 0.0)
    for batch, one in causes.items():
        lost = one.pattern.set_index("stage").loc[list(STAGES[1:]), ["eggs", "usual"]]
        put_down = told_losses(one)
        for cause, number in put_down.groupby("cause")["eggs"].sum().items():
            eggs[cause] += float(number)
        left = (lost["eggs"] - put_down.groupby("stage")["eggs"].sum().reindex(lost.index).fillna(0.0)).clip(lower=0)
        rest["usual"] += float(np.minimum(left, lost["usual"]).sum())
        rest["not_explained"] += float((left - lost["usual"]).clip(lower=0).sum())
        rest["unaccounted"] += one.unaccounted
        for row in one.table[["cause", "share", "firm"]].to_dict("records"):
            if row["cause"] in firmest:
                share = row["share"] if row["firm"] else min(row["share"], CONFIDENT - 0.01)
                firmest[row["cause"]] = max(firmest[row["cause"]], share)
        if one.table["cause"].iloc[0] in first:
            first[one.table["cause"].iloc[0]].append(batch)
    rows = [[key, "cause", eggs[key], firmest[key], first[key]] for key in names]
    rows.sort(key=lambda row: -row[2])
    rows += [[key, key, rest[key], np.nan, []] for key in REST]
    return pd.DataFrame(rows, columns=COLUMNS)


def told_losses(one) -> pd.DataFrame:
    """`Causes.losses` of the causes with at least `LEAST_SHARE` of the weight of a batch."""
    told = one.table.loc[one.table["share"] >= LEAST_SHARE, "cause"]
    return one.losses[one.losses["cause"].isin(told)]


def of_causes(table) -> pd.DataFrame:
    """The rows of causes of an `account`."""
    return table[table["kind"] == "cause"].reset_index(drop=True)
