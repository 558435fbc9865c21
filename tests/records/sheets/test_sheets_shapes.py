"""Shapes in which sheets come: keys of marks, hours apart, tables beside each other, rounds, years, orders of dates."""

import datetime as dt

import pytest
from sheet_files import write_csv

from hatchkit.records.folder import read_folder
from hatchkit.records.sheets.abreast import by_round, side_by_side, with_hours
from hatchkit.records.sheets.legend import with_legend
from hatchkit.records.sheets.parts import Block
from hatchkit.records.workbook import Grid


def grid(*rows):
    return Grid("a.xlsx", "sheet", [list(row) for row in rows])


def block(headings, *rows, groups=None, shape="table"):
    return Block(shape, "a.xlsx", "sheet", headings, groups or [""] * len(headings),
                 [list(column) for column in zip(*rows, strict=True)], list(range(2, 2 + len(rows))),
                 sections=[""] * len(rows))  # fmt: skip


def test_a_key_of_marks_puts_their_words_into_the_cells_and_is_told():
    read, told = with_legend(grid(["egg", "end", "H = hatched"], [1, "H", "BR = blood ring"], [2, "H late", ""]), "en")
    assert [row[1] for row in read.cells] == ["end", "hatched", "hatched late"]
    assert told == [(1, "H = hatched"), (2, "BR = blood ring")] and read.cells[0][2] == ""


def test_one_entry_or_a_formula_is_no_key():
    plain = grid(["egg", "x = y"], [1, "H = hatched"])
    assert with_legend(plain, "en") == (plain, [])


@pytest.mark.parametrize(
    "date, hour, joined",
    [
        ("2026-03-01", "18:30", "2026-03-01 18:30"),
        (dt.date(2026, 3, 1), dt.time(7, 15), dt.datetime(2026, 3, 1, 7, 15)),
        (dt.datetime(2026, 3, 1, 9, 0), "18:30", dt.datetime(2026, 3, 1, 9, 0)),
        ("2026-03-01", "?", "2026-03-01"),
    ],
)
def test_an_hour_of_its_own_joins_the_date_of_the_same_step(date, hour, joined):
    rows = [(date, hour, "2026-03-22"), ("2026-03-02", "08:00", "2026-03-23")]
    read = with_hours(block(["set date", "set time", "hatch date"], *rows), "en")
    assert read.columns[0][0] == joined and read.columns[2][0] == "2026-03-22" and read.hours == (1,)


def test_tables_beside_each_other_are_cut_where_the_key_comes_again():
    below = [[n, "2026-03-01", 20, "", n, 15, 2] for n in (1, 2, 3)]
    rows = [["No", "Set", "Eggs", "", "No", "Hatched", "Dead"], *below]
    parts = side_by_side(grid(*rows))
    assert [part.cells[0] for part in parts] == [["No", "Set", "Eggs", ""], ["No", "Hatched", "Dead"]]


def test_a_blank_column_before_the_notes_parts_nothing():
    rows = [["No", "Set", "Eggs", "", "Notes", "Hatched", "Dead"], *[[n, "x", 20, "", "", 15, 2] for n in (1, 2, 3)]]
    assert len(side_by_side(grid(*rows))) == 1


def test_two_rounds_under_headings_that_span_them_are_two_tables():
    rows = [("1", "2026-02-10", 2, 2, "2026-03-28", 2, 1), ("2", "2026-02-14", 2, 1, "", "", "")]
    heads = ["nest", "set", "eggs", "hatched", "set", "eggs", "hatched"]
    groups = ["", "round 1", "round 1", "round 1", "round 2", "round 2", "round 2"]
    parts = by_round(block(heads, *rows, groups=groups))
    assert [part.titles[-1] for part in parts] == ["round 1", "round 2"]
    assert [part.rows for part in parts] == [[2, 3], [2]] and parts[1].columns[3] == [1]


HEAD = "batch,species,set on,eggs,hatched"


def asked(read, code):
    found = read["questions"]
    return found[found["code"] == code]


def test_a_year_that_nothing_tells_is_the_last_past_one_and_asked(tmp_path, monkeypatch):
    monkeypatch.setenv("HATCHKIT_TODAY", "2026-05-01")
    read = read_folder(write_csv(tmp_path, [HEAD, "B1,hen,3 March,20,15", "B2,hen,4 July,20,12"]))
    assert read["batches"]["set_at"].dt.year.tolist() == [2025, 2025]
    assert asked(read, "year")["taken"].tolist() == ["2025"]


def test_a_year_stands_in_the_title_or_in_another_date(tmp_path):
    read = read_folder(write_csv(tmp_path, ["Hatches 2024 (invented),,,,", HEAD, "B1,hen,3 March,20,15"]))
    assert read["batches"]["set_at"].dt.year.tolist() == [2024] and asked(read, "year").empty


@pytest.mark.parametrize(
    "dates, months",
    [
        (("01.11.2026", "02.04.2026"), [11, 4]),
        (("03/25/2026", "04/02/2026"), [3, 4]),
        (("25/03/2026", "02/04/2026"), [3, 4]),
    ],
)
def test_the_order_of_dates_follows_dots_and_what_is_possible(tmp_path, dates, months):
    lines = [HEAD, *[f"B{n},hen,{date},20,15" for n, date in enumerate(dates)]]
    assert read_folder(write_csv(tmp_path, lines))["batches"]["set_at"].dt.month.tolist() == months


def test_dates_that_fit_either_order_are_asked(tmp_path):
    read = read_folder(write_csv(tmp_path, [HEAD, "B1,hen,03/02/2026,20,15", "B2,hen,11/02/2026,20,12"]))
    assert len(asked(read, "day_first")) == 1


def test_a_word_explained_once_in_brackets_holds_for_the_other_rows(tmp_path):
    lines = [HEAD, "B1,kanga (guinea),2026-03-01,20,15", "B2,kanga,2026-04-01,20,12"]
    assert read_folder(write_csv(tmp_path, lines))["batches"]["species"].tolist() == ["guinea", "guinea"]


@pytest.mark.parametrize("column", ["Colour", "Farbe", "Kleur"])
def test_a_colour_is_no_bird(tmp_path, column):
    lines = [f"batch,breed,{column},set on,eggs,hatched", "B1,Sebright,quail,2026-03-01,20,15"]
    lines.append("B2,Chabo,black,2026-04-01,9,7")
    assert read_folder(write_csv(tmp_path, lines))["batches"]["species"].tolist() == ["chicken", "chicken"]


def test_a_date_that_cannot_be_read_is_not_filled_from_the_hatch_above(tmp_path):
    lines = ["hatch,in on,breed,eggs,hatched", "H1,2026-03-01,Marans,20,15", ",,Sussex,20,14"]
    lines += ["H2,soon,Marans,20,13", ",,Sussex,20,12"]
    read = read_folder(write_csv(tmp_path, lines))
    assert read["batches"]["row"].tolist() == [2, 3]
    assert set(read["problems"].loc[read["problems"]["severity"] == "lost", "row"]) == {4, 5}
