"""How well does each cause explain a batch? Counts and evidence on one scale, the Bayes factor.

1. Pattern. The eggs of a batch fall into stages one after the other: of those still there, some are lost at each
   stage. In ordinary batches of this person the share lost at a stage strays around its usual value with a
   standard deviation on the log-odds scale (`Spread`), as a beta distribution; counts are binomial. That is bad
   luck, between-batch spread included. Under a cause the odds of each stage against hatching are
   multiplied by 2 ** (doublings x size); `doublings` is the table ``cause_patterns.csv`` and the size is
   averaged over `SIZES`. The ratio of the two likelihoods is the pattern's Bayes factor.
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

#: A cause is named with confidence from this share on; within this factor of the first it ties.
CONFIDENT, TIE = 0.8, 3.0


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
    """Log probability of a batch's counts (coefficients left out), shape (...) for `shares` of shape (..., stages).

    The share lost at a stage is a beta with mean h and variance (sd h (1 - h))^2, so that
    a + b = 1 / (sd^2 h (1 - h)) - 1.
    """
    from scipy.special import betaln

    order = list(spread.order)
    lost, share = np.asarray(counts, dtype=float)[order], np.asarray(shares, dtype=float)[..., order]
    before = np.concatenate([[0.0], np.cumsum(lost)[:-1]])
    left = np.asarray(counts, dtype=float).sum() - before - lost
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
    """Log Bayes factor of one pattern against ordinary bad luck, averaged over the sizes."""
    each = log_likelihood(counts, shifted(shares, doublings, sizes), spread)
    top = each.max()
    return float(top + np.log(np.exp(each - top).mean()) - log_likelihood(counts, shares, spread))


def unlisted_log_factor(counts, shares, spread):
    """Log Bayes factor of "some cause that is not on the list" against ordinary bad luck."""
    wide = log_likelihood(counts, shares, spread.at_least(UNLISTED_SD))
    return float(wide - log_likelihood(counts, shares, spread))


def size_weights(counts, shares, spread, doublings, sizes=SIZES):
    """How likely each size of a cause is after the counts; adds up to 1."""
    each = log_likelihood(counts, shifted(shares, doublings, sizes), spread)
    weight = np.exp(each - each.max())
    return weight / weight.sum()


def eggs_lost(counts, shares, spread, doublings, sizes=SIZES):
    """Eggs of each stage that a cause would account for, if it is the cause.

    Of the eggs found at a stage the share 1 - usual / under the cause is put down to it, never below 0;
    averaged over the sizes as likely as the counts leave them.
    """
    under = shifted(shares, doublings, sizes)
    share = np.clip(1 - np.asarray(shares) / under, 0, None)
    share[:, 0] = 0
    return np.asarray(counts, float) * (size_weights(counts, shares, spread, doublings, sizes) @ share)


def combine_variants(log_factors):
    """Log of the mean factor over a cause's variants (each as likely as the other beforehand)."""
    log_factors = np.asarray(log_factors, dtype=float)
    top = log_factors.max()
    return float(top + np.log(np.exp(log_factors - top).mean()))


def posterior(log_factors, priors):
    """Shares over candidates from log Bayes factors and prior shares."""
    logs = np.asarray(log_factors, float) + np.log(np.asarray(priors, float))
    weight = np.exp(logs - logs.max())
    return weight / weight.sum()
