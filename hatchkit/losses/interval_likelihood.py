"""Non-parametric maximum likelihood for ages known only as intervals (after_day, by_day].

Peto's innermost intervals carry all the mass; the masses come from self-consistency steps (Turnbull)
sped up by squared extrapolation, and for a single estimate from constrained Newton steps, until the gap to the
largest possible log-likelihood is proved small.
"""

from typing import NamedTuple

import numpy as np

from hatchkit.problems import HatchkitError


class AgeMass(NamedTuple):
    """Where the ages lie.

    Attributes
    ----------
    ages : ndarray, shape (m, 2)
        Innermost intervals (after, by] in days; by is inf for what outlasts every look.
    mass : ndarray, shape (m,)
        Share of the eggs whose age lies in each; sums to 1. How it is spread inside an interval is
        not identified.
    log_likelihood : float
        At the maximum, within 1e-7 of it.
    """

    ages: np.ndarray
    mass: np.ndarray
    log_likelihood: float


def age_at_death_from(after_day, by_day, eggs=None) -> AgeMass:
    """Maximum-likelihood masses of ages known as half-open intervals (after_day, by_day].

    Parameters
    ----------
    after_day, by_day : array, shape (n,)
        Days; by_day inf or missing where the age is only known to exceed after_day.
    eggs : array, shape (n,), optional
        Eggs (or animals) that share the interval; 1 each when left out.

    Returns
    -------
    AgeMass

    Source: Peto 1973 Appl. Stat. 22:86-91; Turnbull 1976 J. R. Stat. Soc. B 38:290-295; the
    extrapolation is SQUAREM of Varadhan & Roland 2008 Scand. J. Stat. 35:335-353; the Newton step is that of
    Wang 2007 J. R. Stat. Soc. B 69:185-198; the bound on the gap follows from concavity (Lindsay 1983 Ann.
    Stat. 11:86-94).
    """
    after, by, weight = _checked(after_day, by_day, eggs)
    pairs, where = np.unique(np.column_stack([after, by]), axis=0, return_inverse=True)
    weight = np.bincount(where.ravel(), weights=weight, minlength=len(pairs))
    ages, first, last = innermost(pairs[:, 0], pairs[:, 1])
    mass = masses(first, last, len(ages), weight[None, :], gap=1e-8)[0]
    reached = _reached(_holds(first, last, len(ages)), mass[None, :])[0]
    return AgeMass(ages, mass, float(np.sum(weight * np.log(reached))))


def _checked(after_day, by_day, eggs):
    after, by = np.asarray(after_day, dtype=float), np.asarray(by_day, dtype=float)
    by = np.where(np.isnan(by), np.inf, by)
    weight = np.ones(len(after)) if eggs is None else np.asarray(eggs, dtype=float)
    if not len(after) == len(by) == len(weight):
        raise HatchkitError("ages_uneven", {})
    keep = weight > 0
    if not keep.any():
        raise HatchkitError("ages_without_egg", {})
    if np.any(np.isnan(after[keep])) or np.any(by[keep] <= after[keep]):
        raise HatchkitError("ages_backward", {})
    return after[keep], by[keep], weight[keep]


def innermost(after, by):
    """Peto's innermost intervals and, for each (after, by], the first and last one it holds.

    Returns
    -------
    ages : ndarray, shape (m, 2)
    first, last : ndarray of int, shape (n,)
        The interval i holds the innermost intervals first[i] .. last[i] - 1.
    """
    points = np.concatenate([after, by])
    # (a, b] is open on the left: at the same day a right end comes before a left end.
    is_left = np.concatenate([np.ones(len(after), dtype=int), np.zeros(len(by), dtype=int)])
    order = np.lexsort((is_left, points))
    points, is_left = points[order], is_left[order]
    at = np.flatnonzero((is_left[:-1] == 1) & (is_left[1:] == 0))
    ages = np.column_stack([points[at], points[at + 1]])
    return ages, np.searchsorted(ages[:, 0], after, side="left"), np.searchsorted(ages[:, 1], by, side="right")


def _holds(first, last, size):
    """Which innermost intervals each interval holds: sparse 0/1, shape (n, m)."""
    from scipy.sparse import csr_matrix

    columns = np.concatenate([np.arange(a, b) for a, b in zip(first, last, strict=True)])
    rows = np.repeat(np.arange(len(first)), last - first)
    return csr_matrix((np.ones(len(rows)), (rows, columns)), shape=(len(first), size))


def _reached(holds, mass):
    """Mass within each interval: (draws, m) -> (draws, n)."""
    return np.maximum((holds @ mass.T).T, 1e-300)


def _slope(holds, weight, mass):
    """Derivative of the log-likelihood per egg by each mass: (draws, m) -> (draws, m)."""
    return (holds.T @ (weight / _reached(holds, mass)).T).T / weight.sum(axis=1, keepdims=True)


def _log_likelihood(holds, weight, mass):
    return np.sum(weight * np.log(_reached(holds, mass)), axis=1)


#: Self-consistency steps for all draws at once, before the Newton steps finish those still open.
TOGETHER = 20


def masses(first, last, size, weight, *, gap, start=None) -> np.ndarray:
    """Maximum-likelihood masses for many sets of weights at once.

    Parameters
    ----------
    first, last : ndarray of int, shape (n,)
        From `innermost`.
    size : int
        Number m of innermost intervals.
    weight : ndarray, shape (draws, n)
        Eggs per interval; one row a draw.
    gap : float
        Largest distance from the maximum of the log-likelihood that is left, per draw. Concavity bounds what can
        still be gained: eggs x (largest slope - 1).
    start : ndarray, shape (m,), optional
        Masses near the answer.

    Returns
    -------
    ndarray, shape (draws, m)
    """
    draws, holds = weight.shape[0], _holds(first, last, size)
    mass = np.full((draws, size), 1.0 / size) if start is None else np.tile(0.95 * start + 0.05 / size, (draws, 1))
    out, eggs = np.empty_like(mass), weight.sum(axis=1)
    still = np.arange(draws)
    for _ in range(TOGETHER):
        slope = _slope(holds, weight[still], mass)
        done = eggs[still] * (slope.max(axis=1) - 1.0) <= gap
        out[still[done]] = mass[done]
        still, mass, slope = still[~done], mass[~done], slope[~done]
        if not len(still):
            return out
        mass = _squared_step(holds, weight[still], mass, slope)
    dense = holds.toarray()
    for place, draw in enumerate(still):
        out[draw] = _newton(dense, weight[draw], mass[place], gap)
    return out


def _squared_step(holds, weight, mass, slope):
    """Two self-consistency steps and an extrapolation that is kept where it raises the likelihood."""
    one = mass * slope
    two = one * _slope(holds, weight, one)
    r, v = one - mass, two - 2 * one + mass
    length = np.sqrt(np.sum(r * r, axis=1) / np.maximum(np.sum(v * v, axis=1), 1e-300))
    length = np.clip(length, 1.0, 1e4)[:, None]
    far = mass + 2 * length * r + length**2 * v
    # The extrapolation may leave the simplex; a small floor keeps every mass alive.
    far = np.maximum(far, 0.1 * two)
    far /= far.sum(axis=1, keepdims=True)
    better = _log_likelihood(holds, weight, far) >= _log_likelihood(holds, weight, two)
    return np.where(better[:, None], far, two)


def _newton(holds, weight, mass, gap, turns=200):
    """Constrained Newton steps for one set of weights.

    Self-consistency crawls where a mass goes to nothing; these steps set it to nothing.
    """
    from scipy.optimize import nnls

    used = weight > 0
    holds, weight, eggs = holds[used], weight[used], weight.sum()
    root = np.sqrt(weight / eggs)
    for _ in range(turns):
        reached = np.maximum(holds @ mass, 1e-300)
        slope = (weight / reached) @ holds / eggs
        if eggs * (slope.max() - 1.0) <= gap:
            break
        # Masses sum to 1: a heavy extra row, and the rest of it by dividing.
        rows = np.vstack([(root / reached)[:, None] * holds, np.full(len(mass), 1e3)])
        aim = nnls(rows, np.append(2 * root, 1e3))[0]
        aim /= aim.sum()
        here, promise, part = weight @ np.log(reached) / eggs, slope @ (aim - mass), 1.0
        # The farthest point on the way that raises the likelihood by a third of what the slope promises.
        while part > 1e-12:
            there = np.maximum(holds @ (mass + part * (aim - mass)), 1e-300)
            if weight @ np.log(there) / eggs >= here + part * promise / 3:
                break
            part /= 2
        else:
            break
        mass = mass + part * (aim - mass)
    return mass
