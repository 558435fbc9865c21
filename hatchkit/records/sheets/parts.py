"""What one block of a sheet adds to the season, and what holds for a whole sheet."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import pandas as pd

from hatchkit.records.sheets.cells import is_empty

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
