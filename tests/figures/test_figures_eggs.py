"""Every egg can be drawn, left is not right, and each position says from where it is seen."""

import matplotlib.pyplot as plt
import numpy as np
import pytest
from matplotlib.patches import Polygon

from hatchkit import reference, say
from hatchkit.figures import egg_drawings
from hatchkit.figures.egg_candled import STOPPED, candled
from hatchkit.figures.egg_lying import LYING
from hatchkit.figures.egg_opened import opened
from hatchkit.teach import picture_key


@pytest.fixture
def ax():
    figure, ax = plt.subplots(figsize=(1.5, 2))
    yield ax
    plt.close(figure)


def _pixels(ax):
    ax.figure.canvas.draw()
    return np.asarray(ax.figure.canvas.buffer_rgba())[..., :3].astype(int)


@pytest.mark.parametrize("day", [0, 3, 4, 6, 8, 12, 15, 18, 20, *STOPPED])
def test_every_view_before_the_candle_is_drawn(ax, day):
    assert candled(ax, day, "egg") is ax
    assert (_pixels(ax) != 255).any()


@pytest.mark.parametrize("day", ["disc", *range(22)])
def test_every_day_is_drawn_with_its_scale(ax, day):
    opened(ax, day, "egg")
    assert "10 mm" in [text.get_text() for text in ax.texts]


def test_eggs_grow_darker_before_the_candle():
    dark = []
    for day in (0, 8, 12, 18):
        figure, ax = plt.subplots(figsize=(1.5, 2))
        candled(ax, day)
        dark.append(_pixels(ax).mean())
        plt.close(figure)
    assert dark == sorted(dark, reverse=True)


@pytest.mark.parametrize("kind", LYING)
def test_each_position_says_from_where_it_is_seen_and_which_wing_is_which(ax, kind):
    egg_drawings.egg(ax, kind, "a position")
    said = [text.get_text() for text in ax.texts]
    assert say.text("drawn_seen_from") in said and {"R", "L"} <= set(said)


def _head(kind):
    return LYING[kind]["head"], LYING[kind]["wing"]


def test_left_and_right_are_told_apart():
    (right, wing), (left, other) = _head("lie_right"), _head("lie_left")
    assert right[0] > 0 > left[0] and (wing, other) == ("R over", "L over")
    figure, ax = plt.subplots()
    egg_drawings.egg(ax, "lie_right")
    places = {text.get_text(): text.get_position()[0] for text in ax.texts}
    assert places["L"] < 0 < places["R"]  # seen from its back: its right is on the right
    plt.close(figure)


def test_the_wing_lies_over_the_head_or_under_it():
    order = {}
    for kind in ("lie_right", "lie_above"):
        figure, ax = plt.subplots()
        egg_drawings.egg(ax, kind)
        wings = [patch for patch in ax.patches if isinstance(patch, Polygon) and len(patch.get_xy()) == 5]
        order[kind] = max(patch.get_zorder() for patch in wings)
        plt.close(figure)
    assert order["lie_right"] > order["lie_above"]


def test_the_guide_names_only_what_can_be_drawn():
    assert set(reference.load("breakout_guide")["look"]) <= set(egg_drawings.KINDS)


@pytest.mark.parametrize(
    "key", [picture_key.views_key, picture_key.by_day, picture_key.positions_key, picture_key.signs_key]
)
def test_the_keys_show_all_they_name(key):
    axs = key()
    assert all(ax.texts for ax in axs)
    plt.close(axs[0].figure)
