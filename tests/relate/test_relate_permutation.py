"""Exposure histories dealt anew: counted out where they can be, in strata, and never a chance of nought."""

from itertools import permutations

import numpy as np
import pytest

from hatchkit.relate.permutation import arrangements_count, chances, deal, scores, standardised, turned_scores

DIED = np.array([0, 1, 0, 3, 5, 1, 2, 0.0])
DOSE = np.array([0, 0, 0, 1, 1, 0, 0, 0.0])
ONE = np.zeros(8, int)


def residual(died, eggs=48.0):
    return standardised(died, np.full(len(died), eggs), np.full(len(died), died.sum() / eggs / len(died)), 0.0)


def test_toy_season_gives_one_in_28_as_by_hand():
    order, exact = deal(DOSE.astype(int), ONE)
    score = scores(residual(DIED)[:, None], (DOSE - DOSE.mean())[:, None], order)
    found = chances(score, exact=exact)
    assert exact and len(order) == 28
    assert found["more"] == pytest.approx(1 / 28)
    assert found["either"] == pytest.approx(1 / 28)
    assert found["smallest"] == pytest.approx(1 / 28)


def test_graded_doses_have_more_arrangements_than_exposed_or_not():
    assert arrangements_count(np.array([0, 0, 0, 0, 1, 2]), np.zeros(6)) == 30
    assert arrangements_count(np.array([0, 0, 0, 0, 1, 1]), np.zeros(6)) == 15


def test_counting_out_agrees_with_every_permutation_written_down():
    ids, strata = np.array([0, 1, 1, 2, 0, 3]), np.array(["a", "a", "a", "b", "b", "b"])
    order, exact = deal(ids, strata)
    brute = {
        tuple(ids[list(p)]) for p in permutations(range(6)) if all(strata[i] == strata[j] for i, j in enumerate(p))
    }
    assert exact and len(order) == arrangements_count(ids, strata) == len(brute)
    assert {tuple(row) for row in ids[order]} == brute
    assert (np.sort(order, axis=1) == np.arange(6)).all()
    assert (ids[order[0]] == ids).all()


def test_no_batch_gets_a_history_from_another_stratum():
    strata = np.repeat(["duck", "hen"], 20)
    order, exact = deal(np.arange(40), strata, draws=200)
    assert not exact
    assert (strata[order] == strata).all()


def test_a_sample_comes_near_the_full_count_and_is_never_nought(monkeypatch):
    import hatchkit.relate.permutation as room

    monkeypatch.setattr(room, "EXACT_LIMIT", 10)
    order, exact = deal(DOSE.astype(int), ONE, draws=20_000, seed=4)
    found = chances(scores(residual(DIED)[:, None], (DOSE - 0.25)[:, None], order), exact=exact)
    assert not exact
    assert found["more"] == pytest.approx(1 / 28, abs=0.005)
    assert chances(np.array([9.0, *np.zeros(99)]), exact=False)["more"] == pytest.approx(0.01)


def test_scores_are_the_sums_of_dose_times_residual():
    rng = np.random.default_rng(2)
    res, dose = rng.normal(size=(5, 2)), rng.normal(size=(5, 2))
    order, _ = deal(np.arange(5), np.zeros(5))
    assert scores(res, dose, order) == pytest.approx([(res * dose[one]).sum() for one in order])


def test_turning_the_log_keeps_the_unturned_first():
    turned = np.array([[[1.0], [0.0]], [[0.0], [1.0]]])
    assert turned_scores(np.array([[2.0], [5.0]]), turned).tolist() == [2.0, 5.0]


def test_the_residual_of_a_large_batch_is_damped_by_the_spread_between_batches():
    plain = standardised(np.array([20.0]), np.array([200.0]), np.array([0.05]), 0.0)
    damped = standardised(np.array([20.0]), np.array([200.0]), np.array([0.05]), 0.02)
    assert plain[0] == pytest.approx(10 / np.sqrt(9.5))
    assert damped[0] == pytest.approx(10 / np.sqrt(9.5 * (1 + 199 * 0.02)))
