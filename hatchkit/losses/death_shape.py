"""Share of deaths by age, season by season and species by species, to share out what crosses a limit.

The best estimate without a shape (`interval_likelihood`) puts all its mass into the narrowest stretches that the
looks of different batches leave in common, however narrow they are: with candlings on day 6.9 in one batch and
on day 7.1 in another, into those few hours. That is no place to share deaths out by. So here the season's deaths
are told as the published shape times a factor that changes smoothly with age.
"""

import numpy as np
import pandas as pd

from hatchkit.losses.stages import CHICKEN_DAYS
from hatchkit.losses.two_phase_shape import cumulative

#: How fast the factor may change: sd of the smoothing kernel (days on the hen's scale of 21). Looks
#: less than about this far apart cannot draw deaths into the stretch between them.
SMOOTH_DAYS = 1.0

#: Widest cell of the grid of ages (days on the hen's scale), and most steps.
CELL_DAYS = 0.25
STEPS = 200


def smooth_shape(after_day, by_day, eggs, incubation_days: float = CHICKEN_DAYS, *, smooth_days=SMOOTH_DAYS):
    """Cumulative share of deaths by age as a function, from deaths known as intervals (after_day, by_day].

    Parameters
    ----------
    after_day, by_day, eggs : array, shape (n,)
        Deaths; those without an end (by_day inf) are left out. None at all: the published shape itself.
    incubation_days : float
        Scales the published shape and the smoothing from the hen's 21 days.
    smooth_days : float
        See `SMOOTH_DAYS`.

    Notes
    -----
    Each step shares every death over its interval by the shape so far, and then smooths the ratio of these
    deaths to the published shape. After the last step the shares are taken as they fell, unsmoothed, so that
    what is known to lie in a stretch stays there: deaths known narrowly, from a breakout, outweigh the
    published shape.

    Source: smoothed self-consistency (EMS) of Silverman et al. 1990 J. R. Stat. Soc. B 52:271-324; two-phase shape
    of Kuurman et al. 2001 Poult. Sci. 80:710-717; the width of the kernel is the kit's own choice.
    """
    after, by, weight = (np.asarray(part, dtype=float) for part in (after_day, by_day, eggs))
    known = np.isfinite(by) & (weight > 0)
    after, by, weight = after[known], by[known], weight[known]
    if not len(weight):
        return lambda age: float(cumulative(age, incubation_days))
    scale = incubation_days / CHICKEN_DAYS
    edges = np.unique(np.concatenate([[0.0], after, by, np.arange(0.0, by.max(), CELL_DAYS * scale)]))
    width = np.diff(edges)
    # A trace of an even share, so that deaths beyond the published shape have somewhere to lie.
    base = np.diff(cumulative(edges, incubation_days)) + 1e-6 * width
    middle = edges[:-1] + width / 2
    kernel = np.exp(-0.5 * ((middle[:, None] - middle[None, :]) / (smooth_days * scale)) ** 2)
    usual = kernel @ base
    first, last = np.searchsorted(edges, after), np.searchsorted(edges, by)
    shape, shared = base / base.sum(), None
    for _ in range(STEPS):
        before, shared = shared, _shared(shape, first, last, weight)
        if before is not None and np.abs(shared - before).sum() < 1e-4 * weight.sum():
            break
        shape = base * (kernel @ shared) / usual
        shape /= shape.sum()
    total = np.concatenate([[0.0], np.cumsum(shared)]) / weight.sum()
    return lambda age: float(np.interp(age, edges, total))


def _shared(shape, first, last, weight):
    """Deaths in each cell when every interval shares its own by `shape`: (cells,)."""
    reached = np.concatenate([[0.0], np.cumsum(shape)])
    rate = weight / np.maximum(reached[last] - reached[first], 1e-300)
    steps = np.bincount(first, rate, len(shape) + 1) - np.bincount(last, rate, len(shape) + 1)
    return shape * np.cumsum(steps)[:-1]


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
        shapes[name] = smooth_shape(part["after_day"], part["by_day"], part["eggs"], length)
    return shapes
