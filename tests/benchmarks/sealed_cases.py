"""Sealed cases: how often is the planted cause named? Prints a table like those of results/causes.md.

    python tests/benchmarks/sealed_cases.py [--each 9] [--null 120] [--minutes 12]

Each of the simulator's causes is planted `each` times per severity, and `null` seasons have none. The score
sees the season only; the answer is opened after it has spoken. Its constants were set on seeds from 50000 to
59999; the seeds here start at 910000. What this measures is recovery in the simulator's world, whose faults rest on
the same published effects as the score: a person's records hold troubles that no simulator knows.
"""

from __future__ import annotations

import argparse
import time

import numpy as np
import pandas as pd

from hatchkit.advice.causes import likely_causes
from hatchkit.advice.poor_hatch import poorest_batch
from hatchkit.simulate.causes import SEVERITIES, cause_names
from hatchkit.simulate.seasons import draw_season

FIRST_SEED = 910_000

#: The simulator's faults in the words of ``reference/causes.csv``.
MEANT = {
    "power_cut": "cold_spell",
    "drift_cool": "cold_spell",
    "lid_ajar": "cold_spell",
    "drift_warm": "heat_spell",
    "overheating": "heat_spell",
    "long_storage": "long_storage",
    "low_fertility": "infertile",
    "old_flock": "old_flock",
    "humidity_low": "too_dry",
    "humidity_high": "too_humid",
    "dry_hatch": "dry_hatch",
    "turning_fault": "turning",
    "probe_high": "cool_throughout",
    "probe_low": "warm_throughout",
    "contaminated": "contamination",
}


def case(*, seed, cause, severity) -> dict:
    """Draw one season with a cause, ask about its batch, and compare."""
    season, answer = draw_season(seed=seed, cause=cause, severity=severity)
    told = likely_causes(season, answer.batch)
    place = int(told.table.set_index("cause").at[MEANT[cause], "rank"])
    return dict(
        cause=cause,
        severity=severity,
        seed=seed,
        place=place,
        said=told.table["cause"].iloc[0],
        verdict=told.verdict,
    )


def null_case(*, seed, spread=None, ask="poorest") -> dict:
    """Draw a season without a cause and ask about its poorest batch (or the one a person happens to ask about)."""
    season, answer = draw_season(seed=seed, cause="none", parameters={} if spread is None else {"batch_sd": spread})
    batch = poorest_batch(season) if ask == "poorest" else answer.batch
    told = likely_causes(season, batch)
    return dict(ask=ask, spread=spread, seed=seed, said=told.table["cause"].iloc[0], verdict=told.verdict)


def run(*, each, null, minutes=60.0, first_seed=FIRST_SEED):
    """All cases, in turns over causes so that a run cut short is still balanced; (cases, nulls)."""
    ends, cases, nulls, number = time.process_time() + 60 * minutes, [], [], 0
    names = [name for name in cause_names() if name != "none"]
    for turn in range(max(each, -(-null // 20))):
        for severity in SEVERITIES[::-1]:
            for name in names if turn < each else ():
                number += 1
                if time.process_time() < ends:
                    cases.append(case(seed=first_seed + number, cause=name, severity=severity))
        for place in range(20):
            number += 1
            if turn * 20 + place < null and time.process_time() < ends:
                kind = (dict(), dict(ask="asked"), dict(spread=0.8), dict())[place % 4]
                nulls.append(null_case(seed=first_seed + number, **kind))
    return pd.DataFrame(cases), pd.DataFrame(nulls)


def summary(cases) -> pd.DataFrame:
    """Per severity: true cause first and in the first three, cannot tell or bad luck said, confident verdicts."""
    meant = cases["cause"].map(MEANT)
    share = meant.map(pd.Series(MEANT).value_counts(normalize=True))
    top3 = pd.Series(MEANT).value_counts(normalize=True).head(3)
    table = cases.assign(
        first=cases["place"] == 1,
        three=cases["place"] <= 3,
        untold=cases["verdict"] == "cannot tell",
        luck=cases["verdict"] == "bad luck",
        confident=cases["verdict"] == "confident",
        wrong=(cases["verdict"] == "confident") & (cases["place"] > 1),
        commonest=np.where(share == share.max(), 1.0, 0.0),
        three_commonest=meant.isin(top3.index),
    )
    order = [name for name in SEVERITIES[::-1] if name in set(cases["severity"])]
    return (
        table.groupby("severity")
        .agg(
            seasons=("first", "size"),
            first=("first", "mean"),
            first_three=("three", "mean"),
            cannot_tell=("untold", "mean"),
            bad_luck=("luck", "mean"),
            confident=("confident", "mean"),
            confident_and_wrong=("wrong", "mean"),
            naming_the_commonest=("commonest", "mean"),
            naming_the_three_commonest=("three_commonest", "mean"),
        )
        .loc[order]
    )


def null_summary(nulls) -> pd.DataFrame:
    """Seasons without a cause: how often one is named with confidence, as probable, or not at all."""
    if nulls.empty:
        return nulls
    table = nulls.assign(
        spread=nulls["spread"].fillna(0.3),
        confident=nulls["verdict"] == "confident",
        probable=nulls["verdict"] == "probable",
        luck=nulls["verdict"] == "bad luck",
        untold=nulls["verdict"] == "cannot tell",
    )
    return table.groupby(["ask", "spread"]).agg(
        seasons=("luck", "size"),
        confident=("confident", "mean"),
        probable=("probable", "mean"),
        cannot_tell=("untold", "mean"),
        bad_luck=("luck", "mean"),
    )


def main() -> None:
    """Run and print."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--each", type=int, default=9)
    parser.add_argument("--null", type=int, default=120)
    parser.add_argument("--minutes", type=float, default=12.0, help="of one core")
    args = parser.parse_args()
    started = time.process_time()
    cases, nulls = run(each=args.each, null=args.null, minutes=args.minutes)
    pd.set_option("display.width", 200)
    print(summary(cases).round(2).to_string())
    print(
        cases.assign(first=cases["place"] == 1)
        .pivot_table(index="cause", columns="severity", values="first")
        .round(2)
        .to_string()
    )
    print(null_summary(nulls).round(3).to_string())
    print(f"{len(cases) + len(nulls)} seasons in {time.process_time() - started:.0f} s of one core")


if __name__ == "__main__":
    main()
