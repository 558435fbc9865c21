"""What the candle shows of a hen's egg, day by day, and of eggs that stopped."""

import numpy as np
from matplotlib.patches import Circle, Ellipse, Polygon

from hatchkit.figures import egg_shell as es
from hatchkit.figures import style
from hatchkit.figures.style import INK

#: Views that can be drawn beside those of a day.
STOPPED = ("clear", "blood_ring", "stopped_mid", "rotten")
GLOW, SHADE, DARK = "#F6C66B", "#C98A35", "#4A2A12"


def candled(ax, day, title="", *, language="en"):
    """Draw an egg before the candle, alive on `day` (0 to 20), or stopped (a name of `STOPPED`)."""
    es.frame(ax, title)
    es.shell(ax, inside=GLOW)
    if day in STOPPED:
        _STOPPED[day](ax, language)
        es.cover(ax)
        return ax
    cell = es.air_cell(
        ax, es.proportion("air_cell_mm", day), facecolor="#FFF3CF", edgecolor="#7A5A22", slope=3.0 if day >= 17 else 0.0
    )
    if day < 3:
        _yolk_shadow(ax, 0.25 + 0.1 * day)
    if 3 <= day < 8:
        _spider(ax, day)
    if day >= 6:
        _mass(ax, day)
    if day >= 19:
        _shadow_in_cell(ax, cell, language)
    es.cover(ax)
    return ax


def _yolk_shadow(ax, strength):
    for size in (1.0, 0.8, 0.6):
        ax.add_patch(Ellipse((0, 2), 33 * size, 31 * size, facecolor=SHADE, alpha=0.28 * strength + 0.06, zorder=2))


def _spider(ax, day):
    at = (0.0, 5.0)
    reach = es.proportion("vessels_mm", min(day, 5)) / 2
    _yolk_shadow(ax, 0.6)
    for place in range(7):
        angle = 2 * np.pi * place / 7 + 0.3
        es.branches(
            ax,
            at,
            angle,
            reach * 0.36,
            width=1.0 if day < 5 else 1.4,
            levels=4,
            limit=es.inside_egg(2.5),
            bend=0.25 * (-1) ** place,
        )
    size = es.proportion("embryo_mm", day)
    ax.add_patch(Circle(at, size * 0.28, facecolor="#8C3B22", zorder=4))
    if day >= 4:
        eye = es.proportion("eye_mm", day)
        ax.add_patch(Circle((at[0] + size * 0.18, at[1] + size * 0.12), max(eye / 2, 0.8), facecolor="black", zorder=5))


def _mass(ax, day):
    """The shadow of embryo and yolk, darker and larger day by day; the net of vessels where light still passes."""
    bottom = np.interp(day, [6, 8, 10, 12, 14, 16], [-2, -8, -14, -20, -26, -29])
    alpha = float(np.interp(day, [6, 8, 10, 14, 17], [0.25, 0.5, 0.7, 0.9, 1.0]))
    level = es.LENGTH / 2 - es.proportion("air_cell_mm", day) - 1.0
    wide = float(np.interp(day, [6, 8, 10, 12, 14, 16, 18], [15, 24, 32, 38, 44, 50, 60]))
    top = float(np.interp(day, [6, 10, 14, 16], [level - 4, level - 2, level + 1, level + 14]))
    if day >= 18:
        bottom = -40
    for shrink in (1.0, 0.86, 0.72) if day < 15 else (1.0,):  # a soft edge
        ax.add_patch(
            Ellipse(
                (1, (top + bottom) / 2),
                wide * shrink,
                (top - bottom) * shrink,
                facecolor=DARK,
                alpha=alpha if day >= 15 else alpha * 0.55,
                lw=0,
                zorder=3,
            )
        )
    if 8 <= day < 15:
        for side in (-1, 1):
            for start, lean in ((6, 0.3), (-4, -0.3), (-12, -0.9)):
                way = lean if side > 0 else np.pi - lean
                es.branches(ax, (side * 4, start), way, 9, width=1.0, levels=5, limit=es.inside_egg(1.2), zorder=2.5)


def _shadow_in_cell(ax, cell, language):
    top = float(cell.max())
    ax.add_patch(Polygon([(3, top - 3), (11, top - 2.4), (8.4, top + 5.2)], closed=True, facecolor=DARK, zorder=7))
    ax.annotate(
        style.tell("beak", language),
        (8.4, top + 3),
        xytext=(25, 28),
        fontsize=6,
        color=INK,
        ha="center",
        zorder=30,
        arrowprops=dict(arrowstyle="-", lw=0.6, color=INK),
    )


def _clear(ax, language):
    es.air_cell(ax, es.proportion("air_cell_mm", 7), facecolor="#FFF3CF", edgecolor="#7A5A22")
    _yolk_shadow(ax, 0.3)


def _blood_ring(ax, language):
    es.air_cell(ax, es.proportion("air_cell_mm", 7), facecolor="#FFF3CF", edgecolor="#7A5A22")
    _yolk_shadow(ax, 0.4)
    ax.add_patch(Ellipse((0, 3), 27, 22, facecolor="none", edgecolor=es.BLOOD, lw=2.2, zorder=4))
    for angle in (0.4, 2.0, 3.9, 5.2):
        es.branches(ax, (13.5 * np.cos(angle), 3 + 11 * np.sin(angle)), angle + np.pi, 3, width=0.7, levels=2)


def _stopped_mid(ax, language):
    es.air_cell(ax, es.proportion("air_cell_mm", 14), facecolor="#FFF3CF", edgecolor="#7A5A22", ls="--", slope=2.0)
    ax.add_patch(Ellipse((1, -8), 26, 30, angle=15, facecolor=DARK, alpha=0.75, zorder=3))
    ax.text(0, 9, style.tell("no_vessels", language), ha="center", fontsize=6, color=INK, zorder=8)


def _rotten(ax, language):
    es.air_cell(ax, es.proportion("air_cell_mm", 12), facecolor="#FFF3CF", edgecolor="#7A5A22", slope=-4.0)
    rng = np.random.default_rng(2)
    x, y = rng.uniform(-20, 20, 170), rng.uniform(-27, 16, 170)
    keep = es.inside_egg(3)(x, y)
    ax.scatter(x[keep], y[keep], s=rng.uniform(8, 90, keep.sum()), color="#5B5A2A", alpha=0.45, lw=0, zorder=3)


_STOPPED = {"clear": _clear, "blood_ring": _blood_ring, "stopped_mid": _stopped_mid, "rotten": _rotten}
