"""How a stamp is written: the shapes of dates and clock times that logger exports use."""

from __future__ import annotations

import re
from functools import cache, lru_cache

from hatchkit import reference

_SEPARATOR = r"[-/. ]"


@cache
def words() -> dict:
    """Lower-case word -> "am", "pm" or the number of a month."""
    table = reference.load("clock_words")
    return {str(word).lower(): means for word, means in zip(table["word"], table["means"], strict=True)
            if means in ("am", "pm") or means.isdigit()}


@cache
def _patterns() -> dict:
    half = "|".join(sorted((re.escape(w) for w, m in words().items() if m in ("am", "pm")),
                           key=len, reverse=True))
    zone = r"(?P<zone>\s*(?:Z|UTC|GMT|(?:UTC|GMT)?\s*[+-]\d{1,2}(?::?\d{2})?))?"
    clock = (rf"(?:(?P<before>{half})\s*)?(?P<hour>\d{{1,2}})[:.h](?P<minute>\d{{1,2}})"
             rf"(?:[:.m](?P<second>\d{{1,2}})(?:[.,:](?P<fraction>\d{{1,9}}))?s?)?"
             rf"(?:\s*(?P<after>{half}))?{zone}")
    weekday = r"(?:[^\W\d_]{2,10}\.?,?\s+)?"
    name = r"(?P<name>[^\W\d_]{3,10})\.?"
    date = "|".join((
        rf"(?P<y1>\d{{4}})(?P<s1>{_SEPARATOR}|年)(?P<m1>\d{{1,2}})(?:(?P=s1)|月)(?P<d1>\d{{1,2}})[.日]?",
        rf"(?P<a>\d{{1,2}})(?P<s2>{_SEPARATOR})\s?(?P<b>\d{{1,2}})(?P=s2)\s?(?P<c>\d{{4}}|\d{{2}})\.?",
        r"(?P<y3>(?:19|20)\d{2})(?P<m3>\d{2})(?P<d3>\d{2})",
        rf"(?P<d4>\d{{1,2}})\.?[ -]{name}[ -](?P<y4>\d{{4}}|\d{{2}})",
        rf"{name.replace('name', 'name5')}[ -](?P<d5>\d{{1,2}}),?[ -](?P<y5>\d{{4}})",
    ))
    date = f"{weekday}(?:{date})"
    return {kind: re.compile(pattern, re.IGNORECASE) for kind, pattern in {
        "time": clock, "date": date, "both": rf"(?P<date>{date})(?:\s*T\s*|[\s,;_]+)(?P<clock>{clock})",
        "turned": rf"(?P<clock>{clock})[\s,;_]+(?P<date>{date})",
        "compact": r"(?P<date>(?:19|20)\d{6})[T ]?(?P<H>[0-2]\d)(?P<M>[0-5]\d)(?P<S>[0-5]\d)?(?P<Z>Z)?",
        "epoch": r"1\d{9}(?:\.\d+)?|1\d{12}"}.items()}


#: A plain number, which no stamp is: too short for a day, a day with a clock time, or Unix seconds.
_SHORT_NUMBER = re.compile(r"[+-]?\d{1,6}(?:[.,]\d{0,9})?")


@lru_cache(maxsize=16_384)
def kind_of(text: str) -> str:
    """What a cell is as a stamp: "both" (date and time), "date", "time", "epoch" or "" (none)."""
    text = text.strip()
    if not text or _SHORT_NUMBER.fullmatch(text) or not any(character.isdigit() for character in text):
        return ""
    for kind in ("both", "date", "epoch", "turned", "compact"):
        if _patterns()[kind].fullmatch(text):
            return "both" if kind in ("turned", "compact") else kind
    # "37.71" has the shape of a clock time with a dot; only a colon or seconds make it one.
    match = _patterns()["time"].fullmatch(text)
    if match and (":" in text or match["second"] or match["after"] or match["before"]):
        return "time"
    return ""


def split_stamp(text: str) -> tuple[str, str]:
    """Date part and clock part of one stamp; ("", "") if it is none."""
    for kind in ("both", "turned"):
        match = _patterns()[kind].fullmatch(text.strip())
        if match:
            return match["date"], match["clock"]
    match = _patterns()["compact"].fullmatch(text.strip())
    if match:
        return match["date"], f"{match['H']}:{match['M']}:{match['S'] or '00'}{match['Z'] or ''}"
    return (text.strip(), "") if _patterns()["date"].fullmatch(text.strip()) else ("", "")


def date_parts(text: str) -> tuple[int, int, int, str] | None:
    """Three numbers of a date as written and their order: "ymd" when sure, "abc" when not.

    Month names make the order sure. None if the text is no date.
    """
    match = _patterns()["date"].fullmatch(text.strip())
    if not match:
        return None
    got = match.groupdict()
    for year, month, day in (("y1", "m1", "d1"), ("y3", "m3", "d3")):
        if got[year]:
            return int(got[year]), int(got[month]), int(got[day]), "ymd"
    if got["c"]:
        return int(got["a"]), int(got["b"]), int(got["c"]), "abY" if len(got["c"]) == 4 else "abc"
    name, day, year = (got["name"], got["d4"], got["y4"]) if got["d4"] else (got["name5"], got["d5"], got["y5"])
    known = words()
    month = known.get(name.lower()) or known.get(name.lower()[:3])
    if month is None or month in ("am", "pm"):
        return None
    return full_year(int(year)), int(month), int(day), "ymd"


def full_year(year: int) -> int:
    """A year of two figures is one of this century."""
    return year + 2000 if year < 100 else year


def clock_seconds(text: str) -> tuple[float, float | None] | None:
    """Seconds since midnight, and the offset from UTC in seconds when the text carries one.

    None if the text is no clock time, or is one that no clock shows (25:10, 13:05 pm).
    """
    match = _patterns()["time"].fullmatch(text.strip())
    if not match:
        return None
    hour, minute = int(match["hour"]), int(match["minute"])
    second = int(match["second"] or 0) + float("0." + (match["fraction"] or "0"))
    half = words().get((match["before"] or match["after"] or "").lower())
    if half:
        if not 1 <= hour <= 12 and not (half == "pm" and 12 < hour < 24) and not (half == "am" and hour == 0):
            return None
        hour = hour % 12 + 12 * (half == "pm") if hour <= 12 else hour
    if hour > 24 or minute > 59 or second >= 61 or (hour == 24 and (minute or second)):
        return None
    return hour * 3600 + minute * 60 + second, offset_seconds(match["zone"])


def offset_seconds(text) -> float | None:
    """Seconds east of UTC in words such as "Z", "+02:00", "UTC+2", "GMT-0530"; None if not said."""
    if not text or not text.strip():
        return None
    match = re.search(r"([+-])\s*(\d{1,2}):?(\d{2})?", text)
    if not match:
        return 0.0
    sign = -1 if match[1] == "-" else 1
    return sign * (int(match[2]) * 3600 + int(match[3] or 0) * 60.0)
