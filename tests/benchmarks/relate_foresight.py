"""Does the harm that a season is said to be able to show come true? Foretold power beside clear signs.

Run: python tests/benchmarks/relate_foresight.py [seasons]      (prints a table)
One window, batches of 48 eggs, 3 % baseline, sd 0.4. Each season without effect foretells, from its own
counts, how often a hazard x 2, 4 or 10 would give a clear sign; beside it stands how often it did.
"""

from __future__ import annotations

import sys

import numpy as np
from relate_calibration import table_of
from relate_twin import GridBayes, draw, seasons_verdict

from hatchkit.relate.hazard import relate_counts
from hatchkit.relate.power import RATIOS

EGGS, BASE, SPREAD = 48, 0.03, 0.4


def main(seasons=60, trials=1000):
    print(f"{seasons} seasons that foretell, {trials} in which the verdict is counted")
    print(f"{'batches':>8}{'exposed':>9}{'hazard x':>10}{'foretold':>10}{'(10 % to 90 %)':>18}{'came true':>11}")
    grid = GridBayes(EGGS)
    for batches, exposed in ((8, 2), (10, 3), (20, 5), (40, 10)):
        rng = np.random.default_rng(900 + batches)
        died, _, hit = draw(rng, seasons, batches, exposed, EGGS, BASE, SPREAD, 1.0)
        told = [relate_counts(table_of(one, EGGS, hit), with_excess=False, draws=2000).detectable for one in died]
        told = np.array([found["power"] for found in told if len(found["power"])])
        for number, ratio in enumerate(RATIOS):
            harmed, _, _ = draw(rng, trials, batches, exposed, EGGS, BASE, SPREAD, ratio)
            true = seasons_verdict(harmed, EGGS, hit, grid)[-1].mean()
            low, high = np.percentile(told[:, number], [10, 90])
            print(
                f"{batches:8}{exposed:9}{ratio:10.0f}{told[:, number].mean():10.2f}{f'{low:.2f} to {high:.2f}':>18}"
                f"{true:11.2f}",
                flush=True,
            )


if __name__ == "__main__":
    main(*(int(part) for part in sys.argv[1:]))
