"""What is seen, said and logged in a batch of the sixth world, and how likely each of it is; shared with the oracle.

All shares are this world's own (no source): a keeper notices about half of what there is to see, and says things of
good batches too.
"""

from __future__ import annotations

import numpy as np
from scipy import stats

from .sixth_causes import TABLE
from .sixth_keeper import GAUGES

FALSE_SIGN, FALSE_REMARK, POSTED = 0.015, 0.2, 0.08
USUAL_MALPOSITIONED = 0.2
SPELLS_A_BATCH = {"cold": 0.40, "heat": 0.15}  # harmless ones
INSIDE = {"bleeding", "brain_bare", "wet", "stuck_shell", "white_left", "wrong_way", "head_small_end", "cherry", "beak"}
SIGNS = tuple(sorted({sign for cause in TABLE.values() for sign in cause.signs}))


def draw_spell(rng, kind, strength=None):
    """(kind, hours, degC off): harmless where no strength is given."""
    if strength is None:
        hours = 1 + rng.exponential(1.5 if kind == "cold" else 0.8)
        off = 1.5 + rng.gamma(2, 1.2) if kind == "cold" else 0.8 + rng.exponential(0.5)
        return kind, float(hours), float(off)
    middle, width, off, spread = _harmful(kind, strength)
    return kind, float(np.exp(rng.normal(np.log(middle), width))), float(max(rng.normal(off, spread), 1.2))


def _harmful(kind, strength):
    """Middle and log spread of the hours, middle and spread of the departure.

    Embryos stand a day of cold better than hours at 41 degC and more (from memory).
    """
    if kind == "cold":
        return 12 + 26 * strength, 0.4, 9 + 6 * strength, 2.0
    return 3 + 9 * strength, 0.4, 2 + 4 * strength, 0.6


def log_harmless_spell(kind, hours, off):
    """Log density of a harmless spell of this length and height."""
    scale = 1.5 if kind == "cold" else 0.8
    told = stats.expon.logpdf(max(hours - 1, 0), scale=scale)
    if kind == "cold":
        return told + stats.gamma.logpdf(max(off - 1.5, 0.01), 2, scale=1.2)
    return told + stats.expon.logpdf(max(off - 0.8, 0), scale=0.5)


def log_harmful_spell(kind, hours, off, strength):
    """The same of one that kills; shape of `strength`."""
    middle, width, usual, spread = _harmful(kind, strength)
    return stats.lognorm.logpdf(hours, width, scale=middle) + stats.norm.logpdf(off, usual, spread)


def sign_chances(causes, opens):
    """Chance that each sign is noted; shape (n, signs). `causes`: (name, strength (n,)) pairs."""
    size = len(causes[0][1]) if causes else 1
    none = np.full((size, len(SIGNS)), 1 - FALSE_SIGN)
    for name, strength in causes:
        seen = np.minimum(1.0, 0.45 + 0.8 * np.asarray(strength))
        for sign, chance in TABLE[name].signs.items():
            none[:, SIGNS.index(sign)] *= 1 - chance * seen
    closed = [not opens and sign in INSIDE for sign in SIGNS]
    return np.where(closed, 0.0, 1 - none)


def remark_chances(causes):
    """Chance that each telling remark is made; shape (24,). Harmless cold is spoken of twice as often as the rest."""
    codes = list(TABLE)
    weights = np.array([2.0 if code == "cold_spell" else 1.0 for code in codes])
    chances = FALSE_REMARK * weights / weights.sum()
    for name in causes:
        chances[codes.index(name)] = TABLE[name].told
    return chances


def malpositioned_share(causes):
    """Share of the late dead that lie wrongly; shape (n,)."""
    share = np.array([USUAL_MALPOSITIONED])
    for name, strength in causes:
        if TABLE[name].malpositioned is not None:
            share = share + (TABLE[name].malpositioned - share) * np.minimum(1.0, 0.3 + np.asarray(strength))
    return share


def draw_traces(rng, habits, batch, causes):
    """Signs, remarks, post and malpositions as kept. `causes`: (name, strength) pairs."""
    arrays = [(name, np.array([strength])) for name, strength in causes]
    out = {"signs": None, "remarks": None, "posted": None, "malpositioned": None}
    if habits["signs"]:
        seen = rng.random(len(SIGNS)) < sign_chances(arrays, batch["opens"])[0]
        out["signs"] = [sign for sign, there in zip(SIGNS, seen, strict=True) if there]
    if habits["remarks"]:
        said = rng.random(len(TABLE)) < remark_chances([name for name, _ in causes])
        out["remarks"] = [code for code, there in zip(TABLE, said, strict=True) if there]
    by_post = any(TABLE[name].posted for name, _ in causes) or rng.random() < POSTED
    if habits["posted"]:
        out["posted"] = bool(by_post)
    if habits["malpositioned"] and batch["opens"]:
        late = batch["counts"].get("late", 0)
        out["malpositioned"] = int(rng.binomial(late, malpositioned_share(arrays)[0]))
    return out


def log_traces(batch, causes):
    """Log of the chance of what was seen and said; shape (n,) or (1,)."""
    told = np.zeros(1)
    if batch["signs"] is not None:
        chances = np.clip(sign_chances(causes, batch["opens"]), 1e-6, 1 - 1e-6)
        there = np.isin(SIGNS, batch["signs"])
        told = told + np.where(there, np.log(chances), np.log1p(-chances)).sum(-1)
    if batch["remarks"] is not None:
        chances = remark_chances([name for name, _ in causes])
        there = np.isin(list(TABLE), batch["remarks"])
        told = told + np.where(there, np.log(chances), np.log1p(-chances)).sum()
    if batch["posted"] is not None:
        chance = 0.999 if any(TABLE[name].posted for name, _ in causes) else POSTED
        told = told + np.log(chance if batch["posted"] else 1 - chance)
    if batch["malpositioned"] is not None:
        late = batch["counts"].get("late", 0)
        told = told + stats.binom.logpmf(min(batch["malpositioned"], late), late, malpositioned_share(causes))
    return told


def draw_shifts(rng, causes):
    """What the causes add to the figures: {figure: shift}."""
    shifts = {}
    for name, strength in causes:
        for gauge, (fixed, slope, spread) in TABLE[name].gauges.items():
            shifts[gauge] = shifts.get(gauge, 0.0) + rng.normal(fixed + slope * strength, spread)
    return shifts


def log_gauges(values, usual, name, strength):
    """Log density of the figures kept; `usual`: {figure: (middle, variance)} from the other batches."""
    told = np.zeros(1)
    shifts = TABLE[name].gauges if name else {}
    for gauge, value in values.items():
        middle, variance = usual[gauge]
        fixed, slope, spread = shifts.get(gauge, (0.0, 0.0, 0.0))
        at = middle + fixed + slope * strength
        told = told + stats.norm.logpdf(value, at, np.sqrt(variance + GAUGES[gauge][2] ** 2 + spread**2))
    return told
