"""Looks that found nothing in a whole season are nobody's looks: a keeper who takes no egg out writes noughts.

Where the published ledger would have had several clears and early dead found before the hatch and a keeper's noughts
hold for every batch of a species, an egg found dead at the end may have died on any day.
"""

from __future__ import annotations

import pandas as pd

from hatchkit.advice.published import STAGES, published_shares

#: So many clears and early dead must have been due before noughts are no longer believed (none of 5 is 1 in 150).
DUE = 5.0

#: Columns of a batch that tell an opened egg's age; with one of them the end of the egg is known from the egg itself.
OPENED = ("broken_early", "broken_mid", "broken_late")


def believed_fates(season) -> pd.DataFrame:
    """`season.fates`, in which unopened eggs of keepers who never find anything may have died on any day."""
    return season.once(("advice", "believed"), lambda: _believed(season))


def _believed(season) -> pd.DataFrame:
    fates, idle = season.fates, idle_batches(season)
    widen = (
        fates["batch"].astype(str).isin(idle) & fates["found_at"].eq("hatch") & fates["fate"].eq("dead")
        if idle
        else None
    )
    return fates.assign(after_day=fates["after_day"].mask(widen, 0.0)) if idle and widen.any() else fates


def idle_batches(season) -> frozenset:
    """Batches whose looks are nobody's looks and whose eggs nobody opened: any of their lost eggs may be anything."""
    return season.once(("advice", "idle"), lambda: _idle(season))


def _idle(season) -> frozenset:
    fates = season.fates
    if fates.empty:
        return frozenset()
    rows = season.batches.assign(name=season.batches["batch"].astype(str)).drop_duplicates("name").set_index("name")
    batch = fates["batch"].astype(str)
    keeper = batch.map(rows["species"].astype(str))
    # A rotten egg taken out on some day is no look: only what was found at one is.
    at_look = ~fates["found_at"].isin(["hatch", ""]) & fates["fate"].isin(["clear", "infertile", "dead", "removed"])
    ledger = dict(zip(STAGES, published_shares(), strict=True))
    due = fates.groupby(keeper)["eggs"].sum() * (ledger["clear"] + ledger["early"])
    found = fates["eggs"].where(at_look, 0.0).groupby(keeper).sum()
    idle = keeper.isin(due.index[(found == 0) & (due >= DUE)])
    opened = batch.isin(rows.index[rows.reindex(columns=list(OPENED)).notna().any(axis=1)])
    return frozenset(batch[idle & ~opened])
