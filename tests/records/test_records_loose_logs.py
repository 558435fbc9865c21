"""Logs that lie beside the table of batches, other texts there, and sheets that are no table of batches."""

import os

import openpyxl
import pytest
from sheet_files import said, tidy_season

from hatchkit.problems import HatchkitError
from hatchkit.records.folder import read_folder
from hatchkit.records.logs.read import is_log, read_readings
from hatchkit.words.spelling import many

ROWS = [f"2026-03-{1 + hour // 24:02d} {hour % 24:02d}:00:00,37.{hour % 7},55" for hour in range(96)]


@pytest.mark.parametrize("name", ["A.csv", "A log.txt", "A.dat"])
@pytest.mark.parametrize("header", [["time,temp_c,rh_pct"], []])
def test_a_log_beside_the_batches_is_read_with_a_note(tmp_path, name, header):
    tidy_season(tmp_path)
    (tmp_path / name).write_text("\n".join(header + ROWS), encoding="utf-8")
    read = read_folder(tmp_path)
    assert len(read["readings"]) == 96 and set(read["readings"]["file"]) == {name}
    assert said(read, name, "beside the table of batches")["severity"].tolist() == ["note"]
    assert not (read["problems"].query("file == @name")["severity"] == "lost").any()


@pytest.mark.parametrize(
    "text",
    [
        "date,item,price\n" + "\n".join(f"2026-03-{day:02d},feed,{day}.50" for day in range(1, 29)),
        "Bought feed on 2026-03-01, 12.50.\nCalled Ann.\n",
        "",
        "\x00\x01\x02" * 50,
        "2026-03-01 10:00,40\n2026-03-02 10:00,41\n",
    ],
)
def test_other_texts_beside_the_batches_are_no_logs(tmp_path, text):
    tidy_season(tmp_path)
    (tmp_path / "notes.txt").write_text(text, encoding="utf-8")
    assert not is_log(tmp_path / "notes.txt")
    assert read_folder(tmp_path)["readings"].empty


def test_a_file_that_season_toml_names_is_read_as_a_log_or_said_to_be_none(tmp_path):
    tidy_season(tmp_path)
    (tmp_path / "season.toml").write_text('[incubators.A]\nfiles = "notes.txt"\n', encoding="utf-8")
    (tmp_path / "notes.txt").write_text("no log at all\n", encoding="utf-8")
    assert said(read_folder(tmp_path), "notes.txt", "cannot be read as a sensor log")["severity"].tolist() == ["lost"]


def test_a_pipe_is_not_waited_for(tmp_path):
    os.mkfifo(tmp_path / "pipe.csv")
    assert not is_log(tmp_path / "pipe.csv")
    with pytest.raises(HatchkitError, match="not an ordinary file"):
        read_readings(tmp_path / "pipe.csv")


def test_a_workbook_without_batches_names_its_sheets_and_headings(tmp_path):
    book = openpyxl.Workbook()
    book.active.title = "Shopping"
    book.active.append(["item", "price"])
    book.active.append(["milk", 2])
    book.create_sheet("Plans").append(["when", "what"])
    book.save(tmp_path / "batches.xlsx")
    with pytest.raises(HatchkitError) as caught:
        read_folder(tmp_path)
    for words in ("batches.xlsx", "item, price"):
        assert words in str(caught.value)


def test_numbers_agree_with_their_noun():
    assert [many(count, "batch", "batches") for count in (0, 1, 2)] == ["0 batches", "1 batch", "2 batches"]
    assert many(1, "reading") == "1 reading" and many(3, "reading") == "3 readings"


def test_one_gap_and_several_are_told_in_a_sentence(tmp_path):
    path = tmp_path / "a.csv"
    path.write_text("\n".join(["time,temp_c,rh_pct", *ROWS[:20], *ROWS[50:]]), encoding="utf-8")
    found = " ".join(read_readings(path)[1]["found"])
    assert (
        "one gap of 31 hours in the readings of temp_c: nothing between 2026-03-01 19:00 UTC and 2026-03-03 02:00 UTC"
    ) in found
    path.write_text("\n".join(["time,temp_c,rh_pct", *ROWS[:20], *ROWS[50:60], *ROWS[80:]]), encoding="utf-8")
    assert "2 gaps in the readings of temp_c, the longest of 31 hours" in " ".join(read_readings(path)[1]["found"])
