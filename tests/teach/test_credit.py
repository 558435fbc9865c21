"""Credits worked out by hand, and the properties that make the marks defensible."""

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from hatchkit.teach import credit

KINDS = {"power_cut": "cold", "lid_ajar": "cold", "overheating": "heat", "turning_fault": "turning"}
LUCK = dict(took=9.0, width=8.0)


def test_the_interval_score_is_that_of_gneiting_and_raftery():
    # (high - low) + 2 / alpha (distance outside): alpha 0.2, two eggs outside -> 6 + 10 * 2
    assert credit.interval_score(3, 9, 5) == 6
    assert credit.interval_score(3, 9, 11) == pytest.approx(6 + 20)
    assert credit.interval_score(3, 9, 1) == pytest.approx(6 + 20)


def test_an_honest_interval_earns_most_on_average():
    truth = np.random.default_rng(3).normal(20, 4, 20_000)

    def mean(half):
        return np.mean([credit.interval_score(20 - half, 20 + half, x) for x in truth[:4000]])

    honest = 1.2816 * 4
    assert mean(honest) < min(mean(0), mean(honest / 2), mean(honest * 2))


def test_size_earns_all_up_to_a_careful_width_and_nothing_from_three_times_that():
    assert credit.size_credit(10, 18, 12, 8) == 1
    assert credit.size_credit(4, 20, 12, 8) == pytest.approx(0.5)
    assert credit.size_credit(0, 24, 12, 8) == 0
    assert credit.size_credit(19, 25, 25.5, 8) == pytest.approx(1 - (6 + 5 - 8) / 16)


@pytest.mark.parametrize(("sure", "right"), [(1, 1), (0.5, 1), (0.25, 1 / 3), (0, 0)])
def test_what_is_as_likely_as_the_rest_is_right(sure, right):
    assert credit.as_right(sure) == pytest.approx(right)


def test_none_is_right_where_nothing_can_be_told():
    assert credit.cause_credit([], shown={}, kinds=KINDS, took=0, width=8) == 1
    assert credit.cause_credit([], shown={"turning_fault": 0.3}, kinds=KINDS, took=6, width=8) == 1
    assert credit.cause_credit(["turning_fault"], shown={"turning_fault": 0.3}, kinds=KINDS, **LUCK) == pytest.approx(
        3 / 7
    )
    assert credit.cause_credit([], shown={"power_cut": 0.99}, kinds=KINDS, **LUCK) == pytest.approx(0.01 / 0.99)
    assert credit.cause_credit([], shown={"power_cut": 0.99}, kinds=KINDS, took=2, width=8) == 0.5


@pytest.mark.parametrize(
    ("named", "earned"),
    [
        (["power_cut"], 1),
        (["lid_ajar"], 0.5),
        (["overheating"], 0),
        (["power_cut", "overheating"], 0.5),
        (["lid_ajar", "power_cut"], 0.5),
    ],
)
def test_one_cause(named, earned):
    assert credit.cause_credit(named, shown={"power_cut": 0.98}, kinds=KINDS, **LUCK) == pytest.approx(earned)


def test_two_causes_share_the_part():
    shown = {"power_cut": 0.98, "turning_fault": 0.9}
    assert credit.cause_credit(["power_cut", "turning_fault"], shown=shown, kinds=KINDS, **LUCK) == 1
    assert credit.cause_credit(["power_cut"], shown=shown, kinds=KINDS, **LUCK) == 0.5


def test_stages():
    stages = {"mid": 9.0, "late": 4.0, "pipped": 1.0}
    earned = {
        stage: credit.stage_credit(stage, stages=stages, sure=0.9, width=8) for stage in ("mid", "late", "pipped")
    }
    assert earned == {"mid": 1.0, "late": 0.5, "pipped": 0.0}
    assert credit.stage_credit("none", stages={}, sure=0.0, width=8) == 1


@settings(suppress_health_check=[HealthCheck.too_slow], deadline=None)
@given(st.dictionaries(st.sampled_from("ABCDEFGHIJKL"), st.sampled_from(["bears", "not", "free"]), min_size=3))
def test_ticking_all_or_none_earns_nothing_where_both_kinds_are_there(kinds):
    right = {letter for letter, kind in kinds.items() if kind == "bears"}
    if right and "not" in kinds.values():
        assert credit.facts_credit(set(kinds), kinds) == credit.facts_credit(set(), kinds) == 0
        assert credit.facts_credit(right, kinds) == 1


def test_the_cause_is_at_most_a_quarter_and_all_parts_make_one():
    assert credit.WEIGHTS["cause"] <= 0.25
    assert credit.mark(dict.fromkeys(credit.WEIGHTS, 1.0)) == pytest.approx(1)
    assert credit.mark(dict(stage=1, cause=1, size=1, facts=0)) == pytest.approx(0.35 * 0.50)
