"""Pictures of losses: the egg ledger, stages beside season and level, ages at death, tray, season.

Each takes a table made by ``hatchkit.losses`` and axes, draws, and returns the axes.
"""

import numpy as np
from matplotlib.patches import Patch

from hatchkit.figures import rows, style
from hatchkit.figures.trays import tray_map, tray_season

__all__ = ["death_age", "egg_ledger", "losses_by_group", "season_chart", "tray_map", "tray_season"]

#: How each look is marked where lines have names of their own.
LINE_STYLES = ("-", "--", "-.", ":")


def egg_ledger(table, ax=None, *, language="en"):
    """From eggs set down to good chicks: what was lost at each stage of one group.

    Parameters
    ----------
    table : DataFrame
        Rows of one group of ``breakdown(season, by=...)`` by development.
    ax : matplotlib Axes, optional
    """
    if table.empty:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 1.0)), style.tell("no_batch", language))
    rows = table.set_index("stage")
    lost = [stage for stage in rows.index if stage != "hatched" and rows.loc[stage, "eggs"] > 0]
    ax = style.axes(ax, size=(style.WIDTH, 0.29 * (len(lost) + 2) + 0.1))
    eggs_set = float(rows["set"].iloc[0])
    names, left = [style.tell("eggs_set", language)], eggs_set
    excess = float(rows["excess"].iloc[0])
    ax.barh(0, eggs_set, color=style.PAPER, edgecolor=style.INK, linewidth=0.8)
    style.write(ax, eggs_set / 2, 0, f"{eggs_set:.0f}", ha="center", weight="bold")
    if excess > 0:
        # What was written tells of more eggs than were set; the losses start from all of them.
        names.append(style.tell("eggs_excess", language))
        ax.barh(1, excess, left=eggs_set, color=style.PAPER, edgecolor=style.INK, linewidth=0.8, linestyle=":")
        style.write(ax, 0.98 * eggs_set, 1, f"+{excess:.0f}", ha="right")
        left += excess
    for place, stage in enumerate(lost, start=len(names)):
        eggs = float(rows.loc[stage, "eggs"])
        ax.barh(place, eggs, left=left - eggs, **style.fill(stage))
        ax.plot([left, left], [place - 1.4, place + 0.4], color=style.INK, lw=0.6)
        beside_it = left - eggs > 0.15 * eggs_set
        words = style.tell("ledger_lost", language, eggs=round(eggs), whole=bool(abs(eggs - round(eggs)) < 0.05))
        style.write(
            ax,
            left - eggs * beside_it + (0.02 - 0.04 * beside_it) * eggs_set,
            place,
            words,
            ha="right" if beside_it else "left",
        )
        left -= eggs
        names.append(style.label(stage, language))
    chicks = float(rows.loc["hatched", "eggs"])
    ax.barh(len(names), chicks, **style.fill("hatched"))
    style.write(ax, max(chicks / 2, 0.04 * eggs_set), len(names), f"{chicks:.0f}", ha="center", weight="bold")
    names.append(style.tell("good_chicks", language))
    ax.set_xlim(0, (eggs_set + excess) * 1.02)
    style.bare(ax, bottom=False)
    style.named_rows(ax, names)
    return ax


def losses_by_group(table, ax=None, *, language="en"):
    """Stacked shares of eggs set per group, the chicks first, their share written in.

    Parameters
    ----------
    table : DataFrame
        From ``breakdown(season, by=...)`` by development; groups without shares are left out.
    """
    name = table.columns[0]
    table = table[table["share_of_set"].notna()]
    groups = list(dict.fromkeys(table[name]))
    if not groups:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 1.0)), style.tell("no_batch", language))
    known = table.drop_duplicates(name).set_index(name)
    names = [style.wrapped(f"{style.short(group, 30)} ({known.at[group, 'set']:.0f})", 20) for group in groups]
    lines = max((words.count("\n") + 1 for words in names), default=1)
    ax = style.axes(ax, size=(style.WIDTH, (0.06 + 0.18 * lines) * len(groups) + 1.5))
    # Eggs told of beyond those set are part of the bar, so that it ends at 100 %.
    whole = (known["set"] + known["excess"])[groups]
    wide = table.pivot(index=name, columns="stage", values="eggs").loc[groups].div(whole, axis=0)
    left, entries = np.zeros(len(groups)), []
    for stage in dict.fromkeys(table["stage"]):
        share = 100 * wide[stage].to_numpy()
        places = np.flatnonzero(share > 0)  # a bar of no width still costs as much to draw
        if len(places):
            ax.barh(places, share[places], left=left[places], **style.fill(stage))
            entries.append((Patch(**style.fill(stage)), style.label(stage, language)))
            left += share
    for place, share in enumerate(100 * wide["hatched"].to_numpy() if "hatched" in wide else ()):
        if share >= 12:
            row = known.loc[groups[place]]
            told = (share / 100, min(share / 100 * whole.iloc[place] / row["set"], 1.0))
            style.write(ax, 1, place, style.tell("share", language, share=told if row["excess"] > 0 else share / 100))
    style.named_rows(ax, names)
    ax.set(xlim=(0, 100), xlabel=style.tell("share_of_set_axis", language))
    style.key(ax, entries)
    return ax


def death_age(result, group=None, ax=None, *, species=None, language="en"):
    """Cumulative loss of living embryos by age; a shaded box is all that the looks can tell.

    Within a box the loss rose from its lower left to its upper right corner, nobody knows on which
    day.

    Parameters
    ----------
    result : AgeAtDeath
    group : str, optional
        The group to draw; the first when left out.
    species : str, optional
        Likewise.
    """
    ax = style.axes(ax, size=(style.WIDTH, 3.4))
    fits = result.fits
    fits = fits[fits["group"] == group] if group is not None else fits
    fits = fits[fits["species"] == species] if species is not None else fits
    if fits.empty:
        return style.nothing(ax, style.tell("no_known_end", language))
    key = fits.iloc[0]
    curve, looks = (
        part[(part["group"] == key["group"]) & (part["species"] == key["species"])]
        for part in (result.curve, result.looks)
    )
    last = max(curve["day"].max(), looks["day"].max(), 1.0)
    # Limits first: a line across the picture asks for them, and each time everything is measured.
    ax.set(xlim=(0, last * 1.02), ylim=(0, max(100 * curve["band_high"].max() * 1.15, 1.0)))
    _steps(ax, curve, language)
    _look_names(ax, looks, last, language)
    ax.locator_params(axis="x", integer=True)
    ax.set(
        xlabel=style.tell("age_axis", language),
        ylabel=style.tell("age_lost_axis", language, eggs=round(float(key["eggs"]))),
    )
    return ax


#: Width of a letter as a share of the width of the axes of a picture on a telephone.
LETTER = 0.02


def _look_names(ax, looks, last, language):
    """A line at each look, with its name above; a name that would touch another stands on the next level."""
    ends = []
    for mark, row in enumerate(looks.sort_values("day").to_dict("records")):
        name, at = style.label(row["name"], language), row["day"] / last
        ax.axvline(row["day"], color=style.SOFT, lw=0.9, ls=LINE_STYLES[mark % 4], zorder=1)
        half = LETTER * len(name) / 2
        left = min(at - half, 1 - 2 * half)
        level = next((level for level, end in enumerate(ends) if end + LETTER < left), len(ends))
        ends[level : level + 1] = [left + 2 * half]
        ax.annotate(
            name,
            (left + half, 1),
            xycoords="axes fraction",
            xytext=(0, 3 + 14 * level),
            va="bottom",
            ha="center",
            textcoords="offset points",
            fontsize=style.TEXT,
            color=style.INK,
        )


def _steps(ax, curve, language):
    """Boxes between the ages at which the loss is known, the band around them."""
    day, least, most = (curve[name].to_numpy(dtype=float) for name in ("day", "at_least", "at_most"))
    low, high = 100 * curve["band_low"].to_numpy(dtype=float), 100 * curve["band_high"].to_numpy(dtype=float)
    # Within a step the loss lies between its value at the start and at the end; so does the band.
    across = np.repeat(day, 2)[1:-1]
    ax.fill_between(across, np.repeat(low[:-1], 2), np.repeat(high[1:], 2), color="#E4E4E4", lw=0)
    for start, end, before, after in zip(day[:-1], day[1:], least[:-1], most[1:], strict=True):
        if after - before > 1e-6:
            ax.fill_between(
                [start, end], 100 * before, 100 * after, facecolor=style.PAPER, hatch="//", edgecolor=style.INK, lw=0.8
            )
        else:
            ax.plot([start, end], [100 * before] * 2, color=style.INK, lw=1.6)
    ax.plot(day, 100 * least, ls="", marker="o", ms=4, color=style.INK)
    style.write(
        ax,
        day[-1],
        100 * least[-1] + 0.03 * ax.get_ylim()[1],
        style.tell("share", language, share=least[-1]),
        va="bottom",
        ha="right",
        weight="bold",
    )
    top = int(np.argmax(high)) + 1
    style.write(
        ax,
        day[min(top, len(day) - 1)],
        high[-1] * 1.01,
        style.tell("band", language),
        va="bottom",
        ha="right",
        color=style.SOFT,
    )


#: Batches whose names have room under the season's picture.
NAMED = 22


def season_chart(table, ax=None, *, language="en"):
    """Share lost per batch in set order, with the season's mean and limits, named at the right.

    Parameters
    ----------
    table : DataFrame
        From ``season_chart.season_chart``.
    """
    ax = style.axes(ax, size=(style.WIDTH, 3.2))
    at = np.arange(len(table))
    low, high = 100 * table["low"].to_numpy(dtype=float), 100 * table["high"].to_numpy(dtype=float)
    share, mean = 100 * table["share"].to_numpy(dtype=float), 100 * table["centre"].iloc[0]
    for edge in (high, low):
        ax.step(at, edge, where="mid", color=style.SOFT, lw=0.9, ls="--")
    ax.axhline(mean, color=style.SOFT, lw=0.9)
    ax.plot(at, share, color=style.INK, lw=1.0, marker="o", ms=5)
    out = table["outside"].to_numpy(dtype=bool)
    if out.any():
        ax.plot(at[out], share[out], ls="", marker="s", ms=12, mfc="none", mec="#D55E00", mew=2)
    same = style.common_start(table["batch"])
    names = [style.short(str(name)[same:]) for name in table["batch"]]
    top = 1.15 * np.nanmax(np.concatenate([share, high]), initial=1.0)
    for place in np.flatnonzero(out):
        spot = (at[place], share[place])
        style.beside(ax, names[place], spot, xytext=(0, 9), ha="center", va="bottom", weight="bold")
    ax.set_ylim(0, top)
    ends = rows.apart([low[-1], mean, high[-1]], 0.07 * top)
    for place, name in zip(ends, ("limit", "mean", "limit"), strict=True):
        style.write(
            ax,
            1.02,
            place,
            style.tell(f"chart_{name}", language),
            color=style.SOFT,
            clip_on=False,
            transform=ax.get_yaxis_transform(),
        )
    every = -(-len(table) // NAMED)
    ax.set_xticks(at[::every], names[::every], rotation=90 if len(table) > 8 or max(map(len, names)) > 5 else 0)
    ax.set(xlim=(-0.5, len(table) - 0.5), xlabel=style.tell("chart_axis", language))
    style.heading(ax, style.tell("chart_title", language, stage=table.attrs["stage"], of=table.attrs["of"]))
    return ax
