"""Cells as people write them -> counts, measures, text; what can't be taken as written is told, never guessed."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.words import plain, value_words
from hatchkit.spelling import many

#: The dtype that pandas itself gives to text ("str" in pandas 3, object before).
TEXT = pd.Series(["a"]).dtype

_ABOUT = r"(?:~|\+/-|c\.|ca\.?|about|around|approx\.?|circa|etwa|ungefahr|environ|env\.?|unos|ongeveer)?\s*"
_COUNT = re.compile(_ABOUT + r"([+-]?\d+(?:[.,]0*)?)\s*([a-z.]{0,12})(\?*)")
_THOUSANDS = re.compile(r"([+-]?\d{1,3}(?:[., ']\d{3})+)\s*[a-z.]{0,12}")
_SUM = re.compile(r"\d+(?:\s*\+\s*\d+)+")
_WITH_REMARK = re.compile(r"(\d+)\s*(?:\(.*\)|[,;:-]\s*[a-z].*|[a-z][a-z ]{12,}.*)")
_MEASURE = re.compile(_ABOUT + r"([+-]?\d+(?:[.,]\d+)?|[+-]?[.,]\d+)\s*([a-z%]{0,8})\.?(\?*)")

_GRAMS = {"": 1.0, "g": 1.0, "gr": 1.0, "gram": 1.0, "grams": 1.0, "grammes": 1.0, "kg": 1000.0, "oz": 28.349523125,
          "lb": 453.59237, "lbs": 453.59237}
_UNITS = {"weeks": {"": 1.0, "w": 1.0, "wk": 1.0, "wks": 1.0, "week": 1.0, "weeks": 1.0, "months": 4.348,
                    "wochen": 1.0},
          "days": {"": 1.0, "d": 1.0, "day": 1.0, "days": 1.0, "tage": 1.0, "weeks": 7.0, "week": 7.0, "h": 1 / 24},
          "grams": _GRAMS, "number": {"": 1.0}}


@dataclass
class Column:
    """One column of a person's table: its cells, the row of each as their program shows it, its heading."""

    name: str
    heading: str
    cells: list
    rows: list[int]
    file: str
    sheet: str
    problems: list

    def tell(self, severity: str, *, found: str, done: str, mend: str = "", row=None) -> None:
        """Add a problem row that names this column."""
        self.problems.append(problem(severity, file=self.file, sheet=self.sheet, row=row, column=self.heading,
                                     found=found, done=done, mend=mend))

    def tell_cells(self, severity: str, hits, *, found: str, done: str, mend: str, each: int = 12) -> None:
        """One row a cell for the first `each` cells, one more for the rest. `hits`: (row, cell) pairs."""
        for row, cell in hits[:each]:
            self.tell(severity, row=row, found=found.format(cell=shown(cell)), done=done, mend=mend)
        if len(hits) > each:
            rows = ", ".join(str(row) for row, _ in hits[each:each + 20])
            self.tell(severity, row=hits[each][0], done=done, mend=mend,
                      found=f"the same in {many(len(hits) - each, 'more row')}: {rows}")

    def tell_unsaid(self, hits, *, done: str, mend: str = "") -> None:
        """One row for all cells that say "not known" (`hits`: (row, cell) pairs)."""
        rows = ("row " if len(hits) == 1 else "rows ") + ", ".join(str(row) for row, _ in hits[:20])
        signs = ", ".join(dict.fromkeys(shown(cell) for _, cell in hits))
        self.tell("note", row=hits[0][0], found=f"{signs} in {rows}{' ...' if len(hits) > 20 else ''}", done=done,
                  mend=mend)


def shown(cell) -> str:
    """A cell as a message shows it: short, on one line, in quotes where it is text."""
    if isinstance(cell, float) and cell.is_integer():
        return str(int(cell))
    if not isinstance(cell, str):
        return str(cell)
    text = " ".join(cell.split())
    return f"'{text[:60]}{'...' if len(text) > 60 else ''}'"


def is_empty(cell) -> bool:
    """Nothing, blanks only, or not a number."""
    if isinstance(cell, str):
        return not cell or cell.isspace()
    return cell is None or (isinstance(cell, float) and math.isnan(cell))


def is_count(cell) -> bool:
    """Whether a cell is a plain whole number from 0 up."""
    if isinstance(cell, str):
        return cell.strip().isdecimal()
    return isinstance(cell, (int, float)) and not isinstance(cell, bool) and cell >= 0 and cell == cell // 1


def is_number(cell) -> bool:
    """Whether a cell is a plain number, with a dot or a comma."""
    if isinstance(cell, str):
        return bool(re.fullmatch(r"[+-]?\d+(?:[.,]\d+)?", cell.strip()))
    return isinstance(cell, (int, float)) and not isinstance(cell, bool)


def text_of(cell) -> str | None:
    """A cell as text: 12.0 -> "12"; empty -> None."""
    if is_empty(cell):
        return None
    if isinstance(cell, float) and cell.is_integer():
        return str(int(cell))
    return " ".join(str(cell).split())


def texts(column: Column) -> pd.Series:
    """The column as text, missing where empty."""
    # Plain names, the common case, need no look: no blanks inside, nothing to turn into text.
    read = [cell if type(cell) is str and cell.isalnum() else text_of(cell) for cell in column.cells]
    return pd.Series(read, dtype=TEXT)


def counts(column: Column) -> pd.Series:
    """Whole numbers from 0 up as Int64; what is no such number is missing and told."""
    return pd.Series(pd.array(_read(column, _count, "a count"), dtype="Int64"))


def measures(column: Column, unit: str) -> pd.Series:
    """Numbers with decimals (dot or comma) as float64; `unit` is one of grams, days, weeks, number.

    A unit written in the cell or in brackets in the heading (kg, oz, weeks) is turned into `unit`.
    """
    scale = _heading_scale(column.heading, unit)
    values = _read(column, lambda cell: _measure(cell, unit), "a number")
    numbers = np.array([np.nan if value is None else value for value in values], dtype=float)
    if scale != 1.0:
        column.tell("note", found=f"the heading gives another unit than {unit}",
                    done=f"All values are multiplied by {scale:g}.", mend="")
    return pd.Series(numbers * scale)


def _heading_scale(heading: str, unit: str) -> float:
    for word in re.findall(r"[a-z]+", plain(heading).replace("weight", "")):
        if word in _UNITS[unit] and _UNITS[unit][word] != 1.0:
            return _UNITS[unit][word]
    return 1.0


def _look_up(cells: list, read) -> list:
    """`read` of each cell, worked out once for each distinct one."""
    if bool in set(map(type, cells)):  # True == 1 as a key, so a tick box would pass for a count
        return [read(cell) for cell in cells]
    known = {cell: read(cell) for cell in dict.fromkeys(cells)}
    return [known[cell] for cell in cells]


def _read(column: Column, parse, what: str):
    """Parse each distinct cell once; tell what was odd, grouped by kind of oddness."""
    if column.cells and set(map(type, column.cells)) <= {float, int}:
        numbers = np.array(column.cells, dtype=float)
        if np.isfinite(numbers).all() and (what != "a count" or _whole(numbers)):
            return numbers if what != "a count" else numbers.astype(np.int64)
    parsed = _look_up(column.cells, lambda cell: (None, "") if is_empty(cell) else parse(cell))
    if any(state for _, state in parsed):
        odd = {}
        for row, cell, (_, state) in zip(column.rows, column.cells, parsed, strict=True):
            if state:
                odd.setdefault(state, []).append((row, cell))
        for state, hits in odd.items():
            _tell_odd(column, state, hits, what)
    return [value for value, _ in parsed]


def _whole(numbers) -> bool:
    return bool(((numbers >= 0) & (numbers < 1e9) & (numbers == np.floor(numbers))).all())


def _tell_odd(column: Column, state: str, hits: list, what: str) -> None:
    blank = "The cell counts as not kept."
    count = "Write the number of eggs, or leave the cell empty if it was not counted."
    if state == "unknown":
        column.tell_unsaid(hits, done="Taken as not kept, which is not the same as 0.",
                           mend="Write 0 where none was meant.")
        return
    found, done, mend, severity = {
        "sum": ("{cell} is a sum", "The sum is used.", "", "note"),
        "remark": ("{cell} holds a remark", "The number in front is used.", "Move it to the notes.", "note"),
        "unsure": ("{cell} is marked as unsure", "The number is used.", "", "doubtful"),
        "about": ("{cell} is a rough figure", "The number is used as if it were counted.", "", "note"),
        "percent": ("{cell} is a percentage where a count is meant", blank, count, "doubtful"),
        "share": ("{cell} is not a whole number; it looks like a share", blank, count, "doubtful"),
        "fraction": ("{cell} is not a whole number of eggs", blank, count, "doubtful"),
        "negative": ("{cell} is below 0", blank, count, "doubtful"),
        "range": ("{cell} is a range", "Its middle is used.", "", "note"),
        "unit": ("{cell} has another unit", "It is converted.", "", "note"),
        "date": ("{cell} is a date where " + what + " is meant", blank,
                 "Write the number; a program may have turned something like 3-4 into a date.", "doubtful"),
    }.get(state, ("{cell} is not " + what, blank, "Write a plain number, or leave the cell empty.", "doubtful"))
    column.tell_cells(severity, hits, found=found, done=done, mend=mend)


def _how_sure(text: str, match: re.Match) -> str:
    """"unsure" for "2?", "about" for "ca. 5"."""
    return "unsure" if match[3] else "about" if match.start(1) else ""


def _count(cell):
    """(count or None, what was odd)."""
    if isinstance(cell, bool):
        return None, "bad"
    if isinstance(cell, (int, float)):
        if not math.isfinite(cell):
            return None, "bad"
        if cell < 0:
            return None, "negative"
        if cell != int(cell):
            return None, "share" if cell < 1 else "fraction"
        return (int(cell), "") if cell < 1e9 else (None, "bad")
    if not isinstance(cell, str):
        return None, "date"
    text = plain(cell)
    if text in value_words("unknown"):
        return None, "unknown"
    if text in value_words("zero"):
        return 0, ""
    if text.endswith("%") or "percent" in text:
        return None, "percent"
    if _SUM.fullmatch(text):
        return sum(map(int, re.findall(r"\d+", text))), "sum"
    if match := _THOUSANDS.fullmatch(text):
        number = int(re.sub(r"[., ']", "", match[1]))
        return (number, "") if number >= 0 else (None, "negative")
    if match := _COUNT.fullmatch(text):
        number = int(float(match[1].replace(",", ".")))
        if number < 0:
            return None, "negative"
        return (number, _how_sure(text, match)) if number < 1e9 else (None, "bad")
    if match := re.fullmatch(r"([+-]?\d*[.,]\d+)", text):
        number = float(match[1].replace(",", "."))
        return None, "negative" if number < 0 else "share" if number < 1 else "fraction"
    if match := _WITH_REMARK.fullmatch(text):
        return int(match[1]), "remark"
    return None, "bad"


def _measure(cell, unit: str):
    """(number or None, what was odd)."""
    if isinstance(cell, bool):
        return None, "bad"
    if isinstance(cell, (int, float)):
        return (float(cell), "") if math.isfinite(cell) else (None, "bad")
    if not isinstance(cell, str):
        return None, "date"
    text = plain(cell)
    if text in value_words("unknown"):
        return None, "unknown"
    if text in value_words("zero"):
        return 0.0, ""
    if match := re.fullmatch(r"(\d{1,3}(?:,\d{3})+\.\d+|\d{1,3}(?:\.\d{3})+,\d+)\s*g?", text):
        mark = match[1][-1 - len(re.search(r"\d+$", match[1])[0])]
        other = "." if mark == "," else ","
        return float(match[1].replace(other, "").replace(mark, ".")), ""
    if match := _MEASURE.fullmatch(text):
        scale = _UNITS[unit].get(match[2])
        if scale is None:
            return None, "bad"
        number = float(match[1].replace(",", ".")) * scale
        return number, "unit" if scale != 1.0 else _how_sure(text, match)
    if unit == "number" and re.fullmatch(r"[a-z]", text):
        return float(ord(text) - 96), ""  # rows of a tray are often lettered
    if unit == "days" and (match := re.fullmatch(r"(?:d|day|tag|jour|dia|giorno|dag)\.? ?(\d+(?:[.,]\d+)?)", text)):
        return float(match[1].replace(",", ".")), ""
    if match := re.fullmatch(r"(\d+(?:[.,]\d+)?)\s*(?:-|–|to|bis)\s*(\d+(?:[.,]\d+)?)\s*[a-z]{0,8}", text):
        low, high = (float(part.replace(",", ".")) for part in match.groups())
        return (low + high) / 2, "range"
    return None, "bad"


def meanings(column: Column, kind: str) -> pd.Series:
    """Words of one kind (look, outcome) as hatchkit's own word; unknown words are missing, and all doubt is told."""
    words, unknown = value_words(kind), value_words("unknown")

    def read(cell):
        """(meaning or None, what was odd)."""
        text = plain(text_of(cell) or "")
        meaning = words.get(text) or words.get(text.rstrip(".?! "))
        if meaning is not None:
            return meaning, "unsure" if text not in words and "?" in text else ""
        return None, "unknown" if text in unknown else "bad" if text else ""

    parsed = _look_up(column.cells, read)
    hits = {}
    for row, cell, (_, state) in zip(column.rows, column.cells, parsed, strict=True):
        if state:
            hits.setdefault(state, []).append((row, cell))
    if unsaid := hits.get("unknown"):
        column.tell_unsaid(unsaid, done="Taken as not looked at.")
    column.tell_cells("doubtful", hits.get("unsure", []), found="{cell} is marked as unsure", done="The word is used.",
                      mend="Leave the cell empty if it was not seen.")
    odd = hits.get("bad", [])
    meant = ", ".join(dict.fromkeys(words.values()))
    column.tell_cells("doubtful", odd, found="{cell} is none of: " + meant, mend="Write one of these words.",
                      done="The cell counts as not looked at.")
    return pd.Series([meaning for meaning, _ in parsed], dtype=TEXT)
