"""Excursions: found, joined, split at gaps, named by their curve; a gap is never normal."""

import dataclasses

import numpy as np
import pandas as pd
import pytest
from climate_seasons import bump, hour, level, opening, outage, readings, season, with_events
from hypothesis import given, settings
from hypothesis import strategies as st

import hatchkit as hk
from hatchkit.climate import excursions, machine_air
from hatchkit.climate.track import batch_track


def found(*events, base=37.5, step_min=5.0, **more):
    return hk.find_excursions(season(readings(with_events(*events, base=base), step_min=step_min), **more))


def test_a_quiet_season_has_none_and_keeps_the_columns():
    table = hk.find_excursions(season())
    assert table.empty and list(table) == excursions.COLUMNS


@pytest.mark.parametrize(
    ("event", "kind", "word"),
    [
        (opening(100, 10), "cold", "opening"),
        (opening(100, 20, back_h=0.5), "cold", "opening"),
        (outage(200, 6), "cold", "outage"),
        (outage(200, 12, room=10, box_h=3), "cold", "outage"),
        (bump(290, 9, 1.0, rise=3), "warm", "drift"),
        (bump(290, 12, 1.7, rise=4), "warm", "drift"),
        (bump(290, 9, -1.0, rise=3), "cold", "drift"),
        (bump(290, 4, 4.0, rise=1), "warm", "overheating"),
        (bump(290, 2, 7.0), "warm", "sensor"),
        (bump(290, 2, -8.0), "cold", "sensor"),
        (bump(1, 4, -4.0, rise=1), "cold", "loading"),
    ],
)
def test_the_curve_gives_the_word(event, kind, word):
    table = found(event)
    assert list(table["kind"]) == [kind]
    assert list(table["looks_like"]) == [word]
    assert table["evidence"].iloc[0]


@pytest.mark.parametrize("step_min", [1.0, 2.0, 5.0, 10.0])
def test_openings_and_outages_keep_their_names_at_other_steps(step_min):
    table = found(opening(100, 15), outage(200, 8), step_min=step_min)
    assert list(table["looks_like"]) == ["opening", "outage"]


def test_a_square_chill_that_a_heater_can_end_is_not_called_a_faulty_probe():
    """5 K up in 5 minutes, or 6.5 K in 10, is what a heater can do; 8 K in 5 minutes is not."""
    for step_min, size in ((5.0, -5.0), (10.0, -6.5)):
        table = found(bump(290, 2.5, size), step_min=step_min)
        assert list(table["looks_like"]) == ["opening"] and table["evidence"].iloc[0]["then"] == "ajar"
        assert table["notable"].all()
    assert list(found(bump(290, 2.5, -8.0))["looks_like"]) == ["sensor"]


def test_steps_of_half_an_hour_do_not_pretend_to_see_the_curve():
    table = found(opening(100, 25, back_h=0.5), step_min=30.0)
    assert list(table["looks_like"]) == ["unclear"]
    assert table["evidence"].iloc[0]["coarse"]


def test_a_lid_opened_during_a_long_drift_does_not_name_it():
    table = found(bump(200, 40, -3.2, rise=3), opening(230, 10))
    assert list(table["looks_like"]) == ["drift"] and table["extreme_c"].iloc[0] < 30


def test_a_lid_opened_while_the_machine_stands_low_for_days_is_a_row_of_its_own():
    table = found(bump(200, 72, -3.2, rise=3), opening(230, 10))
    assert list(table["looks_like"]) == ["steady", "opening"] and list(table["notable"]) == [True, False]


def test_humidity_tells_a_lid_left_ajar_from_an_outage():
    """Both cool slowly here; room air dries the box, a closed box grows damper."""
    rows = readings(with_events(outage(200, 8, room=25, box_h=0.9)))
    inside = rows["time"].between(hour(200.3), hour(208))
    for change, word in ((-15, "opening"), (15, "outage")):
        table = hk.find_excursions(season(rows.assign(rh_pct=rows["rh_pct"] + change * inside)))
        assert list(table["looks_like"]) == [word]
        assert any(table["evidence"].iloc[0].get(name) for name in ("dry_pct", "damp_pct"))


def test_what_a_drift_of_nine_hours_is_worth():
    row = found(bump(288, 9, 2.0)).iloc[0]
    assert row["hours"] == pytest.approx(9, abs=0.1)
    assert row["degree_hours"] == pytest.approx(9 * (39.5 - 38.05), rel=0.05)
    assert row["day_start"] == pytest.approx(12.0, abs=0.01)
    assert row["level"] in ("alarm", "serious")
    assert row["egg_extreme_low_c"] < row["egg_extreme_c"] < row["egg_extreme_high_c"]
    assert row["egg_extreme_c"] > 39.5


def test_a_little_warm_counts_after_two_hours_only():
    assert found(bump(200, 1.5, 0.8)).empty
    assert list(found(bump(200, 3.0, 0.8))["level"]) == ["watch"]


def test_short_returns_do_not_end_an_excursion_and_long_ones_do():
    assert len(found(bump(200, 3, 2.0), bump(203.3, 3, 2.0))) == 1
    assert len(found(bump(200, 3, 2.0), bump(205, 3, 2.0))) == 2


def test_the_other_side_of_the_range_ends_it():
    table = found(bump(200, 3, 2.0), bump(203, 3, -3.0))
    assert list(table["kind"]) == ["warm", "cold"]


def test_a_gap_splits_and_is_not_filled():
    rows = readings(with_events(bump(200, 10, 2.0)))
    rows = rows[~rows["time"].between(hour(203), hour(206))]
    table = hk.find_excursions(season(rows))
    assert len(table) == 2
    assert table["hours"].sum() == pytest.approx(7, abs=0.4)


def test_batches_in_one_machine_share_the_event_each_at_its_own_age():
    table = found(outage(300, 6), batches=[{}, {"batch": "2", "set_at": hour(96)}])
    table = table[table["looks_like"] == "outage"]
    assert sorted(table["batch"]) == ["1", "2"] and table["event"].nunique() == 1
    days = table.set_index("batch")["day_start"]
    assert days["1"] - days["2"] == pytest.approx(4.0)


def test_each_species_and_kind_of_air_has_its_own_range():
    warm_for_a_fan = found(base=38.5)
    assert list(warm_for_a_fan["kind"]) == ["warm"]
    assert found(base=38.5, settings={"incubators": {"A": {"air": "still"}}}).empty
    assert found(base=36.4, batches=[{"species": "ostrich"}]).empty
    assert list(found(base=36.4)["kind"].unique()) == ["cold"]


def test_the_hatching_range_holds_from_transfer_on():
    assert found(base=36.9).iloc[0]["day_end"] == pytest.approx(18.0, abs=0.01)
    moved = found(base=36.9, batches=[{"transfer_at": hour(15 * 24)}])
    assert moved.iloc[0]["day_end"] == pytest.approx(15.0, abs=0.01)


def test_an_empty_machine_is_no_excursion():
    rows = readings(with_events(outage(-20, 6)))
    assert hk.find_excursions(season(rows)).empty


def test_an_egg_may_be_too_warm_in_air_that_is_right():
    """Still air at the top of its range late in incubation: the embryo's own heat does the rest."""
    table = found(base=39.0, settings={"incubators": {"A": {"air": "still"}}})
    assert set(table["on"]) == {"egg"} and (table["kind"] == "warm").all()
    assert table["day_start"].min() > 9


def test_doubted_readings_are_not_used_and_not_normal():
    rows = readings(with_events(bump(200, 5, 9.0)))
    rows.loc[rows["time"].between(hour(200), hour(205)), "doubt"] = "stuck"
    made = season(rows)
    assert hk.find_excursions(made).empty
    states = excursions.state_of_time(batch_track(made, "1"))
    during = states[(states["start"] < hour(204)) & (states["end"] > hour(201))]
    assert list(during["state"]) == ["not known"]


def test_no_incubator_given_and_two_logged_is_nobodys_log():
    rows = pd.concat([readings(with_events(outage(200, 6))), readings(incubator="B")], ignore_index=True)
    assert hk.find_excursions(season(rows, [{"incubator": np.nan}])).empty
    alone = season(readings(with_events(outage(200, 6))), [{"incubator": np.nan}])
    assert len(hk.find_excursions(alone)) == 1


def test_several_probes_are_averaged_at_the_same_time():
    two = pd.concat([readings(level(37.2)), readings(level(37.8), probe="2", seed=2)], ignore_index=True)
    two = two.sort_values(["incubator", "time"], ignore_index=True)
    air = machine_air.machine_air(season(two), "A")
    assert len(air) == len(two) / 2 and (air["probes"] == 2).all()
    assert air["air_c"].mean() == pytest.approx(37.5, abs=0.01)


def test_one_probe_of_two_that_runs_away_is_a_sensor_and_both_are_real():
    good, bad = readings(level(37.5)), readings(with_events(bump(200, 6, 8.0, rise=2)), probe="2", seed=2)
    both = readings(with_events(bump(200, 6, 4.0, rise=2)), probe="2", seed=2)
    for first, second, word in (
        (good, bad, "sensor"),
        (readings(with_events(bump(200, 6, 4.0, rise=2))), both, "overheating"),
    ):
        table = hk.find_excursions(season(pd.concat([first, second], ignore_index=True)))
        assert list(table["looks_like"]) == [word]


def test_a_power_cut_in_the_first_night_is_not_the_eggs_going_in():
    table = found(outage(8, 8))
    assert list(table["looks_like"]) == ["outage"] and table["notable"].all()


def test_a_season_without_readings_has_no_excursions():
    made = season()
    assert hk.find_excursions(dataclasses.replace(made, readings=made.readings.iloc[:0])).empty


LOG = readings(with_events(opening(60, 12), outage(100, 5), bump(150, 4, 1.5), bump(180, 0.1, 3.0)), to_h=220)
WHOLE = excursions.state_of_time(batch_track(season(LOG), "1"))


def state_at(states, moment):
    row = states[(states["start"] <= moment) & (states["end"] > moment)]
    return row["state"].iloc[0] if len(row) else "not known"


@given(st.integers(0, len(LOG) - 2), st.integers(1, 400))
@settings(max_examples=40, deadline=None)
def test_removing_readings_never_turns_an_excursion_into_normal(first, count):
    kept = LOG.drop(LOG.index[first : first + count])
    states = excursions.state_of_time(batch_track(season(kept), "1"))
    out = WHOLE[WHOLE["state"].isin(["warm", "cold"])]
    moments = [row.start + (row.end - row.start) * share for row in out.itertuples() for share in (0.0, 0.3, 0.9)]
    assert all(state_at(states, moment) != "normal" for moment in moments)


@given(st.integers(24 * 12, len(LOG) - 2), st.integers(1, 60))
@settings(max_examples=15, deadline=None)
def test_a_hole_is_known_as_a_hole(first, count):
    kept = LOG.drop(LOG.index[first : first + count])
    states = excursions.state_of_time(batch_track(season(kept), "1"))
    for moment in LOG["time"].iloc[first : first + count]:
        assert state_at(states, moment) == "not known"


def test_time_is_accounted_for_without_holes():
    states = excursions.state_of_time(batch_track(season(LOG), "1"), hour(-1), hour(300))
    assert (states["start"].iloc[1:].to_numpy() == states["end"].iloc[:-1].to_numpy()).all()
    assert states["start"].iloc[0] == hour(-1) and states["end"].iloc[-1] == hour(300)
