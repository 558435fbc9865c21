"""The small Bayesian model for few batches: deaths per batch and window with a batch-to-batch spread.

log(-log(1 - p)) = X b + offset + u, u ~ Normal(0, sd^2) per group, priors b ~ Normal(mean, width),
sd ~ half-normal(1). The spread is summed over a grid, each u is integrated by adaptive Gauss-Hermite
quadrature, and the coefficients are drawn from a t proposal and weighted by the exact posterior.
"""

from dataclasses import dataclass

import numpy as np

#: Prior widths: intercepts on the log hazard, log hazard ratios, and the half-normal of the spread. With
#: half-normal(0.5) the coverage fell to 90-92 % where the true spread was 0.8; with 1 it stayed at 94 % or more.
INTERCEPT_WIDTH, RATIO_WIDTH, SPREAD_WIDTH = 1.5, 1.5, 1.0
NODES = 9


@dataclass(frozen=True)
class Posterior:
    """Weighted draws: coef (draws, terms), spread (draws,), weight (draws,) that sums to 1."""

    coef: np.ndarray
    spread: np.ndarray
    weight: np.ndarray

    def quantile(self, values, shares):
        """Weighted quantiles of one value per draw."""
        order = np.argsort(values)
        below = np.cumsum(self.weight[order]) - self.weight[order] / 2
        return np.interp(shares, below, values[order])

    def resample(self, draws, rng):
        """Equally weighted draws (coef, spread)."""
        take = rng.choice(len(self.weight), size=draws, p=self.weight)
        return self.coef[take], self.spread[take]


def posterior(
    died,
    at_risk,
    design,
    *,
    offset=0.0,
    group=None,
    prior_mean=0.0,
    prior_width=RATIO_WIDTH,
    draws=2000,
    grid=12,
    seed=1,
) -> Posterior:
    """Posterior of coefficients and spread.

    Parameters
    ----------
    died, at_risk : array (rows,)
    design : array (rows, terms)
    offset : array (rows,) or float
    group : int array (rows,), optional
        Rows that share one random effect (0, 1, ...); by default each row has its own.
    prior_mean, prior_width : array (terms,) or float
        Normal priors of the coefficients.
    draws, grid : int
        Draws in all, and points of the spread's grid.
    seed : int
    """
    died, at_risk, design = (np.asarray(part, float) for part in (died, at_risk, design))
    offset = np.broadcast_to(np.asarray(offset, float), died.shape)
    group = np.arange(len(died)) if group is None else np.asarray(group)
    terms = design.shape[1]
    mean, width = (np.broadcast_to(np.asarray(part, float), (terms,)) for part in (prior_mean, prior_width))
    spread = _spread_grid(grid)
    centre, scale = _proposal(died, at_risk, design, offset, group, mean, width, spread)
    rng = np.random.default_rng(seed)
    each = max(draws // grid, 2)
    normal = rng.standard_normal((grid, each, terms))
    chi = rng.chisquare(_FREEDOM, (grid, each, 1)) / _FREEDOM
    z = normal / np.sqrt(chi)
    coef = centre[:, None, :] + np.einsum("gij,gdj->gdi", scale, z)
    log_q = (
        -0.5 * (_FREEDOM + terms) * np.log1p((z**2).sum(-1) / _FREEDOM) - np.log(np.abs(np.linalg.det(scale)))[:, None]
    )
    coef = coef.reshape(-1, terms)
    sd = np.repeat(spread, each)
    log_p = log_likelihood(died, at_risk, coef @ design.T + offset, sd, group)
    log_p = log_p - 0.5 * (((coef - mean) / width) ** 2).sum(1)
    weight = np.exp(log_p - log_q.ravel() - (log_p - log_q.ravel()).max())
    return Posterior(coef, sd, weight / weight.sum())


_FREEDOM = 6.0


def _spread_grid(grid):
    """Points of equal prior probability of the half-normal."""
    from scipy.special import ndtri

    return SPREAD_WIDTH * ndtri(0.5 + 0.5 * (np.arange(grid) + 0.5) / grid)


def log_likelihood(died, at_risk, eta, spread, group):
    """Log of the likelihood with the group effects integrated out (binomial constants left out).

    Parameters
    ----------
    died, at_risk : array (rows,)
    eta : array (draws, rows)
        Linear predictor without the group effect.
    spread : array (draws,)
    group : int array (rows,)

    Returns
    -------
    array (draws,)
    """
    parts = _nodes(died, at_risk, eta, spread, group)
    top = parts.max(axis=0)
    return (np.log(np.exp(parts - top).sum(axis=0)) + top).sum(axis=1)


def _nodes(died, at_risk, eta, spread, group, score=None):
    """Log contributions (nodes, draws, groups); node places follow each group's own counts.

    The centre and width that place the nodes come from the group's pooled share of dead as one
    binomial count; the integrand itself is exact.
    """
    z, w = np.polynomial.hermite.hermgauss(NODES)
    own = len(group) == group.max(initial=-1) + 1 and np.array_equal(group, np.arange(len(group)))
    member = None if own else np.eye(group.max() + 1)[group]
    total = died if own else died @ member
    hazard = np.exp(eta)
    mass = at_risk * hazard if own else (at_risk * hazard) @ member
    eggs = at_risk if own else at_risk @ member
    share = (total + 0.5) / (eggs + 1.0)
    pooled = -np.log1p(-share)
    known = eggs * pooled**2 * (1 - share) / share
    inverse = 1 / spread[:, None] ** 2
    width2 = 1 / (inverse + known)
    middle = width2 * known * np.log(pooled * eggs / np.maximum(mass, 1e-300))
    width = np.sqrt(width2)
    out = np.empty((NODES, *middle.shape))
    alive = at_risk - died
    for k in range(NODES):
        u = middle + np.sqrt(2) * z[k] * width
        now = np.minimum(hazard * np.exp(u if own else u[:, group]), 500.0)
        row = died * np.log(-np.expm1(-np.maximum(now, 1e-300))) - alive * now
        row = row if own else row @ member
        out[k] = row - 0.5 * u**2 * inverse + np.log(w[k]) + z[k] ** 2
        if score is not None:
            score[k] = died * now / np.expm1(np.maximum(now, 1e-300)) - alive * now
    return out + np.log(width / spread[:, None]) - 0.5 * np.log(np.pi)


def _proposal(died, at_risk, design, offset, group, mean, width, spread, rounds=12):
    """Mode and scale of the coefficients for each spread (Fisher scoring with a working information)."""
    terms = design.shape[1]
    pairs = np.einsum("np,nq->npq", design, design).reshape(len(design), terms**2)
    centre = np.tile(mean, (len(spread), 1))
    prior = np.diag(1 / width**2)
    size = np.bincount(group)[group]
    for _ in range(rounds):
        eta = np.clip(centre @ design.T + offset, -25, 3)
        score = np.empty((NODES, *eta.shape))
        parts = _nodes(died, at_risk, eta, spread, group, score)
        share = np.exp(parts - parts.max(axis=0))
        share = (share / share.sum(axis=0))[:, :, group]
        gradient = (share * score).sum(axis=0) @ design - (centre - mean) / width**2
        expected = at_risk * np.exp(eta) + died
        weight = 0.5 * expected / (1 + 0.5 * size * expected * spread[:, None] ** 2)
        information = (weight @ pairs).reshape(-1, terms, terms) + prior
        step = np.linalg.solve(information, gradient[..., None])[..., 0]
        centre = centre + np.clip(step, -1.5, 1.5)
        if np.abs(step).max() < 0.02:
            break
    return centre, np.linalg.cholesky(np.linalg.inv(information)) * 1.1
