"""Pictures of the climate: an incubator's season, one spell, weight loss, the hatch clock, the probes."""

from zoneinfo import ZoneInfo

import numpy as np
import pandas as pd
from matplotlib.dates import date2num

from hatchkit.figures import style
from hatchkit.figures.probes import probe_truth
from hatchkit.figures.times import bent_scale, dates, names_at_right, utc
from hatchkit.figures.water import hatch_clock, water_against_target, weight_loss_track
from hatchkit.units import shown

__all__ = [
    "excursion_close_up",
    "hatch_clock",
    "incubator_timeline",
    "probe_truth",
    "water_against_target",
    "weight_loss_track",
]

#: What the marker of each kind of excursion looks like.
MARKS = {"warm": "^", "cold": "v"}
#: Height of the picture of temperatures and of a lane of batches below it, inches.
TALL, LANE = 2.5, 0.31


def incubator_timeline(timeline, ax=None, *, unit="C", language="en"):
    """Air and egg temperature of one incubator, its batches, spells of heat and cold, and gaps.

    The scale is even near 37.5 degC and drawn together beyond, so that a power cut is seen in its depth and the
    everyday too. Each spell worth telling carries its worst temperature and its length.

    Parameters
    ----------
    timeline : Timeline
        From ``climate.timeline.incubator_timeline``.
    ax : matplotlib Axes, optional
    unit : {"C", "F"}
    """
    lanes = int(timeline.batches["lane"].max()) + 1 if len(timeline.batches) else 0
    ax = style.axes(ax, size=(style.WIDTH, TALL + LANE * lanes + 0.7))
    air, egg, events = timeline.air, timeline.egg, timeline.excursions.drop_duplicates("event")
    told = events[events["notable"].astype(bool)]
    values = [told["extreme_c"], air["low_c"], air["high_c"], egg["egg_c"]]
    height = bent_scale(
        ax, pd.Series([part.min() for part in values]).min(), pd.Series([part.max() for part in values]).max(), unit
    )
    _ranges_and_gaps(ax, timeline, unit, language)
    ax.fill_between(
        utc(air["time"]), shown(air["low_c"], unit), shown(air["high_c"], unit), color="#999999", lw=0, zorder=2
    )
    ax.plot(utc(air["time"]), shown(air["middle_c"], unit), **style.LINES["air"] | {"lw": 0.7}, zorder=3)
    ax.fill_between(
        utc(egg["time"]),
        shown(egg["egg_low_c"], unit),
        shown(egg["egg_high_c"], unit),
        color="#56B4E9",
        alpha=0.3,
        lw=0,
        zorder=1.5,
    )
    ax.plot(utc(egg["time"]), shown(egg["egg_c"], unit), **style.LINES["egg"] | {"lw": 1.2}, zorder=4)
    _spells(ax, told, _edges(ax, timeline), unit, language)
    everyday, foot = utc(events.loc[~events["notable"].astype(bool), "start"]), ax.get_xaxis_transform()
    ax.plot(everyday, np.full(len(everyday), 0.012), "|", color=style.INK, ms=5, zorder=5, transform=foot)
    _name_lines(ax, timeline, height, unit, language)
    style.heading(ax, style.tell("timeline_title", language, machine=timeline.incubator, unit=unit))
    _batches_below(ax, timeline, lanes, ZoneInfo(timeline.timezone or "UTC"), language)
    return ax


def _edges(ax, timeline):
    """First and last moment of the picture, as matplotlib's days; the axes keep to them."""
    if len(timeline.batches):
        edges = date2num(utc(timeline.batches["set_at"]).min()), date2num(utc(timeline.batches["end_at"]).max())
    else:
        edges = ax.get_xlim()
    ax.set_xlim(edges[0] - 0.01 * (edges[1] - edges[0]), edges[1] + 0.01 * (edges[1] - edges[0]))
    return edges


def _ranges_and_gaps(ax, timeline, unit, language):
    for row in timeline.spans.itertuples():
        limits = shown(row.low_c, unit), shown(row.high_c, unit)
        ax.fill_between([row.start, row.end], *limits, color=style.RIGHT, lw=0, zorder=0)
        ax.hlines(limits, row.start, row.end, color=style.SOFT, lw=0.5, zorder=1)
    for row in timeline.gaps.itertuples():
        ax.axvspan(row.start, row.end, **style.fill("gap") | {"linewidth": 0}, zorder=1)
    if len(timeline.gaps):
        longest = timeline.gaps.loc[(timeline.gaps["end"] - timeline.gaps["start"]).idxmax()]
        ax.annotate(
            style.tell("no_readings", language),
            (longest["start"], 0.97),
            fontsize=style.TEXT,
            va="top",
            xycoords=("data", "axes fraction"),
            rotation=90,
            color=style.INK,
            zorder=7,
            bbox=dict(facecolor=style.PAPER, lw=0, pad=1),
        )


def _spells(ax, told, edges, unit, language):
    """Each spell as a stem from the usual to its worst, with that temperature and its length beside it."""
    for row in told.itertuples():
        at, worst = date2num(row.start), shown(row.extreme_c, unit)
        ax.plot([at, at], [shown(37.5, unit), worst], color=style.INK, lw=2.4, zorder=5, solid_capstyle="butt")
        ax.plot([at], [worst], MARKS[row.kind], color=style.INK, ms=9, mfc=style.FILLS[row.kind][0], zorder=6)
        style.beside(
            ax,
            style.tell("spell", language, degrees=worst, hours=row.hours, event=row.event),
            (at, worst),
            side=1 if at < edges[0] + 0.6 * (edges[1] - edges[0]) else -1,
            apart=8,
            zorder=6,
            bbox=dict(facecolor=style.PAPER, lw=0, pad=0.8),
        )


def _name_lines(ax, timeline, height, unit, language):
    """What each line is, at the right where it ends."""
    places, words = [], []
    for table, column, word in (
        (timeline.air, "middle_c", "air"),
        (timeline.egg, "egg_c", "egg"),
        (timeline.spans, "high_c", "range"),
    ):
        known = table[column].dropna()
        if len(known):
            places.append(height(shown(float(known.tail(40).median()), unit)))
            words.append(style.tell(f"line_{word}", language))
    if len(timeline.excursions) > timeline.excursions["notable"].astype(bool).sum():
        places.append(0.02)
        words.append(style.tell("line_everyday", language))
    names_at_right(ax, places, words)


def _batches_below(ax, timeline, lanes, zone, language):
    """Batches as bars under the temperature, looks as dots on them; the dates below."""
    if not lanes:
        dates(ax, zone, language=language)
        return
    share = LANE * lanes / TALL
    strip = ax.inset_axes([0, -share - 0.03, 1, share])
    style.bare(style.axes(strip))
    strip.set(xlim=ax.get_xlim(), ylim=(lanes - 0.45, -0.55))
    ax.tick_params(bottom=False, labelbottom=False)
    batches, looks = timeline.batches, timeline.looks[timeline.looks["name"] != "hatch"]
    room = (ax.get_xlim()[1] - ax.get_xlim()[0]) * style.TEXT * 0.65 / 250
    for row in batches.itertuples():
        start, move, end = (date2num(at) for at in (row.set_at, row.transfer_at, row.end_at))
        for begin, stop, face in ((start, move, style.PAPER), (move, end, "#CFCFCF")):
            strip.barh(
                row.lane, stop - begin, left=begin, height=0.76, facecolor=face, edgecolor=style.INK, linewidth=0.7
            )
        if room * len(str(row.batch)) < end - start:
            style.write(strip, (start + end) / 2, row.lane - 0.1, style.short(row.batch), ha="center", zorder=7)
    strip.plot(
        utc(looks["looked_at"]),
        looks["lane"].to_numpy(float) + 0.36,
        "o",
        ms=3.5,
        color=style.INK,
        mfc=style.PAPER,
        zorder=6,
        mew=0.8,
    )
    dates(strip, zone, language=language)


def excursion_close_up(track, excursion, ax=None, *, unit="C", timezone="UTC", language="en"):
    """One excursion: air, estimated egg with its band, and the range in force; the worst of both and the length.

    Parameters
    ----------
    track : DataFrame
        From ``climate.timeline.close_up``.
    excursion : Series
        The row of ``find_excursions``.
    """
    ax = style.axes(ax, size=(style.WIDTH, 3.3))
    time, broken = utc(track["time"]), track["gap"] | track["air_c"].isna()
    limits = shown(track["low_c"], unit), shown(track["high_c"], unit)
    ax.fill_between(time, *limits, color=style.RIGHT, lw=0, zorder=0)
    for limit in limits:
        ax.plot(time, limit, color=style.SOFT, lw=0.6, zorder=0)
    for row in track[track["gap"]].itertuples():
        before = track["time"][track["time"] < row.time]
        if len(before):
            ax.axvspan(before.iloc[-1], row.time, **style.fill("gap") | {"linewidth": 0}, zorder=0)
    low, high = (shown(track[name], unit).where(~broken) for name in ("egg_low_c", "egg_high_c"))
    ax.fill_between(time, low, high, color="#56B4E9", alpha=0.35, lw=0, zorder=1)
    air, egg = (shown(track[name], unit).where(~broken) for name in ("air_c", "egg_c"))
    ax.plot(time, air, **style.LINES["air"] | {"lw": 1.5}, label="air")
    ax.plot(time, egg, **style.LINES["egg"] | {"lw": 2.0}, label="egg")
    bottom, top = ax.get_ylim()
    tall = top - bottom
    ax.set_ylim(bottom - 0.05 * tall, top + 0.12 * tall)
    _length(ax, excursion, top + 0.05 * tall, language)
    _worst(ax, track.assign(air=air, egg=egg), excursion, unit, language)
    ends = [float(line.dropna().iloc[-1]) if line.notna().any() else np.nan for line in (air, egg)]
    ends.append(float(limits[0].iloc[-1]))
    known = {name: end for name, end in zip(("air", "egg", "range"), ends, strict=True) if np.isfinite(end)}
    places = [(end - ax.get_ylim()[0]) / np.ptp(ax.get_ylim()) for end in known.values()]
    names_at_right(ax, places, [style.tell(f"line_{name}", language) for name in known])
    ax.set_ylabel(style.temperature_label(unit, language))
    style.heading(
        ax,
        style.tell(
            "close_up_title",
            language,
            kind=excursion["kind"],
            batch=excursion["batch"],
            day=float(excursion["day_start"]),
        ),
    )
    dates(ax, ZoneInfo(timezone or "UTC"), most=5, language=language)
    return ax


def _length(ax, excursion, height, language):
    """From when to when, and how long."""
    edges = excursion["start"], excursion["end"]
    for edge in edges:
        ax.axvline(edge, color=style.SOFT, lw=0.8, ls=":")
    ax.annotate("", (edges[1], height), (edges[0], height), arrowprops=dict(arrowstyle="<->", color=style.INK, lw=0.9))
    words = style.tell("hours", language, hours=excursion["hours"])
    style.write(
        ax,
        edges[0] + (edges[1] - edges[0]) / 2,
        height,
        words,
        ha="center",
        bbox=dict(facecolor=style.PAPER, lw=0, pad=1.5),
    )


#: A spell that is shorter than this part of the picture has its words beside it.
NARROW = 0.4


def _worst(ax, track, excursion, unit, language):
    """The air and the egg at their worst, marked, and written within the curve or beside it."""
    start, end = excursion["start"], excursion["end"]
    within = track[track["time"].between(start, end + (end - start))]  # the egg is at its worst after the air
    words, worst = [], []
    for name in ("air", "egg"):
        values = within[name].dropna()
        if len(values):
            row = within.loc[values.idxmin() if excursion["kind"] == "cold" else values.idxmax()]
            ax.plot([row["time"].tz_convert(None)], [row[name]], "o", ms=5, color=style.INK, mfc=style.PAPER, zorder=5)
            words.append(style.tell(f"worst_{name}", language, degrees=float(row[name]), unit=unit))
            worst.append(float(row[name]))
    if words:
        whole = track["time"].iloc[-1] - track["time"].iloc[0]
        inside = (end - start) > NARROW * whole
        height = worst[0] + 0.65 * (float(shown(track["low_c"].iloc[0], unit)) - worst[0])
        at = start + 0.5 * (end - start) if inside else end + 0.06 * whole
        style.write(
            ax,
            at.tz_convert(None),
            height,
            "\n".join(words),
            ha="center" if inside else "left",
            zorder=6,
            linespacing=1.4,
        )
