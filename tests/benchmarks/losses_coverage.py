"""How honest are the intervals and flags of losses at the sizes that people have?

    python tests/benchmarks/losses_coverage.py [--trials 2000] [--flag-seasons 60]

Prints: coverage of one batch's 95 % interval (exact), of the season's interval by trial, and how often ordinary
batches are called unusual. Rates 0.5 to 30 %; sd is the spread between batches on the cloglog scale.
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "losses"))

from coverage_trials import RATES, false_flags, one_batch, season_coverage


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    options.add_argument("--trials", type=int, default=2000)
    options.add_argument("--flag-seasons", type=int, default=60)
    options = options.parse_args()
    random = np.random.default_rng(11)
    print("One batch, mean over rates and worst rate")
    for method in ("wilson", "clopper_pearson", "jeffreys"):
        for eggs in (12, 24, 48, 300):
            rates, cover = one_batch(eggs, method)
            worst = int(np.argmin(cover))
            print(
                f"  {method:16} {eggs:4} eggs  {100 * cover.mean():5.1f} %   worst {100 * cover[worst]:5.1f} % "
                f"at {100 * rates[worst]:.1f} %"
            )
    print("Season, mean over rates and worst rate")
    for batches in (2, 3, 6, 12, 20, 60):
        for eggs in (12, 24, 48, 300):
            cells = []
            for sd in (0.0, 0.4, 0.8):
                cover = [
                    season_coverage(random, rate=rate, sd=sd, batches=batches, eggs=eggs, trials=options.trials)
                    for rate in RATES
                ]
                cells.append(f"sd {sd}: {100 * np.mean(cover):5.1f} ({100 * min(cover):5.1f})")
            print(f"  {batches:3} batches x {eggs:3}   " + "   ".join(cells))
    print("Nothing wrong: batches flagged / seasons with a flag / chances at most 5 % (all in %)")
    for batches, eggs in ((6, 12), (6, 48), (12, 24), (12, 48), (20, 48), (12, 300)):
        for sd in (0.0, 0.4, 0.8):
            cells = [
                false_flags(random, rate=rate, sd=sd, batches=batches, eggs=eggs, trials=options.flag_seasons)
                for rate in (0.02, 0.08, 0.20)
            ]
            print(
                f"  {batches:3} batches x {eggs:3}, sd {sd}   "
                + "   ".join(" / ".join(f"{100 * value:4.1f}" for value in cell) for cell in cells)
                + "   at 2, 8, 20 %"
            )


if __name__ == "__main__":
    main()
