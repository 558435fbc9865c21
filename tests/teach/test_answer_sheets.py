"""Answer sheets as programs and students write them: read whole, or named with the reason."""

import pandas as pd
import pytest

from hatchkit.problems import HatchkitError
from hatchkit.teach.answer_sheets import SHEET_COLUMNS, kind_of, read_answers, sentence

HEAD = ",".join(SHEET_COLUMNS)
ROW = "01,6,late,probe_high,,35,30,41,A C,"
CASES = ("01", "02", "06")


def _write(folder, name, *lines, encoding="utf-8"):
    path = folder / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes("\n".join([*lines, ""]).encode(encoding))
    return path


def _read(path):
    table, problems = read_answers(path, cases=CASES)
    return table, [sentence(row) for row in problems]


@pytest.mark.parametrize("why", ["hatch was late, so the probe is wrong", "late, so, wrong", "a; b; c, d"])
def test_a_comma_in_the_reason_shifts_nothing(tmp_path, why):
    table, told = _read(_write(tmp_path, "a.csv", HEAD, ROW + why))
    assert told == [] and list(table.index) == ["01"]
    assert table.loc["01", list(SHEET_COLUMNS[1:])].tolist() == [
        "6",
        "late",
        "probe_high",
        "",
        "35",
        "30",
        "41",
        "A C",
        why,
    ]


@pytest.mark.parametrize(
    "row",
    [
        "01,6,late,probe_high,,13,5,9,5,20,5,A,late",
        "01,6,late, mid,probe_high,,35,30,41,A,why",
        "01,6,late,probe_high,,13,5,9,5,A,5",
        "01,6,late,probe_high,,13,5,,,A,I saw it",
    ],
)
def test_fields_that_may_have_slipped_are_named_and_not_marked(tmp_path, row):
    table, told = _read(_write(tmp_path, "a.csv", HEAD, row))
    assert not len(table) and len(told) == 1 and told[0].startswith("a.csv, row 2: ") and "Not marked" in told[0]


def _tabs(lines):
    return [line.replace(",", "\t") for line in lines]


LINES = [HEAD, ROW + "wärmer als sonst"]


@pytest.mark.parametrize(
    ("name", "lines", "encoding"),
    [
        ("western.csv", LINES, "cp1252"),
        ("sixteen.csv", _tabs(LINES), "utf-16"),
        ("mark.csv", LINES, "utf-8-sig"),
        ("tabs.csv", _tabs(LINES), "utf-8"),
        ("tabs.txt", _tabs(LINES), "utf-8"),
        ("LOUD.CSV", LINES, "utf-8"),
        ("title.csv", ["Class of spring", "", *LINES], "utf-8"),
        ("quoted.csv", [f'"{line}"' for line in LINES], "utf-8"),
        ("semicolon.csv", [line.replace(",", ";") for line in LINES], "utf-8"),
        ("heads.csv", [LINES[0].upper().replace("_", " "), LINES[1]], "utf-8"),
    ],
)
def test_whatever_the_program_wrote_is_read(tmp_path, name, lines, encoding):
    _write(tmp_path, name, *lines, encoding=encoding)
    table, told = _read(tmp_path)
    assert told == []
    assert table.loc["01", ["stage", "cause", "eggs_lost", "why"]].tolist() == [
        "late",
        "probe_high",
        "35",
        "wärmer als sonst",
    ]


def test_a_line_end_within_a_line_that_was_quoted_whole_stops_nothing(tmp_path):
    row = '"01,6,late,probe_high,,35,30,41,A,so\nit was"'
    table, _ = _read(_write(tmp_path, "a.csv", HEAD, row, "02,1,mid,none,,1,0,4,,x"))
    assert list(table.index) == ["01", "02"] and table.loc["01", "why"] == "so it was"


def test_a_workbook_is_read(tmp_path):
    row = dict(zip(SHEET_COLUMNS, [1, 6, "late", "probe_high", None, 35, 30, 41, "A", "x"], strict=True))
    pd.DataFrame([row]).to_excel(tmp_path / "a.xlsx", index=False)
    table, told = _read(tmp_path)
    assert told == [] and table.loc["01", "eggs_lost"] == "35"


def test_each_file_and_row_that_is_not_taken_is_named_and_the_rest_is_read(tmp_path):
    _write(tmp_path, "good.csv", HEAD, ROW + "x")
    _write(tmp_path, "nobody.csv", HEAD, ",6,late,probe_high,,35,30,41,A,x")
    _write(tmp_path, "stranger.csv", HEAD, "77,6,late,probe_high,,35,30,41,A,x")
    _write(tmp_path, "other.csv", "a,b", "1,2")
    _write(tmp_path, "letter.docx", "Dear teacher")
    (tmp_path / "empty.csv").write_bytes(b"")
    (tmp_path / "broken.xlsx").write_bytes(b"PK nothing")
    _write(tmp_path, "~$good.csv", "lock")
    table, told = _read(tmp_path)
    assert list(table.index) == ["01"] and table.loc["01", "file"] == "good.csv"
    for name in ("nobody.csv, row 2", "stranger.csv, row 2", "other.csv", "letter.docx", "empty.csv", "broken.xlsx"):
        assert len([line for line in told if line.startswith(f"{name}: ")]) == 1, name
    assert len(told) == 6 and "season folder" not in " ".join(told)


def test_a_blank_sheet_beside_a_filled_one_is_no_second_answer(tmp_path):
    _write(tmp_path, "anna/answer_sheet.csv", HEAD, ROW + "x")
    _write(tmp_path, "handed_out/answer_sheet.csv", HEAD, "01,6,,,,,,,,")
    table, told = _read(tmp_path)
    assert told == [] and table.loc["01", "file"] == "anna/answer_sheet.csv"


def test_two_answers_for_a_case_are_named_and_the_others_are_read(tmp_path):
    _write(tmp_path, "a.csv", HEAD, ROW + "x", "02,1,mid,overheating,,9,4,14,A,x")
    _write(tmp_path, "b.csv", HEAD, "01,6,mid,probe_high,,35,30,41,A,x")
    table, told = _read(tmp_path)
    assert list(table.index) == ["02"]
    assert len(told) == 1 and "more than one answer for case 01" in told[0] and "b.csv, 2" in told[0]


@pytest.mark.parametrize("written", ["case_01", "Case 1", "1", "1.0", "01", "#1"])
def test_a_case_may_be_called_as_its_folder_is(tmp_path, written):
    table, told = _read(_write(tmp_path, "a.csv", HEAD, written + ROW[2:]))
    assert told == [] and list(table.index) == ["01"]


def test_season_folders_and_the_teacher_s_are_passed_over(tmp_path):
    _write(tmp_path, "case_01/season/season.toml", "")
    _write(tmp_path, "case_01/season/sensors/A.csv", "time,temp", "1,2")
    _write(tmp_path, "case_01/season/batches.csv", "batch,eggs_set", "1,2")
    _write(tmp_path, "case_01/season/answer_sheet.csv", HEAD, ROW + "x")
    _write(tmp_path, "teacher/answer_book.csv", "case,seed,severity", "01,2,mild")
    table, problems = read_answers(tmp_path, cases=CASES, teacher=tmp_path / "teacher")
    assert list(table.index) == ["01"]
    assert [(row["code"], row["facts"]) for row in problems] == [
        ("sheet_teacher", {}),
        ("sheet_seasons", dict(seasons=1)),
    ]


def test_marks_and_answer_books_are_known_by_their_columns(tmp_path):
    marks = _write(tmp_path, "m.csv", "case,stages,causes,eggs_lost,facts_credit,share_of_mark", "01,late 3,x,3,1,1")
    book = _write(tmp_path, "b.csv", "case,seed,severity,stage,cause,eggs_lost", "01,2,mild,late,x,3")
    _write(tmp_path, "a.csv", HEAD, ROW + "x")
    assert (kind_of(marks), kind_of(book), kind_of(tmp_path / "a.csv")) == ("marks", "book", "answers")
    table, told = _read(tmp_path)
    assert list(table.index) == ["01"]
    assert "answer book. Passed over" in told[0] and "marks that hatchkit wrote. Passed over" in told[1]


def test_a_folder_without_any_sheet_says_what_one_is_and_what_lies_there(tmp_path):
    _write(tmp_path, "x.csv", "a,b", "1,2")
    with pytest.raises(HatchkitError, match="no answer sheet in .*headings case, batch(.|\n)*x.csv: no headings"):
        read_answers(tmp_path, cases=CASES)
    with pytest.raises(HatchkitError, match="does not exist"):
        read_answers(tmp_path / "no.csv", cases=CASES)


def test_two_columns_of_one_name_and_a_missing_column_are_named(tmp_path):
    _write(tmp_path, "a.csv", HEAD + ",cause", ROW + "x,none")
    _write(tmp_path, "b.csv", "case,stage,cause", "02,mid,overheating")
    table, told = _read(tmp_path)
    assert list(table.index) == ["02"]
    assert "a.csv, row 1: two columns are called cause" in told[0]
    assert "b.csv, row 1: there is no column eggs" in told[1]
