"""What a stage, look or disturbance is called: on an axis or in a table (`label`), and in a sentence (`in_words`)."""

from __future__ import annotations

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
    **{
        key: (name, name)
        for key, name in (
            ("opening", "a lid or door opened"),
            ("drift", "a slow drift"),
            ("outage", "heating lost (power or heater)"),
            ("overheating", "overheating"),
            ("sensor", "a faulty reading rather than real air"),
            ("loading", "the eggs going in"),
            ("steady", "a machine that runs beside its range for days"),
            ("unclear", "not clear from the curve"),
        )
    },
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
    if key.startswith("candle"):
        return f"candling {key.removeprefix('candle')}"
    return key.replace("_", " ")
