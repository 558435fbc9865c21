"""What is usual: how much a big batch counts, and how wide the published level is taken. Worked by hand."""

import numpy as np
import pytest

from hatchkit.advice.plan import published_level
from hatchkit.usual import beta_binomial as predictive
from hatchkit.usual.stages import LEVEL_SD, SPREAD_MIDDLE, usual

#: Published ledger (``reference/ordinary_ledger.csv``): good chicks; clear, removed, early, mid, late, pipped, culled.
GOOD, LEDGER = 0.70, np.array([0.10, 0.01, 0.06, 0.025, 0.06, 0.02, 0.025])


def beside(*batches):
    """What is usual for a batch of 40 eggs beside these (good chicks, then eggs lost at each stage)."""
    rows = np.array([[GOOD * 40, *(LEDGER * 40)], *batches])
    return usual(rows[:, 1:], rows[:, 0], LEDGER)[0]


@pytest.mark.parametrize("eggs", [51, 151, 951])
def test_a_batch_counts_less_the_bigger_it_is(eggs):
    """Clears, log odds of 0.10: one batch of n eggs tells the level to 0.5^2 + 1 / (n x 0.09) (between batches, and
    chance), three and the published level of sd 0.7 together to 1 / (1 / 0.49 + 3 / that). Taken whole, 951 eggs would
    tell it to 0.11 each; as it is the spread between batches alone leaves 0.27.
    """
    one = SPREAD_MIDDLE**2 + 1 / (eggs * 0.09)
    level = 1 / (1 / LEVEL_SD**2 + 3 / one)
    found = beside(*[[GOOD * eggs, *(LEDGER * eggs)]] * 3)
    # Three batches that fall alike also speak for a smaller spread than 0.5, so the whole lies somewhat below.
    assert 0.5 * np.sqrt(0.25 + level) < found.spread[0] < 1.02 * np.sqrt(0.25 + level)


def test_the_usual_share_lies_between_published_and_own_as_their_variances_weigh():
    """Clears at 20 % in three batches of 951: log odds -1.386 beside the published -2.197. Weights 1 / 0.49 = 2.0 and
    at a spread of 0.5 about 3 / 0.256 = 11.7 (more at a smaller spread): at least 0.85 of the way.
    """
    found = beside(*[[0.60 * 951, 0.20 * 951, *(LEDGER[1:] * 951)]] * 3)
    way = (found.logits[0] + 2.197) / (2.197 - 1.386)
    assert 0.8 < way < 0.98


def test_one_struck_batch_of_four_moves_the_level_little():
    """Late deaths at 60 % in one of four, 6 % in the others: a mean would go to 19 %, the level stays under 11 %."""
    struck = [0.16 * 60, *(LEDGER[:4] * 60), 0.60 * 60, *(LEDGER[5:] * 60)]
    found = beside(*[[GOOD * 60, *(LEDGER * 60)]] * 3, struck)
    assert 0.05 < found.shares[5] < 0.11


#: 10 % and 90 % points of the normal distribution lie 1.2816 deviations from its middle (any table of the normal).
MIDDLE_80 = 2 * 1.2816


@pytest.mark.parametrize(("species", "low", "high"), [("chicken", 0.50, 0.88), ("turkey", 0.55, 0.90),
                                                      ("ostrich", 0.45, 0.88)])  # fmt: skip
def test_four_homes_in_five_hatch_within_the_published_range(species, low, high):
    """The range of ``reference/hatch_levels.csv`` is the middle 80 % of places: 0.38 / 2.563 = 0.148 for hens."""
    assert published_level(species)["sd"] == pytest.approx((high - low) / MIDDLE_80, rel=0.003)


def test_without_own_batches_the_prior_of_hens_is_as_wide_as_stated():
    """Mean 0.70 and deviation 0.148 of the share itself; read as the middle 95 % (3.92) it would be 0.097."""
    level = published_level("chicken")
    over_mean = predictive.learn([], [], level["share_of_set"], level["sd"]).sum(axis=1)
    mean = over_mean @ predictive.MU
    assert mean == pytest.approx(0.70, abs=0.003)
    assert np.sqrt(over_mean @ np.square(predictive.MU - mean)) == pytest.approx(0.38 / MIDDLE_80, abs=0.003)
