"""The course's pictures show what their sentences say."""

import re
from itertools import combinations

import matplotlib.pyplot as plt
import numpy as np
import pandas as pd
import pytest

from hatchkit.figures import course


@pytest.fixture(autouse=True)
def close_figures():
    yield
    plt.close("all")


def test_the_tallest_bars_of_luck_are_named():
    hatches = np.random.default_rng(24).binomial(24, 0.75, size=1000)
    ax = course.luck(hatches, each=24, mark=15)
    heights = {round(bar.get_x() + bar.get_width() / 2): bar.get_height() for bar in ax.patches}
    named = [int(count) for count in re.findall(r"\d+", course.luck_alt(hatches, each=24).split("tallest")[1])]
    assert named == [17, 18, 19]
    assert min(heights[count] for count in named) > max(
        height for count, height in heights.items() if count not in named
    )


def test_one_tallest_bar_is_named_alone():
    assert course.luck_alt(np.array([3, 4, 4, 4, 5]), each=6).endswith("the tallest bar at 4.")


@pytest.mark.parametrize(
    "shares",
    [
        [0.17, 0.22, 0.13, 0.08, 0.12, 0.05, 0.15, 0.10],
        [0.1, 0.1, 0.1, 0.1, 0.2, 0.1, 0.3, 0.1],
        [0.3, 0.2, 0.1, 0.05, 0.04, 0.06, 0.02, 0.0],
        [0.0, 0.01, 0.02, 0.1, 0.2, 0.1, 0.3, 0.1],
    ],
)
def test_the_bars_from_the_dashed_line_on_hold_the_arrangements_that_count(shares):
    shares = np.array(shares)
    chosen = np.array([np.isin(np.arange(8), group) for group in combinations(range(8), 3)])
    differences = np.array([shares[one].mean() - shares[~one].mean() for one in chosen])
    seen = differences[0]
    ax = course.arrangements(differences, seen=seen)
    line = ax.lines[0].get_xdata()[0]
    right = sum(bar.get_height() for bar in ax.patches if bar.get_x() + bar.get_width() > line)
    assert right == (differences >= seen - 1e-9).sum()
    assert sum(bar.get_height() for bar in ax.patches) == len(differences)
    assert not any(abs(bar.get_x() - line) < 0.01 for bar in ax.patches)
    assert f"{100 * seen:.1f}".removesuffix(".0") + ", is dashed" in course.arrangements_alt(differences, seen=seen)


def test_days_stand_at_whole_numbers():
    lost = pd.DataFrame({"egg": [1, 2], "after_day": [0, 10], "by_day": [7, 14]})
    looks = course.between_looks(lost, looks=[7, 10, 18, 21])
    upper, lower = course.deaths_and_finds(np.array([1, 2, 18]), np.array([7, 7, 21]))
    for ax in (looks, lower):
        ticks = ax.get_xticks()
        assert all(tick == int(tick) for tick in ticks)
        assert {7, 21} <= set(ticks)


@pytest.mark.parametrize(("unit", "left", "right"), [("C", "°C", "°F"), ("F", "°F", "°C")])
def test_temperatures_have_a_second_scale(unit, left, right):
    ax = course.air_and_eggs([0, 1], [37.5, 25.0], {"egg": [37.5, 36.0]}, unit=unit)
    assert left in ax.get_ylabel()
    assert right in ax.child_axes[0].get_ylabel()
    table = pd.DataFrame({"hour": [0, 1], "A": 37.5, "B": 36.0, "C": 35.0})
    assert len(course.shapes(table, names=["A", "B", "C"]).child_axes) == 1
