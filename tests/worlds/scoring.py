"""How well the cause of a poor hatch is named in a world of invented seasons, beside what its own oracle could know.

Groups: severe, moderate, mild (one planted cause, every cause in turn), none (the poorest batch is asked about), pairs.
"Named" leaves out bad luck and causes not on the list; confident is a weight of 80 % and more of what is said first.
Every share has its n and a 95 % interval (Wilson).
"""

from __future__ import annotations

import argparse
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import pandas as pd

GROUPS = ("severe", "moderate", "mild", "none", "pairs")
UNNAMED = ("bad_luck", "unlisted")
SURE, FIRM = 0.9, 0.8


@dataclass(frozen=True)
class World:
    """What the score asks of a world.

    `make_season(seed, causes, severity, folder)` gives the truth as a dict (``batch_hit``, ``causes``, ``folder``,
    ``book``); `posterior(book, batch)` is the oracle, `poorest(book)` the batch asked about where nothing was planted.
    """

    name: str
    causes: tuple[str, ...]
    make_season: Callable
    posterior: Callable
    poorest: Callable


def kit(_world, season, batch, _truth):
    """What the kit says: {cause: weight}, first one first."""
    import hatchkit as hk

    told = hk.likely_causes(season, batch).table
    return dict(zip(told["cause"], told["share"].astype(float), strict=True))


def uniform(world, _season, _batch, truth):
    """A stub that knows nothing: all causes alike, in an order drawn anew for each season."""
    names = [*world.causes, "bad_luck"]
    np.random.default_rng(truth["seed"]).shuffle(names)
    return dict.fromkeys(names, 1 / len(names))


def oracle(world, _season, batch, truth):
    """The world's own posterior."""
    return world.posterior(truth["book"], batch)


ANSWERS = {"kit": kit, "uniform": uniform, "oracle": oracle}


def planted(world, group, place, seed):
    """Causes of the season at this place of a group: every cause in turn, in an order that the seed draws."""
    if group == "none":
        return None
    if group == "pairs":
        return tuple(str(name) for name in np.random.default_rng([*seed, 99]).choice(world.causes, 2, replace=False))
    order = np.random.default_rng([seed[0], seed[1], 98]).permutation(world.causes)
    return str(order[place % len(order)])


def score(weights, causes):
    """Marks of one answer ({cause: weight}, the first said first) against what was planted."""
    said = list(weights)
    named = [name for name in said if name not in UNNAMED]
    first = weights[named[0]]
    return {
        "first": named[0] in causes,
        "overall": said[0] in causes or (not causes and said[0] == "bad_luck"),
        "three": set(causes) <= set(named[:3]),
        "named": named[0],
        "said": said[0],
        "weight": first,
        "sure": first >= SURE,
        "firm": weights[said[0]] >= FIRM,
        "firm_cause": first >= FIRM and said[0] == named[0],
    }


def ask(world, group, place, seed, answer, beside):
    """One season: written, read, asked about. A season that can't be asked about stays in the table as such."""
    import hatchkit as hk

    causes, began = planted(world, group, place, seed), time.perf_counter()
    with tempfile.TemporaryDirectory() as name:
        truth = world.make_season(seed, causes, group if group in GROUPS[:3] else "severe", Path(name) / "season")
        season = hk.load_season(truth["folder"])
        written = time.perf_counter() - began
        truth["seed"] = seed
        batch = truth["batch_hit"] or world.poorest(truth["book"])
        row = {
            "group": group,
            "seed": str(seed),
            "cause": "+".join(truth["causes"]) or "none",
            "failed": "",
            "seconds": written,
        }
        try:
            row |= score(answer(world, season, batch, truth), truth["causes"])
        except Exception as error:  # a season that breaks the answer is a finding, and is printed
            return row | {"failed": f"{type(error).__name__}: {error}"}
    if beside:
        row |= {
            f"oracle_{key}": mark for key, mark in score(oracle(world, season, batch, truth), truth["causes"]).items()
        }
    return row


def share_of(marks):
    """Share with its Wilson interval and n, in words."""
    from statsmodels.stats.proportion import proportion_confint

    marks = np.asarray(marks, bool)
    if not len(marks):
        return "-"
    low, high = proportion_confint(int(marks.sum()), len(marks), method="wilson")
    return f"{100 * marks.mean():3.0f} % ({100 * low:.0f}-{100 * high:.0f}, n {len(marks)})"


def figures(rows, prefix=""):
    """The figures of one answerer: {line: words}."""
    part = _under(rows, prefix) if prefix else rows
    out, one = {}, part[part["group"].isin(GROUPS[:3])]
    for group in GROUPS[:3]:
        own = one[one["group"] == group]
        out |= {
            f"{group}: true cause first among the named": share_of(own["first"]),
            f"{group}: first overall, bad luck counted": share_of(own["overall"]),
            f"{group}: among the first three": share_of(own["three"]),
            f"{group}: confident": share_of(own["firm"]),
            f"{group}: confident and wrong (luck counted)": share_of(own["firm"] & ~own["overall"]),
            f"{group}: confident of a wrong cause": share_of(own["firm_cause"] & ~own["first"]),
        }
    hit = part[part["group"] != "none"]
    sure = hit[hit["sure"]]
    out |= {
        "all planted: weights of 90 % and more that are right": share_of(sure["first"]),
        "all seasons: weights of 90 % and more that are right": share_of(part.loc[part["sure"], "first"]),
        "all planted: confident and wrong (luck counted)": share_of(hit["firm"] & ~hit["overall"]),
        "all planted: confident of a wrong cause": share_of(hit["firm_cause"] & ~hit["first"]),
    }
    none, two = part[part["group"] == "none"], part[part["group"] == "pairs"]
    out |= {
        "none: poorest batch confident of a cause": share_of(none["firm_cause"]),
        "none: bad luck first": share_of(none["overall"]),
        "pairs: both in the first three": share_of(two["three"]),
        "pairs: first named is one of the two": share_of(two["first"]),
    }
    return out


def _under(rows, prefix):
    """The rows with the answers under `prefix` in the place of the others."""
    kept = rows[["group"]].copy()
    for column in rows.columns[rows.columns.str.startswith(prefix)]:
        kept[column.removeprefix(prefix)] = rows[column]
    return kept


def by_cause(rows, beside):
    """Table per cause over the three severities: first among the named, and what it was taken for."""
    lines = [f"{'cause':17s} {'severe':>10s} {'moderate':>10s} {'mild':>10s}   {'oracle, all':>12s}  taken for"]
    for cause, part in rows[rows["group"].isin(GROUPS[:3])].groupby("cause"):
        cells = []
        for group in GROUPS[:3]:
            own = part.loc[part["group"] == group, "first"]
            cells.append(f"{int(own.sum())} of {len(own)}" if len(own) else "-")
        known = f"{int(part['oracle_first'].sum())} of {len(part)}" if beside else "-"
        wrong = part.loc[~part["first"].astype(bool), "named"].value_counts().head(3)
        taken = ", ".join(f"{name} {count}" for name, count in wrong.items())
        lines.append(f"{cause:17s} {cells[0]:>10s} {cells[1]:>10s} {cells[2]:>10s}   {known:>12s}  {taken}")
    return lines


def reliability(rows, prefix=""):
    """Stated weight of the first named cause against how often it was right; seasons without a cause are wrong."""
    lines, edges = [], (0.0, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 1.0001)
    for low, high in zip(edges[:-1], edges[1:], strict=True):
        part = rows[(rows[f"{prefix}weight"] >= low) & (rows[f"{prefix}weight"] < high)]
        if len(part):
            lines.append(
                f"  {100 * low:3.0f} to {min(100 * high, 100):3.0f} %, mean "
                f"{100 * part[f'{prefix}weight'].mean():3.0f} %: {share_of(part[f'{prefix}first'])}"
            )
    return lines


def report(rows, beside):
    """The whole answer as text."""
    table = pd.DataFrame(rows)
    told = table[table["failed"] == ""].copy()
    for column in told.columns[told.columns.str.contains("first|overall|three|sure|firm")]:
        told[column] = told[column].astype(bool)
    lines = [
        f"{len(table)} seasons, {(table['failed'] != '').sum()} could not be asked about; a season is made, "
        f"written and read in {table['seconds'].median():.2f} s (median)",
        "",
    ]
    if told.empty:
        return "\n".join([*lines, *table["failed"].unique()])
    mine, known = figures(told), figures(told, "oracle_") if beside else {}
    lines += [f"{name:56s} {words:28s} {'oracle ' + known[name] if beside else ''}" for name, words in mine.items()]
    lines += ["", "stated weight of the first named cause, and how often it was right:", *reliability(told)]
    if beside:
        lines += ["the oracle's:", *reliability(told, "oracle_")]
    lines += ["", *by_cause(told, beside)]
    lines += [
        f"could not be asked about: {row.group} {row.seed} {row.cause} {row.failed}"
        for row in table[table["failed"] != ""].itertuples()
    ]
    return "\n".join(lines)


def main(world: World, about: str) -> None:
    """Read the command line, run and print."""
    parser = argparse.ArgumentParser(description=about)
    parser.add_argument("n", type=int, help="seasons of each group")
    parser.add_argument("seed", type=int)
    parser.add_argument("--answer", choices=list(ANSWERS), default="kit")
    parser.add_argument("--without-oracle", action="store_true")
    parser.add_argument("--minutes", type=float, default=120.0, help="stop after this many, in balance")
    parser.add_argument("--out", help="also write the rows, one a season, to this CSV file")
    args = parser.parse_args()
    answer, began, rows = ANSWERS[args.answer], time.monotonic(), []
    beside = not args.without_oracle and answer is not oracle
    for place in range(args.n):
        if time.monotonic() - began > 60 * args.minutes:
            print(f"stopped after {args.minutes:g} minutes: {place} of {args.n} rounds")
            break
        rows += [
            ask(world, group, place, [args.seed, number, place], answer, beside) for number, group in enumerate(GROUPS)
        ]
    print(f"{world.name} world, answers of {args.answer}, seeds [{args.seed}, group, i]")
    print(report(rows, beside))
    if args.out:
        pd.DataFrame(rows).to_csv(args.out, index=False)
