"""Which part of incubation is early, mid and late, and how old an embryo of a given look was.

Day 0 is the hour of setting: "days 1-7" is the stretch (0, 7] in days since setting.
"""

import math
from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.problems import HatchkitError

#: Incubation length that the look of a chicken embryo is told in (days).
CHICKEN_DAYS = 21.0


@cache
def _limit_rows() -> dict:
    rows = reference.load("stage_limits")
    return {key: part.to_dict("records") for key, part in rows.groupby("limits", sort=False)}


def limits_for(species: str, incubation_days: float, limits=None) -> list[tuple[str, float, float]]:
    """Stages of one species as (stage, after_day, to_day), the last one open at the end (inf).

    Parameters
    ----------
    species : str
        Species key.
    incubation_days : float
        Days from setting to hatch; scales limits that are shares of incubation.
    limits : None, str or dict
        None: weeks for the hen (1-7, 8-14, 15 and over), thirds of incubation for all others.
        str: a set named in ``reference/stage_limits.csv``. dict: your own, stage -> (after, to) in
        days since setting, in order and without holes.

    Source: Barnett et al. 2004 for the hen; thirds are common practice.
    """
    if isinstance(limits, dict):
        return _own_limits(limits)
    name = limits or ("weeks" if species == "chicken" else "thirds")
    if name not in _limit_rows():
        raise HatchkitError("no_limits", dict(name=str(name), known=list(_limit_rows())))
    stages = []
    for row in _limit_rows()[name]:
        scale = incubation_days if row["unit"] == "share of incubation" else 1.0
        to = math.inf if pd.isna(row["to"]) else row["to"] * scale
        stages.append((row["stage"], row["after"] * scale, to))
    return stages


def _own_limits(limits: dict) -> list[tuple[str, float, float]]:
    stages = [(str(stage), float(after), float(to)) for stage, (after, to) in limits.items()]
    joins = all(a[2] == b[1] for a, b in zip(stages, stages[1:], strict=False))
    if not stages or stages[0][1] != 0 or not joins or any(to <= after for _, after, to in stages):
        raise HatchkitError("limits_with_holes", {})
    last = stages[-1]
    return [*stages[:-1], (last[0], last[1], math.inf)]


def stage_of(after_day: float, by_day: float, stages) -> str | None:
    """The stage that holds the whole interval (after_day, by_day], or None when it crosses a limit."""
    for stage, after, to in stages:
        if after_day >= after and by_day <= to:
            return stage
    return None


@cache
def _looks() -> dict:
    rows = reference.load("embryo_stages")
    return {
        float(row["day"]): (row["after_day"], row["by_day"], row["other_allowance_days"])
        for row in rows.to_dict("records")
    }


def age_from_look(stage_day: float, species: str, incubation_days: float) -> tuple[float, float]:
    """When an embryo died that looks as it does on `stage_day`: (after_day, by_day) in days.

    For the hen the day table of ``reference/embryo_stages.csv`` (a day between two rows: half a day
    either way). No source endorses plain scaling from the hen to other birds: for these `stage_day`
    is the person's own reckoning in that bird's days, and the table's allowance of 3 days either
    way is applied.
    """
    table = _looks()
    if species == "chicken":
        after, by, _ = table.get(float(stage_day), (stage_day - 0.5, stage_day + 0.5, 0.0))
        return max(0.0, after), math.inf if pd.isna(by) else by
    allowance = next(iter(table.values()))[2]
    by = stage_day + allowance
    return max(0.0, stage_day - allowance), math.inf if by >= incubation_days else by


def pip_day(incubation_days: float) -> float:
    """Earliest day on which a shell is broken by the chick: internal pip, scaled from the hen's 19.5."""
    return incubation_days * 19.5 / CHICKEN_DAYS


def share_between(after_day, by_day, stages, shape) -> np.ndarray:
    """How a death in (after_day, by_day] is shared between stages by the age-at-death `shape`.

    Parameters
    ----------
    stages : list of (stage, after, to)
    shape : callable
        Cumulative share of deaths by a given age in days, increasing.

    Returns
    -------
    ndarray, one share a stage, sum 1. Where the shape puts nothing into the interval, it is shared
    by length.
    """
    edges = [(max(after, after_day), min(to, by_day)) for _, after, to in stages]
    weight = np.array([max(0.0, shape(high) - shape(low)) if high > low else 0.0 for low, high in edges])
    if weight.sum() <= 1e-12:
        weight = np.array([max(0.0, high - low) for low, high in edges])
    return weight / weight.sum()
