"""Figures of losses: they draw what the table says, with units, on axes that are handed back."""

import sys
from pathlib import Path

import matplotlib
import matplotlib.pyplot as plt
import numpy as np
import pytest

import hatchkit as hk
from hatchkit.figures import losses as figures
from hatchkit.figures import style
from hatchkit.losses.season_chart import season_chart
from hatchkit.losses.tray import tray_map, tray_season

sys.path.insert(0, str(Path(__file__).parents[1] / "losses"))
from tiny_season import tiny_season


@pytest.fixture(autouse=True)
def close_figures():
    yield
    plt.close("all")


@pytest.fixture
def season():
    rows = [
        dict(
            batch=n,
            eggs_set=48,
            day1=7,
            clear1=2,
            dead1=3,
            day2=14,
            dead2=1,
            day3=18,
            dead3=1,
            hatched=39,
            culled=1,
            dead_in_shell=2,
        )
        for n in range(6)
    ]
    rows[2].update(dead3=16, hatched=24)
    eggs = [
        dict(
            batch="T",
            egg=str(n),
            tray=f"t{n // 12}",
            row=n % 12 // 4 + 1,
            col=n % 4 + 1,
            candle1="clear" if n == 5 else "alive",
            outcome=None if n == 5 else "dead" if n < 3 else "hatched",
        )
        for n in range(24)
    ]
    return tiny_season([*rows, dict(batch="T", eggs_set=24, day1=7)], eggs=eggs)


def texts(ax):
    return [text.get_text() for text in ax.texts]


def test_the_ledger_goes_from_eggs_set_to_good_chicks(season):
    table = hk.breakdown(season)
    ax = figures.egg_ledger(table[table["batch"] == "2"])
    names = [label.get_text() for label in ax.get_yticklabels()]
    assert names[0] == "eggs set" and names[-1] == "good chicks"
    assert texts(ax)[0] == "48" and texts(ax)[-1] == "23"
    lengths = [bar.get_width() for bar in ax.patches]
    assert lengths[0] - sum(lengths[1:-1]) == pytest.approx(lengths[-1])


def test_eggs_shared_out_are_about_a_whole_number_in_the_ledger(season):
    table = hk.breakdown(season)
    table = table[table["batch"] == "2"].copy()
    table.loc[table["stage"] == "mid", "eggs"] = 49.674 - 48
    assert "about 2" in texts(figures.egg_ledger(table))


def test_groups_fill_up_to_100_percent(season):
    ax = figures.losses_by_group(hk.breakdown(season))
    ends = {}
    for bar in ax.patches:
        place = round(bar.get_y() + bar.get_height() / 2)
        ends[place] = max(ends.get(place, 0), bar.get_x() + bar.get_width())
    assert list(ends.values()) == pytest.approx([100] * 7)
    assert ax.get_xlabel() == "Share of eggs set (%)" and "T (24)" in [
        label.get_text() for label in ax.get_yticklabels()
    ]


def test_ages_at_death_show_boxes_and_the_looks(season):
    ax = figures.death_age(hk.age_at_death(season, draws=20))
    assert {"first candling", "second candling", "transfer", "after hatch"} <= set(texts(ax))
    assert "days since setting" in ax.get_xlabel() and "%" in ax.get_ylabel()
    assert ax.get_legend() is None
    stages = {style.fill(stage)["facecolor"] for stage in ("early", "mid", "late")}
    drawn = {matplotlib.colors.to_hex(face).upper() for part in ax.collections for face in part.get_facecolor()}
    assert drawn and not drawn & stages  # an age is no stage


def test_one_group_of_several_can_be_drawn(season):
    season.batches["flock"] = ["a", "b", "a", "b", "a", "b", "a"]
    result = hk.age_at_death(season, by="flock", draws=5)
    living = result.fits.set_index("group").loc["b", "eggs"]
    assert f"{living:.0f} living" in figures.death_age(result, "b").get_ylabel()


def test_each_egg_has_its_place_and_letter_on_the_tray(season):
    ax = figures.tray_map(tray_map(season, "T"))
    letters = [text for text in texts(ax) if len(text) == 1]
    assert (letters.count("H"), letters.count("D"), letters.count("c")) == (20, 3, 1)
    assert "tray t0" in texts(ax) and "tray t1" in texts(ax)
    assert {"H  hatched (20)", "D  dead embryo (3)"} <= {text.get_text() for text in ax.get_legend().get_texts()}


def test_the_season_of_a_tray_has_a_disc_for_each_place_and_the_number_that_died(season):
    table = tray_season(season)
    assert table["at_risk"].sum() == 23 and table["died"].sum() == 3
    ax = figures.tray_season(table)
    assert texts(ax).count("1") == 3
    assert len(ax.patches) == 24 + 3  # a place has a rim, and a disc where an embryo died
    assert "No egg has a place" in texts(figures.tray_season(table[:0]))[0]


def test_the_season_chart_marks_what_lies_outside_and_names_it(season):
    ax = figures.season_chart(season_chart(season, "late"))
    assert ax.get_title(loc="left") == "late dead (% of eggs not clear or infertile)"
    assert {"2", "mean", "usual limit"} <= set(texts(ax))
    marked = next(line for line in ax.lines if line.get_marker() == "s")
    assert len(marked.get_xdata()) == 1


def test_axes_that_are_handed_in_come_back(season):
    _, ax = plt.subplots()
    table = hk.breakdown(season, by=None)
    for draw in (figures.egg_ledger, figures.losses_by_group):
        assert draw(table, ax=ax) is ax


def test_fates_stay_apart_without_colour():
    stages = ["hatched", "clear", "infertile", "early", "mid", "late", "pipped_dead", "removed", "unaccounted"]
    looks = set()
    for stage in stages:
        colour = plt.matplotlib.colors.to_rgb(style.fill(stage)["facecolor"])
        looks.add((round(float(np.dot(colour, (0.299, 0.587, 0.114))), 1), style.fill(stage)["hatch"]))
    assert len(looks) == len(stages)
