"""Air and egg temperature of the fourth world: spells sized by the dose that reaches the egg, and logs of the machines.

The egg follows the air with one lag and warms itself late. Harm of heat grows with (egg - 40 °C)^1.8 hours, harm of
cold with (33 °C - egg)^1.2 hours, each measured against the dose that kills half at that age. The constants are this
world's own (common practice, no source).
"""

from __future__ import annotations

import numpy as np
import pandas as pd
from scipy.signal import lfilter

STEP_H = 1 / 12
HALF_HEAT = ([0, 3, 7, 11, 16, 21], [60, 80, 24, 45, 50, 24])
HALF_COLD = ([0, 4, 9, 15, 18, 21], [800, 700, 500, 430, 350, 220])
LAG_H = {"chicken": 1.0, "duck": 1.4, "quail": 0.45}
STEEP, DOSE_SD = 1.6, 0.45
HARMLESS = {"heat": (0.25, -3.0, 0.8), "cold": (0.35, -3.0, 0.8)}  # a batch, mean and sd of the log dose
MOST = -1.0  # no harmless spell has a greater log dose than this


def egg_track(air, age, species):
    """Egg temperature (°C) every 5 min under `air`; `age` in days of 21."""
    warm = 1.0 / (1 + np.exp(-(age - 13) / 2.2))
    keep = np.exp(-STEP_H / LAG_H[species])
    return lfilter([1 - keep], [1, -keep], air + warm, zi=[keep * (air[0] + warm)])[0]


def lost_hours(air, age, species):
    """Hours of development that the egg loses under `air`: a straight line from none at 36.5 °C to all at 25 °C."""
    return float(np.clip((36.5 - egg_track(air, age, species)) / 11.5, 0, 1).sum() * STEP_H)


def log_dose(kind, air, age, species):
    """Natural log of the dose of `air` in units of the dose that kills half at this age."""
    egg = egg_track(air, age, species)
    over = np.maximum(egg - 40.0, 0) ** 1.8 if kind == "heat" else np.maximum(33.0 - egg, 0) ** 1.2
    half = np.interp(age, *(HALF_HEAT if kind == "heat" else HALF_COLD))
    return float(np.log(max(over.sum() * STEP_H, 1e-6) / half))


def shape_of(kind, reach, hours, base=37.6):
    """Departure of the air from `base`, every 5 min, of a spell that goes towards `reach` for `hours` and back."""
    rise, fall = (0.5, 0.7) if kind == "heat" else (2.0, 0.9)
    on = np.arange(STEP_H, hours, STEP_H)
    up = (reach - base) * (1 - np.exp(-on / rise))
    top = up[-1] if len(up) else 0.0
    return np.concatenate([up, top * np.exp(-np.arange(0, 5 * fall, STEP_H) / fall)])


def make_spell(kind, day, dose, species, draw):
    """A spell on `day` (of 21) whose log dose is `dose`: dict kind, day, dose, off (of the air every 5 min), lost_h."""
    reach = draw.uniform(41.2, 44.5) if kind == "heat" else draw.uniform(12.0, 24.0)
    for _ in range(12):
        low, high = 0.2, 30.0 if kind == "heat" else 60.0
        if log_dose(kind, 37.6 + shape_of(kind, reach, high), day, species) > dose:
            break
        reach += 0.8 if kind == "heat" else -3.0
    for _ in range(14):
        hours = 0.5 * (low + high)
        strong = log_dose(kind, 37.6 + shape_of(kind, reach, hours), day, species) > dose
        low, high = (low, hours) if strong else (hours, high)
    off = shape_of(kind, reach, hours)
    lost = lost_hours(37.6 + off, day, species) if kind == "cold" else 0.0
    return {"kind": kind, "day": float(day), "dose": float(dose), "off": off, "lost_h": lost}


def harmless_spells(species, draw):
    """The spells of one batch that do no harm: a Poisson number of each kind at any age."""
    made = []
    for kind, (rate, mean, sd) in HARMLESS.items():
        for _ in range(draw.poisson(rate)):
            dose = mean + sd * draw.standard_normal()
            while dose > MOST:
                dose = mean + sd * draw.standard_normal()
            made.append(make_spell(kind, draw.uniform(1.0, 19.5), dose, species, draw))
    return made


def batch_log(batch, machine, step_min, draw):
    """Readings of one batch: DataFrame time (local, naive), temp_c, rh_pct. Noise, daily wave, looks, spells."""
    days = batch["days"]
    hours = np.arange(0, (batch["taken_off_age"] * days / 21) * 24, step_min / 60)
    age = hours / 24 * 21 / days
    slow = np.cumsum(draw.normal(0, 0.02, len(hours)))
    slow -= pd.Series(slow).rolling(200, min_periods=1, center=True).mean().to_numpy()
    air = machine["set_c"] + batch["level_shown"] + slow + draw.normal(0, 0.07, len(hours))
    air += machine["wave"] * np.sin(2 * np.pi * (hours + 9) / 24) - 0.3 * (age > batch["transfer_age"])
    rh = np.where(age > batch["transfer_age"], batch["rh_hatch"], batch["rh_set"]) + draw.normal(0, 1.1, len(hours))
    for look in (*batch["looks"].values(), batch["transfer_age"]):
        after = (age - look) * days / 21 * 24
        open_ = (after >= 0) & (after < 1)
        air[open_] -= draw.uniform(1, 5) * np.exp(-after[open_] / 0.25)
        rh[open_] -= 8 * np.exp(-after[open_] / 0.3)
    keep = np.ones(len(hours), bool)
    for spell in batch["spells"]:
        after = hours - spell["day"] * days / 21 * 24
        end = len(spell["off"]) * STEP_H
        inside = (after >= 0) & (after < end)
        off = np.interp(after[inside], np.arange(len(spell["off"])) * STEP_H, spell["off"])
        air[inside] += off
        rh[inside] -= 2.2 * off
        if spell.get("blind"):
            keep &= ~(inside & (after < end - 4.5))
    for _ in range(draw.poisson(0.3)):
        start = draw.uniform(0, hours[-1])
        keep &= ~((hours > start) & (hours < start + draw.uniform(0.5, 3)))
    at = batch["set_at"] + pd.to_timedelta(np.round(hours[keep] * 60).astype("int64"), unit="min")
    return pd.DataFrame({"time": at, "temp_c": np.round(air[keep], 1), "rh_pct": np.round(np.clip(rh[keep], 5, 98))})
