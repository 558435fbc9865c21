"""Share of deaths by age, season by season and species by species, to share out what crosses a limit."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.losses.interval_likelihood import AgeMass, age_at_death_from
from hatchkit.losses.two_phase import cumulative


def shape_of(fit: AgeMass | None, incubation_days: float):
    """Cumulative share of deaths by age as a function, from an estimate of the ages at death.

    Inside an innermost interval the data do not say how the deaths lie; there the published two-phase
    shape (Kuurman et al. 2001) places them. With no estimate that shape is used throughout.
    """
    if fit is None:
        return lambda age: float(cumulative(age, incubation_days))
    closed = np.isfinite(fit.ages[:, 1]) & (fit.mass > 0)
    low, high, mass = fit.ages[closed, 0], fit.ages[closed, 1], fit.mass[closed]
    base = cumulative(low, incubation_days)
    width = cumulative(high, incubation_days) - base

    def share(age):
        inside = np.clip(age, low, high)
        flat = (inside - low) / (high - low)
        part = np.where(width > 1e-9, (cumulative(inside, incubation_days) - base) / np.maximum(width, 1e-9), flat)
        return float(np.sum(mass * part))

    return share


def season_shapes(fates: pd.DataFrame, species: dict, lengths: dict) -> dict:
    """One shape a species from all its deaths in the season: species -> function of age.

    Parameters
    ----------
    fates : DataFrame
    species : dict
        batch -> species.
    lengths : dict
        species -> incubation days.
    """
    dead = fates[fates["fate"] == "dead"]
    kind = dead["batch"].map(species)
    shapes = {}
    for name, length in lengths.items():
        part = dead[kind == name]
        fit = age_at_death_from(part["after_day"], part["by_day"], part["eggs"]) if len(part) else None
        shapes[name] = shape_of(fit, length)
    return shapes
