"""Probe truth and steadiness: numbers that a person can compare."""

import numpy as np
import pandas as pd
import pytest
from climate_seasons import bump, level, opening, outage, readings, season, with_events

from hatchkit.climate.probes import day_night, probe_truth, steadiness


def test_two_probes_that_disagree_are_both_named():
    two = pd.concat([readings(level(37.5)), readings(level(38.1), probe="2", seed=2)], ignore_index=True)
    table = probe_truth(season(two))
    assert list(table["probe"]) == ["1", "2"] and set(table["verdict"]) == {"probes disagree"}
    assert table["differs_c"].to_numpy() == pytest.approx([-0.6, 0.6], abs=0.02)
    assert (table["differs_low_c"] < table["differs_c"]).all()


def test_probes_at_their_own_minutes_are_compared_too():
    other = readings(level(37.6), probe="2", seed=2)
    other["time"] = other["time"] + pd.Timedelta(minutes=2)
    table = probe_truth(season(pd.concat([readings(level(37.5)), other], ignore_index=True)))
    assert set(table["verdict"]) == {"probes agree"}
    assert table["compared"].iloc[0] == pytest.approx(len(other), abs=2)


def test_an_offset_from_a_check_is_told():
    both = {"incubators": {"A": {"probe_offset_c": -0.3}}}
    named = {"incubators": {"A": {"probe_offset_c": {"1": 0.2}}}}
    assert probe_truth(season(settings=both)).iloc[0]["verdict"] == "checked"
    assert probe_truth(season(settings=named)).iloc[0]["offset_c"] == 0.2
    assert probe_truth(season()).iloc[0]["verdict"] == "not checked"


def test_an_offset_that_was_added_is_told_however_the_probe_is_spelt_in_the_settings():
    rows = readings(probe="Temp A")
    rows["temp_logged_c"] = rows["temp_c"] + 0.3
    row = probe_truth(season(rows, settings={"incubators": {"A": {"probe_offset_c": {"temp a": -0.3}}}})).iloc[0]
    assert row["offset_c"] == -0.3 and row["checked"]


def test_doubted_readings_are_counted_and_not_compared():
    rows = readings()
    rows.loc[:99, "doubt"] = "stuck"
    row = probe_truth(season(rows)).iloc[0]
    assert row["doubted"] == 100


def test_a_humidity_channel_is_no_probe_of_the_air():
    damp = readings(probe="rh").assign(temp_c=np.nan)
    table = probe_truth(season(pd.concat([readings(), damp], ignore_index=True)))
    assert list(table["probe"]) == ["1"]


def test_steadiness_of_a_steady_machine():
    row = steadiness(season(readings(level(37.5)), settings={"incubators": {"A": {"set_point_c": 37.4}}})).iloc[0]
    assert row["mean_c"] == pytest.approx(37.5, abs=0.01) and row["off_set_point_c"] == pytest.approx(0.1, abs=0.01)
    assert row["swing_c"] == pytest.approx(2 * 1.2816 * 0.05, rel=0.05)
    for name in ("share_in_band", "share_logged"):
        assert row[name] == pytest.approx(1, abs=0.001)
    assert row["openings_per_day"] == 0 and np.isnan(row["opening_minutes"])
    assert row["day_night_c"] == pytest.approx(0, abs=0.02)


def test_a_cold_room_at_night_shows_in_the_day_night_difference():
    def swinging(hours):
        clock = (hours + 10) % 24
        return 37.5 + 0.3 * ((clock >= 8) & (clock < 20))

    row = steadiness(season(readings(swinging))).iloc[0]
    assert row["day_night_c"] == pytest.approx(0.3, abs=0.02)


def test_day_and_night_are_those_of_the_persons_clock():
    time = pd.date_range("2025-03-01", periods=24 * 30, freq="h", tz="UTC")
    local = time.tz_convert("Asia/Tokyo").hour
    values = np.where((local >= 10) & (local < 18), 38.0, 37.0)
    assert day_night(time, values, "Asia/Tokyo") == 1.0
    assert day_night(time, values, "UTC") < 0.5
    assert np.isnan(day_night(time[:30], values[:30], "UTC"))


def test_day_and_night_survive_the_change_of_the_clock():
    time = pd.date_range("2025-03-28", periods=24 * 6, freq="h", tz="UTC")
    assert day_night(time, np.full(len(time), 37.5), "Europe/Rome") == 0.0
    autumn = pd.date_range("2025-10-24", periods=24 * 6, freq="h", tz="UTC")
    assert day_night(autumn, np.full(len(autumn), 37.5), "America/Havana") == 0.0


def test_openings_are_counted_per_day():
    events = [opening(24 * day + 5, 12) for day in range(2, 18)]
    row = steadiness(season(readings(with_events(*events)))).iloc[0]
    assert row["openings_per_day"] == pytest.approx(16 / 23, rel=0.02)
    assert 20 < row["opening_minutes"] < 80


def test_one_outage_does_not_hide_the_everyday():
    row = steadiness(season(readings(with_events(outage(200, 10))))).iloc[0]
    assert row["swing_c"] < 0.2 and row["share_alarm"] > 0.015


def test_a_machine_at_the_edge_of_its_range_shows_it():
    row = steadiness(season(readings(with_events(bump(48, 200, 0.9))))).iloc[0]
    assert row["share_watch"] == pytest.approx(200 / (23 * 24), rel=0.05)


def test_a_batch_without_a_log_counts_among_the_time_with_eggs():
    later = pd.Timestamp("2027-05-01", tz="UTC")
    made = season(readings(level(37.5)), batches=[{}, {"batch": "2", "set_at": later}])
    assert steadiness(made).iloc[0]["share_logged"] == pytest.approx(0.5, abs=0.03)


def test_a_season_without_a_log_has_no_rows():
    made = season(batches=[{"incubator": "Z"}])
    assert steadiness(made).empty


def test_a_probe_with_a_single_reading_is_compared_at_that_minute():
    many = readings(noise=0.0)
    one = many.iloc[[100]].assign(probe="2", temp_c=many["temp_c"].iloc[100] + 1.0)
    truth = probe_truth(season(pd.concat([many, one], ignore_index=True))).set_index("probe")
    assert truth.loc["2", "readings"] == 1 and truth.loc["2", "differs_c"] == pytest.approx(1.0)
