"""Pictures of losses: the egg ledger, stages beside season and level, ages at death, tray, season.

Each takes a table made by ``hatchkit.losses`` and axes, draws, and returns the axes.
"""

from __future__ import annotations

import numpy as np

from hatchkit.figures import style
from hatchkit.figures.trays import tray_map
from hatchkit.spelling import eggs_words
from hatchkit.stage_names import in_words

__all__ = ["death_age", "egg_ledger", "losses_by_group", "season_chart", "stage_losses", "tray_map"]

#: How each look is marked where lines have names of their own.
LINE_STYLES = ("-", "--", "-.", ":")


def egg_ledger(table, ax=None):
    """From eggs set down to good chicks: what was lost at each stage of one group.

    Parameters
    ----------
    table : DataFrame
        Rows of one group of ``breakdown(season, by=...)`` by development.
    ax : matplotlib Axes, optional
    """
    ax = style.axes(ax, size=(8.0, 4.2))
    if table.empty:
        return style.nothing(ax, "No batch to show")
    rows = table.set_index("stage")
    eggs_set = float(rows["set"].iloc[0])
    lost = [stage for stage in rows.index if stage != "hatched" and rows.loc[stage, "eggs"] > 0]
    names, left = ["eggs set"], eggs_set
    ax.barh(0, eggs_set, color="#FFFFFF", edgecolor=style.INK, linewidth=0.8)
    ax.text(eggs_set / 2, 0, f"{eggs_set:.0f}", ha="center", va="center", fontsize=9)
    for place, stage in enumerate(lost, start=1):
        eggs = float(rows.loc[stage, "eggs"])
        ax.barh(place, eggs, left=left - eggs, **style.fill(stage))
        ax.plot([left, left], [place - 1.4, place + 0.4], color=style.INK, lw=0.6)
        ax.text(left - eggs - eggs_set * 0.01, place, f"- {eggs_words(eggs)}", ha="right", va="center", fontsize=9)
        left -= eggs
        names.append(style.label(stage))
    chicks = float(rows.loc["hatched", "eggs"])
    ax.barh(len(lost) + 1, chicks, **style.fill("hatched"))
    ax.text(chicks / 2, len(lost) + 1, f"{chicks:.0f}", ha="center", va="center", fontsize=9)
    names.append("good chicks")
    ax.set_yticks(range(len(names)), names)
    ax.invert_yaxis()
    ax.set_xlim(0, eggs_set * 1.02)
    ax.set_xlabel("Eggs")
    return ax


def losses_by_group(table, ax=None):
    """Stacked shares of eggs set per group, the chicks first.

    Parameters
    ----------
    table : DataFrame
        From ``breakdown(season, by=...)`` by development; groups without shares are left out.
    """
    name = table.columns[0]
    table = table[table["share_of_set"].notna()]
    groups = list(dict.fromkeys(table[name]))
    ax = style.axes(ax, size=(8.0, max(2.2, 0.32 * len(groups) + 1.4)))
    wide = table.pivot(index=name, columns="stage", values="share_of_set").loc[groups]
    left = np.zeros(len(groups))
    for stage in dict.fromkeys(table["stage"]):
        share = 100 * wide[stage].to_numpy()
        places = np.flatnonzero(share > 0)  # a bar of no width still costs as much to draw
        if len(places):
            ax.barh(places, share[places], left=left[places], label=style.label(stage), **style.fill(stage))
            left += share
    eggs = table.drop_duplicates(name).set_index(name)["set"]
    ax.set_yticks(range(len(groups)), [f"{group} ({eggs[group]:.0f})" for group in groups])
    ax.invert_yaxis()
    ax.set_xlim(0, 100)
    ax.set_xlabel("Share of eggs set (%)")
    ax.set_ylabel(f"{name.replace('_', ' ').capitalize()} (eggs set)")
    ax.legend(loc="upper left", bbox_to_anchor=(1.01, 1.0), frameon=False, fontsize=8)
    return ax


def stage_losses(table, own=None, norm=None, ax=None, *, of="set", name="this batch"):
    """Losses per stage with 95 % intervals, beside the season and a published level.

    Parameters
    ----------
    table : DataFrame
        Rows of one group of a breakdown.
    own : DataFrame, optional
        The breakdown of the whole season (``by=None``).
    norm : DataFrame, optional
        Levels (``norms.norms``); those that are a share of the same eggs are drawn.
    of : {"set", "fertile", "transferred"}
    name : str
        What to call the group in the legend.
    """
    ax = style.axes(ax, size=(8.0, 4.0))
    rows = table[(table["stage"] != "hatched") & table[f"share_of_{of}"].notna()]
    stages = list(rows["stage"])
    place = {stage: at for at, stage in enumerate(stages)}
    _points(ax, rows, place, of, offset=-0.16, marker="o", filled=True, name=name)
    if own is not None:
        rest = own[own["stage"].isin(stages) & own[f"share_of_{of}"].notna()]
        _points(ax, rest, place, of, offset=0.16, marker="s", filled=False, name="season")
    if norm is not None:
        drawn = norm[(norm["denominator"] == of) & norm["stage"].isin(stages)].drop_duplicates("stage")
        if len(drawn):
            ax.plot(
                100 * drawn["share"],
                [place[stage] for stage in drawn["stage"]],
                ls="",
                marker="d",
                ms=8,
                mfc="#FFFFFF",
                mec=style.INK,
                label=f"published level:\n{drawn['name'].iloc[0]}",
                zorder=3,
            )
    ax.set_yticks(range(len(stages)), [style.label(stage) for stage in stages])
    ax.invert_yaxis()
    ax.set_xlim(left=0)
    eggs = {"set": "eggs set", "fertile": "eggs not clear or infertile", "transferred": "eggs moved to hatch"}[of]
    ax.set_xlabel(f"Share of {eggs} (%), bars: 95 % interval")
    ax.grid(axis="x", color="#DDDDDD", lw=0.6)
    ax.set_axisbelow(True)
    ax.legend(frameon=False, fontsize=8, loc="best")
    return ax


def _points(ax, rows, place, of, *, offset, marker, filled, name):
    share, low, high = (100 * rows[f"share_of_{of}{end}"].to_numpy(dtype=float) for end in ("", "_low", "_high"))
    at = [place[stage] + offset for stage in rows["stage"]]
    around = np.maximum(np.vstack([share - low, high - share]), 0.0)
    colour = "#0072B2" if filled else style.INK
    ax.errorbar(
        share,
        at,
        xerr=around,
        ls="",
        marker=marker,
        ms=6,
        color=colour,
        mfc=colour if filled else "#FFFFFF",
        capsize=3,
        lw=1.4 if filled else 1.0,
        label=name,
    )


def death_age(result, group=None, ax=None, *, species=None, smooth=None, language="en"):
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
    smooth : DataFrame, optional
        A smooth shape to lay over it (columns day, lost), as from ``two_phase.season_two_phase``.
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
    ax.set_xlim(0, last * 1.02)
    ax.set_ylim(0, max(100 * curve["band_high"].max() * 1.15, 1.0))
    _steps(ax, curve, language)
    if smooth is not None:
        ax.plot(smooth["day"], 100 * smooth["lost"], color=style.INK, lw=1.4, ls=":")
    _look_names(ax, looks, last)
    ax.locator_params(axis="x", integer=True)
    ax.set_xlabel(style.tell("age_axis", language))
    ax.set_ylabel(style.tell("age_lost_axis", language, eggs=round(float(key["eggs"]))))
    return ax


#: Width of a letter as a share of the width of the axes of a picture on a telephone.
LETTER = 0.02


def _look_names(ax, looks, last):
    """A line at each look, with its name above; a name that would touch another stands on the next level."""
    ends = []
    for mark, row in enumerate(looks.sort_values("day").to_dict("records")):
        name, at = style.label(row["name"]), row["day"] / last
        ax.axvline(row["day"], color=style.SOFT, lw=0.9, ls=LINE_STYLES[mark % 4], zorder=1)
        half = LETTER * len(name) / 2
        left = min(at - half, 1 - 2 * half)
        level = next((level for level, end in enumerate(ends) if end + LETTER < left), len(ends))
        ends[level:level + 1] = [left + 2 * half]
        ax.annotate(name, (left + half, 1), xycoords="axes fraction", xytext=(0, 3 + 14 * level), va="bottom",
                    ha="center", textcoords="offset points", fontsize=style.TEXT, color=style.INK)


def _steps(ax, curve, language):
    """Boxes between the ages at which the loss is known, the band around them."""
    day, least, most = (curve[name].to_numpy(dtype=float) for name in ("day", "at_least", "at_most"))
    low, high = 100 * curve["band_low"].to_numpy(dtype=float), 100 * curve["band_high"].to_numpy(dtype=float)
    # Within a step the loss lies between its value at the start and at the end; so does the band.
    across = np.repeat(day, 2)[1:-1]
    ax.fill_between(across, np.repeat(low[:-1], 2), np.repeat(high[1:], 2), color="#E4E4E4", lw=0)
    for start, end, before, after in zip(day[:-1], day[1:], least[:-1], most[1:], strict=True):
        if after - before > 1e-6:
            ax.fill_between([start, end], 100 * before, 100 * after, facecolor=style.PAPER, hatch="//",
                            edgecolor=style.INK, lw=0.8)
        else:
            ax.plot([start, end], [100 * before] * 2, color=style.INK, lw=1.6)
    ax.plot(day, 100 * least, ls="", marker="o", ms=4, color=style.INK)
    style.write(ax, day[-1], 100 * least[-1] + 0.03 * ax.get_ylim()[1], style.tell("share", language, share=least[-1]),
                va="bottom", ha="right", weight="bold")
    top = int(np.argmax(high)) + 1
    style.write(ax, day[min(top, len(day) - 1)], high[-1] * 1.01, style.tell("band", language), va="bottom",
                ha="right", color=style.SOFT)


def season_chart(table, ax=None):
    """Share lost per batch in set order, with centre and limits.

    Parameters
    ----------
    table : DataFrame
        From ``season_chart.season_chart``.
    """
    ax = style.axes(ax, size=(8.0, 3.8))
    at = np.arange(len(table))
    low, high = 100 * table["low"].to_numpy(dtype=float), 100 * table["high"].to_numpy(dtype=float)
    share = 100 * table["share"].to_numpy(dtype=float)
    ax.step(at, high, where="mid", color=style.INK, lw=0.9, ls="--", label="limits for the usual spread")
    ax.step(at, low, where="mid", color=style.INK, lw=0.9, ls="--")
    ax.axhline(100 * table["centre"].iloc[0], color=style.INK, lw=0.9, label="mean of the season")
    ax.plot(at, share, color="#0072B2", lw=1.0, marker="o", ms=5, label="batch")
    out = table["outside"].to_numpy(dtype=bool)
    if out.any():
        ax.plot(
            at[out],
            share[out],
            ls="",
            marker="s",
            ms=10,
            mfc="none",
            mec="#D55E00",
            mew=2,
            label="outside the limits",
        )
    days = table["set_at"].dt.tz_convert(table.attrs.get("timezone", "UTC")).dt.strftime("%d %b").fillna("")
    ax.set_xticks(
        at,
        [f"{batch}\n{day}" for batch, day in zip(table["batch"], days, strict=True)],
        fontsize=7,
        rotation=0 if len(table) <= 16 else 90,
    )
    ax.set_ylim(bottom=0)
    of = {"set": "eggs set", "fertile": "eggs not clear or infertile"}[table.attrs["of"]]
    ax.set_ylabel(f"{in_words(table.attrs['stage'])}\n(% of {of})")
    ax.set_xlabel("Batch and day of setting")
    ax.legend(frameon=False, fontsize=8, loc="best")
    return ax
