"""Time of `relate_counts` for 60 batches beside one statsmodels GLM fit of the same table, in the same run.

Run: python tests/benchmarks/relate_speed.py      (prints the ratio; wanted: at most 100)
`relate_counts` here does 10,000 permutations, the model with its interval, the excess deaths and what the
season could have shown.
"""

from __future__ import annotations

import time

import numpy as np
import pandas as pd
import statsmodels.api as sm

from hatchkit.relate.hazard import relate_counts


def season(rng, batches=60, windows=3, exposed=15):
    """Deaths of 48 eggs a batch; one exposed window in a quarter of the batches."""
    rows = []
    for batch in range(batches):
        left, hit, effect = 48, rng.integers(windows), 0.4 * rng.normal()
        for window in range(windows):
            dose = (1 + rng.random()) * (batch < exposed and window == hit)
            died = rng.binomial(left, -np.expm1(-0.025 * np.exp(effect + 0.7 * dose)))
            rows.append((str(batch), window, 7.0, left, died, dose))
            left -= died
    return pd.DataFrame(rows, columns=["batch", "window", "days", "at_risk", "died", "dose"])


def fit(table, columns):
    """One GLM fit of the table, columns at hand."""
    family = sm.families.Binomial(link=sm.families.links.CLogLog())
    counts = np.column_stack([table["died"], table["at_risk"] - table["died"]])
    return sm.GLM(counts, columns, family=family, offset=np.log(table["days"])).fit()


def fastest(call, rounds):
    """Least and middle processor time of some rounds, s (other work on the machine does not count)."""
    times = []
    for _ in range(rounds):
        start = time.process_time()
        call()
        times.append(time.process_time() - start)
    return min(times), sorted(times)[len(times) // 2]


def main():
    table = season(np.random.default_rng(5))
    columns = np.column_stack([np.eye(3)[table["window"]], table["dose"]])
    fit(table, columns), relate_counts(table)
    one, one_usual = fastest(lambda: fit(table, columns), 40)
    whole, whole_usual = fastest(lambda: relate_counts(table), 10)
    asked, asked_usual = fastest(lambda: relate_counts(table, detect=False), 10)
    print(f"one GLM fit: {1000 * one:.2f} ms at best, {1000 * one_usual:.2f} ms usually")
    print(
        f"permutations, model, excess deaths: {1000 * asked:.0f} ms, {asked / one:.0f} x (best); "
        f"{asked_usual / one_usual:.0f} x (usual)"
    )
    print(
        f"the same with what could have shown: {1000 * whole:.0f} ms, {whole / one:.0f} x (best); "
        f"{whole_usual / one_usual:.0f} x (usual)"
    )


if __name__ == "__main__":
    main()
