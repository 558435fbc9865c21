"""A column whose cells count two classes as a sum ("3 + 1" below "clear + dead") -> a column for each class."""

from __future__ import annotations

import re

from hatchkit.records.sheets.cells import cell_words, is_empty
from hatchkit.records.sheets.entries import class_of
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.parts import Block
from hatchkit.records.words import plain

_NAMED = re.compile(r"\(?\s*([^\W\d_]+)\s*\+\s*([^\W\d_]+)\s*\)?")
_SUM = re.compile(r"\s*(\d{1,5})\s*\+\s*(\d{1,5})\s*")


def with_addends(block: Block, language: str | None) -> Block:
    """The block with such columns parted, where the heading names both classes and every cell counts both.

    Parameters
    ----------
    block : Block
    language : str or None
    """
    if block.shape == "lines" or not block.columns:
        return block
    kept: list[tuple] = []
    for heading, group, cells in zip(block.headings, block.groups, block.columns, strict=True):
        kept += _parted(heading, group, cells, language) or [(heading, group, cells)]
    block.headings, block.groups, block.columns = map(list, zip(*kept, strict=True))
    return block


def _parted(heading: str, group: str, cells: list, language: str | None) -> list[tuple]:
    """(heading, group, cells) of each class; empty where the column is none of this kind."""
    named = _NAMED.search(heading)
    if named is None:
        return []
    kinds = [class_of(all_roles(tokens(word, language))) for word in (named[1], named[2])]
    if None in kinds or kinds[0] == kinds[1]:
        return []
    counts = [_two_counts(cell) for cell in cells]
    if None in counts or not any(isinstance(cell, str) and _SUM.fullmatch(cell) for cell in cells):
        return []
    above = " ".join(filter(None, (group, heading.replace(named[0], " ").strip())))
    return [(named[1], above, [pair[0] for pair in counts]), (named[2], above, [pair[1] for pair in counts])]


def _two_counts(cell) -> tuple | None:
    """The two numbers of a cell; blanks of an empty one, None of one that holds anything else."""
    if is_empty(cell) or plain(str(cell)) in cell_words("unknown"):
        return "", ""
    if cell == 0 or plain(str(cell)) in cell_words("zero") | {"0"}:
        return 0.0, 0.0
    pair = _SUM.fullmatch(str(cell))
    return (float(pair[1]), float(pair[2])) if pair else None
