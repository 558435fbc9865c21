"""The folder of an invented season: made, refused where something else lies in it, written as a person would."""

import os
import tomllib
from pathlib import Path

import numpy as np

from hatchkit.problems import HatchkitError
from hatchkit.simulate import habits, loggers


def empty_folder(folder) -> Path:
    """The folder, made if need be; HatchkitError if anything lies in it already."""
    folder = Path(folder)
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise HatchkitError("folder_not_empty", dict(path=str(folder)))
    folder.mkdir(parents=True, exist_ok=True)
    return folder


def own_folder(folder, title: str) -> Path:
    """The folder, made if need be; HatchkitError if it holds anything but an earlier season of this title."""
    folder = Path(folder)
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir()) and _title(folder) != title):
        raise HatchkitError("folder_holds_other", dict(path=str(folder)))
    folder.mkdir(parents=True, exist_ok=True)
    return folder


def _title(folder):
    try:
        return tomllib.loads((folder / "season.toml").read_text(encoding="utf-8")).get("title")
    except (OSError, ValueError):
        return None


def write_folder(folder, plan, tables, *, seed, style=None) -> None:
    """Put the tables of a season on disk as a person would keep them; habits are drawn with the seed.

    Parameters
    ----------
    folder : Path
    plan : course.SeasonPlan
    tables : dict of DataFrame
        batches, eggs, weights, readings; an incubator without readings has no log.
    seed : int
    style : str, optional
        As in `simulate_season`.
    """
    rng = np.random.default_rng([int(seed), 8])
    habit = habits.HABITS[str(rng.choice(list(habits.HABITS)))]
    habits.write_workbook(folder / "batches.xlsx", tables, habit=habit, timezone=plan.timezone)
    machines = sorted({item.incubator for item in plan.batches})
    logged = []
    for name in machines:
        chosen = style or str(rng.choice(list(loggers.EXPORTS)))
        rows = tables["readings"][tables["readings"]["incubator"] == name]
        if len(rows):
            logged.append(name)
            loggers.write_export(folder, rows, stem=name, style=loggers.EXPORTS[chosen], timezone=plan.timezone)
    habits.write_settings(
        folder / "season.toml",
        title=plan.title,
        timezone=plan.timezone,
        incubators={name: f"sensors/{name}*.csv" if name in logged else "" for name in machines},
    )
    _same_times(folder)


def _same_times(folder):
    """One fixed time on every file and folder, so that times tell nothing."""
    moment = habits.FIXED.timestamp()
    for path in [*folder.rglob("*"), folder]:
        os.utime(path, (moment, moment))


def write_again(folder, tables, *, habit, styles: dict, title: str, timezone: str) -> None:
    """Workbook, logs (machine -> style) and settings of an invented season, in place of those of an earlier writing."""
    habits.write_workbook(folder / "batches.xlsx", tables, habit=habit, timezone=timezone)
    for old in (folder / "sensors").glob("*.csv"):
        old.unlink()
    for machine, rows in tables["readings"].groupby("incubator"):
        loggers.write_export(folder, rows, stem=machine, style=loggers.EXPORTS[styles[machine]], timezone=timezone)
    patterns = {name: f"sensors/{name}_*.csv" for name in styles}
    habits.write_settings(folder / "season.toml", title=title, timezone=timezone, incubators=patterns)
