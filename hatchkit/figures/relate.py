"""Figures of losses beside temperature: tables in, axes out."""

import numpy as np

from hatchkit.figures import rows, style

LIMITS = (0.1, 20.0)


def hazard_by_window(windows, ax=None, *, language="en"):
    """Rate of death in exposed windows as a multiple of the others', with its interval, window by window.

    Parameters
    ----------
    windows : DataFrame
        name, hazard_ratio, low, high, exposed, deaths (``Relation.windows`` or ``Relation.later``).
    ax : Axes, optional
    """
    if windows.empty:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 1.0)), style.tell("nothing_to_compare", language))
    names = [
        style.tell(
            "window", language, name=style.label(row.name, language), batches=int(row.exposed), deaths=round(row.deaths)
        )
        for row in windows.itertuples(index=False)
    ]
    ax, middles = rows.stack(ax, names, below=42)
    ax.set(xscale="log", xlim=(LIMITS[0] * 0.85, LIMITS[1] * 1.2))
    for place, row in zip(middles, windows.itertuples(index=False), strict=True):
        ax.plot([1, 1], [place - rows.THICK * 0.6, place + rows.THICK * 0.6], color=style.SOFT, lw=1.2, zorder=0)
        if not np.isfinite(row.hazard_ratio):
            rows.beside(ax, 1, place, style.tell("nothing_to_compare", language))
            continue
        low, high = max(row.low, LIMITS[0]), min(row.high, LIMITS[1])
        ax.plot([low, high], [place, place], color=style.INK, lw=1.6, solid_capstyle="butt")
        _ends(ax, row, low, high, place)
        ax.plot(np.clip(row.hazard_ratio, *LIMITS), place, "o", ms=8, mfc=style.INK, mec=style.INK, zorder=3)
    ax.set_xticks([0.1, 0.5, 1, 2, 5, 10, 20], ["0.1", "½", style.tell("same", language), "2×", "5×", "10×", "20×"])
    ax.minorticks_off()
    ax.set_xlabel(style.tell("hazard_axis", language))
    return ax


def _ends(ax, row, low, high, place):
    """A bar where the interval ends, an arrow where it goes on beyond the picture."""
    for shown, true, arrow in ((low, row.low, "<"), (high, row.high, ">")):
        ax.plot(shown, place, arrow if shown != true else "|", color=style.INK, ms=8, mew=1.6)


#: Width of the part for batches that met no spell, in steps of the dose; and the room around each part.
ASIDE, ROOM = 1.0, 0.25
#: Batches that are named: those that lost most.
NAMED = 10


def losses_against_dose(batches, ax=None, *, language="en"):
    """Each batch's share of embryos lost, over what unexposed batches plausibly lose; exposed ones by their dose.

    Batches that met no spell have a part of their own on the left, in order of their losses: a dose of nothing is no
    place on a scale of doublings.

    Parameters
    ----------
    batches : DataFrame
        batch, exposed, dose, share_died, share_expected_low, share_expected_high (``Relation.batches``).
    ax : Axes, optional
    """
    ax = style.axes(ax, size=(style.WIDTH, 3.6))
    known = batches[batches["dose"].notna()]
    met = known["exposed"].astype(bool)
    free, hit = known[~met].sort_values("share_died"), known[met]
    first = np.floor(hit["dose"].min()) if len(hit) else 0.0
    last = max(np.ceil(hit["dose"].max() + 0.2), first + 1) if len(hit) else 1.0
    shift = ASIDE + 2 * ROOM - first
    _ranges_and_points(ax, np.linspace(0, ASIDE, len(free) + 2)[1:-1], free, "o", "white", 6)
    _ranges_and_points(ax, shift + _spread_out(hit["dose"].to_numpy(float)), hit, "D", style.FILLS["warm"][0], 7.5)
    for row in hit.sort_values("share_died").tail(NAMED).itertuples():
        style.write(
            ax, shift + row.dose + 0.07 * (last - first), 100 * row.share_died, style.short(row.batch, 9), weight="bold"
        )
    ax.axvline(ASIDE + ROOM, color=style.SOFT, lw=0.7)
    steps = np.arange(first, last + 1)
    ax.set_xticks(
        [ASIDE / 2, *(steps + shift)],
        [style.tell("no_spell", language, batches=len(free)), *(f"{step:.0f}" for step in steps)],
    )
    highest = np.nanmax([0.1, known["share_died"].max(), known["share_expected_high"].max()])
    ax.set(xlim=(-ROOM / 2, last + shift + 0.1), ylim=(0, 112 * highest + 4))
    ax.set_xlabel(style.tell("dose_axis", language), loc="right")
    style.heading(ax, style.tell("dose_title", language))
    if len(hit):
        row = hit.loc[hit["dose"].idxmax()]
        style.write(
            ax,
            shift + row["dose"] + 0.05 * (last - first),
            50 * row["share_expected_high"],
            style.tell("dose_range", language),
            color=style.SOFT,
        )
    return ax


def _ranges_and_points(ax, place, rows, mark, face, size):
    """What such batches lose without a spell, as a bar, and what this one lost, as a mark on it."""
    ax.vlines(
        place, 100 * rows["share_expected_low"], 100 * rows["share_expected_high"], color="#DDDDDD", lw=5, zorder=1
    )
    ax.plot(place, 100 * rows["share_died"], mark, ms=size, mfc=face, mec=style.INK, ls="", zorder=3)


def _spread_out(dose):
    """Batches of the same dose side by side, so that each can be seen."""
    place = dose.astype(float).copy()
    width = 0.02 * max(np.ptp(dose), 1.0) if len(dose) else 0.0
    for value in np.unique(dose):
        same = np.flatnonzero(dose == value)
        place[same] = value + width * (np.arange(len(same)) - (len(same) - 1) / 2)
    return place
