"""The whole course done once as a student would: every section, first a usual mistake, then the answer.

    python tests/benchmarks/course_minutes.py [lesson ...]

Reading at 150 words a minute, a picture half a minute, a code cell to be run and looked at a quarter, an exercise by
its kind (a letter 1, a number 2.5, a pair 3, a finding 8, a case 15 minutes; a usual mistake half as much again). The
cells are run for what they say, so an answer that is not right stops the script; the minutes are worked out, nobody's
clock was looked at.
"""

from __future__ import annotations

import contextlib
import io
import re
import sys
import time
from pathlib import Path

import matplotlib

matplotlib.use("Agg")
import nbformat

from hatchkit.teach import exercises
from hatchkit.teach.course_finding import Writing
from hatchkit.teach.judging import NOT_YET, Exercise, HiddenCause
from hatchkit.teach.outline import sections

TEACHER = Path(__file__).resolve().parents[2] / "notebooks" / "teacher"
WORDS, PICTURE, CELL = 150.0, 0.5, 0.25
KIND = {"letter": 1.0, "number": 2.5, "pair": 3.0, "finding": 8.0, "case": 15.0, "look": 3.0}


def lessons():
    """Lesson -> its teacher's notebook."""
    return {re.sub(r"^(?:lesson_)?\d_|_solutions$", "", path.stem): path for path in sorted(TEACHER.glob("*.ipynb"))}


def kind_of(name, data):
    """Letter, number, pair, finding, case or look."""
    exercise = exercises.EXERCISES[name]
    if isinstance(exercise, Exercise):
        right = exercise.right(*data)
        return "letter" if isinstance(right, str) else "pair" if isinstance(right, tuple) else "number"
    return "finding" if isinstance(exercise, Writing) else "case" if isinstance(exercise, HiddenCause) else "look"


def do(path):
    """Run a notebook section by section; rows of section, words, pictures, exercises, mistakes hinted at, minutes."""
    rows, names, state = [], {}, {}

    def checked(name, answer, *data):
        kind, hinted = kind_of(name, data), 0
        exercise = exercises.EXERCISES[name]
        for wrong in list(getattr(exercise, "mistakes", {}).values())[:1]:
            verdict = exercises.judge(name, wrong(*data), *data)
            if verdict.state == NOT_YET:
                hinted = 1
        said = exercises.judge(name, answer, *data)
        if said.state == NOT_YET:
            raise SystemExit(f"{path.name}, {name}: {said.words}")
        state["exercises"] += 1
        state["hinted"] += hinted
        state["minutes"] += KIND[kind] * (1 + 0.5 * hinted)

    names.update(check=checked, begin=lambda _: None, progress=lambda _: None)
    for cell in nbformat.read(path, as_version=4).cells:
        if "teacher" in cell.metadata.get("tags", []):
            continue
        if cell.cell_type == "markdown":
            if state and not cell.source.startswith(("## How far", "## What this")):
                words = len(cell.source.split())
                state["words"] += words
                state["minutes"] += words / WORDS
            continue
        begun = re.search(r'begin\("(\w+)"\)', cell.source)
        if begun:
            state = dict(section=begun[1], words=0, pictures=0, exercises=0, hinted=0, minutes=0.0, seconds=0.0)
            rows.append(state)
        source = re.sub(r"^from hatchkit\.teach\.exercises import .*$", "", cell.source, flags=re.M)
        began = time.perf_counter()
        with contextlib.redirect_stdout(io.StringIO()):
            exec(source, names)
        if state:
            pictures = source.count("chart(")
            state["pictures"] += pictures
            state["minutes"] += CELL + PICTURE * pictures
            state["seconds"] += time.perf_counter() - began
    return rows


if __name__ == "__main__":
    wanted = sys.argv[1:] or list(lessons())
    total = 0.0
    for lesson in wanted:
        told = sections(lesson).set_index("section")["minutes"]
        print(lesson)
        print(f"  {'section':14}{'words':>6}{'pict.':>6}{'exer.':>6}{'hints':>6}{'run s':>7}{'min':>6}{'told':>6}")
        for row in do(lessons()[lesson]):
            total += row["minutes"]
            print(
                f"  {row['section']:14}{row['words']:6}{row['pictures']:6}{row['exercises']:6}{row['hinted']:6}"
                f"{row['seconds']:7.1f}{row['minutes']:6.0f}{told[row['section']]:6}"
            )
    print(f"all together {total:.0f} minutes")
