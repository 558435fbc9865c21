"""World 'second': where on the calendar each cause kills.

A cause is a set of components; each puts mass on the chicken's days 1..21, on pipped dead, on culls, on eggs that look
clear. Shares between components are drawn from a Dirichlet per season, so no two seasons have the same kernel.

Sources for the shapes (trade facts, by the key of the project's fact sheet unless named)
-----------------------------------------------------------------------------------------
storage: early deaths (P26: 14.8 % early after 17 d; P38: 22 % first-period deaths); MSU's table names stored eggs under
clears. age of hens: early and late deaths both rise (PMC7921000 table 2: old flock early 7.9, mid 2.1, late 6.7, culls
2.4, contaminated 1.7 %). heat: P12, P11 (half lost after 4-12 h of 43.3 C; survivors with wiry down, cannot stand).
cold: P14, S27 (late embryos hurt, hatch late). turning: P46 (early 2.84 -> 14.31, late 3.57 -> 8.05 %), P72 (days 0-2
early, 3-8 late). humidity: S58, S68, P28. ventilation: S28 (days 6-16), S68 (late), PMC8703081. contamination: S28,
P54.
small end up: Bauer, Tullett & Wilson 1990 as told by trade pages: hatch 16-27 points lower, beak away from the air
cell.
fumes: S15, CIR1112 (between 12 and 96 h). altitude: Zhang et al. 2006, WCGALP 07.21 (late deaths at 2900 m).
vitamin lack: abstract of White Leghorn / Rhode Island Red deficiency trial (Wilson's group): days 8-14 are the
tell-tale,
riboflavin peaks late, then mid, then early; clubbed down. transfer jolt, late turning: S42, S69 ('excessive turning at
late stages', 'jarring'). navel infection: common practice, no source for numbers. Delays after a hurt: from memory.
"""

from __future__ import annotations

import numpy as np
from scipy import stats

from .codes import DAYS

# States of a fertile egg's end, in the order of every vector of this world.
STATES = tuple(f"d{d}" for d in range(1, DAYS + 1)) + ("mal", "rot", "pip", "cull")
N_DAYS = DAYS
MAL, ROT, PIP, CULL = DAYS, DAYS + 1, DAYS + 2, DAYS + 3

# The order of time in which an egg meets its states; rot and malposition are settled after day 17.
ORDER = [*range(17), ROT, 17, 18, 19, 20, MAL, PIP, CULL]

EDGES = np.arange(DAYS + 1)


def _normal(mean, sd):
    mass = np.diff(stats.norm.cdf(EDGES, mean, sd))
    return mass / max(mass.sum(), 1e-12)


def _after(start, mean, shape):
    """Deaths with a gamma delay after a hurt on day `start`; what falls beyond hatch dies on the last day."""
    cdf = stats.gamma.cdf(EDGES - start, shape, scale=mean / shape)
    mass = np.diff(cdf)
    mass[-1] += 1 - cdf[-1]
    return mass / mass.sum()


def _put(vector, mass, share):
    vector[:DAYS] += share * mass


# code: list of (component, concentration). Names are read by `kernel`.
PARTS = {
    "long_storage": (("first", 5), ("early", 4), ("late", 2), ("pip", 0.6), ("cull", 0.8)),
    "bad_storage": (("first", 6), ("early", 5), ("mid", 0.8), ("late", 1.2), ("pip", 0.4)),
    "old_flock": (("early", 4), ("mid", 1.0), ("late", 3.5), ("mal", 1.0), ("rot", 0.6), ("pip", 0.7), ("cull", 0.9)),
    "flock_health": (("early", 2.5), ("mid", 2.5), ("late", 3), ("rot", 0.7), ("pip", 0.8), ("cull", 1.3)),
    "heat_spell": (("event", 9), ("late", 1.2), ("mal", 0.4), ("pip", 0.8), ("cull", 1.0)),
    "cold_spell": (("event", 6), ("late", 3.5), ("pip", 1.2), ("cull", 0.8)),
    "warm_throughout": (("early", 2), ("mid", 2.2), ("late", 3.5), ("mal", 0.9), ("pip", 1.5), ("cull", 1.6)),
    "cool_throughout": (("early", 1.8), ("mid", 0.9), ("late", 4.5), ("mal", 0.5), ("pip", 2.0), ("cull", 1.2)),
    "too_humid": (("late", 6), ("mal", 1.2), ("pip", 2.2), ("cull", 1.0)),
    "too_dry": (("mid", 0.8), ("late", 5), ("mal", 0.5), ("pip", 2.2), ("cull", 0.6)),
    "dry_hatch": (("last", 2.5), ("pip", 6.5), ("cull", 0.7)),
    "turning": (("early", 3.5), ("mid", 1.0), ("late", 3.0), ("mal", 2.2), ("pip", 0.6), ("cull", 0.4)),
    "ventilation": (("mid", 1.8), ("late", 5), ("mal", 0.5), ("pip", 1.8), ("cull", 0.5)),
    "contamination": (("rot", 6), ("mid", 1.8), ("late", 1.5), ("early", 0.8), ("cull", 0.9)),
    "uneven_heat": (("early", 1.3), ("mid", 1.3), ("late", 3.2), ("pip", 1.7), ("cull", 1.4)),
    "altitude": (("early", 1.2), ("mid", 0.8), ("late", 5), ("pip", 2.0), ("cull", 0.7)),
    "small_end_up": (("mal", 6.5), ("late", 2.2), ("pip", 1.5), ("cull", 0.3)),
    "fumes": (("event", 10), ("mid", 0.6), ("late", 0.7)),
    "transfer_jolt": (("event", 7), ("pip", 1.5), ("mal", 0.8), ("cull", 0.8)),
    "navel_infection": (("cull", 6), ("last", 1.8), ("pip", 1.0), ("rot", 0.8)),
    "vitamin_lack": (("early", 1.0), ("mid", 5.0), ("late", 3.0), ("pip", 0.5), ("cull", 1.2)),
    "posted_eggs": (("first", 4.5), ("early", 4), ("late", 1.6), ("mal", 1.2), ("pip", 0.5)),
    "late_turning": (("last", 3), ("mal", 5), ("pip", 2.2), ("cull", 0.4)),
}


def _part_mass(name, draw, age):
    """Mass over days 1..21 of one named component."""
    if name == "first":  # died in the first two days: an egg that looks clear
        return _normal(draw.uniform(0.6, 1.4), draw.uniform(0.5, 1.0))
    if name == "early":
        return _normal(draw.uniform(2.5, 4.5), draw.uniform(1.0, 2.2))
    if name == "mid":
        return _normal(draw.uniform(9.5, 13.0), draw.uniform(1.6, 3.0))
    if name == "late":
        return _normal(draw.uniform(18.3, 20.0), draw.uniform(0.9, 1.8))
    if name == "last":
        return _normal(draw.uniform(19.9, 20.8), draw.uniform(0.4, 0.8))
    return _after(age, draw.uniform(0.5, 2.5), draw.uniform(0.9, 2.5))  # event


def event_age(cause, draw):
    """Chicken day of the hurt, for causes that strike at one time; None for the others."""
    if cause == "heat_spell":
        return float(draw.uniform(1.5, 19.5))
    if cause == "cold_spell":
        return float(draw.uniform(2.0, 19.8))
    if cause == "fumes":
        return float(draw.uniform(0.5, 4.0))
    if cause == "transfer_jolt":
        return 18.0
    return None


def kernel(cause, draw, age=None):
    """Share of a cause's kills by state, shape (25,), sums to 1.

    Parameters
    ----------
    cause : code, not "infertile" (which takes fertile eggs away and kills none)
    draw : numpy Generator
    age : chicken day of the hurt where the cause has one; drawn when None
    """
    vector = np.zeros(len(STATES))
    if age is None:
        age = event_age(cause, draw)
    parts = PARTS[cause]
    shares = draw.dirichlet([c * draw.uniform(0.8, 1.6) for _, c in parts])
    for (name, _), share in zip(parts, shares, strict=True):
        if name in ("mal", "rot", "pip", "cull"):
            vector[{"mal": MAL, "rot": ROT, "pip": PIP, "cull": CULL}[name]] += share
        else:
            _put(vector, _part_mass(name, draw, age), share)
    return vector


def background(kept, draw):
    """Cumulative hazards of an ordinary season by state, shape (25,).

    Two peaks, early and late, with a quiet middle (Kuurman et al. 2001: means 2.6 d and 17.4 d; Butcher & Nilipour's
    ledger of Panama flocks: 2.6, 1.3, 1.3, 2.6 % and pips 1.3 % of fertile); the split is drawn widely and each day has
    a factor of its own.

    Parameters
    ----------
    kept : share of fertile eggs that should come out sound
    """
    shares = draw.dirichlet([4.0, 0.9, 3.5, 0.5, 0.4, 0.9, 0.5])  # early, mid, late, mal, rot, pip, cull
    vector = np.zeros(len(STATES))
    early = stats.weibull_min.cdf(np.arange(DAYS + 1), draw.uniform(0.75, 1.6), scale=draw.uniform(2.0, 3.8))
    _put(vector, np.diff(early) / early[-1], shares[0])
    _put(vector, np.full(DAYS, 1 / DAYS), shares[1])
    _put(vector, _normal(draw.uniform(18.2, 19.8), draw.uniform(1.0, 2.0)), shares[2])
    vector[:DAYS] *= np.exp(draw.normal(0, draw.uniform(0.1, 0.5), DAYS))
    for place, share in zip((MAL, ROT, PIP, CULL), shares[3:], strict=True):
        vector[place] += share
    return vector / vector.sum() * -np.log(kept)


def state_probabilities(hazard_background, hazards_causes):
    """Chance of each end for a fertile egg and of the cause it is owed to.

    States are gone through in ORDER; hazards of one state compete, so shares within a state follow the hazards.

    Returns
    -------
    owed : array (1 + causes, 25): row 0 background
    sound : chance of a sound hatch
    """
    every = np.vstack([hazard_background, *hazards_causes])
    owed = np.zeros_like(every)
    alive = 1.0
    for state in ORDER:
        total = every[:, state].sum()
        if total > 0:
            owed[:, state] = alive * -np.expm1(-total) * every[:, state] / total
            alive *= np.exp(-total)
    return owed, alive
