"""The course's checker: says whether an answer is right and, if not, what to look at again - never the answer.

What is right is worked out each time from the data that the exercise is about
(``course_exercises.py``), so an exercise can be given with other figures, and nothing to copy lies in
the student's notebook. The words are in ``reference/exercise_words.csv``.
"""

from __future__ import annotations

import re
import textwrap
from collections.abc import Callable
from dataclasses import dataclass, field
from numbers import Real
from typing import NamedTuple

from hatchkit import reference
from hatchkit.problems import HatchkitError

OPEN, RIGHT, NOT_YET = "open", "right", "not yet"


class Verdict(NamedTuple):
    """What the checker thinks of an answer, and the sentence that the student sees."""

    state: str
    words: str


@dataclass(frozen=True)
class Exercise:
    """One exercise.

    Attributes
    ----------
    right : callable
        Takes the exercise's data, returns the right answer: a number, a tuple of numbers, or a letter.
    mistakes : dict of callable
        Answers that usual mistakes lead to, worked out like the right one, under the name of their hint.
    tolerance : float
        A number within this of the right one is right.
    share : bool
        The answer is a share from 0 to 1.
    """

    right: Callable
    mistakes: dict = field(default_factory=dict)
    tolerance: float = 0.005
    share: bool = False

    def judge(self, answer, *data) -> tuple[str, str]:
        """State, and either the name of the words for it or the words themselves."""
        right = self.right(*data)
        try:
            given = _like(right, answer)
        except ValueError as error:
            return NOT_YET, str(error)
        if _same(given, right, self.tolerance):
            return RIGHT, "right"
        if self.share and _same(_hundredth(given), right, self.tolerance):
            return NOT_YET, "Give shares between 0 and 1, not percent."
        named = (name for name, mistake in self.mistakes.items() if _same(given, mistake(*data), self.tolerance))
        return NOT_YET, next(named, "other")


#: Words that say more than a breeder's records can carry.
TOO_SURE = ("caused", "causes", "proves", "proved", "proof", "due to", "because of", "certainly", "definitely",
            "killed by", "to blame")
#: Words that leave room for another explanation.
ROOM = ("also", "other", "could", "may", "might", "cannot tell", "can't tell", "not sure", "either", "unless")


@dataclass(frozen=True)
class Writing:
    """An exercise whose answer is a finding in one or two sentences.

    The data is one dict: batch, lost, eggs (of how many), when (a word that must be in it).
    """

    def judge(self, answer, finding) -> tuple[str, str]:
        """Look for the parts of a finding; the first that is missing is the hint."""
        if not isinstance(answer, str):
            return NOT_YET, 'Write one or two sentences between quotation marks: """...""".'
        text = " ".join(answer.lower().split())
        hint = next((hint for found, hint in self._parts(text, finding) if not found), None)
        return (NOT_YET, hint) if hint else (RIGHT, "right")

    def _parts(self, text, finding):
        """(found, hint) for each part of a finding, in the order in which a reader needs them."""
        counts = re.findall(r"(\d+)(?: [a-z]+){0,4}? (?:of|from|out of)(?: the| all)? (\d+)", text)
        sure = [words for words in TOO_SURE if words in text]
        yield str(finding["batch"]).lower() in text, "Say which batch it is about."
        yield counts, ("Give the counts themselves, so many of so many eggs: a percentage alone hides how few "
                       "there were.")
        yield (str(finding["lost"]), str(finding["eggs"])) in counts, (
            "The counts are not those of the table. How many were alive at the start, and how many of them "
            "were lost?")
        yield re.search(r"\d ?%? ?(?:to|-|–|and) ?\d+ ?%", text), (
            "Say how sure: the interval, from so much to so much percent.")
        yield finding["when"] in text, (
            f'Say when it happened: the word "{finding["when"]}" should be in it, with the days.')
        yield not sure, (f'"{"".join(sure[:1])}" says more than these records can. Say what went together with '
                         "what.")
        yield any(re.search(rf"\b{words}\b", text) for words in ROOM), (
            "Leave room: name one other explanation that the records do not rule out.")


@dataclass(frozen=True)
class HiddenCause:
    """An exercise whose answer is the cause hidden in a simulated season; the data is its sealed answer."""

    def judge(self, answer, sealed) -> tuple[str, str]:
        """Right with what the sealed answer says, else how near it is."""
        causes = reference.load("simulate_causes").set_index("cause")
        guess = str(answer).strip().lower()
        if guess not in causes.index:
            return NOT_YET, f"Take one of these words: {', '.join(causes.index)}."
        if guess == sealed.cause:
            return RIGHT, sealed.words()
        same = causes.loc[guess] == causes.loc[sealed.cause]
        return NOT_YET, "kin" if same["named_by_advice"] else "stage" if same["stage"] else "other"


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
    from hatchkit.course_exercises import EXERCISES

    if name not in EXERCISES:
        raise HatchkitError(f"There is no exercise {name!r}; the first word after check( must stay as it was.")
    if _is_open(answer):
        return Verdict(OPEN, "Not answered yet. Put your answer in place of the dots and run the cell again.")
    state, words = EXERCISES[name].judge(answer, *data)
    return Verdict(state, f"{'Right' if state == RIGHT else 'Not yet'}. {_words(name).get(words, words)}")


def _words(name: str) -> dict:
    table = reference.load("exercise_words")
    return table[table["exercise"] == name].set_index("answer")["words"].to_dict()


def _is_open(answer) -> bool:
    parts = answer if isinstance(answer, (tuple, list)) else (answer,)
    return any(part is ... or part is None or isinstance(part, str) and part.strip(" .") == "" for part in parts)


def _like(right, answer):
    """`answer` in the form of `right`; ValueError in the student's words."""
    if isinstance(right, str):
        letter = str(answer).strip().lower()
        if not re.fullmatch("[a-z]", letter):
            raise ValueError('Give the letter of one of the sentences, such as "a".')
        return letter
    if isinstance(right, tuple):
        if not isinstance(answer, (tuple, list)) or len(answer) != len(right):
            raise ValueError("Give as many numbers in brackets as the question asks for, with commas between them.")
        return tuple(_like(one, part) for one, part in zip(right, answer, strict=True))
    if hasattr(answer, "item") and getattr(answer, "size", 1) == 1:
        answer = answer.item()
    if isinstance(answer, bool) or not isinstance(answer, Real):
        raise ValueError("Give one number, or a sum that comes to one number.")
    return float(answer)


def _same(given, other, tolerance: float) -> bool:
    if isinstance(other, tuple):
        return all(_same(one, two, tolerance) for one, two in zip(given, other, strict=True))
    if isinstance(other, str):
        return given == other
    return abs(given - float(other)) <= tolerance + 1e-9


def _hundredth(given):
    return tuple(part / 100 for part in given) if isinstance(given, tuple) else given / 100
