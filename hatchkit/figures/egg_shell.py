"""A hen's egg of 60 g in millimetres, blunt end up: outline, air cell, scale, and what a drawing knows of a day.

Schemes drawn from stated proportions (``reference/embryo_proportions.csv``), no substitute for photographs.
"""

from functools import cache

import numpy as np
from matplotlib.patches import PathPatch

from hatchkit import reference
from hatchkit.figures.style import INK

#: Length and breadth of a hen's egg of about 60 g, mm (common practice); the volume comes out near 55 ml.
LENGTH, BREADTH = 57.0, 43.5
SHELL, ALBUMEN, YOLK, BLOOD, FLESH, AIR = "#F4EBDD", "#FBF8EE", "#F3C74F", "#A32020", "#E9B9A6", "#FFFFFF"


def half_width(y):
    """Half the breadth at the height `y` mm above the middle; the blunt end is up."""
    u = 2 * np.asarray(y, dtype=float) / LENGTH
    return BREADTH / 2 * np.sqrt(np.clip(1 - u**2, 0, None)) * (1 + 0.10 * u) / 1.005


def outline(count=160, shrink=0.0):
    """x and y of the shell's edge, mm, anticlockwise; `shrink` mm further in."""
    angle = np.linspace(0, 2 * np.pi, count)
    y = LENGTH / 2 * np.sin(angle)
    x = half_width(y) * np.where(np.cos(angle) >= 0, 1, -1)
    keep = 1 - 2 * shrink / BREADTH
    return x * keep, y * keep


@cache
def _proportions():
    table = reference.load("embryo_proportions")
    return {item: (rows["day"].to_numpy(float), rows["value"].to_numpy(float)) for item, rows in table.groupby("item")}


def proportion(item, day) -> float:
    """The stated figure of a day, between its days straight, 0 before the first; the last one holds on."""
    days, values = _proportions()[item]
    if item == "yolk_mm" and day >= 19.5:
        return 0.0
    return float(np.interp(day, days, values, left=0.0))


def frame(ax, title="", *, below=-34.5, above=33.0):
    """Axes of one egg, in millimetres, with its title under it; `above` leaves room for words over the shell."""
    import textwrap

    ax.set(xlim=(-31, 31), ylim=(-52, above), aspect="equal")
    ax.axis("off")
    ax.text(0, below, "\n".join(textwrap.wrap(title, 22)), ha="center", va="top", fontsize=7.5, color=INK, zorder=30)
    return ax


def cover(ax):
    """Hide what was drawn beyond the shell, and draw its edge anew: the last thing to do."""
    from matplotlib.path import Path

    x, y = outline()
    around = [(-32, -53), (32, -53), (32, 34), (-32, 34), (-32, -53)]
    inner = list(zip(x[::-1], y[::-1], strict=True))
    ring = [Path.MOVETO, *[Path.LINETO] * (len(inner) - 2), Path.CLOSEPOLY]
    codes = [Path.MOVETO, *[Path.LINETO] * 3, Path.CLOSEPOLY, *ring]
    ax.add_patch(PathPatch(Path(around + inner, codes), facecolor="white", edgecolor="none", zorder=20))
    ax.fill(x, y, facecolor="none", edgecolor=INK, lw=1.4, zorder=21)


def shell(ax, *, inside=ALBUMEN, edge=INK, lw=1.4):
    """The egg, filled."""
    ax.fill(*outline(), facecolor=inside, edgecolor=edge, lw=lw, zorder=1)


def air_cell(ax, height, *, facecolor=AIR, edgecolor=INK, ls="-", slope=0.0, zorder=6):
    """The air cell, `height` mm from the blunt end down, its lower edge a shallow bowl, aslant by `slope` mm."""
    level = LENGTH / 2 - height
    y = np.linspace(level, LENGTH / 2, 60)
    right, left = half_width(y) * 0.985, -half_width(y[::-1]) * 0.985
    edge = np.linspace(left[-1], right[0], 40)
    bowl = level - 1.2 * (1 - (edge / max(right[0], 1e-9)) ** 2) + slope * edge / max(right[0], 1e-9)
    ax.fill(
        np.concatenate([edge, right, left]),
        np.concatenate([bowl, y, y[::-1]]),
        facecolor=facecolor,
        edgecolor="none",
        zorder=zorder,
    )
    ax.plot(edge, bowl, color=edgecolor, lw=1.1, ls=ls, zorder=zorder + 0.1)
    return bowl


def scale_bar(ax):
    """Ten millimetres."""
    ax.plot([15, 25], [-30.5, -30.5], color=INK, lw=1.6, solid_capstyle="butt", zorder=30)
    ax.text(20, -29.8, "10 mm", ha="center", va="bottom", fontsize=6, color=INK, zorder=30)


def branches(ax, start, angle, length, *, width, colour=BLOOD, levels=4, spread=0.5, limit=None, zorder=3, bend=0.15):
    """A vessel that parts in two, again and again; what would leave `limit` (a test of x, y) is not drawn."""
    from matplotlib.collections import LineCollection

    grown = list(_grown(start, angle, length, width, levels, spread, limit, bend))
    if grown:
        lines, widths = zip(*grown, strict=True)
        ax.add_collection(LineCollection(lines, linewidths=widths, colors=colour, capstyle="round", zorder=zorder))


def _grown(start, angle, length, width, levels, spread, limit, bend):
    """(points, width) of the vessel and of all into which it parts."""
    if levels == 0 or length < 0.6:
        return
    steps = np.linspace(0, 1, 7)
    turned = angle + bend * np.sin(np.pi * steps)
    x = start[0] + np.concatenate([[0], np.cumsum(np.cos(turned[1:]) * length / 6)])
    y = start[1] + np.concatenate([[0], np.cumsum(np.sin(turned[1:]) * length / 6)])
    inside = np.ones(len(x), dtype=bool) if limit is None else limit(x, y)
    stop = len(x) if inside.all() else int(np.argmin(inside))
    if stop < 2:
        return
    yield np.column_stack([x, y])[:stop], width
    if stop == len(x):
        for side in (-1, 1):
            yield from _grown(
                (x[-1], y[-1]),
                angle + side * spread,
                length * 0.72,
                width * 0.7,
                levels - 1,
                spread * 0.9,
                limit,
                -side * bend,
            )


def inside_egg(margin=1.5):
    """A test whether points lie within the shell by `margin` mm."""
    return lambda x, y: (np.abs(y) < LENGTH / 2 - margin) & (np.abs(x) < half_width(y) - margin)
