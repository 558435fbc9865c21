"""Can a case be guessed from what lies on its surface? Prints the table of results/course.md.

    python tests/benchmarks/course_guesser.py [--train 1000] [--cases 300] [--level second]

A guesser learns from the answers of other seeds (naive Bayes on binned features) and names the cause of new cases.
*Sealed* features must tell nothing: how many files and readings a case has, sizes of batches, which batch is asked,
storage, age and remarks of the other batches. *Honest* ones may tell what they tell: the asked batch's own days of
storage, age of hens and remark. Chance is the guesser that always names the commonest answer.
"""

from __future__ import annotations

import argparse

import numpy as np
import pandas as pd
from scipy import stats

from hatchkit import reference
from hatchkit.simulate.life import draw_lived

SEALED = (
    "readings",
    "machines",
    "eggs",
    "asked",
    "others_stored",
    "others_age",
    "others_told",
    "spread",
    "weighed",
    "rows",
    "species",
    "eggs_asked",
)
HONEST = ("stored", "age", "told")


def features(seed, level):
    """One row: answer, sealed and honest features of a case."""
    lived = draw_lived(seed, level_name=level, step_minutes=120)
    batches = lived.tables["batches"].set_index("batch")
    mine, others = batches.loc[lived.answer.batch], batches.drop(index=lived.answer.batch)
    listed = reference.load("case_remarks").set_index("remark")["cause"]
    told = [listed.get(note, "") for note in others["notes"]]
    log = lived.tables["readings"]
    return dict(
        cause=lived.causes[0] if lived.causes else "none",
        readings=len(log) // 200,
        machines=log["incubator"].nunique(),
        eggs=int(batches["eggs_set"].sum()) // 10,
        asked=lived.answer.batch,
        others_stored=int(others["stored_days"].max()) // 3,
        others_age=int(others["flock_age_weeks"].max()) // 8,
        others_told=next((name for name in told if name), ""),
        spread=int((batches["set_at"].max() - batches["set_at"].min()).days) // 8,
        weighed=len(lived.tables["weights"]) // 8,
        rows=len(lived.tables["eggs"]) // 40,
        species=mine["species"],
        eggs_asked=int(mine["eggs_set"]) // 4,
        stored=int(mine["stored_days"]) // 2,
        age=int(mine["flock_age_weeks"]) // 5,
        told=listed.get(mine["notes"], ""),
    )


def guess(train, test, names):
    """Share of the test's answers that naive Bayes on `names` names first."""
    classes, counts = np.unique(train["cause"], return_counts=True)
    score = np.tile(np.log(counts / counts.sum()), (len(test), 1))
    for name in names:
        values = sorted(set(train[name]) | set(test[name]), key=str)
        table = pd.crosstab(train["cause"], train[name]).reindex(index=classes, columns=values, fill_value=0) + 0.5
        table = np.log(table.div(table.sum(axis=1), axis=0))
        score += table[test[name]].to_numpy().T
    return float((classes[score.argmax(axis=1)] == test["cause"].to_numpy()).mean())


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--train", type=int, default=1000)
    parser.add_argument("--cases", type=int, default=300)
    parser.add_argument("--level", default="second")
    parser.add_argument("--first-seed", type=int, default=200_000)
    options = parser.parse_args()
    rows = pd.DataFrame(
        [features(options.first_seed + number, options.level) for number in range(options.train + options.cases)]
    )
    train, test = rows[: options.train], rows[options.train :]
    chance = guess(train, test, ())
    low, high = stats.binom(options.cases, chance).ppf([0.025, 0.975]) / options.cases
    print(f"{options.train} cases learned, {options.cases} guessed, level {options.level}")
    print(f"always the commonest answer            {100 * chance:.0f} % (luck: {100 * low:.0f} to {100 * high:.0f})")
    print(f"sealed features ({len(SEALED)})                   {100 * guess(train, test, SEALED):.0f} %")
    for name in HONEST:
        print(f"honest: {name:10}                     {100 * guess(train, test, (name,)):.0f} %")
    print(f"honest together                        {100 * guess(train, test, HONEST):.0f} %")
    print(f"honest and sealed together             {100 * guess(train, test, HONEST + SEALED):.0f} %")
