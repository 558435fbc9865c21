"""The form: lists in four languages, read back whatever the program; the widget writes the same answer."""

import pandas as pd
import pytest
from openpyxl import load_workbook

from hatchkit.teach.answer_form import write_form
from hatchkit.teach.answer_sheets import kind_of, read_answers
from hatchkit.teach.answer_words import cause_meant, stage_meant
from hatchkit.teach.case_words import LANGUAGES, cause_words, stage_words

STATEMENTS = [
    ("no_spell", dict(batch="3")),
    ("storage", dict(batch="3", days=12, low=2, high=9)),
    ("clock", dict(incubator="A", hours=12)),
]


def _fill(path, answers):
    book = load_workbook(path)
    for row in book["answer"].iter_rows():
        if row[0].value in answers:
            row[2].value = answers[row[0].value]
    book.save(path)


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_filled_form_is_read_in_every_language(tmp_path, language):
    path = write_form(tmp_path / "f.xlsx", case="01", batch="3", eggs=48, statements=STATEMENTS, language=language)
    _fill(
        path,
        {
            "stage": stage_words("late", language),
            "cause": cause_words("probe_high", language),
            "eggs_lost_low": 4,
            "eggs_lost_high": 12,
            "B": "x",
            "why": "late, and the log is right",
        },
    )
    table, problems = read_answers(path, cases=["01"])
    row = table.loc["01"]
    assert problems == [] and row["facts"] == "B" and row["batch"] == "3"
    assert (stage_meant(row["stage"]), cause_meant(row["cause"])) == (("late", ""), ("probe_high", ""))
    assert (row["eggs_lost_low"], row["eggs_lost_high"]) == ("4", "12")


def test_the_lists_hold_every_choice_and_the_numbers_their_bounds(tmp_path):
    path = write_form(tmp_path / "f.xlsx", case="01", batch="3", eggs=48, statements=STATEMENTS)
    book = load_workbook(path)
    rules = {rule.type: rule for rule in book["answer"].data_validations.dataValidation if rule.type == "decimal"}
    assert (rules["decimal"].formula1, rules["decimal"].formula2) == ("0", "48")
    assert book["lists"].sheet_state == "hidden" and book["lists"].max_row == 16
    assert len(book["answer"].data_validations.dataValidation) == 4


def test_a_blank_form_is_no_answer_and_forms_are_bytes_of_their_content(tmp_path):
    one, two = (
        write_form(tmp_path / name, case="01", batch="3", eggs=48, statements=STATEMENTS)
        for name in ("a.xlsx", "b.xlsx")
    )
    assert one.read_bytes() == two.read_bytes() and kind_of(one) == "answers"
    table, problems = read_answers(tmp_path, cases=["01"])
    assert len(table) == 0 and problems == []


def test_a_form_saved_as_text_is_read(tmp_path):
    path = write_form(tmp_path / "f.xlsx", case="01", batch="3", eggs=48, statements=STATEMENTS)
    _fill(path, {"stage": "late", "cause": "none", "A": "x"})
    sheet = load_workbook(path)["answer"]
    rows = [["" if cell.value is None else cell.value for cell in row] for row in sheet.iter_rows()]
    path.unlink()
    pd.DataFrame(rows).to_csv(tmp_path / "f.csv", index=False, header=False, sep=";")
    table, _ = read_answers(tmp_path, cases=["01"])
    assert table.loc["01", ["stage", "cause", "facts"]].tolist() == ["late", "none", "A"]
