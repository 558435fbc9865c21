"""Power of the verdict beside other methods: 20 batches of 48 eggs, 5 exposed, 2 % baseline, hazard x 3.

Run: python tests/benchmarks/relate_power.py [seasons]
False alarms are given at sd 0.4 and 0.8; a method counts as valid when neither is above 5.5 %.
"""

from __future__ import annotations

import sys
import warnings

import numpy as np
import pandas as pd
from relate_twin import GridBayes, draw, permutation_share, seasons_verdict, weighted_interval
from scipy.stats import norm, t, ttest_ind

from hatchkit.relate.cloglog import dispersion, fit_many

BATCHES, EXPOSED, EGGS, BASE = 20, 5, 48, 0.02


def methods(died, hit, grid):
    """Which seasons each method calls harmed (arrays of bool by name)."""
    more, _ = permutation_share(died, EGGS, hit)
    _, _, _, _, clear = seasons_verdict(died, EGGS, hit, grid)
    finite = (died[:, hit].sum(1) > 0) & (died[:, ~hit].sum(1) > 0)
    at_risk = np.full(BATCHES, float(EGGS))
    columns = np.column_stack([hit.astype(float), np.ones(BATCHES)])
    coef, covariance, share = fit_many(died, at_risk, columns, ridge=1e-6)
    share = np.clip(share, 1e-12, 1 - 1e-12)
    phi = dispersion(died, at_risk, share, BATCHES - 2)
    z = coef[:, 0] / np.sqrt(covariance[:, 0, 0])
    freedom = BATCHES - 2
    weighted = np.full(len(died), -np.inf)
    weighted[finite] = weighted_interval(died[finite], EGGS, hit)[1]
    _, bayes_low, _, _ = grid.interval(died, hit)
    rate = np.arcsin(np.sqrt(died / (EGGS + 1))) + np.arcsin(np.sqrt((died + 1) / (EGGS + 1)))
    # Seasons in which all rates of a group are equal make scipy warn of lost precision; they count as no sign.
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", RuntimeWarning)
        freeman = ttest_ind(rate[:, hit], rate[:, ~hit], axis=1)
    up = freeman.statistic > 0
    return {
        "verdict: clear sign": clear,
        "permutation, one-sided": more <= 0.05,
        "permutation, half of two-sided": more <= 0.025,
        "quasi-binomial phi as is, t": finite & (z > t.ppf(0.975, freedom) * np.sqrt(phi)),
        "quasi-binomial phi >= 1, t": finite & (z > t.ppf(0.975, freedom) * np.sqrt(np.maximum(phi, 1))),
        "weighted quasi-binomial, t": weighted > 0,
        "Bayes, interval above 1": bayes_low > 0,
        "t-test of Freeman-Tukey rates": up & (freeman.pvalue <= 0.05),
        "plain GLM, Wald z": finite & (z > norm.ppf(0.975)),
    }


def main(seasons=6000):
    rng = np.random.default_rng(77)
    grid = GridBayes(EGGS)
    cases = {"false alarm sd 0.4": (0.4, 1.0), "false alarm sd 0.8": (0.8, 1.0), "power sd 0.4": (0.4, 3.0)}
    table = {}
    for name, (spread, ratio) in cases.items():
        died, _, hit = draw(rng, seasons, BATCHES, EXPOSED, EGGS, BASE, spread, ratio)
        table[name] = {key: value.mean() for key, value in methods(died, hit, grid).items()}
    table = pd.DataFrame(table)
    table["valid"] = (table.iloc[:, :2] <= 0.055).all(axis=1)
    best = table.loc[table["valid"] & (table.index != "verdict: clear sign"), "power sd 0.4"]
    print(f"{seasons} seasons; signs of harm only (the upper side)")
    print(table.round(3).to_string())
    own = table.loc["verdict: clear sign", "power sd 0.4"]
    print(f"best valid: {best.idxmax()} {best.max():.3f}; the verdict {own:.3f}, {own / best.max():.2f} of it")


if __name__ == "__main__":
    main(*(int(part) for part in sys.argv[1:]))
