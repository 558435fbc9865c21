"""Fates of the sixth world's eggs and the cells of a record that a keeper puts them in; author and oracle share them.

An egg is infertile, dies in one of 23 slots (days 1 to 21 of the hen, in the broken shell, put down as a chick) or is a
good chick. Whatever comes first counts. The two peaks of ordinary deaths, days 2 to 4 and 18 to 20, are the old and
well-known course (Payne 1919, Romanoff: from memory); how much batches differ beyond chance is this world's own choice.
"""

from __future__ import annotations

import numpy as np

from .sixth_causes import CULL, PIP, TABLE

SLOTS = np.arange(1, CULL + 1)
DEAD = slice(1, PIP)  # fates of a dead embryo in a whole shell, days 1 to 21
GOOD = CULL + 1  # fate numbers: 0 infertile, 1 to 23 the slots, 24 a good chick
MISSED = 0.04  # an egg that ought to come out is left in at one look
LOOKS_CLEAR = {1: 1.0, 2: 0.8, 3: 0.3}  # dead that early it is taken for a clear
OPENED_CLEAR = {1: 0.5, 2: 0.15}  # the same in the opened egg
USUAL_ROT = 0.02
SLIP = 0.004  # the oracle's floor for a cell, for miscounts
BATCHES_ALIKE = 28.0  # beta: how alike the batches of one keeper are

USUAL_HUMPS = np.array([[2.8, 1.3], [11.5, 4.0], [19.0, 1.4], [PIP, 0.4], [CULL, 0.4]])
USUAL_PARTS = np.array([0.31, 0.12, 0.37, 0.12, 0.08])
BIRDS = {  # fertility, share of live embryos lost in an ordinary batch: from memory of small flocks
    "chicken": (0.88, 0.15),
    "duck": (0.85, 0.21),
    "quail": (0.82, 0.20),
    "turkey": (0.85, 0.19),
    "goose": (0.74, 0.25),
}


def hump(middle, spread):
    """Discrete normal hump over the slots, stages kept apart; shape (..., 23), each row adding up to 1."""
    middle, spread = np.asarray(middle, float)[..., None], np.asarray(spread, float)[..., None]
    height = np.exp(-0.5 * ((SLOTS - middle) / spread) ** 2)
    in_shell = middle < PIP - 0.5
    height = np.where(in_shell & (SLOTS >= PIP), 0.0, height)
    height = np.where(~in_shell & (np.abs(SLOTS - middle) > 0.5), 0.0, height)
    return height / height.sum(-1, keepdims=True)


def draw_keepers(rng, size, fertile, lost):
    """Levels of `size` keepers about those of their bird: fertility, usual loss, parts of it by stage."""
    return {
        "fertile": rng.beta(22 * fertile, 22 * (1 - fertile), size),
        "lost": rng.beta(22 * lost, 22 * (1 - lost), size),
        "parts": rng.dirichlet(40 * USUAL_PARTS, size),
    }


def draw_usual(rng, keeper):
    """One batch of each keeper: (fertility, ordinary deaths in each slot); shapes (n,), (n, 23)."""
    fertile = rng.beta(BATCHES_ALIKE * keeper["fertile"], BATCHES_ALIKE * (1 - keeper["fertile"]) + 0.05)
    lost = rng.beta(BATCHES_ALIKE * keeper["lost"] + 0.05, BATCHES_ALIKE * (1 - keeper["lost"]))
    parts = rng.gamma(30 * keeper["parts"] + 0.05)
    parts /= parts.sum(-1, keepdims=True)
    stages = hump(USUAL_HUMPS[:, 0], USUAL_HUMPS[:, 1])
    return fertile, lost[:, None] * (parts @ stages)


def draw_deaths(rng, name, size, start=None):
    """Ages at which a cause kills, in each slot, and the day it struck; shapes (size, 23), (size,).

    `start` is the day of a spell where a log shows it; it is drawn otherwise. Rows add up to 1.
    """
    cause = TABLE[name]
    if not (cause.humps or cause.spell):
        return np.zeros((size, CULL)), np.zeros(size)
    struck = rng.uniform(0.5, 20.0, size) if start is None else np.full(size, float(start))
    if cause.spell:
        after = np.clip(struck + rng.gamma(2.0, 0.5, size), 1, 21)
        at_once = rng.beta(7, 3, size)[:, None]
        deaths = at_once * hump(after, np.full(size, 1.1))
        later = hump(np.maximum(after, 19.3), np.full(size, 1.4))
        chicks = hump(np.full(size, PIP), np.full(size, 0.4))
        return deaths + (1 - at_once) * (0.75 * later + 0.25 * chicks), struck
    middles, spreads, weights = np.array(cause.humps, float).T
    parts = rng.dirichlet(14 * weights / weights.sum(), size)
    deaths = np.zeros((size, CULL))
    for place, (middle, spread) in enumerate(zip(middles, spreads, strict=True)):
        if middle >= PIP:
            at = np.full(size, middle)
        elif cause.any_age and middle == 0:
            at = struck
        else:
            at = np.clip(middle + rng.normal(0, 0.25 * spread + 0.2, size), 1, 21)
        deaths += parts[:, [place]] * hump(at, np.full(size, spread))
    return deaths, struck


def fates(fertile, usual, causes):
    """Chance of each fate; shape (n, 25). `causes` holds (name, strength (n,), deaths (n, 23))."""
    alive = 1 - np.cumsum(usual, -1)
    for name, strength, deaths in causes:
        part = TABLE[name].clear
        fertile = fertile * (1 - strength * part)
        alive = alive * (1 - strength[:, None] * (1 - part) * np.cumsum(deaths, -1))
    before = np.concatenate([np.ones((len(alive), 1)), alive[:, :-1]], -1)
    out = np.empty((len(alive), GOOD + 1))
    out[:, 0] = 1 - fertile
    out[:, 1:GOOD] = fertile[:, None] * (before - alive)
    out[:, GOOD] = fertile * alive[:, -1]
    return np.clip(out, 0, None)


def cells_of(looks, opens, names_pipped):
    """Names of the cells that a record of this kind has, in order, the rotten last."""
    names = [f"{what}@{place}" for place in range(len(looks)) for what in ("clear", "dead")]
    names += ["infertile", "early", "mid", "late"] if opens else ["shell"]
    names += ["pipped"] if names_pipped else []
    return [*names, "culled", "good", "rotten"]


def seen_as(looks, opens, names_pipped):
    """Chance that a fate is written into a cell; shape (25, cells), rows adding up to 1. `looks`: hen's days."""
    names = cells_of(looks, opens, names_pipped)
    chance = np.zeros((GOOD + 1, len(names)))
    for fate in range(PIP):
        left = 1.0
        for place, day in enumerate(looks):
            if fate > 0 and fate > day - 0.5:
                continue
            clear = 1.0 if fate == 0 else LOOKS_CLEAR.get(fate, 0.0)
            out = left * (1 - MISSED)
            chance[fate, names.index(f"clear@{place}")] += out * clear
            chance[fate, names.index(f"dead@{place}")] += out * (1 - clear)
            left -= out
        for name, share in _at_the_end(fate, opens).items():
            chance[fate, names.index(name)] += left * share
    chance[PIP, names.index("pipped" if names_pipped else ("late" if opens else "shell"))] = 1.0
    chance[CULL, names.index("culled")] = 1.0
    chance[GOOD, names.index("good")] = 1.0
    return chance


def _at_the_end(fate, opens):
    """What an egg left until the end is found to be: {cell: share}."""
    if not opens:
        return {"shell": 1.0}
    if fate == 0:
        return {"infertile": 1.0}
    if fate > 14:
        return {"late": 1.0}
    if fate > 7:
        return {"mid": 1.0}
    clear = OPENED_CLEAR.get(fate, 0.0)
    return {"infertile": clear, "early": 1 - clear}


def in_cells(chances, seen, rot):
    """Chance of each cell; shape (n, cells). `rot` (n,): share of the dead in whole shells that rots."""
    kept = chances.copy()
    kept[:, DEAD] *= 1 - rot[:, None]
    out = kept @ seen
    out[:, -1] = rot * chances[:, DEAD].sum(-1)
    return out


def log_chance(counts, chances):
    """Log of the chance of counts (cells,) under each row of `chances` (n, cells), up to a constant."""
    floored = (1 - SLIP) * chances + SLIP / chances.shape[-1]
    return np.log(floored) @ np.asarray(counts, float)
