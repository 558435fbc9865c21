"""The demo season: sixteen batches in three incubators, with a known story behind them."""

from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.simulate import course, habits
from hatchkit.simulate.answer import answer_for
from hatchkit.simulate.biology import parameters
from hatchkit.simulate.course import BatchPlan, SeasonPlan
from hatchkit.simulate.folder import own_folder, write_again
from hatchkit.simulate.machine import Fault

SEED = 20260405
ZONE = "Europe/Rome"
STYLES = {"A": "iso_offset", "B": "semicolon", "C": "iso_comma"}

# batch, species, incubator, set on (local), eggs, flock, flock age, fertility, days stored
_PLAN = [
    ("H1", "chicken", "A", "2026-04-03 18:00", 42, "Orchard hens", 38, 0.95, 4),
    ("D1", "duck", "B", "2026-04-04 17:30", 36, "Mill pond ducks", 44, 0.93, 5),
    ("Q1", "quail", "C", "2026-04-05 10:00", 60, "Aviary 1", 20, 0.93, 5),
    ("Q2", "quail", "C", "2026-04-25 10:30", 60, "Aviary 2", 34, 0.58, 6),
    ("H2", "chicken", "A", "2026-04-28 18:30", 48, "Barn hens", 46, 0.94, 5),
    ("D2", "duck", "B", "2026-05-07 18:00", 40, "Mill pond ducks", 48, 0.93, 4),
    ("Q3", "quail", "C", "2026-05-15 09:30", 60, "Aviary 1", 25, 0.93, 4),
    ("H3", "chicken", "A", "2026-05-22 18:00", 48, "Orchard hens", 45, 0.95, 3),
    ("Q4", "quail", "C", "2026-06-04 10:00", 54, "Aviary 2", 40, 0.56, 5),
    ("D3", "duck", "B", "2026-06-09 18:15", 38, "Mill pond ducks", 52, 0.91, 6),
    ("H4", "chicken", "A", "2026-06-15 18:00", 48, "Orchard hens", 48, 0.95, 5),
    ("Q5", "quail", "C", "2026-06-24 10:00", 60, "Aviary 1", 31, 0.92, 5),
    ("D4", "duck", "B", "2026-07-11 17:45", 36, "Mill pond ducks", 57, 0.90, 6),
    ("H5", "chicken", "A", "2026-07-09 18:00", 44, "Barn hens", 56, 0.93, 18),
    ("H6", "chicken", "C", "2026-07-15 18:00", 42, "Orchard hens", 53, 0.94, 5),
    ("H7", "chicken", "A", "2026-08-02 18:00", 48, "Orchard hens", 55, 0.94, 4),
]
_EGG_ROWS = ("H1", "H4", "D3", "H7")
_WEIGHS = {"H1": "single", "H4": "tray", "D1": "tray", "D3": "single", "H2": "tray"}
_NOT_OPENED = ("Q3", "D4")
_FEWER_LOOKS = {"H3": {"candle1": 8, "transfer": 18}, "Q3": {"candle1": 7, "transfer": 15}}


def invented(kind: str) -> dict[str, str]:
    """What an invented keeper wrote, by what it is about: titles, remarks, changes."""
    table = reference.load("invented_words")
    return table[table["kind"] == kind].set_index("about")["words"].to_dict()


def _utc(text):
    return pd.Timestamp(text, tz=ZONE).tz_convert("UTC")


def demo_plan() -> SeasonPlan:
    """The plan of the demo season, planted events included."""
    notes = invented("note")
    batches = tuple(
        BatchPlan(
            batch=batch,
            species=species,
            incubator=incubator,
            set_at=_utc(set_on),
            eggs_set=eggs,
            flock=flock,
            flock_age_weeks=age,
            fertility=fertile,
            stored_days=stored,
            egg_rows=batch in _EGG_ROWS,
            weighs=_WEIGHS.get(batch, ""),
            opens_clears=batch in ("H1", "H4"),
            note=notes.get(batch, ""),
            opens_unhatched=batch not in _NOT_OPENED,
            look_days=_FEWER_LOOKS.get(batch, {}),
        )
        for batch, species, incubator, set_on, eggs, flock, age, fertile, stored in _PLAN
    )
    night = dict(start=_utc("2026-05-13 21:20"), end=_utc("2026-05-14 07:50"), room_c=12.0)
    faults = {
        "A": [
            Fault("power_cut", **night),
            Fault("drift", _utc("2026-06-27 09:30"), _utc("2026-06-27 23:30"), size=5.2),
        ],
        "B": [
            Fault("power_cut", **night),
            Fault("control", _utc("2026-04-01 00:00"), _utc("2026-09-01 00:00"), size=-0.4),
        ],
        "C": [Fault("lid_ajar", _utc("2026-06-30 18:20"), _utc("2026-07-01 06:40"), size=11.0)],
    }
    return SeasonPlan(
        title=invented("title")["season"],
        timezone=ZONE,
        batches=batches,
        faults=faults,
        probe_offset_c={"B": 0.4},
        step_minutes=5,
        p=parameters(tray_share=0),
        luck={"H7": 0.9},
    )


# batch, incubator, cause, what it killed by, first and last day, size, unit
_TOLD = [
    ("D2", "B", "power_cut", ("cold", "offtime", "late"), 6.2, 6.6, 10.5, "h"),
    ("H2", "A", "power_cut", ("cold", "offtime", "late"), 15.1, 15.5, 10.5, "h"),
    ("H4", "A", "drift_warm", ("heat",), 11.6, 12.2, 5.2, "degC"),
    ("Q5", "C", "lid_ajar", ("cold", "offtime", "late"), 6.3, 6.9, 11.0, "degC"),
    ("H5", "A", "long_storage", ("storage",), 0, 21, 18, "days"),
    ("Q2", "C", "low_fertility", (), 0, 17, 0.58, "share fertile"),
    ("Q4", "C", "low_fertility", (), 0, 17, 0.56, "share fertile"),
    ("H7", "A", "none", (), 0, 21, 0, ""),
]
_TOLD += [(batch, "B", "probe_high", ("offtime", "late"), 0, 28, 0.4, "degC") for batch in ("D1", "D2", "D3", "D4")]


def _slips(tables):
    """Two things that happen to everybody: a miscounted hatch, and a logger that fails for a moment."""
    batches, readings = tables["batches"], tables["readings"]
    batches.loc[batches["batch"] == "H6", "hatched"] -= 1
    failed = (readings["incubator"] == "C") & readings["time"].between(
        _utc("2026-05-20 03:10"), _utc("2026-05-20 03:20")
    )
    readings.loc[failed, ["temp_c", "temp_logged_c"]] = -40.0


def write_demo(folder, *, seed=SEED, answer=None):
    """Write the demo season; the answer is returned and never written into the folder.

    Parameters
    ----------
    folder : path
        New, empty, or an earlier demo season, whose workbook, season.toml and sensors are replaced.
    answer : path, optional
        Where to write the sealed answer; refused inside `folder`.
    seed : int
        With another than the kit's own the demo is another.

    Returns
    -------
    Answer

    Raises
    ------
    HatchkitError
        If the folder holds anything else, or the answer would lie in it.
    """
    if answer is not None and Path(folder).resolve() in Path(answer).resolve().parents:
        raise HatchkitError("answer_in_season", {})
    plan = demo_plan()
    folder = own_folder(folder, plan.title)
    tables, eggs = course.run(np.random.default_rng(seed), plan)
    _slips(tables)
    write_again(folder, tables, habit=habits.HABITS["plain"], styles=STYLES, title=plan.title, timezone=ZONE)
    names = ("batch", "incubator", "cause", "died_of", "day_start", "day_end", "size", "unit")
    kinds = {item.batch: item.species for item in plan.batches}
    told = [dict(zip(names, item, strict=True)) | {"species": kinds[item[0]], "severity": "moderate"} for item in _TOLD]
    sealed = answer_for(plan, eggs, told, seed=seed, cause="several", severity="moderate", batch="H4")
    if answer is not None:
        sealed.write(answer)
    return sealed
