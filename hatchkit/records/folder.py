"""A season folder -> plain tables, and a problem row for everything that could not be taken as written."""

from __future__ import annotations

import gc
import os
from contextlib import contextmanager
from pathlib import Path

import pandas as pd

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError, problem
from hatchkit.records import candling_log, checks
from hatchkit.records.batches import usable_batches
from hatchkit.records.frames import choose_order, empty_frame, frame_of, heal_meanings
from hatchkit.records.headers import own_headings
from hatchkit.records.linking import link_to_batches
from hatchkit.records.season_toml import read_settings
from hatchkit.records.sheets import find_table, headings_of
from hatchkit.records.told import with_headings
from hatchkit.records.workbook import TEXTS, WORKBOOKS, read_grids

MOST_FILES = 500

#: Endings of texts that are no table of batches, but may be a log.
_LOG_TEXTS = (".txt", ".log", ".dat")


def read_folder(folder) -> dict:
    """Everything that a season folder holds, read and checked, before any analysis.

    Parameters
    ----------
    folder : path

    Returns
    -------
    dict
        title, timezone, batches, eggs, weights, looks, readings, problems, species_table, settings; and
        headings ((file, sheet) -> {column: the person's heading}), for whoever tells of further problems.

    Raises
    ------
    HatchkitError
        If the folder is missing or can't be read, or holds neither a table of batches nor a log.
    """
    folder = Path(folder)
    names = _list(folder)
    settings, title, zone, species_table, found = read_settings(folder)
    with _without_collecting():
        tables, unknown = _tables(folder, names, settings, found)
        frames = _frames(tables, settings, zone, found)
    batches, lost = usable_batches(frames["batches"], settings, species_table, zone)
    found += lost
    for kind in ("eggs", "weights", "candlings"):
        frames[kind], lost = link_to_batches(frames[kind], batches)
        found += lost
    looks, notes = candling_log.looks_of_batches(batches, species_table)
    found += notes
    if len(frames["candlings"]):
        looks, batches, notes = candling_log.add_log(looks, batches, frames["candlings"], species_table, zone)
        found += notes
    loose = [name for name, suffix, _ in unknown if suffix in TEXTS] + [
        name for name in names[:MOST_FILES] if Path(name).suffix.lower() in _LOG_TEXTS and not (folder / name).is_dir()]
    readings, log_problems = _logs(folder, settings, batches, zone, names, loose)
    found += _unknown_files(unknown, log_problems, readings)
    if readings.empty and not tables:
        raise HatchkitError(_nothing(folder, names, found))
    found += checks.check_batches(batches, species_table, zone)
    found += checks.check_eggs(frames["eggs"])
    found += checks.check_logs(batches, readings)
    if batches.empty:
        found.append(_no_batch(frames["batches"], tables, readings))
    headings = {(table.file, table.sheet): headings_of(table) for table in tables}
    told = with_headings(_problems.combine(_problems.table(found), log_problems), headings)
    return dict(title=title, timezone=zone, batches=batches, eggs=frames["eggs"], weights=frames["weights"],
                looks=looks.drop(columns="assumed"), readings=readings, species_table=species_table,
                settings=settings, problems=told, headings=headings)


def _no_batch(frame: pd.DataFrame, tables: list, readings: pd.DataFrame) -> dict:
    """The problem row of a season without a batch: what is missing, and where to write it."""
    table = next((table for table in tables if table.kind == "batches"), None)
    done = "Only the logs are shown." if len(readings) else "There is nothing to show yet."
    if table is None:
        return problem("lost", found="there is no table of batches", done=done,
                       mend="Put your batches.xlsx or .csv into the folder; hatchkit start FOLDER writes a blank one.")
    where = dict(file=table.file, sheet=table.sheet)
    if len(frame):
        return problem("note", **where, found="none of the batches in the table can be used", done=done,
                       mend="See what is said of its rows.")
    return problem("note", **where, found="the table of batches has no row yet", done=done,
                   mend="Write a row for each batch below the headings.")


@contextmanager
def _without_collecting():
    """Hold off the search for garbage: a large workbook is a million small objects, and none of them is.

    Measured on 20,000 rows: about a sixth of the time to read.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def _list(folder: Path) -> list[str]:
    if not folder.exists():
        raise HatchkitError(f"There is no folder {folder}; check the spelling, or write the whole path.")
    if not folder.is_dir():
        raise HatchkitError(f"{folder} is a file; hatchkit wants the folder that it lies in.")
    try:
        names = sorted(entry.name for entry in os.scandir(folder))
    except OSError as error:
        raise HatchkitError(f"The folder {folder} can't be read ({error.strerror}); ask for the right to read it, "
                            "or copy it to where you may.") from error
    return [name for name in names if not name.startswith((".", "~$", "~"))]


def _tables(folder: Path, names: list[str], settings: dict, found: list):
    """Every table of a known kind in the folder's own files, and the files in which none was found."""
    own, tables, unknown = own_headings(settings), [], []
    for name in names[:MOST_FILES]:
        suffix = Path(name).suffix.lower()
        if suffix not in WORKBOOKS + TEXTS or (folder / name).is_dir() or name == "problems.csv":
            continue
        grids, told = read_grids(folder / name, file=name)
        if suffix in TEXTS and not grids:
            unknown.append((name, suffix, told))
            continue
        found += told
        here = [(grid, find_table(grid, own)) for grid in grids if not _is_help(grid)]
        tables += [table for _, table in here if table is not None]
        if not any(table for _, table in here):
            if grids:
                unknown.append((name, suffix, [_no_table(name, grids)]))
        else:
            found += [problem("note", file=name, sheet=grid.sheet, done="The sheet is not used.",
                              found="no table that hatchkit knows on this sheet")
                      for grid, table in here if table is None and any(map(any, grid.cells))]
    return tables, unknown


def _is_help(grid) -> bool:
    """The sheet of explanations that `hatchkit start` writes beside the tables."""
    return any("(hatchkit)" in str(cell) for cell in (grid.cells[0] if grid.cells else []))


def _no_table(name: str, grids) -> dict:
    told = [text for text in map(_seen_on, grids[:8]) if text]
    sheets = ", ".join(grid.sheet for grid in grids if grid.sheet)
    what = f": {'; '.join(told)}" if told else ""
    log = " If it is a log of readings, put it into a folder named sensors." if not sheets else ""
    mend = ("Give the table a heading row such as batch, species, set_at, eggs_set; or say in season.toml what "
            'your own headings mean: [headers] "Your heading" = "eggs_set".' + log)
    return problem("lost", file=name, sheet=sheets, done="Nothing of this file is used.", mend=mend,
                   found=f"no table of batches, eggs, weights or candlings{what}")


def _seen_on(grid) -> str:
    """What a sheet without a known table shows: its name and its headings, or that it is empty."""
    rows = [[str(cell) for cell in row if isinstance(cell, str) and cell] for row in grid.cells[:10]]
    # The first row with two texts or more looks most like headings.
    seen = next((row for row in rows if len(row) > 1), next((row for row in rows if row), []))
    shown = ", ".join(seen[:12])[:200]
    if not grid.sheet:
        return f"seen were: {shown}" if seen else ""
    return f'it has the sheet "{grid.sheet}" ' + (f"with the headings {shown}" if seen else "without headings")


def _frames(tables, settings: dict, zone: str, found: list) -> dict:
    """One typed frame per kind, all files and sheets together."""
    for table in tables:
        heal_meanings(table)
    told = (settings.get("sheets") or {}).get("day_first")
    day_first, notes = choose_order(tables, told if isinstance(told, bool) else None)
    found += notes
    frames, hours = {}, []
    for kind in ("batches", "eggs", "weights", "candlings"):
        parts = [frame_of(table, day_first=day_first, zone=zone, hours=hours)
                 for table in tables if table.kind == kind and table.rows]
        frames[kind] = pd.concat(parts, ignore_index=True) if parts else empty_frame(kind)
    for table in tables:
        found += table.problems
    if hours:
        where = "; ".join(f"{heading} ({count})" for _, _, heading, count in hours)
        found.append(problem("note", file=hours[0][0], sheet=hours[0][1],
                             found=f"dates without an hour: {where[:300]}",
                             done="Noon is taken, so ages may be half a day out.",
                             mend="Write the hour where you know it, at least that of setting: 2026-03-05 18:30."))
    return frames


def _logs(folder: Path, settings: dict, batches, zone: str, names, loose):
    """All logs; `loose` names the texts at the top of the folder that hold no table of batches."""
    if not loose and not any((folder / name).is_dir() for name in names):
        return empty_frame("readings"), _problems.table([])
    from hatchkit.records.logs.season import read_logs

    return read_logs(folder, settings, batches, zone, loose=loose)


def _unknown_files(unknown, log_problems, readings) -> list[dict]:
    """Problem rows of text files that are neither a table of batches nor a log."""
    used = set(log_problems["file"]) | set(readings["file"].unique())
    return [row for name, suffix, told in unknown for row in told if suffix in WORKBOOKS or name not in used]


def _nothing(folder: Path, names: list[str], found: list) -> str:
    lost = [row for row in found if row["severity"] == "lost"]
    if lost:
        row = lost[0]
        return f"{row['file']}: {row['found']}. {row['mend']}"
    if not names:
        return (f"The folder {folder} is empty; put your batches.xlsx or .csv in it, "
                "or write a blank one with: hatchkit start FOLDER.")
    return (f"There is no table of batches and no log in {folder}; it holds: {', '.join(names[:8])}. "
            "Put your batches.xlsx or .csv in it, or write a blank one with: hatchkit start FOLDER.")
