"""How dates and clock times are written: the one table of forms, for sheets and logs alike.

A form that is missing is a line here and an example in ``tests/records/times/test_times_forms.py``.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import cache, lru_cache

from hatchkit.records.times.words import either, fold, halves, months, weekdays, zones

#: Years in which eggs were set and machines logged; any other is a slip.
FIRST_YEAR, LAST_YEAR = 1900, 2100


@dataclass(frozen=True)
class Stamp:
    """What one text says by itself, before the order of day and month is known.

    Attributes
    ----------
    numbers : tuple of int
        Three numbers of the date; in the order of `layout`.
    layout : str
        "ymd" (sure), "abY" (open order, year of four figures), "abc" (open order, all of two figures),
        "md" (no year), "ab" (no year, open order), "my" (no day), "" (no date).
    seconds : float or None
        Of the day; None where no clock time is written.
    offset : float or None
        Seconds east of UTC, where the text says so.
    weekdays : frozenset of int
        The days of the week that the word beside the date can mean; empty without one.
    half, dots : bool
        The clock has am or pm; the numbers are parted by dots.
    wrong : str
        "" or why it can't be: "hour"; and what is odd of a time all the same: "serial".
    """

    numbers: tuple = (0, 0, 0)
    layout: str = ""
    seconds: float | None = None
    offset: float | None = None
    weekdays: frozenset = frozenset()
    half: bool = False
    dots: bool = False
    wrong: str = ""


@cache
def date_forms() -> tuple:
    """(name, layout, pattern) of every form of a date; each pattern stands on folded text."""
    month, of = rf"(?P<name>{either('months')})", rf"(?:\s*(?:{either('of')})\s+|[\s\-/.,_]*)"
    nth = r"(?:st|nd|rd|th|er|re|e|\.?[ºª°oa]|\.)?"
    year4, year = r"(?P<y>\d{4})", r"(?P<y>\d{4}(?!\d)|'?\d{2}(?!\s?[:.h]\d|\d|\s*(?:am|pm)\b))"
    far = r"(?!\d)"
    no_hour = r"(?!(?<=\s\d\d)\s?[:h]\d\d)"  # 11.09. 22:05 has no year
    table = (
        ("year first", "ymd", rf"{year4}(?P<s>\s?[-/.:]\s?|\s)(?P<m>\d{{1,2}})(?P=s)(?P<d>\d{{1,2}}){far}\.?"),
        ("year first", "ymd", rf"{year4}[年년]\s?(?P<m>\d{{1,2}})[月월]\s?(?P<d>\d{{1,2}})[日일]?"),
        ("numbers", "abY", rf"(?P<a>\d{{1,2}})\s?(?P<s>[-/. ])\s?(?P<b>\d{{1,2}})\s?(?P=s)\s?{year4}{far}\.?"),
        (
            "numbers",
            "abc",
            rf"(?P<a>\d{{1,2}})\s?(?P<s>[-/. ])\s?(?P<b>\d{{1,2}})\s?(?P=s)\s?"
            rf"(?P<y>'?\d{{2}}){far}{no_hour}\.?",
        ),
        ("compact", "ymd", r"(?P<y>(?:19|20)\d{2})(?P<m>[01]\d)(?P<d>[0-3]\d)(?!\d(?!\d{3}))"),
        ("month name", "ymd", rf"(?P<d>\d{{1,2}}){nth}{of}{month}{of}{year}\.?"),
        ("month name", "ymd", rf"{month}[\s\-/.]*(?P<d>\d{{1,2}}){nth}[,\s\-/.]+{year}"),
        ("month name", "ymd", rf"{year4}[.,\s\-/_]*{month}[.\s\-/_]*(?P<d>\d{{1,2}}){far}\.?"),
        ("month name", "md", rf"(?P<d>\d{{1,2}}){nth}{of}{month}(?![^\W\d_])\.?"),
        ("month name", "md", rf"{month}[\s\-/.]*(?P<d>\d{{1,2}}){far}{nth}(?!\s?[:h]\d)"),
        ("numbers", "ab", rf"(?P<a>\d{{1,2}})\s?[-/.]\s?(?P<b>\d{{1,2}}){far}(?!\s?:)\.?"),
        ("month only", "my", rf"{month}{of}{year4}{far}"),
    )
    return tuple((name, layout, re.compile(pattern)) for name, layout, pattern in table)


@cache
def _clock_forms() -> tuple:
    """(whether it is a clock time by itself, pattern) of every form of a time of day."""
    half, hour = either("halves"), either("hour")
    before, after = rf"(?:(?P<before>{half})\s*)?", rf"(?:\s*(?:{hour})\b\.?)?(?:\s*(?P<after>{half})(?!\w)\.?)?"
    table = (
        (True, rf"{before}(?P<h>\d{{1,2}}):(?P<m>\d{{1,2}})(?::(?P<s>\d{{1,2}})(?:[.,:](?P<f>\d{{1,9}}))?)?{after}"),
        (True, rf"{before}(?P<h>\d{{1,2}})\.(?P<m>\d{{2}})\.(?P<s>\d{{2}})(?:[.,](?P<f>\d{{1,9}}))?{after}"),
        (True, rf"(?P<h>\d{{1,2}})\s?h\s?(?P<m>\d{{2}})(?:\s?m(?:in)?\s?(?:(?P<s>\d{{2}})\s?s)?)?{after}"),
        (True, rf"(?P<h>\d{{1,2}})\s?(?:{hour})\.?\s?(?P<m>\d{{2}}){after}"),
        (True, rf"{before}(?P<h>\d{{1,2}})\s*(?:{hour})(?!\w)\.?(?:\s*(?P<after>{half})(?!\w)\.?)?"),
        (True, rf"(?P<h>\d{{1,2}})\s*(?P<after>(?![ap](?!\.?\s?\w))(?:{half}))(?!\w)\.?"),
        (True, rf"(?P<before>(?=[^a-z0-9])(?:{half}))\s*(?P<h>\d{{1,2}})"),
        (False, rf"{before}(?P<h>\d{{1,2}})[.,](?P<m>\d{{2}}){after}"),
        (False, r"(?P<h>\d{1,2})-(?P<m>\d{2})(?:-(?P<s>\d{2}))?"),
        (False, r"(?P<h>\d{2})(?P<m>\d{2})(?P<s>\d{2})?(?:[.,](?P<f>\d{1,9}))?"),
        (False, r"(?P<h>\d{1,2})"),
    )
    noon = (True, re.compile(rf"(?P<noon>{either('noon')})"))
    return (noon, *((alone, re.compile(pattern)) for alone, pattern in table))


@cache
def _pieces() -> dict:
    zone = (
        rf"(?:\s*(?P<zone>(?:utc|gmt|z)?\s?[+-]\s?\d{{1,2}}(?::?\d{{2}})?|(?:{either('zones')})(?!\w)))?"
        r"(?:\s*\[[\w/]+\]|\s*\(\w+\))?"
    )
    weekday = rf"(?:(?P<w>{either('weekdays')})(?![^\W\d_])[.,]*\s*)"
    joint = rf"(?:\s*t\s*(?=\d)|[\s,;_|]+|[-:/](?=\d\d))(?:-\s+)?(?:(?:{either('at')})\b\.?\s+)?"
    turn = rf"(?:[\s,;_|]+)(?:(?:{either('on')})\b\.?\s+)?"
    return {
        name: re.compile(pattern)
        for name, pattern in {
            "zone": zone,
            "weekday": weekday,
            "joint": joint,
            "turn": turn,
            "on": rf"(?:(?:{either('on')})\b\.?\s+)",
            "at": rf"(?:(?:{either('at')})\b\.?\s*)",
            # "Mon Mar  3 07:30:00 2025", as boards and servers print it.
            "year last": rf"((?:\w+,?\s+)?(?:{either('months')})\s+\d{{1,2}})"
            rf"\s+(\d{{1,2}}:\d\d(?::\d\d)?(?:\s+[a-z]+)?)\s+(\d{{4}})",
            "tail": rf"[\s,]*\(?(?P<w>{either('weekdays')})?\)?\.?",
            "epoch": r"\d{9,10}(?:\.\d+)?|\d{12,13}(?:\.\d+)?|\d{15,16}|\d{18,19}",
        }.items()
    }


@lru_cache(maxsize=65_536)
def stamp_of(text: str) -> Stamp | None:
    """What a whole text says as a date, a clock time or both; None if it is neither."""
    text = fold(text).strip(" \t\"'")
    if text[-4:].isdigit() and (turned := _pieces()["year last"].fullmatch(text)):
        text = f"{turned[1]} {turned[3]} {turned[2]}"
    if not text or len(text) > 80 or not (text[-1:].isdigit() or any(c.isdigit() for c in text) or text.isalpha()):
        return None
    return _date_then_clock(text) or _clock_then_date(text) or _clock_alone(text)


def _date_then_clock(text: str) -> Stamp | None:
    for start, days in _openings(text):
        for name, layout, pattern in date_forms():
            match = pattern.match(text, start)
            if not match or not _possible(match, layout):
                continue
            rest = text[match.end() :]
            more = _pieces()["tail"].match(rest)
            if more and more["w"] and not rest[more.end() :].strip():
                days, rest = days or weekdays()[more["w"]], ""
            clock = _clock_after(rest, compact=name == "compact") if rest.strip(" .,") else ()
            if clock is None:
                continue
            return _made(match, layout, days, clock)
    return None


def _possible(match, layout: str) -> bool:
    """Whether two open numbers can be a day and a month at all: not 18.00.00, not 37.5."""
    if layout not in ("abY", "abc", "ab"):
        return True
    a, b = int(match["a"]), int(match["b"])
    year_first = layout == "abc" and 1 <= b <= 12
    return year_first or (1 <= min(a, b) <= 12 and max(a, b) <= 31 + 68 * (layout != "ab"))


def _openings(text: str):
    """Where a date may begin: at once, and behind "am", "den", "Mon," and such."""
    yield 0, frozenset()
    start, days = 0, frozenset()
    for kind in ("on", "weekday", "on"):
        match = _pieces()[kind].match(text, start)
        if match:
            days = weekdays()[match["w"]] if kind == "weekday" else days
            start = match.end()
            yield start, days


def _clock_after(rest: str, *, compact: bool):
    """(seconds, offset, half, wrong) of a clock time that follows a date; None where the rest is none."""
    joint = _pieces()["joint"].match(rest)
    if not joint and not (compact and rest[:1].isdigit()):
        return None
    return _clock_of(rest[joint.end() if joint else 0 :], alone=False)


def _clock_of(text: str, *, alone: bool):
    """As `_clock_after`, for a text that should be a clock time and perhaps a zone."""
    text = text.strip()
    for plain, pattern in _clock_forms():
        if alone and not plain:
            continue
        match = pattern.match(text)
        if not match:
            continue
        zone = _pieces()["zone"].fullmatch(text, match.end())
        if zone is None:
            continue
        seconds, half = _seconds(match)
        return seconds, zone_seconds(zone["zone"]), half, "" if seconds is not None else "hour"
    return None


def _seconds(match) -> tuple[float | None, bool]:
    got = match.groupdict()
    if got.get("noon"):
        return 43_200.0, False
    hour, minute = int(got["h"]), int(got.get("m") or 0)
    second = int(got.get("s") or 0) + float("0." + (got.get("f") or "0"))
    half = halves().get(re.sub(r"\s+", " ", got.get("before") or got.get("after") or ""))
    if half and hour <= 12:
        # A clock of 24 hours with "pm" beside it is left as it stands; 0 pm is no time.
        if hour == 0 and half == "pm":
            return None, True
        hour = hour % 12 + 12 * (half == "pm")
    elif half == "am":
        return None, True
    if hour > 24 or minute > 59 or second >= 61 or (hour == 24 and (minute or second)):
        return None, bool(half)
    return hour * 3600 + minute * 60 + second, bool(half)


def zone_seconds(text: str | None) -> float | None:
    """Seconds east of UTC in "z", "+02:00", "utc+2", "gmt-0530", "cest" (any case); None if not said."""
    if not text or not text.strip():
        return None
    text = fold(text).strip()
    if text in zones():
        return zones()[text]
    match = re.search(r"([+-])\s*(\d{1,2}):?(\d{2})?", text)
    if not match:
        return 0.0
    return (-1 if match[1] == "-" else 1) * (int(match[2]) * 3600 + int(match[3] or 0) * 60.0)


def _clock_then_date(text: str) -> Stamp | None:
    for alone, pattern in _clock_forms():
        match = pattern.match(text) if alone else None
        if not match:
            continue
        zone = _pieces()["zone"].match(text, match.end())
        turn = _pieces()["turn"].match(text, zone.end())
        if not turn:
            continue
        date = _date_then_clock(text[turn.end() :])
        if date is None or date.seconds is not None:
            continue
        seconds, half = _seconds(match)
        wrong = "" if seconds is not None else "hour"
        return replace(date, seconds=seconds, offset=zone_seconds(zone["zone"]), half=half, wrong=wrong)
    return None


def _clock_alone(text: str, known: bool = False) -> Stamp | None:
    at = _pieces()["at"].match(text)
    clock = _clock_of(text[at.end() :] if at else text, alone=not (at or known))
    if clock is None:
        return None
    seconds, offset, half, wrong = clock
    return Stamp(seconds=seconds, offset=offset, half=half, wrong=wrong)


@lru_cache(maxsize=16_384)
def clock_of(text: str) -> Stamp | None:
    """A cell of a column that is known to hold times of day: also "7.30", "0730", "18"."""
    text = fold(text).strip(" \t\"'")
    stamp = _clock_alone(text, known=True) or stamp_of(text)
    return stamp if stamp and (stamp.seconds is not None or stamp.wrong) else None


def _made(match, layout, days, clock) -> Stamp:
    got = match.groupdict()
    year = int(got["y"].lstrip("'")) if got.get("y") else 0
    month = months()[got["name"]] if got.get("name") else int(got.get("m") or 0)
    if layout in ("abY", "abc", "ab"):
        numbers = (int(got["a"]), int(got["b"]), year)
    else:
        numbers = (year, month, int(got.get("d") or 0))
    if got.get("y") and layout == "ymd" and len(got["y"]) < 4:
        layout = "Ymd"
    seconds, offset, half, wrong = clock or (None, None, False, "")
    dots = bool(re.match(r"\d+\s?\.\s?\d+\s?\.", match[0])) and layout in ("abY", "abc", "ab")
    return Stamp(numbers, layout, seconds, offset, days, half, dots, wrong)


def is_epoch(text: str) -> bool:
    """Whether a text is Unix seconds, milli-, micro- or nanoseconds of the years 1990 to 2100."""
    if not _pieces()["epoch"].fullmatch(text):
        return False
    value = float(text)
    return 6.3e8 < value * epoch_micros(value) / 1e6 < 4.1e9


def epoch_micros(value: float) -> float:
    """Microseconds of one step of a count since 1970, by its size: seconds, milli-, micro- or nanoseconds."""
    return 1e6 if value < 1e11 else 1e3 if value < 1e14 else 1.0 if value < 1e17 else 1e-3
