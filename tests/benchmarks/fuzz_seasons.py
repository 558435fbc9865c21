"""Spoil season folders by a seed and count those that end in a traceback, do not end, or are changed by being read.

    python tests/benchmarks/fuzz_seasons.py [how many] [first seed] [--work N]

Every N-th folder is also worked through: the cells of the season review and of the page on a poor hatch.
"""

from __future__ import annotations

import argparse
import collections
import datetime
import os
import shutil
import subprocess
import sys
import tempfile
import time
import warnings
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tests" / "records"))
os.environ.setdefault("MPLBACKEND", "Agg")
os.environ.pop("HATCHKIT_STRICT", None)

from hostile_folders import BROKEN, faults_of, spoilt_season  # noqa: E402

RESULTS = Path(__file__).resolve().parent / "results" / "fuzz_seasons.md"


def main() -> int:
    """Print each fault with its seed, then the counts, which are also written to results/."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("count", nargs="?", type=int, default=5000)
    parser.add_argument("first", nargs="?", type=int, default=0)
    parser.add_argument("--work", type=int, default=10)
    parser.add_argument("--minutes", type=float, default=600.0)
    parser.add_argument("--write", action="store_true", help=f"write {RESULTS.name}")
    options = parser.parse_args()
    warnings.simplefilter("ignore")
    bad, done, worked, start, kinds = 0, 0, 0, time.monotonic(), collections.Counter()
    for seed in range(options.first, options.first + options.count):
        if time.monotonic() - start > 60 * options.minutes:
            break
        folder = Path(tempfile.mkdtemp(prefix="season-"))
        ways = spoilt_season(folder, seed)
        work = seed % options.work == 0
        faults = faults_of(folder, work=work)
        done, worked, bad = done + 1, worked + work, bad + bool(faults)
        for fault in faults:
            kinds[fault.split(":")[0]] += 1
            print(f"seed {seed} ({', '.join(ways)}): {fault}", flush=True)
        if done % 100 == 0:
            print(f"{done:,} folders, {bad} with a fault, {time.monotonic() - start:.0f} s", flush=True)
        for path in folder.rglob("*"):
            if path.is_file() and not path.is_symlink():
                path.chmod(0o600)
        shutil.rmtree(folder, ignore_errors=True)
    took = time.monotonic() - start
    for folder, rows in BROKEN[:40]:
        print(f"only the last guard caught: {folder} {rows}")
    said = (
        f"{done:,} folders from seed {options.first}, {worked} of them worked through: {bad} with a fault "
        f"({dict(kinds) or 'none'}); {len(BROKEN)} with a sheet or file that only the last guard caught; "
        f"{took:.0f} s"
    )
    print(said)
    if options.write:
        commit = subprocess.run(
            ["git", "rev-parse", "--short", "HEAD"], cwd=ROOT, capture_output=True, text=True
        ).stdout
        RESULTS.write_text(
            f"# Spoilt season folders\n\nCommit {commit.strip()}, {datetime.date.today()}; "
            f"`python tests/benchmarks/fuzz_seasons.py {options.count} {options.first} --work "
            f"{options.work}`.\n\n{said}\n",
            encoding="utf-8",
        )
    return bool(bad)


if __name__ == "__main__":
    sys.exit(main())
