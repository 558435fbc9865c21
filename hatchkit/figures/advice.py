"""Figures of the advice room: ranked causes, what the season lost to what, drawings for the breakout guide."""

from __future__ import annotations

from hatchkit.figures import egg_drawings
from hatchkit.figures.style import INK, axes, fill, label, subplots


def ranked_causes(table, ax=None, *, most=6):
    """Weight of each candidate cause as bars; tied ones share a hatch.

    Parameters
    ----------
    table : DataFrame
        `advice.causes.Causes.table`: name, share, tied.
    """
    rows = table.head(most).iloc[::-1]
    ax = axes(ax, size=(8.0, 0.45 * len(rows) + 0.9))
    several = table["tied"].sum() > 1
    for place, row in enumerate(rows.to_dict("records")):
        mark = row["tied"] and several
        ax.barh(
            place,
            100 * row["share"],
            height=0.7,
            facecolor="#E69F00" if row["tied"] else "#DDDDDD",
            hatch="//" if mark else "",
            edgecolor=INK,
            linewidth=0.6,
        )
        ax.text(
            100 * row["share"] + 1,
            place,
            f"{100 * row['share']:.0f} %" + (" (tie)" if mark else ""),
            va="center",
            fontsize=8,
            color=INK,
        )
    ax.set_yticks(range(len(rows)), [_wrapped(name) for name in rows["name"]], fontsize=8)
    ax.set(xlim=(0, 108), xlabel="Weight among all candidates (%)")
    return ax


def what_if(table, ax=None):
    """Eggs lost by stage, by cause, and what a season without excursions would have kept.

    Parameters
    ----------
    table : DataFrame
        `advice.what_if.WhatIf.table`: block (stage, cause, excursions), key, name, eggs, low, high, usual.
    """
    ax = axes(ax, size=(8.0, 0.3 * len(table) + 1.3))
    titles = {"stage": "Found at stage", "cause": "Put down to", "excursions": "Had there been no excursions"}
    place, ticks = 0.0, []
    for block, rows in table.groupby("block", sort=False):
        ax.text(0, place, titles[block], fontsize=8.5, fontweight="bold", va="center", color=INK)
        place -= 1
        for row in rows.to_dict("records"):
            _bar(ax, place, row, block)
            ticks.append((place, row["name"]))
            place -= 1
    ax.set_yticks([at for at, _ in ticks], [_wrapped(name, 44) for _, name in ticks], fontsize=8)
    ax.set(ylim=(place + 0.3, 0.8), xlabel="Eggs (bar: estimate; line: 95 % range; diamond: usual loss)")
    ax.axvline(0, color=INK, lw=0.6)
    return ax


def _bar(ax, place, row, block):
    look = (
        fill(row["key"])
        if block == "stage"
        else dict(
            facecolor="#E69F00" if block == "cause" else "#56B4E9",
            hatch=".." if block == "cause" else "//",
            edgecolor=INK,
            linewidth=0.6,
        )
    )
    ax.barh(place, row["eggs"], height=0.7, **look)
    if row["low"] == row["low"]:
        ax.plot([row["low"], row["high"]], [place, place], color=INK, lw=1.6, marker="|", markersize=7)
    if row["usual"] == row["usual"]:
        ax.plot([row["usual"]], [place], color=INK, marker="D", markersize=4.5, markerfacecolor="white", ls="")


def breakout_drawings(guide, axs=None, *, columns=6):
    """One drawing per row of the breakout guide that has one, in the guide's order.

    Parameters
    ----------
    guide : DataFrame
        `advice.breakout.breakout_guide`: drawing, look, day_low, day_high.
    axs : sequence of Axes, optional
        As many as there are drawings.

    Returns
    -------
    ndarray of Axes
    """
    import numpy as np

    rows = guide[guide["drawing"].isin(egg_drawings.KINDS)].to_dict("records")
    if axs is None:
        lines = -(-len(rows) // columns)
        figure, grid = subplots(lines, columns, size=(1.35 * columns, 1.85 * lines))
        axs = np.atleast_1d(grid).ravel()
        for spare in axs[len(rows) :]:
            figure.delaxes(spare)
    axs = np.asarray(axs, dtype=object).ravel()[: len(rows)]
    for ax, row in zip(axs, rows, strict=True):
        days = (
            f"{row['day_low']:.0f}"
            if row["day_low"] == row["day_high"]
            else f"{row['day_low']:.0f}-{row['day_high']:.0f}"
        )
        egg_drawings.egg(ax, row["drawing"], row["look"] if row["part"] != "age" else f"{row['look']} (day {days})")
    return axs


def _wrapped(name, width=38) -> str:
    import textwrap

    return "\n".join(textwrap.wrap(str(name), width)) or label(name)


def side_by_side(columns, *, height=3.0, width=8.0, titles=None, share_y=False):
    """Empty axes in one row, `width` inches wide in all.

    Returns
    -------
    ndarray of Axes, shape (columns,)
    """
    import numpy as np

    _, axs = subplots(1, columns, size=(width, height), sharey=share_y)
    axs = np.atleast_1d(axs)
    for ax, title in zip(axs, titles or [""] * columns, strict=True):
        ax.set_title(title, fontsize=10, color=INK)
    return axs


def age_against_season(mine, season, ax=None, *, name="this batch", other="all batches of its species"):
    """Share of embryos dead by age: one batch against all of its species, on one pair of axes.

    Parameters
    ----------
    mine, season : DataFrame
        `curve` of ``age_at_death`` for the batch and for its species: day, at_least, at_most, band_low, band_high.
        Between two looks the loss lies anywhere from at_least to at_most: drawn as boxes, not as a curve.
    """
    ax = axes(ax, size=(8.0, 2.6))
    _boxes(ax, season, name=f"{other}: 95 % band", edges=("band_low", "band_high"), facecolor="#DDDDDD", lw=0)
    _boxes(ax, season, name=other, edges=("at_least", "at_most"), facecolor="none", edgecolor=INK, lw=0.9, ls="--")
    _boxes(ax, mine, name=name, edges=("at_least", "at_most"), **fill("early"))
    ax.set(xlabel="Age (days since setting)", ylabel="Embryos lost (%)", ylim=(0, None), xlim=(0, None))
    ax.legend(frameon=False, fontsize=8, loc="upper left")
    return ax


def _boxes(ax, curve, *, name, edges, **look):
    """A box per stretch between two known ages, from the loss at its start to the loss at its end."""
    from matplotlib.patches import Rectangle

    day = curve["day"].to_numpy(dtype=float)
    low, high = (100 * curve[edge].to_numpy(dtype=float) for edge in edges)
    for place in range(len(day) - 1):
        corner, top = (day[place], low[place]), max(high[place + 1], low[place])
        ax.add_patch(Rectangle(corner, day[place + 1] - day[place], top - low[place], **look))
        ax.plot([day[place], day[place + 1]], [low[place], top], alpha=0)  # so that the axes reach round the box
    ax.add_patch(Rectangle((0, 0), 0, 0, label=name, **look))
