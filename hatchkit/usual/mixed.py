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
from scipy.special import expit

#: Spread between the groups of a factor, and between hatches (sd of the log odds), with a half-normal prior each.
SPREADS = np.array([0.03, 0.12, 0.25, 0.4, 0.6, 0.9, 1.3])
GROUP_WIDTH, HATCH_WIDTH = 0.5, 0.5
#: A factor beside the one asked for (the year, say) needs a coarser grid.
BESIDE = np.array([0.03, 0.2, 0.45, 0.9])
#: Spread between rows beyond chance: as sd of the log odds, log-normal about 0.35.
ROWS = np.array([0.0, 0.2, 0.4, 0.8])
ROWS_MIDDLE, ROWS_LOG_SD = 0.35, 0.6
#: Above so many rows a coarser grid does.
MANY = 400
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
    sizes = [int(own.max()) + 1 for own in codes.values()]
    # Column 0 is the level; each row stands in one column of every factor.
    columns = np.column_stack(
        [np.zeros(len(count), int)]
        + [own + first for own, first in zip(codes.values(), np.cumsum([1, *sizes[:-1]]), strict=True)]
    )
    few = len(count) <= MANY  # many rows tell the spreads themselves
    grids = [SPREADS if place == 0 and few else BESIDE for place in range(len(sizes))]
    grid = np.array(list(product(*grids, SPREADS[::2] if shared else [0.0], ROWS)))
    groups, between, rows = grid[:, :-2], grid[:, -2], grid[:, -1]
    middle = float(np.log((count.sum() + 0.5) / (total.sum() - count.sum() + 0.5)))
    mode, inverse, log_weight = _fit(count, total, columns, hatch if shared else None, grid, middle, sizes)
    log_weight = log_weight + _prior(groups, GROUP_WIDTH).sum(axis=1) + (_prior(between, HATCH_WIDTH) if shared else 0)
    log_weight = log_weight + np.where(
        rows > 0, -0.5 * (np.log(np.maximum(rows, 0.05) / ROWS_MIDDLE) / ROWS_LOG_SD) ** 2, -2.0
    )
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
    starts = None if hatch is None else np.flatnonzero(np.r_[True, np.diff(hatch) > 0])
    at = np.zeros(1 + sum(sizes))
    at[0] = middle
    own = np.zeros(0 if hatch is None else len(starts))
    modes, covariances, logs = [], [], []
    for spreads in grid:  # each begins where the one before it ended
        precision = np.concatenate(
            [[LEVEL_WIDTH**-2.0], *(np.full(size, spreads[place] ** -2.0) for place, size in enumerate(sizes))]
        )
        at, own, covariance, log_p = _mode(
            count, total, columns, hatch, starts, at, own, precision, middle, spreads[-2], spreads[-1]
        )
        modes.append(at), covariances.append(covariance), logs.append(log_p)
    return np.array(modes), np.array(covariances), np.array(logs)


def _mode(count, total, columns, hatch, starts, at, own, precision, middle, between, rows):
    """Mode for one set of spreads: effects, hatches, covariance of the effects, log marginal likelihood."""
    size, centre = len(at), np.zeros(len(at))
    centre[0] = middle
    for _ in range(40):
        share = np.clip(expit(at[columns].sum(axis=1) + (0 if hatch is None else own[hatch])), 1e-9, 1 - 1e-9)
        wide = 1 + np.maximum(total - 1, 0) * np.minimum(rows**2 * share * (1 - share), 0.5)
        gap, weight = (count - total * share) / wide, total * share * (1 - share) / wide
        score = _sums(columns.T, gap, size) - precision * (at - centre)
        pairs = [one * size + other for one in columns.T for other in columns.T]
        inner = _sums(pairs, weight, size * size).reshape(size, size) + np.diag(precision)
        if hatch is None:
            step, logdet = np.linalg.solve(inner, score), np.linalg.slogdet(inner)[1]
        else:
            cross = _sums([hatch * size + one for one in columns.T], weight, len(own) * size).reshape(-1, size)
            diagonal = np.add.reduceat(weight, starts) + between**-2.0
            other = np.add.reduceat(gap, starts) - own * between**-2.0
            inner = inner - cross.T @ (cross / diagonal[:, None])
            step = np.linalg.solve(inner, score - cross.T @ (other / diagonal))
            logdet = np.linalg.slogdet(inner)[1] + np.log(diagonal).sum()
            own = own + np.clip((other - cross @ step) / diagonal, -2, 2)
        at = at + np.clip(step, -2, 2)
        if np.abs(step).max() < 1e-5:
            break
    share = np.clip(expit(at[columns].sum(axis=1) + (0 if hatch is None else own[hatch])), 1e-9, 1 - 1e-9)
    log_p = _log_likelihood(count, total, share, rows) - 0.5 * (precision * (at - centre) ** 2).sum()
    log_p += 0.5 * np.log(precision).sum() - 0.5 * logdet
    if hatch is not None:
        log_p -= 0.5 * (own**2).sum() / between**2 + len(own) * np.log(between)
    return at, own, np.linalg.inv(inner), log_p


def _sums(places, values, size) -> np.ndarray:
    """Sums of `values` over each list of places."""
    return sum(np.bincount(place, values, minlength=size) for place in places)


def _log_likelihood(count, total, share, rows) -> float:
    """Log likelihood of the rows; beta-binomial with variance (rows x share x (1 - share))^2 of the shares."""
    from scipy.special import betaln, xlog1py, xlogy

    if rows == 0:
        return float((xlogy(count, share) + xlog1py(total - count, -share)).sum())
    size = 1 / np.clip(rows**2 * share * (1 - share), 1e-9, 0.5) - 1
    a, b = share * size, (1 - share) * size
    return float((betaln(a + count, b + total - count) - betaln(a, b)).sum())
