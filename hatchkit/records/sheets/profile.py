"""What the cells of a column hold, seen on a sample: numbers of eggs, dates, words of fate, running numbers."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

import numpy as np

from hatchkit.records.sheets.amounts import measure_of
from hatchkit.records.sheets.birds import species_in
from hatchkit.records.sheets.cells import CLASSES, Count, count_of, is_empty, is_number, text_of
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.when import is_dateish

#: Rows from which a sheet is understood; the rest is read the same way.
SAMPLE = 60

#: Codes of cells that a keeper writes in a column of counts.
_COUNT_CODES = frozenset({"", "zero", "unknown", "all", "sum", "remark", "unsure", "about", "of", "words"})
#: Headings under which "out" is a chick.
_ENDS = frozenset({"hatch", "hatched", "result"})


@dataclass
class Column:
    """A column of a block with what its sample of cells holds.

    Attributes
    ----------
    place : int
        Position in the block.
    heading, group : str
    cells : list
        The sample.
    filled : int
        Cells of the sample that hold something.
    counts : list of Count
    values : ndarray of float, shape (n,)
        Counts; NaN where there is none.
    share_count, share_date, share_fate, share_text, share_fraction : float
        Of the filled cells.
    percents : ndarray of float, shape (n,), or None
        Percentages in points, where the cells or the heading say that they are some.
    running : bool
        1, 2, 3, ... in order.
    distinct : float
        Different values among the filled cells, as a share.
    birds, events, sets : float
        Share of the filled cells that name a kind of bird; a step of the work (set, candled, moved, hatched); setting.
    mean_length : float
        Letters of a filled cell.
    """

    place: int
    heading: str
    group: str
    cells: list
    filled: int = 0
    counts: list = field(default_factory=list)
    values: np.ndarray | None = None
    share_count: float = 0.0
    share_date: float = 0.0
    share_fate: float = 0.0
    share_text: float = 0.0
    share_fraction: float = 0.0
    percents: np.ndarray | None = None
    running: bool = False
    distinct: float = 0.0
    birds: float = 0.0
    events: float = 0.0
    sets: float = 0.0
    mean_length: float = 0.0

    @property
    def most(self) -> float:
        """The largest count; 0 where there is none."""
        return float(np.nanmax(np.append(self.values, 0.0)))

    @property
    def steps(self) -> bool:
        """Whether the column names steps of the work rather than what became of single eggs."""
        told = self.events > 0.5 and self.share_fate < 0.6
        return told or self.sets > 0.05 and self.events + self.share_fate > 0.6

    @property
    def numbered(self) -> bool:
        """Whether the cells are names with a running number ("B1", "B2", "B3"), each once."""
        texts = [str(cell).strip() for cell in self.cells if not is_empty(cell)]
        names = [re.fullmatch(r"([^\W\d_]{1,6})[-. ]?(\d{1,4})", text) for text in texts]
        if len(names) < 2 or not all(names) or len({name[1] for name in names}) > 1:
            return False
        numbers = [int(name[2]) for name in names]
        return all(after > before for before, after in zip(numbers, numbers[1:], strict=False))


def profile(block, language) -> list[Column]:
    """The columns of a block, each looked at on the first rows."""
    return [
        _column(place, block.headings[place], block.groups[place], list(cells[:SAMPLE]), language)
        for place, cells in enumerate(block.columns)
    ]


def _column(place, heading, group, cells, language) -> Column:
    kept = [cell for cell in cells if not is_empty(cell)]
    counts = [Count(None, "empty") if is_empty(cell) else count_of(cell, language) for cell in cells]
    values = np.array([np.nan if count.value is None else count.value for count in counts], dtype=float)
    column = Column(place, heading, group, cells, len(kept), counts, values)
    if not kept:
        return column
    n = len(kept)
    dates = [is_dateish(cell) for cell in kept]
    column.share_date = sum(dates) / n
    good = [
        count.code in _COUNT_CODES and isinstance(cell, (str, int, float))
        for cell, count in zip(cells, column.counts, strict=True)
        if not is_empty(cell)
    ]
    column.share_count = sum(ok and not date for ok, date in zip(good, dates, strict=True)) / n
    column.share_fraction = sum(count.code in ("share", "fraction", "percent") for count in column.counts) / n
    if column.share_fraction > 0.5 or "percent" in _roles(heading, language):
        column.percents = _percents(cells)
    texts = [cell for cell in kept if isinstance(cell, str) and not is_number(cell)]
    column.share_text = (
        sum(isinstance(cell, str) and not is_number(cell) and not date for cell, date in zip(kept, dates, strict=True))
        / n
    )
    ends = bool(_roles(heading, language) & _ENDS)
    column.share_fate = sum(is_fate(cell, language, ends) for cell in texts) / n
    numbers = [count.value for count in column.counts if count.value is not None]
    column.running = (
        len(numbers) >= 3 and len(numbers) == n and all(b - a == 1 for a, b in zip(numbers, numbers[1:], strict=False))
    )
    column.distinct = len({text_of(cell) for cell in kept}) / n
    if column.share_text > 0.4:
        column.birds = sum(bool(species_in(cell)) for cell in texts) / n
        column.events = sum(is_event(cell, language) for cell in texts) / n
        column.sets = sum(bool(_roles(cell, language) & {"set"}) for cell in texts) / n
    column.mean_length = sum(len(text_of(cell)) for cell in kept) / n
    return column


def _percents(cells) -> np.ndarray:
    """Cells as percentages in points: "93,0", "79 %", and 0.79 where none is above 1."""
    values = [measure_of(cell, {"": 1.0, "%": 1.0})[0] for cell in cells]
    points = np.array([np.nan if value is None else value for value in values], dtype=float)
    return points * (100.0 if np.nanmax(np.append(points, 0.0)) <= 1.0 else 1.0)


def is_event(cell, language) -> bool:
    """Whether a text names a step of the work: setting, a candling, the move, the hatch."""
    roles = _roles(cell, language)
    return (
        bool(roles & {"set", "candle", "transfer", "hatch", "hatched"})
        or "day" in roles
        and any(token.number is not None for token in tokens(cell, language))
    )


def _roles(cell, language) -> frozenset:
    found = [token for token in tokens(cell, language) if not token.guessed]
    return all_roles(found)


def is_fate(cell, language, ends: bool = False) -> bool:
    """Whether a cell says in words what became of one egg or how it looked; "out" does so in a column of `ends`."""
    if not isinstance(cell, str) or len(cell) > 40:
        return False
    found = tokens(cell, language)
    roles = all_roles(found)
    return bool(roles & (CLASSES - {"set", "left"} - ({"out"} if not ends else set()))) and not any(
        token.number is not None and not any("day" in t.roles for t in found) for token in found
    )
