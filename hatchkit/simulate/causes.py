"""The causes that can be planted, and what each changes in the plan of a season.

The list with its sizes is ``reference/simulate_causes.csv``; add a row there and a branch here.
"""

from dataclasses import replace

import pandas as pd

from hatchkit import reference
from hatchkit.problems import one_of
from hatchkit.simulate.biology import birds
from hatchkit.simulate.machine import Fault

SEVERITIES = ("mild", "moderate", "severe")
DAY = pd.Timedelta(days=1)

#: What kills (`died_of` in the truth) belongs to which planted cause.
KILLS = {
    "none": (),
    "power_cut": ("cold", "offtime", "late"),
    "drift_warm": ("heat",),
    "drift_cool": ("cold", "offtime", "late"),
    "lid_ajar": ("cold", "offtime", "late"),
    "overheating": ("heat",),
    "long_storage": ("storage",),
    "low_fertility": (),
    "old_flock": ("background",),
    "humidity_low": ("dry",),
    "humidity_high": ("wet",),
    "dry_hatch": ("parched",),
    "turning_fault": ("turning",),
    "probe_high": ("cold", "offtime", "late"),
    "probe_low": ("heat", "offtime"),
    "contaminated": ("rotten",),
}
#: Causes of one batch alone, which can be planted in several.
REPEATABLE = (
    "drift_warm",
    "drift_cool",
    "lid_ajar",
    "overheating",
    "long_storage",
    "humidity_low",
    "humidity_high",
    "dry_hatch",
    "turning_fault",
    "contaminated",
)
#: Hours that a passing fault lasts, by severity (power cuts: their size is their length).
HOURS = {"drift_warm": (14, 14, 14), "drift_cool": (48, 72, 120), "lid_ajar": (10, 14, 20), "overheating": (3, 3.5, 4)}


def cause_names() -> list[str]:
    """Keys of all causes that can be planted, "none" among them.

    Returns
    -------
    list of str
        Rows of ``reference/simulate_causes.csv``.
    """
    return list(reference.load("simulate_causes")["cause"])


def check(cause, severity):
    """HatchkitError that lists the choices if one of the two is unknown."""
    one_of("cause", cause, cause_names())
    one_of("severity", severity, SEVERITIES)


def plant(rng, plan, *, cause, severity, batch, scale=1.0):
    """Put one cause into a plan.

    Parameters
    ----------
    plan : course.SeasonPlan
    cause, severity : str
    batch : str
        The batch that it is meant for; faults of the house or the machine reach others too.
    scale : float
        The size of the severity is taken so many times (shares that are fertile: what is lacking to all).

    Returns
    -------
    (SeasonPlan, list of dict)
        The changed plan, and one entry per touched batch for the answer.
    """
    check(cause, severity)
    row = reference.load("simulate_causes").set_index("cause").loc[cause]
    size = float(row[f"size_{severity}"])
    size = 1 - min(0.95, (1 - size) * scale) if cause == "low_fertility" else size * scale
    size = round(size) if cause in ("long_storage", "old_flock") else round(size, 2)
    focus = plan.batch(batch)
    if cause == "none":
        return plan, []
    if cause in ("power_cut", *HOURS):
        return _passing(rng, plan, focus, row, cause, severity, size)
    if cause in ("probe_high", "probe_low"):
        return _probe(plan, focus, cause, severity, size)
    if cause in ("humidity_low", "humidity_high", "dry_hatch"):
        return _humidity(plan, focus, cause, severity, size)
    return _eggs(plan, focus, cause, severity, size)


def _entry(item, cause, severity, size, unit, days=None):
    length = float(birds().loc[item.species]["incubation_days"])
    start, end = (0.0, length) if days is None else days
    return dict(
        batch=item.batch,
        species=item.species,
        incubator=item.incubator,
        cause=cause,
        severity=severity,
        died_of=KILLS[cause],
        day_start=round(start, 2),
        day_end=round(end, 2),
        size=size,
        unit=unit,
    )


def _passing(rng, plan, focus, row, cause, severity, size):
    """Faults with a beginning and an end: in the whole house (power) or in one machine."""
    scale = float(birds().loc[focus.species]["incubation_days"]) / 21
    hours = size if cause == "power_cut" else HOURS[cause][SEVERITIES.index(severity)]
    start = focus.set_at + scale * rng.uniform(row["day_low"], row["day_high"]) * DAY
    start = start.floor("D") + pd.Timedelta(
        hours={"overheating": 10, "drift_warm": 7}.get(cause, 20) + round(float(rng.uniform(0, 2)), 2)
    )
    end = start + pd.Timedelta(hours=hours)
    kind = {"drift_warm": "drift", "drift_cool": "drift"}.get(cause, cause)
    signed = -size if cause == "drift_cool" else 0.0 if cause == "power_cut" else size
    fault = Fault(kind, start, end, size=signed, room_c=12.0)
    machines = {item.incubator for item in plan.batches} if cause == "power_cut" else {focus.incubator}
    faults = {
        name: [*plan.faults.get(name, []), fault] if name in machines else plan.faults[name]
        for name in machines | set(plan.faults)
    }
    touched = []
    for item in plan.batches:
        days = tuple((moment - item.set_at) / DAY for moment in (start, end))
        last = float(birds().loc[item.species]["incubation_days"])
        if item.incubator in machines and days[1] > 0 and days[0] < last:
            touched.append(_entry(item, cause, severity, size, str(row["unit"]), days))
    return replace(plan, faults=faults), touched


def _probe(plan, focus, cause, severity, size):
    """The machine is set by a wrong probe: the log looks right and the air is not."""
    offset = size if cause == "probe_high" else -size
    begin, end = (pd.Timestamp(f"{year}-01-01", tz="UTC") for year in (2000, 2100))
    always = Fault("control", begin, end, size=-offset)
    name = focus.incubator
    faults = plan.faults | {name: [*plan.faults.get(name, []), always]}
    touched = [_entry(item, cause, severity, size, "degC") for item in plan.batches if item.incubator == name]
    return replace(plan, faults=faults, probe_offset_c=plan.probe_offset_c | {name: offset}), touched


def _humidity(plan, focus, cause, severity, size):
    species = birds().loc[focus.species]
    change = size if cause == "humidity_high" else -size
    start, end = focus.set_at, focus.set_at + species["transfer_day"] * DAY
    if cause == "dry_hatch":
        start, end = end, focus.set_at + (species["incubation_days"] + 3) * DAY
    fault = Fault("humidity", start, end, size=change)
    faults = plan.faults | {focus.incubator: [*plan.faults.get(focus.incubator, []), fault]}
    days = tuple((moment - focus.set_at) / DAY for moment in (start, end))
    return replace(plan, faults=faults), [_entry(focus, cause, severity, size, "%RH", days)]


def _eggs(plan, focus, cause, severity, size):
    """Faults that come with the eggs or lie in their handling; flocks take all their batches along."""
    place = SEVERITIES.index(severity)
    changed, unit = {
        "long_storage": (dict(stored_days=float(size), storage_harm=1.0), "days"),
        "low_fertility": (dict(fertility=size), "share fertile"),
        "old_flock": (
            dict(early_factor=(1.8, 2.8, 4.0)[place], fertility=focus.fertility * (0.94, 0.88, 0.80)[place]),
            "weeks",
        ),
        "turning_fault": (dict(turning=(size * 0.45, size * 0.55)), "log hazard"),
        "contaminated": (dict(rotten_share=size), "share of eggs"),
    }[cause]
    flockwide = cause in ("low_fertility", "old_flock")
    batches, touched = [], []
    for item in plan.batches:
        mine = item.batch == focus.batch or (flockwide and item.flock == focus.flock)
        if mine and cause == "old_flock":  # hens grow older from batch to batch
            changed["flock_age_weeks"] = int(size) + item.flock_age_weeks - focus.flock_age_weeks
        batches.append(replace(item, **changed) if mine else item)
        if mine:
            touched.append(_entry(item, cause, severity, size, unit))
    return replace(plan, batches=tuple(batches)), touched
