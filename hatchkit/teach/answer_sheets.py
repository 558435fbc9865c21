"""Find and read students' answer sheets; every file and row that is not taken is named, with how to fix it."""

import csv
import os
import re
from collections import Counter
from pathlib import Path

import pandas as pd

from hatchkit.problems import HatchkitError, problem
from hatchkit.records.sheets.cells import shown, text_of
from hatchkit.records.words import plain
from hatchkit.records.workbook import TEXTS, WORKBOOKS, read_grids
from hatchkit.teach.case_words import LETTERS

SHEET_COLUMNS = (
    "case",
    "batch",
    "stage",
    "cause",
    "second_cause",
    "eggs_lost",
    "eggs_lost_low",
    "eggs_lost_high",
    "facts",
    "why",
)
ANSWER = SHEET_COLUMNS[2:-1]
EGGS = ("eggs_lost", "eggs_lost_low", "eggs_lost_high")
#: A sheet whose first column holds these is a form.
FORM = {"case", "stage", "cause", "eggs_lost_low", "why"}
HEAD_ROWS = 30
_KINDS = {
    "answers": {"case", "stage", "cause"},
    "marks": {"case", "facts_credit", "share_of_mark"},
    "book": {"case", "seed", "severity"},
}
_TABLES = (*WORKBOOKS, *TEXTS, ".txt")


def read_answers(answers, *, cases, teacher=None):
    """The filled-in answers in a file or a folder.

    Parameters
    ----------
    answers : path
        A table (CSV, text or workbook), or a folder with such tables, sub-folders too.
    cases : iterable of str
        The cases of the answer book.
    teacher : path, optional
        The teacher's folder, which is passed over.

    Returns
    -------
    (table, problems) : DataFrame, list of dict
        table: one row per case answered, index: case; the columns of an answer sheet as text, and
        `file`. problems: what was not taken or not taken as written (`hatchkit.problems.problem`).
    """
    answers = Path(answers)
    if not answers.exists():
        raise HatchkitError("not_there", dict(path=str(answers)))
    found, sheets, problems = [], 0, []
    for path in _files(answers, teacher, problems):
        name = path.name if path == answers else path.relative_to(answers).as_posix()
        rows, sheet_found = _read_file(path, name, problems)
        sheets += sheet_found
        found += rows
    if not sheets:
        told = [sentence(row) for row in problems]
        raise HatchkitError("no_answer_sheet", dict(path=str(answers), headings=list(SHEET_COLUMNS), told=told))
    table = pd.DataFrame(found, columns=["case", "file", "row", *SHEET_COLUMNS[1:]])
    return _one_each(_known(table, set(cases), problems), problems), problems


def sentence(row) -> str:
    """A problem row as one line for the teacher."""
    parts = row["file"], f"sheet {row['sheet']}" if row["sheet"] else "", f"row {row['row']}" if row["row"] else ""
    place = ", ".join(part for part in parts if part)
    found, done, fix = (str(row[name]).rstrip(".") for name in ("found", "done", "fix"))
    return f"{place}: {found}. {done}.{' ' + fix + '.' if fix else ''}"


def kind_of(path) -> str:
    """What a table is: "answers", "marks", "book" (the answer book) or ""."""
    for grid in read_grids(path, file=Path(path).name)[0]:
        if _form(grid.cells):
            return "answers"
        kind, _, _ = _head(grid.cells)
        if kind:
            return kind
    return ""


def _files(answers, teacher, problems):
    if not answers.is_dir():
        yield answers
        return
    seasons = 0

    def note(path, code, severity="note", **facts):
        name = answers.name if path == answers else Path(path).relative_to(answers).as_posix()
        problems.append(problem(severity, file=name, code=code, facts=facts))

    for home, folders, names in os.walk(
        answers, onerror=lambda error: note(error.filename, "sheet_folder_shut", "lost")
    ):
        home = Path(home)
        if teacher is not None and home.resolve() == Path(teacher).resolve():
            folders.clear()
            note(home, "sheet_teacher")
            continue
        season = "season.toml" in names
        seasons += season
        folders[:] = sorted(
            name for name in folders if not name.startswith((".", "__")) and not (season and name == "sensors")
        )
        for name in sorted(names):
            low = name.lower()
            if low.startswith((".", "~$")) or low in ("readme.md", "thumbs.db", "desktop.ini", "season.toml"):
                continue
            table = low.endswith(_TABLES)
            if table and not (season and low.startswith("batches.")):
                yield home / name
            elif not season:
                note(home / name, "sheet_no_table")
    if seasons:
        note(answers, "sheet_seasons", seasons=seasons)


def _read_file(path, name, problems):
    """(answers, whether there was a sheet of answers or a blank one)."""
    grids, told = read_grids(path, file=name)
    own = list(told)
    rows, kinds = [], set()
    for grid in grids:
        if form := _form(grid.cells):
            kinds.add("answers")
            own = [row for row in own if row["sheet"] != "lists"]  # the form's own lists to choose from
            rows += [form | {"file": name, "row": 3}] if any(form[head] for head in ANSWER) else []
            continue
        kind, top, cells = _head(grid.cells)
        kinds.add(kind)
        if kind == "answers":
            rows += _rows(cells, top, name, grid.sheet, own)
    if "answers" not in kinds and (known := kinds & {"marks", "book"}):
        own.append(problem("note", file=name, code=f"sheet_is_{known.pop()}"))
    elif "answers" not in kinds and not any(row["severity"] == "lost" for row in own):
        first = next((row for grid in grids for row in grid.cells if any(row)), [])
        heads = ", ".join(text_of(cell) for cell in first if text_of(cell))
        facts = dict(first=shown(heads), headings=list(SHEET_COLUMNS))
        own.append(problem("lost", file=name, code="sheet_no_headings", facts=facts))
    problems += own
    return rows, "answers" in kinds


def _form(cells):
    """The answer of a form (keys in its first column, answers in its third), or None."""
    rows = {}
    for row in map(_cut_line, cells):
        key = text_of(row[0]) if row else ""
        if key and len(row) > 1:
            rows.setdefault(
                _name(row[0]) if len(key) > 1 else key.upper(),
                next((text_of(cell) or "" for cell in row[2:] if text_of(cell)), ""),
            )
    if not FORM <= set(rows):
        return None
    ticked = " ".join(letter for letter in LETTERS if rows.get(letter))
    return {head: rows.get(head, "") for head in SHEET_COLUMNS} | {"facts": ticked}


def _head(cells):
    """(kind, row number of the headings, cells with lines that were quoted whole cut up)."""
    cells = [_cut_line(row) for row in cells]
    for place, row in enumerate(cells[:HEAD_ROWS]):
        names = {_name(cell) for cell in row}
        for kind in ("marks", "book", "answers"):
            if _KINDS[kind] <= names:
                return kind, place, cells
    return "", 0, cells


def _name(cell):
    return re.sub(r"[^a-z]+", "_", plain(text_of(cell) or "")).strip("_")


def _cut_line(row):
    """A row whose only cell holds a whole line: programs quote it where it should not be."""
    if not row or not isinstance(row[0], str) or any(cell not in ("", None) for cell in row[1:]):
        return row
    line = re.sub(r"[\r\n]+", " ", row[0])
    separator = max(",;\t|", key=line.count)
    return next(csv.reader([line], delimiter=separator)) if line.count(separator) >= 3 else row


def _rows(cells, top, name, sheet, problems):
    heads = [_name(cell) for cell in cells[top]]
    heads = heads[: max(place for place, head in enumerate(heads) if head) + 1]

    def tell(severity, row, code, **facts):
        problems.append(problem(severity, file=name, sheet=sheet, row=row, code=f"sheet_{code}", facts=facts))

    twice = [head for head, times in Counter(heads).items() if head in SHEET_COLUMNS and times > 1]
    if twice:
        tell("lost", top + 1, "twice", column=twice[0])
        return []
    absent = [head for head in ("stage", "cause", "eggs_lost_low", "eggs_lost_high") if head not in heads]
    if absent:
        tell("doubtful", top + 1, "lacks", columns=absent)
    found = []
    for place, row in enumerate(cells[top + 1 :], start=top + 2):
        texts = [text_of(cell) or "" for cell in row]
        if not any(texts) or [_name(cell) for cell in row][: len(heads)] == heads:
            continue
        answer = dict.fromkeys(SHEET_COLUMNS, "") | {
            head: text for head, text in zip(heads, texts, strict=False) if head in SHEET_COLUMNS
        }
        surplus = ", ".join(texts[len(heads) :]).rstrip(", ")
        wrong = _shifted(answer, heads, surplus)
        if wrong:
            tell("lost", place, "slipped", why=wrong, field=answer["why" if wrong == "why" else "facts"])
            continue
        if surplus:
            answer["why"] = f"{answer['why']}, {surplus}"
        if not answer["case"]:
            if any(answer.values()):
                tell("lost", place, "no_case")
            continue
        if any(answer[head] for head in ANSWER):
            found.append(answer | dict(file=name, row=place))
    return found


def _shifted(answer, heads, surplus):
    """Why the fields of a row may stand in wrong columns (why, facts, more), or "" if they do not.

    A comma within a reason cuts it into more fields, which is mended; a decimal comma does the same to
    numbers, and nobody can tell any more which field is which.
    """
    if _is_number(answer["why"]):
        return "why"
    if re.search(r"\d", answer["facts"]):
        return "facts"
    if not surplus:
        return ""
    numbers = [answer[head] for head in EGGS if answer[head]]
    first = surplus.split(", ")[0]
    if (
        heads[-1] != "why"
        or not answer["why"]
        or not all(re.search(r"\d", text) for text in numbers)
        or _is_number(first)
        or re.fullmatch(r"[A-Z]( [A-Z])*", answer["why"])
    ):
        return "more"
    return ""


def _is_number(text):
    return bool(re.fullmatch(r"[-+]?\d+([.,]\d+)?", text))


def _known(table, cases, problems):
    """Rows whose case the answer book has; "case_01", "Case 1" and "1.0" are all 01."""
    numbers = {re.sub(r"^0+(?=\d)", "", case): case for case in cases}
    kept = []
    for row in table.to_dict("records"):
        match = re.fullmatch(r"(?:case|no|nr)?[\s_.:#-]*0*(\d+)(?:\.0)?", plain(row["case"]))
        case = numbers.get(match[1]) if match else None
        if case is None:
            problems.append(
                problem(
                    "lost",
                    file=row["file"],
                    row=row["row"],
                    code="sheet_unknown_case",
                    facts=dict(case=row["case"]),
                )
            )
            continue
        kept.append(row | {"case": case})
    return pd.DataFrame(kept, columns=table.columns)


def _one_each(table, problems):
    kept = []
    for case, rows in table.groupby("case", sort=True):
        if len(rows.drop_duplicates(list(ANSWER))) == 1:
            kept.append(rows.iloc[0])
            continue
        places = [f"{row.file}, {row.row}" for row in rows.itertuples()]
        problems.append(
            problem(
                "lost",
                file=rows["file"].iloc[0],
                row=int(rows["row"].iloc[0]),
                code="sheet_two_answers",
                facts=dict(case=case, places=places),
            )
        )
    return pd.DataFrame(kept, columns=table.columns).set_index("case")
