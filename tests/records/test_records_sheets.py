"""Sheets as people keep them: their own headings, their own way of writing numbers and dates."""

import datetime as dt

import openpyxl
import pandas as pd
import pytest
from sheet_files import ROW, TIDY, asked, said, taken, tidy_season, told, write_csv, write_ods, write_xlsx

from hatchkit.records.folder import read_folder


def one_cell(folder, column, value):
    """A tidy season in which one cell of its batch is written as `value`, read."""
    return read_folder(tidy_season(folder, **{column: value}))


def test_a_tidy_sheet_gives_every_documented_column_and_utc_times(tmp_path):
    from hatchkit import reference

    read = read_folder(write_xlsx(tmp_path, [TIDY, ROW]))
    facts = reference.load("columns_records")
    for table in ("batches", "eggs", "weights", "looks"):
        columns = facts.loc[facts["table"] == table, "column"]
        assert list(read[table].columns) == columns.tolist()
    batch = read["batches"].iloc[0]
    assert batch["species"] == "chicken" and batch["eggs_set"] == 30 and batch["culled"] == 1
    assert batch["set_at"] == pd.Timestamp("2026-03-01 18:00", tz="UTC")
    assert read["batches"]["clear1"].dtype == "Int64"
    assert read["batches"]["candle2_at"].isna().all() and str(read["batches"]["candle2_at"].dtype).endswith("UTC]")


def test_a_misspelt_heading_is_used_and_shown(tmp_path):
    read = read_folder(write_csv(tmp_path, ["batch,species,incubater,set_at,eggs_set", "B1,hen,A,2026-03-01 18:00,30"]))
    assert read["batches"]["incubator"].tolist() == ["A"] and taken(read, "incubater") == "incubator"


def test_an_unknown_column_is_carried_under_its_own_name_and_shown(tmp_path):
    read = read_folder(write_csv(tmp_path, ["batch,species,set_at,eggs_set,Moon phase", "B1,hen,2026-03-01,30,waning"]))
    assert read["batches"]["Moon phase"].tolist() == ["waning"] and taken(read, "Moon phase") == "ignore"
    assert read["questions"].empty


def test_headers_of_season_toml_win(tmp_path):
    (tmp_path / "season.toml").write_text('[headers]\n"Moon" = "eggs_set"\n"eggs" = "notes"\n', encoding="utf-8")
    read = read_folder(write_csv(tmp_path, ["batch,species,set_at,eggs,moon", "B1,hen,2026-03-01,first lay,30"]))
    assert read["batches"]["eggs_set"].tolist() == [30] and read["batches"]["notes"].tolist() == ["first lay"]


def test_titles_above_a_total_row_blank_rows_and_notes_below(tmp_path):
    rows = [
        ["Our hatches 2026 (invented)"],
        [],
        ["", "", "kept by hand"],
        TIDY,
        ROW,
        [],
        ["B2", *ROW[1:]],
        ["Total", "", "", "", 60],
        [],
        ["Remember: new bulb in spring"],
    ]
    read = read_folder(write_xlsx(tmp_path, rows))
    assert read["batches"]["batch"].tolist() == ["B1", "B2"]
    assert read["batches"]["row"].tolist() == [5, 7]
    assert told(read, "row_total")["row"].tolist() == [8]
    assert said(read, "new bulb")["row"].tolist() == [10]


def test_headings_in_two_rows_with_merged_groups(tmp_path):
    book = openpyxl.Workbook()
    page = book.active
    page.append(["", "", "", "", "First candling", "", "", "Transfer", "", "", "Hatch", ""])
    page.append(
        ["Batch", "Bird", "Set on", "Eggs", "Date", "Clear", "Dead", "Date", "Clear", "Dead", "Hatched", "Culls"]
    )
    page.append(
        [
            "B1",
            "duck",
            dt.datetime(2026, 3, 1, 18),
            30,
            dt.datetime(2026, 3, 10, 9),
            3,
            1,
            dt.datetime(2026, 3, 26, 9),
            1,
            2,
            20,
            1,
        ]
    )
    page.merge_cells("E1:G1")
    page.merge_cells("H1:J1")
    book.save(tmp_path / "batches.xlsx")
    batch = read_folder(tmp_path)["batches"].iloc[0]
    assert (batch["clear1"], batch["dead1"], batch["clear3"], batch["dead3"], batch["hatched"]) == (3, 1, 1, 2, 20)
    assert batch["candle1_at"] == pd.Timestamp("2026-03-10 09:00", tz="UTC")


def test_blank_columns_and_a_row_of_units(tmp_path):
    read = read_folder(
        write_csv(tmp_path, [",batch,,species,set_at,eggs_set", ",no.,,,date,pcs", ",B1,,hen,2026-03-01,30"])
    )
    assert read["batches"][["batch", "eggs_set"]].values.tolist() == [["B1", 30]]
    assert (read["problems"]["severity"] != "lost").all()


@pytest.mark.parametrize(
    "text, count",
    [
        ("22", 22),
        ("022", 22),
        ("22 eggs", 22),
        ("20+2", 22),
        ("~22", 22),
        ("22.0", 22),
        ("22,0", 22),
        ("1,022", 1022),
        ("22 (2 weak)", 22),
        ("22?", 22),
    ],
)
def test_counts_as_people_write_them(tmp_path, text, count):
    read = one_cell(tmp_path, "eggs_set", text)
    assert read["batches"]["eggs_set"].tolist() == [count]


@pytest.mark.parametrize("text", ["none", "0", "nil", "keine"])
def test_none_written_in_words_is_zero(tmp_path, text):
    assert one_cell(tmp_path, "hatched", text)["batches"]["hatched"].tolist() == [0]


@pytest.mark.parametrize(
    "text, code",
    [
        ("?", "cell_unknown"),
        ("-", "cell_unknown"),
        ("n/a", "cell_unknown"),
        ("85 %", "cell_percent"),
        ("0.85", "cell_share"),
        ("12.5", "cell_fraction"),
        ("-3", "cell_negative"),
        ("many", "cell_bad"),
        ("9" * 400, "cell_huge"),
    ],
)
def test_counts_that_cannot_be_taken_are_missing_and_named(tmp_path, text, code):
    read = one_cell(tmp_path, "hatched", text)
    assert read["batches"]["hatched"].isna().all()
    found = told(read, code)
    assert found["row"].tolist() == [2] and found["column"].tolist() == ["hatched"]


def test_a_formatted_percentage_in_a_workbook_is_not_taken_for_a_count(tmp_path):
    row = list(ROW)
    row[TIDY.index("hatched")] = 0.85
    read = read_folder(write_xlsx(tmp_path, [TIDY, row]))
    assert read["batches"]["hatched"].isna().all() and told(read, "cell_share")["row"].tolist() == [2]


@pytest.mark.parametrize(
    "text",
    [
        "2026-03-01 18:00",
        "2026/03/01 18:00",
        "1.3.2026 18:00",
        "01/03/26 6 pm",
        "1 March 2026, 18:00",
        "Mar 1, 2026 6:00 PM",
        "1. März 2026 18:00",
        "Sun 1 Mar 2026 18h00",
        "20260301 18:00",
        "1 mars 2026 18:00",
        "46082.75",
        "2026-03-01T18:00:00",
    ],
)
def test_dates_as_people_write_them(tmp_path, text):
    (tmp_path / "season.toml").write_text("[sheets]\nday_first = true\n", encoding="utf-8")
    read = one_cell(tmp_path, "set_at", text)
    assert read["batches"]["set_at"].tolist() == [pd.Timestamp("2026-03-01 18:00", tz="UTC")]


@pytest.mark.parametrize("text", ["yesterday", "31.02.2026", "12:30", "2026-13-01", "01.03.0026"])
def test_dates_that_are_none_are_named_and_the_batch_is_lost(tmp_path, text):
    read = one_cell(tmp_path, "set_at", text)
    assert read["batches"].empty
    assert told(read, "sheet_broken").empty and set(said(read, text)["row"]) == {2}
    assert told(read, "batch_lacks", name="B1", lacks=["set_at"])["row"].tolist() == [2]


def test_a_time_in_its_own_column_and_a_date_without_hour_at_noon(tmp_path):
    lines = [
        "batch,species,set date,set time,eggs",
        "B1,hen,2026-03-01,18:30,30",
        "B2,hen,2026-03-02,7 pm,30",
        "B3,hen,2026-03-03,,30",
    ]
    read = read_folder(write_csv(tmp_path, lines))
    assert [f"{when:%H:%M}" for when in read["batches"]["set_at"]] == ["18:30", "19:00", "12:00"]


def test_day_first_is_proved_by_one_date_and_holds_for_all(tmp_path):
    lines = [
        "batch;species;set_at;eggs_set;candle1_at",
        "B1;hen;04.05.2026;30;11.05.2026",
        "B2;hen;20.05.2026;30;27.05.2026",
    ]
    read = read_folder(write_csv(tmp_path, lines))
    assert [f"{when:%d %b}" for when in read["batches"]["set_at"]] == ["04 May", "20 May"]


def test_month_first_is_proved_by_the_ages_it_gives(tmp_path):
    lines = ["batch,species,set_at,eggs_set,candle1_at,taken_off_at", "B1,hen,03/02/2026,30,03/09/2026,"]
    read = read_folder(write_csv(tmp_path, lines))
    assert read["batches"]["set_at"].iloc[0].month == 3
    assert read["questions"].empty and read["looks"]["day"].iloc[0] == 7


@pytest.mark.parametrize("word, month", [("false", 3), ("true", 2)])
def test_an_open_order_is_asked_and_settled_by_one_line(tmp_path, word, month):
    read = read_folder(write_csv(tmp_path, ["batch,species,set_at,eggs_set", "B1,hen,03/02/2026,30"]))
    assert [sorted(choices) for choices in asked(read, "?day_first")] == [["False", "True"]]
    (tmp_path / "season.toml").write_text(f"[sheets]\nday_first = {word}\n", encoding="utf-8")
    read = read_folder(tmp_path)
    assert read["batches"]["set_at"].iloc[0].month == month and read["questions"].empty


def test_wall_clock_of_the_zone_becomes_utc_and_the_double_hour_is_said(tmp_path):
    (tmp_path / "season.toml").write_text('timezone = "Europe/Rome"\n', encoding="utf-8")
    lines = [
        "batch,species,set_at,eggs_set",
        "B1,hen,2026-03-01 18:00,30",
        "B2,hen,2026-07-01 18:00,30",
        "B3,hen,2026-10-25 02:30,30",
        "B4,hen,2026-03-29 02:30,30",
    ]
    read = read_folder(write_csv(tmp_path, lines))
    assert [f"{when:%H:%M}" for when in read["batches"]["set_at"]] == ["17:00", "16:00", "00:30", "01:00"]
    assert told(read, "clock_twice")["row"].tolist() == [4]
    assert told(read, "clock_never")["row"].tolist() == [5]


@pytest.mark.parametrize("separator", [",", ";", "\t", "|"])
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
def test_text_tables_of_any_separator_and_encoding(tmp_path, separator, encoding):
    lines = [
        separator.join(line)
        for line in (
            ["Brut", "Art", "eingelegt am", "Eier", "Geschlüpft", "Bemerkung"],
            ["B1", "Wachtel", "1.3.2026", "30", "21", "früh, gut"]
            if separator != ","
            else ["B1", "Wachtel", "1.3.2026", "30", "21", '"früh, gut"'],
        )
    ]
    read = read_folder(write_csv(tmp_path, lines, encoding=encoding))
    batch = read["batches"].iloc[0]
    assert (batch["species"], batch["hatched"], batch["notes"]) == ("quail", 21, "früh, gut")


def test_an_ods_workbook_reads_like_the_same_csv(tmp_path):
    first, second = tmp_path / "ods", tmp_path / "csv"
    first.mkdir()
    second.mkdir()
    write_ods(first / "batches.ods", [TIDY, ROW])
    write_csv(second, [",".join(TIDY), ",".join(map(str, ROW))])
    here, there = read_folder(first)["batches"], read_folder(second)["batches"]
    drop = ["file", "sheet"]
    pd.testing.assert_frame_equal(here.drop(columns=drop), there.drop(columns=drop))


def test_egg_rows_with_their_own_words_and_the_batch_written_once(tmp_path):
    write_csv(tmp_path, ["batch,species,set_at,eggs_set", "7,duck,2026-03-01 18:00,4"])
    write_csv(
        tmp_path,
        [
            "Batch;Egg no.;Weight (g);Candling 1;Result;Row;Col",
            "7;1;71,5;ok;hatched;A;1",
            ";2;70;clear;;A;2",
            ";3;69,8;BR;;B;1",
            ";4;72;fertile;DIS;B;2",
        ],
        name="eggs.csv",
    )
    read = read_folder(tmp_path)
    eggs = read["eggs"]
    assert eggs["batch"].tolist() == ["7"] * 4 and eggs["weight_g"].tolist() == [71.5, 70.0, 69.8, 72.0]
    assert eggs["candle1"].tolist() == ["alive", "clear", "dead", "alive"]
    assert eggs["outcome"].isna().tolist() == [False, True, True, False] and eggs["outcome"].iloc[3] == "dead"
    assert eggs["row"].tolist() == [1, 1, 2, 2]


def test_weights_of_single_eggs_and_of_whole_trays(tmp_path):
    write_csv(tmp_path, ["batch,species,set_at,eggs_set", "B1,duck,2026-03-01 18:00,40"])
    write_csv(
        tmp_path,
        ["Batch,Egg,Date,Weight (kg),Eggs", "b-1,,2026-03-01,2.84,40", "B1,7,2026-03-10,0.0692,1"],
        name="weights.csv",
    )
    weights = read_folder(tmp_path)["weights"]
    assert weights["grams"].round(1).tolist() == [2840.0, 69.2] and weights["batch"].tolist() == ["B1", "B1"]
    assert weights["eggs_weighed"].tolist() == [40, 1] and weights["egg"].isna().tolist() == [True, False]


def test_rows_of_a_batch_that_does_not_exist_are_lost_and_named(tmp_path):
    write_csv(tmp_path, ["batch,species,set_at,eggs_set", "B1,duck,2026-03-01 18:00,40"])
    write_csv(tmp_path, ["batch,egg,outcome", "B1,1,hatched", "C9,1,hatched"], name="eggs.csv")
    read = read_folder(tmp_path)
    assert len(read["eggs"]) == 1
    assert said(read, "C9")[["severity", "row"]].values.tolist() == [["lost", 3]]
    assert read["questions"].empty


@pytest.mark.parametrize(
    "word, species",
    [
        ("Hens", "chicken"),
        ("HEN EGGS", "chicken"),
        ("Enten", "duck"),
        ("quial", "quail"),
        ("Hen (old breed)", "chicken"),
        ("goose", "goose"),
        ("perlhuhn", "guinea"),
    ],
)
def test_species_words(tmp_path, word, species):
    assert one_cell(tmp_path, "species", word)["batches"]["species"].tolist() == [species]


def test_an_unknown_word_for_a_bird_is_asked_and_no_row_is_lost(tmp_path):
    read = one_cell(tmp_path, "species", "Goozle")
    assert "chicken" in asked(read, "?species")[0] and "goose" in asked(read, "?species")[0]


def test_a_season_without_a_species_column_is_mended_by_one_line(tmp_path):
    write_csv(tmp_path, ["batch,set_at,eggs_set", "B1,2026-03-01 18:00,40"])
    read = read_folder(tmp_path)
    assert asked(read, "?species")[0][0] == "chicken" and read["batches"]["species"].tolist() == ["chicken"]
    (tmp_path / "season.toml").write_text('default_species = "duck"\n', encoding="utf-8")
    read = read_folder(tmp_path)
    assert read["batches"]["species"].tolist() == ["duck"] and read["questions"].empty


def test_infertile_beside_a_candling_is_clear(tmp_path):
    head, row = "batch,species,set_at,eggs_set,candled,infertile", "B1,hen,2026-03-01 18:00,30,2026-03-08 18:00,4"
    read = read_folder(write_csv(tmp_path, [head, row]))
    assert read["batches"]["clear1"].tolist() == [4] and read["batches"]["broken_infertile"].isna().all()


def test_a_candling_kept_as_a_day_of_incubation(tmp_path):
    lines = ["batch,species,set_at,eggs_set,day of candling 1,clears 1", "B1,hen,2026-03-01 18:00,30,7,4"]
    read = read_folder(write_csv(tmp_path, lines))
    assert read["batches"]["candle1_at"].tolist() == [pd.Timestamp("2026-03-08 18:00", tz="UTC")]
    assert read["looks"]["day"].tolist()[0] == 7 and read["batches"]["clear1"].tolist() == [4]


def test_cells_merged_downwards_hold_for_every_row(tmp_path):
    book = openpyxl.Workbook()
    for row in (
        ["batch", "species", "set_at", "eggs_set"],
        ["B1", "duck", "2026-03-01 18:00", 10],
        ["B2", None, "2026-03-02 18:00", 12],
    ):
        book.active.append(row)
    book.active.merge_cells("B2:B3")
    book.save(tmp_path / "batches.xlsx")
    assert read_folder(tmp_path)["batches"]["species"].tolist() == ["duck", "duck"]


def test_one_sheet_per_species_takes_the_species_from_its_name(tmp_path):
    book = openpyxl.Workbook()
    book.active.title = "Quails"
    geese = book.create_sheet("Geese")
    for page, eggs in ((book.active, 40), (geese, 12)):
        page.append(["Batch", "Date set", "Eggs in", "Hatched"])
        page.append([f"{page.title} 1", "2026-03-01 18:00", eggs, 8])
    book.save(tmp_path / "season.xlsx")
    assert read_folder(tmp_path)["batches"]["species"].tolist() == ["quail", "goose"]


def test_set_over_dates_leaves_the_count_to_eggs(tmp_path):
    (tmp_path / "batches.csv").write_text("Batch;Species;Set;Eggs;Hatched\n1;hen;23.04.2026;12;10\n")
    read = read_folder(tmp_path)
    assert read["batches"][["eggs_set", "hatched"]].values.tolist() == [[12, 10]]
    assert read["batches"]["set_at"].dt.day.tolist() == [23]
    assert read["questions"].empty
