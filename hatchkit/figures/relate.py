"""Figures of losses beside temperature: tables in, axes out."""

from __future__ import annotations

import numpy as np

from hatchkit.figures import rows, style
from hatchkit.units import check_unit, shown_step

LIMITS = (0.1, 20.0)
#: Degree-hours of the egg from which a spell is marked: below it lie candlings and the warming up of new eggs, K·h.
LEAST = {"warm": 3.0, "cold": 10.0}


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
    ax.set_xscale("log")
    ax.set_xlim(LIMITS[0] * 0.85, LIMITS[1] * 1.2)
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
    ax.set_xlim(-ROOM / 2, last + shift + 0.1)
    ax.set_ylim(0, 112 * np.nanmax([0.1, known["share_died"].max(), known["share_expected_high"].max()]) + 4)
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


#: Height of a batch's row, and of the highest bar in it, in points; heat and cold stand below the bar.
BATCH, UP = 36.0, 20.0
#: Degree-hours of a spell whose mark is as large as it gets, K·h.
LARGE = 200.0


def losses_beside_exposure(exposure, ax=None, *, unit="C", most=24, language="en"):
    """A row for each batch: deaths at each look as bars up, heat and cold in the egg as marks below, by age.

    It shows, and proves nothing. All rows have one scale. Marks grow with the degree-hours, their number stands
    beside them.

    Parameters
    ----------
    exposure : DataFrame
        From ``hatchkit.exposure``.
    ax : Axes, optional
    unit : {"C", "F"}
    most : int
        Batches to draw: the first of them; how many are left out is said below.
    """
    unit = check_unit(unit)
    if exposure.empty:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 1.0)), style.tell("no_batch", language))
    batches = list(dict.fromkeys(exposure["batch"].astype(str)))
    shown, above = batches[:most], 40.0
    high = BATCH * len(shown) + above
    ax = style.axes(ax, size=(style.WIDTH, (high + 44) / 72))
    ax.set_ylim(-high, 0)
    last = float(exposure["day_end"].max())
    ax.set_xlim(0, last * 1.01)
    shares = (exposure["died"] / exposure["at_risk"].where(exposure["at_risk"] > 0)).astype(float)
    top = max(float(shares.max(skipna=True)) if shares.notna().any() else 0.0, 0.05)
    for place, batch in enumerate(shown):
        ground = -above - BATCH * place - UP - 3
        part = exposure[exposure["batch"].astype(str) == batch]
        ax.plot([0, part["day_end"].max()], [ground, ground], color=style.SOFT, lw=0.7, zorder=1)
        for row, share in zip(part.to_dict("records"), shares[part.index], strict=True):
            _window(ax, ground, row, share / top, share, unit, language)
    _row_names(ax, shown, above)
    _beside_key(ax, top, len(batches) - len(shown), unit, language)
    return ax


def _window(ax, ground, row, height, share, unit, language):
    """One stretch between two looks: what died in it, and what its eggs met."""
    start, wide = row["day_start"], row["day_end"] - row["day_start"]
    middle = start + wide / 2
    if np.isfinite(height):
        ax.bar(start, UP * height, width=wide, bottom=ground, align="edge", **style.fill("dead"))
        if height > 0.4:
            rows.beside(
                ax,
                row["day_end"] - 0.3,
                ground + UP * max(height - 0.3, 0.4),
                style.tell("share", language, share=share),
            )
    else:
        style.write(ax, middle, ground + 7, "?", ha="center")
    if not row["share_logged"] > 0:
        style.write(ax, middle, ground - 7, "?", ha="center")
        return
    for kind, mark, side in (("warm", "^", -1), ("cold", "v", 1)):
        hours = row[f"egg_degree_hours_{kind}"]
        if np.isfinite(hours) and hours >= LEAST[kind]:
            ax.plot(
                middle + side * 0.2,
                ground - 7.5,
                mark,
                ms=4 + 7 * min(hours / LARGE, 1) ** 0.5,
                mfc=style.FILLS[kind][0],
                mec=style.INK,
                mew=0.7,
            )
            rows.beside(ax, middle + side * 0.2 + 0.3, ground - 7.5, f"{shown_step(hours, unit):.0f}")


def _row_names(ax, names, above):
    ax.set_yticks(
        [-above - BATCH * place - UP - 3 for place in range(len(names))], [style.short(name) for name in names]
    )
    ax.tick_params(left=False)
    ax.spines["left"].set_visible(False)


def _beside_key(ax, top, left_out, unit, language):
    """What bars and marks mean, where the eye begins; and the age below."""
    words = [style.tell("beside_up", language, share=top), style.tell("beside_down", language, unit=unit)]
    for place, line in enumerate(words):
        style.write(ax, 0, -8 - 14 * place, line, transform=ax.get_yaxis_transform())
    ax.set_xlabel(style.tell("beside_axis", language, left_out=left_out))
    ax.locator_params(axis="x", integer=True)
