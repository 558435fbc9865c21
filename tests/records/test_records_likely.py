"""Words that are not plain: columns, birds and dates that a person would still understand, or be asked about."""

import pytest
from sheet_files import asked, taken, write_csv

from hatchkit.records.folder import read_folder


def read(folder, *lines, toml="", name="batches.csv"):
    (folder / "season.toml").write_text(toml, encoding="utf-8")
    return read_folder(write_csv(folder, lines, name=name))


@pytest.mark.parametrize(
    "headings, values, column, count",
    [
        ("Clears,Dead,hatched", "3,1,20", "dead1", 1),
        ("Clears,Day 7 dead,hatched", "3,1,20", "dead1", 1),
        ("hatched,Unhatched", "20,10", "dead_in_shell", 10),
        ("Clears,hatched,Did not hatch", "3,20,7", "dead_in_shell", 7),
    ],
)
def test_a_column_whose_words_and_counts_fit_is_used(tmp_path, headings, values, column, count):
    season = read(tmp_path, f"batch,species,set_at,eggs_set,{headings}", f"B1,hen,2026-03-01,30,{values}")
    assert season["batches"][column].tolist() == [count] and season["batches"]["hatched"].tolist() == [20]


def test_unhatched_eggs_that_were_opened_are_counted_or_asked(tmp_path):
    season = read(tmp_path, "batch,species,set_at,eggs_set,hatched,Unhatched opened", "B1,hen,2026-03-01,30,20,4")
    assert season["batches"]["dead_in_shell"].fillna(0).tolist() == [4] or asked(season, "Unhatched opened")


def test_out_over_dates_is_the_day_of_the_hatch(tmp_path):
    season = read(tmp_path, "batch,species,set_at,eggs_set,Moved down,Out,hatched",
                  "B1,hen,2026-03-01,30,2026-03-19,2026-03-22,20")  # fmt: skip
    batch = season["batches"].iloc[0]
    assert (batch["transfer_at"].day, batch["taken_off_at"].day, batch["hatched"]) == (19, 22, 20)


@pytest.mark.parametrize("heading, value", [("Moon phase", "waning"), ("hatch %", "80"), ("Price", "2.50"),
                                            ("Year", "2026"), ("breed", "Marans"), ("Colour", "blue"), ("x", "7"),
                                            ("Weather", "wet"), ("Due", "2026-03-22")])  # fmt: skip
def test_what_cannot_be_a_count_of_eggs_counts_nothing_and_asks_nothing(tmp_path, heading, value):
    season = read(tmp_path, f"batch,species,set_at,eggs_set,{heading}", f"B1,hen,2026-03-01,30,{value}")
    batch = season["batches"].iloc[0]
    counts = ["hatched", "clear1", "dead1", "dead_in_shell"]
    assert batch["eggs_set"] == 30 and season["batches"][counts].isna().all(axis=None)
    assert season["looks"]["name"].tolist() == ["hatch"] and season["questions"].empty


def test_a_first_column_of_names_is_the_batch(tmp_path):
    lines = ["No,species,set_at,eggs_set", "T1,turkey,2026-03-01 10:00,9", "T2,turkey,2026-03-09 10:00,9"]
    season = read(tmp_path, *lines)
    assert season["batches"]["batch"].tolist() == ["T1", "T2"] and taken(season, "No") == "batch"


def test_hatched_and_not_pipped_are_not_pipped_dead(tmp_path):
    season = read(tmp_path, "batch,species,set_at,eggs_set,hatched not pipped", "B1,hen,2026-03-01,30,4")
    assert season["batches"]["pipped_dead"].isna().all()


def test_two_columns_of_dead_are_two_looks(tmp_path):
    season = read(tmp_path, "batch,species,set_at,eggs_set,Dead,Dead,hatched", "B1,hen,2026-03-01,30,4,5,21")
    assert season["batches"][["dead1", "dead2", "hatched"]].values.tolist() == [[4, 5, 21]]


def test_a_column_without_a_heading_is_kept_and_one_with_quotes_can_be_named(tmp_path):
    lines = ['batch,species,set_at,eggs_set,,My "best" lot', "B1,hen,2026-03-01,30,6,7"]
    assert read(tmp_path, *lines)["batches"]["hatched"].isna().all()
    again = read(tmp_path, *lines, toml='[headers]\n"My \\"best\\" lot" = "hatched"\n')
    assert again["batches"]["hatched"].tolist() == [7]


def test_of_two_columns_of_chicks_one_is_taken_and_the_other_kept(tmp_path):
    season = read(tmp_path, "batch,species,set_at,eggs_set,hatched,chicks", "B1,hen,2026-03-01,30,20,20")
    assert season["batches"]["hatched"].tolist() == [20] and season["batches"]["culled"].isna().all()


def test_kinds_of_birds_under_another_heading_are_read(tmp_path):
    lines = ["No,What,In,Eggs,hatched", "T1,turkey,2026-04-06 18:00,40,25", "G1,geese,2026-04-07 18:00,12,6",
             "G2,goose?,2026-04-08 18:00,14,5"]  # fmt: skip
    season = read(tmp_path, *lines)
    assert season["batches"]["species"].tolist() == ["turkey", "goose", "goose"]
    assert season["batches"][["eggs_set", "hatched"]].values.tolist() == [[40, 25], [12, 6], [14, 5]]
    assert (season["problems"]["severity"] != "lost").all()


def test_a_bird_that_is_named_wins_over_the_default(tmp_path):
    lines = ["batch,House,set_at,eggs_set", "B1,duck,2026-03-01 10:00,9"]
    assert read(tmp_path, *lines, toml='default_species = "chicken"')["batches"]["species"].tolist() == ["duck"]


def test_free_text_is_not_taken_for_birds_and_hens_are_asked(tmp_path):
    lines = ["batch,Remarks of mine,set_at,eggs_set", "B1,the old goose hissed,2026-03-01,9",
             "B2,lids open,2026-03-02,9", "B3,nothing,2026-03-03,9"]  # fmt: skip
    season = read(tmp_path, *lines)
    assert season["batches"]["species"].tolist() == ["chicken"] * 3
    assert season["batches"]["notes"].tolist() == ["the old goose hissed", "lids open", "nothing"]
    assert len(asked(season, "?species")) == 1


def test_the_name_of_the_file_gives_the_species_where_nothing_else_does(tmp_path):
    lines = ["batch,set_at,eggs_set", "Q1,2026-03-01,40"]
    season = read(tmp_path, *lines, name="quail hatches.csv")
    assert season["batches"]["species"].tolist() == ["quail"] and season["questions"].empty


@pytest.mark.parametrize("text, species", [("ducks?", "duck"), ("Hen!", "chicken"), ("big brown hen", "chicken")])
def test_a_species_in_other_clothes(tmp_path, text, species):
    season = read(tmp_path, "batch,species,set_at,eggs_set", f"B1,{text},2026-03-01 10:00,9")
    assert season["batches"]["species"].tolist() == [species] and season["questions"].empty


def test_a_bird_that_is_not_known_is_asked_with_its_word(tmp_path):
    season = read(tmp_path, "batch,species,set_at,eggs_set", "S1,toucan,2026-03-01 10:00,9")
    question = season["questions"].to_dict("records")
    assert [row["heading"] for row in question] == ["?species"] and "toucan" in str(question[0]["facts"])


def test_a_date_under_words_that_say_little_is_the_day_of_setting(tmp_path):
    lines = ["batch,species,eggs_set,hatched,Put under", "B1,hen,30,20,2026-03-01", "B2,hen,30,20,2026-03-05"]
    season = read(tmp_path, *lines)
    assert [f"{when:%m-%d}" for when in season["batches"]["set_at"]] == ["03-01", "03-05"]
