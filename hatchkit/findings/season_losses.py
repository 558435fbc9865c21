"""Findings of a season on its eggs: where they went, which batches were poor, luck, clears, ages, tray, course."""

from __future__ import annotations

import math

import numpy as np

from hatchkit.findings import more_losses
from hatchkit.findings.counts import eggs_of, losses, whole_eggs, with_ranges
from hatchkit.findings.finding import Finding, Said, Table, refused, told
from hatchkit.findings.more_losses import odds
from hatchkit.losses import pictured
from hatchkit.problems import HatchkitError

#: What losses call the batches of no flock.
NOT_GIVEN = "not given"
SHARE_SET = ("share_of_set", "share_of_set_low", "share_of_set_high")
SHARE_DEVELOPING = ("share_of_fertile", "share_of_fertile_low", "share_of_fertile_high")
SHARE_TRANSFERRED = ("share_of_transferred", "share_of_transferred_low", "share_of_transferred_high")


def lost(work) -> Finding | None:
    """Where the eggs went."""
    from hatchkit.losses.breakdown import breakdown

    whole = work.whole
    if whole.empty or not work.totals["hatched"] >= 0:
        return None
    rows = losses(whole)
    dead = whole[whole["stage"].isin(["early", "mid", "late"])]
    facts = dict(
        work.totals,
        lost=work.lost,
        most=eggs_of(rows.head(3)),
        dead=dead["eggs"].sum(),
        shared=dead["shared_out"].sum(),
    )
    shown = with_ranges(whole.assign(eggs=whole_eggs(whole["eggs"])))
    stages = Table(
        "stages", shown, ("stage", "eggs", SHARE_SET, SHARE_DEVELOPING, SHARE_TRANSFERRED), {"stage": "stage"}
    )
    looks = breakdown(work.season, by=None, stages="candling")
    found = Table(
        "looks",
        with_ranges(looks.assign(eggs=whole_eggs(looks["eggs"]))),
        ("stage", "eggs", SHARE_SET),
        {"stage": "stage"},
    )
    return Finding(
        "lost",
        "lost_most",
        facts,
        "sure",
        facts["lost"],
        picture=work.ledger if work.calendar_first else None,
        table=stages,
        more=(found, Said("lost_clear"), Said("lost_method", facts), *more_losses.not_counted(whole)),
    )


def poor(work) -> Finding | None:
    """Which batches were poor, by embryos or by clears."""
    table = work.standing
    if table.empty:
        return None
    bad = table[table["poor"].isin(["embryos", "clears", "removed"])]
    facts = dict(
        number=len(bad),
        of=len(table),
        unknown=int((table["poor"] == "unknown").sum()),
        poor=[Said("poor_one", row) for row in bad.head(5).to_dict("records")],
    )
    shown = work.by_batch[work.by_batch["stage"] == "hatched"].merge(
        table.assign(batch=table["batch"].astype(str))[["batch", "poor"]], on="batch", how="left"
    )
    batches = Table(
        "batches", with_ranges(shown), ("batch", "set", "eggs", SHARE_SET, SHARE_DEVELOPING, "poor"), {"poor": "poor"}
    )
    picture = told("losses.losses_by_group", work.by_batch, facts=pictured.losses_by_group(work.by_batch))
    return Finding(
        "poor",
        "poor_batches" if len(bad) else "poor_none",
        facts,
        "likely",
        float((bad["usual_of_set"] * bad["set"] - bad["hatched"]).sum()),
        table=batches,
        more=(picture, *_groups(work), Said("poor_method")),
    )


def _groups(work) -> list:
    """Tables of flocks and machines where there are several."""
    from hatchkit.losses.breakdown import breakdown

    out = []
    for by in ("flock", "incubator"):
        if by in work.season.batches and work.season.batches[by].nunique() > 1:
            rows = breakdown(work.season, by=by)
            rows = with_ranges(rows[rows["stage"] == "hatched"])
            out.append(Table(f"by_{by}", rows, (by, "set", "eggs", SHARE_SET, SHARE_DEVELOPING)))
    return out


def luck(work) -> Finding:
    """Whether any batch lost more at a stage than luck gives."""
    from hatchkit.losses.bad_luck import bad_luck

    try:
        table = bad_luck(work.season)
    except HatchkitError as refusal:
        return Finding("luck", "luck_refused", dict(why=refused(refusal)), "cannot_tell")
    own = table[table["chance"].notna()]
    odd = own[own["unusual"]].sort_values("chance", kind="stable")
    published = table[table["norm_unusual"] & ~table["unusual"]]
    facts = dict(
        comparisons=len(own),
        published=published["batch"].astype(str).unique().tolist(),
        number=len(odd),
        batches=len(set(table["batch"])),
        one_in=_one_in(odd),
        unusual=[Said("luck_one", _in_words(row)) for row in odd.head(3).to_dict("records")],
    )
    levels = "luck_by_published" if len(published) else "luck_few" if own.empty else "luck_none"
    answer = "luck_unusual" if len(odd) else levels
    columns = ("batch", "stage", "eggs", "out_of", "low", "high", "one_in")
    rare = own.sort_values("chance", kind="stable").head(8)
    rare = rare.assign(eggs=rare["eggs"].round(), one_in=[odds(chance) for chance in rare["chance"]])
    rows = Table("rare", rare, columns, {"stage": "stage"}) if len(own) else None
    sure = {"luck_unusual": "sure", "luck_few": "cannot_tell"}.get(answer, "likely")
    return Finding("luck", answer, facts, sure, table=rows, more=(*more_losses.luck(table), Said("luck_method")))


def _in_words(row) -> dict:
    return dict(row, eggs=round(row["eggs"]), one_in=odds(row["chance"]))


def _one_in(odd) -> int:
    return odds(odd["chance"].iloc[0]) if len(odd) else 0


def clears(work) -> Finding | None:
    """Whether the clears were infertile or dead early."""
    from hatchkit.losses.clears import clears as clears_by

    try:
        table = clears_by(work.season, by="flock")
    except HatchkitError:
        return None
    known = table[table["set"] > 0]
    if known.empty:
        return Finding("clears", "clears_not_counted", {}, "cannot_tell")
    worst = known.assign(share=known["clear"] / known["set"]).sort_values("share", kind="stable").iloc[-1]
    opened, dead = known["opened"].sum(), known["opened_dead"].sum()
    facts = dict(
        clear=known["clear"].sum(),
        barren=known["infertile_at_hatch"].sum(),
        set=known["set"].sum(),
        opened=opened,
        dead=dead,
        flocks=1 if worst["flock"] == NOT_GIVEN else len(known),
        flock=worst["flock"],
        worst_clear=worst["clear"],
        worst_set=worst["set"],
        worst_share=worst["share"],
        worst_opened=worst["opened"],
    )
    fertile = table["fertile"].fillna(np.nan)
    shown = table.assign(
        share_fertile=fertile.where(fertile.notna(), table["fertile_least"]),
        share_least=table["fertile_low"].fillna(table["fertile_least"]),
        share_most=table["fertile_high"].fillna(table["fertile_most"]),
    )
    rows = Table(
        "clears",
        shown,
        ("flock", "set", "clear", "opened", "opened_dead", ("share_fertile", "share_least", "share_most")),
    )
    answer = "clears_none" if not facts["clear"] else "clears_unopened" if not opened else "clears_opened"
    cautions = ("opening_eggs",) if facts["clear"] and work.notes.empty else ()
    return Finding(
        "clears",
        answer,
        facts,
        "cannot_tell" if answer == "clears_unopened" else "likely",
        float(facts["clear"]),
        table=rows,
        more=(Said("clears_method"),),
        cautions=cautions,
    )


def ages(work) -> Finding | None:
    """When the embryos died."""
    from hatchkit.losses.death_age import age_at_death

    rows = work.whole[work.whole["stage"].isin(["early", "mid", "late"])]
    if rows["eggs"].isna().any() or not rows["eggs"].sum() > 0:
        return None
    try:
        result = age_at_death(work.season)
    except HatchkitError:
        return None
    eggs = dict(zip(rows["stage"], whole_eggs(rows["eggs"]), strict=True))
    facts = dict(eggs, dead=sum(eggs.values()), seen=rows["seen"].sum(), most=max(eggs, key=eggs.get))
    pictures = [
        told(
            "losses.death_age",
            result,
            facts=pictured.death_age(result, species=kind),
            species=kind,
            caption=Said("caption_species", dict(species=kind)),
        )
        for kind in result.fits["species"]
    ]
    return Finding(
        "ages",
        "ages_stages",
        facts,
        "sure" if facts["seen"] >= 0.9 * facts["dead"] else "likely",
        float(facts["dead"]),
        more=(*pictures, *more_losses.ages(result)),
    )


def place(work) -> Finding | None:
    """Whether the place on the tray mattered."""
    from hatchkit.losses.tray import clustering, tray_season

    try:
        table = clustering(work.season)
    except HatchkitError:
        return None
    if table.empty:
        return Finding("place", "place_few" if table.attrs.get("places") else "place_not_kept", {}, "cannot_tell")
    rows = table.set_index("question")
    together, edge = rows.loc["together"], rows.loc["edge"]
    where = (
        "together"
        if rows.at["neighbours", "chance"] <= edge["chance"]
        else "edge"
        if edge["seen"] > edge["expected"]
        else "middle"
    )
    facts = dict(
        eggs=table["eggs"].iloc[0],
        deaths=table["deaths"].iloc[0],
        trays=table["trays"].iloc[0],
        where=where,
        one_in=odds(together["chance"]),
    )
    answer = f"place_{more_losses.place_answer(table)}"
    places = tray_season(work.season)
    picture = told("losses.tray_season", places, facts=pictured.tray_season(places, table))
    return Finding(
        "place",
        answer,
        facts,
        "cannot_tell" if answer == "place_few" else "likely",
        more=(picture, more_losses.place(table)),
    )


def course(work) -> Finding | None:
    """Whether it got worse through the season."""
    from hatchkit.losses.season_chart import season_chart

    try:
        table = season_chart(work.season, stage="late")
    except HatchkitError as refusal:
        return Finding("course", "course_refused", dict(why=refused(refusal)), "cannot_tell")
    about, outside = table.attrs, table.loc[table["outside"], "batch"].astype(str).tolist()
    way = "rise" if about["slide"] > 0 else "fall"
    slide = "unknown" if math.isnan(about["slide_chance"]) else way if about["slide_chance"] <= 0.05 else "none"
    facts = dict(species=about["species"], batches=len(table), slide=slide, outside=outside, number=len(outside))
    return Finding(
        "course",
        f"course_{slide}",
        facts,
        "cannot_tell" if slide == "unknown" else "likely",
        picture=None if slide == "unknown" else told("losses.season_chart", table, facts=pictured.season_chart(table)),
        more=tuple(more_losses.course(table)),
    )


#: In the order in which they are read.
ASKED = (lost, poor, luck, clears, ages, place, course)
