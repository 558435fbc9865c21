"""The ladder of evidence: every factor once, strongest first, in Kass and Raftery's words."""

import numpy as np
import pytest

import hatchkit as hk
from hatchkit import reference
from hatchkit.advice import pictured
from hatchkit.advice.egg_chances import egg_chances
from hatchkit.advice.evidence_ladder import _strength, ladder


@pytest.fixture(scope="module")
def season(demo):
    return demo


@pytest.fixture(scope="module")
def causes(season):
    return hk.likely_causes(season, "H2")


def test_the_rows_multiply_to_the_weight_beside_bad_luck(causes):
    """Prior ratio x pattern x items is the ratio of the weights of cause and bad luck, as long as no second cause."""
    cause = causes.first_named()
    table = ladder(causes)
    shares = causes.table.set_index("cause")["share"]
    second = causes.arithmetic(cause).query("part == 'second'")["factor"].iloc[0]
    luck = shares["bad_luck"]
    assert table["factor"].prod() * second == pytest.approx(shares[cause] / luck, rel=0.3)


def test_the_strongest_comes_first_and_what_is_not_known_last(causes):
    for cause in causes.table["cause"].head(6):
        if cause in ("bad_luck", "unlisted"):
            continue
        push = ladder(causes, cause)["push"]
        known = push.dropna().abs().to_numpy()
        assert (np.diff(known) <= 1e-12).all()
        assert push.isna().to_numpy()[len(known) :].all()


@pytest.mark.parametrize(
    ("factor", "strength"),
    [
        (200, "for_very_strong"),
        (25, "for_strong"),
        (4, "for_some"),
        (1.5, "for_hardly"),
        (1, "none"),
        (1 / 1.5, "against_hardly"),
        (1 / 4, "against_some"),
        (1 / 25, "against_strong"),
        (1 / 200, "against_very_strong"),
        (float("nan"), "unknown"),
    ],
)
def test_strengths_are_those_of_kass_and_raftery(factor, strength):
    assert _strength(factor) == strength


def test_an_item_keeps_its_value_and_a_sign_its_words(season, causes):
    cold = ladder(causes).set_index("part").loc["cold"]
    assert cold["kind"] == "item" and cold["unit"] == "h" and cold["value"] == pytest.approx(11.4, abs=0.05)
    facts = pictured.ladder(causes, ladder(causes))
    assert facts["for_kind"] == "pattern" and facts["against_kind"] == "before"


def test_the_column_list_names_them(season, causes):
    listed = reference.load("columns_advice")
    plan = hk.next_set(season, "chicken", today="2026-09-01")
    for name, table in (("ladder", ladder(causes)), ("egg_chances", egg_chances(season, plan))):
        assert list(table) == list(listed.loc[listed["table"] == name, "column"])


def test_the_curve_of_chances_goes_through_the_plans_numbers(season):
    plan = hk.next_set(season, "chicken", chicks=30, today="2026-09-01")
    curve = egg_chances(season, plan)
    assert curve["chance"].is_monotonic_increasing and curve["eggs"].iloc[0] == 30
    for row in plan.eggs.itertuples():
        assert np.interp(row.eggs, curve["eggs"], curve["chance"]) == pytest.approx(row.chance, abs=0.01)
    assert pictured.eggs_to_set(plan) == dict(
        chicks=30,
        sure=0.9,
        half=int(plan.eggs["eggs"].iloc[0]),
        eggs=int(plan.eggs["eggs"].iloc[2]),
        most=int(plan.eggs["eggs"].iloc[3]),
    )


def test_a_wish_that_no_set_gives_is_told_as_none(season):
    plan = hk.next_set(season, "chicken", chicks=4900, today="2026-09-01")
    assert pictured.eggs_to_set(plan)["most"] is None
    assert len(egg_chances(season, plan)) > 2
