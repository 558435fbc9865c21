"""Seasons at the edge: nothing in them, nothing finished, no kind of bird; every call answers or says why not."""

import dataclasses

import numpy as np
import pytest
from tiny_season import tiny_season

import hatchkit as hk
from hatchkit.findings import more_losses
from hatchkit.findings.finding import Said
from hatchkit.losses.bad_luck import bad_luck
from hatchkit.losses.clears import clears
from hatchkit.losses.season_chart import season_chart
from hatchkit.losses.tray import clustering
from hatchkit.losses.windows import candling_windows
from hatchkit.pages.parts import said
from hatchkit.problems import HatchkitError
from hatchkit.say import LANGUAGES


def emptied():
    season = tiny_season([dict(batch=1, eggs_set=3, hatched=3)])
    return dataclasses.replace(
        season, batches=season.batches.iloc[:0], fates=season.fates.iloc[:0], looks=season.looks.iloc[:0]
    )


SEASONS = {
    "no batches": emptied,
    "no eggs set": lambda: tiny_season([dict(batch=1, eggs_set=np.nan, hatched=20)]),
    "nothing finished": lambda: tiny_season([dict(batch=1, eggs_set=30, day1=7, dead1=2, taken_off_day=None)]),
    "no kind of bird": lambda: tiny_season(
        [dict(batch=n, eggs_set=30, species=None, hatched=20, dead_in_shell=10) for n in "ab"]
    ),
    "all clear": lambda: tiny_season([dict(batch=1, eggs_set=12, day1=7, clear1=12, hatched=0)]),
    "all hatched": lambda: tiny_season([dict(batch=1, eggs_set=12, hatched=12)]),
    "all dead": lambda: tiny_season([dict(batch=1, eggs_set=12, hatched=0, dead_in_shell=12)]),
}

CALLS = {
    "breakdown": lambda season: more_losses.not_counted(hk.breakdown(season, by=None)),
    "candling": lambda season: hk.breakdown(season, by=None, stages="candling"),
    "ages": lambda season: more_losses.ages(hk.age_at_death(season, draws=5)),
    "luck": lambda season: more_losses.luck(bad_luck(season)),
    "clears": clears,
    "tray": lambda season: [more_losses.place(clustering(season))],
    "chart": lambda season: more_losses.course(season_chart(season)),
    "windows": candling_windows,
}


@pytest.mark.parametrize("call", list(CALLS))
@pytest.mark.parametrize("kind", list(SEASONS))
def test_every_call_answers_or_says_why_not(kind, call):
    try:
        answer = CALLS[call](SEASONS[kind]())
    except HatchkitError as why:
        assert call == "chart" and "finished batch" in str(why)
    else:
        for one in [one for one in answer if isinstance(one, Said)]:
            for language in LANGUAGES:
                assert not {"nan", "(none)"} & set(said(one, language, "C").split()), (language, one)
