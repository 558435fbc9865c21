"""A family of made worlds to set the score's constants in: shapes of harm, delays, spread and habits drawn at random.

Every seed is another keeper in another world. Nothing here is shared with `hatchkit.simulate` or with the score, and
what is measured in it says nothing of worlds that were not drawn from it: the score is judged in others.

    make_season(folder, seed=1, cause="heat_spell", severity="severe") -> {"batch_hit": ..., "causes": [...], ...}
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

SEVERITY = {"mild": 0.17, "moderate": 0.36, "severe": 0.62}

#: Where each cause's harm falls: clears, days 0-2, 3-6, 7-13, 14-17, 18-21, pip, cull, rotten. Every world bends them.
SHAPES = {
    "infertile": (1, 0, 0, 0, 0, 0, 0, 0, 0),
    "long_storage": (0.3, 0.35, 0.2, 0.05, 0, 0.05, 0.05, 0, 0),
    "bad_storage": (0.3, 0.4, 0.2, 0.05, 0, 0.05, 0, 0, 0),
    "old_flock": (0.55, 0.2, 0.15, 0.02, 0, 0.05, 0, 0.03, 0),
    "flock_health": (0.05, 0.05, 0.2, 0.4, 0.1, 0.1, 0, 0.1, 0),
    "warm_throughout": (0, 0.05, 0.15, 0.15, 0.15, 0.2, 0.15, 0.15, 0),
    "cool_throughout": (0, 0.05, 0.05, 0.05, 0.1, 0.4, 0.25, 0.1, 0),
    "too_humid": (0, 0, 0, 0.05, 0.1, 0.5, 0.3, 0.05, 0),
    "too_dry": (0, 0, 0.05, 0.1, 0.2, 0.4, 0.2, 0.05, 0),
    "dry_hatch": (0, 0, 0, 0, 0, 0.2, 0.75, 0.05, 0),
    "turning": (0, 0.1, 0.25, 0.1, 0.15, 0.35, 0.05, 0, 0),
    "ventilation": (0, 0, 0.05, 0.2, 0.25, 0.3, 0.2, 0, 0),
    "contamination": (0, 0, 0.1, 0.25, 0.1, 0.05, 0, 0.05, 0.45),
    "posted_eggs": (0.3, 0.35, 0.2, 0.02, 0, 0.08, 0.05, 0, 0),
    "vitamin_lack": (0, 0, 0.15, 0.45, 0.1, 0.15, 0.05, 0.1, 0),
    "transfer_jolt": (0, 0, 0, 0, 0, 0.7, 0.25, 0.05, 0),
    "navel_infection": (0, 0, 0, 0, 0.05, 0.1, 0.05, 0.8, 0),
    "small_end_up": (0, 0, 0, 0.05, 0.1, 0.65, 0.15, 0.05, 0),
    "heat_spell": None,
    "cold_spell": None,
}
CAUSES = tuple(SHAPES)
FIRST_DAY = (0, 0, 3, 7, 14, 18, 20.5, 21, 8)
LAST_DAY = (0, 3, 7, 14, 18, 21, 21, 21.5, 17)

REMARKS = {
    "heat_spell": ["got far too hot", "überhitzt!", "surchauffe", "thermostat stuck"],
    "cold_spell": ["power cut", "Stromausfall nachts", "coupure de courant", "lid left open"],
    "turning": ["turner stopped for days", "Wendung ausgefallen", "not turned"],
    "ventilation": ["vents shut", "stickig"],
    "bad_storage": ["shaken in the car", "Frost im Lager"],
    "posted_eggs": ["eggs by post", "per Post", "par la poste"],
    "contamination": ["dirty eggs", "stank, one burst"],
    "dry_hatch": ["membrane dried", "ran dry", "Eihaut trocken"],
    "too_humid": ["drowned, wet", "small air cells", "ertrunken"],
    "too_dry": ["dry and stuck", "large air cells"],
    "vitamin_lack": ["curled toes", "krumme Zehen", "clubbed down"],
    "transfer_jolt": ["tray dropped at transfer"],
    "navel_infection": ["black navels", "mushy chicks"],
    "small_end_up": ["pointed end up, some", "head in small end"],
    "warm_throughout": ["hatched a day early", "open navels"],
    "cool_throughout": ["a day late", "soft chicks"],
    "flock_health": ["hens ill in spring"],
    "infertile": [],
    "old_flock": [],
    "long_storage": ["blood rings"],
}
IDLE = ["", "", "", "new feed", "mixed sizes", "visitors", "lovely spring", "eggs a little dirty", "candled by torch"]
HALF_DAYS, HALF_HEAT = (3, 7, 11, 16, 19), (14, 4, 11, 28, 18)


def make_season(folder, *, seed, cause, severity="severe", second=None):
    """Write a season folder; returns batch_hit, causes and what was planted. `cause` None plants nothing."""
    rng = np.random.default_rng([97, seed])
    folder = Path(folder)
    (folder / "sensors").mkdir(parents=True, exist_ok=True)
    world = _world(rng)
    rows, logs, hit = [], [], int(rng.integers(world["batches"]))
    planted = [name for name in (cause, second) if name]
    start = pd.Timestamp("2026-03-01 18:00")
    for place in range(world["batches"]):
        set_at = start + pd.Timedelta(days=26 * place)
        mine = planted if place == hit or (world["twice"] and place == (hit + 1) % world["batches"]) else []
        row, log = _batch(rng, world, f"B{place + 1}", set_at, mine, severity)
        rows.append(row)
        logs.append(log)
    pd.DataFrame(rows).to_csv(folder / "batches.csv", index=False)
    log = pd.concat(logs)
    if world["log"] != "none":
        log.to_csv(folder / "sensors" / "A.csv", index=False)
    machine = 'files = ["sensors/A.csv"]\nair = "fan"\n' + ("probe_offset_c = 0.0\n" if world["checked"] else "")
    (folder / "season.toml").write_text(
        'title = "Invented"\ndefault_species = "chicken"\ntimezone = "UTC"\n'
        f'default_incubator = "A"\n[incubators.A]\n{machine}',
        encoding="utf-8",
    )
    return {"batch_hit": f"B{hit + 1}", "causes": planted, "severity": severity, "seed": seed, "log": world["log"]}


def _world(rng) -> dict:
    """One keeper and one nature."""
    return {
        "batches": int(rng.integers(5, 13)),
        "eggs": int(rng.choice([18, 24, 36, 48, 60])),
        "fertility": rng.uniform(0.8, 0.97),
        "spread": rng.uniform(0.2, 0.55),
        "shape": rng.lognormal(0, 0.6, (len(SHAPES), 9)),
        "base": rng.lognormal(0, 0.35, 9),
        "delay": rng.choice([0.3, 1.0, 3.0, 5.0]),
        "dose": rng.lognormal(0, 0.5),
        "cold_half": rng.lognormal(np.log(20), 0.5),
        "scatter": rng.uniform(0, 0.6),
        "looks": [(7,), (7, 14), (8, 18), (7, 14, 18), (10,), ()][int(rng.integers(6))],
        "opens": rng.random() < 0.5,
        "culls": rng.random() < 0.6,
        "pips": rng.random() < 0.7,
        "remark": rng.choice([0.15, 0.4, 0.8]),
        "weighs": rng.random() < 0.4,
        "rh": rng.random() < 0.75,
        "ages": rng.random() < 0.5,
        "stores": rng.random() < 0.75,
        "hours": rng.random() < 0.6,
        "log": str(rng.choice(["full", "full", "full", "gaps", "none"])),
        "checked": rng.random() < 0.4,
        "step_h": float(rng.choice([0.5, 1.0])),
        "hens": int(rng.choice([35, 50, 80, 110])),
        "twice": rng.random() < 0.15,
        "usual_days": float(rng.choice([3, 5, 7, 11])),
        "usual_rh": float(rng.choice([48, 55, 60])),
        "conductance": rng.lognormal(np.log(0.0295), 0.06),
        "malpositions": rng.random() < 0.4,
        "rotten": rng.random() < 0.6,
    }


def _batch(rng, w, name, set_at, planted, severity):
    """One row of the sheet and its log."""
    trace = {
        "storage": max(1.0, rng.normal(w["usual_days"], 1.5)),
        "hens": w["hens"] + rng.integers(0, 12),
        "rh": w["usual_rh"] + rng.normal(0, 2.5),
        "rh_hatch": 70 + rng.normal(0, 4),
        "off": rng.normal(0, 0.1),
        "probe": 0.0,
        "rotten": rng.random() * 0.01,
        "lies": 0.1,
    }
    hours = np.arange(0, 22.5 * 24, w["step_h"])
    air = 37.55 + trace["off"] + rng.normal(0, 0.12, len(hours))
    air[: int(4 / w["step_h"])] -= 3
    if rng.random() < 0.5:  # an opening or a wobble that harms nobody
        at = int(rng.uniform(4, 17) * 24 / w["step_h"])
        air[at : at + max(1, int(1.5 / w["step_h"]))] -= rng.uniform(1, 5)
    harm = np.zeros(9)
    events = []
    for cause in planted:
        size = -np.log(1 - SEVERITY[severity] * rng.uniform(0.85, 1.15))
        if SHAPES[cause] is None:
            air, event = _event(rng, w, cause, size, hours, air)
            events.append(event)
        else:
            shape = np.array(SHAPES[cause]) * w["shape"][list(SHAPES).index(cause)]
            harm += size * shape / shape.sum()
            _leave_trace(rng, w, cause, SEVERITY[severity], trace)
    air = air + trace.get("true_off", 0.0)
    eggs = int(w["eggs"] + rng.integers(-4, 5))
    ends = _ends(rng, w, eggs, harm, events)
    row = _write(rng, w, name, set_at, eggs, ends, trace, planted)
    shown = air + trace["probe"]
    log = pd.DataFrame(
        {"time": (set_at + pd.to_timedelta(hours, unit="h")).strftime("%Y-%m-%d %H:%M"), "temperature": shown.round(2)}
    )
    if w["rh"]:
        log["humidity"] = (
            np.where(hours < 18 * 24, trace["rh"], trace["rh_hatch"]) + rng.normal(0, 2, len(hours))
        ).round(0)
    if w["log"] == "gaps":
        for _ in range(4):
            at = rng.uniform(0, 21 * 24)
            log = log[~((hours[log.index] > at) & (hours[log.index] < at + rng.uniform(8, 60)))]
    return row, log


def _event(rng, w, cause, size, hours, air):
    """Heat or cold at one stretch, as strong as this world needs for the harm; returns air and (day, size)."""
    day = rng.uniform(2.0, 17.5)
    at = int(day * 24 / w["step_h"])
    air = air.copy()
    if cause == "heat_spell":
        need = size / np.log(2) * w["dose"] * np.interp(day, HALF_DAYS, HALF_HEAT)  # hours at 43 degC of the egg
        level = rng.uniform(42.4, 44.2)
        warm = np.interp(day, (0, 9, 14, 18), (-0.1, 0.2, 0.9, 1.2))
        rate = (3.0 if level + warm > 43 else 4.0) ** (level + warm - 43)
        length = np.clip(need / rate + 1.2, 1.5, 20)
        air[at : at + max(2, int(length / w["step_h"]))] = level + rng.normal(0, 0.1)
    else:
        level = rng.choice([20.0, 25.0, 30.0])
        lost = size / np.log(2) * w["cold_half"] * rng.lognormal(0, 0.2)
        length = np.clip(lost / {20.0: 1, 25.0: 0.97, 30.0: 0.4}[float(level)] + 2, 4, 120)
        steps = np.arange(len(air[at : at + int(length / w["step_h"])])) * w["step_h"]
        air[at : at + len(steps)] = level + (37.5 - level) * np.exp(-steps / 1.5)
    return air, (day, size)


def _leave_trace(rng, w, cause, part, trace):
    """What a cause leaves in the records, to a varying degree."""
    amount = part / 0.62 * rng.uniform(0.8, 1.25)
    if cause == "long_storage":
        trace["storage"] = w["usual_days"] + 4 + 9 * amount
    elif cause == "old_flock":
        trace["hens"] = max(75, w["hens"] + 20) + 30 * amount
    elif cause in ("too_dry", "too_humid"):
        trace["rh"] += (-1 if cause == "too_dry" else 1) * (8 + 16 * amount)
    elif cause == "dry_hatch":
        trace["rh_hatch"] -= 14 + 22 * amount
    elif cause in ("warm_throughout", "cool_throughout"):
        off = (1 if cause == "warm_throughout" else -1) * (0.35 + 0.9 * amount)
        trace["true_off"] = off
        if rng.random() < 0.5:  # the probe lies: the log looks as always
            trace["probe"] = -off
    elif cause == "contamination":
        trace["rotten"] = 0.04 + 0.15 * amount
    elif cause in ("turning", "small_end_up"):
        trace["lies"] = 0.25 + 0.4 * amount


def _ends(rng, w, eggs, harm, events):
    """(fate, day) of every egg."""
    base = -np.log(np.array([w["fertility"], 0.95, 0.955, 0.98, 0.985, 0.955, 0.98, 0.98, 0.993])) * w["base"]
    hazard = base * np.exp(rng.normal(0, w["spread"], 9)) + harm
    ends = []
    for _ in range(eggs):
        times = []
        for band in range(9):
            if rng.random() < 1 - np.exp(-hazard[band]):
                day = rng.uniform(FIRST_DAY[band], LAST_DAY[band])
                times.append((day, ("clear", *["dead"] * 5, "pipped", "culled", "rotten")[band]))
        for day, size in events:
            if rng.random() < 1 - np.exp(-size * rng.lognormal(-(w["scatter"] ** 2) / 2, w["scatter"])):
                later = rng.random()
                at = day + rng.exponential(w["delay"]) if later < 0.85 else rng.uniform(18, 21)
                times.append((min(at, 20.9), "dead" if later < 0.93 else "pipped"))
        day, fate = min(times) if times else (21, "hatched")
        ends.append((fate, day))
    return ends


def _write(rng, w, name, set_at, eggs, ends, trace, planted):
    """The row as this keeper writes it."""
    row = {
        "batch": name,
        "set_at": f"{set_at:%Y-%m-%d %H:%M}",
        "eggs_set": eggs,
        "species": "chicken",
        "incubator": "A",
    }
    if w["stores"]:
        row["stored_days"] = round(trace["storage"])
    if w["ages"]:
        row["flock_age_weeks"] = int(trace["hens"])
    left = list(ends)
    for number, look in enumerate(w["looks"], 1):
        clear = [
            egg for egg in left if egg[0] == "clear" or (egg[0] == "dead" and egg[1] < min(look, rng.uniform(2, 3.5)))
        ]
        left = [egg for egg in left if egg not in clear]
        dead = [egg for egg in left if egg[0] == "dead" and egg[1] < look - 0.3 and rng.random() > 0.05]
        left = [egg for egg in left if egg not in dead]
        column = "transfer_at" if look == 18 and number == len(w["looks"]) else f"candle{number}_at"
        digit = 3 if column == "transfer_at" else number
        row |= {
            column: f"{set_at + pd.Timedelta(days=look):%Y-%m-%d %H:%M}",
            f"clear{digit}": len(clear),
            f"dead{digit}": len(dead),
        }
    rotten = sum(egg[0] == "rotten" for egg in left)
    row["removed"] = rotten
    if w["rotten"]:
        row["contaminated"] = max(rotten, min(round(trace["rotten"] * eggs), rotten + 2)) if rotten else 0
    hatched = sum(egg[0] in ("hatched", "culled") for egg in left)
    row["hatched"] = hatched
    if w["culls"]:
        row["culled"] = sum(egg[0] == "culled" for egg in left)
    unhatched = [egg for egg in left if egg[0] in ("dead", "clear")]
    pipped = sum(egg[0] == "pipped" for egg in left)
    if w["pips"]:
        row["pipped_dead"] = pipped
    if w["opens"]:
        days = np.array([day if fate == "dead" else -1 for fate, day in unhatched])
        late = int((days >= 14).sum()) + (0 if w["pips"] else pipped)
        row |= {
            "broken_infertile": int((days < 1).sum()),
            "broken_early": int(((days >= 1) & (days < 7)).sum()),
            "broken_mid": int(((days >= 7) & (days < 14)).sum()),
            "broken_late": late,
        }
        if w["malpositions"]:
            row["malpositioned"] = int(rng.binomial(late, min(trace["lies"], 0.9)))
    else:
        row["dead_in_shell"] = len(unhatched) + (0 if w["pips"] else pipped)
    if w["hours"]:
        off = trace.get("true_off", 0.0)
        first = 20.3 * 24 - off * 30 * (0 if trace["probe"] == 0 and off == 0 else 1) + rng.normal(0, 5)
        row |= {
            "first_hatch_at": f"{set_at + pd.Timedelta(hours=first):%Y-%m-%d %H:%M}",
            "last_hatch_at": f"{set_at + pd.Timedelta(hours=first + rng.normal(26, 5)):%Y-%m-%d %H:%M}",
        }
    row["taken_off_at"] = f"{set_at + pd.Timedelta(days=22.3):%Y-%m-%d %H:%M}"
    said = [str(rng.choice(REMARKS[cause])) for cause in planted if REMARKS[cause] and rng.random() < w["remark"]]
    row["notes"] = "; ".join(said) or str(rng.choice(IDLE))
    return row
