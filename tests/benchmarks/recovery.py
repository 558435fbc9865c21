"""Do hatchkit's answers hold what was planted? ``python tests/benchmarks/recovery.py [SEASONS]`` prints shares.

Seasons are drawn in memory (the tests do the same on a few that went through files).
"""

import sys

import numpy as np
import pandas as pd

from hatchkit.climate.probes import probe_truth
from hatchkit.relate.relation import relate_losses
from hatchkit.simulate import draw_season
from hatchkit.simulate.causes import KILLS


def planted_excess(answer, relation) -> int:
    """Embryos killed by the planted fault that were found in the windows which the log calls exposed."""
    exposed = relation.exposure.loc[relation.exposure["dose"] > 0, ["batch", "name"]]
    eggs = answer.eggs.assign(name=answer.eggs["out_at"])
    mine = eggs[eggs["died_of"].isin(KILLS[answer.cause])].merge(exposed, on=["batch", "name"])
    # clears hold deaths of the first days; a window's deaths do not count them
    seen = mine.apply(lambda egg: egg["name"] == "hatch" or egg[egg["name"]] == "dead", axis=1)
    return int(seen.sum()) if len(mine) else 0


#: Hot spells that harm nobody: what is then found is a false alarm.
HARMLESS = {f"heat_half_day{day}": 1e9 for day in (3, 7, 11, 16, 19)} | {"lethal_c": 99}


def one_excess(seed, cause, severity, harm=True):
    season, answer = draw_season(
        seed=seed, cause=cause, severity=severity, times=4, batches=14, parameters=None if harm else HARMLESS
    )
    relation = relate_losses(season, draws=2000)
    row = {"cause": cause if harm else f"{cause}, harmless", "verdict": relation.verdict}
    if len(relation.excess):
        total = relation.excess.iloc[-1]
        truth = planted_excess(answer, relation)
        low, high = total["excess_low"], total["excess_high"]
        row |= {"truth": truth, "excess": total["excess"], "holds": low <= truth <= high, "width": high - low}
    return row


def one_probe(seed, severity):
    season, answer = draw_season(seed=seed, cause="probe_high", severity=severity, batches=8)
    table = probe_truth(season).set_index("incubator")
    machine = answer.causes["incubator"].iloc[0]
    truth = answer.causes["size"].iloc[0]
    rows = []
    for name, row in table.iterrows():
        wanted = truth if name == machine else 0.0
        rows.append(
            {
                "planted": wanted,
                "found": row["clock_bias_c"],
                "holds": row["clock_low_c"] <= wanted <= row["clock_high_c"],
            }
        )
    return rows


def main(seasons=60):
    rows = [
        one_excess(seed, cause, "moderate", harm)
        for cause, harm in (("overheating", False), ("overheating", True), ("drift_cool", True))
        for seed in range(seasons)
    ]
    table = pd.DataFrame(rows)
    print(pd.crosstab(table["verdict"], table["cause"], normalize="columns").round(3).to_string())
    print(
        table.dropna(subset=["truth"])
        .groupby("cause")
        .agg(
            seasons=("truth", "size"),
            truth=("truth", "mean"),
            excess=("excess", "mean"),
            width=("width", "median"),
            share_holding=("holds", lambda held: np.mean(held.astype(bool))),
        )
        .round(3)
    )
    probes = pd.DataFrame([row for seed in range(seasons) for row in one_probe(seed, "mild")])
    print(
        probes.groupby("planted")
        .agg(machines=("found", "size"), found=("found", "mean"), sd=("found", "std"), share_holding=("holds", "mean"))
        .round(3)
    )


if __name__ == "__main__":
    main(*map(int, sys.argv[1:2]))
