"""Every column of every table of losses is in the list of columns, and the list has no column too many."""

import pytest
from tiny_season import tiny_season

import hatchkit as hk
from hatchkit import reference
from hatchkit.losses.bad_luck import bad_luck
from hatchkit.losses.clears import clears
from hatchkit.losses.season_chart import season_chart
from hatchkit.losses.tray import clustering, tray_map, tray_season
from hatchkit.losses.windows import candling_windows


def tables():
    eggs = [dict(batch="1", egg=str(n), tray="a", row=n // 6 + 1, col=n % 6 + 1, candle1="alive",
                 outcome="dead" if n < 4 else "hatched") for n in range(24)]  # fmt: skip
    season = tiny_season(
        [dict(batch=1, eggs_set=24, day1=7), dict(batch=2, eggs_set=24, hatched=20, dead_in_shell=4)], eggs=eggs
    )
    ages = hk.age_at_death(season, draws=5)
    return {
        "fates": season.fates,
        "windows": candling_windows(season),
        "breakdown": hk.breakdown(season).drop(columns="batch"),
        "bad_luck": bad_luck(season),
        "clears": clears(season).drop(columns="season"),
        "tray_map": tray_map(season),
        "tray_season": tray_season(season),
        "clustering": clustering(season),
        "season_chart": season_chart(season),
        **{f"age_{name}": getattr(ages, name) for name in ("fits", "table", "curve", "hazard", "looks")},
    }


@pytest.mark.parametrize("name", sorted(tables()))
def test_columns_are_those_of_the_list(name):
    listed = reference.load("columns_losses")
    assert set(tables()[name].columns) == set(listed.loc[listed["table"] == name, "column"])
