"""The best reachable guess in world 'second': the posterior over the causes, given its own laws.

The oracle knows the season's background, fertility and the keeper's habits (a program must learn them from the sister
batches), but not the batch's frailty, the severity, nor the kernel: these are averaged over draws from their laws. The
kernels of a cause do not depend on the season, so a bank of them is drawn once.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from scipy.special import logsumexp

from . import habits as keeping
from . import kernels, second, surroundings, words
from .codes import BIRDS, CAUSES, SEVERITY

EVERYTHING = ("counts", "surroundings", "signs", "remark", "hatch")


@lru_cache(maxsize=4)
def bank(draws):
    """Kernels and ages of the hurt per cause: dict code -> (array (draws, 25), array (draws,))."""
    draw = np.random.default_rng([4, draws])
    out = {}
    for code in CAUSES:
        if code == "infertile":
            continue
        ages = [kernels.event_age(code, draw) for _ in range(draws)]
        shapes = np.array([kernels.kernel(code, draw, age) for age in ages])
        out[code] = shapes, np.array([np.nan if age is None else age for age in ages])
    return out


def _ends(base, extra, barren, fertile):
    """Chances of the 27 ends, shape (draws, 27), for many draws at once (as kernels.state_probabilities)."""
    order = kernels.ORDER
    total = base + extra
    before = np.cumsum(total[:, order], axis=1)
    start = np.exp(-np.hstack([np.zeros((len(total), 1)), before[:, :-1]]))
    ends = np.empty((len(total), len(kernels.STATES) + 2))
    living = fertile * (1 - barren)
    ends[:, order] = living[:, None] * start * -np.expm1(-total[:, order])
    ends[:, keeping.INFERTILE] = 1 - living
    ends[:, keeping.SOUND] = living * np.exp(-total.sum(axis=1))
    return ends


def _batch_draws(truth, record, draws, draw):
    """Frailties, fertility and excess of a batch as a program could not know them."""
    season = truth["season"]
    early, late = draw.normal(0, season["early_sd"], draws), draw.normal(0, season["late_sd"], draws)
    base = second.batch_background(season, record["found"], early[:, None], late[:, None])
    odds = np.log(season["fertile"] / (1 - season["fertile"])) + draw.normal(0, season["fertile_sd"], draws)
    bands = np.array(list(SEVERITY.values()))[draw.integers(len(SEVERITY), size=draws)]
    return base, 1 / (1 + np.exp(-odds)), draw.uniform(bands[:, 0], bands[:, 1])


def _count_terms(record, code, base, fertile, excess, table, known_age):
    """Log likelihood of the written counts for each draw, with the log weight of its kernel."""
    strength = np.zeros(len(base)) if code is None else second.cause_strength(np.exp(-base.sum(axis=1)), excess)
    weight = np.zeros(len(base))
    if code is None or code == "infertile":
        extra, barren = 0.0, -np.expm1(-strength)
    else:
        shapes, ages = bank(len(base))[code]
        extra, barren = strength[:, None] * shapes, np.zeros(len(base))
        if known_age is not None and np.isfinite(ages).all():
            weight = -0.5 * ((ages - known_age) / 0.7) ** 2
    seen = _ends(base, extra, barren, fertile) @ table
    seen = 0.995 * seen + 0.005 / seen.shape[1]  # room for slips of the pen
    return np.log(seen) @ record["seen"], weight - logsumexp(weight)


def _hatch_terms(record, code, found, excess, bird, shown, draw):
    """Log density of first and last hatch for each draw (normal approximation to the middle and the range)."""
    first, last, n = record["hatch"]
    draws = len(excess)
    offset = np.full(draws, found["offset"])
    cold = np.zeros(draws)
    if "log" not in shown:
        guilty = {"warm_throughout": (0.5, 1.4), "cool_throughout": (-1.6, -0.6)}.get(code)
        offset = draw.uniform(*guilty, draws) if guilty else draw.normal(0, 0.15, draws)
        if code == "cold_spell":
            cold = (
                draw.normal(22.5, 5, draws) / 17.5 * np.exp(draw.normal(2.8, 0.4, draws)) * draw.uniform(0.5, 1, draws)
            )
    elif found["cold"]:
        cold = max(0.0, 37.5 - found["cold"][1]) / 17.5 * found["cold"][2] * draw.uniform(0.5, 1.0, draws)
    stored = np.exp(found["log_stored"]) if "log_stored" in shown else 9.0 if code != "long_storage" else 18.0
    mean = 0.9 * (stored - 5) - 22 * offset * bird.days / 21 + cold + draw.normal(0, 4, draws)
    mean += draw.uniform(0, 12, draws) if code == "cool_throughout" else 0.0
    uneven = draw.uniform(1.1, 3.0, draws) if code == "uneven_heat" else draw.gamma(2.0, 0.18, draws)
    if "spread" in shown:
        uneven = np.full(draws, found["spread"])
    sd = draw.uniform(5, 9, draws) * (1 + 0.5 * uneven)
    reach = 2 * np.sqrt(2 * np.log(max(n, 2))) * 0.85  # rough mean range of n normals, in standard deviations
    middle, width = (first + last) / 2, last - first
    return (
        -0.5 * ((middle - mean) / (0.42 * sd)) ** 2
        - np.log(0.42 * sd)
        - 0.5 * ((width - reach * sd) / (0.75 * sd)) ** 2
        - np.log(0.75 * sd)
    )


def _sign_terms(record, code, excess, habits):
    """Log chance of the signs noted for each draw."""
    strength = np.clip(0.35 + 1.2 * excess, 0, 1)[:, None]
    chance = np.clip(words.sign_chances(code, strength, habits["false_sign"]), 1e-6, 1 - 1e-6)
    return np.log(np.where(record["signs"], chance, 1 - chance)).sum(axis=1) * np.ones(len(excess))


def oracle(truth, batch=None, use=EVERYTHING, draws=200, include_none=False):
    """Posterior over the causes of one batch's loss, prior uniform, under the world that made it.

    Parameters
    ----------
    truth : a season of world "second"
    batch : name; the hit batch (the first one of several) when None
    use : which records to weigh: "counts", "surroundings" (sheet columns and log), "signs", "remark", "hatch"
    draws : draws of the unknowns per cause
    include_none : also weigh "no cause", under the key None

    Returns
    -------
    dict code -> probability, largest first

    Raises
    ------
    ValueError
        For a season of another world, or one without a hit batch when none is named.
    """
    if truth["world"] != "second":
        raise ValueError("the oracle knows world 'second' only")
    if batch is None and not truth["batches_hit"]:
        raise ValueError("no hit batch: name one")
    name = truth["batches_hit"][0] if batch is None else str(batch)
    record = next(b for b in truth["batches"] if b["batch"] == name)
    bird, season = BIRDS[truth["species"]], truth["season"]
    habits, found, shown = season["habits"], record["found"], record["shown"]
    draw = np.random.default_rng([5, truth["seed"]])
    base, fertile, excess = _batch_draws(truth, record, draws, draw)
    table = keeping.channel(bird, record["looks"], habits)
    codes = [*CAUSES, None] if include_none else list(CAUSES)
    score = []
    for code in codes:
        spell = {"heat_spell": "hot", "cold_spell": "cold"}.get(code)
        seen_spell = spell and "surroundings" in use and "log" in shown and found[spell]
        known = found[spell][0] if seen_spell else None
        counts, weight = _count_terms(record, code, base, fertile, excess, table, known)
        terms = weight + (counts if "counts" in use else 0.0)
        if "signs" in use and habits["signs"]:
            terms = terms + _sign_terms(record, code, excess, habits)
        if "hatch" in use and record["hatch"]:
            terms = terms + _hatch_terms(record, code, found, excess, bird, shown, draw)
        total = float(logsumexp(terms))
        if "surroundings" in use:
            total += surroundings.log_density(found, code, bird, season["home"], shown)
        if "remark" in use:
            total += words.remark_log_chance(record["remark"], code, habits)
        score.append(total)
    chance = np.exp(np.array(score) - logsumexp(score))
    order = np.argsort(-chance)
    return {codes[i]: float(chance[i]) for i in order}
