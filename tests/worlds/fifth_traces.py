"""What a batch of the fifth world leaves beside its counts: measures, where its eggs came from, and spells in the log.

Everything is drawn and weighed by the same densities, and everything also comes where nothing is wrong.
"""

from __future__ import annotations

import numpy as np
from scipy.stats import norm

from worlds.fifth_air import HARMLESS, HARMLESS_RATE, HARMLESS_SPREAD, READ, in_gaps, struck_to_dose

# kind: middle, spread between machines or seasons, spread between batches, by machine
MEASURES = {
    "temp": (0.0, 0.25, 0.12, True),
    "gap": (0.3, 0.25, 0.15, True),
    "rh": (50.0, 6.0, 3.5, True),
    "hatch_rh": (68.0, 6.0, 5.0, True),
    "water": (0.0, 1.0, 0.9, True),
    "first": (-10.0, 7.0, 5.0, False),
    "spread": (24.0, 5.0, 5.0, False),
}
ODD, ODD_TIMES = 0.08, 2.5
WATER_PER_RH = -0.12
SPECIES_WATER = {"chicken": 11.5, "duck": 12.8, "goose": 12.0, "turkey": 11.8, "quail": 12.0}
LONG = 0.06
POSTED, HIGH = 0.07, 0.12
ELSEWHERE = {"old_flock": 0.8, "flock_health": 0.35, "vitamin_lack": 0.35, "infertile": 0.35, "posted_eggs": 0.6}
ELSEWHERE["altitude"] = 0.7
ORDINARY_ELSEWHERE = 0.12


def odd_density(x, middle, spread):
    """Density of an ordinary departure: normal, and now and then much wider."""
    usual = norm.pdf(x, middle, spread)
    return (1 - ODD) * usual + ODD * norm.pdf(x, middle, ODD_TIMES * spread)


def draw_odd(draw, spread):
    """A batch's own departure."""
    return draw.normal(0, spread * (ODD_TIMES if draw.random() < ODD else 1))


def shift_of(kind, causes, ks, hidden):
    """Shift of a measure under causes that strike `ks` (arrays); the probe may hide the air's."""
    total = np.zeros(np.shape(ks[0]) if ks else 1)
    for cause, k, hides in zip(causes, ks, hidden, strict=True):
        fixed, slope = cause.shifts.get(kind, (0.0, 0.0))
        total = total + (fixed + slope * np.asarray(k)) * (1 - hides if kind == "temp" else 1)
    return total


def draw_measures(draw, bases, causes, ks, hidden):
    """All measures of a batch, before anything of it is left unrecorded."""
    out = {}
    for kind, (_, _, spread, _) in MEASURES.items():
        shift = float(shift_of(kind, causes, [np.array(k) for k in ks], hidden).item()) if causes else 0.0
        out[kind] = bases[kind] + shift + draw_odd(draw, spread)
    out["spread"] = max(out["spread"], 4.0)
    out["water"] += WATER_PER_RH * (out["rh"] - MEASURES["rh"][0])
    return out


def _levelled(batch, kind):
    """The measure with what is known of its course taken off, and the spread that this leaves unknown."""
    value = batch["measures"].get(kind)
    if value is None or kind != "water":
        return value, 0.0
    if "rh" in batch["measures"]:
        return value - WATER_PER_RH * (batch["measures"]["rh"] - MEASURES["rh"][0]), 0.0
    return value, abs(WATER_PER_RH) * MEASURES["rh"][2]


def measure_ratio(book, batch, causes, ks, hidden):
    """Log ratio (n) of the batch's measures under these causes to an ordinary batch's, given the other batches'."""
    total = np.zeros(np.shape(ks[0]))
    for kind, (middle, between, spread, by_machine) in MEASURES.items():
        own, more = _levelled(batch, kind)
        if own is None:
            continue
        beside = [_levelled(other, kind)[0] for other in book["batches"] if other is not batch]
        if by_machine:
            beside = [
                _levelled(other, kind)[0]
                for other in book["batches"]
                if other is not batch and other["machine"] == batch["machine"]
            ]
        spread = np.hypot(spread, more)
        shift = shift_of(kind, causes, ks, hidden)
        if more:
            between = np.hypot(between, 0.12 * MEASURES["rh"][1])
            shift = shift + WATER_PER_RH * shift_of("rh", causes, ks, hidden)
        grid = middle + between * np.linspace(-4, 4, 161)
        weight = norm.logpdf(grid, middle, between)
        for value in beside:
            if value is not None:
                weight = weight + np.log(odd_density(value, grid, spread))
        weight = np.exp(weight - weight.max())
        weight /= weight.sum()
        at = own - np.atleast_1d(shift)
        density = odd_density(at[:, None], grid, spread) @ weight
        total = total + np.log(density + 1e-300) - np.log(odd_density(own, grid, spread) @ weight)
    return total


def draw_origin(draw, keeper, causes, ks):
    """Where a batch's eggs came from: stored days, pen, age of hens, post."""
    stored = np.exp(draw.normal(np.log(keeper["stored"]), 0.35))
    if draw.random() < LONG:
        stored = draw.uniform(10, 17)
    elsewhere = draw.random() < max([ORDINARY_ELSEWHERE, *(ELSEWHERE.get(name, 0) for name in causes)])
    age = draw.normal(40, 13) if elsewhere else None
    if "old_flock" in causes:
        age = draw.normal(24, 1.5) if draw.random() < 0.2 else draw.normal(88, 15)
    if "long_storage" in causes:
        stored = draw.normal(10 + 15 * ks[causes.index("long_storage")], 2)
    return {
        "stored": float(np.clip(np.round(stored), 1, 30)),
        "elsewhere": bool(elsewhere),
        "age": None if age is None else float(np.clip(np.round(age), 21, 160)),
        "posted": bool("posted_eggs" in causes or draw.random() < POSTED),
    }


def origin_ratio(book, batch, name, k):
    """Log ratio (n) of a batch's origin under one cause to an ordinary batch's, as far as it is written."""
    total, origin = np.zeros(len(k)), batch["origin"]
    stored = origin.get("stored")
    if name == "long_storage" and stored is not None:
        usual = [other["origin"].get("stored", 4.5) for other in book["batches"] if other is not batch]
        at = np.median([np.log(value) for value in usual])
        ordinary = (1 - LONG) * norm.pdf(np.log(stored), at, 0.4) / stored + LONG * (10 <= stored <= 17) / 7
        total += norm.logpdf(stored, 10 + 15 * k, 2.05) - np.log(ordinary + 1e-12)
    if origin.get("elsewhere") is not None:
        share = max(ORDINARY_ELSEWHERE, ELSEWHERE.get(name, 0))
        other = origin["elsewhere"]
        total += np.log(share if other else 1 - share) - np.log(ORDINARY_ELSEWHERE if other else 1 - ORDINARY_ELSEWHERE)
    if name == "old_flock" and origin.get("age") is not None:
        under = 0.2 * norm.pdf(origin["age"], 24, 1.6) + 0.8 * norm.pdf(origin["age"], 88, 15)
        middle, spread = (40, 13) if origin.get("elsewhere") else (book["flock_age"][batch["species"]], 3)
        total += np.log(under + 1e-12) - np.log(norm.pdf(origin["age"], middle, spread) + 1e-6)
    if origin.get("posted") is not None:
        if name == "posted_eggs":
            total += -np.log(POSTED) if origin["posted"] else -12.0
    if book["high"] is not None and name == "altitude":
        total += -np.log(HIGH) if book["high"] else -12.0
    return total


def event_days_given(batch, cause, kind, topic, k, draw):
    """Days of an unseen or seen event in n worlds, and their log weight: log of the machine and the day in a remark.

    Without a log, or for an event that no log shows, days come evenly from the window.
    """
    n, (low, high) = len(k), cause.window
    width = high - low
    named = batch["words"].get(topic) if topic else None
    day, weight = draw.uniform(low, high, n), np.zeros(n)
    if named is not None:
        day = named + draw.uniform(-0.5, 0.5, n) + np.where(draw.random(n) < 0.15, draw.normal(0, 1.5, n), 0)
        weight = np.where((day >= low) & (day <= high), np.log(21 / width), -12.0)
    if kind is None:
        return day, weight
    seen = [spell for spell in batch["spells"] if spell["kind"] == kind]
    weight = np.where(in_gaps(day, batch["gaps"]), weight, -30.0)
    if not seen:
        return day, weight
    half = draw.random(n) < 0.5
    chosen = draw.integers(len(seen), size=n)
    at, dose = (np.array([spell[name] for spell in seen])[chosen] for name in ("day", "dose"))
    under = norm.logpdf(dose, struck_to_dose(k), READ) - np.log(width)
    usual = norm.logpdf(dose, HARMLESS, np.hypot(HARMLESS_SPREAD, READ)) + np.log(HARMLESS_RATE / 19.5)
    fits = np.log(len(seen)) + under - np.maximum(usual, -25)
    if named is not None:
        off = at - named
        fits = fits + np.log(21 * (0.85 * norm.pdf(off, 0, 0.3) + 0.15 * norm.pdf(off, 0, 1.6)) + 1e-6)
    return np.where(half, at, day), np.log(2) + np.where(half, fits, weight)
