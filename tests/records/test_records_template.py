"""The blank season: it explains itself, reads back as it is, and never writes over anything."""

import tomllib

import openpyxl
import pytest

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.records.folder import read_folder
from hatchkit.records.template import choices_of, columns_of, start_folder


def filled(folder):
    """A blank season with one batch, two eggs, a weighing and a candling written in by hand."""
    start_folder(folder)
    book = openpyxl.load_workbook(folder / "batches.xlsx")
    rows = {
        "batches": dict(
            batch="B1", species="quail", incubator="A", set_at="2026-03-01 18:00", eggs_set=20, hatched=15
        ),
        "eggs": dict(batch="B1", egg=1, weight_g=11.8, candle1="alive", outcome="hatched"),
        "weights": dict(batch="B1", weighed_at="2026-03-01 18:00", grams=236, eggs_weighed=20),
        "candlings": dict(batch="B1", looked_at="2026-03-08 18:00", clear=2, dead=1, removed=0, left=17),
    }
    for sheet, cells in rows.items():
        heads = [cell.value for cell in book[sheet][1]]
        for name, value in cells.items():
            book[sheet].cell(2, heads.index(name) + 1, value)
    book.save(folder / "batches.xlsx")
    return folder


def test_start_writes_everything_once_and_never_overwrites(tmp_path):
    written = start_folder(tmp_path / "new")
    assert sorted(path.name for path in written) == ["batches.xlsx", "candling-sheet.html", "season.toml"]
    assert (tmp_path / "new" / "sensors").is_dir()
    (tmp_path / "new" / "season.toml").write_text("title = 'mine'", encoding="utf-8")
    (tmp_path / "new" / "batches.xlsx").write_bytes(b"mine")
    (tmp_path / "new" / "candling-sheet.html").unlink()
    assert [path.name for path in start_folder(tmp_path / "new")] == ["candling-sheet.html"]
    assert (tmp_path / "new" / "batches.xlsx").read_bytes() == b"mine"
    assert (tmp_path / "new" / "season.toml").read_text(encoding="utf-8") == "title = 'mine'"


def test_start_in_the_way_of_a_file_is_one_sentence(tmp_path):
    (tmp_path / "season").write_text("x", encoding="utf-8")
    with pytest.raises(HatchkitError, match="season"):
        start_folder(tmp_path / "season")


def test_every_documented_column_has_its_heading_and_its_sentence(tmp_path):
    start_folder(tmp_path)
    book = openpyxl.load_workbook(tmp_path / "batches.xlsx")
    facts = reference.load("columns_records")
    explained = {
        (row[0], row[1]): row[2] for row in book["how to fill in"].iter_rows(min_row=5, values_only=True) if row[1]
    }
    for sheet in ("batches", "eggs", "weights", "candlings"):
        heads = [cell.value for cell in book[sheet][1]]
        assert heads == [column for column, *_ in columns_of(sheet)]
        for column, _, _, meaning in columns_of(sheet):
            assert explained[sheet, column] == meaning + "."
    documented = set(facts.loc[facts["table"] == "batches", "column"]) - {"file", "sheet", "row", "season"}
    assert {cell.value for cell in book["batches"][1]} == documented


def test_columns_of_a_few_values_have_a_drop_down_that_the_reader_knows(tmp_path):
    from hatchkit.records.sheets.fatewords import fate_of

    start_folder(tmp_path)
    book = openpyxl.load_workbook(tmp_path / "batches.xlsx")
    lists = {
        rule.formula1 for sheet in book for rule in sheet.data_validations.dataValidation if rule.type == "list"
    }
    assert '"' + ",".join(reference.species_table().index) + '"' in lists
    assert len(lists) == 5 and all(len(text) < 256 for text in lists)
    for column in ("candle1", "candle2", "transfer"):
        assert [fate_of(word, "en").fate for word in choices_of("eggs", column)] == list(choices_of("eggs", column))
    outcomes = choices_of("eggs", "outcome")
    assert [fate_of(word, "en").fate for word in outcomes] == list(outcomes)


def test_the_blank_workbook_loads_with_no_batch_and_no_loss(tmp_path):
    start_folder(tmp_path)
    read = read_folder(tmp_path)
    assert read["batches"].empty and (read["problems"]["severity"] != "lost").all()


def test_a_workbook_filled_in_reads_back_without_a_doubt(tmp_path):
    read = read_folder(filled(tmp_path))
    assert read["batches"]["species"].tolist() == ["quail"] and read["batches"]["clear1"].tolist() == [2]
    assert read["eggs"]["outcome"].tolist() == ["hatched"]
    weights = read["weights"].sort_values("grams")
    assert weights[["grams", "eggs_weighed"]].fillna(0).values.tolist() == [[236, 20]]
    assert read["eggs"]["weight_g"].tolist() == [11.8]
    assert read["looks"]["name"].tolist() == ["candle1", "hatch"]
    assert (read["problems"]["severity"] == "note").all()


def test_season_toml_is_valid_as_written_and_with_every_line_taken_in(tmp_path):
    start_folder(tmp_path)
    text = (tmp_path / "season.toml").read_text(encoding="utf-8")
    assert set(tomllib.loads(text)) == {"title"}
    lines = [
        line[2:] if line.startswith(("# [", '# "')) or " = " in line[:30] and line.startswith("# ") else line
        for line in text.splitlines()
    ]
    settings = tomllib.loads("\n".join(lines))
    assert settings["incubators"]["A"]["air"] == "fan" and settings["headers"] == {"Eggs in": "eggs_set"}
    (tmp_path / "season.toml").write_text("\n".join(lines), encoding="utf-8")
    assert set(read_folder(tmp_path)["problems"]["file"]) <= {"batches.xlsx"}


def test_the_candling_sheet_is_one_plain_page_with_a_caution(tmp_path):
    start_folder(tmp_path)
    page = (tmp_path / "candling-sheet.html").read_text(encoding="utf-8")
    assert page.count("<tr>") == 23 and "://" not in page
    assert "Rotten eggs burst" in page and "Wash hands" in page
