"""When was a reading, where the log counts from its start? The start stands above, or the log is refused."""

from __future__ import annotations

import re

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError
from hatchkit.records import times

_COUNTS = re.compile(
    r"elapsed|millis|\bms\b|since|uptime|verstrichen|[ée]coul[ée]|trascors|transcurrid|laufzeit|"
    r"^(?:time|zeit|t|sec|secs|seconds|minutes?|hours?|sekunden|minuten)\W*(?:[(\[]?(?:s|secs?|ms|min|mins|h|hrs?|seconds|minutes|hours)[)\]]?)?$",
    re.IGNORECASE,
)
_STEP = re.compile(
    r"(?:interval\w*|step|rate|period\w*|every|sampl\w+|logging|messrate|takt|intervall\w*|pas|passo|"
    r"paso)"
    r"[^\d\n]{0,30}?(\d+(?:[.,]\d+)?)\s*(ms|milli\w*|s\b|sec\w*|sek\w*|min\w*|m\b|h\b|hours?|std\w*|stunden?)|"
    r"(?:interval\w*|intervall\w*)[^\d\n]{0,30}?(\d\d):(\d\d):(\d\d)",
    re.IGNORECASE,
)
_START = re.compile(r"start|begin|first|d[ée]but|inizio|inicio|erste|anfang|pocz|za[čc][áa]t|kezd", re.IGNORECASE)


def counts(name: str) -> bool:
    """Whether a heading says that the column counts the time since the start."""
    return bool(_COUNTS.search(name.replace("_", " ").strip()))


_UNITS = (
    (1000, r"\bms\b|milli"),
    (60_000_000, r"\bmin"),
    (
        3_600_000_000,
        r"\bh\b|\bhrs?\b|hour|stunde|std|heures?\b|"
        r"\bor[ae]\b|horas?\b",
    ),
    (86_400_000_000, r"\bdays?\b|\btage?\b|jours?\b|giorni|d[ií]as?\b|\bd\b"),
    (1_000_000, r"\bs\b|\bsec|second|sek|segund|sekund"),
)


def unit_micros(name: str) -> int | None:
    """Microseconds of one step of a column that counts from the start; None where its name does not say."""
    low = name.lower().replace("_", " ")
    return next((micros for micros, words in _UNITS if re.search(words, low)), None)


def is_elapsed(name: str, cells: list) -> bool:
    """Whether hours and minutes in a column are a time since the start: its heading says so, or they pass 24 hours."""
    hours = [int(match[1]) for cell in cells if (match := re.fullmatch(r"(\d{1,4}):\d\d(?::\d\d(?:\.\d+)?)?", cell))]
    said = counts(name) and not re.fullmatch(r"\W*(?:time|zeit|t)\W*", name, re.IGNORECASE)
    return bool(hours) and (said or max(hours) > 24)


def start_above(preamble) -> np.datetime64 | None:
    """The moment at which the log began, from the lines above the readings."""
    found = [
        (bool(_START.search(line)), one.moment)
        for line in preamble
        for one in times.find(line, True)
        if one.kind == "date" and one.hour_written and one.year_written and not one.why
    ]
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
            unit = unit_micros("min" if match[2].lower() == "m" else match[2])
            return int(float(match[1].replace(",", ".")) * (unit or 1_000_000))
    return None


def moments(raw, column: int | None, name: str, preamble) -> np.ndarray:
    """Times of the lines of a log that counts from its start.

    Raises HatchkitError where the lines above do not say when it began, or nothing says in which unit it counts.
    """
    start = start_above(preamble)
    if start is None:
        raise HatchkitError("refuse_no_start", dict(column=name))
    if column is None:
        step = step_above(preamble)
        return start + np.arange(len(raw)) * np.timedelta64(step, "us")
    value, unit = _counted(raw[column]), 1_000_000
    if value is None:
        value = pd.to_numeric(raw[column], errors="coerce").to_numpy(dtype=float)
        unit = unit_micros(name) or _unit_by_step(value, step_above(preamble))
        if unit is None:
            raise HatchkitError("refuse_count_unit", dict(column=name))
    local = np.full(len(raw), np.datetime64("NaT", "us"))
    good = np.isfinite(value)
    local[good] = start + np.round(value[good] * unit).astype(np.int64).astype("timedelta64[us]")
    return local


def _unit_by_step(value: np.ndarray, step: int | None) -> int | None:
    """Microseconds of the unit in which the count goes on by the interval that stands above; None without one."""
    steps = np.diff(value[np.isfinite(value)])
    if step is None or not len(steps):
        return None
    return next((micros for micros, _ in _UNITS if abs(np.median(steps) * micros - step) < 0.01 * step), None)


def _counted(column) -> np.ndarray | None:
    """Seconds of "26:40:00"; None where the column holds plain numbers."""
    codes, cells = pd.factorize(column.to_numpy(dtype=object))
    form = re.compile(r"(?:(\d+)\s*d(?:ays?)?,?\s*)?(\d+):(\d\d)(?::(\d\d(?:\.\d+)?))?")
    parts = [form.fullmatch(str(cell).strip()) for cell in cells]
    if not any(parts):
        return None
    seconds = [
        np.nan
        if part is None
        else int(part[1] or 0) * 86_400 + int(part[2]) * 3600 + int(part[3]) * 60 + float(part[4] or 0)
        for part in parts
    ]
    return np.array([*seconds, np.nan])[codes]
