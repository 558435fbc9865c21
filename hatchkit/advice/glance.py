"""The season at a glance: which batch lay in which machine when, how it hatched, and which spells it met."""

from __future__ import annotations

from dataclasses import dataclass

import pandas as pd

from hatchkit.climate import excursions, machine_air, ranges
from hatchkit.climate.timeline import gaps_of, lanes, looks_of
from hatchkit.climate.track import batch_track
from hatchkit.losses.breakdown import breakdown

BATCHES = [
    "machine",
    "batch",
    "species",
    "set_at",
    "transfer_at",
    "end_at",
    "lane",
    "eggs_set",
    "chicks",
    "share",
    "least",
]
SPELLS = ["machine", "event", "kind", "start", "end", "hours", "extreme_c", "degree_hours", "looks_like"]


@dataclass(frozen=True)
class Glance:
    """Tables behind the season's calendar; times UTC.

    Attributes
    ----------
    timezone : str
    batches : DataFrame
        machine ("" where it is not known), batch, species, set_at, transfer_at, end_at (planned where not written
        down), lane (batches of a machine that overlap lie in lanes 0, 1, ...), eggs_set, chicks (good ones), share (of
        the eggs set; missing where the end is not known), least (that share of all eggs told of, where a slip of
        counting tells of more than were set; else the same).
    looks : DataFrame
        machine, batch, name, looked_at, lane.
    spells : DataFrame
        Spells of heat and cold worth telling, one row each: machine, event, kind, start, end, hours, extreme_c (air),
        degree_hours (air), looks_like.
    gaps : DataFrame
        machine, start, end of stretches without readings while eggs were in a machine that was logged.
    """

    timezone: str
    batches: pd.DataFrame
    looks: pd.DataFrame
    spells: pd.DataFrame
    gaps: pd.DataFrame


def glance(season, *, found=None) -> Glance:
    """The season's calendar.

    Parameters
    ----------
    season : Season
    found : DataFrame, optional
        ``find_excursions(season)`` when it is at hand.
    """
    found = excursions.find_excursions(season) if found is None else found
    batches = _batches(season)
    looks = [looks_of(season, part).assign(machine=machine) for machine, part in batches.groupby("machine", sort=False)]
    told = found[found["notable"].astype(bool)].drop_duplicates("event").rename(columns={"incubator": "machine"})
    return Glance(
        timezone=season.timezone or "UTC",
        batches=batches,
        spells=told[SPELLS].reset_index(drop=True),
        looks=pd.concat(looks, ignore_index=True)
        if looks
        else pd.DataFrame(columns=["batch", "name", "looked_at", "lane", "machine"]),
        gaps=_gaps(season, batches),
    )


def _batches(season) -> pd.DataFrame:
    """Machine by machine in the order of their names, batches in the order of setting."""
    table = breakdown(season, by="batch")
    chicks = table[table["stage"] == "hatched"].assign(batch=lambda rows: rows["batch"].astype(str)).set_index("batch")
    rows = []
    for _, row in season.batches.iterrows():
        if pd.isna(row["set_at"]) or row["species"] not in season.species_table.index:
            continue
        batch, end = str(row["batch"]), chicks.loc[str(row["batch"])] if str(row["batch"]) in chicks.index else None
        rows.append(
            dict(
                machine=machine_air.incubator_of(season, row) or "",
                batch=batch,
                species=row["species"],
                eggs_set=row["eggs_set"],
                chicks=None if end is None else end["eggs"],
                share=None if end is None else end["share_of_set"],
                least=None if end is None else _least(end),
                **ranges.stages(row, season.species_table.loc[row["species"]]),
            )
        )
    table = pd.DataFrame(rows, columns=[name for name in BATCHES if name != "lane"])
    table = table.astype({"eggs_set": float, "chicks": float, "share": float, "least": float})
    table = table.sort_values(["machine", "set_at"], kind="stable", ignore_index=True)
    table["lane"] = 0
    for _, part in table.groupby("machine"):
        table.loc[part.index, "lane"] = lanes(part)
    return table[BATCHES]


def _least(end) -> float:
    """Good chicks of all eggs told of, where these are more than were set; else their share of the eggs set."""
    return end["eggs"] / (end["set"] + end["excess"]) if end["excess"] > 0 else end["share_of_set"]


def _gaps(season, batches) -> pd.DataFrame:
    parts = []
    for row in batches.to_dict("records"):
        track = batch_track(season, row["batch"])
        if len(track):
            step = machine_air.machine_air(season, row["machine"]).attrs["step_h"]
            parts.append(gaps_of(track, row, step).assign(machine=row["machine"]))
    parts = [part for part in parts if len(part)]
    table = pd.concat(parts, ignore_index=True) if parts else pd.DataFrame(columns=["machine", "start", "end"])
    return table[["machine", "start", "end"]].drop_duplicates(ignore_index=True)
