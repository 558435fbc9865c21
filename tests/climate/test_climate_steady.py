"""A machine that runs beside its range for days is no event, and does not hide the events inside those days."""

import numpy as np
import pytest
from climate_seasons import bump, hour, level, outage, readings, season, with_events

import hatchkit as hk
from hatchkit.climate.dose import window_dose
from hatchkit.climate.track import batch_track

STILL = {"incubators": {"A": {"air": "still"}}}


def made(*events, base=38.0, hole=None, **more):
    """Still air at 38.0 degC: 0.3 K below what the top of the eggs should read."""
    rows = readings(with_events(*events, base=base))
    if hole is not None:
        rows.loc[rows["time"].between(hour(hole[0]), hour(hole[1])), "doubt"] = "stuck"
    return season(rows, **{"settings": STILL} | more)


def words_of(table):
    return list(table["looks_like"])


def test_days_below_the_range_from_setting_on_are_not_the_eggs_going_in():
    row = hk.find_excursions(made()).iloc[0]
    assert row["looks_like"] == "steady" and row["notable"] and row["level"] == "watch"
    assert row["extreme_c"] == pytest.approx(38.0, abs=0.05) and row["hours"] == pytest.approx(18 * 24, abs=1)
    seen = row["evidence"]
    assert (seen["seen"], seen["side"], seen["air"], seen["assumed"]) == ("beside", "below", "still", False)
    assert [round(seen[name], 1) for name in ("off_k", "low_c", "high_c", "wanted_c")] == [0.3, 38.3, 39.1, 38.7]


def test_a_chill_inside_such_days_has_its_own_time_age_and_number():
    table = hk.find_excursions(made(outage(259, 2.5, room=18)))
    assert words_of(table) == ["steady", "outage"] and table["event"].is_unique
    chill = table.iloc[1]
    assert abs((chill["start"] - hour(259)).total_seconds()) < 1800 and chill["notable"]
    assert chill["day_start"] == pytest.approx(10.8, abs=0.05) and chill["extreme_c"] < 26
    assert chill["evidence"]["seen"] == "cooled"
    assert [round(chill["evidence"][name], 1) for name in ("fell_k", "extreme_c")] == [16.2, 21.8]
    assert table["extreme_c"].iloc[0] == pytest.approx(38.0, abs=0.05)


def test_heat_inside_days_below_the_range_does_not_cut_them_in_two():
    table = hk.find_excursions(made(bump(310, 8, 2.3, rise=1)))
    assert words_of(table) == ["steady", "overheating"]
    assert table["evidence"].iloc[1]["seen"] == "rose" and 2 <= table["evidence"].iloc[1]["depth_k"] < 3


def test_a_stuck_probe_cuts_nothing_in_two_and_nothing_fell():
    table = hk.find_excursions(made(hole=(320, 350)))
    assert words_of(table) == ["steady"]
    assert table["gap_share"].iloc[0] == pytest.approx(30 / 432, abs=0.01)
    assert not any("fell" in one["seen"] for one in table["evidence"])


def test_after_a_hole_nobody_knows_whether_the_air_fell():
    rows = readings(with_events(bump(200, 20, -1.0)))
    rows = rows[~rows["time"].between(hour(195), hour(205))]
    row = hk.find_excursions(season(rows)).iloc[0]
    assert (row["evidence"]["seen"], row["evidence"]["since"]) == ("unlogged", "unknown")
    warm = readings(with_events(bump(200, 20, 2.0)))
    warm = warm[~warm["time"].between(hour(195), hour(205))]
    row = hk.find_excursions(season(warm)).iloc[0]
    assert row["evidence"]["seen"] == "unlogged" and row["looks_like"] == "overheating"


def test_a_day_and_a_half_from_setting_on_is_longer_than_warming_up():
    row = hk.find_excursions(season(readings(with_events(bump(-5, 35, -1.2))))).iloc[0]
    assert row["looks_like"] == "unclear" and row["notable"]
    assert row["evidence"]["since"] == "too_long" and row["evidence"]["whole_h"] == pytest.approx(30, abs=0.05)


def test_a_power_cut_in_the_second_hour_is_not_the_eggs_going_in():
    assert words_of(hk.find_excursions(season(readings(with_events(outage(2, 14)))))) == ["outage"]


def test_the_eggs_going_in_keep_their_row_in_a_machine_that_runs_low():
    table = hk.find_excursions(made(bump(0.2, 4, -4.0, rise=1)))
    assert words_of(table) == ["steady", "loading"] and list(table["notable"]) == [True, False]


def test_heat_lost_for_days_is_an_outage_and_no_way_to_run():
    table = hk.find_excursions(season(readings(with_events(outage(200, 70, room=20, box_h=3)))))
    assert words_of(table) == ["outage"]


def test_a_power_cut_of_a_day_does_not_end_the_days_beside_the_range():
    table = hk.find_excursions(made(outage(240, 20, room=20)))
    assert words_of(table) == ["steady", "outage"] and table["hours"].iloc[0] > 400


def test_time_counts_once():
    season_ = made(outage(259, 2.5, room=18))
    table = hk.find_excursions(season_)
    whole = window_dose(batch_track(season_, "1"), hour(0), hour(18 * 24))
    assert table["degree_hours"].sum() == pytest.approx(whole["degree_hours_cold"], rel=0.01)
    assert table["lost_hours"].sum() == pytest.approx(whole["lost_hours"], abs=1.0)


def test_a_fan_machine_that_runs_warm_says_so():
    fan = {"incubators": {"A": {"air": "fan"}}}
    row = hk.find_excursions(season(readings(level(38.5)), settings=fan)).iloc[0]
    assert row["looks_like"] == "steady" and row["kind"] == "warm"
    seen = row["evidence"]
    assert (seen["side"], seen["air"], seen["assumed"]) == ("above", "fan", False)
    assert [round(seen[name], 1) for name in ("off_k", "low_c")] == [0.4, 37.2]


def test_a_fan_that_is_only_assumed_is_named_as_such():
    row = hk.find_excursions(season(readings(level(38.5)))).iloc[0]
    assert row["evidence"]["assumed"]


def test_a_machine_at_the_edge_of_its_range_is_not_nought_below_it():
    row = hk.find_excursions(made(base=38.28)).iloc[0]
    assert row["looks_like"] == "steady"
    assert [row["evidence"][name] for name in ("off_k", "side", "air")] == [0, "below", "still"]


def test_two_batches_share_the_days_beside_the_range_and_the_chill_each():
    table = hk.find_excursions(made(outage(259, 2.5, room=18), batches=[{}, {"batch": "2", "set_at": hour(48)}]))
    assert table.groupby("looks_like")["event"].nunique().to_dict() == {"outage": 1, "steady": 1}
    assert len(table) == 4


def test_a_swing_between_day_and_night_about_a_low_middle_is_one_stretch():
    def swing(hours, air):
        return air + 0.4 * np.sin(hours * 2 * np.pi / 24)

    assert words_of(hk.find_excursions(made(swing))) == ["steady"]
