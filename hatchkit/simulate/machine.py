"""What the air in the incubator does: set points, openings, noise, and the faults put in."""

from dataclasses import dataclass

import numpy as np
import pandas as pd
from scipy.signal import lfilter

ROOM_RH = 48.0


@dataclass(frozen=True)
class Fault:
    """One thing that goes wrong with the machine.

    kind : power_cut, drift, lid_ajar, overheating, humidity or control
    start, end : Timestamp (UTC)
    size : degC (drift: with its sign; lid_ajar: fall; overheating: peak above set point;
           control: air minus set point), or %RH for humidity (with its sign)
    room_c : room temperature during it
    """

    kind: str
    start: pd.Timestamp
    end: pd.Timestamp
    size: float = 0.0
    room_c: float = 18.0


@dataclass(frozen=True)
class Run:
    """One batch in the machine as far as the air is concerned; times UTC, opened = [(time, depth)]."""

    set_at: pd.Timestamp
    transfer_at: pd.Timestamp
    end: pd.Timestamp
    setter_c: float
    hatcher_c: float
    setter_rh: float
    hatcher_rh: float
    opened: tuple = ()


def _noise(rng, count, step_hours, sd, memory_hours):
    """Slow wandering (first-order autoregression) of given SD."""
    keep = float(np.exp(-step_hours / memory_hours))
    shocks = rng.normal(0, sd * np.sqrt(1 - keep**2), count)
    return lfilter([1], [1, -keep], shocks, zi=[keep * rng.normal(0, sd)])[0]


def _hours(time, moment):
    return (time - moment) / pd.Timedelta(hours=1)


def _ramp(hours, length, rise):
    """0 before, up over `rise` hours, 1, and down again at the end."""
    return np.clip(np.minimum(hours / rise, (length - hours) / rise), 0, 1)


def trace(rng, run: Run, *, step_minutes, faults=(), p, wander_c=0.07) -> pd.DataFrame:
    """True air of one run from 12 h before setting to its end.

    Returns
    -------
    DataFrame
        time (UTC), air_c, rh_pct; evenly spaced, on whole steps of the clock.
    """
    step = pd.Timedelta(minutes=step_minutes)
    start = (run.set_at - pd.Timedelta(hours=12)).ceil(step)
    time = pd.date_range(start, run.end.floor(step), freq=step)
    hours_set = np.asarray(_hours(time, run.set_at))
    step_hours = step_minutes / 60
    hatching = np.asarray(time >= run.transfer_at)

    aim = np.where(hatching, run.hatcher_c, run.setter_c)
    air = aim + _noise(rng, len(time), step_hours, wander_c, 1.5)
    air += 0.05 * np.sin(2 * np.pi * (np.asarray(time.hour + time.minute / 60) - 9) / 24)
    air -= np.where(hours_set >= 0, 3.2 * np.exp(-hours_set.clip(0) / 2.0), 0)  # the eggs go in cool
    level = np.where(hatching, run.hatcher_rh, run.setter_rh)
    refill = rng.uniform(40, 70)
    rh = level + 3 - 6 * ((hours_set / refill) % 1) + _noise(rng, len(time), step_hours, 1.2, 3.0)

    for moment, depth in run.opened:
        since = np.asarray(_hours(time, moment))
        gone = np.where(since >= 0, np.exp(-since.clip(0) / 0.35), 0)
        air -= depth * gone
        rh -= np.minimum(2.5 * depth, 18) * gone
    for fault in faults:
        air, rh = _with_fault(rng, time, air, rh, fault, p)
    return pd.DataFrame({"time": time, "air_c": air, "rh_pct": np.clip(rh, 12, 97)})


def _with_fault(rng, time, air, rh, fault: Fault, p):
    since = np.asarray(_hours(time, fault.start))
    length = float(_hours(fault.end, fault.start))
    during = (since >= 0) & (since < length)
    after = since >= length
    if not during.any() and not after.any():
        return air, rh
    if fault.kind == "power_cut":
        cooled = 1 - np.exp(-since.clip(0) / p["box_lag_hours"])
        left = (1 - np.exp(-length / p["box_lag_hours"])) * np.exp(-(since - length).clip(0) / 0.9)
        share = np.where(during, cooled, np.where(after, left, 0))
        air = air + share * (fault.room_c - air)
        rh = rh + np.where(during, 0.35 * share * (80 - rh), 0.35 * share * (40 - rh))
    elif fault.kind == "drift":
        air = air + fault.size * _ramp(since, length, min(3.0, length / 3))
    elif fault.kind == "control":
        air = air + np.where(during, fault.size, 0)
    elif fault.kind == "lid_ajar":
        share = np.where(
            during, 1 - np.exp(-since.clip(0) / 0.7), np.where(after, np.exp(-(since - length).clip(0) / 0.6), 0)
        )
        air = air - share * (fault.size + rng.normal(0, 0.5, len(time)))
        rh = rh + share * 0.6 * (ROOM_RH - 10 - rh)
    elif fault.kind == "overheating":
        share = np.where(
            during, 1 - np.exp(-since.clip(0) / 0.5), np.where(after, np.exp(-(since - length).clip(0) / 0.7), 0)
        )
        air = air + fault.size * share
        rh = rh - 12 * share
    elif fault.kind == "humidity":
        rh = rh + np.where(during, fault.size, 0)
    else:
        raise ValueError(f"no such fault: {fault.kind}")
    return air, rh


def logged(rng, air: pd.DataFrame, *, offset_c=0.0, noise_c=0.04) -> pd.DataFrame:
    """What a logger writes of the true air: offset, a little noise, 0.1 degC and 1 %RH."""
    temp = air["air_c"] + offset_c + rng.normal(0, noise_c, len(air))
    return pd.DataFrame(
        {
            "time": air["time"],
            "temp_c": temp.round(1),
            "rh_pct": (air["rh_pct"] + rng.normal(0, 0.4, len(air))).round(0),
        }
    )
