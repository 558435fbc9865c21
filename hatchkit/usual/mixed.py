"""Shares of groups by partial pooling: small groups are drawn towards all, the more so the less they differ.

Each row (a batch, or one hen's eggs in a batch) has a count out of eggs. Its log odds are a level, plus an effect of
each group that it belongs to (breed, year, ...), plus, where several rows share one hatch, an effect of the hatch.
Rows differ beyond chance (beta-binomial). Effects are normal with a spread of their own; the spreads lie on a grid with
stated priors, and for each the effects are found by Fisher scoring and Laplace's approximation (Breslow & Clayton 1993,
J Am Stat Assoc 88:9, from memory). Hatches are eliminated one by one, so that the cost is linear in the rows.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import product

import numpy as np

#: Spread between the groups of a factor, and between hatches (sd of the log odds), with a half-normal prior each.
SPREADS = np.array([0.03, 0.12, 0.25, 0.4, 0.6, 0.9, 1.3])
GROUP_WIDTH, HATCH_WIDTH = 0.5, 0.5
#: A factor beside the one asked for (the year, say) needs a coarser grid.
BESIDE = np.array([0.03, 0.2, 0.45, 0.9])
#: Spread between rows beyond chance: as sd of the log odds, log-normal about 0.35.
ROWS = np.array([0.0, 0.2, 0.35, 0.55, 0.85])
ROWS_MIDDLE, ROWS_LOG_SD = 0.35, 0.6
#: Width of the prior of the level, log odds.
LEVEL_WIDTH = 1.5


@dataclass(frozen=True)
class Mixed:
    """Posterior of the level and the effects as equally weighted draws.

    Attributes
    ----------
    level : ndarray (draws,)
        Log odds without any effect.
    effects : dict
        Factor -> ndarray (draws, groups).
    spread : dict
        Factor (and "hatch", "rows") -> posterior mean of its spread.
    """

    level: np.ndarray
    effects: dict
    spread: dict

    def share(self, factor: str, group: int) -> np.ndarray:
        """Draws of the share of one group, everything else as usual."""
        return expit(self.level + self.effects[factor][:, group])


def expit(x):
    """Share for log odds."""
    return 1 / (1 + np.exp(-np.clip(x, -30, 30)))


def pool(count, total, factors: dict, *, hatch=None, draws: int = 4000, seed: int = 1) -> Mixed:
    """Partial pooling of shares.

    Parameters
    ----------
    count, total : array (rows,)
        Eggs; parts of eggs are allowed.
    factors : dict
        Name -> int codes (rows,), from 0 without holes; the first is the one asked about.
    hatch : int array (rows,), optional
        Which rows share one hatch.
    draws, seed : int

    Returns
    -------
    Mixed
    """
    count, total = np.asarray(count, float), np.asarray(total, float)
    hatch = np.arange(len(count)) if hatch is None else np.unique(hatch, return_inverse=True)[1]
    shared = len(np.unique(hatch)) < len(hatch)
    order = np.argsort(hatch, kind="stable")
    count, total, hatch = count[order], total[order], hatch[order]
    codes = {name: np.asarray(own, int)[order] for name, own in factors.items()}
    columns = np.column_stack([np.ones(len(count))] + [np.eye(own.max() + 1)[own] for own in codes.values()])
    sizes = [int(own.max()) + 1 for own in codes.values()]
    grids = [SPREADS if place == 0 else BESIDE for place in range(len(sizes))]
    grid = np.array(list(product(*grids, SPREADS[::2] if shared else [0.0], ROWS)))
    groups, between, rows = grid[:, :-2], grid[:, -2], grid[:, -1]
    middle = float(np.log((count.sum() + 0.5) / (total.sum() - count.sum() + 0.5)))
    parts = [_fit(count, total, columns, hatch if shared else None, own, middle, sizes) for own in
             np.array_split(np.column_stack([groups, between, rows]), max(1, len(grid) * len(count) // 400_000))]
    mode, inverse, log_weight = (np.concatenate(part) for part in zip(*parts, strict=True))
    log_weight = log_weight + _prior(groups, GROUP_WIDTH).sum(axis=1) + (_prior(between, HATCH_WIDTH) if shared else 0)
    log_weight = log_weight + np.where(
        rows > 0, -0.5 * (np.log(np.maximum(rows, 0.05) / ROWS_MIDDLE) / ROWS_LOG_SD) ** 2, -2.0)
    weight = np.exp(log_weight - log_weight.max())
    weight /= weight.sum()
    rng = np.random.default_rng(seed)
    pick = rng.choice(len(weight), size=draws, p=weight)
    root = np.linalg.cholesky(inverse + 1e-12 * np.eye(inverse.shape[1]))
    drawn = mode[pick] + np.einsum("dij,dj->di", root[pick], rng.standard_normal((draws, mode.shape[1])))
    ends = np.cumsum([1, *sizes])
    effects = {name: drawn[:, first:last] for name, first, last in zip(codes, ends[:-1], ends[1:], strict=True)}
    spread = {name: float(weight @ groups[:, place]) for place, name in enumerate(codes)}
    return Mixed(drawn[:, 0], effects, {**spread, "hatch": float(weight @ between), "rows": float(weight @ rows)})


def _prior(spread, width):
    """Log half-normal density on a grid of even steps in the log, about."""
    return -0.5 * (spread / width) ** 2 + np.log(np.maximum(spread, 1e-9) + 0.05)


def _fit(count, total, columns, hatch, grid, middle, sizes):
    """Modes (grid, terms), covariances, and log marginal likelihoods for each row of spreads."""
    precision = np.concatenate([np.full((len(grid), 1), LEVEL_WIDTH ** -2.0)]
                               + [np.repeat(grid[:, [place]] ** -2.0, size, axis=1)
                                  for place, size in enumerate(sizes)], axis=1)
    between = grid[:, -2][:, None]
    at = np.zeros((len(grid), columns.shape[1]))
    at[:, 0] = middle
    centre = at.copy()
    starts = None if hatch is None else np.flatnonzero(np.r_[True, np.diff(hatch) > 0])
    own = None if hatch is None else np.zeros((len(grid), len(starts)))
    for _ in range(25):
        share, spread = _shares(at, own, columns, hatch, total, grid[:, -1])
        gap, weight = (count - total * share) / spread, total * share * (1 - share) / spread
        score = gap @ columns - precision * (at - centre)
        inner = np.einsum("gr,rp,rq->gpq", weight, columns, columns, optimize=True)
        inner[:, np.arange(at.shape[1]), np.arange(at.shape[1])] += precision
        if hatch is None:
            step = np.linalg.solve(inner, score[..., None])[..., 0]
            logdet = np.linalg.slogdet(inner)[1]
        else:
            cross = np.add.reduceat(weight[:, :, None] * columns[None], starts, axis=1)
            diagonal = np.add.reduceat(weight, starts, axis=1) + between ** -2.0
            other = np.add.reduceat(gap, starts, axis=1) - own * between ** -2.0
            inner = inner - np.einsum("ghp,gh,ghq->gpq", cross, 1 / diagonal, cross, optimize=True)
            step = np.linalg.solve(inner, (score - np.einsum("ghp,gh->gp", cross, other / diagonal))[..., None])[..., 0]
            side = (other - np.einsum("ghp,gp->gh", cross, step)) / diagonal
            logdet = np.linalg.slogdet(inner)[1] + np.log(diagonal).sum(axis=1)
            own = own + np.clip(side, -2, 2)
        at = at + np.clip(step, -2, 2)
        if np.abs(step).max() < 1e-6:
            break
    share, _ = _shares(at, own, columns, hatch, total, grid[:, -1])
    log_p = _log_likelihood(count, total, share, grid[:, -1]) - 0.5 * (precision * (at - centre) ** 2).sum(axis=1)
    log_p = log_p + 0.5 * np.log(precision).sum(axis=1) - 0.5 * logdet
    if hatch is not None:
        log_p = log_p - 0.5 * (own**2 / between**2).sum(axis=1) - own.shape[1] * np.log(between[:, 0])
    return at, np.linalg.inv(inner), log_p


def _shares(at, own, columns, hatch, total, rows):
    share = np.clip(expit(at @ columns.T + (0 if own is None else own[:, hatch])), 1e-9, 1 - 1e-9)
    rho = np.minimum(rows[:, None] ** 2 * share * (1 - share), 0.5)
    return share, 1 + np.maximum(total - 1, 0) * rho


def _log_likelihood(count, total, share, rows):
    """Beta-binomial log likelihood per grid point; variance (rows x share x (1 - share))^2 of the shares."""
    from scipy.special import betaln, xlog1py, xlogy

    plain = (xlogy(count, share) + xlog1py(total - count, -share)).sum(axis=1)
    size = 1 / np.maximum(np.minimum(rows[:, None] ** 2 * share * (1 - share), 0.5), 1e-9) - 1
    a, b = share * size, (1 - share) * size
    wide = (betaln(a + count, b + total - count) - betaln(a, b)).sum(axis=1)
    return np.where(rows > 0, wide, plain)
