"""Findings of one batch on its machine and its place: spells, water, clock, tray."""

from __future__ import annotations

import pandas as pd

from hatchkit.climate import pictured
from hatchkit.findings import more_climate, more_losses
from hatchkit.findings.finding import Finding, Said, Table, told
from hatchkit.findings.season_climate import SPELL
from hatchkit.problems import HatchkitError


def met(work) -> Finding:
    """What temperature the eggs met."""
    from hatchkit.climate.machine_air import incubator_of
    from hatchkit.climate.timeline import incubator_timeline
    from hatchkit.climate.track import batch_track

    alone = work.alone
    try:
        logged = not batch_track(alone, work.batch).empty
    except HatchkitError:
        logged = False
    if not logged:
        return Finding("met", "met_not_logged", {}, "cannot_tell")
    found = work.excursions
    large = found[found["notable"].astype(bool)]
    facts = dict(
        told=len(large),
        everyday=len(found) - len(large),
        machine=incubator_of(alone, alone.batches.iloc[0]),
        spells=[Said("reason_of_spell", row) for row in large.head(3).to_dict("records")],
    )
    line = incubator_timeline(alone, facts["machine"], found=found)
    zone = work.season.timezone
    words = [piece for row in large.head(3).to_dict("records") for piece in more_climate.spell(row, zone)]
    picture = told(
        "climate.incubator_timeline", line, facts=pictured.incubator_timeline(line, unit=work.unit), unit=work.unit
    )
    table = Table("spells", large.assign(hours=large["hours"].round(1)), SPELL, {"looks_like": "spell"})
    return Finding(
        "met",
        "met_spells" if len(large) else "met_nothing",
        facts,
        "likely",
        table=table if len(large) else None,
        more=(*words, picture),
    )


def water(work) -> Finding | None:
    """Whether the eggs lost the right amount of water."""
    from hatchkit.climate.water_loss import batch_water_loss, loss_points

    table = batch_water_loss(work.alone)
    if table.empty or table["verdict"].iloc[0] == "no weighings" or pd.isna(table["projected_share"].iloc[0]):
        return None
    row = table.iloc[0]
    answer = {
        "on target": "batch_water_on_target",
        "too little": "batch_water_too_little",
        "too much": "batch_water_too_much",
    }.get(row["verdict"], "batch_water_cannot_tell")
    picture = told(
        "water.weight_loss_track", loss_points(work.alone, work.batch), row, facts=pictured.weight_loss_track(row)
    )
    return Finding(
        "water",
        answer,
        row.to_dict(),
        "cannot_tell" if answer.endswith("tell") else "likely",
        more=(picture, *more_climate.water(row)),
    )


def clock(work) -> Finding | None:
    """Whether the hatch came early or late."""
    from hatchkit.climate.clock import hatch_clock

    table = hatch_clock(work.alone)
    if table.empty or table["verdict"].iloc[0] not in ("on time", "early", "late"):
        return None
    row = table.iloc[0]
    return Finding(
        "clock",
        f"batch_clock_{row['verdict'].replace(' ', '_')}",
        dict(hours=abs(row["difference_h"])),
        "likely",
        more=(more_climate.clock(row, work.season.timezone),),
    )


def place(work) -> Finding | None:
    """Whether the dead lay together on the tray."""
    from hatchkit.losses import pictured as lost
    from hatchkit.losses.tray import clustering, tray_map

    places = tray_map(work.season, work.batch)
    if places.empty:
        return None
    table = clustering(work.season, work.batch)
    found = more_losses.place_answer(table) if len(table) else "few"
    answer = "place_few" if found == "few" else f"batch_place_{found}"
    picture = told("losses.tray_map", places, facts=lost.tray_map(work.batch, places, table))
    return Finding(
        "place",
        answer,
        {},
        "cannot_tell" if answer == "place_few" else "likely",
        more=(picture, more_losses.place(table)),
    )


#: In the order in which they are read.
ASKED = (met, water, clock, place)
