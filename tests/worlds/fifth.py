"""The fifth test world: whole seasons of one keeper, one batch of which went wrong for a known reason.

Written without sight of the score that is tested in it, and never used to set a constant. What becomes of eggs is in
`fifth_eggs`, when causes kill in `fifth_kernels` and `fifth_causes`, the air in `fifth_air`, other traces in
`fifth_traces` and `fifth_words`, keepers' habits in `fifth_keeper`, their files in `fifth_book`.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

from worlds.fifth_air import LENGTH, READ, draw_gaps, harmless_spells, in_gaps, make_spell, struck_to_dose
from worlds.fifth_book import write_folder
from worlds.fifth_causes import CAUSES
from worlds.fifth_eggs import CELLS, batch_levels, chances, counting, flock_levels
from worlds.fifth_keeper import (
    EGGS,
    draw_bases,
    draw_keeper,
    draw_looks,
    recorded_measures,
    recorded_origin,
)
from worlds.fifth_kernels import event_days, harm, strengths
from worlds.fifth_traces import draw_measures, draw_origin
from worlds.fifth_words import draw_words

PAIR = (0.2, 0.5)
HIDDEN = 0.25
SPELLS = {"heat_spell": "heat", "cold_spell": "cold"}
PUBLIC = ("name", "species", "machine", "eggs", "looks", "habits", "counts", "measures", "origin", "words", "gaps")


def make_season(seed, cause=None, severity="severe", folder=None):
    """Draw one season, and write it where a folder is named.

    Parameters
    ----------
    seed : int or list of int
    cause : a code of `CAUSES`, a tuple of two, or None (bad luck only)
    severity : mild, moderate or severe, the share of the live embryos lost; each of a pair takes 20 to 50 %

    Returns
    -------
    dict : ``batch_hit`` (None without a cause), ``causes``, ``severity``, ``struck`` and ``event_days`` (cause -> share
    and day of 21), ``folder``, and ``book``: what the keeper wrote, for the oracle
    """
    draw = np.random.default_rng(seed)
    causes = () if cause is None else (cause,) if isinstance(cause, str) else tuple(cause)
    if len(causes) > 1:
        ks = [float(k) for k in draw.uniform(*PAIR, size=len(causes))]
    else:
        ks = [float(strengths(draw, 1, severity)[0]) for _ in causes]
    days = {name: float(event_days(CAUSES[name], draw, 1)[0]) for name in causes}
    keeper = draw_keeper(draw)
    if "altitude" in causes:
        keeper |= {"high": True, "altitude_m": int(draw.uniform(1400, 2600))}
    flocks = {
        name: flock_levels(draw, 1, name, stock["age"], stock["hens"]) for name, stock in keeper["species"].items()
    }
    bases = draw_bases(draw, keeper["machines"])
    wave = draw.uniform(0.02, 0.25)
    free = [pd.Timestamp(2026, 2, 10, 17) + pd.Timedelta(days=int(draw.integers(30))) for _ in bases]
    n = int(draw.integers(5, 10))
    hit = int(draw.integers(n)) if causes else None
    batches = []
    for place in range(n):
        planted = (causes, ks, days) if place == hit else ((), [], {})
        batch = _batch(draw, place, keeper, flocks, bases, free, *planted)
        batch["air"] |= {"wave": wave, "gap": batch["air"]["gap"] if keeper["two_probes"] else None}
        batches.append(batch)
    book = {
        "batches": [{name: batch[name] for name in (*PUBLIC, "spells")} for batch in batches],
        "habits": keeper["habits"],
        "flock_age": {name: stock["age"] for name, stock in keeper["species"].items()},
        "hens": {name: stock["hens"] for name, stock in keeper["species"].items()},
        "high": keeper["high"] if keeper["tells_altitude"] else None,
    }
    if folder is not None:
        write_folder(Path(folder), keeper, batches, draw)
    return {
        "batch_hit": batches[hit]["name"] if causes else None,
        "causes": causes,
        "severity": severity if causes else None,
        "struck": dict(zip(causes, ks, strict=True)),
        "event_days": {name: day for name, day in days.items() if CAUSES[name].window},
        "folder": folder,
        "book": book,
    }


def _batch(draw, place, keeper, flocks, bases, free, causes, ks, days):
    """One batch: its fate, and everything that its keeper could write of it."""
    species = str(draw.choice(list(keeper["species"])))
    machine = int(np.argmin(free))
    set_at = free[machine] + pd.Timedelta(days=int(draw.integers(1, 6)), hours=int(draw.integers(-3, 4)))
    free[machine] = (set_at + pd.Timedelta(days=LENGTH[species] + 4)).normalize() + pd.Timedelta(hours=17)
    looks = draw_looks(draw, keeper)
    habits = keeper["habits"] | {"untold": 2 if 2 in looks and draw.random() < 0.05 else 0}
    origin = draw_origin(draw, keeper, causes, ks)
    if origin["age"] is None:
        weeks = (set_at - pd.Timestamp(2026, 2, 10)).days / 7 - 10
        origin["age"] = float(round(keeper["species"][species]["age"] + np.clip(weeks, -6, 6)))
    objects = [CAUSES[name] for name in causes]
    harms = [
        harm(one, np.array([k]), np.array([days[name]]), draw) for one, k, name in zip(objects, ks, causes, strict=True)
    ]
    hidden = [float(draw.random() < HIDDEN) for _ in causes]
    levels = batch_levels(draw, flocks[species], 4.0 if "long_storage" in causes else origin["stored"])
    chance = chances(levels, harms, counting(habits, looks))[0]
    eggs = int(draw.integers(*EGGS[species]))
    counts = draw.multinomial(eggs, chance / chance.sum())
    measures = draw_measures(draw, bases[machine], objects, ks, hidden)
    gaps = draw_gaps(draw, habits)
    spells = harmless_spells(species, draw)
    spells += [
        make_spell(SPELLS[name], days[name], float(struck_to_dose(k)), species, draw)
        for name, k in zip(causes, ks, strict=True)
        if name in SPELLS
    ]
    return {
        "name": f"{species[0].upper()}{place + 1}",
        "species": species,
        "machine": machine,
        "set_at": set_at,
        "eggs": eggs,
        "looks": looks,
        "habits": habits,
        "counts": dict(zip(CELLS, (int(count) for count in counts), strict=True)),
        "measures": recorded_measures(keeper, measures, gaps),
        "origin": recorded_origin(draw, keeper, origin),
        "words": draw_words(draw, objects, ks, days, habits),
        "gaps": gaps,
        "spells": [
            {"kind": spell["kind"], "day": spell["day"], "dose": spell["dose"] + draw.normal(0, READ)}
            for spell in spells
            if not in_gaps(np.array([spell["day"]]), gaps)[0]
        ],
        "all_spells": spells,
        "air": {kind: measures[kind] for kind in ("temp", "rh", "hatch_rh", "gap")},
    }
