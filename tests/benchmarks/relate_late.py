"""What if the embryos that an excursion killed are only found at the look after? Verdict and side remark.

Run: python tests/benchmarks/relate_late.py [seasons]      (prints a table; about 0.2 s a season)
20 batches of 48 eggs, three windows, 5 batches exposed in the first or second, one spread per batch (sd 0.4).
"""

from __future__ import annotations

import sys

import numpy as np
import pandas as pd

from hatchkit.relate.design import design
from hatchkit.relate.hazard import relate_counts
from hatchkit.relate.late import next_windows

BATCHES, EGGS, HIT, SPREAD = 20, 48, 5, 0.4
BASE = np.log([0.03, 0.02, 0.05])


def season(rng, ratio, late):
    """Counts of one season; the share `late` of those that the excursion killed is found one look later."""
    rows = []
    for batch in range(BATCHES):
        hit = rng.integers(2) if batch < HIT else -1
        left, carried, effect = EGGS, 0, SPREAD * rng.normal()
        for window, base in enumerate(BASE):
            hazard = np.exp(base + effect)
            own = rng.binomial(left - carried, -np.expm1(-hazard))
            killed = rng.binomial(left - carried - own, -np.expm1(-(ratio - 1) * hazard)) if window == hit else 0
            hidden = rng.binomial(killed, late)
            died = own + carried + killed - hidden
            rows.append([str(batch), window + 1, 7.0, left, died, float(window == hit)])
            left, carried = left - died, hidden
    return pd.DataFrame(rows, columns=["batch", "window", "days", "at_risk", "died", "dose"])


def main(seasons=300):
    print(f"{seasons} seasons a row")
    print(f"{'hazard ratio':>13}{'found late':>12}{'clear sign':>12}{'median ratio':>14}{'remark made':>13}")
    for row, (ratio, late) in enumerate([(1.0, 0.0), (3.0, 0.0), (3.0, 0.5), (3.0, 1.0), (5.0, 1.0)]):
        rng = np.random.default_rng(300 + row)
        clear, ratios, told = [], [], []
        for _ in range(seasons):
            table = season(rng, ratio, late)
            found = relate_counts(table, detect=False, with_excess=False, draws=2000, seed=int(rng.integers(1e6)))
            after = next_windows(design(table)).iloc[-1]
            clear.append(found.verdict == "clear sign")
            ratios.append(found.effect["hazard_ratio"])
            told.append(after["died"] > after["high"])
        print(
            f"{ratio:13.0f}{late:12.1f}{np.mean(clear):12.3f}{np.median(ratios):14.2f}{np.mean(told):13.3f}",
            flush=True,
        )


if __name__ == "__main__":
    main(*(int(part) for part in sys.argv[1:2]))
