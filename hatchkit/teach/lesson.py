"""A lesson: one season with a hidden cause for each student, the teacher's answer book, and marking.

A lesson folder holds two folders that part before the class begins: ``students`` (a case for each,
with a blank answer sheet) and ``teacher`` (the answer book).
"""

from __future__ import annotations

import secrets
import sys
import time
from html import escape
from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.losses.proportions import interval
from hatchkit.problems import HatchkitError
from hatchkit.simulate import causes, seasons
from hatchkit.teach.answer_words import STAGES
from hatchkit.teach.marking import BOOK, SHEET_COLUMNS, SOME, mark_answers, rules

__all__ = ["mark_answers", "write_lesson"]

#: Seeds below this can be tried one after another by somebody who knows the kit.
GUESSED = 10**9
_HIDE = "Whoever knows the seed can make this answer book: keep it as you keep the book."


def write_lesson(folder, *, students, seed=None, severities=("moderate", "severe"), batches=6, eggs=48,
                 species="chicken", progress=None) -> Path:
    """Write a case for each student and the answer book.

    Parameters
    ----------
    folder : path
        New or empty.
    students : int
        How many cases.
    seed : int, optional
        The same seed gives the same lesson and the same answer book; drawn afresh, too large to be
        guessed, if left out. It is written in the answer book alone.
    severities : sequence of str
        Drawn from for each case.
    batches, eggs, species
        As in `simulate.simulate_season`.
    progress : file, optional
        Where the progress line goes if the work takes over two seconds; by default standard error,
        where it is a terminal.

    Returns
    -------
    Path
        The answer book as a page for the teacher; the same table lies beside it as CSV
        (columns: ``reference/columns_lesson.csv``).
    """
    if students < 1:
        raise HatchkitError("A lesson needs at least one student.")
    seed = secrets.randbits(64) if seed is None else int(seed)
    if seed < 0:
        raise HatchkitError(f"A seed is a whole number from 0 up, not {seed}; leave it out to have one drawn.")
    folder = seasons.empty_folder(folder)
    rng = np.random.default_rng([seed, 7])
    names = _causes_for(rng, students)
    show = _Progress(students, "cases written", progress)
    rows = []
    for number in range(1, students + 1):
        case = f"{number:02d}"
        severity = str(rng.choice(list(severities)))
        home = folder / "students" / f"case_{case}"
        answer = seasons.simulate_season(
            home / "season", seed=int(rng.integers(2**62)), cause=names[number - 1], severity=severity,
            batches=batches, eggs=eggs, species=species)
        _blank_sheet(home / "answer_sheet.csv", case, answer.batch)
        answer.write(folder / "teacher" / "answers" / f"case_{case}.json")
        rows.append(_book_row(case, answer))
        show.step()
    show.end()
    book = pd.DataFrame(rows)
    book.to_csv(folder / BOOK, index=False)
    (folder / "students" / "README.md").write_text(_guide(), encoding="utf-8")
    page = (folder / BOOK).with_suffix(".html")
    page.write_text(_book_page(book, seed), encoding="utf-8")
    return page


def _causes_for(rng, students):
    """Each cause once before any comes twice, in an order that tells nothing."""
    names = causes.cause_names()
    drawn = [name for _ in range(-(-students // len(names))) for name in rng.permutation(names)]
    return [str(name) for name in drawn[:students]]


def _blank_sheet(path, case, batch):
    row = {"case": case, "batch": batch}
    pd.DataFrame([row], columns=list(SHEET_COLUMNS)).to_csv(path, index=False)


def _book_row(case, answer):
    mine = answer.causes[answer.causes["batch"] == answer.batch]
    text = mine["stages"].iloc[0] if len(mine) else ""
    stages = {stage: int(count) for stage, count in (part.split() for part in text.split(", ") if part)} or {"none": 0}
    most, *rest = stages
    lost = answer.lost()
    count = int((answer.eggs["batch"] == answer.batch).sum())
    low, high = (float(side) * count for side in interval(lost, count))
    names = reference.load("simulate_causes").set_index("cause")
    return {
        "case": case, "seed": answer.seed, "batch": answer.batch, "eggs_set": count, "cause": answer.cause,
        "name": names.loc[answer.cause, "name"], "severity": answer.severity if len(mine) else "",
        "stage": most, "also": " ".join(stage for stage in rest if stages[stage] >= SOME * sum(stages.values())),
        "stages": text, "eggs_lost": lost, "eggs_lost_low": round(low, 1), "eggs_lost_high": round(high, 1),
        "other_batches": " ".join(answer.causes.loc[answer.causes["batch"] != answer.batch, "batch"]),
        "said": answer.words(),
    }


def _guide():
    table = reference.load("simulate_causes")
    listed = "\n".join(f"- `{row.cause}`: {row.name}" for row in table.itertuples(index=False))
    given = "\n".join(f"- {rule}" for rule in rules())
    return f"""# Your case

The seasons are invented. In your folder you find `season` (open it with hatchkit, as you would open
your own) and `answer_sheet.csv`, which asks about one batch of it. Fill in:

- `stage`: where most of the eggs were lost to the cause: {', '.join(f'`{s}`' for s in STAGES)}
- `cause`: one of the words below; not every season has a cause
- `eggs_lost`: how many more eggs of the batch would have hatched without the cause. Eggs that would have been
  clear, or have died, in an ordinary batch as well do not count; 0 if you find no cause
- `eggs_lost_low`, `eggs_lost_high`: between which figures you are fairly sure (95 %) that it lies
- `why`: in one sentence, what you saw

The stages: `infertile` (a clear that was never fertile; the word `clear` is taken for it), `early` (days 1-7
of a hen's egg, also where the embryo died too soon to be seen), `mid` (days 8-14), `late` (days 15-21, shell not
broken), `pipped` (shell broken and died), `removed` (rotten), `none` (nothing was lost to a cause). Other birds: thirds
of the incubation.

What is usual you read from the batches that went well: from the share of their eggs that hatched comes how many
of this batch should have hatched.

The causes to choose from:

{listed}

## How the marks are given

{given}

You may save the sheet as .csv, .xlsx or .ods.
"""


def _book_page(book, seed):
    shown = book.drop(columns=["seed", "name"]).rename(columns=lambda name: name.replace("_", " "))
    head = "".join(f"<th>{escape(name)}</th>" for name in shown)
    body = "".join("<tr>" + "".join(f"<td>{escape(str(cell))}</td>" for cell in row) + "</tr>"
                   for row in shown.itertuples(index=False))
    return f"""<!DOCTYPE html>
<html lang="en"><head><meta charset="utf-8"><title>Answer book</title>
<style>body {{ font: 15px/1.4 Georgia, serif; max-width: 80rem; margin: 2rem auto; padding: 0 1rem; }}
table {{ border-collapse: collapse; }} td, th {{ border: 1px solid #888; padding: .2rem .5rem; text-align: left;
vertical-align: top; }} @media print {{ body {{ font-size: 9pt; }} tr {{ break-inside: avoid; }} }}</style></head>
<body><h1>Answer book</h1>
<p>For the teacher. {len(book)} invented cases, made with seed {seed}. {_HIDE} Keep the folder <em>teacher</em> away
from the students; the whole truth about every egg is in <em>teacher/answers</em>. <em>Eggs lost</em> is how many more
chicks the same eggs would have given without the cause, <em>stages</em> where those eggs were lost.
<em>Eggs lost low</em> and <em>high</em> are the 95 % interval (Wilson) that a batch of this size allows; the marks do
not use it.</p>
<p>How the marks are given, as the students read it:</p>
<ul>{"".join(f"<li>{escape(rule)}</li>" for rule in rules())}</ul>
<table><thead><tr>{head}</tr></thead><tbody>{body}</tbody></table></body></html>
"""


class _Progress:
    """A line on standard error, from two seconds on, only where a person can see it change."""

    def __init__(self, total, words, file=None):
        self.total, self.words, self.done = total, words, 0
        self.file = sys.stderr if file is None else file
        # written into a file or a pipe, a line that overwrites itself is only noise
        self.seen = file is not None or self.file.isatty()
        self.begin, self.shown = time.monotonic(), False

    def step(self):
        self.done += 1
        if self.seen and time.monotonic() - self.begin > 2:
            full = round(30 * self.done / self.total)
            print(f"\r[{'#' * full}{'.' * (30 - full)}] {self.done} of {self.total} {self.words}",
                  end="", file=self.file, flush=True)
            self.shown = True

    def end(self):
        if self.shown:
            print(file=self.file)
