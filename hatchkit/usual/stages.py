"""What share of the eggs is usually lost at each stage, for one batch from all the others at once.

Eggs of a batch leave by one stage after the other. Of those still there a share is lost at each stage; the share of a
batch is a beta with mean m and a standard deviation of tau on the log-odds scale, counts are binomial (Skellam 1948,
J. R. Stat. Soc. B 10:257). m and tau lie on a grid with stated priors, m about a published level: few own batches are
drawn towards it and many are not. A batch that something struck is no measure of the usual: each batch's likelihood
is a mixture with a far wider spread, so that a struck batch bends the level little. As logs add up over the batches,
the level without a batch is the sum less its own term: the cost is linear in the batches.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

#: Grid of the mean share (as log odds) and of the spread between batches (sd of the log odds).
LOGITS = np.linspace(-6.5, 2.5, 61)
SPREADS = np.array([0.2, 0.3, 0.4, 0.5, 0.65, 0.8, 1.0, 1.25])

#: Before any batch is seen: the level of a keeper lies about the published one by this (sd, log odds) ...
LEVEL_SD = 0.7
#: ... and batches about their level by 0.5, two thirds of the time between 0.33 and 0.75 (stated by hatchkit).
SPREAD_MIDDLE, SPREAD_LOG_SD = 0.5, 0.4

#: Chance, before looking, that something struck another batch at a stage, and how far it then may lie (log odds).
STRUCK, STRUCK_SD = 0.15, 2.0


@dataclass(frozen=True)
class Usual:
    """Usual losses of one batch.

    Attributes
    ----------
    shares : ndarray, shape (1 + stages,)
        Of the eggs set: the rest (good chicks) first, then each stage in the order given.
    logits : ndarray, shape (stages,)
        Middle log odds of being lost at each stage among those still there.
    spread : ndarray, shape (stages,)
        Standard deviation of a batch's log odds about it: between batches, and doubt about the level, together.
    rho : float
        Intra-batch correlation of the good chicks among eggs set.
    batches, eggs : int
        Own batches and eggs behind it.
    ordinary : float
        Chance that this batch itself is one that nothing struck, by the others (mean over the stages).
    """

    shares: np.ndarray
    logits: np.ndarray
    spread: np.ndarray
    rho: float
    batches: int
    eggs: int
    ordinary: float


def usual(lost, rest, published, *, level_sd=LEVEL_SD) -> list[Usual]:
    """`Usual` of every batch from all the others.

    Parameters
    ----------
    lost : array, shape (batches, stages)
        Eggs lost at each stage, in the order in which they are lost; parts of eggs are allowed.
    rest : array, shape (batches,)
        Good chicks.
    published : array, shape (stages,)
        Published share of the eggs set lost at each stage.

    Returns
    -------
    list of Usual, one per row
    """
    lost, rest = np.asarray(lost, float), np.asarray(rest, float)
    there = rest[:, None] + np.cumsum(lost[:, ::-1], axis=1)[:, ::-1]
    published = np.asarray(published, float)
    level = published / (1 - np.concatenate([[0.0], np.cumsum(published)[:-1]]))
    stages = [_of_stage(lost[:, place], there[:, place], level[place], level_sd) for place in range(len(published))]
    total = lost.sum(axis=1) + rest
    chicks = _of_stage(rest, total, 1 - published.sum(), level_sd)
    out = []
    for row in range(len(rest)):
        logits, spread = (np.array([stage[name][row] for stage in stages]) for name in ("logit", "spread"))
        out.append(
            Usual(
                _of_set(logits),
                logits,
                spread,
                float(chicks["rho"][row]),
                len(rest) - 1,
                int((total.sum() - total[row]).round()),
                float(np.mean([stage["ordinary"][row] for stage in stages])),
            )
        )
    return out


def _of_set(logits):
    """Shares of the eggs set from the shares lost one after the other, the rest first."""
    gone = 1 / (1 + np.exp(-logits))
    left = np.concatenate([[1.0], np.cumprod(1 - gone)])
    return np.concatenate([left[-1:], left[:-1] * gone])


def _of_stage(lost, there, level, level_sd) -> dict:
    """Level and spread of one stage for each batch, by the others: arrays logit, spread, rho, ordinary."""
    ordinary = log_beta_binomial(lost, there, SPREADS)  # batches, logits, spreads
    struck = log_beta_binomial(lost, there, np.array([STRUCK_SD]))
    mixed = np.logaddexp(np.log(1 - STRUCK) + ordinary, np.log(STRUCK) + struck)
    prior = (
        -0.5 * ((LOGITS - np.log(level / (1 - level))) / level_sd)[:, None] ** 2
        - 0.5 * (np.log(SPREADS / SPREAD_MIDDLE) / SPREAD_LOG_SD)[None, :] ** 2
    )
    logs = prior + mixed.sum(axis=0) - mixed  # all batches less this one
    weight = np.exp(logs - logs.max(axis=(1, 2), keepdims=True))
    weight /= weight.sum(axis=(1, 2), keepdims=True)
    of_level, of_spread = weight.sum(axis=2), weight.sum(axis=1)
    middle = of_level @ LOGITS
    doubt = of_level @ LOGITS**2 - middle**2
    share = 1 / (1 + np.exp(-LOGITS))
    rho = np.einsum("bls,l,s->b", weight, share * (1 - share), SPREADS**2)
    own = np.exp(np.log(1 - STRUCK) + ordinary - mixed)
    return {
        "logit": middle,
        "spread": np.sqrt(of_spread @ SPREADS**2 + doubt),
        "rho": np.clip(rho, 0, 0.5),
        "ordinary": (own * weight).sum(axis=(1, 2)),
    }


def log_beta_binomial(lost, there, spreads):
    """Log likelihood of counts over the grid, coefficients left out: shape (batches, logits, spreads).

    The beta has mean m and variance (tau m (1 - m))^2, so that a + b = 1 / (tau^2 m (1 - m)) - 1.
    """
    from scipy.special import betaln

    mean = (1 / (1 + np.exp(-LOGITS)))[:, None]
    size = np.clip(1 / (np.square(spreads)[None, :] * mean * (1 - mean)) - 1, 0.1, None)
    a, b = mean * size, (1 - mean) * size
    lost, kept = np.asarray(lost, float)[:, None, None], (there - lost)[:, None, None]
    return betaln(a + lost, b + kept) - betaln(a, b)
