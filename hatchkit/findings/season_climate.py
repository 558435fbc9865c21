"""Findings of a season on its machines: warm and cold spells and what they cost, thermometers, clock, water."""

from __future__ import annotations

import numpy as np

from hatchkit.climate import pictured as met
from hatchkit.findings import more_climate, more_relate
from hatchkit.findings.finding import Finding, Said, Table, told
from hatchkit.problems import HatchkitError
from hatchkit.relate import pictured

SPELL = ("event", "incubator", "batch", "day_start", "hours", "extreme_c", "egg_extreme_c", "looks_like")
EXPOSED = (
    "batch",
    "day_start",
    "day_end",
    "at_risk",
    "died",
    "hours_warm",
    "hours_cold",
    "egg_peak_c",
    "egg_min_c",
    "share_logged",
)


def harm(work) -> Finding:
    """Whether warm and cold spells cost embryos."""
    relation = None if work.season.readings.empty else work.relation
    if relation is None:
        return Finding("harm", "harm_not_logged", {}, "cannot_tell", do=Said("harm_log_it"))
    total = relation.excess[relation.excess["batch"] == "all"] if len(relation.excess) else relation.excess
    facts = dict(
        effect=relation.effect.get("hazard_ratio", np.nan),
        exposed=relation.effect.get("exposed", 0),
        batches=len(relation.batches),
        verdict=relation.verdict,
    )
    if len(total):
        facts |= total.iloc[0][["chicks_lost", "chicks_low", "chicks_high", "observed", "expected"]].to_dict()
    answer, sure = verdict_code(relation.verdict)
    if answer in ("harm_clear", "harm_some") and not len(total):
        answer += "_uncounted"
    hit = relation.exposure[~(relation.exposure["dose"] == 0)]
    table = Table("exposed", hit, EXPOSED) if len(hit) else None
    pictures = _pictures(relation)
    proof = (Said("harm_not_proof"),) if answer in ("harm_clear", "harm_some") else ()
    return Finding(
        "harm",
        answer,
        facts,
        sure,
        facts.get("chicks_lost", np.nan),
        picture=pictures[0] if pictures else None,
        table=table,
        more=(*proof, *pictures[1:], *more_relate.relation(relation)),
    )


def verdict_code(verdict: str) -> tuple[str, str]:
    """The message of a verdict of `relate.verdict` and how sure it is."""
    from hatchkit.relate.verdict import CLEAR, NONE, SOME

    return {CLEAR: ("harm_clear", "sure"), SOME: ("harm_some", "likely"), NONE: ("harm_none", "likely")}.get(
        verdict, ("harm_cannot_tell", "cannot_tell")
    )


def _pictures(relation) -> list:
    if not relation.batches["exposed"].any():
        return []
    pictures = [
        told("relate.losses_against_dose", relation.batches, facts=pictured.losses_against_dose(relation.batches))
    ]
    if relation.windows["hazard_ratio"].notna().any():
        pictures.append(
            told("relate.hazard_by_window", relation.windows, facts=pictured.hazard_by_window(relation.windows))
        )
    return pictures


def spells(work) -> Finding | None:
    """What the temperature did while eggs were in."""
    from hatchkit.climate import excursions

    season = work.season
    if not excursions.was_logged(season):
        return None
    found = work.excursions
    events = found.drop_duplicates("event")
    large = events[events["notable"].astype(bool)]
    facts = dict(
        number=len(events),
        told=len(large),
        everyday=len(events) - len(large),
        spells=[Said("spell", row) for row in large.head(4).to_dict("records")],
    )
    table = Table("spells", large.assign(hours=large["hours"].round(1)), SPELL, {"looks_like": "spell"})
    one_by_one = [piece for row in large.to_dict("records") for piece in more_climate.spell(row, season.timezone)]
    return Finding(
        "spells",
        "spells_found" if len(large) else "spells_none",
        facts,
        "likely",
        table=table if len(large) else None,
        more=tuple(one_by_one),
    )


def probes(work) -> Finding | None:
    """Whether the thermometers can be believed."""
    from hatchkit.climate.probes import probe_truth, steadiness

    if work.season.readings.empty:
        return None
    steady, truth = steadiness(work.season), probe_truth(work.season)
    if truth.empty:
        return None
    off = truth[truth["verdict"].str.startswith("reads")]
    facts = dict(
        number=len(truth),
        unchecked=int((~truth["checked"].astype(bool)).sum()),
        off=len(off),
        probes=[
            Said(
                "probe_off",
                dict(
                    incubator=row["incubator"],
                    off=abs(row["clock_bias_c"]),
                    way="high" if row["clock_bias_c"] > 0 else "low",
                    batches=row["clock_batches"],
                ),
            )
            for row in off.to_dict("records")
        ],
    )
    answer = "probes_off" if len(off) else "probes_unchecked" if facts["unchecked"] else "probes_checked"
    picture = told("probes.probe_truth", truth, facts=met.probe_truth(truth, unit=work.unit), unit=work.unit)
    table = Table("machines", steady, ("incubator", "share_logged", "mean_c", "set_point_c", "rh_mean_pct"))
    return Finding(
        "probes",
        answer,
        facts,
        "guess" if len(off) else "cannot_tell" if facts["unchecked"] else "sure",
        table=table,
        more=(picture, *more_climate.machines(steady, truth)),
    )


def clock(work) -> Finding | None:
    """Whether the hatches came early or late."""
    from hatchkit.climate.clock import hatch_clock

    table = hatch_clock(work.season)
    timed = table[table["verdict"].isin(["on time", "early", "late"])]
    more = more_climate.clock_season(table, work.season.timezone)
    if timed.empty:
        return Finding("clock", "clock_untimed", {}, "cannot_tell", more=tuple(more))
    names = {way: timed.loc[timed["verdict"] == way, "batch"].astype(str).tolist() for way in ("early", "late")}
    facts = dict(
        timed=len(timed),
        on_time=int((timed["verdict"] == "on time").sum()),
        early=names["early"],
        late=names["late"],
        hours=timed["difference_h"].abs().max(),
    )
    answer = "clock_off" if names["early"] or names["late"] else "clock_on_time"
    return Finding(
        "clock", answer, facts, "likely", more=(told("water.hatch_clock", table, facts=met.hatch_clock(table)), *more)
    )


def water(work) -> Finding | None:
    """Whether the eggs lost the right amount of water."""
    from hatchkit.climate.water_loss import batch_water_loss

    try:
        table = batch_water_loss(work.season)
    except HatchkitError:
        return None
    more, weighed = more_climate.water_season(table), table[table["verdict"] != "no weighings"]
    if weighed.empty:
        return Finding("water", "water_not_weighed", dict(batches=len(table)), "cannot_tell", more=tuple(more))
    named = {
        way: weighed.loc[weighed["verdict"] == way, "batch"].astype(str).tolist() for way in ("too little", "too much")
    }
    facts = dict(
        weighed=len(weighed),
        batches=len(table),
        little=named["too little"],
        much=named["too much"],
        on_target=int((weighed["verdict"] == "on target").sum()),
        unsure=int((weighed["verdict"] == "cannot tell").sum()),
    )
    picture = told("water.water_against_target", table, facts=met.water_against_target(table))
    off = named["too little"] or named["too much"]
    names = {"projected_share": "share_lost", "target_low": "share_target", "target_high": "share_target_high"}
    shown = weighed.rename(columns=names)
    rows = Table(
        "water",
        shown,
        ("batch", ("share_lost", "projected_low", "projected_high"), "share_target", "share_target_high"),
    )
    return Finding(
        "water", "water_off" if off else "water_on_target", facts, "likely", table=rows, more=(picture, *more)
    )


#: In the order in which they are read.
ASKED = (harm, spells, probes, clock, water)
