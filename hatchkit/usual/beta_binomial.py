"""How many eggs to set: beta-binomial prediction of the chicks of one future set.

Each batch has its own hatch rate, drawn from a beta distribution with mean `mu` and intra-batch
correlation `rho`; the chicks of a batch are binomial given its rate (Skellam 1948, J. R. Stat. Soc. B
10:257). With few batches `mu` and `rho` are uncertain, so the prediction is averaged over both, on a grid.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np

#: No set is planned above this size; beyond it the honest answer is "not in one set".
MOST_EGGS = 5000

MU = np.linspace(0.005, 0.995, 100)
RHO = np.array(
    [0.001, 0.003, 0.006, 0.01, 0.015, 0.022, 0.03, 0.04, 0.055, 0.075, 0.1, 0.13, 0.17, 0.22, 0.3, 0.4, 0.5]
)

#: Assumed before any batch is seen: rho about 0.05, two thirds of the time between 0.02 and 0.12.
RHO_MIDDLE, RHO_LOG_SD = 0.05, 0.9


def shapes(mu, rho):
    """Beta shape parameters (a, b) for mean `mu` and correlation `rho` = 1 / (a + b + 1)."""
    size = (1 - rho) / rho
    return mu * size, (1 - mu) * size


def probability(chicks, eggs, a, b):
    """P(exactly so many chicks) where the hatch rate has the beta distribution (a, b); arrays broadcast."""
    from scipy.special import betaln, gammaln

    ways = gammaln(eggs + 1) - gammaln(chicks + 1) - gammaln(eggs - chicks + 1)
    return np.exp(ways + betaln(chicks + a, eggs - chicks + b) - betaln(a, b))


def at_least(chicks, eggs, a, b):
    """P(at least so many chicks), summed on the side of fewer terms; `a` and `b` are arrays of one shape."""
    a, b = np.asarray(a, float), np.asarray(b, float)
    if chicks <= 0 or chicks > eggs:
        return np.full(a.shape, float(chicks <= 0))
    below = chicks <= eggs - chicks
    side = np.arange(chicks) if below else np.arange(chicks, eggs + 1)
    total = probability(side.reshape(-1, *[1] * a.ndim), eggs, a, b).sum(axis=0)
    return np.clip(1 - total if below else total, 0.0, 1.0)


def _fewest(chance, chicks, sure):
    """Smallest whole number of eggs with ``chance(eggs) >= sure``; `chance` rises with eggs."""
    low, high = max(int(chicks), 1) - 1, max(int(chicks), 1)
    sure -= 1e-12  # rounding must not cost an egg
    while high <= MOST_EGGS and chance(high) < sure:
        low, high = high, min(high * 2, MOST_EGGS) if high < MOST_EGGS else MOST_EGGS + 1
    if high > MOST_EGGS:
        return None
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if chance(middle) >= sure else (middle, high)
    return high


def learn(counts, totals, level, level_sd, weights=None):
    """Weights over the grid of mean and correlation after a person's own batches.

    Parameters
    ----------
    counts, totals : array of int, shape (batches,)
        Good chicks and eggs set of each own batch; may be empty.
    level, level_sd : float
        Published hatch of eggs set and how far farms and homes lie around it (prior beta for the mean).
    weights : array, shape (batches,), optional
        How much each batch counts, 0-1; all count whole if left out.

    Returns
    -------
    ndarray, shape (len(MU), len(RHO))
        Adds up to 1.
    """
    size = level * (1 - level) / level_sd**2 - 1
    if size <= 0:
        raise ValueError(f"a level of {level} cannot have a spread of {level_sd}")
    # Beta prior of the mean, normal prior of the log correlation; constants fall out when weights add up to 1.
    of_mean = (level * size - 1) * np.log(MU) + ((1 - level) * size - 1) * np.log1p(-MU)
    of_rho = -0.5 * ((np.log(RHO) - np.log(RHO_MIDDLE)) / RHO_LOG_SD) ** 2
    log_weight = of_mean[:, None] + of_rho[None, :]
    counts, totals = np.asarray(counts, int), np.asarray(totals, int)
    weights = np.ones(len(counts)) if weights is None else np.asarray(weights, float)
    for count, total, counted in zip(counts, totals, weights, strict=True):
        log_weight = log_weight + counted * _log_beta_binomial(int(count), int(total))
    weight = np.exp(log_weight - log_weight.max())
    return weight / weight.sum()


@lru_cache(maxsize=256)
def _log_beta_binomial(count, total):
    """Log likelihood of one batch over the grid, without the binomial coefficient, the same everywhere.

    Kept, because each batch of a season is asked for once for every other batch.
    """
    from scipy.special import betaln

    a, b = shapes(MU[:, None], RHO[None, :])
    return betaln(a + count, b + total - count) - betaln(a, b)


def predicted(weight, eggs):
    """P(0), P(1), ... P(eggs) chicks from one future set, averaged over what is not known."""
    keep = weight > 1e-6
    mu, rho = np.broadcast_to(MU[:, None], weight.shape)[keep], np.broadcast_to(RHO, weight.shape)[keep]
    each = probability(np.arange(eggs + 1)[:, None], eggs, *shapes(mu, rho))
    return each @ (weight[keep] / weight[keep].sum())


def chance_learned(weight, chicks, eggs):
    """P(at least `chicks` from `eggs`) averaged over the grid weights of `learn`."""
    keep = weight > 1e-6
    mu, rho = np.broadcast_to(MU[:, None], weight.shape)[keep], np.broadcast_to(RHO, weight.shape)[keep]
    tails = at_least(chicks, eggs, *shapes(mu, rho))
    return float(tails @ (weight[keep] / weight[keep].sum()))


def eggs_learned(weight, chicks, *, sure):
    """Fewest eggs for at least `chicks` chicks with probability `sure`; None where `MOST_EGGS` would not do."""
    return _fewest(lambda eggs: chance_learned(weight, chicks, eggs), chicks, sure)


def range_of_chicks(weight, eggs, *, cover=0.8):
    """Lowest, middle and highest chicks to reckon with from `eggs` eggs (`cover` in the middle)."""
    total = np.cumsum(predicted(weight, eggs))
    return tuple(int(np.searchsorted(total, q)) for q in ((1 - cover) / 2, 0.5, (1 + cover) / 2))


def summary(weight):
    """Mean hatch of set and correlation after learning: (mu, mu_low, mu_high, rho), 90 % limits."""
    over_mu = weight.sum(axis=1)
    edges = np.cumsum(over_mu)
    low, high = (float(MU[np.searchsorted(edges, q)]) for q in (0.05, 0.95))
    return float(over_mu @ MU), low, high, float(weight.sum(axis=0) @ RHO)
