"""When was a reading, where the log counts from its start? The start stands above, or the log is refused."""

from __future__ import annotations

import re

import numpy as np

from hatchkit.problems import HatchkitError
from hatchkit.records import times

_COUNTS = re.compile(r"elapsed|millis|\bms\b|since|uptime|verstrichen|[ée]coul[ée]|trascors|transcurrid|laufzeit|"
                     r"^(?:time|zeit|t|sec|secs|seconds|minutes?|hours?|sekunden|minuten)\W*(?:\(?(?:s|sec|ms|min|h)\)?)?$",
                     re.IGNORECASE)
_STEP = re.compile(r"(?:interval\w*|step|rate|period\w*|every|sampl\w+|logging|messrate|takt|intervall\w*|pas|passo|"
                   r"paso)"
                   r"[^\d\n]{0,30}?(\d+(?:[.,]\d+)?)\s*(ms|milli\w*|s\b|sec\w*|sek\w*|min\w*|m\b|h\b|hours?|std\w*|stunden?)|"
                   r"(?:interval\w*|intervall\w*)[^\d\n]{0,30}?(\d\d):(\d\d):(\d\d)", re.IGNORECASE)
_START = re.compile(r"start|begin|first|d[ée]but|inizio|inicio|erste|anfang|pocz|za[čc][áa]t|kezd", re.IGNORECASE)


def counts(name: str) -> bool:
    """Whether a heading says that the column counts the time since the start."""
    return bool(_COUNTS.search(name.replace("_", " ").strip()))


def unit_micros(name: str) -> int:
    """Microseconds of one step of a column that counts from the start."""
    low = name.lower().replace("_", " ")
    if re.search(r"\bms\b|milli", low):
        return 1000
    if re.search(r"\bmin", low):
        return 60_000_000
    return 3_600_000_000 if re.search(r"\bh\b|hour|stunde|std", low) else 1_000_000


def start_above(preamble) -> np.datetime64 | None:
    """The moment at which the log began, from the lines above the readings."""
    found = [(bool(_START.search(line)), one.moment) for line in preamble for one in times.find(line, True)
             if one.kind == "date" and one.hour_written and one.year_written and not one.why]
    for said in (True, False):
        moments = {moment for starts, moment in found if starts == said}
        if len(moments) == 1:
            return moments.pop()
    return None


def step_above(preamble) -> int | None:
    """Microseconds between readings, from the lines above them."""
    for line in preamble:
        if match := _STEP.search(line):
            if match[3]:
                return (int(match[3]) * 3600 + int(match[4]) * 60 + int(match[5])) * 1_000_000
            return int(float(match[1].replace(",", ".")) * unit_micros(match[2].replace("std", "h").replace("m", "min")
                                                                       if match[2] == "m" else match[2]))
    return None


def moments(raw, column: int | None, name: str, preamble) -> np.ndarray:
    """Times of the lines of a log that counts from its start.

    Raises HatchkitError where the lines above do not say when it began.
    """
    start = start_above(preamble)
    if start is None:
        raise HatchkitError(f"its times count from the start of the log ({name or 'one reading after the other'}), "
                            f"and the lines above the readings do not say when that was; write a line such as Start: "
                            "2026-03-05 18:30 at the top")
    if column is None:
        step = step_above(preamble)
        return start + np.arange(len(raw)) * np.timedelta64(step, "us")
    import pandas as pd

    value = pd.to_numeric(raw[column], errors="coerce").to_numpy(dtype=float)
    local = np.full(len(raw), np.datetime64("NaT", "us"))
    good = np.isfinite(value)
    local[good] = start + np.round(value[good] * unit_micros(name)).astype(np.int64).astype("timedelta64[us]")
    return local
