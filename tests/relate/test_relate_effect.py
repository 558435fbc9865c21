"""The hazard model: the same answer as the reference library, and never a coefficient of 23."""

import numpy as np
import pandas as pd
import pytest
import statsmodels.api as sm

from hatchkit.relate.cloglog import dispersion, fit_many
from hatchkit.relate.design import design
from hatchkit.relate.effect import effect, spread_moment, statsmodels_fit, weighted_fit


def made(died, dose, *, eggs=48, days=7, **more):
    died = np.asarray(died)
    return pd.DataFrame(
        {
            "batch": np.arange(len(died)).astype(str),
            "window": 1,
            "days": days,
            "at_risk": eggs,
            "died": died,
            "dose": dose,
            **more,
        }
    )


def test_many_seasons_fit_as_statsmodels_fits_each():
    rng = np.random.default_rng(5)
    columns = np.column_stack([np.ones(30), rng.integers(0, 2, 30), rng.normal(size=30)])
    eggs = rng.integers(12, 150, 30).astype(float)
    died = rng.binomial(eggs.astype(int), 0.1, (4, 30)).astype(float)
    offset = np.log(rng.integers(3, 9, 30).astype(float))
    coef, covariance, share = fit_many(died, eggs, columns, offset)
    for one, b, v, p in zip(died, coef, covariance, share, strict=True):
        fit = statsmodels_fit(one, eggs, columns, offset)
        assert b == pytest.approx(fit.params, abs=1e-7)
        assert v == pytest.approx(fit.cov_params(), rel=1e-5)
        assert p == pytest.approx(fit.fittedvalues, abs=1e-8)


def test_without_extra_spread_the_weighted_fit_is_the_plain_one():
    died = np.array([1, 2, 1, 0, 1, 2, 1, 1, 2, 1, 4, 3, 5, 4.0])
    dose = np.r_[np.zeros(10), np.ones(4)]
    found = weighted_fit(
        died, np.full(14, 48.0), np.column_stack([dose, np.ones(14)]), np.zeros(14), np.arange(14), 1
    )
    plain = statsmodels_fit(died, np.full(14, 48.0), np.column_stack([dose, np.ones(14)]), np.zeros(14))
    assert found["spread"] == 0 and found["phi"] == 1
    assert found["log_ratio"] == pytest.approx(plain.params[0], abs=1e-9)
    assert found["error"] == pytest.approx(plain.bse[0], rel=1e-6)
    assert found["freedom"] == 12


def test_the_spread_brings_pearson_to_its_freedom():
    rng = np.random.default_rng(8)
    eggs = rng.integers(20, 200, 40).astype(float)
    died = rng.binomial(eggs.astype(int), np.clip(0.08 * np.exp(rng.normal(0, 0.7, 40)), 0, 1)).astype(float)
    share = np.full(40, died.sum() / eggs.sum())
    k = spread_moment(died, eggs, share, 39)
    weight = 1 / (1 + (eggs - 1) * k * share / (1 - share))
    assert k > 0.1
    assert dispersion(died * weight, eggs * weight, share, 39) == pytest.approx(1.0, abs=1e-6)


def test_when_only_exposed_batches_lost_embryos_the_ratio_stays_finite():
    # Here a plain fit reports 23 with a standard error of thousands and calls itself converged.
    table = made([0, 0, 0, 3, 4, 0, 0, 0, 0, 0, 0, 0, 2], [0, 0, 0, 1, 1, 0, 0, 0, 0, 0, 0, 0, 1.0], eggs=43)
    found = effect(design(table))
    assert found["method"] == "small Bayesian model"
    assert 1 < found["low"] < found["hazard_ratio"] < 200
    assert np.isfinite(found["high"])


def test_a_graded_dose_that_separates_does_not_run_away():
    died = np.r_[np.zeros(12), 5, 6, 7]
    found = effect(design(made(died, np.r_[np.zeros(10), 0.1, 0.1, 1.0, 1.1, 1.2])))
    assert np.isfinite(found["high"]) and abs(found["log_ratio"]) < 6


def test_few_batches_go_to_the_small_model_and_many_to_the_weighted_one():
    few = effect(design(made([1, 0, 2, 4, 1, 3], [0, 0, 0, 1, 0, 1.0])))
    many = effect(design(made([1, 0, 2, 4, 1, 3, 1, 2, 0, 1, 5, 1], [0, 0, 0, 1, 0, 1.0, 0, 0, 0, 0, 1, 0])))
    assert (few["method"], many["method"]) == ("small Bayesian model", "weighted quasi-binomial")
    assert few["low"] < few["hazard_ratio"] < few["high"]


def test_the_ratio_does_not_depend_on_the_length_of_the_window():
    died = [1, 0, 2, 4, 1, 3, 1, 2, 0, 1, 5, 1]
    dose = [0, 0, 0, 1, 0, 1.0, 0, 0, 0, 0, 1, 0]
    week, month = (effect(design(made(died, dose, days=days)))["hazard_ratio"] for days in (7, 30))
    assert week == pytest.approx(month, rel=1e-8)


def test_a_batch_that_is_bad_in_all_its_windows_widens_the_interval():
    rng = np.random.default_rng(3)
    rows = []
    for batch in range(20):
        bad = np.exp(1.2 * rng.normal())
        rows += [
            (str(batch), window, 7, 100, rng.binomial(100, min(0.04 * bad, 0.9)), float(batch < 6))
            for window in (1, 2, 3)
        ]
    table = pd.DataFrame(rows, columns=["batch", "window", "days", "at_risk", "died", "dose"])
    found = effect(design(table))
    scattered = table.assign(batch=[str(i) for i in range(60)])
    assert found["phi"] > 1.5 * effect(design(scattered))["phi"]
    assert found["freedom"] == 18


def test_a_family_object_is_never_shared_between_fits():
    # A Binomial family keeps the counts of its last model: an earlier model's likelihood then changes.
    columns = np.ones((4, 1))
    first = statsmodels_fit(np.array([1.0, 2, 0, 1]), np.full(4, 20.0), columns, 0.0)
    before = first.llf
    statsmodels_fit(np.array([5.0, 9, 7, 8, 3]), np.full(5, 90.0), np.ones((5, 1)), 0.0)
    assert sm.GLM(
        first.model.endog, columns, family=first.model.family, var_weights=np.full(4, 20.0)
    ).fit().llf == (pytest.approx(before))
