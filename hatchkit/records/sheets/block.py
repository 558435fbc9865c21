"""A block of a sheet: headings with the records below them, and which lines are totals."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cache

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
