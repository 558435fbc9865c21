"""What the log and the records say about one batch: one value per evidence item, or that it is not known.

Items, thresholds and what must have been kept are data (``reference/evidence_items.csv``); this module only
fetches the values. Each finder returns a number, or NaN where the records do not tell.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice import evidence_climate, evidence_records
from hatchkit.advice.tally import Tally, tally
from hatchkit.problems import HatchkitError

LEVELS = ("very_low", "low", "usual", "high", "very_high")


@dataclass(frozen=True)
class Gathered:
    """Tables that all batches of a season share, made once.

    Attributes
    ----------
    season : Season
    tally : Tally
        `tally.tally`.
    clock, water : DataFrame
        Hatch clock and water loss per batch; empty where they cannot be made.
    """

    season: object
    tally: Tally
    clock: pd.DataFrame
    water: pd.DataFrame

    @property
    def counts(self) -> pd.DataFrame:
        """Eggs per batch and stage."""
        return self.tally.counts


def gather(season, only=None) -> Gathered:
    """Season-wide tables for the evidence finders.

    Parameters
    ----------
    season : Season
    only : str, optional
        The one batch that will be asked about: water loss, which looks at one batch at a time, is then worked
        out for it alone, and the clock for the batches of its machine.
    """
    from hatchkit.climate.clock import hatch_clock
    from hatchkit.climate.water_loss import batch_water_loss

    alone = machine = season
    if only is not None:
        batches = season.batches
        row = batches[batches["batch"] == only]
        alone = season.with_batches(row)
        mates = batches["incubator"].isin(row["incubator"].dropna()) | (batches["batch"] == only)
        machine = season.with_batches(batches[mates])
    return Gathered(
        season=season,
        tally=tally(season),
        clock=_or_empty(hatch_clock, machine),
        water=_or_empty(batch_water_loss, alone),
    )


def _or_empty(make, season) -> pd.DataFrame:
    """A room's table; one that refuses this season in a plain sentence counts as "not known"."""
    try:
        table = make(season)
    except HatchkitError:
        return pd.DataFrame(columns=["batch"])
    return table if "batch" in table else pd.DataFrame(columns=["batch"])


def evidence(gathered: Gathered, batch) -> pd.DataFrame:
    """Every evidence item of one batch.

    Returns
    -------
    DataFrame
        item, name, kind, unit, digits, value, level (of `LEVELS`, missing where not known), needs.
    """
    items = reference.load("evidence_items")
    found = {**evidence_climate.find(gathered, batch), **evidence_records.find(gathered, batch)}
    items["value"] = [float(found.get(item, np.nan)) for item in items["item"]]
    items["level"] = pd.Series([level(row) for row in items.to_dict("records")], dtype=object)
    return items[["item", "name", "kind", "unit", "digits", "value", "level", "needs"]]


def level(item: dict):
    """Level of a value by the item's thresholds; None where the value is not known."""
    value = item["value"]
    if np.isnan(value):
        return None
    for name, limit, beyond in (
        ("very_low", item["very_low"], value <= item["very_low"]),
        ("very_high", item["very_high"], value >= item["very_high"]),
        ("low", item["low"], value <= item["low"]),
        ("high", item["high"], value >= item["high"]),
    ):
        if not np.isnan(limit) and beyond:
            return name
    return "usual"


def factor_table() -> pd.DataFrame:
    """How many times likelier each level is with a profile than without: index kind, profile; columns `LEVELS`."""
    profiles = reference.load("evidence_profiles").set_index(["kind", "profile"])[list(LEVELS)]
    ordinary = profiles.xs("ordinary", level="profile")
    usual = ordinary.reindex(profiles.index.get_level_values("kind")).to_numpy()
    with np.errstate(divide="ignore", invalid="ignore"):
        return (profiles / usual).where(usual > 0)


@cache
def factor_of() -> dict:
    """`factor_table` to look up in: {(kind, profile): {level: factor}}."""
    return factor_table().to_dict("index")


@cache
def evidence_links() -> dict:
    """Which evidence items bear on each cause: {cause: rows of ``reference/cause_evidence.csv``}."""
    links = {}
    for row in reference.load("cause_evidence").to_dict("records"):
        links.setdefault(row["cause"], []).append(row)
    return links
