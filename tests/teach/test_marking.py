"""Marks that give credit for part of the truth, say why, and never write over a student's work."""

import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.teach.marking import BOOK, SHEET_COLUMNS, mark_answers, rules, target, write_marks

RIGHT = dict(stage="mid", cause="power_cut", eggs_lost="14", eggs_lost_low="9", eggs_lost_high="20")


@pytest.fixture
def lesson(tmp_path):
    """An answer book of two cases; case 01 lost 14 of 48 eggs."""
    truth = {"case": "01", "seed": 1, "batch": "2", "eggs_set": 48, "cause": "power_cut", "name": "power cut",
             "severity": "severe", "stage": "mid", "also": "late", "stages": "mid 9, late 5", "eggs_lost": 14,
             "eggs_lost_low": 8.9, "eggs_lost_high": 20.7, "other_batches": "", "said": "A power cut."}
    luck = truth | {"case": "02", "batch": "4", "cause": "none", "name": "nothing but luck", "severity": "",
                    "stage": "none", "also": "", "stages": "", "eggs_lost": 0, "said": "Nothing was planted."}
    folder = tmp_path / "class"
    (folder / "teacher").mkdir(parents=True)
    pd.DataFrame([truth, luck]).to_csv(folder / BOOK, index=False)
    return folder


def _marking(lesson, answer, *, case="1", batch="2"):
    sheet = pd.DataFrame([{"case": case, "batch": batch} | answer], columns=list(SHEET_COLUMNS))
    path = lesson.parent / "answers.csv"
    sheet.to_csv(path, index=False, sep=";")
    return mark_answers(path, lesson)


def _mark(lesson, answer, **more):
    marks = _marking(lesson, answer, **more).marks
    return marks.set_index("case").loc["02" if more.get("case") == "2" else "01"]


def test_a_right_answer_earns_all_and_the_columns_are_the_documented_ones(lesson):
    marking = _marking(lesson, RIGHT)
    assert marking.marks["share_of_mark"].tolist() == [1.0, 0.0]
    assert list(marking.marks) == list(reference.load("columns_lesson").query("table == 'marks'")["column"])
    nothing = _mark(lesson, dict(stage="none", cause="none", eggs_lost="0", eggs_lost_low="0", eggs_lost_high="6"),
                    case="2", batch="4")
    assert nothing["share_of_mark"] == 1.0


@pytest.mark.parametrize(("answer", "stage", "cause", "size"), [
    (dict(stage="late", cause="lid_ajar", eggs_lost="12"), 0.5, 0.5, 0.5),  # of the same kind, no interval
    (dict(stage="early", cause="overheating", eggs_lost="30"), 0, 0, 0),
    (dict(eggs_lost="18"), 1, 1, 0.75),  # within a tenth, the interval holds both
    (dict(eggs_lost_low="0", eggs_lost_high="48"), 1, 1, 0.5),  # all eggs: the figure alone counts
    (dict(eggs_lost_low="15", eggs_lost_high="20"), 1, 1, 0.5),
    (dict(eggs_lost="30", eggs_lost_low="0", eggs_lost_high="48"), 1, 1, 0),
    (dict(eggs_lost="999", eggs_lost_low="0", eggs_lost_high="23"), 1, 1, 0),
    (dict(eggs_lost="23", eggs_lost_low="10", eggs_lost_high="24"), 1, 1, 0),
    (dict(eggs_lost="13,5", eggs_lost_low="9,5", eggs_lost_high="20,5"), 1, 1, 1),
    (dict(eggs_lost="about 14 eggs (9-20)", eggs_lost_low="", eggs_lost_high=""), 1, 1, 1),
    (dict(eggs_lost="", eggs_lost_low="9", eggs_lost_high="20"), 1, 1, 1),
])
def test_credit_for_each_part(lesson, answer, stage, cause, size):
    blank = {} if "stage" not in answer else dict(eggs_lost_low="", eggs_lost_high="")
    mark = _mark(lesson, RIGHT | blank | answer)
    assert (mark["stage_credit"], mark["cause_credit"], mark["size_credit"]) == (stage, cause, size)
    assert mark["share_of_mark"] == pytest.approx(0.3 * stage + 0.4 * cause + 0.3 * size)


def test_nothing_is_earned_by_an_interval_that_holds_everything(lesson):
    """For a far figure neither the widest interval nor the widest that counts earns anything."""
    for low, high in ((0, 48), (0, 999), (0, 14), (14, 28)):
        mark = _mark(lesson, RIGHT | dict(eggs_lost="28", eggs_lost_low=str(low), eggs_lost_high=str(high)))
        assert mark["size_credit"] == 0, (low, high)


def test_what_was_right_and_what_not_is_told_in_a_sentence(lesson):
    told = _mark(lesson, RIGHT | dict(stage="late", cause="drift_cool", eggs_lost="30", eggs_lost_high="31"))["told"]
    assert told.startswith("Case 01 (answers.csv), 35 % of the mark: ")
    for part in ("stage late is half right", "same kind as the true one, power_cut", "30 eggs lost is not near"):
        assert part in told


def test_words_that_are_not_understood_are_named(lesson):
    told = _mark(lesson, dict(stage="sometime", cause="bad vibes", eggs_lost="17 %"))["told"]
    for word in ("sometime", "bad vibes", "17 %"):
        assert f"'{word}'" in told


def test_stage_and_cause_in_each_other_s_column_are_taken_as_meant(lesson):
    mark = _mark(lesson, RIGHT | dict(stage="power cut", cause="mid (day 8-14)"))
    assert mark["share_of_mark"] == 1.0 and "each other's column" in mark["told"]
    mark = _mark(lesson, dict(stage="power cut", cause=""))
    assert mark["cause_credit"] == 1.0 and mark["stage_credit"] == 0 and "each other's column" in mark["told"]


def test_numbers_that_cannot_be_are_said(lesson):
    told = _mark(lesson, RIGHT | dict(eggs_lost="999", eggs_lost_low="60", eggs_lost_high="-2"))["told"]
    assert "999 cannot be, as 48 eggs were set" in told and "wrong way round" in told
    assert "goes beyond 0 to the 48 eggs set" in told
    assert "one side only" in _mark(lesson, RIGHT | dict(eggs_lost_high=""))["told"]


def test_another_batch_than_the_one_asked_about_is_said(lesson):
    assert "names batch 3, but the case asks about batch 2" in _mark(lesson, RIGHT, batch="3")["told"]
    assert "names batch" not in _mark(lesson, RIGHT, batch="Batch 02")["told"]


def test_stages_with_nearly_as_many_eggs_are_both_right(lesson):
    book = pd.read_csv(lesson / BOOK, dtype=str, keep_default_na=False)
    book["stages"] = ["mid 5, late 4, early 3, pipped 1", ""]
    book.to_csv(lesson / BOOK, index=False)
    credit = {stage: _mark(lesson, RIGHT | dict(stage=stage))["stage_credit"] for stage in ("late", "early", "pipped")}
    assert credit == {"late": 1.0, "early": 0.0, "pipped": 0.0}


def test_the_words_hold_the_rule_a_narrow_table_and_what_was_not_taken(lesson):
    (lesson.parent / "sheets").mkdir()
    rows = pd.DataFrame([{"case": "1", "batch": "2"} | RIGHT, {"case": "77"} | RIGHT], columns=list(SHEET_COLUMNS))
    rows.to_csv(lesson.parent / "sheets" / "anna.csv", index=False)
    (lesson.parent / "sheets" / "ben.docx").write_text("x")
    text = mark_answers(lesson.parent / "sheets", lesson).words()
    assert max(map(len, text.splitlines())) <= 100
    flat = " ".join(text.split())
    for rule in rules():
        assert rule in flat
    assert "01 mid (mid) power_cut (power_cut) 14, 9 to 20 (14) 100 %" in flat
    for part in ("no answer", "has no case 77", "ben.docx"):
        assert part in flat
    assert "_credit" not in text


def test_marks_are_written_over_earlier_marks_alone(lesson, tmp_path):
    marks = _marking(lesson, RIGHT | dict(cause="=1+1")).marks
    path = tmp_path / "marks.csv"
    assert write_marks(marks, path) == path == write_marks(marks, path)
    assert ",=1+1" not in path.read_text(encoding="utf-8-sig")
    sheet = tmp_path / "answers.csv"
    before = sheet.read_bytes()
    (tmp_path / "notes.txt").write_text("mine")
    for other in (sheet, tmp_path / "notes.txt", lesson / BOOK):
        with pytest.raises(HatchkitError, match="exists and is not a file of marks"):
            write_marks(marks, other)
    assert sheet.read_bytes() == before
    with pytest.raises(HatchkitError, match="no folder .*nowhere"):
        target(tmp_path / "nowhere" / "marks.csv")
    with pytest.raises(HatchkitError, match="is a folder"):
        target(tmp_path)


def test_marks_beside_the_sheets_are_no_answers_the_next_time(lesson):
    first = _marking(lesson, RIGHT)
    write_marks(first.marks, lesson.parent / "marks.csv")
    again = mark_answers(lesson.parent, lesson)
    assert again.marks["share_of_mark"].tolist() == [1.0, 0.0]
    assert "marks that hatchkit wrote" in again.words() and "the teacher's folder" in again.words()


def test_a_folder_that_is_no_lesson_and_a_book_of_old_are_named(lesson, tmp_path):
    with pytest.raises(HatchkitError, match="not a lesson folder"):
        mark_answers(tmp_path, tmp_path)
    pd.read_csv(lesson / BOOK).drop(columns="stages").to_csv(lesson / BOOK, index=False)
    with pytest.raises(HatchkitError, match="no column stages: .*older hatchkit"):
        _marking(lesson, RIGHT)
    (lesson / BOOK).write_bytes("case,said\n01,wärmer\n".encode("cp1252"))
    with pytest.raises(HatchkitError, match="cannot be read"):
        _marking(lesson, RIGHT)


def test_a_class_from_the_command_line_needs_no_seed_and_shows_none(tmp_path, capsys):
    from hatchkit.cli import main

    assert main(["lesson", str(tmp_path / "class"), "--students", "1"]) == 0
    out = capsys.readouterr().out
    assert "whoever knows the seed can make the answer book" in out and "guessed" not in out
    assert main(["mark", str(tmp_path / "class" / "students"), str(tmp_path / "class")]) == 0
    assert "How the marks are given" in capsys.readouterr().out
    sheet = tmp_path / "class" / "students" / "case_01" / "answer_sheet.csv"
    before = sheet.read_bytes()
    assert main(["mark", str(sheet), str(tmp_path / "class"), "--csv", str(sheet)]) == 2
    assert "not written over" in capsys.readouterr().err and sheet.read_bytes() == before
