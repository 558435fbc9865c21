"""Pictures of the climate: an incubator's season, one excursion, weight loss, the hatch clock."""

from __future__ import annotations

from zoneinfo import ZoneInfo

import numpy as np
import pandas as pd

from hatchkit.figures import style
from hatchkit.units import shown

#: What the marker of each kind of excursion looks like; the letter is printed beside it.
MARKS = {"warm": "^", "cold": "v"}
#: Lowest and highest temperature of the season's picture, degC: what lies beyond is marked at the edge.
WINDOW_C = (34.5, 40.5)
#: Height of the strip of batches as a share of the temperatures' height, for one lane.
BATCH_STRIP = 0.25
#: Fill of the range in force.
RIGHT = "#D5E8D4"


def incubator_timeline(timeline, ax=None, *, unit="C"):
    """Air and egg temperature of one incubator, its batches, excursions and gaps.

    Parameters
    ----------
    timeline : Timeline
        From ``climate.timeline.incubator_timeline``.
    ax : matplotlib Axes, optional
    unit : {"C", "F"}
    """
    lanes = int(timeline.batches["lane"].max()) + 1 if len(timeline.batches) else 1
    ax = style.axes(ax, size=(9.5, 3.8 + 0.25 * (lanes - 1)))
    zone = ZoneInfo(timeline.timezone or "UTC")
    low, high = (shown(edge, unit) for edge in WINDOW_C)
    for row in timeline.spans.itertuples():
        limits = shown(row.low_c, unit), shown(row.high_c, unit)
        ax.fill_between([row.start, row.end], *limits, color=RIGHT, lw=0, zorder=0)
        ax.hlines(limits, row.start, row.end, color="#777777", lw=0.5, zorder=1)
    for row in timeline.gaps.itertuples():
        ax.axvspan(row.start, row.end, **style.fill("gap") | {"linewidth": 0, "alpha": 0.6}, zorder=1)
    air, egg = timeline.air, timeline.egg
    ax.fill_between(_utc(air), shown(air["low_c"], unit), shown(air["high_c"], unit), color="#9A9A9A", lw=0,
                    zorder=2)
    ax.plot(_utc(air), shown(air["middle_c"], unit), **style.LINES["air"] | {"lw": 0.7}, zorder=3)
    ax.plot(_utc(egg), shown(egg["egg_c"], unit), **style.LINES["egg"] | {"lw": 1.2}, zorder=4)
    _egg_band(ax, egg, unit)
    _mark_excursions(ax, timeline.excursions, low, high, unit)
    _batch_strip(ax, timeline, low, high, lanes)
    ax.set_ylabel(style.temperature_label(unit))
    ax.set_title(f"Incubator {timeline.incubator}", loc="left")
    _dates(ax, zone)
    _legend(ax, _timeline_keys(), columns=4)
    return ax


def _egg_band(ax, table, unit, label=None):
    """The egg's band: a light fill with dotted edges, which grey print keeps apart from the range."""
    low, high = shown(table["egg_low_c"], unit), shown(table["egg_high_c"], unit)
    time = _utc(table)
    ax.fill_between(time, low, high, color="#0072B2", alpha=0.12, lw=0, zorder=1)
    for edge in (low, high):
        ax.plot(time, edge, color="#0072B2", lw=0.6, ls=":", zorder=2, label=label)
        label = None


def _timeline_keys():
    from matplotlib.lines import Line2D
    from matplotlib.patches import Patch

    return [(Line2D([], [], **style.LINES["air"]), "air"),
            (Line2D([], [], **style.LINES["egg"]), "egg, estimated (band: 8 chances in 10)"),
            (Patch(facecolor=RIGHT), "right for the air"),
            (Patch(**style.fill("gap")), "no readings"),
            (Line2D([], [], marker="^", ls="", color=style.INK, mfc="#D55E00"), "too warm"),
            (Line2D([], [], marker="v", ls="", color=style.INK, mfc="#56B4E9"), "too cold"),
            (Line2D([], [], marker="|", ls="", color=style.INK), "lid opened, eggs put in"),
            (Line2D([], [], marker="o", ls="", color=style.INK, mfc="white", ms=4), "candling, transfer")]


def _mark_excursions(ax, excursions, low, high, unit):
    """A numbered mark for each notable disturbance; the everyday is small ticks along the bottom."""
    events = excursions.drop_duplicates("event")
    small = ~events["notable"].astype(bool)
    ax.plot(events.loc[small, "start"], np.full(small.sum(), low), "|", color=style.INK, ms=5, zorder=5,
            clip_on=False)
    for row in events[~small].itertuples():
        value = shown(row.extreme_c, unit)
        place = min(max(value, low + 0.06 * (high - low)), high - 0.06 * (high - low))
        beyond = f": {value:.0f}°" if value != place else ""
        ax.plot([row.start], [place], MARKS[row.kind], color=style.INK, ms=7, zorder=6,
                mfc=style.FILLS[row.kind][0])
        ax.annotate(f"{row.event}{beyond}", (row.start, place), xytext=(6, 0), textcoords="offset points",
                    fontsize=8, va="center", zorder=6, bbox=dict(facecolor="white", lw=0, alpha=0.8, pad=0.6))


def _batch_strip(ax, timeline, low, high, lanes):
    """Batches as bars under the temperature, with the looks as dots."""
    from matplotlib.dates import date2num

    depth = BATCH_STRIP * (high - low) * (1 + 0.4 * (lanes - 1))
    ax.set_ylim(low - depth, high)
    tick = (high - low) / (WINDOW_C[1] - WINDOW_C[0])
    marks = [mark for mark in ax.get_yticks() if low <= mark <= high]
    ax.set_yticks(marks)
    height = depth / (lanes + 0.6)
    # Curves that leave the window stop at the strip.
    ax.axhspan(low - depth, low, facecolor="white", lw=0, zorder=4.8)
    batches, looks = timeline.batches, timeline.looks[timeline.looks["name"] != "hatch"]
    at, looked = (low - 0.25 * tick - (table["lane"].to_numpy(float) + 0.4) * height for table in (batches, looks))
    starts, moves, ends = (date2num(batches[name]) for name in ("set_at", "transfer_at", "end_at"))
    for begin, end, fill, hatch in ((starts, moves, "#FFFFFF", ""), (moves, ends, "#CFCFCF", "...")):
        ax.barh(at, end - begin, left=begin, height=height * 0.7, facecolor=fill, hatch=hatch,
                edgecolor=style.INK, linewidth=0.7, zorder=5)
    for name, place, start, move in zip(batches["batch"], at, starts, moves, strict=True):
        ax.text(start + 0.03 * (move - start), place, str(name), fontsize=8, va="center", ha="left", zorder=7)
    ax.plot(date2num(looks["looked_at"]), looked, "o", ms=4, color=style.INK, mfc="white", zorder=6)
    ax.axhline(low, color=style.INK, lw=0.6, zorder=5)


def excursion_close_up(track, excursion, ax=None, *, unit="C", timezone="UTC"):
    """One excursion: air, estimated egg with its band, and the range in force.

    Parameters
    ----------
    track : DataFrame
        From ``climate.timeline.close_up``.
    excursion : Series
        The row of ``find_excursions``.
    """
    ax = style.axes(ax, size=(7.5, 3.6))
    time = _utc(track)
    limits = shown(track["low_c"], unit), shown(track["high_c"], unit)
    ax.fill_between(time, *limits, color=RIGHT, lw=0, zorder=0, label="right for the air")
    for limit in limits:
        ax.plot(time, limit, color="#777777", lw=0.6, zorder=0)
    for row in track[track["gap"]].itertuples():
        before = track["time"][track["time"] < row.time]
        if len(before):
            ax.axvspan(before.iloc[-1], row.time, **style.fill("gap") | {"linewidth": 0, "alpha": 0.6}, zorder=0)
    broken = track["gap"] | track["air_c"].isna()
    ax.plot(time, shown(track["air_c"], unit).where(~broken), **style.LINES["air"] | {"lw": 1.3}, label="air")
    ax.plot(time, shown(track["egg_c"], unit).where(~broken), **style.LINES["egg"], label="egg, estimated")
    _egg_band(ax, track, unit, label="its band (8 chances in 10)")
    for edge in (excursion["start"], excursion["end"]):
        ax.axvline(edge, color=style.INK, lw=0.8, ls=":")
    ax.set_ylabel(style.temperature_label(unit))
    ax.set_title(f"{excursion['event']}: {style.label(excursion['looks_like'])}, batch {excursion['batch']}, "
                 f"day {excursion['day_start']:.1f}", loc="left")
    _dates(ax, ZoneInfo(timezone or "UTC"))
    ax.legend(frameon=False, fontsize=8, loc="best")
    return ax


def weight_loss_track(points, summary, ax=None):
    """Weight lost by each egg (or tray) so far, the mean's way to transfer, and the target there.

    Parameters
    ----------
    points : DataFrame
        From ``climate.water_loss.loss_points``: egg, day, lost_share, used.
    summary : Series
        The batch's row of ``batch_water_loss``.
    """
    ax = style.axes(ax, size=(6.5, 3.8))
    transfer = float(summary["transfer_day"])
    middle = 50 * (summary["target_low"] + summary["target_high"])
    ax.plot([0, transfer], [0, middle], color="#777777", lw=1.0, ls=":", label="way to the target")
    ax.errorbar([transfer + 0.35], [middle], yerr=[middle - 100 * summary["target_low"]], color="#777777", lw=5,
                alpha=0.7, label="target at transfer")
    for used, mark, words in ((True, "o", "weighed"), (False, "x", "weighed, left out")):
        part = points[points["used"] == used]
        if len(part):
            ax.plot(part["day"], 100 * part["lost_share"], mark, color=style.INK if used else "#888888", ms=4,
                    mfc="white", label=words, zorder=3)
    if np.isfinite(summary["projected_share"]):
        weighed = summary["weighed"] != "no"
        value = 100 * summary["projected_share"]
        spread = [[value - 100 * summary["projected_low"]], [100 * summary["projected_high"] - value]]
        if weighed:
            ax.plot([0, transfer], [0, value], color="#0072B2", lw=1.8, label="mean egg, carried on to transfer")
        ax.errorbar([transfer], [value], yerr=spread, fmt="s" if weighed else "D", color="#0072B2", capsize=4, ms=5,
                    label="expected, 95 % interval" if weighed else "indication without weighings")
    ax.set_xlim(-0.5, transfer + 1.2)
    ax.set_ylim(bottom=min(0, ax.get_ylim()[0]))
    ax.set_xlabel("Days since setting")
    ax.set_ylabel("Weight lost (% of weight at setting)")
    ax.set_title(f"Batch {summary['batch']}", loc="left")
    ax.legend(frameon=False, fontsize=8, loc="upper left")
    return ax


def hatch_clock(table, ax=None):
    """Expected and seen hatch of each batch, in hours from the usual day of its species.

    Parameters
    ----------
    table : DataFrame
        From ``climate.clock.hatch_clock``.
    """
    rows = table[table["expected_at"].notna()].iloc[::-1].reset_index(drop=True)
    ax = style.axes(ax, size=(7.5, 1.4 + 0.32 * max(len(rows), 1)))

    def hours(name):
        return (rows[name] - rows["usual_at"]).dt.total_seconds() / 3600

    place = np.arange(len(rows))
    ax.barh(place, hours("expected_high_at") - hours("expected_low_at"), left=hours("expected_low_at"), height=0.62,
            facecolor="#E4E4E4", edgecolor=style.INK, lw=0.5, label="expected from storage and temperature")
    ax.plot(hours("expected_at"), place, "|", color=style.INK, ms=11, mew=1.5)
    ax.hlines(place, hours("first_hatch_at"), hours("last_hatch_at"), color="#0072B2", lw=2.2,
              label="first to last chick, as written down")
    out = rows["verdict"].isin(["early", "late"])
    ax.plot(hours("middle_at")[~out], place[~out], "o", color="#0072B2", mfc="white", ms=6,
            label="middle, as expected")
    ax.plot(hours("middle_at")[out], place[out], "D", color=style.INK, mfc="#D55E00", ms=6.5,
            label="middle, earlier or later than expected")
    ax.axvline(0, color=style.INK, lw=0.6, ls=":")
    ax.set_yticks(place, rows["batch"] + " (" + rows["species"] + ")", fontsize=8)
    ax.set_ylim(-0.7, len(rows) - 0.3)
    ax.set_xlabel("Hours from the usual middle of the hatch for the species (later to the right)")
    ax.legend(frameon=False, fontsize=8, loc="lower left", bbox_to_anchor=(0, 1), ncols=2)
    return ax


def _utc(table):
    """Times as numpy keeps them: matplotlib turns zoned times into dates one by one, which costs as much as drawing."""
    return pd.to_datetime(table["time"], utc=True).dt.tz_convert(None).to_numpy()


def _dates(ax, zone):
    from matplotlib.dates import AutoDateLocator, ConciseDateFormatter

    locator = AutoDateLocator(tz=zone, maxticks=9)
    ax.xaxis.set_major_locator(locator)
    ax.xaxis.set_major_formatter(ConciseDateFormatter(locator, tz=zone))


def _legend(ax, keys, columns):
    handles, words = zip(*keys, strict=True)
    # Its distance is in letters, not in heights of the picture: below the dates whatever the picture's height.
    ax.legend(handles, words, frameon=False, fontsize=8, loc="upper center", bbox_to_anchor=(0.5, 0), ncols=columns,
              borderaxespad=4.6)
