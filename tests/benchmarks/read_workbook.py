"""How long a season workbook of 20,000 rows takes to read, beside bare pandas.read_excel.

Run: python tests/benchmarks/read_workbook.py
"""

import datetime as dt
import random
import sys
import tempfile
import time
from pathlib import Path

import openpyxl
import pandas as pd

from hatchkit.records.folder import read_folder

ROWS = 20_000


def write_eggs(path: Path, rows: int) -> None:
    """A workbook with 100 batches and `rows` egg rows of 12 columns."""
    random.seed(1)
    book = openpyxl.Workbook(write_only=True)
    page = book.create_sheet("batches")
    page.append(["batch", "species", "incubator", "set_at", "eggs_set"])
    for number in range(100):
        page.append([f"B{number}", "hen", "A", dt.datetime(2026, 1, 1, 18) + dt.timedelta(number), rows // 100])
    page = book.create_sheet("eggs")
    page.append(
        [
            "batch",
            "egg",
            "tray",
            "row",
            "col",
            "weight_g",
            "candle1",
            "candle2",
            "transfer",
            "outcome",
            "stage_day",
            "notes",
        ]
    )
    for number in range(rows):
        dead = random.random() < 0.1
        page.append(
            [
                f"B{number // (rows // 100)}",
                number % (rows // 100) + 1,
                "T1",
                number % 8 + 1,
                number % 6,
                round(random.gauss(60, 4), 1),
                "alive",
                "alive",
                "alive",
                "dead" if dead else "hatched",
                round(random.uniform(15, 20)) if dead else None,
                None,
            ]
        )
    book.save(path)


def write_batches(path: Path, rows: int) -> None:
    """A workbook with `rows` batches of 14 columns under a person's own headings."""
    random.seed(2)
    book = openpyxl.Workbook(write_only=True)
    page = book.create_sheet("batches")
    page.append(
        [
            "Batch no.",
            "Kind",
            "Incubator",
            "Set on",
            "Eggs in",
            "1st candling",
            "Clears candling 1",
            "Dead candling 1",
            "Transfer date",
            "Dead at transfer",
            "Taken off",
            "Hatched",
            "Culls",
            "Notes",
        ]
    )
    for number in range(rows):
        start = dt.datetime(2020, 1, 1, 18) + dt.timedelta(hours=2 * number)
        page.append(
            [
                f"B{number}",
                "Hen",
                "A",
                start,
                40,
                start + dt.timedelta(days=7),
                3,
                1,
                start + dt.timedelta(days=18),
                1,
                start + dt.timedelta(days=21.5),
                30,
                1,
                None,
            ]
        )
    book.save(path)


def side_by_side(one, other, times: int = 9) -> tuple[float, float]:
    """Least processor time of two calls run in turn, which other work on the machine disturbs least."""
    took = ([], [])
    for _ in range(times):
        for call, list_ in zip((one, other), took, strict=True):
            start = time.process_time()
            call()
            list_.append(time.process_time() - start)
    return min(took[0]), min(took[1])


def main() -> None:
    """Print time, and ratio to bare pandas, for a workbook of eggs and one of batches."""
    rows = int(sys.argv[1]) if len(sys.argv) > 1 else ROWS
    for name, write in (("egg rows", write_eggs), ("batches", write_batches)):
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / "batches.xlsx"
            write(path, rows)
            bare, kit = side_by_side(
                lambda path=path: pd.read_excel(path, sheet_name=None, engine="calamine"),
                lambda folder=folder: read_folder(folder),
            )
            print(
                f"{rows:,} {name}: pandas.read_excel (calamine) {bare:.3f} s, read_folder {kit:.3f} s, "
                f"ratio {kit / bare:.2f}"
            )


if __name__ == "__main__":
    main()
