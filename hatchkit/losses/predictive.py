"""How many losses to expect in one batch, given the other batches and the spread between them.

Counts of a batch are beta-binomial. The mean share and the spread are not known; the expectation is averaged
over both, on a grid, with what the other batches say of them. This keeps its promise with few batches, where
putting the best-fitting spread in as if it were known flags too often.
"""

from __future__ import annotations

import math
from functools import cache, lru_cache

import numpy as np

#: Grid of mean shares (evenly spaced logits) and of the spread between batches (coefficient of variation of the
#: share on the scale of the rarer outcome, as the sd of its logarithm).
LOGITS = np.linspace(-9.0, 9.0, 145)
SPREADS = np.array([0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.95, 1.1, 1.3, 1.55, 1.9, 2.4])


@cache
def _grid():
    """Beta shapes a, b (spread 0: a + b very large) and log prior of each grid point.

    Prior: share as Beta(1/2, 1/2), spread as the positive half of a normal with sd 1.
    """
    share = 1 / (1 + np.exp(-LOGITS))
    share, spread = (part.ravel() for part in np.meshgrid(share, SPREADS, indexing="ij"))
    rare = np.minimum(share, 1 - share)
    # Variance share^2 (exp(sd^2) - 1) of the rarer outcome, told as the correlation of two eggs of a batch.
    rho = np.clip(np.expm1(spread**2) * rare / (1 - rare), 1e-7, 0.95)
    width = np.gradient(SPREADS)
    prior = 0.5 * np.log(share * (1 - share)) - spread**2 / 2 + np.log(np.tile(width, len(LOGITS)))
    size = (1 - rho) / rho
    return share * size, (1 - share) * size, prior


def _log_beta_ratio(count, total, a, b):
    from scipy.special import betaln

    return betaln(count + a, total - count + b) - betaln(a, b)


def log_likelihoods(counts, totals) -> np.ndarray:
    """Log-likelihood of each batch at each grid point, without binomial coefficients: (batches, grid)."""
    a, b, _ = _grid()
    k, n = np.asarray(counts, dtype=float)[:, None], np.asarray(totals, dtype=float)[:, None]
    return _log_beta_ratio(k, n, a, b)


def weights(log_likelihood) -> np.ndarray:
    """Posterior weights of the grid points for a summed log-likelihood, shape (grid,), sum 1."""
    log = log_likelihood + _grid()[2]
    weight = np.exp(log - log.max())
    return weight / weight.sum()


def distribution(total: int, weight, *, share: float | None = None) -> np.ndarray:
    """Chance of 0, 1, ..., total losses in a batch of `total` eggs.

    Parameters
    ----------
    weight : ndarray
        From `weights`.
    share : float, optional
        A level to expect; only the spread is then taken from the other batches.
    """
    if share is None and total <= SMALL:
        chance = _small(total) @ weight
        return chance / chance.sum()
    a, b, _ = _grid()
    if share is not None:
        weight = weight.reshape(len(LOGITS), len(SPREADS)).sum(axis=0)
        share = min(max(share, 1e-6), 1 - 1e-6)
        rare = min(share, 1 - share)
        rho = np.clip(np.expm1(SPREADS**2) * rare / (1 - rare), 1e-7, 0.95)
        a, b = share * (1 - rho) / rho, (1 - share) * (1 - rho) / rho
    keep = weight > weight.max() * 1e-5
    a, b, weight = a[keep], b[keep], weight[keep] / weight[keep].sum()
    chance = _chances(total, a, b) @ weight
    return chance / chance.sum()


#: Batches up to this size share one table of chances, since their sizes come again and again.
SMALL = 100


@lru_cache(maxsize=32)
def _small(total: int) -> np.ndarray:
    a, b, _ = _grid()
    return _chances(total, a, b)


def _chances(total, a, b) -> np.ndarray:
    """Beta-binomial chance of each count at each pair of shapes: (total + 1, pairs)."""
    from scipy.special import gammaln

    x = np.arange(total + 1, dtype=float)[:, None]
    choose = gammaln(total + 1) - gammaln(x + 1) - gammaln(total - x + 1)
    return np.exp(choose + _log_beta_ratio(x, float(total), a, b))


def summary(chance, count: float, *, fewer: bool = False, level: float = 0.95) -> dict:
    """Expected count, range that holds `level` of the chance, and how rare a count at least as bad is.

    Parameters
    ----------
    fewer : bool
        True where few is bad (chicks), so that the chance is of this count or fewer.
    """
    running = np.cumsum(chance)
    tail = (1 - level) / 2
    whole = min(max(round(count), 0), len(chance) - 1)
    more = 1.0 if whole == 0 else 1 - running[whole - 1]
    return {
        "expected": float(chance @ np.arange(len(chance))),
        "low": float(np.searchsorted(running, tail)),
        "high": float(min(np.searchsorted(running, 1 - tail), len(chance) - 1)),
        "chance": float(min(max(running[whole] if fewer else more, 0.0), 1.0)),
    }


def missing() -> dict:
    """The same where nothing can be expected."""
    return {"expected": math.nan, "low": math.nan, "high": math.nan, "chance": math.nan}
