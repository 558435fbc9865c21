"""Years made apart from the analysis: how often like groups are told apart, and changes without effect "help".

Run: python tests/benchmarks/years_proof.py [runs] [groups | changes | intervals]
Drifts, changed flocks, machines that differ; batches differ by sd 0.45 (log odds), years by 0.25, places by 0.3. A
change is made where the year before was the poorest, as keepers do.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass, field

import numpy as np
import pandas as pd

from hatchkit.usual.mixed import expit, pool
from hatchkit.yearly.groups import CLEAR, MAY
from hatchkit.yearly.helped import helped


@dataclass
class Years:
    """What `helped` asks of a season: its changes, and the outcomes of its batches."""

    table: pd.DataFrame
    changes: pd.DataFrame
    kept: dict = field(default_factory=dict)

    def once(self, key, make):
        return self.table


def drawn(rng, *, years=4, batches=8, effect=0.0):
    """Two machines, two pens, some years; a change in the last year at the place that was poorest the year before."""
    rows = []
    machine, pen = rng.normal(0, 0.3, 2), rng.normal(0, 0.3, 2)
    drift = rng.normal(0, 0.1)
    for year in range(years):
        luck = rng.normal(0, 0.25)
        cell = rng.normal(0, 0.2, 2)
        if rng.random() < 0.3:
            pen[rng.integers(2)] = rng.normal(0, 0.3)  # a changed flock
        for batch in range(batches):
            m, p = batch % 2, (batch // 2) % 2
            eggs = int(rng.integers(24, 41))
            rows.append(
                [year, m, p, eggs, 0.9 + luck + machine[m] + pen[p] + cell[m] + drift * year + 0.45 * rng.normal()]
            )
    table = pd.DataFrame(rows, columns=["season", "m", "p", "set", "level"])
    last = table["season"] == years - 1
    before = table[table["season"] == years - 2]
    rates = before.groupby("m")["level"].mean()
    worst = int(rates.idxmin())
    level = table["level"] + effect * (last & (table["m"] == worst))
    table["fertile"] = table["set"].astype(float)
    table["hatched"] = rng.binomial(table["set"], expit(level.to_numpy())).astype(float)
    for stage in ("early", "mid", "late"):
        table[stage] = np.nan
    start = pd.Timestamp("2021-03-01", tz="UTC")
    table["set_at"] = [
        start + pd.Timedelta(days=365 * int(year) + 10 * (place % batches))
        for place, year in enumerate(table["season"])
    ]
    table["incubator"], table["pen"] = table["m"].map({0: "A", 1: "B"}), table["p"].map({0: "one", 1: "two"})
    for name in ("keeper", "flock", "breed", "shelf", "hatcher", "place"):
        table[name] = None
    changed = start + pd.Timedelta(days=365 * (years - 1) - 30)
    changes = pd.DataFrame(
        [[changed, "a change", "AB"[worst], "", "", "", None]],
        columns=["date", "what", "where", "keeper", "file", "sheet", "row"],
    )
    return Years(table, changes)


def changes(runs):
    """False help after the poorest year, what a comparison with the year before would say, and true help."""
    for effect in (0.0, 0.8, 1.5):
        told, naive, rng = [], [], np.random.default_rng(17)
        for _ in range(runs):
            made = drawn(rng, effect=effect)
            row = helped(made, draws=1500).query("outcome == 'hatch_of_fertile'").iloc[0]
            told.append(row["verdict"])
            spread = np.sqrt(row["before"] * (1 - row["before"]) / row["before_total"] * 2)
            naive.append(row["after"] - row["before"] > 1.96 * spread)
        share = pd.Series(told).value_counts(normalize=True).round(3).to_dict()
        print(
            f"effect {effect} on the log odds: {share}; year before alone says helped: {np.mean(naive):.3f}",
            flush=True,
        )


def groups(runs):
    """Pairs of groups that do not differ: share of runs with any clear, and with any that may differ."""
    for number, batches in ((2, 12), (6, 24), (12, 48)):
        rng, any_clear, any_may = np.random.default_rng(5), 0, 0
        for _ in range(runs):
            total = rng.integers(12, 41, batches)
            good = rng.binomial(total, expit(0.9 + 0.45 * rng.normal(size=batches)))
            found = pool(good, total, {"group": np.arange(batches) % number}, draws=2000, seed=int(rng.integers(1e6)))
            effect = found.effects["group"]
            sure = max((effect[:, a] > effect[:, b]).mean() for a in range(number) for b in range(number) if a != b)
            any_clear, any_may = any_clear + (sure >= CLEAR), any_may + (sure >= MAY)
        print(
            f"{number} groups in {batches} batches, none differ: any clear {any_clear / runs:.3f}, any may "
            f"{any_may / runs:.3f}",
            flush=True,
        )


def intervals(runs):
    """How often the 95 % interval of a group's share holds the truth."""
    for number, batches, spread in ((6, 24, 0.0), (6, 24, 0.3), (6, 24, 0.7), (20, 60, 0.5)):
        rng, held = np.random.default_rng(6), []
        for _ in range(runs):
            effect = spread * rng.normal(size=number)
            code, total = np.arange(batches) % number, rng.integers(12, 41, batches)
            good = rng.binomial(total, expit(0.9 + effect[code] + 0.45 * rng.normal(size=batches)))
            found = pool(good, total, {"group": code}, draws=1500, seed=int(rng.integers(1e6)))
            # Rows differ about their group, so its share is the mean over them.
            truth = expit(0.9 + effect[:, None] + 0.45 * np.linspace(-2.5, 2.5, 41))
            weight = np.exp(-0.5 * np.linspace(-2.5, 2.5, 41) ** 2)
            truth = truth @ weight / weight.sum()
            low, high = np.quantile(expit(found.level[:, None] + found.effects["group"]), [0.025, 0.975], axis=0)
            held += list((low <= truth) & (truth <= high))
        print(f"{number} groups, spread {spread}: held {np.mean(held):.3f}", flush=True)


if __name__ == "__main__":
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 100
    for name, run in (("groups", groups), ("intervals", intervals), ("changes", changes)):
        if len(sys.argv) < 3 or sys.argv[2] == name:
            run(count)
