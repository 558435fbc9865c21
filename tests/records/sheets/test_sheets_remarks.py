"""Remarks in a column of counts, below a table and in a column for the weather; copies of a workbook that differ."""

import openpyxl
import pytest
from sheet_files import write_csv, write_xlsx

import hatchkit as hk
from hatchkit.advice import signs
from hatchkit.records.sheets.cells import count_of

HEAD = "Breed,Set on,Eggs,Clear,Dead,Dead in shell,Hatched,Remarks"
ROWS = ["Maran,2025-03-08,18,3,0,2,13,", "Brahma,2025-03-29,12,1,1,0,10,pipped late"]


@pytest.mark.parametrize(
    "cell",
    ["none - power cut day 9", "ingen - str\u00f8msvigt", "none (power cut)", "none, all died at night", "nil; so"],
)
def test_none_with_a_remark_is_no_egg(cell):
    assert count_of(cell).value == 0


@pytest.mark.parametrize("cell", ["none - 3 hatched and died", "power cut", "noon - power cut"])
def test_what_is_not_plainly_none_is_no_count_of_0(cell):
    assert count_of(cell).value != 0


def test_the_words_beside_a_count_are_remarks_of_the_batch(tmp_path):
    lines = ["Cochin,2025-04-26,20,6,14 (power cut),0,none - power cut day 9,windy"]
    lines += ["Maran,2025-05-10,24 eggs,4,1,2,17,"]
    season = hk.load_season(write_csv(tmp_path, [HEAD, *ROWS, *lines]))
    batches = season.batches.set_index("eggs_set")
    assert batches.at[20, "notes"] == "windy; power cut; power cut day 9"
    assert batches.at[12, "notes"] == "pipped late" and not isinstance(batches.at[24, "notes"], str)
    assert "power_cut" in set(signs.found(batches.loc[20])["sign"])
    hatched = season.fates[season.fates["fate"] == "hatched"].groupby("batch")["eggs"].sum()
    assert batches.at[20, "batch"] not in hatched[hatched > 0]
    assert not (season.problems["severity"] == "doubtful").any()


def _codes(season):
    return season.problems.set_index("code")["found"]


def _changed(path, cells):
    book = openpyxl.load_workbook(path)
    for place, value in cells.items():
        book.active[place] = value
    book.save(path)


def test_two_copies_that_differ_are_told_with_how_many_cells(tmp_path):
    rows = [line.split(",") for line in (HEAD, *ROWS)]
    for name in ("batches.xlsx", "batches (1).xlsx"):
        write_xlsx(tmp_path, rows, name=name)
    assert "copy_of" in _codes(hk.load_season(tmp_path)) and "copy_differs" not in _codes(hk.load_season(tmp_path))
    _changed(tmp_path / "batches (1).xlsx", {"G2": 12, "D3": 2, "H9": "bought in"})
    told = _codes(hk.load_season(tmp_path))
    assert "differ in 3 cells" in told["copy_differs"] and "copy_of" not in told


DANISH = "Race,Sat i,\u00c6g,Ubefrugtede,D\u00f8de 7. dag,D\u00f8de i skallen,Kyllinger,Bem"
DUTCH = "Ras,Inleg,Eieren,Onbevrucht,Afgestorven dag 7,Dood in ei,Uitgekomen,Opm"
WEATHER = {"Weather": HEAD, "Wetter": HEAD, "M\u00e9t\u00e9o": HEAD, "Tiempo": HEAD, "Clima": HEAD, "Pogoda": HEAD}
WEATHER |= {"Meteo": HEAD, "Po\u010das\u00ed": HEAD}
WEATHER |= {"V\u00e4der": HEAD, "Id\u0151j\u00e1r\u00e1s": HEAD, "Vejr": DANISH, "Weer": DUTCH}


@pytest.mark.parametrize("heading", WEATHER)
def test_a_column_for_the_weather_is_notes_where_it_holds_words(heading, tmp_path):
    read = {}
    for kind, cells in (("words", ("frost", "mild")), ("numbers", ("21.5", "19.0"))):
        (tmp_path / kind).mkdir()
        lines = [f"{WEATHER[heading].rpartition(',')[0]},{heading}"]
        lines += [f"{row.rpartition(',')[0]},{cell}" for row, cell in zip(ROWS, cells, strict=True)]
        reading = hk.load_season(write_csv(tmp_path / kind, lines)).reading.set_index("heading")
        read[kind] = reading.at[heading, "taken"]
    assert read["words"] == "notes" and read["numbers"] != "notes"


def test_a_line_below_the_last_row_is_a_remark_and_one_between_rows_a_heading(tmp_path):
    lines = [HEAD, "March,,,,,,,", *ROWS, "Bator no. 2 reads low,,,,,,,"]
    told = _codes(hk.load_season(write_csv(tmp_path, lines)))
    assert told["row_remark"] == "a remark below the table: Bator no. 2 reads low"
    assert "March" in told["row_section"]


def test_a_cell_of_a_blank_sign_is_no_number():
    assert count_of("\x1c").value is None
