"""How often the bands of ages at death hold the truth, by trial on seasons whose truth is known."""

import numpy as np
import pandas as pd

from hatchkit.losses.death_age import fit_group

LOOKS = (7.0, 14.0, 18.0, 21.0)
#: Share of the living that die before each look in the middle batch: usual losses, and heavy ones.
USUAL, HEAVY = (0.03, 0.01, 0.01, 0.04), (0.08, 0.03, 0.03, 0.10)


def truth(deaths, sd):
    """Loss by each look and daily risk before it, over all batches that could be."""
    nodes, weight = np.polynomial.hermite_e.hermegauss(60)
    alive = np.exp(np.cumsum(np.log1p(-np.array(deaths)))[:, None] * np.exp(sd * nodes)) @ (weight / weight.sum())
    before = np.append(1.0, alive[:-1])
    return 1 - alive, 1 - (alive / before) ** (1 / np.diff((0.0, *LOOKS)))


def season(random, deaths, *, batches, eggs, sd):
    """Eggs by batch and age interval: cloglog-normal between batches, all looked at on the same days."""
    rows, spread = [], np.exp(sd * random.standard_normal(batches))
    for batch in range(batches):
        left, before = eggs, 0.0
        for look, share in zip(LOOKS, deaths, strict=True):
            died = random.binomial(left, 1 - (1 - share) ** spread[batch])
            rows.append((str(batch), "dead", before, look, float(died)))
            left, before = left - died, look
        rows.append((str(batch), "hatched", LOOKS[-1], np.inf, float(left)))
    table = pd.DataFrame(rows, columns=["batch", "fate", "after_day", "by_day", "eggs"])
    return table[table["eggs"] > 0]


def cover(random, deaths, *, batches, eggs, sd, seasons, draws=200):
    """Share of seasons whose bands hold the loss by each look, and the risk before it, as two arrays."""
    loss, risk = truth(deaths, sd)
    marks = pd.Series(LOOKS, index=["candle1", "candle2", "transfer", "hatch"])
    held, kept = np.zeros(len(LOOKS)), np.zeros(len(LOOKS))
    for _ in range(seasons):
        part = season(random, deaths, batches=batches, eggs=eggs, sd=sd)
        fit = fit_group(part, marks, draws, np.random.default_rng(1), 0.95)
        at = np.searchsorted(fit["curve"]["day"], LOOKS, side="right") - 1
        low, high = (fit["curve"][name][at] for name in ("band_low", "band_high"))
        held += (low <= loss) & (loss <= high)
        kept += (fit["hazard"]["band_low"] <= risk) & (risk <= fit["hazard"]["band_high"])
    return held / seasons, kept / seasons
