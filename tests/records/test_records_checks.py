"""Records that contradict themselves: each fault is named with its row, and the batch stays."""

import pandas as pd
import pytest
from sheet_files import said, tidy_season, told, write_csv

import hatchkit as hk


def checked(folder, **cells):
    """A tidy season with some cells changed, loaded; its batch must still be there, with all its eggs."""
    season = hk.load_season(tidy_season(folder, **cells))
    told, eggs_set = season.fates["eggs"].sum(), season.batches["eggs_set"].sum()
    assert len(season.batches) == 1 and eggs_set <= told <= eggs_set + 1
    return season


@pytest.mark.parametrize(
    "cells, words",
    [
        (dict(culled=23), ["23 culled, more than 22 hatched"]),
        (dict(candle1_at="2026-02-20"), ["candled first 2026-02-20, before set 2026-03-01"]),
        (dict(taken_off_at="2026-03-18"), ["taken off 2026-03-18, before moved to hatch 2026-03-19"]),
        (dict(candle1_at="2026-03-25"), ["moved to hatch 2026-03-19, before candled first 2026-03-25"]),
        (dict(taken_off_at="2026-04-22"), ["taken off at 52 days", "about 21 days"]),
        (dict(transfer_at="2026-03-09"), ["moved to hatch at 8 days"]),
        (dict(stored_days=-2), ["eggs stored -2 days"]),
    ],
)
def test_each_contradiction_is_named_with_row_and_fix(tmp_path, cells, words):
    found = said(checked(tmp_path, **cells), "batch B1", *words)
    assert found["row"].tolist() == [2] and found["severity"].iloc[0] != "note"
    assert found["fix"].iloc[0]


@pytest.mark.parametrize(
    "cells, kind, eggs", [(dict(hatched=31), "hatched", 31), (dict(clear1=20, dead1=11), "dead", 12)]
)
def test_more_eggs_than_were_set_are_named_by_kind(tmp_path, cells, kind, eggs):
    found = told(checked(tmp_path, **cells), "counts_beyond_set", batch="B1", set=30)
    facts = found["facts"].iloc[0]
    assert found["row"].tolist() == [2] and dict(zip(facts["kinds"], facts["eggs"], strict=True))[kind] == eggs


def test_one_egg_too_many_is_a_doubt_about_the_row_and_the_batch_stays_in(tmp_path):
    season = checked(tmp_path, pipped_dead=4)
    found = told(season, "too_many_eggs", batch="B1", told=31, set=30, excess=1)
    assert found[["severity", "row"]].values.tolist() == [["doubtful", 2]]
    fates = season.fates.groupby("fate")["eggs"].sum()
    assert fates["hatched"] + fates["culled"] == 22 and "unaccounted" not in fates


def test_a_sound_batch_has_no_doubts(tmp_path):
    read = checked(tmp_path)
    assert (read.problems["severity"] == "note").all()


def test_eggs_opened_after_the_hatch_are_the_unhatched_seen_again(tmp_path):
    read = checked(tmp_path, pipped_dead=1, dead_in_shell=2, broken_late=1, broken_mid=1)
    assert (read.problems["severity"] == "note").all()


def test_two_dates_of_one_day_without_hours_are_not_backwards(tmp_path):
    read = checked(
        tmp_path,
        transfer_at="2026-03-19",
        candle2_at="2026-03-19 18:00",
        first_hatch_at="2026-03-22 08:00",
        last_hatch_at="2026-03-22",
    )
    assert said(read, "before").empty


def test_egg_rows_that_disagree_with_counts_are_named_with_what_each_says(tmp_path):
    tidy_season(tmp_path, eggs_set=4, clear1=0, dead1=1, clear3=0, dead3=0, hatched=3, culled=0, pipped_dead=0)
    lines = [
        "batch,egg,candle1,outcome",
        "B1,1,clear,",
        "B1,2,alive,hatched",
        "B1,3,alive,hatched",
        "B1,3,alive,dead",
    ]
    write_csv(tmp_path, lines, name="eggs.csv")
    read = hk.load_season(tmp_path)
    found = said(read, "batch B1", "hatched: ", "by count", "clear")
    assert found["row"].tolist() == [2]
    assert said(read, "listed a second time")["row"].tolist() == [5]


def test_a_date_before_several_others_is_one_row(tmp_path):
    found = said(checked(tmp_path, taken_off_at="2026-02-22"), "taken off 2026-02-22, before")
    assert len(found) == 1 and "set 2026-03-01" in found["found"].iloc[0]
    assert "moved to hatch 2026-03-19" in found["found"].iloc[0]


def test_incubators_without_log_and_logs_without_incubator(tmp_path):
    tidy_season(tmp_path)
    (tmp_path / "sensors").mkdir()
    log = [
        "time,temp_c",
        *[f"2026-03-{day:02d} {hour:02d}:00:00,37.5" for day in range(1, 5) for hour in range(24)],
    ]
    write_csv(tmp_path / "sensors", log, name="Zeta.csv")
    (tmp_path / "season.toml").write_text('[incubators.Zeta]\nfiles = ["sensors/Zeta.csv"]\n', encoding="utf-8")
    read = hk.load_season(tmp_path)
    assert len(said(read, "incubator A has batches but no log")) == 1
    assert said(read, "a log of incubator Zeta, in which no batch was set")["file"].tolist() == ["sensors/Zeta.csv"]


# ---- the table of looks and a log of candlings ------------------------------------------------------------


def look_rows(read):
    looks = read.looks
    return [
        (row.name_, round(row.day, 2), row.clear, row.dead, row.removed)
        for row in looks.rename(columns={"name": "name_"}).itertuples()
    ]


def test_looks_follow_the_columns_and_the_take_off_closes_every_batch(tmp_path):
    read = checked(tmp_path)
    assert read.looks["name"].tolist() == ["candle1", "transfer", "hatch"]
    assert read.looks["look"].tolist() == [1, 2, 3]
    assert read.looks["day"].round(2).tolist() == [6.75, 17.75, 21.08]
    assert read.looks["clear"].fillna(-1).tolist() == [3, 0, -1]


def test_counts_without_a_date_stand_at_the_usual_day_and_say_so(tmp_path):
    read = checked(tmp_path, candle1_at="", transfer_at="", taken_off_at="")
    assert read.looks["day"].round(2).tolist() == [7, 18, 22]
    assert read.batches["candle1_at"].isna().all()
    assert told(read, "look_without_date", batches=["B1"])["severity"].tolist() == ["note"]
    assert told(read, "hatch_without_date", batches=["B1"])["severity"].tolist() == ["note"]


LOG = [
    "Batch,Date,Clear,Dead,Removed,Left",
    "B1,2026-03-06,2,0,0,28",
    "B1,2026-03-10,1,1,0,26",
    "b 1,2026-03-14,0,1,1,24",
    "B1,2026-03-19,0,1,0,23",
]


def test_a_log_of_candlings_becomes_the_same_tables(tmp_path):
    write_csv(
        tmp_path,
        [
            "batch,species,set_at,eggs_set,taken_off_at,hatched,incubator",
            "B1,hen,2026-03-01 12:00,30,2026-03-22 12:00,23,A",
        ],
    )
    read = hk.load_season(write_csv(tmp_path, LOG, name="candling.csv"))
    assert look_rows(read)[:4] == [
        ("candle1", 5, 2, 0, 0),
        ("candle2", 9, 1, 1, 0),
        ("candle3", 13, 0, 1, 1),
        ("transfer", 18, 0, 1, 0),
    ]
    batch = read.batches.iloc[0]
    assert (batch["clear1"], batch["dead2"], batch["dead3"], batch["removed"]) == (2, 1, 1, 1)
    assert batch["transfer_at"] == pd.Timestamp("2026-03-19 12:00", tz="UTC")
    assert (read.problems["severity"] == "note").all()


@pytest.mark.parametrize("second", ["0,0,0,21", "0,,0,21"])
def test_eggs_left_are_counted_after_what_the_batch_s_own_row_took_out(tmp_path, second):
    write_csv(
        tmp_path,
        [
            "batch,species,set_at,eggs_set,candle1_at,clear1,dead1,hatched",
            "B1,hen,2026-03-01 12:00,24,2026-03-08 12:00,2,1,21",
        ],
    )
    log = ["Batch,Date,Clear,Dead,Removed,Left", f"B1,2026-03-15,{second}"]
    read = hk.load_season(write_csv(tmp_path, log, name="candling.csv"))
    assert not read.problems["found"].str.contains("are said to be left|was not written").any()
    assert read.fates.groupby("fate")["eggs"].sum().to_dict() == {"clear": 2, "dead": 1, "hatched": 21}


def test_batches_of_one_name_are_told_apart_and_a_name_of_its_own_is_kept(tmp_path):
    rows = [f"{name},hen,2026-03-0{day} 12:00,20,15" for day, name in enumerate(["A", "A (2)", "A"], start=1)]
    read = hk.load_season(write_csv(tmp_path, ["batch,species,set_at,eggs_set,hatched", *rows]))
    names = read.batches["batch"].tolist()
    assert names[1] == "A (2)" and len(set(names)) == 3
    assert "2026-03-01" in names[0] and "2026-03-03" in names[2]
    assert read.batches["name"].tolist() == ["A", "A (2)", "A"]


def test_a_log_in_disorder_with_days_names_and_one_count_left_out(tmp_path):
    write_csv(tmp_path, ["batch,species,set_at,eggs_set,hatched", "B1,duck,2026-03-01 12:00,30,20"])
    lines = [
        "Batch;Incubation day;Which;Clears;Quitters;Removed;Eggs left",
        "B1;24;lockdown;0;2;0;24",
        "B1;9;candling;3;;0;26",
        "B1;;take off;;;;",
    ]
    read = hk.load_season(write_csv(tmp_path, lines, name="looks.csv"))
    assert look_rows(read)[:2] == [("candle1", 9, 3, 1, 0), ("transfer", 24, 0, 2, 0)]
    assert read.looks["name"].tolist() == ["candle1", "transfer", "hatch"]


def test_a_log_that_does_not_add_up_and_one_without_a_date_are_named(tmp_path):
    write_csv(tmp_path, ["batch,species,set_at,eggs_set,hatched", "B1,hen,2026-03-01 12:00,30,20"])
    lines = [LOG[0], "B1,2026-03-08,2,1,0,28", "B1,,1,0,0,26"]
    read = hk.load_season(write_csv(tmp_path, lines, name="candling.csv"))
    # The row without a date is no part of the look on 8 March, and 28 eggs left are not the 27 that remain.
    first = read.looks.iloc[0]
    assert (first["clear"], first["dead"]) == (2, 1)
    told_rows = set(read.problems.loc[read.problems["file"] == "candling.csv", "row"])
    assert told_rows == {2, 3}


def test_log_and_columns_of_one_look_are_one_and_a_disagreement_is_named(tmp_path):
    tidy_season(tmp_path)
    read = hk.load_season(write_csv(tmp_path, [LOG[0], "B1,2026-03-08,3,2,0,"], name="candling.csv"))
    assert read.looks["name"].tolist() == ["candle1", "transfer", "hatch"]
    # One look told twice is not two looks: three clears stay three; that 2 and 1 are said to have died is told.
    assert read.batches["clear1"].tolist() == [3] and read.batches["dead1"].iloc[0] in (1, 2)
    doubts = read.problems[read.problems["severity"] == "doubtful"]
    assert len(doubts) == 1 and doubts["row"].tolist() == [2]
