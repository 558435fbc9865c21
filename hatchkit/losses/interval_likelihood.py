"""Non-parametric maximum likelihood for ages known only as intervals (after_day, by_day].

Peto's innermost intervals carry all the mass; the masses come from self-consistency steps (Turnbull)
sped up by squared extrapolation, until the gap to the largest possible log-likelihood is proved small.
"""

from __future__ import annotations

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
    extrapolation is SQUAREM of Varadhan & Roland 2008 Scand. J. Stat. 35:335-353; the bound on the gap
    follows from concavity (Lindsay 1983 Ann. Stat. 11:86-94).
    """
    after, by, weight = _checked(after_day, by_day, eggs)
    pairs, where = np.unique(np.column_stack([after, by]), axis=0, return_inverse=True)
    weight = np.bincount(where.ravel(), weights=weight, minlength=len(pairs))
    ages, first, last = innermost(pairs[:, 0], pairs[:, 1])
    mass = masses(first, last, len(ages), weight[None, :], gap=1e-8)[0]
    mass = _support_only(mass, first, last, weight)
    reached = _sums(mass[None, :], first, last)[0]
    return AgeMass(ages, mass, float(np.sum(weight * np.log(reached))))


def _checked(after_day, by_day, eggs):
    after, by = np.asarray(after_day, dtype=float), np.asarray(by_day, dtype=float)
    by = np.where(np.isnan(by), np.inf, by)
    weight = np.ones(len(after)) if eggs is None else np.asarray(eggs, dtype=float)
    if not len(after) == len(by) == len(weight):
        raise HatchkitError("after_day, by_day and eggs must have the same length.")
    keep = weight > 0
    if not keep.any():
        raise HatchkitError("Ages at death need at least one egg.")
    if np.any(np.isnan(after[keep])) or np.any(by[keep] <= after[keep]):
        raise HatchkitError("Each interval must end after it begins: by_day above after_day.")
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


def _sums(mass, first, last):
    """Mass within each interval: (draws, m) -> (draws, n)."""
    running = np.zeros((mass.shape[0], mass.shape[1] + 1))
    np.cumsum(mass, axis=1, out=running[:, 1:])
    return running[:, last] - running[:, first]


class _Step:
    """One self-consistency step for many sets of weights at once."""

    def __init__(self, first, last, size, weight):
        from scipy.sparse import csr_matrix

        width = last - first
        columns = np.concatenate([np.arange(a, b) for a, b in zip(first, last, strict=True)])
        rows = np.repeat(np.arange(len(first)), width)
        self.holds = csr_matrix((np.ones(len(rows)), (rows, columns)), shape=(len(first), size))
        self.weight = weight
        self.total = weight.sum(axis=1, keepdims=True)

    def slope(self, mass):
        """Derivative of the mean log-likelihood by each mass, shape (draws, m)."""
        reached = np.maximum((self.holds @ mass.T).T, 1e-300)
        return (self.holds.T @ (self.weight / reached).T).T / self.total

    def log_likelihood(self, mass):
        reached = np.maximum((self.holds @ mass.T).T, 1e-300)
        return np.sum(self.weight * np.log(reached), axis=1)


def masses(first, last, size, weight, *, gap, start=None, max_steps=20_000) -> np.ndarray:
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
        Largest distance from the maximum of the log-likelihood that is left, per draw.
    start : ndarray, shape (m,), optional

    Returns
    -------
    ndarray, shape (draws, m)
    """
    draws = weight.shape[0]
    mass = np.full((draws, size), 1.0 / size) if start is None else np.tile(0.95 * start + 0.05 / size, (draws, 1))
    out = np.empty_like(mass)
    open_ = np.arange(draws)
    step = _Step(first, last, size, weight)
    for turn in range(max_steps):
        slope = step.slope(mass)
        # Concavity bounds the gain that is still possible: n * (largest slope - 1).
        left = step.total[:, 0] * (slope.max(axis=1) - 1.0)
        done = left <= gap
        if done.any() or turn == max_steps - 1:
            out[open_[done]] = mass[done]
            if turn == max_steps - 1:
                out[open_[~done]] = mass[~done]
            keep = ~done
            if not keep.any() or turn == max_steps - 1:
                break
            open_, mass, slope = open_[keep], mass[keep], slope[keep]
            step = _Step(first, last, size, weight[open_])
        mass = _squared_step(step, mass, slope)
    return out


def _squared_step(step, mass, slope):
    """Two self-consistency steps and an extrapolation that is kept where it raises the likelihood."""
    one = mass * slope
    two = one * step.slope(one)
    r, v = one - mass, two - 2 * one + mass
    length = np.sqrt(np.sum(r * r, axis=1) / np.maximum(np.sum(v * v, axis=1), 1e-300))
    length = np.clip(length, 1.0, 1e4)[:, None]
    far = mass + 2 * length * r + length**2 * v
    # The extrapolation may leave the simplex; a small floor keeps every mass alive.
    far = np.maximum(far, 0.1 * two * (two > 0))
    far /= far.sum(axis=1, keepdims=True)
    better = step.log_likelihood(far) >= step.log_likelihood(two)
    return np.where(better[:, None], far, two)


def _support_only(mass, first, last, weight):
    """Masses with the negligible ones set to nothing, where that does not cost likelihood."""
    trimmed = np.where(mass < 1e-9, 0.0, mass)
    trimmed = trimmed / trimmed.sum()
    return trimmed if np.all(_sums(trimmed[None, :], first, last) > 0) else mass
