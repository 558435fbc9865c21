"""Which incubator each batch was in: as written, as season.toml spells it, else the only one there is."""

from __future__ import annotations

import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.sheets.names import name_key
from hatchkit.reference.contract import TEXT


def machines_of(batches: pd.DataFrame, settings: dict):
    """Incubators of the batches and what is to be told of them.

    Parameters
    ----------
    batches : DataFrame
    settings : dict
        season.toml; ``default_incubator`` and ``[incubators.X]``.

    Returns
    -------
    incubators : Series of str
    problems : list of dict
    """
    if batches.empty:
        return batches["incubator"], []
    known = list((settings.get("incubators") or {}).keys())
    by_key = {name_key(name): name for name in known}
    spelt = {}
    for name in batches["incubator"].dropna().unique():
        spelt[name] = by_key.setdefault(name_key(name), name)
    names = batches["incubator"].map(spelt)
    blank = names.isna()
    default = settings.get("default_incubator") or (known[0] if len(known) == 1 else None)
    if default is None and names.nunique() == 1 and blank.mean() < 0.5:
        default = names.dropna().iloc[0]
    if not blank.any():
        return names.astype(TEXT), []
    first = batches[blank].iloc[0]
    found = [
        problem(
            "note" if default or blank.all() else "doubtful",
            code="machine_taken" if default else "machine_missing",
            facts=dict(batches=list(batches.loc[blank, "batch"]), machine=str(default or "")),
            file=first["file"],
            sheet=first["sheet"],
            row=int(first["row"]),
            column="incubator",
        )
    ]
    return (names.fillna(str(default)) if default else names).astype(TEXT), found
