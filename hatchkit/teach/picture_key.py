"""The picture key of the breakout lab: candled views and opened eggs by day, positions, signs; side by side."""

from hatchkit.figures import egg_drawings
from hatchkit.figures.egg_candled import STOPPED, candled
from hatchkit.figures.egg_lying import LYING
from hatchkit.figures.egg_opened import opened
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


def _grid(items, draw, title, columns, *, height=1.9):
    axs = egg_drawings.in_a_grid(len(items), columns, height=height)
    for ax, item in zip(axs, items, strict=True):
        draw(ax, item, title(item))
    return axs


def views_key():
    """Candled eggs by day, and some that stopped.

    Returns
    -------
    ndarray of Axes, shape (drawings,)

    Notes
    -----
    Source: ``reference/embryo_stages.csv`` and ``breakout_guide.csv``; drawings, no substitute for photographs.
    """
    return _grid(VIEWS, candled, view_title, 6)


def by_day():
    """Opened eggs of the hen's days 0 to 21.

    Returns
    -------
    ndarray of Axes, shape (drawings,)

    Notes
    -----
    Source: ``reference/embryo_stages.csv`` and ``breakout_guide.csv``; drawings, no substitute for photographs.
    """
    return _grid(DAYS, opened, day_title, 6)


def positions_key():
    """The right position and seven that are wrong, the viewpoint said on each.

    Returns
    -------
    ndarray of Axes, shape (drawings,)

    Notes
    -----
    Source: ``reference/embryo_stages.csv`` and ``breakout_guide.csv``; drawings, no substitute for photographs.
    """
    return _grid(LYING, egg_drawings.egg, position_title, 4, height=2.0)


def signs_key():
    """Wet, dry, rotten.

    Returns
    -------
    ndarray of Axes, shape (drawings,)

    Notes
    -----
    Source: ``reference/embryo_stages.csv`` and ``breakout_guide.csv``; drawings, no substitute for photographs.
    """
    return _grid(SIGNS, egg_drawings.egg, sign_title, 3, height=2.0)
