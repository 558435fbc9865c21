"""Figures of the advice room: tables in, axes out, nothing by colour alone."""

import matplotlib
import matplotlib.pyplot as plt
import numpy as np
import pandas as pd
import pytest

from hatchkit import say
from hatchkit.advice import pictured
from hatchkit.advice.breakout import breakout_guide
from hatchkit.figures import advice, style
from hatchkit.figures.chart import chart


@pytest.fixture(autouse=True)
def close():
    yield
    plt.close("all")


def plain(text):
    """The words of a text in one line."""
    return text.get_text().replace("\n", " ").replace("\N{NO-BREAK SPACE}", " ")


def table():
    return pd.DataFrame(
        {"cause": ["heat_spell", "bad_luck", "turning"], "share": [0.5, 0.3, 0.2], "tied": [True, True, False]}
    )


def test_tied_causes_carry_a_hatch_and_the_word():
    ax = advice.ranked_causes(table())
    hatches = [patch.get_hatch() for patch in ax.patches]
    assert hatches.count("//") == 2
    assert [text.get_text() for text in ax.texts].count("30 % (tie)") == 1
    assert "ordinary bad luck" in {plain(text) for text in ax.texts}


def test_what_if_draws_each_row_its_range_and_the_usual():
    rows = pd.DataFrame(
        {
            "block": ["stage", "stage", "cause", "excursions"],
            "key": ["early", "late", "heat_spell", "x"],
            "eggs": [10.0, 5, 6, 4],
            "low": [np.nan, np.nan, np.nan, 1],
            "high": [np.nan, np.nan, np.nan, 9],
            "usual": [4.0, 4, np.nan, np.nan],
        }
    )
    ax = advice.what_if(rows)
    assert len(ax.patches) == 4
    stages = {matplotlib.colors.to_hex(style.fill(stage)["facecolor"]) for stage in ("early", "mid", "late", "dead")}
    drawn = [matplotlib.colors.to_hex(patch.get_facecolor()) for patch in ax.patches]
    assert set(drawn[:2]) <= stages and not set(drawn[2:]) & stages  # a cause is no stage
    assert len([line for line in ax.lines if line.get_marker() == "D"]) == 2
    assert len([line for line in ax.lines if line.get_marker() == "|"]) == 1


def test_one_drawing_for_each_look_that_has_one():
    guide = breakout_guide()
    axs = advice.breakout_drawings(guide)
    assert len(axs) == len(guide)
    assert all(ax.texts for ax in axs)
    assert "lie_left" in pictured.drawings(guide)["looks"]


@pytest.mark.parametrize("language", say.LANGUAGES)
def test_no_word_of_another_language_stands_on_the_drawings(language):
    axs = advice.breakout_drawings(breakout_guide(), language=language)
    found = {text.get_text() for ax in axs for text in ax.texts}
    plt.close(axs[0].figure)
    codes = ("swollen_neck", "small_cell", "large_cell", "dry_skin", "seen_from", "wing_R", "wing_L")
    assert {say.text(f"drawn_{code}", {}, language) for code in codes} <= found
    others = {say.text("drawn_swollen_neck", {}, other) for other in say.LANGUAGES if other != language}
    assert not others & found


def test_given_axes_are_drawn_on_and_returned():
    ax = style.axes()
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
    assert [plain(text) for text in ax.texts] == ["this batch: 30 %", "all batches: 30 %"]


def test_a_chart_of_them_has_alt_text():
    assert chart(advice.ranked_causes(table()), alt="bars").alt == "bars"


def ladder_table():
    row = dict(part="x", kind="item", value=11.4, usual=0.0, unit="h", digits=1, said="", strength="for_some")
    return pd.DataFrame(
        [
            row | dict(kind="pattern", part="pattern", value=np.nan, push=3.8, strength="for_very_strong"),
            row | dict(part="cold", push=1.2),
            row | dict(part="clock", push=-0.7, strength="against_some"),
            row | dict(kind="sign", part="power_cut", value=np.nan, said="no current", push=0.6),
            row | dict(part="tray", value=np.nan, push=np.nan, strength="unknown"),
        ]
    )


def test_evidence_for_lies_right_evidence_against_left_and_the_unknown_has_no_bar():
    ax = advice.ladder(ladder_table())
    assert [np.sign(patch.get_width()) for patch in ax.patches] == [1, 1, -1, 1]
    assert ax.patches[0].get_width() < 3.8 and [line.get_marker() for line in ax.lines].count(">") == 1
    words = [plain(text) for text in ax.texts]
    assert "when and at what stage the eggs were lost" in words
    assert any(text.endswith("11.4 h (usual 0 h)") for text in words)
    german = [plain(text) for text in advice.ladder(ladder_table(), language="de").texts]
    assert any("11,4 h" in text for text in german)
    assert words.count("not known") == 1 and "a power cut, you noted" in words


def test_differences_have_one_scale_and_names_have_no_place_on_it():
    table = pd.DataFrame(
        [
            dict(item="storage", value=14.0, usual=4.0, unit="days", digits=0, away=9.0),
            dict(item="pen", value="Barn 2", usual="Barn 1", unit="", digits=0, away=2.0),
            dict(item="rh_set", value=40.0, usual=50.0, unit="%", digits=0, away=-2.0),
        ]
    )
    ax = advice.differences(table)
    marks = [(line.get_marker(), float(line.get_xdata()[0])) for line in ax.lines if len(line.get_xdata()) == 1]
    assert marks == [(">", 6.0), ("D", -2.0)]
    words = " ".join(text.get_text() for text in ax.texts)
    assert "pen: Barn 2 (good batches: Barn 1)" in words.replace("\n", " ")
    assert "unlike the good batches" in advice.differences(table[:0]).texts[0].get_text().replace("\n", " ")
