"""What was read, written as tables that are safe to open, and never among the season's own files."""

import pandas as pd
import pytest
from sheet_files import tidy_season

import hatchkit as hk
from hatchkit.cli import main
from hatchkit.problems import HatchkitError
from hatchkit.records.safe_csv import TABLES, tables_folder, write_tables

NAMES = {f"{name}.csv" for name in TABLES}


@pytest.fixture
def season(tmp_path):
    (tmp_path / "season").mkdir()
    return tidy_season(tmp_path / "season", notes="=HYPERLINK(1)")


def test_every_table_is_written_and_can_be_read_again(season, tmp_path, capsys):
    before = {path.name: path.read_bytes() for path in season.iterdir()}
    for _ in range(2):  # the second time over what the first has written
        assert main(["check", str(season), "--tables", str(tmp_path / "out")]) == 0
    assert "The tables are in" in capsys.readouterr().out
    assert {path.name for path in (tmp_path / "out").iterdir()} == NAMES
    fates = pd.read_csv(tmp_path / "out" / "fates.csv")
    assert fates["eggs"].sum() == 30 and set(fates["batch"].astype(str)) == {"B1"}
    batches = pd.read_csv(tmp_path / "out" / "batches.csv")
    assert batches["set_at"].tolist() == ["2026-03-01T18:00:00Z"]
    assert {path.name: path.read_bytes() for path in season.iterdir()} == before


def test_no_cell_and_no_heading_is_a_formula(season, tmp_path):
    read = hk.load_season(season)
    object.__setattr__(read, "batches", read.batches.assign(notes="=1+1", **{"@SUM(A1)": "-2+3"}))
    write_tables(read, tables_folder(tmp_path / "out", season=season))
    table = pd.read_csv(tmp_path / "out" / "batches.csv", dtype=str)
    assert table["notes"].tolist() == ["'=1+1"] and table["'@SUM(A1)"].tolist() == ["'-2+3"]


def test_tables_go_neither_into_the_season_nor_among_other_files(season, tmp_path):
    for place in (season, season / "tables"):
        with pytest.raises(HatchkitError, match="the season's own folder"):
            tables_folder(place, season=season)
    (tmp_path / "other").mkdir()
    (tmp_path / "other" / "batches.csv").write_text("mine")
    with pytest.raises(HatchkitError, match="holds other things"):
        tables_folder(tmp_path / "other", season=season)
    with pytest.raises(HatchkitError, match="cannot be written to"):
        tables_folder(tmp_path / "other" / "batches.csv" / "x", season=season)
    assert not (season / "tables").exists()
