"""Blank lines of a card, cards side by side, candlings that repeat the eggs, cells that count two classes; invented.

A batch is told as set, clear, dead, pipped, removed, hatched, unaccounted for.
"""

import openpyxl
import pytest
from test_sheets_neighbours import read

from hatchkit import load_season
from hatchkit.records.sheets.cells import count_of
from hatchkit.records.sheets.meanings import meanings
from hatchkit.records.sheets.when import leading_date

TEXTS = {
    "losses left blank on a card": (
        """
Name:;Loft
Bird:;hens
Went in:;2026-04-06
No. of eggs:;20
;
Clear 1st candling;3
Deaths 1st candling;
Deaths 2nd candling;
Broken;1
Unhatched at the end;2
Chicks out;14""",
        [(20, 3, 2, 0, 1, 14, 0)],
    ),
    "each candling with the eggs that went in": (
        """
Batch,Species,Day,Date,Eggs,Clear,Dead,Still going,Chicks
A,hens,0,2026-03-01,30,,,,
A,hens,8,2026-03-09,30,4,2,24,
A,hens,15,2026-03-16,24,0,1,23,
A,hens,21,2026-03-22,23,,2,,21
B,turkeys,0,2026-03-29,14,,,,
B,turkeys,9,2026-04-07,14,2,1,11,
B,turkeys,28,2026-04-26,11,,1,,10""",
        [(30, 4, 5, 0, 0, 21, 0), (14, 2, 2, 0, 0, 10, 0)],
    ),
    "the bird named where eggs are set": (
        """
Date,Batch,Event,Number
03/04/2026,Red,Chicken eggs set,18
10/04/2026,Red,Clear,2
17/04/2026,Red,Died,1
24/04/2026,Red,Hatched,13
26/04/2026,Red,Dead in shell,2""",
        [(18, 2, 3, 0, 0, 13, 0)],
    ),
    "a sum of two classes": (
        """
Lot,Bird,Set,Eggs,First candling (clear + dead),Second candling (dead),Dead in shell,Hatched
One,ducks,2026-03-17,16,3 + 1,0,2,10
Two,geese,2026-03-24,8,2 + 1,0,0,5
Three,ducks,2026-04-14,14,1 + 0,1,1,11""",
        [(16, 3, 3, 0, 0, 10, 0), (8, 2, 1, 0, 0, 5, 0), (14, 1, 2, 0, 0, 11, 0)],
    ),
    "a batch that is still in the machine": (
        """
,Buffs,Reds
Bird,hens,hens
Set,2026-10-03,2026-11-14
Eggs,20,18
Day 7 clears,2,3
Day 7 dead,1,1
Day 14 dead,1,not yet
Dead in shell,1,
Chicks,15,due 5 Dec""",
        [(20, 2, 3, 0, 0, 15, 0), (18, 3, 1, 0, 0, 0, 14)],
    ),
    "a diary with a number behind its dates": (
        """
Hatching diary 2026 (hens)
1 March;set 20 eggs
3 March;dropped to 36.9 overnight
8 March;candled: 3 clear and 1 dead
22 March 13 hatched. 1 pipped and died and 2 dead in shell;""",
        [(20, 3, 3, 1, 0, 13, 0)],
    ),
}


@pytest.mark.parametrize("text, batches", TEXTS.values(), ids=TEXTS)
def test_each_batch_is_read_as_a_person_reads_it(tmp_path, text, batches):
    _, found = read(tmp_path, text)
    assert found == batches


def test_of_two_cards_side_by_side_each_has_its_own_title(tmp_path):
    text = """
Red hens;;;White ducks;
set 7/3/2026;;;set 21/3/2026;
Eggs;22;;Eggs;14
Clear at 1 wk;3;;Clear at 1 wk;1
Died 1st wk;1;;Died 1st wk;0
Unhatched dead;2;;Unhatched dead;1
Hatched;16;;Hatched;12"""
    season, found = read(tmp_path, text)
    assert found == [(22, 3, 3, 0, 0, 16, 0), (14, 1, 1, 0, 0, 12, 0)]
    assert season.batches["species"].tolist() == ["chicken", "duck"]
    assert season.batches["set_at"].dt.strftime("%m-%d").tolist() == ["03-07", "03-21"]


def test_keys_that_look_like_days_name_batches_on_every_sheet(tmp_path):
    book = openpyxl.Workbook()
    sheets = {
        "Settings": ["No.;Date set;Breed;Eggs", "26/1;2026-02-07;hens;20", "26/2;2026-03-07;hens;24"],
        "Candling": ["No.;1st: clear;1st: dead", "26/1;2;1", "26/2;4;1"],
        "Results": ["No.;Hatched;Dead in shell", "26/1;15;2", "26/2;18;1"],
    }
    for title, lines in sheets.items():
        sheet = book.create_sheet(title)
        for line in lines:
            sheet.append([int(cell) if cell.isdigit() else cell for cell in line.split(";")])
    book.save(tmp_path / "book.xlsx")
    batches = load_season(tmp_path).batches
    assert batches["batch"].tolist() == ["26/1", "26/2"]
    assert batches["clear1"].tolist() == [2, 4] and batches["hatched"].tolist() == [15, 18]


def test_what_is_still_to_come_counts_nothing():
    assert count_of("due 5 Dec").value is None and count_of("not yet").value is None
    assert count_of("5 (due 6)").value == 5


@pytest.mark.parametrize(
    "line, year, rest", [("22 March 13 hatched", 2026, "13 hatched"), ("22 March 26 hatched", 2026, "hatched")]
)
def test_a_number_of_eggs_is_no_year_of_a_diary_in_another_year(line, year, rest):
    assert leading_date(line, True, year)[1] == rest


def test_good_and_weak_chicks_are_all_that_came_out():
    assert meanings("Good + weak chicks", "", "en")[0].field == "hatched"
    assert meanings("Weak chicks", "", "en")[0].field == "weak"
