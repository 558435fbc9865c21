"""What the keeper saw and wrote: signs found in ticks and in remarks in free words, in twelve languages.

The table ``reference/signs.csv`` holds for each sign its words, what it speaks for and against and how strongly
(how many times as likely the sign is with the cause), source and sureness. A word that is not in the table says
nothing: it is neither for nor against anything.
"""

from __future__ import annotations

import re
import unicodedata
from functools import cache, lru_cache

import pandas as pd

from hatchkit import reference

LANGUAGES = ("en", "de", "fr", "nl", "es", "it", "pt", "pl", "cs", "sv", "da", "hu")

COLUMNS = ["sign", "kind", "fact", "said", "column"]

#: Letters that do not fall apart into a plain one and a mark.
PLAIN = str.maketrans(
    {"ß": "ss", "ø": "o", "ł": "l", "æ": "ae", "œ": "oe", "đ": "d", "'": " ", "\N{RIGHT SINGLE QUOTATION MARK}": " "}
)

#: Up to this many words before a sign are looked at for a "no".
BEFORE = 3

#: Two stems joined by + belong together within so many letters.
APART = 40

#: Words that deny what follows, in twelve languages.
NOT = set(reference.small_words("denial"))


def plain(text) -> str:
    """Small letters without marks, one space between words."""
    text = unicodedata.normalize("NFKD", str(text).lower().translate(PLAIN))
    return " ".join("".join(letter for letter in text if not unicodedata.combining(letter)).split())


@cache
def _table() -> dict:
    return reference.load("signs").set_index("sign").to_dict("index")


@cache
def _phrases() -> tuple:
    """(sign, phrase, its words) for every phrase; the longest first, so that they are the ones shown."""
    found = []
    for sign, row in _table().items():
        phrases = {plain(phrase) for language in LANGUAGES for phrase in str(row[f"words_{language}"]).split("|")}
        phrases |= {plain(sign.replace("_", " ")), plain(row["name"])}
        for phrase in sorted(phrases - {""}, key=len, reverse=True):
            found.append((sign, phrase, phrase.replace("+", " ").split()))
    return tuple(found)


@cache
def _pattern(phrase: str) -> re.Pattern:
    return re.compile(_expression(phrase))


#: Between two words of a phrase another one or two may stand ("the turner had stopped"), but no "no" and no comma.
_BETWEEN = rf"(?: (?!(?:{'|'.join(sorted(NOT))})\b)\w+){{0,2}} "

#: From so many letters on a word may go on ("air cell" is read in "air cells").
STEM = 4


def _expression(phrase: str) -> str:
    stems = [r"\b" + _BETWEEN.join(_words(stem.split())) for stem in phrase.split("+")]
    if len(stems) == 1:  # "no current" is not the beginning of a longer word with a no before it
        return stems[0] + (r"\b" if phrase.split()[0] in NOT else "")
    first, second = stems
    within = f"[^.,;:!?]{{0,{APART}}}?"
    return f"(?:{first}{within}{second}|{second}{within}{first})"


def _words(words) -> list[str]:
    """Expression of each word of a phrase; the last one may go on in any case."""
    return [re.escape(word) + (r"\w*" if len(word) >= STEM else "") for word in words[:-1]] + [re.escape(words[-1])]


def read(text) -> dict:
    """Signs named in a text: {sign: the words that named it}; one that is denied ("no power cut") is not named."""
    return dict(_named(plain(text)))


@lru_cache(maxsize=4096)  # a remark is asked about by several rooms, and the same words stand in many rows
def _named(text) -> dict:
    named: dict = {}
    for sign, phrase, words in _phrases():
        # A phrase is only made a pattern where all its words are there: making all of them costs a second.
        if sign in named or not all(word in text for word in words):
            continue
        for match in _pattern(phrase).finditer(text):
            clause = re.split(r"[.;:!?,]", text[: match.start()])[-1]
            if not NOT & set(re.findall(r"\w+", clause)[-BEFORE:]):
                end = re.match(r"\w*", text[match.end() :])
                named[sign] = match.group() + end.group()
                break
    return named


def found(row) -> pd.DataFrame:
    """Signs of one batch (its row of batches) from `signs` and `notes`: sign, kind, fact, said, column."""
    rows = {}
    for column in ("signs", "notes"):
        value = row.get(column)
        if value is None or pd.isna(value):
            continue
        for sign, said in read(value).items():
            known = _table()[sign]
            rows.setdefault(sign, [sign, known["kind"], known["fact"], said, column])
    return pd.DataFrame(list(rows.values()), columns=COLUMNS, dtype=object)


@cache
def factors() -> dict:
    """{sign: {cause: how many times as likely the sign is with the cause}}."""
    out = {}
    for sign, row in _table().items():
        pairs = f"{row['for']} {row['against'] if isinstance(row['against'], str) else ''}".split()
        out[sign] = {cause: float(factor) for cause, factor in (pair.split(":") for pair in pairs)}
    return out
