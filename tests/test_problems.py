"""The problems table keeps its columns and its order whatever is put in."""

import pickle

import pytest

from hatchkit import problems


def test_an_empty_table_has_all_columns():
    assert list(problems.table([]).columns) == problems.COLUMNS
    assert list(problems.combine(problems.table([]), problems.table([])).columns) == problems.COLUMNS


def test_the_lost_come_before_the_doubtful_and_the_notes():
    rows = [
        problems.problem(severity, found="f", done="d", row=number)
        for number, severity in enumerate(("note", "lost", "doubtful"), start=1)
    ]
    both = problems.combine(problems.table(rows[:1]), problems.table(rows[1:]))
    assert both["severity"].tolist() == ["lost", "doubtful", "note"]
    assert both["row"].tolist() == [2, 3, 1]


def test_a_problem_without_a_row_number_stays_without_one():
    both = problems.combine(problems.table([problems.problem("note", found="f", done="d")]))
    assert both["row"].isna().all()


def test_a_severity_outside_the_three_is_a_mistake_of_ours():
    with pytest.raises(ValueError, match="severity"):
        problems.problem("bad", found="f", done="d")


def test_a_problem_with_a_code_gets_its_sentences_from_say_and_keeps_its_facts():
    facts = dict(path="answers.toml")
    row = problems.problem("doubtful", code="answers_unreadable", facts=facts, file="answers.toml")
    assert row["found"] and row["done"] and row["fix"] and (row["code"], row["facts"]) == ("answers_unreadable", facts)
    told = problems.combine(problems.table([row]), problems.table([problems.problem("lost", found="f", done="d")]))
    assert told["code"].tolist() == ["", "answers_unreadable"] and told["facts"].tolist() == [None, facts]


def test_a_problem_needs_a_code_or_its_sentences():
    with pytest.raises(TypeError, match="code"):
        problems.problem("note", found="f")


def test_an_error_says_its_sentence_whether_it_was_written_or_has_a_code():
    assert str(problems.HatchkitError("There is no folder x.")) == "There is no folder x."
    error = problems.HatchkitError("place_rows", dict(rows=[4, 9]))
    assert str(error) == "rows 4 and 9" and error.code == "place_rows"
    assert str(pickle.loads(pickle.dumps(error))) == "rows 4 and 9"
