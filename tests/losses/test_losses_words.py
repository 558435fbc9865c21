"""Sentences: plain, with units, and never a bare p-value."""

import re

import pytest
from tiny_season import tiny_season

import hatchkit as hk
from hatchkit.losses import words
from hatchkit.losses.spelling import eggs_words, odds_words, percent, range_words


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


def test_the_breakdown_names_chicks_interval_and_largest_losses():
    season = tiny_season(
        [
            dict(batch=1, eggs_set=48, day1=7, clear1=5, dead1=2, hatched=36, dead_in_shell=5),
            dict(batch=2, eggs_set=24, hatched=25),
        ]
    )
    said = words.breakdown_words(hk.breakdown(season))
    assert "Batch 1: 36 good chicks from 48 eggs set, 75 % (95 % interval 61 to 85 %)" in said
    assert "Batch 2: left out of rates" in said and "Left out of rates: batch 2" in said
    assert words.shared_words(hk.breakdown(season, by=None)).startswith("Of 7 dead embryos, 2 were seen")


def test_no_sentence_shows_a_p_value():
    season = tiny_season([dict(batch=n, eggs_set=48, day1=7, clear1=2, dead1=n, hatched=46 - n) for n in range(8)])
    from hatchkit.losses.bad_luck import bad_luck
    from hatchkit.losses.clears import clears
    from hatchkit.losses.season_chart import season_chart

    said = "\n".join(
        [
            words.breakdown_words(hk.breakdown(season)),
            words.bad_luck_words(bad_luck(season)),
            words.clears_words(clears(season)),
            words.season_chart_words(season_chart(season, "early")),
            hk.age_at_death(season, draws=10).words(),
        ]
    )
    assert not re.search(r"\bp\s*[=<>]|p-value|significan", said)
