"""Lessons: different cases, one answer book that the students cannot make."""

import io
import json
import re

import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.simulate import read_answer
from hatchkit.simulate.without import is_chick
from hatchkit.teach import lesson as lessons
from hatchkit.teach.lesson import write_lesson
from hatchkit.teach.marking import BOOK, SHEET_COLUMNS, rules


@pytest.fixture(scope="module")
def lesson(tmp_path_factory):
    folder = tmp_path_factory.mktemp("class") / "lesson"
    page = write_lesson(folder, students=4, seed=17, batches=2, eggs=40, progress=io.StringIO())
    return folder, pd.read_csv(folder / BOOK, dtype={"case": str, "batch": str}, keep_default_na=False), page


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


def test_the_eggs_lost_are_never_more_than_the_eggs_without_a_chick(lesson):
    folder, book, _ = lesson
    for row in book.itertuples():
        answer = read_answer(folder / "teacher" / "answers" / f"case_{row.case}.json")
        eggs = answer.eggs[answer.eggs["batch"] == row.batch]
        assert row.eggs_lost == answer.lost() <= int((~is_chick(eggs)).sum())
        assert row.stage in row.stages if row.eggs_lost else row.stages == ""


def test_the_rule_of_the_marks_and_the_question_stand_where_students_and_teacher_read(lesson):
    folder, _, page = lesson
    guide = (folder / "students" / "README.md").read_text(encoding="utf-8")
    for rule in rules():
        assert rule in guide and rule in page.read_text(encoding="utf-8")
    assert "would have hatched without the cause" in guide
    assert "30 %" in rules()[0] and "40 %" in rules()[1] and "30 %" in rules()[2]


def test_the_same_seed_gives_the_same_lesson(lesson, tmp_path):
    folder, _, _ = lesson
    write_lesson(tmp_path / "again", students=4, seed=17, batches=2, eggs=40)
    first, second = ({path.relative_to(home).as_posix(): path.read_bytes()
                      for path in home.rglob("*") if path.is_file()} for home in (folder, tmp_path / "again"))
    assert first == second


def test_without_a_seed_every_lesson_is_new_and_its_seed_is_with_the_teacher_alone(tmp_path):
    seeds = []
    for name in ("one", "two"):
        page = write_lesson(tmp_path / name, students=1, batches=1, eggs=12)
        seeds.append(re.search(r"made with seed (\d+)", page.read_text(encoding="utf-8"))[1])
    assert seeds[0] != seeds[1] and all(int(seed) > lessons.GUESSED for seed in seeds)
    for path in (tmp_path / "one" / "students").rglob("*"):
        assert not path.is_file() or seeds[0].encode() not in path.read_bytes()
    assert "Whoever knows the seed can make this answer book" in page.read_text(encoding="utf-8")


def test_a_lesson_needs_a_new_folder_a_student_and_a_seed_that_is_one(lesson, tmp_path):
    with pytest.raises(HatchkitError, match="not empty"):
        write_lesson(lesson[0], students=1, seed=1)
    with pytest.raises(HatchkitError, match="at least one student"):
        write_lesson(tmp_path / "none", students=0, seed=1)
    with pytest.raises(HatchkitError, match="whole number from 0 up, not -3"):
        write_lesson(tmp_path / "none", students=1, seed=-3)


def test_progress_is_a_line_that_grows_and_comes_only_when_it_takes_long(monkeypatch):
    now = [0.0]
    monkeypatch.setattr(lessons.time, "monotonic", lambda: now[0])
    shown = io.StringIO()
    line = lessons._Progress(3, "cases written", shown)
    line.step()
    assert shown.getvalue() == ""
    now[0] = 2.5
    line.step()
    line.step()
    line.end()
    assert "2 of 3 cases written" in shown.getvalue() and shown.getvalue().endswith("3 of 3 cases written\n")
