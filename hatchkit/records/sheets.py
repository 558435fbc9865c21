"""One sheet of cells -> the table in it: where the headings are, what they mean, which rows are data."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from hatchkit.problems import problem
from hatchkit.records.headers import KINDS, name_columns, recognise
from hatchkit.records.values import is_empty, shown, text_of
from hatchkit.records.words import plain, split_words, value_words
from hatchkit.records.workbook import Grid
from hatchkit.spelling import many

#: Headings are looked for in this many rows from the top.
HEAD_ROWS = 30

_SHEET_NAMES = {"batches": {"batch", "batche", "hatch", "hatche", "season", "setting", "brut", "bruten", "lot"},
                "eggs": {"egg", "ei", "eier", "oeuf", "huevo", "uova"},
                "weights": {"weight", "weighing", "gewicht", "gewichte", "poid", "peso", "pesi"},
                "candlings": {"candling", "candle", "look", "schieren", "mirage", "check", "visit"}}
_UNIT_WORDS = {"g", "kg", "gram", "grams", "date", "days", "day", "pcs", "n", "no", "no.", "eggs", "yes/no", "text",
               "dd/mm/yyyy", "weeks", "count", "time", "hh:mm", "stk", "%", "c", "°c"}
_EGG_SIGNS = {"candle1", "candle2", "transfer", "outcome", "weight_g", "stage_day"}


@dataclass
class Table:
    """A table found in a grid: raw cells by column, with the row of each as the person sees it."""

    kind: str
    file: str
    sheet: str
    headings: list[str]
    names: list[str | None]
    rows: list[int]
    columns: list
    problems: list[dict]

    def column(self, name: str):
        """The cells under a canonical column, or None if the table has no such column."""
        return self.columns[self.names.index(name)] if name in self.names else None


def find_table(grid: Grid, own: dict[str, str]) -> Table | None:
    """The table of batches, eggs, weights or candlings in a grid, or None if it holds none.

    Parameters
    ----------
    grid : Grid
    own : dict
        Headings that season.toml explains (`headers.own_headings`).
    """
    best = None
    for top, row in enumerate(grid.cells[:HEAD_ROWS]):
        if best is not None and top > best[2] + 3:
            break
        lines = [text_of(cell) or "" for cell in row]
        if sum(map(bool, lines)) < 2 or not any(isinstance(cell, str) and cell for cell in row):
            continue
        for depth, groups, heads in _readings_of_head(grid.cells, top, lines):
            for kind in KINDS:
                headings = [_heading(group, head, kind) for group, head in zip(groups, heads, strict=True)]
                names = name_columns(headings, kind, own)[0]
                score = _score(kind, set(names) - {None}, grid)
                if score > 0 and (best is None or score > best[0]):
                    best = (score, kind, top, depth, headings)
    if best is None:
        return None
    _, kind, top, depth, headings = best
    return _cut(grid, kind, top, depth, headings, own)


def headings_of(table: Table) -> dict[str, str]:
    """Column of the kit -> the person's own heading, where the two differ."""
    return {name: heading for name, heading in zip(table.names, table.headings, strict=True)
            if name and heading and plain(heading) != name}


def _readings_of_head(cells, top: int, lines: list[str]):
    """(rows, group headings, headings): one row, two rows of which the upper groups the lower, a row and units."""
    none = [""] * len(lines)
    below = cells[top + 1] if top + 1 < len(cells) else []
    if _units_only(below):
        yield 2, none, lines
        return
    yield 1, none, lines
    if not any(below) or not all(isinstance(cell, str) for cell in below):
        return
    group, groups = "", []
    for upper, lower in zip(lines, below, strict=True):
        group = upper or group
        groups.append(group if lower.strip() else "")
    yield 2, groups, [lower.strip() or upper for upper, lower in zip(lines, below, strict=True)]


def _heading(group: str, line: str, kind: str) -> str:
    """A heading with the group it stands under, where only both together say which column it is."""
    both = f"{group} {line}" if group and group != line else line
    return both if group and (recognise(both, kind)[0] or not recognise(line, kind)[0]) else line


def _units_only(row) -> bool:
    kept = [cell for cell in row if not is_empty(cell)]
    return bool(kept) and all(isinstance(cell, str) and plain(cell).strip("()[]") in _UNIT_WORDS for cell in kept)


def _score(kind: str, names: set, grid: Grid) -> int:
    """How well a row of headings fits a kind of table; 0 if it can't be one."""
    some = {"batches": names & {"eggs_set", "set_at"} and len(names) >= 3,
            "eggs": "egg" in names and names & _EGG_SIGNS,
            "weights": {"grams", "weighed_at"} <= names,
            "candlings": "batch" in names and names & {"looked_at", "day", "name"}
            and names & {"clear", "dead", "left"}}[kind]
    if not some:
        return 0
    title = set(split_words(grid.sheet or Path(grid.file).stem))
    return 2 * len(names) + 3 * bool(title & _SHEET_NAMES[kind])


def _cut(grid: Grid, kind: str, top: int, depth: int, headings: list[str], own: dict[str, str]) -> Table:
    start = top + depth
    names, guessed, doubled = name_columns(headings, kind, own)
    problems = []

    def tell(severity, **what):
        problems.append(problem(severity, file=grid.file, sheet=grid.sheet, **what))

    above = [(place + 1, row) for place, row in enumerate(grid.cells[:top]) if not all(map(is_empty, row))]
    if above:
        tell("note", row=above[0][0], done="Not read as data.",
             found=f"{many(len(above), 'line')} above the table: {'; '.join(_row_text(row) for _, row in above)[:200]}")
    for place in guessed:
        tell("note", row=start, column=headings[place], found=f"heading {shown(headings[place])}",
             done=f"Read as {names[place]}, as if misspelt.", mend="Correct the heading if that is wrong.")
    for place in doubled:
        tell("doubtful", row=start, column=headings[place],
             found=f"heading {shown(headings[place])} means the same as another column",
             done="The other one is used; this one is kept under its own name.",
             mend="Rename one of the two, or say in season.toml under [headers] what it is.")
    body = grid.cells[start:]
    keys = [names.index(name) for name in ("batch", "egg", "eggs_set", "set_at", "weighed_at", "looked_at", "grams")
            if name in names]
    columns = list(zip(*body, strict=True)) if body else [()] * len(headings)
    lead = names.index("batch") if "batch" in names else 0
    left_out = set()
    for place in _doubtful_rows(columns, keys, lead, headings[lead]):
        reason = _not_data(kind, body[place], headings, lead)
        if reason:
            left_out.add(place)
        if reason and reason != "blank":
            text = f"{reason}: {_row_text(body[place])}"
            tell("note", row=start + 1 + place, found=text, done="Not read as data.")
    kept = [place for place in range(len(body)) if place not in left_out]
    if left_out:
        columns = [[cells[place] for place in kept] for cells in columns]
    rows = [start + 1 + place for place in kept]
    return Table(kind, grid.file, grid.sheet, headings, names, rows, columns, problems)


def _doubtful_rows(columns: list, keys: list[int], lead: int, heading: str) -> list[int]:
    """Rows that may be no data: a needed cell is empty, or they start with a word of totals or the heading."""
    marked = {cell for cell in set(columns[lead]) if isinstance(cell, str)
              and (_is_total(cell) or cell.strip() == heading)}
    found = {place for place, cell in enumerate(columns[lead]) if cell in marked}
    for key in {*keys, lead}:
        if not all(columns[key]):
            found.update(place for place, cell in enumerate(columns[key]) if is_empty(cell))
    return sorted(found)


def _is_total(text: str) -> bool:
    if not _start_of_totals().match(text):
        return False
    words = plain(text).replace(":", " ").split()
    return " ".join(words) in value_words("total") or words[0] in value_words("total") and len(words) <= 3


@cache
def _start_of_totals() -> re.Pattern:
    first = {words.split()[0] for words in value_words("total")}
    return re.compile(r"\s*(?:" + "|".join(sorted(map(re.escape, first))) + r")\b", re.IGNORECASE)


def _not_data(kind: str, row, headings, lead: int) -> str | None:
    """Why a row is no data row ("blank" if it is empty), or None if it is one."""
    filled = [cell for cell in row if not is_empty(cell)]
    if not filled:
        return "blank"
    if [text_of(cell) or "" for cell in row] == headings:
        return "the headings again"
    first = filled[0] if is_empty(row[lead]) else row[lead]
    if isinstance(first, str) and _is_total(first):
        return "a row of totals"
    if _units_only(row):
        return "a row of units"
    if len(filled) == 1 and isinstance(first, str) and len(headings) > 2 and len(first) > 3 \
            and (" " in first.strip() or is_empty(row[lead])):
        return "text outside the table"
    if kind == "batches" and is_empty(row[lead]) and all(isinstance(cell, (int, float)) for cell in filled):
        return "a row of numbers without a name"
    return None


def _row_text(row) -> str:
    return shown(", ".join(text_of(cell) for cell in row if not is_empty(cell)))
