"""Findings of one batch on what comes next: the next set and its changes, and what to look for in unhatched eggs."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.findings.finding import Finding, Picture, Said, Table, Told, refused, told
from hatchkit.problems import HatchkitError


def change(work) -> Finding | None:
    """How many eggs to set next, when, and what to change."""
    from hatchkit.advice import pictured
    from hatchkit.advice.egg_chances import egg_chances
    from hatchkit.advice.plan import next_set

    try:
        plan = next_set(work.season, work.season.batch(work.batch)["species"], batch=work.batch)
    except HatchkitError as refusal:
        return Finding("change", "change_refused", dict(why=refused(refusal)), "cannot_tell")
    row = plan.eggs[np.isclose(plan.eggs["sure"], plan.basis["sure"])].iloc[0]
    facts = dict(row, changes=len(plan.changes), sure=plan.basis["sure"], own=plan.basis["batches"])
    answer = "change_too_many" if pd.isna(row["eggs"]) else "change_set"
    picture = (
        ()
        if pd.isna(row["eggs"])
        else (
            told("next_set.eggs_to_set", egg_chances(work.season, plan), plan.eggs, facts=pictured.eggs_to_set(plan)),
        )
    )
    parts = ("what", "now", "to", "why", "how_sure")
    rows = [
        {part: Told("plan.change_part", (row["change"], row["facts"], part)) for part in parts}
        for row in plan.changes.to_dict("records")
    ]
    table = Table("changes", pd.DataFrame(rows, columns=parts), parts) if rows else None
    return Finding(
        "change",
        answer,
        facts,
        "likely",
        table=table,
        cautions=("machine", "disease"),
        more=(*picture, Told("plan.when", plan), Told("plan.plan_basis", plan.basis)),
    )


def look(work) -> Finding:
    """What to look for in the unhatched eggs next time."""
    from hatchkit.advice import pictured
    from hatchkit.advice.breakout import breakout_guide

    guide = breakout_guide(work.season.species(work.batch))
    picture = Picture("advice.breakout_drawings", guide, Said("picture_drawings", pictured.drawings(guide)), most=380)
    told = ("look", "see", "means", "points_to")
    rows = pd.DataFrame(dict.fromkeys(told, guide["look"])).assign(days=_days(guide))
    keys = {column: f"breakout_{column}" for column in told}
    table = Table("breakout", rows, ("look", "days", *told[1:]), keys)
    return Finding(
        "look",
        "look_open",
        {},
        "sure",
        cautions=("opening_eggs", "killing"),
        table=table,
        more=(picture, Said("look_days")),
    )


def _days(guide) -> list:
    """First and last day of each look, to be said."""
    days = zip(guide["day_low"], guide["day_high"], strict=True)
    return [Said("breakout_days", dict(low=low, high=high, one_day=bool(low == high))) for low, high in days]


#: In the order in which they are read.
ASKED = (change, look)
