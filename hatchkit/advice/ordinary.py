"""What is usual for this person: shares per stage from the other batches, drawn to a published ledger."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit import reference

#: Stages of the score; "clear" holds clears and opened infertiles, "hatched" good chicks only.
STAGES = ("hatched", "culled", "clear", "early", "mid", "late", "pipped_dead", "removed")


@dataclass(frozen=True)
class Ordinary:
    """Usual stage shares and how far batches stray from them.

    Attributes
    ----------
    shares : ndarray, shape (stages,)
        In the order of `STAGES`.
    kappa : float
        Concentration of the Dirichlet: batch spread and the doubt about the shares together.
    rho : float
        Intra-batch correlation that the spread comes from.
    batches, eggs : int
        Own batches and eggs behind it.
    """

    shares: np.ndarray
    kappa: float
    rho: float
    batches: int
    eggs: int


def stage_counts(season) -> pd.DataFrame:
    """Eggs per batch and stage of `STAGES`; rows: finished batches. Eggs not accounted for are left out.

    A death whose interval crosses a stage limit is shared by the published two-phase shape (Kuurman et al.
    2001), not by this season's own ages at death: those already hold the trouble that is looked for.
    """
    from hatchkit.losses.windows import left_out

    skip = set(left_out(season)["batch"])
    lengths = season.species_table["incubation_days"]
    kinds = season.batches.set_index(season.batches["batch"].astype(str))["species"]
    rows = {}
    for batch, part in season.fates.groupby("batch", sort=False):
        if batch not in skip and kinds.get(batch) in lengths.index:
            rows[str(batch)] = _batch_counts(part, kinds[batch], float(lengths[kinds[batch]]))
    return pd.DataFrame.from_dict(rows, orient="index", columns=list(STAGES)).astype(float)


def _batch_counts(fates, species, days) -> list[float]:
    from hatchkit.losses.stages import limits_for, share_between
    from hatchkit.losses.two_phase import cumulative

    limits, found = limits_for(species, days), dict.fromkeys(STAGES, 0.0)
    for row in fates.to_dict("records"):
        if row["fate"] == "dead":
            shares = share_between(row["after_day"], row["by_day"], limits, lambda day: float(cumulative(day, days)))
            for (stage, _, _), share in zip(limits, shares, strict=True):
                found[stage] += row["eggs"] * share
        elif row["fate"] in ("clear", "infertile"):
            found["clear"] += row["eggs"]
        elif row["fate"] in found:
            found[row["fate"]] += row["eggs"]
    return list(found.values())


def ordinary(counts: pd.DataFrame, batch) -> Ordinary:
    """Usual shares for one batch from the rows of the other batches of its species.

    Parameters
    ----------
    counts : DataFrame
        `stage_counts` of the batches of one species.
    batch : str
        Left out, so that a batch is never compared with itself.

    Notes
    -----
    Each other batch counts as n / (1 + (n - 1) rho) eggs, the published ledger as its `weight_eggs`. A
    fault of a machine or a flock strikes several batches; so each other batch also counts only as far as
    it is likely to be an ordinary one, against a free pattern (the mixture of `score.UNLISTED_KAPPA`), which is
    worked out in turn with the shares. rho is the posterior mean of `predictive.learn` on the good chicks of
    the others with the same weights.
    """
    from hatchkit.advice import predictive

    ledger = reference.load("ordinary_ledger").set_index("stage").loc[list(STAGES)]
    published, weight = ledger["share_of_set"].to_numpy(), float(ledger["weight_eggs"].iloc[0])
    published = published / published.sum()
    others = counts.drop(index=batch)
    others = others[others.sum(axis=1) > 0]
    totals = others.sum(axis=1).to_numpy().round().astype(int)
    if not len(totals):
        return _as_published(published, weight)
    shares, rho = published, predictive.RHO_MIDDLE
    for _ in range(ROUNDS):
        trust = _ordinary_chance(others.to_numpy(), shares, 1 / predictive.RHO_MIDDLE - 1)
        worth = trust * totals / (1 + (totals - 1) * rho)
        known = weight + worth.sum()
        shares = (published * weight + (others.to_numpy() / totals[:, None] * worth[:, None]).sum(axis=0)) / known
        learned = predictive.learn(others["hatched"].round().astype(int), totals, published[0], 0.15, weights=trust)
        rho = predictive.summary(learned)[3]
    # Batch spread (1/rho - 1) and doubt about the mean act one after the other.
    kappa = 1 / (1 / (1 / rho - 1) + 1 / known)
    return Ordinary(shares=shares, kappa=float(kappa), rho=rho, batches=len(others), eggs=int(totals.sum()))


#: Chance, before looking, that another batch of the season is an ordinary one.
ORDINARY_BEFORE = 0.8

#: Turns of the mixture; the weights no longer move after a few.
ROUNDS = 5


def _as_published(published, weight) -> Ordinary:
    from hatchkit.advice.predictive import RHO_MIDDLE

    kappa = 1 / (1 / (1 / RHO_MIDDLE - 1) + 1 / weight)
    return Ordinary(shares=published, kappa=float(kappa), rho=RHO_MIDDLE, batches=0, eggs=0)


def _ordinary_chance(counts, shares, kappa) -> np.ndarray:
    """Chance that each batch is an ordinary one rather than one with a pattern of its own."""
    from hatchkit.advice import score

    gain = np.array([score.unlisted_log_factor(row, shares, kappa) for row in counts])
    return 1 / (1 + (1 - ORDINARY_BEFORE) / ORDINARY_BEFORE * np.exp(np.minimum(gain, 500)))
