"""A block of a sheet, what it adds to the season, and what holds for a whole sheet."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cache
from typing import Any

import pandas as pd

from hatchkit.records.sheets.cells import is_empty
from hatchkit.records.sheets.lexicon import cut, phrases, tokens


@dataclass
class Block:
    """Headings with the records below them.

    Attributes
    ----------
    shape : str
        table, sideways (batches in columns), form or lines.
    file, sheet : str
    headings, groups : list of str
        The heading of each column and the heading that spans it ("" for none).
    columns : list of list
        Cells by column.
    rows : list of int
        Row of each record as the keeper's program shows it.
    titles : list of str
        Texts above the block, nearest last.
    sections : list of str
        For each record the last section line above it ("" for none).
    skipped : list of (int, str, str)
        Row, why it is no data (title, section, total, repeated, units, percent, note, twice), its text.
    hours : tuple of int
        Columns of hours that were written into the dates beside them.
    totals : list of (int, dict)
        Row of each row of totals, and its cells by heading.
    names : list
        Of a diary, the batch that a column of its own gives for each line; empty where there is none.
    """

    shape: str
    file: str
    sheet: str
    headings: list
    groups: list
    columns: list
    rows: list
    titles: list = field(default_factory=list)
    sections: list = field(default_factory=list)
    skipped: list = field(default_factory=list)
    hours: tuple = ()
    names: list = field(default_factory=list)
    totals: list = field(default_factory=list)


def starts_with_total(cell, language) -> bool:
    """Whether a text begins with a word of totals or averages."""
    if not isinstance(cell, str) or not may_be_total(cell):
        return False
    found = tokens(cell, language)
    if not found or not found[0].roles & {"total", "mean"} or cut(cell)[0].isdigit():
        return False
    return len(found) <= 4


def may_be_total(cell: str) -> bool:
    """A quick look at the first letters, since every name of a long table passes here."""
    return cell.strip()[:3].lower() in total_starts()


@cache
def total_starts() -> frozenset:
    """The first letters of words for totals and averages."""
    return frozenset(
        start for key, roles in phrases().items() if {"total", "mean"} & roles.keys() for start in (key[:3], key[:2])
    ) | {"\u00f6ss", "össz"[:3], "pr\u016f", "\u015bre", "\u015br."}


#: Fields of a batch that are one text, and the column of the contract that each fills.
TEXT_FIELDS = {
    "batch": "name",
    "breed": "breed",
    "species": "species_text",
    "pen": "pen",
    "keeper": "keeper",
    "incubator": "incubator",
    "hatcher": "hatcher",
    "tray": "shelf",
    "posted": "posted",
    "broody": "broody",
    "place": "place",
    "signs": "signs",
}


TIME_FIELDS = {
    "set_at": "set_at",
    "hatch_at": "taken_off_at",
    "first_hatch_at": "first_hatch_at",
    "last_hatch_at": "last_hatch_at",
    "due": "due_at",
    "date": "set_at",
}


DITTO = frozenset(
    {
        '"',
        "''",
        "〃",
        "ditto",
        "do",
        "do.",
        "idem",
        "id.",
        "dito",
        "same",
        "”",
        "“",
        '-"-',
        "-''-",
        "″",
        ",,",
        "„",
        "wie oben",
        "s.o.",
        "lo stesso",
        "==",
    }
)


@dataclass
class Part:
    """What one block adds to the season.

    Attributes
    ----------
    batches : DataFrame
        Contract's columns that the block has, `name`, `species_text`, `section`, `due_at`, `file, sheet, row`;
        times on the wall clock, `<time>_hour` whether an hour was written.
    looks : DataFrame
        place (row of `batches`), day, order, transfer, at, hour, clear, dead, removed, left, derived, row.
    eggs, weights : DataFrame
    odd : list of typed.Odd
    notes : list of (code, facts)
    """

    batches: pd.DataFrame
    looks: pd.DataFrame
    eggs: pd.DataFrame = field(default_factory=pd.DataFrame)
    weights: pd.DataFrame = field(default_factory=pd.DataFrame)
    odd: list = field(default_factory=list)
    notes: list = field(default_factory=list)


@dataclass(frozen=True)
class Context:
    """What holds for a whole sheet: how its dates are ordered, which year, which language."""

    language: str | None
    day_first: bool
    year: Any = None


LOOK_COLUMNS = [
    "place",
    "day",
    "order",
    "transfer",
    "at",
    "hour",
    "clear",
    "dead",
    "removed",
    "left",
    "derived",
    "row",
]


def filled_down(cells: list) -> list:
    """Ditto marks take the cell above."""
    if str not in set(map(type, cells)) or not any(text.strip() in DITTO for text in set(cells) if type(text) is str):
        return cells
    above, found = "", []
    for cell in cells:
        if isinstance(cell, str) and cell.strip() in DITTO:
            cell = above
        found.append(cell)
        above = cell if not is_empty(cell) else above
    return found
