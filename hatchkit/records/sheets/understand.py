"""One sheet -> its language, and its blocks with the kind of each and the reading of its columns."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache
from typing import Any

from hatchkit.records.sheets import typed
from hatchkit.records.sheets.abreast import (
    by_round,
    in_one_language,
    side_by_side,
    with_hours,
    with_months,
    with_one_name,
)
from hatchkit.records.sheets.addends import with_addends
from hatchkit.records.sheets.assign import Reading, best_reading
from hatchkit.records.sheets.candidates import candidates
from hatchkit.records.sheets.cells import is_empty, text_of
from hatchkit.records.sheets.expand import expanded, told_by_day
from hatchkit.records.sheets.fields import PLAIN, Meaning
from hatchkit.records.sheets.kinds import best_of_each, columns_of_eggs, kind_of
from hatchkit.records.sheets.legend import with_answers, with_glossary, with_legend
from hatchkit.records.sheets.lexicon import LANGUAGES, all_roles, tokens
from hatchkit.records.sheets.logsheet import columns_of_weights
from hatchkit.records.sheets.parts import filled_down
from hatchkit.records.sheets.profile import profile
from hatchkit.records.sheets.shape import find_blocks
from hatchkit.records.sheets.when import is_dateish
from hatchkit.records.words import csv_rows, plain


def known_words(text: str) -> int:
    """How many words of a text are known as they are written, accents included."""
    known = _as_written()
    return sum(word in known for word in re.findall(r"[^\W\d_]{3,}", str(text).lower()))


@cache
def _as_written() -> frozenset:
    """Every known word with its accents, months and breeds included."""
    words = {word for row in csv_rows("sheet_words") for phrase in row["words"].split(" / ") for word in phrase.split()}
    words |= {word for row in csv_rows("breeds") for word in row["name"].lower().split()}
    words |= {row["word"].lower() for row in csv_rows("clock_words")} if "word" in csv_rows("clock_words")[0] else set()
    return frozenset(word for word in words if not word.isascii())


def language_of(texts) -> str | None:
    """The language whose words explain most of the texts; English only where no other explains more."""
    scores, seen = dict.fromkeys(LANGUAGES, 0.0), set()
    for text in texts:
        for token in tokens(text):
            # Each word once: "12 eggs" in every row says no more than in one.
            if token.roles and len(token.text) > 1 and token.text not in seen:
                seen.add(token.text)
                weight = (0.4 if token.guessed else 1.0) / max(1, len(token.languages)) ** 0.5
                for language in token.languages:
                    scores[language] += weight
    best = max(scores, key=scores.get)
    return best if scores[best] > 0 else None


@dataclass
class Understood:
    """A block with what it is and what its columns mean.

    Attributes
    ----------
    block : Block
    kind : str
        batches, eggs, looks, weights, lines, or "".
    language : str or None
    columns : list of profile.Column
    chosen : list of Meaning or None
    reading : Reading or None
        Only of batches.
    year : int or None
        The year that titles, the sheet's or the file's name give.
    """

    block: Any
    kind: str
    language: str | None
    columns: list
    chosen: list
    reading: Reading | None = None
    year: int | None = None
    titles: list = field(default_factory=list)


def language_on(grid) -> str | None:
    """The language of the words on a sheet."""
    return language_of(
        dict.fromkeys(cell for row in grid.cells[:40] for cell in row if isinstance(cell, str) and 1 < len(cell) < 60)
    )


def understand(grid, fixed: dict, stem: str, marks: dict | None = None) -> list[Understood]:
    """Every block of a grid.

    Parameters
    ----------
    grid : Grid
    fixed : dict
        Heading -> reading that a person confirmed or season.toml states.
    stem : str
        The file's name without its ending.
    marks : dict, optional
        Marks that another sheet of the file explains.
    """
    language = language_on(grid)
    grid = in_one_language(grid)
    grid, key = with_legend(grid, language, marks)
    grid, more = with_glossary(grid, language)
    key = [*key, *more]
    told = {plain(heading): reading for heading, reading in fixed.items()}
    found = []
    tables = [table for part in side_by_side(grid) for table in find_blocks(part, language)]
    for block in [block for table in tables for block in by_round(table)]:
        if not found:
            block.skipped += [(row, "title", text) for row, text in key]
        block.columns = [filled_down(cells) for cells in block.columns]
        block = with_months(block, [*reversed(block.titles), grid.sheet, stem], language)
        block = with_addends(with_answers(with_one_name(block, language), language), language)
        block = with_hours(expanded(block, language), language)
        columns = profile(block, language)
        mine = {c.heading: told[plain(c.heading)] for c in columns if plain(c.heading) in told}
        mine |= {columns[place].heading: "hour" for place in block.hours}
        options = [candidates(column, language, mine.get(column.heading)) for column in columns]
        kind = kind_of(block, columns, options)
        # What stands above the first block's own title is of the whole sheet.
        above = found[0].block.titles[:-1] if found else []
        item = Understood(block, kind, language, columns, [], titles=[*block.titles, *above, grid.sheet, stem])
        item.year = year_in(
            [
                *_first_lines(block),
                *reversed(block.titles),
                *(text for other in reversed(found) for text in other.block.titles),
                grid.sheet,
                stem,
                *(cell for row in grid.cells[:4] for cell in row if isinstance(cell, str) and not is_dateish(cell)),
            ]
        )
        if kind == "lines" and block.shape != "lines":
            _to_lines(block)
        elif kind == "lines":
            item.titles = [*_first_lines(block), *item.titles]
        if kind == "batches":
            item.reading = best_reading(columns, options)
            item.chosen = item.reading.chosen
        elif kind == "eggs":
            item.chosen = columns_of_eggs(columns, options, language)
        elif kind == "looks":
            item.chosen = _of_log(columns, options)
        elif kind == "weights":
            item.chosen = columns_of_weights(columns, options)
        found.append(item)
    return found


def _first_lines(block) -> list:
    """Lines above the first date of a diary: its title."""
    lines = block.columns[0][:4] if block.shape == "lines" and block.columns else []
    dated = next((place for place, cells in enumerate(lines) if any(map(is_dateish, cells))), len(lines))
    return [" ".join(text_of(cell) or "" for cell in cells) for cells in lines[:dated]]


def _to_lines(block) -> None:
    """A diary with headings as lines of cells; a column of batches gives each line its name."""
    by_day = told_by_day(block)
    if by_day is not None:
        block.names = typed.texts(block.columns[by_day[1]])
        block.columns = [block.columns[by_day[0]], block.columns[by_day[2]]]
    cells = [[column[i] for column in block.columns if not is_empty(column[i])] for i in range(len(block.rows))]
    block.headings, block.groups, block.columns, block.shape = ["line"], [""], [cells], "lines"


def year_in(texts) -> int | None:
    """The first year from 1950 to 2099 that one of the texts names; "24/25" and "'24" count."""
    for text in texts:
        years = re.findall(r"(?<!\d)(19[5-9]\d|20\d\d)(?!\d)", str(text or ""))
        if years:
            return int(years[0])
    for text in texts:
        short = re.search(r"(?<!\d)'(\d\d)(?!\d)", str(text or ""))
        if short:
            return 2000 + int(short[1])
    return None


def _only(column, roles: set) -> bool:
    """Whether a heading says just this ("out"), so that its class stands elsewhere."""
    return bool(roles) and all_roles(tokens(column.heading)) & {"out", "in", "hatched", "set", "number"} == roles


def _of_log(columns, options) -> list:
    """One reading per column of a log: each column's best, each field once, counts without looks of their own."""
    chosen = best_of_each(options, {"date": 3.0, "what": 1.0, "batch": 1.0})
    out = any(_only(column, {"out"}) for column in columns)
    worded = any(column.share_fate > 0.4 and column.share_text > 0.8 for column in columns)
    classed = not out and any(column.sets > 0 and column.share_fate > 0.4 for column in columns)
    taken = set()
    for place, (column, best) in enumerate(zip(columns, chosen, strict=True)):
        fields = {meaning.field for meaning in options[place]}
        field = best.field
        counted = column.share_count > 0.7
        # Numbers whose class stands in the column of what was done.
        number = classed and field == "eggs_set" and best.weight <= 3.0 or worded and _only(column, {"out"})
        free = field == "ignore" and not column.running and not {"batch", "number"} & taken
        if counted and _only(column, {"in"}) and "eggs_set" not in taken:
            chosen[place] = Meaning("eggs_set", weight=PLAIN)
        elif counted and (number or free and fields & {"eggs_set", "batch"}):
            chosen[place] = Meaning("number", weight=PLAIN)
        elif field == "set_at":
            chosen[place] = Meaning("date", best.look, best.weight)
        taken.add(chosen[place].field)
    return chosen
