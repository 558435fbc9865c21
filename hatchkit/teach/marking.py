"""Marking: students' answers against what the records of their cases can show, with credit for part of the truth."""

import re
import textwrap
from dataclasses import dataclass
from pathlib import Path

import pandas as pd

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.problems import table as problem_table
from hatchkit.say import text
from hatchkit.teach import credit
from hatchkit.teach.answer_sheets import kind_of, read_answers, sentence
from hatchkit.teach.answer_words import cause_meant, number_meant, stage_meant
from hatchkit.teach.credit import WEIGHTS

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
    book : DataFrame
        The answer book.
    """

    marks: pd.DataFrame
    problems: pd.DataFrame
    book: pd.DataFrame

    def words(self) -> str:
        """The rule, a narrow table, a sentence for each student, and what was not taken."""
        lines = [
            text("marks_rules"),
            *_wrapped(rules()),
            "",
            text("marks_answered"),
            _narrow(self.marks),
            "",
            *_wrapped(self.marks["told"]),
        ]
        if len(self.problems):
            lines += ["", text("marks_not_taken"), *_wrapped(self.not_taken())]
        return "\n".join(lines)

    def not_taken(self) -> list[str]:
        """A sentence for each file or row that was not taken, or not as it stands there."""
        rows = self.problems.astype(object).where(self.problems.notna(), "").to_dict("records")
        return list(map(sentence, rows))


def mark_answers(answers, folder) -> Marking:
    """Compare filled-in answer forms with the answer book.

    Parameters
    ----------
    answers : path
        A form, a table with a row per case (CSV or workbook), or a folder in which every such file is taken
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
    rows = [_marked(row, given.loc[row["case"]] if row["case"] in given.index else None) for _, row in book.iterrows()]
    return Marking(pd.DataFrame(rows), problem_table(problems), book)


def rules() -> list[str]:
    """How marks are given, in plain words: one line for each part."""
    table = reference.load("simulate_causes")
    kinds = "; ".join(
        ", ".join(group["cause"]) for _, group in table.groupby("named_by_advice", sort=False) if len(group) > 1
    )
    share = {name: f"{100 * weight:.0f} %" for name, weight in WEIGHTS.items()}
    return [
        text("teach_rule_stage", {"share": share["stage"]}),
        text("teach_rule_cause", {"share": share["cause"], "kinds": kinds}),
        text("teach_rule_none"),
        text("teach_rule_size", {"share": share["size"]}),
        text("teach_rule_facts", {"share": share["facts"]}),
        text("teach_rule_reasons", {"alone": f"{100 * credit.ALONE:.0f} %"}),
    ]


def target(path) -> Path:
    """A file for marks beside earlier ones: the path itself, or with the next number where it is taken by marks.

    HatchkitError if it is another's file or its folder is missing.
    """
    path = Path(path)
    if not path.parent.is_dir():
        raise HatchkitError("no_folder_for", dict(folder=str(path.parent), name=path.name))
    if path.is_dir():
        raise HatchkitError("marks_in_folder", dict(path=str(path)))
    if path.exists() and kind_of(path) != "marks":
        raise HatchkitError("not_marks", dict(path=str(path)))
    return unused(path)


def unused(path) -> Path:
    """The path, or with the next number behind its name that nothing has yet."""
    path, number = Path(path), 2
    first = path
    while path.exists():
        path, number = first.with_stem(f"{first.stem}_{number}"), number + 1
    return path


def write_marks(marks, path) -> Path:
    """Write the marks as CSV that is safe to open in a spreadsheet; nothing that is there is written over."""
    from hatchkit.records.safe_csv import safe_cell
    from hatchkit.records.writing import whole_file

    path = target(path)
    texts = [name for name in marks if not pd.api.types.is_numeric_dtype(marks[name])]
    safe = marks.assign(**{name: marks[name].map(safe_cell) for name in texts})
    with whole_file(path) as part:
        safe.to_csv(part, index=False, encoding="utf-8-sig")
    return path


def _read_book(folder):
    path = Path(folder) / BOOK
    if not path.exists():
        raise HatchkitError("no_answer_book", dict(folder=str(folder), book=BOOK.as_posix()))
    try:
        book = pd.read_csv(path, dtype={"case": str, "batch": str}, keep_default_na=False)
    except ValueError as error:
        raise HatchkitError("answer_book_unread", dict(path=str(path))) from error
    known = reference.load("columns_lesson").query("table == 'answer_book'")["column"]
    if absent := [name for name in known if name not in book]:
        raise HatchkitError("answer_book_lacks", dict(path=str(path), columns=absent))
    return book


def pairs(cell, kind=float) -> dict:
    """A cell such as "mid 9.2, late 3" as a dict."""
    return {name: kind(value) for name, value in (part.split() for part in str(cell).split(", ") if part)}


def _marked(truth, given):
    kinds = pairs(truth["statements"], str)
    row = {
        "case": truth["case"],
        "file": "",
        "answered": given is not None,
        "student_stage": "",
        "stages": truth["stages"],
        "stage_credit": 0.0,
        "student_causes": "",
        "causes": truth["causes"],
        "can_tell": truth["can_tell"],
        "cause_credit": 0.0,
        "student_low": "",
        "student_high": "",
        "eggs_lost": truth["eggs_lost"],
        "size_credit": 0.0,
        "student_facts": "",
        "bears": " ".join(letter for letter, kind in kinds.items() if kind == "bears"),
        "facts_credit": 0.0,
        "share_of_mark": 0.0,
        "finding": "",
        "told": text("teach_no_answer", dict(case=truth["case"], said=truth["said"])),
        "said": truth["said"],
    }
    if given is None:
        return row
    stage, causes, remarks = _stage_and_causes(given)
    low, high, more = _interval(given, int(truth["eggs_set"]))
    ticked = set(re.findall(r"[A-Z]", given["facts"].upper())) & set(kinds)
    earned = credits_of(truth, stage, causes, (low, high), ticked, kinds)
    total = round(credit.mark(earned), 3)
    if given["batch"] and _bare(given["batch"]) != _bare(truth["batch"]):
        remarks.append(text("remark_batch", dict(given=given["batch"], asked=truth["batch"])))
    note = f" Note: {'; '.join([*remarks, *more])}." if remarks or more else ""
    parts = _told(truth, stage, causes, (low, high), ticked, kinds, earned)
    told = text("teach_told", dict(case=truth["case"], file=given["file"], mark=total, parts="; ".join(parts)))
    return (
        row
        | {f"{part}_credit": round(earned[part], 3) for part in WEIGHTS}
        | {
            "file": given["file"],
            "student_stage": stage or given["stage"],
            "student_causes": " ".join(causes) if causes is not None else given["cause"],
            "student_low": "" if low is None else f"{low:g}",
            "student_high": "" if high is None else f"{high:g}",
            "student_facts": " ".join(sorted(ticked)),
            "share_of_mark": total,
            "finding": given["why"],
            "told": told + note,
        }
    )


def _bare(batch):
    return str(batch).strip().lower().removeprefix("batch").strip(" .:#_").removesuffix(".0").lstrip("0")


def credits_of(truth, stage, causes, ends, ticked, kinds):
    """Credit of each part, 0 to 1, by a row of the answer book."""
    stages, shown = pairs(truth["stages"]), pairs(truth["shown"])
    sure, took, width = max(shown.values(), default=0.0), sum(stages.values()), float(truth["width"])
    table = reference.load("simulate_causes").set_index("cause")["named_by_advice"].to_dict()
    return {
        "stage": credit.stage_credit(stage, stages=stages, sure=sure, width=width) if stage else 0.0,
        "cause": 0.0
        if causes is None
        else credit.cause_credit(
            [name for name in causes if name != "none"], shown=shown, kinds=table, took=took, width=width
        ),
        "size": 0.0 if ends[0] is None else credit.size_credit(*ends, float(truth["eggs_lost"]), width),
        "facts": credit.facts_credit(ticked, kinds),
    }


def _stage_and_causes(given):
    """Stage, causes (None where none is understood), remarks.

    Stage and cause the other way round where only that makes sense.
    """
    (stage, odd_stage), (cause, odd_cause) = stage_meant(given["stage"]), cause_meant(given["cause"])
    other_stage, other_cause = stage_meant(given["cause"])[0], cause_meant(given["stage"])[0]
    remarks = [odd for odd in (odd_stage, odd_cause) if odd]
    if (
        not stage
        and not cause
        and (other_stage or not given["cause"])
        and (other_cause or not given["stage"])
        and (other_stage or other_cause)
    ):
        stage, cause = other_stage, other_cause
        remarks = [text("remark_swapped")]
    second, odd_second = cause_meant(given["second_cause"])
    causes = [name for name in dict.fromkeys([cause, second]) if name]
    if len(causes) > 1:
        causes = [name for name in causes if name != "none"]
    return stage, causes or None, remarks + ([odd_second] if odd_second else [])


def _interval(given, eggs):
    """(low, high, remarks) of the eggs lost, within 0 and the eggs set; None where nothing is understood."""
    remarks = []

    def read(name):
        value, low, high, understood = number_meant(given[name], eggs)
        if not understood:
            remarks.append(text("remark_no_number", dict(field=name, given=given[name])))
        return value, low, high

    figure, own_low, own_high = read("eggs_lost")
    low, high = (read(f"eggs_lost_{side}")[0] for side in ("low", "high"))
    if low is None and high is None:
        low, high = (own_low, own_high) if own_low is not None else (figure, figure)
        if figure is not None and own_low is None:
            remarks.append(text("remark_one_figure"))
    elif low is None or high is None:
        remarks.append(text("remark_one_side"))
        low = high = None
    if low is not None and low > high:
        low, high = high, low
        remarks.append(text("remark_ends_swapped"))
    if low is not None and low > eggs:
        remarks.append(text("remark_beyond", dict(low=low, eggs=eggs)))
        return None, None, remarks
    if low is not None and high > eggs:
        remarks.append(text("remark_cut", dict(low=low, high=high, eggs=eggs)))
        high = float(eggs)
    return low, high, remarks


def _told(truth, stage, causes, ends, ticked, kinds, earned):
    """What was right and what not, a clause for each part."""
    stages = pairs(truth["stages"])
    most = max(stages, key=stages.get, default="none")
    facts = dict(planted=truth["causes"].replace(" ", ", "), truth=truth["can_tell"].replace(" ", ", "))
    yield text(
        "teach_told_stage" if stage else "teach_told_no_stage",
        dict(given=stage, truth=most, credit=_grade(earned["stage"])),
    )
    named = ", ".join(causes or [])
    yield text(
        "teach_told_cause" if causes else "teach_told_no_cause",
        facts | dict(given=named, credit=_grade(earned["cause"])),
    )
    if ends[0] is None:
        yield text("teach_told_no_size", dict(truth=truth["eggs_lost"]))
    else:
        yield text(
            "teach_told_size",
            dict(
                low=ends[0],
                high=ends[1],
                truth=truth["eggs_lost"],
                credit=earned["size"],
                inside=bool(ends[0] <= truth["eggs_lost"] <= ends[1]),
            ),
        )
    bears, others = ({letter for letter, kind in kinds.items() if kind == own} for own in ("bears", "not"))
    yield text(
        "teach_told_facts",
        dict(bears=len(bears), hit=len(bears & ticked), others=len(others), false=len(others & ticked)),
    )


def _grade(share):
    return "right" if share > 0.995 else "nothing" if share < 0.005 else "half" if abs(share - 0.5) < 0.005 else "part"


def _wrapped(lines):
    return [textwrap.fill(f"- {line}", WIDTH, subsequent_indent="  ") for line in lines]


def _narrow(marks):
    heads = ("Case", "Stage", "Cause", "Eggs lost", "Ticked", "Mark")
    rows = [
        (
            row.case,
            f"{_short(row.student_stage)} ({_most(row.stages)})",
            f"{_short(row.student_causes)} ({_short(row.can_tell)})",
            f"{row.student_low or '-'} to {row.student_high or '-'} ({row.eggs_lost})",
            row.student_facts.replace(" ", "") or "-",
            f"{100 * row.share_of_mark:.0f} %" if row.answered else "no answer",
        )
        for row in marks.itertuples()
    ]
    wide = [max(map(len, column)) for column in zip(heads, *rows, strict=True)]
    return "\n".join(
        "  ".join(text.ljust(size) for text, size in zip(line, wide, strict=True)).rstrip() for line in (heads, *rows)
    )


def _most(stages):
    own = pairs(stages)
    return max(own, key=own.get, default="none")


def _short(words):
    return (words if len(words) <= 22 else words[:19] + "...") or "-"
