"""Shares as they are told, groups of batches, and which levels and stages are there: small tables by hand."""

import math

import numpy as np
import pytest
from tiny_season import tiny_season

from hatchkit.losses import bad_luck as bad_luck_room
from hatchkit.losses.bad_luck import bad_luck
from hatchkit.losses.breakdown import check_column
from hatchkit.losses.clears import batch_clears, clears
from hatchkit.losses.interval_likelihood import _newton
from hatchkit.losses.ledger import ledger
from hatchkit.losses.proportions import interval, pooled, told_share, widened
from hatchkit.losses.season_chart import season_chart
from hatchkit.problems import HatchkitError

NAN = math.nan


@pytest.mark.parametrize(("asked", "told"), [
    ((9, 12), 0.75), ((9, 12, 0.0), 0.75), ((9, 12, NAN), 0.75), ((18, 20, 4.0), (0.75, 0.9)),
    ((21, 20, 1.0), (1.0, 1.0)),
])  # fmt: skip
def test_a_share_is_a_number_or_a_range_where_more_eggs_are_told_of_than_were_set(asked, told):
    assert told_share(*asked) == told
    assert math.isnan(told_share(3, 0)) and math.isnan(told_share(3, 0, 2.0)) and math.isnan(told_share(3, NAN))


def test_a_pooled_share_of_none_one_and_two_batches():
    assert all(math.isnan(part) for part in pooled([0], [0]))
    assert pooled([3, 0], [12, 0]) == (0.25, *interval(3, 12))
    assert pooled([2, 8], [10, 10]) == pytest.approx((0.5, *widened(10, 20, 18 / 2.5, 2)))


def season(**more):
    rows = [
        dict(batch="a", eggs_set=40, day1=7, clear1=4, dead1=2, hatched=30, broken_early=0, broken_mid=1,
             broken_late=3, flock="x"),
        dict(batch="b", eggs_set=20, day1=7, clear1=2, dead1=1, hatched=15, broken_early=0, broken_mid=0,
             broken_late=2, flock=None),
        dict(batch="c", eggs_set=30, day1=7, clear1=3, dead1=1, hatched=24, broken_early=0, broken_mid=0,
             broken_late=2, flock="x"),
        dict(batch="d", eggs_set=12, species="duck", day1=7, clear1=1, dead1=1, hatched=9, broken_early=0,
             broken_mid=0, broken_late=1, flock="y"),
    ]  # fmt: skip
    return tiny_season([row | more for row in rows])


def test_clears_of_the_season_of_flocks_and_of_batches():
    made = season()
    whole = clears(made)
    assert list(whole)[0] == "season" and whole.loc[0, ["season", "set", "clear"]].tolist() == ["all", 102, 10]
    flocks = clears(made, "flock").set_index("flock")
    assert flocks["set"].to_dict() == {"x": 70, "not given": 20, "y": 12}
    assert list(flocks.index) == ["x", "not given", "y"]
    batches = clears(made, "batch").set_index("batch")
    assert batches["clear"].to_dict() == dict(a=4, b=2, c=3, d=1)
    assert batches.loc["a", "candled_fertile"] == pytest.approx(0.9)
    assert batch_clears(made)["counted"].tolist() == [True] * 4


def test_clears_that_were_opened_and_infertile_ones_at_the_end():
    """Of five clears at the look three were opened, one with an embryo: of eggs on rows, egg by egg."""
    marks = ["clear"] * 5 + ["alive"] * 3 + ["", "alive"]
    ends = ["infertile", "infertile", "dead", "", "", "hatched", "hatched", "hatched", "infertile", "dead"]
    eggs = [dict(batch="1", egg=str(n), candle1=look, outcome=end) for n, (look, end) in
            enumerate(zip(marks, ends, strict=True))]  # fmt: skip
    found = batch_clears(tiny_season([dict(batch="1", eggs_set=10, day1=7)], eggs=eggs)).iloc[0]
    assert found[["set", "clear", "opened", "opened_dead", "infertile_at_hatch"]].tolist() == [10, 5, 3, 1, 1]


def test_a_chart_is_of_the_kind_with_most_batches_in_the_order_of_setting():
    made = season()
    table = season_chart(made, draws=9)
    assert table["batch"].tolist() == ["a", "b", "c"] and table["out_of"].tolist() == [36, 18, 27]
    assert table["share"].tolist() == pytest.approx([3 / 36, 2 / 18, 2 / 27])
    assert (table.attrs["species"], table.attrs["others"], table.attrs["of"]) == ("chicken", {"duck": 1}, "fertile")
    clear = season_chart(made, "clear", draws=9)
    assert clear.attrs["of"] == "set" and clear["out_of"].tolist() == [40, 20, 30]
    assert season_chart(made, species="duck", draws=9)["batch"].tolist() == ["d"]
    with pytest.raises(HatchkitError) as told:
        season_chart(made, "moulting", draws=9)
    assert told.value.code == "no_such_stage"


@pytest.mark.parametrize(("by", "code", "column"), [
    ("colour", "no_column", "colour"), (["species", "flock"], "one_column", "species"), (7, "one_column", "flock"),
    ([1, 2], "one_column", "flock"),
])  # fmt: skip
def test_what_batches_cannot_be_split_by(by, code, column):
    with pytest.raises(HatchkitError) as told:
        check_column(season(), by)
    assert told.value.code == code and told.value.facts["column"] == column
    assert told.value.facts["there"] == ["batch", "species", "flock", "incubator"]
    assert check_column(season(), "flock") is None and check_column(season(), None) is None


@pytest.mark.parametrize("start", [(1 / 3, 1 / 3, 1 / 3), (0.98, 0.01, 0.01), (0.01, 0.01, 0.98)])
def test_newtons_steps_set_a_mass_to_nothing(start):
    """5 in cell 0, 3 in cell 1, 2 in either, 4 in cells 1 or 2: without cell 2 a share p has p^5 (1 - p)^7, 5/12."""
    holds = np.array([[1.0, 0, 0], [0, 1, 0], [1, 1, 0], [0, 1, 1], [1, 1, 1]])
    found = _newton(holds, np.array([5.0, 3, 2, 4, 0]), np.array(start), 1e-10)
    assert found == pytest.approx([5 / 12, 7 / 12, 0], abs=1e-7)
    assert _newton(holds, np.array([5.0, 3, 2, 4, 0]), np.array(start), 1e9).tolist() == list(start)


def test_a_chance_at_either_limit_is_unusual(monkeypatch):
    rows = [(dict(batch=name, stage="late", chance=chance, norm_chance=0.026), None) for name, chance in
            (("a", 0.025), ("b", 0.026), ("c", 0.01))]  # fmt: skip
    made = season()
    for allowed, told in ((0.10, ["a", "c"]), (0.1001, [])):
        parts = iter([rows])
        monkeypatch.setattr(bad_luck_room, "_stage_rows", lambda *asked, parts=parts: next(parts, []))
        monkeypatch.setattr(bad_luck_room, "adjusted", lambda chance, allowed=allowed: np.full(len(chance), allowed))
        table = bad_luck(made)
        assert table.loc[table["unusual"], "batch"].tolist() == told and not table["norm_unusual"].any()
        assert table["batch"].tolist() == ["a", "b", "c"]


def test_only_deaths_across_a_limit_are_shared_out():
    """3 dead by day 7 are early; 4 unopened at the end may be of any day after it: mid and late, shared out."""
    made = tiny_season([dict(batch="a", eggs_set=30, day1=7, clear1=2, dead1=3, pipped_dead=1, dead_in_shell=4,
                             hatched=20, culled=1)])  # fmt: skip
    book = ledger(made).set_index("stage")
    seen = dict(hatched=19, culled=1, clear=2, early=3, pipped_dead=1)
    assert book.loc[book["seen"] > 0, "seen"].to_dict() == seen
    shared = book.loc[book["shared_out"] > 0, "shared_out"]
    assert list(shared.index) == ["mid", "late"] and shared.sum() == pytest.approx(4)
    assert (book["eggs"] == book["seen"] + book["shared_out"]).all() and book["eggs"].sum() == pytest.approx(30)
    at_hatch = book.loc[book["at_hatch"] > 0, "at_hatch"]
    assert at_hatch[["hatched", "culled", "pipped_dead"]].tolist() == [19, 1, 1] and at_hatch.sum() == pytest.approx(25)
