"""The picture that a student looks at again: where the eggs of a case went, and what the log shows."""

import numpy as np

from hatchkit import say
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
