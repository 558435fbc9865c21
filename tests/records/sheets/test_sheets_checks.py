"""Totals and percentages that the keeper wrote and that the counts do not give are doubts, each at its row."""

import pytest
from test_sheets_neighbours import read

ROWS = ["1,2025-03-01,30,4,2,3,21", "2,2025-03-22,24,3,1,2,18", "3,2025-04-12,28,5,2,1,20"]
HEAD = "Hatch,Set,Eggs,Clear,Dead,Dead in shell,Chicks"


def doubts(folder, lines, code):
    season, batches = read(folder, "\n".join(lines))
    assert [batch[5] for batch in batches] == [21, 18, 20]
    found = season.problems[season.problems["code"] == code]
    return found["row"].tolist(), found["facts"].tolist(), set(found["severity"])


@pytest.mark.parametrize("word", ["Total", "Summe", "Totaal", "Razem"])
def test_a_total_that_is_not_the_sum_of_its_column_is_a_doubt(word, tmp_path):
    rows, facts, how = doubts(tmp_path, [HEAD, *ROWS, f"{word},,82,12,5,6,61"], "total_differs")
    assert rows == [5] and facts == [dict(headings=["Chicks"], written=[61], sums=[59])] and how == {"doubtful"}


def test_totals_that_agree_and_means_are_none(tmp_path):
    rows, _, _ = doubts(tmp_path, [HEAD, *ROWS, "Total,,82,12,5,6,59", "Average,,27,4,2,2,20"], "total_differs")
    assert rows == []


def test_totals_of_two_columns_that_are_called_the_same_are_none(tmp_path):
    head = HEAD.replace("Dead in shell", "Dead")
    assert doubts(tmp_path, [head, *ROWS, "Total,,82,12,5,6,59"], "total_differs")[0] == []


def test_totals_by_part_of_the_table_are_those_of_the_part(tmp_path):
    lines = [HEAD, *ROWS[:2], "Total,,54,7,3,5,39", ROWS[2], "Total,,28,5,2,1,20", "Total,,82,12,5,6,59"]
    assert doubts(tmp_path, lines, "total_differs")[0] == []


@pytest.mark.parametrize("wrong, worked", [("70,75,81.4", 71.4), ("70 %,75 %,81.4 %", 71.4)])
def test_a_percentage_that_its_row_does_not_give_is_a_doubt_about_the_row(wrong, worked, tmp_path):
    lines = [f"{row},{percent}" for row, percent in zip(ROWS, wrong.split(","), strict=True)]
    rows, facts, how = doubts(tmp_path, [f"{HEAD},Hatch %", *lines], "percent_differs")
    assert rows == [4] and (facts[0]["written"], facts[0]["worked"]) == (81.4, worked) and how == {"doubtful"}


def test_percentages_of_fertile_eggs_agree_and_a_column_of_others_tells_nothing(tmp_path):
    fits = [f"{row},{percent}" for row, percent in zip(ROWS, (80.8, 85.7, 87.0), strict=True)]
    assert doubts(tmp_path, [f"{HEAD},Hatch of fertile %", *fits], "percent_differs")[0] == []
    unlike = [f"{row},{percent}" for row, percent in zip(ROWS, (33, 44, 55), strict=True)]
    assert doubts(tmp_path, [f"{HEAD},Hatch %", *unlike], "percent_differs")[0] == []


def test_humidity_in_percent_is_no_share_of_eggs(tmp_path):
    lines = [f"{row},{percent}" for row, percent in zip(ROWS, (45, 50, 48), strict=True)]
    assert doubts(tmp_path, [f"{HEAD},Humidity %", *lines], "percent_differs")[0] == []
