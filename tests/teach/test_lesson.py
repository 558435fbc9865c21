"""Lessons: cases drawn with replacement, one answer book that the students cannot make."""

import json
import re
import sys
import time
from html import unescape

import pandas as pd
import pytest
from openpyxl import load_workbook

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.simulate import read_answer
from hatchkit.simulate.without import is_chick
from hatchkit.teach import lesson as lessons
from hatchkit.teach.answer_sheets import SHEET_COLUMNS
from hatchkit.teach.case_words import cause_words
from hatchkit.teach.give_back import give_back
from hatchkit.teach.lesson import write_lesson
from hatchkit.teach.marking import BOOK, mark_answers, rules


@pytest.fixture(scope="module")
def lesson(tmp_path_factory):
    folder = tmp_path_factory.mktemp("class") / "lesson"
    page = write_lesson(folder, students=3, seed=17, batches=2, eggs=40, level="exam")
    return folder, pd.read_csv(folder / BOOK, dtype={"case": str, "batch": str}, keep_default_na=False), page


def _fill(path, answers):
    book = load_workbook(path)
    for row in book["answer"].iter_rows():
        if row[0].value in answers:
            row[2].value = answers[row[0].value]
    book.save(path)


def test_each_student_gets_a_season_and_a_blank_form(lesson):
    folder, book, _ = lesson
    assert list(book["case"]) == ["01", "02", "03"]
    for case, batch in zip(book["case"], book["batch"], strict=True):
        home = folder / "students" / f"case_{case}"
        assert (home / "season" / "batches.xlsx").exists()
        rows = {row[0].value: row[2].value for row in load_workbook(home / "answer_form.xlsx")["answer"].iter_rows()}
        assert (rows["case"], str(rows["batch"]), rows["cause"]) == (case, batch, None)
        assert "A" in rows and "J" in rows


def test_nothing_of_the_answers_lies_with_the_students(lesson):
    folder, book, _ = lesson
    names = [path.name for path in (folder / "students").rglob("*")]
    assert not [name for name in names if name.endswith((".json", ".html"))]
    text = "".join(
        str(cell.value)
        for path in (folder / "students").rglob("answer_form.xlsx")
        for row in load_workbook(path)["answer"].iter_rows()
        for cell in row
    )
    assert not [said for said in book["said"] if said in text]


def test_the_book_has_all_its_columns_and_a_page(lesson):
    folder, book, page = lesson
    listed = reference.load("columns_lesson").groupby("table")["column"].apply(list)
    assert list(book.columns) == listed["answer_book"]
    assert list(SHEET_COLUMNS) == listed["answer_sheet"]
    html = page.read_text(encoding="utf-8")
    assert html.count("<tr>") == 4 and "For the teacher" in html and "viewport" in html
    sealed = json.loads((folder / "teacher" / "answers" / "case_01.json").read_text())
    assert sealed["cause"] == book["causes"][0].split()[0]


def test_the_eggs_lost_are_never_more_than_the_eggs_without_a_chick(lesson):
    folder, book, _ = lesson
    for row in book.itertuples():
        answer = read_answer(folder / "teacher" / "answers" / f"case_{row.case}.json")
        eggs = answer.eggs[answer.eggs["batch"] == row.batch]
        assert row.eggs_lost == answer.lost() <= int((~is_chick(eggs)).sum())


def test_the_rule_of_the_marks_and_the_question_stand_where_students_and_teacher_read(lesson):
    folder, _, page = lesson
    guide = (folder / "students" / "README.md").read_text(encoding="utf-8")
    html = unescape(page.read_text(encoding="utf-8"))
    for rule in rules():
        assert rule in guide and rule in html
    assert "would have hatched without the cause" in guide and "none can be told" in guide


def test_the_same_seed_gives_the_same_lesson(lesson, tmp_path):
    folder, _, _ = lesson
    write_lesson(tmp_path / "again", students=3, seed=17, batches=2, eggs=40, level="exam")
    first, second = (
        {path.relative_to(home).as_posix(): path.read_bytes() for path in home.rglob("*") if path.is_file()}
        for home in (folder, tmp_path / "again")
    )
    assert first == second


def test_without_a_seed_every_lesson_is_new_and_its_seed_is_with_the_teacher_alone(tmp_path):
    seeds = []
    for name in ("one", "two"):
        page = write_lesson(tmp_path / name, students=1, batches=2, eggs=12)
        seeds.append(re.search(r"made with seed (\d+)", page.read_text(encoding="utf-8"))[1])
    assert seeds[0] != seeds[1] and all(int(seed) > lessons.GUESSED for seed in seeds)
    for path in (tmp_path / "one" / "students").rglob("*"):
        assert not path.is_file() or seeds[0].encode() not in path.read_bytes()
    assert "Whoever knows the seed can make this answer book" in page.read_text(encoding="utf-8")


def test_a_lesson_needs_a_new_folder_a_student_a_level_a_language_and_a_seed(lesson, tmp_path):
    with pytest.raises(HatchkitError, match="not empty"):
        write_lesson(lesson[0], students=1, seed=1)
    for wrong, said in (
        (dict(students=0), "students must be a whole number from 1 up"),
        (dict(seed=-3), "whole number from 0 up, not -3"),
        (dict(level="easy"), "level 'easy' is not known"),
        (dict(language="xx"), "language 'xx' is not known"),
    ):
        with pytest.raises(HatchkitError, match=said):
            write_lesson(tmp_path / "none", **{"students": 1, "seed": 1, **wrong})
    assert not (tmp_path / "none").exists()


def test_answers_are_marked_and_given_back_and_nothing_is_written_over(lesson, tmp_path):
    folder, book, _ = lesson
    given = tmp_path / "given"
    for case, can_tell in zip(book["case"][:2], book["can_tell"], strict=False):
        home = given / f"case_{case}"
        home.mkdir(parents=True)
        (home / "f.xlsx").write_bytes((folder / "students" / f"case_{case}" / "answer_form.xlsx").read_bytes())
        _fill(
            home / "f.xlsx",
            {
                "stage": "late",
                "cause": cause_words(can_tell.split()[0]),
                "A": "x",
                "eggs_lost_low": 1,
                "eggs_lost_high": 6,
                "why": "<script>alert(1)</script>",
            },
        )
    marking = mark_answers(given, folder)
    assert marking.marks["answered"].tolist() == [True, True, False]
    assert (marking.marks["cause_credit"][:2] > 0).all()
    out = give_back(marking, folder, tmp_path / "back")
    assert sorted(path.name for path in out.iterdir()) == ["case_01.html", "case_02.html", "class.html", "marks.csv"]
    page = (out / "case_01.html").read_text(encoding="utf-8")
    assert "<script>" not in page and "data:image/png" in page and 'alt="Share of eggs lost' in page
    assert "2 of 3 answered" in (out / "class.html").read_text(encoding="utf-8")
    before = {path: path.read_bytes() for path in out.iterdir()}
    assert give_back(marking, folder, tmp_path / "back") == tmp_path / "back_2"
    assert before == {path: path.read_bytes() for path in out.iterdir()}


def test_progress_is_a_line_that_grows_and_comes_only_when_it_takes_long(monkeypatch, capsys):
    now = [0.0]
    monkeypatch.setattr(time, "monotonic", lambda: now[0])
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True, raising=False)
    line = lessons.StderrProgress("Lesson", "cases written")
    line(1, 3)
    assert capsys.readouterr().err == ""
    now[0] = 2.5
    line(2, 3)
    line(3, 3)
    assert capsys.readouterr().err == "\rLesson: 2 of 3 cases written\rLesson: 3 of 3 cases written\n"
