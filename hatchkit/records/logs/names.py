"""What does a heading say? Quantity, statistic, unit, and the name itself (words: ``reference/sensor_words.csv``)."""

from __future__ import annotations

import re
import unicodedata
from functools import cache, lru_cache

from hatchkit import reference

#: Where a heading holds words of two kinds, the first of these wins ("set temp" is no reading).
_ORDER = (
    "other",
    "outdoor",
    "wet_bulb",
    "dew_point",
    "rh",
    "temp",
    "stamp",
    "date",
    "time",
    "half_day",
    "unit",
    "value",
    "quantity",
    "probe",
    "machine",
    "record",
    "text",
    "summary",
    "year",
    "month",
    "day",
    "hour",
    "minute",
    "second",
    "yearday",
)
MEASURES = ("temp", "rh", "wet_bulb", "dew_point")
_PARTS = ("year", "month", "day", "hour", "minute", "second")
_STATISTICS = ("mean", "minimum", "maximum", "spread")
#: Words that are part of a name more often than a quantity of their own: "Temp zone 2", "Temp error corrected".
_ONLY_ALONE = {
    "zone",
    "error",
    "err",
    "errors",
    "power",
    "speed",
    "current",
    "range",
    "press",
    "water",
    "leaf",
    "pa",
    "ma",
    "mv",
    "db",
    "turn",
    "turns",
    "quality",
    "flag",
    "flags",
    "version",
    "cost",
    "price",
    "heating",
    "heap",
    "fan",
    "output",
    "signal",
    "volt",
    "elem",
    "offset",
    "calibration",
    "counter",
    "druck",
    "tlak",
    "elapsed",
    "station",
    "gas",
    "motor",
    "door",
    "feel",
    "light",
}


@lru_cache(maxsize=10_000)
def plain(text) -> str:
    """A heading in plain small letters: no accents, marks or brackets; "Temp1_C" is "temp 1 c"."""
    text = re.sub(r"([a-zà-ÿ])([A-Z])(?=[A-Z_ \d(\[]|$|[a-z])", r"\1 \2", str(text))
    text = unicodedata.normalize("NFKD", text.replace("ß", "ss").replace("ł", "l").replace("ø", "o")).lower()
    text = "".join(c for c in text if not unicodedata.combining(c))
    text = re.sub(r"(?<=[^\W\d_])(?=\d)|(?<=\d)(?=[^\W\d_])", " ", text)
    return " ".join(re.sub(r"[\W_]+", " ", text).split())


@cache
def _words() -> dict:
    table = reference.load("sensor_words")
    return {plain(word): means for word, means in zip(table["word"], table["means"], strict=True) if plain(word)}


def _found(text: str) -> dict:
    """Role -> number of words of the longest run of words that says so."""
    known, tokens = _words(), text.split()
    runs = {" ".join(tokens[i:j]) for i in range(len(tokens)) for j in range(i + 1, min(i + 4, len(tokens)) + 1)}
    alone = {run for run in runs if run in _ONLY_ALONE and run != text}
    found = {known[run]: len(run.split()) for run in sorted(runs - alone, key=lambda r: len(r.split())) if run in known}
    return found


@cache
def spelt_words() -> frozenset:
    """The words as they are spelt, in small letters with their accents."""
    return frozenset(str(word).lower() for word in reference.load("sensor_words")["word"])


@lru_cache(maxsize=4096)
def role_of(heading: str) -> str:
    """What the words of a heading say the column is; "" if no word is known.

    A name of a statistic alone ("Max") is "mean", "minimum", "maximum" or "spread".
    """
    text = plain(heading)
    if text in _words():
        return _words()[text]
    found = _found(text)
    for role in _ORDER:
        if role in found and not (role in _PARTS and len(text.split()) > 2):
            return role
    # "T max" is a temperature, "Max" alone only a statistic.
    bare = [token for token in text.split() if _words().get(token) not in _STATISTICS]
    return _role_of_letters(str(heading).strip(), bare) or next((role for role in _STATISTICS if role in found), "")


def statistic_of(heading: str) -> str:
    """ "mean", "minimum", "maximum", "spread" or "" (a reading as such)."""
    found = _found(plain(heading))
    return next((name for name in _STATISTICS if name in found), "")


def part_of_time(heading: str) -> str:
    """ "year", "month", "day", "hour", "minute" or "second" where a heading says so by itself, else ""."""
    word = plain(heading)
    means = {"hr": "hour", "h": "hour", "min": "minute"}.get(word) or _words().get(word, "")
    return means if means in (*_PARTS, "yearday") else ""


def _role_of_letters(heading: str, tokens: list) -> str:
    if re.fullmatch(r"[\[(]?\W{0,2}[CFK][\])]?", heading) and re.search(r"\W", heading):
        return "temp"
    if re.fullmatch(r"\W*%\W*", heading) or re.fullmatch(r"h(\s?\d+)?", " ".join(tokens)):
        return "rh"
    return "temp" if re.fullmatch(r"t(\s?\d+|\s(?:in|air|box))?(\s[cf])?", " ".join(tokens)) else ""


def unit_of(heading, *, bare=False) -> str:
    """ "C", "F" or "K" where a heading or unit cell names the unit of temperature, else "".

    `bare` also takes a letter that follows a blank only ("Temp C"), which may be a probe's name.
    """
    text = str(heading).strip()
    if re.search(
        r"celsius|celcius|centigrade|(?<![a-z])(?:deg|degrees|grad|gradi|graus|°)[\s._]*c(?![a-z])|degc\b|℃",
        text,
        re.IGNORECASE,
    ):
        return "C"
    if re.search(r"fahrenheit|(?<![a-z])(?:deg|degrees|grad|°)[\s._]*f(?![a-z])|degf\b|℉", text, re.IGNORECASE):
        return "F"
    if re.search(r"kelvin", text, re.IGNORECASE):
        return "K"
    if match := re.fullmatch(r"tmp([cfk])|(?:air)?temp(?:erature)?([CFK])", text, re.IGNORECASE):
        return (match[1] or match[2]).upper()
    # A degree sign often arrives garbled, so any mark before the letter counts.
    match = (
        re.search(r"(?:[^\w\s][^\w\s]?\s?|_|(?<=[a-z]))([CFK])\s*[\])]?(?![\w])", text)
        or re.fullmatch(r"\W*([cfkCFK])\W*", text)
        or (re.search(r"_([cfk])$", text))
        or re.search(r"[(\[]\s?([cfk])\s?[)\]]", text)
    )
    if not match and bare:
        match = re.search(r"\s([CFK])$", text)
    return match[1].upper() if match else ""


_OTHER_UNIT = re.compile(
    r"(?:hpa|mbar|kpa|mmhg|inhg|m/s|km/h|mph|mm|ppm|ppb|lux|lx|w/?m.?2?|v|mv|volts?|vdc|ma|db|dbm|"
    r"ft|feet|m|g/m.?3?|wh|kwh|w|deg(?:rees)? from north|s|ms|min|h|hz)",
    re.IGNORECASE,
)


def other_unit(text, *, heading=False) -> bool:
    """Whether a unit cell, or the end of a heading, names a unit of neither temperature nor humidity."""
    text = str(text).strip()
    inner = re.search(r"[\[(]\s*([^\])]+?)\s*[\])]\s*$|,\s*([^\s,]+)$", text)
    inside = (inner[1] or inner[2]) if inner else "" if heading else text.strip("[]() ")
    return bool(_OTHER_UNIT.fullmatch(inside))


def is_share(text) -> bool:
    """Whether a unit cell, or the brackets of a heading, say per cent."""
    return "%" in str(text) or bool(
        re.fullmatch(r"[\[(]?\s*(?:percent|prozent|pct|rh|r\.?f\.?)\s*[\])]?", str(text).strip(), re.IGNORECASE)
    )


def probe_name(heading) -> str:
    """A heading without its unit: "Temp A (°C)" is the probe "Temp A"."""
    text = re.sub(
        r"[\[(][^\])]*(?:[CFK%]|celsius|fahrenheit|rh|UTC|GMT[^\])]*)\s*[\])]", "", str(heading), flags=re.IGNORECASE
    )
    text = re.sub(r"\s*[^\w\s)]\s?[CFK]\s*$|\s*%.*$", "", text)
    return " ".join(text.split()).strip(" ,;:/_-") or str(heading).strip()


@lru_cache(maxsize=10_000)
def name_rest(heading) -> tuple:
    """The words of a name that do not say the quantity: "Temp low" and "Hum low" share ("low",)."""
    known = _words()
    return tuple(
        t
        for t in plain(probe_name(heading)).split()
        if known.get(t) not in (*MEASURES, *_STATISTICS) and t not in ("relative", "point", "bulb", "t", "h")
    )
