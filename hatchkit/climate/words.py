"""The climate in sentences, made here once for notebooks, reports and pictures' alt text."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.climate.egg_heat import constant
from hatchkit.climate.harm_words import cold_words, heat_words, length
from hatchkit.units import shown_step, temperature, worded
from hatchkit.words.spelling import many
from hatchkit.words.stage_names import label
from hatchkit.words.tables import percent

#: How far out of the range, by level (`climate.ranges`).
FAR = {"watch": "a little ", "alarm": "clearly ", "serious": "far "}
#: From this doubt on, hours, an expected hatch is told by the day.
DAY_ONLY_H = 24.0


def when(stamp, timezone="UTC") -> str:
    """A time on the person's wall clock: 13 May 21:15."""
    local = pd.Timestamp(stamp).tz_convert(timezone or "UTC")
    return f"{local.day} {local:%b %H:%M}"


def about(stamp, half_h, timezone="UTC") -> str:
    """A time no finer than its doubt, with it: ``13 May 21:00 (± 14 h``, or ``13 May (± 2 days`` from a day on."""
    local = pd.Timestamp(stamp).tz_convert(timezone or "UTC").round("h", ambiguous=True, nonexistent="shift_forward")
    if half_h > DAY_ONLY_H:
        return f"{local.day} {local:%b} (± {length(max(half_h, 48))}"
    return f"{local.day} {local:%b %H:%M} (± {half_h:.0f} h"


def step(step_c, unit="C", digits=1) -> str:
    """A difference of temperatures with its sign: ``+0.4 °C``; no sign where it rounds to nothing."""
    return f"{_signed(shown_step(step_c, unit), digits)} °{unit}"


def _signed(value, digits=0) -> str:
    text = f"{value:+.{digits}f}"
    return text if float(text) else text[1:]


def excursion_words(row, *, timezone="UTC", unit="C") -> str:
    """One excursion: when, how far, what it looks like and why, what the egg felt."""
    began = (
        f"{row['event']}. Incubator {row['incubator']}, from {when(row['start'], timezone)}, {length(row['hours'])}: "
    )
    egg = (
        f"{temperature(row['egg_extreme_c'], unit)} ({temperature(row['egg_extreme_low_c'], unit)} to "
        f"{temperature(row['egg_extreme_high_c'], unit)}, 8 chances in 10)."
    )
    age = f"Batch {row['batch']} was {row['day_start']:.1f} days old"
    evidence, looks = worded(row["evidence"], unit), _looks(row["looks_like"])
    if row["looks_like"] == "steady":
        text = f"{began}it {evidence}. {age} when that began; its eggs were at about {egg}"
    else:
        text = (
            f"{began}{_how_far(row, unit)}. {looks[:1].upper()}{looks[1:]}: {evidence}. "
            f"{age}; its eggs reached about {egg}"
        )
    if row["gap_share"] > 0.05:
        text += f" For {percent(row['gap_share'])} of that time nothing was logged: what happened then is not known."
    harm = heat_words if row["kind"] == "warm" else cold_words
    return f"{text} {harm(row, unit=unit)}"


def _looks(word) -> str:
    return label(word) if word == "unclear" else f"looks like {label(word)}"


def _how_far(row, unit) -> str:
    """What was too warm or too cold, how far, and at worst."""
    worst = temperature(row["extreme_c"], unit)
    if row["on"] == "egg":
        most = "most" if row["kind"] == "warm" else "least"
        return f"the estimated egg too {row['kind']} in air of at {most} {worst}"
    return f"the air {FAR.get(row['level'], '')}too {row['kind']}, at worst {worst}"


def clock_words(row, *, timezone="UTC", unit="C") -> str:
    """Whether one batch hatched early or late once storage and temperature are accounted for."""
    name = f"Batch {row['batch']}"
    if pd.isna(row["expected_at"]):
        return f"{name}: no expected hatch, because the species or the time of setting is not known."
    half = (row["expected_high_at"] - row["expected_at"]) / pd.Timedelta(hours=1)
    text = f"{name}: the middle of the hatch was due about {about(row['expected_at'], half, timezone)}; {_moved(row)})"
    if row["verdict"] == "not seen":
        return text + "; no hatch times are written down."
    hours = round(row["difference_h"])
    text += " and came then" if hours == 0 else f" and came {abs(hours)} h {'later' if hours > 0 else 'earlier'}"
    if row["verdict"] == "cannot tell":
        return text + f", but only {percent(row['share_logged'])} of the time was logged: early or late cannot be told."
    if row["verdict"] == "on time":
        return text + ": within what such a forecast can tell."
    high = "high" if row["probe_error_c"] > 0 else "low"
    return text + (
        f": {row['verdict']}, beyond the forecast's doubt. A probe that reads "
        f"{shown_step(abs(row['probe_error_c']), unit):.1f} °{unit} too {high} would explain it by "
        "itself; so could a wrong time of setting or the flock."
    )


def _moved(row) -> str:
    """The species' day of the middle of the hatch, and what moved it."""
    usual = f"usually day {(row['usual_at'] - row['set_at']) / pd.Timedelta(days=1):.1f}"
    storage = f"storage {_signed(row['storage_h'])} h" if pd.notna(row["stored_days"]) else "storage not known"
    if not row["share_logged"] > 0:
        return f"{usual}, {storage}, temperature not known"
    return f"{usual}, {storage}, temperature {_signed(row['temperature_h'])} h"


def clock_season_words(table, *, timezone="UTC", unit="C") -> str:
    """The season's hatch times: the ordinary ones counted, the others one by one."""
    counts = [
        ("on time", *2 * ["hatched within what such a forecast can tell"]),
        ("not seen", "has no hatch times", "have no hatch times"),
        ("cannot tell", *2 * ["cannot be judged, for want of a log"]),
    ]
    lines = []
    for verdict, one, more in counts:
        names = table.loc[table["verdict"] == verdict, "batch"].astype(str)
        if len(names):
            these = "The one batch" if len(table) == 1 else f"{len(names)} of {len(table)} batches"
            lines.append(f"{these} {one if len(names) == 1 else more}: {', '.join(names)}.")
    off = table[table["verdict"].isin(["early", "late"])]
    lines += [f"- {clock_words(row, timezone=timezone, unit=unit)}" for _, row in off.iterrows()]
    if not lines:
        return "No batch has a hatch that could be timed."
    timed = table["middle_at"].notna().any()
    return "\n".join([*lines, _EARLIER] if timed else lines)


#: Why the clock and the planner name different hours.
_EARLIER = (
    f"The middle of a hatch is put {constant('clock_middle_before_h'):.0f} h before the trade's day for hens, "
    "in proportion for others: most of a good hatch is out by that day. The planner names the day itself, "
    "which is the one to be ready for."
)


def water_season_words(table) -> str:
    """The season's water losses: weighed batches one by one, the others named."""
    weighed = table[table["verdict"] != "no weighings"]
    lines = [f"- {water_words(row)}" for _, row in weighed.iterrows()]
    rest = table[table["verdict"] == "no weighings"]
    guessed = np.isfinite(rest["projected_share"].astype(float))
    for part, known in (
        (rest[guessed], "known only roughly, from shells of their kind"),
        (rest[~guessed], "not known"),
    ):
        if len(part):
            lines.append(f"Not weighed, so {known}: {', '.join(part['batch'].astype(str))}.")
    if len(rest):
        lines[-1] += (
            " Weigh one tray at setting and at each candling: it takes minutes and says which humidity your eggs need."
        )
    return "\n".join(lines) or "No batches, no weighings."


def water_words(row) -> str:
    """Water loss of one batch and the humidity to reach the target."""
    name = f"Batch {row['batch']}"
    target = f"target {percent(row['target_low'])} to {percent(row['target_high'])} by day {row['transfer_day']:.0f}"
    if row["verdict"] == "no weighings":
        if not np.isfinite(row["projected_share"]):
            return f"{name}: {row['reason']}."
        return (
            f"{name}: not weighed. From shells of its kind and humidity alone about "
            f"{percent(row['projected_share'])} ({percent(row['projected_low'])} to "
            f"{percent(row['projected_high'])}; {target}): weigh some eggs to know."
        )
    if not np.isfinite(row["projected_share"]):
        return f"{name}: {row['reason']}."
    text = (
        f"{name}: {percent(row['loss_share'], 1)} of the weight lost by day {row['loss_day']:.0f}, "
        f"{percent(row['projected_share'], 1)} to be expected at transfer ({percent(row['projected_low'], 1)} to "
        f"{percent(row['projected_high'], 1)}; {target}): "
        f"{row['verdict']}."
    )
    if row["verdict"] != "on target" and np.isfinite(row["rh_next_pct"]):
        text += f" For such eggs {_humidity(row['rh_next_pct'])} from the start would hit the middle of the target"
        if np.isfinite(row["rh_now_pct"]):
            text += f"; from now on it would take {_humidity(row['rh_now_pct'])}"
        text += f" (logged: {row['rh_pct']:.0f} %RH)."
    return text + (f" {row['reason'][0].upper()}{row['reason'][1:]}." if row["reason"] else "")


def _humidity(rh) -> str:
    if rh < 15:
        return "drier air than an incubator can make"
    return "damper air than is safe" if rh > 85 else f"about {rh:.0f} %RH"


def timeline_alt(timeline, *, unit="C") -> str:
    """What the picture of an incubator's season shows."""
    events = timeline.excursions.drop_duplicates("event")
    told = events[events["notable"]]
    kinds = "; ".join(
        f"{row.event}: {label(row.looks_like)}, {temperature(row.extreme_c, unit)}" for row in told.itertuples()
    )
    everyday = many(len(events) - len(told), "everyday opening or setting", "everyday openings or settings")
    return (
        f"Air and estimated egg temperature of incubator {timeline.incubator} over the season with "
        f"{many(len(timeline.batches), 'batch', 'batches')}, ranges and candlings. Marked: "
        f"{kinds or 'no large excursion'}. Besides, {everyday} and "
        f"{many(len(timeline.gaps), 'gap', 'gaps')} without readings."
    )


def close_up_alt(row, *, timezone="UTC", unit="C") -> str:
    """What the picture of one excursion shows."""
    return (
        f"Excursion {row['event']} from {when(row['start'], timezone)}, {length(row['hours'])}: the air "
        f"reaches {temperature(row['extreme_c'], unit)}, the estimated egg follows later and reaches "
        f"{temperature(row['egg_extreme_c'], unit)} ({temperature(row['egg_extreme_low_c'], unit)} to "
        f"{temperature(row['egg_extreme_high_c'], unit)})."
    )
