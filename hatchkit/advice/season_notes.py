"""The two or three things of a season that most repay attention, in order of eggs lost to them."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.advice.account import account, of_causes, told_losses
from hatchkit.advice.causes import CONFIDENT, season_causes
from hatchkit.advice.published import STAGES
from hatchkit.advice.reasons import ASSUMED
from hatchkit.advice.what_if import published_eggs
from hatchkit.losses.proportions import pooled

COLUMNS = ["rank", "kind", "key", "eggs_lost", "batches", "sure"]

#: Fewer eggs than this over a season are not worth a note.
LEAST_EGGS = 3.0


def season_notes(season, *, causes=None, most=3) -> pd.DataFrame:
    """What to look at first.

    Parameters
    ----------
    season : Season
    causes : dict, optional
        From `causes.season_causes`, if it is at hand.
    most : int
        Longest list.

    Returns
    -------
    DataFrame
        rank, kind (cause, stage or records), key, eggs_lost, batches (comma-separated; empty for a stage), sure (firm,
        probable or guess of a cause; counted of a stage or records, assumed of a stage whose eggs are partly put there
        by the usual course of deaths). Empty when nothing stands out; ``.attrs["unusual"]`` then holds the batches that
        lost more than luck often gives.

    Notes
    -----
    Causes count the eggs that the season's `account` puts down to them. A stage counts the eggs beyond the
    published ledger that no cause accounts for, so nothing is counted twice; it is told only if the share over the
    batches, with its spread between them, lies above the published one (see `_above`), and a cause only if it comes
    first in some batch: in ordinary seasons the worst of seven stages is always above something. Eggs without a
    known end count as they are: better records would give them back.
    """
    causes = season_causes(season) if causes is None else causes
    rows = _from_causes(causes) + _from_stages(causes) + _from_records(causes)
    table = pd.DataFrame(rows, columns=COLUMNS[1:])
    table = table[table["eggs_lost"] >= LEAST_EGGS].sort_values("eggs_lost", ascending=False, kind="stable").head(most)
    table.insert(0, "rank", range(1, len(table) + 1))
    table = table.reset_index(drop=True)
    if table.empty:
        table.attrs["unusual"] = _unusual(season) if causes else []
    return table


def _unusual(season) -> list[str]:
    """Batches that `losses.bad_luck` finds unusual, against the person's other batches or a published level."""
    from hatchkit.losses.bad_luck import bad_luck

    table = bad_luck(season)
    return table.loc[table["unusual"] | table["norm_unusual"], "batch"].astype(str).unique().tolist()


def _from_records(causes) -> list[dict]:
    """Eggs that nobody can account for, as something to fix in the records."""
    gone = {batch: one.unaccounted for batch, one in causes.items() if one.unaccounted}
    return [
        dict(
            kind="records",
            key="unaccounted",
            eggs_lost=float(sum(gone.values())),
            batches=", ".join(gone),
            sure="counted",
        )
    ]


def _from_causes(causes) -> list[dict]:
    return [
        dict(
            kind="cause",
            key=row["key"],
            eggs_lost=row["eggs"],
            batches=", ".join(row["batches"]),
            sure="firm" if row["firmest"] >= CONFIDENT else "probable" if row["firmest"] >= 0.5 else "guess",
        )
        for row in of_causes(account(causes)).to_dict("records")
        if row["batches"]
    ]


def _above(causes) -> list[str]:
    """Stages whose share over the season is above the published one by more than chance and spread give.

    The level leaves 1 chance in 20 for all stages together (Bonferroni). Of ordinary simulated seasons 77 to 99 %
    had such a stage before, 1 to 7 % have it now, 15 % with 20 batches that differ much.
    """
    counts = np.array([c.pattern["eggs"] for c in causes.values()], dtype=float)  # columns in the order of STAGES
    eggs = counts.sum(axis=1)
    level = 1 - 2 * 0.05 / len(STAGES[1:])
    return [
        stage
        for stage, found in zip(STAGES[1:], counts.T[1:], strict=True)
        if pooled(found, eggs, level=level).low > published_eggs(stage, causes) / eggs.sum()
    ]


def _from_stages(causes) -> list[dict]:
    if not causes:
        return []
    explained = pd.concat([told_losses(c) for c in causes.values()]).groupby("stage")["eggs"].sum()
    explained = explained.reindex(STAGES).fillna(0.0)
    found = pd.concat([c.pattern for c in causes.values()]).groupby("stage")[["eggs", "assumed"]].sum()
    seen, rough = found["eggs"], found["assumed"] > ASSUMED * found["eggs"]
    rows = []
    for stage in _above(causes):
        beyond = seen[stage] - published_eggs(stage, causes) - explained[stage]
        rows.append(
            dict(
                kind="stage",
                key=stage,
                eggs_lost=float(beyond),
                batches="",
                sure="assumed" if rough[stage] else "counted",
            )
        )
    return rows
