"""Batches whose eggs can't have hatched yet: a 0 that stands there means "not yet", not that all was lost."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.sheets.years import today

#: Chicks come no more than this many days before the species' usual day (common practice, no source).
EARLY_DAYS = 2
#: What the end of a batch says, which is not known before it.
_END = ("hatched", "dead_in_shell", "pipped_dead", "culled", "broken_infertile")


def without_ends_ahead(batches: pd.DataFrame, species_table: pd.DataFrame, found: list) -> pd.DataFrame:
    """The batches, the zeros at the end of those whose day lies ahead taken for "not kept"; they stay out of shares.

    Parameters
    ----------
    batches : DataFrame
        batch, species, set_at (wall clock), counts; with file, sheet and row.
    species_table : DataFrame
    found : list of dict
        A note on each such batch is added.
    """
    length = species_table.loc[batches["species"], "incubation_days"].to_numpy(float)
    due = pd.to_datetime(batches["set_at"]) + pd.to_timedelta(length, unit="D")
    ahead = due - pd.Timedelta(days=EARLY_DAYS) > pd.Timestamp(today()) + pd.Timedelta(days=1)
    hatched = (
        pd.to_numeric(batches["hatched"], errors="coerce") if "hatched" in batches else pd.Series(np.nan, due.index)
    )
    for index in batches.index[ahead & hatched.eq(0)]:
        row = batches.loc[index]
        facts = dict(batch=row["batch"], day=f"{due[index]:%Y-%m-%d}")
        place = dict(file=row["file"], sheet=row["sheet"], row=int(row["row"]), column="hatched")
        found.append(problem("note", code="not_due_yet", facts=facts, **place))
        batches.loc[index, [name for name in _END if name in batches]] = np.nan
    return batches
