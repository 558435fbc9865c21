"""How many losses to expect in one batch, given the other batches and the spread between them.

Counts of a batch are beta-binomial. The mean share and the spread are not known; the expectation is averaged
over both, on a grid, with what the other batches say of them. This keeps its promise with few batches, where
putting the best-fitting spread in as if it were known flags too often.
"""

import math
from functools import cache, lru_cache

import numpy as np

#: Grid of mean shares (as log odds) and of the spread between batches (sd of the log odds of their shares).
LOGITS = np.linspace(-9.0, 9.0, 145)
SPREADS = np.array([0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.95, 1.1, 1.3, 1.55, 1.9, 2.4])

#: Prior of the spread: positive half of a normal with this sd, so half of all seasons lie below 0.47 and 1 in 20
#: above 1.4. The kit's own choice; what it does to false flags is measured in ``tests/benchmarks``.
SPREAD_SD = 0.7


@cache
def _correlations():
    """Mean log odds and correlation of two eggs of a batch, for shares normal on the log odds scale.

    Returns
    -------
    logit, rho : ndarray, shape (spreads, points)
        Log odds of the mean share over all batches; variance of the shares over mean (1 - mean).
    """
    nodes, part = np.polynomial.hermite_e.hermegauss(41)
    middle = np.linspace(-16.0, 16.0, 641)
    share = 1 / (1 + np.exp(-(middle[None, :, None] + SPREADS[:, None, None] * nodes)))
    mean = share @ part / part.sum()
    left = mean * (1 - mean)
    return np.log(mean / (1 - mean)), (share**2 @ part / part.sum() - mean**2) / left


def _shapes(logit):
    """Beta shapes a, b of mean shares with these log odds at each spread: (shares, spreads) twice."""
    logit = np.atleast_1d(logit)
    rho = np.column_stack([np.interp(logit, *table) for table in zip(*_correlations(), strict=True)])
    # Spread 0: a + b very large, which is the binomial.
    size = 1 / np.clip(rho, 1e-7, 0.95) - 1
    share = 1 / (1 + np.exp(-logit[:, None]))
    return share * size, (1 - share) * size


@cache
def _grid():
    """Beta shapes a, b and log prior of each grid point; prior of the share: Beta(1/2, 1/2)."""
    a, b = _shapes(LOGITS)
    share = 1 / (1 + np.exp(-LOGITS))
    prior = 0.5 * np.log(share * (1 - share))[:, None] - (SPREADS / SPREAD_SD) ** 2 / 2 + np.log(np.gradient(SPREADS))
    return a.ravel(), b.ravel(), prior.ravel()


def log_likelihoods(counts, totals) -> np.ndarray:
    """Log-likelihood of each batch at each grid point, without binomial coefficients: (batches, grid)."""
    from scipy.special import betaln

    a, b, _ = _grid()
    k, n = np.asarray(counts, dtype=float)[:, None], np.asarray(totals, dtype=float)[:, None]
    return betaln(k + a, n - k + b) - betaln(a, b)


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
        a, b = (shape.ravel() for shape in _shapes(np.log(share / (1 - share))))
    keep = weight > weight.max() * 1e-5
    a, b, weight = a[keep], b[keep], weight[keep] / weight[keep].sum()
    chance = chances(total, a, b) @ weight
    return chance / chance.sum()


#: Batches up to this size share one table of chances, since their sizes come again and again.
SMALL = 100


@lru_cache(maxsize=32)
def _small(total: int) -> np.ndarray:
    a, b, _ = _grid()
    return chances(total, a, b)


def chances(total, a, b) -> np.ndarray:
    """Beta-binomial chance of each count at each pair of shapes a, b: (total + 1, pairs).

    Sums of logarithms of rising factorials, which are much faster than log-gamma functions.
    """
    step = np.arange(total, dtype=float)[:, None]

    def rising(start):
        return np.concatenate([np.zeros((1, len(start))), np.cumsum(np.log(start + step), axis=0)])

    choose = rising(np.ones(1))
    log = rising(a) + rising(b)[::-1] - np.log(a + b + step).sum(axis=0) + choose[-1] - choose - choose[::-1]
    return np.exp(log)


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


def count_for(chance, rare: float, *, fewer: bool = False) -> float:
    """The count least far from the ordinary whose chance (of it, or worse) is at most `rare`; missing if none is."""
    running = np.cumsum(chance)
    if fewer:
        below = np.flatnonzero(running <= rare)
        return float(below[-1]) if len(below) else math.nan
    above = np.flatnonzero(1 - running <= rare)
    # The chance of x or more is 1 less the running sum before x.
    return float(above[0] + 1) if len(above) and above[0] + 1 < len(running) else math.nan


def missing() -> dict:
    """The same where nothing can be expected."""
    return {"expected": math.nan, "low": math.nan, "high": math.nan, "chance": math.nan}
