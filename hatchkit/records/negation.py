"""A "not" in a heading: it makes the order of the words the meaning, and a word may be another's opposite."""

from __future__ import annotations

import re
from functools import cache

from hatchkit.records.words import letters_apart, split_words, token_means

#: "no nacidos" is Spanish for not hatched, while "no hatched" is their number: the ending tells the two apart.
_SPANISH_STATE = re.compile(r"(?:[aeo]cid|[ai]d)[oa]$|fertil|^viv[oa]$|^muert[oa]$|^apt[oa]$|^viable$")
_SHORT_NOT = re.compile(r"\b(did|do|does|could|was|were|have|has|is|are)n ?['’]?t\b", re.IGNORECASE)
_NUMBER = re.compile(r"\bno\. ?", re.IGNORECASE)
_SMALL_WORDS = {"but", "yet", "still", "that", "which", "have", "has", "was", "were", "is", "are", "could", "do",
                "does", "y", "et", "e", "und", "en", "aber", "mais", "pero", "ma", "maar"}
#: What turns a word into its opposite: unhatched, infertile, unbefruchtet, onbevrucht.
_PREFIXES = ("un", "in", "im", "on", "non", "nicht", "niet", "not", "ent", "dis")


@cache
def in_order(text: str) -> tuple[str, ...]:
    """The words of a heading that carry meaning, in order, one spelling each; every "not" is "not".

    "Pipped, but didn't hatch" -> ("pipped", "did", "not", "hatch").
    """
    means = token_means()
    words = split_words(_NUMBER.sub("number ", _SHORT_NOT.sub(r"\1 not", str(text))))
    # Between two words "no" denies ("dead, no pip"); in front and at the end it counts ("no hatched", "hatch no").
    pairs = enumerate(zip(words, (*words[1:], ""), strict=False))
    read = ["not" if word == "no" and other and (_SPANISH_STATE.search(other) or place and not other.isdigit())
            else means.get(word, word) for place, (word, other) in pairs]
    return tuple(word for word in read if word and word not in _SMALL_WORDS)


def is_negated(text: str) -> bool:
    """Whether a heading holds a "not" in one of the languages of ``header_tokens.csv``."""
    return "not" in in_order(text)


def opposite(one: str, other: str) -> bool:
    """Whether two words differ by little but what turns one into the opposite of the other."""
    for word, base in ((one, other), (other, one)):
        for prefix in _PREFIXES:
            rest = word.removeprefix(prefix)
            if rest != word and not base.startswith(prefix) and letters_apart(rest, base, 2) < letters_apart(
                    word, base, 9):
                return True
    return False
