"""Axes as SVG for a page: text stays text, colours follow a dark page, ids clash with no other picture's."""

import base64
import hashlib
import html
import io
import re

import matplotlib.pyplot as plt
from matplotlib.backends.backend_svg import FigureCanvasSVG
from PIL import Image

from hatchkit.figures.chart import figure_of
from hatchkit.figures.style import DARK, TEXT

#: A picture is shown at most so much larger than it was drawn (its text then is as large as a heading), and no larger
#: than a screen is high.
LARGEST, SCREEN = 1.5, 620
#: Colours of a drawing that is kept as an image.
PALETTE = 64
#: Faces of text by preference; matplotlib lays out with its own, which is wider than these.
FACES = "system-ui, 'Segoe UI', Roboto, 'Helvetica Neue', Arial, sans-serif"


def svg(drawn, *, alt: str, most: float | None = None) -> str:
    """One ``<svg>`` element to stand in HTML, and close the figure.

    Parameters
    ----------
    drawn : matplotlib Axes, Figure, or several Axes of one figure
    alt : str
        What the picture tells, in a sentence; read out in its place.
    most : float, optional
        Widest that a page may show it, in CSS pixels; if left out, 1.5 times the width, less where the picture is tall.

    Returns
    -------
    str
        The element fills the width of its place up to `most`. Its background is clear, or white where a drawing has
        colours of its own that are not in ``style.DARK``.

    Raises
    ------
    ValueError
        Without `alt`.
    """
    figure = figure_of(drawn, alt)
    wide, high = 72 * figure.get_size_inches()
    content = _content(figure)
    plt.close(figure)
    content = _colours(content, wide, high)
    mark = hashlib.sha256((content + alt).encode()).hexdigest()[:8]
    widest = most or _most(wide, high, content)
    content = re.sub(r'(id="|url\(#|href="#)', rf"\g<1>p{mark}-", content)
    return (
        f'<svg class="picture" role="img" aria-label="{html.escape(alt)}" viewBox="0 0 {wide:g} {high:g}" '
        f'stroke-linejoin="round" style="display:block;width:100%;max-width:{widest:.0f}px;'
        f'font-family:{html.escape(FACES)}">{content}</svg>'
    )


def _most(wide, high, content) -> float:
    """How wide it may be shown: within a screen if that leaves its smallest words legible, see `LARGEST`."""
    least = min(map(float, re.findall(r"font-size: ([\d.]+)px", content)), default=TEXT)
    return wide * max(TEXT / least, min(SCREEN / high, LARGEST), 1.0)


def _colours(content, wide, high) -> str:
    """Colours as variables that a dark page changes; a drawing with colours of its own lies on white paper instead."""
    own = {colour for colour in re.findall(r"#[0-9a-f]{6}\b", content)} - {colour.lower() for colour in DARK}
    if own:
        return f'<rect width="{wide:g}" height="{high:g}" fill="#ffffff"/>{content}'
    return re.sub(r"#[0-9a-f]{6}\b", lambda found: f"var({_variable(found[0])},{found[0]})", content)


def dark_css() -> str:
    """Rules for a page's style sheet: the pictures' colours where the reader's screen is dark. Paper stays white.

    Returns
    -------
    str
        One media query; the pairs of colours are ``style.DARK``.
    """
    rules = " ".join(f"{_variable(light)}: {dark};" for light, dark in DARK.items())
    return f"@media screen and (prefers-color-scheme: dark) {{ .picture {{ {rules} }} }}"


def _variable(colour: str) -> str:
    return f"--c-{colour.lstrip('#').lower()}"


def _content(figure) -> str:
    """What matplotlib draws, without all that is meant for a file of its own."""
    figure.patch.set_visible(False)
    for ax in figure.axes:
        ax.patch.set_visible(False)
    buffer = io.StringIO()
    with plt.rc_context({"svg.fonttype": "none", "svg.hashsalt": "hatchkit"}):
        FigureCanvasSVG(figure).print_svg(buffer, metadata={"Date": None, "Creator": None})
    text = buffer.getvalue()
    text = text[text.index(">", text.index("<svg")) + 1 : text.rindex("</svg>")]
    text = re.sub(r"<metadata>.*?</metadata>|<style.*?</style>|<!--.*?-->", "", text, flags=re.S)
    text = re.sub(r"\n\s*", "\n", text.replace("xlink:href", "href")).replace("<defs>\n</defs>\n", "")
    used = set(re.findall(r"#([\w-]+)", text))
    text = re.sub(r' id="([\w.-]+)"', lambda found: found[0] if found[1] in used else "", text)
    text = re.sub(r"-?\d+\.\d{3,}", lambda found: f"{float(found[0]):.2f}".rstrip("0").rstrip("."), text)
    text = re.sub(r"font: (?:(\w+) )?([\d.]+)px [^;\"]+", _font, text)
    text = re.sub(r"font-family: [^;\"]+;? ?", "", text)
    return re.sub(r"(?<=base64,)[A-Za-z0-9+/=\s]+", lambda found: _fewer_colours(found[0]), text).strip()


def _fewer_colours(data: str) -> str:
    """A picture within the picture (a drawing of thousands of points) as a PNG with a palette: a third of the size."""
    picture = Image.open(io.BytesIO(base64.b64decode(data))).convert("RGBA")
    buffer = io.BytesIO()
    picture.quantize(PALETTE, method=Image.Quantize.FASTOCTREE).save(buffer, "png", optimize=True)
    return base64.b64encode(buffer.getvalue()).decode("ascii")


def _font(found) -> str:
    """Size and weight of a text; its face is the picture's."""
    weight = f"; font-weight: {found[1]}" if found[1] in ("700", "bold") else ""
    return f"font-size: {found[2]}px{weight}"
