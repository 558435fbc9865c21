"""How the chick lies before the hatch: right, and seven ways that are wrong. Each says from where it is seen."""

import numpy as np
from matplotlib.patches import Circle, Ellipse, Polygon

from hatchkit.figures import egg_shell as es
from hatchkit.figures import style
from hatchkit.figures.style import INK

#: Head (x, y) mm, direction of the beak in degrees (90: up to the air cell), wing over the head, feet's height.
LYING = {
    "lie_right": dict(head=(7, 4), beak=80, wing="R over"),
    "lie_thighs": dict(head=(1, -14), beak=-80, wing=""),
    "lie_small_end": dict(head=(6, -18), beak=-70, wing="R over"),
    "lie_left": dict(head=(-7, 4), beak=100, wing="L over"),
    "lie_away": dict(head=(8, 3), beak=-30, wing="R over"),
    "lie_feet": dict(head=(7, 3), beak=80, wing="R over", feet=10.5),
    "lie_above": dict(head=(7, 4), beak=80, wing="R under"),
    "lie_across": dict(head=(13, -1), beak=0, wing="", across=True),
}


def lying(ax, kind, *, yolk=0.0, beak_in_cell=False, down=1.0, pip=False, seen=False, language="en"):
    """Draw the chick of `kind` into an egg that is drawn already.

    Parameters
    ----------
    yolk : float
        Width in mm of the yolk sac that is still outside.
    beak_in_cell, pip : bool
        The beak is through the inner skin; the shell is broken.
    down : float
        Share of full down.
    seen : bool
        Write the viewpoint under the egg's shell.
    language : str
        Of the words.
    """
    way = dict(LYING[kind])
    across, feet = way.pop("across", False), way.pop("feet", -19.0)
    if beak_in_cell:  # the neck is stretched for the inner skin
        way["head"] = (way["head"][0], way["head"][1] + 5.5)
    if yolk:
        ax.add_patch(
            Ellipse((-2, -19), yolk * 1.1, yolk * 0.7, facecolor=es.YOLK, edgecolor="#8A6A10", lw=0.9, zorder=2.2)
        )
    size = (30, 23) if across else (31, 34)
    body = Ellipse((0, -3 if across else -4), *size, facecolor="#EAD79A", edgecolor="#8A7130", lw=1.0, zorder=2.4)
    ax.add_patch(body)
    _tufts(ax, body, down)
    for side in (-1, 1):
        hip, knee = (side * 7, -12), (side * 14, (feet - 6) / 2 if feet < 0 else 0)
        foot = (side * (8 if feet < 0 else 4), feet)
        if across:
            hip, knee, foot = (-10, -8 + side * 4), (-15, side * 7), (-9, side * 10 + 2)
        high = 6.5 if feet > 0 else 2.6
        ax.plot(*zip(hip, knee, foot, strict=True), color="#B9872F", lw=1.8, zorder=high)
        for turn in (-1.6, 0, 1.6):
            up = 3.0 if feet > 0 else -2.2
            ax.plot([foot[0], foot[0] + turn], [foot[1], foot[1] + up], color="#B9872F", lw=1.2, zorder=high)
    _wings(ax, way["wing"], way["head"], across, language)
    _head(ax, way["head"], way["beak"], through=beak_in_cell, under=way["wing"].endswith("over"))
    if pip:
        x = es.half_width(21.5)
        ax.fill(
            [x + 1, x - 4.5, x - 2.6, x - 6.5, x - 2.4, x - 4.0, x + 1],
            [26, 25, 22.5, 21, 19.5, 17, 16.5],
            facecolor="white",
            edgecolor=INK,
            lw=1.2,
            zorder=9,
        )
    if seen:
        ax.text(
            0,
            -30.4,
            style.tell("seen_from", language),
            ha="center",
            va="top",
            fontsize=6,
            style="italic",
            color=INK,
            zorder=30,
        )


def _tufts(ax, body, down):
    angle = np.linspace(0, 2 * np.pi, int(10 + 34 * down), endpoint=False)
    wide, high = body.width / 2, body.height / 2
    for one in angle:
        edge = np.array([wide * np.cos(one), high * np.sin(one)])
        far = edge * (1 + 1.6 / np.hypot(*edge))
        ax.plot(
            *zip(np.array(body.center) + edge, np.array(body.center) + far, strict=True),
            color="#8A7130",
            lw=0.6,
            zorder=2.4,
        )


def _wings(ax, wing, head, across, language):
    """Both wings; the one over or under the head reaches to it."""
    if across:  # its head to your right: its left wing is up, its right one down
        for side, name in ((1, "L"), (-1, "R")):
            shape = [(5, side * 6 - 3), (6, side * 9.5 - 3), (-7, side * 9 - 3), (-7, side * 7 - 3)]
            ax.add_patch(Polygon(shape, closed=True, facecolor="#D2B565", edgecolor="#6A5520", lw=1.0, zorder=6))
            _wing_name(ax, (-1, side * 14 - 3), name, language, va="center")
        return
    for side, name in ((1, "R"), (-1, "L")):
        over = wing.startswith(name)
        shoulder = np.array([side * 14.5, -8.0 if head[1] > 0 else 2.0] if over else [side * 11.0, 5.0])
        tip = (
            np.array([head[0] - side * 4.5, head[1] + (3.0 if head[1] > 0 else -3.0)])
            if over
            else np.array([side * 15.5, -12.0])
        )
        way = tip - shoulder
        aside = np.array([-way[1], way[0]]) / max(np.hypot(*way), 1e-9) * 3.4
        shape = [shoulder - aside, shoulder + aside, tip + aside * 0.35, tip - aside * 0.35]
        ax.add_patch(
            Polygon(
                shape,
                closed=True,
                facecolor="#D2B565",
                edgecolor="#6A5520",
                lw=1.0,
                zorder=6 if over and wing.endswith("over") else 3,
            )
        )
        _wing_name(ax, (side * 17.6, 1.5), name, language)


def _wing_name(ax, at, name, language, **look):
    """The letter of the right or left wing in the reader's language."""
    letter = style.tell(f"wing_{name}", language)
    ax.text(*at, letter, fontsize=7, ha="center", color=INK, zorder=7, fontweight="bold", **look)


def _head(ax, at, beak, *, through, under):
    ax.add_patch(Circle(at, 6.2, facecolor="#EAD79A", edgecolor="#8A7130", lw=1.0, zorder=4 if under else 5))
    turned = np.deg2rad(beak)
    way, aside = np.array([np.cos(turned), np.sin(turned)]), np.array([-np.sin(turned), np.cos(turned)])
    root, tip = np.array(at) + 5.4 * way, np.array(at) + 10.5 * way
    ax.add_patch(
        Polygon(
            [root + 2.2 * aside, tip, root - 2.2 * aside],
            closed=True,
            facecolor="#B9872F",
            edgecolor=INK,
            lw=0.7,
            zorder=8 if through else 5.5,
        )
    )
    ax.add_patch(Circle(np.array(at) + 2.5 * way + 2.2 * aside, 1.1, facecolor="black", zorder=8 if under else 5.5))
