"""Pictures of years and groups: shares side by side, changes beside what was to be expected."""

import numpy as np

from hatchkit.figures import style

#: Marker of each outcome of the years, so that grey print tells them apart.
MARKERS = {"hatch": "o", "fertility": "s", "hatch_of_fertile": "^"}


def by_year(table, ax=None, *, language="en"):
    """Hatch, fertility and hatch of the fertile, year by year, with 95 % intervals.

    Parameters
    ----------
    table : DataFrame
        From ``yearly.by_year.by_year``.
    ax : matplotlib Axes, optional
    """
    rows = table[table["outcome"].isin(MARKERS)]
    ax = style.axes(ax, size=(style.WIDTH, 3.0))
    years = sorted(rows["season"].unique())
    entries = []
    for shift, (outcome, marker) in zip((-0.18, 0.0, 0.18), MARKERS.items(), strict=True):
        own = rows[rows["outcome"] == outcome].sort_values("season")
        x = np.array([years.index(year) for year in own["season"]]) + shift
        share, low, high = (100 * own[name].to_numpy(float) for name in ("share", "low", "high"))
        line = ax.errorbar(
            x,
            share,
            yerr=np.abs(np.vstack([share - low, high - share])),
            fmt=marker,
            color=style.INK,
            markerfacecolor=style.INK if outcome == "hatch" else style.PAPER,
            ms=6,
            lw=1,
            capsize=3,
        )
        entries.append((line, style.tell(f"outcome_{outcome}", language)))
    ax.set_xticks(range(len(years)), [str(year) for year in years])
    ax.set(xlim=(-0.5, len(years) - 0.5), ylim=(0, 102), ylabel=style.tell("share_axis", language))
    style.key(ax, entries, columns=1)  # in other languages than English two do not stand side by side
    return ax


def groups(table, ax=None, *, language="en"):
    """Groups drawn towards all (filled, with 95 % interval) beside the shares as counted (hollow).

    Parameters
    ----------
    table : DataFrame
        ``Groups.table``.
    """
    shown = table.head(20)
    ax = style.axes(ax, size=(style.WIDTH, 0.34 * len(shown) + 1.7))
    place = np.arange(len(shown))
    pooled, low, high = (100 * shown[name].to_numpy(float) for name in ("pooled", "low", "high"))
    line = ax.errorbar(
        pooled,
        place,
        xerr=np.abs(np.vstack([pooled - low, high - pooled])),
        fmt="o",
        color=style.INK,
        ms=6,
        lw=1,
        capsize=3,
    )
    points = ax.plot(100 * shown["share"], place + 0.22, "D", color=style.INK, markerfacecolor=style.PAPER, ms=5, lw=0)[
        0
    ]
    ax.set_yticks(place, [style.wrapped(f"{row.group} ({row.total:.0f})", 18) for row in shown.itertuples()])
    ax.set(ylim=(len(shown) - 0.5, -0.5), xlabel=style.tell("share_axis", language))
    style.key(ax, [(line, style.tell("drawn_to_all", language)), (points, style.tell("as_counted", language))])
    return ax


def changes(table, ax=None, *, language="en"):
    """Each change: the year before (hollow), what was to be expected by itself (bar) and what came (filled).

    Parameters
    ----------
    table : DataFrame
        Rows of ``yearly.helped.helped``, one per change.
    """
    shown = table[table["expected"].notna()]
    ax = style.axes(ax, size=(style.WIDTH, 0.6 * len(shown) + 1.9))
    place = np.arange(len(shown))
    low, middle, high = (100 * shown[name].to_numpy(float) for name in ("expected_low", "expected", "expected_high"))
    bar = ax.barh(place, high - low, left=low, height=0.34, color=style.PAPER, edgecolor=style.INK, hatch="//", lw=0.8)
    ax.plot(middle, place, "|", color=style.INK, ms=14, mew=2)
    before = ax.plot(100 * shown["before"], place, "o", color=style.INK, markerfacecolor=style.PAPER, ms=8, lw=0)[0]
    after = ax.plot(100 * shown["after"], place, "o", color=style.INK, ms=8, lw=0)[0]
    ax.set_yticks(place, [style.wrapped(str(what), 18) for what in shown["what"]])
    ax.set(
        xlim=(max(min(low.min(initial=100), (100 * shown["before"]).min()) - 4, 0), 102),
        ylim=(len(shown) - 0.5, -0.5),
        xlabel=style.tell("share_axis", language),
    )
    style.key(
        ax,
        [
            (before, style.tell("year_before", language)),
            (bar, style.tell("by_itself", language)),
            (after, style.tell("since_change", language)),
        ],
        columns=1,
    )
    return ax
