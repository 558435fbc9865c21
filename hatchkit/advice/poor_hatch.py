"""Which batch of a season was poor, and how it stands beside the others."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.advice.evidence import usual_by_batch
from hatchkit.advice.tally import tally
from hatchkit.problems import HatchkitError

STANDING = [
    "batch",
    "species",
    "set",
    "developing",
    "clear",
    "removed",
    "unaccounted",
    "hatched",
    "share_of_set",
    "excess",
    "share_hatched",
    "share_low",
    "share_high",
    "clears_counted",
    "usual_of_set",
    "usual",
    "others",
    "away_of_set",
    "away",
    "away_low",
    "away_high",
    "poor",
]

#: A hatch is poor from so many standard deviations of a batch below the usual, far below from twice as many.
POOR = -1.0


def standing(season) -> pd.DataFrame:
    """Each finished batch's good chicks, of eggs set and of developing eggs, beside what is usual for it.

    Returns
    -------
    DataFrame
        batch, species, set, developing (eggs known to be neither clear, infertile nor removed), clear, removed,
        unaccounted (eggs without a known end), hatched, share_of_set, share_hatched (of developing; missing where eggs
        are unaccounted or none developed), excess (eggs told of beyond those set: a slip of counting), share_low and
        share_high (if all of these were embryos, or none),
        clears_counted (where not, an unopened egg among the dead may have been clear), usual_of_set and usual (share
        of this person's other batches, drawn to the published ledger), others (how many batches that is),
        away_of_set and away (standard deviations of a batch, spread between batches included; below 0 is poorer than
        usual; with half of the unaccounted eggs as embryos), away_low, away_high, and poor: by what the hatch lies
        below the usual by `POOR` or more ("embryos", else of the eggs set by its "clears" or by eggs "removed"),
        "unknown" where that hangs on eggs without a known end, else "no". Poorest first, by the worse of the two.
    """
    eggs = tally(season)
    kinds = season.batches.set_index(season.batches["batch"].astype(str))["species"]
    usual_of_batch = usual_by_batch(season)
    set_in = dict(zip(season.batches["batch"].astype(str), season.batches["eggs_set"].astype(float), strict=True))
    rows = [
        _standing(
            batch,
            kinds[batch],
            row,
            float(eggs.unaccounted[batch]),
            bool(eggs.clears_counted[batch]),
            usual_of_batch[batch],
            set_in[batch],
        )
        for batch, row in eggs.counts.iterrows()
    ]
    table = pd.DataFrame([row for row in rows if row["set"] > 0], columns=STANDING)
    worse = table[["away", "away_of_set"]].min(axis=1)
    return table.loc[worse.sort_values(kind="stable").index].reset_index(drop=True)


def _standing(batch, species, row, gone, clears_counted, usual, eggs_set) -> dict:
    """One row of `standing` from the batch's eggs by stage and those without a known end."""
    total, share_of_set = row.sum() + gone, float(usual.shares[0])
    excess = max(round(total - eggs_set), 0)  # a slip of counting; never beside eggs without a known end
    share = share_of_set / float(1 - usual.shares[1] - usual.shares[2])  # of what is neither clear nor removed
    grown, chicks = float(row.sum() - row["clear"] - row["removed"]), float(row["hatched"])
    found, away = [np.nan] * 3, [np.nan] * 3
    if grown > 0:
        found = [chicks / (grown + part * gone) for part in (1.0, 0.5, 0.0)]
        away = [
            _away(one, share, of, usual.rho)
            for one, of in zip(found, (grown + gone, grown + gone / 2, grown), strict=True)
        ]
    away_of_set = _away(chicks / total, share_of_set, total, usual.rho) if total else np.nan
    more = {name: row[name] - usual.shares[place] * total for place, name in ((1, "clear"), (2, "removed"))}
    return dict(
        batch=batch,
        species=species,
        set=total - excess,
        developing=grown - min(excess, grown),
        clear=row["clear"],
        removed=row["removed"],
        unaccounted=gone,
        hatched=chicks,
        share_of_set=min(chicks / (total - excess), 1.0) if total else np.nan,
        excess=excess,
        share_hatched=np.nan if gone else found[1],
        share_low=found[0],
        share_high=found[2],
        clears_counted=clears_counted,
        usual_of_set=share_of_set,
        usual=share,
        others=usual.batches,
        away_of_set=away_of_set,
        away=away[1],
        away_low=away[0],
        away_high=away[2],
        poor=_poor(away, away_of_set, more),
    )


def _away(share, usual, eggs, rho) -> float:
    return float((share - usual) / np.sqrt(usual * (1 - usual) / eggs * (1 + (eggs - 1) * rho)))


def _poor(away, away_of_set, more) -> str:
    """By what the hatch is poor, from `away` (low, middle, high) of developing eggs and of the eggs set."""
    if away[2] <= POOR:
        return "embryos"
    if away[0] <= POOR:
        return "unknown"
    if away_of_set <= POOR:
        return "clears" if more["clear"] >= more["removed"] else "removed"
    return "no"


def poorest_batch(season) -> str:
    """The batch whose hatch lies furthest below what is usual; HatchkitError if none ended."""
    table = standing(season)
    if season.batches.empty:
        raise HatchkitError("no_batch_yet", {})
    if table.empty:
        raise HatchkitError("no_end_to_look_at", {})
    return str(table["batch"].iloc[0])


def one_batch(season, batch):
    """The season with this batch alone, for pictures and tables of one batch."""
    row = season.batch(batch)
    batches = season.batches[season.batches["batch"] == row["batch"]].reset_index(drop=True)
    return replace(
        season,
        batches=batches,
        fates=season.fates[season.fates["batch"] == row["batch"]],
        looks=season.looks[season.looks["batch"] == row["batch"]],
    )


def kin(season, batch):
    """The season with the batches of the same species, this one among them."""
    kind = season.batch(batch)["species"]
    batches = season.batches[season.batches["species"] == kind].reset_index(drop=True)
    names = set(batches["batch"])
    return replace(
        season,
        batches=batches,
        fates=season.fates[season.fates["batch"].isin(names)],
        looks=season.looks[season.looks["batch"].isin(names)],
    )
