"""Dates inside a sentence or a title: "Hatch set 3 March 2025", "Brut 2025"."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

import numpy as np

from hatchkit.records.times.day_first import Order
from hatchkit.records.times.forms import date_forms, stamp_of
from hatchkit.records.times.read import read
from hatchkit.records.times.words import either, fold, months

#: Names of months that are also words of a sentence; without a year they are none here ("eggs set 3", "may 4 hatch").
_ALSO_WORDS = {"set", "sett", "mar", "may", "mai", "ago", "mag", "lis", "pro", "out", "dec", "cze", "lip", "sie"} | {
    roman for roman in months() if re.fullmatch("[ivx]+", roman)
}


@dataclass(frozen=True)
class Found:
    """One date in a text.

    Attributes
    ----------
    start, end : int
        Its place in the text.
    kind : str
        "date", "month" (March 2025) or "year" (2025).
    moment : datetime64[us]
        Of "3-5 March" the first day; NaT for a date whose year is not known.
    hour_written, year_written : bool
    why : str
        "" or why a date gave no moment, as in `Times.reasons`.
    """

    start: int
    end: int
    kind: str
    moment: np.datetime64
    hour_written: bool = False
    year_written: bool = True
    why: str = ""


@cache
def _patterns() -> list:
    head = (
        r"(?<![^\W_])(?<!\d[.,/:\-])"
        r"(?:(?P<from>\d{1,2})\.?\s?(?:-|to|bis|au|al|a|do|t/m|til|till)\s?(?=\d{1,2}\D))?"
    )
    # A clock time may follow a date.
    tail = (
        rf"(?:(?:,|\s|t|{either('at')})*\s?\d{{1,2}}\s?(?:[:.h]\s?\d{{2}}(?::\d{{2}})?|h\b|uhr)"
        r"(?:\s?[ap]\.?m\b\.?)?)?"
    )
    return [
        (layout, re.compile(head + f"(?P<date>{pattern.pattern}{tail})" + r"(?![^\W_])"))
        for _, layout, pattern in date_forms()
    ]


def find(text: str, order=None, year=None) -> list[Found]:
    """Dates and years inside a text, in the order in which they stand.

    Parameters
    ----------
    text : str
    order : Order or bool, optional
        How 03/04/2025 is meant.
    year : int, optional
        For dates without one.
    """
    folded = fold(text)
    taken = np.zeros(len(folded) + 1, dtype=bool)
    found = []
    for layout, pattern in _patterns():
        for match in pattern.finditer(folded):
            start, end = match.span()
            if taken[start:end].any() or not _is_meant(match, layout, text):
                continue
            one = _dated(match, layout, order, year)
            if one is not None:
                taken[start:end] = True
                found.append(one)
    for match in re.finditer(r"(?<![\w.,:\-])((?:19|20)\d\d)(?!\w|[.,:]\d|/\d{1,2}(?!\d))", folded):
        if not taken[slice(*match.span())].any():
            found.append(Found(*match.span(), "year", np.datetime64(match[1], "us")))
    return sorted(found, key=lambda one: one.start)


def _is_meant(match, layout: str, text: str) -> bool:
    if layout == "md":
        # "3 may have died", but "11. Mai" and "3 May".
        name, dotted = text[match.start("name") : match.end("name")], match["date"].lstrip("0123456789")[:1] == "."
        # "Hatch 1 Set: 3 March" names no September.
        label = match["name"][:3] == "set" and re.search(r"[^\W\d_]\W*$", text[: match.start()])
        return match["name"] not in _ALSO_WORDS or (name[:1].isupper() or dotted) and not label
    # 3.4 in a sentence is a number; 3.4. and 3/4 followed by nothing of their kind are dates.
    return layout != "ab" or "/" in match["date"] or match["date"].rstrip().endswith(".") or "-" in match["date"]


def _dated(match, layout, order, year) -> Found | None:
    written = match["date"].strip(" ,")
    stamp = stamp_of(written)
    if stamp is None or stamp.layout == "":
        return None
    start = match.start()
    end = match.start("date") + len(match["date"].rstrip(" ,"))
    if stamp.layout == "my":
        year, month, _ = stamp.numbers
        return Found(start, end, "month", np.datetime64(f"{year}-{month:02d}", "us"))
    times = read([written], order if isinstance(order, (Order, bool)) else None, year, swap=True)
    moment = times.moments[0]
    if match["from"] and not np.isnat(moment):
        first = moment.astype("datetime64[M]").astype("datetime64[D]") + np.timedelta64(int(match["from"]) - 1, "D")
        moment = min(moment, first.astype("datetime64[us]"))
    return Found(
        start,
        end,
        "date",
        moment,
        bool(times.hour_written[0]),
        stamp.layout not in ("ab", "md"),
        why=times.reasons.get(0, ""),
    )
