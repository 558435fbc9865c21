"""Headings that are not known: what may be meant is offered, and what counts is not ranked as small talk."""

import pytest
from sheet_files import said, write_csv

from hatchkit.records.folder import read_folder


def read(folder, *lines, toml="", name="batches.csv"):
    (folder / "season.toml").write_text(toml, encoding="utf-8")
    return read_folder(write_csv(folder, lines, name=name))


@pytest.mark.parametrize(
    "headings, values, unknown, column",
    [
        ("Clears,Dead,hatched", "3,1,20", "Dead", "dead1"),
        ("Clears,Day 7 dead,hatched", "3,1,20", "Day 7 dead", "dead1"),
        ("hatched,Unhatched opened", "20,4", "Unhatched opened", "dead_in_shell"),
        ("Moved down,Out,hatched", "2026-03-19,2026-03-22,20", "Out", "taken_off_at"),
    ],
)
def test_a_column_of_counts_or_dates_is_doubtful_and_the_likely_one_is_offered(
    tmp_path, headings, values, unknown, column
):
    found = said(read(tmp_path, f"batch,species,set_at,eggs_set,{headings}", f"B1,hen,2026-03-01,30,{values}"),
                 f"does not know: {unknown}").iloc[0]  # fmt: skip
    assert found["severity"] == "doubtful" and found["row"] == 1 and found["column"] == unknown
    assert f'[headers] "{unknown}" = "{column}"' in found["mend"]


@pytest.mark.parametrize("heading, value", [("Moon phase", "waning"), ("hatch %", "80"), ("Price", "2.50"),
                                            ("Year", "2026"), ("breed", "Marans")])  # fmt: skip
def test_what_cannot_be_a_count_stays_a_note(tmp_path, heading, value):
    found = said(read(tmp_path, f"batch,species,set_at,eggs_set,{heading}", f"B1,hen,2026-03-01,30,{value}"),
                 f"does not know: {heading}")  # fmt: skip
    assert found["severity"].tolist() == ["note"]


def test_a_first_column_of_names_is_offered_as_the_batch(tmp_path):
    lines = ["No,species,set_at,eggs_set", "T1,turkey,2026-03-01 10:00,9", "T2,turkey,2026-03-09 10:00,9"]
    found = said(read(tmp_path, *lines), "does not know: No").iloc[0]
    assert '[headers] "No" = "batch"' in found["mend"]


def test_a_denied_heading_is_likened_to_nothing(tmp_path):
    found = said(read(tmp_path, "batch,species,set_at,eggs_set,hatched not pipped", "B1,hen,2026-03-01,30,4"),
                 "hatched not pipped").iloc[0]  # fmt: skip
    assert found["severity"] == "doubtful" and "pipped_dead" not in found["mend"]
    assert '"hatched" if these are the chicks or [headers]' in found["mend"]


def test_the_same_heading_twice_none_at_all_and_one_with_quotes(tmp_path):
    lines = ["batch,species,set_at,eggs_set,Dead,Dead,,My "'"best"'" lot", "B1,hen,2026-03-01,30,4,5,6,7"]
    season = read(tmp_path, *lines)
    assert season["batches"].iloc[0][["Dead", "Dead (2)", "column 7"]].tolist() == ["4", "5", "6"]
    assert "heading of its own" in said(season, "does not know: Dead (2)")["mend"].iloc[0]
    assert said(season, "without a heading")["mend"].tolist() == ["Write a heading above it."]
    line = r'[headers] "My \"best\" lot" = "hatched"'
    assert line in said(season, "best", "does not know")["mend"].iloc[0]
    again = read(tmp_path, *lines, toml=line.replace("] ", "]\n"))
    assert again["batches"]["hatched"].tolist() == [7]


def test_a_heading_that_means_another_column_or_dates_is_not_called_unknown(tmp_path):
    season = read(tmp_path, "batch,species,set_at,eggs_set,hatched,chicks,Candled", "B1,hen,2026-03-01,30,20,21,7")
    assert said(season, "does not know").empty and len(said(season, "chicks", "means the same")) == 1
    assert "Candled day" in said(season, "numbers where candle1_at wants dates")["mend"].iloc[0]


def test_kinds_of_birds_under_another_heading_are_read_and_told(tmp_path):
    lines = ["No,What,In,Eggs,hatched", "T1,turkey,2026-04-06 18:00,40,25", "G1,geese,2026-04-07 18:00,12,6",
             "G2,goose?,2026-04-08 18:00,14,5"]  # fmt: skip
    season = read(tmp_path, *lines, toml='[headers]\n"In" = "set_at"\n')
    assert season["batches"]["species"].tolist() == ["turkey", "goose", "goose"]
    told = said(season, "kinds of birds under another heading").iloc[0]
    assert told["column"] == "What" and told["done"] == "Read as the species."
    assert (season["problems"]["severity"] != "lost").all()


def test_a_default_species_gives_way_to_plain_names_only(tmp_path):
    lines = ["batch,House,set_at,eggs_set", "B1,{},2026-03-01 10:00,9"]
    for house, species in (("Duck house", "chicken"), ("duck", "duck")):
        season = read(tmp_path, *(line.format(house) for line in lines), toml='default_species = "chicken"')
        assert season["batches"]["species"].tolist() == [species]


def test_free_text_is_not_taken_for_birds(tmp_path):
    lines = ["batch,Remarks of mine,set_at,eggs_set", "B1,the old hen sat,2026-03-01,9", "B2,lids open,2026-03-02,9",
             "B3,nothing,2026-03-03,9"]  # fmt: skip
    season = read(tmp_path, *lines)
    assert season["batches"].empty and said(season, "kinds of birds").empty
    assert said(season, "default_species")["row"].tolist() == [2, 3, 4]


def test_the_name_of_the_file_gives_the_species_where_nothing_else_does(tmp_path):
    lines = ["batch,set_at,eggs_set", "Q1,2026-03-01,40"]
    season = read(tmp_path, *lines, name="quail hatches.csv")
    assert season["batches"]["species"].tolist() == ["quail"]
    assert said(season, "Taken from the file's name")["severity"].tolist() == ["note"]
    assert read(tmp_path, *lines, toml='default_species = "duck"', name="quail hatches.csv")["batches"][
        "species"].tolist() == ["duck"]  # fmt: skip


@pytest.mark.parametrize("text, species, words", [("ducks?", "duck", "marked as unsure"), ("Hen!", "chicken", ""),
                                                  ("big brown hen", "chicken", "known name among")])  # fmt: skip
def test_a_species_in_other_clothes(tmp_path, text, species, words):
    season = read(tmp_path, "batch,species,set_at,eggs_set", f"B1,{text},2026-03-01 10:00,9")
    assert season["batches"]["species"].tolist() == [species]
    assert said(season, f"species '{text}'")["severity"].tolist() == ["note"] * bool(words)
    assert len(said(season, words or "nothing of this")) == bool(words)


def test_no_far_fetched_name_is_offered_for_a_bird_that_is_not_known(tmp_path):
    season = read(tmp_path, "batch,species,set_at,eggs_set", "S1,swan,2026-03-01 10:00,9")
    assert said(season, "swan", "not known", "nearest").empty and len(said(season, "'swan' is not known")) == 1


def test_what_all_batches_lack_is_asked_for_with_the_likely_heading(tmp_path):
    lines = ["batch,species,eggs_set,hatched,Put under", "B1,hen,30,20,2026-03-01", "B2,hen,30,20,2026-03-05"]
    found = said(read(tmp_path, *lines), "no usable date of setting")
    assert found["severity"].tolist() == ["lost", "lost"] and '"Put under" = "set_at"' in found["mend"].iloc[0]
