"""The problems table keeps its columns and its order whatever is put in."""

import pytest

from hatchkit import problems


def test_an_empty_table_has_all_columns():
    assert list(problems.table([]).columns) == problems.COLUMNS
    assert list(problems.combine(problems.table([]), problems.table([])).columns) == problems.COLUMNS


def test_the_lost_come_before_the_doubtful_and_the_notes():
    rows = [problems.problem(severity, found="f", done="d", row=number)
            for number, severity in enumerate(("note", "lost", "doubtful"), start=1)]
    both = problems.combine(problems.table(rows[:1]), problems.table(rows[1:]))
    assert both["severity"].tolist() == ["lost", "doubtful", "note"]
    assert both["row"].tolist() == [2, 3, 1]


def test_a_problem_without_a_row_number_stays_without_one():
    both = problems.combine(problems.table([problems.problem("note", found="f", done="d")]))
    assert both["row"].isna().all()


def test_a_severity_outside_the_three_is_a_mistake_of_ours():
    with pytest.raises(ValueError, match="severity"):
        problems.problem("bad", found="f", done="d")
