"""The season at a glance: a calendar with a lane for each machine."""

from zoneinfo import ZoneInfo

from matplotlib.dates import date2num

from hatchkit.figures import style
from hatchkit.figures.times import dates, utc
from hatchkit.units import shown

#: Heights in points: the machine's name with its spells, a lane, a bar in it; and the words above.
SPELLS, LANE, BAR, WORDS = 21.0, 43.0, 38.0, 15.0
#: Width of a letter and of a bold one, points; degree-hours at which a spell's mark is as large as it gets, K·h.
LETTER, BOLD, LARGE = 6.4, 7.5, 250.0


def season_at_a_glance(glance, ax=None, *, unit="C", language="en"):
    """Batches as bars in their machine's lane, filled as high as they hatched; spells of heat and cold above them.

    A spell's mark is as large as its degree-hours and carries the worst temperature of the air. Dots are looks at
    the eggs.

    Parameters
    ----------
    glance : Glance
        From ``advice.glance.glance``.
    ax : Axes, optional
    unit : {"C", "F"}
    """
    batches = glance.batches
    if batches.empty:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 0.8)), style.tell("no_batch", language))
    machines = batches.groupby("machine", sort=False)["lane"].max() + 1
    tall = 2 * WORDS + SPELLS * len(machines) + LANE * machines.sum()
    ax = style.axes(ax, size=(style.WIDTH, (tall + 40) / 72))
    ax.set_ylim(-tall, 0)
    style.bare(ax)
    room = _time(ax, batches)
    same = style.common_start(batches["batch"])
    for place, words in enumerate(("glance_bars", "glance_marks")):
        style.write(
            ax,
            0,
            -WORDS * (place + 0.5),
            style.tell(words, language),
            transform=ax.get_yaxis_transform(),
            color=style.SOFT,
        )
    top = -2.0 * WORDS
    for machine, lanes in machines.items():
        ax.plot([0, 1], [top - 1, top - 1], color="#DDDDDD", lw=0.8, transform=ax.get_yaxis_transform())
        name = style.write(
            ax,
            0,
            top - SPELLS / 2 - 1,
            style.tell("machine", language, name=machine),
            weight="bold",
            transform=ax.get_yaxis_transform(),
            zorder=8,
        )
        name.set_bbox(dict(facecolor=style.PAPER, lw=0, pad=1))
        _spells(ax, glance, machine, top - SPELLS / 2 - 1, unit, language)
        for row in batches[batches["machine"] == machine].itertuples():
            _batch(ax, row, top - SPELLS - LANE * row.lane, room, same, language)
        _looks(ax, glance.looks[glance.looks["machine"] == machine], top - SPELLS)
        top -= SPELLS + LANE * lanes
    dates(ax, ZoneInfo(glance.timezone), language=language)
    return ax


def _time(ax, batches):
    """The season from its first setting to its last end; returns days for each point of width."""
    first, last = date2num(utc(batches["set_at"]).min()), date2num(utc(batches["end_at"]).max())
    ax.set_xlim(first - 0.01 * (last - first), last + 0.01 * (last - first))
    return (last - first) / (72 * style.WIDTH - 12)


def _batch(ax, row, top, room, same, language):
    """One bar: its width the time in the machine, its fill the share that hatched, with name and share in it.

    What all names begin with alike, `same` letters, is left out.
    """
    start, end = date2num(row.set_at), date2num(row.end_at)
    ax.bar(
        start,
        BAR,
        width=end - start,
        bottom=top - BAR,
        align="edge",
        facecolor="none",
        edgecolor=style.INK,
        lw=0.8,
        zorder=3,
    )
    if row.share == row.share:
        ax.bar(
            start,
            BAR * row.share,
            width=end - start,
            bottom=top - BAR,
            align="edge",
            facecolor="#CFCFCF",
            lw=0,
            zorder=1,
        )
    told = row.share if row.least == row.share else (row.least, row.share)
    share = style.tell("share", language, share=told) if row.share == row.share else "?"
    width = (end - start) / room
    name, weight, letters = row.batch[same:], "bold", int(width / BOLD)
    if letters < len(name):
        weight, letters = "normal", int(width / LETTER)
    if letters >= min(len(name), 5):
        style.write(ax, (start + end) / 2, top - 8, style.short(name, letters), ha="center", weight=weight, zorder=5)
    if width > LETTER * len(share):
        style.write(ax, (start + end) / 2, top - 21, share, ha="center", zorder=5)


def _looks(ax, looks, top):
    looks = looks[looks["name"] != "hatch"]
    ax.plot(
        utc(looks["looked_at"]),
        top - LANE * looks["lane"].to_numpy(float) - BAR + 5,
        "o",
        ms=3.5,
        mew=0.8,
        color=style.INK,
        mfc=style.PAPER,
        zorder=6,
    )


def _spells(ax, glance, machine, place, unit, language):
    """Marks of heat and cold and of times without readings, in the strip of one machine."""
    for row in glance.gaps[glance.gaps["machine"] == machine].itertuples():
        ax.fill_between([row.start, row.end], place - 5, place + 5, **style.fill("gap") | {"linewidth": 0.4}, zorder=2)
    left, right = ax.get_xlim()
    for row in glance.spells[glance.spells["machine"] == machine].itertuples():
        size = 6 + 7 * min(abs(row.degree_hours) / LARGE, 1.0) ** 0.5
        at = utc(glance.spells.loc[[row.Index], "start"])
        ax.plot(
            at,
            [place],
            "^" if row.kind == "warm" else "v",
            ms=size,
            mfc=style.FILLS[row.kind][0],
            mec=style.INK,
            mew=0.8,
            zorder=7,
        )
        late = date2num(row.start) > left + 0.88 * (right - left)
        words = style.tell("degrees", language, degrees=float(shown(row.extreme_c, unit)))
        style.beside(ax, words, (at[0], place), side=-1 if late else 1, apart=8, zorder=7)
