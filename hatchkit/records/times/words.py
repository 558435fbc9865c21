"""Words that stand in dates and clock times, in twelve languages (``reference/clock_words.csv``)."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable
from functools import cache, lru_cache

from hatchkit.records.words import csv_rows

#: Letters that have no accent to take off.
_PLAIN = str.maketrans(
    {
        "ß": "s",
        "ł": "l",
        "ø": "o",
        "æ": "a",
        "œ": "o",
        "đ": "d",
        "ı": "i",
        "’": "'",
        "`": "'",
        "´": "'",
        "\u00a0": " ",
        "\u202f": " ",
        "\u2009": " ",
        "–": "-",
        "—": "-",
        "−": "-",
    }
)


@lru_cache(maxsize=65_536)
def fold(text: str) -> str:
    """Small letters without accents, one for each character of the text, so that places stay the same."""
    if text.isascii():
        return text.lower()
    return "".join(_folded(letter) for letter in text)


@cache
def _folded(letter: str) -> str:
    small = letter.lower().translate(_PLAIN)
    if len(small) != 1:
        small = letter
    if small in "ºª°":
        return small
    base = unicodedata.normalize("NFKD", small)[:1]
    return base if base and base.isalnum() else small


@cache
def _rows() -> tuple:
    return tuple((fold(row["word"]).strip(), row["means"]) for row in csv_rows("clock_words"))


@cache
def months() -> dict[str, int]:
    """Name of a month, folded -> 1 to 12; Roman numbers too."""
    found = {word: int(means) for word, means in _rows() if means.isdigit()}
    roman = ("i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii")
    return found | {word: number for number, word in enumerate(roman, 1)}


@cache
def weekdays() -> dict[str, frozenset]:
    """Name of a day of the week, folded -> days it can be (0 is Monday): "so" is Sunday, or in Czech Saturday."""
    found: dict = {}
    for word, means in _rows():
        if means.startswith("weekday "):
            found[word] = found.get(word, frozenset()) | {int(means[8:]) - 1}
    return found


@cache
def halves() -> dict[str, str]:
    """Word for a half of the day, folded -> "am" or "pm"."""
    return {word: means for word, means in _rows() if means in ("am", "pm")}


@cache
def zones() -> dict[str, float]:
    """Name of a zone, folded -> seconds east of UTC."""
    return {word: 3600 * float(means[5:]) for word, means in _rows() if means.startswith("zone ")}


@cache
def either(kind: str) -> str:
    """The words of one kind (months, weekdays, halves, zones, or a meaning) as a pattern, longest first."""
    known = {"months": months, "weekdays": weekdays, "halves": halves, "zones": zones}
    words: Iterable[str] = known[kind]() if kind in known else {word for word, means in _rows() if means == kind}
    return "|".join(re.escape(word).replace(r"\ ", r"\s+") for word in sorted(words, key=len, reverse=True))
