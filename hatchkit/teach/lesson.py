"""A lesson: one season with a hidden cause for each student, the teacher's answer book, and marking.

A lesson folder holds two folders that part before the class begins: ``students`` (a case for each,
with a blank answer form) and ``teacher`` (the answer book).
"""

import secrets
from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.pages.frame import template
from hatchkit.pages.report import StderrProgress
from hatchkit.problems import HatchkitError, one_of
from hatchkit.records.writing import write_whole
from hatchkit.say import text
from hatchkit.simulate import life
from hatchkit.simulate.folder import empty_folder
from hatchkit.teach import case_words
from hatchkit.teach.answer_form import write_form
from hatchkit.teach.cases import make_case
from hatchkit.teach.marking import BOOK, rules

#: Seeds below this can be tried one after another by somebody who knows the kit.
GUESSED = 10**9


def write_lesson(folder, *, students, seed=None, level="first", batches=6, eggs=48, language="en") -> Path:
    """Write a case for each student and the answer book.

    Parameters
    ----------
    folder : path
        New or empty.
    students : int
        How many cases.
    seed : int, optional
        The same seed gives the same lesson and the same answer book; drawn afresh, too large to be
        guessed, if left out. It is written in the answer book alone.
    level : {"first", "second", "exam"}
        How much else happens in a season (``reference/case_levels.csv``).
    batches, eggs
        As in `simulate.simulate_season`.
    language : {"en", "de", "fr", "es"}
        Of the answer forms.

    Returns
    -------
    Path
        The answer book as a page for the teacher; the same table lies beside it as CSV
        (columns: ``reference/columns_lesson.csv``).
    """
    if students < 1:
        raise HatchkitError("whole_number", dict(name="students", least=1, given=str(students)))
    if batches < 2:
        raise HatchkitError("lesson_batches", {})
    life.level(level)
    one_of("language", language, case_words.LANGUAGES)
    seed = secrets.randbits(64) if seed is None else int(seed)
    if seed < 0:
        raise HatchkitError("whole_number", dict(name="seed", least=0, given=str(seed)))
    folder = empty_folder(folder)
    rng = np.random.default_rng([seed, 7])
    progress = StderrProgress("Lesson", "cases written")
    rows = []
    for number in range(1, students + 1):
        name = f"{number:02d}"
        case = make_case(int(rng.integers(2**62)), level=level, batches=batches, eggs=eggs)
        rows.append(case.row(name))
        _write_case(folder, name, case, rows[-1], language)
        progress(number, students)
    book = pd.DataFrame(rows)
    write_whole(folder / BOOK, book.to_csv(index=False))
    write_whole(folder / "students" / "README.md", _guide())
    return write_whole((folder / BOOK).with_suffix(".html"), _book_page(book, seed))


def _write_case(folder, name, case, row, language):
    home = folder / "students" / f"case_{name}"
    case.write_season(home / "season")
    statements = [(fact.code, fact.numbers) for fact in case.facts]
    write_form(
        home / "answer_form.xlsx",
        case=name,
        batch=row["batch"],
        eggs=row["eggs_set"],
        statements=statements,
        language=language,
    )
    answers = folder / "teacher" / "answers"
    case.lived.answer.write(answers / f"case_{name}.json")
    write_whole(answers / f"case_{name}_shown.json", case.shown_again())


def _guide():
    table = reference.load("simulate_causes")
    listed = "\n".join(f"- `{row.cause}`: {case_words.cause_words(row.cause)}" for row in table.itertuples(index=False))
    given = "\n".join(f"- {rule}" for rule in rules())
    return "\n\n".join([text("teach_guide"), listed, text("teach_guide_marks"), given]) + "\n"


def _book_page(book, seed):
    shown = book.drop(columns=["seed"]).rename(columns=lambda name: name.replace("_", " "))
    return template("answer_book", room="hatchkit.teach").render(
        title=text("teach_book_title"),
        lead=text("teach_book_lead", dict(cases=len(book), seed=str(seed))),
        rules_head=text("teach_book_rules"),
        rules=rules(),
        answers=text("teach_book_answers"),
        heads=list(shown),
        rows=[list(map(str, row)) for row in shown.itertuples(index=False)],
    )
