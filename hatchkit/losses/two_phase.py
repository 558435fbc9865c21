"""A two-phase shape of deaths fitted to a season: many early, few in the middle, some at the end."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import pandas as pd

from hatchkit.losses.interval_likelihood import age_at_death_from
from hatchkit.losses.stages import CHICKEN_DAYS
from hatchkit.losses.two_phase_shape import cumulative
from hatchkit.problems import HatchkitError


class TwoPhaseFit(NamedTuple):
    """A fitted two-phase shape and how well it agrees with the counts.

    Attributes
    ----------
    shape : tuple
        Share of phase 1; Weibull shape and scale (days) of phase 1 and of phase 2.
    log_likelihood : float
        Of the intervals, given that each death fell within them.
    largest_miss : float
        Largest distance, in deaths up to an age, from the estimate that assumes no shape.
    deviance : float
        Twice the log-likelihood lost against the best shares of any shape; large: the shape does not fit.
    """

    shape: tuple
    log_likelihood: float
    largest_miss: float
    deviance: float


def fit_two_phase(after_day, by_day, eggs, *, incubation_days: float = CHICKEN_DAYS) -> TwoPhaseFit:
    """Two-phase Weibull shape by maximum likelihood for deaths known as intervals (after_day, by_day].

    Parameters
    ----------
    after_day, by_day, eggs : array
        Deaths only; by_day finite.
    incubation_days : float
        Ages are fitted on the hen's scale of 21 days.

    Raises
    ------
    HatchkitError
        With fewer than 5 different intervals that hold deaths, since the shape has 5 figures.

    Source: Kuurman et al. 2001 Poult. Sci. 80:710-717 (model) and 2003 Poult. Sci. 82:214-222 (maximum likelihood
    on daily, not cumulative, counts).
    """
    from scipy.optimize import minimize

    after, by, weight = (np.asarray(part, dtype=float) for part in (after_day, by_day, eggs))
    if len({*zip(after[weight > 0], by[weight > 0], strict=True)}) < 5:
        raise HatchkitError("too_few_stretches", {})
    end = by.max()

    def shares(free):
        shape = _shape(free)
        inside = cumulative(by, incubation_days, shape) - cumulative(after, incubation_days, shape)
        return np.maximum(inside, 1e-12) / max(float(cumulative(end, incubation_days, shape)), 1e-12)

    def loss(free):
        return -float(np.sum(weight * np.log(shares(free)))) + 1e-6 * float(np.sum(np.square(free)))

    best = min(
        (
            minimize(loss, start, method="Nelder-Mead", options={"maxiter": 4000, "xatol": 1e-7, "fatol": 1e-10})
            for start in _starts()
        ),
        key=lambda fit: fit.fun,
    )
    found = shares(best.x)
    reached = float(np.sum(weight * np.log(found)))
    free = age_at_death_from(after, by, weight)
    off = _distance(free, end, lambda age: cumulative(age, incubation_days, _shape(best.x)))
    return TwoPhaseFit(_shape(best.x), reached, off * weight.sum(), 2 * (free.log_likelihood - reached))


def _distance(free, end, shape) -> float:
    """Largest distance of a shape from the estimate without a shape, at the ages where that is fixed (share)."""
    edges = free.ages[:, 1]
    return float(np.max(np.abs(shape(edges) / shape(end) - np.cumsum(free.mass))))


def _shape(free):
    """Free figures (any real) to a shape; phase 2 lies later than phase 1."""
    first = 1 / (1 + np.exp(-free[0]))
    k1, s1, k2 = np.exp(np.clip(free[1:4], -4, 4))
    return float(first), float(k1), float(s1), float(k2), float(s1 + np.exp(np.clip(free[4], -4, 4)))


def _starts():
    """From the published shape, and from one with a fuller second phase."""
    published = np.array([np.log(0.77 / 0.23), np.log(0.795), np.log(2.284), np.log(10.49), np.log(18.25 - 2.284)])
    return [published, published + [-1.0, 0.5, 0.2, -1.0, 0.0]]


def season_two_phase(season, species: str) -> tuple[pd.DataFrame, TwoPhaseFit]:
    """The two-phase shape of one species in a season, as a smooth alternative to `age_at_death`.

    Parameters
    ----------
    species : str
        Species key.

    Returns
    -------
    curve : DataFrame
        day, lost (share of the eggs that held a living embryo).
    fit : TwoPhaseFit

    Raises
    ------
    HatchkitError
        With deaths in fewer than 5 different stretches.
    """
    from hatchkit.losses.death_age import age_at_death
    from hatchkit.losses.schedule import species_by_batch, species_figures

    kind = species_by_batch(season.batches)
    dead = season.fates[season.fates["fate"].isin(("dead", "pipped_dead"))]
    dead = dead[dead["batch"].map(kind) == species]
    dead = dead.groupby(["after_day", "by_day"], as_index=False)["eggs"].sum()
    length = species_figures({"species": species}, season.species_table)["incubation_days"]
    fit = fit_two_phase(dead["after_day"], dead["by_day"], dead["eggs"], incubation_days=length)
    estimate = age_at_death(season, draws=0)
    curve = estimate.curve[estimate.curve["species"] == species]
    day = np.linspace(0, dead["by_day"].max(), 200)
    shape = cumulative(day, length, fit.shape)
    return pd.DataFrame({"day": day, "lost": curve["at_most"].max() * shape / shape[-1]}), fit
