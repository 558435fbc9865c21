"""Ugly input of what a sheet tells in words: courses in a cell, days without a month, words explained, sums too big."""

import datetime as dt

import pytest
from sheet_files import asked, write_csv, write_xlsx

from hatchkit.records.folder import read_folder
from hatchkit.records.sheets.abreast import month_in, with_months
from hatchkit.records.sheets.birds import likeliest, species_in
from hatchkit.records.sheets.cells import mentions, whole_of
from hatchkit.records.sheets.expand import counts_by_look
from hatchkit.records.sheets.legend import with_glossary
from hatchkit.records.sheets.parts import Block
from hatchkit.records.times import decide, gather
from hatchkit.records.workbook import Grid

LOG = ["Batch,Date,What,Eggs in,Clear,Dead,Chicks", "A,27/01/2024,set,30,,,", "A,03/02/2024,1st candling,30,3,2,",
       "A,10/02/2024,2nd candling,25,1,1,", "A,17/02/2024,hatch,23,,2,21"]  # fmt: skip


@pytest.mark.parametrize("cell, counts", [
    ("d7: 3 clear, 1 blood ring. d14: 1 dead. d18: 19 into the hatcher. Hatched 16 of 24",
     {("day 7", "clear"): 3, ("day 7", "dead"): 1, ("day 14", "dead"): 1, ("day 18", "left"): 19, ("", "hatched"): 16}),
    ("5 clear, 2 quit", {("candling 1", "clear"): 5, ("candling 1", "dead"): 2}),
    ("3 clear; 1 dead; 2 dead", {("candling 1", "clear"): 3, ("candling 1", "dead"): 1, ("candling 2", "dead"): 2}),
    ("Hatched 10+2 next day, 1 dead in shell", {("", "hatched"): 12, ("", "dis"): 1}),
    ("", {}), ("???", {}), ("37.6 °C all week", {}), (None, {}), ("x" * 5000, {}),
])  # fmt: skip
def test_a_cell_of_words_is_parted_by_its_looks(cell, counts):
    found = {key: count for key, count in counts_by_look(cell, "en").items() if key[1]}
    assert found == counts


@pytest.mark.parametrize("text, part, whole", [("15 of 24 hatched", 15, 24), ("geschlüpft 15 von 24", 15, 24),
                                               ("12 hatched", 12, None), ("24 of 15 hatched", None, None)])  # fmt: skip
def test_a_share_counts_its_part(text, part, whole):
    assert whole_of(text) == whole
    if part is not None:
        assert [mention.count for mention in mentions(text) if "hatched" in mention.roles] == [part]


def days(cells, headings=("mis le (jour)",), sections=None):
    rows = list(range(2, 2 + len(cells)))
    return Block("table", "a.csv", "", list(headings), [""], [list(cells)], rows, sections=sections or [])


def test_days_of_a_month_take_the_month_that_stands_around_them():
    assert with_months(days([3, "17", ""]), ["Couvées", "Avril 2025"], "fr").columns == [
        [dt.date(2025, 4, 3), dt.date(2025, 4, 17), ""]]  # fmt: skip


APRIL = ["Avril 2025"]


@pytest.mark.parametrize("cells, around", [([3, 17], ["Couvées"]), ([3, 45], APRIL), ([3, "?"], APRIL), ([3.5], APRIL),
                                           (["3,5"], APRIL), (["03/04/2025"], APRIL), ([], APRIL)])  # fmt: skip
def test_what_is_no_day_of_a_known_month_stays_as_written(cells, around):
    assert with_months(days(cells), around, "fr").columns == [list(cells)]


def test_the_31st_of_a_short_month_is_of_the_next_and_a_month_needs_its_year():
    assert with_months(days([31]), ["Avril 2025"], "fr").columns == [[dt.date(2025, 5, 31)]]
    assert month_in("Dezember 2024") == (2024, 12) and month_in("Avril") is None and month_in(None) is None


def test_a_sentence_that_explains_a_word_is_written_out_and_kept():
    sentence = "Penoy = clear egg, no embryo."
    read, told = with_glossary(Grid("a.csv", "", [[sentence], ["Batch", "Penoy"], ["Penoys", 3]]), "en")
    assert read.cells == [[""], ["Batch", "clear egg"], ["Penoys", 3]] and told == [(1, sentence)]


@pytest.mark.parametrize("text", ["=", "a=b", "profit = 12", "= clear", "Penoy =", "x" * 500 + " = clear", "=SUM(A1)"])
def test_what_explains_no_word_changes_nothing(text):
    grid = Grid("a.csv", "", [[text], ["Batch", "Penoy"]])
    assert with_glossary(grid, "en") == (grid, [])


def test_a_table_with_more_eggs_than_were_set_in_most_rows_is_left_out_and_asked_about_until_told(tmp_path):
    rows = [["Batch", "Date set", "Number of eggs set", "Clear", "Dead in shell", "Hatched"],
            *([f"B{n}", dt.date(2025, 3, n), 10, 9, 8, 9] for n in range(1, 4))]  # fmt: skip
    read = read_folder(write_xlsx(tmp_path, rows))
    assert read["batches"].empty and asked(read, "?sums") == [["left_out", "used"]]
    told = read_folder(tmp_path, answers={("batches.xlsx", "batches", "?sums"): "used"})
    assert len(told["batches"]) == 3


def test_one_row_with_too_many_eggs_is_no_misreading(tmp_path):
    rows = [["Batch", "Date set", "Number of eggs set", "Clear", "Dead in shell", "Hatched"],
            *([f"B{n}", dt.date(2025, 3, n), 10, 1, 2, 7] for n in range(1, 5)),
            ["B9", dt.date(2025, 4, 1), 10, 9, 9, 9]]  # fmt: skip
    read = read_folder(write_xlsx(tmp_path, rows))
    assert len(read["batches"]) == 5 and asked(read, "?sums") == []


@pytest.mark.parametrize("named", [True, False])
def test_eggs_that_went_into_a_look_set_no_batch(tmp_path, named):
    lines = LOG if named else [LOG[0], LOG[1], *("," + line.partition(",")[2] for line in LOG[2:])]
    more = [line.replace("A,", "B,", 1).replace("/2024", "/2025") for line in lines[1:]]
    batches = read_folder(write_csv(tmp_path, [*lines, *more]))["batches"]
    assert batches["batch"].tolist() == ["A", "B"] and batches["eggs_set"].tolist() == [30, 30]
    assert batches[["clear1", "dead1", "clear2", "dead2", "hatched"]].values.tolist() == 2 * [[3, 2, 1, 1, 21]]


def test_groups_below_one_date_share_it_and_a_total_does_not(tmp_path):
    lines = ["Set,Group,Eggs,Clear,Dead in shell,Hatched", "15/02/2025,Pen A,24,4,4,16", ",Pen B,18,5,3,10",
             "15/03/2025,Pen A,30,3,5,22", ",Pen B,20,4,3,13"]  # fmt: skip
    batches = read_folder(write_csv(tmp_path, lines))["batches"]
    assert batches["set_at"].dt.strftime("%m-%d").tolist() == ["02-15", "02-15", "03-15", "03-15"]


def test_the_fowl_of_a_guinea_fowl_is_no_hen():
    assert likeliest(species_in("Lavender guinea fowl"))[0] == "guinea"
    assert likeliest(species_in("Sussex fowl"))[0] == "chicken"


def test_dates_of_which_one_order_makes_none_follow_the_other():
    assert decide(gather(["3/3/2024", "3/31/2024", "4/28/2024"])).order == "mdy"
