"""How much faster is `age_at_death` with its band than the same fits with a general survival library?

    python tests/benchmarks/age_at_death.py --library-python PYTHON [--fits 8]

PYTHON is the interpreter of an environment of its own with lifelines in it (that library needs pandas below 3).
The season: 60 invented batches x 300 eggs, candled on days that differ from batch to batch, a third of the dead
opened and narrowed to about a day. The library gets the distinct intervals with their eggs as weights, its best
case, and its left ends are moved by 1e-6, since it takes intervals as closed: with shared ends, all mass would
fall on the candling days. It fits the first draws of the same bootstrap; the time of one fit times 500 is compared
with the whole call, tables and all. Both log-likelihoods are computed here by the same formula.
"""

from __future__ import annotations

import argparse
import json
import subprocess
import sys
import time
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "losses"))

from tiny_season import tiny_season

from hatchkit.losses.death_age import _by_batch, _draw, _informative, age_at_death
from hatchkit.losses.interval_likelihood import innermost, masses
from hatchkit.losses.two_phase_shape import cumulative

CHILD = """
import json, sys, time, warnings
warnings.simplefilter("ignore")
import numpy as np
from lifelines.fitters.npmle import npmle
given = json.load(sys.stdin)
left, right = np.array(given["after"]) + 1e-6, np.array([np.inf if b is None else b for b in given["by"]])
fits, begun = [], time.perf_counter()
for weights in given["weights"]:
    keep = np.array(weights) > 0
    mass, spans = npmle(left[keep], right[keep], weights=np.array(weights)[keep], tol=given["tol"])
    fits.append([[float(s[0]), None if np.isinf(s[1]) else float(s[1]), float(m)] for s, m in zip(spans, mass)])
print(json.dumps({"seconds": time.perf_counter() - begun, "fits": fits}))
"""


def season(batches=60, eggs=300, seed=20):
    random = np.random.default_rng(seed)
    rows, opened = [], []
    for number in range(batches):
        looks = np.array([7 + random.integers(-4, 5) / 4, 14 + random.integers(-4, 5) / 4, 18.0, 21.5])
        edges = np.concatenate([[0.0], looks])
        lost = 0.15 * np.exp(random.normal(0, 0.4)) * cumulative(edges)
        *died, alive = random.multinomial(eggs, [*np.diff(lost), 1 - lost[-1]])
        rows.append(
            dict(
                batch=number,
                eggs_set=eggs,
                day1=looks[0],
                dead1=died[0],
                day2=looks[1],
                dead2=died[1],
                day3=18.0,
                dead3=died[2],
                dead_in_shell=died[3],
                hatched=alive,
            )
        )
        for window, name in enumerate(("candle1", "candle2", "transfer", "outcome")):
            for egg in range(died[window] // 3):
                stage = np.ceil(random.uniform(edges[window], edges[window + 1]))
                marks = {"candle1": "alive", "candle2": "alive", "transfer": "alive"}
                marks = (
                    {look: mark for look, mark in marks.items() if name not in look and look < name}
                    if name != "outcome"
                    else marks
                )
                opened.append(
                    dict(
                        batch=str(number),
                        egg=f"{name}{egg}",
                        stage_day=stage,
                        outcome="dead",
                        **({name: "dead"} if name != "outcome" else {}),
                        **marks,
                    )
                )
    return tiny_season(rows, eggs=opened)


def log_likelihood(after, by, weight, mass):
    """Of masses [(after, by, share)] at the intervals (after, by]."""
    spans = np.array([[a, np.inf if b is None else b, m] for a, b, m in mass])
    holds = (after[:, None] <= spans[:, 0] + 1e-5) & (spans[:, 1] <= by[:, None] + 1e-5)
    keep = weight > 0
    return float(np.sum(weight[keep] * np.log(holds[keep] @ spans[:, 2])))


def main():
    options = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    options.add_argument("--library-python", required=True)
    options.add_argument("--fits", type=int, default=8)
    options.add_argument("--tol", type=float, default=1e-7)
    options = options.parse_args()
    records = season()
    age_at_death(records, draws=2)  # imports
    begun = time.perf_counter()
    result = age_at_death(records)
    ours = time.perf_counter() - begun
    part = _informative(records)
    after, by, _, weight = _by_batch(part)
    drawn = _draw(weight, 500, np.random.default_rng(1))[: options.fits]
    ages, first, last = innermost(after, by)
    mass = masses(first, last, len(ages), drawn, gap=1e-3)
    given = {
        "after": after.tolist(),
        "by": [None if np.isinf(b) else b for b in by],
        "weights": drawn.tolist(),
        "tol": options.tol,
    }
    told = subprocess.run(
        [options.library_python, "-c", CHILD], input=json.dumps(given), capture_output=True, text=True, check=True
    )
    theirs = json.loads(told.stdout)
    gaps = []
    for place, fit in enumerate(theirs["fits"]):
        mine = log_likelihood(
            after,
            by,
            drawn[place],
            [(a, None if np.isinf(b) else b, m) for (a, b), m in zip(ages, mass[place], strict=True)],
        )
        gaps.append(mine - log_likelihood(after, by, drawn[place], fit))
    each = theirs["seconds"] / options.fits
    print(f"{len(after)} distinct intervals, {len(ages)} innermost, {result.fits['eggs'].iloc[0]:.0f} eggs")
    print(f"age_at_death with 500 draws: {ours:.2f} s")
    print(f"library: {each:.3f} s a fit ({options.fits} fits), 500 fits {500 * each:.1f} s")
    print(f"log-likelihood, ours less theirs: {min(gaps):+.6f} to {max(gaps):+.6f}")
    print(f"ratio {500 * each / ours:.0f} x")


if __name__ == "__main__":
    main()
