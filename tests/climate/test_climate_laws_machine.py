"""A machine's season in steps, its steadiness, probes beside the clock, and what a batch met: worked by hand."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest
from climate_seasons import SET_AT, hour, season

from hatchkit.climate import clock, excursions, probes, shapes, steady, timeline, track
from hatchkit.climate.egg_temperature import unseen_share

NAN = math.nan


def spans(*pairs, **more):
    table = pd.DataFrame(dict(batch=[str(n) for n in range(len(pairs))], set_at=[hour(a) for a, _ in pairs],
                              end_at=[hour(b) for _, b in pairs]))  # fmt: skip
    return table.assign(**more)


def test_a_lane_is_free_from_the_hour_of_the_take_off_on():
    assert timeline.lanes(spans((0, 10), (5, 20), (10, 30), (15, 16), (20, 21))).tolist() == [0, 1, 0, 2, 1]
    assert timeline.lanes(spans()).tolist() == []


def test_a_step_is_a_part_of_the_whole_time_and_a_minute_at_least():
    air = pd.DataFrame(dict(time=[hour(0), hour(1), hour(9)]))
    assert timeline._width(spans((0, 10), (5, 20)), air, 40) == pd.Timedelta(minutes=30)
    assert timeline._width(spans((0, 10)).iloc[:0], air, 9) == pd.Timedelta(hours=1)
    assert timeline._width(spans((0, 1)), air, 360) == pd.Timedelta(minutes=1)


def test_air_in_steps_from_the_first_setting_to_the_last_end_with_holes_left_open():
    at = [-0.1, 0, 0.4, 0.9, 2.1, 3.0, 3.1]
    air = pd.DataFrame(dict(time=[hour(h) for h in at], air_c=[1.0, 36, 38, 37.5, 40, 41, 99]))
    found = timeline._binned_air(air, spans((0, 2), (1, 3)), pd.Timedelta(hours=1))
    assert found["time"].tolist() == [hour(h) for h in range(4)]
    for name, want in (("low_c", [36, NAN, 40, 41]), ("middle_c", [37.5, NAN, 40, 41]), ("high_c", [38, NAN, 40, 41])):
        assert found[name].tolist() == pytest.approx(want, nan_ok=True)
    assert len(timeline._binned_air(air, spans(), pd.Timedelta(hours=1))) == 5
    assert len(timeline._binned_air(air.iloc[:0], spans((0, 2)), pd.Timedelta(hours=1))) == 0


def test_eggs_in_steps_each_batch_with_an_open_end():
    rows = dict(batch="7", time=[hour(0), hour(0.5), hour(1)], egg_c=[37.0, 39, 38], egg_low_c=[36.0, 35, 37],
                egg_high_c=[38.0, 40, 39])  # fmt: skip
    found = timeline._binned_egg([pd.DataFrame(rows)], pd.Timedelta(hours=1))
    assert found["time"].tolist() == [hour(0), hour(1), hour(2)] and found["batch"].tolist() == ["7"] * 3
    for name, want in (("egg_c", [38, 38, NAN]), ("egg_low_c", [35, 37, NAN]), ("egg_high_c", [40, 39, NAN])):
        assert found[name].tolist() == pytest.approx(want, nan_ok=True)
    assert list(timeline._binned_egg([], pd.Timedelta(hours=1))) == list(found)


def track_of(at, speaks, level):
    return pd.DataFrame(dict(time=[hour(h) for h in at], hours=speaks, level=level))


def test_gaps_are_longer_than_half_an_hour_or_three_steps():
    """Readings at 0, 0.5 and 2 that speak for half an hour: not known up to 0, from 1 to 2 and from 2.5 to 3.1."""
    met = track_of([0, 0.5, 2], [0.5, 0.0, 0.5], [0, 0, 0])
    when = dict(set_at=hour(-0.5), end_at=hour(3.01))
    found = timeline.gaps_of(met, when, 0.1)
    assert [tuple(row) for row in found.to_numpy()] == [(hour(0.5), hour(2)), (hour(2.5), hour(3.01))]
    assert len(timeline.gaps_of(met, when, 0.17)) == 1  # three steps are 0.51 h, as the last one is
    assert len(timeline.gaps_of(met, when | dict(set_at=hour(-0.51)), 0.1)) == 3


def test_every_stretch_of_time_is_normal_warm_cold_or_not_known():
    met = track_of([0, 1, 2, 3, 4, 6], [1.0, 1, 1, 1, 0, 1], [0, 1, 3, -2, 0, 0])
    found = excursions.state_of_time(met, hour(-1), hour(8))
    assert found["state"].tolist() == ["not known", "normal", "warm", "cold", "not known", "normal", "not known"]
    assert found["start"].tolist() == [hour(h) for h in (-1, 0, 1, 3, 4, 6, 7)]
    assert found["end"].tolist() == [hour(h) for h in (0, 1, 3, 4, 6, 7, 8)]
    assert excursions.state_of_time(met)["start"].iloc[[0, -1]].tolist() == [hour(0), hour(6)]
    assert len(excursions.state_of_time(met, hour(0), hour(7))) == 5
    none = excursions.state_of_time(met.iloc[:0], hour(0), hour(2))
    assert none.to_numpy().tolist() == [[hour(0), hour(2), "not known"]]
    assert len(excursions.state_of_time(met.iloc[:0], hour(0))) == 0


def test_looks_of_the_batches_that_are_drawn():
    looks = pd.DataFrame(dict(batch=["0", "0", "9"], name=["candle1", "hatch", "candle1"],
                              looked_at=[hour(168), pd.NaT, hour(9)]))  # fmt: skip
    found = timeline.looks_of(SimpleNamespace(looks=looks), spans((0, 10), lane=4))
    assert found.to_numpy().tolist() == [["0", "candle1", hour(168), 4]]
    for none in (None, looks.iloc[:0], looks.drop(columns="looked_at")):
        assert list(timeline.looks_of(SimpleNamespace(looks=none), spans((0, 10), lane=4))) == list(found)


def test_close_up_is_six_hours_on_either_side(monkeypatch):
    met = track_of(range(30), 1.0, 0)
    monkeypatch.setattr(timeline, "batch_track", lambda season, batch: met)
    found = timeline.close_up(None, dict(batch="1", start=hour(10), end=hour(12)))
    assert found["time"].iloc[[0, -1]].tolist() == [hour(4), hour(18)]


def table_of(*, hours=1.0, stage="setting", size=120):
    """Readings each hour from setting on: 37.4 and 37.6 in turn, humidity 50 and 60, nothing out of range."""
    n = np.arange(size)
    return pd.DataFrame(dict(time=[hour(h) for h in n], age_days=n / 24, stage=stage, hours=hours, level=0,
                             air_c=np.where(n % 2, 37.6, 37.4), rh_pct=np.where(n % 2, 60.0, 50.0)))  # fmt: skip


def row_of(*tables, openings=(), setting=None):
    made = season(settings={"incubators": {"A": setting or {}}})
    found = pd.DataFrame(openings, columns=["looks_like", "event", "hours"])
    return probes._steadiness_row(made, "A", list(tables), found)


def test_how_steady_a_machine_ran_by_hand():
    """One hour of ten at watch level, four of alarm and more; everything within 12 h of setting is left out."""
    met = table_of()
    met.loc[:12, "air_c"] = 20.0
    met.loc[met["age_days"] * 24 >= 110, "air_c"] = 99.0
    met.loc[met["age_days"] * 24 >= 110, "level"] = [2, -2, 3, -3, 2, 2, 2, 2, 2, 2]
    met.loc[60:71, "level"] = -1
    found = row_of(met, setting=dict(set_point_c=37.2))
    assert found["mean_c"] == pytest.approx((49 * 37.6 + 48 * 37.4) / 97)
    assert found["off_set_point_c"] == pytest.approx(found["mean_c"] - 37.2) and found["set_point_c"] == 37.2
    assert (found["swing_c"], found["rh_swing_pct"]) == pytest.approx((0.2, 10.0))
    assert found["rh_mean_pct"] == pytest.approx((49 * 60 + 48 * 50) / 97)
    assert [found[f"share_{name}"] for name in ("in_band", "watch", "alarm")] == pytest.approx(
        [98 / 120, 12 / 120, 10 / 120]
    )
    assert (found["batches"], found["hours"], found["openings_per_day"]) == (1, 120, 0)
    assert math.isnan(found["opening_minutes"]) and math.isnan(row_of(met)["off_set_point_c"])


def test_openings_count_once_for_all_batches_and_by_the_days_logged():
    rows = [("opening", 1, 0.2), ("opening", 1, 9.0), ("opening", 2, 0.4), ("outage", 3, 5.0)]
    found = row_of(table_of(), table_of(), openings=rows)
    assert found["openings_per_day"] == pytest.approx(2 / 5) and found["opening_minutes"] == pytest.approx(18)
    assert (found["batches"], found["hours"]) == (2, 240)


def test_readings_that_speak_for_no_time_or_of_the_hatcher_say_nothing_of_the_everyday():
    found = row_of(table_of(hours=0.0), openings=[("opening", 1, 0.2)])
    assert math.isnan(found["openings_per_day"]) and math.isnan(found["share_in_band"])
    hatching = row_of(table_of(stage="hatching"))
    assert all(math.isnan(hatching[name]) for name in ("mean_c", "swing_c", "rh_mean_pct", "day_night_c"))


def test_share_logged_counts_the_whole_time_of_all_batches():
    """23 days from setting to the end where it is not told, 10 where it is; 5 and 7 days logged."""
    made = season(batches=[{}, {"batch": "2", "taken_off_at": hour(240)}, {"batch": "3", "species": "dodo"},
                           {"batch": "4", "set_at": pd.NaT}])  # fmt: skip
    days = (timeline.ranges.stages(made.batches.iloc[0], made.species("1"))["end_at"] - SET_AT) / pd.Timedelta(days=1)
    tracks = [table_of(), table_of(size=168)]
    assert probes._share_logged(made, made.batches, tracks) == pytest.approx(12 / (days + 10))
    assert probes._share_logged(made, made.batches.iloc[[1]], [table_of(size=300)]) == 1.0
    assert math.isnan(probes._share_logged(made, made.batches.iloc[2:], tracks))


def test_what_lies_between_two_readings_is_felt_by_an_egg_as_its_air_lets_it():
    air = pd.DataFrame()
    air.attrs["step_h"] = 0.5
    for setting, milliwatts in (({}, 115), (dict(air="still"), 85)):
        found = probes._step(season(settings={"incubators": {"A": setting}}), "A", air)
        assert found["step_minutes"] == 30
        assert found["unseen_share"] == pytest.approx(unseen_share(0.5, 1.12 * 3.3 * 60 / (milliwatts / 1000) / 3600))


def readings_of(added):
    return pd.DataFrame(dict(temp_c=[37.5 + added] * 3, temp_logged_c=[37.5] * 3))


@pytest.mark.parametrize(("setting", "added", "offset"), [
    ({}, 0.0, NAN), (dict(probe_offset_c=0), 0.0, 0.0), (dict(probe_offset_c={"1": 0.2}), 0.0, 0.2),
    (dict(probe_offset_c={"2": 0.2}), 0.0, NAN), (dict(probe_offset_c=0.4), -0.3, -0.3), ({}, NAN, NAN),
])  # fmt: skip
def test_the_offset_of_a_probe_is_what_was_added(setting, added, offset):
    assert probes._offset(setting, 1, readings_of(added)) == pytest.approx(offset, nan_ok=True)
    if not added:
        assert probes._offset(setting, 1, readings_of(0)[["temp_c"]]) == pytest.approx(offset, nan_ok=True)


def test_the_error_that_hatch_times_point_to_by_hand(monkeypatch):
    """Errors of 0.2, 0.4 and 0.9: 0.5 with t of 2 degrees 4.3027 (any table); batches hardly logged do not count."""
    table = pd.DataFrame(dict(incubator=["A"] * 5 + ["B"], difference_h=[1.0, 2, 3, NAN, 9, 4],
                              share_logged=[0.7, 0.9, 1, 1, 0.69, 1]))  # fmt: skip
    monkeypatch.setattr(clock, "hatch_clock", lambda season: table)
    monkeypatch.setattr(clock, "bias_of", lambda own, season: own["difference_h"].map({1: 0.2, 2: 0.4, 3: 0.9, 4: 0.6}))
    found = probes._clock_bias(None)
    half = 4.3027 * np.std([0.2, 0.4, 0.9], ddof=1) / math.sqrt(3)
    assert found["A"] == pytest.approx(
        dict(clock_bias_c=0.5, clock_batches=3, clock_low_c=0.5 - half, clock_high_c=0.5 + half), rel=1e-4
    )
    assert found["B"] == dict(clock_bias_c=0.6, clock_batches=1)


def test_in_still_air_the_probe_hangs_at_the_top_of_the_eggs(monkeypatch):
    """1.1 K cooler about the eggs; a checked probe is known to 0.1 K, others to 0.3; a damped one has no lag."""
    monkeypatch.setattr(track, "estimate", lambda hours, around, days, **more: (around, days, more))
    figures = dict(incubation_days=28.0)
    for kind, setting, want, sd, lag in (
        ("fan", {}, 37.5, 0.3, True), ("still", dict(probe_offset_c=0.0), 36.4, 0.1, True),
        ("fan", dict(damped_probe=True), 37.5, 0.3, False),
    ):  # fmt: skip
        air, days, more = track._egg(np.array([48.0]), np.array([37.5]), grams=80.0, figures=figures, kind=kind,
                                     setting=setting)  # fmt: skip
        assert (air[0], days[0]) == pytest.approx((want, 2.0)) and more["sensor_sd"] == sd
        assert (more["tau"] > 0) == lag and (more["grams"], more["incubation_days"], more["air"]) == (80, 28, kind)


def test_eggs_weigh_what_the_batchs_own_weighed():
    figures = dict(egg_grams=60.0)
    eggs = pd.DataFrame(dict(batch=["1", "1", "1", "2"], weight_g=[50.0, 54.0, NAN, 99.0]))
    usual = [(eggs, "3"), (eggs[["batch"]], "1"), (eggs[2:3], "1"), (eggs[:0], "1")]
    for sheet, batch, grams in [(eggs, "1", 52.0), *((*each, 60.0) for each in usual)]:
        assert track.egg_grams(SimpleNamespace(eggs=sheet), batch, figures) == grams


@pytest.mark.parametrize(("at", "off", "side"), [
    (37.0, 0.0, "above"), (36.949, 0.051, "below"), (36.96, 0.0, "below"), (38.051, 0.051, "above"),
    (38.04, 0.0, "above"),
])  # fmt: skip
def test_how_far_beside_its_range_a_machine_ran(at, off, side):
    found = steady._evidence(at, 37.0, 38.0, hatching=False, air="still")
    assert found["off_k"] == pytest.approx(off) and (found["side"], found["air"]) == (side, "still")
    assert (found["wanted_c"], found["assumed"], found["hatching"]) == (37.5, False, False)
    assert steady._evidence(at, 37.0, 38.0, hatching=True, air=None)["assumed"]
    assert steady._evidence(at, 37.0, 38.0, hatching=True, air=None)["air"] == "fan"


def test_days_beside_the_range_are_told_by_their_calm_readings():
    """Ten hours, two of them an event of its own and one that spoke for nothing; five of ten in the hatcher."""
    n = np.arange(10.0)
    event = np.isin(n, [3, 4])
    columns = dict(
        clock_h=n, air_c=np.where(event, 50.0, 38.4), egg_c=np.where(event, 50.0, 38.2),
        egg_low_c=np.where(event, 1.0, 38), egg_high_c=np.where(event, 99.0, 38.6),
        level=np.where(event, 3, 1), low_c=np.full(10, 37.0),
        high_c=np.full(10, 38.0), hours=np.where(n == 9, 0.0, 1.0), stage=np.where(n < 5, "setting", "hatching"),
    )  # fmt: skip
    found = steady.describe(columns, steady.Stretch(0, 9, 1, np.full(10, 38.4)), event, "fan")
    assert [found[name] for name in ("extreme_c", "egg_extreme_c", "egg_extreme_low_c", "egg_extreme_high_c")] == [
        38.4, 38.2, 38.0, 38.6]  # fmt: skip
    assert found["level"] == "watch" and found["gap_share"] == pytest.approx(0) and found["notable"]
    assert not found["evidence"]["hatching"] and found["evidence"]["off_k"] == pytest.approx(0.4)
    columns["stage"] = np.where(n < 4, "setting", "hatching")
    columns["hours"] = np.where(n >= 8, 0.0, 1.0)
    found = steady.describe(columns, steady.Stretch(0, 9, 1, np.full(10, 38.4)), event, "fan")
    assert found["evidence"]["hatching"] and found["gap_share"] == pytest.approx(1 / 9)


@pytest.mark.parametrize(("change", "word"), [
    (5.0, "rose"), (4.99, ""), (-5.0, "fell"), (-4.99, ""), (NAN, ""), (math.inf, ""),
])  # fmt: skip
def test_a_change_of_humidity_tells_from_five_points_on(change, word):
    assert shapes._dampness(dict(rh_change_pct=change)) == word


@pytest.mark.parametrize(("age", "worst", "since"), [
    (3.0, "coldest", "unknown"), (2.99, "coldest", "too_long"), (2.99, "warmest", "setting"),
])  # fmt: skip
def test_what_was_before_was_not_logged(age, worst, since):
    found = shapes._unknown_before(dict(age_h=age, extreme_c=30.0, hours=7.0), worst)
    assert found == dict(seen="unlogged", extreme_c=30.0, worst=worst, since=since, whole_h=7.0, stayed=False)


@pytest.mark.parametrize("worst", [0, 1, 2])
def test_an_event_may_be_worst_at_its_first_or_last_reading(worst):
    """It ran at 39 for ten hours; three readings 0.7 K beyond, of which one is 1.2 K beyond and at alarm level."""
    air, level = np.full(10, 39.0), np.ones(10, int)
    air[4:7] = 39.7
    air[4 + worst], level[4 + worst] = 40.2, 2
    columns = dict(air_c=air, level=level)
    stretch = steady.Stretch(0, 9, 1, np.full(10, 39.0))
    assert steady.events(columns, stretch, lambda mark: [(4, 6, 1)] if mark[4:7].all() else []) == [(4, 6, 1)]
    columns["air_c"] = np.where(level == 2, 40.09, air)
    assert steady.events(columns, stretch, lambda mark: [(4, 6, 1)]) == []
