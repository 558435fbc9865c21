"""Candling windows and what is left out of rates."""

import math

from tiny_season import tiny_season

from hatchkit.losses.windows import candling_windows, left_out


def test_windows_count_those_at_risk_and_the_dead_of_each():
    season = tiny_season(
        [
            dict(
                batch=1,
                eggs_set=48,
                day1=7,
                clear1=5,
                dead1=2,
                day2=14,
                dead2=1,
                day3=18,
                dead3=1,
                hatched=34,
                culled=1,
                pipped_dead=1,
                dead_in_shell=4,
            )
        ]
    )
    table = candling_windows(season)
    assert table["name"].tolist() == ["candle1", "candle2", "transfer", "hatch"]
    assert table["at_risk"].tolist() == [43, 41, 40, 39]
    assert table["died"].tolist() == [2, 1, 1, 5]
    assert table["clear"].tolist() == [5, 0, 0, 0]
    assert table["day_start"].tolist() == [0, 7, 14, 18] and table["day_end"].tolist() == [7, 14, 18, 21.5]
    assert str(table["start"].iloc[1]) == "2025-03-08 08:00:00+00:00"


def test_the_dead_and_the_survivors_of_all_windows_are_the_fertile():
    season = tiny_season(
        [dict(batch=1, eggs_set=40, day1=7, dead1=3, clear1=2, day3=18, dead3=2, hatched=30, dead_in_shell=3)]
    )
    table = candling_windows(season)
    assert table["at_risk"].iloc[0] == table["died"].sum() + 30


def test_an_egg_opened_as_early_dead_belongs_to_the_first_window():
    season = tiny_season([dict(batch=1, eggs_set=20, day1=8, dead1=0, hatched=19, broken_early=1)])
    assert candling_windows(season)["died"].tolist() == [1, 0]


def test_dead_that_were_not_counted_are_missing_not_nought():
    season = tiny_season([dict(batch=1, eggs_set=20, day1=7, clear1=2, hatched=15)])
    table = candling_windows(season)
    assert math.isnan(table["died"].iloc[0])
    whole = tiny_season([dict(batch=1, eggs_set=20, day1=7, clear1=5, hatched=15)])
    assert candling_windows(whole)["died"].tolist() == [0, 0]


def test_an_unfinished_batch_gives_only_the_windows_that_are_closed():
    season = tiny_season(
        [
            dict(batch=1, eggs_set=30, day1=7, dead1=3, clear1=2, taken_off_day=None),
            dict(batch=2, eggs_set=30, hatched=41),
        ]
    )
    table = candling_windows(season)
    assert table[["batch", "name", "at_risk", "died"]].to_numpy().tolist() == [["1", "candle1", 28, 3]]
    assert left_out(season)[["batch", "why"]].to_numpy().tolist() == [["1", "hatch"], ["2", "counts"]]


def test_a_batch_in_which_all_died_is_finished():
    season = tiny_season([dict(batch=1, eggs_set=12, day1=7, dead1=12, taken_off_day=None)])
    assert left_out(season).empty
    assert candling_windows(season)["died"].tolist() == [12, 0]
