"""What all sheets of a folder say, put together: batches with a key each, their looks, eggs and weighings."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np
import pandas as pd

from hatchkit.records.guard import guarded
from hatchkit.records.sheets import looks as look_table
from hatchkit.records.sheets import names as naming
from hatchkit.records.sheets.diary import read_diary, without_unclear
from hatchkit.records.sheets.doubts import without_too_many, without_unexplained
from hatchkit.records.sheets.eggsheet import read_eggs
from hatchkit.records.sheets.legend import marks_in
from hatchkit.records.sheets.logsheet import read_log, read_weights
from hatchkit.records.sheets.names import none
from hatchkit.records.sheets.parts import Context, Part
from hatchkit.records.sheets.species import with_species
from hatchkit.records.sheets.tables import read_batches
from hatchkit.records.sheets.told import checked, odd_cells, rows_told, skipped_rows, without_ends_ahead
from hatchkit.records.sheets.understand import Understood, language_on, understand, year_in
from hatchkit.records.sheets.when import decide_order, decide_year


@dataclass
class Sheets:
    """Everything that the sheets of a folder hold, before times are turned to UTC.

    Attributes
    ----------
    understood : list of Understood
    problems : list of dict
    open : list of dict
        What is to be asked beside the meaning of columns: species, birds mixed, the year, the order of dates.
    batches, looks, eggs, weights : DataFrame
    """

    understood: list
    problems: list
    open: list
    batches: pd.DataFrame = field(default_factory=pd.DataFrame)
    looks: pd.DataFrame = field(default_factory=pd.DataFrame)
    eggs: pd.DataFrame = field(default_factory=pd.DataFrame)
    weights: pd.DataFrame = field(default_factory=pd.DataFrame)


def read_sheets(
    grids,
    *,
    settings: dict,
    fixed: dict,
    species_table: pd.DataFrame,
    hint_day_first: bool | None = None,
) -> Sheets:
    """The tables of all grids.

    Parameters
    ----------
    grids : list of Grid
    settings : dict
        season.toml.
    fixed : dict
        (file, sheet) -> {heading: reading} that a person confirmed or season.toml states.
    species_table : DataFrame
    hint_day_first : bool, optional
    """
    understood: list[Understood] = []
    found: list[dict] = []
    marks: dict = {}
    for grid in grids if len(grids) > 1 else ():
        with guarded(grid.file, grid.sheet, found):
            marks.setdefault(grid.file, {}).update(marks_in(grid, language_on(grid))[0])
    for grid in grids:
        with guarded(grid.file, grid.sheet, found):
            told = fixed.get((grid.file, grid.sheet), {})
            understood += understand(grid, told, Path(grid.file).stem, marks.get(grid.file))
    day_first, asked = decide_order(understood, hint_day_first)
    year, more = decide_year(understood, settings.get("year"))
    asked += more
    parts = []
    for item in understood:
        part = None
        with guarded(item.block.file, item.block.sheet, found):
            part = _read(item, _context(item, day_first, year))
        found += skipped_rows(item.block)
        if part is not None and item.kind == "lines" and settings.get("diary") != "used":
            part, more = without_unclear(item, part)
            asked += more
        if part is not None and item.kind == "batches":
            part = without_unexplained(item, part)
        if part is not None and item.kind in ("batches", "looks") and settings.get("sums") != "used":
            part, more = without_too_many(item, part)
            asked += more
        if part is not None and item.kind == "batches":
            found += checked(item, part)
        if part is not None:
            parts.append((item, part))
            found += odd_cells(item, part)
    return _put_together(parts, Sheets(understood, found, asked), settings, species_table)


def _context(item: Understood, day_first: bool, year: int | None) -> Context:
    block = item.block
    years: Any = item.year or year
    if block.sections and any(block.sections):
        own = [year_in([text]) or years for text in block.sections]
        if any(own):
            years = own if len(set(own)) > 1 else own[0]
    return Context(item.language, day_first, years)


#: Kind of a table -> what reads it by the meaning of its columns.
_READERS = {"eggs": read_eggs, "looks": read_log, "weights": read_weights}


def _read(item: Understood, context: Context) -> Part | None:
    if item.kind == "batches":
        return read_batches(item.block, item.reading, context)
    if item.kind == "lines":
        part = read_diary(item.block, context)
        return part if len(part.batches) else None
    reader = _READERS.get(item.kind)
    return reader(item.block, item.chosen, context) if reader else None


def _put_together(parts, sheets: Sheets, settings, species_table) -> Sheets:
    """One table of batches from all parts; further parts of the same batches are worked into it."""
    main = [(item, part) for item, part in parts if len(part.batches)]
    # Tables of batches come first: egg rows and logs of the same names then belong to them.
    main.sort(key=lambda pair: {"batches": 0, "looks": 1, "eggs": 2, "lines": 1}[pair[0].kind])
    batches, looks, eggs, weights = [], [], [], []
    offset, by_key = 0, {}
    for number, (item, part) in enumerate(main):
        frame = part.batches.copy()
        frame["titles"] = [tuple(item.titles)] * len(frame)
        frame["kind"], frame["table"] = item.kind, number
        target = np.array(naming.places(frame, by_key, item.kind), dtype=float)
        new = np.isnan(target)
        target[new] = offset + np.arange(new.sum())
        target = target.astype(int)
        added = frame[new].reset_index(drop=True)
        if len(added):
            batches.append(added)
            if len(main) > 1:
                naming.remember(added, by_key, offset)
            offset += len(added)
        known = np.flatnonzero(~new)
        if len(known):
            _complete(batches, frame, known, target)
        if len(known) and item.kind == "eggs":
            _opened_eggs(batches[0], frame, known, target)
        for table, store in ((part.looks, looks), (part.eggs, eggs), (part.weights, weights)):
            if len(table) and "place" in table:
                source = {"batches": 0, "looks": 1, "lines": 1, "eggs": 2}[item.kind]
                table = table.assign(place=target[table["place"].to_numpy(int)], source=source, table=number)
                if "file" not in table:
                    table["file"], table["sheet"] = item.block.file, item.block.sheet
                store.append(table)
    table = pd.concat(batches, ignore_index=True) if batches else pd.DataFrame()
    if len(table):
        table, asked = with_species(table, settings, species_table)
        sheets.open += asked
        _finish(sheets, table, looks, eggs, weights, parts, species_table)
    return sheets


#: Losses that a further table would count a second time where the batch's own row explains all its eggs.
_LOSSES = ("dead_in_shell", "broken_infertile", "removed", "pipped_dead", "culled")


#: What a batch keeps of its own table, whatever a further one tells.
_OWN = frozenset({"file", "sheet", "row", "rest", "broken", "titles", "kind", "section", "name"})


def _explained(row) -> bool:
    opened = any(not none(row.get(name)) for name in ("broken_early", "broken_mid", "broken_late"))
    return not none(row.get("hatched")) and (opened or row.get("rest") == 0)


def _complete(batches: list, frame, known, target) -> None:
    """Fill what a batch lacks from a further table that tells of the same batch."""
    whole = pd.concat(batches, ignore_index=True)
    for place in known:
        at = target[place]
        kept = _OWN | set(_LOSSES) if _explained(whole.iloc[at]) else _OWN
        for column, value in frame.iloc[place].items():
            if column not in kept and not none(value) and (column not in whole or none(whole.at[at, column])):
                whole.loc[at, column] = value
    batches[:] = [whole]


def _opened_eggs(whole, frame, known, target) -> None:
    """Eggs listed one by one that are the unhatched of a batch: the list says what each was."""
    for place in known:
        row, at = frame.iloc[place], target[place]
        if (
            not none(whole.at[at, "dead_in_shell"])
            and whole.at[at, "dead_in_shell"] == row["eggs_set"] < whole.at[at, "eggs_set"]
        ):
            for name in ("dead_in_shell", "pipped_dead", "removed", "broken_infertile"):
                if name in row and not none(row[name]) and (row[name] or name == "dead_in_shell"):
                    before = whole.at[at, name] if name in whole and name != "dead_in_shell" else 0.0
                    whole.loc[at, name] = row[name] + (0.0 if none(before) else before)


def _finish(sheets: Sheets, table, looks, eggs, weights, parts, species_table) -> None:
    """The tables of the batches that can be used; the others are told."""
    found = sheets.problems
    lost = naming.unusable(table)
    found += [rows_told(table.loc[index]) for index in lost]
    keep = ~table.index.isin(lost)
    table["batch"] = naming.keys(table, keep, found)
    number = np.where(keep, np.cumsum(keep) - 1, -1)
    batches = table[keep].reset_index(drop=True)
    if batches.empty:
        return
    sheets.batches = without_ends_ahead(batches, species_table, found)
    looked = pd.concat(looks, ignore_index=True) if looks else pd.DataFrame()
    sheets.looks = look_table.build(batches, _moved(looked, number), species_table, found)
    names = batches["batch"].to_numpy()
    if eggs:
        sheets.eggs = _moved(pd.concat(eggs, ignore_index=True), number)
        sheets.eggs["batch"] = names[sheets.eggs["place"].to_numpy(int)]
    scales = [_moved(part, number) for part in weights]
    for frame in scales:
        frame["batch"] = names[frame["place"].to_numpy(int)]
    scales += [naming.linked(part.weights, batches, found) for item, part in parts if item.kind == "weights"]
    scales = [frame for frame in scales if len(frame)]
    if scales:
        sheets.weights = _dated(pd.concat(scales, ignore_index=True), batches)


def _moved(table: pd.DataFrame, number: np.ndarray) -> pd.DataFrame:
    """Rows of kept batches, with the batch's new place."""
    if table.empty:
        return table
    place = number[table["place"].to_numpy(int)]
    return table[place >= 0].assign(place=place[place >= 0]).reset_index(drop=True)


def _dated(weights: pd.DataFrame, batches: pd.DataFrame) -> pd.DataFrame:
    """Weighings with a time: their own, else setting and the day of the heading."""
    start = weights["batch"].map(dict(zip(batches["batch"], batches["set_at"], strict=True)))
    by_day = start + pd.to_timedelta(weights["day"] if "day" in weights else np.nan, unit="D")
    at = pd.to_datetime(weights["at"]) if "at" in weights else pd.Series(pd.NaT, weights.index)
    return weights.assign(weighed_at=at.fillna(by_day).astype("datetime64[us]"))
