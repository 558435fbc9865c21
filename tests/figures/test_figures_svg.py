"""Pictures as SVG: they can be read on a telephone, on a dark page, by a screen reader, and beside one another."""

import re
import sys
from pathlib import Path

import matplotlib.pyplot as plt
import pytest

from hatchkit import figures
from hatchkit.figures import style

sys.path.insert(0, str(Path(__file__).parent))
from demo_pictures import PICTURES

#: What a telephone of 390 px leaves between margins of 16 px.
PLACE = 358
#: Drawings from life have colours of their own and lie on white paper.
DRAWINGS = {"breakout_drawings"}


@pytest.fixture(autouse=True)
def close_figures():
    yield
    plt.close("all")


def drawn():
    ax = style.axes(size=(style.WIDTH, 2))
    ax.bar(["a"], [1], **style.fill("early"))
    return ax


@pytest.mark.parametrize("name", PICTURES)
def test_every_picture_can_be_read_on_a_telephone_and_its_colours_turn_dark(name):
    ax, alt = PICTURES[name]()
    text = figures.svg(ax, alt=alt)
    wide = float(re.search(r'viewBox="0 0 ([\d.]+)', text)[1])
    sizes = [float(size) * PLACE / wide for size in re.findall(r"font-size: ([\d.]+)px", text)]
    assert sizes and min(sizes) >= 10
    assert len(sizes) == text.count("<text")
    colours = set(re.findall(r"(?<!,)#[0-9a-f]{6}\b", text))
    if name in DRAWINGS:
        assert "<rect" in text and "var(" not in text
    else:
        assert colours == set(), "a colour without its dark one"
    assert len(alt) > 40


def written(figure, monkeypatch):
    """What is written on a figure, with where it lies: (words, box) in points."""
    texts, draw, get_extent = [], plt.Text.draw, plt.Text.get_window_extent

    def noted(self, renderer, *args, **more):
        draw(self, renderer, *args, **more)
        if self.get_visible() and self.get_text().strip():
            texts.append((self.get_text(), get_extent(self, renderer)))  # of an annotation without its arrow

    figure.set_dpi(72)
    figure.canvas.draw()
    monkeypatch.setattr(plt.Text, "draw", noted)
    figure.canvas.draw()
    return texts


@pytest.mark.parametrize("name", PICTURES)
def test_no_text_of_a_picture_lies_outside_of_it_or_on_another(name, monkeypatch):
    ax, _ = PICTURES[name]()
    figure = figures.output.figure_of(ax, "a picture")
    texts, frame = written(figure, monkeypatch), figure.bbox.padded(2)
    assert texts
    for place, (one, box) in enumerate(texts):
        assert frame.x0 <= box.x0 and box.x1 <= frame.x1 and frame.y0 <= box.y0 and box.y1 <= frame.y1, one
        for other, second in texts[place + 1 :]:
            assert not box.padded(-1).overlaps(second.padded(-1)), f"{one!r} lies on {other!r}"


def test_it_says_what_it_shows_and_names_nothing_that_another_picture_may_name():
    one, two = figures.svg(drawn(), alt='2 < 3 "early"'), figures.svg(drawn(), alt="another")
    assert 'role="img" aria-label="2 &lt; 3 &quot;early&quot;"' in one
    ids = [set(re.findall(r' id="([^"]+)"', text)) for text in (one, two)]
    assert ids[0] and not ids[0] & ids[1]
    assert all(name in ids[0] for name in re.findall(r"url\(#([^)]+)\)", one))
    assert not re.search(r"<style|<\?xml|DOCTYPE|metadata|xlink|DejaVu", one)


def test_the_same_picture_gives_the_same_svg_and_its_figure_is_closed():
    before = plt.get_fignums()
    assert figures.svg(drawn(), alt="one bar") == figures.svg(drawn(), alt="one bar")
    assert plt.get_fignums() == before


def test_a_page_can_say_how_wide_a_picture_may_be():
    assert "max-width:500px" in figures.svg(drawn(), alt="one bar", most=500)


def test_a_picture_without_words_is_refused():
    with pytest.raises(ValueError, match="alt"):
        figures.svg(drawn(), alt=" ")


def test_dark_colours_are_for_dark_screens_only():
    css = figures.dark_css()
    assert css.startswith("@media screen and (prefers-color-scheme: dark)")
    assert all(f"--c-{light[1:].lower()}: {dark};" in css for light, dark in style.DARK.items())
