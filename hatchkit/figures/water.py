"""Pictures of what eggs lost and when they hatched: weight against the target, the hatch clock."""

import numpy as np
from matplotlib.patches import Patch

from hatchkit.figures import rows, style


def weight_loss_track(points, summary, ax=None, *, language="en"):
    """Weight lost by each egg (or tray) so far, the mean's way to transfer, and the target there.

    Parameters
    ----------
    points : DataFrame
        From ``climate.water_loss.loss_points``: egg, day, lost_share, used.
    summary : Series
        The batch's row of ``batch_water_loss``.
    """
    ax = style.axes(ax, size=(style.WIDTH, 3.2))
    transfer, low, high = float(summary["transfer_day"]), 100 * summary["target_low"], 100 * summary["target_high"]
    ax.fill([0, transfer, transfer], [0, low, high], facecolor=style.RIGHT, lw=0, zorder=0)
    ax.plot([transfer, transfer], [low, high], color=style.INK, lw=4, solid_capstyle="butt", zorder=2)
    for used, mark in ((True, "o"), (False, "x")):
        part = points[points["used"] == used]
        ax.plot(
            part["day"],
            100 * part["lost_share"],
            mark,
            color=style.INK if used else style.SOFT,
            ms=4,
            mfc=style.PAPER,
            ls="",
            zorder=3,
        )
    ends, words = [(low + high) / 2], [style.tell("water_target", language, low=low / 100, high=high / 100)]
    if np.isfinite(summary["projected_share"]):
        ends.append(_projected(ax, summary, transfer))
        words.append(
            style.tell("water_expected", language, weighed=summary["weighed"] != "no", share=summary["projected_share"])
        )
    bottom, top = ax.get_ylim()
    top = max(top, 1.25 * high)
    ax.set(xlim=(-0.5, transfer + 1.0), ylim=(min(0, bottom), top))
    for place, text in zip(rows.apart(ends, 0.24 * top), words, strict=True):
        style.write(ax, transfer + 1.4, place, text, clip_on=False)
    if len(points[~points["used"].astype(bool)]):
        style.write(
            ax, 0.02, 0.97, style.tell("left_out", language), transform=ax.transAxes, va="top", color=style.SOFT
        )
    ax.locator_params(integer=True)
    ax.set_xlabel(style.tell("age_axis", language))
    style.heading(ax, style.tell("water_title", language, batch=str(summary["batch"])))
    return ax


def _projected(ax, summary, transfer):
    weighed, value = summary["weighed"] != "no", 100 * summary["projected_share"]
    spread = [[value - 100 * summary["projected_low"]], [100 * summary["projected_high"] - value]]
    if weighed:
        ax.plot([0, transfer], [0, value], color=style.INK, lw=1.6)
    ax.errorbar(
        [transfer + 0.5],
        [value],
        yerr=spread,
        fmt="s" if weighed else "D",
        color=style.INK,
        capsize=4,
        ms=6,
        mfc=style.INK if weighed else style.PAPER,
    )
    return value


def water_against_target(table, ax=None, *, language="en"):
    """Weight that each batch will have lost at transfer, with its interval, beside the target of its kind.

    Parameters
    ----------
    table : DataFrame
        From ``climate.water_loss.batch_water_loss``. Batches that were not weighed are hollow: an indication only.
    """
    table = table[table["projected_share"].notna()].reset_index(drop=True)
    if table.empty:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 0.8)), style.tell("no_weights", language))
    ax = style.axes(ax, size=(style.WIDTH, 0.27 * len(table) + 1.1))
    place, weighed = np.arange(len(table)), (table["weighed"] != "no").to_numpy()
    ax.barh(
        place,
        100 * (table["target_high"] - table["target_low"]),
        left=100 * table["target_low"],
        height=0.74,
        facecolor=style.RIGHT,
        edgecolor=style.SOFT,
        lw=0.5,
    )
    ax.hlines(
        place,
        100 * table["projected_low"],
        100 * table["projected_high"],
        color=style.INK,
        lw=np.where(weighed, 1.8, 0.8),
    )
    off = table["verdict"].isin(["too little", "too much"]).to_numpy()
    share = 100 * table["projected_share"].to_numpy(float)
    entries = [(Patch(facecolor=style.RIGHT, edgecolor=style.SOFT), style.tell("water_key_target", language))]
    for word, part, mark, face in (
        ("weighed", weighed & ~off, "o", style.INK),
        ("off", weighed & off, "D", "#D55E00"),
        ("unweighed", ~weighed, "o", style.PAPER),
    ):
        if part.any():
            (points,) = ax.plot(share[part], place[part], mark, color=style.INK, mfc=face, ms=7, zorder=3)
            entries.append((points, style.tell(f"water_key_{word}", language)))
    style.named_rows(ax, [style.short(name) for name in table["batch"]], room=0.6)
    ax.set_xlabel(style.tell("water_axis", language))
    style.key(ax, entries)
    return ax


def hatch_clock(table, ax=None, *, language="en"):
    """Expected and seen hatch of each batch, in hours from the usual day of its species.

    Parameters
    ----------
    table : DataFrame
        From ``climate.clock.hatch_clock``.
    """
    known = table[table["expected_at"].notna()].reset_index(drop=True)
    if known.empty:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 1.0)), style.tell("no_clock", language))
    ax = style.axes(ax, size=(style.WIDTH, 1.3 + 0.27 * len(known)))

    def hours(name):
        return (known[name] - known["usual_at"]).dt.total_seconds() / 3600

    place, out = np.arange(len(known)), known["verdict"].isin(["early", "late"])
    expected = ax.barh(
        place,
        hours("expected_high_at") - hours("expected_low_at"),
        left=hours("expected_low_at"),
        height=0.66,
        facecolor="#E4E4E4",
        edgecolor=style.SOFT,
        lw=0.5,
    )
    seen = ax.hlines(place, hours("first_hatch_at"), hours("last_hatch_at"), color=style.INK, lw=1.8)
    (inside,) = ax.plot(hours("middle_at")[~out], place[~out], "o", color=style.INK, mfc=style.PAPER, ms=6.5, ls="")
    entries = [
        (expected, style.tell("clock_expected", language)),
        (seen, style.tell("clock_seen", language)),
        (inside, style.tell("clock_inside", language)),
    ]
    if out.any():
        (outside,) = ax.plot(hours("middle_at")[out], place[out], "D", color=style.INK, mfc="#D55E00", ms=7, ls="")
        entries.append((outside, style.tell("clock_outside", language)))
    ax.axvline(0, color=style.SOFT, lw=0.7, ls=":")
    style.named_rows(ax, [style.short(name) for name in known["batch"]], room=0.6)
    ax.set_xlabel(style.tell("clock_axis", language))
    style.key(ax, entries, columns=2)
    return ax
