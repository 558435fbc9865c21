"""The same computations as hatchkit.relate for thousands of one-window seasons at once.

Each function is checked against `relate_counts` on single seasons by the scripts that use it.
"""

from __future__ import annotations

import numpy as np

from hatchkit.relate import bayes
from hatchkit.relate.cloglog import _parts, dispersion
from hatchkit.relate.permutation import deal, intra_batch_correlation, standardised
from hatchkit.relate.verdict import rules

DAYS = 7.0


def draw(rng, seasons, batches, exposed, eggs, base, spread, ratio):
    """Deaths (seasons, batches), deaths had there been no exposure, by the same luck."""
    hit = np.arange(batches) < exposed
    eta = np.log(-np.log1p(-base)) + spread * rng.standard_normal((seasons, batches))
    without = -np.expm1(-np.exp(eta))
    with_ = np.where(hit, -np.expm1(-np.exp(eta) * ratio), without)
    died = rng.binomial(eggs, with_)
    # Each death would have happened without exposure with probability without / with (ratio >= 1).
    spared = rng.binomial(died, np.where(with_ > 0, without / with_, 0.0))
    return died.astype(float), spared.astype(float), hit


def permutation_share(died, eggs, hit):
    """One-sided share of arrangements, and the number of arrangements."""
    batches = len(hit)
    at_risk = np.full(batches, float(eggs))
    share = np.repeat(died.mean(1, keepdims=True) / eggs, batches, axis=1)
    rho = intra_batch_correlation(died, at_risk, share, batches - 1)
    residual = standardised(died, at_risk, share, rho[:, None])
    order, _ = deal(hit.astype(int), np.zeros(batches), draws=4000)
    dealt = (hit - hit.mean())[order]
    out = np.empty(len(died))
    for part in np.array_split(np.arange(len(died)), max(1, len(died) // 200)):
        score = residual[part] @ dealt.T
        out[part] = (score >= score[:, :1] - 1e-9).mean(1)
    return out, len(order)


def weighted_interval(died, eggs, hit):
    """Log hazard ratio and interval of `effect.weighted_fit`, all seasons together."""
    from scipy.stats import t

    batches = len(hit)
    at_risk = np.full(batches, float(eggs))
    columns = np.column_stack([hit.astype(float), np.ones(batches)])
    freedom = batches - 2
    weight = np.ones_like(died)
    for _ in range(3):
        coef, covariance, share = _weighted(died * weight, at_risk * weight, columns)
        k = _spread(died, at_risk, share, freedom)
        weight = 1 / (1 + (at_risk - 1) * k[:, None] * share / (1 - share))
    coef, covariance, share = _weighted(died * weight, at_risk * weight, columns)
    phi = np.maximum(1, dispersion(died * weight, at_risk * weight, share, freedom))
    error = np.sqrt(covariance[:, 0, 0] * phi)
    reach = t.ppf(0.5 + rules()["interval"] / 2, freedom) * error
    below = t.ppf(1 - rules()["clear_chance"], freedom) * error
    return coef[:, 0], coef[:, 0] - reach, coef[:, 0] + reach, coef[:, 0] - below


def _weighted(died, at_risk, columns):
    coef = np.zeros((len(died), 2))
    coef[:, 1] = np.log(-np.log1p(-died.sum(1) / at_risk.sum(1)))
    pairs = np.einsum("np,nq->npq", columns, columns).reshape(-1, 4)
    for _ in range(40):
        share, slope, weight = _parts(coef @ columns.T, at_risk)
        information = (weight @ pairs).reshape(-1, 2, 2) + np.eye(2) * 1e-9
        step = np.linalg.solve(information, (((died - at_risk * share) * slope) @ columns)[..., None])[..., 0]
        coef = coef + np.clip(step, -2, 2)
        if np.abs(step).max() < 1e-9:
            break
    share = np.clip(_parts(coef @ columns.T, at_risk)[0], 1e-12, 1 - 1e-12)
    return coef, np.linalg.inv(information), share


def _spread(died, at_risk, share, freedom):
    squares = (died - at_risk * share) ** 2 / (at_risk * share * (1 - share))
    growth = (at_risk - 1) * share / (1 - share)
    low, high = np.zeros(len(died)), np.full(len(died), 100.0)
    for _ in range(60):
        middle = (low + high) / 2
        more = (squares / (1 + middle[:, None] * growth)).sum(1) > freedom
        low, high = np.where(more, middle, low), np.where(more, high, middle)
    return np.where(squares.sum(1) > freedom, (low + high) / 2, 0.0)


class GridBayes:
    """The small Bayesian model of one window on a grid of baseline, exposed log hazard and spread."""

    def __init__(self, eggs, *, points=81, spreads=12):
        self.eta = np.linspace(-9.0, 1.0, points)
        self.spread = bayes._spread_grid(spreads)
        z, w = np.polynomial.hermite_e.hermegauss(50)
        hazard = np.exp(self.eta[:, None, None] + self.spread[:, None] * z)
        died = np.arange(eggs + 1)[:, None, None, None]
        with np.errstate(divide="ignore"):
            log = died * np.log(-np.expm1(-hazard)) - (eggs - died) * hazard
        top = log.max(-1, keepdims=True)
        self.table = (np.log((np.exp(log - top) * (w / w.sum())).sum(-1)) + top[..., 0]).reshape(eggs + 1, -1)
        mean = np.log(rules()["daily_hazard"] * DAYS)
        self.prior = -0.5 * ((self.eta - mean) / bayes.INTERCEPT_WIDTH) ** 2
        self.eggs = eggs

    def _group(self, died):
        counts = np.apply_along_axis(np.bincount, 1, died.astype(int), minlength=self.eggs + 1)
        return (counts @ self.table).reshape(len(died), len(self.eta), len(self.spread))

    def interval(self, died, hit):
        """Posterior median and interval of the log hazard ratio."""
        free = self._group(died[:, ~hit]) + self.prior[:, None]
        exposed = self._group(died[:, hit])
        shift = free.max((1, 2), keepdims=True), exposed.max((1, 2), keepdims=True)
        free, exposed = np.exp(free - shift[0]), np.exp(exposed - shift[1])
        points = len(self.eta)
        step = self.eta[1] - self.eta[0]
        lags = np.arange(-points + 1, points)
        mass = np.empty((len(died), len(lags)))
        for i, lag in enumerate(lags):
            a = free[:, max(0, -lag) : points - max(0, lag)]
            b = exposed[:, max(0, lag) : points - max(0, -lag)]
            mass[:, i] = (a * b).sum((1, 2)) * np.exp(-0.5 * (lag * step / bayes.RATIO_WIDTH) ** 2)
        below = np.cumsum(mass, 1) - mass / 2
        below /= mass.sum(1, keepdims=True)
        tail = (1 - rules()["interval"]) / 2
        ends = np.array([np.interp([0.5, tail, 1 - tail, rules()["clear_chance"]], row, lags * step) for row in below])
        return tuple(ends.T)

    def predictive(self, rng, died, hit, draws=300):
        """Draws (seasons, draws) of the exposed batches' deaths together had they not been exposed."""
        post = self._group(died[:, ~hit]) + self.prior[:, None]
        post = np.exp(post - post.max((1, 2), keepdims=True)).reshape(len(died), -1)
        below = np.cumsum(post, 1)
        below /= below[:, -1:]
        pick = np.array([np.searchsorted(row, rng.random(draws)) for row in below])
        step = self.eta[1] - self.eta[0]
        eta = self.eta[pick // len(self.spread)] + step * (rng.random(pick.shape) - 0.5)
        spread = self.spread[pick % len(self.spread)]
        total = np.zeros(pick.shape)
        for _ in range(int(hit.sum())):
            hazard = np.exp(eta + spread * rng.standard_normal(pick.shape))
            total += rng.binomial(self.eggs, -np.expm1(-hazard))
        return total


def seasons_verdict(died, eggs, hit, grid=None):
    """more, log ratio, low, high, clear for every season (nan where nothing died)."""
    limit = rules()
    more, _ = permutation_share(died, eggs, hit)
    deaths = died.sum(1)
    out = np.full((4, len(died)), np.nan)
    both = (died[:, hit].sum(1) > 0) & (died[:, ~hit].sum(1) > 0)
    large = len(hit) >= limit["weighted_batches"] and hit.sum() >= limit["weighted_exposed"]
    quick = both if large else np.zeros(len(died), bool)
    if quick.any():
        out[:, quick] = weighted_interval(died[quick], eggs, hit)
    slow = ~quick & (deaths > 0)
    if slow.any():
        grid = grid or GridBayes(eggs)
        out[:, slow] = grid.interval(died[slow], hit)
    enough = (
        (len(hit) >= limit["least_batches"]) & (hit.sum() >= limit["least_exposed"]) & (deaths >= limit["least_deaths"])
    )
    clear = enough & (more <= limit["clear_chance"]) & (out[3] > 0)
    return more, *out[:3], clear
