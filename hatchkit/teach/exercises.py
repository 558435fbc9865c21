"""The course's checker: says whether an answer is right and, if not, what to look at again - never the answer."""

from __future__ import annotations

import textwrap

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.teach.course_exercises import EXERCISES
from hatchkit.teach.judging import OPEN, Verdict


def check(name: str, answer, *data) -> None:
    """Print what to make of `answer` to the exercise `name`; `data` is what the exercise is about."""
    print(textwrap.fill(judge(name, answer, *data).words, 100))


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
        raise HatchkitError(f"There is no exercise {name!r}; the first word after check( must stay as it was.")
    if _is_open(answer):
        return Verdict(OPEN, "Not answered yet. Put your answer in place of the dots and run the cell again.")
    state, words = EXERCISES[name].judge(answer, *data)
    return Verdict(state, f"{state.capitalize()}. {_words(name).get(words, words)}")


def _words(name: str) -> dict:
    table = reference.load("exercise_words")
    return table[table["exercise"] == name].set_index("answer")["words"].to_dict()


def _is_open(answer) -> bool:
    parts = answer if isinstance(answer, (tuple, list)) else (answer,)
    return any(part is ... or part is None or isinstance(part, str) and part.strip(" .") == "" for part in parts)
