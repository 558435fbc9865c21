"""The keeper's own marks, words cut short, and yes or no -> the words that they stand for."""

from __future__ import annotations

import re
from dataclasses import replace

from hatchkit.records.sheets.cells import cell_words, is_empty, text_of
from hatchkit.records.sheets.entries import fate_of
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.words import plain

#: What a heading asks, with the words for yes and for no.
_ASKED = (("fertile", "fertile", "clear"), ("clear", "clear", "fertile"), ("hatched", "hatched", "not hatched"))
_NO = frozenset("n no nein non nee nej nie ne nao nem".split())
#: Eggs from which a list is one.
LEAST_EGGS = 3


def with_answers(block, language: str | None):
    """The block with yes and no written out; "not hatched" gives way to what a remark in its row tells."""
    roles = [all_roles(tokens(heading, language)) for heading in block.headings]
    eggs = any("egg" in of and of <= {"egg", "number"} for of in roles)
    if block.shape != "table" or len(block.rows) < LEAST_EGGS or not eggs:
        return block
    remarks = [cells for of, cells in zip(roles, block.columns, strict=True) if of & {"notes", "result"}]
    yes, asked = {*cell_words("yes")}, []
    for place, cells in enumerate(block.columns):
        words = next((words for words in _ASKED if words[0] in roles[place]), None)
        if words is None:
            continue
        known = {cell: plain(text_of(cell) or "") for cell in set(cells)}
        if any(known.values()) and {*known.values()} <= {"", *_NO, *yes}:
            asked.append((place, words, [known[cell] for cell in cells]))
    out = [False] * len(block.rows)
    for place, words, said in asked:
        for row, text in enumerate(said):
            word = "clear" if out[row] else "" if not text else words[2] if text in _NO else words[1]
            told = next((notes[row] for notes in remarks if not is_empty(notes[row])), "")
            out[row] = word == "clear"
            if place == asked[-1][0]:  # the last answer holds what the ones before it told
                mended = word == "not hatched" and fate_of(str(told), language) is not None
                block.columns[place][row] = told if mended else word
    return block


_ENTRY = re.compile(r"(?:[^\W\d_]+ ?:\s+)?([^\s=:,;]{1,4})\s*(?:=|:|–|->)\s*([^=;]{2,40}?)")
#: "+ alive": a sign needs no equals sign; and where the next entry of a key begins.
_SIGN = re.compile(r"(?:[^\W\d_]+ ?:\s+)?([^\w\s])\s+([^=;\d]{3,40}?)")
_NEXT = re.compile(r"(?:[;,\n]\s*|\s+)(?=[^\s=:,;]{1,4}\s*(?:=|->))|\s{3,}(?=[^\w\s]\s)")

#: "Penoy = clear egg, no embryo."; "Cl. = clairs ; Mt mir. = morts au mirage": short words may be cut by a dot.
_GLOSS = re.compile(
    r"(?:^|[.;,\n]\s*)((?:[^\W\d_]{1,5}\.? )?(?:[^\W\d_]{1,6}\.|[^\W\d_]{4,20}(?: [^\W\d_]{2,15})?))\s*=\s*"
    r"([^.;,(=\n]*)"
)


def marks_in(grid, language: str | None) -> tuple[dict, list]:
    """The marks that a grid explains, and the cells in which it does.

    Returns
    -------
    marks : dict
        Mark -> words.
    places : list of (int, int)
        Row and column, from 0.
    """
    marks, places = {}, []
    for row, cells in enumerate(grid.cells[:200]):
        for column, cell in enumerate(cells):
            found = _entries(cell, language)
            if found:
                marks |= found
                places.append((row, column))
    listed = _listed(grid, language)
    if not marks and listed:
        marks, places = listed
    return (marks, places) if len(marks) > 1 else ({}, [])


def with_legend(grid, language: str | None, known: dict | None = None):
    """The grid with its marks written out, where it holds a key of two marks or more; and the key's cells.

    Parameters
    ----------
    grid : Grid
    language : str or None
    known : dict, optional
        Marks that another sheet of the file explains.

    Returns
    -------
    grid : Grid
    told : list of (int, str)
        Row (from 1) and text of each cell of the key; they are no data and blank in the grid.
    """
    marks, places = marks_in(grid, language)
    marks = {**(known or {}), **marks}
    if not marks:
        return grid, []
    coded = _coded_columns(grid, marks, set(places), language)

    def written(cell, column):
        if isinstance(cell, str):
            return _written_out(cell, marks)
        return marks.get(text_of(cell), cell) if column in coded else cell

    return _without_key(grid, places, written)


def _without_key(grid, places: list, written) -> tuple:
    """The grid with each cell as `written` gives it and blanks in place of the key; and the key's cells."""
    told = [(row + 1, str(grid.cells[row][column])) for row, column in places]
    keys = set(places)
    cells = [
        ["" if (row, column) in keys else written(cell, column) for column, cell in enumerate(line)]
        for row, line in enumerate(grid.cells)
    ]
    return replace(grid, cells=cells), told


def _coded_columns(grid, marks: dict, keys: set, language) -> set:
    """Columns whose heading names a result and whose numbers are all marks of the key ("0 = hatched")."""
    if not any(mark.isdigit() for mark in marks):
        return set()
    found = set()
    for column in range(max(map(len, grid.cells), default=0)):
        rows = [row for number, row in enumerate(grid.cells) if column < len(row) and (number, column) not in keys]
        cells = [row[column] for row in rows]
        numbers = [text_of(cell) for cell in cells if isinstance(cell, (int, float)) and not is_empty(cell)]
        heads = [cell for cell in cells[:8] if isinstance(cell, str) and not is_empty(cell)]
        named = any(all_roles(tokens(head, language)) & {"result", "candle", "hatch", "what"} for head in heads)
        if len(numbers) > 2 and len(set(numbers)) > 1 and set(numbers) <= set(marks) and named:
            found.add(column)
    return found


def with_glossary(grid, language: str | None):
    """The grid with words of the trade that a sentence on it explains ("Penoy = clear egg, no embryo.") written out.

    Returns
    -------
    grid : Grid
    told : list of (int, str)
        Row (from 1) and text of each sentence; they are no data and blank in the grid.
    """
    words, places = {}, []
    for row, cells in enumerate(grid.cells[:200]):
        for column, cell in enumerate(cells):
            # A sentence at the end of a row of data explains that row alone.
            alone = sum(not is_empty(other) for other in cells) < 3
            if isinstance(cell, str) and "=" in cell and len(cell) < 400 and alone:
                mine = _glosses(cell, language)
                if mine:
                    words |= mine
                    places.append((row, column))
    if not words:
        return grid, []
    pattern = re.compile(r"(?<![^\W\d_])(" + "|".join(map(re.escape, words)) + r")(?![^\W\d_])", re.IGNORECASE)

    def written(cell, column):
        short = isinstance(cell, str) and len(cell) < 60
        return pattern.sub(lambda hit: words[hit[1].lower()], cell) if short else cell

    return _without_key(grid, places, written)


def _glosses(text: str, language) -> dict:
    """Word or abbreviation -> its first meaning, for each of which a sentence gives one of a class of eggs."""
    found = {}
    for match in _GLOSS.finditer(text):
        word, meaning = match[1].strip(), match[2].strip()
        # A word that speaks for itself stays: what is said of it may be more than it means ("still in on day 30").
        if 2 < len(meaning) < 50 and fate_of(meaning, language) is not None and fate_of(word, language) is None:
            found[word.lower()] = meaning
    return found


def _listed(grid, language) -> tuple[dict, list] | None:
    """A key in two columns ("G" beside "growing"): three rows or more, one below the other."""
    marks, places = {}, []
    for row, cells in enumerate(grid.cells[:200]):
        for column in range(len(cells) - 1):
            mark, words = cells[column], cells[column + 1]
            number = isinstance(mark, (int, float)) and not is_empty(mark) and 0 <= mark < 20 and mark == int(mark)
            mark = text_of(mark) if number else mark
            if (
                isinstance(mark, str)
                and re.fullmatch(r"[^\W\d_]{1,3}|[+*x0✓-]|\d{1,2}", mark.strip())
                and isinstance(words, str)
                and 3 < len(words) < 60
                and sum(not is_empty(cell) for cell in cells) == 2
                and fate_of(words, language) is not None
            ):
                marks[plain(mark)] = words
                places += [(row, column), (row, column + 1)]
                break
    return (marks, places) if len(marks) >= 3 else None


def _written_out(cell: str, marks: dict) -> str:
    """The words of a mark, also where more is said behind it: "H late", "H (helped)"."""
    if plain(cell) in marks:
        return marks[plain(cell)]
    first = re.match(r"[^\s,;(]+(?=[\s,;(])", cell)
    if first and len(cell) < 40 and plain(first[0]) in marks and (len(first[0]) > 1 or first[0].isupper()):
        return marks[plain(first[0])] + cell[first.end() :]
    return cell


def _entries(cell, language) -> dict:
    """Mark -> words of a cell of a key; empty where the cell is none.

    A sign whose words name no fate ("/ = no longer in the machine") stands for nothing.
    """
    if not isinstance(cell, str) or is_empty(cell):
        return {}
    if not re.search(r"=|->", cell):
        return _in_a_line(cell, language)
    found, silent = {}, {}
    first, *rest = _NEXT.split(cell)
    for part in (first, *rest):
        entry = part.strip(" ;,\n")
        match = _SIGN.fullmatch(entry) or _ENTRY.fullmatch(entry)
        if match is None and part is not first:
            return {}
        told = match[2].split("/") if match else []
        words = next((one for one in told if fate_of(one.strip(), language) is not None), None)
        if match and words:
            found[plain(match[1])] = match[2] if fate_of(match[2], language) is not None else words.strip()
        elif match and match[1] != "?" and not match[1].isalnum():
            silent[plain(match[1])] = ""
    return {**silent, **found} if found else {}


def _in_a_line(cell: str, language) -> dict:
    """A key of marks and words in one line: "+ alive, 0 clear, x dead, H hatched"."""
    parts = [re.fullmatch(r"\s*([^\s\d\w]|[^\W\d_]|0)\s+([^\d,;]{3,40})", part) for part in re.split(r"[,;]", cell)]
    if len(parts) < 3 or not all(parts) or len({part[1] for part in parts}) < len(parts):
        return {}
    found = {plain(part[1]): part[2].strip() for part in parts}
    return found if all(fate_of(words, language) is not None for words in found.values()) else {}
