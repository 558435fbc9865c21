"""From the clock of a logger to UTC: through both changes of the hour, whether its clock follows them or not."""

import datetime as dt
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from hatchkit.records import times

ROME = ZoneInfo("Europe/Rome")
BEGINS = {"spring": dt.datetime(2026, 3, 20, 5, 3), "autumn": dt.datetime(2026, 10, 15, 5, 3)}


def clock(season, minutes, follows):
    """True UTC times of twenty days, and what the clock showed: in the zone, or in the time it began with."""
    begin = BEGINS[season].replace(tzinfo=dt.UTC)
    true = [begin + n * dt.timedelta(minutes=minutes) for n in range(20 * 1440 // minutes)]
    kept = begin.astimezone(ROME).utcoffset()
    shown = [t.astimezone(ROME).replace(tzinfo=None) if follows else t.replace(tzinfo=None) + kept for t in true]
    as_array = [np.array([t.replace(tzinfo=None) for t in part], dtype="datetime64[us]") for part in (true, shown)]
    return as_array[0], as_array[1]


@pytest.mark.parametrize("newest_first", [False, True])
@pytest.mark.parametrize("minutes", [1, 5, 15, 20, 30, 60, 120, 180])
@pytest.mark.parametrize("follows", [True, False], ids=["follows", "keeps"])
@pytest.mark.parametrize("season", BEGINS)
def test_both_changes_of_the_hour(season, follows, minutes, newest_first):
    true, shown = clock(season, minutes, follows)
    way = slice(None, None, -1 if newest_first else 1)
    utc, notes = times.to_utc(shown[way], "Europe/Rome")
    assert (utc[way] == true).all()
    assert follows or any(code == "clock_not_followed" for _, code, _ in notes)


@pytest.mark.parametrize("season", BEGINS)
def test_a_hole_over_the_change_proves_nothing_and_the_zone_holds(season):
    true, shown = clock(season, 10, True)
    keep = (
        np.abs(
            (true - np.datetime64("2026-03-29T01" if season == "spring" else "2026-10-25T01"))
            .astype("timedelta64[m]")
            .astype(int)
        )
        > 170
    )
    utc, notes = times.to_utc(shown[keep], "Europe/Rome")
    assert (utc == true[keep]).all() and not notes


def test_a_log_of_one_side_of_the_change_follows_its_zone():
    true, shown = clock("spring", 30, True)
    utc, notes = times.to_utc(shown[:200], "Europe/Rome")
    assert (utc == true[:200]).all() and not notes
