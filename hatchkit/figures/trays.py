"""Pictures of where on the tray the eggs lay: what became of each, and where embryos died over a season."""

from matplotlib.patches import Ellipse, Patch

from hatchkit.figures import style

#: One mark a fate, so that the map can be read without its fills.
LETTERS = {
    "hatched": "H",
    "culled": "K",
    "dead": "D",
    "pipped_dead": "P",
    "clear": "c",
    "infertile": "i",
    "removed": "r",
}
#: Widest place of one egg, inches; and most of them side by side.
PLACE, ACROSS = 0.55, 14


def tray_map(table, ax=None, *, language="en"):
    """Fates on their places on the tray; letters say the same as the fills.

    Parameters
    ----------
    table : DataFrame
        From ``tray.tray_map`` for one batch; several trays are drawn side by side, or below one another where they
        would be too small to read.
    """
    shown = [(f"{tray}" if tray else "", table[table["tray"] == tray]) for tray in dict.fromkeys(table["tray"])]
    ax = _trays(
        ax,
        shown,
        _fate,
        lambda name: style.tell("tray", language, name=name),
        above=0.2 * -(-table["fate"].nunique() // 2) + 0.1,
    )
    style.key(
        ax,
        [
            (Patch(**style.fill(fate)), f"{LETTERS.get(fate, '?')}  {style.label(fate, language)} ({len(part)})")
            for fate, part in table.groupby("fate", sort=False)
        ],
    )
    return ax


def tray_season(table, ax=None, *, language="en"):
    """Where on the tray embryos died: each place with a disc as large as the share that died there.

    Parameters
    ----------
    table : DataFrame
        From ``tray.tray_season``: machine, tray, row, col, at_risk, died, share. Trays are drawn one after the other,
        to one scale.
    """
    if table.empty:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 0.8)), style.tell("no_places", language))
    shown = list(table.groupby(["machine", "tray"], sort=False))
    ax = _trays(
        ax, shown, _place, lambda name: style.tell("tray_machine", language, machine=name[0], tray=name[1]), above=0.25
    )
    style.heading(ax, style.tell("tray_season_title", language))
    return ax


def _trays(ax, shown, draw, title, *, above):
    """Trays beside or below one another; one egg's place is 1 by 1, `above` inches stay free."""
    spots, x, top, deep, widest = [], 0, 0.0, 0, 0
    for name, part in shown:
        wide, rows = int(part["col"].max()), int(part["row"].max())
        if x and x + wide > ACROSS:
            x, top, deep = 0, top + deep + 1.2, 0
        spots.append((name, part, x, top, wide))
        x, deep, widest = x + wide + 0.7, max(deep, rows), max(widest, x + wide)
    size = min((style.WIDTH - 0.25) / max(widest, 1), PLACE)
    ax = style.axes(ax, size=(style.WIDTH, size * (top + deep + 1.1) + above))
    for name, part, left, upper, wide in spots:
        style.write(ax, left + (wide + 1) / 2, upper + 0.1, title(name), ha="center")
        for egg in part.to_dict("records"):
            draw(ax, egg, left + egg["col"], upper + egg["row"])
    ax.set(xlim=(0.3, max(widest, 4) + 0.7), ylim=(top + deep + 0.7, -0.4))
    ax.set_aspect("equal", anchor="W")
    return style.bare(ax, bottom=False)


def _fate(ax, egg, x, y):
    ax.add_patch(Ellipse((x, y), 0.76, 0.94, **style.fill(egg["fate"])))
    style.write(
        ax,
        x,
        y,
        LETTERS.get(egg["fate"], "?"),
        ha="center",
        va="center_baseline",
        bbox=dict(boxstyle="circle,pad=0.1", fc=style.PAPER, ec="none"),
    )


def _place(ax, egg, x, y):
    known = egg["at_risk"] > 0
    ax.add_patch(Ellipse((x, y), 0.8, 0.94, facecolor="none", edgecolor=style.SOFT, lw=0.7, ls="-" if known else ":"))
    if not egg["died"]:
        return
    wide = egg["share"] ** 0.5
    ax.add_patch(Ellipse((x, y), 0.8 * wide, 0.94 * wide, facecolor="#999999", lw=0))
    style.write(ax, x, y, f"{egg['died']:.0f}", ha="center", va="center_baseline")
