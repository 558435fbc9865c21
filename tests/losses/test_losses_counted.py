"""A blank is not a nought: what was not counted is not known, and its eggs leave the denominators."""

import math

import pytest
from tiny_season import tiny_season

from hatchkit.findings import more_losses
from hatchkit.losses.bad_luck import bad_luck
from hatchkit.losses.breakdown import breakdown
from hatchkit.losses.clears import clears
from hatchkit.losses.counted import counted
from hatchkit.losses.season_chart import season_chart
from hatchkit.losses.windows import candling_windows, left_out
from hatchkit.problems import HatchkitError

#: Candled and closed; candled, the look at the clears lost; never candled at all.
GOOD = dict(batch="good", flock="a", eggs_set=40, day1=7, clear1=4, dead1=1, hatched=30, culled=0, pipped_dead=0,
            dead_in_shell=5)  # fmt: skip
SMUDGED = dict(batch="smudged", flock="a", eggs_set=14, day1=9, dead1=1, hatched=5)
AWAY = dict(batch="away", flock="b", eggs_set=10, hatched=4)


def three():
    return tiny_season([GOOD, SMUDGED, AWAY])


def test_what_was_counted_of_each_batch():
    kept = counted(three())
    assert kept["good"].kinds == {"hatched", "culled", "clear", "dead", "pipped_dead", "removed"}
    assert kept["smudged"].kinds == {"hatched"} and kept["smudged"].looks == {"candle1"}
    assert kept["away"].kinds == {"hatched"} and not kept["away"].looks


def test_a_written_nought_is_a_count_and_a_blank_is_not():
    nought = counted(tiny_season([dict(AWAY, day1=7, clear1=0, dead1=0, dead_in_shell=0, pipped_dead=0)]))["away"]
    assert nought.stage("clear") and nought.stage("late") and nought.stage("pipped_dead")
    blank = counted(tiny_season([dict(AWAY, day1=7, pipped_dead=0)]))["away"]
    assert blank.stage("pipped_dead") and not blank.stage("clear") and not blank.stage("late")


def test_unhatched_eggs_that_nobody_opened_or_candled_do_not_prove_that_none_was_clear():
    shut = tiny_season([dict(batch=1, eggs_set=30, hatched=20, dead_in_shell=10)])
    assert not counted(shut)["1"].stage("clear")
    assert clears(shut)["set"].isna().all()
    opened = dict(hatched=20, dead_in_shell=10, broken_late=8, broken_early=2)
    assert counted(tiny_season([dict(batch=1, eggs_set=30, **opened)]))["1"].stage("clear")


def test_an_egg_sheet_with_every_egg_counts_each_look_that_it_marks():
    eggs = [dict(batch="1", egg=str(n), candle1="alive", transfer="alive", outcome="hatched") for n in range(9)]
    eggs.append(dict(batch="1", egg="10", candle1="alive", transfer="alive"))
    kept = counted(tiny_season([dict(batch=1, eggs_set=10, day1=7, day3=18)], eggs=eggs))["1"]
    assert kept.looks == {"candle1", "transfer", "hatch"} and kept.stage("clear") and kept.stage("late")


def test_a_batch_whose_clears_were_not_counted_has_no_fertility_and_its_eggs_are_named():
    table = clears(three(), by="flock").set_index("flock")
    assert (table.loc["a", "set"], table.loc["a", "clear"], table.loc["a", "uncounted"]) == (40, 4, 14)
    assert table.loc["b", ["set", "candled_fertile", "fertile_most"]].isna().all()
    assert table.loc["a", "candled_fertile"] == pytest.approx(0.9)
    assert table["uncounted_in"].tolist() == ["smudged", "away"]


def test_the_share_of_eggs_not_clear_is_not_known_where_the_clears_are_not():
    table = breakdown(three()).set_index(["batch", "stage"])
    assert table.loc[("good", "hatched"), "share_of_fertile"] == pytest.approx(30 / 36)
    for batch in ("smudged", "away"):
        assert table.loc[(batch, "hatched"), ["fertile", "share_of_fertile"]].isna().all()
    whole = breakdown(three(), by=None)
    hatched = whole.set_index("stage").loc["hatched"]
    assert (hatched["set"], hatched["fertile"]) == (64, 36)
    assert hatched["share_of_fertile"] == pytest.approx(30 / 36)
    assert more_losses.not_counted(whole)[0].facts == dict(batches=["smudged", "away"], eggs=24)


def test_a_stage_counted_in_some_batches_is_a_least_without_interval_and_in_none_is_not_known():
    table = breakdown(three(), by=None).set_index("stage")
    clear = table.loc["clear"]
    assert (clear["eggs"], clear["set"], clear["uncounted"]) == (4, 64, 24)
    assert clear["share_of_set"] == pytest.approx(4 / 64) and math.isnan(clear["share_of_set_low"])
    away = breakdown(three()).set_index(["batch", "stage"]).loc["away"]
    assert away.loc[["clear", "late", "pipped_dead", "culled"], "eggs"].isna().all()
    assert away.loc["unaccounted", "eggs"] == 6 and away["eggs"].sum() == 10
    least = [one.facts for one in more_losses.not_counted(breakdown(three(), by=None)) if one.code == "lost_uncounted"]
    assert "culled" in least[0]["stages"] and least[0]["batches"] == ["smudged", "away"] and not least[0]["all"]


def test_a_look_without_a_count_is_not_known_and_leaves_the_denominator():
    season = tiny_season([GOOD, dict(AWAY, day1=7, clear1=1, day3=18), SMUDGED])
    looks = breakdown(season, by=None, stages="candling").set_index("stage")
    assert (looks.loc["candle1", "eggs"], looks.loc["candle1", "set"], looks.loc["candle1", "uncounted"]) == (2, 54, 10)
    assert (looks.loc["hatch", "eggs"], looks.loc["hatch", "set"]) == (5, 40)
    assert looks.loc["transfer", ["eggs", "set", "share_of_set"]].isna().all()


def test_dead_that_nobody_counted_after_the_hatch_are_not_none():
    windows = candling_windows(three()).set_index(["batch", "name"])
    assert windows.loc[("good", "hatch"), "died"] == 5
    assert windows.loc[[("smudged", "hatch"), ("away", "hatch")], "died"].isna().all()
    assert windows.loc[("smudged", "candle1"), "died"] == 1
    assert math.isnan(windows.loc[("smudged", "candle1"), "clear"])
    assert windows.loc[("good", "candle1"), "at_risk"] == 36
    assert windows.loc[[("smudged", "candle1"), ("away", "hatch")], "at_risk"].isna().all()
    # Only the pipped were counted: the rest of the dead may be among the eggs nobody can account for.
    pipped = candling_windows(tiny_season([dict(AWAY, pipped_dead=2)]))
    assert pipped["died"].isna().all()


def test_eggs_nobody_can_account_for_stay_among_the_living_of_each_window():
    # 42 set, 6 clear and 2 dead at the candling: 34 went on, whatever became of them.
    season = tiny_season([dict(batch=1, eggs_set=42, day1=7, clear1=6, dead1=2, hatched=17, dead_in_shell=4)])
    assert candling_windows(season)[["at_risk", "died"]].to_numpy().tolist() == [[36, 2], [34, 4]]


def test_what_to_expect_comes_only_from_batches_that_counted_the_stage():
    # Two of the geese were never candled: nothing says how many clears to expect.
    rows = [dict(GOOD, batch="g1", clear1=12, hatched=22), SMUDGED, AWAY]
    table = bad_luck(tiny_season(rows))
    clear = table[table["stage"] == "clear"]
    assert clear["batch"].tolist() == ["g1"] and clear["others"].tolist() == [0] and clear["chance"].isna().all()
    chicks = table[table["stage"] == "hatched"]
    assert chicks["others"].tolist() == [2, 2, 2]
    left = [one.facts for one in more_losses.luck(table) if one.code == "luck_uncounted"]
    assert "clear" in left[0]["stages"] and left[0]["batches"] == ["smudged", "away"]


def test_the_season_chart_names_what_it_leaves_out():
    hens = [dict(GOOD, batch=n) for n in range(5)]
    season = tiny_season([*hens, dict(AWAY, day1=7, clear1=2), dict(GOOD, batch="d", species="duck")])
    table = season_chart(season, draws=99)
    assert len(table) == 5
    said = {one.code: one.facts for one in more_losses.course(table)}
    assert said["course_uncounted"]["batches"] == ["away"]
    assert said["course_others"]["kinds"][0].facts == dict(species="duck", batches=1)
    with pytest.raises(HatchkitError, match="No finished batch has a full count of late dead"):
        season_chart(tiny_season([AWAY]))


def test_one_disaster_among_few_batches_leaves_no_limits_and_says_so():
    rows = [dict(GOOD, batch=n, hatched=30 - bad, dead_in_shell=5 + bad) for n, bad in enumerate((0, 1, 28, 0, 1))]
    assert more_losses.course(season_chart(tiny_season(rows), draws=99))[0].facts["limits"] == "none"


def test_records_that_exceed_the_eggs_set_are_given_as_reason_and_shown_as_written():
    season = tiny_season([GOOD, dict(batch="over", eggs_set=20, day1=7, clear1=2, hatched=25)])
    assert left_out(season).to_numpy().tolist() == [["over", "counts", 27, 20]]
    over = breakdown(season).set_index(["batch", "stage"]).loc["over"]
    assert (over.loc["hatched", "eggs"], over.loc["hatched", "set"]) == (25, 20)
    assert over.drop(index="hatched")["eggs"].isna().all() and over["share_of_set"].isna().all()
    assert more_losses.not_counted(breakdown(season, by=None))[-1].code == "left_out_counts"


def test_a_batch_without_any_record_or_without_its_chicks_says_so():
    season = tiny_season(
        [dict(batch="new", eggs_set=20, taken_off_day=None), dict(batch="half", eggs_set=20, dead_in_shell=3)]
    )
    assert left_out(season)[["batch", "why"]].to_numpy().tolist() == [["new", "nothing"], ["half", "chicks"]]
    table = breakdown(season).set_index(["batch", "stage"])
    assert table.loc[[("new", "hatched"), ("half", "hatched")], "eggs"].isna().all()


def test_whether_eggs_nobody_can_account_for_were_moved_to_hatch_is_not_known():
    moved = dict(GOOD, day3=18, hatched=27)
    table = breakdown(tiny_season([moved])).set_index("stage")
    assert table.loc["unaccounted", "eggs"] == 3 and math.isnan(table.loc["unaccounted", "share_of_transferred"])
    assert table.loc["hatched", "share_of_transferred"] == pytest.approx(27 / 35)
    closed = breakdown(tiny_season([dict(GOOD, day3=18)])).set_index("stage")
    assert closed.loc["unaccounted", "share_of_transferred"] == 0


def test_a_take_off_before_the_setting_puts_the_end_at_the_usual_length():
    season = tiny_season([dict(GOOD, taken_off_day=-19)])
    assert candling_windows(season)["day_end"].tolist() == [7, 21]
    assert season.problems["facts"].iloc[0]["looks"] == ["hatch"]
