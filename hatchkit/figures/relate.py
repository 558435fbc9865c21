"""Figures of losses beside temperature: tables in, axes out."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.figures import style
from hatchkit.units import check_unit, shown_step

LIMITS = (0.1, 20.0)


def hazard_by_window(windows, ax=None):
    """Rate of death in exposed windows as a multiple of the others', with its interval, window by window.

    Parameters
    ----------
    windows : DataFrame
        name, hazard_ratio, low, high, exposed, deaths (``Relation.windows`` or ``Relation.later``).
    ax : Axes, optional
    """
    ax = style.axes(ax, size=(7.0, 0.6 * max(len(windows), 2) + 1.4))
    names = []
    for place, row in enumerate(windows.itertuples(index=False)):
        names.append(f"{style.label(row.name)}\n{_batches(row.exposed)} exposed, {row.deaths:.0f} dead")
        if not np.isfinite(row.hazard_ratio):
            ax.text(1.08, place, "nothing to compare", va="center", color=style.INK, fontsize=9)
            continue
        low, high = max(row.low, LIMITS[0]), min(row.high, LIMITS[1])
        ax.plot([low, high], [place, place], color=style.INK, lw=1.6, solid_capstyle="butt")
        _ends(ax, row, low, high, place)
        ax.plot(np.clip(row.hazard_ratio, *LIMITS), place, "o", ms=7, mfc="#D55E00", mec=style.INK, zorder=3)
    ax.axvline(1, color=style.INK, lw=0.9, ls="--")
    ax.set_xscale("log")
    ax.set_xlim(LIMITS[0] * 0.9, LIMITS[1] * 1.1)
    ax.set_xticks([0.1, 0.5, 1, 2, 5, 10, 20], ["0.1", "½", "same", "2×", "5×", "10×", "20×"])
    ax.minorticks_off()
    ax.set_yticks(range(len(names)), names)
    ax.set_ylim(len(names) - 0.5, -0.5)
    ax.set_xlabel("Rate of death when exposed, as a multiple of the others")
    return ax


def _batches(count):
    return f"{count:.0f} batch" if count == 1 else f"{count:.0f} batches"


def _ends(ax, row, low, high, place):
    """A bar where the interval ends, an arrow where it goes on beyond the picture."""
    for shown, true, arrow in ((low, row.low, "<"), (high, row.high, ">")):
        ax.plot(shown, place, arrow if shown != true else "|", color=style.INK, ms=8, mew=1.6)


#: Width of the part for batches that met no spell, in steps of the dose; and the room around each part.
ASIDE, ROOM = 1.0, 0.25


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
    for row in hit.itertuples():
        style.write(ax, shift + row.dose + 0.07 * (last - first), 100 * row.share_died, row.batch, weight="bold")
    ax.axvline(ASIDE + ROOM, color=style.SOFT, lw=0.7)
    steps = np.arange(first, last + 1)
    ax.set_xticks([ASIDE / 2, *(steps + shift)],
                  [style.tell("no_spell", language, batches=len(free)), *(f"{step:.0f}" for step in steps)])
    ax.set_xlim(-ROOM / 2, last + shift + 0.1)
    ax.set_ylim(0, 1.12 * 100 * max(known[["share_died", "share_expected_high"]].max(), default=0.1) + 4)
    ax.set_xlabel(style.tell("dose_axis", language), loc="right")
    style.heading(ax, style.tell("dose_title", language))
    if len(hit):
        row = hit.loc[hit["dose"].idxmax()]
        style.write(ax, shift + row["dose"] + 0.05 * (last - first), 50 * row["share_expected_high"],
                    style.tell("dose_range", language), color=style.SOFT)
    return ax


def _ranges_and_points(ax, place, rows, mark, face, size):
    """What such batches lose without a spell, as a bar, and what this one lost, as a mark on it."""
    ax.vlines(place, 100 * rows["share_expected_low"], 100 * rows["share_expected_high"], color="#DDDDDD", lw=5,
              zorder=1)
    ax.plot(place, 100 * rows["share_died"], mark, ms=size, mfc=face, mec=style.INK, ls="", zorder=3)


def _spread_out(dose):
    """Batches of the same dose side by side, so that each can be seen."""
    place = dose.astype(float).copy()
    width = 0.02 * max(np.ptp(dose), 1.0) if len(dose) else 0.0
    for value in np.unique(dose):
        same = np.flatnonzero(dose == value)
        place[same] = value + width * (np.arange(len(same)) - (len(same) - 1) / 2)
    return place


def losses_beside_exposure(exposure, axes=None, *, unit="C"):
    """Deaths per window (above) beside the degree-hours that eggs were too warm or too cold (below).

    It shows, and proves nothing. One group of bars per batch, one bar per window in order of time.

    Parameters
    ----------
    exposure : DataFrame
        From ``hatchkit.exposure``.
    axes : pair of Axes, optional
    unit : {"C", "F"}

    Returns
    -------
    pair of Axes
    """
    unit = check_unit(unit)
    upper, lower = _pair(axes, exposure)
    group, names = pd.factorize(exposure["batch"].astype(str))
    exposure, group = exposure.iloc[np.argsort(group, kind="stable")], np.sort(group)
    places = np.arange(len(exposure)) + group  # one place is left free between batches
    _losses_bars(upper, places, exposure)
    _dose_bars(lower, places, exposure, unit)
    ticks = [places[group == number].mean() for number in range(len(names))]
    lower.axhline(0, color=style.INK, lw=0.8)
    lower.set_xticks(ticks, names, rotation=60 if len(names) > 12 else 0)
    lower.set_xlabel("Batch; one bar for each window between two looks, in order of time")
    upper.set_ylabel("Dead at the look (%)")
    lower.set_ylabel(f"Egg too warm (up) or\ntoo cold (down), °{unit}·h")
    _legend(lower, exposure)
    return upper, lower


def _pair(axes, exposure):
    if axes is None:
        wide = float(np.clip(0.16 * (len(exposure) + exposure["batch"].nunique()) + 1.5, 6.0, 13.0))
        _, axes = style.subplots(2, size=(wide, 4.6), sharex=True)
    return style.axes(axes[0]), style.axes(axes[1])


def _losses_bars(ax, places, part):
    share = 100 * (part["died"] / part["at_risk"].where(part["at_risk"] > 0)).to_numpy(float)
    ax.bar(places, np.nan_to_num(share), width=0.85, **style.fill("dead"))
    for place in places[np.isnan(share)]:
        ax.text(place, 0, "?", ha="center", va="bottom", fontsize=8, color=style.INK)


def _dose_bars(ax, places, part, unit):
    warm = shown_step(part["egg_degree_hours_warm"].to_numpy(float), unit)
    cold = shown_step(part["egg_degree_hours_cold"].to_numpy(float), unit)
    ax.bar(places, np.nan_to_num(warm), width=0.85, **style.fill("warm"))
    ax.bar(places, -np.nan_to_num(cold), width=0.85, **style.fill("cold"))
    for place in places[~(part["share_logged"].to_numpy(float) > 0)]:
        ax.text(place, 0, "?", ha="center", va="center", fontsize=9, color=style.INK)


def _legend(ax, exposure):
    from matplotlib.patches import Patch

    handles = [Patch(label="too warm", **style.fill("warm")), Patch(label="too cold", **style.fill("cold"))]
    if not (exposure["share_logged"] > 0).all():
        handles.append(Patch(label="? not logged", facecolor="none", edgecolor="none"))
    ax.legend(handles=handles, frameon=False, fontsize=9, loc="best")
