"""False alarms, coverage and power of `relate_counts` in harder settings than one window and equal batches.

Run: python tests/benchmarks/relate_settings.py [seasons] [part of a setting's name] [seed]
(prints a table; about 0.05 s a season). Every season goes through `relate_counts` itself. `upper` is the
one-sided 95 % simulation limit of the false alarms (Clopper and Pearson 1934, Biometrika 26:404).
"""

from __future__ import annotations

import sys
import time

import numpy as np
import pandas as pd

from hatchkit.relate.hazard import relate_counts
from hatchkit.relate.measures import PARTS
from hatchkit.relate.turns import turned_doses

QUICK = dict(detect=False, with_excess=False, draws=2000)
START = pd.Timestamp("2024-03-01", tz="UTC")


def table_of(rng, doses, log_base, effects, ratio, eggs):
    """Deaths window after window: doses, log hazards and effects are (batches, windows); eggs (batches,)."""
    left, rows = eggs.copy(), []
    for window in range(doses.shape[1]):
        hazard = np.exp(log_base[window] + effects[:, window] + np.log(ratio) * np.nan_to_num(doses[:, window]))
        died = rng.binomial(left, -np.expm1(-hazard))
        rows.append(
            pd.DataFrame(
                {
                    "batch": np.arange(len(left)).astype(str),
                    "window": window + 1,
                    "days": 7.0,
                    "at_risk": left,
                    "died": died,
                    "dose": doses[:, window],
                }
            )
        )
        left = left - died
    return pd.concat(rows, ignore_index=True)


def several_windows(rng, ratio, *, batches=20, shared=True, spread=0.4, whole=False, patchy=False):
    """Three windows, graded doses in 5 batches (in one window each, or in all), unequal batches."""
    doses = np.zeros((batches, 3))
    for batch, dose in enumerate(rng.permutation([2, 5, 10, 15, 28])):
        doses[batch, slice(None) if whole else rng.integers(3)] = dose / 12.0
    effects = spread * (np.repeat(rng.normal(size=(batches, 1)), 3, 1) if shared else rng.normal(size=(batches, 3)))
    eggs = rng.choice([12, 24, 36, 48, 72, 100], batches)
    table = table_of(rng, doses, np.log([0.03, 0.02, 0.05]), effects, ratio, eggs)
    if patchy:
        lost = (table["window"] == 2) & table["batch"].isin([str(b) for b in range(0, batches, 3)])
        table = table[~lost]
        table.loc[rng.random(len(table)) < 0.15, "dose"] = np.nan
    # The truth is stated at the mean dose of the exposed windows, as the kit states its estimate.
    hit = table["dose"] > 0
    return table, {}, np.log(ratio) * (table.loc[hit, "dose"].mean() if hit.any() else 1.0)


def storage(rng, ratio, *, batches=20):
    """Storage days act on the losses and go with exposure."""
    stored = rng.integers(1, 15, batches)
    order = np.argsort(-(stored + rng.normal(0, 4, batches)))
    doses = np.zeros((batches, 1))
    doses[order[:5]] = 1.0
    effects = 0.4 * rng.normal(size=(batches, 1)) + 0.08 * (stored[:, None] - 7)
    table = table_of(rng, doses, np.log([0.04]), effects, ratio, np.full(batches, 48))
    table["stored_days"] = stored[table["batch"].astype(int)]
    return table, {}, np.log(ratio)


def incubators(rng, ratio, *, batches=24, machines=3):
    """Incubators differ (sd 0.6) and share the exposed batches unevenly; compared within incubators."""
    machine = np.arange(batches) % machines
    chance = np.where(machine == 0, 0.6, 0.15)
    hit = rng.permutation(batches)[:0]
    while not 3 <= len(hit) <= 10:
        hit = np.flatnonzero(rng.random(batches) < chance)
    doses = np.zeros((batches, 1))
    doses[hit] = 1.0
    effects = 0.4 * rng.normal(size=(batches, 1)) + 0.6 * rng.normal(size=machines)[machine][:, None]
    table = table_of(rng, doses, np.log([0.05]), effects, ratio, np.full(batches, 48))
    table["incubator"] = np.array(list("ABC"))[machine[table["batch"].astype(int)]]
    return table, {}, np.log(ratio)


def one_incubator(rng, ratio, *, batches=20):
    """All five exposed batches, and no other, in one of four incubators."""
    doses = np.zeros((batches, 1))
    doses[:5] = 1.0
    effects = 0.4 * rng.normal(size=(batches, 1)) + np.repeat(0.6 * rng.normal(size=4), 5)[:, None]
    table = table_of(rng, doses, np.log([0.04]), effects, ratio, np.full(batches, 48))
    table["incubator"] = np.repeat(list("ABCD"), 5)[table["batch"].astype(int)]
    return table, {}, np.log(ratio)


def overlapping(rng, ratio, *, batches=30, drift=0.6, faults=1, days=14, turn=True):
    """Weekly batches in one machine, one long fault, losses drifting through the season (AR(1) 0.8)."""
    weeks = batches + 3
    heat = np.zeros(weeks * 168)
    for begin in rng.integers(0, len(heat) - days * 24, faults):
        heat[begin : begin + days * 24] = 0.5
    rate = pd.DataFrame({PARTS[0]: heat, PARTS[1]: 0.0}, index=pd.date_range(START, periods=len(heat), freq="h"))
    when = [(batch, window) for window in range(3) for batch in range(batches)]
    spans = pd.DataFrame(
        {
            "incubator": "A",
            "start": [START + pd.Timedelta(weeks=b + w) for b, w in when],
            "end": [START + pd.Timedelta(weeks=b + w + 1) for b, w in when],
        }
    )
    turned = turned_doses(spans, {"A": rate})
    doses = turned[0].reshape(3, batches).T
    wander = np.zeros(batches)
    wander[0] = rng.normal()
    for batch in range(1, batches):
        wander[batch] = 0.8 * wander[batch - 1] + 0.6 * rng.normal()
    effects = np.repeat((0.4 * rng.normal(size=batches) + drift * wander)[:, None], 3, 1)
    step = doses[doses > 0].mean()
    table = table_of(rng, doses / step, np.log([0.03, 0.02, 0.05]), effects, ratio, np.full(batches, 48))
    table["dose"] = turned[0]
    return table, {"turned": turned} if turn else {}, np.log(ratio)


SETTINGS = {
    "3 windows, graded, batch effect shared": several_windows,
    "3 windows, graded, effect per window": lambda rng, r: several_windows(rng, r, shared=False),
    "3 windows, sd 0.8, shared": lambda rng, r: several_windows(rng, r, spread=0.8),
    "3 windows, exposed in all three, shared": lambda rng, r: several_windows(rng, r, whole=True),
    "3 windows, exposed in all, sd 0.8": lambda rng, r: several_windows(rng, r, whole=True, spread=0.8),
    "3 windows, looks missing, 15 % unlogged": lambda rng, r: several_windows(rng, r, patchy=True),
    "8 batches, 3 windows": lambda rng, r: several_windows(rng, r, batches=8),
    "40 batches, 3 windows": lambda rng, r: several_windows(rng, r, batches=40),
    "storage acts and goes with exposure": storage,
    "three incubators, sd 0.6, strata": incubators,
    "all exposed in one incubator": one_incubator,
    "weekly overlap, 14-day fault, drift": overlapping,
    "the same without drift": lambda rng, r: overlapping(rng, r, drift=0.0),
    "three 2-day faults, drift": lambda rng, r: overlapping(rng, r, faults=3, days=2),
    "fault and drift, batches exchanged (why not)": lambda rng, r: overlapping(rng, r, turn=False),
}


COLUMNS = ["false alarm", "upper", "chance <= .05", "coverage HR 1", "power HR 3", "coverage HR 3", "not apart"]


def run(make, ratio, seasons, seed):
    """Share of clear signs, of coverage, and of the verdict that names the incubator."""
    rng = np.random.default_rng(seed)
    clear, named, held, chance = [], [], [], []
    for _ in range(seasons):
        table, how, truth = make(rng, ratio)
        found = relate_counts(table, seed=int(rng.integers(1e6)), **QUICK, **how)
        clear.append(found.verdict == "clear sign")
        named.append(found.verdict == "not apart")
        if found.effect and np.isfinite(found.effect["low"]):
            held.append(np.log(found.effect["low"]) <= truth <= np.log(found.effect["high"]))
        chance.append(found.test["more"] <= 0.05)
    return np.mean(clear), np.mean(chance), np.mean(held), np.mean(named)


def upper(share, seasons):
    """One-sided 95 % upper limit of a share seen in so many seasons."""
    from scipy.stats import beta

    seen = round(share * seasons)
    return float(beta.ppf(0.95, seen + 1, seasons - seen)) if seen < seasons else 1.0


def main(seasons=300, only="", seed=100):
    print(f"{seasons} seasons without effect, {seasons // 2} with a hazard ratio of 3 at the usual dose, seed {seed}")
    print(f"{'setting':46}" + "".join(f"{name:>14}" for name in COLUMNS))
    for number, (name, make) in enumerate(SETTINGS.items()):
        if only not in name:
            continue
        start = time.time()
        none = run(make, 1.0, seasons, seed + number)
        harm = run(make, 3.0, seasons // 2, seed + 100 + number)
        values = [none[0], upper(none[0], seasons), none[1], none[2], harm[0], harm[2], max(none[3], harm[3])]
        print(f"{name:46}" + "".join(f"{value:14.3f}" for value in values), flush=True)
        print(f"{name}: {time.time() - start:.0f} s", file=sys.stderr)


if __name__ == "__main__":
    main(*(int(part) if part.isdigit() else part for part in sys.argv[1:]))
