"""Clears: a range for fertility when none were opened, an estimate when some were."""

import math

import pytest
from tiny_season import tiny_season

from hatchkit.losses.clears import clears, true_infertile
from hatchkit.problems import HatchkitError


def test_unopened_clears_leave_a_range():
    table = clears(tiny_season([dict(batch=1, eggs_set=40, day1=7, clear1=8, dead1=1, hatched=31)]))
    row = table.iloc[0]
    assert (row["clear"], row["opened"]) == (8, 0)
    assert (row["fertile_least"], row["fertile_most"]) == (pytest.approx(0.8), 1.0)
    assert math.isnan(row["fertile"])


def test_opened_clears_of_egg_rows_give_an_estimate_with_an_interval():
    eggs = [dict(batch="1", egg=str(n), candle1="clear", outcome="infertile" if n < 6 else "dead") for n in range(8)]
    season = tiny_season([dict(batch=1, eggs_set=60, day1=7, clear1=16, dead1=2, hatched=42)], eggs=eggs)
    row = clears(season).iloc[0]
    assert (row["clear"], row["opened"], row["opened_dead"]) == (16, 8, 2)
    assert row["fertile"] == pytest.approx(1 - 16 / 60 * 6 / 8)
    assert row["fertile_low"] < row["fertile_least"] < row["fertile"] < row["fertile_high"] < 1


def test_opened_clears_of_counts_are_found_too():
    season = tiny_season(
        [
            dict(
                batch=1,
                eggs_set=48,
                day1=7,
                clear1=6,
                dead1=3,
                hatched=36,
                dead_in_shell=3,
                broken_infertile=4,
                broken_early=2,
            )
        ]
    )
    row = clears(season).iloc[0]
    assert (row["clear"], row["opened"], row["opened_dead"]) == (6, 6, 2)
    assert row["fertile"] == pytest.approx(44 / 48)


def test_clears_of_the_egg_sheet_that_nobody_opened_are_no_sample():
    marks = [("clear", "clear")] * 3 + [("clear", "infertile"), (None, "clear")] + [("alive", "hatched")] * 7
    eggs = [dict(batch="1", egg=str(n), candle1=mark, outcome=end) for n, (mark, end) in enumerate(marks)]
    table = clears(tiny_season([dict(batch=1, eggs_set=12, day1=7)], eggs=eggs))
    row = table.iloc[0]
    assert (row["clear"], row["opened"], row["opened_dead"], row["infertile_at_hatch"]) == (5, 1, 0, 0)
    assert (row["fertile_least"], row["fertile_most"]) == (pytest.approx(7 / 12), pytest.approx(11 / 12))


def test_groups_and_no_clears_at_all():
    season = tiny_season(
        [
            dict(batch=1, flock="a", eggs_set=12, hatched=12),
            dict(batch=2, flock="b", eggs_set=12, day1=7, clear1=3, dead1=0, hatched=9),
        ]
    )
    table = clears(season, by="flock").set_index("flock")
    assert table.loc["a", "fertile"] == 1 and table.loc["a", "fertile_low"] < 0.8
    assert math.isnan(table.loc["b", "fertile"])
    assert clears(season, by="batch")["batch"].tolist() == ["1", "2"]
    with pytest.raises(HatchkitError):
        clears(season, by="moon")


def test_a_larger_sample_of_opened_clears_is_surer():
    small, large = true_infertile(300, 60, 10, 2), true_infertile(300, 60, 50, 10)
    assert small.share == pytest.approx(large.share)
    assert large.high - large.low < small.high - small.low


@pytest.mark.parametrize("counts", [(30, 40, 5, 1), (30, 10, 0, 0), (30, 10, 12, 1), (30, 10, 5, 6)])
def test_impossible_samples_are_refused(counts):
    with pytest.raises(HatchkitError):
        true_infertile(*counts)


def test_batches_that_differ_make_fertility_less_sure_than_batches_alike():
    def fertile(*barren):
        return clears(
            tiny_season(
                [
                    dict(batch=number, eggs_set=40, day1=7, clear1=0, dead1=0, hatched=40 - eggs, broken_infertile=eggs)
                    for number, eggs in enumerate(barren)
                ]
            )
        ).iloc[0]

    alike, unlike = fertile(8, 8, 8, 8), fertile(1, 15, 2, 14)
    assert alike["fertile"] == pytest.approx(unlike["fertile"]) == pytest.approx(0.8)
    width = [row["fertile_high"] - row["fertile_low"] for row in (alike, unlike)]
    assert width[1] > 1.5 * width[0]
