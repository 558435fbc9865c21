"""Which rows of a table are data: sums, units, percentages, sections and notes are none."""

from __future__ import annotations

import re
from itertools import zip_longest

import numpy as np

from hatchkit.records.sheets.cells import is_empty, is_number, mentions, text_of
from hatchkit.records.sheets.lexicon import all_roles, cut, tokens
from hatchkit.records.sheets.parts import Block, may_be_total, starts_with_total, total_starts
from hatchkit.records.sheets.when import looks_like_date

_SILENT = frozenset({"zero", "all", "unknown", "yes", "in", "time", "fresh"})
#: What a line above a block says of it beside its name.
_OF_CAPTIONS = frozenset({"set", "in", "date", "hatch", "hatched", "candle", "transfer", "expected", "batch"})
UNITS = frozenset(
    {
        "g",
        "kg",
        "gram",
        "grams",
        "date",
        "days",
        "day",
        "pcs",
        "n",
        "no",
        "eggs",
        "yes/no",
        "text",
        "dd/mm/yyyy",
        "d/m/y",
        "no.",
        "weeks",
        "count",
        "time",
        "hh:mm",
        "stk",
        "%",
        "c",
        "°c",
        "oz",
        "stück",
        "st",
        "szt",
        "ks",
        "db",
        "datum",
        "mm/dd/yyyy",
        "yyyy-mm-dd",
        "dd.mm.yyyy",
        "tt.mm.jjjj",
        "jj/mm/aaaa",
        "dd/mm/aaaa",
        "°f",
        "f",
        "number",
    }
)


def spread(upper: list[str], lower: list[str]) -> list[str]:
    """The group above each heading: a merged heading stands once and holds for the headings to its right."""
    group, groups = "", []
    for above, below in zip(upper, lower, strict=False):
        group = above or group
        groups.append(group if below else "")
    return groups


def is_date(cell) -> bool:
    """Whether a cell is a date, or a text that looks like one."""
    return not isinstance(cell, str) or looks_like_date(cell)


def lists(text, language) -> bool:
    """Whether a text counts eggs ("3 clear, 1 blood ring"), as no heading does."""
    return isinstance(text, str) and len(text) > 6 and len(mentions(text, language)) > 1


def counts_eggs(text, language) -> bool:
    """Whether a text begins with a number of eggs of a class ("3 clear"), as a line of a diary does."""
    return bool(re.match(r"\d+ +[^\W\d_]{3}", text)) and bool(mentions(text, language))


def drop_sums(block: Block) -> None:
    """Take out rows that are the sum of the rows above them, whatever they are called."""
    cells = [[float(cell) if type(cell) in (int, float) else np.nan for cell in column] for column in block.columns]
    sums, counts, drop = np.zeros(len(cells)), np.zeros(len(cells)), []
    for i, row in enumerate(np.array(cells).T):
        summed = ~np.isnan(row) & (counts >= 2)
        near = np.abs(sums - row) < 1e-6
        same = (summed & near & (row > 0)).sum()
        other = (summed & ~near & (row % 1 == 0)).sum()
        if same >= 3 and same > 2 * other:
            drop.append(i)
            sums[:], counts[:] = 0.0, 0
        else:
            sums += np.nan_to_num(row)
            counts += ~np.isnan(row)
    for i in reversed(drop):
        block.skipped.append(
            (
                block.rows[i],
                "total",
                ", ".join(text_of(column[i]) for column in block.columns if not is_empty(column[i]))[:200],
            )
        )
        del block.rows[i], block.sections[i]
        for column in block.columns:
            del column[i]


def _plainly_data(cells, places, repeated) -> bool:
    """The common case, told fast: several numbers or dates, no percent sign, not the headings again."""
    numbers = sum(type(cells[i]) is not str or cells[i][:1].isdigit() for i in places)
    return numbers >= 2 and "%" not in cells and (text_of(cells[places[0]]) or "").lower() != repeated[places[0]]


def _dated(cells, places) -> bool:
    """Whether a row bears one whole date besides numbers, as a batch does and a sum does not ("Mean Green")."""
    told = [cells[i] for i in places[1:] if not is_number(cells[i])]
    dates = [cell for cell in told if not isinstance(cell, str) or len(cell) > 5 and looks_like_date(cell)]
    return len(dates) == 1 and len(places) > 4


def not_data(cells, places, repeated, reader) -> str:
    """Why a row is no record: total, repeated, units, section, note; "" for a record."""
    if (
        len(places) > 3
        and not any(type(cells[i]) is str and may_be_total(cells[i]) for i in places)
        and _plainly_data(cells, places, repeated)
    ):
        return ""
    texts = [cells[i] for i in places if isinstance(cells[i], str) and not is_number(cells[i])]
    if any(starts_with_total(cells[i], reader.language) for i in places[:2]) and not _dated(cells, places):
        return "total"
    if len(texts) == 1 and len(cut(texts[0])) == 1 and starts_with_total(texts[0], reader.language):
        # The batch's column stands further right.
        return "total"
    if len(places) > 1 and sum((text_of(cells[i]) or "").lower() == repeated[i] for i in places) >= 0.7 * len(places):
        return "repeated"
    if any(text.strip() in ("%", "in %", "%:") for text in texts):
        return "percent"
    if len(texts) == len(places) and all(text.strip().strip("()[].").lower() in UNITS for text in texts):
        return "units"
    if len(places) == 1 and len(cells) > 2 and texts:
        return "section"
    return ""


def is_caption(cells, reader) -> bool:
    """Whether a row tells of the block below it ("2nd hatch | set | 29 March | due | 19 April") and counts nothing."""
    places = [place for place, cell in enumerate(cells) if not is_empty(cell)]
    told = [cells[place] for place in places]
    if len(told) < 2 or any(is_number(cell) for cell in told[1:]):
        return False

    def label(cell) -> bool:
        return isinstance(cell, str) and not is_date(cell) and bool(reader.roles(cell.partition(":")[0]) & _OF_CAPTIONS)

    beside = sum(
        label(one) and ":" not in one.rstrip(": ") and is_date(other)
        for one, other in zip(told, told[1:], strict=False)
    )
    within = sum(label(cell) and looks_like_date(cell.partition(":")[2].strip()) for cell in told)
    return beside + within > 0 and label(told[0]) | (beside + within > 1)


def roles_of(cell, language) -> frozenset:
    """What the words of a cell may say; empty for numbers and dates."""
    if not isinstance(cell, str) or len(cell) > 80 or is_number(cell):
        return frozenset()
    found = tokens(cell, language)
    return all_roles(found) - _SILENT


def plain_rows(rows: list, start: int) -> frozenset:
    """Rows of a long table that are data at a glance: a name in front and numbers or dates close behind it."""
    columns = list(zip_longest(*rows, fillvalue=""))
    starts, figures = total_starts(), np.zeros(len(rows), int)
    for place, cells in enumerate(columns):
        # The few different texts of a column are looked at, not its many cells.
        texts = {cell for cell in cells if type(cell) is str} if {*map(type, cells)} & {str} else set()
        odd = {text for text in texts if text.strip()[:3].lower() in starts or text == "%"} - {""}
        if place == 0:
            odd |= {text for text in texts if not text or len(text) > 40} | {None}
        if odd and (texts or None in cells):
            figures -= 9 * np.fromiter((cell in odd for cell in cells), bool, len(rows))
        if 0 < place < 6:
            none = {text for text in texts if not text[:1].isdigit()} | {None}
            figures += np.fromiter((cell not in none for cell in cells), bool, len(rows))
    return frozenset((start + np.flatnonzero(figures >= 2)).tolist())
