"""The small Bayesian model: its integral, its posterior, and its answer where a plain fit runs away."""

import numpy as np
import pytest

from hatchkit.relate.bayes import log_likelihood, posterior


def summed(died, at_risk, eta, spread):
    """The likelihood of one batch, its effect summed over a fine grid."""
    u = np.linspace(-9 * spread, 9 * spread, 40001)
    hazard = np.exp(eta + u)
    log = died * np.log(-np.expm1(-hazard)) - (at_risk - died) * hazard - u**2 / 2 / spread**2
    return np.log(np.trapezoid(np.exp(log), u) / spread / np.sqrt(2 * np.pi))


@pytest.mark.parametrize(
    ("died", "eggs", "share", "spread"),
    [(0, 12, 0.02, 0.8), (3, 48, 0.02, 0.8), (30, 150, 0.08, 0.8), (1, 48, 0.02, 0.06), (12, 300, 0.02, 1.0)],
)
def test_the_batch_effect_is_integrated_as_a_fine_sum_does_it(died, eggs, share, spread):
    eta = np.log(-np.log1p(-share))
    found = log_likelihood(np.array([died]), np.array([eggs]), np.array([[eta]]), np.array([spread]), np.array([0]))
    assert found[0] == pytest.approx(summed(died, eggs, eta, spread), abs=2e-4)


def test_windows_of_one_batch_can_share_its_effect():
    eta = np.log(0.03)
    died, eggs = np.array([2.0, 3.0]), np.array([40.0, 38.0])
    together = log_likelihood(died, eggs, np.full((1, 2), eta), np.array([0.7]), np.array([0, 0]))
    u = np.linspace(-6, 6, 20001)
    hazard = np.exp(eta + u)
    log = died.sum() * np.log(-np.expm1(-hazard)) - (eggs - died).sum() * hazard - u**2 / 2 / 0.49
    assert together[0] == pytest.approx(np.log(np.trapezoid(np.exp(log), u) / 0.7 / np.sqrt(2 * np.pi)), abs=2e-4)


def test_posterior_of_the_toy_season_agrees_with_a_grid_and_with_mcmc():
    # Grid with 60 nodes: mean 1.458, sd 0.682, P(b < 0) 0.022; emcee 3.1.6: 1.441, 0.691, 0.026.
    died = np.array([0, 1, 0, 3, 5, 1, 2, 0.0])
    dose = np.array([0, 0, 0, 1, 1, 0, 0, 0.0])
    post = posterior(
        died,
        np.full(8, 48.0),
        np.column_stack([np.ones(8), dose]),
        prior_mean=[np.log(0.03), 0.0],
        prior_width=1.5,
        draws=20_000,
    )
    b = post.coef[:, 1]
    mean = (post.weight * b).sum()
    assert mean == pytest.approx(1.458, abs=0.03)
    assert np.sqrt((post.weight * (b - mean) ** 2).sum()) == pytest.approx(0.682, abs=0.03)
    assert (post.weight * (b < 0)).sum() == pytest.approx(0.0217, abs=0.006)
    assert 1 / (post.weight**2).sum() > 5000


def test_the_same_seed_gives_the_same_posterior():
    died, design = np.array([0.0, 2.0, 1.0]), np.ones((3, 1))
    first, again = (posterior(died, np.full(3, 20.0), design, prior_mean=-3.5, draws=240) for _ in range(2))
    assert np.array_equal(first.coef, again.coef)
