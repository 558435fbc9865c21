"""The drawings of the breakout guide by the keys of its looks; what each shows is in `egg_opened`, `egg_lying`.

Schemes from stated proportions, no portraits and no substitute for photographs.
"""

import numpy as np
from matplotlib.patches import Circle

from hatchkit.figures import egg_shell as es
from hatchkit.figures import style
from hatchkit.figures.egg_candled import candled
from hatchkit.figures.egg_lying import LYING, lying
from hatchkit.figures.egg_opened import opened
from hatchkit.figures.style import INK, subplots

#: Stages of the guide -> the hen's day that is drawn for them.
_DAYS = {
    "egg_clear": 0,
    "egg_ring": "disc",
    "embryo_eye": 6,
    "embryo_bird": 9,
    "embryo_down": 13,
    "embryo_late": 17,
    "embryo_yolk_half": 19,
    "embryo_yolk_in": 20,
    "embryo_pip": 21,
}


def egg(ax, kind: str, title: str = "", *, language: str = "en"):
    """Draw one egg of the breakout guide.

    Parameters
    ----------
    ax : Axes
    kind : str
        Value of the guide's `look` column; one of `KINDS`.
    title : str
        Written under the egg.
    language : str
        Of the words within the drawing.
    """
    if kind in _DAYS:
        return opened(ax, _DAYS[kind], title, language=language)
    if kind in LYING:
        es.frame(ax, title, below=-40)
        es.shell(ax)
        es.air_cell(ax, es.proportion("air_cell_mm", 19))
        lying(ax, kind, seen=True, language=language)
        es.cover(ax)
        return ax
    return _SIGNS[kind](ax, title, language)


def in_a_grid(count: int, columns: int, *, height: float = 1.9):
    """Axes for so many drawings, `columns` side by side, each `height` inches high; ndarray of shape (count,)."""
    lines = -(-count // columns)
    figure, grid = subplots(lines, columns, size=(1.35 * columns, height * lines))
    axs = np.atleast_1d(grid).ravel()
    for spare in axs[count:]:
        figure.delaxes(spare)
    return axs[:count]


def _blood_ring(ax, title, language):
    es.frame(ax, title)
    es.scale_bar(ax)
    es.shell(ax)
    es.air_cell(ax, es.proportion("air_cell_mm", 4))
    ax.add_patch(Circle((0, -3), 17, facecolor=es.YOLK, edgecolor="#8A6A10", lw=0.9, zorder=2))
    ax.add_patch(Circle((0, 4), 10, facecolor="none", edgecolor=es.BLOOD, lw=2.2, zorder=3))
    for angle in np.linspace(0.3, 6.0, 6):
        es.branches(ax, (10 * np.cos(angle), 4 + 10 * np.sin(angle)), angle + np.pi, 2.6, width=0.8, levels=2)
    return ax


#: Where words stand beside an egg: over the shell at either corner, two lines of them, and under its left side.
_CORNERS = {
    "left": dict(xytext=(-29.5, 38), ha="left", va="top"),
    "right": dict(xytext=(29.5, 38), ha="right", va="top"),
    "below": dict(xytext=(-29.5, -32), ha="left", va="baseline"),
}


def _point_at(ax, code, language, place, corner):
    """Words in a corner beside the egg with a thin line to what they name."""
    line = dict(arrowstyle="-", lw=0.6, color=INK)
    words = style.tell(code, language)
    ax.annotate(words, place, fontsize=6, color=INK, zorder=30, arrowprops=line, **_CORNERS[corner])


def _wet(ax, title, language):
    """Too little water lost: a small air cell, fluid, a swollen neck."""
    es.frame(ax, title, above=38)
    es.shell(ax, inside="#DCEBF5")
    es.air_cell(ax, 4.0)
    lying(ax, "lie_right", yolk=14, language=language)
    es.cover(ax)
    for x, y in ((-14, -20), (-8, -25), (2, -26), (12, -20), (-17, 6), (17, -8)):
        ax.plot(x, y, marker="o", ms=3.2, color="#3D6FA5", zorder=9)
    _point_at(ax, "swollen_neck", language, (9, 1), "right")
    _point_at(ax, "small_cell", language, (4, 26), "left")
    return ax


def _dry(ax, title, language):
    """Too much water lost: a large air cell, a tight dry skin, down stuck to the shell."""
    es.frame(ax, title, above=38)
    es.shell(ax, inside="#FFFDF6")
    es.air_cell(ax, 15.0)
    lying(ax, "lie_right", language=language)
    es.cover(ax)
    x, y = es.outline(200, shrink=2.4)
    low = y < 12
    ax.plot(np.where(low, x, np.nan), np.where(low, y, np.nan), color="#8A6A10", lw=1.6, ls=(0, (2, 1)), zorder=22)
    _point_at(ax, "dry_skin", language, (-17, -11), "below")
    _point_at(ax, "large_cell", language, (0, 22), "left")
    return ax


def _smell(ax, title, language):
    return candled(ax, "rotten", title, language=language)


_SIGNS = {"egg_blood_ring": _blood_ring, "sign_wet": _wet, "sign_dry": _dry, "sign_rotten": _smell}

#: Every drawing that the guide may name.
KINDS = (*_DAYS, *LYING, *_SIGNS)
