"""Numbers as keepers say them: "2 doz", "half a dozen", "all but one"."""

from __future__ import annotations

import re
from functools import cache

from hatchkit.records.sheets.lexicon import cell_words, tokens


@cache
def _dozens() -> re.Pattern:
    words = "|".join(sorted(map(re.escape, cell_words("dozen")), key=len, reverse=True))
    return re.compile(rf"(?<![^\W_])(?:(?P<many>[^\W_]+) )?(?P<and>1[/\u2044]2 )?(?P<a>a )?(?:{words})(?![^\W_])\.?")


def dozens_counted(text: str, language: str | None) -> str:
    """A text with its dozens as eggs: "2 doz" -> "24".

    Parameters
    ----------
    text : str
        As `plain` gives it.
    language : str or None
    """
    return _dozens().sub(lambda said: _eggs(said, language), text)


def _eggs(said: re.Match, language) -> str:
    many, half = said["many"], 6 if said["and"] else 0
    if many is None:
        return "12"
    if many in cell_words("half"):
        return "6"
    found = tokens(many, language)
    number = int(many) if many.isdigit() else found[0].number if found else 1
    return str(number * 12 + half) if number else f"{many} 12"


def excepted(text: str, language: str | None) -> int:
    """The 2 of "all but 2", "all the rest except two"; 0 where a text makes no exception."""
    words = "|".join(map(re.escape, cell_words("except")))
    behind = re.search(rf"(?<![^\W_])(?:{words})(?![^\W_])(.*)", text)
    numbers = [token.number for token in tokens(behind[1], language) if token.number is not None] if behind else []
    return numbers[0] if len(numbers) == 1 else 0
