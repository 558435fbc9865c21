"""What do the clears say of fertility? Little, unless some were opened."""

import math
from typing import NamedTuple

import numpy as np
import pandas as pd

from hatchkit.losses.breakdown import check_column
from hatchkit.losses.counted import counted
from hatchkit.losses.counts import choose, read_counts
from hatchkit.losses.egg_rows import text
from hatchkit.losses.ledger import usable
from hatchkit.losses.proportions import dispersion, interval, normal_quantile, t_quantile
from hatchkit.losses.schedule import by_batch, count, schedule, species_figures
from hatchkit.problems import HatchkitError


class TrueInfertile(NamedTuple):
    """Share of eggs set that were truly infertile, from a sample of opened clears."""

    share: float
    low: float
    high: float


def true_infertile(
    eggs_set: float,
    clears: float,
    opened: float,
    early_dead: float,
    *,
    level: float = 0.95,
    draws: int = 20_000,
    seed: int = 1,
) -> TrueInfertile:
    """Infertile eggs from clears of which a sample was opened (double sampling).

    Parameters
    ----------
    eggs_set, clears : number
        Eggs set, and how many of them were clear at candling.
    opened, early_dead : number
        Clears opened, and how many of these held a dead embryo.

    Returns
    -------
    TrueInfertile
        share = clears / set x (1 - early_dead / opened); the interval by draws of both shares from their Beta
        distributions (prior 1/2, 1/2), so that it carries the sampling; with every clear opened it is Wilson's for
        infertile of set.

    Source: Tenenbein 1970 J. Am. Stat. Assoc. 65:1350-1361 (double sampling).
    """
    if not 0 < opened <= clears <= eggs_set or not 0 <= early_dead <= opened:
        raise HatchkitError("clears_out_of_order", {})
    clear, barren = clears / eggs_set, 1 - early_dead / opened
    random = np.random.default_rng(seed)
    if opened < clears:
        first = random.beta(clears + 0.5, eggs_set - clears + 0.5, draws)
        second = random.beta(opened - early_dead + 0.5, early_dead + 0.5, draws)
        low, high = np.quantile(first * second, [(1 - level) / 2, (1 + level) / 2])
    else:
        low, high = interval(opened - early_dead, eggs_set, level=level)
    return TrueInfertile(clear * barren, float(low), float(high))


def clears(season, by: str | None = None) -> pd.DataFrame:
    """Fertility as far as the clears tell, for the season or by a column of batches.

    Returns
    -------
    DataFrame
        The group, then eggs: set (in batches whose clears were counted, by candling or by opening), clear (not
        opened, or taken out as clear at a look), opened (of the clears), opened_dead (held a dead embryo),
        infertile_at_hatch (opened after the hatch; that late an infertile egg and a very early dead one look
        alike). Shares of eggs set: candled_fertile (not clear; not true fertility), fertile_least and fertile_most
        (what true fertility can be whatever the unopened clears were), and, where a sample of clears was opened,
        fertile with _low and _high (of eggs like these, so the interval may reach past the range for these very
        eggs; of several batches it carries the spread between them, see `_spread`). uncounted: eggs set in batches
        whose clears were not counted, named in uncounted_in; of a group that has no others nothing else is known.
        Batches that cannot enter rates are left out.
    """
    check_column(season, by)
    table = batch_clears(season)
    labels = season.batches.assign(batch=season.batches["batch"].astype(str)).set_index("batch")
    table = table[table["batch"].isin(usable(season))]
    name = by or "season"
    group = (
        pd.Series("all", index=table.index)
        if by is None
        else table["batch"].map(labels[by])
        if by != "batch"
        else table["batch"]
    )
    rows = [
        {name: label, **_group(part)}
        for label, part in table.groupby(group.astype("object").fillna("not given"), sort=False)
    ]
    return pd.DataFrame(rows, columns=[name, *EGGS, "uncounted", "uncounted_in", *SHARES])


EGGS = ["set", "clear", "opened", "opened_dead", "infertile_at_hatch"]
SHARES = ["candled_fertile", "fertile_least", "fertile_most", "fertile", "fertile_low", "fertile_high"]


def _group(table) -> dict:
    """Sums and shares of the batches of one group; only those enter whose clears were counted."""
    told = table["counted"]
    left = {"uncounted": table.loc[~told, "set"].sum(), "uncounted_in": ", ".join(table.loc[~told, "batch"])}
    if not told.any():
        return dict.fromkeys((*EGGS, *SHARES), math.nan) | left
    sums = table.loc[told, EGGS].sum().to_dict()
    return sums | left | _shares(sums, *_spread(table[told]))


def _spread(table) -> tuple[float, float]:
    """Dispersion of infertile eggs (known or likely) between batches, and how much t is wider than the normal.

    As in `proportions.widened`: counts are divided by the one, never below 1, and the interval stretched by the
    other; one batch shows no spread.
    """
    if len(table) < 2:
        return 1.0, 1.0
    phi = dispersion(table["clear"] - table["opened_dead"] + table["infertile_at_hatch"], table["set"])
    wider = t_quantile(len(table)) / normal_quantile(0.95)
    return (max(1.0, phi) if math.isfinite(phi) else 1.0), wider


def _shares(row: dict, phi: float, wider: float) -> dict:
    eggs, barren = row["set"], row["infertile_at_hatch"]
    known = row["opened"] - row["opened_dead"] + barren
    unopened = row["clear"] - row["opened"]
    out = {
        "candled_fertile": 1 - (row["clear"] + barren) / eggs,
        "fertile_least": 1 - (known + unopened) / eggs,
        "fertile_most": 1 - known / eggs,
        "fertile": math.nan,
        "fertile_low": math.nan,
        "fertile_high": math.nan,
    }
    if row["opened"] > 0:
        found = true_infertile(*(row[name] / phi for name in ("set", "clear", "opened", "opened_dead")))
        out.update(_ends(1 - found.share - barren / eggs, found.high - found.share, found.share - found.low, wider))
    elif not row["clear"]:
        low, high = interval(barren / phi, eggs / phi)
        out.update(_ends(1 - barren / eggs, high - barren / eggs, barren / eggs - low, wider))
    return out


def _ends(fertile: float, below: float, above: float, wider: float) -> dict:
    low, high = max(0.0, fertile - wider * below), min(1.0, fertile + wider * above)
    return {"fertile": fertile, "fertile_low": low, "fertile_high": high}


def batch_clears(season) -> pd.DataFrame:
    """Eggs per batch: set, clear, opened, opened_dead, infertile_at_hatch; counted: whether its clears were."""
    kept = counted(season)
    looks, eggs = by_batch(season.looks), by_batch(season.eggs)
    fates = season.fates.assign(barren=season.fates["fate"].eq("infertile"))
    late = fates[fates["barren"] & fates["found_at"].eq("hatch")].groupby("batch")["eggs"].sum()
    unopened = fates["fate"].eq("clear") | (fates["barren"] & fates["found_at"].ne("hatch"))
    barren = fates[unopened].groupby("batch")["eggs"].sum()
    rows = []
    for record in season.batches.to_dict("records"):
        batch = str(record["batch"])
        opened, dead = opened_clears(record, eggs.get(batch, []), looks.get(batch, []), season.species_table)
        rows.append(
            {
                "batch": batch,
                "set": count(record.get("eggs_set")),
                "clear": barren.get(batch, 0.0) + dead,
                "opened": opened,
                "opened_dead": dead,
                "infertile_at_hatch": late.get(batch, 0.0),
                "counted": batch in kept and kept[batch].stage("clear"),
            }
        )
    return pd.DataFrame(rows, columns=["batch", *EGGS, "counted"]).astype({"counted": bool})


def opened_clears(record: dict, eggs: list[dict], looks: list[dict], species_table) -> tuple[float, float]:
    """Clears of one batch that were opened, and how many of them held a dead embryo (eggs)."""
    ordered, _ = schedule(record, looks, species_figures(record, species_table))
    opened = dead = 0.0
    for egg in eggs:
        marks = [text(egg.get(look.name)) for look in ordered[:-1]]
        taken = next((mark for mark in marks if mark in ("clear", "dead", "removed")), "")
        outcome = text(egg.get("outcome"))
        if taken == "clear" and outcome in ("infertile", "dead"):
            opened, dead = opened + 1, dead + (outcome == "dead")
    if not eggs:
        way, _ = choose(read_counts(record, ordered), count(record.get("eggs_set")))
        opened, dead = way.clears_infertile + way.clears_early, way.clears_early
    return opened, dead
