"""Keepers of the fifth world: what they keep, own, look at, open and write down."""

from __future__ import annotations

import numpy as np

from worlds.fifth_traces import HIGH, MEASURES
from worlds.fifth_words import LANGUAGES

EGGS = {"chicken": (18, 60), "duck": (14, 40), "goose": (10, 24), "turkey": (14, 40), "quail": (30, 90)}
LOOKS = {1: (6, 8.5), 2: (12.5, 15), 3: (17.6, 18.4)}


def draw_keeper(draw):
    """Habits of one keeper: a dict of what is true of the whole season."""
    kept = [str(name) for name in draw.permutation(list(EGGS))[: draw.choice([1, 2, 3], p=[0.4, 0.4, 0.2])]]
    opens = float(draw.choice([0.0, 0.5, 1.0], p=[0.22, 0.13, 0.65]))
    high = bool(draw.random() < HIGH)
    return {
        "species": {
            name: {"age": float(np.clip(draw.gamma(9, 4.6), 23, 90).round()), "hens": int(draw.integers(3, 11))}
            for name in kept
        },
        "machines": int(draw.integers(1, 4)),
        "stored": float(np.exp(draw.normal(np.log(4.5), 0.35))),
        "high": high,
        "altitude_m": int(draw.uniform(1400, 2600) if high else draw.uniform(10, 700)),
        "tells_altitude": bool(draw.random() < 0.5),
        "language": str(draw.choice(LANGUAGES)),
        "zone": str(draw.choice(["Europe/Berlin", "Europe/Madrid", "Europe/London", "America/Lima"])),
        "writes_stored": bool(draw.random() < 0.75),
        "writes_age": bool(draw.random() < 0.5),
        "writes_pen": bool(draw.random() < 0.7),
        "writes_post": bool(draw.random() < 0.7),
        "writes_times": bool(draw.random() < 0.65),
        "weighs": bool(draw.random() < 0.45),
        "two_probes": bool(draw.random() < 0.35),
        "log_style": int(draw.integers(3)),
        "log_minutes": int(draw.choice([10, 15, 30])),
        "workbook": bool(draw.random() < 0.5),
        "habits": {
            "acuity": float(draw.uniform(0.88, 0.98)),
            "opens": opens,
            "blur": float(draw.uniform(0.5, 2.5)),
            "opens_clears": bool(draw.random() < 0.4),
            "tells_pipped": bool(draw.random() < 0.8),
            "tells_culled": bool(draw.random() < 0.75),
            "tells_wrong": bool(opens == 1 and draw.random() < 0.5),
            "untold": 0,
            "signs": float(draw.uniform(0.4, 1.0)) if draw.random() < 0.7 else 0.0,
            "notes": float(draw.uniform(0.4, 1.0)) if draw.random() < 0.75 else 0.0,
            "logs": bool(draw.random() < 0.75),
            "gaps": float(draw.choice([0.05, 0.4])),
            "misses": float(draw.choice([0.03, 0.25])),
        },
    }


def draw_bases(draw, machines):
    """What the measures are about: {kind: value} for each machine; hatch times are the season's."""
    season = {kind: draw.normal(part[0], part[1]) for kind, part in MEASURES.items() if not part[3]}
    return [
        season | {kind: draw.normal(part[0], part[1]) for kind, part in MEASURES.items() if part[3]}
        for _ in range(machines)
    ]


def draw_looks(draw, keeper):
    """Ages (days of 21) of the looks that are held at a batch; the transfer is nearly always looked at."""
    out = {}
    for look, (low, high) in LOOKS.items():
        if look == 3 or draw.random() > keeper["habits"]["misses"]:
            out[look] = float(draw.uniform(low, high))
    return out


def recorded_measures(keeper, measures, gaps):
    """The measures that this keeper can tell of a batch."""
    logged = sum(high - low for low, high in gaps) < 15
    out = dict(measures)
    if not logged or not keeper["habits"]["logs"]:
        for kind in ("temp", "rh", "hatch_rh", "gap"):
            out.pop(kind)
    elif any(low < 19.5 and high > 20.5 for low, high in gaps):
        out.pop("hatch_rh")
    if not keeper["two_probes"]:
        out.pop("gap", None)
    if not keeper["weighs"]:
        out.pop("water")
    if not keeper["writes_times"]:
        out.pop("first")
        out.pop("spread")
    return out


def recorded_origin(draw, keeper, origin):
    """What is written of where the eggs came from; single cells are left blank."""
    wants = {"stored": "writes_stored", "elsewhere": "writes_pen", "age": "writes_age", "posted": "writes_post"}
    return {name: value for name, value in origin.items() if keeper[wants[name]] and draw.random() > 0.08}
