"""Words made comparable, and the tables of words in ``hatchkit/reference``."""

from __future__ import annotations

import csv
import re
import unicodedata
from functools import cache
from importlib import resources


@cache
def csv_rows(name: str) -> tuple[dict, ...]:
    """The rows of a table of words."""
    # csv instead of pandas: "n/a" and "null" are words here, not missing values.
    text = (resources.files("hatchkit.reference") / f"{name}.csv").read_text(encoding="utf-8")
    heads, *rows = csv.reader(text.splitlines())
    return tuple(dict(zip(heads, row, strict=True)) for row in rows if row)


def plain(text) -> str:
    """Lower case without accents, outer spaces and doubled spaces: "  Éclos " -> "eclos"."""
    text = str(text)
    if text.isascii():  # as nearly all are: nothing to take apart
        return " ".join(text.lower().split())
    text = unicodedata.normalize("NFKD", text.replace("ß", "ss").replace("œ", "oe").replace("Œ", "Oe"))
    return " ".join("".join(c for c in text if not unicodedata.combining(c)).lower().split())


@cache
def split_words(text: str) -> tuple[str, ...]:
    """The words of a heading in order, plain, split at case, digits and punctuation, without plural s.

    "Clears (1st candling)" -> ("clear", "1st", "candling").
    """
    text = re.sub(r"(?<=[a-zà-ÿ])(?=[A-ZÀ-Ý])", " ", str(text)).replace("%", " percent ")
    text = re.sub(r"(?<=[^\W\d_])(?=\d)", " ", plain(text))
    words = re.findall(r"[^\W_]+", text)
    return tuple(word[:-1] if len(word) > 3 and word.endswith("s") else word for word in words)


def letters_apart(one: str, other: str, limit: int) -> int:
    """How many letters must be added, dropped, changed or swapped with the neighbour; over `limit` gives limit + 1.

    Source: optimal string alignment distance (Damerau 1964; Wagner and Fischer 1974).
    """
    if abs(len(one) - len(other)) > limit:
        return limit + 1
    before, last = [], list(range(len(other) + 1))
    for i, a in enumerate(one, 1):
        row = [i]
        for j, b in enumerate(other, 1):
            best = min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (a != b))
            if i > 1 and j > 1 and a == other[j - 2] and b == one[i - 2]:
                best = min(best, before[j - 2] + 1)
            row.append(best)
        if min(row) > limit:
            return limit + 1
        before, last = last, row
    return min(last[-1], limit + 1)


@cache
def _letters(word: str) -> int:
    """The kinds of letters in a word, one bit each (letters that share a bit only make the test coarser)."""
    bits = 0
    for letter in word:
        bits |= 1 << ord(letter) % 61
    return bits


def nearest_words(word: str, known) -> list[str]:
    """The known words that differ least from `word`: by one letter at most, by two in words of seven and more."""
    limit = 0 if len(word) < 4 else 1 if len(word) < 7 else 2
    if not limit or any(c.isdigit() for c in word):
        return []
    letters = _letters(word)
    # Each edit brings or takes away one kind of letter at most: a quick test that leaves few words to compare.
    apart = {
        name: letters_apart(word, name, limit)
        for name in known
        if abs(len(name) - len(word)) <= limit
        and (letters & ~_letters(name)).bit_count() <= limit
        and (_letters(name) & ~letters).bit_count() <= limit
    }
    best = min(apart.values(), default=limit + 1)
    return sorted(name for name, distance in apart.items() if distance == best and best <= limit)


def nearest(word: str, known) -> str | None:
    """The one known word that differs by a letter or two, or None if none or several do."""
    found = nearest_words(word, known)
    return found[0] if len(found) == 1 else None
