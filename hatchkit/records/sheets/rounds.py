"""Two rounds or years side by side under headings that span them -> a block for each."""

from __future__ import annotations

from dataclasses import replace

from hatchkit.records.sheets.cells import is_empty
from hatchkit.records.sheets.meanings import meanings

#: Headings that must come again under each group.
LEAST_SHARED = 3


def by_round(block) -> list:
    """The block as one block per group of columns, where the groups hold the same headings.

    Columns outside the groups (the nest, the pair) belong to each.

    Parameters
    ----------
    block : Block
    """
    groups = [group for group in dict.fromkeys(block.groups) if group]
    places = {group: [i for i, other in enumerate(block.groups) if other == group] for group in groups}
    heads = [[block.headings[i].strip().lower() for i in places[group]] for group in groups]
    alike = len(groups) > 1 and len(heads[0]) >= LEAST_SHARED and all(head == heads[0] for head in heads[1:])
    if not alike or not _of_eggs(block, places[groups[0]]):
        return [block]
    shared = [i for i, group in enumerate(block.groups) if not group]
    return [_one(block, shared, places[group], group, first=group == groups[0]) for group in groups]


def _of_eggs(block, places) -> bool:
    """Whether a group's headings name eggs or their setting."""
    return any(
        meaning.field in ("set_at", "eggs_set", "egg", "eggs_weighed")
        for place in places
        for meaning in meanings(block.headings[place], "", None)
    )


def _one(block, shared, mine, group: str, *, first: bool):
    """One round; rows in which it says nothing are no rows of it."""
    order = [*shared, *mine]
    rows = [row for row in range(len(block.rows)) if first or any(not is_empty(block.columns[i][row]) for i in mine)]
    return replace(
        block,
        headings=[block.headings[i] for i in order],
        groups=[""] * len(order),
        columns=[[block.columns[i][row] for row in rows] for i in order],
        rows=[block.rows[row] for row in rows],
        sections=[block.sections[row] or group for row in rows],
        titles=[*block.titles, group],
        skipped=list(block.skipped) if first else [],
    )
