"""What a cause of the fourth world leaves beside the counts: metadata, levels, signs and remarks.

Everything here also comes without the cause, at a lower rate: old hens, kept eggs, posted eggs, a pen of its own, a
high place, a sign ticked by mistake, a remark about something harmless.
"""

from __future__ import annotations

import numpy as np
import pandas as pd
from scipy import stats

from .fourth_causes import CAUSES
from .fourth_words import TOPICS

SD = {"rh_set": 2.2, "water": 0.5, "rh_hatch": 2.5, "level": 0.09, "first_h": 5.0, "wide_h": 5.0}
STRAY_SIGN, STRAY_REMARK, CHAT, CUT_NOTED = 0.025, 0.02, 0.12, 0.25
KEPT, AGED = 1.5, 4.0  # sd of days stored and of weeks of age about the season's
ODD = 0.10  # a batch whose eggs are much older, or hens, or that has a pen of its own, by chance
HIGH = 0.01
SIGNS = [topic for topic in TOPICS if not topic.startswith(("r_", "h_"))]
REMARKS = [topic for topic in TOPICS if topic.startswith("r_")]
CHATTER = [topic for topic in TOPICS if topic.startswith("h_")]


def metadata(draw, keeper, ks):
    """Storage, age of hens, post, pen and height of one batch."""
    stored, age = keeper["stored"] + KEPT * draw.standard_normal(), keeper["flock_age"] + AGED * draw.standard_normal()
    if "long_storage" in ks:
        stored += 7 + 10 * ks["long_storage"] + 2 * draw.standard_normal()
    elif draw.random() < ODD:
        stored += draw.uniform(3, 10)
    if "old_flock" in ks:
        age += 45 + 70 * ks["old_flock"] + 12 * draw.standard_normal()
    elif draw.random() < ODD:
        age += draw.uniform(20, 80)
    own = bool(any(CAUSES[cause].flock for cause in ks) or draw.random() < 0.2)
    posted = bool("posted_eggs" in ks or draw.random() < keeper["posted_rate"])
    high = None
    if "altitude" in ks:
        high = float(np.clip(1500 + 2600 * ks["altitude"] + 250 * draw.standard_normal(), 1500, 4000))
    elif draw.random() < HIGH:
        high = float(draw.uniform(1000, 2600))
    return {
        "stored_days": float(max(stored, 0)),
        "flock_age_weeks": float(max(age, 20)),
        "own_pen": own,
        "posted": posted,
        "altitude_m": high,
    }


def metadata_ratio(batch, keeper, cause, k):
    """Log ratio of the metadata's density under `cause` (k: n worlds) to that of an ordinary batch, where kept."""
    habits, ratio = keeper["habits"], np.zeros(len(k))
    if habits["keeps_stored"]:
        off = batch["stored_days"] - keeper["stored"]
        if cause == "long_storage":
            ratio += stats.norm.logpdf(off, 7 + 10 * k, np.hypot(KEPT, 2.0)) - _odd(off, KEPT, 3, 10)
    if habits["keeps_flock"]:
        off = batch["flock_age_weeks"] - keeper["flock_age"]
        if cause == "old_flock":
            ratio += stats.norm.logpdf(off, 45 + 70 * k, np.hypot(AGED, 12.0)) - _odd(off, AGED, 20, 80)
    if habits["keeps_pen"] and CAUSES[cause].flock:
        ratio += np.log(1 / 0.2) if batch["own_pen"] else -np.inf
    if habits["keeps_posted"] and cause == "posted_eggs":
        ratio += -np.log(max(keeper["posted_rate"], 0.01)) if batch["posted"] else -np.inf
    if cause == "altitude":
        if batch["altitude_m"] is None:
            return ratio - np.inf
        density = stats.norm.logpdf(batch["altitude_m"], 1500 + 2600 * k, 250)
        usual = HIGH / 1600 if 1000 < batch["altitude_m"] < 2600 else HIGH * 1e-6
        ratio += density - np.log(usual)
    return ratio


def _odd(off, sd, low, high):
    """Log density of an ordinary batch's departure from its season: mostly noise, in one of ten much more."""
    spread = (stats.norm.cdf(off - low, scale=sd) - stats.norm.cdf(off - high, scale=sd)) / (high - low)
    return np.log((1 - ODD) * stats.norm.pdf(off, scale=sd) + ODD * spread + 1e-12)


def odds_of_topics(batch, habits, ks):
    """Chance of each sign and remark to be written for this batch: {topic: chance}; k may be an array."""
    odds = {}
    if habits["looks_for_signs"]:
        odds |= dict.fromkeys(SIGNS, STRAY_SIGN)
    if habits["writes"]:
        odds |= dict.fromkeys(REMARKS, STRAY_REMARK) | dict.fromkeys(CHATTER, CHAT)
        for topic, kind in (("r_power", "cold"), ("r_heat", "heat")):
            seen = any(spell["kind"] == kind for spell in batch["spells"])
            odds[topic] = (CUT_NOTED if seen else 0.005) if batch["logged"] else CUT_NOTED * 0.27
    for cause, k in ks.items():
        for topic, chance in CAUSES[cause].traces.items():
            if topic in odds:
                odds[topic] = 1 - (1 - odds[topic]) * (1 - chance * np.clip(0.5 + k / 0.8, 0.5, 1.0))
    return odds


def measured(batch, habits):
    """The levels of one batch that its keeper recorded: {kind: value}."""
    seen = {}
    if batch["logged"]:
        seen |= {"rh_set": batch["rh_set"], "rh_hatch": batch["rh_hatch"], "level": batch["level_shown"]}
    if habits["times_hatch"]:
        # what a log shows to be lost to cold is no riddle any more
        lost = sum(spell["lost_h"] for spell in batch["spells"]) if batch["logged"] else 0.0
        seen |= {"first_h": batch["first_h"] - lost, "wide_h": batch["wide_h"]}
    if habits["weighs"] and not batch["logged"]:
        # beside a log the scale repeats the humidity, from which this world makes the loss
        seen["water"] = batch["water_pct"]
    return seen


def departures(book, batch):
    """How far each level lies from that of the other batches: {kind: (departure, its standard deviation)}.

    Humidity, air and wear belong to a machine, hatch times to the season. Without another batch the world's own
    spread between seasons stands in.
    """
    habits, mine = book["keeper"]["habits"], measured(batch, book["keeper"]["habits"])
    wide = {"rh_set": 6.0, "rh_hatch": 4.5, "level": 0.12, "first_h": 4.0, "wide_h": 4.0, "water": 1.7}
    middle = {
        "rh_set": 52.0,
        "rh_hatch": 69.0,
        "level": 0.0,
        "first_h": batch["days"] * 24 - 14,
        "wide_h": 21.0,
        "water": 12.0,
    }
    out = {}
    for kind, value in mine.items():
        shared = kind in ("first_h", "wide_h")
        others = [
            measured(b, habits).get(kind)
            for b in book["batches"]
            if b is not batch and (shared or b["incubator"] == batch["incubator"])
        ]
        others = pd.Series([v for v in others if v is not None], dtype=float)
        weight = wide[kind] ** -2 + len(others) * _sd(kind) ** -2
        centre = (
            middle[kind] * wide[kind] ** -2 + len(others) * (others.median() if len(others) else 0) * _sd(kind) ** -2
        ) / weight
        out[kind] = (value - centre, float(np.sqrt(_sd(kind) ** 2 + 1 / weight)))
    return out


def _sd(kind):
    """Spread between ordinary batches of one machine; the loss follows the humidity as well."""
    return float(np.hypot(SD["water"], SD["rh_set"] * 12 / 53)) if kind == "water" else SD[kind]
