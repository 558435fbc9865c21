"""What is usual for this person: shares per stage from the other batches, drawn to a published ledger."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice import predictive
from hatchkit.advice.score import Spread, log_likelihood, unlisted_log_factor
from hatchkit.advice.tally import STAGES


@dataclass(frozen=True)
class Ordinary:
    """Usual stage shares and how far batches stray from them.

    Attributes
    ----------
    shares : ndarray, shape (stages,)
        In the order of `STAGES`.
    spread : score.Spread
        Batch spread and the doubt about the shares together, per stage.
    sd : float
        The batch spread alone: standard deviation of the log odds of being lost at a stage.
    rho : float
        Intra-batch correlation of good chicks among eggs set, for the words.
    batches, eggs : int
        Own batches and eggs behind it.
    """

    shares: np.ndarray
    spread: Spread
    sd: float
    rho: float
    batches: int
    eggs: int


def ordinary(counts: pd.DataFrame, batch) -> Ordinary:
    """Usual shares for one batch from the rows of the other batches of its species.

    Parameters
    ----------
    counts : DataFrame
        `tally.Tally.filled` of the batches of one species.
    batch : str
        Left out, so that a batch is never compared with itself.

    Notes
    -----
    Each other batch counts as n / (1 + (n - 1) x `RHO_STAGE`) eggs, the published ledger as its `weight_eggs`. A
    fault of a machine or a flock strikes several batches; so each other batch also counts only as far as
    it is likely to be an ordinary one, against a free pattern (`score.unlisted_log_factor`), which is worked out
    in turn with the shares. The batch spread is the posterior mean over `SD_GRID` with the same weights; the doubt
    about a share from K eggs at risk adds 1 / (K h (1 - h)) to the variance of its log odds.
    """
    ledger = reference.load("ordinary_ledger").set_index("stage").loc[list(STAGES)]
    published, weight = ledger["share_of_set"].to_numpy(), float(ledger["weight_eggs"].iloc[0])
    published = published / published.sum()
    others = counts.drop(index=batch)
    others = others[others.sum(axis=1) > 0].to_numpy()
    totals = others.sum(axis=1)
    shares, sd, trust = published, SD_MIDDLE, np.ones(len(totals))
    for _ in range(ROUNDS):
        trust = _ordinary_chance(others, shares, _spread(shares, SD_MIDDLE, weight))
        worth = trust * totals / (1 + (totals - 1) * RHO_STAGE)
        known = weight + worth.sum()
        shares = (published * weight + (others / totals[:, None] * worth[:, None]).sum(axis=0)) / known
    sd = _batch_sd(others, shares, known, trust)
    return Ordinary(
        shares=shares,
        spread=_spread(shares, sd, known),
        sd=sd,
        rho=_rho(others, published, trust),
        batches=len(others),
        eggs=int(totals.sum().round()),
    )


#: Columns of the loss stages in the order in which eggs leave.
ORDER = tuple(
    STAGES.index(stage) for stage in ("clear", "removed", "early", "mid", "late", "pipped_dead", "culled")
)

#: Chance, before looking, that another batch of the season is an ordinary one.
ORDINARY_BEFORE = 0.8

#: Correlation of eggs within a batch at one stage; about SD_MIDDLE^2 h (1 - h) at a loss h of a few percent.
RHO_STAGE = 0.02

#: Batch spread before any batch is seen: about 0.5, two thirds of the time between 0.33 and 0.75 (stated by
#: hatchkit).
SD_GRID, SD_MIDDLE, SD_LOG_SD = np.array([0.2, 0.3, 0.4, 0.5, 0.65, 0.8, 1.0, 1.25]), 0.5, 0.4

#: No share is held for surer than this spread lets it be, nor vaguer than that (log odds).
MOST_SD = 1.5

#: Turns of the mixture; the weights no longer move after a few.
ROUNDS = 4


def _spread(shares, sd, known) -> Spread:
    """Batch spread and the doubt about each share from `known` eggs."""
    share = shares[list(ORDER)]
    there = 1 - np.concatenate([[0.0], np.cumsum(share)[:-1]])
    mean = share / there
    doubt = 1 / (known * there * mean * (1 - mean))
    return Spread(ORDER, tuple(np.minimum(np.sqrt(sd**2 + doubt), MOST_SD)))


def _batch_sd(others, shares, known, trust) -> float:
    logs = -0.5 * (np.log(SD_GRID / SD_MIDDLE) / SD_LOG_SD) ** 2
    for row, counted in zip(others, trust, strict=True):
        logs = logs + counted * np.array(
            [log_likelihood(row, shares, _spread(shares, sd, known)) for sd in SD_GRID]
        )
    weight = np.exp(logs - logs.max())
    return float(SD_GRID @ weight / weight.sum())


def _rho(others, published, trust) -> float:
    """Correlation of good chicks among eggs set, for the words."""
    totals = others.sum(axis=1).round()
    learned = predictive.learn(others[:, 0].round(), totals, published[0], 0.15, weights=trust)
    return predictive.summary(learned)[3]


def _ordinary_chance(others, shares, spread) -> np.ndarray:
    """Chance that each batch is an ordinary one rather than one with a pattern of its own."""
    gain = np.array([unlisted_log_factor(row, shares, spread) for row in others])
    return 1 / (1 + (1 - ORDINARY_BEFORE) / ORDINARY_BEFORE * np.exp(np.minimum(gain, 500)))
