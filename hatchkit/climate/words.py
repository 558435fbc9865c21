"""The climate in sentences, made here once for notebooks, reports and pictures' alt text."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.climate.dose import half_dose
from hatchkit.tables import percent
from hatchkit.units import shown_step, temperature

LOOKS = {"opening": "a lid or door opened", "drift": "a slow drift", "outage": "heating lost (power or heater)",
         "overheating": "overheating", "sensor": "a faulty reading rather than real air",
         "loading": "the eggs going in", "steady": "a machine that runs beside its range", "unclear": "nothing that the curve tells"}
NOT_A_MORTALITY = "This orders disturbances by heat; it does not predict how many die."


def when(stamp, timezone="UTC") -> str:
    """A time on the person's wall clock: 13 May 21:15."""
    local = pd.Timestamp(stamp).tz_convert(timezone or "UTC")
    return f"{local.day} {local:%b %H:%M}"


def length(hours: float) -> str:
    """Hours in words: 20 min, 5.5 h, 3.2 days."""
    if hours < 1.5:
        return f"{60 * hours:.0f} min"
    return f"{hours:.1f} h" if hours < 48 else f"{hours / 24:.1f} days"


def step(step_c, unit="C", digits=1) -> str:
    """A difference of temperatures with its sign: ``+0.4 °C``; no sign where it rounds to nothing."""
    text = f"{shown_step(step_c, unit):+.{digits}f}"
    return f"{text if float(text) else text[1:]} °{unit}"


def excursion_words(row, *, timezone="UTC", unit="C") -> str:
    """One excursion: when, how far, what it looks like and why, what the egg felt."""
    beyond = "warm" if row["kind"] == "warm" else "cold"
    what = "the air" if row["on"] == "air" else "the estimated egg (not the air)"
    text = (f"{row['event']}. Incubator {row['incubator']}, from {when(row['start'], timezone)}, "
            f"{length(row['hours'])}: {what} too {beyond} (level: {row['level']}), "
            f"at worst {temperature(row['extreme_c'], unit)}. "
            f"Looks like {LOOKS[row['looks_like']]}: {row['evidence']}. "
            f"Batch {row['batch']} was {row['day_start']:.1f} days old; its eggs reached about "
            f"{temperature(row['egg_extreme_c'], unit)} ({temperature(row['egg_extreme_low_c'], unit)} to "
            f"{temperature(row['egg_extreme_high_c'], unit)}, 8 chances in 10).")
    if row["gap_share"] > 0.05:
        text += f" For {percent(row['gap_share'])} of that time nothing was logged: what happened then is not known."
    return text + " " + (heat_words(row) if row["kind"] == "warm" else cold_words(row))


def heat_words(row) -> str:
    """How the heat of an excursion compares with published exposures, and where those disagree."""
    if row["heat_band"] in (None, "none") or not np.isfinite(row["heat_dose_h"]):
        return ("Too little for the heat harm seen in experiments; days on end above the range may still "
                "slow or tire embryos.")
    age = row["hen_day"]
    share = row["heat_dose_h"] / float(half_dose(age))
    facts = reference.load("heat_doses")
    half = facts[facts["kind"] == "half"]
    near = half.iloc[(half["age_days"] - age).abs().argmin()]
    text = (f"Heat: {row['heat_band']}. Its worst 24 h equal {row['heat_dose_h']:.1f} h of the egg at 43 °C, "
            f"{percent(share)} of the dose that cost half the hatch at about this age ({near['hours']:.0f} h in air of "
            f"{near['air_c']:.1f} °C on day {near['age_days']:.0f}; {near['source']}). {NOT_A_MORTALITY}")
    if row["extreme_c"] >= 40.6:
        text += (" Common advice warns of 40.6 °C (105 °F) for 15 minutes; in an experiment 24 h at 40.6 °C on "
                 "day 16 did no major harm (Thompson, Wilson & Brown 1976), so take that advice as caution, "
                 "not as a verdict.")
    return text


def chronic_words(result, *, batch="") -> str:
    """Days on end with warm eggs, from ``dose.chronic_heat``."""
    name = f"Batch {batch}: " if batch else ""
    if not result["days_logged"]:
        return f"{name}nothing was logged, so warm days cannot be told."
    if not result["days_over_watch"]:
        return f"{name}on no logged day was the estimated egg warm throughout."
    text = (f"{name}the estimated egg was warm (over 38.9 °C in hens) for {result['days_over_watch']} days on end "
            f"from day {result['first_day']:.0f}")
    if result["days_over_high"]:
        text += f", for {result['days_over_high']} of them over 39.4 °C"
    return text + ("; the estimate is no better than half a degree. Losses from lasting warmth come later than the "
                   "warmth itself.")


def cold_words(row) -> str:
    """What the cold of an excursion cost in development, and the little that is known of harm."""
    if not np.isfinite(row["lost_hours"]):
        return "What it cost is not known: nothing usable was logged."
    text = f"It cost about {max(row['lost_hours'], 0):.1f} h of development."
    if row["looks_like"] == "opening" and row["hen_day"] < 5:
        text += (" In the first days the embryo lies right under the shell and cools faster than the egg as a "
                 "whole (by 8 K in 10 minutes on a bench, Am. J. Physiol. 234:R183, 1978): keep openings short.")
    if row["hours_egg_below_10"] > 0:
        text += (f" The eggs were below 10 °C for {length(row['hours_egg_below_10'])}; 17-day embryos begin "
                 "to suffer after about 4 h of that.")
    elif row["hours_egg_below_20"] > 0:
        text += (f" The eggs were below 20 °C for {length(row['hours_egg_below_20'])}; 17-day embryos came "
                 "through 24 h at 21 °C unharmed, at 11 °C they did not (Can. J. Anim. Sci. about 1970).")
    return text


def excursions_words(table) -> str:
    """All excursions of a season in one sentence."""
    if table.empty:
        return "While eggs were in and readings were taken, no temperature left its range for long enough to count."
    events = table.drop_duplicates("event")
    counts = events["looks_like"].value_counts()
    parts = ", ".join(f"{count} like {LOOKS[name]}" for name, count in counts.items())
    told = ", ".join(str(number) for number in events.loc[events["notable"], "event"])
    rest = f" Worth reading by themselves, with these numbers in the pictures: {told}." if told else ""
    return f"{len(events)} disturbances: {parts}.{rest}"


def steadiness_words(row, *, unit="C") -> str:
    """How steady one incubator was."""
    if not row["hours"] > 0:
        return f"Incubator {row['incubator']}: nothing was logged while eggs were in."
    text = (f"Incubator {row['incubator']}: {percent(row['share_logged'])} of the time with eggs was logged; on "
            f"ordinary days {temperature(row['mean_c'], unit, 2)} on average, 8 readings in 10 within "
            f"{shown_step(row['swing_c'], unit):.1f} °{unit}")
    if np.isfinite(row["off_set_point_c"]):
        text += f", {step(row['off_set_point_c'], unit, 2)} from its set point"
    if np.isfinite(row["day_night_c"]):
        text += f"; days less nights {step(row['day_night_c'], unit, 2)}"
    text += f". In range {percent(row['share_in_band'], 1)} of the logged time, at alarm level or beyond "
    text += f"{percent(row['share_alarm'], 1)}; opened about {7 * row['openings_per_day']:.1f} times a week"
    text += " as far as the log shows."
    if row["step_minutes"] > 10:
        text += (f" With {row['step_minutes']:.0f} min between readings a short spike may be missed, and up to "
                 f"{percent(row['unseen_share'])} of it would reach a hen's egg.")
    return text


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
        parts.append(f"the hatch times of {row['clock_batches']} batches would fit a probe that {reads}{span}")
    told = "; ".join(parts) if parts else "it was never checked, and nothing else bears witness"
    advice = {"probes disagree": " Check both in melting ice or against a fever thermometer near "
                                 f"{temperature(37.5, unit)}.",
              "eggs say it reads high": " Check it: if it reads high, the eggs were cooler than the log says.",
              "eggs say it reads low": " Check it: if it reads low, the eggs were warmer than the log says."}
    return f"{name}: {told}.{advice.get(row['verdict'], '')}"


def clock_words(row, *, timezone="UTC", unit="C") -> str:
    """Whether one batch hatched early or late once storage and temperature are accounted for."""
    name = f"Batch {row['batch']}"
    if pd.isna(row["expected_at"]):
        return f"{name}: no expected hatch, because the species or the time of setting is not known."
    half = (row["expected_high_at"] - row["expected_at"]) / pd.Timedelta(hours=1)
    text = (f"{name}: the middle of the hatch was due about {when(row['expected_at'], timezone)} (± {half:.0f} h; "
            f"storage {row['storage_h']:+.0f} h, temperature {row['temperature_h']:+.0f} h)")
    if row["verdict"] == "not seen":
        return text + "; no hatch times are written down."
    text += f" and came {abs(row['difference_h']):.0f} h {'later' if row['difference_h'] > 0 else 'earlier'}"
    if row["verdict"] == "cannot tell":
        return text + f", but only {percent(row['share_logged'])} of the time was logged: early or late cannot be told."
    if row["verdict"] == "on time":
        return text + ": within what such a forecast can tell."
    high = "high" if row["probe_error_c"] > 0 else "low"
    return text + (f": {row['verdict']}, beyond the forecast's doubt. A probe that reads "
                   f"{shown_step(abs(row['probe_error_c']), unit):.1f} °{unit} too {high} would explain it by "
                   "itself; so could a wrong time of setting or the flock.")


def clock_season_words(table, *, timezone="UTC", unit="C") -> str:
    """The season's hatch times: the ordinary ones counted, the others one by one."""
    counts = [("on time", "hatched within what such a forecast can tell"), ("not seen", "have no hatch times"),
              ("cannot tell", "cannot be judged, for want of a log")]
    lines = []
    for verdict, told in counts:
        names = table.loc[table["verdict"] == verdict, "batch"].astype(str)
        if len(names):
            lines.append(f"{len(names)} of {len(table)} batches {told}: {', '.join(names)}.")
    off = table[table["verdict"].isin(["early", "late"])]
    lines += [f"- {clock_words(row, timezone=timezone, unit=unit)}" for _, row in off.iterrows()]
    return "\n".join(lines) or "No batch has a hatch that could be timed."


def water_season_words(table) -> str:
    """The season's water losses: weighed batches one by one, the others named."""
    weighed = table[table["verdict"] != "no weighings"]
    lines = [f"- {water_words(row)}" for _, row in weighed.iterrows()]
    rest = table.loc[table["verdict"] == "no weighings", "batch"].astype(str)
    if len(rest):
        lines.append(f"Not weighed, so not known better than by a factor of two: {', '.join(rest)}. Weigh one tray "
                     "at setting and at each candling: it takes minutes and says which humidity your eggs need.")
    return "\n".join(lines) or "No batches, no weighings."


def water_words(row) -> str:
    """Water loss of one batch and the humidity to reach the target."""
    name = f"Batch {row['batch']}"
    target = f"target {percent(row['target_low'])} to {percent(row['target_high'])} by day {row['transfer_day']:.0f}"
    if row["verdict"] == "no weighings":
        if not np.isfinite(row["projected_share"]):
            return f"{name}: {row['reason']}."
        return (f"{name}: not weighed. From egg size and humidity alone about {percent(row['projected_share'])}, but "
                f"it may be half or twice that ({target}): weigh some eggs to know.")
    if not np.isfinite(row["projected_share"]):
        return f"{name}: {row['reason']}."
    text = (f"{name}: {percent(row['loss_share'], 1)} of the weight lost by day {row['loss_day']:.0f}, "
            f"{percent(row['projected_share'], 1)} to be expected at transfer ({percent(row['projected_low'], 1)} to "
            f"{percent(row['projected_high'], 1)}; {target}): "
            f"{row['verdict']}.")
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
    kinds = ", ".join(f"{row.event} ({row.looks_like}, {temperature(row.extreme_c, unit)})"
                      for row in told.itertuples())
    gaps = len(timeline.gaps)
    return (f"Air and estimated egg temperature of incubator {timeline.incubator} over the season with "
            f"{len(timeline.batches)} batches, their ranges and candlings; marked: "
            f"{kinds or 'no large excursion'}; "
            f"{len(events) - len(told)} openings or settings; {gaps} {'gap' if gaps == 1 else 'gaps'} "
            "without readings.")


def close_up_alt(row, *, timezone="UTC", unit="C") -> str:
    """What the picture of one excursion shows."""
    return (f"Excursion {row['event']} from {when(row['start'], timezone)}, {length(row['hours'])}: the air "
            f"reaches {temperature(row['extreme_c'], unit)}, the estimated egg follows later and reaches "
            f"{temperature(row['egg_extreme_c'], unit)} ({temperature(row['egg_extreme_low_c'], unit)} to "
            f"{temperature(row['egg_extreme_high_c'], unit)}).")


def weight_alt(row) -> str:
    """What the picture of weight loss shows."""
    return "Weight lost against days since setting, with the target at transfer. " + water_words(row)


def clock_alt(table) -> str:
    """What the picture of the hatch clock shows."""
    counts = table["verdict"].value_counts()
    parts = ", ".join(f"{count} {name}" for name, count in counts.items())
    return f"Expected band and written-down hatch of {len(table)} batches, in hours from the usual day: {parts}."
