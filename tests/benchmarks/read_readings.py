"""How much longer reading a logger's file takes than the fastest single pandas.read_csv call.

That call is told everything in advance (separator, decimal mark, lines to skip, form of the dates);
`read_readings` finds it out, and marks doubtful readings besides. Printed: best of several runs of
both in turn, in seconds of the processor and on the clock; highest memory of each in a process of
its own; cost of the marks alone. Run: ``python tests/benchmarks/read_readings.py [rows [iso day_first]]``; with
``garbage`` instead, the time and memory until 300 MB that are no log are refused.
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

RUNS = {"iso": 7, "day_first": 2}


def write_logs(folder: Path, rows: int) -> None:
    """The same readings twice: comma with ISO stamps; semicolon with decimal commas and day first."""
    noise = np.random.default_rng(7)
    stamps = pd.date_range("2024-01-01", periods=rows, freq="30s")
    # A thermostat's slow swing, with the noise of a probe that shows hundredths.
    temp = 37.7 + 0.25 * np.sin(np.arange(rows) / 40) + noise.normal(0, 0.05, rows)
    rh = 52 + noise.normal(0, 0.8, rows)
    with open(folder / "iso.csv", "w", encoding="utf-8") as file:
        file.write("time,temp (°C),rh (%)\n")
        file.writelines(
            f"{t},{a:.2f},{b:.1f}\n" for t, a, b in zip(stamps.strftime("%Y-%m-%d %H:%M:%S"), temp, rh, strict=True)
        )
    with open(folder / "day_first.csv", "w", encoding="utf-8") as file:
        file.write("Logger 3\nHall\nStart 2024\nZeit;Temperatur (°C);Feuchte (%)\n")
        file.writelines(
            f"{t};{a:.2f};{b:.1f}\n".replace(".", ",").replace(",", ".", 2)
            for t, a, b in zip(stamps.strftime("%d.%m.%Y %H:%M:%S"), temp, rh, strict=True)
        )


def told(path: Path) -> list:
    """Single calls of read_csv that give the typed columns of one of the two files."""
    if path.stem == "iso":
        common = dict(parse_dates=["time"])
        return [
            lambda: pd.read_csv(path, **common),
            lambda: pd.read_csv(path, date_format="ISO8601", **common),
            lambda: pd.read_csv(path, date_format="ISO8601", memory_map=True, **common),
        ]
    common = dict(sep=";", decimal=",", skiprows=3, parse_dates=["Zeit"])
    return [
        lambda: pd.read_csv(path, date_format="%d.%m.%Y %H:%M:%S", **common),
        lambda: pd.read_csv(path, date_format="%d.%m.%Y %H:%M:%S", cache_dates=False, **common),
    ]


def ours(path: Path):
    from hatchkit.records.logs.read import Wishes, read_accounted

    return read_accounted(path, Wishes())


def marks_only(readings):
    from hatchkit.records import marks

    return marks.marks_of(
        readings["time"].dt.tz_localize(None).to_numpy(), readings["temp_c"].to_numpy(), readings["rh_pct"].to_numpy()
    )


def best(calls: dict, runs: int) -> dict:
    """Least (processor, clock) seconds of each call, run in turn."""
    found = {name: (np.inf, np.inf) for name in calls}
    for _ in range(runs):
        for name, call in calls.items():
            clock, processor = time.perf_counter(), time.process_time()
            call()
            took = time.process_time() - processor, time.perf_counter() - clock
            found[name] = tuple(min(pair) for pair in zip(found[name], took, strict=True))
    return found


def peak_mb(path: Path, which: str) -> float:
    """Highest memory of one call in a fresh process, in MB."""
    run = subprocess.run(
        [sys.executable, __file__, "--peak", which, str(path)], capture_output=True, text=True, check=True
    )
    return float(run.stdout)


def _peak(which: str, path: Path) -> None:
    call = (lambda: ours(path)) if which == "ours" else told(path)[int(which)]
    kept = call()
    print(_high_water())
    del kept


def _high_water() -> float:
    """Highest memory of this process in MB."""
    status = Path("/proc/self/status")
    if status.exists():
        # On Linux ru_maxrss still holds the peak of the process that started this one.
        line = next(line for line in status.read_text().splitlines() if line.startswith("VmHWM"))
        return int(line.split()[1]) / 1024
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def main(rows: int, names=("iso", "day_first")) -> None:
    with tempfile.TemporaryDirectory() as folder:
        write_logs(Path(folder), rows)
        for name in names:
            path = Path(folder) / f"{name}.csv"
            readings, _ = ours(path)
            calls = {f"told {n}": call for n, call in enumerate(told(path))}
            calls |= {
                "ours": lambda path=path: ours(path),
                "marks alone": lambda readings=readings: marks_only(readings),
            }
            took = best(calls, RUNS[path.stem])
            least = [min(took[key][kind] for key in took if key.startswith("told")) for kind in (0, 1)]
            print(f"{path.name}, {rows:,} rows, {path.stat().st_size / 1e6:.0f} MB")
            for key, (processor, clock) in took.items():
                print(
                    f"  {key:20s} {processor:6.2f} s processor ({processor / least[0]:4.2f} x)"
                    f"   {clock:6.2f} s clock ({clock / least[1]:4.2f} x)"
                )
            read = took["ours"]
            print(f"  marks / our read     {took['marks alone'][0] / read[0]:4.2f} x processor")
            peaks = {which: peak_mb(path, which) for which in ("0", "1", "ours")}
            least_mb = min(value for key, value in peaks.items() if key != "ours")
            print(
                f"  peak memory          {peaks['ours']:.0f} MB, told {least_mb:.0f} MB: "
                f"{peaks['ours'] / least_mb:4.2f} x\n"
            )


GARBAGE = {
    "random bytes": lambda size: np.random.default_rng(1).bytes(size),
    "one line of letters": lambda size: b"z" * size,
    "short lines of words": lambda size: b"words and words\n" * (size // 16),
    "a log only at its head": lambda size: (
        b"time,temp C\n" + b"".join(b"2026-04-01 10:%02d:00,37.5\n" % n for n in range(60)) + b"a,b\n" * (size // 4)
    ),
    "a log and then one endless line": lambda size: (
        b"time,temp C\n" + b"".join(b"2026-04-01 10:%02d:00,37.5\n" % n for n in range(60)) + b"y" * size
    ),
}


def garbage(megabytes: int) -> None:
    """Time and memory until a large file that is no log is refused."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "garbage.csv"
        for name, fill in GARBAGE.items():
            path.write_bytes(fill(megabytes * 1_000_000))
            start = time.perf_counter()
            run = subprocess.run([sys.executable, __file__, "--refuse", str(path)], capture_output=True, text=True)
            took = time.perf_counter() - start
            print(f"{megabytes} MB, {name}: {took:.1f} s, {run.stdout.strip()}{run.stderr[-300:]}")


def _refuse(path: Path) -> None:
    from hatchkit.problems import HatchkitError

    try:
        readings, _ = ours(path)
        said = f"{len(readings)} readings"
    except HatchkitError as error:
        said = str(error)
    print(f"peak {_high_water():.0f} MB: {said}")


if __name__ == "__main__":
    if sys.argv[1:2] == ["--refuse"]:
        _refuse(Path(sys.argv[2]))
    elif sys.argv[1:2] == ["garbage"]:
        garbage(300)
    elif sys.argv[1:2] == ["--peak"]:
        _peak(sys.argv[2], Path(sys.argv[3]))
    else:
        main(int(sys.argv[1]) if len(sys.argv) > 1 else 2_000_000, sys.argv[2:] or ("iso", "day_first"))
