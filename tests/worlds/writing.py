"""Write a season's folder: batch table, logs, weighings, season.toml. Nothing of the truth goes in.

Column names are those of the tables' contract; times are local, as a keeper and a clock-following logger write them.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

ZONES = {
    "en": "Europe/London",
    "de": "Europe/Berlin",
    "fr": "Europe/Paris",
    "es": "Europe/Madrid",
    "nl": "Europe/Amsterdam",
}
TIMES = ("set_at", "candle1_at", "candle2_at", "transfer_at", "first_hatch_at", "last_hatch_at", "taken_off_at")
ORDER = (
    "batch",
    "species",
    "pen",
    "incubator",
    "set_at",
    "eggs_set",
    "stored_days",
    "flock_age_weeks",
    "posted",
    "candle1_at",
    "clear1",
    "dead1",
    "opened1_infertile",
    "opened1_dead",
    "candle2_at",
    "clear2",
    "dead2",
    "transfer_at",
    "clear3",
    "dead3",
    "removed",
    "contaminated",
    "first_hatch_at",
    "last_hatch_at",
    "taken_off_at",
    "hatched",
    "culled",
    "pipped_dead",
    "dead_in_shell",
    "broken_infertile",
    "broken_early",
    "broken_mid",
    "broken_late",
    "malpositioned",
    "signs",
    "notes",
)


def local(times, zone):
    """UTC times as local wall-clock times without zone."""
    return pd.DatetimeIndex(pd.to_datetime(times, utc=True)).tz_convert(zone).tz_localize(None)


def batch_frame(rows, zone):
    """Batch rows (dicts with UTC Timestamps) as the table to write: columns without a value are left out."""
    frame = pd.DataFrame(rows).reindex(columns=[c for c in ORDER if any(r.get(c) is not None for r in rows)])
    for column in TIMES:
        if column in frame:
            frame[column] = [None if pd.isna(t) else local([t], zone)[0].floor("min") for t in frame[column]]
            frame[column] = pd.to_datetime(frame[column])
    for column in frame.columns:
        if column not in TIMES and frame[column].dtype.kind == "f" and column not in ("stored_days",):
            frame[column] = frame[column].astype("Int64")
    return frame


def write_season(folder, rows, logs, settings, weights=None, style="csv"):
    """Write one season.

    Parameters
    ----------
    folder : path, made when absent
    rows : list of dicts by column of the batch table, times UTC
    logs : dict incubator -> list of DataFrames time (UTC), temp_c, rh_pct (may be empty)
    settings : dict zone, language, altitude_m, incubators {name: {set_point_c, probe_offset_c or None}}
    weights : DataFrame batch, egg, weighed_at (UTC), grams, or None
    style : "csv" or "xlsx"
    """
    folder = Path(folder)
    (folder / "sensors").mkdir(parents=True, exist_ok=True)
    zone = settings["zone"]
    frame = batch_frame(rows, zone)
    if style == "xlsx":
        frame.to_excel(folder / "batches.xlsx", index=False)
    else:
        frame.to_csv(folder / "batches.csv", index=False, date_format="%Y-%m-%d %H:%M")
    files = {}
    for incubator, frames in logs.items():
        files[incubator] = []
        for number, log in enumerate(frames, start=1):
            name = f"{incubator}{'' if number == 1 else f'_{number}'}.csv"
            out = log.assign(time=local(log["time"], zone).strftime("%Y-%m-%d %H:%M"))
            out.to_csv(folder / "sensors" / name, index=False)
            files[incubator].append(name)
    if weights is not None and len(weights):
        out = weights.assign(weighed_at=local(weights["weighed_at"], zone).strftime("%Y-%m-%d %H:%M"))
        out.to_csv(folder / "weights.csv", index=False)
    (folder / "season.toml").write_text(_toml(settings, files), encoding="utf-8")


def _toml(settings, files):
    lines = [f'timezone = "{settings["zone"]}"', ""]
    for name, facts in settings["incubators"].items():
        lines.append(f"[incubators.{name}]")
        lines.append(f"files = [{', '.join(repr(f).replace(chr(39), chr(34)) for f in files.get(name, []))}]")
        lines.append(f"set_point_c = {facts['set_point_c']}")
        lines.append('air = "fan"')
        if facts.get("probe_offset_c") is not None:
            lines.append(f"probe_offset_c = {facts['probe_offset_c']:.2f}")
        if settings.get("altitude_m") is not None:
            lines.append(f"altitude_m = {settings['altitude_m']:.0f}")
        lines.append("")
    return "\n".join(lines)


def schedule(bird, batches, machines, draw, year=2025):
    """Setting days, hour by hour: (incubator, set_at, taken_off_at) for each batch, in order of setting.

    A machine holds one batch at a time, so that a spell in the log belongs to one batch only.
    """
    names = [chr(ord("A") + i) for i in range(machines)]
    free = {
        n: pd.Timestamp(f"{year}-02-10 06:00", tz="UTC") + pd.Timedelta(days=float(draw.uniform(0, 25))) for n in names
    }
    plan = []
    for _ in range(batches):
        name = min(free, key=free.get)
        set_at = free[name] + pd.Timedelta(hours=float(draw.uniform(0, 12)))
        off = set_at + pd.Timedelta(days=bird.days + float(draw.uniform(1.2, 3.0)))
        plan.append((name, set_at, off))
        free[name] = off.floor("D") + pd.Timedelta(days=float(draw.choice([1, 2, 3, 7, 12])), hours=6)
    return sorted(plan, key=lambda p: p[1])


def weighings(bird, rows, losses, draw, eggs=6):
    """Single-egg weighings at setting, first look and transfer.

    Parameters
    ----------
    losses : share of set weight lost by transfer, one per row
    """
    out = []
    for row, loss in zip(rows, losses, strict=True):
        start = draw.normal(bird.egg_g, bird.egg_g * 0.07, eggs)
        each = loss * draw.lognormal(0, 0.15, eggs)  # spread of shell conductance, CV 15 % (Meir, Nir & Ar 1984)
        span = (row["transfer_at"] - row["set_at"]).total_seconds()
        for column in ("set_at", "candle1_at", "transfer_at"):
            share = (row[column] - row["set_at"]).total_seconds() / span
            grams = start * (1 - each * share) + draw.normal(0, 0.002 * bird.egg_g, eggs)
            out += [
                {"batch": row["batch"], "egg": i + 1, "weighed_at": row[column], "grams": round(float(g), 1)}
                for i, g in enumerate(grams)
            ]
    return pd.DataFrame(out)


def due(bird, set_at, hours):
    """Hour at which an egg hatches: the bird's days after setting plus `hours`."""
    return set_at + pd.Timedelta(days=bird.days) + pd.to_timedelta(np.asarray(hours, float), unit="h")
