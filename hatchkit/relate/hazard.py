"""The one place where the relation of losses to a dose is computed, from a table of counts."""

from dataclasses import dataclass, field

import numpy as np
import pandas as pd

from hatchkit.relate import permutation
from hatchkit.relate.cloglog import fit_many
from hatchkit.relate.confounding import confounding, not_apart
from hatchkit.relate.design import design as make_design
from hatchkit.relate.effect import effect as fit_effect
from hatchkit.relate.excess import EXCESS_COLUMNS, excess
from hatchkit.relate.nothing_to_relate import nothing_to_relate
from hatchkit.relate.power import power
from hatchkit.relate.redrawn import foresee, redrawn
from hatchkit.relate.verdict import UNTOLD, rules, verdict

#: Draws of the small Bayesian model for the reported effect.
EFFECT_DRAWS = 5000
#: Arrangements that are kept for what could have shown.
SOME = 400
#: Where there was nothing to test, and no way to say what could have shown.
NO_TEST = dict.fromkeys(("more", "either", "smallest", "drawn", "spread"), np.nan) | {
    "arrangements": 0,
    "exact": True,
    "kind": "none",
}
NO_POWER = {"ratios": np.array([]), "power": np.array([]), "doubling": 0.0, "detectable": np.inf, "spread": np.nan}


@dataclass(frozen=True)
class CountsRelation:
    """What a table of counts says about a dose.

    Attributes
    ----------
    verdict : str
        By the one rule of `hatchkit.relate.verdict`.
    because : dict
        Facts of the verdict; `why` nothing could be computed at all, as `nothing_to_relate` gives it.
    effect : dict
        Hazard ratio at the usual dose (``step``) with interval and how it was got (`effect.effect`).
    test : dict
        more, either, smallest (shares of chance arrangements), arrangements, exact, kind
        ("batches exchanged", "log turned" or "none"); drawn (share of redrawn seasons, `redrawn`; missing where the log
        was turned), spread (between batches, as learned there).
    excess : DataFrame
        Excess deaths and chicks lost per exposed batch and in all (`excess.excess`).
    detectable : dict
        What a season of this size could have shown, and why not more (`redrawn.foresee`; where the log was turned
        `power.power`).
    confounding : DataFrame
    left_out : DataFrame
        batch, window, why, exposed (it met an excursion).
    step : float
        Mean dose of the exposed windows, in the unit of the dose.
    adjusted, not_carried : list of str
        Covariates in the model, and those that the data could not carry.
    """

    verdict: str
    because: dict
    effect: dict
    test: dict
    excess: pd.DataFrame
    detectable: dict
    confounding: pd.DataFrame
    left_out: pd.DataFrame
    step: float
    adjusted: list = field(default_factory=list)
    not_carried: list = field(default_factory=list)


def relate_counts(
    table,
    dose="dose",
    *,
    covariates=None,
    least=0.0,
    turned=None,
    draws=10_000,
    seed=1,
    detect=True,
    with_excess=True,
) -> CountsRelation:
    """Relate deaths per batch and window to a dose.

    Parameters
    ----------
    table : DataFrame
        One row per batch and window: batch, window, days, at_risk, died, the dose (missing where not known)
        and, if kept, species, incubator (both also bound the permutations), stored_days, flock_age_weeks.
    dose : str
        Column of the dose.
    covariates : list of str, optional
        Numeric columns to adjust for (default: stored_days and flock_age_weeks), within what the data carry.
    least : float
        Doses at or below this count as no exposure.
    turned : array (turns, rows of table), optional
        Doses with the log turned round against the losses, unturned first; give it where batches overlap
        in one machine. Then turns of the log stand in for exchanges of batches.
    draws : int
        Arrangements to sample where they are too many to count out.
    seed : int
        For every random part.
    detect, with_excess : bool
        Whether to compute what could have shown, and the excess deaths.
    """
    design = make_design(table, dose, covariates=covariates, least=least)
    blank = dict(
        effect={},
        test=NO_TEST,
        excess=pd.DataFrame(columns=EXCESS_COLUMNS),
        detectable={},
        confounding=confounding(design) if design.known.any() else pd.DataFrame(),
        left_out=design.left_out,
        step=design.step,
        adjusted=design.extra_names,
        not_carried=design.not_carried,
    )
    why = nothing_to_relate(design)
    if why:
        return CountsRelation(verdict=UNTOLD, because=why, **blank)
    share, _, dealt, test = weigh_chance(design, turned=turned, draws=draws, seed=seed)
    again = redrawn(design, seed=seed) if turned is None else {"more": np.nan, "spread": np.nan}
    test = {**test, "drawn": again["more"], "spread": again["spread"]}
    found = fit_effect(design, draws=EFFECT_DRAWS, seed=seed)
    enough = enough_to_test(design)
    detectable = {}
    if detect and enough and turned is None:
        detectable = foresee(design, seed=seed)
    elif detect:
        detectable = power(design, share, found["spread"], dealt, seed=seed) if enough else NO_POWER
    blank |= dict(effect=found, test=test, detectable=detectable)
    if with_excess:
        blank["excess"] = excess(design, seed=seed)
    said, because = verdict(
        more=test["more"],
        drawn=test["drawn"],
        smallest=test["smallest"],
        floor=found["floor"],
        low=found["low"],
        high=found["high"],
        power=detectable.get("doubling", 0.0),
        enough=enough,
        not_apart=not_apart(blank["confounding"]),
    )
    return CountsRelation(verdict=said, because=because, **blank)


def weigh_chance(design, *, turned=None, draws=10_000, seed=1):
    """The permutation test: share and residual per row of the fit without dose, doses dealt, result."""
    share, residual, rho = null_fit(design)
    weighted = np.nan_to_num(design.grid(residual * window_weights(design, share, rho)))
    dealt, test = _arranged(design, weighted, turned, draws, seed)
    return share, residual, dealt, test


def enough_to_test(design) -> bool:
    """Whether batches, exposed batches and deaths reach the least numbers of the rule."""
    limit = rules()
    exposed = len(design.exposed_batches)
    return bool(
        len(design.known_batches) >= limit["least_batches"]
        and exposed >= limit["least_exposed"]
        and design.died[design.known].sum() >= limit["least_deaths"]
    )


def null_fit(design):
    """Fit without the dose: share (rows,), standardised residual (rows,), rho.

    Batches of one stratum are exchangeable only beside their own baseline, so the strata stand in the
    model with the cells and covariates. A trace of a ridge keeps a cell without deaths finite.
    """
    strata = np.unique(design.strata, return_inverse=True)[1]
    columns = np.column_stack([design.cells(), np.eye(strata.max() + 1)[strata[design.batch]][:, 1:], design.extra])
    _, _, share = fit_many(design.died, design.at_risk, columns, design.offset, ridge=1e-3, tolerance=1e-7)
    share = np.clip(share[0], 1e-12, 1 - 1e-12)
    freedom = max(len(share) - np.linalg.matrix_rank(columns), 1)
    rho = float(permutation.intra_batch_correlation(design.died, design.at_risk, share, freedom))
    return share, permutation.standardised(design.died, design.at_risk, share, rho), rho


def window_weights(design, share, rho):
    """Weight of each window (rows,): the score of a common log hazard ratio, the same for all batches of a cell."""
    information = design.at_risk * share / (1 + (design.at_risk - 1) * rho)
    mean = np.bincount(design.cell, information) / np.maximum(np.bincount(design.cell), 1)
    return np.sqrt(mean / mean.max())[design.cell]


def _arranged(design, weighted, turned, draws, seed):
    """Doses under every arrangement (arrangements, batches, windows) and the test's result."""
    if turned is not None:
        rows = np.asarray(turned, float)[:, design.rows["at_row"].to_numpy()]
        dealt = np.zeros((len(rows), *weighted.shape))
        dealt[:, design.batch, design.window] = np.nan_to_num(rows)
        score = permutation.turned_scores(weighted, dealt)
        # The whole circle of turns is there, so it is counted out and not sampled.
        return dealt, {
            **permutation.chances(score, exact=True),
            "arrangements": len(score),
            "exact": True,
            "kind": "log turned",
        }
    doses = _centred(design)
    kinds = np.nan_to_num(design.grid(np.where(design.known, design.dose, -1.0)), nan=-2.0)
    _, ids = np.unique(kinds, axis=0, return_inverse=True)
    order, exact = permutation.deal(ids.ravel(), design.pools, draws=draws, seed=seed)
    score = permutation.scores(weighted, doses, order)
    result = permutation.chances(score, exact=exact)
    # What could have shown is weighed on some of them: all, laid out for thousands of batches, would be gigabytes.
    few = order[np.unique(np.linspace(0, len(order) - 1, min(len(order), SOME)).astype(int))]
    return doses[few], {**result, "arrangements": len(order), "exact": exact, "kind": "batches exchanged"}


def _centred(design):
    """Doses less their mean in the pool's window (batches, windows); 0 where not known."""
    grid = design.grid(np.where(design.known, design.dose, np.nan) / design.step)
    for pool in np.unique(design.pools):
        inside = design.pools == pool
        known = np.isfinite(grid[inside])
        mean = np.nansum(grid[inside], axis=0) / np.maximum(known.sum(axis=0), 1)
        grid[inside] = grid[inside] - mean
    return np.nan_to_num(grid)
