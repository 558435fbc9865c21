"""Numbers and dates that no keeper means are lost cells with their row told, never the end of the season."""

import pytest

from hatchkit.losses.fates import build_fates
from hatchkit.records.folder import read_folder

HEAD = "batch,species,set_at,eggs_set,stored_days,hatched\n"
GOOD = "A,chicken,2026-03-01,42,4,30\n"


def _read(tmp_path, line):
    (tmp_path / "batches.csv").write_text(HEAD + GOOD + line)
    read = read_folder(tmp_path)
    build_fates(read["batches"], read["eggs"], read["looks"], read["species_table"])
    return read


def _lost(read, column):
    rows = read["problems"]
    return rows[(rows["severity"] == "lost") & (rows["column"] == column)][["row", "code"]].values.tolist()


@pytest.mark.parametrize(
    ("days", "kept"), [("400", True), ("401", False), ("999999999999", False), ("9" * 5000, False)]
)
def test_storage_above_400_days_is_a_lost_cell(tmp_path, days, kept):
    read = _read(tmp_path, f"B,chicken,2026-03-11,48,{days},36\n")
    assert read["batches"]["batch"].tolist() == ["A", "B"]
    assert read["batches"]["stored_days"].notna().tolist() == [True, kept]
    assert _lost(read, "stored_days") == ([] if kept else [[3, "cell_too_much"]])


@pytest.mark.parametrize(
    ("eggs", "kept"), [("100000", True), ("100001", False), ("9" * 400, False), ("9" * 5000, False)]
)
def test_a_count_above_100_000_is_a_lost_cell(tmp_path, eggs, kept):
    read = _read(tmp_path, f"B,chicken,2026-03-11,{eggs},4,36\n")
    assert read["batches"]["batch"].tolist() == (["A", "B"] if kept else ["A"])
    assert _lost(read, "eggs_set") == ([] if kept else [[3, "cell_huge"]])


@pytest.mark.parametrize(
    ("day", "kept"),
    [
        ("1950-01-01", True),
        ("2100-12-31", True),
        ("1949-12-31", False),
        ("2101-01-01", False),
        ("9999-12-31", False),
        ("1677-01-01", False),
    ],
)
def test_a_date_outside_1950_to_2100_is_a_lost_cell(tmp_path, day, kept):
    read = _read(tmp_path, f"B,chicken,{day},48,4,36\n")
    assert read["batches"]["batch"].tolist() == (["A", "B"] if kept else ["A"])
    assert _lost(read, "set_at") == ([] if kept else [[3, "cell_date_year"]])
