"""What becomes of the eggs of a batch in the fifth world, and as what its keeper counts them.

Eggs have a frailty of their own (gamma, integrated out), hens have one for their eggs and one for their fertility, and
so has every batch. An egg is laid by a hen drawn at random, so that given hens and batch the counts are multinomial:
the world draws from the very probabilities that the oracle reckons with.
"""

from __future__ import annotations

import numpy as np
from scipy.special import expit, ndtr

from worlds.fifth_kernels import BINS, EDGES, MIDDLES, ORDINARY

CELLS = (
    "clear1",
    "dead1",
    "clear2",
    "dead2",
    "clear3",
    "dead3",
    "rotten",
    "cracked",
    "good",
    "culled",
    "pipped",
    "open_infertile",
    "open_early",
    "open_mid",
    "open_late",
    "open_wrong",
    "unopened",
    "opened1_dead",
    "untold",
)
CELL = {name: place for place, name in enumerate(CELLS)}
PHASES = np.array([ORDINARY[name](EDGES) for name in ORDINARY])
MIDDLE_OF_LEVEL = np.log([0.075, 0.018, 0.07, 0.028, 0.02])
SPREAD_OF_LEVEL = np.array([0.4, 0.4, 0.4, 0.4, 0.5])
OF_THE_BATCH = np.array([0.3, 0.3, 0.3, 0.35, 0.4])
FRAIL = 0.8
SPECIES_FERTILE = {"chicken": 2.1, "duck": 1.9, "goose": 1.2, "turkey": 1.6, "quail": 1.8}


def flock_levels(draw, n, species, age_weeks, hens):
    """Levels of `n` worlds' flock: logit of fertility (n), log of ordinary harm (n x 5), hens (n x hens each)."""
    old, young = max(0.0, age_weeks - 45), max(0.0, 28 - age_weeks)
    middle = MIDDLE_OF_LEVEL + np.array([0.008 * old + 0.03 * young, 0, 0.006 * old, 0, 0])
    return {
        "fertile": draw.normal(SPECIES_FERTILE[species] - 0.012 * old, 0.5, size=n),
        "harm": draw.normal(middle, SPREAD_OF_LEVEL, size=(n, 5)),
        "hen_fertile": draw.normal(0, 0.7, size=(n, hens)),
        "hen_frail": draw.normal(0, 0.45, size=(n, hens)),
        "lays": draw.dirichlet(np.full(hens, 4.0), size=n),
    }


def chosen(flock, rows):
    """The flocks of these worlds."""
    return {name: level[rows] for name, level in flock.items()}


def batch_levels(draw, flock, stored):
    """The flock's levels with the batch's own departures; days stored beyond a week cost a little everywhere."""
    n = len(flock["fertile"])
    harm = flock["harm"] + draw.normal(0, OF_THE_BATCH, size=(n, 5)) + draw.normal(0, 0.25, size=(n, 1))
    harm[:, 0] += 0.05 * np.clip(stored - 7, 0, 6)
    return {**flock, "fertile": flock["fertile"] + draw.normal(0, 0.35, size=n), "harm": harm}


def counting(habits, looks):
    """As what an egg is counted: ``dead`` BINS x cells, ``infertile`` and the other fates as one row each.

    Parameters
    ----------
    habits : dict acuity, opens, blur (days), opens_clears, tells_pipped, tells_culled, tells_wrong, untold
    looks : dict of look 1, 2, 3 -> age in days of 21; a look that was not held is absent
    """
    clear = np.append(expit((2.8 - MIDDLES) / 0.5), 0.97)
    left, told = np.ones(BINS + 1), np.zeros((BINS + 1, len(CELLS)))
    for look, at in sorted(looks.items()):
        seen = np.append(ndtr((at - 0.3 - MIDDLES) / 0.3), 1.0) * (habits["acuity"] if look < 3 else 0.9) * left
        if look == 1 and habits["opens_clears"]:
            truly = np.append(expit((0.8 - MIDDLES) / 0.3), 0.96)
            told[:, CELL["clear1"]] += seen * clear * truly
            told[:, CELL["opened1_dead"]] += seen * clear * (1 - truly)
        else:
            told[:, CELL[f"clear{look}"]] += seen * clear
        told[:, CELL[f"dead{look}"]] += seen * (1 - clear)
        left = left - seen
    opened, blur = habits["opens"] * left, habits["blur"]
    nothing = np.append(expit((0.9 - MIDDLES) / 0.3), 0.93)
    mid, late = (np.append(ndtr((MIDDLES - edge) / blur), 0.0) for edge in (7, 14))
    told[:, CELL["open_infertile"]] += opened * nothing
    told[:, CELL["open_early"]] += opened * (1 - nothing) * (1 - mid)
    told[:, CELL["open_mid"]] += opened * (1 - nothing) * (mid - late)
    told[:, CELL["open_late"]] += opened * (1 - nothing) * late
    told[:, CELL["unopened"]] += left - opened
    return {"dead": told[:-1], "infertile": told[-1], "merge": merged(habits)}


def merged(habits):
    """Matrix cells x cells that moves what the keeper doesn't tell apart to where it is counted."""
    matrix = np.eye(len(CELLS))

    def move(source, shares):
        matrix[CELL[source]] = 0
        for target, share in shares.items():
            matrix[CELL[source], CELL[target]] = share

    if not habits["tells_wrong"]:
        move("open_wrong", {"open_late": 1.0})
    if not habits["tells_pipped"]:
        move("pipped", {"open_late": habits["opens"], "unopened": 1 - habits["opens"]})
    if not habits["tells_culled"]:
        move("culled", {"good": 1.0})
    if habits["untold"]:
        for name in (f"clear{habits['untold']}", f"dead{habits['untold']}"):
            move(name, {"untold": 1.0})
    return matrix


def _apart(one, other):
    """Deaths by bin of two risks that run side by side, from the shares alive at the edges: they add up exactly."""
    mine = (one[..., :-1] - one[..., 1:]) * (other[..., :-1] + other[..., 1:]) / 2
    theirs = (other[..., :-1] - other[..., 1:]) * (one[..., :-1] + one[..., 1:]) / 2
    return mine, theirs


def fates(levels, harms):
    """Shares of the eggs: ``infertile``, ``pipped``, ``culled`` (n), ``dead`` list of (Cause or None, n x BINS)."""
    lays = levels["lays"]
    mean = lambda by_hen: np.einsum("nh,nh...->n...", lays, by_hen)  # noqa: E731
    fertile = expit(levels["fertile"][:, None] + levels["hen_fertile"])
    size = np.exp(levels["harm"][:, None, :] + levels["hen_frail"][:, :, None])
    alive = (1 + FRAIL * (size[:, :, :3] @ PHASES)) ** (-1 / FRAIL)
    pips, culls = np.clip(size[:, :, 3], 0, 0.5), np.clip(size[:, :, 4], 0, 0.5)
    planted, not_pipped, not_culled = np.ones_like(alive), 1 - pips, 1 - culls
    deaths = []
    for harm in harms:
        logit = np.log(harm["struck"] / (1 - harm["struck"]))
        struck = expit(1.06 * logit[:, None] + 0.8 * levels["hen_frail"])
        barren = struck * harm["infertile"][:, None]
        fertile = fertile * (1 - barren)
        struck = struck * (1 - harm["infertile"][:, None]) / (1 - barren)
        rest = 1 - harm["infertile"][:, None]
        own = 1 - struck[:, :, None] * (harm["cdf"] / rest)[:, None, :]
        pip, cull = (struck * harm[name][:, None] / rest / own[:, :, -1] for name in ("pipped", "culled"))
        not_pipped, not_culled = not_pipped * (1 - pip), not_culled * (1 - np.clip(cull / (1 - pip), 0, 1))
        mine, theirs = _apart(own, planted)
        share = np.divide(theirs, planted[..., :-1] - planted[..., 1:], out=np.zeros_like(theirs), where=theirs > 0)
        deaths = [(cause, dead * share) for cause, dead in deaths] + [(harm["cause"], mine)]
        planted = planted * own
    usual, _ = _apart(alive, planted)
    thinned = (alive[..., :-1] + alive[..., 1:]) / 2
    left = alive[:, :, -1] * planted[:, :, -1] * fertile
    return {
        "infertile": mean(1 - fertile),
        "dead": [(None, mean(fertile[:, :, None] * usual))]
        + [(cause, mean(fertile[:, :, None] * dead * thinned)) for cause, dead in deaths],
        "pipped": mean(left * (1 - not_pipped)),
        "culled": mean(left * not_pipped * (1 - not_culled)),
        "good": mean(left * not_pipped * not_culled),
    }


def chances(levels, harms, count):
    """Probability of each cell for one egg, n x cells."""
    end = fates(levels, harms)
    out = end["infertile"][:, None] * count["infertile"]
    for name in ("pipped", "culled", "good"):
        out[:, CELL[name]] += end[name]
    cracked = np.full(len(out), 0.004)
    for cause, dead in end["dead"]:
        rots, wrong = (cause.rotten, cause.wrong) if cause else (0.015, 0.12)
        rotten = np.where(MIDDLES < 16, rots, 0.3 * rots)
        told = (dead * (1 - rotten)) @ count["dead"]
        late = (dead * (1 - rotten) * (MIDDLES > 16.5)) @ count["dead"][:, CELL["open_late"]]
        told[:, CELL["open_late"]] -= wrong * late
        told[:, CELL["open_wrong"]] += wrong * late
        told[:, CELL["rotten"]] += dead @ rotten
        out += told
    for harm in harms:
        if "cracks" in harm["cause"].words:
            cracked = cracked + 0.2 * harm["cause"].words["cracks"] * harm["struck"]
    out *= (1 - cracked)[:, None]
    out[:, CELL["cracked"]] += cracked
    return np.clip(out @ count["merge"], 1e-9, None)


def log_likelihood(counts, chance):
    """Log multinomial probability of `counts` under each row of `chance`, up to a constant."""
    return np.log(chance) @ np.asarray(counts)
