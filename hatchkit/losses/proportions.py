"""Rates with honest intervals: one batch, many batches, and the spread between batches."""

import math
from typing import NamedTuple

import numpy as np

from hatchkit.problems import HatchkitError

METHODS = ("wilson", "clopper_pearson", "jeffreys")


class Pooled(NamedTuple):
    """Share over many batches with an interval that carries the spread between them."""

    share: float
    low: float
    high: float
    dispersion: float
    batches: int
    eggs: float


class BetaBinomial(NamedTuple):
    """Maximum-likelihood fit of a beta-binomial: mean share and spread between batches."""

    share: float
    low: float
    high: float
    rho: float
    log_likelihood: float


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
    from scipy.special import betaincinv

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
        return Pooled(math.nan, math.nan, math.nan, math.nan, 0, 0.0)
    eggs, found = n.sum(), k.sum()
    phi = dispersion(k, n)
    if len(n) == 1:
        low, high = interval(found, eggs, level=level)
        return Pooled(found / eggs, low, high, phi, 1, float(eggs))
    low, high = widened(found, eggs, phi, len(n), level=level)
    return Pooled(found / eggs, low, high, phi, len(n), float(eggs))


def t_quantile(batches: int, level: float = 0.95) -> float:
    """Two-sided quantile of t with batches - 1 degrees of freedom, 4 lent to few batches (see `pooled`)."""
    from scipy.special import stdtrit

    return float(stdtrit(max(batches - 1, 4), 0.5 + level / 2))


def widened(found, eggs, phi, batches: int, *, level: float = 0.95):
    """Wilson's interval with eggs / max(1, phi) eggs and a t quantile; numbers or arrays alike."""
    phi = np.fmax(1.0, np.asarray(phi, dtype=float))
    low, high = _wilson(np.asarray(found / phi), np.asarray(eggs / phi), t_quantile(batches, level))
    return (float(low), float(high)) if low.ndim == 0 else (low, high)


def beta_binomial(counts, totals, *, level: float = 0.95) -> BetaBinomial:
    """Mean share and spread between batches by maximum likelihood of the beta-binomial.

    Parameters
    ----------
    counts, totals : array, one entry a batch
        Whole eggs.

    Returns
    -------
    BetaBinomial
        share and its profile-likelihood interval; rho, the correlation of two eggs of a batch
        (0: no spread beyond chance); the log-likelihood with its binomial coefficients.

    Source: Williams 1975 Biometrics 31:949-952 (model); the profile interval cuts at chi-square with
    1 degree of freedom.
    """
    from scipy.optimize import brentq, minimize_scalar

    k, n = np.asarray(counts, dtype=float), np.asarray(totals, dtype=float)
    keep = n > 0
    k, n = k[keep], n[keep]
    if not len(n):
        raise HatchkitError("share_without_eggs", {})
    constant = float(np.sum(_log_choose(n, k)))

    def best_rho(share):
        """Largest log-likelihood over rho at this mean share, and that rho."""
        grid = np.linspace(-14, 6, 21)
        values = [_log_like(k, n, share, _expit(u)) for u in grid]
        at = int(np.argmax(values))
        fit = minimize_scalar(
            lambda u: -_log_like(k, n, share, _expit(u)),
            method="bounded",
            bounds=(grid[max(at - 1, 0)], grid[min(at + 1, 20)]),
            options={"xatol": 1e-9},
        )
        chance = _log_like(k, n, share, 0.0)
        return (chance, 0.0) if chance >= -fit.fun else (-fit.fun, _expit(fit.x))

    raw = k.sum() / n.sum()
    cut = normal_quantile(level) ** 2 / 2
    if raw in (0.0, 1.0):
        # No spread can be seen when no egg or every egg is lost: the binomial profile.
        edge = 1 - math.exp(-cut / n.sum())
        bounds = (0.0, edge) if raw == 0 else (1 - edge, 1.0)
        return BetaBinomial(float(raw), *bounds, 0.0, 0.0)
    start = math.log(raw / (1 - raw))
    fit = minimize_scalar(lambda v: -best_rho(_expit(v))[0], bracket=(start - 0.5, start + 0.5), tol=1e-10)
    share, top = _expit(fit.x), -fit.fun
    rho = best_rho(share)[1]

    def drop(v):
        return top - best_rho(_expit(v))[0] - cut

    edges = []
    for step in (-1.0, 1.0):
        far = fit.x + step
        while drop(far) < 0 and abs(far - fit.x) < 40:
            far += step
        edges.append(_expit(brentq(drop, *sorted((fit.x, far)), xtol=1e-8)) if drop(far) > 0 else float(step > 0))
    return BetaBinomial(share, edges[0], edges[1], rho, float(top + constant))


def _expit(value: float) -> float:
    return 1 / (1 + math.exp(-value)) if value > -700 else 0.0


def _log_choose(n, k):
    from scipy.special import gammaln

    return gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1)


def _log_like(k, n, share, rho) -> float:
    """Beta-binomial log-likelihood without its coefficients; below rho 1e-10 the binomial."""
    from scipy.special import betaln, xlog1py, xlogy

    if rho < 1e-10:
        return float(np.sum(xlogy(k, share) + xlog1py(n - k, -share)))
    spread = (1 - rho) / rho
    a, b = share * spread, (1 - share) * spread
    if a < 1e-12 or b < 1e-12:
        return -math.inf
    return float(np.sum(betaln(k + a, n - k + b) - betaln(a, b)))
