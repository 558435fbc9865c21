"""Headings and cells of tables as a language writes them; a column's name says what its numbers are."""

from __future__ import annotations

import datetime as dt

from hatchkit.say import has, text
from hatchkit.say.values import value_of

#: Columns of differences: a step of 1 °C is 1.8 °F, and no 32 is added.
_STEPS = ("_step_c", "degree_hours")


def heading(column: str, language: str, unit: str) -> str:
    """The heading of a column; one without words is shown by its name."""
    code = f"head_{column}"
    if has(code, language) or has(code):
        return text(code, {"unit": unit}, language)
    return column.replace("_", " ")


def is_number(column: str) -> bool:
    """Whether a column of this name holds numbers, though its cells may all be empty."""
    return _share(column) or column.endswith("_c") or any(mark in column for mark in _STEPS)


def cell(values: list, column: str, kind: str, language: str, unit: str) -> str:
    """One cell: a key in words, a share with its interval, a temperature, a time, a number.

    Parameters
    ----------
    values : list
        One value, or a share with its lowest and highest.
    column : str
        Name of the (first) column: ``share_*`` are shares 0 to 1, ``*_c`` temperatures in degC.
    kind : str
        Where the value is a key: the kind of word that it is (``stage``).
    """
    value = value_of(values[0])
    if value == "none":
        return text("shown_none", {}, language)
    if kind:
        from hatchkit.say.speak import word

        return word(kind, str(value), language)
    if _share(column):
        low, high = (value_of(item) for item in values[1:]) if len(values) == 3 else ("none", "none")
        if "none" in (low, high):
            return text("shown_share", dict(share=value), language)
        return text("shown_share_range", dict(share=value, low=low, high=high), language)
    if isinstance(value, (int, float)) and any(mark in column for mark in _STEPS):
        return text("shown_step", dict(step=value), language, unit)
    if isinstance(value, (int, float)) and column.endswith("_c"):
        return text("shown_degrees", dict(degrees=value), language, unit)
    if isinstance(value, dt.datetime):
        return text("shown_time", dict(time=value), language)
    if isinstance(value, (int, float)):
        return text("shown_number", dict(number=value), language)
    return str(value)


def _share(column: str) -> bool:
    return column.startswith("share_") or column.endswith("_share")
