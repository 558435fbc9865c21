"""Partial pooling worked out the long way: one dense matrix for each set of spreads, with the priors as stated."""

from itertools import product

import numpy as np
import pytest
from scipy import special, stats

from hatchkit.usual import mixed
from hatchkit.usual.mixed import expit, pool

WIDE, COARSE = (0.03, 0.12, 0.25, 0.4, 0.6, 0.9, 1.3), (0.03, 0.2, 0.45, 0.9)
HATCHES, ROWS = (0.03, 0.25, 0.6, 1.3), (0.0, 0.2, 0.4, 0.8)


def dense_mode(count, total, matrix, spreads, rows, middle):
    """Fisher scoring to rest with explicit columns (level, groups, hatches): mode, covariance, log marginal."""
    penalty = np.diag(np.asarray(spreads) ** -2.0)
    centre = np.r_[middle, np.zeros(matrix.shape[1] - 1)]
    at = centre.copy()
    for _ in range(400):
        share = expit(matrix @ at)
        wide = 1 + (total - 1) * np.minimum(rows**2 * share * (1 - share), 0.5)
        information = matrix.T @ np.diag(total * share * (1 - share) / wide) @ matrix + penalty
        step = np.linalg.solve(information, matrix.T @ ((count - total * share) / wide) - penalty @ (at - centre))
        at = at + np.clip(step, -1, 1)
        if np.abs(step).max() < 1e-11:
            break
    share = expit(matrix @ at)
    if rows:
        size = 1 / (rows**2 * share * (1 - share)) - 1
        told = stats.betabinom(total, share * size, (1 - share) * size).logpmf(count).sum()
    else:
        told = stats.binom(total, share).logpmf(count).sum()
    # The integral of a normal about the mode, by its whole covariance.
    told += stats.norm(centre, spreads).logpdf(at).sum() + 0.5 * len(at) * np.log(2 * np.pi)
    return at, np.linalg.inv(information), told - 0.5 * np.linalg.slogdet(information)[1]


def pooled_by_hand(count, total, factors, hatch=None, few=True):
    """Mean and covariance of level and effects, and mean spreads, summed over the grid."""
    sizes = [own.max() + 1 for own in factors]
    parts = [np.ones((len(count), 1)), *(np.eye(size)[own] for size, own in zip(sizes, factors, strict=True))]
    if hatch is not None:
        parts.append(np.eye(hatch.max() + 1)[hatch])
    matrix = np.hstack(parts)
    middle = np.log((count.sum() + 0.5) / (total.sum() - count.sum() + 0.5))
    grids = [WIDE if place == 0 and few else COARSE for place in range(len(sizes))]
    terms, found = 1 + sum(sizes), []
    for *groups, between, rows in product(*grids, HATCHES if hatch is not None else [0.0], ROWS):
        spreads = np.concatenate([[1.5], *(np.full(size, own) for size, own in zip(sizes, groups, strict=True)),
                                  np.full(0 if hatch is None else hatch.max() + 1, between)])  # fmt: skip
        at, covariance, log = dense_mode(count, total, matrix, spreads, rows, middle)
        for spread in [*groups, *([between] if hatch is not None else [])]:
            log += -0.5 * (spread / 0.5) ** 2 + np.log(spread + 0.05)
        log += -0.5 * (np.log(rows / 0.35) / 0.6) ** 2 if rows else -2.0
        found.append((log, at[:terms], covariance[:terms, :terms], np.array([*groups, between, rows])))
    logs, modes, covariances, spreads = map(np.array, zip(*found, strict=True))
    weight = special.softmax(logs)
    mean = weight @ modes
    away = modes - mean
    cover = np.einsum("g,gij->ij", weight, covariances) + np.einsum("g,gi,gj->ij", weight, away, away)
    return mean, cover, weight @ spreads


COUNT, TOTAL = np.array([20, 9, 31, 14, 3, 25]), np.array([27, 22, 34, 20, 18, 26])
BREED, YEAR, HATCH = np.array([0, 0, 1, 1, 2, 2]), np.array([0, 1, 0, 1, 0, 1]), np.array([2, 0, 1, 1, 0, 2])


@pytest.mark.parametrize(("second", "hatch"), [(False, False), (True, False), (False, True)])
def test_pooling_is_the_sum_over_the_stated_spreads(second, hatch):
    factors = {"breed": BREED} | ({"year": YEAR} if second else {})
    found = pool(COUNT, TOTAL, factors, hatch=HATCH if hatch else None, draws=20_000)
    mean, cover, spreads = pooled_by_hand(COUNT, TOTAL, list(factors.values()), HATCH if hatch else None)
    # Spreads are no draws but sums: they agree as closely as the turns of Fisher's scoring do.
    names = [*factors, "hatch", "rows"]
    assert [found.spread[name] for name in names] == pytest.approx(spreads, rel=2e-4)
    drawn = np.column_stack([found.level, *found.effects.values()])
    error = 4.5 * np.sqrt(np.diag(cover) / 20_000)
    assert (np.abs(drawn.mean(axis=0) - mean) < error).all()
    assert np.cov(drawn.T) == pytest.approx(cover, abs=0.06 * np.diag(cover).max())
    assert found.effects["breed"].shape == (20_000, 3)
    assert found.share("breed", 1) == pytest.approx(expit(found.level + found.effects["breed"][:, 1]))


def test_many_rows_do_with_the_coarser_grid(monkeypatch):
    """At most `MANY` rows have the fine grid of seven spreads, one more has four."""
    assert mixed.MANY == 400
    for most, few in ((6, True), (5, False)):
        monkeypatch.setattr(mixed, "MANY", most)
        spread = pool(COUNT, TOTAL, {"breed": BREED}, draws=10).spread["breed"]
        assert spread == pytest.approx(pooled_by_hand(COUNT, TOTAL, [BREED], few=few)[2][0], rel=2e-4)


def test_hatches_of_one_row_each_are_no_hatches():
    alone = pool(COUNT, TOTAL, {"breed": BREED}, hatch=np.arange(6), draws=50)
    plain = pool(COUNT, TOTAL, {"breed": BREED}, draws=50)
    assert alone.spread == plain.spread and alone.spread["hatch"] == 0.0
    assert alone.level == pytest.approx(plain.level)


def test_draws_are_as_many_as_asked_and_come_again():
    one, two = (pool(COUNT, TOTAL, {"breed": BREED}, draws=30) for _ in range(2))
    assert len(one.level) == 30 and one.level == pytest.approx(two.level)
    assert len(pool(COUNT, TOTAL, {"breed": BREED}).level) == 4000
