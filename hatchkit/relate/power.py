"""What harm could a season of this size have shown? Simulated with its own batches, windows and doses."""

import numpy as np
from scipy.special import ndtri, stdtrit

from hatchkit.relate.cloglog import dispersion, fit_many
from hatchkit.relate.permutation import intra_batch_correlation, standardised
from hatchkit.relate.verdict import rules

#: Hazard ratios at which power is simulated; between them it is interpolated.
RATIOS = (2.0, 4.0, 10.0)


def power(design, share, spread, dealt, *, seasons=250, seed=1) -> dict:
    """Share of simulated seasons that would give a clear sign, by hazard ratio.

    Parameters
    ----------
    design : Design
    share : array (rows,)
        Baseline probability of death per row.
    spread : float
        Standard deviation between batches on the log hazard; at least the rule's planning_spread is taken.
    dealt : array (arrangements, batches, windows)
        Centred doses under the arrangements of the test, the observed one first.
    seasons, seed : int

    Returns
    -------
    dict
        ratios, power (one per ratio), doubling (power at a ratio of 2), detectable (ratio with the
        rule's power; inf if beyond 30), spread (the one taken).

    The lower bound of the verdict is stood in for by the quasi-binomial one with phi >= 1, which is quicker.
    What it foretells is on the careful side: 0.42 where 0.52 came true with 8 batches and a hazard x 4, 0.37
    where 0.43 did with 20 and a doubling (tests/benchmarks/relate_foresight.py).
    """
    limit = rules()
    spread = max(float(spread) if np.isfinite(spread) else 0.0, limit["planning_spread"])
    ratios = np.array(RATIOS)
    if len(dealt) < 1 / limit["clear_chance"]:
        none = np.zeros(len(ratios))
        return {"ratios": ratios, "power": none, "doubling": 0.0, "detectable": np.inf, "spread": spread}
    rng = np.random.default_rng(seed)
    died = simulated_deaths(design, share, spread, np.repeat(ratios, seasons), rng)
    shown = np.maximum.accumulate(_clear(design, died, dealt).reshape(len(ratios), seasons).mean(axis=1))
    return {
        "ratios": ratios,
        "power": shown,
        "doubling": float(shown[0]),
        "detectable": ratio_for(ratios, shown, limit["detect_power"], seasons),
        "spread": spread,
    }


def simulated_deaths(design, share, spread, ratio, rng):
    """Deaths (seasons, rows) with the given hazard ratio at the usual dose and a batch effect."""
    base = np.log(-np.log1p(-np.clip(share, 1e-9, 1 - 1e-9)))
    dose = np.where(design.known, design.dose, 0.0) / design.step
    # The baseline is the mean over batches, so the spread must not raise it.
    effects = spread * rng.standard_normal((len(ratio), len(design.batches))) - spread**2 / 2
    eta = base + np.log(ratio)[:, None] * dose + effects[:, design.batch]
    return rng.binomial(np.round(design.at_risk).astype(int), -np.expm1(-np.exp(np.minimum(eta, 3.0)))).astype(float)


def _clear(design, died, dealt):
    """Which seasons give a clear sign (permutation share and interval both)."""
    limit = rules()
    cells = design.cells()
    eggs = design.at_risk
    share = ((died @ cells) / (eggs @ cells))[:, design.cell]
    freedom = max(len(eggs) - cells.shape[1], 1)
    rho = intra_batch_correlation(died, eggs, share, freedom)
    residual = standardised(died, eggs, share, rho[:, None])
    grid = np.zeros((len(died), len(design.batches), len(design.windows)))
    grid[:, design.batch, design.window] = residual
    few = dealt[np.unique(np.linspace(0, len(dealt) - 1, min(len(dealt), 400)).astype(int))]
    score = grid.reshape(len(died), -1) @ few.reshape(len(few), -1).T
    rare = (score >= score[:, :1] - 1e-9).mean(axis=1) <= limit["clear_chance"]
    clear = np.zeros(len(died), bool)
    if rare.any():
        use = design.known
        columns = np.column_stack([design.dose[use] / design.step, cells[use]])
        coef, covariance, fitted = fit_many(
            died[rare][:, use], eggs[use], columns, ridge=1e-3, rounds=8, tolerance=1e-3
        )
        freedom = max(use.sum() - columns.shape[1], 1)
        phi = np.maximum(1.0, dispersion(died[rare][:, use], eggs[use], np.clip(fitted, 1e-12, 1 - 1e-12), freedom))
        reach = stdtrit(max(len(design.known_batches) - 2, 1), 1 - limit["clear_chance"])
        clear[rare] = coef[:, 0] > reach * np.sqrt(covariance[:, 0, 0] * phi)
    return clear


def ratio_for(ratios, shown, wanted, seasons):
    """Hazard ratio with the wanted power, inf beyond 30: straight line in probit of power against log ratio."""
    edge = 0.5 / seasons
    x = np.r_[0.0, np.log(ratios)]
    z = ndtri(np.r_[rules()["clear_chance"] / 2, np.clip(shown, edge, 1 - edge)])
    reached = np.flatnonzero(shown >= wanted)
    # Between the two ratios around the wanted power; beyond the last one the line goes on.
    left = reached[0] if len(reached) else len(ratios) - 1
    rise = z[left + 1] - z[left]
    if rise <= 0:
        return np.inf
    found = float(np.exp(x[left] + (x[left + 1] - x[left]) * (ndtri(wanted) - z[left]) / rise))
    return found if len(reached) or found <= 30 else np.inf
