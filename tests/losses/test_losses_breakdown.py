"""The breakdown: eggs, shares, intervals, stages, and what is shared out between them."""

import pytest
from tiny_season import tiny_season

from hatchkit.losses.breakdown import breakdown
from hatchkit.losses.proportions import interval
from hatchkit.losses.stages import limits_for, stage_of
from hatchkit.problems import HatchkitError

TWO = [
    dict(
        batch="a",
        flock="old",
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
    ),
    dict(batch="b", flock="young", eggs_set=24, day1=7, clear1=1, dead1=1, hatched=20, dead_in_shell=2),
]


def test_stages_come_in_the_order_of_the_ledger_and_add_up():
    table = breakdown(tiny_season(TWO))
    order = [
        "hatched",
        "culled",
        "clear",
        "infertile",
        "early",
        "mid",
        "late",
        "pipped_dead",
        "removed",
        "unaccounted",
    ]
    assert table["stage"].tolist() == order * 2
    assert table.groupby("batch")["eggs"].sum().tolist() == [48, 24]
    assert table.groupby("batch")["share_of_set"].sum().tolist() == pytest.approx([1, 1])


def test_one_batch_has_wilson_intervals_and_its_own_denominators():
    table = breakdown(tiny_season(TWO)).set_index(["batch", "stage"])
    late = table.loc[("a", "late")]
    assert (late["eggs"], late["set"], late["fertile"], late["transferred"]) == (5, 48, 43, 39)
    assert (late["share_of_set_low"], late["share_of_set_high"]) == interval(5, 48)
    # Of the transferred, only those that died after the transfer count.
    assert late["share_of_transferred"] == pytest.approx(4 / 39)
    assert table.loc[("b", "hatched")][["transferred", "share_of_transferred"]].isna().all()


def test_another_interval_can_be_chosen():
    table = breakdown(tiny_season(TWO), method="clopper_pearson").set_index(["batch", "stage"])
    late = table.loc[("a", "late")]
    assert (late["share_of_set_low"], late["share_of_set_high"]) == interval(5, 48, "clopper_pearson")


def test_the_whole_season_and_a_column_give_the_same_sums():
    season = tiny_season(TWO)
    whole = breakdown(season, by=None).set_index("stage")
    flocks = breakdown(season, by="flock")
    assert whole["season"].eq("all").all()
    assert flocks.groupby("stage")["eggs"].sum().to_dict() == pytest.approx(whole["eggs"].to_dict())
    assert whole["set"].eq(72).all() and whole["batches"].eq(2).all()


def test_a_missing_flock_is_named_and_an_unknown_column_is_refused():
    season = tiny_season([{**TWO[0], "flock": None}, TWO[1]])
    assert set(breakdown(season, by="flock")["flock"]) == {"not given", "young"}
    with pytest.raises(HatchkitError, match="no column 'breed'"):
        breakdown(season, by="breed")


def test_two_columns_at_once_are_refused_with_the_way_to_ask():
    from hatchkit.losses.clears import clears
    from hatchkit.losses.death_age import age_at_death

    season = tiny_season(TWO)
    for ask in (breakdown, clears, age_at_death):
        with pytest.raises(HatchkitError, match=r"one column at a time: by='flock', not by=\['flock', 'species'\]"):
            ask(season, by=["flock", "species"])
        with pytest.raises(HatchkitError, match="no column 'colour' .* for example, batch, species, flock and inc"):
            ask(season, by="colour")


def test_a_death_across_a_limit_is_shared_out_by_the_ages_at_death():
    season = tiny_season([TWO[0], dict(batch="c", eggs_set=24, hatched=20, dead_in_shell=4)])
    table = breakdown(season).set_index(["batch", "stage"])
    parts = table.loc["c"].loc[["early", "mid", "late"]]
    assert parts["eggs"].sum() == pytest.approx(4) and parts["seen"].sum() == 0
    # The other batch lost 2 early, 1 mid and 5 late; the four are shared in the same proportions.
    assert parts["shared_out"].tolist() == pytest.approx([1.0, 0.5, 2.5], abs=0.02)


def test_looks_a_few_hours_apart_do_not_draw_the_deaths_between_them():
    # True deaths about day 9. The estimate without a shape puts 20 of the 26 between day 6.9 and day 7.1.
    bad = dict(batch="bad", eggs_set=60, day1=6.9, clear1=3, dead1=2, day2=14, dead2=26, day3=18, dead3=1)
    ordinary = dict(eggs_set=48, day1=7.1, clear1=3, dead1=2, day2=14, day3=18, dead3=1, dead_in_shell=2)
    others = [dict(batch=n, dead2=n % 2, hatched=40 - n % 2, **ordinary) for n in range(4)]
    season = tiny_season([dict(bad, hatched=26, dead_in_shell=2), *others])
    found = breakdown(season).set_index(["batch", "stage"]).loc["bad"]
    assert found.loc[["early", "mid", "late"], "seen"].tolist() == [2, 0, 3]
    assert found.loc["early", "shared_out"] < 1.3 and found.loc["mid", "shared_out"] > 24.7
    assert found["eggs"].sum() == pytest.approx(60)
    # The rows of the other batches that cross day 7 go the same way: (0, 7.1] stays early.
    rest = breakdown(season).set_index(["batch", "stage"]).loc["0"]
    assert rest.loc["early", "eggs"] == pytest.approx(2, abs=0.2)


def test_deaths_known_narrowly_outweigh_the_published_shape():
    from hatchkit.losses.death_shape import smooth_shape

    # 20 of 30 opened embryos died about day 11, where the published shape expects next to nobody.
    share = smooth_shape([0, 10.5], [21.5, 11.5], [10, 20])
    assert share(13) - share(9) > 0.95
    # One narrow death does not draw 25 loosely known ones to itself.
    share = smooth_shape([6.5, 6.9], [7.5, 14], [1, 25])
    assert share(7.5) < 0.15


def test_shapes_keep_what_each_stretch_is_known_to_hold():
    from hatchkit.losses.death_shape import smooth_shape

    share = smooth_shape([0, 7, 14, 18], [7, 14, 18, 21.5], [2, 1, 1, 5])
    assert [share(day) for day in (7, 14, 18, 21.5, 40)] == pytest.approx([2 / 9, 3 / 9, 4 / 9, 1, 1])
    assert smooth_shape([3], [float("inf")], [4])(21) == pytest.approx(1, abs=0.02)


def test_with_no_look_at_all_the_published_shape_shares_the_deaths_out():
    table = breakdown(tiny_season([dict(batch=1, eggs_set=40, hatched=30, dead_in_shell=10)])).set_index("stage")
    assert table.loc[["early", "mid", "late"], "eggs"].tolist() == pytest.approx([7.1, 0.7, 2.2], abs=0.1)
    assert table.loc["early", "seen"] == 0


def test_candling_breakdown_counts_embryos_by_the_look_and_a_look_not_made_is_missing():
    table = breakdown(tiny_season(TWO), stages="candling").set_index(["batch", "stage"])
    assert table.loc["a"]["eggs"].tolist() == [2, 1, 1, 5]
    assert table.loc[("b", "candle1"), "eggs"] == 1 and table.loc[("b", "hatch"), "eggs"] == 2
    assert table.loc[("b", "candle2")].drop(["batches", "uncounted", "excess"]).isna().all()
    whole = breakdown(tiny_season(TWO), by=None, stages="candling").set_index("stage")
    assert whole.loc["candle2", "set"] == 48 and whole.loc["candle1", "set"] == 72


def test_batches_left_out_are_named_and_have_no_shares():
    season = tiny_season([*TWO, dict(batch="x", eggs_set=30, hatched=41)])
    table = breakdown(season)
    assert table.attrs["left_out"] == [dict(batch="x", why="counts", told=41, set=30)]
    assert table.loc[table["batch"] == "x", "share_of_set"].isna().all()
    assert breakdown(season, by=None)["set"].eq(72).all()


@pytest.mark.parametrize(
    "counts",
    [
        dict(hatched=12),
        dict(day1=7, dead1=12, taken_off_day=None),
        dict(broken_infertile=12, hatched=0),
        dict(day1=7, clear1=12, hatched=0),
        dict(hatched=11, removed=1),
    ],
)
def test_the_ends_of_the_scale_work_with_twelve_eggs(counts):
    table = breakdown(tiny_season([dict(batch=1, eggs_set=12, **counts)]))
    assert table["eggs"].sum() == 12
    assert table["share_of_set"].max() in (1, 11 / 12)
    known = table["share_of_set"].notna()
    assert (table.loc[known, "share_of_set_low"] <= table.loc[known, "share_of_set_high"]).all()


def test_limits_can_be_chosen_by_name_or_typed_in():
    season = tiny_season(TWO)
    bands = breakdown(season, limits="four_bands")["stage"].unique().tolist()
    assert bands[4:8] == ["days_1_4", "days_5_10", "days_11_17", "days_18_21"]
    own = breakdown(season, limits={"first": (0, 10), "second": (10, 21)}).set_index(["batch", "stage"])
    assert own.loc["a"].loc[["first", "second"], "eggs"].sum() == 8
    with pytest.raises(HatchkitError, match="without holes"):
        breakdown(season, limits={"first": (0, 7), "second": (8, 21)})
    with pytest.raises(HatchkitError, match="known are weeks"):
        breakdown(season, limits="months")


def test_a_duck_has_thirds_and_a_hen_has_weeks():
    assert limits_for("chicken", 21)[1] == ("mid", 7, 14)
    _, mid, late = limits_for("duck", 28)
    assert mid[1:] == pytest.approx((9.333, 18.667), abs=1e-3) and late[2] == float("inf")
    assert stage_of(7, 14, limits_for("chicken", 21)) == "mid"
    assert stage_of(6.9, 14, limits_for("chicken", 21)) is None
