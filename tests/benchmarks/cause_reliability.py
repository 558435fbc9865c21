r"""How far can the stated causes be trusted? Reliability of `likely_causes` in made worlds, per severity.

    python tests/benchmarks/cause_reliability.py --path tests --module worlds.seasons --world second --each 6 \
        --oracle worlds.oracle
    python tests/benchmarks/cause_reliability.py                     # the family in which the constants were set

The module holds ``make_season(world, seed, cause=..., severity=...)``, which writes a folder and returns a dict with
`folder` (or is given ``folder=``), `batch_hit` and `causes`; codes to plant are its ``CAUSES``, or ``--causes``. A
season without a cause is asked about its poorest batch. Every share has its n and a 95 % interval (Wilson).
"""

from __future__ import annotations

import argparse
import importlib
import inspect
import sys
import tempfile
import time
from pathlib import Path

import numpy as np
import pandas as pd

sys.path.insert(0, str(Path(__file__).resolve().parent))

SEVERITIES = ("severe", "moderate", "mild")
UNNAMED = ("bad_luck", "unlisted")
WEIGHTS = (0.0, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 1.0001)


def season_of(module, world, *, seed, cause, severity, folder):
    """(season, truth) of one made season, whatever way the module is called."""
    import hatchkit as hk

    wants = inspect.signature(module.make_season).parameters
    given = {"seed": seed, "cause": cause, "severity": severity}
    if "folder" in wants:
        given["folder"] = folder
    if "world" in wants:
        given["world"] = world
    if isinstance(cause, tuple) and "second" in wants:
        given |= {"cause": cause[0], "second": cause[1]}
    truth = module.make_season(**given)
    return hk.load_season(truth.get("folder", folder)), truth


def ask(module, world, *, seed, cause, severity, oracle=None) -> dict:
    """One season: what was planted and what was said; one that can't be asked is counted as such."""
    from hatchkit.advice.causes import likely_causes
    from hatchkit.advice.poor_hatch import poorest_batch

    with tempfile.TemporaryDirectory() as name:
        season, truth = season_of(
            module, world, seed=seed, cause=cause, severity=severity, folder=Path(name) / "season"
        )
        try:
            batch = str(truth["batch_hit"]) if truth.get("batch_hit") else poorest_batch(season)
            told = likely_causes(season, batch)
        except Exception as error:
            return dict(seed=seed, cause=str(cause), severity=severity, failed=f"{type(error).__name__}: {error}")
    true, table = list(truth["causes"]), told.table
    named = [name for name in table["cause"] if name not in UNNAMED]
    share = table.set_index("cause")["share"]
    return dict(
        seed=seed,
        cause="+".join(true) or "none",
        severity=severity,
        failed="",
        said=table["cause"].iloc[0],
        verdict=told.verdict,
        first=named[0] in true,
        three=set(true) <= set(named[:3]),
        overall=table["cause"].iloc[0] in true,
        named=named[0],
        weight=float(share[named[0]]),
        pairs=len(true) == 2,
        **_oracle_says(oracle, truth, batch, true),
    )


def _oracle_says(oracle, truth, batch, true) -> dict:
    """Whether the world's own oracle has a single planted cause first, and in the first three."""
    if oracle is None or len(true) != 1:
        return {}
    order = list(oracle(truth, batch=batch))
    return dict(oracle_first=order[0] == true[0], oracle_three=true[0] in order[:3])


def share_of(marks) -> str:
    """Share with its interval and n, in words."""
    from statsmodels.stats.proportion import proportion_confint

    marks = np.asarray(marks, bool)
    if not len(marks):
        return "-"
    low, high = proportion_confint(int(marks.sum()), len(marks), method="wilson")
    return f"{100 * marks.mean():3.0f} % ({100 * low:.0f}-{100 * high:.0f}, n {len(marks)})"


def report(rows) -> str:
    """The tables of the proof."""
    whole = pd.DataFrame(rows)
    lines = [f"{len(whole)} seasons, {(whole['failed'] != '').sum()} could not be asked", ""]
    told = whole[whole["failed"] == ""].copy()
    told[["first", "three", "overall", "pairs"]] = told[["first", "three", "overall", "pairs"]].astype(bool)
    single = told[(told["cause"] != "none") & ~told["pairs"]]
    for severity in [name for name in SEVERITIES if name in set(single["severity"])]:
        part = single[single["severity"] == severity]
        confident = part["verdict"] == "confident"
        lines += [
            f"{severity}:",
            f"  first among the named    {share_of(part['first'])}",
            f"  among the first three    {share_of(part['three'])}",
            f"  first, luck counted      {share_of(part['overall'])}",
            f"  confident                {share_of(confident)}",
            f"  confident and wrong      {share_of(confident & ~part['overall'])}",
        ]
        if "oracle_first" in part:
            lines += [
                f"  the world's own oracle   first {share_of(part['oracle_first'])}, "
                f"first three {share_of(part['oracle_three'])}"
            ]
    pairs = told[told["pairs"]]
    if len(pairs):
        lines += [
            "two causes:",
            f"  both in the first three  {share_of(pairs['three'])}",
            f"  told as two              {share_of(pairs['verdict'] == 'two causes')}",
        ]
    none = told[told["cause"] == "none"]
    if len(none):
        lines += [
            "no cause, poorest batch:",
            f"  confident                {share_of(none['verdict'] == 'confident')}",
            f"  probable                 {share_of(none['verdict'] == 'probable')}",
            f"  bad luck first           {share_of(none['said'] == 'bad_luck')}",
        ]
    return "\n".join(
        [
            *lines,
            "",
            *weights(told),
            "",
            *by_cause(single),
            *(
                f"  could not be asked: seed {row.seed} {row.cause} {row.failed}"
                for row in whole[whole["failed"] != ""].itertuples()
            ),
        ]
    )


def weights(told) -> list[str]:
    """Stated weight of the first named cause against how often it was right."""
    lines = ["stated weight of the first named cause, and how often it was right (seasons without a cause are wrong):"]
    for low, high in zip(WEIGHTS[:-1], WEIGHTS[1:], strict=True):
        part = told[(told["weight"] >= low) & (told["weight"] < high)]
        if len(part):
            lines.append(
                f"  {100 * low:3.0f} to {min(100 * high, 100):3.0f} %, mean "
                f"{100 * part['weight'].mean():3.0f} %: {share_of(part['first'])}"
            )
    return lines


def by_cause(single) -> list[str]:
    """First among the named for each cause, and what it was taken for."""
    lines = ["first among the named, by cause:"]
    for cause, part in single.groupby("cause"):
        by = "  ".join(
            f"{name} {100 * part.loc[part['severity'] == name, 'first'].mean():3.0f} %"
            for name in SEVERITIES
            if name in set(part["severity"])
        )
        most = part.loc[~part["first"], "named"].value_counts().head(2)
        wrong = ", ".join(f"{name} {count}" for name, count in most.items())
        lines.append(f"  {cause:18s} {by}{f'   taken for {wrong}' if wrong else ''}")
    return lines


def jobs_of(args, names) -> list[tuple]:
    """(cause, severity) in turns, so that a run cut short is still balanced."""
    rng, turns, jobs = np.random.default_rng(args.first_seed), max(args.each, 1), []

    def due(total, turn):
        return total * (turn + 1) // turns - total * turn // turns

    for turn in range(turns):
        jobs += [(name, severity) for severity in SEVERITIES if args.each for name in names]
        jobs += [(None, "severe")] * due(args.null, turn)
        jobs += [
            (tuple(str(name) for name in rng.choice(names, 2, replace=False)), "severe")
            for _ in range(due(args.pairs, turn))
        ]
    return jobs


def main() -> None:
    """Run and print."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--path", help="folder to import the module from")
    parser.add_argument("--module", default="world_family")
    parser.add_argument("--world", default="second")
    parser.add_argument("--oracle", help="module that holds the world's own oracle(truth, batch=...)")
    parser.add_argument("--each", type=int, default=2, help="seasons per cause and severity")
    parser.add_argument("--null", type=int, default=40, help="seasons without a cause")
    parser.add_argument("--pairs", type=int, default=20, help="seasons with two causes, severe")
    parser.add_argument("--first-seed", type=int, default=1000)
    parser.add_argument("--minutes", type=float, default=60.0)
    parser.add_argument("--causes", nargs="*", help="only these")
    args = parser.parse_args()
    if args.path:
        sys.path.insert(0, args.path)
    module = importlib.import_module(args.module)
    oracle = importlib.import_module(args.oracle).oracle if args.oracle else None
    rows, started = [], time.monotonic()
    jobs = jobs_of(args, args.causes or list(module.CAUSES))
    for seed, (cause, severity) in enumerate(jobs, args.first_seed + 1):
        if time.monotonic() - started > 60 * args.minutes:
            print(f"stopped after {args.minutes:g} minutes: {len(rows)} of {len(jobs)}")
            break
        rows.append(ask(module, args.world, seed=seed, cause=cause, severity=severity, oracle=oracle))
    print(f"module {args.module}, world {args.world}, seeds {args.first_seed + 1} to {args.first_seed + len(rows)}")
    print(report(rows))


if __name__ == "__main__":
    main()
