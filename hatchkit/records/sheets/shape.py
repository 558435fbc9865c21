"""A grid of cells -> the blocks in it: tables (also lying on their side), forms, and lines of a diary.

Every shape ends as the same thing: headings, and records whose cells stand below them, each with the row that the
keeper sees. Titles, section lines, totals and blank rows are told apart from data here.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import zip_longest

from hatchkit.records.sheets.cells import is_empty, is_number, text_of
from hatchkit.records.sheets.formlines import label_columns, labels_in
from hatchkit.records.sheets.forms import labelled_blocks
from hatchkit.records.sheets.parts import Block
from hatchkit.records.sheets.rows import (
    UNITS,
    counts_eggs,
    drop_sums,
    is_caption,
    is_date,
    lists,
    not_data,
    plain_rows,
    roles_of,
    spread,
)

#: Headings are looked for among the first cells of a row up to this many columns.
MOST_HEADINGS = 120
#: Rows that are sums without saying so are looked for in tables up to this long.
MOST_SUMMED = 500

#: What the words of a row of headings name, one of them at least; what a row of headings above it names.
_OF_HEADINGS = frozenset(
    "batch hatch set egg date breed hatched chicks candle clear dead day what left species".split()
)
_OF_GROUPS = frozenset(
    "candle day first second third transfer dead hatch hatched set clear week left what opened".split()
)


def find_blocks(grid, language: str | None) -> list[Block]:
    """All blocks of a grid in order; lines of text where there is neither table nor form.

    Parameters
    ----------
    grid : Grid
        file, sheet, cells.
    language : str or None
        The language of the sheet's words.
    """
    reader = _Reader(grid, language)
    heads = reader.heading_rows()
    upright = max((reader.kinds(row) for row in heads), default=0)
    lying = label_columns(reader)
    if lying and labels_in(reader, lying) > max(upright, 2):
        return list(labelled_blocks(reader, lying))
    return list(reader.tables(heads)) if heads else reader.lines()


class _Reader:
    def __init__(self, grid, language):
        self.grid, self.language = grid, language
        self.cells = [row[:MOST_HEADINGS] for row in grid.cells]
        self._roles: dict = {}

    def roles(self, cell) -> frozenset:
        if not isinstance(cell, str) or not cell:
            return frozenset()
        if cell not in self._roles:
            self._roles[cell] = roles_of(cell, self.language)
        return self._roles[cell]

    def filled(self, row: int) -> list[int]:
        return [place for place, cell in enumerate(self.cells[row]) if not is_empty(cell)]

    # ---- tables with a row of headings

    def named(self, row: int) -> int:
        """How many different things the words of a row name."""
        return len({(self.roles(cell), cell) for cell in self.cells[row] if self.roles(cell)})

    def kinds(self, row: int) -> int:
        """How many kinds of things the words of a row name: "1st hatch, 2nd hatch, 3rd hatch" name one."""
        return len({self.roles(cell) for cell in self.cells[row]} - {frozenset()})

    def is_heading(self, row: int) -> bool:
        places = self.filled(row)
        texts = [
            place
            for place in places
            if isinstance(self.cells[row][place], str)
            and not is_number(self.cells[row][place])
            and not is_date(self.cells[row][place])
        ]
        if len(places) < 2 or len(texts) < 0.8 * len(places):
            return False
        if any(lists(self.cells[row][place], self.language) for place in texts):
            return False
        if any(counts_eggs(self.cells[row][place], self.language) for place in texts):
            return False
        named = self.named(row)
        if named < 2 or named < 0.4 * len(places) or len(places) == 2 and not self._key_pair(row):
            return False
        kinds = {role for place in places for role in self.roles(self.cells[row][place])}
        return not is_caption(self.cells[row], self) and bool(kinds & _OF_HEADINGS)

    def _key_pair(self, row: int) -> bool:
        below = [self.filled(place) for place in range(row + 1, min(row + 4, len(self.cells)))]
        return sum(len(places) == 2 for places in below) >= 2 and not any(
            self.roles(self.cells[place][self.filled(row)[0]])
            for place in range(row + 1, min(row + 4, len(self.cells)))
        )

    def heading_rows(self) -> list[int]:
        """Rows that head a table: the first, and later ones that stand apart or say the same again."""
        found: list[int] = []
        for row in range(len(self.cells)):
            if found and row > found[-1] + 1 and len(self.cells) > 400 and row > 200:
                break
            if not self.cells[row] or not self.is_heading(row):
                continue
            if not found:
                found.append(row)
                continue
            if row == found[-1] + 1 or self._like_data(row, found[0] + 1):
                continue
            first = {text_of(cell) for cell in self.cells[found[0]] if not is_empty(cell)}
            mine = {text_of(cell) for cell in self.cells[row] if not is_empty(cell)}
            apart = not self.filled(row - 1) or len(self.filled(row - 1)) == 1
            if len(mine & first) >= 0.6 * len(mine) or apart and self._typed_below(row):
                found.append(row)
        return found

    def _like_data(self, row: int, data: int) -> bool:
        """Whether two cells or more are those of a row of data but for their figures ("30 eggs", "48 eggs")."""
        same = 0
        for one, other in zip(self.cells[row], self.cells[data], strict=False):
            if isinstance(one, str) and isinstance(other, str) and re.search(r"\d", one):
                same += re.sub(r"\d+", "#", one) == re.sub(r"\d+", "#", other)
        return same >= 2

    def _typed_below(self, row: int) -> bool:
        """Whether the rows below hold numbers or dates, as data do."""
        below = [row + step for step in (1, 2, 3) if row + step < len(self.cells) and self.filled(row + step)]
        return any(
            any(
                not isinstance(self.cells[place][i], str)
                or is_number(self.cells[place][i])
                or is_date(self.cells[place][i])
                for i in self.filled(place)
            )
            for place in below
        )

    def tables(self, heads: list[int]) -> Iterator[Block]:
        last_block = None
        for number, top in enumerate(heads):
            end = heads[number + 1] if number + 1 < len(heads) else len(self.cells)
            depth, groups, headings = self._headings(top)
            titles, start_titles = self._titles_above(top, heads[number - 1] if number else -1)
            end = self._without_titles(end, top + depth) if number + 1 < len(heads) else end
            if last_block is not None and last_block.headings == headings and not titles:
                self._fill(last_block, top + depth, end)
                last_block.skipped.append((top + 1, "repeated", self._text(top)))
                continue
            last_block = Block(
                "table", self.grid.file, self.grid.sheet, headings, groups, [[] for _ in headings], [], titles=titles
            )
            last_block.skipped += [(row + 1, "title", self._text(row)) for row in start_titles]
            self._fill(last_block, top + depth, end)
            yield last_block

    def _headings(self, top: int) -> tuple[int, list[str], list[str]]:
        """(rows used, group of each column, heading of each column); a group row may stand above or be the first."""
        head = [text_of(cell) or "" for cell in self.cells[top]]
        none = [""] * len(head)
        below = self.cells[top + 1] if top + 1 < len(self.cells) else []
        places = self.filled(top + 1) if below else []
        if places and all(
            isinstance(below[i], str) and not is_number(below[i]) and not is_date(below[i]) for i in places
        ):
            if all(below[i].strip().strip("()[].").lower() in UNITS for i in places):
                return 2, none, head
            known = sum(bool(self.roles(below[i])) for i in places)
            if known >= max(2, 0.5 * len(places)) and self._second_heading(top, places):
                groups = spread(head, [text_of(cell) or "" for cell in below])
                return 2, groups, [text_of(low) or up for up, low in zip(head, below, strict=True)]
        above = top - 1
        if above >= 0 and 1 <= len(self.filled(above)) and self._groups_row(above, top):
            groups = spread([text_of(cell) or "" for cell in self.cells[above]], head)
            return 1, groups, head
        return 1, none, head

    def _second_heading(self, top: int, places: list[int]) -> bool:
        """Whether the row below the first heading is a heading too, and no row of words such as fates."""
        third = top + 2
        if third >= len(self.cells):
            return False
        same = [
            self.roles(self.cells[top + 1][i]) == self.roles(self.cells[third][i]) != frozenset()
            for i in places
            if i < len(self.cells[third])
        ]
        blanks_above = sum(is_empty(self.cells[top][i]) for i in places)
        return (
            sum(same) <= 0.3 * len(places)
            and (blanks_above > 0 or self._typed_below(top + 1))
            and (blanks_above >= 1 or len(places) < len(self.filled(top)))
        )

    def _groups_row(self, above: int, top: int) -> bool:
        places = self.filled(above)
        if any(not isinstance(self.cells[above][i], str) or is_date(self.cells[above][i]) for i in places):
            return False
        if is_caption(self.cells[above], self):
            return False
        named = sum(bool(self.roles(self.cells[above][i]) & _OF_GROUPS) for i in places)
        return named >= 1 and (len(places) >= 2 or places[0] > self.filled(top)[0])

    def _titles_above(self, top: int, previous: int) -> tuple[list[str], list[int]]:
        """Texts directly above the headings, up to a row of data; nearest last."""
        texts, rows = [], []
        for row in range(top - 1, max(previous, top - 9), -1):
            places = self.filled(row)
            if not places:
                continue
            if (
                previous >= 0
                and not is_caption(self.cells[row], self)
                and (len(places) > 2 or any(is_number(self.cells[row][i]) for i in places))
                and len(places) > 1
            ):
                break
            texts.insert(0, "; ".join(text_of(self.cells[row][i]) for i in places)[:300])
            rows.insert(0, row)
        return texts, rows

    def _without_titles(self, end: int, start: int) -> int:
        """The end of a block's rows, less the titles of the block that follows."""
        row = end - 1
        while row > start and (
            not self.filled(row)
            or len(self.filled(row)) == 1
            and isinstance(self.cells[row][self.filled(row)[0]], str)
            or is_caption(self.cells[row], self)
        ):
            row -= 1
        return row + 1

    def _fill(self, block: Block, start: int, end: int) -> None:
        section = block.sections[-1] if block.sections else ""
        repeated = [text.lower() for text in block.headings]
        kept: list[int] = []
        sections: list[str] = []
        end = min(end, len(self.cells))
        plain = plain_rows(self.cells[start:end], start) if end - start > 400 else frozenset()
        for row in range(start, end):
            cells = self.cells[row]
            if row in plain:
                kept.append(row)
                sections.append(section)
                continue
            places = [place for place, cell in enumerate(cells) if not is_empty(cell)]
            if not places:
                continue
            reason = not_data(cells, places, repeated, self)
            if reason == "section":
                section = " ".join(text_of(cells[i]) for i in places)[:200]
            if reason == "total" and not any("mean" in self.roles(cells[i]) for i in places):
                block.totals.append((row + 1, dict(zip(block.headings, cells, strict=False))))
            if reason:
                block.skipped.append((row + 1, reason, ", ".join(text_of(cells[i]) for i in places)[:200]))
                continue
            kept.append(row)
            sections.append(section)
        upright = zip_longest(*(self.cells[row][: len(block.columns)] for row in kept), fillvalue="")
        for column, cells in zip_longest(block.columns, upright, fillvalue=("",) * len(kept)):
            column += cells
        block.rows += [row + 1 for row in kept]
        block.sections += sections
        if len(block.rows) <= MOST_SUMMED:
            drop_sums(block)

    def _text(self, row: int) -> str:
        return ", ".join(text_of(self.cells[row][i]) for i in self.filled(row))[:200]

    def lines(self) -> list[Block]:
        """The sheet as lines of text, for a diary."""
        kept = [
            (row + 1, [cell for cell in self.cells[row] if not is_empty(cell)])
            for row in range(len(self.cells))
            if self.filled(row)
        ]
        if not kept:
            return []
        return [
            Block(
                "lines",
                self.grid.file,
                self.grid.sheet,
                ["line"],
                [""],
                [[cells for _, cells in kept]],
                [row for row, _ in kept],
                sections=[""] * len(kept),
            )
        ]
