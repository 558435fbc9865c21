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
_MEASURE = re.compile(r"([+-]?\d+(?:[.,]\d+)?)\s*([a-z%]{0,10})\.?\s*(\?*)")


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
    about = bool(ABOUT.match(text))
    text = ABOUT.sub("", text)
    if re.fullmatch(r"\d{1,3}(?:[.,]\d{3})+[.,]\d+", text):
        mark = text[-1 - len(re.search(r"\d+$", text)[0])]
        return float(text.replace("," if mark == "." else ".", "").replace(mark, ".")), ""
    if match := _MEASURE.fullmatch(text):
        factor = units.get(match[2])
        if factor is None or len(match[1]) > 9:
            return None, "bad"
        number = float(match[1].replace(",", ".")) * factor
        return number, "about" if about else "unit" if factor != 1.0 else "unsure" if match[3] else ""
    if match := re.fullmatch(
        r"(\d+(?:[.,]\d+)?)\s*(?:-|–|to|bis|a|do|til|tot)\s*(\d+(?:[.,]\d+)?)\s*([a-z]{0,10})\.?", text
    ):
        factor = units.get(match[3])
        if factor is not None and len(match[1]) < 7 and len(match[2]) < 7:
            return (float(match[1].replace(",", ".")) + float(match[2].replace(",", "."))) / 2 * factor, "range"
    return None, "bad"
