"""Eggs of a hidden day: the same number gives the same egg, which keeps its day; answers are told how far off."""

import pytest

from hatchkit.figures.egg_lying import LYING
from hatchkit.teach.breakout_lab import DAYS, hidden_egg
from hatchkit.teach.breakout_sheet import breakout_sheet
from hatchkit.teach.exercises import judge
from hatchkit.teach.judging import NOT_YET, RIGHT


@pytest.mark.parametrize("kind", DAYS)
def test_eggs_are_drawn_by_number_and_do_not_tell_their_day(kind):
    eggs = [hidden_egg(case, kind) for case in range(60)]
    assert [egg._day for egg in eggs] == [hidden_egg(case, kind)._day for case in range(60)]
    assert len({egg._day for egg in eggs}) >= 8
    assert {repr(egg) for egg in eggs} == {f"HiddenEgg(kind='{kind}')"}


def test_a_day_off_is_right_and_more_is_told():
    egg = hidden_egg(4)
    day = egg._day
    assert judge("opened_day", day + 1, egg).state == RIGHT
    told = judge("opened_day", day + 5, egg)
    assert told.state == NOT_YET and "5 days off" in told.words and "younger" in told.words
    assert "older" in judge("opened_day", day - 3, egg).words
    assert "one number" in judge("opened_day", "late", egg).words


def test_the_sheet_has_a_box_for_every_drawing_and_says_what_it_is_not():
    page = breakout_sheet()
    assert page.count("<img ") == page.count('class="tally"') >= 45
    assert page.count('<img alt="') == page.count("<img ")
    assert "no substitute for photographs" in page and "Rotten eggs burst" in page
    assert "from memory" in page and "guinea" in page
    assert page.count("head under") >= 2 and len(LYING) == 8
