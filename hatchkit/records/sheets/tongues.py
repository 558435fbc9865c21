"""Which language the words of a sheet are in, and how many of them are known as they are written."""

from __future__ import annotations

import re
from functools import cache

from hatchkit.records.sheets.lexicon import LANGUAGES, tokens
from hatchkit.records.words import csv_rows


def known_words(text: str) -> int:
    """How many words of a text are known as they are written, accents included."""
    known = _as_written()
    return sum(word in known for word in re.findall(r"[^\W\d_]{3,}", str(text).lower()))


@cache
def _as_written() -> frozenset:
    """Every known word with its accents, months and breeds included."""
    words = {word for row in csv_rows("sheet_words") for phrase in row["words"].split(" / ") for word in phrase.split()}
    words |= {word for row in csv_rows("breeds") for word in row["name"].lower().split()}
    words |= {row["word"].lower() for row in csv_rows("clock_words")} if "word" in csv_rows("clock_words")[0] else set()
    return frozenset(word for word in words if not word.isascii())


def language_of(texts) -> str | None:
    """The language whose words explain most of the texts; English only where no other explains more."""
    scores, seen = dict.fromkeys(LANGUAGES, 0.0), set()
    for text in texts:
        for token in tokens(text):
            # Each word once: "12 eggs" in every row says no more than in one.
            if token.roles and len(token.text) > 1 and token.text not in seen:
                seen.add(token.text)
                weight = (0.4 if token.guessed else 1.0) / max(1, len(token.languages)) ** 0.5
                for language in token.languages:
                    scores[language] += weight
    best = max(scores, key=scores.get)
    return best if scores[best] > 0 else None
