"""Labels at the left, a batch per column of values: a table lying on its side."""

from __future__ import annotations

from hatchkit.records.sheets.block import Block, starts_with_total
from hatchkit.records.sheets.cells import is_empty, text_of
from hatchkit.records.sheets.formlines import GROUPS, mini_heading
from hatchkit.records.sheets.labels import is_label
from hatchkit.records.sheets.rows import drop_sums


def lies(reader, column: int, right: int) -> bool:
    """Whether several columns of values stand beside the labels, and no headings among them."""
    several = single = 0
    for number, row in enumerate(reader.cells):
        if mini_heading(reader, row, reader.filled(number)):
            return False
        if column < len(row) and isinstance(row[column], str) and is_label(reader, row[column]):
            values = sum(not is_empty(cell) and not str(cell).endswith(":") for cell in row[column + 1 : right])
            several += values >= 2
            single += values == 1
    return several > single and several >= 3


def sideways(reader, column: int, right: int, over: int | None = None) -> Block:
    """A table lying on its side: a record per column of values, a heading per label; groups of labels may stand `over`.

    A group's cell is merged or written once, and holds for the labels below it.
    """
    block = Block("sideways", reader.grid.file, reader.grid.sheet, [], [], [], [])
    group, lines = "", []
    for row, cells in enumerate(reader.cells):
        label = cells[column] if column < len(cells) else ""
        values = [cells[place] if place < len(cells) else "" for place in range(column + 1, right)]
        filled = [value for value in values if not is_empty(value)]
        text = text_of(label) or ""
        above = text_of(cells[over]) if over is not None and over < len(cells) else None
        group = above if above and text else group
        text = text or above or ""
        if text and not filled:
            if reader.roles(text) & GROUPS:
                group = text
            elif not lines:
                block.titles.append(text)
            else:
                block.skipped.append((row + 1, "section", text))
            continue
        if not filled:
            group = ""
            continue
        if not text and lines:
            continue
        if not text and len(filled) == 1:
            block.titles.append(text_of(filled[0]))
            continue
        lines.append((row, text, group, values))
    kept = [
        place
        for place in range(right - column - 1)
        if sum(not is_empty(values[place]) for _, _, _, values in lines) >= 2
        and not any(starts_with_total(values[place], reader.language) for _, _, _, values in lines)
    ]
    for _, text, own, values in lines:
        block.headings.append(text.rstrip(" :"))
        block.groups.append(own)
        block.columns.append([values[place] for place in kept])
    block.rows = [lines[0][0] + 1] * len(kept)
    block.sections = [""] * len(kept)
    drop_sums(block)
    return block
