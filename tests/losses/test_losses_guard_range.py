"""The range that is told beside a count holds 95 % of the chance: worked from Pascal's triangle."""

from math import comb

import numpy as np
import pytest
from tiny_season import tiny_season

from hatchkit.losses.bad_luck import bad_luck
from hatchkit.losses.predictive import count_for, distribution, log_likelihoods, summary, weights

#: Sixteen eggs, each lost with chance 1/2. Sixteenth row of Pascal's triangle 1 16 120 560 1820 4368 ..., so that of
#: 65,536 ways 137 have at most 2 losses, 697 at most 3, 2,517 at most 4, 6,885 at most 5.
SIXTEEN = np.array([comb(16, lost) for lost in range(17)]) / 2**16


def test_the_range_of_sixteen_even_chances_leaves_at_most_a_fortieth_below_and_above():
    """2.5 % lie between 697 (1.06 %) and 2,517 (3.84 %) of 65,536: 4 to 12. At 90 % it is 5 to 11, at 99 % 3 to 13."""
    found = summary(SIXTEEN, 12)
    assert (found["low"], found["high"]) == (4, 12)
    assert found["expected"] == pytest.approx(8)


def test_the_range_follows_the_level_asked_for():
    found = [summary(SIXTEEN, 0, level=level) for level in (0.90, 0.99)]
    assert [(row["low"], row["high"]) for row in found] == [(5, 11), (3, 13)]


def test_the_chance_of_twelve_or_more_counts_the_twelve_itself():
    """2,517 of 65,536 ways have 12 or more losses, and as many have 4 or fewer."""
    assert summary(SIXTEEN, 12)["chance"] == pytest.approx(2517 / 65536)
    assert summary(SIXTEEN, 4, fewer=True)["chance"] == pytest.approx(2517 / 65536)


def test_the_count_that_is_rare_enough_is_the_first_beyond_the_range():
    """12 or more: 3.84 %; 13 or more: 697 of 65,536 or 1.06 %, the first at or below a fortieth."""
    assert count_for(SIXTEEN, 0.025) == 13
    assert count_for(SIXTEEN, 0.025, fewer=True) == 3


def test_the_range_in_the_table_cuts_off_a_fortieth_on_each_side():
    """Two other batches with 12 early dead of 190: what they let one expect, summed up to 2.5 and 97.5 %."""
    rows = [dict(batch=n, eggs_set=200, day1=7, clear1=10, dead1=12, hatched=178) for n in "abc"]
    row = bad_luck(tiny_season(rows)).set_index(["batch", "stage"]).loc[("a", "early")]
    assert (row["eggs"], row["out_of"]) == (12, 190)
    running = np.cumsum(distribution(190, weights(log_likelihoods([12, 12], [190, 190]).sum(axis=0))))
    low, high = int(row["low"]), int(row["high"])
    assert running[low - 1] < 0.025 <= running[low]
    assert running[high - 1] < 0.975 <= running[high]
