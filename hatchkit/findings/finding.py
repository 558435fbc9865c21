"""A finding: one question, the facts that answer it, how sure, eggs at stake, picture and table.

Findings hold codes and numbers. `say` has the words (``messages/<language>/...``): ``ask_<question>`` is the heading,
the answer's code gives the sentence in bold, ``alt_<figure>`` the text beside a picture, ``table_<name>`` the caption
of a table and ``head_<column>`` its headings.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import pandas as pd

#: How sure an answer is, surest first.
SURENESS = ("sure", "likely", "guess", "cannot_tell")


@dataclass(frozen=True)
class Said:
    """Something to be said: the code of a message and its facts, which may be things to be said themselves."""

    code: str
    facts: dict = field(default_factory=dict)


@dataclass(frozen=True)
class Told:
    """Something that a function of `hatchkit.say` puts in words: file and function there, and what it is given."""

    by: str
    given: Any


@dataclass(frozen=True)
class Composed:
    """Why a room refused, in English: one that has no code for it yet. `refused` alone makes one."""

    words: str


def refused(refusal) -> Said | Composed:
    """Why a room refused (a `HatchkitError`)."""
    return Said(refusal.code, refusal.facts) if refusal.code else Composed(str(refusal))


@dataclass(frozen=True)
class Picture:
    """A figure by name with what it draws.

    Attributes
    ----------
    figure : str
        File and function in ``hatchkit.figures``: ``"losses.egg_ledger"``.
    table : object
        Its first argument: a table, or a list of arguments.
    options : dict
        Its other arguments.
    alt : Said or Composed
        What the picture tells.
    caption : Said or None
    most : float or None
        Widest that a page shows it, in CSS pixels, where that is not left to the picture.
    """

    figure: str
    table: Any
    alt: Said | Composed
    options: dict = field(default_factory=dict)
    caption: Said | None = None
    most: float | None = None


def told(figure: str, *given, facts: dict, caption: Said | None = None, **options) -> Picture:
    """A picture whose alt text is the message ``picture_<function>`` of `facts` (a room's ``pictured`` has them)."""
    return Picture(figure, list(given), Said(f"picture_{figure.rpartition('.')[2]}", facts), options, caption)


@dataclass(frozen=True)
class Table:
    """Rows for a reader.

    Attributes
    ----------
    name : str
        Message ``table_<name>`` is its caption.
    rows : DataFrame
    columns : tuple
        Columns to show; a triple (share, low, high) is shown as one column, headed by the share's name. Messages
        ``head_<column>`` are the headings.
    keys : dict
        Column -> kind of word: its values are keys, said as ``<kind>_<value>``.
    """

    name: str
    rows: pd.DataFrame
    columns: tuple
    keys: dict = field(default_factory=dict)


@dataclass(frozen=True)
class Finding:
    """What the records answer to one question.

    Attributes
    ----------
    question : str
        Such as "luck".
    answer : str
        Code of the message that answers it with `facts`.
    facts : dict
        Codes and numbers.
    sure : str
        One of `SURENESS`.
    eggs : float
        Eggs at stake; missing where it is no question of eggs.
    why_sure, do : Said, Composed or None
        What the sureness rests on; what to do now.
    picture : Picture or None
    table : Table or None
    more : tuple
        Said, Composed, Picture or Table: what is told to who looks further.
    plain : tuple
        Said or Composed: sentences that are shown beneath the answer without being asked for.
    cautions : tuple of str
        Tasks of ``reference/cautions.csv`` that the reader meets here.
    """

    question: str
    answer: str
    facts: dict
    sure: str
    eggs: float = float("nan")
    why_sure: Said | Composed | None = None
    do: Said | Composed | None = None
    picture: Picture | None = None
    table: Table | None = None
    more: tuple = ()
    plain: tuple = ()
    cautions: tuple = ()

    def __post_init__(self):
        if self.sure not in SURENESS:
            raise ValueError(f"sureness is one of {SURENESS}, not {self.sure!r}")


def answers(questions, about, progress=None, each=None) -> tuple:
    """The findings that a page's questions give, in their order.

    Parameters
    ----------
    questions : sequence of callable
        Each is called with `about` and gives a Finding, several, or none where its question cannot be asked.
    about : object
        What the questions are asked of.
    progress : callable, optional
        Called with (questions answered, questions in all).
    each : callable, optional
        Called with each finding as soon as it is made.

    Returns
    -------
    tuple of Finding
    """
    found = []
    for number, ask in enumerate(questions, start=1):
        given = ask(about)
        new = [given] if isinstance(given, Finding) else [one for one in given or () if one is not None]
        found += new
        if each:
            for one in new:
                each(one)
        if progress:
            progress(number, len(questions))
    return tuple(found)


@dataclass(frozen=True)
class Findings:
    """The findings of one page, in order; the first is the answer of the first screen.

    Attributes
    ----------
    about : str
        "season", "batch" or "years": messages ``page_<about>_...``.
    facts : dict
        Of the title and the line of counts; `name` (season) and, for a batch, `batch` are in the file's name.
    found : tuple of Finding
    records : Finding
        What was read and assumed: one line above, the rest at the end of the page.
    unknown : tuple of Said
        What this cannot tell.
    unit : {"C", "F"}
    language : str
    sheet : str
        Question with which the second sheet of paper begins.
    asked : tuple of str
        Questions that were asked; one without a finding had no records to answer it.
    """

    about: str
    facts: dict
    found: tuple
    records: Finding
    unknown: tuple = ()
    unit: str = "C"
    language: str = "en"
    sheet: str = ""
    asked: tuple = ()

    @property
    def first(self) -> Finding:
        """The finding of the first question."""
        return self.found[0]

    def __iter__(self) -> Iterator[Finding]:
        return iter(self.found)

    def __len__(self) -> int:
        return len(self.found)

    def __getitem__(self, question: str) -> Finding:
        for one in (*self.found, self.records):
            if one.question == question:
                return one
        if question in self.asked:
            return Finding(question, "shown_not_asked", {}, "cannot_tell")
        raise KeyError(f"{question}: there are {', '.join(one.question for one in self.found)}")
