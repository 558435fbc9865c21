"""Seasons with hardly anything in them: every public call answers, with the documented columns."""

import dataclasses

import pandas as pd
import pytest
from climate_seasons import hour, readings, season

import hatchkit as hk
from hatchkit import say
from hatchkit.climate import clock, excursions, pictured, probes, timeline, track, water_loss
from hatchkit.findings import more_climate
from hatchkit.pages.parts import said


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
    times, water = clock.hatch_clock(made), water_loss.batch_water_loss(made)
    assert len(times) == len(water) == len(made.batches)
    told = [more_climate.clock(row) for row in times.iloc] + [
        one for row in water.iloc for one in more_climate.water(row)
    ]
    told += more_climate.machines(probes.steadiness(made), probes.probe_truth(made))
    told += more_climate.clock_season(times) + more_climate.water_season(water)
    for one in told:
        for language in say.LANGUAGES:
            assert not {"nan", "none"} & set(said(one, language, "C").split()), (language, one)


@pytest.mark.parametrize("case", CASES)
def test_tracks_and_timelines_answer(case):
    made = case()
    lines = timeline.incubator_timeline(made, "A")
    assert say.text("picture_incubator_timeline", pictured.incubator_timeline(lines))
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


def test_without_a_thermometer_nothing_is_told_of_one():
    made = nothing_logged()
    assert more_climate.machines(probes.steadiness(made), probes.probe_truth(made)) == []
    told = more_climate.machines(probes.steadiness(season()), probes.probe_truth(season()))
    assert [one.code for one in told] == ["machine_steady", "probe_unknown"] and excursions.was_logged(season())
