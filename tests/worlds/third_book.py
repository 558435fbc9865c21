"""World 'third': a keeper's book, made egg by egg, with habits unlike those of world 'second'.

Books are full, lump everything unhatched together, or are sparse; stages are judged by how the embryo looks, so a
slowed
embryo is written younger than its days. Sources as habits.py; rates from memory.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from . import air, words


def draw_habits(draw):
    """Habits of a season's keeper."""
    return {
        "book": str(draw.choice(["full", "shell", "sparse"], p=[0.6, 0.25, 0.15])),
        "first": float(draw.uniform(0.2, 0.42)),  # share of the time at the first look
        "second": float(draw.uniform(0.55, 0.75)) if draw.random() < 0.6 else None,
        "sees": float(draw.uniform(0.7, 0.99)),
        "ring_from": float(draw.uniform(2.0, 4.0)),
        "pips_apart": bool(draw.random() < 0.7),
        "culls": bool(draw.random() < 0.5),
        "smells": bool(draw.random() < 0.75),
        "positions": bool(draw.random() < 0.25),
        "blur": float(draw.uniform(0.3, 1.8)),
        "lazy": float(draw.choice([0.0, draw.uniform(0.1, 0.5)], p=[0.7, 0.3])),  # unhatched eggs left unopened
        "times": bool(draw.random() < 0.5),
        "storage": str(draw.choice(["days", "none"], p=[0.75, 0.25])),
        "age": bool(draw.random() < 0.6),
        "post": bool(draw.random() < 0.5),
        "signs": bool(draw.random() < 0.55),
        "false_sign": float(draw.uniform(0.005, 0.05)),
        "remark_true": float(draw.uniform(0.05, 0.4)),
        "remark_false": float(draw.uniform(0.02, 0.15)),
        "slip": float(draw.uniform(0.0, 0.05)),
    }


def _look(eggs, left, day, habits, draw):
    """Eggs taken out at a look: (clear, dead, rot) masks among those still in."""
    dead = left & ((eggs["end"] == "infertile") | ((eggs["end"] == "dead") & (eggs["day"] < day - 0.3)))
    found = dead & (draw.random(len(eggs)) < habits["sees"])
    rot = found & eggs["rot"] & habits["smells"]
    clear = (
        found
        & ~rot
        & ((eggs["end"] == "infertile") | (eggs["stage"] + draw.normal(0, 0.5, len(eggs)) < habits["ring_from"]))
    )
    return clear, found & ~rot & ~clear, rot


def row(record, eggs, season, bird, machine, set_at, off, draw):
    """The batch's row as this keeper writes it; signs and remark also go into the record."""
    habits, found, codes = season["habits"], record["found"], record["causes"]
    days = [bird.days * habits["first"] + draw.normal(0, 0.5), None, bird.transfer + draw.normal(0, 0.4)]
    if habits["second"]:
        days[1] = float(np.clip(bird.days * habits["second"] + draw.normal(0, 0.6), days[0] + 1, days[2] - 0.5))
    out, left, rotten = {}, pd.Series(True, index=eggs.index), 0
    for number, day in enumerate(days[:2], start=1):
        if day is None:
            continue
        clear, dead, rot = _look(eggs, left, day, habits, draw)
        out |= {f"clear{number}": int(clear.sum()), f"dead{number}": int(dead.sum())}
        rotten += int(rot.sum())
        left &= ~(clear | dead | rot)
    hatched = eggs["end"].isin(["sound", "cull"])
    born = set_at + pd.to_timedelta(np.sort(eggs.loc[hatched, "hatch_h"]), unit="h")
    off = max(off, born[-1] + pd.Timedelta(hours=4)) if len(born) else off
    out |= _unhatched(eggs, left & ~hatched, habits, draw)
    out |= {"hatched": int(hatched.sum()), "culled": int((eggs["end"] == "cull").sum()) if habits["culls"] else None}
    out |= {"removed": rotten or None, "contaminated": rotten if habits["smells"] else None}
    if habits["book"] == "sparse":
        out = {k: out.get(k) for k in ("clear1", "dead1", "hatched", "removed", "clear2", "dead2")}
    for name in ("clear1", "hatched", "dead_in_shell"):
        if out.get(name) and "broken_late" not in out and draw.random() < habits["slip"]:
            out[name] = max(0, out[name] + int(draw.choice([-1, 1])))
    strength = float(np.clip(0.35 + 1.2 * record["excess"], 0, 1))
    record["signs"], record["remark"] = (
        words.draw_signs(codes, strength, habits, draw),
        words.draw_remark(codes, habits, draw),
    )
    timed = habits["times"] and len(born) >= 2
    at = [None if d is None else set_at + pd.Timedelta(days=float(d)) for d in days]
    return {
        "batch": record["batch"],
        "species": bird.name,
        "incubator": machine,
        "set_at": set_at,
        "eggs_set": record["eggs_set"],
        "candle1_at": at[0],
        "candle2_at": at[1],
        "transfer_at": at[2],
        "taken_off_at": off,
        "first_hatch_at": born[0] if timed else None,
        "last_hatch_at": born[-1] if timed else None,
        "stored_days": round(float(np.exp(found["log_stored"]))) if habits["storage"] == "days" else None,
        "flock_age_weeks": round(float(np.exp(found["log_age"]))) if habits["age"] else None,
        "posted": ("yes" if found["posted"] else "no") if habits["post"] else None,
        "signs": words.sign_text(record["signs"], season["language"]) or None,
        "notes": words.remark_text(record["remark"], season["language"], draw) or None,
    } | out


def _unhatched(eggs, rest, habits, draw):
    """Counts of the eggs that lie there at take-off."""
    pip = rest & (eggs["end"] == "pip")
    shell = rest & ~pip if habits["pips_apart"] else rest
    out = {"pipped_dead": int(pip.sum()) if habits["pips_apart"] else None}
    if habits["book"] != "full" or habits["lazy"]:
        out["dead_in_shell"] = int(shell.sum())
    if habits["book"] != "full":
        return out
    opened = shell & (draw.random(len(eggs)) >= habits["lazy"])
    looks = eggs["stage"].fillna(20.5) + draw.normal(0, habits["blur"], len(eggs))
    empty = opened & ((eggs["end"] == "infertile") | ((eggs["stage"] < 2.0) & (draw.random(len(eggs)) < 0.7)))
    early, mid = opened & ~empty & (looks <= 7), opened & ~empty & (looks > 7) & (looks <= 14)
    late = opened & ~empty & (looks > 14)
    out |= {
        "broken_infertile": int(empty.sum()),
        "broken_early": int(early.sum()),
        "broken_mid": int(mid.sum()),
        "broken_late": int(late.sum()),
    }
    if habits["positions"]:
        out["malpositioned"] = int((late & eggs["mal"]).sum())
    return out


def logs(rows, found_of, bird, draw):
    """Logs of all machines and their settings: (logs by machine, settings by machine)."""
    out, settings = {}, {}
    for machine in sorted({r["incubator"] for r in rows}):
        logger = air.draw_logger(draw, "third")
        settings[machine] = {"set_point_c": bird.set_c, "probe_offset_c": logger["offset"] if logger["told"] else None}
        if logger["missing"]:
            continue
        probes = [[] for _ in range(2 if logger["two"] else 1)]
        for r in (r for r in rows if r["incubator"] == machine):
            found = found_of[r["batch"]]
            real = air.batch_air(bird, found, r["set_at"], r["taken_off_at"], logger["minutes"], draw)
            for probe, frame in zip(probes, air.shown(real, logger, draw, found["spread"]), strict=True):
                probe.append(frame)
        whole = [pd.concat(p, ignore_index=True).drop_duplicates("time").sort_values("time") for p in probes]
        out[machine] = [air.with_gaps(w, logger["gaps"], draw) for w in whole]
    return out, settings
