"""Marking: students' answer sheets against the answer book, with credit for part of the truth."""

from __future__ import annotations

import textwrap
from dataclasses import dataclass
from pathlib import Path

import pandas as pd

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.problems import table as problem_table
from hatchkit.teach.answer_sheets import SHEET_COLUMNS, kind_of, read_answers, sentence
from hatchkit.teach.answer_words import cause_meant, number_meant, stage_meant

__all__ = ["BOOK", "SHEET_COLUMNS", "Marking", "mark_answers", "rules", "target", "write_marks"]

#: Shares of the mark: where the eggs were lost, to what, and how many.
WEIGHTS = {"stage": 0.3, "cause": 0.4, "size": 0.3}
HALF = 0.5
#: A stage with so large a part of what the worst stage took is as right; one with a quarter of all earns half.
NEARLY, SOME = 0.8, 0.25
#: Shares of the eggs set. Who takes the share hatched of the untouched batches for the usual came within a
#: twentieth of the truth in 60 % of 320 simulated cases, within a tenth in 95 %; the error's SD was 0.049, and an
#: interval from the counts alone was 0.24 wide (160 cases, 0.29 at most).
NEAR, FAIR, WIDEST = 0.05, 0.1, 0.3
BOOK = Path("teacher") / "answer_book.csv"
WIDTH = 100


@dataclass(frozen=True)
class Marking:
    """Marks of a class.

    Attributes
    ----------
    marks : DataFrame
        One row per case of the answer book (columns: ``reference/columns_lesson.csv``, table marks).
    problems : DataFrame
        Files and rows that were not taken, or not as written (columns of `hatchkit.problems`).
    """

    marks: pd.DataFrame
    problems: pd.DataFrame

    def words(self) -> str:
        """The rule, a narrow table, a sentence for each student, and what was not taken."""
        lines = ["How the marks are given:", *_wrapped(rules()), "", "What was answered, with the truth in brackets:",
                 _narrow(self.marks), "", *_wrapped(self.marks["told"])]
        if len(self.problems):
            rows = self.problems.astype(object).where(self.problems.notna(), "").to_dict("records")
            lines += ["", "Not taken, or not as it stands there:", *_wrapped(map(sentence, rows))]
        return "\n".join(lines)


def mark_answers(answers, folder) -> Marking:
    """Compare filled-in answer sheets with the answer book.

    Parameters
    ----------
    answers : path
        One table with a row per case (CSV or workbook), or a folder in which every such table is taken
        (sub-folders too).
    folder : path
        The lesson folder.

    Returns
    -------
    Marking
        A case without an answer gets nothing and is listed.
    """
    book = _read_book(folder)
    given, problems = read_answers(answers, cases=book["case"], teacher=(Path(folder) / BOOK).parent)
    rows = [_marked(row, given.loc[row["case"]] if row["case"] in given.index else None)
            for _, row in book.iterrows()]
    return Marking(pd.DataFrame(rows), problem_table(problems))


def rules() -> list[str]:
    """How marks are given, in plain words: one line for each part."""
    stage, cause, size = (f"{WEIGHTS[part]:.0%}".replace("%", " %") for part in WEIGHTS)
    table = reference.load("simulate_causes")
    kinds = "; ".join(", ".join(group["cause"]) for _, group in table.groupby("named_by_advice", sort=False)
                      if len(group) > 1)
    return [
        f"Stage, {stage} of the mark: all of it for the stage in which most of the eggs were lost to the cause (or "
        "nearly as many, four fifths), half for another with at least a quarter of them.",
        f"Cause, {cause}: all of it for the cause, half for another of the same kind ({kinds}).",
        f"Eggs lost, {size}: half of it for a figure within a twentieth of the eggs set of the true number (a quarter "
        "within a tenth); the other half for an interval that holds both the true number and such a figure and is "
        "no wider than three tenths of the eggs set."]


def target(path) -> Path:
    """The file that marks are written to; HatchkitError if it is another's file or its folder is missing."""
    path = Path(path)
    if not path.parent.is_dir():
        raise HatchkitError(f"There is no folder {path.parent} to write {path.name} into; make it first.")
    if path.is_dir():
        raise HatchkitError(f"{path} is a folder; name a file for the marks.")
    if path.exists() and kind_of(path) != "marks":
        raise HatchkitError(f"{path} exists and is not a file of marks, so it is not written over; name a new file.")
    return path


def write_marks(marks, path) -> Path:
    """Write the marks as CSV that is safe to open in a spreadsheet; only an earlier file of marks is replaced."""
    from hatchkit.records.safe_csv import safe_cell

    path = target(path)
    texts = [name for name in marks if not pd.api.types.is_numeric_dtype(marks[name])]
    marks.assign(**{name: marks[name].map(safe_cell) for name in texts}).to_csv(path, index=False, encoding="utf-8-sig")
    return path


def _read_book(folder):
    path = Path(folder) / BOOK
    if not path.exists():
        raise HatchkitError(f"{folder} holds no answer book ({BOOK.as_posix()}); it is not a lesson folder.")
    try:
        book = pd.read_csv(path, dtype={"case": str, "batch": str}, keep_default_na=False)
    except ValueError as error:
        raise HatchkitError(f"{path} cannot be read; put back the file that hatchkit wrote.") from error
    known = reference.load("columns_lesson").query("table == 'answer_book'")["column"]
    if absent := [name for name in known if name not in book]:
        raise HatchkitError(f"{path} has no column {', '.join(absent)}: another program saved it anew, or an older "
                            "hatchkit wrote it. Put back the file that hatchkit wrote, or make the lesson anew.")
    return book


def _marked(truth, given):
    row = {"case": truth["case"], "file": "", "answered": given is not None, "student_stage": "",
           "stage": truth["stage"], "stage_credit": 0.0, "student_cause": "", "cause": truth["cause"],
           "cause_credit": 0.0, "student_lost": "", "student_low": "", "student_high": "",
           "eggs_lost": int(truth["eggs_lost"]), "size_credit": 0.0, "share_of_mark": 0.0}
    if given is None:
        return row | {"told": f"Case {truth['case']}: no answer that could be marked.", "said": truth["said"]}
    stage, cause, remarks = _stage_and_cause(given["stage"], given["cause"])
    figure, low, high, doubts = _size(given, truth["eggs_set"])
    remarks += doubts
    if given["batch"] and _bare(given["batch"]) != _bare(truth["batch"]):
        remarks.append(f"the sheet names batch {given['batch']}, but the case asks about batch {truth['batch']}")
    credits = {"stage": _stage_credit(truth, stage), "cause": _cause_credit(truth, cause),
               "size": _size_credit(truth, figure, low, high)}
    total = sum(WEIGHTS[part] * credits[part] for part in WEIGHTS)
    told = [_stage_told(truth, stage, credits["stage"]), _cause_told(truth, cause, credits["cause"]),
            _size_told(truth, figure, low, high)]
    note = f" Note: {'; '.join(remarks)}." if remarks else ""
    shown = {f"student_{end}": "" if value is None else f"{value:g}"
             for end, value in (("lost", figure), ("low", low), ("high", high))}
    return row | shown | {
        "file": given["file"], "student_stage": stage or given["stage"], "student_cause": cause or given["cause"],
        **{f"{part}_credit": credits[part] for part in WEIGHTS}, "share_of_mark": round(total, 3),
        "told": f"Case {truth['case']} ({given['file']}), {100 * total:.0f} % of the mark: {'; '.join(told)}.{note}",
        "said": truth["said"]}


def _bare(batch):
    return str(batch).strip().lower().removeprefix("batch").strip(" .:#_").removesuffix(".0").lstrip("0")


def _stage_and_cause(stage_text, cause_text):
    """Stage and cause as meant; the two taken the other way round where they only make sense so."""
    (stage, odd_stage), (cause, odd_cause) = stage_meant(stage_text), cause_meant(cause_text)
    other_stage, other_cause = stage_meant(cause_text)[0], cause_meant(stage_text)[0]
    if not stage and not cause and (other_stage or not cause_text) and (other_cause or not stage_text) \
            and (other_stage or other_cause):
        return other_stage, other_cause, ["stage and cause stand in each other's column and are taken as meant"]
    return stage, cause, [odd for odd in (odd_stage, odd_cause) if odd]


def _size(given, eggs):
    """(figure, low, high, remarks) of the eggs lost; the interval within 0 and the eggs set."""
    remarks = []

    def read(name, what):
        value, low, high, understood = number_meant(given[name])
        if not understood:
            remarks.append(f"under {what}, '{given[name]}' is not understood as a number of eggs")
        return value, low, high

    figure, own_low, own_high = read("eggs_lost", "eggs lost")
    low, high = (read(f"eggs_lost_{side}", f"eggs lost, {side}")[0] for side in ("low", "high"))
    if low is None and high is None:
        low, high = own_low, own_high
    elif low is None or high is None:
        remarks.append("the interval has one side only, so it does not count")
        low = high = None
    if low is not None and low > high:
        low, high = high, low
        remarks.append("the ends of the interval are the wrong way round and are swapped")
    if low is not None and (low < 0 or high > eggs):
        remarks.append(f"the interval {low:g} to {high:g} goes beyond 0 to the {eggs} eggs set and is cut there")
        low, high = (min(max(side, 0.0), float(eggs)) for side in (low, high))
    if figure is None and low is not None and not given["eggs_lost"]:
        figure = (low + high) / 2
        remarks.append("no figure is given, so the middle of the interval is taken")
    if figure is not None and not 0 <= figure <= eggs:
        remarks.append(f"{figure:g} cannot be, as {eggs} eggs were set")
    return figure, low, high, remarks


def _stages_of(truth):
    """Stage -> eggs lost in it, largest first."""
    parts = [part.split() for part in str(truth["stages"]).split(", ") if part]
    return {stage: int(count) for stage, count in parts} or {truth["stage"]: 1}


def _stage_credit(truth, stage):
    counts = _stages_of(truth)
    here, most = counts.get(stage, 0), max(counts.values())
    return 1.0 if here and here >= NEARLY * most else HALF if here >= SOME * sum(counts.values()) else 0.0


def _cause_credit(truth, cause):
    kinds = reference.load("simulate_causes").set_index("cause")["named_by_advice"]
    if not cause or cause == truth["cause"]:
        return float(bool(cause))
    return HALF if kinds[cause] == kinds[truth["cause"]] else 0.0


def _off(truth, figure):
    """0 near, 1 fair, 2 further off; a single egg is always near and two are fair."""
    away, eggs = abs(figure - truth["eggs_lost"]), truth["eggs_set"]
    return 0 if away <= max(1, NEAR * eggs) else 1 if away <= max(2, FAIR * eggs) else 2


def _wrong_interval(truth, figure, low, high):
    """Why an interval earns nothing, or ""."""
    if not low <= truth["eggs_lost"] <= high:
        return "does not hold the true number"
    if not low <= figure <= high:
        return "does not hold the figure itself"
    if high - low > WIDEST * truth["eggs_set"]:
        return f"is wider than three tenths of the {truth['eggs_set']} eggs set"
    return "" if _off(truth, figure) < 2 else "stands beside a figure too far off"


def _size_credit(truth, figure, low, high):
    if figure is None:
        return 0.0
    honest = low is not None and not _wrong_interval(truth, figure, low, high)
    return (0.5, 0.25, 0.0)[_off(truth, figure)] + 0.5 * honest


def _stage_told(truth, stage, credit):
    if not stage:
        return f"no stage that is understood (it was {truth['stage']})"
    return f"stage {stage} is " + {1.0: "right", HALF: f"half right (most were lost {_as_stage(truth['stage'])})"}.get(
        credit, f"not right (it was {truth['stage']})")


def _as_stage(stage):
    return {"early": "early", "late": "late", "mid": "in the middle"}.get(stage, f"as {stage}")


def _cause_told(truth, cause, credit):
    if not cause:
        return f"no cause that is understood (it was {truth['cause']})"
    return f"cause {cause} is " + {1.0: "right", HALF: f"of the same kind as the true one, {truth['cause']}"}.get(
        credit, f"not right (it was {truth['cause']})")


def _size_told(truth, figure, low, high):
    if figure is None:
        return f"no number of eggs lost that is understood (it was {truth['eggs_lost']})"
    words = ("near", "fairly near", "not near")[_off(truth, figure)]
    text = f"{figure:g} eggs lost is {words} the true {truth['eggs_lost']}"
    if low is None:
        return text + ", without an interval"
    wrong = _wrong_interval(truth, figure, low, high)
    joint = "but" if wrong and words != "not near" else "and"
    return f"{text}, {joint} the interval {low:g} to {high:g} {wrong or 'is right'}"


def _wrapped(lines):
    return [textwrap.fill(f"- {line}", WIDTH, subsequent_indent="  ") for line in lines]


def _narrow(marks):
    heads = ("Case", "Stage", "Cause", "Eggs lost", "Mark")
    rows = [(row.case, f"{_short(row.student_stage)} ({row.stage})", f"{_short(row.student_cause)} ({row.cause})",
             f"{_sized(row)} ({row.eggs_lost})", f"{100 * row.share_of_mark:.0f} %" if row.answered else "no answer")
            for row in marks.itertuples()]
    wide = [max(map(len, column)) for column in zip(heads, *rows, strict=True)]
    return "\n".join("  ".join(text.ljust(size) for text, size in zip(line, wide, strict=True)).rstrip()
                     for line in (heads, *rows))


def _short(text):
    return (text if len(text) <= 18 else text[:15] + "...") or "-"


def _sized(row):
    return (row.student_lost or "-") + (f", {row.student_low} to {row.student_high}" if row.student_low else "")
