"""The course's checker: says whether an answer is right and, if not, what to look at again - never the answer."""

import textwrap
from typing import Any

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.say import text
from hatchkit.teach.course_exercises import PARTS
from hatchkit.teach.judging import FOUND, OPEN, RIGHT, Verdict
from hatchkit.teach.lesson_exercises import FURTHER
from hatchkit.teach.outline import aim_words, progress_words

EXERCISES: dict[str, Any] = {**PARTS, **FURTHER}

#: Exercise -> whether it was right when it was last checked in this session.
_DONE: dict[str, bool] = {}


def begin(section: str) -> None:
    """Print what a section of a lesson is for and how long it takes.

    Parameters
    ----------
    section : str
        Key of a section in ``reference/lesson_outline.csv``.
    """
    print(textwrap.fill(aim_words(section), 100))


def progress(lesson: str) -> None:
    """Print how many exercises of each section of a lesson are right so far.

    Parameters
    ----------
    lesson : str
        Key of a lesson in ``reference/lesson_outline.csv``.
    """
    print(progress_words(lesson, _DONE))


def check(name: str, answer, *data) -> None:
    """Print what to make of an answer to an exercise.

    Parameters
    ----------
    name : str
        Exercise, as in ``reference/lesson_outline.csv``.
    answer : number, tuple of numbers, letter, sentence, or ``...`` while it is open
        Shares 0-1, eggs as counts, temperatures in degC, ages in days.
    *data
        The tables or figures that the question names, in its order.

    Raises
    ------
    HatchkitError
        For an exercise that there is not.
    """
    verdict = judge(name, answer, *data)
    _DONE[name] = verdict.state in (RIGHT, FOUND)
    print(textwrap.fill(verdict.words, 100))


def judge(name: str, answer, *data) -> Verdict:
    """The verdict on an answer.

    Parameters
    ----------
    name : str
        Exercise; HatchkitError for one that there is not.
    answer : number, tuple of numbers, letter, sentence, or ``...`` while it is open
    *data
        The tables or figures that the question names, in its order.
    """
    if name not in EXERCISES:
        raise HatchkitError("no_exercise", dict(name=name))
    if _is_open(answer):
        return Verdict(OPEN, text("exercise_open"))
    state, words = EXERCISES[name].judge(answer, *data)
    return Verdict(state, f"{state.capitalize()}. {_words(name).get(words, words)}")


def _words(name: str) -> dict:
    table = reference.load("exercise_words")
    return table[table["exercise"] == name].set_index("answer")["words"].to_dict()


def _is_open(answer) -> bool:
    parts = answer if isinstance(answer, (tuple, list)) else (answer,)
    return any(part is ... or part is None or isinstance(part, str) and part.strip(" .") == "" for part in parts)
