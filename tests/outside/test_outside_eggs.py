"""The stated proportions of the drawn eggs follow from what their sources say."""

import numpy as np
import pytest

from hatchkit import reference
from hatchkit.figures import egg_shell

TABLE = reference.load("embryo_proportions")


def _value(item, day):
    return float(TABLE[(TABLE["item"] == item) & (TABLE["day"] == day)]["value"].iloc[0])


def _volume_above(y):
    """Millilitres of the egg above a height."""
    heights = np.linspace(y, egg_shell.LENGTH / 2, 4001)
    return float(np.trapezoid(np.pi * egg_shell.half_width(heights) ** 2, heights)) / 1000


def test_the_drawn_egg_holds_what_an_egg_of_60_g_holds():
    # Hoyt 1979: volume = 0.507 x length x breadth squared
    assert _volume_above(-egg_shell.LENGTH / 2) == pytest.approx(0.507 * 5.70 * 4.35**2, rel=0.04)


@pytest.mark.parametrize("day", [0, 7, 14, 18])
def test_the_air_cell_holds_the_water_lost(day):
    height = _value("air_cell_mm", day)
    lost = 0.6 + 60 * 0.12 * day / 18
    low, high = (_volume_above(egg_shell.LENGTH / 2 - height + off) for off in (0.3, -0.3))
    assert low <= lost <= high


@pytest.mark.parametrize("day", [5, 10, 15, 19])
def test_the_embryo_has_the_published_mass(day):
    # J. Gen. Physiol. 9:39: W = 0.668 t^3.6 mg, days 5 to 19; an ellipsoid twice as long as wide, density 1.03
    half = _value("embryo_mm", day) / 20
    mass = np.pi / 3 * half**3 * 1.03
    assert mass == pytest.approx(0.668e-3 * day**3.6, rel=0.12)


def test_marks_appear_on_the_days_that_are_published():
    first = TABLE.groupby("item")["day"].min()
    assert first["down_share"] == 12 and first["vessels_mm"] == 2
    assert egg_shell.proportion("yolk_mm", 18) > 0 == egg_shell.proportion("yolk_mm", 20)
    assert egg_shell.proportion("membrane_share", 12) == 1.0
