"""Temperature and humidity logs of a machine with the flaws of real ones.

Sources
-------
Steady swings of some tenths of a degree with the room's day: common practice, no source. Offsets of cheap probes up
to a
degree, loggers on the lid reading off, gaps from empty batteries: common practice, no source. Sensor advice: S19, S26.
"""

from __future__ import annotations

import numpy as np
import pandas as pd

from .codes import Bird


def draw_logger(draw, world):
    """Flaws of one logger."""
    return {
        "minutes": int(draw.choice([30, 60] if world == "second" else [15, 20, 30])),
        "offset": float(draw.normal(0, 0.25)),  # true minus shown, told in season.toml when the keeper knows it
        "told": bool(draw.random() < 0.5),
        "lid": float(draw.choice([0.0, draw.normal(-0.5, 0.4)], p=[0.8, 0.2])),  # sits on the lid: reads off, untold
        "noise": float(draw.uniform(0.03, 0.15)),
        "swing": float(draw.uniform(0.05, 0.3)),
        "rh_noise": float(draw.uniform(0.5, 2.5)),
        "missing": bool(draw.random() < 0.12),
        "gaps": int(draw.poisson(0.8)),
        "two": bool(draw.random() < 0.35),
    }


def batch_air(bird: Bird, found, set_at, end, minutes, draw, hatch_c=None):
    """True air around the eggs of one batch.

    Parameters
    ----------
    found : surroundings: offset, rh_set, rh_hatch, hot, cold
    set_at, end : pandas Timestamps, UTC

    Returns
    -------
    DataFrame time, temp_c, rh_pct
    """
    time = pd.date_range(set_at.ceil(f"{minutes}min"), end, freq=f"{minutes}min")
    day = (time - set_at).total_seconds().to_numpy() / 86400
    hatcher = day > bird.transfer
    temp = bird.set_c + found["offset"] - np.where(hatcher, 0.4 if hatch_c is None else bird.set_c - hatch_c, 0.0)
    rh = np.where(hatcher, found["rh_hatch"], found["rh_set"])
    warm_up = (bird.set_c - 22) * np.exp(-day * 24 / draw.uniform(0.4, 1.2)) * (day < 0.5)
    temp = temp - warm_up * draw.uniform(0.1, 0.5)
    for name in ("hot", "cold"):
        if found[name]:
            temp = _spell(temp, day, found[name], bird, hot=name == "hot")
    level = np.cumsum(draw.normal(0, 0.25, len(day)))
    rh = rh + 2.0 * np.sin(2 * np.pi * day / 7 + draw.uniform(0, 6)) + level * 2 / (1 + np.abs(level).max())
    return pd.DataFrame({"time": time, "temp_c": temp, "rh_pct": rh})


def _spell(temp, day, spell, bird, hot):
    """A spell with a ramp: first-order warming towards the peak, back over an hour or two."""
    at, peak, hours = spell
    hour = (day - bird.to_bird(at)) * 24
    tau = min(0.8, hours / 4) if hot else min(2.5, hours / 3)  # a closed box cools over hours
    inside = (hour >= 0) & (hour <= hours)
    after = hour > hours
    reach = np.where(inside, 1 - np.exp(-np.maximum(hour, 0) / tau), 0.0)
    top = 1 - np.exp(-hours / tau)
    reach = np.where(after, top * np.exp(-np.maximum(hour - hours, 0) / 0.7), reach)
    return temp + (peak - temp) * reach


def shown(air, logger, draw, spread=0.0):
    """What a logger shows of true air: one frame, or two with a probe in the other corner."""
    day = (air["time"] - air["time"].iloc[0]).dt.total_seconds().to_numpy() / 86400
    swing = logger["swing"] * np.sin(2 * np.pi * day + draw.uniform(0, 6))
    frames = []
    for corner in (-0.5, 0.5) if logger["two"] else (0.0,):
        temp = air["temp_c"] + corner * spread + swing + draw.normal(0, logger["noise"], len(day))
        temp = temp - logger["offset"] + logger["lid"]
        rh = np.clip(air["rh_pct"] + draw.normal(0, logger["rh_noise"], len(day)), 5, 99)
        frames.append(pd.DataFrame({"time": air["time"], "temp_c": np.round(temp, 2), "rh_pct": np.round(rh, 1)}))
    return frames


def idle(start, end, minutes, room_c, draw):
    """Air of an empty machine between sets: off, at room temperature, or on."""
    time = pd.date_range(start, end, freq=f"{minutes}min", inclusive="neither")
    return pd.DataFrame(
        {"time": time, "temp_c": np.full(len(time), room_c) + draw.normal(0, 0.2, len(time)), "rh_pct": 45.0}
    )


def with_gaps(frame, count, draw):
    """Drop `count` stretches of 3 h to 3 days."""
    for _ in range(count):
        start = frame["time"].iloc[int(draw.integers(len(frame)))]
        lost = (frame["time"] >= start) & (frame["time"] < start + pd.Timedelta(hours=float(draw.uniform(3, 72))))
        if lost.sum() < len(frame) / 2:
            frame = frame[~lost]
    return frame


def covers(frame, start, end):
    """Whether a log shows most of a batch's time (share of hours with a reading at least 0.8)."""
    inside = frame["time"][(frame["time"] >= start) & (frame["time"] <= end)]
    hours = (end - start).total_seconds() / 3600
    return len(inside.dt.floor("h").unique()) >= 0.8 * hours
