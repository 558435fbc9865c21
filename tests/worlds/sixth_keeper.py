"""A keeper of the sixth world: habits of record, machines, and the season's plan of batches before anything goes wrong.

Shares of habits are this world's own guess at small breeders (no source). Lengths and days of transfer: the shared Bird
table of codes.py. A machine holds one batch at a time.
"""

from __future__ import annotations

from datetime import datetime, timedelta

import numpy as np

from .codes import BIRDS as BODIES
from .sixth_eggs import BIRDS, draw_keepers

LANGUAGES = ("en", "de", "fr", "es")
EGGS = {"chicken": (20, 60), "duck": (14, 40), "quail": (30, 80), "turkey": (12, 36), "goose": (10, 24)}
# figure: (middle, spread among keepers or machines, spread among batches, whose level it is)
GAUGES = {
    "temp": (0.0, 0.12, 0.09, "machine"),  # degC off the set point, spells left out
    "rh": (51.0, 4.5, 3.0, "machine"),  # % until transfer
    "rh_hatch": (69.0, 6.0, 4.0, "machine"),  # % after it
    "uneven": (0.3, 0.12, 0.10, "machine"),  # degC between two probes
    "loss": (0.125, 0.010, 0.008, "keeper"),  # share of the weight at setting, lost by transfer
    "first": (-14.0, 6.0, 7.0, "keeper"),  # hours from the full term to the first chick
    "width": (26.0, 6.0, 6.0, "keeper"),  # hours from first to last chick
    "stored": (4.5, 1.5, 1.6, "keeper"),  # days; some keepers store a fortnight as a rule
    "age": (42.0, 9.0, 4.0, "keeper"),  # weeks; some have none but old hens
}
LEAST = {
    "temp": -4,
    "rh": 18,
    "rh_hatch": 25,
    "uneven": 0,
    "loss": 0.03,
    "first": -90,
    "width": 5,
    "stored": 0,
    "age": 22,
}
LIMIT_RH = 88
ALL_STORED, ALL_OLD = 0.10, 0.12  # harmless departures: a fortnight in all, old hens in all


def draw_habits(rng):
    """What a keeper writes down, and how."""

    def chance(share):
        return bool(rng.random() < share)

    looks = [(7, 14), (7, 14, "transfer"), (7,), (10,), ()][rng.choice(5, p=[0.38, 0.27, 0.15, 0.10, 0.10])]
    log = str(rng.choice(["both", "temp", "notes", "none"], p=[0.62, 0.10, 0.10, 0.18]))
    weighs = chance(0.4)
    return {
        "language": str(rng.choice(LANGUAGES)),
        "looks": looks,
        "opens": chance(0.65),
        "pipped": chance(0.82),
        "malpositioned": chance(0.25),
        "log": log,
        "two_probes": log == "both" and chance(0.2),
        "weighs": weighs,
        "hours": chance(0.5),
        "stored": chance(0.6),
        "age": chance(0.45),
        "posted": chance(0.35),
        "signs": chance(0.65),
        "remarks": chance(0.7),
        "slips": 0.10 if chance(0.4) else 0.0,
        "workbook": weighs or chance(0.4),
        "set_c": float(rng.choice([37.5, 37.6, 37.7])),
    }


def draw_levels(rng, machines):
    """Usual level of each figure with this keeper, or with each machine."""
    levels = {}
    for name, (middle, among, _, whose) in GAUGES.items():
        size = len(machines) if whose == "machine" else 1
        drawn = rng.normal(middle, among, size)
        levels[name] = dict(zip(machines, drawn, strict=True)) if whose == "machine" else float(drawn[0])
    if rng.random() < ALL_STORED:
        levels["stored"] = 13.5
    if rng.random() < ALL_OLD:
        levels["age"] = 76.0
    return levels


def draw_plan(rng):
    """The season: (habits, levels, keeper's own luck of eggs by bird, list of planned batches)."""
    habits = draw_habits(rng)
    machines = list("ABC"[: rng.choice([1, 2, 3], p=[0.45, 0.38, 0.17])])
    birds = list(rng.choice(list(BIRDS), size=2, replace=False, p=[0.46, 0.17, 0.17, 0.1, 0.1]))
    birds = birds if rng.random() < 0.45 else birds[:1]
    own = {bird: draw_keepers(rng, 1, *BIRDS[bird]) for bird in birds}
    free = {machine: datetime(2025, 2, 10, 18) + timedelta(days=int(rng.integers(0, 25))) for machine in machines}
    plan = []
    for number in range(int(rng.integers(5, 10))):
        machine = min(free, key=free.get)
        bird = str(birds[0] if rng.random() < 0.65 else birds[-1])
        body = BODIES[bird]
        set_at = free[machine] + timedelta(hours=int(rng.integers(-2, 3)))
        plan.append(
            {
                "name": f"{number + 1}",
                "bird": bird,
                "machine": machine,
                "set_at": set_at,
                "set": int(rng.integers(EGGS[bird][0], EGGS[bird][1] + 1)),
                "looks": _looks(rng, habits, body),  # [(column, day)]
                "opens": habits["opens"] and rng.random() < 0.92,
                "term": body.days,
                "transfer": body.transfer,
            }
        )
        free[machine] = set_at + timedelta(days=int(body.days) + 3 + int(rng.integers(1, 7)))
    return habits, draw_levels(rng, machines), own, plan


def _looks(rng, habits, body):
    """Looks at this batch, (column, day of its bird); a keeper may be a day early or late, or skip one."""
    looks = []
    for wanted in habits["looks"]:
        if wanted == "transfer":
            looks.append(("transfer", float(body.transfer)))
        elif rng.random() < 0.94:
            day = round(body.to_bird(wanted)) + rng.choice([-1, 0, 1], p=[0.12, 0.73, 0.15])
            looks.append(("second" if wanted == 14 else "first", float(day)))
    return looks


def look_days(batch):
    """Days of the looks on the hen's scale."""
    return [hens_days(batch, day) for _, day in batch["looks"]]


def hens_days(batch, day):
    """Days of the hen's scale from days of the batch's bird."""
    return day * 21.0 / batch["term"]


def draw_gauges(rng, habits, levels, batch, shifts):
    """Figures of a batch as they were, before anyone kept them. `shifts`: {figure: what a cause adds}."""
    out = {}
    for name, (_, _, spread, whose) in GAUGES.items():
        level = levels[name][batch["machine"]] if whose == "machine" else levels[name]
        value = rng.normal(level, spread) + shifts.get(name, 0.0)
        value = max(value, LEAST[name])
        out[name] = float(min(value, LIMIT_RH) if name.startswith("rh") else value)
    out["stored"], out["age"] = float(round(out["stored"])), float(round(out["age"]))
    out["first"], out["width"] = float(round(out["first"])), float(round(out["width"]))
    return out


def kept(rng, habits, gauges, cover):
    """The figures that were written or logged: {figure: value}. `cover`: which of the 21 days a log covers."""
    names = ["temp", "rh"] if habits["log"] == "notes" else []
    if cover[:18].sum() >= 3:
        names += ["temp"] + ["rh"] * (habits["log"] == "both") + ["uneven"] * habits["two_probes"]
    if cover[18:].any() and habits["log"] == "both":
        names.append("rh_hatch")
    names += ["loss"] * habits["weighs"] + ["first", "width"] * habits["hours"]
    names += ["stored"] * habits["stored"] + ["age"] * habits["age"]
    logged = ("uneven", "rh_hatch") if habits["log"] == "notes" else ("temp", "rh", "uneven", "rh_hatch")
    return {name: gauges[name] for name in names if name in logged or rng.random() < 0.93}


def draw_cover(rng, habits):
    """Days of the hen that the log of a batch covers; shape (21,), bool."""
    cover = np.full(21, habits["log"] in ("both", "temp"))
    if rng.random() < 0.07:
        cover[:] = False
    if rng.random() < 0.3:
        start = int(rng.integers(0, 20))
        cover[start : start + int(rng.integers(1, 7))] = False
    return cover
