"""What many seasons cost: time and memory to read and compare them, at growing numbers of batches.

Run: python tests/benchmarks/years_scale.py [keepers ...] [--readings N]     (16 batches a keeper-year, default 1 2 4 8)
Each size runs in a process of its own: simulated seasons are written once and linked, 3 to 30 minutes a reading.
"""

from __future__ import annotations

import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import numpy as np
import pandas as pd

BATCHES = 16


def write(folder: Path, seasons: int, readings: int) -> None:
    """Seasons of 16 batches in two machines; each with its own counts, and `readings` readings a batch."""
    rng = np.random.default_rng(1)
    step = max(round(21 * 24 * 60 / readings), 1)
    for number in range(seasons):
        home = folder / f"keeper {number // 10:02d}" / str(2005 + number % 10)
        (home / "sensors").mkdir(parents=True)
        year, rows = 2005 + number % 10, []
        for batch in range(BATCHES):
            day = pd.Timestamp(year, 3, 1) + pd.Timedelta(days=12 * (batch // 2) * 2, hours=18)
            dead = int(rng.integers(0, 4))
            rows.append(
                [
                    batch + 1,
                    "hen",
                    f"pen {batch % 3}",
                    "AB"[batch % 2],
                    day,
                    40,
                    day + pd.Timedelta(days=7),
                    4,
                    dead,
                    day + pd.Timedelta(days=21),
                    34 - dead - int(rng.integers(0, 6)),
                ]
            )
        heads = [
            "batch",
            "species",
            "pen",
            "incubator",
            "set_at",
            "eggs_set",
            "candle1_at",
            "clear1",
            "dead1",
            "taken_off_at",
            "hatched",
        ]
        pd.DataFrame(rows, columns=heads).to_csv(home / "batches.csv", index=False)
        (home / "season.toml").write_text('timezone = "Europe/Rome"\n', encoding="utf-8")
        span = pd.date_range(pd.Timestamp(year, 3, 1, 18), periods=round(8 * 24 * 24 * 60 / step), freq=f"{step}min")
        for machine in "AB":
            warm = 37.5 + 0.1 * rng.standard_normal(len(span))
            warm[len(warm) // 3 : len(warm) // 3 + round(600 / step)] += 2.5
            pd.DataFrame({"time": span.strftime("%Y-%m-%d %H:%M"), "temp_c": warm.round(2)}).to_csv(
                home / "sensors" / f"{machine}.csv", index=False
            )


def measure(folder: str) -> None:
    import hatchkit as hk

    start = time.process_time()
    season = hk.load_season(folder)
    read = time.process_time() - start
    found = hk.exposure(season)
    dose = time.process_time() - start - read
    hk.groups(season, by="incubator", outcome="hatch")
    rest = time.process_time() - start - read - dose
    memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1e6
    print(
        f"{len(season.batches):6d} batches {len(season.readings):11,} readings: read {read:7.1f} s, doses "
        f"{dose:7.1f} s ({len(found)} windows), groups {rest:6.1f} s, memory {memory:.2f} GB",
        flush=True,
    )


def main(words) -> None:
    readings = int(words[words.index("--readings") + 1]) if "--readings" in words else 1000
    sizes = [int(word) for word in words if word.isdigit() and int(word) != readings] or [1, 2, 4, 8]
    for size in sizes:
        with tempfile.TemporaryDirectory() as folder:
            write(Path(folder), size, readings)
            subprocess.run([sys.executable, __file__, "--one", folder], check=True)


if __name__ == "__main__":
    measure(sys.argv[2]) if sys.argv[1:2] == ["--one"] else main(sys.argv[1:])
