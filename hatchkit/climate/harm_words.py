"""What an excursion may have done to the embryos, in sentences: published exposures and where they disagree."""

from __future__ import annotations

import numpy as np

from hatchkit import reference
from hatchkit.climate.dose import half_dose
from hatchkit.units import worded
from hatchkit.words.tables import percent

NOT_A_MORTALITY = "This orders disturbances by heat; it does not predict how many die."
#: A dose that rounds to nothing, h at 43 degC, is not told.
LEAST_TOLD_H = 0.05
#: Bands of ``dose.heat_band`` as a reader sees them.
BANDS = {"low": "low", "watch": "middling", "high": "high"}


def length(hours: float) -> str:
    """Hours in words: 20 min, 5.5 h, 3.2 days."""
    if hours < 1.5:
        return f"{60 * hours:.0f} min"
    return f"{hours:.1f} h" if hours < 48 else f"{hours / 24:.1f} days"


def heat_words(row, *, unit="C") -> str:
    """How the heat of an excursion compares with published exposures, and where those disagree."""
    if row["heat_band"] in (None, "none") or not row["heat_dose_h"] >= LEAST_TOLD_H:
        return (
            "Too little for the heat harm seen in experiments; days on end above the range may still "
            "slow or tire embryos."
        )
    age = row["hen_day"]
    share = row["heat_dose_h"] / float(half_dose(age))
    facts = reference.load("heat_doses")
    half = facts[facts["kind"] == "half"]
    near = half.iloc[(half["age_days"] - age).abs().argmin()]
    text = (
        f"Heat: {BANDS[row['heat_band']]}. Its worst 24 h equal {row['heat_dose_h']:.1f} h of the egg at 43 °C, "
        f"{percent(share)} of the dose that cost half the hatch at about this age ({near['hours']:.0f} h in air of "
        f"{near['air_c']:.1f} °C on day {near['age_days']:.0f}; {near['source']}). {NOT_A_MORTALITY}"
    )
    if row["extreme_c"] >= 40.6:
        text += (
            " Common advice warns of 40.6 °C (105 °F) for 15 minutes; in an experiment 24 h at 40.6 °C on "
            "day 16 did no major harm (Thompson, Wilson & Brown 1976), so take that advice as caution, "
            "not as a verdict."
        )
    return worded(text, unit)


def cold_words(row, *, unit="C") -> str:
    """What the cold of an excursion cost in development, and the little that is known of harm."""
    if not np.isfinite(row["lost_hours"]):
        return "What it cost is not known: nothing usable was logged."
    lost = max(row["lost_hours"], 0)
    text = "It cost next to no development." if lost < 0.05 else f"It cost about {lost:.1f} h of development."
    if row["looks_like"] == "opening" and row["hen_day"] < 5:
        text += (
            " In the first days the embryo lies right under the shell and cools faster than the egg as a "
            "whole (by 8 K in 10 minutes on a bench, Am. J. Physiol. 234:R183, 1978): keep openings short."
        )
    if row["hours_egg_below_10"] > 0:
        text += (
            f" The eggs were below 10 °C for {length(row['hours_egg_below_10'])}; 17-day embryos begin "
            "to suffer after about 4 h of that."
        )
    elif row["hours_egg_below_20"] > 0:
        text += (
            f" The eggs were below 20 °C for {length(row['hours_egg_below_20'])}; 17-day embryos came "
            "through 24 h at 21 °C unharmed, at 11 °C they did not (Can. J. Anim. Sci. about 1970)."
        )
    return worded(text, unit)
