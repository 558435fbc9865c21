"""What a student's words mean: a stage, a cause, a number of eggs. What is not understood is named, never guessed."""

from __future__ import annotations

import re
from functools import cache

from hatchkit import reference
from hatchkit.records.words import nearest, plain, split_words

STAGES = ("infertile", "early", "mid", "late", "pipped", "removed", "none")

_BESIDE_STAGE = set("dead death died die dying embryo egg chick stage phase the in of at and with mostly mainly"
                    " day week incubation most".split())
_BESIDE_NUMBER = re.compile(
    r"\b(?:about|approximately|approx\.?|ca\.?|circa|around|roughly|nearly|almost|some|say|maybe|perhaps|between|"
    r"from|eggs?|chicks?|embryos?|pcs|lost|dead|or so)(?!\w)|[~≈=?]")
_NUMBER = r"(\d+(?:[.,]\d+)?)"
_WORDS = ("no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
          "seventeen eighteen nineteen twenty").split()


@cache
def _listed(kind) -> dict[str, str]:
    table = reference.load("lesson_words")
    rows = table[table["kind"] == kind]
    return {_joined(words): means for words, means in zip(rows["words"], rows["means"], strict=True)}


@cache
def _causes() -> dict[str, str]:
    table = reference.load("simulate_causes")
    own = {_joined(text): row.cause for row in table.itertuples(index=False) for text in (row.cause, row.name)}
    return _listed("cause") | own


def _joined(text) -> str:
    """Letters run together without plurals: "Power cuts" and "power_cut" are one word."""
    return "".join(split_words(text))


def _readings(text):
    """The text whole, without its brackets, and what stands in them."""
    yield text
    bare = re.sub(r"[(\[{].*?[)\]}]", " ", text)
    if bare != text and bare.strip():
        yield bare
        yield from re.findall(r"[(\[{](.*?)[)\]}]", text)


def stage_meant(text):
    """(stage or "", remark) of what stands under stage.

    Parameters
    ----------
    text : str

    Returns
    -------
    (str, str)
        One of `STAGES` and why it is not as written; "" with the reason if it is not understood; two
        empty texts where nothing is written.
    """
    if not text.strip():
        return "", ""
    known = _listed("stage")
    for reading in _readings(text):
        if _joined(reading) in known:
            return known[_joined(reading)], ""
        words = [word for word in split_words(reading) if word not in _BESIDE_STAGE and not word.isdigit()]
        if words and (meant := known.get("".join(words))):
            return meant, ""
        found = list(dict.fromkeys(known[word] for word in words if word in known))
        if len(found) > 1:
            return "", f"under stage, '{text}' names more than one ({', '.join(found)}); name one"
        if len(words) == 1 and not found and (near := nearest(words[0], known)):
            return known[near], f"under stage, '{text}' is read as {known[near]}"
    return "", f"under stage, '{text}' is not understood (known: {', '.join(STAGES)})"


def cause_meant(text):
    """(cause or "", remark) of what stands under cause; see `stage_meant`."""
    if not text.strip():
        return "", ""
    known = _causes()
    for reading in _readings(text):
        if _joined(reading) in known:
            return known[_joined(reading)], ""
        sorted_words = {tuple(sorted(key.split("_"))): key for key in known.values()}
        words = tuple(sorted(word for word in split_words(reading) if word not in ("the", "a", "too")))
        if words in sorted_words:
            return sorted_words[words], ""
    denied = {"no", "not", "never", "without", "or", "and"} & set(split_words(text))
    if not denied and (near := nearest(_joined(text), known)):
        return known[near], f"under cause, '{text}' is read as {known[near]}"
    return "", f"under cause, '{text}' is none of the words of the list"


def number_meant(text):
    """(number, low, high, understood) of a number of eggs as people write it.

    "about 8", "8 eggs" and "eight" are 8; "10-20" and "8 ± 3" are intervals with their middle;
    "8 (5-11)" is both. Parts that are not there are None.
    """
    text = plain(text).replace("–", "-").replace("—", "-").replace("−", "-").replace("+/-", "±")
    if not text:
        return None, None, None, True
    inside = re.findall(r"[(\[](.*?)[)\]]", text)
    bare = re.sub(r"[(\[].*?[)\]]", " ", text)
    value, low, high = _plain_number(bare)
    if value is not None and low is None and inside:
        _, low, high = _plain_number(inside[0])
    return value, low, high, value is not None


def _plain_number(text):
    text = " ".join(_BESIDE_NUMBER.sub(" ", text).split()).rstrip(".! ")
    if text in _WORDS:
        return float(_WORDS.index(text)), None, None
    if match := re.fullmatch(r"(-?)\s*" + _NUMBER, text):
        return _float(match[2]) * (-1 if match[1] else 1), None, None
    if match := re.fullmatch(_NUMBER + r"\s*(?:/|of|out of)(?: the)?\s*\d+", text):
        return _float(match[1]), None, None
    if match := re.fullmatch(_NUMBER + r"\s*(?:-|to|and|\.\.+|…)\s*" + _NUMBER, text):
        low, high = sorted(map(_float, match.groups()))
        return (low + high) / 2, low, high
    if match := re.fullmatch(_NUMBER + r"\s*±\s*" + _NUMBER, text):
        value, side = map(_float, match.groups())
        return value, value - side, value + side
    return None, None, None


def _float(text):
    return float(text.replace(",", "."))
