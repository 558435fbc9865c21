"""How often intervals hold the truth and how often ordinary batches are called unusual, by trial."""

import numpy as np

from hatchkit.losses.bad_luck import UNUSUAL, adjusted
from hatchkit.losses.predictive import distribution, log_likelihoods, summary, weights
from hatchkit.losses.proportions import dispersion, interval, widened

RATES = (0.005, 0.02, 0.05, 0.10, 0.20, 0.30)


def one_batch(eggs, method="wilson", rates=None):
    """Exact coverage of a batch's 95 % interval at each rate (no trials: every count is weighed)."""
    from scipy.stats import binom

    rates = np.linspace(0.005, 0.30, 119) if rates is None else np.asarray(rates)
    counts = np.arange(eggs + 1)
    low, high = interval(counts, eggs, method)
    inside = (low[None, :] <= rates[:, None]) & (rates[:, None] <= high[None, :])
    return rates, np.sum(binom.pmf(counts[None, :], eggs, rates[:, None]) * inside, axis=1)


def draw_counts(random, *, rate, sd, batches, eggs, trials):
    """Losses of `trials` seasons, (trials, batches): cloglog-normal between batches, mean loss exactly `rate`."""
    from scipy.optimize import brentq

    nodes, weight = np.polynomial.hermite_e.hermegauss(40)
    weight = weight / weight.sum()
    middle = brentq(lambda a: weight @ (1 - np.exp(-np.exp(a + sd * nodes))) - rate, -15, 5)
    share = 1 - np.exp(-np.exp(middle + sd * random.standard_normal((trials, batches))))
    return random.binomial(eggs, share)


def season_coverage(random, *, rate, sd, batches, eggs, trials):
    """Share of seasons whose pooled interval holds the mean loss."""
    counts = draw_counts(random, rate=rate, sd=sd, batches=batches, eggs=eggs, trials=trials)
    totals = np.full(batches, eggs)
    phi = dispersion(counts, np.broadcast_to(totals, counts.shape))
    low, high = widened(counts.sum(axis=1), float(batches * eggs), phi, batches)
    return float(np.mean((low <= rate) & (rate <= high)))


def false_flags(random, *, rate, sd, batches, eggs, trials):
    """When nothing is wrong: share of batches flagged, of seasons with any flag, and of chances under 5 %."""
    counts = draw_counts(random, rate=rate, sd=sd, batches=batches, eggs=eggs, trials=trials)
    flags, any_flag, small = 0, 0, 0
    for season in counts:
        likelihood = log_likelihoods(season, np.full(batches, eggs))
        whole = likelihood.sum(axis=0)
        chance = np.array(
            [
                summary(distribution(eggs, weights(whole - own)), count)["chance"]
                for own, count in zip(likelihood, season, strict=True)
            ]
        )
        flagged = adjusted(chance) <= UNUSUAL
        flags, any_flag, small = flags + flagged.sum(), any_flag + flagged.any(), small + (chance <= 0.05).sum()
    return flags / counts.size, any_flag / trials, small / counts.size
