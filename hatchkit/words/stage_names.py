"""What a stage, look or disturbance is called: on an axis or in a table (`label`), and in a sentence (`in_words`)."""

from __future__ import annotations

from hatchkit import say

_NAMES = {
    "hatched": ("hatched", "good chicks"),
    "culled": ("culled", "culled chicks"),
    "clear": ("clear, not opened", "clear or infertile"),
    "infertile": ("infertile (opened)", "infertile"),
    "early": ("early dead", "early dead"),
    "mid": ("mid dead", "mid dead"),
    "late": ("late dead", "late dead"),
    "dead": ("dead embryo", "dead embryo"),
    "pipped_dead": ("pipped, died", "pipped and died"),
    "removed": ("removed", "removed"),
    "unaccounted": ("not accounted for", "not accounted for"),
    "candle1": ("first candling", "first candling"),
    "candle2": ("second candling", "second candling"),
    "transfer": ("transfer", "transfer"),
    "hatch": ("after hatch", "the hatch"),
}


def label(key: str) -> str:
    """Short name of a stage, fate, look or disturbance; unknown keys with blanks for underscores."""
    return _name(key, 0)


def in_words(key: str) -> str:
    """The same as it reads in a sentence, where clears count as infertile until they are opened."""
    return _name(key, 1)


def _name(key, which):
    key = str(key)
    if key in _NAMES:
        return _NAMES[key][which]
    if say.has(f"stage_{key}"):
        return say.text(f"stage_{key}")
    if key.startswith("candle"):
        return f"candling {key.removeprefix('candle')}"
    return key.replace("_", " ")
