"""Signs and remarks of the fifth world: how likely each is, and the keeper's own words for it (fifth_words.csv).

Every topic also turns up where nothing is wrong, at its base rate: a guess, or a word about something harmless.
"""

from __future__ import annotations

import csv
from pathlib import Path

import numpy as np

with (Path(__file__).parent / "fifth_words.csv").open(encoding="utf-8") as lines:
    TOPICS = {row["topic"]: row for row in csv.DictReader(lines)}
NAMES = tuple(TOPICS)
BASE = np.array([float(row["base"]) for row in TOPICS.values()])
FIRST_REMARK = NAMES.index("cock")
SIGNS, REMARKS = NAMES[:FIRST_REMARK], NAMES[FIRST_REMARK:]
LANGUAGES = ("en", "de", "fr", "es")
DAY = {"en": "{words} on day {day}", "de": "{words} am Tag {day}", "fr": "{words} au jour {day}"}
DAY["es"] = "{words} el día {day}"
EVENTS = {"hot": "heat_spell", "power": "cold_spell", "fumes": "fumes"}


def topic_chances(causes, ks, habits):
    """Chance of every topic to be written down: array n x topics; `ks` one array of n for each cause."""
    n = len(ks[0]) if ks else 1
    silent = np.tile(1 - BASE, (n, 1))
    for cause, k in zip(causes, ks, strict=True):
        top = np.array([cause.words.get(name, 0.0) for name in NAMES])
        silent *= 1 - top * (1 - np.exp(-np.asarray(k) / 0.22))[:, None]
    kept = np.where(np.arange(len(NAMES)) < FIRST_REMARK, habits["signs"], habits["notes"])
    return kept * (1 - silent)


def words_ratio(written, causes, ks, habits):
    """Log ratio (n) of the written topics under these causes to their chance where nothing is wrong."""
    chance, usual = topic_chances(causes, ks, habits), topic_chances([], [], habits)
    told = np.array([name in written for name in NAMES])
    with np.errstate(divide="ignore", invalid="ignore"):
        ratio = np.where(told, np.log(chance) - np.log(usual), np.log1p(-chance) - np.log1p(-usual))
    return np.nan_to_num(ratio, nan=0.0).sum(axis=1)


def draw_words(draw, causes, ks, days, habits):
    """Topics written of a batch, each with the day that is named or None: dict."""
    chance = topic_chances(causes, [np.array([k]) for k in ks], habits)[0]
    written = [name for name, share in zip(NAMES, chance, strict=True) if draw.random() < share]
    out = {}
    for name in written:
        day = None
        if name in EVENTS and draw.random() < 0.5:
            true = days.get(EVENTS[name], draw.uniform(1, 20))
            day = int(np.clip(round(true + (draw.normal(0, 1.5) if draw.random() < 0.15 else 0)), 0, 21))
        out[name] = day
    return out


def sentence(names, days, language, of_species):
    """The words of several topics as the keeper would write them in one cell; days are turned into the bird's own."""
    out = []
    for name in names:
        words, day = TOPICS[name][language], days.get(name)
        out.append(words if day is None else DAY[language].format(words=words, day=round(day * of_species / 21)))
    return "; ".join(out)
