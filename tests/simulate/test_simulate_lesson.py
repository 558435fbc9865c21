"""Lessons: different cases, one answer book, marks that give credit for part of the truth."""

import io
import json

import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.lesson import mark_answers, write_lesson
from hatchkit.marking import BOOK, SHEET_COLUMNS
from hatchkit.problems import HatchkitError


@pytest.fixture(scope="module")
def lesson(tmp_path_factory):
    folder = tmp_path_factory.mktemp("class") / "lesson"
    page = write_lesson(folder, students=4, seed=17, batches=2, eggs=40, progress=io.StringIO())
    return folder, pd.read_csv(folder / BOOK, dtype={"case": str, "batch": str}, keep_default_na=False), page


def _sheet(book, tmp_path, **changes):
    """A sheet that is right in all, with changes."""
    sheet = book[["case", "batch", "stage", "cause", "eggs_lost"]].astype(str)
    sheet["eggs_lost_low"], sheet["eggs_lost_high"] = book["eggs_lost"] - 2, book["eggs_lost"] + 2
    sheet = sheet.assign(why="", **changes)[list(SHEET_COLUMNS)]
    path = tmp_path / "answers.csv"
    sheet.to_csv(path, index=False)
    return path


def test_each_student_gets_another_cause_and_a_blank_sheet(lesson):
    folder, book, _ = lesson
    assert book["cause"].is_unique and list(book["case"]) == ["01", "02", "03", "04"]
    for case in book["case"]:
        home = folder / "students" / f"case_{case}"
        assert (home / "season" / "batches.xlsx").exists()
        sheet = pd.read_csv(home / "answer_sheet.csv", dtype=str, keep_default_na=False)
        assert tuple(sheet.columns) == SHEET_COLUMNS
        assert sheet["case"].tolist() == [case] and sheet["cause"].tolist() == [""]


def test_nothing_of_the_answers_lies_with_the_students(lesson):
    folder, book, _ = lesson
    names = [path.name for path in (folder / "students").rglob("*")]
    assert not [name for name in names if name.endswith((".json", ".html"))]
    text = "".join(path.read_text() for path in (folder / "students").rglob("answer_sheet.csv"))
    assert not [said for said in book["said"] if said in text]


def test_the_book_has_all_its_columns_and_a_page(lesson):
    folder, book, page = lesson
    listed = reference.load("columns_lesson").groupby("table")["column"].apply(list)
    assert list(book.columns) == listed["answer_book"]
    assert list(SHEET_COLUMNS) == listed["answer_sheet"]
    html = page.read_text(encoding="utf-8")
    assert html.count("<tr>") == 5 and "For the teacher" in html
    sealed = json.loads((folder / "teacher" / "answers" / "case_01.json").read_text())
    assert sealed["cause"] == book["cause"][0]
    assert (book["eggs_lost"].between(book["eggs_lost_low"], book["eggs_lost_high"])).all()


def test_the_same_seed_gives_the_same_lesson(lesson, tmp_path):
    folder, _, _ = lesson
    write_lesson(tmp_path / "again", students=4, seed=17, batches=2, eggs=40)
    first, second = ({path.relative_to(home).as_posix(): path.read_bytes()
                      for path in home.rglob("*") if path.is_file()} for home in (folder, tmp_path / "again"))
    assert first == second


def test_a_right_sheet_earns_all(lesson, tmp_path):
    folder, book, _ = lesson
    marks = mark_answers(_sheet(book, tmp_path), folder)
    assert marks["share_of_mark"].tolist() == [1.0] * 4
    assert list(marks.columns) == list(reference.load("columns_lesson").query("table == 'marks'")["column"])


def test_the_name_of_a_cause_counts_like_its_key(lesson, tmp_path):
    folder, book, _ = lesson
    marks = mark_answers(_sheet(book, tmp_path, cause=book["name"].str.upper()), folder)
    assert marks["cause_credit"].tolist() == [1.0] * 4


def test_an_empty_sheet_earns_nothing_and_is_listed(lesson, tmp_path):
    folder, book, _ = lesson
    path = _sheet(book.iloc[1:], tmp_path)
    marks = mark_answers(path, folder).set_index("case")
    assert not marks.loc["01", "answered"] and marks.loc["01", "share_of_mark"] == 0
    assert mark_answers(folder / "students", folder)["share_of_mark"].sum() == 0


def _book_of_one(tmp_path, **row):
    truth = {"case": "01", "seed": 1, "batch": "2", "eggs_set": 48, "cause": "power_cut", "name": "power cut",
             "severity": "severe", "stage": "mid", "also": "late", "eggs_lost": 14, "eggs_lost_low": 8.9,
             "eggs_lost_high": 20.7, "other_batches": "", "said": "A power cut."} | row
    (tmp_path / "teacher").mkdir(exist_ok=True)
    pd.DataFrame([truth]).to_csv(tmp_path / BOOK, index=False)


@pytest.mark.parametrize(("answer", "stage", "cause", "size"), [
    (dict(stage="mid", cause="power_cut", eggs_lost="14", eggs_lost_low="9", eggs_lost_high="20"), 1, 1, 1),
    (dict(stage="late", cause="lid_ajar", eggs_lost="12"), 0.5, 0.5, 0.5),  # of the same kind, no interval
    (dict(stage="early", cause="overheating", eggs_lost="30"), 0, 0, 0),
    (dict(stage="Mid", cause="Power Cut", eggs_lost="14", eggs_lost_low="0", eggs_lost_high="48"), 1, 1, 0.5),
    (dict(stage="mid", cause="power_cut", eggs_lost="14", eggs_lost_low="15", eggs_lost_high="30"), 1, 1, 0),
    (dict(stage="mid", cause="power_cut", eggs_lost="13,5", eggs_lost_low="9,5", eggs_lost_high="20,5"), 1, 1, 1),
])
def test_credit_for_each_part(answer, stage, cause, size, tmp_path):
    _book_of_one(tmp_path)
    sheet = pd.DataFrame([{"case": "1", "batch": "2"} | answer], columns=list(SHEET_COLUMNS))
    sheet.to_csv(tmp_path / "a.csv", index=False, sep=";")
    mark = mark_answers(tmp_path / "a.csv", tmp_path).iloc[0]
    assert (mark["stage_credit"], mark["cause_credit"], mark["size_credit"]) == (stage, cause, size)
    assert mark["share_of_mark"] == pytest.approx(0.3 * stage + 0.4 * cause + 0.3 * size)


def test_wrong_files_are_named_in_one_sentence(lesson, tmp_path):
    folder, book, _ = lesson
    with pytest.raises(HatchkitError, match="not a lesson folder"):
        mark_answers(tmp_path, tmp_path)
    with pytest.raises(HatchkitError, match="does not exist"):
        mark_answers(tmp_path / "no.csv", folder)
    other = _sheet(book.assign(case="77").iloc[:1], tmp_path)
    with pytest.raises(HatchkitError, match="no case 77"):
        mark_answers(other, folder)
    twice = _sheet(pd.concat([book, book.iloc[:1]]), tmp_path)
    with pytest.raises(HatchkitError, match="more than one answer for case 01"):
        mark_answers(twice, folder)
    (tmp_path / "x.csv").write_text("a,b\n1,2\n")
    with pytest.raises(HatchkitError, match="no column case, stage, cause, eggs_lost"):
        mark_answers(tmp_path / "x.csv", folder)


def test_a_lesson_needs_a_new_folder_and_a_student(lesson, tmp_path):
    with pytest.raises(HatchkitError, match="not empty"):
        write_lesson(lesson[0], students=1, seed=1)
    with pytest.raises(HatchkitError, match="at least one student"):
        write_lesson(tmp_path / "none", students=0, seed=1)


def test_progress_is_a_line_that_grows_and_comes_only_when_it_takes_long(monkeypatch):
    from hatchkit import lesson

    now = [0.0]
    monkeypatch.setattr(lesson.time, "monotonic", lambda: now[0])
    shown = io.StringIO()
    line = lesson._Progress(3, "cases written", shown)
    line.step()
    assert shown.getvalue() == ""
    now[0] = 2.5
    line.step()
    line.step()
    line.end()
    assert "2 of 3 cases written" in shown.getvalue() and shown.getvalue().endswith("3 of 3 cases written\n")
