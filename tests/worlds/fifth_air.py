"""Air of the machines of the fifth world: spells sized by the dose that reaches the egg, and the logs of them.

The egg follows the air with the lag of its size. Heat harms by (egg - 39.2 °C)^1.4 hours against the hours at 43.3 °C
that halve the hatch at that age (Ande & Wilson 1981: 12, 4, 7, 7 and 5 h at days 3, 7, 11, 16 and 19); cold by
(28 °C - egg) hours, older embryos sooner (after the pheasants and the 17-day embryos of the texts; constants invented).
"""

from __future__ import annotations

import numpy as np
import pandas as pd
from scipy.special import ndtri

STEP_H = 1 / 12
LAG_H = {"quail": 0.4, "chicken": 0.9, "duck": 1.1, "turkey": 1.1, "goose": 1.7}
LENGTH = {"quail": 17.5, "chicken": 21.0, "duck": 28.0, "turkey": 28.0, "goose": 30.0}
TOLERANCE = 0.55
HARMLESS, HARMLESS_SPREAD, HARMLESS_RATE = -1.7, 0.4, 0.35
READ = 0.15
SET_C = 37.6


def halves(kind, age):
    """Dose that kills half at this age (days of 21): K^1.4 h of heat, K h of cold."""
    if kind == "heat":
        return (43.3 - 39.2) ** 1.4 * (np.interp(age, [0, 3, 7, 11, 16, 19, 21], [10, 12, 4, 7, 7, 5, 5]) - 0.9)
    return np.interp(age, [0, 5, 12, 18, 21], [520, 480, 420, 340, 300])


def log_dose(kind, off, age, species):
    """Natural log of the dose of a departure of the air (K, every 5 min) in units of what kills half."""
    padded = np.append(SET_C + off, np.full(int(8 / STEP_H), SET_C))
    egg, pull = np.empty(len(padded)), STEP_H / LAG_H[species]
    warm = SET_C
    for place, air in enumerate(padded):
        warm += pull * (air - warm)
        egg[place] = warm
    dose = np.clip(egg - 39.2, 0, None) ** 1.4 if kind == "heat" else np.clip(28 - egg, 0, None)
    return float(np.log(max(dose.sum() * STEP_H, 1e-9) / halves(kind, age)))


def shape_of(kind, reach, hours):
    """Departure of the air (K, every 5 min) that goes to `reach` for about `hours`, and back."""
    time = np.arange(0, hours + 10, STEP_H)
    if kind == "heat":
        share = np.clip(time / 1.0, 0, 1) * np.clip((hours + 2.0 - time) / 1.5, 0, 1)
    else:
        share = 1 - np.exp(-time / 2.5)
        end = int(hours / STEP_H)
        share[end:] = share[min(end, len(share) - 1)] * np.exp(-(time[end:] - hours) / 1.0)
    return (reach - SET_C) * share


def make_spell(kind, day, dose, species, draw):
    """A spell on `day` (of 21) of this log dose: dict kind, day, dose, off; its length is found by halving."""
    reach = draw.uniform(41.5, 45.5) if kind == "heat" else draw.uniform(6, 17)
    low, high = 0.1, 120.0
    for _ in range(22):
        hours = (low + high) / 2
        low, high = (low, hours) if log_dose(kind, shape_of(kind, reach, hours), day, species) > dose else (hours, high)
    return {"kind": kind, "day": float(day), "dose": float(dose), "off": shape_of(kind, reach, low)}


def harmless_spells(species, draw):
    """The spells of a batch that do next to no harm."""
    out = []
    for kind in ("heat", "cold"):
        for _ in range(draw.poisson(HARMLESS_RATE)):
            dose = min(draw.normal(HARMLESS, HARMLESS_SPREAD), -0.9)
            out.append(make_spell(kind, draw.uniform(1, 20.5), dose, species, draw))
    return out


def struck_to_dose(k):
    """Log dose that strikes the share `k`."""
    return TOLERANCE * ndtri(k)


def draw_gaps(draw, habits):
    """Stretches without readings, (from, to) in days of 21; all of it where the log was lost."""
    if not habits["logs"] or draw.random() < 0.05:
        return [(0.0, 21.0)]
    if draw.random() > habits["gaps"]:
        return []
    start = draw.uniform(0, 19)
    return [(float(start), float(min(start + draw.uniform(0.4, 4), 21.0)))]


def in_gaps(day, gaps):
    """Whether each of these days falls in a gap."""
    return (
        np.any([(day >= low) & (day < high) for low, high in gaps], axis=0) if gaps else np.zeros(np.shape(day), bool)
    )


def batch_log(batch, draw, step_min):
    """Readings of one batch: DataFrame time (naive UTC), temp_c, rh_pct, and temp2_c where there are two probes."""
    length = LENGTH[batch["species"]]
    minutes = np.arange(0, (length + 1) * 1440, step_min)
    age, n = minutes / 1440 / length * 21, len(minutes)
    level = batch["air"]
    off = np.zeros(n)
    for spell in batch["all_spells"]:
        began = spell["day"] / 21 * length * 1440
        off += np.interp(minutes - began, np.arange(len(spell["off"])) * 60 * STEP_H, spell["off"], left=0, right=0)
    hour = (batch["set_at"].hour + minutes / 60) % 24
    wave = level["wave"] * np.sin(2 * np.pi * (hour - 9) / 24)
    looks = np.zeros(n)
    for at in batch["looks"].values():
        looks -= draw.uniform(1, 5) * np.exp(-np.clip(age - at, 0, None) * length / 21 * 24 / 0.5) * (age >= at)
    temp = SET_C + level["temp"] + wave + off + looks + draw.normal(0, 0.09, n)
    hatching = age > 18
    rh = np.where(hatching, level["hatch_rh"], level["rh"]) + draw.normal(0, 1.2, n) + 3 * np.sin(age * 1.3)
    rh = np.clip(rh + 4 * looks, 5, 99)
    table = {"time": batch["set_at"] + pd.to_timedelta(minutes, "m"), "temp_c": temp.round(1), "rh_pct": rh.round(0)}
    if level["gap"] is not None:
        table["temp2_c"] = (temp - level["gap"] + draw.normal(0, 0.09, n)).round(1)
    return pd.DataFrame(table)[~in_gaps(age, batch["gaps"])]
