"""Degrees as the reader wants them. Tables hold °C; °F is a matter of display."""

from __future__ import annotations

import re

from hatchkit.problems import HatchkitError

UNITS = ("C", "F")

#: A figure with its unit in a sentence, and °F in brackets behind it where a source gives both.
_FIGURE = re.compile(r"(?P<number>[-\u2212]?\d+(?:\.\d+)?) (?P<kind>°C|K)\b(?: \((?P<fahrenheit>\d+(?:\.\d+)? °F)\))?")


def check_unit(unit: str) -> str:
    """`unit` as "C" or "F"; HatchkitError if it is neither."""
    plain = str(unit).strip().upper().removeprefix("°")
    if plain not in UNITS:
        raise HatchkitError("no_such_unit", dict(unit=str(unit)))
    return plain


def c_to_f(temp_c):
    """Temperature in °F of a temperature in °C (number or array).

    Parameters
    ----------
    temp_c : float or array
        degC.

    Returns
    -------
    float or array
        degF: 32 + 1.8 x.
    """
    return temp_c * 9 / 5 + 32


def f_to_c(temp_f):
    """Temperature in °C of a temperature in °F (number or array)."""
    return (temp_f - 32) * 5 / 9


def shown(temp_c, unit: str = "C"):
    """A temperature in °C as a number in the unit of display."""
    return c_to_f(temp_c) if check_unit(unit) == "F" else temp_c


def shown_step(step_c, unit: str = "C"):
    """A temperature *difference* in °C (K) as a number in the unit of display."""
    return step_c * 9 / 5 if check_unit(unit) == "F" else step_c


def temperature(temp_c, unit: str = "C", digits: int = 1) -> str:
    """A temperature in words: ``37.5 °C`` or ``99.5 °F``."""
    return f"{shown(temp_c, unit):.{digits}f} °{check_unit(unit)}"


def worded(text: str, unit: str = "C") -> str:
    """A sentence that gives its temperatures in °C and its differences in K, in the reader's unit.

    A difference becomes a step on the reader's scale: 1 K is a step of 1 °C or of 1.8 °F. A figure keeps
    its decimals; where °F stands in brackets behind it, as in ``40.6 °C (105 °F)``, a reader of °F gets that.

    Parameters
    ----------
    text : str
    unit : {"C", "F"}
    """
    unit = check_unit(unit)

    def put(found):
        number, kind, fahrenheit = found["number"].replace("\u2212", "-"), found["kind"], found["fahrenheit"]
        if unit == "F" and fahrenheit:
            return fahrenheit
        digits = len(number.partition(".")[2])
        value = (shown if kind == "°C" else shown_step)(float(number), unit)
        return f"{value:.{digits}f} °{unit}{f' ({fahrenheit})' if fahrenheit else ''}"

    return _FIGURE.sub(put, text)
