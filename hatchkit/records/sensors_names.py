"""What a header, unit or probe name of a sensor file says: quantity, unit, and the name itself.

The words come from ``reference/sensor_words.csv``.
"""

from __future__ import annotations

import re
import unicodedata
from functools import cache, lru_cache

from hatchkit import reference

#: Where a header holds words of two kinds, the first of these wins ("set temp" is no reading).
_ORDER = ("other", "wet_bulb", "dew_point", "rh", "temp", "stamp", "date", "time", "half_day", "unit",
          "value", "quantity", "probe", "machine", "record", "text", "summary")
MEASURES = ("temp", "rh", "wet_bulb", "dew_point")


def plain(text) -> str:
    """A header in plain small letters: no accents, marks or brackets; "Temp1_C" is "temp 1 c"."""
    text = re.sub(r"([a-zà-ÿ])([A-Z])(?=[A-Z_ \d(\[]|$|[a-z])", r"\1 \2", str(text))
    text = unicodedata.normalize("NFKD", text.replace("ß", "ss")).lower()
    text = "".join(c for c in text if not unicodedata.combining(c))
    text = re.sub(r"(?<=[^\W\d_])(?=\d)|(?<=\d)(?=[^\W\d_])", " ", text)
    return " ".join(re.sub(r"[\W_]+", " ", text).split())


@cache
def _words() -> dict:
    table = reference.load("sensor_words")
    return {plain(word): means for word, means in zip(table["word"], table["means"], strict=True)}


@lru_cache(maxsize=4096)
def role_of(header: str) -> str:
    """What the words of a header say the column is; "" if no word is known."""
    text = plain(header)
    known = _words()
    if text in known:
        return known[text]
    tokens = text.split()
    runs = {" ".join(tokens[i:j]) for i in range(len(tokens)) for j in range(i + 1, min(i + 4, len(tokens)) + 1)}
    found = {known[run]: len(run.split()) for run in sorted(runs, key=lambda r: len(r.split())) if run in known}
    if "stamp" in found or {"date", "time"} <= set(found):
        found["stamp"] = 9
    if found.get("summary") and "temp" in found and not {"mean", "avg", "average"} & set(tokens):
        return "other"
    for role in _ORDER:
        if role in found:
            return role
    return _role_of_letters(str(header).strip(), tokens)


def _role_of_letters(header: str, tokens: list) -> str:
    if re.fullmatch(r"[\[(]?\W{0,2}[CFK][\])]?", header) and re.search(r"\W", header):
        return "temp"
    if "%" in header or re.fullmatch(r"h(\s?\d+)?", " ".join(tokens)):
        return "rh"
    return "temp" if re.fullmatch(r"t(\s?\d+)?(\s[cf])?", " ".join(tokens)) else ""


def unit_of(header, *, bare=False) -> str:
    """"C", "F" or "K" where a header or unit cell names the unit of temperature, else "".

    `bare` also takes a letter that follows a blank only ("Temp C"), which may be a probe's name.
    """
    text = str(header).strip()
    if re.search(r"celsius|celcius|centigrade|deg\.?\s*c\b|degc\b|℃", text, re.IGNORECASE):
        return "C"
    if re.search(r"fahrenheit|deg\.?\s*f\b|degf\b|℉", text, re.IGNORECASE):
        return "F"
    if re.search(r"kelvin", text, re.IGNORECASE):
        return "K"
    # A degree sign often arrives garbled, so any mark before the letter counts.
    match = re.search(r"(?:[^\w\s][^\w\s]?\s?|_|(?<=[a-z]))([CFK])\s*[\])]?(?![\w])", text) or re.fullmatch(
        r"\W*([cfkCFK])\W*", text) or (re.search(r"_([cfk])$", text))
    if not match and bare:
        match = re.search(r"\s([CFK])$", text)
    return match[1].upper() if match else ""


def probe_name(header) -> str:
    """A header without its unit: "Temp A (°C)" is the probe "Temp A"."""
    text = re.sub(r"[\[(][^\])]*(?:[CFK%]|celsius|fahrenheit|rh|UTC|GMT[^\])]*)\s*[\])]", "", str(header),
                  flags=re.IGNORECASE)
    text = re.sub(r"\s*[^\w\s)]\s?[CFK]\s*$|\s*%.*$", "", text)
    return " ".join(text.split()).strip(" ,;:/_-") or str(header).strip()


def name_rest(header) -> tuple:
    """The words of a name that do not say the quantity: "Temp low" and "Hum low" share ("low",)."""
    known = _words()
    return tuple(t for t in plain(probe_name(header)).split() if known.get(t) not in MEASURES and t != "relative")
