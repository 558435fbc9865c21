"""Rates with honest intervals: one batch, many batches, and the spread between batches."""

import math
from typing import NamedTuple

import numpy as np
from scipy.special import betaincinv, stdtrit

from hatchkit.problems import HatchkitError

METHODS = ("wilson", "clopper_pearson", "jeffreys")


class Pooled(NamedTuple):
    """Share over many batches with an interval that carries the spread between them."""

    share: float
    low: float
    high: float


def interval(count, total, method: str = "wilson", *, level: float = 0.95):
    """Two-sided interval for a share, `count` out of `total` eggs.

    Parameters
    ----------
    count, total : number or array
        Eggs. Parts of an egg are allowed, since deaths may be shared out between stages.
    method : {"wilson", "clopper_pearson", "jeffreys"}
        Wilson is the kit's own; Clopper-Pearson (exact) where a published table was made with it.
    level : float
        Confidence, 0-1.

    Returns
    -------
    low, high : float or ndarray
        Shares 0-1; missing where total is 0 or missing.

    Source: Wilson 1927 J. Am. Stat. Assoc. 22:209-212; Clopper & Pearson 1934 Biometrika 26:404-413;
    Newcombe 1998 Stat. Med. 17:857-872 for the comparison.
    """
    if method not in METHODS:
        raise HatchkitError("no_interval_method", dict(method=str(method), known=list(METHODS)))
    k, n = np.broadcast_arrays(np.asarray(count, dtype=float), np.asarray(total, dtype=float))
    if np.any((k < 0) | (k > n + 1e-9)):
        raise HatchkitError("count_beyond_total", {})
    n = np.where(n > 0, n, np.nan)
    low, high = _wilson(k, n, normal_quantile(level)) if method == "wilson" else _beta(k, n, method, level)
    return (float(low), float(high)) if low.ndim == 0 else (low, high)


def told_share(eggs: float, out_of: float, excess: float = 0.0):
    """A share as it is to be told: a number, or (least, most) where `excess` eggs more than were set are on record.

    Nobody knows whether one of the counts or the number of eggs set is wrong.
    """
    if not excess > 0 or not out_of > 0:
        return eggs / out_of if out_of > 0 else math.nan
    return eggs / (out_of + excess), min(eggs / out_of, 1.0)


def normal_quantile(level: float) -> float:
    """Two-sided quantile of the normal distribution: 1.96 for 0.95."""
    from statistics import NormalDist

    return NormalDist().inv_cdf(0.5 + level / 2)


def _wilson(k, n, z):
    share = k / n
    middle = (share + z * z / (2 * n)) / (1 + z * z / n)
    half = z / (1 + z * z / n) * np.sqrt(np.maximum(share * (1 - share), 0.0) / n + z * z / (4 * n * n))
    # At 0 and at all, the limit is exact; rounding must not push it past.
    low = np.where(k <= 0, np.where(np.isnan(n), np.nan, 0.0), np.maximum(middle - half, 0.0))
    return low, np.where(k >= n, np.where(np.isnan(n), np.nan, 1.0), np.minimum(middle + half, 1.0))


def _beta(k, n, method, level):

    tail, half = (1 - level) / 2, 0.5 * (method == "jeffreys")
    with np.errstate(invalid="ignore"):
        low = betaincinv(np.maximum(k + half, 1e-300), n - k + 1 - half, tail)
        high = betaincinv(k + 1 - half, np.maximum(n - k + half, 1e-300), 1 - tail)
    low, high = np.where(k <= 0, 0.0, low), np.where(k >= n, 1.0, high)
    return np.where(np.isnan(n), np.nan, low), np.where(np.isnan(n), np.nan, high)


def dispersion(counts, totals):
    """Pearson dispersion: how much more the shares of batches differ than chance alone makes them.

    1 is chance alone. Missing with fewer than two batches or when no egg or every egg is counted.

    Parameters
    ----------
    counts, totals : array, batches along the last axis
        Eggs; batches of no eggs must be left out before.
    """
    k, n = np.asarray(counts, dtype=float), np.asarray(totals, dtype=float)
    share = k.sum(axis=-1, keepdims=True) / n.sum(axis=-1, keepdims=True)
    with np.errstate(divide="ignore", invalid="ignore"):
        chance = np.where((share > 0) & (share < 1), n * share * (1 - share), np.nan)
        phi = np.sum((k - n * share) ** 2 / chance, axis=-1) / (k.shape[-1] - 1 if k.shape[-1] > 1 else np.nan)
    return float(phi) if phi.ndim == 0 else phi


def pooled(counts, totals, *, level: float = 0.95) -> Pooled:
    """Share over all batches with an interval widened for the spread between batches.

    Parameters
    ----------
    counts, totals : array, one entry a batch
        Eggs lost (or hatched) and eggs that they are taken from.
    level : float
        Of the interval, 0-1.

    Returns
    -------
    Pooled
        share is eggs over eggs. The interval is Wilson's with the eggs divided by the dispersion (never less
        than 1) and Student's t with batches - 1 degrees of freedom for the normal quantile. With 2 to 4
        batches 4 degrees are lent to it, since a t with one or two says nothing at all. One batch: Wilson's
        plain interval, since its spread cannot be seen.

    Source: quasi-binomial variance (McCullagh & Nelder 1989, section 4.5); the t, the floor at 1 and the loan
    are the kit's own choice, and the coverage is measured in ``tests/benchmarks/losses_coverage.py``.
    """
    k, n = np.asarray(counts, dtype=float), np.asarray(totals, dtype=float)
    keep = (n > 0) & ~np.isnan(k)
    k, n = k[keep], n[keep]
    if len(n) == 0:
        return Pooled(math.nan, math.nan, math.nan)
    eggs, found = n.sum(), k.sum()
    if len(n) == 1:
        return Pooled(found / eggs, *interval(found, eggs, level=level))
    return Pooled(found / eggs, *widened(found, eggs, dispersion(k, n), len(n), level=level))


def t_quantile(batches: int, level: float = 0.95) -> float:
    """Two-sided quantile of t with batches - 1 degrees of freedom, 4 lent to few batches (see `pooled`)."""
    return float(stdtrit(max(batches - 1, 4), 0.5 + level / 2))


def widened(found, eggs, phi, batches: int, *, level: float = 0.95):
    """Wilson's interval with eggs / max(1, phi) eggs and a t quantile; numbers or arrays alike."""
    phi = np.fmax(1.0, np.asarray(phi, dtype=float))
    low, high = _wilson(np.asarray(found / phi), np.asarray(eggs / phi), t_quantile(batches, level))
    return (float(low), float(high)) if low.ndim == 0 else (low, high)
