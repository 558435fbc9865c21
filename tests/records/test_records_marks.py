"""Marks on readings: what is doubted, and what must be left alone."""

import numpy as np
import pytest

from hatchkit.records import marks

MINUTE = 60_000_000


def times(count, step=5):
    """Microseconds, a reading every `step` minutes."""
    return 1_775_001_600_000_000 + np.arange(count) * (step * MINUTE)


def living(count, seed=1, digits=1):
    """An incubator that holds its temperature as a thermostat does."""
    rng = np.random.default_rng(seed)
    return (37.7 + 0.2 * np.sin(np.arange(count) / 3) + rng.normal(0, 0.05, count)).round(digits)


def test_a_probe_that_hangs_for_a_night_is_stuck():
    temp = living(1000)
    temp[300:420] = 37.7
    found = marks.stuck(times(1000), temp)
    assert found[300:420].all() and found[:295].sum() == 0 and found[425:].sum() == 0


@pytest.mark.parametrize("digits", [0, 1, 2])
def test_a_steady_incubator_with_a_coarse_probe_is_not_stuck(digits):
    assert not marks.stuck(times(3000), living(3000, digits=digits)).any()


def test_a_steady_temperature_with_living_humidity_is_not_stuck_before_a_day():
    temp = living(1000)
    temp[300:420] = 37.7
    humidity = 52 + np.random.default_rng(2).normal(0, 1, 1000).round(1)
    assert not marks.stuck(times(1000), temp, humidity).any()
    humidity[300:420] = 51.0
    assert marks.stuck(times(1000), temp, humidity)[301:419].all()


def test_a_short_run_of_equal_values_is_not_stuck():
    temp = living(1000)
    temp[300:330] = 37.7
    assert not marks.stuck(times(1000), temp).any()


def test_one_wild_reading_is_a_spike_and_its_neighbours_are_not():
    temp = living(200)
    temp[100] = 44.9
    assert np.flatnonzero(marks.spikes(times(200, step=1), temp)).tolist() == [100]


def test_an_opened_lid_is_no_spike():
    temp = living(200)
    temp[100:106] = [33.0, 31.0, 32.5, 34.0, 35.5, 36.8]
    assert not marks.spikes(times(200, step=1), temp).any()


def test_a_single_low_reading_of_a_slow_log_may_be_an_opened_lid():
    temp = living(200)
    temp[100] = 30.0
    assert not marks.spikes(times(200, step=10), temp).any()
    assert marks.spikes(times(200, step=1), temp)[100]


def test_a_change_that_stays_is_no_spike():
    temp = living(200)
    temp[100:] += 8
    assert not marks.spikes(times(200, step=1), temp).any()


def test_what_no_incubator_shows_is_out_of_range():
    assert marks.out_of_range(np.array([37.5, 61.0, -21.0, np.nan, 45.0])).tolist() == [False, True, True, False, False]
    assert marks.humidity_out_of_range(np.array([50.0, 103.0, -0.5, np.nan])).tolist() == [False, True, True, False]


def test_a_hole_is_found_where_it_ends():
    time = np.delete(times(100), slice(40, 52))
    assert np.flatnonzero(marks.gaps(time)).tolist() == [40]
    assert not marks.gaps(times(100)).any()


def test_one_missed_reading_is_no_hole():
    assert not marks.gaps(np.delete(times(100), 40)).any()


def test_equal_repeats_are_told_from_contradictions():
    time = times(6)[[0, 1, 1, 2, 2, 3]]
    found = marks.marks_of(time, np.array([37.0, 37.1, 37.1, 37.2, 38.0, 37.0]), np.full(6, np.nan))
    assert found["repeated"].tolist() == [False, False, False, True, True, False]
