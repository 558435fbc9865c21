"""Which batch of a season was poor, and how it stands beside the others."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.advice.evidence import usual_by_batch
from hatchkit.advice.tally import tally
from hatchkit.problems import HatchkitError

STANDING = ["batch", "species", "developing", "unaccounted", "hatched", "share_hatched", "share_low", "share_high",
            "clears_counted", "usual", "others", "away", "away_low", "away_high"]


def standing(season) -> pd.DataFrame:
    """Each finished batch's good chicks of developing eggs beside what is usual for it.

    Returns
    -------
    DataFrame
        batch, species, developing (eggs known to be neither clear, infertile nor removed), unaccounted (eggs without
        a known end), hatched, share_hatched (of developing; missing where eggs are unaccounted), share_low and
        share_high (if all of these were embryos, or none), clears_counted (where not, an unopened egg among the dead
        may have been clear), usual (share of this person's other batches, drawn to the published ledger), others
        (how many batches that is), away (standard deviations of a batch, spread between batches included; below 0 is
        poorer than usual; with half of the unaccounted eggs as embryos), away_low, away_high. Poorest first.
    """
    eggs = tally(season)
    kinds = season.batches.set_index(season.batches["batch"].astype(str))["species"]
    usual_of_batch = usual_by_batch(season)
    rows = []
    for batch, row in eggs.counts.iterrows():
        usual = usual_of_batch[batch]
        share = float(usual.shares[0] / (1 - usual.shares[1] - usual.shares[2]))  # of what is neither clear nor removed
        grown, gone = row.sum() - row["clear"] - row["removed"], float(eggs.unaccounted[batch])
        if grown <= 0:
            continue
        found = [row["hatched"] / (grown + part * gone) for part in (1.0, 0.5, 0.0)]
        away = [(one - share) / np.sqrt(share * (1 - share) / of * (1 + (of - 1) * usual.rho))
                for one, of in zip(found, (grown + gone, grown + gone / 2, grown), strict=True)]
        rows.append([batch, kinds[batch], grown, gone, row["hatched"], np.nan if gone else found[1], found[0],
                     found[2], bool(eggs.clears_counted[batch]), share, usual.batches, away[1], away[0], away[2]])
    table = pd.DataFrame(rows, columns=STANDING)
    return table.sort_values("away", kind="stable").reset_index(drop=True)


def poorest_batch(season) -> str:
    """The batch whose hatch of developing eggs lies furthest below what is usual; HatchkitError if none ended."""
    table = standing(season)
    if season.batches.empty:
        raise HatchkitError("There is no batch in this season yet, so there is no hatch to look into.")
    if table.empty:
        raise HatchkitError("No batch of this season has embryos whose end is on record (all eggs clear, or the "
                            "hatch not over): name the batch to look at.")
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
