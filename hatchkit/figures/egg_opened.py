"""A hen's egg opened on each day from 1 to 21: yolk, vessels, membrane, embryo, with a scale."""

import numpy as np
from matplotlib.patches import Circle, Ellipse, Polygon

from hatchkit.figures import egg_shell as es
from hatchkit.figures.egg_lying import lying
from hatchkit.figures.style import INK


def opened(ax, day, title="", *, scale=True, language="en"):
    """Draw the opened egg of a hen's `day` (0 to 21; 0: nothing grew, "disc": a fertile disc)."""
    es.frame(ax, title)
    if scale:
        es.scale_bar(ax)
    es.shell(ax)
    number = 0 if day == "disc" else day
    es.air_cell(ax, es.proportion("air_cell_mm", number))
    if number >= 15:
        lying(
            ax,
            "lie_right",
            yolk=es.proportion("yolk_mm", number),
            beak_in_cell=number >= 20,
            down=es.proportion("down_share", number),
            pip=number >= 21,
            language=language,
        )
        es.cover(ax)
        return ax
    yolk = es.proportion("yolk_mm", number)
    middle = (0.0, float(np.interp(number, [0, 5, 10, 14], [-2, -4, -11, -16])))
    _round(ax, middle, yolk / 2, facecolor=es.YOLK, edgecolor="#8A6A10", zorder=2)
    roof = es.LENGTH / 2 - es.proportion("air_cell_mm", number) - 2.0
    top = (0.0, min(5.0, roof - 0.62 * es.proportion("embryo_mm", number)))
    if number == 0:
        es.cover(ax)
        _disc(ax, top, fertile=day == "disc")
        return ax
    _membrane(ax, number)
    _vessels(ax, number, top, yolk)
    _amnion_and_embryo(ax, number, top)
    es.cover(ax)
    if number <= 3:
        size = es.proportion("embryo_mm", number)
        _lens(ax, top, lambda inset: embryo(inset, number), max(size * 0.75, 3.0))
    return ax


def _round(ax, at, size, **look):
    ax.add_patch(Circle(at, size, **{"facecolor": "none", "edgecolor": INK, "lw": 0.9, **look}))


def _disc(ax, at, *, fertile):
    """An infertile spot is dense and small; a fertile disc is a ring of 3 to 4 mm with a clearer middle."""
    if fertile:
        _round(ax, at, 1.8, facecolor="white", zorder=3)
        _round(ax, at, 0.9, facecolor=es.YOLK, edgecolor="none", zorder=3.1)
    else:
        _round(ax, at, 0.8, facecolor="white", zorder=3)
    _lens(
        ax,
        at,
        lambda inset: (
            (
                _round(inset, (0, 0), 1.8, facecolor="white"),
                _round(inset, (0, 0), 0.9, facecolor=es.YOLK, edgecolor="none"),
            )
            if fertile
            else _round(inset, (0, 0), 0.8, facecolor="white")
        ),
        3.2,
    )


def _lens(ax, at, draw, half):
    """The same once more, enlarged, in a circle beside the egg."""
    inset = ax.inset_axes([0.70, 0.715, 0.30, 0.30 * 62 / 85], zorder=40)
    inset.set(xlim=(-half, half), ylim=(-half, half), aspect="equal")
    inset.axis("off")
    inset.add_patch(Circle((0, 0), half * 0.98, facecolor=es.YOLK, edgecolor=INK, lw=0.9))
    draw(inset)
    ax.plot([at[0], 15], [at[1], 17], color=INK, lw=0.5, ls=":", zorder=30)
    ax.text(21.5, 28.6, f"x {9.3 / half:.0f}", fontsize=6, ha="center", va="bottom", color=INK, zorder=30)


def _membrane(ax, day):
    """The allantois, lining more and more of the shell: a blue edge."""
    share = es.proportion("membrane_share", day)
    if share < 0.03:
        return
    x, y = es.outline(400, shrink=1.3)
    angle = np.abs(np.angle(np.exp(1j * (np.linspace(0, 2 * np.pi, 400) - np.pi / 3))))
    part = np.where(angle <= np.pi * share, 1.0, np.nan)
    ax.plot(x * part, y * part, color="#3D6FA5", lw=2.4, zorder=2.6, solid_capstyle="round")


def _vessels(ax, day, top, yolk):
    reach = es.proportion("vessels_mm", min(day, 5)) / 2
    if day < 2:
        return
    if day < 5:  # the field ends in a ring
        _round(ax, top, min(reach, yolk / 2 + 2), edgecolor=es.BLOOD, lw=1.4, zorder=3)
    limit = es.inside_egg(2.2)
    for place in range(6 if day < 5 else 8):
        angle = 2 * np.pi * place / (6 if day < 5 else 8) + 0.35
        es.branches(
            ax,
            top,
            angle,
            min(reach, 19) * 0.36,
            width=0.8 if day < 4 else 1.1,
            levels=4,
            limit=limit,
            bend=0.2 * (-1) ** place,
        )


def _amnion_and_embryo(ax, day, top):
    size = es.proportion("embryo_mm", day)
    if day >= 4:  # the bag of water
        _round(ax, top, size * 0.62, facecolor="#E4F0F8", edgecolor="#7FA6C4", alpha=0.8, zorder=4)
    embryo(ax, day, at=top)


def embryo(ax, day, at=(0.0, 0.0), zorder=5):
    """The embryo alone, lying on its left side, in its size in mm."""
    size = es.proportion("embryo_mm", day)
    if day < 3:
        _straight(ax, size, at, day, zorder)
        return
    curl = float(np.interp(day, [3, 4, 7, 10, 14], [3.6, 4.4, 3.6, 2.9, 2.5]))
    head = size * float(np.interp(day, [3, 5, 7, 10, 14], [0.20, 0.24, 0.25, 0.21, 0.17]))
    body = size * float(np.interp(day, [3, 5, 7, 10, 14], [0.09, 0.13, 0.17, 0.21, 0.23]))
    angle = np.linspace(0.9, 0.9 + curl, 40)
    arc = size * 0.30
    x, y = at[0] + arc * np.cos(angle), at[1] + arc * np.sin(angle)
    thick = body * (0.45 + 0.8 * np.sin(np.linspace(0.25, np.pi, 40)) ** 0.8)
    thick[-8:] *= np.linspace(1, 0.25, 8)
    out = np.stack([np.cos(angle), np.sin(angle)])
    spine = np.stack([x, y])
    edge = np.concatenate([spine + thick * out, (spine - np.minimum(thick, arc * 0.9) * out)[:, ::-1]], axis=1)
    ax.fill(*edge, facecolor=es.FLESH, edgecolor="#B98672", lw=0.5, joinstyle="round", zorder=zorder)
    place = (at[0] + arc * np.cos(0.75) + head * 0.35, at[1] + arc * np.sin(0.75) - head * 0.10)
    _limbs(ax, day, (x, y), size, zorder)
    _down(ax, day, (x, y, thick), zorder)
    _round(ax, place, head, facecolor=es.FLESH, edgecolor="#8A5A48", lw=0.6, zorder=zorder + 0.3)
    _face(ax, day, place, head, zorder)
    if day < 6:  # the heart outside the breast
        _round(
            ax,
            (at[0] + arc * 0.15, at[1] + arc * 0.45),
            size * 0.06,
            facecolor=es.BLOOD,
            edgecolor="none",
            zorder=zorder + 0.4,
        )


def _straight(ax, size, at, day, zorder):
    ax.add_patch(
        Ellipse(
            at,
            size * 1.25,
            size * (0.8 if day < 2 else 0.6),
            facecolor="#FFF7DD",
            edgecolor="#B9A25A",
            lw=0.7,
            zorder=zorder - 0.5,
        )
    )
    ax.plot([at[0] - size / 2, at[0] + size / 2], [at[1], at[1]], color="#8A5A48", lw=1.6, zorder=zorder)
    if day >= 2:
        _round(ax, (at[0] + size / 2, at[1]), size * 0.12, facecolor=es.FLESH, edgecolor="#8A5A48", zorder=zorder)
        _round(
            ax,
            (at[0] + size * 0.2, at[1] - size * 0.12),
            size * 0.07,
            facecolor=es.BLOOD,
            edgecolor="none",
            zorder=zorder,
        )


def _limbs(ax, day, spine, size, zorder):
    if day < 3:
        return
    x, y = spine
    long = size * float(np.interp(day, [3, 5, 7, 10, 14], [0.05, 0.12, 0.20, 0.28, 0.34]))
    for place, lean in ((13, -0.5), (27, 0.3)):
        middle = np.array([x.mean(), y.mean()])
        root = np.array([x[place], y[place]])
        way = middle - root
        way = way / max(np.hypot(*way), 1e-9)
        way = np.array([way[0] * np.cos(lean) - way[1] * np.sin(lean), way[0] * np.sin(lean) + way[1] * np.cos(lean)])
        tip = root + way * long
        ax.plot(
            [root[0], tip[0]],
            [root[1], tip[1]],
            color="#C98970",
            lw=2.2 if day > 5 else 3.0,
            solid_capstyle="round",
            zorder=zorder + 0.5,
        )
        if day >= 7:
            for turn in (-0.5, 0.0, 0.5):
                toe = (
                    np.array(
                        [way[0] * np.cos(turn) - way[1] * np.sin(turn), way[0] * np.sin(turn) + way[1] * np.cos(turn)]
                    )
                    * long
                    * 0.28
                )
                ax.plot(
                    [tip[0], tip[0] + toe[0]], [tip[1], tip[1] + toe[1]], color="#C98970", lw=0.9, zorder=zorder + 0.5
                )


def _face(ax, day, place, head, zorder):
    eye = es.proportion("eye_mm", day)
    if eye:
        dark = day >= 4
        _round(
            ax,
            (place[0] + head * 0.15, place[1] + head * 0.1),
            min(eye / 2, head * 0.72),
            facecolor="black" if dark else "white",
            edgecolor="#8A5A48",
            lw=0.6,
            zorder=zorder + 0.6,
        )
    beak = es.proportion("beak_mm", day)
    if beak:
        root = (place[0] + head * 0.8, place[1] - head * 0.45)
        ax.add_patch(
            Polygon(
                [
                    (root[0], root[1] + 0.35 * beak),
                    (root[0] + beak * 0.8, root[1] - 0.75 * beak),
                    (root[0] - 0.5 * beak, root[1] - 0.35 * beak),
                ],
                closed=True,
                facecolor="#B9872F",
                edgecolor=INK,
                lw=0.4,
                zorder=zorder + 0.7,
            )
        )


def _down(ax, day, spine, zorder):
    share = es.proportion("down_share", day) if day >= 12 else 0.0
    if not share:
        return
    x, y, thick = spine
    middle = np.array([x.mean(), y.mean()])
    for px, py, pt in list(zip(x, y, thick, strict=True))[:: max(int(3 - 2 * share), 1)]:
        way = np.array([px, py]) - middle
        way = way / max(np.hypot(*way), 1e-9)
        root, tip = np.array([px, py]) + way * pt, np.array([px, py]) + way * (pt + 1.6)
        ax.plot([root[0], tip[0]], [root[1], tip[1]], color="#9A7B2E", lw=0.7, zorder=zorder + 0.2)
