"""World 'second': hazards by the day, causes as kernels, batches overdispersed, a keeper with habits.

See kernels.py, surroundings.py, habits.py, words.py, air.py for the laws and their sources. Here they are put together.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from . import air, kernels, surroundings, words, writing
from . import habits as keeping
from .codes import BIRDS, DAYS, SEVERITY, check_cause


def season_numbers(bird, codes, draw):
    """Numbers that hold for the whole season, drawn from wide ranges (reasons in each line)."""
    kept = float(np.clip(draw.normal(bird.kept, 0.05), 0.62, 0.93))  # small flocks 70-90 % of fertile (S52), S08
    return {
        "kept": kept,
        "background": kernels.background(kept, draw),
        "fertile": float(draw.uniform(*bird.fertile)),
        "fertile_sd": float(draw.uniform(0.1, 0.5)),  # logit; batches of one pen differ
        "early_sd": float(draw.uniform(0.1, 0.45)),  # log; overdispersion of small batches, from memory
        "late_sd": float(draw.uniform(0.1, 0.45)),
        "per_stored_day": float(draw.uniform(0.0, 0.05)),  # log early hazard per day past 7: about 0.5 points/day (P37)
        "per_week_old": float(draw.uniform(0.0, 0.006)),  # log hazard per week past 60: 1-3 points (PMC7921000)
        "home": surroundings.season_home(bird, codes, draw),
        "habits": keeping.draw_habits(draw),
        "language": str(draw.choice(words.LANGUAGES)),
    }


def batch_background(season, found, early, late):
    """Ordinary hazards of one batch: the season's, with its frailty and the little that storage and age do.

    `early` and `late` are log frailties; columns (draws, 1) give one row of hazards per draw.
    """
    stored, age = np.exp(found["log_stored"]), np.exp(found["log_age"])
    early = (
        early + season["per_stored_day"] * np.clip(stored - 7, 0, 8) + season["per_week_old"] * np.clip(age - 60, 0, 60)
    )
    late = late + 0.6 * season["per_week_old"] * np.clip(age - 60, 0, 60)
    first = np.arange(len(kernels.STATES)) < 8
    weights = np.where(first, early, late)
    return season["background"] * np.exp(weights)


def cause_strength(sound, excess):
    """Cumulative hazard that takes the share `excess` of fertile eggs beyond the ordinary loss (arrays broadcast)."""
    return -np.log1p(-np.minimum(excess / sound, 0.95))


def _fates(size, fertile, base, codes, excess, parts, kernel_of, draw):
    """True ends of the eggs of one batch: (frame end, lost_to (cause, 'ordinary' or None), expected excess share)."""
    sound = float(np.exp(-base.sum()))
    strength = float(cause_strength(sound, excess))
    by_cause = dict(zip(codes, strength * np.asarray(parts, float), strict=True))
    barren = 1 - np.exp(-by_cause.get("infertile", 0.0))
    killers = [c for c in codes if c != "infertile"]
    owed, kept = kernels.state_probabilities(base, [by_cause[c] * kernel_of[c] for c in killers])
    cells = [("infertile", "ordinary", 1 - fertile), ("infertile", "infertile", fertile * barren)]
    alive = fertile * (1 - barren)
    for row, owner in zip(owed, ["ordinary", *killers], strict=True):
        cells += [(state, owner, alive * p) for state, p in zip(kernels.STATES, row, strict=True)]
    cells.append(("sound", None, alive * kept))
    chance = np.array([c[2] for c in cells])
    picked = draw.choice(len(cells), size, p=chance / chance.sum())
    eggs = pd.DataFrame([cells[i][:2] for i in picked], columns=["end", "killed_by"])
    eggs["lost_to"] = _lost_to(eggs, base, draw)
    return eggs, sound - (1 - barren) * kept


def _lost_to(eggs, base, draw):
    """Whom a loss is owed to: an egg killed by a cause may have died later anyway, and then is an ordinary loss."""
    ordered = base[kernels.ORDER]
    after = dict(
        zip((kernels.STATES[i] for i in kernels.ORDER), ordered[::-1].cumsum()[::-1] - ordered / 2, strict=True)
    )
    spared = np.exp(-np.array([after.get(end, base.sum()) for end in eggs["end"]])) > draw.random(len(eggs))
    caused = eggs["killed_by"].notna() & (eggs["killed_by"] != "ordinary")
    return eggs["killed_by"].where(~caused | spared, "ordinary")


def _true_day(end, bird, draw):
    """Day of death on the bird's calendar; NaN for infertile and hatched."""
    if end.startswith("d"):
        day = int(end[1:]) - draw.random()
    elif end in ("mal", "pip"):
        day = draw.uniform(19.0, 20.5) if end == "mal" else draw.uniform(20.3, 21.2)
    elif end == "rot":
        day = draw.uniform(4, 16)
    else:
        return np.nan
    return float(bird.to_bird(day))


def make(folder, seed, cause=None, severity="moderate", species="chicken", scope="batch"):
    """One season of world 'second'. See worlds.make_season."""
    draw = np.random.default_rng([2, seed])
    codes, bird = check_cause(cause), BIRDS[species]
    season = season_numbers(bird, codes, draw)
    habits = season["habits"]
    plan = writing.schedule(bird, int(draw.integers(4, 10)), int(draw.integers(1, 4)), draw)
    hit = int(draw.integers(len(plan)))
    age = {c: kernels.event_age(c, draw) for c in codes}
    kernel_of = {c: kernels.kernel(c, draw, age[c]) for c in codes if c != "infertile"}
    batches, rows, frames, air_of = [], [], [], {}
    for i, (machine, set_at, off) in enumerate(plan):
        mine = codes if codes and (scope == "season" or i == hit) else ()
        found = surroundings.draw_batch(bird, season["home"], mine, draw, age)
        record, eggs = _batch(i, season, bird, found, mine, severity, kernel_of, draw)
        looks = keeping.look_days(bird, habits, draw)
        row = _row(record, eggs, looks, season, bird, machine, set_at, off, draw)
        batches.append(record), rows.append(row)
        frames.append(eggs.assign(batch=row["batch"]))
        air_of[row["batch"]] = found
    logs, incubators, has_log = _logs(plan, rows, air_of, bird, season, draw)
    for record in batches:
        record["shown"] = _shown(record, habits, has_log)
    losses = [0.12 * (1 - min(b["found"]["rh_set"], 95) / 100) / 0.48 * float(draw.lognormal(0, 0.08)) for b in batches]
    weights = writing.weighings(bird, rows, losses, draw) if draw.random() < 0.3 else None
    settings = {
        "zone": writing.ZONES[season["language"]],
        "language": season["language"],
        "altitude_m": season["home"]["altitude_m"],
        "incubators": incubators,
    }
    writing.write_season(folder, rows, logs, settings, weights, style=str(draw.choice(["csv", "xlsx"], p=[0.7, 0.3])))
    return truth("second", seed, species, codes, severity, scope, batches, pd.concat(frames, ignore_index=True), season)


def _batch(i, season, bird, found, codes, severity, kernel_of, draw):
    """True fate of one batch: (record, eggs)."""
    size = int(draw.integers(16, 61))
    early, late = draw.normal(0, season["early_sd"]), draw.normal(0, season["late_sd"])
    base = batch_background(season, found, early, late)
    odds = np.log(season["fertile"] / (1 - season["fertile"])) + draw.normal(0, season["fertile_sd"])
    fertile = float(1 / (1 + np.exp(-odds)))
    excess = float(draw.uniform(*SEVERITY[severity])) if codes else 0.0
    parts = draw.dirichlet([4.0] * len(codes)) if codes else np.array([])
    eggs, expected = _fates(size, fertile, base, codes, excess, parts, kernel_of, draw)
    record = {
        "batch": str(i + 1),
        "eggs_set": size,
        "fertile": fertile,
        "base": base,
        "causes": codes,
        "excess": expected,
        "parts": dict(zip(codes, parts, strict=True)),
        "found": found,
    }
    eggs["day"] = [_true_day(end, bird, draw) for end in eggs["end"]]
    return record, eggs


def _row(record, eggs, looks, season, bird, machine, set_at, off, draw):
    """The keeper's row of one batch; puts what was seen into the record for the oracle."""
    habits, found, codes = season["habits"], record["found"], record["causes"]
    table = keeping.channel(bird, looks, habits)
    at = {name: i for i, name in enumerate(keeping.ENDS)}
    seen = np.zeros(len(keeping.SEEN), int)
    for end in eggs["end"]:
        seen[draw.choice(len(seen), p=table[at[end]])] += 1
    mean, spread = surroundings.hatch_hours(found, codes, bird, draw)
    out = writing.due(
        bird, set_at, np.sort(draw.normal(mean, spread, int((eggs["end"].isin(["sound", "cull"])).sum())))
    )
    off = max(off, out[-1] + pd.Timedelta(hours=6)) if len(out) else off
    strength = float(np.clip(0.35 + 1.2 * record["excess"], 0, 1))
    signs = words.draw_signs(codes, strength, habits, draw)
    remark = words.draw_remark(codes, habits, draw)
    timed = habits["hatch_times"] and len(out) >= 3
    record |= {
        "looks": looks,
        "seen": seen,
        "signs": signs,
        "remark": remark,
        "hatch": (
            (out[0] - set_at).total_seconds() / 3600 - bird.days * 24,
            (out[-1] - set_at).total_seconds() / 3600 - bird.days * 24,
            len(out),
        )
        if timed
        else None,
    }
    days = [None if d is None else set_at + pd.Timedelta(days=d) for d in looks]
    row = {
        "batch": record["batch"],
        "species": bird.name,
        "pen": "yard",
        "incubator": machine,
        "set_at": set_at,
        "eggs_set": record["eggs_set"],
        "candle1_at": days[0],
        "candle2_at": days[1],
        "transfer_at": days[2],
        "taken_off_at": off,
        "first_hatch_at": out[0] if timed else None,
        "last_hatch_at": out[-1] if timed else None,
    }
    row["stored_days"] = round(float(np.exp(found["log_stored"]))) if habits["stored"] else None
    row["flock_age_weeks"] = round(float(np.exp(found["log_age"]))) if habits["age"] else None
    row["posted"] = ("yes" if found["posted"] else "no") if habits["posted"] else None
    row |= keeping.written(seen, habits, looks, draw)
    row["signs"] = words.sign_text(signs, season["language"]) or None
    row["notes"] = words.remark_text(remark, season["language"], draw) or None
    return row


def _logs(plan, rows, air_of, bird, season, draw):
    """Logs of all machines: (logs by machine, settings by machine, machines with a log)."""
    logs, incubators, has_log = {}, {}, {}
    for machine in sorted({p[0] for p in plan}):
        logger = air.draw_logger(draw, "second")
        told = logger["offset"] if logger["told"] else None
        incubators[machine] = {"set_point_c": bird.set_c, "probe_offset_c": told}
        if logger["missing"]:
            continue
        probes = [[], []]
        previous = None
        for row in (r for r in rows if r["incubator"] == machine):
            found = air_of[row["batch"]]
            if previous is not None:
                rest = air.idle(previous, row["set_at"], 60, draw.uniform(8, 22), draw)
                for probe in probes[: 2 if logger["two"] else 1]:
                    probe.append(rest)
            real = air.batch_air(bird, found, row["set_at"], row["taken_off_at"], logger["minutes"], draw)
            for probe, frame in zip(probes, air.shown(real, logger, draw, found["spread"]), strict=False):
                probe.append(frame)
            previous = row["taken_off_at"]
        whole = [pd.concat(p, ignore_index=True).drop_duplicates("time").sort_values("time") for p in probes if p]
        logs[machine] = [air.with_gaps(w, logger["gaps"], draw) for w in whole]
        for row in (r for r in rows if r["incubator"] == machine):
            has_log[row["batch"]] = (air.covers(logs[machine][0], row["set_at"], row["taken_off_at"]), logger["two"])
    return logs, incubators, has_log


def _shown(record, habits, has_log):
    """Names of the surroundings that the written records show for a batch."""
    covered, two = has_log.get(record["batch"], (False, False))
    names = {"altitude"} | ({"log"} if covered else set()) | ({"spread"} if covered and two else set())
    names |= {
        name for name, kept in (("log_stored", "stored"), ("log_age", "age"), ("posted", "posted")) if habits[kept]
    }
    return names


def truth(world, seed, species, codes, severity, scope, batches, eggs, season):
    """The truth of a season as one dict (see worlds.make_season)."""
    hit = [b["batch"] for b in batches if b["causes"]]
    lost = {c: int((eggs["lost_to"] == c).sum()) for c in codes}
    fertile = {
        b["batch"]: int(
            ((eggs["batch"] == b["batch"]) & ~((eggs["end"] == "infertile") & (eggs["killed_by"] == "ordinary"))).sum()
        )
        for b in batches
    }
    by_hit = [int(((eggs["batch"] == h) & eggs["lost_to"].isin(codes)).sum()) for h in hit]
    realised = {h: n / fertile[h] if fertile[h] else np.nan for h, n in zip(hit, by_hit, strict=True)}
    return {
        "world": world,
        "seed": seed,
        "species": species,
        "severity": severity if codes else None,
        "scope": scope,
        "batch_hit": hit[0] if len(hit) == 1 else None,
        "batches_hit": hit,
        "causes": list(codes),
        "eggs_lost_by_cause": lost,
        "excess_share": {b["batch"]: b["excess"] for b in batches if b["causes"]},
        "excess_realised": realised,
        "would_be_fertile": fertile,
        "eggs": eggs,
        "batches": batches,
        "season": season,
        "days": DAYS,
    }
