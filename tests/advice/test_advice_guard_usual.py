"""What is usual: how much a big batch counts, and how wide the published level is taken. Worked by hand."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.advice import predictive
from hatchkit.advice.ordinary import ordinary
from hatchkit.advice.plan import published_level
from hatchkit.advice.tally import STAGES

#: Published ledger (``reference/ordinary_ledger.csv``), in the order of the stages; it counts as 60 eggs.
LEDGER, LEDGER_EGGS = np.array([0.70, 0.025, 0.10, 0.06, 0.025, 0.06, 0.02, 0.01]), 60


def usual(*batches):
    """What is usual beside these batches (eggs per stage each)."""
    rows = [LEDGER * 40, *batches]
    return ordinary(pd.DataFrame(rows, index=[f"b{n}" for n in range(len(rows))], columns=list(STAGES)), "b0")


def eggs_behind(found):
    """Eggs K that the doubt about each share rests on: its variance less the batches' own is 1 / (K h (1 - h))."""
    order = list(found.spread.order)
    share = found.shares[order]
    there = 1 - np.concatenate([[0.0], np.cumsum(share)[:-1]])
    lost = share / there
    return 1 / ((np.square(found.spread.sd) - found.sd**2) * there * lost * (1 - lost))


@pytest.mark.parametrize(("eggs", "worth"), [(951, 951 / 20), (151, 151 / 4), (51, 51 / 2), (1, 1.0)])
def test_eggs_of_one_batch_count_less_the_more_they_are(eggs, worth):
    """n / (1 + (n - 1) x 0.02), the design effect (Kish 1965): 951 eggs are worth 47.55, 151 37.75, 51 25.5, one 1.

    Each batch also counts only as far as it is likely to be an ordinary one, 0.8 before looking; these three fall
    exactly as the ledger does, so that is above 0.8 and at most 1. Taken whole, 951 eggs would be worth 951.
    """
    behind = eggs_behind(usual(*[LEDGER * eggs] * 3))
    assert behind == pytest.approx(np.full(7, behind[0]))
    assert LEDGER_EGGS + 0.8 * 3 * worth <= behind[0] + 1e-6 and behind[0] <= LEDGER_EGGS + 3 * worth + 1e-6


def test_three_batches_of_951_are_worth_143_eggs_beside_the_ledgers_60():
    """Chance of an ordinary one above 0.99 each, so between 60 + 0.99 x 142.65 and 202.65 eggs."""
    assert eggs_behind(usual(*[LEDGER * 951] * 3))[0] == pytest.approx(202.65, abs=1.4)


def test_the_usual_share_lies_between_ledger_and_own_as_their_eggs_weigh():
    """66 % hatched in three batches of 951: (0.70 x 60 + 0.66 x 142.65) / 202.65 = 67.2 %; whole batches: 66.1 %."""
    own = LEDGER * np.where(np.arange(8) == 0, 0.66 / 0.70, 0.34 / 0.30)
    assert usual(*[own * 951] * 3).shares[0] == pytest.approx(0.672, abs=0.001)


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
