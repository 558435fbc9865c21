"""What a stage, look or disturbance is called: on an axis or in a table."""

from __future__ import annotations

from hatchkit import say

_NAMES = {
    "hatched": "hatched",
    "culled": "culled",
    "clear": "clear, not opened",
    "infertile": "infertile (opened)",
    "early": "early dead",
    "mid": "mid dead",
    "late": "late dead",
    "dead": "dead embryo",
    "pipped_dead": "pipped, died",
    "removed": "removed",
    "unaccounted": "not accounted for",
    "candle1": "first candling",
    "candle2": "second candling",
    "transfer": "transfer",
    "hatch": "after hatch",
}


def label(key: str) -> str:
    """Short name of a stage, fate, look or disturbance; unknown keys with blanks for underscores."""
    key = str(key)
    if key in _NAMES:
        return _NAMES[key]
    if say.has(f"stage_{key}"):
        return say.text(f"stage_{key}")
    if key.startswith("candle"):
        return f"candling {key.removeprefix('candle')}"
    return key.replace("_", " ")
