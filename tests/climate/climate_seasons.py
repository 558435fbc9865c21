"""Small invented seasons in memory for the climate tests."""

from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import problems, reference
from hatchkit.season import Season

SET_AT = pd.Timestamp("2025-03-01 10:00", tz="UTC")
TIMES = ("candle1_at", "candle2_at", "transfer_at", "taken_off_at", "first_hatch_at", "last_hatch_at")


def hour(hours):
    """Clock time of an hour after setting."""
    return SET_AT + pd.Timedelta(hours=hours)


def readings(
    temp=lambda h: np.full(len(h), 37.5),
    *,
    step_min=5.0,
    incubator="A",
    probe="1",
    rh=55.0,
    from_h=-24.0,
    to_h=23 * 24.0,
    noise=0.05,
    seed=1,
):
    """Readings at even steps; `temp` gives the air from hours since setting."""
    rng = np.random.default_rng(seed)
    hours = np.arange(from_h * 60, to_h * 60, step_min) / 60
    temp_c = temp(hours) + rng.normal(0, noise, len(hours))
    return pd.DataFrame(
        {
            "incubator": incubator,
            "probe": probe,
            "time": pd.DatetimeIndex([SET_AT + pd.Timedelta(0)] * len(hours)) + pd.to_timedelta(hours * 60, unit="min"),
            "temp_c": temp_c,
            "rh_pct": rh + rng.normal(0, 0.5, len(hours)),
            "file": "a.csv",
            "doubt": "",
            "temp_logged_c": temp_c,
        }
    )


def season(rows=None, batches=({},), *, weights=(), eggs=None, settings=None, fates=None):
    """A season from readings and batches; each batch is a dict of what differs from the standard one."""
    standard = {
        "batch": "1",
        "species": "chicken",
        "incubator": "A",
        "set_at": SET_AT,
        "eggs_set": 30,
        "stored_days": 3.0,
    }
    table = pd.DataFrame([standard | batch for batch in batches])
    for name in TIMES:
        table[name] = pd.to_datetime(table[name] if name in table else pd.NaT, utc=True)
    weighed = pd.DataFrame(list(weights), columns=["batch", "egg", "weighed_at", "grams", "eggs_weighed"])
    return Season(
        folder=Path("invented"),
        title="Invented",
        timezone="UTC",
        batches=table,
        eggs=pd.DataFrame(columns=["batch", "egg", "weight_g"]) if eggs is None else eggs,
        weights=weighed,
        looks=pd.DataFrame(columns=["batch", "look", "name", "looked_at"]),
        readings=readings() if rows is None else rows,
        fates=pd.DataFrame(columns=["batch", "egg", "eggs", "fate", "by_day"]) if fates is None else fates,
        problems=problems.table([]),
        species_table=reference.species_table(),
        settings=settings or {},
    )


def level(base=37.5):
    """Air that never changes."""
    return lambda hours: np.full(len(hours), base)


def with_events(*events, base=37.5):
    """Air at `base` with events laid over it."""

    def temp(hours):
        air = np.full(len(hours), base)
        for event in events:
            air = event(hours, air)
        return air

    return temp


def bump(start, length, size, *, rise=0.0):
    """`size` K more from `start` for `length` hours, rising and falling over `rise` hours."""

    def event(hours, air):
        ramp = np.clip(np.minimum(hours - start, start + length - hours) / max(rise, 1e-9), 0, 1)
        return air + size * np.where((hours >= start) & (hours < start + length), ramp if rise else 1.0, 0.0)

    return event


def outage(start, length, *, room=20.0, box_h=1.5, warm_up_h=0.8):
    """Heating lost: the box cools towards the room, then warms up again."""

    def event(hours, air):
        cooled = 1 - np.exp(-(hours - start).clip(0) / box_h)
        left = (1 - np.exp(-length / box_h)) * np.exp(-(hours - start - length).clip(0) / warm_up_h)
        share = np.where(hours < start, 0, np.where(hours < start + length, cooled, left))
        return air + share * (room - air)

    return event


def opening(start, minutes, *, to=26.0, out_min=4.0, back_h=0.25):
    """Lid opened: most of the warm air is out within minutes; the heater brings it back on a bend."""

    def event(hours, air):
        length = minutes / 60
        gone = 1 - np.exp(-(hours - start).clip(0) * 60 / out_min)
        left = (1 - np.exp(-minutes / out_min)) * np.exp(-(hours - start - length).clip(0) / back_h)
        share = np.where(hours < start, 0, np.where(hours < start + length, gone, left))
        return air + share * (to - air)

    return event
