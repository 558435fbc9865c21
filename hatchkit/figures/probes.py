"""What each machine's probe is off by, as far as three witnesses can tell."""

import numpy as np

from hatchkit.figures import rows, style
from hatchkit.units import check_unit, shown_step

#: Least half width of the scale, K.
LEAST = 0.6
#: A witness's columns in the table: its value, its ends, and the sign by which it says "reads too high" to the right.
WITNESSES = {
    "checked": ("offset_c", None, None, -1),
    "pair": ("differs_c", "differs_low_c", "differs_high_c", 1),
    "hatch": ("clock_bias_c", "clock_low_c", "clock_high_c", 1),
}


def probe_truth(table, ax=None, *, unit="C", language="en"):
    """Each probe with what a check, a second probe and the times of hatch say it is off by; one scale for all.

    Parameters
    ----------
    table : DataFrame
        From ``climate.probes.probe_truth``.
    unit : {"C", "F"}
    """
    unit = check_unit(unit)
    if table.empty:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 0.8)), style.tell("no_probe", language))
    lines = [
        (row, witness)
        for row in table.to_dict("records")
        for witness in WITNESSES
        if witness != "pair" or row["other_probe"]
    ]
    heads = [
        (place, style.tell("probe", language, machine=str(row["incubator"]), probe=str(row["probe"])))
        for place, (row, witness) in enumerate(lines)
        if witness == "checked"
    ]
    names = [
        style.tell(
            f"witness_{witness}",
            language,
            batches=int(row["clock_batches"]),
            other=str(row["other_probe"]),
            known=bool(np.isfinite(row[WITNESSES[witness][0]])),
        )
        for row, witness in lines
    ]
    unknown = {place for place, (row, witness) in enumerate(lines) if not np.isfinite(row[WITNESSES[witness][0]])}
    ax, middles = rows.stack(ax, names, heads=heads, empty=unknown, below=42)
    widest = LEAST
    for place, (row, witness) in enumerate(lines):
        if place not in unknown:
            widest = max(widest, _witness(ax, middles[place], row, witness, unit, language))
    reach = shown_step(1.15 * widest, unit)
    ax.locator_params(axis="x", nbins=5, symmetric=True)
    ax.set(xlim=(-reach, reach), xlabel=style.tell("probe_axis", language, unit=unit))
    return ax


def _witness(ax, place, row, witness, unit, language):
    """One line: the error with its ends. Returns how far it reaches, K."""
    column, low, high, sign = WITNESSES[witness]
    ax.plot([0, 0], [place - rows.THICK / 2, place + rows.THICK / 2], color=style.SOFT, lw=1.4, zorder=0)
    value = sign * row[column]
    ends = [sign * row[low], sign * row[high]] if low and np.isfinite(row[low]) else [value, value]
    shown = [shown_step(each, unit) for each in (value, *ends)]
    ax.plot(shown[1:], [place, place], color=style.INK, lw=1.8, marker="|", ms=9)
    sure = witness == "hatch" and np.prod(ends) > 0
    ax.plot(shown[0], place, "D", ms=7, mfc="#D55E00" if sure else style.PAPER, mec=style.INK, zorder=3)
    rows.beside(ax, max(shown), place, style.tell("kelvin", language, value=round(shown[0], 1) + 0.0))
    return max(abs(value), *map(abs, ends))
