"""Published levels of loss to hold a batch against, and rows of the user's own."""

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.problems import HatchkitError

DENOMINATORS = ("set", "fertile", "transferred")


def norms(species: str | None = None, own=None) -> pd.DataFrame:
    """Published levels of loss, and a keeper's own.

    Columns: norm, name (as it reads in a sentence), species, flock_kind, stage, limits, denominator, share, source,
    sure.

    Parameters
    ----------
    species : str, optional
        Only this species.
    own : list of dict, optional
        Own levels, which come first: each with species, stage, share (0-1) and denominator; a short key in
        `norm`, name, flock_kind, limits and source if there are any. In season.toml they stand under ``[[norms]]``.
    """
    published = reference.load("norms")
    table = pd.concat([_own(own), published], ignore_index=True) if own else published
    table["limits"] = table["limits"].fillna("")
    return table if species is None else table[table["species"] == species].reset_index(drop=True)


def _own(rows) -> pd.DataFrame:
    checked = []
    for row in rows:
        share = row.get("share")
        if not {"species", "stage", "share"} <= set(row) or not isinstance(share, int | float) or not 0 <= share <= 1:
            raise HatchkitError("own_level_lacks", dict(given=str(row)))
        if row.get("denominator", "set") not in DENOMINATORS:
            raise HatchkitError("own_level_of", dict(given=str(row["denominator"])))
        checked.append(
            {
                "norm": "own",
                "name": "your own level",
                "flock_kind": "own",
                "limits": "",
                "denominator": "set",
                "source": "own level",
                "sure": "own",
                **row,
            }
        )
    return pd.DataFrame(checked)


def level_for(table: pd.DataFrame, species: str, stage: str, limits: str) -> dict | None:
    """The first level that fits a species, a stage and the stage limits in use, or None."""
    limits_fit = np.isin(table["limits"].to_numpy(dtype=str), ("", limits))
    fits = limits_fit & (table["species"].to_numpy() == species) & (table["stage"].to_numpy() == stage)
    return table.iloc[int(np.argmax(fits))].to_dict() if fits.any() else None
