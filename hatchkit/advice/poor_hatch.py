"""Which batch of a season was poor, and how it stands beside the others."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.advice.ordinary import ordinary, stage_counts
from hatchkit.problems import HatchkitError


def standing(season) -> pd.DataFrame:
    """Each finished batch's good chicks of developing eggs beside what is usual for it.

    Returns
    -------
    DataFrame
        batch, species, developing (eggs set less clears, infertiles and removed), hatched, share_hatched,
        usual (share of this person's other batches, drawn to the published ledger), away (standard deviations of
        a batch, spread between batches included; below 0 is poorer than usual). Poorest first.
    """
    counts = stage_counts(season)
    kinds = season.batches.set_index(season.batches["batch"].astype(str))["species"]
    rows = []
    for batch, row in counts.iterrows():
        usual = ordinary(counts.loc[[name for name in counts.index if kinds[name] == kinds[batch]]], batch)
        names = list(counts.columns)
        grown = row.sum() - row["clear"] - row["removed"]
        outside = usual.shares[names.index("clear")] + usual.shares[names.index("removed")]
        share = float(usual.shares[0] / (1 - outside))
        if grown <= 0:
            continue
        spread = np.sqrt(share * (1 - share) / grown * (1 + (grown - 1) * usual.rho))
        rows.append(
            dict(
                batch=batch,
                species=kinds[batch],
                developing=float(grown),
                hatched=float(row["hatched"]),
                share_hatched=float(row["hatched"] / grown),
                usual=share,
                away=float((row["hatched"] / grown - share) / spread),
            )
        )
    columns = ["batch", "species", "developing", "hatched", "share_hatched", "usual", "away"]
    return pd.DataFrame(rows, columns=columns).sort_values("away", kind="stable").reset_index(drop=True)


def poorest_batch(season) -> str:
    """The batch whose hatch of developing eggs lies furthest below what is usual; HatchkitError if none ended."""
    table = standing(season)
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
