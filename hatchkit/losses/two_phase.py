"""The usual two-phase shape of deaths over incubation: many early, few in the middle, some at the end."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from hatchkit.losses.interval_likelihood import age_at_death_from
from hatchkit.losses.stages import CHICKEN_DAYS
from hatchkit.problems import HatchkitError

#: Published shape of hen embryo deaths: share of phase 1, then Weibull shape and scale (days) of each phase.
#: Source: Kuurman et al. 2001 Poult. Sci. 80:710-717 give phase 1 as 77 % of deaths with mean 2.6 d, SD 3.3 d
#: and phase 2 as 23 % with mean 17.4 d, SD 2.0 d; the Weibull figures are derived from these means and SDs.
PUBLISHED = (0.77, 0.795, 2.284, 10.49, 18.25)


def cumulative(age_days, incubation_days: float = CHICKEN_DAYS, shape=PUBLISHED):
    """Share of all deaths that have happened by `age_days`.

    Parameters
    ----------
    age_days : number or array
        Days since setting.
    incubation_days : float
        Other species: ages scaled to the hen's 21 days, which no source endorses; approximate.
    shape : tuple of 5 floats
        Share of phase 1; Weibull shape and scale in days of phase 1 and of phase 2.
    """
    first, k1, s1, k2, s2 = shape
    age = np.maximum(np.asarray(age_days, dtype=float), 0.0) * (CHICKEN_DAYS / incubation_days)
    with np.errstate(over="ignore"):
        early, late = 1 - np.exp(-((age / s1) ** k1)), 1 - np.exp(-((age / s2) ** k2))
    return first * early + (1 - first) * late


class TwoPhaseFit(NamedTuple):
    """A fitted two-phase shape and how well it agrees with the counts.

    Attributes
    ----------
    shape : tuple
        Share of phase 1; Weibull shape and scale (days) of phase 1 and of phase 2.
    log_likelihood : float
        Of the intervals, given that each death fell within them.
    expected : ndarray
        Deaths expected in each interval that was put in.
    deviance : float
        Twice the log-likelihood lost against the best shares of any shape; large: the shape does not fit.
    """

    shape: tuple
    log_likelihood: float
    expected: np.ndarray
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
        raise HatchkitError(
            "A two-phase shape needs deaths in at least 5 different stretches of days; "
            "with fewer looks the plain estimate is all that the records can give."
        )
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
    free = age_at_death_from(after, by, weight).log_likelihood
    return TwoPhaseFit(_shape(best.x), reached, found * weight.sum(), 2 * (free - reached))


def _shape(free):
    """Free figures (any real) to a shape; phase 2 lies later than phase 1."""
    first = 1 / (1 + np.exp(-free[0]))
    k1, s1, k2 = np.exp(np.clip(free[1:4], -4, 4))
    return float(first), float(k1), float(s1), float(k2), float(s1 + np.exp(np.clip(free[4], -4, 4)))


def _starts():
    """From the published shape, and from one with a fuller second phase."""
    published = np.array([np.log(0.77 / 0.23), np.log(0.795), np.log(2.284), np.log(10.49), np.log(18.25 - 2.284)])
    return [published, published + [-1.0, 0.5, 0.2, -1.0, 0.0]]
