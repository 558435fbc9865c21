"""Marks on readings that may be wrong. Nothing is changed or taken out: each check returns a mark per reading.

All checks take the readings of one probe, sorted by time: `time` in whole microseconds (n,), of `marks_of`, `gaps` and
`usual_step` also as datetime64[us]; `temp_c` in °C (n,), `rh_pct` in % (n,). Limits: ``reference/sensor_limits.csv``.
"""

from __future__ import annotations

from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference

_MINUTE = 60_000_000.0
_HOUR = 60 * _MINUTE


@cache
def limit(item: str) -> float:
    """One figure of reference/sensor_limits.csv."""
    table = reference.load("sensor_limits").set_index("item")["value"]
    return float(table[item])


def out_of_range(temp_c) -> np.ndarray:
    """Temperatures that no incubator or egg room has."""
    return (temp_c < limit("temp_low_c")) | (temp_c > limit("temp_high_c"))


def humidity_out_of_range(rh_pct) -> np.ndarray:
    """Relative humidities that cannot be."""
    return (rh_pct < limit("rh_low_pct")) | (rh_pct > limit("rh_high_pct"))


def spikes(time, temp_c) -> np.ndarray:
    """Single readings that leave both neighbours faster than the air of an egg box can move.

    Up: faster than the heater of a small box warms the air. Down: faster than the air cools with the
    lid open. A reading is marked only if the next one is back, so that a real change is left alone.
    """
    marks = np.zeros(len(temp_c), dtype=bool)
    step, least = np.diff(temp_c), limit("spike_least_c")
    # Few readings move at all by the least that counts; only those are looked at closely.
    rows = np.flatnonzero((step >= least) | (step <= -least)) + 1
    rows = rows[rows < len(step)]
    rows = rows[(np.abs(step[rows]) >= least) & (step[rows - 1] * step[rows] < 0)]
    before, after = step[rows - 1], -step[rows]
    jump = np.where(before > 0, np.minimum(before, after), np.maximum(before, after))
    minutes = np.minimum(time[rows] - time[rows - 1], time[rows + 1] - time[rows]) / _MINUTE
    up = np.clip(limit("rise_c_per_min") * minutes, limit("spike_least_c"), limit("spike_most_c"))
    down = np.clip(limit("fall_c_per_min") * minutes, limit("spike_least_c"), limit("spike_most_down_c"))
    marks[rows] = np.where(jump > 0, jump > up, -jump > down)
    return marks


def stuck(time, temp_c, rh_pct=None) -> np.ndarray:
    """Runs of equal values that last longer than a living probe gives.

    A run counts from 12 readings and 6 hours on (24 hours where the humidity moves meanwhile), longer for a probe that
    shows steps coarser than a tenth, and must be 5 times as long as the run in which half of the other time was
    spent, so that a coarse probe in a steady box is not called stuck.
    """
    marks = np.zeros(len(temp_c), dtype=bool)
    if not _may_be_stuck(time, temp_c):
        return marks
    equal = temp_c[1:] == temp_c[:-1]
    coarse = max(1.0, resolution(temp_c) / limit("stuck_step_c"))
    marks |= _long_runs(time, equal, coarse * limit("stuck_hours" if rh_pct is None else "stuck_alone_hours"))
    if rh_pct is not None:
        equal &= (rh_pct[1:] == rh_pct[:-1]) | (np.isnan(rh_pct[1:]) & np.isnan(rh_pct[:-1]))
        marks |= _long_runs(time, equal, coarse * limit("stuck_hours"))
    return marks


def resolution(temp_c) -> float:
    """The step in which a probe shows its temperatures, in °C: the smallest between two values that it shows."""
    shown = np.unique(np.round(temp_c[np.isfinite(temp_c)][:200_000], 3))
    if len(shown) < 2:
        # One value alone: a whole or half degree may come from a probe that shows no more.
        return 0.5 if len(shown) and shown[0] * 2 == round(shown[0] * 2) else 0.1
    steps = np.diff(shown)
    return float(max(np.percentile(steps, 10), 1e-3))


def _may_be_stuck(time: np.ndarray, temp_c: np.ndarray) -> bool:
    """Whether a run long enough can be in the log: seen from readings far apart, which is quick.

    A run that counts has at least 12 readings and lasts 6 hours, so it holds two neighbours of a
    comb whose teeth stand half that apart.
    """
    least = int(limit("stuck_readings"))
    if len(temp_c) < least:
        return False
    longest_step = np.diff(time[:: least // 2]).max() / (least // 2)
    teeth = np.arange(0, len(temp_c), least // 2)
    # The longest stretch between two teeth bounds how many readings half of six hours can be.
    if longest_step > 0:
        wide = int(limit("stuck_hours") * _HOUR / 2 / (longest_step * (least // 2))) * (least // 2)
        teeth = np.arange(0, len(temp_c), max(wide, least // 2))
    left, right = teeth[:-1], teeth[1:]
    for part in range(1, 9):
        # By chance two far readings are often equal, nine of a row only in a run.
        between = left + (right - left) * part // 8
        fits = temp_c[between] == temp_c[left]
        left, right = left[fits], right[fits]
    return bool(len(left))


def _long_runs(time: np.ndarray, equal: np.ndarray, hours: float) -> np.ndarray:
    marks = np.zeros(len(time), dtype=bool)
    starts = np.concatenate([[0], np.flatnonzero(~equal) + 1])
    ends = np.concatenate([starts[1:] - 1, [len(time) - 1]])
    length = (time[ends] - time[starts]) / _HOUR
    long = (ends - starts + 1 >= limit("stuck_readings")) & (length >= hours)
    if not long.any():
        return marks
    if len(length) >= 4:
        # A long run stands at the upper end, so leaving it out moves the middle of the time and nothing else.
        ordered = np.sort(length)
        spent = np.cumsum(ordered)
        half = ordered[np.searchsorted(spent, (spent[-1] - length[long]) / 2)]
        long[long] = length[long] >= limit("stuck_times_usual") * half
    for start, end in zip(starts[long], ends[long], strict=True):
        marks[start : end + 1] = True
    return marks


def gaps(time) -> np.ndarray:
    """Readings before which there is a hole: a step of more than 3 times the usual, and over 5 minutes."""
    time = _micros(time)
    hole = max(limit("gap_times_usual") * usual_step(time), limit("gap_least_minutes") * _MINUTE)
    # Of two readings the one step is the usual one.
    return np.diff(time, prepend=time[:1]) > hole


def usual_step(time) -> float:
    """Median step of sorted times in microseconds, from at most 10,001 steps spread over the log."""
    time = _micros(time)
    if len(time) < 2:
        return 0.0
    at = (
        np.unique(np.linspace(0, len(time) - 2, 10_001).astype(np.int64))
        if len(time) > 10_002
        else np.arange(len(time) - 1)
    )
    return float(np.median(time[at + 1] - time[at]))


def contradictions(time, temp_c, rh_pct) -> np.ndarray:
    """All readings of a stamp at which the values differ; the same reading twice is none."""
    marks = np.zeros(len(time), dtype=bool)
    again = np.flatnonzero(time[1:] == time[:-1]) + 1
    if len(again):
        rows = np.union1d(again, again - 1)
        part = pd.DataFrame({"time": time[rows], "temp": temp_c[rows], "rh": rh_pct[rows]}).drop_duplicates()
        marks[rows[part.index[part.duplicated("time", keep=False)]]] = True
    return marks


def _micros(time) -> np.ndarray:
    time = np.asarray(time)
    return time.astype("datetime64[us]", copy=False).view(np.int64) if time.dtype.kind == "M" else time


def marks_of(time, temp_c, rh_pct) -> dict[str, np.ndarray]:
    """All marks of one probe as arrays; `gap` marks the reading after a hole, the others doubt a reading."""
    time = _micros(time)
    return {
        "repeated": contradictions(time, temp_c, rh_pct),
        "out of range": out_of_range(temp_c),
        "spike": spikes(time, temp_c),
        "stuck": stuck(time, temp_c, None if np.isnan(np.fmax.reduce(rh_pct, initial=np.nan)) else rh_pct),
        "gap": gaps(time),
    }
