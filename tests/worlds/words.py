"""Signs and remarks in a keeper's own words, right, wrong or absent.

The tables signs.csv and remarks.csv are ours; which sign goes with which cause follows the trade's trouble tables
(MSU S20, UC 8127 S02, Illinois S25, Penn State S28-S30, checklist S69, chart S70, duck S58, deficiency abstracts). The
chances are from memory, drawn wide; no table prints any.
"""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

import numpy as np
import pandas as pd

from .codes import CAUSES

LANGUAGES = ("en", "de", "fr", "es", "nl")
HERE = Path(__file__).parent
CHATTER = 0.25  # chance of an idle remark on any batch


@lru_cache(maxsize=1)
def sign_table():
    """Chance of each sign under each cause: (chances frame sign x cause, words frame sign x language)."""
    table = pd.read_csv(HERE / "signs.csv")
    chances = table.pivot(index="sign", columns="cause", values="chance").reindex(columns=CAUSES).fillna(0.0)
    words = table.dropna(subset=["en"]).set_index("sign")[list(LANGUAGES)]
    return chances, words


@lru_cache(maxsize=1)
def remark_table():
    """Remarks: frame cause, language, words; idle ones have an empty cause."""
    return pd.read_csv(HERE / "remarks.csv", keep_default_na=False)


def sign_chances(cause, strength, false_rate):
    """Chance that each sign is noted, given a cause or None, shape (signs,).

    A sign is noted for the cause with `strength` (0-1, grows with the eggs lost) or for no good reason.
    """
    chances, _ = sign_table()
    true = np.zeros(len(chances)) if cause is None else chances[cause].to_numpy() * strength
    return 1 - (1 - true) * (1 - false_rate)


def draw_signs(codes, strength, habits, draw):
    """Signs noted on one batch: array of bool, one per sign; all False where the keeper notes none."""
    noted = np.zeros(len(sign_table()[0]), bool)
    if not habits["signs"]:
        return noted
    for code in codes or (None,):
        noted |= draw.random(len(noted)) < sign_chances(code, strength, habits["false_sign"])
    return noted


def sign_text(noted, language):
    """Signs as a keeper writes them."""
    _, words = sign_table()
    names = sign_table()[0].index[noted]
    return "; ".join(words.loc[name, language] for name in names)


def draw_remark(codes, habits, draw):
    """Cause that a keeper's remark points at (or None), true with chance `remark_true`, false with `remark_false`."""
    if codes and draw.random() < habits["remark_true"]:
        return str(draw.choice(codes))
    if draw.random() < habits["remark_false"]:
        return str(draw.choice(CAUSES))
    return None


def remark_log_chance(remark, cause, habits):
    """Log chance of a remark (cause pointed at, or None) under one cause."""
    true, false = habits["remark_true"], habits["remark_false"]
    if remark is None:
        return float(np.log((1 - true) * (1 - false)))
    chance = (1 - true) * false / len(CAUSES)
    return float(np.log(chance + true * (remark == cause)))


def remark_text(remark, language, draw):
    """Free words for a remark, idle chatter now and then; sometimes English in a foreign book."""
    table = remark_table()
    parts = []
    for cause in ([remark] if remark else []) + ([""] if draw.random() < CHATTER else []):
        rows = table[(table["cause"] == cause) & (table["language"] == language)]
        if rows.empty:
            rows = table[(table["cause"] == cause) & (table["language"] == "en")]
        parts.append(str(draw.choice(rows["words"].to_numpy())))
    return ", ".join(parts)
