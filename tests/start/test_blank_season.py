"""The blank season explains itself, a person's entries are read again exactly, and nothing is written over."""

import datetime as dt
import tomllib

import openpyxl
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice.signs import read as signs_in
from hatchkit.problems import HatchkitError
from hatchkit.records.folder import read_folder
from hatchkit.records.own_sheet import COLUMNS, headings
from hatchkit.records.sheets.fields import own_key
from hatchkit.records.template import AT_FIRST_SIGHT, choices_of, columns_of
from hatchkit.say import LANGUAGES, text
from hatchkit.start.blank_season import settings_text, start_folder

LOOKS = ("alive", "clear", "dead", "removed")
ENDS = ("hatched", "culled", "pipped_dead", "dead", "infertile", "removed")


def at(day, hour=18):
    """A time of March 2026 on the keeper's clock."""
    return dt.datetime(2026, 3, day, hour)


def batch(number):
    """What a keeper writes of one batch; all numbers differ in some way that tells columns apart."""
    return dict(
        flock_age_weeks=40 + number,
        incubator="AB"[number % 2],
        shelf=str(number + 1),
        set_at=at(1 + number),
        eggs_set=40 + number,
        stored_days=4,
        candle1_at=at(8 + number),
        clear1=3 + number,
        dead1=2,
        opened1_infertile=2,
        opened1_dead=1,
        candle2_at=at(15 + number),
        clear2=1,
        dead2=1,
        transfer_at=at(19 + number),
        clear3=0,
        dead3=2,
        removed=2,
        contaminated=1,
        cracked=0,
        taken_off_at=at(23 + number),
        first_hatch_at=at(21 + number, 6),
        last_hatch_at=at(22 + number, 9),
        hatched=22,
        culled=1,
        pipped_dead=2,
        dead_in_shell=5,
        broken_infertile=1,
        broken_early=1,
        broken_mid=0,
        broken_late=3,
        malpositioned=1,
    )


def filled(folder, language):
    """A blank season of a language, filled in by hand in its own words."""
    start_folder(folder, language)
    book = openpyxl.load_workbook(folder / "batches.xlsx")
    # Birds that take about as long as hens, as the dates are the same.
    kinds = [text(f"species_{name}", {}, language) for name in ("bobwhite", "pheasant", "chicken", "chukar")]
    looks, ends = choices_of("eggs", "candle1", language), choices_of("eggs", "outcome", language)
    rows = {
        "batches": [dict(batch(n), batch=f"B{n}", species=kinds[n % len(kinds)]) for n in range(4)],
        "eggs": [
            dict(
                batch="B0",
                egg=n + 1,
                tray="1",
                row=n // 3 + 1,
                col=n % 3 + 1,
                weight_g=58.5 + n,
                candle1=looks[n] if 0 < n < 4 else looks[0],
                outcome=None if 0 < n < 4 else ends[n - 4],
            )
            for n in range(4, 10)
        ],
        "weights": [dict(batch="B1", egg=n + 1, weighed_at=at(2), grams=60.5 - n, eggs_weighed=1) for n in range(3)],
    }
    for sheet, lines in rows.items():
        page = book[text(f"sheet_{sheet}", {}, language)]
        place = {column: number for number, column in enumerate(COLUMNS[sheet], 1)}
        for number, line in enumerate(lines, 2):
            for column, value in line.items():
                page.cell(number, place[column], value)
    book.save(folder / "batches.xlsx")
    return folder


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_a_person_fills_in_is_read_again_exactly(tmp_path, language):
    read = read_folder(filled(tmp_path, language))
    assert read["language"] == language and read["questions"].empty
    assert (read["problems"]["severity"] == "note").all(), read["problems"]
    taken = read["reading"]
    assert set(taken["how_sure"]) == {"sure"}
    sheets = {text(f"sheet_{sheet}", {}, language): sheet for sheet in COLUMNS}
    wanted = [own_key(COLUMNS[sheets[row.sheet]][row.column]) for row in taken.itertuples()]
    assert taken["taken"].tolist() == wanted
    table = read["batches"]
    for number, row in enumerate(table.to_dict("records")):
        for column, value in batch(number).items():
            got = row[column].tz_localize(None) if column.endswith("_at") else row[column]
            assert got == value, (column, number)
    assert table["species"].tolist() == ["bobwhite", "pheasant", "chicken", "chukar"]
    assert read["eggs"]["outcome"].tolist() == list(ENDS)
    assert read["eggs"][["row", "col", "weight_g"]].iloc[0].tolist() == [2, 2, 62.5]
    assert sorted(read["weights"].query("batch == 'B1'")["grams"]) == [58.5, 59.5, 60.5]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_choice_is_read_as_what_it_stands_for(tmp_path, language):
    from hatchkit.records.sheets.entries import fate_of

    kinds = list(reference.species_table().index)
    start_folder(tmp_path, language)
    book = openpyxl.load_workbook(tmp_path / "batches.xlsx")
    place = {column: number for number, column in enumerate(COLUMNS["batches"], 1)}
    for number, name in enumerate(choices_of("batches", "species", language)):
        for column, value in dict(batch=f"B{number}", species=name, set_at=at(1), eggs_set=20).items():
            book.worksheets[0].cell(number + 2, place[column], value)
    book.save(tmp_path / "batches.xlsx")
    assert read_folder(tmp_path)["batches"]["species"].tolist() == kinds
    assert [fate_of(name, language).fate for name in choices_of("eggs", "candle2", language)] == list(LOOKS)
    assert [fate_of(name, language).fate for name in choices_of("eggs", "outcome", language)] == list(ENDS)
    seen = reference.load("signs").query("kind == 'seen'")["sign"]
    unread = [
        name
        for sign, name in zip(seen, choices_of("batches", "signs", language), strict=True)
        if sign not in signs_in(name)
    ]
    assert unread == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_fifteen_columns_are_seen_at_first_and_the_rest_is_grouped(tmp_path, language):
    from openpyxl.utils import get_column_letter

    start_folder(tmp_path, language)
    page = openpyxl.load_workbook(tmp_path / "batches.xlsx").worksheets[0]
    assert [cell.value for cell in page[1]] == list(headings("batches", language).values())
    folded = {}
    for group in page.column_dimensions.values():  # the file holds neighbours of one kind as one
        for number in range(group.min, group.max + 1):
            folded[get_column_letter(number)] = bool(group.hidden and group.outlineLevel)
    seen = [column for number, column in enumerate(COLUMNS["batches"], 1) if not folded[get_column_letter(number)]]
    assert tuple(seen) == AT_FIRST_SIGHT and len(seen) == 15


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_column_is_explained_in_its_language(tmp_path, language):
    start_folder(tmp_path, language)
    book = openpyxl.load_workbook(tmp_path / "batches.xlsx")
    page = book[text("sheet_fill", {}, language)]
    explained = {(row[0], row[1]): row[2] for row in page.iter_rows(min_row=5, values_only=True) if row[1]}
    for sheet in COLUMNS:
        named = headings(sheet, language)
        for column, _, _ in columns_of(sheet):
            assert explained[text(f"sheet_{sheet}", {}, language), named[column]].endswith(".")
    lists = [rule.formula1 for sheet in book for rule in sheet.data_validations.dataValidation if rule.type == "list"]
    assert all(len(rule) < 256 for rule in lists) and len(lists) == 9


def test_only_what_is_said_elsewhere_has_no_column():
    facts = reference.load("columns_records")
    documented = set(facts.loc[facts["table"] == "batches", "column"])
    elsewhere = {"name", "keeper", "place", "season", "flock", "file", "sheet", "row"}
    assert documented - set(COLUMNS["batches"]) == elsewhere


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


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_blank_workbook_loads_with_no_batch_and_no_loss(tmp_path, language):
    start_folder(tmp_path, language)
    read = read_folder(tmp_path)
    assert read["batches"].empty and (read["problems"]["severity"] != "lost").all()
    assert read["language"] == language


@pytest.mark.parametrize("language", LANGUAGES)
def test_season_toml_is_valid_as_written_and_with_every_line_taken_in(tmp_path, language):
    start_folder(tmp_path, language)
    written = (tmp_path / "season.toml").read_text(encoding="utf-8")
    assert set(tomllib.loads(written)) == ({"title"} if language == "en" else {"title", "language"})
    lines = [
        line[2:] if line.startswith(("# [", '# "')) or " = " in line[:30] and line.startswith("# ") else line
        for line in written.splitlines()
    ]
    settings = tomllib.loads("\n".join(lines))
    assert settings["incubators"]["A"]["air"] == "fan" and list(settings["headers"].values()) == ["eggs_set"]
    (tmp_path / "season.toml").write_text("\n".join(lines), encoding="utf-8")
    assert set(read_folder(tmp_path)["problems"]["file"]) <= {"batches.xlsx"}


def test_no_word_of_the_english_comments_is_left_in_another_language():
    english = {line for line in settings_text().splitlines() if line.startswith("# ") and "=" not in line}
    for language in LANGUAGES[1:]:
        assert english & set(settings_text(language).splitlines()) <= {
            "# [incubators.A]",
            "# [sensors]",
            "# [sheets]",
            "# [headers]",
            "# [species.my_bantam]",
        }


def test_a_column_that_a_person_renames_is_read_by_its_words(tmp_path):
    filled(tmp_path, "de")
    book = openpyxl.load_workbook(tmp_path / "batches.xlsx")
    book.worksheets[0].cell(1, COLUMNS["batches"].index("hatched") + 1, "Geschlüpfte Küken")
    book.save(tmp_path / "batches.xlsx")
    assert read_folder(tmp_path)["batches"]["hatched"].tolist() == [22] * 4


def test_blank_cells_stay_not_kept(tmp_path):
    start_folder(tmp_path, "fr")
    book = openpyxl.load_workbook(tmp_path / "batches.xlsx")
    place = {column: number for number, column in enumerate(COLUMNS["batches"], 1)}
    for column, value in dict(batch="A1", species="cailles", set_at=at(1), eggs_set=30, clear1=0).items():
        book.worksheets[0].cell(2, place[column], value)
    book.save(tmp_path / "batches.xlsx")
    row = read_folder(tmp_path)["batches"].iloc[0]
    assert row["species"] == "quail" and row["clear1"] == 0 and pd.isna(row["dead1"]) and pd.isna(row["hatched"])
