"""Eggs left look by look, words cut short, numbers in words: neighbours of sheets that were once read otherwise."""

from datetime import date, timedelta

import pytest
from sheet_files import taken, write_csv

import hatchkit as hk
from hatchkit.records.folder import read_folder
from hatchkit.records.sheets.cells import count_of, mentions
from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.legend import with_glossary
from hatchkit.records.sheets.meanings import meanings, readings
from hatchkit.records.workbook import Grid


def fates(folder, lines):
    season = hk.load_season(write_csv(folder, lines))
    table = season.fates.groupby(["batch", "fate"])["eggs"].sum()
    return {key: int(eggs) for key, eggs in table.items()}, season


RUNNING = [
    ["Batch,Set,Eggs,d 7,d 14,d 18,Chicks", "A,2025-03-01,30,27,26,25,23", "B,2025-03-22,24,20,20,19,15"],
    ["Brut,Einlage,Eier,Tag 7,Tag 14,Tag 18,Küken", "A,01.03.2025,30,27,26,25,23", "B,22.03.2025,24,20,20,19,15"],
    ["Lot,Mis le,Œufs,J7,J14,J18,Poussins", "A,01/03/2025,30,27,26,25,23", "B,22/03/2025,24,20,20,19,15"],
    ["Batch,Set,Eggs,left d7 (clears out),left d14 (dead out),moved to hatcher,Chicks", "A,2025-03-01,30,27,26,25,23",
     "B,2025-03-22,24,20,20,19,15"],
    ["Brut,Einlage,Eier,Bestand nach 1. Schieren (nur klare entfernt),Bestand nach 2. Schieren,Umgelegt,Küken",
     "A,01.03.2025,30,27,26,25,23", "B,22.03.2025,24,20,20,19,15"],
]  # fmt: skip


@pytest.mark.parametrize("lines", RUNNING, ids=["en", "de", "fr", "told why", "de told why"])
def test_what_is_left_is_no_loss(tmp_path, lines):
    found, season = fates(tmp_path, lines)
    assert found["A", "clear"] == 3 and found["A", "dead"] == 4 and found["A", "hatched"] == 23
    assert found["B", "clear"] == 4 and found["B", "dead"] == 5 and found["B", "hatched"] == 15
    dead = season.looks[season.looks["dead"] > 0].groupby("batch")["dead"].apply(list)
    assert dead["A"] == [1, 1] and dead["B"] == [1]


def test_losses_below_the_same_headings_are_losses(tmp_path):
    lines = ["Batch,Set,Eggs,Clear d7,d 14,d 18,Chicks", "A,2025-03-01,30,3,1,1,25", "B,2025-03-22,24,4,0,1,19"]
    found, season = fates(tmp_path, lines)
    assert found["A", "dead"] == 2 and found["B", "dead"] == 1
    assert "unaccounted" not in season.fates["fate"].tolist()


def test_a_column_that_changes_no_number_is_not_asked_about(tmp_path):
    lines = [*RUNNING[0][:1], "A,2025-03-01,30,27,27,27,23", "B,2025-03-22,24,20,20,20,15"]
    questions = hk.load_season(write_csv(tmp_path, lines)).questions
    assert not set(questions["heading"]) & {"d 14", "d 18"}


@pytest.mark.parametrize("heading, group, field, look", [
    ("left (dead out)", "2nd look", "left", Look(order=2)), ("eggs left d14, clears removed", "", "left", Look(day=14)),
    ("Clear d7", "", "clear", Look(day=7)), ("date", "Lockdown", "look_at", Look(transfer=True)),
    ("date", "Moved to hatchers", "look_at", Look(transfer=True)), ("Bad at candling", "", "dead", Look()),
    ("Schlechte beim 1. Schieren", "", "dead", Look(order=1)), ("Bad eggs", "", "rotten", Look()),
    ("Eggs set", "", "eggs_set", Look()),
])  # fmt: skip
def test_headings(heading, group, field, look):
    best = meanings(heading, group, "de" if "Schieren" in heading else "en")[0]
    assert (best.field, best.look) == (field, look)


def test_eggs_left_that_name_a_loss_keep_the_loss_as_a_second_reading():
    assert [m.field for m in readings(frozenset({"left", "out", "clear"}), Look(day=7))] == ["left", "clear"]


@pytest.mark.parametrize("line, heading, words", [
    ("Cl. = clairs ; Éc. = éclos", "Cl.", "clairs"), ("Mt mir. = morts au mirage, Cl. = clairs", "Mt mir. 2",
                                                      "morts au mirage 2"),
    ("Penoy = clear egg, no embryo. Balut = dead embryo.", "Balut", "dead embryo"), ("Prix = 12 euros", "Prix", "Prix"),
])  # fmt: skip
def test_words_cut_short_that_the_sheet_explains(line, heading, words):
    grid, _ = with_glossary(Grid("a.csv", "", [[heading], [line]]), "en" if "Penoy" in line else "fr")
    assert grid.cells[0][0] == words


@pytest.mark.parametrize("cell, language, value", [
    ("2 doz", "en", 24), ("two dozen", "en", 24), ("half a dozen", "en", 6), ("1½ dozen", "en", 18),
    ("a dozen", "en", 12), ("3 Dutzend", "de", 36), ("une douzaine", "fr", 12), ("dos docenas", "es", 24),
    ("tuzin", "pl", 12), ("5 + 1 cracked", "en", 5), ("4+1 pipped", "en", 4), ("10+2 next day", "en", 12),
    ("10+2 hatched", "en", 12), ("3+2 (1 weak)", "en", 5),
])  # fmt: skip
def test_numbers_in_words(cell, language, value):
    assert count_of(cell, language).value == value


def test_a_diary_counts_dozens():
    assert [(m.count, m.roles) for m in mentions("set 2 doz eggs", "en")] == [(24, {"set"})]


@pytest.mark.parametrize("cell, language, short", [
    ("all but one", "en", 1), ("all the rest except 2", "en", 2), ("alle bis auf zwei", "de", 2), ("all", "en", 0),
    ("toutes sauf 3", "fr", 3), ("tutti tranne uno", "it", 1), ("all 18", "en", 0),
])  # fmt: skip
def test_all_but_some(cell, language, short):
    count = count_of(cell, language)
    assert (count.code, count.short) == ("all", short)


def test_all_is_what_is_told_of_nowhere_else(tmp_path):
    lines = ["Batch,Set,Eggs,Clear,Dead,Hatched,Unhatched", "A,2025-03-01,2 doz,3,2,all the rest but one,1",
             "B,2025-03-22,20,2,1,all,2", "C,2025-04-12,20,2 + 1 cracked,1,15,1",
             "Summer,2025-06-12,20,2,1,15,2"]  # fmt: skip
    found, season = fates(tmp_path, lines)
    assert season.batches["eggs_set"].tolist() == [24, 20, 20, 20]
    assert [found[name, "hatched"] for name in ("A", "B", "C", "Summer")] == [18, 15, 15, 15]
    assert found["C", "clear"] == 2 and found["C", "removed"] == 1
    assert "unaccounted" not in season.fates["fate"].tolist()


def test_what_drowned_beside_the_hatched_was_a_chick(tmp_path):
    lines = ["No,Date in,Eggs,Clear,Bad at candling,Hatched", "1,20 Mar 2025,21,4,1,15 - 1 drowned at a week",
             "2,12 Apr 2025,20,2,1,16 - 1 lost to rats"]  # fmt: skip
    found, _ = fates(tmp_path, lines)
    assert not [key for key in found if key[1] == "removed"] and found["1", "unaccounted"] == found["2", "unaccounted"]


@pytest.mark.parametrize(
    "days, species", [(21, "chicken"), (28, "duck"), (30, "goose"), (31, "goose"), (35, "muscovy")]
)
def test_the_days_tell_the_bird(tmp_path, days, species):
    out = date(2025, 3, 1) + timedelta(days)
    lines = ["Batch,Set,Eggs,Clear,Dead,Hatched,Hatch date", f"A,2025-03-01,21,4,2,15,{out}"]
    season = hk.load_season(write_csv(tmp_path, lines))
    assert season.batches["species"].tolist() == [species]
    assert ("species" in set(season.questions["code"])) == (species in ("duck", "goose"))


@pytest.mark.parametrize("heading", ["Termín", "Datum", "Dne"])
def test_the_only_date_is_that_of_setting(tmp_path, heading):
    lines = [f"Líheň,{heading},Plemeno,Vajec,Neopl.,Odumř.,Kuřat", "velká,1.3.2025,sasexka,40,5,2,33",
             "malá,29.3.2025,sasexka,24,1,1,22"]  # fmt: skip
    read = read_folder(write_csv(tmp_path, lines))
    assert taken(read, heading) in ("date", "set_at")
    assert read["batches"]["set_at"].dt.strftime("%m-%d").tolist() == ["03-01", "03-29"]


LOG = ["batch,date,when,number,remarks", "1,2025-03-09,set,32,", "1,2025-03-17,after 1st candling,27,only clears out",
       "1,2025-03-25,after 2nd candling,26,dead out", "1,2025-04-03,moved to hatcher,26,all alive",
       "1,2025-04-06,ducklings hatched,23,"]  # fmt: skip


def test_a_log_with_one_number_a_row_counts_down(tmp_path):
    found, season = fates(tmp_path, LOG)
    assert found == {("1", "clear"): 5, ("1", "dead"): 4, ("1", "hatched"): 23}
    assert season.looks["dead"].fillna(0).tolist() == [0, 1, 0, 0]
