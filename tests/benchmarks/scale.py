"""How the kit grows: large seasons beside the demo in the same run, as ratios of processor time, and their memory.

Run: python tests/benchmarks/scale.py [part ...] [--times N]
Parts: logs, readings, years, book, batches, sheet, demo; without one all of them. Every command runs in a process of
its own, each large season in turn with the demo; the least of N turns counts, since other work on the machine can
only add to a turn. What was measured replaces its lines in results/scale.md, with commit and date.
"""

from __future__ import annotations

import argparse
import datetime as dt
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

import numpy as np
import pandas as pd

RESULTS = Path(__file__).parent / "results" / "scale.md"
ROOT = Path(__file__).parents[2]
HEADS = """# Scale: what large seasons cost

Written by `tests/benchmarks/scale.py`: processor time of whole commands, least of some turns, beside the demo in the
same run; memory is the highest of the process. Rows of a long sheet beside bare pandas: `read_workbook.py`.

| part | measured | ratio | wanted | time | beside | memory | turns, commit, date |
|---|---|---|---|---|---|---|---|
"""


def batch_rows(rng, count: int, machines: list[str], first: pd.Timestamp, days: float) -> pd.DataFrame:
    """`count` batches, set in turn into the machines over `days` days, 40 eggs each, with two looks."""
    rows = []
    for number in range(count):
        set_at = first + pd.Timedelta(hours=18 + 24 * round(days * number / count))
        clear, early, late = (int(rng.binomial(40, share)) for share in (0.1, 0.04, 0.06))
        rows.append(
            {
                "batch": f"N{number + 1}",
                "species": ("chicken", "quail", "duck")[number % 3],
                "pen": f"pen {number % 4}",
                "incubator": machines[number % len(machines)],
                "set_at": set_at,
                "eggs_set": 40,
                "candle1_at": set_at + pd.Timedelta(days=7),
                "clear1": clear,
                "dead1": early,
                "transfer_at": set_at + pd.Timedelta(days=14 if number % 3 == 1 else 18),
                "dead3": int(rng.binomial(4, 0.2)),
                "taken_off_at": set_at + pd.Timedelta(days=(21.5, 18, 28.5)[number % 3]),
            }
        )
        rows[-1] |= {"dead_in_shell": late, "hatched": 40 - clear - early - late - rows[-1]["dead3"]}
    return pd.DataFrame(rows)


def write_log(path: Path, rng, start: pd.Timestamp, readings: int, minutes: float) -> None:
    """A log with a slow swing, noise, and a warm spell of half a day every 40 days."""
    at = np.arange(readings)
    temp = 37.6 + 0.15 * np.sin(at / 40) + rng.normal(0, 0.08, readings)
    temp[(at * minutes / 1440) % 40 < 0.5] += 1.5
    stamps = pd.date_range(start, periods=readings, freq=pd.Timedelta(minutes=minutes)).strftime("%Y-%m-%d %H:%M")
    table = pd.DataFrame(
        {"time": stamps, "temperature (°C)": temp.round(2), "rh (%)": rng.normal(52, 1, readings).round(1)}
    )
    path.parent.mkdir(parents=True, exist_ok=True)
    table.to_csv(path, index=False)


def write_season(folder: Path, batches: int, *, machines: int, days: int, minutes: float, year: int = 2024) -> None:
    """One season in one folder; `minutes` between readings, one log for each machine (0: no logs)."""
    rng, first = np.random.default_rng(year), pd.Timestamp(year, 1, 3)
    names = [f"M{number + 1}" for number in range(machines)]
    folder.mkdir(parents=True)
    batch_rows(rng, batches, names, first, days).to_csv(folder / "batches.csv", index=False)
    (folder / "season.toml").write_text('timezone = "Europe/Rome"\n', encoding="utf-8")
    for name in names if minutes else ():
        write_log(folder / "sensors" / f"{name}.csv", rng, first, round((days + 30) * 1440 / minutes), minutes)


def write_small_logs(folder: Path, files: int = 900) -> None:
    """A logger in each of three machines that writes one file a day, a line every half hour."""
    write_season(folder, 24, machines=3, days=files // 3 - 30, minutes=0)
    rng = np.random.default_rng(3)
    for number in range(files):
        day = pd.Timestamp(2024, 1, 3) + pd.Timedelta(days=number // 3)
        write_log(folder / "sensors" / f"M{number % 3 + 1}_{day:%Y-%m-%d}.csv", rng, day, 48, 30)


def write_years(folder: Path) -> None:
    """20 years of 100 batches in four machines, a folder a year, a reading every half hour."""
    for year in range(2004, 2024):
        write_season(folder / str(year), 100, machines=4, days=300, minutes=30, year=year)


def cost(command: list[str]) -> tuple[float, float]:
    """Processor seconds and highest memory (GB) of a command in a process of its own."""
    run = subprocess.Popen(
        command, env={**os.environ, "PYTHONPATH": str(ROOT)}, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE
    )
    _, status, used = os.wait4(run.pid, 0)
    if status:
        raise SystemExit(f"{' '.join(command)} failed: {run.stderr.read().decode()[-500:]}")
    return used.ru_utime + used.ru_stime, used.ru_maxrss / 1024**2


def in_turn(one: list[str], other: list[str], times: int) -> tuple[float, float, float]:
    """Least processor time of two commands run in turn, and the memory of the first."""
    took = [(cost(one), cost(other)) for _ in range(times)]
    return min(a[0] for a, _ in took), min(b[0] for _, b in took), max(a[1] for a, _ in took)


def kit(command: str, folder, out: Path | None = None) -> list[str]:
    """A command line of the kit."""
    return [sys.executable, "-m", "hatchkit", command, str(folder), *(["-o", str(out)] if out else [])]


def write_sheet(folder: Path) -> None:
    """A workbook of 200 batches of 14 columns under a keeper's own headings."""
    from read_workbook import write_batches

    folder.mkdir()
    write_batches(folder / "batches.xlsx", 200)


def write_demo(folder: Path) -> None:
    """The demo's workbook."""
    folder.mkdir()
    shutil.copy(ROOT / "data_demo" / "batches.xlsx", folder)


#: Printed: seconds of importing pandas, then of understanding the sheets of a folder once their cells are read.
UNDERSTAND = """
import gc, sys, time
begun = time.process_time()
import pandas
imported = time.process_time() - begun
from pathlib import Path
from hatchkit.records.files import names_in, read_files
from hatchkit.records.own_sheet import own_readings
from hatchkit.records.sheets.assemble import read_sheets
from hatchkit.reference import species_table
folder, birds = Path(sys.argv[1]), species_table()
grids, _ = read_files(folder, names_in(folder), [])
gc.disable()  # as read_folder does
begun = time.process_time()
own = own_readings(grids)
sheets = read_sheets(grids, settings={}, fixed=own, species_table=birds)
assert len(sheets.batches)
print(time.process_time() - begun, imported)
"""


def understand(write, times: int) -> tuple[float, float, float]:
    """Least processor time of understanding a folder's sheets for the first time in a process, and of import pandas."""
    with tempfile.TemporaryDirectory() as home:
        folder = Path(home, "season")
        write(folder)
        command = [sys.executable, "-c", UNDERSTAND, str(folder)]
        env = {**os.environ, "PYTHONPATH": str(ROOT)}
        runs = [subprocess.run(command, env=env, capture_output=True, text=True, check=True) for _ in range(times)]
    took = [tuple(map(float, run.stdout.split())) for run in runs]
    return min(one for one, _ in took), min(other for _, other in took), 0.0


#: part -> what is measured, command, how its season is written, ratio wanted, turns.
PARTS = {
    "logs": ("check of 900 small logs, to check of the demo", "check", write_small_logs, 4, 3),
    "readings": (
        "review of 200 batches with 5 million readings (2 GB), to that of the demo",
        "review",
        lambda folder: write_season(folder, 200, machines=10, days=320, minutes=1),
        8,
        2,
    ),
    "years": ("page of the years of 2,000 batches in 20 years, to the demo's page", "review", write_years, 40, 1),
    "book": (
        "the same from one book of 2,000 rows without logs",
        "review",
        lambda folder: write_season(folder, 2000, machines=4, days=7300, minutes=0, year=2004),
        40,
        2,
    ),
    "batches": (
        "review of 200 batches with hourly logs, to that of the demo",
        "review",
        lambda folder: write_season(folder, 200, machines=4, days=300, minutes=60),
        10,
        2,
    ),
    "sheet": ("understanding 200 batches under own headings, to import pandas", "understand", write_sheet, 0.5, 7),
    "demo": ("understanding the demo's three sheets, to import pandas", "understand", write_demo, 0.5, 7),
}


def measure(part: str, times: int | None) -> tuple:
    """Name, ratio, ratio wanted, both times (s), memory (GB) and turns of one part."""
    said, command, write, wanted, usual = PARTS[part]
    if command == "understand":
        took, beside, memory = understand(write, times or usual)
        return said, took / beside, wanted, took, beside, memory, times or usual
    with tempfile.TemporaryDirectory() as home:
        folder, page = Path(home, "season"), command == "review"
        write(folder)
        large = kit(command, folder, Path(home, "large.html") if page else None)
        demo = kit(command, "demo", Path(home, "demo.html") if page else None)
        took, beside, memory = in_turn(large, demo, times or usual)
    return said, took / beside, wanted, took, beside, memory, times or usual


def keep(part: str, line: str) -> None:
    """Put one line in the table of results, in place of the one of the same part."""
    before = RESULTS.read_text(encoding="utf-8").splitlines() if RESULTS.exists() else []
    lines = {row.split("|")[1].strip(): row for row in before if row.startswith("|")}
    lines = {name: row for name, row in lines.items() if name in PARTS and name != part} | {part: line}
    RESULTS.write_text(HEADS + "".join(f"{lines[name]}\n" for name in PARTS if name in lines), encoding="utf-8")


def main() -> None:
    """Measure the parts asked for and keep what was found."""
    asked = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    asked.add_argument("parts", nargs="*", choices=[*PARTS, []], default=[])
    asked.add_argument("--times", type=int)
    asked.add_argument("--try", action="store_true", dest="trial", help="print only")
    options = asked.parse_args()
    commit = subprocess.run(
        ["git", "-C", str(ROOT), "describe", "--always", "--dirty"], capture_output=True, text=True
    ).stdout.strip()
    for part in options.parts or PARTS:
        said, ratio, wanted, took, beside, memory, turns = measure(part, options.times)
        held = f"{memory:.2f} GB" if memory else "-"
        line = (
            f"| {part} | {said} | {ratio:.2f} | {wanted} | {took:.2f} s | {beside:.2f} s | {held} | "
            f"{turns}, {commit}, {dt.date.today()} |"
        )
        print(line, flush=True)
        if not options.trial:
            keep(part, line)


if __name__ == "__main__":
    main()
