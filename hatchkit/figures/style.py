"""How every figure looks: one fill, hatch and line per meaning, so that grey print loses nothing."""

from __future__ import annotations

from functools import cache

from hatchkit.stage_names import label as label  # figures speak of style.label
from hatchkit.units import check_unit

#: Fills from light to dark by stage, so that they stay apart in grey; the hatch says the same again.
#: Colours are the Okabe-Ito set, chosen for colour-blind readers (Okabe & Ito 2008, Color Universal Design).
FILLS = {
    "hatched": ("#F3F3F3", ""),
    "culled": ("#CFCFCF", "oo"),
    "clear": ("#F0E442", ""),
    "infertile": ("#F0E442", ".."),
    "early": ("#56B4E9", "//"),
    "mid": ("#E69F00", "\\\\"),
    "late": ("#0072B2", "xx"),
    "dead": ("#0072B2", "xx"),
    "pipped_dead": ("#5B2A68", "++"),
    "removed": ("#FFFFFF", "--"),
    "unaccounted": ("#FFFFFF", "||"),
    "warm": ("#D55E00", "//"),
    "cold": ("#56B4E9", "\\\\"),
    "gap": ("#DDDDDD", "xx"),
}

INK = "#222222"
LINES = {"air": dict(color=INK, lw=0.9), "egg": dict(color="#0072B2", lw=1.6, ls="--")}


def fill(key: str) -> dict:
    """Keyword arguments for a matplotlib patch that stands for `key`."""
    colour, hatch = FILLS.get(key, ("#BBBBBB", ""))
    return dict(facecolor=colour, hatch=hatch, edgecolor=INK, linewidth=0.6)


def subplots(rows=1, columns=1, *, size, **more):
    """``pyplot.subplots`` on a figure that shows every text as it is written: a flock called ``$_$`` is no formula."""
    import matplotlib.pyplot as plt

    return plt.subplots(rows, columns, figsize=size, layout="constrained", FigureClass=_as_written(), **more)


@cache
def _as_written():
    from matplotlib import rc_context
    from matplotlib.figure import Figure
    from matplotlib.text import Text

    class AsWritten(Figure):
        def draw(self, renderer):
            with rc_context({"text.parse_math": False}):  # for what drawing itself makes: the labels of ticks
                for text in self.findobj(Text):
                    text.set_parse_math(False)
                super().draw(renderer)

    return AsWritten


def axes(ax=None, *, size=(8.0, 3.6)):
    """`ax`, or new axes of the given size in inches, in the kit's plain look."""
    if ax is None:
        _, ax = subplots(size=size)
    for side in ("top", "right"):
        ax.spines[side].set_visible(False)
    ax.tick_params(colors=INK)
    return ax


def nothing(ax, words: str):
    """Axes that say why there is nothing to draw."""
    ax.text(0.5, 0.5, words, ha="center", va="center", color=INK, transform=ax.transAxes)
    ax.set_axis_off()
    return ax


def temperature_label(unit: str = "C", what: str = "Temperature") -> str:
    """Axis label with its unit."""
    return f"{what} (°{check_unit(unit)})"
