"""Marking: students' answer sheets against the answer book, with credit for part of the truth."""

from __future__ import annotations

from pathlib import Path

import pandas as pd

from hatchkit import reference
from hatchkit.problems import HatchkitError

SHEET_COLUMNS = ("case", "batch", "stage", "cause", "eggs_lost", "eggs_lost_low", "eggs_lost_high", "why")
#: Shares of the mark: where the eggs were lost, to what, and how many.
WEIGHTS = {"stage": 0.3, "cause": 0.4, "size": 0.3}
HALF = 0.5
BOOK = Path("teacher") / "answer_book.csv"


def mark_answers(answers, folder) -> pd.DataFrame:
    """Compare filled-in answer sheets with the answer book.

    Parameters
    ----------
    answers : path
        One CSV file with a row per case, or a folder in which every ``*.csv`` with the columns of an
        answer sheet is taken (sub-folders too).
    folder : path
        The lesson folder.

    Returns
    -------
    DataFrame
        One row per case: case, student_stage, stage, stage_credit, student_cause, cause, cause_credit,
        student_lost, eggs_lost, size_credit, share_of_mark (0 to 1), said. A case without an answer
        gets nothing and is listed.
    """
    book = _read_book(folder)
    given = _read_sheets(answers)
    unknown = sorted(set(given["case"]) - set(book["case"]))
    if unknown:
        raise HatchkitError(f"The answer book has no case {', '.join(unknown)}; is it the book of this lesson?")
    twice = sorted(given["case"][given["case"].duplicated()].unique())
    if twice:
        raise HatchkitError(f"There is more than one answer for case {', '.join(twice)}; leave one of them.")
    given = given.set_index("case")
    rows = [_marked(row, given.loc[row["case"]] if row["case"] in given.index else None)
            for _, row in book.iterrows()]
    return pd.DataFrame(rows)


def _read_book(folder):
    path = Path(folder) / BOOK
    if not path.exists():
        raise HatchkitError(f"{folder} holds no answer book ({BOOK.as_posix()}); it is not a lesson folder.")
    return pd.read_csv(path, dtype={"case": str, "batch": str}, keep_default_na=False)


def _read_sheets(answers):
    answers = Path(answers)
    if not answers.exists():
        raise HatchkitError(f"{answers} does not exist.")
    paths = sorted(answers.rglob("*.csv")) if answers.is_dir() else [answers]
    sheets = [sheet for path in paths if (sheet := _read_sheet(path, strict=not answers.is_dir())) is not None]
    if not sheets:
        raise HatchkitError(f"There is no filled-in answer sheet in {answers}.")
    return pd.concat(sheets, ignore_index=True)


def _read_sheet(path, *, strict):
    try:
        # students' programs write commas or semicolons; the headings tell which
        text = path.read_text(encoding="utf-8-sig")
        sep = ";" if text.split("\n", 1)[0].count(";") > 2 else ","
        sheet = pd.read_csv(path, dtype=str, sep=sep, keep_default_na=False, encoding="utf-8-sig")
    except (ValueError, OSError) as error:
        if strict:
            raise HatchkitError(f"{path} cannot be read as an answer sheet ({error}).") from error
        return None
    sheet.columns = [str(name).strip().lower() for name in sheet.columns]
    missing = [name for name in ("case", "stage", "cause", "eggs_lost") if name not in sheet]
    if missing:
        if strict:
            raise HatchkitError(f"{path} has no column {', '.join(missing)}; it is not an answer sheet.")
        return None
    sheet = sheet.reindex(columns=list(SHEET_COLUMNS), fill_value="").apply(lambda column: column.str.strip())
    sheet = sheet[sheet["case"] != ""]
    sheet["case"] = sheet["case"].str.removesuffix(".0").str.zfill(2)
    return sheet


def _marked(truth, given):
    blank = given is None or not (given["stage"] or given["cause"] or given["eggs_lost"])
    credits = dict.fromkeys(WEIGHTS, 0.0) if blank else {
        "stage": _stage_credit(truth, given["stage"]), "cause": _cause_credit(truth, given["cause"]),
        "size": _size_credit(truth, given)}
    total = sum(WEIGHTS[part] * credits[part] for part in WEIGHTS)
    return {
        "case": truth["case"], "answered": not blank,
        "student_stage": "" if blank else given["stage"], "stage": truth["stage"],
        "stage_credit": credits["stage"], "student_cause": "" if blank else given["cause"],
        "cause": truth["cause"], "cause_credit": credits["cause"],
        "student_lost": "" if blank else given["eggs_lost"], "eggs_lost": int(truth["eggs_lost"]),
        "size_credit": credits["size"], "share_of_mark": round(total, 3), "said": truth["said"]}


def _plain(text):
    return str(text).strip().lower().replace("-", "_").replace(" ", "_")


def _stage_credit(truth, stage):
    """All for the stage with most of the losses, half for another with at least a quarter of them."""
    stage = _plain(stage).removesuffix("_dead")
    if stage == truth["stage"]:
        return 1.0
    return HALF if stage in str(truth["also"]).split() else 0.0


def _cause_credit(truth, cause):
    """All for the cause, half for one of the same kind (such as two ways to chill eggs)."""
    table = reference.load("simulate_causes")
    words = {_plain(row.name): row.cause for row in table.itertuples(index=False)}
    cause = words.get(_plain(cause), _plain(cause))
    if cause == truth["cause"]:
        return 1.0
    kinds = table.set_index("cause")["named_by_advice"]
    return HALF if cause in kinds.index and kinds[cause] == kinds[truth["cause"]] else 0.0


def _size_credit(truth, given):
    """By the interval if there is one: all if it holds the truth and is no wider than half the eggs.

    Without an interval the figure itself must lie within the book's interval, which earns half.
    """
    values = [_number(given[name]) for name in ("eggs_lost", "eggs_lost_low", "eggs_lost_high")]
    middle, low, high = values
    if low is not None and high is not None and low <= high:
        holds = low <= truth["eggs_lost"] <= high
        return (1.0 if high - low <= truth["eggs_set"] / 2 else HALF) if holds else 0.0
    near = middle is not None and truth["eggs_lost_low"] <= middle <= truth["eggs_lost_high"]
    return HALF if near else 0.0


def _number(text):
    try:
        return float(str(text).replace(",", "."))
    except ValueError:
        return None
