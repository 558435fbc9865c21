"""Pictures carry their alt text, and the same figure gives the same bytes."""

import io

import matplotlib

matplotlib.use("Agg")

import matplotlib.pyplot as plt
import numpy as np
import pandas as pd
import pytest
from matplotlib.text import Text
from PIL import Image

from hatchkit.figures import losses, style
from hatchkit.figures.chart import chart


def _drawn():
    ax = style.axes(size=(3, 2))
    ax.bar(["a"], [1], **style.fill("early"))
    return ax


def test_alt_text_is_in_the_html_and_escaped():
    shown = chart(_drawn(), alt='3 < 4 "early" dead', caption="a & b")._repr_html_()
    assert 'alt="3 &lt; 4 &quot;early&quot; dead"' in shown
    assert "<figcaption>a &amp; b</figcaption>" in shown
    assert "data:image/png;base64," in shown


def test_a_picture_without_alt_text_is_refused():
    with pytest.raises(ValueError, match="alt"):
        chart(_drawn(), alt=" ")


def test_the_figure_is_closed_and_its_bytes_repeat():
    open_before = plt.get_fignums()
    first, second = (chart(_drawn(), alt="one bar") for _ in range(2))
    assert first.png == second.png
    assert plt.get_fignums() == open_before


def test_stages_stay_apart_without_colour():
    """No two stages of the ledger share the grey of their fill and their hatch at once."""
    from matplotlib.colors import to_rgb

    seen = set()
    stages = ("hatched", "culled", "clear", "infertile", "early", "mid", "late", "pipped_dead", "removed")
    for key in (*stages, "unaccounted"):
        colour, hatch = style.FILLS[key]
        grey = round(sum(w * c for w, c in zip((0.299, 0.587, 0.114), to_rgb(colour), strict=True)), 1)
        assert (grey, hatch) not in seen
        seen.add((grey, hatch))


def test_several_axes_of_one_figure_are_one_picture():
    figure, both = plt.subplots(1, 2, figsize=(3, 2))
    for drawn in (both, tuple(both), list(both), figure):
        assert chart(drawn, alt="two empty plots").png[:4] == b"\x89PNG"


@pytest.mark.parametrize("name", ["$_$ hens", "5 $ a \\dozen $", "$\\frac$", "$x^2$"])
def test_a_name_with_dollar_signs_is_a_name_and_no_formula(name):
    table = pd.DataFrame(
        dict(flock=[name, "Barn"], stage="early", share_of_set=[0.15, 0.1], eggs=[3, 2], set=20, excess=0)
    )
    by_flock = losses.losses_by_group(table)
    _, (left, right) = style.subplots(1, 2, size=(5, 3))
    left.set_title(name)
    left.bar([name, "b"], [1, 2], label=name)
    left.legend(title=name)
    right.set_yticks([0, 1], [name, "b"])
    right.set_xlabel(name)
    drawn = style.axes(size=(4, 2))
    drawn.barh([name, "b"], [1, 2])
    for ax in (left, drawn, by_flock):
        ax.figure.savefig(io.BytesIO(), bbox_inches="tight")
        labels = ax.get_xticklabels() + ax.get_yticklabels()
        assert any(text.get_text().startswith(name) for text in labels)
        assert not any(text.get_parse_math() for text in ax.figure.findobj(Text))
        assert chart(ax, alt=f"Two bars, one of them of {name}.").png
    assert Text(0, 0, "$x$").get_parse_math()  # a person's own figures keep their formulas


def test_the_stored_picture_keeps_its_colours():
    """128 colours of its own: white stays white, and no point strays by more than a shade."""
    ax = _drawn()
    for place, key in enumerate(style.FILLS):
        ax.bar(place, 1, **style.fill(key))
    ax.figure.set_dpi(100)
    ax.figure.canvas.draw()
    drawn = np.asarray(ax.figure.canvas.buffer_rgba())[:, :, :3].astype(int)
    stored = np.asarray(Image.open(io.BytesIO(chart(ax, alt="bars of every fill").png)).convert("RGB")).astype(int)
    assert (stored[0, 0] == 255).all()
    assert np.abs(stored - drawn).max() <= 16
