"""Sixth world: invented seasons of one keeper in which one batch went wrong for a known cause. All of it is made up.

Written without sight of the score that is judged in it, from general incubation science (sources: sixth_causes.py).
A cause takes each live embryo with the chance `severities` (bands: sixth_causes.BANDS), beside the batch's own luck.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np

from .codes import check_cause
from .sixth_book import write
from .sixth_causes import BANDS, TABLE
from .sixth_eggs import USUAL_ROT, cells_of, draw_deaths, draw_usual, fates, in_cells, seen_as
from .sixth_keeper import draw_cover, draw_gauges, draw_plan, kept, look_days
from .sixth_traces import SPELLS_A_BATCH, draw_shifts, draw_spell, draw_traces

CAUSES = tuple(TABLE)
CRACKED = 0.07  # batches in which one egg was cracked and taken out


def make_season(seed, causes=None, severity="severe", folder=None):
    """A season, written to `folder` where one is given.

    Parameters
    ----------
    seed : int or sequence of int
    causes : None, a code of CAUSES, or two of them (both in the same batch)
    severity : "mild", "moderate" or "severe"
    folder : path to write to, or None

    Returns
    -------
    dict
        ``batch_hit`` (name, None without a cause), ``causes``, ``severity``, ``severities`` ({cause: share of live
        embryos lost}), ``folder``, ``book`` (what the keeper recorded; nothing of the truth in it).
    """
    codes, rng = check_cause(causes), np.random.default_rng(seed)
    habits, levels, own, plan = draw_plan(rng)
    hit = int(rng.integers(len(plan))) if codes else None
    severities = {code: float(rng.uniform(*BANDS[severity])) for code in codes}
    batches, airs = [], []
    for place, planned in enumerate(plan):
        struck_by = list(severities.items()) if place == hit else []
        batch, air = _batch(rng, habits, levels, own, planned, struck_by)
        batches.append(batch)
        airs.append(air)
    book = {"keeper": habits, "batches": batches}
    if folder is not None:
        write(rng, Path(folder), book, airs)
    return {
        "batch_hit": plan[hit]["name"] if codes else None,
        "causes": codes,
        "severity": severity if codes else None,
        "severities": severities,
        "folder": folder,
        "book": book,
    }


def _batch(rng, habits, levels, own, planned, causes):
    """One batch as (what is recorded, the air as it was)."""
    struck, days = [], {}
    for name, strength in causes:
        deaths, start = draw_deaths(rng, name, 1)
        struck.append((name, np.array([strength]), deaths))
        days[name] = float(start[0])
    chances = fates(*draw_usual(rng, own[planned["bird"]]), struck)
    cracked = int(rng.random() < CRACKED)
    batch = planned | {"cracked": cracked, "counts": _counts(rng, habits, planned, chances, _rot(rng, causes), cracked)}
    rotten = batch["counts"]["rotten"]
    batch["rotten_before"] = int(rng.binomial(rotten, 0.5)) if planned["looks"] else 0
    cover = draw_cover(rng, habits)
    spells = _spells(rng, causes, days)
    gauges = draw_gauges(rng, habits, levels, planned, draw_shifts(rng, causes))
    batch["cover"] = cover
    batch["gauges"] = kept(rng, habits, gauges, cover)
    batch["spells"] = [spell for spell in spells if cover[int(spell[0])]]
    return batch | draw_traces(rng, habits, batch, causes), {"gauges": gauges, "spells": spells}


def _rot(rng, causes):
    """Share of the dead that rots."""
    rot = USUAL_ROT
    for name, _ in causes:
        if TABLE[name].rot:
            rot = max(rot, rng.uniform(*TABLE[name].rot))
    return np.array([rot])


def _counts(rng, habits, planned, chances, rot, cracked):
    """The counts that a keeper wrote, now and then off by one: {cell: eggs}."""
    kind = (look_days(planned), planned["opens"], habits["pipped"])
    cells = in_cells(chances, seen_as(*kind), rot)[0]
    drawn = rng.multinomial(planned["set"] - cracked, cells / cells.sum())
    counts = {name: int(number) for name, number in zip(cells_of(*kind), drawn, strict=True)}
    if rng.random() < habits["slips"]:
        cell = str(rng.choice([name for name in counts if name not in ("good", "rotten")]))
        counts[cell] = max(0, counts[cell] + int(rng.choice([-1, 1])))
    return counts


def _spells(rng, causes, days):
    """All warm and cold spells of a batch: (hen's day, kind, hours, degC off), in order."""
    spells = []
    for kind, usual in SPELLS_A_BATCH.items():
        for _ in range(rng.poisson(usual)):
            spells.append((float(rng.uniform(0.5, 20)), *draw_spell(rng, kind)))
    for name, strength in causes:
        if TABLE[name].spell:
            spells.append((days[name], *draw_spell(rng, TABLE[name].spell, strength)))
    return sorted(spells)
