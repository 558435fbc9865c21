"""A class of eight from the first file to the last: cases written, forms filled, marked, given back.

    python tests/benchmarks/course_class.py FOLDER [--level second] [--seed 2026]

Four students are careful, two copy the kit, one says "none can be told" and ticks nothing, one hands in nothing. The
forms are filled as a person would fill them, from the season folder and the statements on the form.
"""

from __future__ import annotations

import argparse
import json
import subprocess
import sys
import time
from pathlib import Path

from course_students import Careful, automatic
from openpyxl import load_workbook

import hatchkit as hk
from hatchkit.teach.case_words import cause_words, stage_words

STUDENTS = ("careful", "careful", "automatic", "careful", "none", "automatic", "careful", "absent")


def run(*words):
    """One command of the kit."""
    print(f"$ hatchkit {' '.join(map(str, words))}")
    done = subprocess.run(
        [sys.executable, "-m", "hatchkit", *map(str, words)], capture_output=True, text=True, check=True
    )
    print(done.stdout)


def answer_of(kind, home, statements):
    """What a student of this kind answers: stage, causes, interval, letters."""
    batch = next(
        str(row[2].value)
        for row in load_workbook(home / "answer_form.xlsx")["answer"].iter_rows()
        if row[0].value == "batch"
    )
    season = hk.load_season(home / "season")
    if kind == "none":
        return "none", ["none"], (0, 4), set()
    return automatic(season, batch, statements) if kind == "automatic" else Careful(season, batch, statements).answer()


def fill(path, answer):
    """Write the answer into the form."""
    stage, causes, (low, high), letters = answer
    given = {
        "stage": stage_words(stage),
        "cause": cause_words(causes[0]),
        "eggs_lost_low": round(low, 1),
        "eggs_lost_high": round(high, 1),
        "why": "It went together with it; something else is possible.",
    }
    given |= {"second_cause": cause_words(causes[1])} if len(causes) > 1 else {}
    given |= dict.fromkeys(letters, "x")
    book = load_workbook(path)
    for row in book["answer"].iter_rows():
        if row[0].value in given:
            row[2].value = given[row[0].value]
    book.save(path)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--level", default="second")
    parser.add_argument("--seed", default="20262026")
    options = parser.parse_args()
    lesson, began = options.folder / "class", time.time()
    run("lesson", lesson, "--students", len(STUDENTS), "--seed", options.seed, "--level", options.level)
    for number, kind in enumerate(STUDENTS, start=1):
        home = lesson / "students" / f"case_{number:02d}"
        shown = json.loads(
            (lesson / "teacher" / "answers" / f"case_{number:02d}_shown.json").read_text(encoding="utf-8")
        )
        statements = [(fact["letter"], fact["code"], fact["numbers"]) for fact in shown["statements"]]
        if kind != "absent":
            fill(home / "answer_form.xlsx", answer_of(kind, home, statements))
        print(f"case {number:02d}: {kind}")
    run("mark", lesson / "students", lesson, "--give-back", options.folder / "back")
    run("mark", lesson / "students", lesson, "--give-back", options.folder / "back")
    for path in sorted(options.folder.glob("back*/*")):
        print(path.relative_to(options.folder), path.stat().st_size // 1000, "kB")
    print(f"{time.time() - began:.0f} s")
