"""How often do the 95 % bands of ages at death hold the truth at the sizes that people have?

    python tests/benchmarks/death_age_coverage.py [--seasons 200]

Prints, for usual and heavy losses and a spread of 0 to 0.8 between batches (sd on the cloglog scale), the coverage
of the loss by each of four looks and of the daily risk before it, %. Standard error at 200 seasons: 1.5 points.
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "losses"))

from age_trials import HEAVY, USUAL, cover


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    options.add_argument("--seasons", type=int, default=200)
    options = options.parse_args()
    random = np.random.default_rng(7)
    for name, deaths in (("usual", USUAL), ("heavy", HEAVY)):
        for batches, eggs in ((3, 48), (6, 48), (6, 150), (12, 48), (12, 150)):
            for sd in (0.0, 0.4, 0.8):
                held, kept = cover(random, deaths, batches=batches, eggs=eggs, sd=sd, seasons=options.seasons)
                loss, risk = (" ".join(f"{100 * part:5.1f}" for part in row) for row in (held, kept))
                print(f"{name} {batches:3} x {eggs:3}, sd {sd}: loss {loss}   risk {risk}", flush=True)


if __name__ == "__main__":
    main()
