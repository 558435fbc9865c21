"""Folders in a bad state: each gives a sentence, and what can be read is read."""

import os
import resource
import struct
import time
import zipfile

import openpyxl
import pandas as pd
import pytest
from sheet_files import ROW, TIDY, far_cell, said, tidy_season, told, write_csv, write_ods, write_xlsx

from hatchkit.problems import HatchkitError
from hatchkit.records import workbook_guard
from hatchkit.records.folder import read_folder

LOG = ["time,temp_c,rh_pct", *[f"2026-03-{1 + hour // 24:02d} {hour % 24:02d}:00:00,37.5,55" for hour in range(96)]]


def refused(folder, *words):
    """The sentence with which a folder is refused holds all the words."""
    with pytest.raises(HatchkitError) as caught:
        read_folder(folder)
    for word in words:
        assert word in str(caught.value)


def test_a_folder_that_is_missing_a_file_or_empty_is_refused_in_a_sentence(tmp_path):
    refused(tmp_path / "no such season", "no folder", "no such season", "spelling")
    (tmp_path / "file.txt").write_text("x", encoding="utf-8")
    refused(tmp_path / "file.txt", "is a file")
    empty = tmp_path / "empty"
    empty.mkdir()
    refused(empty, "empty", "hatchkit start")


def test_a_folder_with_nothing_of_use_names_what_it_holds(tmp_path):
    (tmp_path / "holiday.jpg").write_bytes(b"\xff\xd8")
    refused(tmp_path, "no table of batches and no log", "holiday.jpg")


def test_a_folder_with_only_sensors_loads_with_no_batch_and_says_so(tmp_path):
    (tmp_path / "sensors").mkdir()
    write_csv(tmp_path / "sensors", LOG, name="A.csv")
    read = read_folder(tmp_path)
    assert read["batches"].empty and len(read["readings"]) == 96
    assert "eggs_set" in read["batches"] and read["looks"].empty
    assert told(read, "no_table", logs=True)["severity"].tolist() == ["lost"]


def test_an_xlsx_without_a_table_of_hatches_says_what_it_saw(tmp_path):
    write_xlsx(tmp_path, [["Feed", "Price"], ["wheat", 12]], title="shopping", name="shopping.xlsx")
    refused(tmp_path, "shopping.xlsx", "Feed")
    tidy_season(tmp_path)
    read = read_folder(tmp_path)
    assert len(read["batches"]) == 1
    found = told(read, "sheet_not_used", seen="Feed, Price")
    assert found[["severity", "file"]].values.tolist() == [["lost", "shopping.xlsx"]]


@pytest.mark.parametrize(
    "content", [b"", b"PK\x03\x04 broken", b"hello", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + b"\0" * 600]
)
def test_a_broken_workbook_is_named_and_the_rest_is_read(tmp_path, content):
    (tmp_path / "batches.xlsx").write_bytes(content)
    refused(tmp_path, "batches.xlsx")
    tidy_season(tmp_path)
    read = read_folder(tmp_path)
    assert len(read["batches"]) == 1
    row = said(read, "batches.xlsx")
    assert row["severity"].tolist() == ["lost"] and row["fix"].iloc[0]


def test_a_workbook_cut_short_is_named(tmp_path):
    write_xlsx(tmp_path, [TIDY, ROW])
    whole = (tmp_path / "batches.xlsx").read_bytes()
    (tmp_path / "batches.xlsx").write_bytes(whole[: len(whole) // 2])
    refused(tmp_path, "batches.xlsx", "damaged")


def test_a_workbook_with_a_flipped_byte_is_named_or_read(tmp_path):
    write_xlsx(tmp_path, [TIDY, ROW])
    whole = bytearray((tmp_path / "batches.xlsx").read_bytes())
    for place in range(60, len(whole), 331):
        broken = bytearray(whole)
        broken[place] ^= 0xFF
        (tmp_path / "batches.xlsx").write_bytes(bytes(broken))
        try:
            read_folder(tmp_path)
        except HatchkitError as error:
            assert "batches.xlsx" in str(error)


def test_a_locked_workbook_is_named(tmp_path, monkeypatch):
    write_xlsx(tmp_path, [TIDY, ROW], name="locked.xlsx")
    tidy_season(tmp_path)
    real = open

    def locked(path, *args, **kwargs):
        if str(path).endswith("locked.xlsx"):
            raise PermissionError(13, "Permission denied", str(path))
        return real(path, *args, **kwargs)

    monkeypatch.setattr("builtins.open", locked)
    read = read_folder(tmp_path)
    assert len(said(read, "locked.xlsx", "locked by another program")) == 1
    assert len(read["batches"]) == 1


def test_a_folder_without_read_permission_is_refused_in_a_sentence(tmp_path, monkeypatch):
    def forbidden(path):
        raise PermissionError(13, "Permission denied", str(path))

    monkeypatch.setattr(os, "scandir", forbidden)
    refused(tmp_path, "can't be read", "Permission denied")


def test_lock_files_and_hidden_files_of_spreadsheet_programs_are_passed_over(tmp_path):
    tidy_season(tmp_path)
    for name in ("~$batches.xlsx", ".~lock.batches.ods#", ".hidden.csv"):
        (tmp_path / name).write_bytes(b"locked")
    read = read_folder(tmp_path)
    assert set(read["problems"]["file"]) <= {"batches.csv", "season.toml", ""}


def test_a_folder_named_like_a_workbook_and_a_pipe_do_no_harm(tmp_path):
    tidy_season(tmp_path)
    (tmp_path / "old.xlsx").mkdir()
    os.mkfifo(tmp_path / "pipe.csv")
    read = read_folder(tmp_path)
    assert len(read["batches"]) == 1 and len(said(read, "pipe.csv", "not an ordinary file")) == 1


def test_a_broken_season_toml_names_the_line_and_the_season_is_still_read(tmp_path):
    (tmp_path / "season.toml").write_text('title = "x"\ntimezone = Europe/Rome\n', encoding="utf-8")
    read = read_folder(tidy_season(tmp_path))
    row = said(read, "season.toml", "can't be read")
    assert row["severity"].tolist() == ["lost"] and row["row"].tolist() == [2]
    assert len(read["batches"]) == 1 and read["timezone"] == "UTC"


def test_season_toml_saved_by_a_plain_editor_with_a_mark_in_front(tmp_path):
    (tmp_path / "season.toml").write_bytes(b'\xef\xbb\xbftitle = "Spring"\r\ntimezone = "Europe/Rome"\r\n')
    read = read_folder(tidy_season(tmp_path))
    assert (read["title"], read["timezone"]) == ("Spring", "Europe/Rome")


@pytest.mark.parametrize(
    "line, words",
    [
        ('timezone = "Europe/Rom"', ["not a known time zone", "Europe/Rome"]),
        ("timezone = 5", ["not a known time zone"]),
        ('tmezone = "Europe/Rome"', ["not a setting", "timezone"]),
        ("headers = 3", ["is no section", "[headers]"]),
        ('[species.mine]\nbased_on = "dodo"', ["dodo", "not known"]),
        ("[species.mine]\nincubation_days = 20", ["species.mine", "based_on"]),
        ('[species.mine]\nbased_on = "hen"\nincubation_day = 20', ["incubation_day", "incubation_days"]),
        ('[species.mine]\nbased_on = "hen"\nincubation_days = "long"', ["is no number"]),
    ],
)
def test_settings_that_cannot_be_used_are_named_with_the_nearest(tmp_path, line, words):
    (tmp_path / "season.toml").write_text(line + "\n", encoding="utf-8")
    assert len(said(read_folder(tidy_season(tmp_path)), "season.toml", *words)) == 1


def test_a_species_of_ones_own_is_based_on_a_known_one(tmp_path):
    (tmp_path / "season.toml").write_text(
        '[species.my_bantam]\nbased_on = "hen"\nincubation_days = 20\n', encoding="utf-8"
    )
    read = read_folder(tidy_season(tmp_path, species="My bantam"))
    assert read["batches"]["species"].tolist() == ["my_bantam"]
    own = read["species_table"].loc["my_bantam"]
    assert own["incubation_days"] == 20 and own["transfer_day"] == read["species_table"].loc["chicken", "transfer_day"]


def test_no_time_zone_is_a_note_and_the_wall_clock_stands(tmp_path):
    read = read_folder(tidy_season(tmp_path))
    assert said(read, "no time zone")["severity"].tolist() == ["note"]
    assert f"{read['batches']['set_at'].iloc[0]:%H:%M}" == "18:00"


# ---- dangerous files: refused or bounded, never a killed process -------------------------------------------


@pytest.mark.parametrize("address", ["XFD1048576", "A1048576", "XFD2", "ZZ99999"])
def test_a_lone_far_cell_costs_only_itself(tmp_path, address):
    far_cell(tmp_path / "batches.xlsx", address)
    start = time.process_time()
    read = read_folder(tmp_path)
    assert time.process_time() - start < 20
    assert read["batches"]["hatched"].tolist() == [22]
    assert len(said(read, "far from the table", address)) == 1


def test_a_bomb_of_zeros_is_refused_before_it_is_opened(tmp_path, monkeypatch):
    monkeypatch.setattr(workbook_guard, "MOST_BYTES", 1_000_000)
    with zipfile.ZipFile(tmp_path / "batches.xlsx", "w", zipfile.ZIP_DEFLATED) as parts:
        parts.writestr("xl/workbook.xml", b"<workbook/>")
        parts.writestr("xl/worksheets/sheet1.xml", b"0" * 2_000_000)
    refused(tmp_path, "unpacks to 2 MB")


def test_a_bomb_that_lies_about_its_size_is_refused(tmp_path):
    write_xlsx(tmp_path, [TIDY, ROW])
    path = tmp_path / "batches.xlsx"
    with zipfile.ZipFile(path) as parts:
        content = {name: parts.read(name) for name in parts.namelist()}
    content["xl/worksheets/sheet1.xml"] += b" " * 5_000_000
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as parts:
        for name, data in content.items():
            parts.writestr(name, data)
    raw = path.read_bytes()
    true, lie = struct.pack("<I", len(content["xl/worksheets/sheet1.xml"])), struct.pack("<I", 500)
    path.write_bytes(raw.replace(true, lie))
    refused(tmp_path, "batches.xlsx", "damaged")


def test_a_sheet_too_large_to_be_a_season_is_refused(tmp_path, monkeypatch):
    monkeypatch.setattr(workbook_guard, "MOST_CELLS", 500)
    write_xlsx(tmp_path, [[f"column {i}" for i in range(30)], *[list(range(30))] * 30])
    refused(tmp_path, "31 rows", "30 columns")


@pytest.mark.parametrize(
    "repeat", [' table:number-columns-repeated="100000"', ' table:number-columns-repeated="999999999"']
)
def test_an_evil_repeat_in_an_ods_file_is_refused(tmp_path, repeat):
    write_ods(tmp_path / "batches.ods", [TIDY, ROW] + [ROW] * 60, repeat=repeat)
    refused(tmp_path, "batches.ods", "repeated")


def test_an_ods_file_that_defines_its_own_text_is_refused(tmp_path):
    write_ods(tmp_path / "batches.ods", [TIDY, ROW])
    with zipfile.ZipFile(tmp_path / "batches.ods") as parts:
        content = parts.read("content.xml").decode()
    bomb = '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>'
    content = content.replace("?>", "?>" + bomb, 1).replace(">hen<", ">&b;<")
    with zipfile.ZipFile(tmp_path / "batches.ods", "w") as parts:
        parts.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        parts.writestr("content.xml", content)
    refused(tmp_path, "batches.ods", "unfold")


def test_a_huge_text_file_is_refused_by_its_size(tmp_path):
    with open(tmp_path / "batches.csv", "wb") as handle:
        handle.truncate(300_000_000)  # a hole on the disk: 300 MB that take no room
    start, before = time.process_time(), resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    with pytest.raises(HatchkitError):
        read_folder(tmp_path)
    assert time.process_time() - start < 10
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before < 200_000


@pytest.mark.parametrize(
    "content", [b"\x00\x01\x02" * 400, bytes(range(256)) * 40, b"a,b\n" * 3, b"\n\n\n", b"\xff" * 50]
)
def test_a_text_file_of_something_else_is_said_and_does_no_harm(tmp_path, content):
    (tmp_path / "junk.csv").write_bytes(content)
    read = read_folder(tidy_season(tmp_path))
    assert len(read["batches"]) == 1
    assert said(read, "junk.csv")["severity"].tolist() == ["lost"]


def test_error_cells_and_formulas_that_were_never_worked_out_are_named(tmp_path):
    book = openpyxl.Workbook()
    page = book.active
    page.title = "batches"
    page.append(["batch", "species", "set_at", "eggs_set", "hatched", "culled"])
    page.append(["B1", "hen", "2026-03-01 18:00", 30, "=20+2", "#DIV/0!"])
    page["F2"].data_type = "e"
    book.save(tmp_path / "batches.xlsx")
    read = read_folder(tmp_path)
    assert read["batches"]["hatched"].isna().all() and read["batches"]["culled"].isna().all()
    assert said(read, "1 formula without a saved result", "E2")["row"].tolist() == [2]
    assert said(read, "#DIV/0!")["column"].tolist() == ["F"]


def test_hidden_sheets_are_read_and_said_and_help_sheets_are_not(tmp_path):
    book = openpyxl.Workbook()
    book.active.title = "batches"
    for row in (TIDY, ROW):
        book.active.append(row)
    old = book.create_sheet("old")
    for row in (TIDY, ["B0", *ROW[1:]]):
        old.append(row)
    old.sheet_state = "hidden"
    book.save(tmp_path / "batches.xlsx")
    read = read_folder(tmp_path)
    assert read["batches"]["batch"].tolist() == ["B1", "B0"]
    assert said(read, "hidden")["sheet"].tolist() == ["old"]


def test_the_same_table_in_two_files_counts_once(tmp_path):
    tidy_season(tmp_path)
    write_csv(tmp_path, (tmp_path / "batches.csv").read_text(encoding="utf-8").splitlines(), name="copy.csv")
    read = read_folder(tmp_path)
    assert len(read["batches"]) == 1 and len(read["looks"]) == 3 and read["batches"]["clear1"].tolist() == [3]


def test_every_row_of_a_sheet_is_a_batch_or_a_problem(tmp_path):
    lines = [
        "batch,species,set_at,eggs_set",
        "B1,hen,2026-03-01,30",
        "B2,hen,,30",
        "B3,,2026-03-01,30",
        "B4,hen,2026-03-01,",
        "B5,hen,2026-03-01,0",
        ",hen,2026-03-02,12",
        "B1,hen,2026-04-01,20",
    ]
    read = read_folder(write_csv(tmp_path, lines))
    assert read["batches"]["row"].tolist() == [2, 4, 7, 8]
    names = read["batches"]["batch"].tolist()
    assert names[1] == "B3" and len(set(names)) == 4 and not names[2].startswith("B5")
    lost = read["problems"][read["problems"]["severity"] == "lost"]
    assert sorted(lost["row"]) == [3, 5, 6]
    # The species of B3 is not written: it is asked, and no row is lost for it.
    species = read["questions"][read["questions"]["code"] == "species"]
    assert len(species) == 1 and species["rows_changed"].tolist() == [1]


def test_a_batch_without_an_incubator_stays_and_is_said(tmp_path):
    lines = [
        "batch,species,incubator,set_at,eggs_set",
        "B1,hen,A,2026-03-01,30",
        "B2,hen,B,2026-03-01,30",
        "B3,hen,,2026-03-01,30",
    ]
    read = read_folder(write_csv(tmp_path, lines))
    assert read["batches"]["incubator"].isna().tolist() == [False, False, True]
    assert told(read, "machine_missing", batches=["B3"])[["severity", "row"]].values.tolist() == [["doubtful", 4]]


def test_problems_is_the_documented_table(tmp_path):
    from hatchkit.problems import COLUMNS

    read = read_folder(tidy_season(tmp_path))
    assert list(read["problems"].columns) == COLUMNS and str(read["problems"]["row"].dtype) == "Int64"
    assert isinstance(read["species_table"], pd.DataFrame) and read["settings"] == {}
