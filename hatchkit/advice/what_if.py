"""What the season lost to what, and what it would plausibly have given without the excursions."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice.account import account, of_causes
from hatchkit.advice.causes import season_causes
from hatchkit.advice.published import STAGES
from hatchkit.problems import HatchkitError
from hatchkit.relate.verdict import CLEAR, SOME

#: A cause that accounts for less than this many eggs is not shown.
LEAST_EGGS = 0.5

#: ... and one that weighs less than this in every batch is not named as the season's largest.
PROBABLE = 0.5


@dataclass(frozen=True)
class WhatIf:
    """Eggs lost by stage and cause, and the season without its excursions.

    Attributes
    ----------
    table : DataFrame
        block (stage, cause, excursions), key, eggs, low, high, usual; low and high only where they
        are known, usual only for stages.
    facts : dict
        eggs_set, hatched, unaccounted (of the eggs set), left_out and left_out_eggs (names and eggs of batches
        that are not among these), probable (key of the cause with most eggs of those probable in some batch, or
        None), assumed (eggs of the largest stage that are there by the published course of deaths),
        chicks_back, chicks_low, chicks_high, verdict (missing where no excursion can be judged).
    """

    table: pd.DataFrame
    facts: dict


def what_if(season, *, causes=None, relation=None) -> WhatIf:
    """Eggs lost per stage and cause, and the excess deaths of the excursions turned into chicks.

    Parameters
    ----------
    season : Season
    causes : dict, optional
        From `season_causes`, if it is at hand.
    relation : Relation, optional
        From `relate_losses`, if it is at hand.

    Raises
    ------
    HatchkitError
        If no batch has its end on record.

    Notes
    -----
    The block of causes is the season's `account`: it adds up to the eggs that gave no good chick. The last block is
    the predictive draw of
    `relate.excess`: chicks lost in batches whose windows held an excursion. It is given only where the relation shows
    some sign at least: otherwise the number would suggest what the verdict denies.
    """
    causes = season_causes(season) if causes is None else causes
    if not causes:
        raise HatchkitError("no_end_on_record", {})
    table = account(causes)
    by_cause = of_causes(table[table["eggs"] >= LEAST_EGGS])
    rows = _stages(causes) + _by_cause(_closed(table))
    excess, verdict = _excess(season, relation)
    facts = dict(
        eggs_set=_eggs_set(causes),
        unaccounted=sum(c.unaccounted for c in causes.values()),
        **_left_out(season, causes),
        assumed=_assumed(causes, max(rows, key=lambda row: (row["key"] in STAGES, row["eggs"]))["key"]),
        hatched=sum(c.pattern["eggs"].iloc[0] for c in causes.values()),
        verdict=verdict,
        probable=next(iter(by_cause.loc[by_cause["firmest"] >= PROBABLE, "key"]), None),
        chicks_back=np.nan,
        chicks_low=np.nan,
        chicks_high=np.nan,
    )
    if excess is not None and verdict in (CLEAR, SOME):
        facts |= dict(
            chicks_back=excess["chicks_lost"], chicks_low=excess["chicks_low"], chicks_high=excess["chicks_high"]
        )
        rows.append(
            dict(
                block="excursions",
                key="excursions",
                eggs=excess["chicks_lost"],
                low=excess["chicks_low"],
                high=excess["chicks_high"],
                usual=np.nan,
            )
        )
    columns = ["block", "key", "eggs", "low", "high", "usual"]
    return WhatIf(table=pd.DataFrame(rows, columns=columns), facts=facts)


def _closed(table) -> pd.DataFrame:
    """The account with causes of hardly an egg put to what is not explained, so that it still adds up."""
    few = (table["kind"] == "cause") & (table["eggs"] < LEAST_EGGS)
    table = table.copy()
    table.loc[table["key"] == "not_explained", "eggs"] += table.loc[few, "eggs"].sum()
    return table[~few & (table["eggs"] > 0)]


def _eggs_set(causes) -> float:
    return sum(c.eggs_set for c in causes.values())


def _left_out(season, causes) -> dict:
    """Batches that no word is said of, because their hatch is not over or their records cannot be read."""
    names = season.batches["batch"].astype(str)
    rest = season.batches[~names.isin(list(causes))]
    return dict(
        left_out=rest["batch"].astype(str).tolist(),
        left_out_eggs=float(rest["eggs_set"].fillna(0).sum()),
    )


def _assumed(causes, stage) -> float:
    return sum(c.pattern.set_index("stage").at[stage, "assumed"] for c in causes.values())


def _stages(causes) -> list[dict]:
    patterns = pd.concat([c.pattern for c in causes.values()])
    rows = []
    for stage in STAGES[1:]:
        part = patterns[patterns["stage"] == stage]
        rows.append(
            dict(
                block="stage",
                key=stage,
                eggs=float(part["eggs"].sum()),
                low=np.nan,
                high=np.nan,
                usual=published_eggs(stage, causes),
            )
        )
    gone = float(sum(c.unaccounted for c in causes.values()))
    if gone:
        rows.append(
            dict(
                block="stage",
                key="unaccounted",
                eggs=gone,
                low=np.nan,
                high=np.nan,
                usual=np.nan,
            )
        )
    return rows


def published_eggs(stage, causes) -> float:
    """Eggs of a stage that the published ledger would give for as many eggs set."""
    ledger = reference.load("ordinary_ledger").set_index("stage")["share_of_set"]
    return float(ledger[stage] / ledger.sum() * _eggs_set(causes))


def _by_cause(table) -> list[dict]:
    return [
        dict(
            block="cause",
            key=row["key"],
            eggs=row["eggs"],
            low=np.nan,
            high=np.nan,
            usual=np.nan,
        )
        for row in table.to_dict("records")
    ]


def _excess(season, relation):
    """The "all" row of the excess deaths and the verdict; (None, "") where no excursion can be judged."""
    from hatchkit.relate.relation import relate_losses

    if relation is None:
        try:
            relation = relate_losses(season)
        except HatchkitError:
            return None, ""
    rows = relation.excess[relation.excess["batch"] == "all"] if len(relation.excess) else relation.excess
    return (rows.iloc[0].to_dict() if len(rows) else None), str(relation.verdict)
