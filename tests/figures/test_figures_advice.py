"""Figures of the advice room: tables in, axes out, nothing by colour alone."""

import matplotlib.pyplot as plt
import numpy as np
import pandas as pd
import pytest

from hatchkit.advice import alt_words
from hatchkit.advice.breakout import breakout_guide
from hatchkit.figures import advice
from hatchkit.figures.chart import chart


@pytest.fixture(autouse=True)
def close():
    yield
    plt.close("all")


def table():
    return pd.DataFrame(
        {"name": ["A spell of heat", "Bad luck", "Turning"], "share": [0.5, 0.3, 0.2], "tied": [True, True, False]}
    )


def test_tied_causes_carry_a_hatch_and_the_word():
    ax = advice.ranked_causes(table())
    hatches = [patch.get_hatch() for patch in ax.patches]
    assert hatches.count("//") == 2
    assert [text.get_text() for text in ax.texts].count("30 % (tie)") == 1


def test_what_if_draws_each_row_its_range_and_the_usual():
    rows = pd.DataFrame(
        {
            "block": ["stage", "stage", "cause", "excursions"],
            "key": ["early", "late", "heat_spell", "x"],
            "name": ["early dead", "late dead", "heat", "chicks more"],
            "eggs": [10.0, 5, 6, 4],
            "low": [np.nan, np.nan, np.nan, 1],
            "high": [np.nan, np.nan, np.nan, 9],
            "usual": [4.0, 4, np.nan, np.nan],
        }
    )
    ax = advice.what_if(rows)
    assert len(ax.patches) == 4
    assert len([line for line in ax.lines if line.get_marker() == "D"]) == 2
    assert len([line for line in ax.lines if line.get_marker() == "|"]) == 1


def test_one_drawing_for_each_look_that_has_one():
    guide = breakout_guide()
    axs = advice.breakout_drawings(guide)
    assert len(axs) == (guide["drawing"] != "none").sum()
    assert all(ax.texts for ax in axs)
    assert "Head under the left wing" in alt_words.drawings(guide)


def test_given_axes_are_drawn_on_and_returned():
    ax = advice.side_by_side(1)[0]
    assert advice.ranked_causes(table(), ax) is ax


def test_ages_are_boxes_not_curves():
    curve = pd.DataFrame(
        {
            "day": [0.0, 7, 14, 21],
            "at_least": [0, 0.1, 0.1, 0.3],
            "at_most": [0, 0.1, 0.1, 0.3],
            "band_low": [0, 0.05, 0.05, 0.2],
            "band_high": [0, 0.2, 0.2, 0.4],
        }
    )
    ax = advice.age_against_season(curve, curve)
    heights = [patch.get_height() for patch in ax.patches if patch.get_width() == 7]
    assert pytest.approx(20) in heights
    assert len(ax.get_legend().get_texts()) == 3


def test_a_chart_of_them_has_alt_text():
    assert chart(advice.ranked_causes(table()), alt="bars").alt == "bars"
