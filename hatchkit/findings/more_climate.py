"""What is told of machine, thermometer, clock and scale to who looks further, as codes and numbers."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.climate.dose import half_dose
from hatchkit.climate.egg_heat import constant
from hatchkit.findings.finding import Said

#: A dose that rounds to nothing, h at 43 degC, is not told.
LEAST_TOLD_H = 0.05
#: From this doubt on, hours, an expected hatch is told by the day.
DAY_ONLY_H = 24.0
#: The eggs cool through these, degC, before harm was seen at 17 days; and what they came through, and what not.
CHILLED_C, COLD_C, WELL_C, ILL_C = 20, 10, 21, 11
#: The air against which common advice warns, degC, and the readings from which it matters how far apart they are, min.
WARNED_C, COARSE_MIN = 40.6, 10


def lasting(hours: float) -> Said:
    """A length of time: minutes, hours or days."""
    unit, number = ("min", 60 * hours) if hours < 1.5 else ("h", hours) if hours < 48 else ("days", hours / 24)
    return Said("lasting", dict(unit=unit, number=number))


def local(stamp, timezone) -> pd.Timestamp:
    """A time on the person's wall clock."""
    return pd.Timestamp(stamp).tz_convert(timezone or "UTC").tz_localize(None)


def spell(row, timezone="UTC") -> list[Said]:
    """One excursion (a row of ``find_excursions``): when, how far, why it is so called, and what the egg felt."""
    evidence = {
        name: lasting(value) if name.endswith("_h") else value
        for name, value in row["evidence"].items()
        if name != "seen"
    }
    facts = dict(
        row,
        start=local(row["start"], timezone),
        lasting=lasting(row["hours"]),
        evidence=Said(f"evidence_{row['evidence']['seen']}", evidence),
    )
    told = [Said("spell_beside" if row["looks_like"] == "steady" else "spell_told", facts)]
    if row["gap_share"] > 0.05:
        told.append(Said("spell_hole", dict(gap_share=row["gap_share"])))
    return told + (heat(row) if row["kind"] == "warm" else cold(row))


def heat(row) -> list[Said]:
    """How the heat of an excursion compares with published exposures, and where those disagree."""
    if row["heat_band"] in (None, "none") or not row["heat_dose_h"] >= LEAST_TOLD_H:
        return [Said("heat_little")]
    age, doses = row["hen_day"], reference.load("heat_doses")
    half = doses[doses["kind"] == "half"]
    near = half.iloc[(half["age_days"] - age).abs().argmin()]
    facts = dict(
        heat_band=row["heat_band"],
        heat_dose_h=row["heat_dose_h"],
        dose_at_c=43,
        share=row["heat_dose_h"] / float(half_dose(age)),
        half_h=near["hours"],
        half_c=near["air_c"],
        half_day=near["age_days"],
        source=near["source"],
    )
    warned = [Said("heat_common", dict(warned_c=WARNED_C))] if row["extreme_c"] >= WARNED_C else []
    return [Said("heat_told", facts), *warned]


def cold(row) -> list[Said]:
    """What the cold of an excursion cost in development, and the little that is known of harm."""
    if not np.isfinite(row["lost_hours"]):
        return [Said("cold_unknown")]
    told = [Said("cold_cost", dict(lost_hours=row["lost_hours"] if row["lost_hours"] >= 0.05 else 0))]
    if row["looks_like"] == "opening" and row["hen_day"] < 5:
        told.append(Said("cold_young", dict(bench_k=8)))
    if row["hours_egg_below_10"] > 0:
        told.append(Said("cold_below_10", dict(below_c=COLD_C, lasting=lasting(row["hours_egg_below_10"]))))
    elif row["hours_egg_below_20"] > 0:
        facts = dict(below_c=CHILLED_C, well_c=WELL_C, ill_c=ILL_C, lasting=lasting(row["hours_egg_below_20"]))
        told.append(Said("cold_below_20", facts))
    return told


def machine(row) -> list[Said]:
    """How steady one incubator was (a row of ``probes.steadiness``)."""
    if not row["hours"] > 0:
        return [Said("machine_nothing", dict(incubator=row["incubator"]))]
    week = 7 * row["openings_per_day"]
    opened = "never" if not week > 0 else "often" if week >= 0.25 else "seldom"
    told = [Said("machine_steady", dict(row, opened=opened, a_week=week))]
    if row["step_minutes"] > COARSE_MIN:
        told.append(Said("machine_coarse", dict(step_minutes=row["step_minutes"], unseen_share=row["unseen_share"])))
    return told


def probe(row) -> list[Said]:
    """What is known of one probe's error (a row of ``probes.probe_truth``)."""
    facts, parts = dict(row), []
    if row["checked"]:
        parts.append(Said("probe_offset", facts))
    if row["compared"]:
        parts.append(Said("probe_against", facts))
    if row["clock_batches"] and np.isfinite(row["clock_bias_c"]):
        parts.append(Said("probe_by_clock", dict(facts, true=abs(row["clock_bias_c"]) < 0.05)))
    told = [Said("probe_told" if parts else "probe_unknown", dict(facts, told=parts))]
    if row["verdict"] == "probes disagree":
        told.append(Said("probe_do_disagree", dict(right_c=37.5)))
    elif row["verdict"].startswith("reads"):
        told.append(Said(f"probe_do_{row['verdict'].removeprefix('reads ')}"))
    return told


def machines(steadiness, truth) -> list[Said]:
    """Every incubator, then every probe."""
    told = [piece for row in steadiness.to_dict("records") for piece in machine(row)]
    return told + [piece for row in truth.to_dict("records") for piece in probe(row)]


def clock(row, timezone="UTC") -> Said:
    """Whether one batch hatched early or late once storage and temperature are accounted for."""
    if pd.isna(row["expected_at"]):
        return Said("clock_not_expected", dict(batch=row["batch"]))
    half = (row["expected_high_at"] - row["expected_at"]) / pd.Timedelta(hours=1)
    by_day = half > DAY_ONLY_H
    seen = row["verdict"] != "not seen"
    hours = round(row["difference_h"]) if seen else 0
    high = row["probe_error_c"] > 0
    verdict = row["verdict"].replace(" ", "_")
    expected = pd.Timestamp(row["expected_at"]).tz_convert(timezone or "UTC")
    return Said(
        "clock_told",
        dict(
            batch=row["batch"],
            by_day=by_day,
            expected_at=expected.round("h", ambiguous=True, nonexistent="shift_forward").tz_localize(None),
            half_h=lasting(max(half, 48) if by_day else round(half)),
            usual_day=(row["usual_at"] - row["set_at"]) / pd.Timedelta(days=1),
            storage_h=row["storage_h"] if pd.notna(row["stored_days"]) else None,
            temperature_h=row["temperature_h"] if row["share_logged"] > 0 else None,
            came="not_seen" if not seen else "then" if hours == 0 else "later" if hours > 0 else "earlier",
            hours=abs(hours),
            verdict=verdict if verdict in ("not_seen", "cannot_tell", "on_time") else "off",
            share_logged=row["share_logged"],
            probe_error_c=abs(row["probe_error_c"]),
            reads="high" if high else "low",
        ),
    )


def clock_season(table, timezone="UTC") -> list[Said]:
    """The season's hatch times: the ordinary ones counted, the others one by one."""
    told = []
    for verdict in ("on time", "not seen", "cannot tell"):
        names = table.loc[table["verdict"] == verdict, "batch"].astype(str).tolist()
        if names:
            told.append(Said("clock_names", dict(verdict=verdict.replace(" ", "_"), batches=names, of=len(table))))
    told += [clock(row, timezone) for _, row in table[table["verdict"].isin(["early", "late"])].iterrows()]
    if not told:
        return [Said("clock_no_batch")]
    timed = table["middle_at"].notna().any()
    return told + ([Said("clock_earlier", dict(before_h=constant("clock_middle_before_h")))] if timed else [])


def water(row) -> list[Said]:
    """Water loss of one batch, and the humidity that would hit the target."""
    known = np.isfinite(row["projected_share"])
    reasons = [name for name in row["reason"].split(", ") if name]
    if row["verdict"] == "no weighings" and known:
        return [Said("water_from_shells", dict(row))]
    why = [Said(f"water_why_{name}", dict(batch=row["batch"], set_g=row["set_g"])) for name in reasons]
    if not known:
        return why
    told = [Said("water_told", dict(row, verdict=row["verdict"].replace(" ", "_")))]
    if row["verdict"] != "on target" and np.isfinite(row["rh_next_pct"]):
        now = _humidity(row["rh_now_pct"]) if np.isfinite(row["rh_now_pct"]) else "none"
        told.append(Said("water_next", dict(row, next=_humidity(row["rh_next_pct"]), now=now)))
    return told + why


def _humidity(rh) -> str:
    return "too_dry" if rh < 15 else "too_damp" if rh > 85 else "possible"


def water_season(table) -> list[Said]:
    """The season's water losses: weighed batches one by one, the others named."""
    told = [piece for _, row in table[table["verdict"] != "no weighings"].iterrows() for piece in water(row)]
    rest = table[table["verdict"] == "no weighings"]
    guessed = np.isfinite(rest["projected_share"].astype(float))
    for part, code in ((rest[guessed], "water_roughly"), (rest[~guessed], "water_not_known")):
        if len(part):
            told.append(Said(code, dict(batches=part["batch"].astype(str).tolist())))
    return told + ([Said("water_weigh")] if len(rest) else [])
