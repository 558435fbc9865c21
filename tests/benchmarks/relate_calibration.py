"""False alarms, coverage, power and coverage of the excess deaths, in every cell of a table of seasons.

Run: python tests/benchmarks/relate_calibration.py [seasons]      (prints the table; about ten minutes)
     python tests/benchmarks/relate_calibration.py alarms [seasons] [seed]      (false alarms and power only; a minute)
A quarter of the batches, at least two, is exposed. In each cell two seasons also go through
`relate_counts` itself and must give the same interval and verdict.
"""

from __future__ import annotations

import sys
import time
from itertools import product

import numpy as np
import pandas as pd
from relate_twin import DAYS, GridBayes, draw, permutation_share, seasons_verdict

from hatchkit.relate.hazard import relate_counts
from hatchkit.relate.verdict import rules

BATCHES, EGGS, BASES, SPREADS = (4, 6, 10, 20, 40), (12, 24, 48), (0.01, 0.02, 0.05), (0.0, 0.4, 0.8)


def cell(batches, eggs, base, spread, *, seasons, grid, seed):
    """One row of the table."""
    rng = np.random.default_rng(seed)
    exposed = max(2, batches // 4)
    row = {"batches": batches, "exposed": exposed, "eggs": eggs, "base": base, "sd": spread}
    for ratio, count in ((1.0, seasons), (3.0, seasons // 2)):
        died, spared, hit = draw(rng, count, batches, exposed, eggs, base, spread, ratio)
        _, _, low, high, clear = seasons_verdict(died, eggs, hit, grid)
        have = np.isfinite(low)
        covered = (low <= np.log(ratio)) & (np.log(ratio) <= high)
        tag = "hr1" if ratio == 1 else "hr3"
        row["clear_" + tag] = clear.mean()
        row["cover_" + tag] = covered[have].mean()
        some = slice(0, min(count, 600))
        would = grid.predictive(rng, died[some], hit)
        more = died[some][:, hit].sum(1)[:, None] - would
        truth = (died[some][:, hit] - spared[some][:, hit]).sum(1)
        ends = np.percentile(more, [2.5, 97.5], axis=1, method="inverted_cdf")
        row["excess_" + tag] = ((ends[0] <= truth) & (truth <= ends[1])).mean()
        row["gap_" + tag] = check(died[:2], eggs, hit, low[:2], high[:2], clear[:2])
    return row


def alarms(seasons=4000, seed=1000):
    """Clear signs without and with harm; the costly bounds only where chance alone would allow a clear sign."""
    limit = rules()["clear_chance"]
    rows = []
    for eggs in EGGS:
        grid = GridBayes(eggs)
        for batches, base, spread in product(BATCHES, BASES, SPREADS):
            rng = np.random.default_rng(seed + len(rows))
            exposed = max(2, batches // 4)
            row = {"batches": batches, "exposed": exposed, "eggs": eggs, "base": base, "sd": spread}
            for tag, ratio, count in (("none", 1.0, seasons), ("hr3", 3.0, seasons // 4)):
                died, _, hit = draw(rng, count, batches, exposed, eggs, base, spread, ratio)
                rare = permutation_share(died, eggs, hit)[0] <= limit
                row[tag] = seasons_verdict(died[rare], eggs, hit, grid)[-1].sum() / count if rare.any() else 0.0
            rows.append(row)
    table = pd.DataFrame(rows)
    print(
        f"share of clear signs: {seasons} seasons a cell without effect, {seasons // 4} with a hazard ratio of 3, "
        f"seed {seed}"
    )
    wide = table.pivot(index=["eggs", "base", "sd"], columns="batches", values=["none", "hr3"])
    print(wide.round(3).to_string())
    worst = table["none"].max()
    limit = worst + 1.645 * np.sqrt(worst * (1 - worst) / seasons)
    print(f"worst false alarm {worst:.4f} (upper 95 % simulation limit {limit:.4f})")


def check(died, eggs, hit, low, high, clear):
    """Largest gap between the vectorised ends and those of `relate_counts`; the verdicts must agree."""
    gap = 0.0
    for one, a, b, said in zip(died, low, high, clear, strict=True):
        if one.sum() == 0:
            continue
        found = relate_counts(table_of(one, eggs, hit), detect=False, with_excess=False)
        ends = np.log([found.effect["low"], found.effect["high"]])
        gap = max(gap, np.abs(ends - [a, b]).max())
        close = min(abs(a), abs(ends[0])) < 0.1
        assert close or said == (found.verdict == "clear sign"), (found.verdict, found.effect, a, b)
    return gap


def table_of(died, eggs, hit):
    """A one-window table of counts."""
    return pd.DataFrame(
        {
            "batch": np.arange(len(died)).astype(str),
            "window": 1,
            "days": DAYS,
            "at_risk": eggs,
            "died": died,
            "dose": hit.astype(float),
        }
    )


def main(seasons=2000):
    start = time.time()
    rows = []
    for eggs in EGGS:
        grid = GridBayes(eggs)
        for batches in BATCHES:
            for base in BASES:
                for spread in SPREADS:
                    rows.append(cell(batches, eggs, base, spread, seasons=seasons, grid=grid, seed=len(rows) + 11))
        print(f"{eggs} eggs done after {time.time() - start:.0f} s", file=sys.stderr)
    table = pd.DataFrame(rows)
    print(f"{seasons} seasons a cell without effect, {seasons // 2} with a hazard ratio of 3")
    print(table.round(3).to_string(index=False))
    summary(table, seasons)


def summary(table, seasons):
    """The worst cell of each claim."""
    worst = table["clear_hr1"].max()
    limit = worst + 1.645 * np.sqrt(worst * (1 - worst) / seasons)
    large = table[table["batches"] >= 6]
    print(f"worst false alarm {worst:.3f} (upper 95 % simulation limit {limit:.3f})")
    print(f"worst coverage with 6 or more batches: {large[['cover_hr1', 'cover_hr3']].min().min():.3f}")
    print(
        f"worst coverage of excess deaths: {table[['excess_hr1', 'excess_hr3']].min().min():.3f}"
        f" (6 or more batches: {large[['excess_hr1', 'excess_hr3']].min().min():.3f})"
    )
    print(f"largest gap to relate_counts: {table[['gap_hr1', 'gap_hr3']].max().max():.3f} on the log scale")


if __name__ == "__main__":
    numbers = [int(part) for part in sys.argv[1:] if part.isdigit()]
    (alarms if "alarms" in sys.argv else main)(*numbers)
