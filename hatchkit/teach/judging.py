"""How an answer is judged: numbers with a tolerance, tuples, letters, a hidden cause - without giving the answer.

What is right is worked out each time from the data that the exercise is about
(``course_exercises.py``), so an exercise can be given with other figures, and nothing to copy lies in
the student's notebook. The words are in ``reference/exercise_words.csv``.
"""

import math
import re
from collections.abc import Callable
from dataclasses import dataclass, field
from decimal import Decimal
from numbers import Real
from typing import NamedTuple

from hatchkit import reference
from hatchkit.say import text

OPEN, RIGHT, FOUND, NOT_YET = "open", "right", "all parts found", "not yet"

#: A number with fewer figures than these is too coarse to be called right.
FIGURES = 2


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
        A number within this of the right one is right; so is one that is right as far as its own figures
        go, if it has at least `FIGURES` of them.
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
        for name, mistake in self.mistakes.items():
            if _same(given, mistake(*data), self.tolerance):
                return NOT_YET, name
        if _rounded(given, right, FIGURES):
            return RIGHT, "right"
        if _rounded(given, right):
            return NOT_YET, text("exercise_nearly")
        if self.share and (_same(_hundredth(given), right, self.tolerance) or _rounded(_hundredth(given), right)):
            return NOT_YET, text("exercise_percent")
        return NOT_YET, "other"


def share(right, *, tolerance: float = 0.005, **mistakes) -> Exercise:
    """An exercise whose answer is a share from 0 to 1."""
    return Exercise(right, mistakes, tolerance, share=True)


def number(right, *, tolerance: float = 0.005, **mistakes) -> Exercise:
    """An exercise whose answer is any other number, or several."""
    return Exercise(right, mistakes, tolerance)


def turned_round(right):
    """The same numbers in the other order, or with the other sign: where that mistake leads."""

    def turned(*data):
        found = right(*data)
        return found[::-1] if isinstance(found, tuple) else -found

    return turned


def letter(right):
    """The right answer of a question with letters to choose from."""
    return lambda *_: right


@dataclass(frozen=True)
class HiddenCause:
    """An exercise whose answer is the cause hidden in a simulated season; the data is its sealed answer."""

    def judge(self, answer, sealed) -> tuple[str, str]:
        """Right with what the sealed answer says, else how near it is."""
        causes = reference.load("simulate_causes").set_index("cause")
        guess = str(answer).strip().lower()
        if guess not in causes.index:
            return NOT_YET, text("exercise_words", dict(known=list(causes.index)))
        if guess == sealed.cause:
            others = [str(batch) for batch in sealed.causes["batch"] if batch != sealed.batch]
            more = f" {text('exercise_others', dict(others=others))}" if others else ""
            return RIGHT, sealed.words() + more
        same = causes.loc[guess] == causes.loc[sealed.cause]
        return NOT_YET, "kin" if same["named_by_advice"] else "stage" if same["stage"] else "other"


def _like(right, answer):
    """`answer` in the form of `right`; ValueError in the student's words."""
    if isinstance(right, str):
        letter = re.fullmatch(r"\W*([a-z])\W*", str(answer).lower())
        if not letter:
            raise ValueError('Give one letter between quotation marks, such as "a".')
        return letter[1]
    if isinstance(right, tuple):
        if hasattr(answer, "tolist"):  # an array or a column
            answer = answer.tolist()
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


def _rounded(given, right, figures: int = 1) -> bool:
    """Whether `given` is `right` rounded, to at least so many figures."""
    if isinstance(right, tuple):
        return all(_rounded(one, two, figures) for one, two in zip(given, right, strict=True))
    if isinstance(right, str) or not math.isfinite(given):
        return False
    off = abs(given - float(right))
    _, digits, exponent = Decimal(repr(given)).normalize().as_tuple()
    assert isinstance(exponent, int)  # a letter only where the number is not finite
    enough = off < 1e-9 or len(digits) + max(exponent, 0) >= figures
    return enough and off <= 0.5 * 10 ** min(exponent, 0) + 1e-9 and off <= abs(right) / 4


def _hundredth(given):
    """The answer as a share if it was meant in percent; a hundredth of 9.4 is 0.094, not 0.09400000000000001."""
    return tuple(map(_hundredth, given)) if isinstance(given, tuple) else float(f"{given / 100:.12g}")
