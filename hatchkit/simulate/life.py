"""What happens to everybody, whatever was planted.

Old hens that do well, long storage kept well, harmless spells, wrong remarks, a wrong clock, a miscount, missing logs,
a second cause.

All of it is drawn from a stream of the seed of its own, so that none of it depends on the cause; how often each happens
is in ``reference/case_levels.csv``.
"""

from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.problems import one_of
from hatchkit.simulate import causes, course, seasons, without
from hatchkit.simulate.answer import answer_for
from hatchkit.simulate.biology import birds, parameters
from hatchkit.simulate.machine import Fault

LEVELS = ("first", "second", "exam")
#: Ten kinds of bird: the hen and these.
OTHER_BIRDS = ("duck", "quail", "turkey", "goose", "guinea", "muscovy", "pheasant", "bobwhite", "peafowl")
DAY, HOUR = pd.Timedelta(days=1), pd.Timedelta(hours=1)
#: Logs are off by a lost hour of summer, half a day (a.m. for p.m.), or a date set wrongly.
CLOCKS = (-1, 1, 12, -12, 24, -48)


@dataclass(frozen=True)
class LivedSeason:
    """A season with a hidden answer and everything that was put in.

    plan, plain : SeasonPlan
        With the planted causes and without them; harmless troubles are in both.
    tables : dict of DataFrame
        As the keeper has them: batches, eggs, weights, looks, readings.
    answer : Answer
    causes : tuple of str
        What was planted in the asked batch; empty for nothing.
    troubles : dict
        spells (of the asked batch's machine), clock_h (machine, hours), miscount (batch), no_log, gap (machine, from,
        to), remark (of the asked batch: the cause it tells of, whether it was planted).
    """

    plan: course.SeasonPlan
    plain: course.SeasonPlan
    tables: dict
    answer: Any
    causes: tuple
    troubles: dict


def level(name) -> pd.Series:
    """How often each thing happens at a level; HatchkitError that lists the levels for another."""
    one_of("level", name, LEVELS)
    return reference.load("case_levels").set_index("item")[name]


def draw_lived(
    seed, *, level_name="first", batches=6, eggs=48, species=None, cause=None, severity=None, step_minutes=10
) -> LivedSeason:
    """A season as life has it, drawn from the seed alone.

    Parameters
    ----------
    seed : int
    level_name : {"first", "second", "exam"}
    batches, eggs, step_minutes : int
        As in `seasons.draw_season`.
    species, cause, severity : str, optional
        Drawn if left out; causes with replacement, whatever other cases have.
    """
    often = level(level_name)
    life, pick, habit = (np.random.default_rng([int(seed), place]) for place in (4, 5, 6))
    bird = str(life.choice(OTHER_BIRDS)) if life.random() < often["other_bird"] else "chicken"
    streams = seasons.streams(seed)
    plain = seasons.layout(
        streams["layout"],
        batches=batches,
        eggs=eggs,
        species=species or bird,
        incubators=2,
        step_minutes=step_minutes,
        figures=parameters(),
    )
    asked = str(streams["layout"].integers(1, batches + 1))
    plain, spells = _troubled(life, plain, often)
    planted, severity = _picked(pick, often, cause, severity)
    plan, steps = plain, [plain]
    touched = []
    for name in planted:
        plan, more = causes.plant(
            streams["cause"], plan, cause=name, severity=severity, batch=asked, scale=float(pick.uniform(0.85, 1.15))
        )
        steps.append(plan)
        touched.append(more)
    plan, remark = _remarks(habit, plan, often, asked, planted)
    tables, truth = course.run(seasons.streams(seed)["chance"], plan)
    answer = _answer(seed, plan, steps, truth, touched, planted, severity, asked)
    tables, troubles = _kept(life, tables, often)
    return LivedSeason(
        plan,
        plain,
        tables,
        answer,
        planted,
        troubles | {"remark": remark, "spells": spells.get(plan.batch(asked).incubator, [])},
    )


def _picked(rng, often, cause, severity):
    """Causes (none, one or two) and their severity; the draws are made whatever is asked for."""
    names = [name for name in causes.cause_names() if name != "none"]
    first, second = (str(name) for name in rng.choice(names, 2, replace=False))
    nothing, two = rng.random() < often["no_cause"], rng.random() < often["two_causes"]
    rest = (1 - often["mild"]) / 2
    drawn = str(rng.choice(causes.SEVERITIES, p=[often["mild"], rest, rest]))
    if cause is not None:
        return (() if cause == "none" else (cause,)), severity or drawn
    return (() if nothing else (first, second) if two else (first,)), severity or drawn


def _troubled(rng, plan, often):
    """Old hens, long storage and other humidity that do no harm, and spells too short or too mild to matter."""
    old = {
        flock: int(rng.integers(58, 81))
        for flock in dict.fromkeys(item.flock for item in plan.batches)
        if rng.random() < often["old_hens"]
    }
    first = {item.flock: item.flock_age_weeks for item in reversed(plan.batches)}
    items, faults = [], dict(plan.faults)
    for item in plan.batches:
        bird = birds().loc[item.species]
        usual = (bird["setter_rh_low_pct"] + bird["setter_rh_high_pct"]) / 2
        item = replace(item, setter_rh=float(np.clip(rng.normal(usual, 3.5), usual - 6, usual + 6)))
        start, end = (item.set_at + day * DAY for day in (bird["transfer_day"], bird["incubation_days"] + 3))
        drier = Fault("humidity", start, end, size=float(np.clip(rng.normal(0, 4), -7, 7)))
        faults[item.incubator] = [*faults.get(item.incubator, []), drier]
        if item.flock in old:
            item = replace(item, flock_age_weeks=old[item.flock] + item.flock_age_weeks - first[item.flock])
        if rng.random() < often["long_stored"]:
            item = replace(item, stored_days=float(rng.integers(8, 21)), storage_harm=0.2)
        items.append(item)
    spells = {}

    def put(machine, fault):
        faults[machine] = [*faults.get(machine, []), fault]
        spells.setdefault(machine, []).append(fault)

    for _ in range(int(rng.poisson(often["spells"]))):
        item = items[int(rng.integers(len(items)))]
        put(item.incubator, _harmless(rng, item.set_at + rng.uniform(2, 15) * DAY))
    for _ in range(int(rng.poisson(often["short_cuts"]))):
        start = items[int(rng.integers(len(items)))].set_at + rng.uniform(2, 15) * DAY
        cut = Fault("power_cut", start, start + rng.uniform(0.8, 2.0) * HOUR, room_c=16.0)
        for machine in dict.fromkeys(item.incubator for item in items):
            put(machine, cut)
    return replace(plan, batches=tuple(items), faults=faults), spells


def _harmless(rng, start):
    kind = str(rng.choice(["drift", "lid_ajar", "overheating"]))
    hours, size = {
        "drift": (rng.uniform(3, 9), rng.choice([-1.8, -1.4, 1.2, 1.5])),
        "lid_ajar": (rng.uniform(0.5, 1.2), rng.uniform(6, 12)),
        "overheating": (rng.uniform(0.4, 0.9), rng.uniform(2.0, 3.2)),
    }[kind]
    return Fault(kind, start, start + float(hours) * HOUR, size=float(size))


def _remarks(rng, plan, often, asked, planted):
    """Remarks of the keeper: some tell of what was planted, some of what never touched the batch."""
    listed = reference.load("case_remarks")
    found, items = "", []
    for item in plan.batches:
        wrong, told = rng.random() < often["wrong_remark"], rng.random() < often["told"]
        drawn = listed.iloc[int(rng.integers(len(listed)))]
        own = listed[listed["cause"] == (planted[0] if planted else "")]
        own = own.iloc[int(rng.integers(2)) % max(len(own), 1)] if len(own) else None
        if item.batch == asked and told and own is not None:
            item, found = replace(item, note=own["remark"]), own["cause"]
        elif wrong:
            item = replace(item, note=drawn["remark"])
            found = drawn["cause"] if item.batch == asked else found
        items.append(item)
    return replace(plan, batches=tuple(items)), (found, found in planted)


def _answer(seed, plan, steps, truth, touched, planted, severity, asked):
    """Eggs lost by the first cause, and by the second on top of it."""
    items, losses = [], []
    for place, more in enumerate(touched):
        with_it, before = steps[place + 1], steps[place]
        eggs = truth if place == len(touched) - 1 else course.run(seasons.streams(seed)["chance"], with_it)[1]
        chance = seasons.streams(seed)["chance"]
        lost = without.losses(with_it, before, eggs, batches=[item["batch"] for item in more], chance=chance)
        items += more
        losses += [lost[item["batch"]] for item in more]
    cause = planted[0] if planted else "none"
    return answer_for(plan, truth, items, seed=seed, cause=cause, severity=severity, batch=asked, without=losses)


def _kept(rng, tables, often):
    """What the keeper's books and loggers make of it: a wrong clock, a miscount, a log that is not there."""
    tables, troubles = dict(tables), {"clock": None, "miscount": "", "no_log": "", "gap": None}
    readings, batches = tables["readings"], tables["batches"].copy()
    machines = sorted(readings["incubator"].unique())
    chosen = [str(rng.choice(machines)) for _ in range(3)]
    wrong, missed, missing, gap = (
        rng.random() < often[name] for name in ("clock", "miscount", "log_missing", "log_gap")
    )
    hours, row, off = int(rng.choice(CLOCKS)), int(rng.integers(len(batches))), int(rng.choice([-1, 1]))
    share, days = rng.uniform(0.1, 0.8), rng.uniform(4, 9)
    if wrong:
        moved = readings["time"] + pd.to_timedelta(np.where(readings["incubator"] == chosen[0], hours, 0), unit="h")
        readings = readings.assign(time=moved)
        troubles["clock"] = (chosen[0], hours)
    if missed and int(batches["hatched"].iloc[row]) > 1:
        batches.loc[batches.index[row], "hatched"] += off
        troubles["miscount"] = str(batches["batch"].iloc[row])
    if missing:
        readings = readings[readings["incubator"] != chosen[1]]
        troubles["no_log"] = chosen[1]
    if gap:
        own = readings.loc[readings["incubator"] == chosen[2], "time"]
        if len(own):
            start = own.iloc[0] + share * (own.iloc[-1] - own.iloc[0])
            inside = (readings["incubator"] == chosen[2]) & readings["time"].between(start, start + days * DAY)
            readings = readings[~inside]
            troubles["gap"] = (chosen[2], start, start + days * DAY)
    return tables | {"readings": readings.reset_index(drop=True), "batches": batches}, troubles
