"""How well does each cause explain a batch? Counts and evidence on one scale, the Bayes factor.

1. Pattern. The eggs of a batch fall into stages. Ordinary batches of this person follow a
   Dirichlet-multinomial around their usual shares (mean `shares`, concentration `kappa`): that is bad
   luck, between-batch spread included. Under a cause the odds of each stage against hatching are
   multiplied by 2 ** (doublings x size); `doublings` is the table ``cause_patterns.csv`` and the size is
   averaged over `SIZES`. The ratio of the two likelihoods is the pattern's Bayes factor.
2. Evidence. Each item (log, weights, dates, remarks) falls into one of five levels; the table
   ``evidence_profiles.csv`` says how often each level is met with and without the cause. Items are taken as
   independent given the cause; what was not kept has factor 1.
3. Both factors and the prior odds are multiplied; shares over all candidates add up to 1.

Source: Bayes factors as in Kass & Raftery 1995, J. Am. Stat. Assoc. 90:773 (a factor below 3 is "not worth
more than a bare mention"); the Dirichlet-multinomial as in Mosimann 1962, Biometrika 49:65. The
doublings and profiles are stated by hatchkit in round figures; the sources give their direction.
"""

from __future__ import annotations

import numpy as np

#: A cause may be half as strong as the table says, or up to three times; equal weight for each.
SIZES = np.array([0.5, 1.0, 1.5, 2.0, 3.0])

#: Prior shares: a batch that is asked about has more often than not no cause that can be named; set on seeds that
#: are not reported (see tests/benchmarks/sealed_cases.py).
PRIOR_BAD_LUCK, PRIOR_UNLISTED = 0.60, 0.04

#: "Unlisted" allows any pattern: the same mean, but batches as unlike as this concentration makes them.
UNLISTED_KAPPA = 6.0

#: A cause is named with confidence from this share on; within this factor of the first it ties.
CONFIDENT, TIE = 0.8, 3.0


def dirichlet_multinomial(counts, alpha):
    """Log probability of counts (without the multinomial coefficient) under Dirichlet weights.

    Parameters
    ----------
    counts : array, shape (stages,)
    alpha : array, shape (..., stages)

    Returns
    -------
    array, shape (...)
    """
    from scipy.special import gammaln

    total = alpha.sum(axis=-1)
    return (gammaln(total) - gammaln(total + counts.sum())
            + (gammaln(alpha + counts) - gammaln(alpha)).sum(axis=-1))


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


def pattern_log_factor(counts, shares, kappa, doublings, sizes=SIZES):
    """Log Bayes factor of one pattern against ordinary bad luck, averaged over the sizes."""
    counts = np.asarray(counts, dtype=float)
    ordinary = dirichlet_multinomial(counts, kappa * np.asarray(shares))
    each = dirichlet_multinomial(counts, kappa * shifted(shares, doublings, sizes))
    top = each.max()
    return float(top + np.log(np.exp(each - top).mean()) - ordinary)


def unlisted_log_factor(counts, shares, kappa):
    """Log Bayes factor of "some cause that is not on the list" against ordinary bad luck."""
    counts = np.asarray(counts, dtype=float)
    wide = dirichlet_multinomial(counts, min(UNLISTED_KAPPA, kappa) * np.asarray(shares))
    return float(wide - dirichlet_multinomial(counts, kappa * np.asarray(shares)))


def size_weights(counts, shares, kappa, doublings, sizes=SIZES):
    """How likely each size of a cause is after the counts; adds up to 1."""
    each = dirichlet_multinomial(np.asarray(counts, float), kappa * shifted(shares, doublings, sizes))
    weight = np.exp(each - each.max())
    return weight / weight.sum()


def eggs_lost(counts, shares, kappa, doublings, sizes=SIZES):
    """Eggs of each stage that a cause would account for, if it is the cause.

    Of the eggs found at a stage the share 1 - usual / under the cause is put down to it, never below 0;
    averaged over the sizes as likely as the counts leave them.
    """
    under = shifted(shares, doublings, sizes)
    share = np.clip(1 - np.asarray(shares) / under, 0, None)
    share[:, 0] = 0
    return np.asarray(counts, float) * (size_weights(counts, shares, kappa, doublings, sizes) @ share)


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
