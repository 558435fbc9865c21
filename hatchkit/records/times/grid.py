"""A column taken apart (`Scan`), and the quick way to it: stamps written digit under digit, as a grid of bytes.

The one piece of odd code among the times, bought with a reason: 2,000,000 stamps such as 03.04.2024 07:30:00 take
0.6 s of processor time here and 3 s as text (``tests/benchmarks/read_readings.py``).
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

import numpy as np

from hatchkit.records.times.forms import zone_seconds

NAT = np.datetime64("NaT", "us")
_SHAPE = re.compile(
    r"(?:(?P<y>\d{4})[-/.](?P<m>\d\d)[-/.](?P<d>\d\d)|(?P<a>\d\d)[-/.](?P<b>\d\d)[-/.](?P<c>\d{4}|\d\d))"
    r"[ T](?P<H>\d\d):(?P<M>\d\d)(?::(?P<S>\d\d)(?:[.,](?P<f>\d{1,6}))?)?(?P<zone>Z|[+-]\d\d:?\d\d)?"
)


@dataclass
class Scan:
    """The cells of one column.

    Attributes
    ----------
    dates : ndarray of int, shape (k, 3)
        Distinct dates as written; their layouts (see `forms.Stamp`) beside them.
    codes : ndarray of int, shape (n,)
        Which of them each cell holds; -1 for none.
    seconds : ndarray of float, shape (n,)
        Of the day; NaN where no clock time is written.
    offset : ndarray of float, shape (n,), or None
        Seconds east of UTC; NaN where not written.
    reasons : dict
        Row -> why the cell gives no time, or what was odd ("serial").
    """

    dates: np.ndarray
    layouts: np.ndarray
    codes: np.ndarray
    seconds: np.ndarray
    offset: np.ndarray | None = None
    reasons: dict = field(default_factory=dict)
    weekdays: list = field(default_factory=list)
    half: bool = False
    dots: bool = False


def scan_grid(texts: np.ndarray) -> tuple[Scan, np.ndarray] | None:
    """The rows of one shape (seconds are NaN elsewhere), and those written otherwise; None where these are too many."""
    first = next((text for text in texts if isinstance(text, str) and text.strip()), "")
    match = _SHAPE.fullmatch(first)
    if not match:
        return None
    names = ("y", "m", "d") if match["y"] else ("a", "b", "c")
    spans = [match.span(name) for name in names]
    clock = [match.span(name) for name in ("H", "M", "S", "f") if match[name]]
    try:
        rows = texts.astype(f"S{len(first) + 1}")
    except UnicodeEncodeError:
        return None
    digits = rows.view(np.uint8).reshape(len(rows), -1)
    places = {place for span in spans + clock for place in range(*span)}
    fits = digits[:, -1] == 0
    for place, character in enumerate(first):
        fits &= (digits[:, place] - np.uint8(48)) < 10 if place in places else digits[:, place] == ord(character)
    odd = np.flatnonzero(~fits)
    if len(odd) > max(1000, len(rows) // 10):
        return None

    def number(span):
        total = np.zeros(len(rows), dtype=np.int32)
        for place in range(*span):
            total *= 10
            total += digits[:, place] - np.uint8(48)
        return total

    numbers = [number(span) for span in spans]
    key = (numbers[0] * 100 + numbers[1]) * (10_000 if spans[2][1] - spans[2][0] == 4 else 100) + numbers[2]
    del numbers
    changed = np.flatnonzero(np.diff(key, prepend=key[0] - 1))
    codes = np.repeat(np.arange(len(changed), dtype=np.int64), np.diff(changed, append=len(key)))
    dates = np.column_stack(
        [
            sum((digits[changed, p] - np.uint8(48)).astype(int) * 10 ** (stop - 1 - p) for p in range(start, stop))
            for start, stop in spans
        ]
    )
    seconds = _seconds([number(span) for span in clock], clock)
    seconds[~fits] = np.nan
    layout = "ymd" if match["y"] else "abY" if len(match["c"]) == 4 else "abc"
    zone = zone_seconds(match["zone"])
    out = Scan(
        dates,
        np.full(len(dates), layout, dtype=object),
        codes,
        seconds,
        None if zone is None else np.full(len(rows), zone),
        weekdays=[frozenset()] * len(dates),
        dots="." in first[: clock[0][0]],
    )
    return out, odd


def _seconds(numbers, clock) -> np.ndarray:
    hour, minute, *rest = numbers
    bad = (hour > 24) | (minute > 59) | ((hour == 24) & (minute > 0))
    seconds = (hour * 3600 + minute * 60).astype(float)
    if rest:
        bad |= rest[0] > 60
        seconds += rest[0]
    if len(rest) > 1:
        seconds += rest[1] / 10.0 ** (clock[3][1] - clock[3][0])
    seconds[bad] = np.nan
    return seconds
