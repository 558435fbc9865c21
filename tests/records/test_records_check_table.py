"""What the check shows: grouped, short, and safe to open."""

import csv
from types import SimpleNamespace

import pandas as pd
import pytest

from hatchkit import problems
from hatchkit.pages.check_page import check_page
from hatchkit.pages.check_text import check_text
from hatchkit.problems import problem
from hatchkit.records.check import group_problems
from hatchkit.records.safe_csv import safe_cell, write_problems_csv
from hatchkit.say.sheets import place_words

ROWS = [
    problem("note", file="a.csv", found="1 line at the top", done="not readings"),
    problem("note", file="b.csv", found="2 lines at the top", done="not readings"),
    problem(
        "doubtful",
        file="x.xlsx",
        sheet="batches",
        row=4,
        column="Hatched",
        found="batch 1: 31 hatched from 30",
        done="The batch stays.",
        fix="Correct it.",
    ),
    problem(
        "doubtful",
        file="x.xlsx",
        sheet="batches",
        row=9,
        column="Hatched",
        found="batch 6: 41 hatched from 40",
        done="The batch stays.",
        fix="Correct it.",
    ),
    problem("lost", file="x.xlsx", sheet="batches", row=7, found="no species", done="Left out.", fix="Add it."),
]


def season_of(rows):
    empty = pd.DataFrame()
    return SimpleNamespace(
        title="Spring",
        language="en",
        timezone="Europe/Rome",
        problems=problems.table(rows),
        batches=empty,
        eggs=empty,
        weights=empty,
        readings=empty,
    )


def test_problems_are_grouped_by_what_to_fix_first():
    groups = group_problems(problems.table(ROWS))
    assert groups["severity"].tolist() == ["lost", "doubtful", "note"] and groups["times"].tolist() == [1, 2, 2]
    assert groups["place"].map(place_words).tolist() == [
        "x.xlsx, sheet batches, row 7",
        "x.xlsx, sheet batches, rows 4 and 9, column Hatched",
        "a.csv and 1 more file",
    ]


def test_the_table_is_plain_text_in_that_order():
    text = check_text(season_of(ROWS), width=80)
    assert text.index("Fix first") < text.index("Then: used") < text.index("To know")
    assert "x.xlsx, sheet batches, row 7: no species." in text and "Fix: Add it." in text
    assert "(and 1 more like it)" in text and max(map(len, text.splitlines())) <= 80


def test_nothing_to_fix_is_said():
    assert "Nothing to fix." in check_text(season_of([])) and "Nothing to fix." in check_page(season_of([]))


def test_control_characters_of_a_file_do_not_reach_the_terminal():
    text = check_text(season_of([problem("note", file="a\x1b[2J.csv", found="x\x07y", done="z")]))
    assert "\x1b" not in text and "\x07" not in text


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@x", "  =1", "\t=1", "\r=1", "\n@x", "=cmd|' /C calc'!A0"])
def test_text_that_a_spreadsheet_would_run_is_defused(text):
    assert safe_cell(text) == "'" + text


@pytest.mark.parametrize(
    "value, shown", [("plain", "plain"), (None, ""), (float("nan"), ""), (pd.NA, ""), ("a=1", "a=1")]
)
def test_other_text_is_left_as_it_is(value, shown):
    assert safe_cell(value) == shown


def test_the_csv_holds_every_row_and_no_formula(tmp_path):
    rows = [
        *ROWS,
        problem("note", file="=evil.csv", column="@SUM(A1)", found="-2+3", done="+x", fix='=HYPERLINK("x")'),
    ]
    write_problems_csv(problems.table(rows), tmp_path / "problems.csv")
    with open(tmp_path / "problems.csv", encoding="utf-8-sig", newline="") as handle:
        lines = list(csv.reader(handle))
    assert lines[0] == problems.COLUMNS and len(lines) == 7
    assert not any(cell.lstrip()[:1] in tuple("=+-@") for line in lines for cell in line if cell)


def test_the_page_escapes_all_text_of_the_files():
    page = check_page(
        season_of(
            [
                problem(
                    "lost",
                    file="<b>.csv",
                    sheet='"><script>x()</script>',
                    row=3,
                    column="a&b",
                    found="<img src=x onerror=y>",
                    done="d",
                    fix="m",
                )
            ]
        )
    )
    assert "<script>" not in page and "<img" not in page and "&lt;img src=x onerror=y&gt;" in page and "a&amp;b" in page
    assert "row 3" in page and page.startswith("<!DOCTYPE html>")


def test_a_page_of_very_many_rows_is_cut_and_says_so(monkeypatch):
    monkeypatch.setattr("hatchkit.pages.check_page.MOST_ROWS", 10)
    page = check_page(season_of([problem("note", found=f"n {i}", done="d") for i in range(25)]))
    assert page.count("<tr>") == 11 and "The first 10 are shown." in page and "(25)" in page
