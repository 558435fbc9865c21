"""A figure that carries its own alt text wherever it is shown: JupyterLab, HTML report, paper."""

import base64
import html
import io

import matplotlib.pyplot as plt
from matplotlib.backends.backend_agg import FigureCanvasAgg
from PIL import Image

#: Colours of a stored picture: the fills, the lines, and the shades between them at edges.
COLOURS = 128


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
        return f'<figure><img alt="{html.escape(self.alt)}" src="data:image/png;base64,{data}">{caption}</figure>'

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
    dpi : int
        Dots an inch of the PNG.

    Returns
    -------
    Chart
        Shows itself in a notebook, as a PNG with its alt text.

    Raises
    ------
    ValueError
        Without `alt`.
    """
    figure = figure_of(drawn, alt)
    png = _png(figure, dpi)
    plt.close(figure)
    return Chart(png, alt, caption)


def _png(figure, dpi) -> bytes:
    """The figure as a PNG with a palette: line art needs no millions of colours, and notebooks stay small.

    Drawn straight onto the canvas, because ``savefig`` draws everything twice to find its layout.
    """
    figure.set_dpi(dpi)
    canvas = FigureCanvasAgg(figure)
    canvas.draw()
    picture = Image.frombuffer("RGBA", canvas.get_width_height(), canvas.buffer_rgba(), "raw", "RGBA", 0, 1)
    buffer = io.BytesIO()
    few = picture.convert("RGB").quantize(COLOURS, method=Image.Quantize.MAXCOVERAGE, dither=Image.Dither.NONE)
    few.save(buffer, "png")
    return buffer.getvalue()


def figure_of(drawn, alt):
    """The figure of axes, of several axes, or a figure itself; ValueError where nothing says what it shows."""
    if not alt.strip():
        raise ValueError("every picture needs a sentence that says what it shows (alt)")
    while isinstance(drawn, (list, tuple)) or hasattr(drawn, "flat"):
        drawn = drawn[0] if isinstance(drawn, (list, tuple)) else drawn.flat[0]
    return getattr(drawn, "figure", None) or drawn
