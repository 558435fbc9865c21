"""Limits of the climate room that an answer hangs on: the clock's least band, joins, the egg's lag, the heat's day."""

import dataclasses

import numpy as np
import pytest
from climate_seasons import bump, hour, readings, season, with_events

from hatchkit.climate.clock import hatch_clock
from hatchkit.climate.dose import rolling_dose
from hatchkit.climate.excursions import batch_excursions, find_excursions
from hatchkit.climate.shapes import measure
from hatchkit.climate.track import batch_track

#: Air without noise, a reading every six minutes, so that times and degrees are those written here.
STEP_MIN, STEP_H = 6.0, 0.1


def quiet(*events, **more):
    """A season under even air at 37.5 degC with events laid over it."""
    air = with_events(*events)
    # From transfer on the machine stands at the hatching temperature, so that the clock runs at its usual pace.
    rows = readings(lambda h: air(h) - np.where(h >= 18 * 24, 37.5 - 36.94, 0), noise=0.0, step_min=STEP_MIN)
    return season(rows, **more)


def short_lived(days):
    """The species table with hens that take `days` and move to the hatcher three days before."""
    made = quiet()
    table = made.species_table.copy()
    table.loc["chicken", ["incubation_days", "transfer_day"]] = [days, days - 3.0]
    cool = np.where(np.arange(-24.0, 552.0, STEP_H) >= (days - 3) * 24, 36.94, 37.5)
    return dataclasses.replace(made, species_table=table, readings=made.readings.assign(temp_c=cool))


def half_band(made):
    row = hatch_clock(made).iloc[0]
    widths = [
        abs(row[name] - row["expected_at"]).total_seconds() / 3600 for name in ("expected_low_at", "expected_high_at")
    ]
    assert widths[0] == pytest.approx(widths[1], abs=1e-3)
    return widths[0]


def test_small_birds_of_14_days_have_a_band_of_8_hours_not_less():
    """10 h x 14 / 21 would be 6.7 h; 8 h is the least, as commercial hatches of one kind come off at 500-526 h."""
    assert half_band(short_lived(14.0)) == pytest.approx(8.0, abs=0.1)


@pytest.mark.parametrize(("days", "hours"), [(21.0, 10.0), (18.0, 60 / 7)])
def test_the_band_of_longer_hatches_grows_with_their_days(days, hours):
    """10 h x days / 21: 10 h for a hen's 21 days, 8.57 h for 18."""
    assert half_band(short_lived(days)) == pytest.approx(hours, abs=0.1)


@pytest.mark.parametrize(("minutes", "rows"), [(18, 1), (30, 1), (42, 2), (54, 2)])
def test_a_return_of_up_to_half_an_hour_does_not_end_an_excursion(minutes, rows):
    """Readings every 6 minutes: 30 minutes within the range join two stretches of 2 K too much, 42 do not."""
    later = 203 + minutes / 60
    table = find_excursions(quiet(bump(200, 3, 2.0), bump(later, 3, 2.0)))
    air = table[table["on"] == "air"]
    assert len(air) == rows
    assert air["hours"].sum() == pytest.approx(6 + (minutes / 60 if rows == 1 else 0), abs=0.01)


def test_an_hourly_log_joins_over_two_readings_and_not_over_three():
    """Two steps are longer than half an hour: 20 h and 23 h are joined over 21 and 22, not over three readings."""

    def rows(hours):
        air = with_events(bump(200, 3, 2.0), bump(203 + hours, 3, 2.0))
        table = find_excursions(season(readings(air, noise=0.0, step_min=60.0)))
        return (table["on"] == "air").sum()

    assert (rows(2), rows(3)) == (1, 2)


def test_the_eggs_extreme_is_looked_for_two_hours_beyond_the_airs_return():
    """Air 3 K too warm from hour 200 to 203; eggs written in by hand: 40.0 then, 41.0 at 1.5 h after the last reading
    out of range, 42.0 at 2.5 h after, which is another matter.
    """
    track = batch_track(quiet(bump(200, 3, 3.0)), "1").copy()
    hours = track["age_days"].to_numpy() * 24
    last = 202.9
    egg = np.full(len(track), 37.8)
    egg[(hours > 200 - 1e-6) & (hours < 203 - 1e-6)] = 40.0
    egg[np.abs(hours - (last + 1.5)) < 0.01] = 41.0
    egg[np.abs(hours - (last + 2.5)) < 0.01] = 42.0
    assert sorted(set(egg)) == [37.8, 40.0, 41.0, 42.0]
    table = batch_excursions(track.assign(egg_c=egg, egg_low_c=egg - 0.5, egg_high_c=egg + 0.7), STEP_H)
    row = table[table["on"] == "air"].iloc[0]
    assert row["egg_extreme_c"] == 41.0
    assert (row["egg_extreme_low_c"], row["egg_extreme_high_c"]) == (40.5, 41.7)


def test_the_coldest_egg_of_a_chill_may_come_after_it_too():
    track = batch_track(quiet(bump(200, 3, -6.0)), "1").copy()
    hours = track["age_days"].to_numpy() * 24
    egg = np.where((hours > 200 - 1e-6) & (hours < 203 - 1e-6), 34.0, 37.8)
    egg[np.abs(hours - 204.0) < 0.01] = 33.0
    row = batch_excursions(track.assign(egg_c=egg), STEP_H).iloc[0]
    assert (row["on"], row["kind"], row["egg_extreme_c"]) == ("air", "cold", 33.0)


def test_heat_of_exactly_a_day_ago_no_longer_counts():
    """An hour at 43 degC counts 1. With a reading each hour the last 24 h hold 24 of them, never 25."""
    rolling = rolling_dose(np.arange(60.0), np.full(60, 43.0), np.ones(60))
    assert list(rolling[:24]) == list(range(1, 25))
    assert set(rolling[24:]) == {24.0}


def test_one_warm_hour_is_remembered_for_24_readings():
    egg = np.where(np.arange(60) == 10, 43.0, 37.5)
    rolling = rolling_dose(np.arange(60.0), egg, np.ones(60))
    assert list(np.flatnonzero(rolling == 1.0)) == list(range(10, 34))
    assert rolling.sum() == 24


def test_the_clock_of_these_tests_has_nothing_to_explain():
    row = hatch_clock(quiet(batches=[{"first_hatch_at": hour(490), "last_hatch_at": hour(510)}])).iloc[0]
    assert abs(row["temperature_h"]) < 0.1 and abs(row["difference_h"]) < 0.1


def test_a_short_spell_is_as_deep_as_its_worst_reading_on_any_day():
    """Half an hour at most 3.5 K above the six hours before it; a long stretch would take its upper quarter."""
    air = np.array([37.5] * 80 + [40.0, 41.0, 40.0] + [37.5] * 20)
    clock = 240.0 + 0.1 * np.arange(len(air))
    columns = {
        "clock_h": clock,
        "air_c": air,
        "gap": np.zeros(len(air), bool),
        "hours": np.full(len(air), 0.1),
        "usual": air < 38,
        "low_c": air * 0 + 37.2,
        "high_c": air * 0 + 38.0,
        "rh_pct": air * 0 + 55.0,
        "probe_spread_c": air * 0,
        "age_days": clock / 24,
        "stage": np.array(["setting"] * len(air)),
        "level": np.where(air > 39.4, 3, 0),
    }
    curve = measure(columns, 80, 82, True, 0.1)
    assert curve["depth_k"] == pytest.approx(3.5)
    assert curve["hours"] == pytest.approx(0.3)
