"""The score: likelihood of a pattern, evidence levels, priors; arithmetic that can be done by hand."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import special, stats

from hatchkit import reference
from hatchkit.advice import score
from hatchkit.advice.causes import priors
from hatchkit.advice.evidence import LEVELS, factor_table, level
from hatchkit.advice.tally import STAGES

SHARES = np.array([0.7, 0.2, 0.1])


def spread(sd=0.5):
    return score.Spread((1, 2), (sd, sd))


def test_stages_one_after_the_other_are_beta_binomials_by_scipy():
    # Of 20 eggs 5 are lost at stage 1 (usual share 0.2), 3 of the 15 left at stage 2 (0.1 / 0.8).
    told, by_hand = score.log_likelihood([12, 5, 3], SHARES, spread(0.5)), 0.0
    for lost, total, mean in ((5, 20, 0.2), (3, 15, 0.125)):
        size = 1 / (0.25 * mean * (1 - mean)) - 1
        whole = stats.betabinom(total, size * mean, size * (1 - mean)).logpmf(lost)
        by_hand += whole - np.log(special.comb(total, lost))
    assert told == pytest.approx(by_hand)


def test_the_spread_is_that_of_the_log_odds():
    mean, sd = 0.05, 0.4
    size = 1 / (sd**2 * mean * (1 - mean)) - 1
    draws = stats.beta(size * mean, size * (1 - mean)).rvs(200_000, random_state=3)
    assert np.std(draws) / (mean * (1 - mean)) == pytest.approx(sd, rel=0.01)


def test_one_doubling_doubles_the_odds_against_hatching():
    under = score.shifted(SHARES, np.array([0, 1, 0]), np.array([1.0]))[0]
    assert under[1] / under[0] == pytest.approx(2 * SHARES[1] / SHARES[0])
    assert under[2] / under[0] == pytest.approx(SHARES[2] / SHARES[0])
    assert under.sum() == pytest.approx(1)


def test_a_pattern_without_doublings_is_bad_luck_itself():
    assert score.pattern_log_factor([30, 10, 8], SHARES, spread(), np.zeros(3)) == pytest.approx(0)


def test_more_eggs_of_the_stage_speak_for_the_pattern_and_fewer_against():
    many = score.pattern_log_factor([20, 24, 4], SHARES, spread(), np.array([0, 2, 0]))
    few = score.pattern_log_factor([42, 2, 4], SHARES, spread(), np.array([0, 2, 0]))
    assert many > 0 > few


def test_eggs_lost_by_hand_with_one_size():
    # Doubling the odds of stage 2 from 0.2: under the cause 0.4 / 1.2 = 1/3, so 1 - 0.2 * 3 = 0.4 of them.
    lost = score.eggs_lost([20, 10, 4], SHARES, spread(), np.array([0, 1, 0]), np.array([1.0]))
    assert lost == pytest.approx([0, 4.0, 0])


@given(st.lists(st.floats(-30, 30), min_size=2, max_size=6))
def test_shares_over_candidates_add_up_to_one_and_keep_their_order(logs):
    shares = score.posterior(logs, np.full(len(logs), 1 / len(logs)))
    assert shares.sum() == pytest.approx(1)
    assert (np.diff(shares[np.argsort(logs)]) >= -1e-12).all()


def test_variants_are_averaged_not_added():
    assert score.combine_variants([np.log(9.0), np.log(1.0), np.log(2.0)]) == pytest.approx(np.log(4.0))


def test_priors_add_up_to_one_and_bad_luck_has_its_stated_share():
    names = reference.load("causes")["cause"]
    shares = dict(zip(names, priors(names), strict=True))
    assert sum(shares.values()) == pytest.approx(1)
    assert shares["bad_luck"] == pytest.approx(score.PRIOR_BAD_LUCK)
    assert shares["unlisted"] == pytest.approx(score.PRIOR_UNLISTED)


@pytest.mark.parametrize(
    ("value", "want"),
    [(-25, "very_low"), (-12, "low"), (0, "usual"), (12, "high"), (20, "very_high"), (float("nan"), None)],
)
def test_levels_of_the_hatch_clock(value, want):
    item = reference.load("evidence_items").set_index("item").loc["clock"].to_dict()
    assert level({**item, "value": value}) == want


def test_a_one_sided_item_has_no_low_level():
    item = reference.load("evidence_items").set_index("item").loc["storage"].to_dict()
    assert level({**item, "value": -7.0}) == "usual"


def test_profiles_are_distributions():
    profiles = reference.load("evidence_profiles")
    assert profiles[list(LEVELS)].sum(axis=1).to_numpy() == pytest.approx(1)


def test_the_ordinary_profile_weighs_nothing():
    table = factor_table().xs("ordinary", level="profile")
    assert table.stack().dropna().to_numpy() == pytest.approx(1)


def test_every_cause_pattern_and_evidence_row_fits_together():
    causes, items = reference.load("causes"), reference.load("evidence_items").set_index("item")
    patterns, links = reference.load("cause_patterns"), reference.load("cause_evidence")
    profiles = set(reference.load("evidence_profiles")[["kind", "profile"]].itertuples(index=False, name=None))
    assert set(patterns["cause"]) == set(causes["cause"]) - {"bad_luck", "unlisted"}
    assert set(links["cause"]) <= set(patterns["cause"])
    assert {(items.at[row.item, "kind"], row.profile) for row in links.itertuples()} <= profiles
    variants = set(patterns[["cause", "variant"]].itertuples(index=False, name=None))
    assert all(row.variant == "*" or (row.cause, row.variant) in variants for row in links.itertuples())
    assert set(STAGES[1:]) <= set(patterns.columns)
    assert not patterns.duplicated(["cause", "variant"]).any()
