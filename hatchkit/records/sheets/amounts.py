"""Numbers as keepers say them: "2 doz", "half a dozen", "all but one", "about 57 g"."""

from __future__ import annotations

import math
import re
from functools import cache

from hatchkit.records.sheets.lexicon import cell_words, tokens
from hatchkit.records.words import plain

#: Words before a number that is not exact.
ABOUT = re.compile(
    r"^(?:~|\+/-|c\.|ca\.?|about|around|approx\.?|circa|etwa|ungefahr|environ|env\.?|unos|ongeveer|okolo|cca|"
    r"ok\.?|omkring|kb\.?)\s*(?=\d)"
)
_NUMBER = r"(?:\d{1,3}(?:,\d{3})+\.\d+|\d{1,3}(?:\.\d{3})+,\d+|\d+(?:[.,]\d+)?)"
_MEASURE = re.compile(
    rf"(?P<number>[+-]?{_NUMBER})(?:\s*(?:-|–|to|bis|a|do|til|tot)\s*(?P<to>{_NUMBER}))?"
    r"\s*(?P<unit>[a-z%]{0,10})\.?\s*(?P<open>\?*)"
)
#: A measure with more digits is none.
MOST_DIGITS = 9


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


def measure_of(cell, units: dict) -> tuple[float | None, str]:
    """A number with decimals and an optional unit of `units` (name -> factor): (value, what was odd)."""
    if isinstance(cell, bool):
        return None, "bad"
    if isinstance(cell, (int, float)):
        return (float(cell), "") if math.isfinite(cell) and abs(cell) < 1e9 else (None, "bad")
    if not isinstance(cell, str):
        return None, "date"
    text = plain(cell)[:100]
    if text in cell_words("unknown"):
        return None, "unknown"
    if text in cell_words("zero"):
        return 0.0, ""
    match = _MEASURE.fullmatch(ABOUT.sub("", text))
    factor = units.get(match["unit"]) if match else None
    if factor is None or len(match["number"]) > MOST_DIGITS or len(match["to"] or "") > MOST_DIGITS:
        return None, "bad"
    number = _decimal(match["number"]) * factor
    if match["to"]:
        return (number + _decimal(match["to"]) * factor) / 2, "range"
    return number, "about" if ABOUT.match(text) else "unit" if factor != 1.0 else "unsure" if match["open"] else ""


def _decimal(text: str) -> float:
    """ "1.234,5" and "1,234.5" alike: the last mark is that of the decimals."""
    return float(re.sub(r"[.,](?=.*[.,])", "", text).replace(",", "."))
