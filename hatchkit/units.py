"""Degrees as the reader wants them. Tables hold °C; °F is a matter of display."""

from __future__ import annotations

from hatchkit.problems import HatchkitError

UNITS = ("C", "F")


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
