"""Shares, counts and chances as they are spelt in a sentence."""

import pytest

from hatchkit.words.spelling import eggs_words, odds_words, percent, range_words


def test_shares_ranges_and_counts():
    assert percent(0.0421) == "4.2 %" and percent(0.42) == "42 %" and percent(None) == "not known"
    assert range_words(0.04, 0.11) == "4.0 to 11 %"
    assert eggs_words(3.0) == "3" and eggs_words(2.46) == "2.5"


@pytest.mark.parametrize(
    ("chance", "said"),
    [
        (0.5, "nothing out of the way"),
        (0.25, "about 1 in 4"),
        (0.0213, "about 1 in 47"),
        (0.0013, "about 1 in 770"),
        (0.00001, "rarer than 1 in 10 000"),
        (float("nan"), "not known"),
    ],
)
def test_chances_are_told_as_one_in_n(chance, said):
    assert odds_words(chance) == said
