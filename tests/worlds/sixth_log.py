"""Loggers of the sixth world: half-hourly readings of each machine, where and as far as its keeper logged."""

from __future__ import annotations

import csv
from datetime import timedelta

import numpy as np

from .sixth_keeper import hens_days

STEP_H = 0.5
AFTER_H = 24.0  # the logger runs on until about a day after full term
HATCH_COOLER = 0.4  # degC lower after transfer, as the charts advise


def write_logs(rng, folder, book, airs):
    """Write one file a machine; returns the machines that have one."""
    habits, files = book["keeper"], {}
    for batch, air in zip(book["batches"], airs, strict=True):
        if batch["cover"].any():
            files.setdefault(batch["machine"], []).extend(readings(rng, habits, batch, air))
    for machine, rows in files.items():
        (folder / "sensors").mkdir(exist_ok=True)
        _file(folder / "sensors" / f"{machine}_2025.csv", habits, rows)
    return set(files)


def readings(rng, habits, batch, air):
    """Rows (time, temperatures of the probes, humidity) of a batch on the days that its log covers."""
    hours = np.arange(0.0, 24 * batch["term"] + AFTER_H, STEP_H)
    day = np.minimum(hens_days(batch, hours / 24), 20.99)
    late = hours >= 24 * batch["transfer"]
    gauges = air["gauges"]
    temp = habits["set_c"] + gauges["temp"] + _waves(rng, len(hours), 0.09) - HATCH_COOLER * late
    humid = np.where(late, gauges["rh_hatch"], gauges["rh"]) + _waves(rng, len(hours), 1.6)
    for start, kind, length, off in air["spells"]:
        since = hours - start * batch["term"] / 21 * 24
        temp += (1 if kind == "heat" else -1) * off * _shape(since, length)
    for _, looked in batch["looks"]:
        temp -= 1.3 * (np.abs(hours - 24 * looked) < STEP_H)
    across = rng.choice([-1, 1]) * gauges["uneven"]
    rows = []
    for place in np.flatnonzero(batch["cover"][day.astype(int)]):
        at = batch["set_at"] + timedelta(hours=float(hours[place]))
        probes = [temp[place]]
        if habits["two_probes"]:
            probes = [temp[place] - across / 2, temp[place] + across / 2]
        rows.append((at, probes, float(np.clip(humid[place], 10, 99))))
    return rows


def _shape(since, length):
    """Rise, stay and return of a spell, 0 to 1; the return takes a third of its length."""
    rise = np.clip(since / max(0.2 * length, STEP_H), 0, 1)
    back = np.clip(1 - (since - length) / max(0.33 * length, STEP_H), 0, 1)
    return rise * back


def _waves(rng, size, spread):
    """Slow wandering with a middle of 0: autoregression of an hour or two, and the noise of the probe."""
    steps, out = rng.normal(0, spread * 0.6, size), np.empty(size)
    level = 0.0
    for place, step in enumerate(steps):
        level = 0.8 * level + step
        out[place] = level
    return out - out.mean() + rng.normal(0, spread * 0.6, size)


def _file(path, habits, rows):
    """Commas and points in English, semicolons and decimal commas elsewhere."""
    english = habits["language"] == "en"
    names = ["T front (°C)", "T back (°C)"] if habits["two_probes"] else ["temperature (°C)"]
    names += ["humidity (%RH)"] if habits["log"] == "both" else []
    pattern = "%Y-%m-%d %H:%M:%S" if english else "%d.%m.%Y %H:%M"
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, delimiter="," if english else ";")
        writer.writerow(["time", *names])
        for at, probes, humid in sorted(rows, key=_time):
            cells = [f"{value:.1f}" for value in probes] + ([f"{humid:.0f}"] if habits["log"] == "both" else [])
            writer.writerow([at.strftime(pattern), *(cell if english else cell.replace(".", ",") for cell in cells)])


def _time(row):
    return row[0]
