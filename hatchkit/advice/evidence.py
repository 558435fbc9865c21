"""What log, weights and records say about each batch, set beside the same items of the keeper's good batches.

Items, published values and what must have been kept are data (``reference/evidence_items.csv``). A gauge (storage,
humidity, level) is told as its difference from what is usual with this keeper: his good batches, drawn towards the
published value (`usual.gauges`); what good batches share explains nothing. A dose is told as it stands.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any, NamedTuple

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice import evidence_climate, evidence_machine, evidence_records, signs
from hatchkit.advice.habits import believed_fates, idle_batches
from hatchkit.advice.published import STAGES, published_shares
from hatchkit.advice.tally import Tally, tally
from hatchkit.problems import HatchkitError
from hatchkit.usual.gauges import Gauge, usual_of
from hatchkit.usual.stages import Usual, usual

#: Order in which eggs are lost, and the published shares in that order.
ORDER = ("clear", "removed", "early", "mid", "late", "pipped_dead", "culled")

#: Doses of the log, told beyond what good batches of the machine met; they say little where little was logged.
MEASURED = ("heat", "cold")

#: What one machine's probes show is compared with that machine's good batches; those of others count this much.
OF_MACHINE, ELSEWHERE = ("log_level", "rh_set", "rh_hatch", "probe_gap"), 0.1

#: A level without a good batch of the same machine beside it may be the probe's own error: what it says for a cause
#: counts to this power (probes off by half a degree are common practice, no source).
NO_MATE = 0.6

#: A place so many metres above every place where a batch of this keeper did well: what its height says for thin air
#: counts to this power (stated by hatchkit; a table of heights alone can't know that lower batches of the same hand
#: did well). A good batch at the same height, or none at all, leaves the table as it stands.
HIGHER_M, ONLY_HERE = 600.0, 2.0

#: Eggs that were weighed and lost too little were not too dry, however dry the log (and the other way): what else
#: speaks for the other side counts nothing, and the scale counts this against it.
WATER_SIDE, SCALE_SAYS = {"too_dry": "too little", "too_humid": "too much"}, 0.01

COLUMNS = ["item", "kind", "unit", "digits", "value", "usual", "spread", "good_batches", "away"]


class Line(NamedTuple):
    """What one item or sign says of a cause.

    Attributes
    ----------
    part, found : str
        Item and "known" or "not known"; sign and the words that named it.
    factor : float
        How many times as likely with the cause; 1 where another line of the same fact says it more strongly.
    alone : float
        The factor if nothing else told the fact.
    """

    part: str
    found: str
    factor: float
    alone: float


@dataclass(frozen=True)
class Gathered:
    """Tables that all batches of a season share, made once, at a cost that is linear in the batches.

    Attributes
    ----------
    season : Season
    tally : Tally
    usual : dict
        {batch: `usual.stages.Usual`} from the other batches of its species.
    values : DataFrame
        Index batch, one column per evidence item; missing where the records do not tell.
    doses : dict
        {batch: `evidence_climate.Doses`}.
    good : Series
        How good each batch was, 0 to 1: its worth as a measure of what does no harm.
    rows, fates, kinds : dict
        {batch: its row of batches, its rows of fates, what was counted}.
    water : dict
        {batch: verdict of `batch_water_loss`}.
    """

    season: Any
    tally: Tally
    usual: dict
    values: pd.DataFrame
    doses: dict
    good: pd.Series
    rows: dict
    fates: dict
    kinds: dict
    water: dict

    @property
    def counts(self) -> pd.DataFrame:
        """Eggs per batch and stage."""
        return self.tally.counts


def gather(season) -> Gathered:
    """`Gathered` of a season; worked out once."""
    return season.once(("advice", "gathered"), lambda: _gather(season))


def _gather(season) -> Gathered:
    from hatchkit.climate.water_loss import batch_water_loss
    from hatchkit.losses.counted import counted

    eggs, usual_of_batch = tally(season), usual_by_batch(season)
    water = _by_batch(batch_water_loss, season)
    placed = _placed(season.eggs)
    values, doses, rows = {}, {}, {}
    for row in season.batches.to_dict("records"):
        batch = str(row["batch"])
        rows.setdefault(batch, row)
        if batch not in eggs.counts.index or batch in values:
            continue
        found, doses[batch] = evidence_climate.find(season, row["batch"], water.get(batch))
        values[batch] = found | evidence_records.find(season, row, season.species_table.loc[row["species"]], placed)
    names = reference.load("evidence_items")["item"]
    table = pd.DataFrame.from_dict(values, orient="index").reindex(columns=names).astype(float)
    table = table.reindex(eggs.counts.index)
    flock = evidence_records.flock_items(season.batches, eggs.counts, eggs.clears_counted)
    table[["flock_clears", "flock_deaths"]] = flock.reindex(table.index)
    table["clock_machine"] = evidence_machine.clock_of_machine(table["clock"], rows)
    good = _good(eggs, usual_of_batch)
    for item in MEASURED:
        doses = evidence_machine.beyond_the_good(table[item], item, doses, good, rows)
    table["flock_own"] = pd.Series(evidence_records.other_flock(rows, good), dtype=float).reindex(table.index)
    fates = {str(name): part.to_dict("records") for name, part in believed_fates(season).groupby("batch", sort=False)}
    return Gathered(
        season,
        eggs,
        usual_of_batch,
        table,
        doses,
        good,
        rows,
        fates,
        _kinds(season, counted(season)),
        {name: row["verdict"] for name, row in water.items()},
    )


def _kinds(season, counted) -> dict:
    """{batch: what was counted}; noughts that are not believed are no count of clears."""
    idle = idle_batches(season)
    return {batch: known.kinds - {"clear"} if batch in idle else known.kinds for batch, known in counted.items()}


def _by_batch(make, season) -> dict:
    """A room's table as {batch: row}; one that refuses this season in a plain sentence counts as "not known"."""
    try:
        table = make(season)
    except HatchkitError:
        return {}
    return {str(row["batch"]): row for row in table.to_dict("records")} if "batch" in table else {}


def _placed(eggs) -> set:
    if not {"batch", "row", "col"} <= set(eggs):
        return set()
    return set(eggs.loc[eggs["row"].notna(), "batch"].astype(str))


def usual_by_batch(season) -> dict:
    """{batch: Usual} from the other batches of its species; worked out once."""
    kinds = {str(batch): kind for batch, kind in zip(season.batches["batch"], season.batches["species"], strict=True)}
    return season.once(("advice", "usual"), lambda: _usual(tally(season), kinds))


def _usual(eggs: Tally, kinds) -> dict:
    published = published_shares()[[STAGES.index(stage) for stage in ORDER]]
    out = {}
    for kind in dict.fromkeys(kinds[batch] for batch in eggs.counts.index):
        part = eggs.only(batch for batch in eggs.counts.index if kinds[batch] == kind)
        filled = part.filled()
        out.update(
            zip(
                filled.index,
                usual(filled[list(ORDER)].to_numpy(), filled["hatched"].to_numpy(), published),
                strict=True,
            )
        )
    return out


def _good(eggs: Tally, usual_of_batch: dict[str, Usual]) -> pd.Series:
    """1 for a batch that did as well as usual and as a published batch, 0 for a poor one."""
    worth = {}
    for batch, row in eggs.counts.iterrows():
        one, total = usual_of_batch[batch], row.sum() + eggs.unaccounted[batch]
        share = row["hatched"] / total if total else 0.0
        sd = np.sqrt(one.shares[0] * (1 - one.shares[0]) * (1 / max(total, 1) + one.rho))
        own, published = (share - one.shares[0]) / sd + 1.5, (share - published_shares()[0] + 0.25) / 0.15
        worth[batch] = float(np.clip(min(own, published), 0, 1))
    return pd.Series(worth, dtype=float)


@cache
def _items() -> dict:
    return reference.load("evidence_items").set_index("item").to_dict("index")


def evidence(gathered: Gathered, batch) -> pd.DataFrame:
    """Every evidence item of one batch: `COLUMNS`.

    value is as found; usual and spread are this keeper's (a dose: the published value); away is the difference in
    spreads, missing where the item is not known.
    """
    kind = gathered.rows[batch]["species"]
    mates = [name for name in gathered.values.index if name != batch and gathered.rows[name]["species"] == kind]
    others, worth = gathered.values.loc[mates], gathered.good.reindex(mates).to_numpy()
    machine = gathered.rows[batch].get("incubator")
    near = worth * np.array([1.0 if gathered.rows[name].get("incubator") == machine else ELSEWHERE for name in mates])
    shared = {
        item: evidence_machine.shared(gathered.values[item], batch, gathered.good, gathered.rows) for item in MEASURED
    }
    rows = []
    for item, row in _items().items():
        value = float(gathered.values.at[batch, item])
        gauge = (
            Gauge(shared[item] if item in MEASURED else row["published"], row["spread"], 0)
            if row["kind"] == "dose"
            else usual_of(
                others[item].to_numpy(),
                near if item in OF_MACHINE else worth,
                published=row["published"],
                spread=row["spread"],
            )
        )
        rows.append(
            [
                item,
                row["kind"],
                row["unit"],
                row["digits"],
                value,
                gauge.middle,
                gauge.spread,
                gauge.batches,
                (value - gauge.middle) / gauge.spread,
            ]
        )
    table = pd.DataFrame(rows, columns=COLUMNS)
    return table.assign(unit=table["unit"].fillna(""))


@cache
def _causes() -> tuple:
    return tuple(reference.load("causes")["cause"])


@cache
def links() -> dict:
    """Which items bear on each cause: {cause: [(item, fact, values, log factors, why)]}."""
    out = {}
    for row in reference.load("cause_evidence").to_dict("records"):
        points = [tuple(map(float, pair.split(":"))) for pair in row["points"].split()]
        at, factor = map(np.array, zip(*points, strict=True))
        out.setdefault(row["cause"], []).append((row["item"], row["fact"], at, np.log(factor), row["why"]))
    return out


def told(gathered: Gathered, batch, items) -> dict:
    """What is known of one batch for and against each cause, each fact once.

    Returns
    -------
    dict
        {cause: list of `Line`}. Within one fact (the log and a remark of one power cut) the strongest
        word for and the strongest word against the cause count, the rest stand at 1. An unknown item counts 1.
    """
    by_item = {row["item"]: row for row in items.to_dict("records")}
    named = signs.found(gathered.rows[batch]).to_dict("records")
    logged = gathered.doses[batch].logged if batch in gathered.doses else 0.0
    weights, out, only_here = signs.factors(), {}, _above_the_good(gathered, batch)
    for cause in _causes():
        lines = []
        for item, fact, at, logs, _ in links().get(cause, []):
            row = by_item[item]
            if np.isnan(row["value"]):
                lines.append([item, fact, "not known", 1.0])
                continue
            shown = row["value"] if row["kind"] == "dose" and item not in MEASURED else row["value"] - row["usual"]
            factor = float(np.exp(np.interp(shown, at, logs)))
            if item in OF_MACHINE and factor > 1 and not row["good_batches"]:
                factor **= NO_MATE
            if item == "altitude" and factor > 1 and only_here:
                factor **= ONLY_HERE
            if item in MEASURED and factor < 1:
                factor = logged * factor + 1 - logged  # what was not logged may have held it
            lines.append([item, fact, "known", factor])
        for sign in named:
            factor = weights[sign["sign"]].get(cause)
            if factor is not None:
                lines.append([sign["sign"], sign["fact"], sign["said"], factor])
        if cause in WATER_SIDE and WATER_SIDE[cause] == gathered.water.get(batch):
            lines = [_scale_first(line) for line in lines]
        out[cause] = _each_fact_once(lines)
    return out


def _scale_first(line) -> list:
    """A line of a cause that the scale rules out."""
    part, fact, found, factor = line
    if part == "water_loss":
        return [part, fact, found, min(factor, SCALE_SAYS)]
    return [part, fact, found, min(factor, 1.0)]


def _above_the_good(gathered, batch) -> bool:
    """Whether the batch lay `HIGHER_M` above every other batch that did well; not where no height of these is known."""
    heights = gathered.values["altitude"]
    others = heights[(gathered.good.reindex(heights.index) > 0.5) & (heights.index != batch)].dropna()
    return bool(len(others) and heights[batch] >= others.max() + HIGHER_M)


def _each_fact_once(lines) -> list[Line]:
    """Of the lines of one fact only the strongest for and the strongest against keep their factor."""
    out = []
    for place, (part, fact, found, factor) in enumerate(lines):
        rivals = [other[3] for at, other in enumerate(lines) if other[1] == fact and at != place]
        same = [other for other in rivals if (other > 1) == (factor > 1) and other != 1]
        beaten = any(abs(np.log(other)) > abs(np.log(factor)) for other in same)
        twin = any(other[1] == fact and other[3] == factor for other in lines[:place]) and factor != 1
        out.append(Line(part, found, 1.0 if beaten or twin else factor, factor))
    return out
