"""Sentences: plain, with units, and never a bare p-value."""

import re

from tiny_season import tiny_season

import hatchkit as hk
from hatchkit.losses import words


def test_an_egg_taken_out_alive_explains_why_the_share_is_not_that_of_the_two_counts():
    counts = dict(day1=7, clear1=0, dead1=2, hatched=9, dead_in_shell=7)
    gone = [dict(batch="1", egg="x", candle1="alive", transfer="removed")]
    season = tiny_season([dict(batch=1, eggs_set=19, day3=18, **counts)], eggs=gone)
    said = hk.age_at_death(season, draws=5).words()
    assert "9 of 19 living embryos in 1 batch died, 50 %" in said
    assert "Of the 19, 1 was taken out alive on the way" in said and "is not plainly 9 of 19" in said
    assert "taken out" not in hk.age_at_death(tiny_season([dict(batch=1, eggs_set=18, **counts)]), draws=5).words()


def test_eggs_nobody_can_account_for_are_named_beside_the_share_that_died():
    season = tiny_season([dict(batch=1, eggs_set=42, day1=7, clear1=6, dead1=2, hatched=17, dead_in_shell=4)])
    said = hk.age_at_death(season, draws=5).words()
    assert "6 of 23 living embryos in 1 batch died, 26 %" in said
    assert "Left out: 13 eggs not accounted for; had they all died, 53 % would be lost." in said


def test_one_batch_is_one_batch():
    from hatchkit.losses.season_chart import season_chart

    none = tiny_season([dict(batch=1, eggs_set=12, hatched=12)])
    assert "living embryos in 1 batch died" in hk.age_at_death(none, draws=5).words()
    one = tiny_season([dict(batch=1, eggs_set=24, day1=7, clear1=3, dead1=2, hatched=19)])
    assert "over 1 batch." in words.season_chart_words(season_chart(one, "early"))


def test_no_sentence_shows_a_p_value():
    season = tiny_season([dict(batch=n, eggs_set=48, day1=7, clear1=2, dead1=n, hatched=46 - n) for n in range(8)])
    from hatchkit.losses.bad_luck import bad_luck
    from hatchkit.losses.season_chart import season_chart

    said = "\n".join(
        [
            words.bad_luck_words(bad_luck(season)),
            words.season_chart_words(season_chart(season, "early")),
            hk.age_at_death(season, draws=10).words(),
        ]
    )
    assert not re.search(r"\bp\s*[=<>]|p-value|significan", said)
