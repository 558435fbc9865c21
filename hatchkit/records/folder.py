"""A season folder -> plain tables, and a problem row for everything that could not be taken as written."""

from __future__ import annotations

import gc
from contextlib import contextmanager
from pathlib import Path

import pandas as pd

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError, problem
from hatchkit.records import checks
from hatchkit.records.changes import is_changes, read_changes
from hatchkit.records.files import LOG_TEXTS, MOST_FILES, names_in, plain_texts, read_files
from hatchkit.records.own_sheet import own_readings
from hatchkit.records.season_toml import language_of_season, read_settings
from hatchkit.records.sheets.assemble import Sheets, read_sheets
from hatchkit.records.sheets.fields import OWN_COLUMNS, key_of, own_key
from hatchkit.records.sheets.frames import tidy
from hatchkit.records.sheets.names import machines_of
from hatchkit.records.sheets.shown import QUESTIONS, ledger_table, question_table, reading_table
from hatchkit.records.told import with_headings
from hatchkit.records.workbook import TEXTS, WORKBOOKS
from hatchkit.reference import contract


def read_folder(folder, answers: dict | None = None, *, only: str = "") -> dict:
    """Everything that a season folder holds, read and checked, before any analysis.

    Parameters
    ----------
    folder : path
    answers : dict, optional
        (file, sheet, heading) -> what the person confirmed; without it the folder's own answers are read.
    only : str
        Name of the one file at the top of the folder that is the book of batches; the others are not looked at.

    Returns
    -------
    dict
        title, timezone, batches, eggs, weights, looks, readings, problems, species_table, settings, questions, reading,
        ledger, logs, changes; and headings ((file, sheet) -> {column: the person's heading}), for further problems.

    Raises
    ------
    HatchkitError
        If the folder is missing or can't be read, or holds neither a table of batches nor a log.
    """
    folder = Path(folder)
    names = [name for name in names_in(folder) if not only or name == only or (folder / name).is_dir()]
    settings, title, zone, species_table, found = read_settings(folder)
    if answers is None:
        from hatchkit.records.answers import read_answers

        answers, notes = read_answers(folder)
        found += notes
    settings = _with_answers(settings, answers)
    fixed = _fixed(settings, answers)
    with _without_collecting():
        grids, unread = read_files(folder, names, found, plain_texts(folder, names, settings))
        changes = read_changes([grid for grid in grids if is_changes(grid)], settings, zone, found)
        grids = [grid for grid in grids if not is_changes(grid)]
        sheets = read_sheets(
            grids,
            settings=settings,
            fixed=_Fixed(fixed, own_readings(grids)),
            species_table=species_table,
            hint_day_first=_told_order(settings, answers),
        )
    found += sheets.problems
    language, notes = language_of_season(settings, sheets.understood)
    found += notes
    batches = (
        tidy(sheets.batches, "batches", zone, found, extra=True) if len(sheets.batches) else contract.empty("batches")
    )
    batches["incubator"], notes = machines_of(batches, settings)
    found += notes
    loose = [name for name, suffix, _ in unread if suffix in TEXTS] + [
        name for name in names[:MOST_FILES] if Path(name).suffix.lower() in LOG_TEXTS and not (folder / name).is_dir()
    ]
    loose += [
        name for name in _without_table(grids, sheets) if name not in loose and Path(name).suffix.lower() in TEXTS
    ]
    logs = _logs(folder, settings, batches, zone, names, loose, answers)
    readings, log_problems = logs.readings, logs.problems
    batches, notes = _one_machine(batches, readings)
    found += notes
    found += _unread_files(unread, log_problems, readings)
    found += _sheets_without_table(grids, sheets, readings, log_problems)
    tables = any(item.kind not in ("", "lines") for item in sheets.understood)
    if readings.empty and batches.empty and not tables and not sheets.open:
        raise _nothing(folder, names, found)
    eggs = tidy(sheets.eggs, "eggs", zone, found) if len(sheets.eggs) else contract.empty("eggs")
    weights = tidy(sheets.weights, "weights", zone, found) if len(sheets.weights) else contract.empty("weights")
    looks = tidy(sheets.looks, "looks", zone, found) if len(sheets.looks) else contract.empty("looks")
    doubts = checks.check_batches(batches, species_table, zone) + checks.check_eggs(eggs)
    found += checks.check_logs(batches, readings)
    if batches.empty:
        found.append(_no_batch(sheets, readings))
    headings = _headings(sheets)
    return dict(
        title=title,
        timezone=zone,
        batches=batches,
        eggs=eggs,
        weights=weights,
        looks=looks,
        readings=readings,
        species_table=species_table,
        settings=settings,
        questions=pd.DataFrame(
            [*question_table(sheets, answers).to_dict("records"), *logs.questions.to_dict("records")], columns=QUESTIONS
        ),
        logs=logs.files,
        changes=changes,
        reading=reading_table(sheets),
        language=language,
        ledger=ledger_table(sheets),
        problems=_problems.combine(
            _problems.table(found), with_headings(_problems.table(doubts), headings), log_problems
        ),
        headings=headings,
    )


class _Fixed(dict):
    """Readings that hold for a sheet: of the kit's own blank one, the whole season's, changed by those of the sheet."""

    def __init__(self, fixed: dict, own: dict):
        super().__init__(fixed)
        self.own = own

    def get(self, place, default=None):
        """The fixed readings of (file, sheet)."""
        return {**self.own.get(place, {}), **super().get(None, {}), **super().get(place, {})}


def _fixed(settings: dict, answers: dict) -> dict:
    fixed: dict = {None: {}}
    for (file, sheet, heading), taken in answers.items():
        if heading:
            fixed.setdefault((file, sheet), {})[heading] = taken
    for heading, column in (settings.get("headers") or {}).items():
        if isinstance(column, str):
            for place in fixed.values():
                place.pop(heading, None)
            fixed[None][heading] = own_key(column)
    return fixed


def _with_answers(settings: dict, answers: dict) -> dict:
    """Settings with what a person answered of the whole season; season.toml wins."""
    told = {heading: taken for (_, _, heading), taken in answers.items() if heading.startswith("?")}
    for asked, name in (("?species", "default_species"), ("?year", "year"), ("?diary", "diary"), ("?sums", "sums")):
        if asked in told and not settings.get(name):
            settings = {**settings, name: told[asked]}
    return settings


def _told_order(settings: dict, answers: dict) -> bool | None:
    told = (settings.get("sheets") or {}).get("day_first")
    if isinstance(told, bool):
        return told
    answer = next((taken for (_, _, heading), taken in answers.items() if heading == "?day_first"), None)
    return None if answer is None else str(answer).lower() == "true"


def _headings(sheets: Sheets) -> dict:
    """(file, sheet) -> {column of the kit: the person's heading}."""
    own, found = {own_key(name): name for name in OWN_COLUMNS}, {}
    for item in sheets.understood:
        for column, meaning in zip(item.columns, item.chosen, strict=False):
            if meaning.field not in ("ignore", "notes"):
                name = own.get(key_of(meaning), meaning.field)
                if column.heading != name:
                    found.setdefault((item.block.file, item.block.sheet), {}).setdefault(name, column.heading)
    return found


def _no_batch(sheets: Sheets, readings: pd.DataFrame) -> dict:
    """The problem row of a season without a batch: what is missing, and where to write it."""
    item = next((item for item in sheets.understood if item.kind), None)
    logs = bool(len(readings))
    if item is None:
        return problem("lost", code="no_table", facts=dict(logs=logs))
    where = dict(file=item.block.file, sheet=item.block.sheet)
    code = "no_usable_batch" if item.block.rows else "no_row_yet"
    return problem("note", code=code, facts=dict(logs=logs), **where)


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


def _without_table(grids, sheets: Sheets) -> list[str]:
    """Files on none of whose sheets a table was found."""
    used = {item.block.file for item in sheets.understood if item.kind and item.kind != "lines"}
    used |= set(sheets.batches["file"]) if len(sheets.batches) else set()
    return list(dict.fromkeys(grid.file for grid in grids if grid.file not in used))


def _sheets_without_table(grids, sheets: Sheets, readings, log_problems) -> list[dict]:
    """Notes on sheets that hold something of which nothing is used."""
    used = {(item.block.file, item.block.sheet) for item in sheets.understood if item.kind and item.kind != "lines"}
    if len(sheets.batches):
        used |= set(zip(sheets.batches["file"], sheets.batches["sheet"], strict=True))
    logs = set(log_problems["file"]) | set(readings["file"].unique())
    found = []
    for grid in grids:
        if (grid.file, grid.sheet) in used or grid.file in logs or not any(map(any, grid.cells)):
            continue
        mine = any(file == grid.file for file, _ in used)
        found.append(
            problem(
                "note" if mine else "lost",
                code="sheet_not_used",
                facts=dict(seen=_seen_on(grid)),
                file=grid.file,
                sheet=grid.sheet,
                row=1,
            )
        )
    return found


def _seen_on(grid) -> str:
    """What a sheet without a known table shows: the row that looks most like headings."""
    rows = [[str(cell) for cell in row if isinstance(cell, str) and cell] for row in grid.cells[:10]]
    seen = next((row for row in rows if len(row) > 1), next((row for row in rows if row), []))
    return ", ".join(seen[:12])[:200]


def _one_machine(batches: pd.DataFrame, readings: pd.DataFrame):
    """One log and no machine in the sheet: they belong together, said in one note."""
    machines = list(readings["incubator"].dropna().unique()) if len(readings) else []
    if len(machines) != 1 or batches.empty or batches["incubator"].notna().any():
        return batches, []
    batches = batches.assign(incubator=pd.Series(str(machines[0]), batches.index, dtype="str"))
    return batches, [
        problem(
            "note",
            code="one_log",
            facts=dict(machine=str(machines[0]), count=len(batches)),
            file=str(readings["file"].iloc[0]),
        )
    ]


def _logs(folder: Path, settings: dict, batches, zone: str, names, loose, answers):
    """All logs; `loose` names the texts at the top of the folder that hold no table of batches."""
    from hatchkit.records.logs.season import Logs, read_all

    if loose or any((folder / name).is_dir() for name in names):
        return read_all(folder, settings, batches, zone, loose=loose, answers=answers)
    return Logs(contract.empty("readings"), _problems.table([]))


def _unread_files(unread, log_problems, readings) -> list[dict]:
    """Problem rows of text files that are neither a table of batches nor a log."""
    used = set(log_problems["file"]) | set(readings["file"].unique())
    return [row for name, suffix, told in unread for row in told if suffix in WORKBOOKS or name not in used]


def _nothing(folder: Path, names: list[str], found: list) -> HatchkitError:
    """Why there is no season in a folder."""
    lost = [row for row in found if row["severity"] == "lost"]
    if lost:
        row = lost[0]
        parts = {part: dict(code=row["code"], facts=row["facts"], part=part) for part in ("found", "fix")}
        return HatchkitError("folder_only_lost", dict(file=row["file"], sheet=row["sheet"], **parts))
    if not names:
        return HatchkitError("folder_empty", dict(folder=str(folder)))
    return HatchkitError("folder_without_batches", dict(folder=str(folder), there=names))
