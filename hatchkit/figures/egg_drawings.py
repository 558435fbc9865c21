"""Simple drawings of what lies in an unhatched egg: blunt end up, air cell on top.

They are schemes, not portraits: big dot = head, wedge = beak, thick line = wing, thin lines = legs.
"""

from __future__ import annotations

import numpy as np

from hatchkit.figures.style import INK, TEXT, wrapped

#: Head (x, y), beak direction in degrees (90 = up to the air cell), side of the wing over the head, feet height.
LYING = {
    "lie_right": dict(head=(0.14, 0.52), beak=75, wing="right over"),
    "lie_thighs": dict(head=(0.05, -0.45), beak=-60, wing=""),
    "lie_small_end": dict(head=(0.05, -0.82), beak=-80, wing="right down"),
    "lie_left": dict(head=(-0.14, 0.52), beak=105, wing="left over"),
    "lie_away": dict(head=(0.14, 0.45), beak=200, wing="right over"),
    "lie_feet": dict(head=(0.12, 0.42), beak=75, wing="right over", feet=0.72),
    "lie_above": dict(head=(0.2, 0.5), beak=65, wing="right under"),
}


def egg(ax, kind: str, title: str = ""):
    """Draw one egg of the breakout guide.

    Parameters
    ----------
    ax : Axes
    kind : str
        Value of the guide's `drawing` column.
    title : str
        Written under the egg.
    """
    ax.set(xlim=(-1.15, 1.15), ylim=(-1.75, 1.35), aspect="equal")
    ax.axis("off")
    _shell(ax)
    if kind in LYING:
        _lying(ax, **LYING[kind])
    elif kind in _STAGES:
        _STAGES[kind](ax)
    ax.text(0, -1.42, wrapped(title, 14), ha="center", va="top", fontsize=TEXT, color=INK)
    return ax


def _outline(count=120):
    angle = np.linspace(0, 2 * np.pi, count)
    # Blunter on top: the half width shrinks towards the pointed end.
    height = 1.25 * np.sin(angle)
    return np.cos(angle) * (0.93 + 0.10 * np.sin(angle)), height


def _shell(ax):
    x, y = _outline()
    ax.fill(x, y, facecolor="white", edgecolor=INK, lw=1.2)
    top = y > 0.82
    ax.fill(x[top], y[top], facecolor="#E4E4E4", edgecolor=INK, lw=0.8, hatch="--")


def _dot(ax, x, y, size, **look):
    from matplotlib.patches import Circle

    ax.add_patch(Circle((x, y), size, **{"facecolor": "#CFCFCF", "edgecolor": INK, "lw": 0.9, **look}))


def _yolk(ax, size=0.5, at=(0, -0.15)):
    _dot(ax, *at, size, facecolor="#F0E442")


def _clear(ax):
    _yolk(ax)
    _dot(ax, 0, -0.05, 0.05, facecolor="white")


def _ring(ax):
    _yolk(ax)
    _dot(ax, 0, -0.05, 0.14, facecolor="none")
    _dot(ax, 0, -0.05, 0.05, facecolor="white")


def _blood_ring(ax):
    _yolk(ax, 0.55)
    _dot(ax, 0, -0.1, 0.36, facecolor="none", edgecolor="#D55E00", lw=2.2)
    for angle in np.linspace(0.3, 6.0, 5):
        ax.plot(
            [0.36 * np.cos(angle), 0.52 * np.cos(angle)],
            [-0.1 + 0.36 * np.sin(angle), -0.1 + 0.52 * np.sin(angle)],
            color="#D55E00",
            lw=1,
        )


def _curled(ax, head, body, *, eye=True, at=(0, 0.1)):
    x, y = at
    _dot(ax, x - body * 0.2, y - head - body * 0.6, body)
    _dot(ax, x, y, head)
    if eye:
        _dot(ax, x + head * 0.25, y + head * 0.15, head * 0.38, facecolor="black")


def _eye(ax):
    _yolk(ax, 0.55)
    _curled(ax, 0.17, 0.14)


def _bird(ax):
    _yolk(ax, 0.48, (0, -0.5))
    _curled(ax, 0.22, 0.3, at=(0, 0.4))
    ax.plot([0.2, 0.34], [0.42, 0.36], color=INK, lw=2)


def _down(ax):
    _yolk(ax, 0.36, (0, -0.72))
    _curled(ax, 0.23, 0.42, at=(0.05, 0.5))
    ax.plot([0.26, 0.42], [0.5, 0.44], color=INK, lw=2)
    _hairs(ax, 0.42, (-0.03, 0.02))


def _hairs(ax, size, at):
    for angle in np.linspace(0, 2 * np.pi, 18):
        edge = np.array([np.cos(angle), np.sin(angle)])
        ax.plot(
            *np.stack([np.array(at) + size * edge, np.array(at) + (size + 0.08) * edge], axis=1), color=INK, lw=0.6
        )


def _late(ax):
    _lying(ax, **LYING["lie_right"])
    _yolk(ax, 0.24, (-0.25, -0.92))


def _yolk_half(ax):
    _lying(ax, **LYING["lie_right"])
    _yolk(ax, 0.14, (-0.1, -0.95))


def _yolk_in(ax):
    _lying(ax, **LYING["lie_right"])


def _pip(ax):
    _lying(ax, **LYING["lie_right"])
    ax.plot([0.18, 0.3, 0.42, 0.5], [1.02, 1.2, 1.05, 1.18], color=INK, lw=2)


def _lying(ax, *, head, beak, wing, feet=-0.75):
    from matplotlib.patches import Ellipse, Polygon

    ax.add_patch(Ellipse((0, -0.2), 1.25, 1.45, facecolor="#DDDDDD", edgecolor=INK, lw=0.9))
    for side in (-1, 1):  # legs: from the hip along the belly to the feet
        ax.plot([side * 0.25, side * 0.45, side * 0.3], [-0.55, (feet - 0.55) / 2, feet], color=INK, lw=1.2)
        ax.plot([side * 0.22, side * 0.3, side * 0.4], [feet + 0.08, feet, feet + 0.08], color=INK, lw=1.2)
    over = 6 if wing.endswith("over") else 2
    if wing:
        # the chick is seen from behind, so that its right wing is on the right; marked R or L
        side = 1 if wing.startswith("right") else -1
        end = (0.5, -0.75) if wing.endswith("down") else (head[0] - side * 0.12, head[1] + 0.16)
        ax.plot(
            [side * 0.6, side * 0.45, end[0]],
            [-0.1, 0.35 if end[1] > 0 else -0.4, end[1]],
            color=INK,
            lw=5,
            solid_capstyle="round",
            zorder=over,
        )
        ax.text(side * 1.22, 0.02, "R" if side > 0 else "L", fontsize=TEXT, ha="center", color=INK)
    _dot(ax, *head, 0.24, zorder=4, facecolor="#999999")
    direction = np.deg2rad(beak)
    tip = np.array(head) + 0.42 * np.array([np.cos(direction), np.sin(direction)])
    across = 0.09 * np.array([-np.sin(direction), np.cos(direction)])
    root = np.array(head) + 0.2 * np.array([np.cos(direction), np.sin(direction)])
    ax.add_patch(Polygon([root + across, root - across, tip], closed=True, facecolor=INK, zorder=5))


_STAGES = {
    "egg_clear": _clear,
    "egg_ring": _ring,
    "egg_blood_ring": _blood_ring,
    "embryo_eye": _eye,
    "embryo_bird": _bird,
    "embryo_down": _down,
    "embryo_late": _late,
    "embryo_yolk_half": _yolk_half,
    "embryo_yolk_in": _yolk_in,
    "embryo_pip": _pip,
}

#: Every drawing that the guide may name.
KINDS = (*_STAGES, *LYING)
