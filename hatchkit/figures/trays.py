"""A picture of what became of each egg on its place on the tray."""

from __future__ import annotations

from hatchkit.figures import style


def tray_map(table, ax=None):
    """Fates on their places on the tray; letters say the same as the fills.

    Parameters
    ----------
    table : DataFrame
        From ``tray.tray_map`` for one batch; several trays are drawn side by side.
    """
    trays = list(dict.fromkeys(table["tray"]))
    widths = [int(table.loc[table["tray"] == tray, "col"].max()) for tray in trays]
    rows = int(table["row"].max())
    ax = style.axes(ax, size=(max(4.5, 0.6 * (sum(widths) + len(trays)) + 1.0), 0.6 * rows + 2.6))
    shift, marks = 0, []
    for tray, width in zip(trays, widths, strict=True):
        part = table[table["tray"] == tray]
        for egg in part.to_dict("records"):
            _egg(ax, egg, shift)
        ax.text(shift + (width + 1) / 2, 0.2, f"tray {tray}" if tray else "tray", ha="center", fontsize=9)
        marks += [(shift + col, str(col)) for col in range(1, width + 1)]
        shift += width + 1
    for fate in dict.fromkeys(table["fate"]):
        ax.scatter([], [], marker="s", s=90, label=f"{_letter(fate)}  {style.label(fate)}", **_swatch(fate))
    ax.set_xticks([at for at, _ in marks], [text for _, text in marks], fontsize=8)
    ax.set_yticks(range(1, rows + 1))
    ax.set_xlim(0.3, shift - 0.3)
    ax.set_ylim(rows + 0.7, -0.2)
    ax.set_aspect("equal")
    ax.set_xlabel("Place in the row")
    ax.set_ylabel("Row")
    ax.legend(loc="upper center", bbox_to_anchor=(0.5, -0.9 / (0.6 * rows + 1)), ncols=4, frameon=False, fontsize=8)
    return ax


def _egg(ax, egg, shift):
    from matplotlib.patches import Ellipse

    ax.add_patch(Ellipse((egg["col"] + shift, egg["row"]), 0.72, 0.9, **style.fill(egg["fate"])))
    ax.text(
        egg["col"] + shift,
        egg["row"],
        _letter(egg["fate"]),
        ha="center",
        va="center",
        fontsize=8,
        bbox=dict(boxstyle="circle,pad=0.12", fc="#FFFFFF", ec="none"),
    )


def _letter(fate: str) -> str:
    """One mark a fate, so that the map can be read without its fills."""
    return {
        "hatched": "H",
        "culled": "K",
        "dead": "D",
        "pipped_dead": "P",
        "clear": "c",
        "infertile": "i",
        "removed": "r",
    }.get(fate, "?")


def _swatch(fate: str) -> dict:
    kind = style.fill(fate)
    return dict(facecolor=kind["facecolor"], edgecolor=kind["edgecolor"], hatch=kind["hatch"], linewidth=0.6)
