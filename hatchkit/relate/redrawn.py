"""A second test for small designs: how often would batches that differ as batches do give as much by chance?

Exchanging histories of exposure between batches assumes least, but two exposed batches of eight in three machines
leave so few arrangements that no harm, however large, can look rare. This test draws the batches anew instead: each
with its own level on the log hazard, the spread between batches learned from the records and from what is stated
of such spreads (reference/verdict_rules.csv). Machines, keepers and seasons have levels of their own, and where the
records can carry it a steady drift through the season is taken out. It is valid as far as batches differ beyond these
by a spread not far above the stated one: at 0.3 to 0.5 it gives about 5 % false alarms, at 0.8 from 6 to 14 %.
"""

import numpy as np

from hatchkit.relate import bayes
from hatchkit.relate.cloglog import fit_many
from hatchkit.relate.effect import independent
from hatchkit.relate.power import ratio_for
from hatchkit.relate.verdict import rules

#: Spreads that are weighed, sd of the log hazard.
SPREADS = np.array([0.1, 0.2, 0.3, 0.4, 0.5, 0.65, 0.8, 1.0, 1.3])
#: Batches from which on a drift through the season is taken out.
DRIFT_BATCHES = 12


def redrawn(design, *, draws: int = 2000, seed: int = 1) -> dict:
    """Share of redrawn seasons that put as many deaths on the exposed batches.

    Parameters
    ----------
    design : Design
    draws : int
    seed : int

    Returns
    -------
    dict
        more (one-sided), spread (posterior mean of the spread between batches), draws, apart (False where levels of
        machines, keepers and seasons leave nothing of the dose to be seen: more is missing then).
    """
    died, eggs, size, columns, share, batch = _unexposed(design)
    dose = projected(size, columns, eggs * share * (1 - share))
    information = float((eggs * share * (1 - share) * dose**2).sum())
    if information < 1e-9 * eggs.sum() or np.abs(dose).max() < 1e-6:
        return {"more": np.nan, "spread": np.nan, "draws": 0, "apart": False}
    weight = spread_weights(died, eggs, share, batch)
    rng = np.random.default_rng(seed)
    spread = rng.choice(SPREADS, size=draws, p=weight)[:, None]
    again = deaths(eggs, share, batch, spread, rng)
    score, seen = (again - eggs * share) @ dose, float((died - eggs * share) @ dose)
    # A season with more deaths in all has a wider score; each is measured by its own.
    score = score / np.sqrt(np.maximum(again.sum(axis=1), 1.0))
    seen = seen / np.sqrt(max(float(died.sum()), 1.0))
    slack = 1e-9 * max(float(np.abs(score).max()), 1e-12)
    above, ties = (score > seen + slack).sum(), (np.abs(score - seen) <= slack).sum()
    return {
        "more": float((above + 0.5 * ties + 0.5) / (draws + 1)),
        "spread": float(weight @ SPREADS),
        "draws": draws,
        "apart": True,
    }


def _unexposed(design):
    """Deaths, eggs, dose, columns, share of death without the dose, and batch of the rows whose dose is known."""
    use = design.known
    died, eggs, columns = design.died[use], design.at_risk[use], nuisance(design)[use]
    _, _, share = fit_many(died, eggs, columns, design.offset[use], ridge=1e-2, tolerance=1e-7)
    _, batch = np.unique(design.batch[use], return_inverse=True)
    return died, eggs, design.dose[use] / design.step, columns, np.clip(share[0], 1e-9, 1 - 1e-9), batch


def foresee(design, *, ratios=(2.0, 4.0, 10.0), seasons: int = 1000, seed: int = 1) -> dict:
    """What these records could have shown, before the answer: share of redrawn seasons with a clear sign, by ratio.

    Parameters
    ----------
    design : Design
    ratios : tuple of float
        Hazard ratios at the usual dose.
    seasons, seed : int

    Returns
    -------
    dict
        As `power.power`, and why: what it is that they lack ("few_exposed", "levels", "few_deaths", "few_batches"; ""
        where a doubling would have shown), with left (share of what the dose could tell that the levels of machines,
        keepers and seasons leave).
    """
    limit, ratios = rules(), np.asarray(ratios, float)
    died, eggs, size, columns, share, batch = _unexposed(design)
    cells = design.cells()[design.known]
    weight = eggs * share * (1 - share)
    dose, before = projected(size, columns, weight), projected(size, cells[:, cells.any(axis=0)], weight)
    left = float((weight * dose**2).sum() / max((weight * before**2).sum(), 1e-12))
    rng = np.random.default_rng(seed)
    chances = spread_weights(died, eggs, share, batch)

    def scores(ratio):
        spread = rng.choice(SPREADS, size=seasons, p=chances)[:, None]
        raised = -np.expm1(np.log1p(-share) * ratio**size)
        again = deaths(eggs, np.clip(raised, 1e-9, 1 - 1e-9), batch, spread, rng)
        return (again - eggs * share) @ dose / np.sqrt(np.maximum(again.sum(axis=1), 1.0))

    limit_score = np.quantile(scores(1.0), 1 - limit["redrawn_chance"])
    shown = np.maximum.accumulate([float((scores(ratio) > limit_score + 1e-9).mean()) for ratio in ratios])
    if left < 1e-6:
        shown = np.zeros(len(ratios))
    why = "" if shown[0] >= limit["detect_power"] else _lacking(design, left, float((eggs * share).sum()))
    return {
        "ratios": ratios,
        "power": shown,
        "doubling": float(shown[0]),
        "detectable": ratio_for(ratios, shown, limit["detect_power"], seasons) if shown.any() else np.inf,
        "spread": float(chances @ SPREADS),
        "why": why,
        "left": left,
    }


def _lacking(design, left: float, dead: float) -> str:
    """What the records lack most."""
    if left < 0.25:
        return "levels"
    if len(design.exposed_batches) <= 3:
        return "few_exposed"
    return "few_deaths" if dead < 3 * len(design.known_batches) else "few_batches"


def nuisance(design) -> np.ndarray:
    """Columns of what may differ without any exposure (rows, terms): cells, machines, seasons, covariates."""
    blocks = [design.cells(), design.extra]
    rows = design.rows
    for names in (("keeper", "incubator"), ("keeper", "season")):
        there = [rows[name].astype(object).where(rows[name].notna(), "").astype(str) for name in names if name in rows]
        if there:
            label = there[0] if len(there) == 1 else there[0] + "|" + there[1]
            codes, levels = label.factorize()
            blocks.append(np.eye(len(levels))[codes][:, 1:])
    drift = _drift(design)
    blocks += [drift] if drift is not None else []
    return np.column_stack([blocks[0], independent(blocks[0], np.hstack(blocks[1:]))])


def _drift(design):
    """Time since the first batch of its season (rows, 1), standardised; None where few batches could not carry it."""
    rows = design.rows
    if "start" not in rows or len(design.known_batches) < DRIFT_BATCHES or rows["start"].isna().any():
        return None
    days = rows["start"].to_numpy("datetime64[s]").astype("int64") / 86_400
    batch = np.array([days[design.batch == code].min() for code in range(len(design.batches))])[design.batch]
    season = rows["season"].astype(object).where(rows["season"].notna(), 0).to_numpy() if "season" in rows else 0
    first = {label: batch[season == label].min() for label in np.unique(season)} if "season" in rows else {}
    since = batch - np.array([first[label] for label in season]) if first else batch - batch.min()
    return ((since - since.mean()) / since.std())[:, None] if since.std() > 0 else None


def projected(dose, columns, weight) -> np.ndarray:
    """What of the dose (rows,) the columns (rows, terms) do not give, by weighted least squares."""
    root = np.sqrt(np.maximum(weight, 1e-12))
    return dose - columns @ np.linalg.lstsq(columns * root[:, None], dose * root, rcond=None)[0]


def spread_weights(died, eggs, share, batch) -> np.ndarray:
    """Weight of each of `SPREADS`: likelihood of the batches without any effect, times the stated prior."""
    limit = rules()
    eta = np.log(-np.log1p(-share))[None, :] - SPREADS[:, None] ** 2 / 2
    log_p = bayes.log_likelihood(died, eggs, eta, SPREADS, batch)
    log_p = log_p - 0.5 * (np.log(SPREADS / limit["redrawn_spread"]) / limit["redrawn_log_sd"]) ** 2
    weight = np.exp(log_p - log_p.max())
    return weight / weight.sum()


def deaths(eggs, share, batch, spread, rng) -> np.ndarray:
    """Deaths (draws, rows) of batches drawn anew; half of a batch's own variance is shared by its windows."""
    draws, root = len(spread), np.sqrt(0.5)
    shared = rng.standard_normal((draws, batch.max() + 1))[:, batch]
    alone = np.bincount(batch)[batch] == 1
    own = rng.standard_normal((draws, len(eggs)))
    effect = spread * np.where(alone, shared, root * shared + root * own) - spread**2 / 2
    hazard = np.exp(np.minimum(np.log(-np.log1p(-share)) + effect, 3.0))
    return rng.binomial(np.round(eggs).astype(int), -np.expm1(-hazard)).astype(float)
