"""Doses: missing is not zero, heat is ordered as the experiments were, development and cold add up."""

import numpy as np
import pandas as pd
import pytest
from climate_seasons import bump, hour, level, outage, readings, season, with_events

from hatchkit.climate import dose
from hatchkit.climate.egg_heat import rate
from hatchkit.climate.track import COLUMNS, batch_track


def track(*events, base=37.5, **more):
    return batch_track(season(readings(with_events(*events, base=base)), **more), "1")


def test_a_quiet_week_has_no_dose_and_is_fully_logged():
    result = dose.window_dose(track(), hour(24), hour(8 * 24))
    assert result["hours"] == result["hours_logged"] == pytest.approx(168)
    assert result["share_logged"] == 1.0
    assert result["hours_warm"] == result["hours_cold"] == result["degree_hours_warm"] == 0
    assert result["heat_band"] == "none" and abs(result["lost_hours"]) < 0.5


def test_nothing_logged_is_missing_not_zero():
    result = dose.window_dose(track(), hour(-300), hour(-200))
    assert result["hours"] == 100 and result["hours_logged"] == 0 and result["share_logged"] == 0
    rest = {key: value for key, value in result.items() if key not in ("hours", "hours_logged", "share_logged")}
    assert all(pd.isna(value) for value in rest.values()) and set(rest) == set(dose.MISSING)


def test_a_hole_lowers_the_share_logged_and_adds_no_normal_hours():
    rows = readings()
    rows = rows[~rows["time"].between(hour(100), hour(124))]
    result = dose.window_dose(batch_track(season(rows), "1"), hour(96), hour(144))
    assert result["share_logged"] == pytest.approx(0.5, abs=0.01)


def test_hours_are_cut_at_the_end_of_the_window():
    whole = track(bump(100, 10, 2.0))
    parts = [dose.window_dose(whole, hour(a), hour(b)) for a, b in ((95, 103.21), (103.21, 120))]
    together = dose.window_dose(whole, hour(95), hour(120))
    assert sum(part["hours_warm"] for part in parts) == pytest.approx(together["hours_warm"], abs=0.09)
    assert sum(part["hours_logged"] for part in parts) == pytest.approx(together["hours_logged"], abs=0.09)


def test_degree_hours_are_degrees_times_hours():
    result = dose.window_dose(track(bump(100, 4, 3.0)), hour(90), hour(120))
    assert result["hours_warm"] == pytest.approx(4, abs=0.1)
    assert result["degree_hours_warm"] == pytest.approx(4 * (40.5 - 38.05), rel=0.05)


def test_the_heat_scale_has_its_two_slopes():
    assert dose.heat_per_hour(43.0) == 1
    assert dose.heat_per_hour(44.0) == pytest.approx(3)
    assert dose.heat_per_hour(42.0) == pytest.approx(1 / 4)
    assert dose.heat_per_hour(39.0) == 0 and np.isnan(dose.heat_per_hour(np.nan))


def test_the_rolling_dose_forgets_after_a_day():
    clock = np.arange(0, 100, 1.0)
    egg = np.where((clock < 3) | (clock >= 50) & (clock < 54), 43.0, 37.5)
    rolling = dose.rolling_dose(clock, egg, np.ones(100))
    assert rolling[10] == 3 and rolling[40] == 0 and rolling.max() == 4


def test_the_same_heat_weighs_most_at_a_week():
    """Ande & Wilson 1981: four hours at 43.3 degC did on day 7 what took seven on day 11 or 16."""
    days = np.array([3, 7, 11, 16, 19])
    assert dose.half_dose(days).argmin() == 1
    bands = [dose.heat_band(np.array([3.0]), np.array([day])) for day in days]
    assert bands == ["watch", "high", "watch", "low", "low"]


def test_a_quails_age_is_read_on_the_hens_scale():
    met = batch_track(season(batches=[{"species": "quail"}]), "1")
    assert (met["hen_days"] / met["age_days"]).iloc[-1] == pytest.approx(21 / 17.5)


def test_lost_hours_of_an_outage_are_those_of_the_fade():
    """Six hours in which the eggs stand still or nearly so, and the time to warm up again."""
    result = dose.window_dose(track(outage(200, 6)), hour(190), hour(230))
    assert 4 < result["lost_hours"] < 8
    assert result["egg_min_c"] < 22


def test_cold_hours_are_counted_on_the_egg():
    result = dose.window_dose(track(outage(200, 12, room=5.0)), hour(190), hour(230))
    assert result["hours_egg_below_20"] > result["hours_egg_below_10"] > 3
    assert result["hours_cold"] > result["hours_egg_below_20"]


@pytest.mark.parametrize(
    ("temp", "expected"),
    [
        (25, 0.0),
        (27, 0.21),
        (30, 0.63),
        (33, 0.76),
        (35, 0.857),
        (36, 0.912),
        (37, 0.970),
        (37.5, 1.0),
        (38, 1.031),
        (39, 1.097),
        (39.5, 1.131),
        (42, 1.131),
    ],
)
def test_rates_of_development(temp, expected):
    """Q10 = 1.85 from bobwhite eggs (Birchard); fade below 30 and cap are the kit's own judgement."""
    assert rate(temp, 37.5) == pytest.approx(expected, abs=0.003)


def test_the_rate_is_one_at_each_stages_own_temperature():
    met = track(base=37.5)
    assert met.loc[met["stage"] == "setting", "rate"].iloc[500:].mean() == pytest.approx(1.0, abs=0.002)
    assert met.loc[met["stage"] == "hatching", "rate"].mean() == pytest.approx(1.035, abs=0.003)


def test_a_still_air_reading_is_taken_at_the_top_of_the_eggs():
    met = batch_track(season(readings(level(38.6)), settings={"incubators": {"A": {"air": "still"}}}), "1")
    early = met[met["age_days"].between(2, 5)]
    assert early["egg_c"].mean() == pytest.approx(37.4, abs=0.1)
    assert (early["level"] == 0).all()


def test_weighed_eggs_set_the_lag():
    small = pd.DataFrame({"batch": "1", "egg": ["a", "b"], "weight_g": [30.0, 34.0]})
    cold = with_events(bump(100, 0.5, -15.0))
    usual = batch_track(season(readings(cold)), "1")
    light = batch_track(season(readings(cold), eggs=small), "1")
    assert light["egg_c"].min() < usual["egg_c"].min() - 0.3


def test_a_checked_probe_narrows_the_band():
    checked = track(settings={"incubators": {"A": {"probe_offset_c": -0.3}}})
    width = [(met["egg_high_c"] - met["egg_low_c"]).iloc[1000] for met in (checked, track())]
    assert width[0] < 0.6 * width[1]


def test_a_batch_that_nobody_logged_has_an_empty_track():
    met = batch_track(season(batches=[{"incubator": "Z"}]), "1")
    assert met.empty and list(met) == COLUMNS
    assert dose.window_dose(met, hour(0), hour(24))["share_logged"] == 0
