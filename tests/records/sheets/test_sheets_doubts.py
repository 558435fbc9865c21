"""A column of eggs that nobody knows: what was worked out around it is not used, and it is asked about."""

import pytest
from sheet_files import write_csv

import hatchkit as hk
from hatchkit.records.folder import read_folder

HEAD = ["Batch", "Set", "Eggs", "Left d7", "Left d14", "Moved to hatcher", "Chicks"]
ROWS = ["A,2025-03-01,30,27,26,25,23", "B,2025-03-22,24,20,20,19,15", "C,2025-04-12,28,25,23,23,20"]


def read(folder, head, rows=ROWS):
    season = hk.load_season(write_csv(folder, [",".join(head), *rows]))
    fates = season.fates.groupby("fate")["eggs"].sum().to_dict()
    asked = season.questions[season.questions["code"] == "meaning"]
    return {fate: int(eggs) for fate, eggs in fates.items()}, asked


def test_known_words_are_used_and_nothing_is_asked(tmp_path):
    fates, asked = read(tmp_path, HEAD)
    assert fates == {"clear": 10, "dead": 14, "hatched": 58} and asked.empty


@pytest.mark.parametrize("place", [3, 4, 5])
def test_a_look_that_nobody_knows_lets_no_loss_be_worked_out(tmp_path, place):
    fates, asked = read(tmp_path, [*HEAD[:place], "Zorque", *HEAD[place + 1 :]])
    assert fates == {"hatched": 58, "unaccounted": 24}
    assert asked["heading"].tolist() == ["Zorque"]
    assert "left" in [choice["taken"] for choice in asked["choices"].iloc[0]]


def test_the_answer_brings_the_losses_back(tmp_path):
    head = [*HEAD[:3], "Zorque", *HEAD[4:]]
    folder = write_csv(tmp_path, [",".join(head), *ROWS])
    told = read_folder(folder, answers={("batches.csv", "", "Zorque"): "left@day7"})
    assert told["batches"]["clear1"].tolist() == [3, 4, 3]
    ignored = read_folder(folder, answers={("batches.csv", "", "Zorque"): "ignore"})
    assert "meaning" not in set(ignored["questions"]["code"]) and ignored["batches"]["hatched"].tolist() == [23, 15, 20]


@pytest.mark.parametrize("cells", [("31", "40", "55"), ("7", "7", "7"), ("1", "2", "3"), ("2.5", "3.1", "4")])
def test_numbers_that_are_no_eggs_change_nothing(tmp_path, cells):
    rows = [",".join([*row.split(",")[:3], cell, *row.split(",")[3:]]) for row, cell in zip(ROWS, cells, strict=True)]
    fates, asked = read(tmp_path, [*HEAD[:3], "Zorque", *HEAD[3:]], rows)
    assert fates == {"clear": 10, "dead": 14, "hatched": 58} and asked.empty


def test_a_loss_that_nobody_knows_is_asked_about_where_eggs_are_missing(tmp_path):
    rows = ["A,2025-03-01,30,3,2,22", "B,2025-03-22,24,4,1,15", "C,2025-04-12,28,3,0,20"]
    fates, asked = read(tmp_path, ["Batch", "Set", "Eggs", "Clear", "Zorque", "Chicks"], rows)
    assert fates["unaccounted"] == 15 and asked["heading"].tolist() == ["Zorque"]


def test_eggs_between_those_before_and_after_are_eggs_left(tmp_path):
    rows = [f"{name},2025-0{month}-05,40,{36 - month},{35 - month},{34 - month},{30 - month}" for name, month in
            zip("ABCDEF", range(1, 7), strict=True)]  # fmt: skip
    fates, asked = read(tmp_path, [*HEAD[:4], "Zorque", *HEAD[5:]], rows)
    assert "unaccounted" not in fates and fates["dead"] == 6 * 6
    assert set(asked["heading"]) <= {"Zorque"}


def test_more_healthy_chicks_than_hatched_is_no_reading(tmp_path):
    head = ["Batch", "Set", "Eggs", "Clear", "Zorque hatch", "alive chicks"]
    rows = ["A,2025-03-01,30,3,4,23", "B,2025-03-22,24,4,5,15", "C,2025-04-12,28,3,5,20"]
    fates, _ = read(tmp_path, head, rows)
    assert fates.get("hatched", 0) in (0, 58)


@pytest.mark.parametrize("percents", [("85", "75", "80"), ("85.2", "75.0", "80.0"), ("0.852", "0.75", "0.8")])
def test_percentages_of_the_fertile_tell_the_clears(tmp_path, percents):
    head = ["Batch", "Set", "Eggs", "Zorque", "Dead", "Moved to hatcher", "Chicks", "Dead in shell"]
    rows = ["A,2025-03-01,30,3,2,25,23,2", "B,2025-03-22,24,4,1,19,15,4", "C,2025-04-12,28,3,2,23,20,3"]
    _, open_without = read(tmp_path, head, rows)
    rows = [f"{row},{percent}" for row, percent in zip(rows, percents, strict=True)]
    fates, asked = read(tmp_path, [*head, "% of fertile"], rows)
    assert fates == {"clear": 10, "dead": 14, "hatched": 58}
    assert not open_without.empty and asked.empty


@pytest.mark.parametrize("name", ["Total Eclipse", "Summe 2", "Mean Green"])
def test_a_row_with_a_date_of_its_own_is_no_sum(tmp_path, name):
    rows = [*ROWS, f"{name},2025-05-03,20,18,17,17,15", "Total,,102,,,,73"]
    season = hk.load_season(write_csv(tmp_path, [",".join(HEAD), *rows]))
    assert season.batches["eggs_set"].tolist() == [30, 24, 28, 20]
