"""Self-check of the worlds: `python -m worlds.check [seasons per world]`, with hatchkit importable. Exit status 1 on
a fault.

Looks at: folders load with nothing lost; eggs of every batch sum to the eggs set, in the truth and in the fates that
hatchkit reads; the severity asked for is reached; causeless seasons hold no cause; ordinary batches look ordinary; the
same seed gives the same files; the oracle is a posterior and is calibrated; hand-written cases close.
"""

from __future__ import annotations

import hashlib
import shutil
import sys
import tempfile
from pathlib import Path

import numpy as np

from . import base_rates, textbook, trials
from .codes import CAUSES, SEVERITY
from .habits import SEEN
from .oracle import oracle
from .seasons import cases, make_season

FAULTS = []


def claim(true, words):
    """Note a fault when a claim does not hold."""
    if not true:
        FAULTS.append(words)
        print("FAULT", words)


def folder_hash(folder):
    """One hash over the text of all files but workbooks (which carry a time of writing)."""
    files = sorted(p for p in Path(folder).rglob("*") if p.is_file() and p.suffix != ".xlsx")
    return hashlib.sha256(b"".join(p.read_bytes() for p in files)).hexdigest()


def check_truth(truth, case):
    """Truth of one season against itself."""
    tag = f"{case['world']} {case['seed']} {case['cause']}"
    eggs = truth["eggs"]
    for record in truth["batches"]:
        mine = eggs[eggs["batch"] == record["batch"]]
        claim(len(mine) == record["eggs_set"], f"{tag}: eggs of batch {record['batch']} do not sum")
        claim(16 <= record["eggs_set"] <= 60, f"{tag}: size")
        if "seen" in record:
            claim(record["seen"].sum() == record["eggs_set"] and len(record["seen"]) == len(SEEN), f"{tag}: seen")
        clean = record["batch"] not in truth["batches_hit"]
        claim(not clean or not mine["lost_to"].isin(CAUSES).any(), f"{tag}: a sister batch is hit")
    claim(4 <= len(truth["batches"]) <= 9, f"{tag}: batches")
    claim(
        eggs.loc[eggs["end"].isin(["sound", "cull", "infertile"]), "day"].isna().all(),
        f"{tag}: a live egg has a death day",
    )
    dead = ~eggs["end"].isin(["sound", "cull", "infertile"])
    claim(eggs.loc[dead, "day"].notna().all(), f"{tag}: a dead egg has no day")
    claim(eggs.loc[eggs["end"] == "sound", "lost_to"].isna().all(), f"{tag}: a sound egg is lost")
    claim(eggs.loc[eggs["end"] != "sound", "lost_to"].notna().all(), f"{tag}: a lost egg has no owner")
    if case["cause"] is None:
        claim(
            not truth["causes"] and not truth["batches_hit"] and not truth["eggs_lost_by_cause"],
            f"{tag}: cause in a causeless season",
        )
    else:
        low, high = SEVERITY[case["severity"]]
        for batch, share in truth["excess_share"].items():
            claim(
                low - 0.025 <= share <= high + 0.025,
                f"{tag}: excess {share:.3f} of batch {batch} outside {case['severity']}",
            )


def check_loaded(season, truth, case):
    """What hatchkit reads from the folder; returns severities of the problems."""
    tag = f"{case['world']} {case['seed']} {case['cause']}"
    problems = season.problems
    lost = problems[problems["severity"] == "lost"]
    claim(lost.empty, f"{tag}: lost: {lost['found'].astype(str).str[:120].tolist()}")
    claim(len(season.batches) == len(truth["batches"]), f"{tag}: batches read")
    sums = season.fates.groupby("batch")["eggs"].sum()
    sizes = {b["batch"]: b["eggs_set"] for b in truth["batches"]}
    claim(all(abs(sums.get(k, -1) - n) < 1e-6 for k, n in sizes.items()), f"{tag}: fates do not sum to the eggs set")
    return problems["severity"].value_counts().to_dict()


def check_world(world, count, root, load):
    """Make, load and judge `count` seasons of one world."""
    said, realised, hits, sound, fertile, ages, unaccounted = {}, {}, [], [], [], [], 0
    for case in cases(count, seed=11, world=world, species=("chicken", "chicken", "duck", "quail", "turkey")):
        folder = Path(root) / f"{world}_{case['seed']}"
        truth = make_season(**case, folder=folder)
        check_truth(truth, case)
        season = load(folder)
        for key, n in check_loaded(season, truth, case).items():
            said[key] = said.get(key, 0) + n
        fates = season.fates
        unaccounted += float(fates.loc[fates["fate"] == "unaccounted", "eggs"].sum())
        for share in truth["excess_realised"].values():
            if np.isfinite(share):
                realised.setdefault(case["severity"], []).append(share)
        _ordinary(truth, sound, fertile, ages)
        if world == "second" and len(truth["causes"]) == 1:
            hits.append(_oracle_hit(truth))
        shutil.rmtree(folder)
    _report(world, count, said, realised, sound, fertile, ages, unaccounted, hits)


def _ordinary(truth, sound, fertile, ages):
    """Collect hatch of fertile, fertility and chicken days of death of the batches without a cause."""
    eggs = truth["eggs"][~truth["eggs"]["batch"].isin(truth["batches_hit"])]
    for _, mine in eggs.groupby("batch"):
        good = mine[mine["end"] != "infertile"]
        fertile.append(len(good) / len(mine))
        sound.append((good["end"] == "sound").mean())
    scale = {"chicken": 21, "duck": 28, "quail": 17.5, "turkey": 28}[truth["species"]]
    ages += list(eggs["day"].dropna() * 21 / scale)


def _oracle_hit(truth):
    full, counts = oracle(truth), oracle(truth, use=("counts",))
    for posterior in (full, counts):
        claim(abs(sum(posterior.values()) - 1) < 1e-9 and set(posterior) == set(CAUSES), "oracle is no posterior")
    right = truth["causes"][0]
    return (
        next(iter(full)) == right,
        max(full.values()),
        next(iter(counts)) == right,
        max(counts.values()),
        right in list(full)[:3],
    )


def _report(world, count, said, realised, sound, fertile, ages, unaccounted, hits):
    ages = np.array(ages)
    print(f"\n{world}: {count} seasons; problem rows {said}; unaccounted eggs {unaccounted:.0f}")
    for name, shares in realised.items():
        low, high = SEVERITY[name]
        print(
            f"  {name}: realised share lost to the cause, mean {np.mean(shares):.3f} (band {low}-{high}), "
            f"5-95 % {np.quantile(shares, [0.05, 0.95]).round(2)}, n {len(shares)}"
        )
        slack = 0.03 + 3 * np.std(shares) / np.sqrt(len(shares))
        claim(low - slack <= np.mean(shares) <= high + slack, f"{world}: {name} realised off the band")
    split = [(ages <= 7).mean(), ((ages > 7) & (ages <= 14)).mean(), (ages > 14).mean()]
    print(
        f"  ordinary batches: fertility {np.quantile(fertile, [0.1, 0.5, 0.9]).round(2)}, sound of fertile "
        f"{np.quantile(sound, [0.1, 0.5, 0.9]).round(2)}, deaths early/mid/late {np.round(split, 2)}"
    )
    claim(0.70 <= np.median(sound) <= 0.92 and 0.7 <= np.median(fertile) <= 0.96, f"{world}: ordinary batches odd")
    claim(split[1] < 0.25 and min(split[0], split[2]) > 0.2, f"{world}: deaths have no quiet middle")
    if hits:
        top, sure, top_counts, sure_counts, three = np.array(hits, float).mean(axis=0)
        error = 3 * np.sqrt(0.25 / len(hits))
        print(
            f"  oracle ({len(hits)}): everything first {top:.2f} (says {sure:.2f}), in three {three:.2f}; "
            f"counts alone first {top_counts:.2f} (says {sure_counts:.2f})"
        )
        claim(abs(top - sure) < 0.05 + error and abs(top_counts - sure_counts) < 0.05 + error, "oracle not calibrated")
        claim(top > top_counts > 1 / len(CAUSES), "oracle gains nothing")


def check_same(root):
    """Same seed, same files; another seed, other files."""
    for world in ("second", "third"):
        hashes = []
        for name, seed in (("x", 5), ("y", 5), ("z", 6)):
            folder = Path(root) / f"same_{world}_{name}"
            make_season(world, seed, cause="turning", folder=folder)
            hashes.append(folder_hash(folder))
        claim(hashes[0] == hashes[1] != hashes[2], f"{world}: seeds")


def check_written(root, load):
    """Hand-written cases load, lose nothing and leave no egg unexplained."""
    groups = {
        "textbook": textbook.TEXTBOOK,
        "further": textbook.FURTHER,
        "trials": trials.TRIALS,
        "base rates": base_rates.BASE_RATES,
    }
    for group, told in groups.items():
        for number, case in enumerate(told):
            folder = Path(root) / f"{group}_{number}"
            answer = textbook.write_case(case, folder, seed=number)
            season = load(folder)
            claim(set(case.expected) <= set(CAUSES) and set(case.never) <= set(CAUSES), f"{case.name}: codes")
            claim((season.problems["severity"] != "lost").all(), f"{case.name}: lost")
            claim(answer["batch"] in set(season.batches["batch"].astype(str)), f"{case.name}: batch")
            left = season.fates.loc[season.fates["fate"] == "unaccounted", "eggs"].sum()
            claim(left == 0, f"{case.name}: {left} eggs unaccounted")
    print("\nwritten cases:", {k: len(v) for k, v in groups.items()})


def main(count=60):
    """Run every check; returns the number of faults."""
    from hatchkit import load_season

    root = tempfile.mkdtemp(prefix="worlds_check_")
    try:
        check_same(root)
        check_written(root, load_season)
        for world in ("second", "third"):
            check_world(world, count, root, load_season)
    finally:
        shutil.rmtree(root, ignore_errors=True)
    print(f"\n{len(FAULTS)} faults")
    return len(FAULTS)


if __name__ == "__main__":
    sys.exit(1 if main(int(sys.argv[1]) if len(sys.argv) > 1 else 60) else 0)
