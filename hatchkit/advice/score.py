"""How well does each cause explain a batch? Counts and evidence on one scale, the Bayes factor.

1. Pattern. The eggs of a batch fall into stages one after the other: of those still there, some are lost at each
   stage. In ordinary batches of this person the share lost at a stage strays around its usual value with a
   standard deviation on the log-odds scale (`Spread`), as a beta distribution; counts are binomial. That is bad
   luck, between-batch spread included. Under a cause the odds of each stage against hatching are
   multiplied by 2 ** (doublings x size); `doublings` is the table ``cause_patterns.csv`` and the size is
   averaged over `SIZES`. The ratio of the two likelihoods is the pattern's Bayes factor. Deaths that are only known
   to lie between two looks are summed over every way in which they can have fallen on the stages.
2. Evidence. Each item (log, weights, dates, remarks) falls into one of five levels; the table
   ``evidence_profiles.csv`` says how often each level is met with and without the cause. Items are taken as
   independent given the cause; what was not kept has factor 1.
3. Both factors and the prior odds are multiplied; shares over all candidates add up to 1.

Source: Bayes factors as in Kass & Raftery 1995, J. Am. Stat. Assoc. 90:773 (a factor below 3 is "not worth
more than a bare mention"); stages one after the other with beta shares as in Connor & Mosimann 1969, J. Am. Stat.
Assoc. 64:194 (generalised Dirichlet), counts beta-binomial as in Skellam 1948. The
doublings and profiles are stated by hatchkit in round figures; the sources give their direction.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

#: A cause may be half as strong as the table says, or up to three times; equal weight for each.
SIZES = np.array([0.5, 1.0, 1.5, 2.0, 3.0])

#: Prior shares: a batch that is asked about has more often than not no cause that can be named; set on seeds that
#: are not reported (see tests/benchmarks/sealed_cases.py).
PRIOR_BAD_LUCK, PRIOR_UNLISTED = 0.60, 0.04

#: "Unlisted" allows any pattern: the same usual shares, but batches that stray by this on the log-odds scale.
UNLISTED_SD = 1.6

#: Of the ways in which deaths between two looks can have fallen on the stages, at most about so many are tried.
MOST_WAYS = 60

#: A cause is named with confidence from this share on; within this factor of the first it ties.
CONFIDENT, TIE = 0.8, 3.0

#: With more than this share of the eggs set without a known end no cause is named with confidence, nor bad luck.
MOST_UNACCOUNTED = 0.15


@dataclass(frozen=True)
class Spread:
    """How far batches stray from the usual shares.

    Attributes
    ----------
    order : tuple of int
        Columns of the loss stages in the order in which eggs are lost; the first column, hatched, is the rest.
    sd : tuple of float, shape (loss stages,)
        Standard deviation of the log odds of being lost at each stage, in that order.
    """

    order: tuple
    sd: tuple

    def at_least(self, sd) -> Spread:
        """The same with every standard deviation at or above `sd`."""
        return Spread(self.order, tuple(max(one, sd) for one in self.sd))


def log_likelihood(counts, shares, spread: Spread):
    """Log probability of a batch's counts (coefficients left out), shape (...) as `counts` and `shares` broadcast.

    `counts` and `shares` have shape (..., stages). The share lost at a stage is a beta with mean h and variance
    (sd h (1 - h))^2, so that a + b = 1 / (sd^2 h (1 - h)) - 1.
    """
    from scipy.special import betaln

    order = list(spread.order)
    counts, share = np.asarray(counts, dtype=float), np.asarray(shares, dtype=float)[..., order]
    lost = counts[..., order]
    left = counts.sum(axis=-1, keepdims=True) - np.cumsum(lost, axis=-1)
    gone = np.concatenate([np.zeros((*share.shape[:-1], 1)), np.cumsum(share, axis=-1)[..., :-1]], axis=-1)
    mean = np.clip(share / np.clip(1 - gone, 1e-9, None), 1e-9, 1 - 1e-9)
    size = np.clip(1 / (np.square(spread.sd) * mean * (1 - mean)) - 1, 0.1, None)
    a, b = size * mean, size * (1 - mean)
    return (betaln(a + lost, b + left) - betaln(a, b)).sum(axis=-1)


def shifted(shares, doublings, sizes=SIZES):
    """Stage shares under a cause: odds against the first stage times 2 ** (doublings x size).

    Parameters
    ----------
    shares : array, shape (stages,)
        Usual shares; the first stage is "hatched".
    doublings : array, shape (stages,)
    sizes : array, shape (sizes,)

    Returns
    -------
    array, shape (sizes, stages)
    """
    weight = np.asarray(shares) * 2.0 ** (np.asarray(sizes)[:, None] * np.asarray(doublings)[None, :])
    return weight / weight.sum(axis=1, keepdims=True)


def pattern_log_factor(counts, shares, spread, doublings, sizes=SIZES):
    """Log Bayes factor of one pattern against ordinary bad luck, averaged over the sizes (`weigh_patterns`)."""
    return float(weigh_patterns(counts, shares, spread, [doublings], sizes)[0][0])


def unlisted_log_factor(counts, shares, spread, log_weight=0.0):
    """Log Bayes factor of "some cause that is not on the list" against ordinary bad luck.

    `counts` and `log_weight` may be the ways of `ways_to_fall`.
    """
    wide = log_likelihood(counts, shares, spread.at_least(UNLISTED_SD)) + log_weight
    usual = log_likelihood(counts, shares, spread) + log_weight
    return float(log_sum(np.atleast_1d(wide)) - log_sum(np.atleast_1d(usual)))


def eggs_lost(counts, shares, spread, doublings, sizes=SIZES):
    """Eggs of each stage that a cause would account for, if it is the cause (`weigh_patterns`)."""
    return weigh_patterns(counts, shares, spread, [doublings], sizes)[1][0]


def weigh_patterns(counts, shares, spread, doublings, sizes=SIZES, log_weight=0.0):
    """Log Bayes factor of every pattern against ordinary bad luck, and the eggs it would account for.

    Parameters
    ----------
    counts : array, shape (stages,) or (ways, stages)
        Eggs per stage; several rows where deaths may have fallen in several ways (`ways_to_fall`).
    shares : array, shape (stages,)
        Usual shares; the first stage is "hatched".
    doublings : array, shape (patterns, stages)
    log_weight : array, shape (ways,)
        Log number of ways behind each row, as `ways_to_fall` gives it.

    Returns
    -------
    log_factors : array, shape (patterns,)
        Averaged over the sizes and over the ways.
    lost : array, shape (patterns, stages)
        Of the eggs found at a stage the share 1 - usual / under the cause is put down to it, never below 0;
        averaged over the sizes and the ways as likely as the counts leave them.
    """
    counts = np.atleast_2d(np.asarray(counts, dtype=float))
    log_weight = np.broadcast_to(np.asarray(log_weight, dtype=float), len(counts))
    under = np.stack([shifted(shares, steps, sizes) for steps in doublings])  # patterns, sizes, stages
    each = log_likelihood(counts[:, None, None], under, spread) + log_weight[:, None, None]
    usual = log_sum(log_likelihood(counts, shares, spread) + log_weight)
    by_pattern = each.transpose(1, 0, 2).reshape(len(under), -1)  # patterns, ways x sizes
    totals = log_sum(by_pattern, axis=1)
    weight = np.exp(by_pattern - totals[:, None]).reshape(len(under), len(counts), len(sizes))
    put_down = np.clip(1 - np.asarray(shares, float) / under, 0, None)
    put_down[..., 0] = 0
    lost = np.einsum("pws,wk,psk->pk", weight, counts, put_down)
    return totals - np.log(len(sizes)) - usual, lost


def ways_to_fall(sure, between, most=MOST_WAYS):
    """Every way in which deaths known only between two days can have fallen on the stages.

    Parameters
    ----------
    sure : array, shape (stages,)
        Eggs whose stage is known.
    between : list of `tally.Between`
    most : int
        With more ways than about this a coarser grid is taken, in steps of several eggs.

    Returns
    -------
    counts : array, shape (ways, stages)
    log_weight : array, shape (ways,)
        Log of the number of orders in which the eggs can fall so (multinomial), times the part of each stage that
        lies between the days, once per egg; a constant common to all ways is left out.
    """
    from scipy.special import gammaln

    counts, log_weight = np.asarray(sure, dtype=float)[None], np.zeros(1)
    groups = sorted(_joined(between), key=lambda group: group[2])
    for place, (columns, within, eggs) in enumerate(groups):
        room = max(most / len(counts), 2.0) ** (1 / (len(groups) - place))
        falls = _falls(eggs, len(columns), room)
        weight = (falls * np.log(within)).sum(axis=1) - gammaln(falls + 1).sum(axis=1)
        more = np.zeros((len(falls), counts.shape[1]))
        more[:, list(columns)] = falls
        counts = (counts[:, None] + more[None]).reshape(-1, counts.shape[1])
        log_weight = (log_weight[:, None] + weight[None]).ravel()
    return counts, log_weight


def _joined(between) -> list[tuple]:
    """Groups over the same stages taken as one, with the mean part of each stage: (columns, within, eggs)."""
    joined = {}
    for group in between:
        eggs, within = joined.get(group.columns, (0.0, np.zeros(len(group.columns))))
        joined[group.columns] = eggs + group.eggs, within + group.eggs * np.clip(group.within, 1e-6, None)
    return [(columns, within / eggs, eggs) for columns, (eggs, within) in joined.items()]


def _falls(eggs, stages, room) -> np.ndarray:
    """All ways to share `eggs` among `stages`, shape (ways, stages); in coarser steps if more than `room`."""
    from itertools import combinations
    from math import comb

    parts = max(int(round(eggs)), 1)
    while parts > 1 and comb(parts + stages - 1, stages - 1) > room:
        parts -= 1
    bars = np.array(list(combinations(range(parts + stages - 1), stages - 1))).reshape(-1, stages - 1)
    edges = np.concatenate([np.full((len(bars), 1), -1), bars, np.full((len(bars), 1), parts + stages - 1)], axis=1)
    return (np.diff(edges, axis=1) - 1) * (eggs / parts)


def log_sum(logs, axis=None):
    """Log of the sum of exponentials."""
    top = np.max(logs, axis=axis, keepdims=True)
    return np.squeeze(top, axis=axis) + np.log(np.exp(logs - top).sum(axis=axis))


def combine_variants(log_factors):
    """Log of the mean factor over a cause's variants (each as likely as the other beforehand)."""
    return float(log_sum(np.asarray(log_factors, dtype=float)) - np.log(len(log_factors)))


def posterior(log_factors, priors):
    """Shares over candidates from log Bayes factors and prior shares."""
    logs = np.asarray(log_factors, float) + np.log(np.asarray(priors, float))
    weight = np.exp(logs - logs.max())
    return weight / weight.sum()
