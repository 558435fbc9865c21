"""A diary in words: what adds up is used, what does not is asked about; hours and degrees count no eggs."""

import pytest
from sheet_files import write_csv

from hatchkit.records.folder import read_folder

LINES = ["Hatching diary 2025 (invented)", "2 Mar: Set batch A: 18 Sussex eggs in the big machine, 37.6 °C",
         "9 Mar: A d7: 3 clear, 1 blood ring", "16 Mar: A d14: 1 dead", "20 Mar: power cut 40 mins",
         "23 Mar: A: 10+1 chicks. 2 dead in shell"]  # fmt: skip


def diary(folder, lines, toml=""):
    (folder / "season.toml").write_text(toml, encoding="utf-8")
    return read_folder(write_csv(folder, lines))


def test_a_batch_that_adds_up_is_used(tmp_path):
    read = diary(tmp_path, LINES)
    batch = read["batches"].iloc[0]
    assert (batch["batch"], batch["eggs_set"], batch["hatched"], batch["dead_in_shell"]) == ("A", 18, 11, 2)
    assert (batch["clear1"], batch["dead1"]) == (3, 1) and len(read["batches"]) == 1
    assert "diary" not in set(read["questions"]["code"])


def test_one_that_does_not_is_asked_about_and_used_only_when_told(tmp_path):
    lines = [*LINES[:-1], "23 Mar: A: 9 chicks. 2 dead in shell"]
    read = diary(tmp_path, lines)
    asked = read["questions"][read["questions"]["code"] == "diary"].iloc[0]
    assert read["batches"].empty and asked["taken"] == "left_out"
    assert [choice["taken"] for choice in asked["choices"]] == ["left_out", "used"]
    told = read_folder(tmp_path, answers={("batches.csv", "", "?diary"): "used"})
    assert told["batches"]["hatched"].tolist() == [9]


@pytest.mark.parametrize("noise", ["power cut 2 hours", "38.5 °C at noon", "bought 3 kg of feed", "paid 12 €"])
def test_numbers_of_other_things_are_no_eggs(tmp_path, noise):
    lines = [*LINES[:3], f"12 Mar: {noise}", *LINES[3:]]
    assert diary(tmp_path, lines)["batches"]["eggs_set"].tolist() == [18]


def test_chicks_that_died_later_are_no_loss_of_eggs(tmp_path):
    read = diary(tmp_path, [*LINES, "25 Mar: 1 chick found dead under the lamp"])
    assert read["batches"]["hatched"].tolist() == [11] and read["batches"]["dead_in_shell"].tolist() == [2]
