"""The fourth test world: whole seasons of one keeper, one batch of which went wrong for a known reason.

Written without sight of the score that is tested in it, and never used to set a constant. A batch's counts are drawn
in `fourth_cells`, its air in `fourth_air`; what a keeper writes of it in `fourth_book`. Old hens, storage, humidity and
posted eggs come to seasons and batches whether or not something was planted.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

from .fourth_air import DOSE_SD, STEEP, harmless_spells, make_spell
from .fourth_book import write_folder
from .fourth_causes import CAUSES as SPECS
from .fourth_causes import SEVERITY, shares, strikes
from .fourth_cells import NAMES, batch_levels, chances, counting, season_levels
from .fourth_traces import SD, metadata, odds_of_topics

CAUSES = tuple(SPECS)
SPECIES = {"chicken": 21.0, "duck": 28.0, "quail": 17.5}
PAIR = (0.25, 0.5)
SECOND_HIT = 0.12
KEPT_LONG = (0.3, 0.3, 0.2, 0.1, 0.1)


def make_season(seed, cause=None, severity="severe", folder=None):
    """Draw one season, and write it where a folder is named.

    Parameters
    ----------
    seed : int or list of int
    cause : a code of `CAUSES`, a tuple of two, or None (bad luck only)
    severity : mild, moderate or severe; pairs are drawn between moderate and severe

    Returns
    -------
    dict : ``batch_hit`` (None without a cause), ``causes``, ``severity``, ``event_days`` (cause -> day since setting),
    ``others`` (batch -> cause planted there too), ``folder``, and ``book``: what the keeper wrote, for the oracle
    """
    if severity not in SEVERITY:
        raise ValueError(f"severity is one of {sorted(SEVERITY)}, not {severity!r}")
    draw = np.random.default_rng(seed)
    causes = () if cause is None else (cause,) if isinstance(cause, str) else tuple(cause)
    keeper = _keeper(draw)
    level = season_levels(draw, 1, keeper["flock_age"], keeper["stored"])
    total = int(draw.integers(4, 13))
    machines = _machines(draw, total)
    hit = int(draw.integers(total))
    planted = {hit: causes} if causes else {}
    if total > 5 and draw.random() < SECOND_HIT and causes:
        other = int(draw.choice([i for i in range(total) if i != hit]))
        planted[other] = (str(draw.choice([name for name in CAUSES if name not in causes])),)
    free = {name: pd.Timestamp("2025-02-01 08:00") + pd.Timedelta(days=float(draw.uniform(0, 40))) for name in machines}
    batches = []
    for place in range(total):
        ks = _strengths(draw, planted.get(place, ()), severity if place == hit else None)
        batches.append(_batch(draw, f"{place + 1}", keeper, machines, free, level, ks))
    days = [batch.pop("event_days") for batch in batches]
    book = {"keeper": keeper, "machines": machines, "batches": batches}
    truth = {
        "batch_hit": batches[hit]["batch"] if causes else None,
        "causes": list(causes),
        "severity": severity if causes else "none",
        "event_days": days[hit] if causes else {},
        "others": {batches[i]["batch"]: names[0] for i, names in planted.items() if i != hit},
        "book": book,
    }
    if folder is not None:
        write_folder(Path(folder), book, draw)
        truth["folder"] = Path(folder)
    return truth


def _strengths(draw, causes, severity):
    """Struck share of each cause of a batch."""
    if len(causes) == 2:
        return {name: float(draw.uniform(*PAIR)) for name in causes}
    return {name: float(strikes(draw, 1, severity)[0]) for name in causes}


def _keeper(draw):
    """Habits and stock of the season's keeper: what is kept, looked at, opened, and how old hens and eggs are."""
    species = str(draw.choice(list(SPECIES), p=[0.7, 0.15, 0.15]))
    habits = {
        "opens": draw.random() < 0.7,
        "opens_clears": draw.random() < 0.25,
        "counts_wrong": draw.random() < 0.5,
        "looks_for_signs": draw.random() < 0.75,
        "writes": draw.random() < 0.75,
        "weighs": draw.random() < 0.4,
        "times_hatch": draw.random() < 0.6,
        "keeps_flock": draw.random() < 0.6,
        "keeps_stored": draw.random() < 0.7,
        "keeps_pen": draw.random() < 0.5,
        "keeps_posted": draw.random() < 0.65,
        "ticks": draw.random() < 0.5,
    }
    looks = {1: (6.0, 8.0), 2: (11.0, 15.0), 3: (17.6, 18.2)}
    held = [(1, 2, 3), (1, 3), (1, 2), (1,), ()][draw.choice(5, p=[0.3, 0.3, 0.1, 0.2, 0.1])]
    return {
        "species": species,
        "habits": {name: bool(value) for name, value in habits.items()},
        "looks": {look: looks[look] for look in held},
        "language": str(draw.choice(["en", "de", "fr", "es", "it"])),
        "flock_age": float(draw.uniform(28, 110)),
        "stored": float(draw.choice([3, 5, 7, 10, 14], p=KEPT_LONG)),
        "posted_rate": float(draw.choice([0.0, 0.3])),
        "egg_g": {"chicken": 58, "duck": 75, "quail": 12}[species],
        "style": int(draw.integers(3)),
        "step_min": 5 if draw.random() < 0.2 else 10,
        "shell": float(np.exp(draw.normal(0, 0.08))),
        "late_h": float(draw.normal(0, 4)),
        "wide_h": float(draw.uniform(14, 28)),
    }


def _machines(draw, total):
    """One to three machines: setting, what the probe reads too high, base humidities, whether a log is kept."""
    count = int(draw.integers(1, 4))
    while total / count > 6:
        count += 1
    logs = draw.choice(["all", "none", "some"], p=[0.55, 0.25, 0.2])
    return {
        chr(65 + i): {
            "set_c": float(draw.choice([37.5, 37.6, 37.7])),
            "reads": float(draw.normal(0, 0.12)),
            "wave": float(draw.uniform(0, 0.1)),
            "rh_set": float(draw.uniform(42, 62)),
            "rh_hatch": float(draw.uniform(62, 76)),
            "altitude_m": float(draw.uniform(0, 500)),
            "logs": bool(logs == "all" or (logs == "some" and i % 2 == 0)),
        }
        for i in range(min(count, 3))
    }


def _batch(draw, name, keeper, machines, free, level, ks):
    """One batch: its fate and everything that its keeper could write of it."""
    species, habits = keeper["species"], keeper["habits"]
    days, machine = SPECIES[species], min(free, key=free.get)
    facts = metadata(draw, keeper, ks)
    if facts["altitude_m"] is not None:
        machine = f"H{name}"
        machines[machine] = dict(machines["A"], altitude_m=facts["altitude_m"])
        set_at = min(free.values()) + pd.Timedelta(days=2)
    else:
        set_at = free[machine] + pd.Timedelta(hours=int(draw.integers(0, 60)))
    looks = {look: float(draw.uniform(*span)) for look, span in keeper["looks"].items()}
    moved = looks.get(3, float(draw.uniform(17.6, 18.2)))
    batch = {
        "batch": name,
        "species": species,
        "days": days,
        "incubator": machine,
        "set_at": set_at.floor("min"),
        "looks": looks,
        "transfer_age": moved,
        "eggs_set": int(draw.integers(12, 61)),
        **facts,
        "logged": machines[machine]["logs"],
        "spells": harmless_spells(species, draw),
        "event_days": {},
    }
    planted, shift = [], dict.fromkeys(("hours", "spread", "water", "hatch_rh", "level"), 0.0)
    hides = False
    for cause, k in ks.items():
        spec = SPECS[cause]
        day = float(draw.uniform(*spec.window)) if spec.window else 0.0
        if cause == "transfer_jolt":
            day = moved
        if spec.window:
            batch["event_days"][cause] = day * days / 21
        if spec.spell:
            dose = np.log(k / (1 - k)) / STEEP + DOSE_SD * draw.standard_normal()
            batch["spells"].append(make_spell(spec.spell, day, dose, species, draw))
        planted.append((spec, np.array([k]), shares(spec, np.array([k]), np.array([day]), draw)))
        hides |= bool(draw.random() < spec.hidden)
        for kind in shift:
            shift[kind] += getattr(spec, kind)[0] + k * getattr(spec, kind)[1]
        batch.setdefault("days_of", {})[cause] = day
    for spell in batch["spells"]:
        spell["blind"] = bool(spell["kind"] == "cold" and draw.random() < 0.25)
    chance = chances(batch_levels(draw, *level), planted, counting(habits, looks), habits)[0]
    batch["counts"] = dict(zip(NAMES, draw.multinomial(batch["eggs_set"], chance).tolist(), strict=True))
    _measure(draw, batch, keeper, machines[machine], shift, hides)
    if machine in free:
        off = set_at + pd.Timedelta(days=batch["taken_off_age"] * days / 21)
        free[machine] = off.normalize() + pd.Timedelta(days=int(draw.integers(1, 6)), hours=8)
    batch["topics"], batch["told_day"] = _topics(draw, batch, keeper, ks)
    batch.pop("days_of", None)
    return batch


def _measure(draw, batch, keeper, machine, shift, hides):
    """Humidity, loss of water, air level and hatch times of a batch, with what is shared and what is its own."""
    noise = {kind: SD[kind] * draw.standard_normal() for kind in SD}
    rh = machine["rh_set"] - shift["water"] * 53 / 12 + noise["rh_set"]
    batch["rh_set"] = float(np.clip(rh, 12, 92))
    # a loss of 12 % belongs to 52 %RH; the egg is a little warmer than the air, hence 105
    batch["water_pct"] = float(12 * keeper["shell"] * (105 - batch["rh_set"]) / 53 + noise["water"])
    batch["rh_hatch"] = float(np.clip(machine["rh_hatch"] + shift["hatch_rh"] + noise["rh_hatch"], 15, 95))
    batch["level_shown"] = float(machine["reads"] + (0.0 if hides else shift["level"]) + noise["level"])
    batch["first_h"] = float(
        batch["days"] * 24
        - 14
        + keeper["late_h"]
        + shift["hours"]
        + noise["first_h"]
        + sum(spell["lost_h"] for spell in batch["spells"])
    )
    wide = keeper["wide_h"] + shift["spread"] + noise["wide_h"]
    batch["wide_h"] = float(max(wide, 4.0))
    # a dragged or late hatch is waited for
    off = batch["first_h"] + batch["wide_h"] + 6
    batch["taken_off_age"] = float(max(off / 24 / batch["days"] * 21, 21.4))


def _topics(draw, batch, keeper, ks):
    """Signs and remarks of a batch, each by its own chance, and the day that a remark names."""
    written = {}
    odds = odds_of_topics(batch, keeper["habits"], ks)
    for topic, chance in odds.items():
        if draw.random() < chance:
            written[topic] = True
    told = None
    happened = {t: batch["days_of"][c] for c in ks if SPECS[c].window for t in SPECS[c].traces if t.startswith("r_")}
    for topic in ("r_power", "r_heat", "r_fumes"):
        if topic in written and told is None and draw.random() < 0.6:
            told = (topic, float(happened.get(topic, draw.uniform(1.0, 19.5))))
    return sorted(written), told
