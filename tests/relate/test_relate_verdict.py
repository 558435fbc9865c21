"""One rule for the verdict, and what goes into it: what could have shown, and what cannot be told apart."""

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.findings import more_relate
from hatchkit.relate.confounding import confounding, not_apart
from hatchkit.relate.design import design
from hatchkit.relate.hazard import null_fit, relate_counts, weigh_chance
from hatchkit.relate.power import power
from hatchkit.relate.verdict import rules, verdict


@pytest.mark.parametrize(
    ("given", "said"),
    [
        (dict(more=0.01, floor=1.3, low=1.1, high=6), "clear sign"),
        (dict(more=0.05, floor=1.01, low=0.9, high=6), "clear sign"),
        (dict(more=0.01, floor=0.9, low=0.8, high=6), "some sign"),
        (dict(more=0.08, floor=1.2, low=0.9, high=6), "some sign"),
        (dict(more=0.30, floor=1.2, low=1.1, high=6), "some sign"),
        # a rare arrangement of a small effect: the middle of 0.9 to 1.6 is 1.2
        (dict(more=0.08, floor=0.95, low=0.9, high=1.6, power=0.9), "no sign"),
        (dict(more=0.08, floor=0.95, low=0.9, high=1.8, power=0.9), "some sign"),
        (dict(more=0.30, floor=0.7, low=0.6, high=1.5, power=0.9), "no sign"),
        (
            dict(more=0.30, floor=0.7, low=0.6, high=2.5, power=0.9),
            ("cannot tell", dict(missed=1)),
        ),
        (
            dict(more=0.30, floor=0.7, low=0.6, high=3, power=0.38),
            ("cannot tell", dict(missed=6)),
        ),
        (
            dict(more=0.01, floor=3, low=2, high=9, enough=False, power=0.9),
            ("cannot tell", dict(missed=10)),
        ),
        (dict(more=0.01, floor=3, low=2, high=9, not_apart="incubator"), ("not apart", dict(factor="incubator"))),
    ],
)
def test_the_rule(given, said):
    assert verdict(**given) == (said if isinstance(said, tuple) else (said, {}))


def test_every_limit_of_the_rule_has_a_meaning_and_a_source():
    table = reference.load("verdict_rules")
    assert table[["item", "value", "unit", "meaning", "source", "sure"]].notna().all(axis=None)
    assert rules()["clear_chance"] == 0.05
    measures = reference.load("dose_measures")
    assert measures[["name", "unit", "source", "sure"]].notna().all(axis=None)


def table(batches, exposed, eggs, **more):
    rng = np.random.default_rng(0)
    return pd.DataFrame(
        {
            "batch": np.arange(batches).astype(str),
            "window": 1,
            "days": 7.0,
            "at_risk": eggs,
            "died": rng.binomial(eggs, more.pop("base", 0.02), batches),
            "dose": (np.arange(batches) < exposed).astype(float),
            **more,
        }
    )


def detectable(made):
    coded = design(made)
    share, _, dealt, _ = weigh_chance(coded)
    return power(coded, share, 0.0, dealt, seasons=400)


def test_twenty_batches_of_48_at_two_percent_cannot_see_less_than_about_threefold():
    # Two-sided tests gave 3.7 by simulation; the verdict looks at harm only, so it sees a little more.
    found = detectable(table(20, 5, 48, died=1))
    assert 2.5 < found["detectable"] < 4.2
    assert found["doubling"] < 0.5


def test_more_batches_and_more_eggs_show_smaller_harm():
    small, middle, large = (
        detectable(table(b, b // 4, n, died=max(1, n // 20)))["detectable"] for b, n in ((8, 24), (20, 48), (60, 150))
    )
    assert small > middle > large
    assert large < 2


def test_with_too_few_arrangements_nothing_could_have_shown():
    found = detectable(table(6, 2, 48, died=1))
    assert found["doubling"] == 0 and found["detectable"] == np.inf


def test_the_null_fit_has_the_mean_share_and_no_spread_where_there_is_none():
    made = table(12, 3, 50, died=2)
    share, residual, rho = null_fit(design(made))
    assert share == pytest.approx(np.full(12, 2 / 50), rel=1e-3)
    assert rho == 0 and residual == pytest.approx(np.zeros(12), abs=1e-2)


@pytest.mark.parametrize(
    ("machine", "apart"),
    [
        ("AAAAABBBBBBBBBBBBBBB", False),
        ("ABABABABABABABABABAB", True),
        ("AAAAAABBBBBBBBBBBBBB", False),
        ("AAAAAAAAAABBBBBBBBBB", True),
    ],
)
def test_exposed_and_incubator_are_told_apart_only_within_an_incubator(machine, apart):
    found = confounding(design(table(20, 5, 48, incubator=list(machine))))
    assert bool(found.set_index("factor").loc["incubator", "apart"]) is apart
    assert not_apart(found) == ("" if apart else "incubator")


def test_a_flock_of_its_own_for_each_batch_is_no_factor():
    found = confounding(design(table(12, 3, 48, flock=[f"f{i}" for i in range(12)])))
    assert found.set_index("factor").loc["flock", "apart"]


def test_exposure_at_the_start_of_the_season_is_said_but_does_not_silence_the_verdict():
    when = pd.Timestamp("2024-03-01", tz="UTC") + pd.to_timedelta(np.arange(20) * 7, unit="D")
    found = relate_counts(table(20, 5, 48, start=when), detect=False)
    told = {one.code: one.facts for one in more_relate.counts(found)}
    assert (told["relate_exact"]["factor"], told["relate_exact"]["hit"]) == ("start", ["fewer"])
    assert found.verdict != "not apart"


def test_shares_and_ratios_without_false_precision():
    assert [more_relate.in_many(share) for share in (0.25, 0.04, 0.004, 0.0001)] == [
        dict(many=2, out_of=10),
        dict(many=4, out_of=100),
        dict(many=4, out_of=1000),
        dict(many=0, out_of=1000),
    ]
    assert [more_relate._bounded(value) for value in (0.456, 2.34, 33.0, np.inf)] == [0.46, 2.3, 21, None]
