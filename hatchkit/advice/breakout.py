"""What to look for in unhatched eggs: the breakout guide for one species."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference


def breakout_guide(species=None, *, part=None) -> pd.DataFrame:
    """The guide with days scaled to a species.

    Parameters
    ----------
    species : Series, optional
        Row of the species table; hen's days if left out. Other birds' days are hen's days times their
        length / 21, which no source endorses: +/- three days.
    part : {"age", "position", "sign"} or list of them, optional

    Returns
    -------
    DataFrame
        part, look (key of its words and its drawing), day_low, day_high, write_down, care, source, sure. `care` is
        True from the day on which an embryo is treated as one that may feel.
    """
    guide = reference.load("breakout_guide")
    hen = reference.species("chicken")
    figures = hen if species is None else species
    scale = figures["incubation_days"] / hen["incubation_days"]
    # A look of hen's day d stands for d - 0.5 to d + 0.5, so that rows that follow each other leave no day out.
    last = np.floor(figures["incubation_days"])
    guide["day_low"] = np.clip(np.floor((guide["chicken_day_low"] - 0.5) * scale) + 1, 0, last)
    guide["day_high"] = np.minimum(np.floor((guide["chicken_day_high"] + 0.5) * scale), last)
    guide["day_high"] = guide[["day_low", "day_high"]].max(axis=1)
    guide["care"] = guide["day_high"] >= figures["embryo_care_day"]
    guide = guide if part is None else guide[guide["part"].isin([part] if isinstance(part, str) else part)]
    guide["write_down"] = guide["write_down"].fillna("")
    columns = ["part", "look", "day_low", "day_high", "write_down", "care", "source", "sure"]
    return guide[columns].reset_index(drop=True)
