"""Small invented seasons made in memory, for the tests of losses."""

import math
from pathlib import Path

import pandas as pd

from hatchkit import reference
from hatchkit.losses.fates import build_fates
from hatchkit.problems import table
from hatchkit.season import Season

SET_AT = pd.Timestamp("2025-03-01 08:00", tz="UTC")

EGG_COLUMNS = [
    "batch",
    "egg",
    "tray",
    "row",
    "col",
    "weight_g",
    "candle1",
    "candle2",
    "transfer",
    "outcome",
    "stage_day",
]


def tiny_season(batches, *, eggs=(), looks=None):
    """A Season from plain dicts; fates are built by the kit.

    A batch needs batch and eggs_set; species is chicken unless said otherwise. Its looks come from
    day1, clear1, dead1, day2, clear2, dead2, day3 (transfer), clear3, dead3, and taken_off_day (21.5
    unless said otherwise; None for none) or, for other looks, from `looks` as rows of that table.
    """
    rows, found = [], []
    for number, given in enumerate(batches):
        batch = {"species": "chicken", "incubator": "A", "taken_off_day": 21.5, **given}
        set_at = SET_AT + pd.Timedelta(days=7 * number)
        rows.append(
            {
                **batch,
                "batch": str(batch["batch"]),
                "set_at": set_at,
                "file": "batches.csv",
                "sheet": "",
                "row": number + 2,
            }
        )
        for place, name in ((1, "candle1"), (2, "candle2"), (3, "transfer")):
            if f"day{place}" in batch or f"dead{place}" in batch or f"clear{place}" in batch:
                day = batch.get(f"day{place}", math.nan)
                found.append(
                    {
                        "batch": str(batch["batch"]),
                        "look": place,
                        "name": name,
                        "day": day,
                        "looked_at": set_at + pd.Timedelta(days=day) if day == day else pd.NaT,
                        "clear": batch.get(f"clear{place}", math.nan),
                        "dead": batch.get(f"dead{place}", math.nan),
                        "removed": batch.get(f"removed{place}", math.nan),
                    }
                )
        if batch["taken_off_day"] is not None:
            found.append(
                {
                    "batch": str(batch["batch"]),
                    "look": 9,
                    "name": "hatch",
                    "day": batch["taken_off_day"],
                    "looked_at": set_at + pd.Timedelta(days=batch["taken_off_day"]),
                    "clear": math.nan,
                    "dead": math.nan,
                    "removed": math.nan,
                }
            )
    columns = ["batch", "look", "name", "looked_at", "day", "clear", "dead", "removed"]
    look_table = pd.DataFrame(found if looks is None else list(looks), columns=columns)
    look_table["looked_at"] = pd.to_datetime(look_table["looked_at"], utc=True)
    egg_table = pd.DataFrame(list(eggs), columns=EGG_COLUMNS)
    batch_table = pd.DataFrame(rows)
    species = reference.species_table()
    fates, problems = build_fates(batch_table, egg_table, look_table, species)
    return Season(
        folder=Path("tiny"),
        title="tiny",
        timezone="UTC",
        batches=batch_table,
        eggs=egg_table,
        weights=pd.DataFrame(),
        looks=look_table,
        readings=pd.DataFrame(),
        fates=fates,
        problems=table(problems.to_dict("records")),
        species_table=species,
    )
