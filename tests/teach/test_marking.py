"""Marks that give credit for part of the truth, say why, and never write over anything."""

import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.say import text as say_text
from hatchkit.teach.answer_sheets import SHEET_COLUMNS
from hatchkit.teach.marking import BOOK, mark_answers, rules, target, write_marks

RIGHT = dict(stage="mid", cause="power_cut", eggs_lost_low="10", eggs_lost_high="18", facts="A C")
NONE = dict(stage="none", cause="none", eggs_lost_low="0", eggs_lost_high="4", facts="B")


@pytest.fixture
def lesson(tmp_path):
    """An answer book of two cases; case 01 lost 14 of 48 eggs, of case 02 none can be told."""
    truth = {
        "case": "01",
        "seed": 1,
        "level": "second",
        "species": "chicken",
        "batch": "2",
        "eggs_set": 48,
        "causes": "power_cut",
        "shown": "power_cut 0.98",
        "severity": "severe",
        "can_tell": "power_cut",
        "stages": "mid 9.2, late 4.8",
        "eggs_lost": 14,
        "width": 8.0,
        "statements": "A bears, B not, C bears, D free, E not",
        "other_batches": "",
        "said": "A power cut.",
    }
    luck = truth | {
        "case": "02",
        "batch": "4",
        "causes": "none",
        "shown": "",
        "severity": "",
        "can_tell": "none",
        "stages": "",
        "eggs_lost": 0,
        "statements": "A not, B bears, C not",
        "said": "Nothing was planted.",
    }
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


def test_none_can_be_told_is_a_right_answer(lesson):
    assert _mark(lesson, NONE, case="2", batch="4")["share_of_mark"] == 1.0
    invented = _mark(lesson, NONE | dict(stage="mid", cause="power_cut"), case="2", batch="4")
    assert (invented["stage_credit"], invented["cause_credit"]) == (0, 0)


@pytest.mark.parametrize(
    ("answer", "stage", "cause", "size", "facts"),
    [
        (dict(stage="late", cause="lid_ajar"), 0.5, 0.5, 1, 1),  # a third of the eggs, of the same kind
        (dict(stage="early", cause="overheating", eggs_lost_low="30", eggs_lost_high="30"), 0, 0, 0, 1),
        (dict(cause="power_cut", second_cause="overheating"), 1, 0.5, 1, 1),
        (dict(stage="none", cause="none"), 0.02 / 0.98, 0.02 / 0.98, 1, 1),
        (dict(eggs_lost_low="4", eggs_lost_high="20"), 1, 1, 0.5, 1),  # twice a careful reader's width
        (dict(eggs_lost_low="0", eggs_lost_high="48"), 1, 1, 0, 1),
        (dict(eggs_lost_low="15", eggs_lost_high="19"), 1, 1, 1 - 6 / 16, 1),  # one egg outside: 4 + 10, 6 above 8
        (dict(eggs_lost_low="", eggs_lost_high="", eggs_lost="about 14 eggs (10-18)"), 1, 1, 1, 1),
        (dict(eggs_lost_low="", eggs_lost_high="", eggs_lost="0,25"), 1, 1, 1 - (20 - 8) / 16, 1),  # 12 of 48
        (dict(eggs_lost_low="-3", eggs_lost_high="18"), 1, 1, 0, 1),
        (dict(facts="A"), 1, 1, 1, 0.5),
        (dict(facts="ABCDE"), 1, 1, 1, 0),
        (dict(facts="a, c, e"), 1, 1, 1, 0.5),
        (dict(facts="A C D"), 1, 1, 1, 1),
    ],
)
def test_credit_for_each_part(lesson, answer, stage, cause, size, facts):
    mark = _mark(lesson, RIGHT | answer)
    found = [mark[f"{part}_credit"] for part in ("stage", "cause", "size", "facts")]
    assert found == pytest.approx([stage, cause, size, facts], abs=6e-4)
    earned = 0.15 * stage + 0.20 * cause + 0.15 * size
    assert mark["share_of_mark"] == pytest.approx(earned * (0.35 + 0.65 * facts) + 0.5 * facts, abs=1e-3)


def test_what_was_right_and_what_not_is_told_in_a_sentence(lesson):
    told = _mark(lesson, RIGHT | dict(stage="late", cause="drift_cool", eggs_lost_low="30", eggs_lost_high="31"))[
        "told"
    ]
    assert told.startswith("Case 01 (answers.csv), 68 % of the mark: ")
    for part in (
        "stage late is half right",
        "drift_cool as cause is right in part",
        "does not hold the true 14",
        "of 2 statements that bear on it 2 ticked",
    ):
        assert part in told


def test_words_that_are_not_understood_are_named(lesson):
    told = _mark(lesson, dict(stage="sometime", cause="bad vibes", eggs_lost="many"))["told"]
    for word in ("sometime", "bad vibes", "many"):
        assert f"'{word}'" in told


def test_stage_and_cause_in_each_other_s_column_are_taken_as_meant(lesson):
    mark = _mark(lesson, RIGHT | dict(stage="power cut", cause="mid (day 8-14)"))
    assert mark["share_of_mark"] == 1.0 and say_text("remark_swapped") in mark["told"]
    mark = _mark(lesson, dict(stage="power cut", cause=""))
    assert mark["cause_credit"] == 1.0 and mark["stage_credit"] == 0 and say_text("remark_swapped") in mark["told"]


def test_numbers_that_cannot_be_are_said(lesson):
    assert (
        "99 cannot be, as 48 eggs were set"
        in _mark(lesson, RIGHT | dict(eggs_lost_low="99", eggs_lost_high="99"))["told"]
    )
    assert "wrong way round" in _mark(lesson, RIGHT | dict(eggs_lost_low="18", eggs_lost_high="10"))["told"]
    assert "goes beyond the 48 eggs set" in _mark(lesson, RIGHT | dict(eggs_lost_high="60"))["told"]
    assert "one side only" in _mark(lesson, RIGHT | dict(eggs_lost_high=""))["told"]
    assert "'-3' is not understood" in _mark(lesson, RIGHT | dict(eggs_lost_low="-3"))["told"]


def test_another_batch_than_the_one_asked_about_is_said(lesson):
    assert "names batch 3, but the case asks about batch 2" in _mark(lesson, RIGHT, batch="3")["told"]
    assert "names batch" not in _mark(lesson, RIGHT, batch="Batch 02")["told"]


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
    assert "01 mid (mid) power_cut (power_cut) 10 to 18 (14) AC 100 %" in flat
    for part in ("no answer", "has no case 77", "ben.docx"):
        assert part in flat
    assert "_credit" not in text


def test_a_second_marking_writes_over_nothing_and_no_cell_is_a_formula(lesson, tmp_path):
    marks = _marking(lesson, RIGHT | dict(cause="=1+1", why="=HYPERLINK(1)")).marks
    path = tmp_path / "marks.csv"
    assert write_marks(marks, path) == path
    first = path.read_bytes()
    assert write_marks(marks, path) == tmp_path / "marks_2.csv" and path.read_bytes() == first
    assert ",=1+1" not in path.read_text(encoding="utf-8-sig") and ",=HYP" not in path.read_text(encoding="utf-8-sig")
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
    assert again.marks["share_of_mark"].tolist() == first.marks["share_of_mark"].tolist()


def test_an_answer_book_that_is_another_s_or_is_not_there_is_said(lesson, tmp_path):
    with pytest.raises(HatchkitError, match="no answer book"):
        mark_answers(tmp_path, tmp_path)
    pd.read_csv(lesson / BOOK).drop(columns="width").to_csv(lesson / BOOK, index=False)
    with pytest.raises(HatchkitError, match="no column width"):
        _marking(lesson, RIGHT)
