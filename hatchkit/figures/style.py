"""How every figure looks: one fill, hatch and line per meaning, so that grey print loses nothing."""

import re
import textwrap
from os.path import commonprefix

from matplotlib import pyplot, rc_context
from matplotlib.figure import Figure
from matplotlib.text import Text
from matplotlib.transforms import blended_transform_factory

from hatchkit import say
from hatchkit.units import c_to_f, check_unit, f_to_c
from hatchkit.words import stage_names

#: Fills from light to dark by stage, so that they stay apart in grey; the hatch says the same again.
#: Colours are the Okabe-Ito set, chosen for colour-blind readers (Okabe & Ito 2008, Color Universal Design).
FILLS = {
    "hatched": ("#F3F3F3", ""),
    "culled": ("#CFCFCF", "+"),
    "clear": ("#F0E442", ""),
    "infertile": ("#F0E442", "|"),
    "early": ("#56B4E9", "//"),
    "mid": ("#E69F00", "\\\\"),
    "late": ("#0072B2", "xx"),
    "dead": ("#999999", "xx"),
    "pipped_dead": ("#5B2A68", "++"),
    "removed": ("#FFFFFF", "--"),
    "unaccounted": ("#FFFFFF", "||"),
    "warm": ("#D55E00", "//"),
    "cold": ("#56B4E9", "\\\\"),
    "gap": ("#DDDDDD", "xx"),
}

INK, PAPER = "#222222", "#FFFFFF"
#: Lines and words of the second rank.
SOFT = "#666666"
#: Fill of the range in force.
RIGHT = "#D5E8D4"
#: Every colour of a picture -> the one that stands for it on a dark page.
DARK = {
    INK: "#E6E6E6",
    PAPER: "#16191D",
    SOFT: "#A9AEB4",
    RIGHT: "#294A31",
    "#F3F3F3": "#353A40",
    "#CFCFCF": "#5B6168",
    "#F0E442": "#807600",
    "#56B4E9": "#2F7FAE",
    "#E69F00": "#8F6300",
    "#0072B2": "#2A93D6",
    "#5B2A68": "#8B5A99",
    "#D55E00": "#C4590A",
    "#DDDDDD": "#40464C",
    "#E4E4E4": "#363B41",
    "#999999": "#5F666D",
}

#: Width of a picture, inches: 360 points, which a telephone of 390 px shows in 358 px.
WIDTH = 5.0
#: Sizes of text, points: so that the smallest is still 10 px high there.
TEXT, HEAD = 10.5, 12.0
LINES = {"air": dict(color=INK, lw=0.9), "egg": dict(color="#0072B2", lw=1.6, ls="--")}


def fill(key: str) -> dict:
    """Keyword arguments for a matplotlib patch that stands for `key`."""
    colour, hatch = FILLS.get(key, ("#BBBBBB", ""))
    return dict(facecolor=colour, hatch=hatch, edgecolor=INK, linewidth=0.6)


def subplots(rows=1, columns=1, *, size, **more):
    """``pyplot.subplots`` on a figure that shows every text as it is written: a flock called ``$_$`` is no formula."""
    return pyplot.subplots(rows, columns, figsize=size, layout="constrained", FigureClass=_AsWritten, **more)


class _AsWritten(Figure):
    def draw(self, renderer):
        with rc_context({"text.parse_math": False}):  # for what drawing itself makes: the labels of ticks
            for text in self.findobj(Text):
                text.set_parse_math(False)
            super().draw(renderer)


def axes(ax=None, *, size=(WIDTH, 3.2)):
    """`ax`, or new axes of the given size in inches, in the kit's plain look."""
    if ax is None:
        _, ax = subplots(size=size)
    for side in ("top", "right"):
        ax.spines[side].set_visible(False)
    for side in ("left", "bottom"):
        ax.spines[side].set(color=SOFT, linewidth=0.7)
    ax.tick_params(which="both", colors=SOFT, labelcolor=INK, labelsize=TEXT, width=0.7)
    for axis in (ax.xaxis, ax.yaxis):
        axis.label.set(size=TEXT, color=INK)
        axis.get_offset_text().set(size=TEXT)
    return ax


def bare(ax, *, bottom=True):
    """Axes for rows that carry their own names: no scale on the left, and none below unless it is wanted."""
    ax.spines["left"].set_visible(False)
    ax.set_yticks([])
    if not bottom:
        ax.spines["bottom"].set_visible(False)
        ax.set_xticks([])
    return ax


def heading(ax, words: str):
    """What the picture is of, above it on the left, in lines that do not run out of it."""
    ax.set_title(wrapped(words, 46), loc="left", fontsize=HEAD, color=INK)


def named_rows(ax, names, *, room=0.5):
    """Names at the left of rows at 0, 1, ..., the first on top, with `room` rows above and below."""
    ax.tick_params(left=False)
    ax.set(yticks=range(len(names)), yticklabels=names, ylim=(len(names) - 1 + room, -room))


def write(ax, x, y, words, *, color=INK, **more):
    """Text on the picture, at least as large as a telephone needs it."""
    return ax.text(x, y, str(words), fontsize=TEXT, color=color, **{"va": "center"} | more)


def beside(ax, words, place, *, side=1, apart=6, **more):
    """Words just right (side 1) or left (side -1) of a point, `apart` points off."""
    look = dict(xytext=(apart * side, 0), va="center", ha="left" if side > 0 else "right", fontsize=TEXT, color=INK)
    return ax.annotate(words, place, textcoords="offset points", **look | more)


def other_scale(ax, unit):
    """A second scale on the right: degF where the left one is degC, and the other way round."""
    there, back, other = (c_to_f, f_to_c, "F") if unit == "C" else (f_to_c, c_to_f, "C")
    right = ax.secondary_yaxis("right", functions=(there, back))
    right.set_ylabel(temperature_label(other), fontsize=TEXT, color=INK)
    right.tick_params(colors=SOFT, labelcolor=INK, labelsize=TEXT)
    right.spines["right"].set(color=SOFT, linewidth=0.7)


def key(ax, entries, *, columns=2, **more):
    """Swatches and marks with their words above the axes, in the order in which they are met below.

    It begins at the left of the picture, or of the axes where they share it with others.

    Parameters
    ----------
    entries : sequence of (handle, str)
    """
    handles, words = zip(*entries, strict=True)
    if len(ax.figure.axes) == 1:
        more["bbox_transform"] = blended_transform_factory(ax.figure.transFigure, ax.transAxes)
    ax.legend(
        handles,
        words,
        frameon=False,
        fontsize=TEXT,
        loc="lower left",
        bbox_to_anchor=(0, 1),
        ncols=columns,
        handlelength=1.3,
        handletextpad=0.5,
        columnspacing=1.2,
        borderaxespad=0.3,
        labelspacing=0.35,
        labelcolor=INK,
        **more,
    )


def wrapped(words, width: int = 44) -> str:
    """Words in lines of at most `width` letters; a number keeps its unit beside it."""
    kept = re.sub(r"(\d) (?=[%°]|h\b|g\b)", "\\1\N{NO-BREAK SPACE}", str(words))
    return "\n".join(textwrap.wrap(kept, width)) or " "


def tell(code: str, language: str = "en", **facts) -> str:
    """Words on a picture: message ``drawn_<code>`` of ``say/messages``."""
    return say.text(f"drawn_{code}", facts, language)


def nothing(ax, words: str):
    """Axes that say why there is nothing to draw."""
    write(ax, 0.5, 0.5, wrapped(words, 50), ha="center", transform=ax.transAxes)
    ax.set_axis_off()
    return ax


def temperature_label(unit: str = "C", language: str = "en") -> str:
    """Axis label with its unit."""
    return tell("temperature", language, unit=check_unit(unit))


def label(key: str, language: str = "en") -> str:
    """Short name of a stage, fate or look: the message ``stage_<key>`` of a language that has it, else in English."""
    known = language != say.FIRST and say.has(f"stage_{key}", language)
    return say.text(f"stage_{key}", {}, language) if known else stage_names.label(key)


def short(name, most: int = 16) -> str:
    """A name that a person gave, at most so long: the middle is left out, as names often differ at their ends."""
    name, tail = str(name), (most - 1) // 2
    return name if len(name) <= most else f"{name[: most - 1 - tail].rstrip()}…{name[-tail:].lstrip()}"


def common_start(names) -> int:
    """How many letters all names begin with alike, whole words only: six of "Hatch 1" and "Hatch 2"."""
    names = list(dict.fromkeys(map(str, names)))
    return commonprefix(names).rfind(" ") + 1 if len(names) > 1 else 0
