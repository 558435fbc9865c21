"""How steady each machine was and how far its thermometers can be believed, in sentences."""

from __future__ import annotations

import numpy as np

from hatchkit.climate.words import step
from hatchkit.units import shown_step, temperature
from hatchkit.words.spelling import many
from hatchkit.words.tables import percent

NO_THERMOMETER = "No temperature was logged, so there is no thermometer to judge."


def steadiness_words(row, *, unit="C") -> str:
    """How steady one incubator was."""
    if not row["hours"] > 0:
        return f"Incubator {row['incubator']}: nothing was logged while eggs were in."
    text = (
        f"Incubator {row['incubator']}: {percent(row['share_logged'])} of the time with eggs was logged; on "
        f"ordinary days {temperature(row['mean_c'], unit, 2)} on average, 8 readings in 10 within "
        f"{shown_step(row['swing_c'], unit):.1f} °{unit}"
    )
    if np.isfinite(row["off_set_point_c"]):
        text += f", {step(row['off_set_point_c'], unit, 2)} from its set point"
    if np.isfinite(row["day_night_c"]):
        text += f"; days less nights {step(row['day_night_c'], unit, 2)}"
    text += f". In range {percent(row['share_in_band'], 1)} of the logged time, at alarm level or beyond "
    text += f"{percent(row['share_alarm'], 1)}; {_openings(row['openings_per_day'])}."
    if row["step_minutes"] > 10:
        text += (
            f" With {row['step_minutes']:.0f} min between readings a short spike may be missed, and up to "
            f"{percent(row['unseen_share'])} of it would reach a hen's egg."
        )
    return text


def _openings(per_day) -> str:
    if not per_day > 0:
        return "the log shows no opening"
    week = 7 * per_day
    often = f"{week:.1f} times a week" if week >= 0.25 else "less than once a month"
    return f"opened {'about ' if week >= 0.25 else ''}{often} as far as the log shows"


def thermometers_words(steadiness, truth, *, unit="C") -> str:
    """A line for each incubator (``probes.steadiness``) and each probe (``probes.probe_truth``)."""
    lines = [steadiness_words(row, unit=unit) for _, row in steadiness.iterrows()]
    lines += [probe_words(row, unit=unit) for _, row in truth.iterrows()]
    return "\n".join(lines) or NO_THERMOMETER


def probe_words(row, *, unit="C") -> str:
    """What is known of one probe's error."""
    name = f"Incubator {row['incubator']}, probe {row['probe']}"
    parts = []
    if row["checked"]:
        parts.append(f"a check gave an offset of {step(row['offset_c'], unit)}, which is applied")
    if row["compared"]:
        parts.append(f"it reads {step(row['differs_c'], unit)} against probe {row['other_probe']}")
    if row["clock_batches"] and np.isfinite(row["clock_bias_c"]):
        span = ""
        if np.isfinite(row["clock_low_c"]):
            span = f" ({step(row['clock_low_c'], unit)} to {step(row['clock_high_c'], unit)})"
        off = step(row["clock_bias_c"], unit)
        reads = f"is {off} off" if off[0] in "+-" else "reads true"
        batches = many(row["clock_batches"], "batch", "batches")
        parts.append(f"the hatch times of {batches} would fit a probe that {reads}{span}")
    told = "; ".join(parts) if parts else "it was never checked, and nothing else bears witness"
    advice = {
        "probes disagree": f" Check both beside a fever thermometer near {temperature(37.5, unit)}.",
        "eggs say it reads high": " Check it: if it reads high, the eggs were cooler than the log says.",
        "eggs say it reads low": " Check it: if it reads low, the eggs were warmer than the log says.",
    }
    return f"{name}: {told}.{advice.get(row['verdict'], '')}"
