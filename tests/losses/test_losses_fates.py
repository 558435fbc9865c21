"""Fates from counts, egg rows and breakout stages; they add up to the eggs set whatever the records say."""

import math

import pandas as pd
import pytest
from tiny_season import tiny_season

from hatchkit.losses.stages import age_from_look


def fates(season, batch="1"):
    part = season.fates[season.fates["batch"] == batch]
    return [(row.fate, row.eggs, row.after_day, row.by_day, row.found_at) for row in part.itertuples()]


def test_counts_of_a_hen_batch_become_intervals_between_the_looks():
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
    found = fates(season)
    assert ("dead", 2, 0.0, 7.0, "candle1") in found
    assert ("dead", 1, 7.0, 14.0, "candle2") in found
    assert ("dead", 1, 14.0, 18.0, "transfer") in found
    assert ("dead", 4, 18.0, 21.5, "hatch") in found
    assert ("pipped_dead", 1, 19.5, 21.5, "hatch") in found
    assert ("clear", 5, 0.0, 7.0, "candle1") in found
    chicks = {fate: eggs for fate, eggs, *_ in found if fate in ("hatched", "culled")}
    assert chicks == {"hatched": 33, "culled": 1}
    assert season.fates["eggs"].sum() == 48
    assert season.problems.empty


def test_eggs_opened_at_take_off_are_narrowed_by_their_stage():
    season = tiny_season(
        [dict(batch=1, eggs_set=20, day1=8, dead1=0, hatched=13, broken_early=1, broken_mid=2, broken_late=4)]
    )
    dead = [row[1:4] for row in fates(season) if row[0] == "dead"]
    # Early reaches back before the look at day 8, at which the dead egg was passed over.
    assert dead == [(1, 0.0, 7.0), (2, 8.0, 14.0), (4, 14.0, 21.5)]


def test_what_the_records_do_not_explain_is_unaccounted_with_a_problem():
    season = tiny_season([dict(batch=1, eggs_set=24, hatched=15, dead_in_shell=6)])
    assert ("unaccounted", 3) in [row[:2] for row in fates(season)]
    row = season.problems.iloc[0]
    assert row["severity"] == "doubtful" and row["row"] == 2
    assert row["code"] == "eggs_unexplained" and row["facts"] == dict(batch="1", told=21, set=24, lost=3)


def test_far_more_chicks_than_eggs_set_leaves_the_batch_out_and_says_where():
    season = tiny_season(
        [dict(batch=1, eggs_set=30, hatched=41), dict(batch=2, eggs_set=30, hatched=28, dead_in_shell=2)]
    )
    assert fates(season) == [("unaccounted", 30, 0.0, pytest.approx(math.nan, nan_ok=True), "")]
    assert season.problems["severity"].tolist() == ["lost"]
    facts = season.problems["facts"].iloc[0]
    assert (facts["told"], facts["kinds"], facts["eggs"]) == (41, ["hatched"], [41])
    assert season.problems["row"].iloc[0] == 2
    assert season.fates.loc[season.fates["batch"] == "2", "eggs"].sum() == 30


def test_one_egg_too_many_is_a_doubt_and_the_batch_stays_in():
    season = tiny_season([dict(batch=1, eggs_set=30, hatched=24, dead_in_shell=7)])
    assert [(row[0], row[1]) for row in fates(season)] == [("hatched", 24), ("dead", 7)]
    assert season.problems["code"].tolist() == ["too_many_eggs"]
    facts = season.problems["facts"].iloc[0]
    assert (facts["told"], facts["set"], facts["excess"]) == (31, 30, 1)


#: 36 eggs set, 37 told of: 6 clear, 5 dead at the second look, 5 in the shell, 21 chicks.
SLIP = dict(eggs_set=36, day1=8, clear1=6, dead1=0, day2=18, dead2=5, hatched=21, dead_in_shell=5)


def test_a_count_too_many_stays_as_written_and_its_share_reaches_from_all_told_of_to_the_eggs_set():
    from hatchkit.losses.breakdown import breakdown
    from hatchkit.losses.proportions import interval, told_share

    season = tiny_season([dict(batch=1, **SLIP), dict(batch=2, eggs_set=20, hatched=18, dead_in_shell=2)])
    table = breakdown(season).set_index(["batch", "stage"])
    written = {"hatched": 21, "clear": 6, "removed": 0, "unaccounted": 0}
    assert {stage: table.loc[("1", stage), "eggs"] for stage in written} == written
    assert table.loc["1"]["eggs"].sum() == 37
    chicks, clear = table.loc[("1", "hatched")], table.loc[("1", "clear")]
    assert (chicks["set"], chicks["fertile"], chicks["excess"]) == (36, 30, 1)
    assert chicks["share_of_set"] == pytest.approx(21 / 36)
    assert chicks["share_of_set_low"] == pytest.approx(interval(21, 37)[0])
    assert chicks["share_of_set_high"] == pytest.approx(interval(21, 36)[1])
    assert told_share(clear["eggs"], clear["set"], clear["excess"]) == pytest.approx((6 / 37, 6 / 36))
    assert table.loc[("2", "hatched"), "excess"] == 0
    whole = breakdown(season, by=None).set_index("stage").loc["hatched"]
    assert (whole["eggs"], whole["set"], whole["excess"]) == (39, 56, 1)


def test_more_chicks_than_eggs_by_one_make_no_share_above_one_and_nothing_negative():
    from hatchkit.losses.bad_luck import bad_luck
    from hatchkit.losses.breakdown import breakdown
    from hatchkit.losses.proportions import told_share
    from hatchkit.losses.season_chart import season_chart

    rows = [dict(batch=1, eggs_set=30, hatched=31), dict(batch=2, eggs_set=30, hatched=20, dead_in_shell=10)]
    season = tiny_season(rows)
    table = breakdown(season)
    shares = table[[name for name in table if name.startswith("share_of")]].stack().dropna()
    assert shares.between(0, 1).all()
    assert told_share(31, 30, 1) == (1.0, 1.0)
    assert season_chart(season, "hatched")["share"].max() == 1.0
    assert bad_luck(season)["eggs"].max() <= 30


def test_of_a_batch_with_an_egg_too_many_all_that_died_were_at_risk():
    from hatchkit.losses.death_age import age_at_death
    from hatchkit.losses.windows import candling_windows

    season = tiny_season([dict(batch=1, **SLIP)])
    windows = candling_windows(season)
    # By what was written 31 embryos lived on day 0: 5 died before day 18, 5 after, 21 hatched.
    assert windows["at_risk"].tolist() == [31, 31, 26] and windows["died"].tolist() == [0, 5, 5]
    fits = age_at_death(season, draws=5).fits.iloc[0]
    assert (fits["eggs"], fits["deaths"]) == (31, 10)


def test_no_chick_of_thirty_eggs_is_a_result_and_no_gap():
    from hatchkit.losses.windows import left_out

    season = tiny_season([dict(batch=1, eggs_set=30, hatched=0)])
    assert fates(season)[0][:2] == ("unaccounted", 30) and left_out(season).empty


@pytest.mark.parametrize(
    ("counts", "dead", "infertile"),
    [
        (dict(hatched=40, dead_in_shell=8, broken_infertile=2, broken_late=6), 6, 2),
        (dict(hatched=40, dead_in_shell=6, broken_early=2, broken_late=4), 8, 0),
        (dict(hatched=40, dead_in_shell=2, broken_mid=6), 8, 0),
    ],
)
def test_dead_in_shell_and_opened_eggs_are_read_the_way_that_closes(counts, dead, infertile):
    season = tiny_season([dict(batch=1, eggs_set=48, day1=7, dead1=0, **counts)])
    sums = season.fates.groupby("fate")["eggs"].sum()
    assert sums["dead"] == dead and sums.get("infertile", 0) == infertile
    assert sums.sum() == 48 and "unaccounted" not in sums
    assert season.problems["severity"].tolist() == ["note"]


def test_opened_clears_are_recognised_when_only_that_closes():
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
    found = fates(season)
    assert (
        "infertile",
        4,
        pytest.approx(math.nan, nan_ok=True),
        pytest.approx(math.nan, nan_ok=True),
        "candle1",
    ) in found
    assert ("dead", 2, 0.0, 7.0, "candle1") in found
    assert not any(row[0] == "clear" for row in found)


def test_rotten_eggs_left_in_to_the_end_explain_eggs_that_are_missing():
    season = tiny_season([dict(batch=1, eggs_set=20, hatched=17, dead_in_shell=1, contaminated=2)])
    assert ("removed", 2) in [row[:2] for row in fates(season)]
    assert season.problems.empty


def test_a_batch_still_in_the_incubator_keeps_its_eggs_open():
    season = tiny_season([dict(batch=1, eggs_set=30, day1=7, dead1=3, clear1=2, taken_off_day=None)])
    assert fates(season)[-1][:3] == ("unaccounted", 25, 7.0)
    assert season.problems["severity"].tolist() == ["note"]


def test_a_look_without_a_date_gets_the_usual_day_and_a_note():
    season = tiny_season([dict(batch=1, eggs_set=10, dead1=1, hatched=9)])
    assert ("dead", 1, 0.0, 7.0, "candle1") in fates(season)
    assert season.problems["code"].iloc[0] == "look_day_taken" and season.problems["facts"].iloc[0]["day"] == 7


def test_taken_off_before_the_last_look_is_a_doubt_and_not_a_crash():
    season = tiny_season([dict(batch=1, eggs_set=10, day1=7, dead1=1, day3=18, dead3=0, taken_off_day=12, hatched=9)])
    assert season.fates["eggs"].sum() == 10
    assert season.problems["code"].iloc[0] == "off_before_look"


@pytest.mark.parametrize("looks", [0, 1, 5])
def test_any_number_of_candlings_works(looks):
    days = [4, 7, 10, 14, 17][:looks]
    rows = [
        dict(batch="1", look=n + 1, name=f"candle{n + 1}", looked_at=pd.NaT, day=day, clear=0, dead=1, removed=0)
        for n, day in enumerate(days)
    ]
    season = tiny_season([dict(batch=1, eggs_set=12, hatched=12 - looks)], looks=rows)
    assert season.fates["eggs"].sum() == 12
    dead = season.fates[season.fates["fate"] == "dead"]
    assert list(zip(dead["after_day"], dead["by_day"], strict=True)) == list(zip([0, *days], days, strict=False))


def egg(number, **marks):
    return dict(batch="1", egg=str(number), **marks)


def test_egg_rows_win_over_counts_and_a_disagreement_is_a_problem():
    eggs = [
        egg(1, candle1="alive", outcome="hatched"),
        egg(2, candle1="dead"),
        egg(3, candle1="clear"),
        egg(4, candle1="alive", outcome="pipped_dead"),
    ]
    season = tiny_season([dict(batch=1, eggs_set=4, day1=7, clear1=1, dead1=0, hatched=2, pipped_dead=1)], eggs=eggs)
    assert season.fates.set_index("egg")["fate"].to_dict() == {
        "1": "hatched",
        "2": "dead",
        "3": "clear",
        "4": "pipped_dead",
    }
    assert season.problems["facts"].iloc[0] == dict(
        batch="1", kinds=["dead@look1", "hatched"], counts=[0, 2], rows=[1, 1]
    )


def test_eggs_without_rows_are_filled_by_the_counts():
    eggs = [egg(1, candle1="alive", outcome="hatched"), egg(2, candle1="dead"), egg(3)]
    season = tiny_season(
        [dict(batch=1, eggs_set=20, day1=7, clear1=2, dead1=3, hatched=14, dead_in_shell=1)], eggs=eggs
    )
    sums = season.fates.groupby("fate")["eggs"].sum().to_dict()
    assert sums == {"hatched": 14, "dead": 4, "clear": 2}
    assert season.problems.empty


def test_the_look_of_a_hen_embryo_narrows_its_interval():
    eggs = [egg(1, candle1="alive", outcome="dead", stage_day=12), egg(2, candle1="alive", outcome="hatched")]
    season = tiny_season([dict(batch=1, eggs_set=2, day1=7)], eggs=eggs)
    assert fates(season)[0] == ("dead", 1, 11.5, 12.5, "hatch")


def test_a_stage_that_contradicts_the_candling_is_a_problem_and_covers_both():
    eggs = [egg(1, candle1="alive", outcome="dead", stage_day=3), egg(2, candle1="dead", stage_day=12)]
    season = tiny_season([dict(batch=1, eggs_set=2, day1=7)], eggs=eggs)
    first, second = fates(season)
    assert first[2:4] == (2.5, 21.5)
    assert second[2:4] == (0.0, 7.0)
    assert len(season.problems) == 2 and season.problems["severity"].eq("doubtful").all()


def test_a_duck_embryo_keeps_the_allowance_of_three_days():
    assert age_from_look(12, "duck", 28) == (9, 15)
    assert age_from_look(27, "duck", 28) == (24, math.inf)
    assert age_from_look(10, "chicken", 21) == (9.5, 11)
    assert age_from_look(10.25, "chicken", 21) == (9.75, 10.75)


def test_an_opened_clear_shows_whether_it_was_infertile():
    eggs = [
        egg(1, candle1="clear", outcome="infertile"),
        egg(2, candle1="clear", outcome="dead", stage_day=2),
        egg(3, candle1="clear"),
    ]
    season = tiny_season([dict(batch=1, eggs_set=3, day1=7)], eggs=eggs)
    rows = fates(season)
    assert [row[0] for row in rows] == ["infertile", "dead", "clear"]
    assert rows[1][2:] == (1.5, 2.5, "candle1")


def test_an_egg_called_clear_at_the_end_was_not_opened():
    eggs = [
        egg(1, candle1="clear", outcome="clear"),
        egg(2, outcome="clear"),
        egg(3, candle1="dead", outcome="clear"),
        egg(4, candle1="alive", outcome="clear"),
    ]
    season = tiny_season([dict(batch=1, eggs_set=4, day1=7)], eggs=eggs)
    assert [(row[0], row[4]) for row in fates(season)] == [
        ("clear", "candle1"),
        ("clear", "hatch"),
        ("dead", "candle1"),
        ("dead", "hatch"),
    ]
    assert season.problems["code"].iloc[0] == "egg_seen_alive"
    assert season.problems["facts"].iloc[0] == dict(batch="1", egg="4", day=7, outcome="clear")


@pytest.mark.parametrize("word", ["clear", "c", "clr", "klar", "no development"])
def test_words_for_clear_in_the_egg_sheet_are_not_read_as_opened(word):
    from hatchkit.records.sheets.entries import fate_of

    assert fate_of(word, None).fate == "clear" and fate_of("infertile", "en").fate == "infertile"


def test_contradicting_marks_of_one_egg_are_doubts():
    eggs = [egg(1, candle1="dead", outcome="hatched"), egg(2, candle1="alive", outcome="infertile")]
    season = tiny_season([dict(batch=1, eggs_set=2, day1=7)], eggs=eggs)
    assert [row[0] for row in fates(season)] == ["hatched", "dead"]
    assert set(season.problems["code"]) == {"egg_outcome_differs", "egg_seen_alive"}


def test_more_egg_rows_than_eggs_set_leaves_the_batch_out():
    season = tiny_season(
        [dict(batch=1, eggs_set=1, day1=7)], eggs=[egg(1, outcome="hatched"), egg(2, outcome="hatched")]
    )
    assert season.problems["code"].tolist() == ["rows_beyond_set"]
    assert fates(season)[0][:2] == ("unaccounted", 1)


def test_a_batch_without_eggs_set_has_no_fates_and_a_problem():
    season = tiny_season([dict(batch=1, eggs_set=pd.NA, hatched=3), dict(batch=2, eggs_set=5, hatched=5)])
    assert set(season.fates["batch"]) == {"2"}
    assert season.problems["code"].tolist() == ["eggs_set_missing"]


def test_more_culled_than_hatched_is_a_doubt():
    season = tiny_season([dict(batch=1, eggs_set=10, hatched=3, culled=4, dead_in_shell=6)])
    assert season.fates.groupby("fate")["eggs"].sum().to_dict() == {"culled": 4, "dead": 6}
    assert season.problems["code"].iloc[0] == "culled_beyond_hatched"


def test_an_unknown_kind_of_bird_still_gets_its_fates():
    season = tiny_season([dict(batch=1, eggs_set=10, species="dodo", taken_off_day=None, hatched=8, dead_in_shell=2)])
    assert ("dead", 2, 0.0, 21.0, "hatch") in fates(season)


def test_a_transfer_without_a_count_is_no_look():
    """Eggs that were moved on day 18 may have been dead since the candling on day 7; a nought says that they lived."""
    common = dict(eggs_set=20, day1=7, dead1=0, day3=18, hatched=15, dead_in_shell=5)
    season = tiny_season([dict(batch=1, **common), dict(batch=2, dead3=0, **common)])
    dead = season.fates[season.fates["fate"] == "dead"]
    assert dict(zip(dead["batch"], dead["after_day"], strict=True)) == {"1": 7.0, "2": 18.0}
