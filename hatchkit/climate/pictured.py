"""What the pictures of this room tell, as facts for ``say.text("picture_...", facts)``."""

import numpy as np
import pandas as pd

from hatchkit.units import shown, shown_step


def incubator_timeline(timeline, *, unit="C") -> dict:
    """Facts of `figures.climate.incubator_timeline`: batches, spells worth telling and the worst, gaps."""
    events = timeline.excursions.drop_duplicates("event")
    told = events[events["notable"].astype(bool)]
    worst = told.loc[told["degree_hours"].abs().idxmax()] if len(told) and "degree_hours" in told else None
    when = worst is not None and worst["start"].tz_convert(timeline.timezone or "UTC").date()
    air = timeline.air["middle_c"].dropna()
    return dict(
        machine=timeline.incubator,
        batches=len(timeline.batches),
        spells=len(told),
        kind="none" if worst is None else worst["kind"],
        when=when or None,
        unit=unit,
        degrees=0.0 if worst is None else float(shown(worst["extreme_c"], unit)),
        hours=0.0 if worst is None else float(worst["hours"]),
        everyday=len(events) - len(told),
        gaps=len(timeline.gaps),
        middle=float(shown(air.median(), unit)) if len(air) else None,
    )


def excursion_close_up(excursion, *, timezone="UTC", unit="C") -> dict:
    """Facts of `figures.climate.excursion_close_up`: batch, day, when, hours, the air and the egg at their worst."""
    degrees = {
        name: float(shown(excursion[column], unit))
        for name, column in (
            ("air", "extreme_c"),
            ("egg", "egg_extreme_c"),
            ("egg_low", "egg_extreme_low_c"),
            ("egg_high", "egg_extreme_high_c"),
        )
    }
    return dict(
        batch=str(excursion["batch"]),
        kind=excursion["kind"],
        day=float(excursion["day_start"]),
        unit=unit,
        when=excursion["start"].tz_convert(timezone or "UTC"),
        hours=float(excursion["hours"]),
        **degrees,
    )


def weight_loss_track(summary) -> dict:
    """Facts of `figures.water.weight_loss_track`."""
    names = ("projected_share", "projected_low", "projected_high", "target_low", "target_high")
    return dict(
        batch=str(summary["batch"]),
        verdict=summary["verdict"].replace(" ", "_"),
        weighed=bool(summary["weighed"] != "no"),
        **{name: summary[name] for name in names},
    )


def water_against_target(table) -> dict:
    """Facts of `figures.water.water_against_target`: how many were weighed, on target, too little, too much."""
    weighed = table[(table["weighed"] != "no") & table["projected_share"].notna()]
    names = {
        verdict: list(weighed.loc[weighed["verdict"] == verdict, "batch"].astype(str))
        for verdict in ("too little", "too much")
    }
    return dict(
        batches=len(table),
        weighed=len(weighed),
        right=int((weighed["verdict"] == "on target").sum()),
        little=len(names["too little"]),
        much=len(names["too much"]),
        little_names=names["too little"],
        much_names=names["too much"],
    )


def hatch_clock(table) -> dict:
    """Facts of `figures.water.hatch_clock`: batches with a verdict, early and late ones, the furthest off."""
    seen = table[table["verdict"].isin(["early", "on time", "late"])]
    names = {verdict: list(seen.loc[seen["verdict"] == verdict, "batch"].astype(str)) for verdict in ("early", "late")}
    off = seen["difference_h"].astype(float) if "difference_h" in seen else pd.Series(dtype=float)
    worst = off.abs().idxmax() if off.notna().any() else None
    return dict(
        batches=len(table),
        seen=len(seen),
        early=len(names["early"]),
        late=len(names["late"]),
        early_names=names["early"],
        late_names=names["late"],
        furthest="" if worst is None else str(seen.at[worst, "batch"]),
        hours=0.0 if worst is None else abs(float(off[worst])),
        side="none" if worst is None else "later" if off[worst] > 0 else "earlier",
    )


def probe_truth(table, *, unit="C") -> dict:
    """Facts of `figures.probes.probe_truth`: probes, checked ones, and those of which something is said."""
    first = table.drop_duplicates(["incubator", "probe"])
    told = first[first["verdict"].isin(["reads high", "reads low"])]
    apart = table[table["verdict"] == "probes disagree"]
    row = told.loc[told["clock_bias_c"].astype(float).abs().idxmax()] if len(told) else None
    error = np.nan if row is None else float(row["clock_bias_c"])
    return dict(
        probes=len(first),
        checked=int(first["checked"].astype(bool).sum()),
        told=len(told),
        unit=unit,
        machine="" if row is None else str(row["incubator"]),
        error=abs(float(shown_step(error, unit))),
        side="none" if row is None else "high" if error > 0 else "low",
        disagree=len(apart),
        disagree_names=list(dict.fromkeys(apart["incubator"].astype(str))),
    )
