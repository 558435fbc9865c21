"""What became of every line of a sensor file, so that none is lost without a word.

Lines counted here add up: lines in the file = lines with readings + lines named in problems
(+ the header line, of which no word is said where it is the only one above the readings).
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

import numpy as np

from hatchkit.problems import problem
from hatchkit.records.logs.cells import is_number, split_line
from hatchkit.records.logs.headings import is_units
from hatchkit.records.logs.names import role_of
from hatchkit.records.told import local_minute

_WORDS, _UNTIMED = "words", "untimed"


@dataclass
class Account:
    """Lines of one file by what became of them, and the problem rows that say so.

    `zone` is that of the person's wall clock, in which messages give times. `shift` is -1 where a line was put above
    the file's own; `first_line` the number of lines above this section. `questions` are rows of the questions table,
    `facts` what the overview of the logs shows.
    """

    file: str
    lines: dict = field(default_factory=dict)
    rows: list = field(default_factory=list)
    zone: str | None = None
    shift: int = 0
    first_line: int = 0
    questions: list = field(default_factory=list)
    facts: dict = field(default_factory=dict)

    def _at(self, row):
        return None if row is None else int(row) + self.shift + self.first_line

    def ask(self, heading, taken, choices, rows_changed, code, **facts) -> None:
        """Add a question: what `heading` was taken for and what else it could be."""
        self.questions.append(
            dict(
                code=code,
                file=self.file,
                sheet="",
                heading=heading,
                taken=taken,
                choices=list(choices),
                rows_changed=int(rows_changed),
                facts=facts,
            )
        )

    def add(self, other: Account) -> None:
        """Take over what another account of the same file holds."""
        for kind, number in other.lines.items():
            self.lines[kind] = self.lines.get(kind, 0) + number
        self.rows.extend(other.rows)
        self.questions.extend(other.questions)
        self.facts = {**self.facts, **other.facts}

    def say(self, severity, code, *, row=None, column="", **facts) -> None:
        """Add a problem row that stands for no line of its own: the code of a message and its facts."""
        self.rows.append(problem(severity, code=code, facts=facts, file=self.file, row=self._at(row), column=column))

    def clock(self, time) -> str:
        """A time (datetime64, UTC) as the person's wall clock shows it; "UTC" is added where no zone is known."""
        return local_minute(time, self.zone)

    def count(self, kind, severity, number, *, first=None, example="", **facts) -> None:
        """Account for `number` lines of one kind ("blank": message log_lines_blank) with one problem row."""
        number = int(number)
        if not number:
            return
        self.lines[kind] = self.lines.get(kind, 0) + number
        line = self._at(first)
        facts = dict(count=number, first=line, example=example[:60], **facts)
        self.rows.append(problem(severity, code=f"log_lines_{kind}", facts=facts, file=self.file, row=line))


def line_text(data: bytes, line: int) -> str:
    """Text of one line, counted from 0; "" where stray marks made the parser see more lines than there are."""
    ends = np.flatnonzero(np.frombuffer(data, dtype=np.uint8) == 10)
    if line > len(ends):
        return ""
    start = 0 if line == 0 else int(ends[line - 1]) + 1
    stop = int(ends[line]) if line < len(ends) else len(data)
    return data[start:stop].decode("utf-8", "replace").strip()


def blank_rows(raw) -> np.ndarray:
    """Rows in which every column that is used is empty."""
    blank = np.ones(len(raw), dtype=bool)
    for name in raw.columns:
        column = raw[name]
        empty = column.isna().to_numpy(copy=True)
        rows = np.flatnonzero(~empty & blank)
        empty[rows] = [not str(cell).strip(" \x00\x1a") for cell in column.iloc[rows]]
        blank &= empty
    return blank


def sort_lines(account, data, head, plan, raw, stamps) -> np.ndarray:
    """Which lines hold readings; the others are counted by kind."""
    good = ~np.isnat(stamps.local)
    if good.all():
        return good
    bad = np.flatnonzero(~good)
    blank = bad[blank_rows(raw.iloc[bad])]
    lines = {int(row): "" for row in blank}
    account.count("blank", "note", len(blank), first=_line(head, blank))
    headers = [] if not head.header_lines or account.shift else [line_text(data, n).split() for n in head.header_lines]
    kinds: dict = {}
    numbers = [n for channel in plan.channels for n in channel.columns.values()]
    for row in bad:
        if int(row) in lines:
            continue
        text = line_text(data, head.first + int(row)) if len(bad) < 2000 else ""
        kind = _kind_of_line(text, headers, raw, row, numbers, head.separator == " ")
        why = stamps.reasons.get(int(row), "") if kind == _UNTIMED else None
        kinds.setdefault((kind, why), []).append(int(row))
    for (kind, why), rows in kinds.items():
        account.count(
            kind,
            "note" if why is None else "lost",
            len(rows),
            first=_line(head, rows),
            example=line_text(data, head.first + rows[0]),
            **({} if why is None else dict(why=why.replace(" ", "_"))),
        )
    return good


def _kind_of_line(text, headers, raw, row, numbers, by_blanks) -> str:
    if text and text.split() in headers:
        return "repeated_header"
    if by_blanks and re.match(r"[^\W\d_]{4,}\.?\s", text):
        return _WORDS  # "Page 2 of 4": words parted by blanks, whose number stands under the values by chance
    values = [raw[n].iloc[row] for n in numbers]
    has_number = any(isinstance(v, float) and v == v or isinstance(v, str) and is_number(v) for v in values)
    first = text.split(" ")[0].split(";")[0].split(",")[0].split("\t")[0]
    if has_number and role_of(first) not in ("summary", "mean", "minimum", "maximum", "spread"):
        return _UNTIMED
    return _WORDS


def _line(head, rows):
    return head.first + int(rows[0]) + 1 if len(rows) else None


_MOST_SECTIONS = 200
_MOST_ODD_LINES = 5000
_LONGEST_HEADING = 2000


def cuts_of(data: bytes, head, when) -> list:
    """Numbers of the lines, from 0, at which the file begins anew with other headings: several exports put together.

    Headings that are written once more as they stand above, as a printer does on each page, part nothing: what is
    below them is read by the columns of the first.
    """
    bad = np.flatnonzero(np.isnat(when.local))
    if not len(bad) or len(bad) > _MOST_ODD_LINES or head.header is None:
        return []
    known = {_cells(line_text(data, number), head) for number in head.header_lines}
    ends = np.flatnonzero(np.frombuffer(data, dtype=np.uint8) == 10)
    cuts, again = [], None
    for row in bad:
        number = head.first + int(row)
        if number - 1 >= len(ends):
            break
        start = int(ends[number - 1]) + 1 if number else 0
        stop = int(ends[number]) if number < len(ends) else len(data)
        if stop - start > _LONGEST_HEADING:
            continue
        cells = _cells(data[start:stop].decode("utf-8", "replace"), head)
        roles = {role_of(cell) for cell in cells}
        # A heading of the measures alone is one too: the word for the time may be broken or unknown.
        named = roles & {"stamp", "date", "time"} and roles & {"temp", "rh", "value"} or {"temp", "rh"} <= roles
        if len(cells) < 2 or not named:
            continue
        if cells not in known:
            # Other units below the same headings: the section begins with these headings.
            cuts.append(again if again == number - 1 and is_units(list(cells)) else number)
        elif _begins_anew(when.local, int(row)):
            cuts.append(number - 1)
        again = number if cells in known else None
    return sorted(set(cuts))[:_MOST_SECTIONS]


def _cells(line: str, head) -> tuple:
    return tuple(cell for cell in split_line(line, head.separator) if cell)


def _begins_anew(local, row: int) -> bool:
    """Whether a heading written once more has a title above it and readings of earlier times below it: another log.

    In a log that is written newest first every further page is of earlier times; there it is no sign.
    """
    after, before = local[row + 1 :], local[:row]
    after, before = after[~np.isnat(after)], before[~np.isnat(before)]
    if row < 2 or not np.isnat(local[row - 1]) or not len(after) or not len(before) or after[0] >= before[-1]:
        return False
    return len(before) < 2 or np.median(np.diff(before).astype(np.int64)) >= 0
