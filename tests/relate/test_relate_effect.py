"""The hazard model: the same answer as the reference library, and never a coefficient of 23."""

import numpy as np
import pandas as pd
import pytest
import statsmodels.api as sm

from hatchkit.relate.cloglog import dispersion, fit_many
from hatchkit.relate.design import design
from hatchkit.relate.effect import effect, independent, shared_error, spread_moment, weighted_fit


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


def library_fit(died, at_risk, columns, offset):
    """The same model by statsmodels: shares with weights, since its two-column form gives a wrong scale in 0.15."""
    family = sm.families.Binomial(link=sm.families.links.CLogLog())
    offset = np.broadcast_to(offset, died.shape)
    return sm.GLM(died / at_risk, columns, family=family, var_weights=at_risk, offset=offset).fit(tol=1e-11)


def test_many_seasons_fit_as_statsmodels_fits_each():
    rng = np.random.default_rng(5)
    columns = np.column_stack([np.ones(30), rng.integers(0, 2, 30), rng.normal(size=30)])
    eggs = rng.integers(12, 150, 30).astype(float)
    died = rng.binomial(eggs.astype(int), 0.1, (4, 30)).astype(float)
    offset = np.log(rng.integers(3, 9, 30).astype(float))
    coef, covariance, share = fit_many(died, eggs, columns, offset)
    for one, b, v, p in zip(died, coef, covariance, share, strict=True):
        fit = library_fit(one, eggs, columns, offset)
        assert b == pytest.approx(fit.params, abs=1e-7)
        assert v == pytest.approx(fit.cov_params(), rel=1e-5)
        assert p == pytest.approx(fit.fittedvalues, abs=1e-8)


def test_without_extra_spread_the_weighted_fit_is_the_plain_one():
    died = np.array([1, 2, 1, 0, 1, 2, 1, 1, 2, 1, 4, 3, 5, 4.0])
    dose = np.r_[np.zeros(10), np.ones(4)]
    found = weighted_fit(died, np.full(14, 48.0), np.column_stack([dose, np.ones(14)]), np.zeros(14), np.arange(14), 1)
    plain = library_fit(died, np.full(14, 48.0), np.column_stack([dose, np.ones(14)]), np.zeros(14))
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


def test_an_incubator_that_holds_one_species_only_does_not_send_the_season_to_the_small_model():
    rng = np.random.default_rng(12)
    dose = np.tile([0, 0, 0, 1.0], 5)
    table = made(rng.binomial(48, np.where(dose > 0, 0.25, 0.06)), dose)
    ducks = np.arange(20) >= 12
    table["species"] = np.where(ducks, "duck", "chicken")
    table["incubator"] = np.where(ducks, "C", np.where(np.arange(20) % 2, "A", "B"))
    coded = design(table)
    assert coded.extra.shape[1] == 2
    found = effect(coded)
    assert found["method"] == "weighted quasi-binomial"
    # The species' baseline already is the third incubator's.
    same = effect(design(table.assign(incubator=np.where(ducks, "A", table["incubator"]))))
    assert found["log_ratio"] == pytest.approx(same["log_ratio"], abs=1e-6)
    assert found["freedom"] == same["freedom"]


def test_only_columns_that_say_something_new_are_kept():
    base = np.eye(3)[[0, 0, 1, 1, 2, 2]]
    new = np.array([0, 1, 0, 1, 0, 1.0])
    extra = np.column_stack([base[:, 0] + base[:, 1], new, 2 * new, np.zeros(6)])
    assert np.array_equal(independent(base, extra), new[:, None])
    assert independent(base, np.empty((6, 0))).shape == (6, 0)


def several(seed, *, batches=12, windows=3):
    """Counts of batches that share one effect in all their windows: died, at_risk, columns, batch."""
    rng = np.random.default_rng(seed)
    batch = np.repeat(np.arange(batches), windows)
    dose = np.repeat(np.where(np.arange(batches) < 4, np.arange(batches) % 4 + 1.0, 0.0), windows)
    eggs = np.full(len(batch), 60.0)
    columns = np.column_stack([dose, np.eye(windows)[np.tile(np.arange(windows), batches)]])
    died = rng.binomial(60, 0.1 * np.exp(rng.normal(0, 0.5, batches))[batch]).astype(float)
    return died, eggs, columns, batch


@pytest.mark.filterwarnings("ignore:Perfect separation")  # the library's hint where the fit meets every count
def test_where_batches_do_not_differ_the_shared_error_is_that_of_the_plain_model():
    _, eggs, columns, batch = several(1)
    died = 6.0 + np.tile([1.0, 0.0, -1.0], 12)
    fit = library_fit(died, eggs, columns, 0.0)
    error, freedom = shared_error(died, eggs, columns, fit.fittedvalues, np.ones(36), batch, 10)
    assert 1 <= freedom <= 10
    assert error == pytest.approx(fit.bse[0], rel=1e-8)


def test_the_shared_error_equals_the_full_matrix_written_out():
    died, eggs, columns, batch = several(2)
    fit = library_fit(died, eggs, columns, 0.0)
    share = fit.fittedvalues
    slope = eggs * -np.log1p(-share) * (1 - share)
    same = batch[:, None] == batch[None, :]
    # The k at which the batches' totals are as scattered as their number allows, by halving.
    low, high = 0.0, 50.0
    total = np.bincount(batch, died - eggs * share)
    for _ in range(80):
        k = (low + high) / 2
        covariance = np.diag(eggs * share * (1 - share)) + k * np.outer(slope, slope) * same
        spread = np.array([covariance[np.ix_(batch == b, batch == b)].sum() for b in range(12)])
        low, high = (k, high) if (total**2 / spread).sum() > 10 else (low, k)
    assert k > 0.05
    score = columns.T * slope / (eggs * share * (1 - share))
    inverse = np.linalg.inv(score * slope @ columns)
    wanted = np.sqrt((inverse @ score @ covariance @ score.T @ inverse)[0, 0])
    error, freedom = shared_error(died, eggs, columns, share, np.ones(36), batch, 10)
    assert error == pytest.approx(wanted, rel=1e-6)
    assert wanted > 1.2 * fit.bse[0]
    assert 1 <= freedom <= 10


def test_the_freedom_of_the_shared_error_is_as_unsure_as_the_error_itself():
    rng = np.random.default_rng(6)
    batch, eggs = np.repeat(np.arange(20), 2), np.full(40, 60.0)
    hit = batch < 4
    columns = np.column_stack([hit.astype(float), np.tile(np.eye(2), (20, 1))])
    hazard = 0.02 * np.exp(rng.normal(0, 0.5, (300, 20)))[:, batch] * np.where(hit, 8, 1)
    died = rng.binomial(60, -np.expm1(-hazard)).astype(float)
    share = np.clip(fit_many(died, eggs, columns)[2], 1e-9, 1 - 1e-9)
    error, freedom = np.array(
        [shared_error(d, eggs, columns, s, np.ones(40), batch, 18) for d, s in zip(died, share, strict=True)]
    ).T
    # A variance with so many degrees of freedom varies by 2 / freedom of its square.
    seen = 2 / np.var(np.log(error**2))
    assert np.median(freedom) < 15
    assert 0.5 < seen / np.median(freedom) < 2


def test_a_spread_that_is_far_above_luck_is_known_with_the_freedom_of_the_batches():
    rng = np.random.default_rng(3)
    batch = np.repeat(np.arange(12), 2)
    eggs = np.full(24, 1e6)
    columns = np.column_stack([np.repeat(np.arange(12) < 4, 2).astype(float), np.tile(np.eye(2), (12, 1))])
    died = np.round(1e4 * np.exp(rng.normal(0, 0.3, 12))[batch])
    share = library_fit(died, eggs, columns, 0.0).fittedvalues
    assert shared_error(died, eggs, columns, share, np.ones(24), batch, 10)[1] == pytest.approx(10, rel=0.02)


def test_batches_that_are_bad_in_all_their_windows_widen_the_interval():
    died, eggs, columns, batch = several(2)
    together = weighted_fit(died, eggs, columns, np.zeros(36), batch, 3)
    # The same counts as if every window were a batch of its own.
    apart = weighted_fit(died, eggs, columns, np.zeros(36), np.arange(36), 3)
    assert together["log_ratio"] == pytest.approx(apart["log_ratio"])
    assert together["error"] > 1.2 * apart["error"]
