"""The picture that a student looks at again: where the eggs of a case went, and what the log shows."""

from __future__ import annotations

import numpy as np

from hatchkit.figures.style import INK, LINES, axes, fill, subplots, temperature_label

FILL = {"infertile": "infertile", "early": "early", "mid": "mid", "late": "late", "pipped": "pipped_dead",
        "removed": "removed"}


def case_picture(shown: dict, axs=None):
    """Bars of the eggs lost by stage beside the other batches, and the air of the machine below.

    Parameters
    ----------
    shown : dict
        stages: stage -> (eggs of the batch, eggs of the others); eggs: (set, set of the others); log: day, temp_c.
    """
    if axs is None:
        _, axs = subplots(2, 1, size=(7.2, 5.0), height_ratios=(1, 1.1))
    bars, air = axs
    names, (eggs, others) = list(shown["stages"]), shown["eggs"]
    for place, name in enumerate(names):
        own, other = shown["stages"][name]
        bars.bar(place - 0.2, 100 * own / eggs, 0.38, **fill(FILL[name]))
        bars.bar(place + 0.2, 100 * other / others, 0.38, facecolor="white", edgecolor=INK, linewidth=0.8)
        bars.annotate(str(own), (place - 0.2, 100 * own / eggs), ha="center", va="bottom", fontsize=8)
    axes(bars).set(xticks=range(len(names)), xticklabels=names,
                   ylabel="Lost (% of set)\nfilled: this batch,\nwhite: the others")
    bars.margins(y=0.15)
    day, temp = np.array(shown["log"]["day"]), np.array(shown["log"]["temp_c"])
    axes(air).set(xlabel="Day since setting", ylabel=temperature_label("C"))
    if len(day):
        air.plot(day, temp, **LINES["air"])
        air.axhline(37.5, color="#0072B2", lw=0.8, ls=":")
        right = air.secondary_yaxis("right", functions=(lambda c: c * 1.8 + 32, lambda f: (f - 32) / 1.8))
        right.set_ylabel(temperature_label("F"))
    else:
        air.text(0.5, 0.5, "no log of this machine", ha="center", va="center", transform=air.transAxes)
    return axs
