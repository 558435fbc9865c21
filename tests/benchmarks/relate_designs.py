"""False alarms and power of the clear sign, design by design, in seasons made apart from the analysis.

Run: python tests/benchmarks/relate_designs.py [seasons] [part of a design's name] [first seed]
Designs: those of single-window tables (20 batches, 5 exposed, ...), and one to three seasons and a club of small
keepers, with what troubles a comparison: a season that drifts, one bad machine, a flock that ages, counts written down
wrongly, keepers that differ. A season is only its counts and doses here; the verdict's two tests are the kit's own.
`upper` is the one-sided 95 % limit of the simulation (Clopper and Pearson 1934, Biometrika 26:404).
"""

from __future__ import annotations

import sys

import numpy as np
import pandas as pd
from scipy.stats import beta

from hatchkit.relate.design import design as coded
from hatchkit.relate.hazard import enough_to_test, weigh_chance
from hatchkit.relate.redrawn import redrawn
from hatchkit.relate.verdict import rules

START = pd.Timestamp("2021-03-01", tz="UTC")


def plain(rng, ratio, *, batches, exposed, eggs, loss, spread):
    """One window, equal batches, exposures by lot."""
    hit = np.zeros(batches)
    hit[rng.permutation(batches)[:exposed]] = 1
    hazard = -np.log1p(-loss) * np.exp(spread * rng.normal(size=batches) + np.log(ratio) * hit)
    died = rng.binomial(eggs, -np.expm1(-hazard))
    return pd.DataFrame(
        {
            "batch": np.arange(batches).astype(str),
            "window": 1,
            "days": 7.0,
            "at_risk": eggs,
            "died": died,
            "dose": hit,
        }
    )


def years(rng, ratio, *, seasons=1, keepers=1, batches=8, exposed=2, machines=2, loss=0.14, spread=None, trouble=""):
    """Small seasons in three windows; two batches of each meet an excursion in one window (the middle one)."""
    rows = []
    wander = rng.normal(0, 0.4, keepers) if "keepers" in trouble else np.zeros(keepers)
    machine = rng.normal(0, 0.15, (keepers, machines))
    if "machine" in trouble:
        machine[:, 0] += 0.7
    sd = rng.uniform(0.3, 0.5) if spread is None else spread
    for keeper in range(keepers):
        for season in range(seasons):
            year = rng.normal(0, 0.2)
            hit = rng.permutation(batches)[:exposed]
            if "machine" in trouble:  # the bad machine is the one that runs hot
                hit = rng.permutation(
                    np.r_[np.arange(0, batches, machines), np.arange(0, batches, machines), np.arange(batches)]
                )
                hit = np.array(list(dict.fromkeys(hit))[:exposed])
            if "trend" in trouble or "flock" in trouble:  # excursions come in the hot half of the season
                hit = rng.permutation(
                    np.r_[np.arange(batches // 2, batches), np.arange(batches // 2, batches), np.arange(batches)]
                )
                hit = np.array(list(dict.fromkeys(hit))[:exposed])
            slope = (0.5 if "trend" in trouble else 0.0) + (0.4 if "flock" in trouble else 0.0)
            for batch in range(batches):
                level = wander[keeper] + machine[keeper, batch % machines] + year + sd * rng.normal()
                level += slope * (batch / (batches - 1) - 0.5)
                left, key = int(rng.integers(24, 41)), f"{keeper}-{season}-{batch}"
                for window, share in enumerate((0.3, 0.2, 0.5)):
                    hazard = -np.log1p(-loss) * share * np.exp(level)
                    dose = float(window == 1 and batch in hit)
                    died = int(rng.binomial(left, -np.expm1(-hazard * ratio**dose)))
                    if "counts" in trouble and rng.random() < 0.1:
                        died = int(np.clip(died + rng.integers(-2, 3), 0, left))
                    start = START + pd.Timedelta(days=365 * season + 12 * batch)
                    rows.append(
                        (
                            key,
                            window,
                            7.0,
                            left,
                            died,
                            dose,
                            f"m{batch % machines} {keeper}",
                            season,
                            f"k{keeper}",
                            start,
                        )
                    )
                    left -= died
                    if left == 0:
                        break
    return pd.DataFrame(
        rows, columns=["batch", "window", "days", "at_risk", "died", "dose", "incubator", "season", "keeper", "start"]
    )


def _p(**given):
    return lambda rng, ratio: plain(rng, ratio, **given)


def _y(**given):
    return lambda rng, ratio: years(rng, ratio, **given)


#: Name -> (maker, hazard ratios beside 1).
DESIGNS = {
    "20/5 x 48, 2 %, sd 0.4": (_p(batches=20, exposed=5, eggs=48, loss=0.02, spread=0.4), (3,)),
    "6/2 x 48, 2 %, sd 0.4": (_p(batches=6, exposed=2, eggs=48, loss=0.02, spread=0.4), (3,)),
    "6/3 x 48, 2 %, sd 0.4": (_p(batches=6, exposed=3, eggs=48, loss=0.02, spread=0.4), (3,)),
    "20/5 x 150, 8 %, sd 0.4": (_p(batches=20, exposed=5, eggs=150, loss=0.08, spread=0.4), (1.5, 2)),
    "6/2 x 150, 8 %, sd 0.4": (_p(batches=6, exposed=2, eggs=150, loss=0.08, spread=0.4), (2,)),
    "20/5 x 48, 2 %, sd 0.8": (_p(batches=20, exposed=5, eggs=48, loss=0.02, spread=0.8), (3,)),
    "1 season x 8, 2 machines": (_y(), (3, 5)),
    "1 season x 8, 3 machines": (_y(machines=3), (3, 5)),
    "3 seasons x 8": (_y(seasons=3), (2, 3, 5)),
    "3 seasons x 8, trend": (_y(seasons=3, trouble="trend"), (3,)),
    "3 seasons x 8, bad machine": (_y(seasons=3, trouble="machine"), (3,)),
    "3 seasons x 8, flock ages": (_y(seasons=3, trouble="flock"), (3,)),
    "3 seasons x 8, counts wrong": (_y(seasons=3, trouble="counts"), (3,)),
    "1 season x 8, trend": (_y(trouble="trend"), (3,)),
    "1 season x 8, bad machine": (_y(trouble="machine"), (3,)),
    "club of 6 x 8, keepers differ": (_y(keepers=6, trouble="keepers"), (2, 3)),
    "club of 6 x 8, all troubles": (_y(keepers=6, trouble="keepers machine trend counts"), (2, 3)),
}


def clear(table, seed) -> bool:
    """Whether the verdict would be a clear sign, by its two tests alone."""
    limit, made = rules(), coded(table)
    if not enough_to_test(made):
        return False
    drawn = redrawn(made, seed=seed, draws=700)["more"]
    if not drawn <= limit["redrawn_chance"]:
        return False
    test = weigh_chance(made, draws=1000, seed=seed)[3]
    return bool(test["smallest"] > limit["guard_smallest"] or test["more"] <= limit["guard_chance"])


def upper(seen, seasons) -> float:
    return float(beta.ppf(0.95, seen + 1, seasons - seen)) if seen < seasons else 1.0


def main(seasons=400, only="", seed=7000):
    with_effect = min(max(seasons // 5, 30), 400)
    print(f"{seasons} seasons without effect, {with_effect} with, seed {seed}")
    for number, (name, (make, ratios)) in enumerate(DESIGNS.items()):
        if only not in name:
            continue
        rng = np.random.default_rng(seed + number)
        seen = sum(clear(make(rng, 1.0), int(rng.integers(1e6))) for _ in range(seasons))
        told = [
            f"x {ratio}: {np.mean([clear(make(rng, ratio), 1) for _ in range(with_effect)]):.3f}" for ratio in ratios
        ]
        print(
            f"{name:34} false alarm {seen / seasons:.3f} (upper {upper(seen, seasons):.3f})   " + "  ".join(told),
            flush=True,
        )


if __name__ == "__main__":
    main(*(int(part) if part.isdigit() else part for part in sys.argv[1:]))
