"""Draw a season with a known cause: in memory, or as a folder that a person would keep.

Four separate random streams (layout, cause, habits, chance) come from the seed, so that nothing of
the layout or of the person's habits depends on what was planted.
"""

from dataclasses import replace
from numbers import Integral
from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import problems as _problems
from hatchkit import reference
from hatchkit.problems import HatchkitError, one_of
from hatchkit.season import Season
from hatchkit.simulate import causes, course, loggers, without
from hatchkit.simulate.answer import answer_for
from hatchkit.simulate.biology import birds
from hatchkit.simulate.biology import parameters as _figures
from hatchkit.simulate.course import DAY, BatchPlan, SeasonPlan
from hatchkit.simulate.demo import invented
from hatchkit.simulate.folder import empty_folder, write_folder
from hatchkit.simulate.machine import Fault

ZONE = "Europe/Rome"
FLOCKS = ("Yard", "Meadow", "Lower pen", "Upper pen", "Willow", "Stonewall")
#: Remarks are drawn from the invented ones and so many empty ones.
SILENT = 3


def streams(seed):
    """The random streams of a seed by name: what draws from one does not move the others."""
    return {
        name: np.random.default_rng([int(seed), place])
        for place, name in enumerate(("layout", "cause", "habits", "chance"))
    }


def layout(rng, *, batches, eggs, species, incubators, step_minutes, figures):
    """Batches one after another in each machine; who, when and how many, but no fault."""
    species = reference.species(species).name
    bird = birds().loc[species]
    names = [chr(ord("A") + place) for place in range(incubators)]
    gap = bird["incubation_days"] + 5
    begin = {name: pd.Timestamp("2026-04-02 16:00", tz="UTC") + float(rng.integers(0, 12)) * DAY for name in names}
    flocks = list(rng.permutation(FLOCKS)[: max(2, min(3, batches // 2))])
    ages = {flock: int(rng.integers(30, 50)) for flock in flocks}
    logit = np.log(figures["fertility"] / (1 - figures["fertility"]))
    fertile = {flock: float(1 / (1 + np.exp(-rng.normal(logit, figures["fertility_sd"])))) for flock in flocks}
    plans = []
    remarks = [""] * SILENT + list(invented("remark").values())
    for place in range(batches):
        name, flock = names[place % incubators], flocks[int(rng.integers(len(flocks)))]
        number = place // incubators
        # days are whole so that an evening setting stays an evening setting
        set_at = begin[name] + float(np.ceil(number * gap) + rng.integers(0, 2)) * DAY
        set_at += pd.Timedelta(minutes=15 * int(rng.integers(0, 9)))
        plans.append(
            BatchPlan(
                batch=str(place + 1),
                species=species,
                incubator=name,
                set_at=set_at,
                eggs_set=int(eggs + rng.integers(-eggs // 8, eggs // 8 + 1)),
                flock=str(flock),
                flock_age_weeks=ages[flock] + round((set_at - begin[name]) / DAY / 7),
                fertility=fertile[flock],
                stored_days=float(rng.integers(2, 8)),
                egg_rows=bool(rng.random() < 0.35),
                weighs=("", "tray", "single")[int(rng.integers(3))],
                note=str(rng.choice(remarks)),
            )
        )
    log_days = float(bird["incubation_days"]) + 3.0
    plan = SeasonPlan(
        title=invented("title")["drawn"],
        timezone=ZONE,
        batches=tuple(plans),
        step_minutes=step_minutes,
        log_days=log_days,
        p=figures,
    )
    return _with_decoy(rng, plan)


def _with_decoy(rng, plan):
    """A harmless wobble somewhere: not every excursion is a cause."""
    item = plan.batches[int(rng.integers(len(plan.batches)))]
    start = item.set_at + rng.uniform(3, 14) * DAY
    hours = float(rng.uniform(2, 5))
    size = float(rng.choice([-1.6, -1.3, 1.1, 1.3]))
    wobble = Fault("drift", start, start + pd.Timedelta(hours=hours), size=size)
    return replace(plan, faults={item.incubator: [wobble]})


def _drawn(seed, *, cause, severity, times, batches, eggs, species, incubators, step_minutes, gaps, parameters):
    own = streams(seed)
    figures = _figures(**(parameters or {}))
    plan = layout(
        own["layout"],
        batches=batches,
        eggs=eggs,
        species=species,
        incubators=incubators,
        step_minutes=step_minutes,
        figures=figures,
    )
    asked = str(own["layout"].integers(1, batches + 1))
    names = causes.cause_names()
    pick = names[int(own["cause"].integers(len(names)))]
    cause = pick if cause is None else cause
    others = own["cause"].permutation([item.batch for item in plan.batches if item.batch != asked])
    if times > 1 and cause not in causes.REPEATABLE:
        raise HatchkitError("planted_often", dict(cause=cause, times=times, known=list(causes.REPEATABLE)))
    touched, plain = [], plan
    for batch in [asked, *map(str, others[: times - 1])]:
        plan, more = causes.plant(own["cause"], plan, cause=cause, severity=severity, batch=batch)
        touched += more
    tables, truth = course.run(own["chance"], plan)
    if gaps:
        tables["readings"] = _with_gaps(own["habits"], tables["readings"], gaps)
    lost = without.losses(
        plan, plain, truth, batches=[item["batch"] for item in touched], chance=streams(seed)["chance"]
    )
    answer = answer_for(plan, truth, touched, seed=seed, cause=cause, severity=severity, batch=asked, without=lost)
    return plan, tables, answer


def _with_gaps(rng, readings, share):
    """Take out stretches of 2 to 30 hours until `share` of the readings is gone."""
    kept = []
    for _, rows in readings.groupby("incubator", sort=False):
        keep = np.ones(len(rows), dtype=bool)
        hours = (rows["time"] - rows["time"].iloc[0]).dt.total_seconds().to_numpy() / 3600
        while (~keep).mean() < share:
            start = rng.uniform(0, hours[-1])
            keep &= ~((hours >= start) & (hours < start + rng.uniform(2, 30)))
        kept.append(rows[keep])
    return pd.concat(kept, ignore_index=True)


def draw_season(
    *,
    seed,
    cause=None,
    severity="severe",
    times=1,
    batches=8,
    eggs=48,
    species="chicken",
    incubators=2,
    step_minutes=30,
    gaps=0.0,
    parameters=None,
):
    """A season in memory, as if its folder had been read without a fault.

    Parameters
    ----------
    seed : int
    cause : str, optional
        A key of ``reference/simulate_causes.csv``; drawn with the seed if left out.
    severity : {"mild", "moderate", "severe"}
    times : int
        In how many batches it is planted (causes of single batches only: ``causes.REPEATABLE``).
    batches, eggs, incubators : int
        How many batches, about how many eggs in each, in how many machines.
    species : str
    step_minutes : int
        Step of the log.
    gaps : float
        Share of the log that is missing.
    parameters : dict, optional
        Changes to the generative figures (``reference/simulate_parameters.csv``), for example
        ``{"miss_rate": 0.2}`` for careless candling.

    Returns
    -------
    (Season, Answer)

    Raises
    ------
    HatchkitError
        For an unknown cause, severity or figure.

    Notes
    -----
    Source: every generative figure is a row of ``reference/simulate_parameters.csv`` with unit, source and how sure
    ("invented" where it is); background deaths Kuurman et al. 2001 Poult. Sci. 80:710-717.
    """
    from hatchkit.losses.fates import build_fates

    _whole_numbers(seed=seed, times=times, batches=batches, eggs=eggs, incubators=incubators)
    plan, tables, answer = _drawn(
        seed,
        cause=cause,
        severity=severity,
        times=times,
        batches=batches,
        eggs=eggs,
        species=species,
        incubators=incubators,
        step_minutes=step_minutes,
        gaps=gaps,
        parameters=parameters,
    )
    wide = reference.species_table()
    fates, doubts = build_fates(tables["batches"], tables["eggs"], tables["looks"], wide)
    settings = {
        "timezone": plan.timezone,
        "title": plan.title,
        "incubators": {item.incubator: {"set_point_c": 37.5, "air": "fan"} for item in plan.batches},
    }
    season = Season(
        folder=Path("simulated"),
        title=plan.title,
        timezone=plan.timezone,
        fates=fates,
        problems=_problems.combine(doubts),
        species_table=wide,
        settings=settings,
        **tables,
    )
    return season, answer


def simulate_season(
    folder,
    *,
    seed,
    cause=None,
    severity="severe",
    times=1,
    batches=8,
    style=None,
    gaps=None,
    eggs=48,
    species="chicken",
    incubators=2,
    step_minutes=10,
    parameters=None,
    answer=None,
):
    """Write a season folder with a planted cause that only the returned answer names.

    Parameters
    ----------
    folder : path
        New or empty.
    seed, cause, severity, times, batches, eggs, species, incubators, step_minutes, parameters
        As in `draw_season`.
    style : str, optional
        Export style of the loggers (a key of ``loggers.EXPORTS``); drawn per machine if left out.
    gaps : float, optional
        Share of the log that is missing; drawn between 0 and 4 % if left out.
    answer : path, optional
        Where to write the sealed answer; refused inside `folder`.

    Returns
    -------
    Answer

    Raises
    ------
    HatchkitError
        If the folder is not new or empty, for an unknown cause, or if the answer would lie in the folder.

    Notes
    -----
    Source: as `draw_season`; styles of loggers are invented.
    """
    _whole_numbers(seed=seed, times=times, batches=batches, eggs=eggs, incubators=incubators)
    folder = empty_folder(folder)
    if answer is not None and folder.resolve() in Path(answer).resolve().parents:
        raise HatchkitError("answer_in_season", {})
    if style is not None:
        one_of("style", style, loggers.EXPORTS)
    if gaps is None:
        gaps = float(np.random.default_rng([int(seed), 9]).choice([0.0, 0.0, 0.02, 0.04]))
    plan, tables, sealed = _drawn(
        seed,
        cause=cause,
        severity=severity,
        times=times,
        batches=batches,
        eggs=eggs,
        species=species,
        incubators=incubators,
        step_minutes=step_minutes,
        gaps=gaps,
        parameters=parameters,
    )
    write_folder(folder, plan, tables, seed=seed, style=style)
    if answer is not None:
        sealed.write(answer)
    return sealed


def _whole_numbers(**given) -> None:
    for name, value in given.items():
        least = 0 if name == "seed" else 1
        if not isinstance(value, Integral) or value < least:
            raise HatchkitError("whole_number", dict(name=name, least=least, given=str(value)))
