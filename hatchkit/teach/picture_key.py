"""The picture key of the breakout lab: candled views and opened eggs by day, positions, signs; side by side."""

import numpy as np

from hatchkit.figures import egg_drawings
from hatchkit.figures.egg_candled import STOPPED, candled
from hatchkit.figures.egg_lying import LYING
from hatchkit.figures.egg_opened import opened
from hatchkit.figures.style import subplots
from hatchkit.say import text

VIEWS = (0, 3, 4, 5, 6, 7, 10, 12, 14, 16, 18, 20, *STOPPED)
DAYS = (0, "disc", *range(1, 22))
SIGNS = ("sign_wet", "sign_dry", "sign_rotten")


def view_title(view) -> str:
    """What is written under a candled egg: its day, or what stopped it."""
    return text(f"teach_view_{view}") if view in STOPPED else text("teach_sheet_day", dict(day=view))


def day_title(day) -> str:
    """What is written under an opened egg."""
    names = {0: "teach_sheet_nothing", "disc": "teach_sheet_ring"}
    return text(names[day]) if day in names else text("teach_sheet_day", dict(day=day))


def position_title(kind) -> str:
    """What is written under a chick that lies right or wrongly."""
    return text(f"teach_{kind}")


def sign_title(kind) -> str:
    """What is written under a sign."""
    return text("teach_view_rotten" if kind == "sign_rotten" else f"teach_{kind}")


def _grid(items, draw, columns, *, height=1.9):
    lines = -(-len(items) // columns)
    figure, grid = subplots(lines, columns, size=(1.35 * columns, height * lines))
    axs = np.atleast_1d(grid).ravel()
    for spare in axs[len(items) :]:
        figure.delaxes(spare)
    for ax, item in zip(axs, items, strict=False):
        draw(ax, item)
    return axs[: len(items)]


def views_key(columns=6):
    """Candled eggs by day, and some that stopped.

    Parameters
    ----------
    columns : int
        Drawings side by side.

    Returns
    -------
    ndarray of Axes, shape (drawings,)

    Notes
    -----
    Source: ``reference/embryo_stages.csv`` and ``breakout_guide.csv``; drawings, no substitute for photographs.
    """
    return _grid(VIEWS, lambda ax, view: candled(ax, view, view_title(view)), columns)


def by_day(columns=6):
    """Opened eggs of the hen's days 0 to 21.

    Parameters
    ----------
    columns : int
        Drawings side by side.

    Returns
    -------
    ndarray of Axes, shape (drawings,)

    Notes
    -----
    Source: ``reference/embryo_stages.csv`` and ``breakout_guide.csv``; drawings, no substitute for photographs.
    """
    return _grid(DAYS, lambda ax, day: opened(ax, day, day_title(day)), columns)


def positions_key(columns=4):
    """The right position and seven that are wrong, the viewpoint said on each.

    Parameters
    ----------
    columns : int
        Drawings side by side.

    Returns
    -------
    ndarray of Axes, shape (drawings,)

    Notes
    -----
    Source: ``reference/embryo_stages.csv`` and ``breakout_guide.csv``; drawings, no substitute for photographs.
    """
    return _grid(tuple(LYING), lambda ax, kind: egg_drawings.egg(ax, kind, position_title(kind)), columns, height=2.0)


def signs_key(columns=3):
    """Wet, dry, rotten.

    Parameters
    ----------
    columns : int
        Drawings side by side.

    Returns
    -------
    ndarray of Axes, shape (drawings,)

    Notes
    -----
    Source: ``reference/embryo_stages.csv`` and ``breakout_guide.csv``; drawings, no substitute for photographs.
    """
    return _grid(SIGNS, lambda ax, kind: egg_drawings.egg(ax, kind, sign_title(kind)), columns, height=2.0)
