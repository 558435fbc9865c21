"""Figures of the advice room: ranked causes, what the season lost to what, drawings for the breakout guide."""

from matplotlib.patches import Rectangle

from hatchkit.figures import egg_drawings, rows, style
from hatchkit.figures.style import INK, axes
from hatchkit.figures.why import differences, ladder
from hatchkit.say.speak import word

__all__ = [
    "age_against_season",
    "breakout_drawings",
    "differences",
    "ladder",
    "ranked_causes",
    "what_if",
]

#: A bar that stands for no stage.
PLAIN = dict(facecolor="#CFCFCF", edgecolor=INK, linewidth=0.6)
#: ... and one for what is no cause.
EMPTY = PLAIN | dict(facecolor=style.PAPER)


#: Points to the inch of the drawings within an SVG; what is drawn from this order on stays words and lines.
SHARP, WORDS = 160, 29


def ranked_causes(table, ax=None, *, most=6, language="en"):
    """Weight of each candidate cause as bars; tied ones share a hatch and the word.

    Parameters
    ----------
    table : DataFrame
        `advice.causes.Causes.table`: cause, share, tied.
    """
    shown, several = table.head(most), table["tied"].sum() > 1
    ax, middles = rows.stack(ax, [word("cause", cause, language) for cause in shown["cause"]])
    for middle, row in zip(middles, shown.to_dict("records"), strict=True):
        tie = bool(row["tied"] and several)
        rows.bar(
            ax,
            middle,
            100 * row["share"],
            style.tell("weight", language, share=row["share"], tie=tie),
            **(PLAIN | {"hatch": "//" if tie else ""} if row["tied"] else EMPTY),
        )
    ax.set_xlim(0, 118)
    return style.bare(ax, bottom=False)


def what_if(table, ax=None, *, language="en"):
    """Eggs lost by stage, by what they are put down to, and what a season without excursions would have kept.

    Stages have their own fills; causes are plain and what is no cause is empty, so that no cause looks like a stage.

    Parameters
    ----------
    table : DataFrame
        `advice.what_if.WhatIf.table`: block (stage, cause, excursions), key, eggs, low, high, usual.
    """
    table = table[(table["block"] == "excursions") | (table["eggs"].round() > 0)]
    if table.empty:
        return style.nothing(axes(ax, size=(style.WIDTH, 1.0)), style.tell("no_batch", language))
    shown = table.to_dict("records")
    firsts = [place for place, row in enumerate(shown) if not place or row["block"] != shown[place - 1]["block"]]
    ax, middles = rows.stack(
        ax,
        [_what(row, language) for row in shown],
        heads=[(place, style.tell(f"what_if_{shown[place]['block']}", language)) for place in firsts],
    )
    for middle, row in zip(middles, shown, strict=True):
        _what_if_bar(ax, middle, row, language)
    ax.set_xlim(0, 1.3 * (max(table[["eggs", "high", "usual"]].max(), default=1.0) or 1.0))
    return style.bare(ax, bottom=False)


def _what(row, language):
    """Stages, causes and what is no cause by their own words, the last row by a message."""
    if row["block"] == "stage":
        return style.label(row["key"], language)
    if row["block"] == "excursions":
        return style.tell("what_if_chicks", language)
    return word("account" if row["key"] in ("usual", "not_explained", "unaccounted") else "cause", row["key"], language)


def _what_if_bar(ax, place, row, language):
    look = (
        style.fill(row["key"])
        if row["block"] == "stage"
        else (EMPTY if row["key"] in ("usual", "not_explained", "unaccounted") else PLAIN)
    )
    ranged, usual = row["low"] == row["low"], row["usual"] == row["usual"]
    words = style.tell(
        "what_if_number",
        language,
        eggs=round(row["eggs"]),
        ranged=ranged,
        low=round(row["low"]) if ranged else 0,
        high=round(row["high"]) if ranged else 0,
        known=usual,
        usual=round(row["usual"]) if usual else 0,
    )
    ends = [row[name] for name in ("eggs", "high", "usual") if row[name] == row[name]]
    rows.bar(ax, place, max(row["eggs"], 0.0), **look)
    rows.beside(ax, max(ends), place, words)
    if ranged:
        ax.plot([row["low"], row["high"]], [place, place], color=INK, lw=1.6, marker="|", markersize=9)
    if usual:
        ax.plot([row["usual"]], [place], color=INK, marker="D", markersize=5.5, markerfacecolor=style.PAPER, ls="")


def breakout_drawings(guide, *, language="en"):
    """What may lie in an opened shell, drawn beside its words.

    Parameters
    ----------
    guide : DataFrame
        `advice.breakout.breakout_guide`: part, look, day_low, day_high (days).

    Returns
    -------
    ndarray of Axes, shape (drawings,)
    """
    looks = guide.to_dict("records")
    axs = egg_drawings.in_a_grid(len(looks), 2, height=2.0)
    figure, lines = axs[0].figure, -(-len(looks) // 2)
    figure.set_layout_engine("none")
    figure.set_dpi(SHARP)
    for place, (ax, row) in enumerate(zip(axs, looks, strict=True)):
        ax.set_position([place % 2 / 2, 1 - (place // 2 + 1) / lines, 1 / 2, 1 / lines])
        ax.set_rasterization_zorder(WORDS)  # a drawing has thousands of points; its words stay words
        egg_drawings.egg(ax, row["look"], _look_title(row, language), language=language)
    return axs


def _look_title(row, language) -> str:
    """What is written under a look: its name, and of a look of some age its days."""
    if row["part"] != "age":
        return word("breakout_look", row["look"], language)
    low, high = row["day_low"], row["day_high"]
    return style.tell("look_of_days", language, look=row["look"], low=low, high=high, one_day=bool(low == high))


def age_against_season(mine, season, ax=None, *, name="this batch", other="all batches", language="en"):
    """Share of embryos dead by age: one batch against all of its species, on one pair of axes.

    Parameters
    ----------
    mine, season : DataFrame
        `curve` of ``age_at_death`` for the batch and for its species: day, at_least, at_most, band_low, band_high.
        Between two looks the loss lies anywhere from at_least to at_most: drawn as boxes, not as a curve.
    """
    ax = axes(ax, size=(style.WIDTH, 3.2))
    _boxes(ax, season, edges=("band_low", "band_high"), facecolor="#E4E4E4", lw=0)
    _boxes(ax, season, edges=("at_least", "at_most"), facecolor="none", edgecolor=INK, lw=0.9, ls="--")
    _boxes(ax, mine, edges=("at_least", "at_most"), facecolor=style.PAPER, hatch="//", edgecolor=INK, lw=1.2)
    last = max(curve["day"].max() for curve in (mine, season))
    highest = 100 * max(mine["at_most"].max(), season["band_high"].max())
    ends = [100 * float(curve["at_least"].iloc[-1]) for curve in (mine, season)]
    words = [
        style.wrapped(style.tell("lost_end", language, who=who, share=end / 100), 13)
        for who, end in zip((name, other), ends, strict=True)
    ]
    ax.set(
        xlabel=style.tell("age_axis", language),
        ylabel=style.tell("embryos_lost_axis", language),
        xlim=(0, last * 1.02),
        ylim=(0, highest * 1.1 + 1),
    )
    gap = 0.075 * highest * max(text.count("\n") + 1 for text in words)
    for text, place in zip(words, rows.apart(ends, gap), strict=True):
        style.write(ax, last * 1.04, place, text, weight="bold" if text is words[0] else "normal", clip_on=False)
    return ax


def _boxes(ax, curve, *, edges, **look):
    """A box per stretch between two known ages, from the loss at its start to the loss at its end."""
    day = curve["day"].to_numpy(dtype=float)
    low, high = (100 * curve[edge].to_numpy(dtype=float) for edge in edges)
    for place in range(len(day) - 1):
        corner, top = (day[place], low[place]), max(high[place + 1], low[place])
        ax.add_patch(Rectangle(corner, day[place + 1] - day[place], top - low[place], **look))
