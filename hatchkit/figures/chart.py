"""A figure that carries its own alt text wherever it is shown: JupyterLab, HTML report, paper."""

from __future__ import annotations

import base64
import html
import io


#: Colours of a stored picture: the fills, the lines, and the shades between them at edges.
COLOURS = 96


class Chart:
    """A picture with alt text, shown by Jupyter as an HTML figure.

    matplotlib's own display loses the alt text in JupyterLab and in HTML export; an ``<img>`` that
    we write ourselves keeps it everywhere.
    """

    def __init__(self, png: bytes, alt: str, caption: str = ""):
        self.png, self.alt, self.caption = png, alt, caption

    def _repr_html_(self) -> str:
        data = base64.b64encode(self.png).decode("ascii")
        caption = f"<figcaption>{html.escape(self.caption)}</figcaption>" if self.caption else ""
        return (f'<figure><img alt="{html.escape(self.alt)}" src="data:image/png;base64,{data}">'
                f"{caption}</figure>")

    def __repr__(self) -> str:
        return f"Chart: {self.alt}"


def chart(drawn, *, alt: str, caption: str = "", dpi: int = 100) -> Chart:
    """Turn axes or a figure into a `Chart` and close the figure.

    Parameters
    ----------
    drawn : matplotlib Axes, Figure, or several Axes of one figure
    alt : str
        One sentence that says what the picture shows; must not be empty.
    caption : str, optional
        Shown under the picture.
    """
    import matplotlib.pyplot as plt

    if not alt.strip():
        raise ValueError("every picture needs a sentence that says what it shows (alt)")
    figure = _figure_of(drawn)
    buffer = io.BytesIO()
    # No software stamp, so that the same figure gives the same bytes with another matplotlib.
    figure.savefig(buffer, format="png", dpi=dpi, metadata={"Software": None})
    plt.close(figure)
    return Chart(_lighter(buffer), alt, caption)


def _lighter(buffer) -> bytes:
    """The same PNG with a palette: line art needs no millions of colours, and notebooks stay small."""
    from PIL import Image

    small = io.BytesIO()
    Image.open(buffer).convert("RGB").quantize(COLOURS, dither=Image.Dither.NONE).save(small, "png", optimize=True)
    return min(small.getvalue(), buffer.getvalue(), key=len)


def _figure_of(drawn):
    while isinstance(drawn, (list, tuple)) or hasattr(drawn, "flat"):
        drawn = drawn[0] if isinstance(drawn, (list, tuple)) else drawn.flat[0]
    return getattr(drawn, "figure", None) or drawn
