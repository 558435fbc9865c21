"""The error where the windows of a batch share one effect, and which rows and columns say something; by plain loops."""

import math

import numpy as np
import pandas as pd
import pytest
from scipy import optimize

from hatchkit.relate import effect as room
from hatchkit.relate.design import design
from hatchkit.relate.effect import effect, independent, shared_error


def error_by_loop(died, eggs, columns, share, weight, batch, freedom):
    """Sandwich of the fit: rows' own variance, and k times the outer product of what a batch's rows move together."""
    names = list(dict.fromkeys(batch))
    lam = [-math.log(1 - p) for p in share]
    move = [n * one * (1 - p) for n, one, p in zip(eggs, lam, share, strict=True)]
    own = [n * p * (1 - p) for n, p in zip(eggs, share, strict=True)]
    bread = sum(w * m * m / v * np.outer(x, x) for w, m, v, x in zip(weight, move, own, columns, strict=True))
    gaps, wide, tall = ({name: 0.0 for name in names} for _ in range(3))
    pulls = {name: np.zeros(columns.shape[1]) for name in names}
    inner = np.zeros((columns.shape[1],) * 2)
    for d, n, p, w, m, v, x, name in zip(died, eggs, share, weight, move, own, columns, batch, strict=True):
        gaps[name] += d - n * p
        wide[name] += v
        tall[name] += m
        pulls[name] = pulls[name] + w * m * m / v * x
        inner += w * w * m * m / v * np.outer(x, x)

    def beyond(k):
        return sum(gaps[one] ** 2 / (wide[one] + k * tall[one] ** 2) for one in names) - freedom

    k = optimize.brentq(beyond, 0, 100) if beyond(0) > 0 else 0.0
    inverse = np.linalg.inv(bread)
    within = (inverse @ inner @ inverse)[0, 0]
    between = (inverse @ sum(np.outer(pulls[one], pulls[one]) for one in names) @ inverse)[0, 0]
    known = sum((tall[one] ** 2 / (wide[one] + k * tall[one] ** 2)) ** 2 for one in names) * freedom / len(names)
    return math.sqrt(within + k * between), min(max((within / between + k) ** 2 * known, 1.0), freedom), k


@pytest.mark.parametrize("apart", [0.0, 5.0])
def test_the_error_where_a_batchs_windows_share_their_effect(apart):
    batch = np.repeat(np.arange(8), 2)
    eggs = np.array([40.0, 36] * 8)
    dose = np.where(batch < 3, [1.0, 2] * 8, 0.0)
    columns = np.column_stack([dose, np.tile([1.0, 0], 8), np.tile([0.0, 1], 8)])
    share = 1 - np.exp(-0.1 * np.exp(0.5 * dose) * np.tile([1.0, 1.4], 8))
    died = np.maximum(eggs * share + apart * np.where(batch % 2, 1, -0.7), 0.0)
    weight = np.linspace(0.5, 1.0, 16)
    error, freedom = shared_error(died, eggs, columns, share, weight, batch, 6)
    want = error_by_loop(died, eggs, columns, share, weight, batch, 6)
    assert (error, freedom) == pytest.approx(want[:2]) and (want[2] > 0) == (apart > 0)
    assert 1.0 <= freedom <= 6


def window(died, number, *, eggs=20.0, dose=(1.0, 1, 1) + (0.0,) * 9):
    return pd.DataFrame(dict(batch=[f"b{n}" for n in range(12)], window=number, days=1.0, at_risk=eggs, died=died,
                             dose=dose))  # fmt: skip


def test_the_wider_of_two_errors_gives_the_interval_and_the_floor(monkeypatch):
    """Errors 0.2 with 10 and 0.3 with 4 degrees of freedom: t at 97.5 % 2.776 and at 95 % 2.132 (any table)."""
    dose = [0.0] * 8 + [1.0] * 4
    rows = pd.concat([window([5.0] * 8 + [15.0] * 4, 1, eggs=50.0, dose=dose),
                      window([4.0] * 8 + [14.0] * 4, 2, eggs=50.0, dose=dose)])  # fmt: skip
    alone = effect(design(rows))
    monkeypatch.setattr(room, "shared_error", lambda *asked: (0.3, 4.0))
    found = effect(design(rows))
    assert found["error"] == 0.3 and alone["error"] < 0.3 and found["log_ratio"] == alone["log_ratio"]
    ratio = found["log_ratio"]
    ends = [ratio - 2.776 * 0.3, ratio + 2.776 * 0.3, ratio - 2.132 * 0.3]
    assert [math.log(found[name]) for name in ("low", "high", "floor")] == pytest.approx(ends, abs=1e-3)


def test_columns_that_say_nothing_new_are_left_out():
    base = np.column_stack([[1.0, 1, 0, 0], [0.0, 0, 1, 1]])
    extra = np.column_stack([[1.0, 1, 1, 1], [1.0, 0, 1, 0], [0.0, 1, 0, 1], [1.0, 0, 0, 0]])
    assert independent(base, extra).T.tolist() == [[1, 0, 1, 0], [1, 0, 0, 0]]
    assert independent(base, extra[:, :1]).shape == (4, 0)


def test_windows_in_which_nothing_or_everything_died_say_nothing():
    """Of three windows only the first counts: none died in the second, all in the third."""
    told = window([6.0] * 3 + [2.0] * 9, 1)
    found = effect(design(pd.concat([told, window(0.0, 2), window(20.0, 3)])))
    alone = effect(design(told))
    assert found["rows"] == 12 and found["hazard_ratio"] == pytest.approx(alone["hazard_ratio"])
    assert (found["deaths"], found["deaths_exposed"]) == (36, 18) and found["method"] == alone["method"]
    assert effect(design(window(0.0, 1)))["method"] == effect(design(window(20.0, 1)))["method"] == "none"
    assert effect(design(window(2.0, 1, dose=1.0)))["method"] == "none"


@pytest.mark.parametrize(("died", "weighted"), [
    ([6.0] * 3 + [2.0] * 9, True), ([0.0] * 3 + [2.0] * 9, False), ([20.0] * 3 + [2.0] * 9, False),
    ([6.0] * 3 + [0.0] * 9, False),
])  # fmt: skip
def test_a_plain_fit_needs_dead_and_living_on_both_sides(died, weighted):
    assert (effect(design(window(died, 1)), draws=200)["method"] == "weighted quasi-binomial") == weighted
