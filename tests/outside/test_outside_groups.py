"""Partial pooling beside published data over several periods and sites, and beside a library's mixed model.

Contagious pleuropneumonia in 15 herds over four periods (Lesnoff et al. 2004; the table of R's lme4): a binomial mixed
model by adaptive quadrature, measured with lme4 1.1-31, has a spread between herds of 0.648 on the log odds.
"""

import warnings

import numpy as np
import pandas as pd
import pytest
from test_outside_relate import ANIMALS, CASES, HERD, PERIOD

from hatchkit.usual.mixed import expit, pool


def test_herds_of_a_published_study_are_drawn_together_as_a_mixed_model_does():
    herd = np.unique(HERD, return_inverse=True)[1]
    period = np.unique(PERIOD, return_inverse=True)[1]
    found = pool(CASES, ANIMALS, {"herd": herd, "period": period})
    # That model knows no spread of rows beyond chance; with one, which these data have, the herds' own is smaller.
    total = np.hypot(found.spread["herd"], found.spread["rows"])
    assert 0.25 < found.spread["herd"] < 0.648 < total + 0.15 and found.spread["rows"] > 0.3
    # Periods fell from the first on: -0.99, -1.13, -1.58 on the log odds as fixed effects, drawn together here.
    effect = found.effects["period"].mean(axis=0)
    assert effect[0] - effect[1:] == pytest.approx([0.99, 1.13, 1.58], abs=0.45)


def test_fewer_animals_are_drawn_further_towards_all():
    herd = np.unique(HERD, return_inverse=True)[1]
    found = pool(CASES, ANIMALS, {"herd": herd})
    raw = np.bincount(herd, CASES) / np.bincount(herd, ANIMALS)
    drawn = expit(found.level[:, None] + found.effects["herd"]).mean(axis=0)
    middle = np.sum(CASES) / np.sum(ANIMALS)
    assert (np.abs(drawn - middle) <= np.abs(raw - middle) + 0.02).all()
    assert np.corrcoef(raw, drawn)[0, 1] > 0.9


def test_beside_a_librarys_bayesian_mixed_model():
    """statsmodels' BinomialBayesMixedGLM: estimates agree; its intervals by variational Bayes are too narrow."""
    from statsmodels.genmod.bayes_mixed_glm import BinomialBayesMixedGLM

    rng = np.random.default_rng(11)
    group = np.repeat(np.arange(8), 5)
    total = rng.integers(20, 40, 40)
    good = rng.binomial(total, expit(0.9 + rng.normal(0, 0.6, 8)[group]))
    single = [np.r_[np.ones(k), np.zeros(n - k)] for k, n in zip(good, total, strict=True)]
    eggs = pd.DataFrame(
        {
            "y": np.concatenate(single),
            "group": np.repeat(group, total),
        }
    )
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        library = BinomialBayesMixedGLM.from_formula("y ~ 1", {"group": "0 + C(group)"}, eggs).fit_vb()
    own = pool(good, total, {"group": group})
    theirs = library.fe_mean[0] + library.vc_mean
    ours = own.level[:, None] + own.effects["group"]
    assert ours.mean(axis=0) == pytest.approx(theirs, abs=0.12)
    assert ours.std(axis=0).mean() > library.vc_sd.mean()


def test_without_any_difference_groups_are_drawn_together():
    rng = np.random.default_rng(1)
    total = np.full(40, 30)
    found = pool(rng.binomial(total, 0.7), total, {"group": np.arange(40) % 8})
    drawn = expit(found.level[:, None] + found.effects["group"]).mean(axis=0)
    raw = np.ptp(drawn)
    assert raw < 0.08 and found.spread["group"] < 0.25


def test_the_hatch_is_a_level_two_breeds_in_one_hatch_are_not_two_batches():
    """Ten hatches that differ, two breeds in each that do not: with that level the interval is of the breeds."""
    rng = np.random.default_rng(5)
    hatch, breed = np.repeat(np.arange(10), 2), np.tile([0, 1], 10)
    total = np.full(20, 40)
    good = rng.binomial(total, expit(0.8 + rng.normal(0, 0.9, 10)[hatch]))
    with_level = pool(good, total, {"breed": breed}, hatch=hatch)
    without = pool(good, total, {"breed": breed})

    def width(found):
        return np.std(found.effects["breed"][:, 0] - found.effects["breed"][:, 1])

    assert with_level.spread["hatch"] > 0.4 and width(with_level) < width(without)


def test_a_club_of_two_hundred_batches_costs_about_ten_times_one_of_twenty():
    total = np.full(3000, 30)
    rng = np.random.default_rng(1)
    found = pool(rng.binomial(total, 0.7), total, {"keeper": np.arange(3000) % 20}, hatch=np.arange(3000) // 2)
    assert np.isfinite(found.level).all()
