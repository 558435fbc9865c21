"""Clustering on a tray against values of a spatial statistics package."""

import numpy as np
import pytest

from hatchkit.losses.tray import joins, neighbours

ROW, COL = (part.ravel() for part in np.meshgrid(np.arange(6), np.arange(8), indexing="ij"))


def died():
    """Ten dead, their places numbered row by row from 1."""
    cells = np.zeros(48, dtype=bool)
    cells[np.array([1, 2, 3, 7, 8, 9, 13, 14, 20, 47]) - 1] = True
    return cells


def test_pairs_of_touching_places_on_a_6_by_8_tray():
    # 5 x 8 up and down, 6 x 7 across, 2 x 5 x 7 over the corners.
    assert len(neighbours(ROW, COL)) == 40 + 42 + 70


def test_join_count_of_ten_dead():
    # R spdep 1.2-7 on the same tray (queen neighbours, binary weights).
    pairs = neighbours(ROW, COL)
    assert joins(died(), pairs) == 8


def test_expected_pairs_when_place_does_not_matter():
    # R spdep, non-free sampling: E[BB] 6.0638297872 = pairs x k (k - 1) / (n (n - 1)).
    pairs = neighbours(ROW, COL)
    assert len(pairs) * 10 * 9 / (48 * 47) == pytest.approx(6.0638297872, abs=1e-10)
    shuffled = np.random.default_rng(1).permuted(np.tile(died(), (20_000, 1)), axis=1)
    assert joins(shuffled, pairs).mean() == pytest.approx(6.0638297872, abs=0.06)
