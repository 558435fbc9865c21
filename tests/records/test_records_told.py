"""Problems as the person reads them: their own headings, their own clock, nothing hidden behind the first."""

import pandas as pd
import pytest
from sheet_files import said, taken, tidy_season, told, write_csv

import hatchkit as hk
from hatchkit import problems
from hatchkit.pages.check_text import check_text
from hatchkit.problems import problem
from hatchkit.records.check import group_problems
from hatchkit.records.folder import read_folder
from hatchkit.records.told import local_minute, with_headings
from hatchkit.say.sheets import place_words
from hatchkit.words.spelling import many

ROME = 'timezone = "Europe/Rome"\n'


def checked(folder, *lines, toml="", name="batches.csv"):
    """A folder with one table of these lines, loaded."""
    (folder / "season.toml").write_text(toml, encoding="utf-8")
    return hk.load_season(write_csv(folder, lines, name=name))


# ---- headings ---------------------------------------------------------------------------------------------


def test_the_person_s_heading_stands_beside_the_kit_s_name(tmp_path):
    season = checked(tmp_path, "batch,species,date in,eggs,hatched,Clears,hatch date",
                     "B1,hen,2026-05-20,20,25,2,2026-05-01")  # fmt: skip
    dates = said(season, "taken off 2026-05-01, before set 2026-05-20").iloc[0]
    assert dates["column"] == "hatch date (taken_off_at)"
    assert dates["fix"] == "Correct hatch date (taken_off_at) or date in (set_at)."
    german = problems.in_language(season.problems, "de").loc[lambda rows: rows["code"] == "check_dates", "fix"]
    assert german.tolist() == ["Berichtigen Sie hatch date (taken_off_at) oder date in (set_at)."]
    assert said(season, "but 20 eggs set")["column"].tolist() == ["eggs (eggs_set)"]


def test_headings_are_put_in_once_and_not_into_lines_for_season_toml():
    rows = problems.table([problem("note", file="a.csv", column="set_at", found="set_at is late", done="d",
                                   fix='Correct set_at, or write [headers] "In" = "set_at".')])  # fmt: skip
    once = with_headings(rows, {("a.csv", ""): {"set_at": "Eggs in on"}})
    assert once["column"].tolist() == ["Eggs in on (set_at)"] and once["found"][0] == "Eggs in on is late"
    assert once["fix"][0] == 'Correct Eggs in on (set_at), or write [headers] "In" = "set_at".'
    assert with_headings(once, {("a.csv", ""): {"set_at": "Eggs in on"}}).equals(once)
    assert with_headings(rows, {}).equals(rows) and with_headings(rows.iloc[:0], {}).empty


def test_a_swap_of_day_and_month_is_offered_only_where_it_would_help(tmp_path):
    lines = ["batch,species,set_at,eggs_set,hatched,taken_off_at"]
    season = checked(tmp_path, *lines, "B1,hen,2026-05-20,20,12,2026-05-01", "B2,hen,2026-04-12,20,12,2026-03-05")
    assert said(season, "batch B1", "swapped").empty
    assert "day and month may be swapped in taken_off_at" in said(season, "batch B2", "before")["fix"].iloc[0]


# ---- the clock --------------------------------------------------------------------------------------------


def test_times_are_told_as_on_the_person_s_clock(tmp_path):
    (tmp_path / "sensors").mkdir()
    hours = [n for n in range(96) if not 20 < n < 50]
    log = ["time,temp_c", *[f"2026-07-{1 + n // 24:02d} {n % 24:02d}:00,37.{n % 3}" for n in hours]]
    write_csv(tmp_path / "sensors", log, name="A.csv")
    row = "B1,hen,A,2026-07-01 01:00,30,2026-06-20"
    season = checked(tmp_path, "batch,species,incubator,set_at,eggs_set,taken_off_at", row, toml=ROME)
    assert len(said(season, "A.csv", "nothing between 2026-07-01 20:00 and 2026-07-03 02:00")) == 1
    assert len(said(season, "before set 2026-07-01")) == 1  # 23:00 of the day before in UTC
    assert "Times are shown as in Europe/Rome." in check_text(season).splitlines()


@pytest.mark.parametrize("zone, shown", [(None, "2026-05-20 01:10 UTC"), ("UTC", "2026-05-20 01:10"),
                                         ("Europe/Rome", "2026-05-20 03:10")])  # fmt: skip
def test_a_minute_on_the_wall_clock(zone, shown):
    assert local_minute(pd.Timestamp("2026-05-20 01:10").to_datetime64(), zone) == shown
    assert local_minute(pd.Timestamp("2026-05-20 23:10", tz="UTC"), zone, day_only=True)[-2:] in ("20", "21")


# ---- the check table --------------------------------------------------------------------------------------


def test_batches_that_lack_different_things_are_each_listed(tmp_path):
    lines = ["batch,species,set_at,eggs_set,hatched", "S1,swan,2026-04-20,6,2", "A4,hen,,22,15",
             "A5,hen,2026-07-01,,8", "A6,hen,2026-07-05,-5,3", "A9,hen,2026-08-01,20,25",
             "B1,hen,2026-08-01,20,31"]  # fmt: skip
    season = checked(tmp_path, *lines)
    for name, lacks, row in (("A4", ["set_at"], 3), ("A5", ["eggs_set"], 4), ("A6", ["eggs_set"], 5)):
        assert told(season, "batch_lacks", name=name, lacks=lacks)["row"].tolist() == [row]
    assert season.batches["batch"].tolist() == ["S1", "A9", "B1"]
    # Two slips of the pen do not make "hatched" another word.
    assert taken(season, "hatched") == "hatched" and season.batches["hatched"].tolist() == [2, 25, 31]
    assert len(said(season, "batch A9: 25 eggs")) == 1 and len(said(season, "batch B1: 31 eggs")) == 1


def test_a_long_group_is_cut_and_counted():
    rows = [problem("lost", file="a.csv", row=n, found=f"batch {n} is odd", done="Left out.") for n in range(2, 42)]
    groups = group_problems(problems.table(rows))
    assert len(groups) == 1 and len(groups["each"][0]) == 12
    assert place_words(groups["place"][0]).startswith("a.csv, rows 2, 3, 4,")


def test_numbers_agree_with_their_nouns(tmp_path):
    lines = ["batch,species,set_at,eggs_set,hatched,sky", "B1,hen,2026-04-20 10:00,6,2,blue"]
    season = checked(tmp_path, *lines, toml=ROME)
    assert "read 1 batch, 0 egg rows, 0 weighings, 0 readings." in check_text(season)
    assert many("1", "batch", "batches") == "1 batch" and many("1,000", "reading") == "1,000 readings"
    assert taken(season, "sky") == "ignore" and season.batches["sky"].tolist() == ["blue"]
    assert "set on 20 April 2026" in season.words() and " to " not in season.words().split("set on")[1]


# ---- seasons without a batch ------------------------------------------------------------------------------


def test_a_blank_table_is_told_to_be_filled_in(tmp_path):
    season = checked(tmp_path, "batch,species,set_at,eggs_set,hatched")
    assert told(season, "no_row_yet", logs=False)["severity"].tolist() == ["note"]


def test_a_table_of_which_no_row_can_be_used_says_so(tmp_path):
    season = checked(tmp_path, "batch,species,set_at,eggs_set", "B1,hen,,30")
    assert len(told(season, "no_usable_batch", logs=False)) == 1
    assert told(season, "batch_lacks", name="B1", lacks=["set_at"])["row"].tolist() == [2]


# ---- cells that are read otherwise than written -----------------------------------------------------------


@pytest.mark.parametrize("column, text, number", [("stored_days", "ca. 5", 5), ("stored_days", "~4.5", 4.5),
                                                  ("clear1", "about 3", 3), ("clear1", "etwa 3", 3)])  # fmt: skip
def test_a_rough_figure_is_used_and_told(tmp_path, column, text, number):
    read = read_folder(tidy_season(tmp_path, **{column: text}))
    assert read["batches"][column].tolist() == [number]
    assert told(read, "cell_about", cell=text)["row"].tolist() == [2]


def test_marks_in_the_egg_sheet_are_told(tmp_path):
    tidy_season(tmp_path)
    lines = ["batch,egg,candle1,outcome", "B1,1,?,hatched", "B1,2,alive?,hatched", "B1,3,-,hatched"]
    read = read_folder(write_csv(tmp_path, lines, name="eggs.csv"))
    assert read["eggs"]["candle1"].fillna("").tolist() == ["", "alive", ""]
    assert told(read, "cell_unsure", cell="alive?")[["severity", "row"]].values.tolist() == [["doubtful", 3]]


def test_an_hour_in_a_column_of_its_own_is_used_and_one_not_known_is_noon(tmp_path):
    lines = ["batch,species,set_at,time in,eggs_set,candle1_at", "B1,hen,2026-03-01,?,30,-",
             "B2,hen,2026-03-02,08:00,30,?"]  # fmt: skip
    read = read_folder(write_csv(tmp_path, lines))
    assert [f"{when:%H:%M}" for when in read["batches"]["set_at"]] == ["12:00", "08:00"]
    assert read["batches"]["candle1_at"].isna().all()


def test_lines_above_the_table_are_told(tmp_path):
    read = read_folder(write_csv(tmp_path, ["Our hatches (invented),,,", ",,,", "batch,species,set_at,eggs_set",
                                            "B1,hen,2026-03-01 18:00,30"]))  # fmt: skip
    assert told(read, "row_title", text="Our hatches (invented)")["row"].tolist() == [1]
