"""Seasons with hardly anything in them: every public call answers, with the documented columns."""

import dataclasses

import pandas as pd
import pytest
from climate_seasons import hour, readings, season

import hatchkit as hk
from hatchkit.climate import clock, excursions, probes, thermometer_words, timeline, track, water_loss, words


def nothing_logged():
    made = season()
    return dataclasses.replace(made, readings=made.readings.iloc[:0])


def no_batches():
    made = season()
    return dataclasses.replace(made, batches=made.batches.iloc[:0])


def one_reading():
    made = season()
    return dataclasses.replace(made, readings=made.readings.iloc[400:401])


def set_time_missing():
    return season(batches=[{"set_at": pd.NaT}])


def all_doubted():
    return season(readings().assign(doubt="stuck"))


CASES = [nothing_logged, no_batches, one_reading, set_time_missing, all_doubted]


@pytest.mark.parametrize("case", CASES)
def test_every_call_answers(case):
    made = case()
    found = hk.find_excursions(made)
    assert found.empty and not excursions.was_logged(made)
    assert len(clock.hatch_clock(made)) == len(made.batches)
    assert len(water_loss.batch_water_loss(made)) == len(made.batches)
    for row in [*clock.hatch_clock(made).iloc]:
        assert words.clock_words(row)
    for row in [*water_loss.batch_water_loss(made).iloc]:
        assert words.water_words(row)
    for row in [*probes.probe_truth(made).iloc]:
        assert thermometer_words.probe_words(row)
    for row in [*probes.steadiness(made).iloc]:
        assert thermometer_words.steadiness_words(row)


@pytest.mark.parametrize("case", CASES)
def test_tracks_and_timelines_answer(case):
    made = case()
    lines = timeline.incubator_timeline(made, "A")
    assert words.timeline_alt(lines)
    for batch in made.batches["batch"]:
        assert list(track.batch_track(made, batch)) == track.COLUMNS


def test_one_reading_stands_for_nothing_around_it():
    met = track.batch_track(one_reading(), "1")
    assert len(met) == 1 and met["hours"].iloc[0] == 0


def test_repeated_and_disordered_times_do_no_harm():
    rows = readings()
    mixed = pd.concat([rows, rows.iloc[3000:3050]], ignore_index=True).sample(frac=1, random_state=1)
    met = track.batch_track(season(mixed), "1")
    assert met["time"].is_monotonic_increasing and met["egg_c"].notna().all()
    assert met["hours"].sum() == pytest.approx(23 * 24, abs=0.2)
    assert met["time"].iloc[0] >= hour(0)


def test_no_thermometer_is_said_in_one_sentence():
    made = nothing_logged()
    said = thermometer_words.thermometers_words(probes.steadiness(made), probes.probe_truth(made))
    assert said == "No temperature was logged, so there is no thermometer to judge."
    lines = thermometer_words.thermometers_words(probes.steadiness(season()), probes.probe_truth(season()))
    assert len(lines.splitlines()) == 2 and excursions.was_logged(season())
