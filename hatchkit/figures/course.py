"""The pictures of the course: one idea each."""

import numpy as np
from matplotlib.patches import Ellipse

from hatchkit import say
from hatchkit.figures import style
from hatchkit.figures.style import (
    INK,
    LINES,
    PAPER,
    TEXT,
    WIDTH,
    axes,
    fill,
    other_scale,
    subplots,
    temperature_label,
    write,
)

#: What became of an egg on the course's tray, by the letter under which it was last written down.
LETTERS = {
    "h": ("hatched", "hatched"),
    "c": ("clear", "clear"),
    "d": ("dead", "dead"),
    "p": ("pipped_dead", "pipped, died"),
}


def tray_map(tray, ax=None, *, columns=6):
    """The tray from above: each egg with what became of it.

    Parameters
    ----------
    tray : DataFrame
        One row an egg, one column a look from the first to the last; letters of `LETTERS`, ``a`` for
        alive, ``.`` for no longer there.
    """
    rows = -(-len(tray) // columns)
    ax = axes(ax, size=(WIDTH, 0.62 * rows + 0.7))
    drawn = {}
    for place, egg in enumerate(tray.itertuples(index=False)):
        letter = "".join(egg).replace(".", "")[-1]
        x, y = place % columns, -(place // columns)
        drawn[letter] = ax.add_patch(Ellipse((x, y), 0.66, 0.86, **fill(LETTERS[letter][0])))
        write(ax, x, y, letter, ha="center", bbox=dict(boxstyle="circle,pad=0.15", facecolor=PAPER, edgecolor="none"))
    ax.set(xlim=(-0.6, columns - 0.4), ylim=(0.45 - rows, 0.55), aspect="equal")
    ax.axis("off")
    style.key(ax, [(ellipse, LETTERS[letter][1]) for letter, ellipse in drawn.items()])
    return ax


def luck(hatches, ax=None, *, each, mark=None):
    """How many hatches gave how many chicks; `mark` is a count to point at."""
    ax = axes(ax, size=(WIDTH, 3.0))
    chicks, times = np.unique(hatches, return_counts=True)
    ax.bar(chicks, times, **fill("hatched"))
    if mark is not None:
        ax.axvline(mark, color=INK, ls="--")
        style.beside(ax, f"{mark} of {each}", (mark, times.max()), side=-1, va="top", color="black")
    ax.set(xlabel=f"Chicks from {each} eggs", ylabel=f"Hatches out of {len(hatches)}")
    return ax


def luck_alt(hatches, *, each) -> str:
    """The picture of `luck` in a sentence: where most hatches lie, and the tallest bars (within a tenth of it)."""
    low, high = np.quantile(hatches, [0.025, 0.975])
    chicks, times = np.unique(hatches, return_counts=True)
    tallest = [str(count) for count in chicks[times >= 0.9 * times.max()]]
    return say.text(
        "course_luck",
        dict(hatches=len(hatches), each=each, low=low, high=high, bars=len(tallest), tallest=tallest),
    )


def interval_lines(low, high, ax=None, *, truth):
    """Intervals one above the other; those that miss the true share are dashed and crossed."""
    ax = axes(ax, size=(WIDTH, 3.4))
    for row, (left, right) in enumerate(zip(low, high, strict=True)):
        holds = left <= truth <= right
        ax.plot(
            [100 * left, 100 * right],
            [row, row],
            color=INK if holds else "#D55E00",
            lw=1.4,
            ls="-" if holds else "--",
            marker="|" if holds else "x",
        )
    ax.axvline(100 * truth, color="#0072B2", lw=1.2)
    ax.set(xlabel=say.text("course_true_share_axis"), yticks=[], ylabel=say.text("course_intervals_axis"))
    return ax


def between_looks(table, ax=None, *, looks):
    """A line per egg from the day after which to the day by which it died.

    Parameters
    ----------
    table : DataFrame
        egg, after_day, by_day.
    looks : sequence of number
        Days of the looks.
    """
    ax = axes(ax, size=(WIDTH, 0.34 * len(table) + 1.0))
    for row, egg in enumerate(table.itertuples()):
        ax.plot([egg.after_day, egg.by_day], [row, row], color=INK, lw=2.2, marker="|")
    for day in looks:
        ax.axvline(day, color="#0072B2", ls=":", lw=1.2)
    ax.set(
        xlabel=say.text("course_looks_axis"),
        xlim=(0, max(looks) + 0.5),
        xticks=range(0, max(looks) + 1, 7),
        yticks=range(len(table)),
        yticklabels=[f"egg {egg}" for egg in table["egg"]],
    )
    ax.set_xticks(range(max(looks) + 1), minor=True)
    ax.invert_yaxis()
    return ax


def deaths_and_finds(true_day, found_day, axs=None):
    """Two rows of bars: the days on which embryos died, and the days on which they were found."""
    if axs is None:
        _, axs = style.subplots(2, 1, size=(WIDTH, 3.8), sharex=True)
    edges = np.arange(0, 22.5)
    for ax, days, key, name in zip(axs, (true_day, found_day), ("hatched", "dead"), ("died", "found"), strict=True):
        axes(ax).hist(days, bins=edges - 0.5, **fill(key))
        ax.set_ylabel(f"Embryos\n{name}")
        ax.yaxis.get_major_locator().set_params(integer=True)
    axs[1].set(xlabel="Day of incubation", xticks=range(0, 22, 7))
    axs[1].set_xticks(range(22), minor=True)
    return axs


def air_and_eggs(minutes, air_c, eggs, ax=None, *, unit="C"):
    """The air and how eggs follow it.

    Parameters
    ----------
    eggs : dict
        Name of a line: temperatures, in the unit of display.
    """
    ax = axes(ax, size=(WIDTH, 3.2))
    style.other_scale(ax, unit)
    ax.plot(minutes, air_c, label="air", **LINES["air"])
    looks = (LINES["egg"], dict(color="#D55E00", lw=1.6, ls="-."))
    for (name, values), look in zip(eggs.items(), looks, strict=False):
        ax.plot(minutes, values, label=name, **look)
    ax.set(xlabel="Minutes", ylabel=temperature_label(unit))
    return _named(ax)


def shapes(table, ax=None, *, names, unit="C"):
    """Three logs of the same length, one above the other's name; `table` has column hour and one per name."""
    ax = axes(ax, size=(WIDTH, 3.2))
    style.other_scale(ax, unit)
    for name, dashes in zip(names, ("-", "--", "-."), strict=True):
        ax.plot(table["hour"], table[name], label=name, color=INK, ls=dashes, lw=1.3)
    ax.set(xlabel="Hours", ylabel=temperature_label(unit))
    return _named(ax)


def arrangements(differences, ax=None, *, seen, bars=16):
    """How often the arrangements give which difference; those at least as large as the one seen are marked.

    The bars begin halfway between the difference that was seen (the dashed line) and the next smaller
    one, so that no bar holds both and the marked bars can be counted.
    """
    ax = axes(ax, size=(WIDTH, 3.0))
    points = 100 * np.asarray(differences)
    as_large = np.asarray(differences) >= seen - 1e-9
    width = np.ptp(points) / (bars - 1)
    smaller = points[~as_large].max(initial=100 * seen - width)
    begin = (smaller + points[as_large].min(initial=100 * seen)) / 2
    steps = np.arange(np.floor((points.min() - begin) / width), np.ceil((points.max() - begin) / width) + 1)
    for key, part, name in (("hatched", ~as_large, "smaller"), ("warm", as_large, say.text("course_as_large"))):
        ax.hist(points[part], bins=begin + width * steps, label=name, **fill(key))
    ax.axvline(100 * seen, color=INK, ls="--", label="as it was")
    ax.set(xlabel="Difference (percentage points)", ylabel="Arrangements")
    ax.yaxis.get_major_locator().set_params(integer=True)
    return _named(ax)


def _named(ax):
    """The axes with a key of what bears a label."""
    style.key(ax, list(zip(*ax.get_legend_handles_labels(), strict=True)), columns=3)
    return ax


def arrangements_alt(differences, *, seen) -> str:
    """The picture of `arrangements` in a sentence."""
    points = 100 * np.asarray(differences)
    return say.text("course_arrangements", dict(least=points.min(), most=points.max(), seen=100 * seen))


#: Fill of a stage of the course.
FILL = {
    "infertile": "infertile",
    "early": "early",
    "mid": "mid",
    "late": "late",
    "pipped": "pipped_dead",
    "removed": "removed",
}


def case_picture(shown: dict, axs=None):
    """Bars of the eggs lost by stage beside the other batches, and the air of the machine below.

    Parameters
    ----------
    shown : dict
        stages: stage -> (eggs of the batch, eggs of the others); eggs: (set, set of the others); log: day, temp_c.
    """
    if axs is None:
        _, axs = subplots(2, 1, size=(WIDTH, 5.0), height_ratios=(1, 1.1))
    bars, air = axs
    names, (eggs, others) = list(shown["stages"]), shown["eggs"]
    for place, name in enumerate(names):
        own, other = shown["stages"][name]
        bars.bar(place - 0.2, 100 * own / eggs, 0.38, **fill(FILL[name]))
        bars.bar(place + 0.2, 100 * other / others, 0.38, facecolor=PAPER, edgecolor=INK, linewidth=0.8)
        bars.annotate(str(own), (place - 0.2, 100 * own / eggs), ha="center", va="bottom", fontsize=TEXT)
    axes(bars).set(xticks=range(len(names)), xticklabels=names, ylabel=say.text("course_lost_axis"))
    bars.tick_params(axis="x", rotation=90)
    bars.margins(y=0.15)
    day, temp = np.array(shown["log"]["day"]), np.array(shown["log"]["temp_c"])
    axes(air).set(xlabel="Day since setting", ylabel=temperature_label("C"))
    if len(day):
        air.plot(day, temp, **LINES["air"])
        air.axhline(37.5, color="#0072B2", lw=0.8, ls=":")
        other_scale(air, "C")
    else:
        write(air, 0.5, 0.5, say.text("course_no_log"), ha="center", transform=air.transAxes)
    return axs
