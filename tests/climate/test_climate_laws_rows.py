"""One air from several probes, series of weighings, rows of the clock and of water loss: worked by hand."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest
from climate_seasons import SET_AT, hour, season

from hatchkit.climate import clock, machine_air, water_loss, weighings
from hatchkit.climate.air import saturation_pressure, standard_pressure

NAN = math.nan


@pytest.mark.parametrize("unit", ["s", "ms", "us", "ns"])
def test_the_usual_step_is_the_middle_of_the_steps_in_any_unit(unit):
    minutes = [0, 5, 5, 15, 30]  # steps 5, 10, 15; a stamp that stands twice is no step
    stamps = pd.DatetimeIndex([SET_AT + pd.Timedelta(minutes=m) for m in minutes]).as_unit(unit)
    assert machine_air.usual_step(stamps) == pytest.approx(1 / 6)
    assert math.isnan(machine_air.usual_step(stamps[1:3]))
    assert machine_air.usual_step(stamps[:2]) == pytest.approx(1 / 12)
    assert math.isnan(machine_air.usual_step(stamps[:1])) and math.isnan(machine_air.usual_step(stamps[:0]))


def logged(*rows):
    table = pd.DataFrame(rows, columns=["minute", "probe", "temp_c", "rh_pct", "doubt"])
    return table.assign(time=[SET_AT + pd.Timedelta(minutes=m) for m in table.pop("minute")])


def test_probes_share_steps_of_the_slower_one_and_a_doubted_reading_is_not_used():
    """Steps of 5 and 10 minutes: in each 10 minutes from the first reading on the mean of what is not doubted."""
    rows = [(0, "a", 37.0, 50.0, ""), (5, "a", 37.4, 52.0, ""), (3, "b", 38.0, NAN, ""), (10, "a", 36.0, 50.0, ""),
            (13, "b", 99.0, 60.0, "odd"), (15, "a", 36.0, 52.0, ""), (20, "a", 99.0, 50.0, "stuck"),
            (23, "b", 99.0, 60.0, "odd"), (25, "a", 99.0, 50.0, "odd")]  # fmt: skip
    found = machine_air._one_air(logged(*rows))
    assert ((found["time"] - SET_AT) / pd.Timedelta(minutes=1)).tolist() == [0, 10, 20]
    assert found["air_c"].tolist() == pytest.approx([112.4 / 3, 36, NAN], nan_ok=True)
    assert found["rh_pct"].tolist() == pytest.approx([51, 51, NAN], nan_ok=True)
    assert found["probes"].tolist() == [3, 2, 0] and found["doubt"].tolist() == ["", "", "stuck"]
    assert found["probe_spread_c"].tolist() == pytest.approx([1.0, 0.0, NAN], nan_ok=True)


def test_two_probes_read_once_are_joined_within_a_minute_only():
    for minute, rows in ((0.9, 1), (1.1, 2)):
        assert len(machine_air._one_air(logged((0, "a", 37.0, 50.0, ""), (minute, "b", 37.0, 50.0, "")))) == rows


def test_one_probe_is_put_in_order_and_its_doubted_readings_are_left_blank():
    found = machine_air._one_air(logged((5, "a", 37.5, 50.0, ""), (0, "a", 37.0, 60.0, ""), (10, "a", 1.0, 9.0, "odd")))
    assert found["air_c"].tolist() == pytest.approx([37, 37.5, NAN], nan_ok=True)
    assert found["rh_pct"].tolist() == pytest.approx([60, 50, NAN], nan_ok=True)
    assert found["probes"].tolist() == [1, 1, 0] and found["probe_spread_c"].isna().all()
    assert found.attrs["step_h"] == pytest.approx(1 / 12)


def test_the_machine_of_a_batch_is_its_own_or_the_only_one_logged():
    one = SimpleNamespace(readings=pd.DataFrame(dict(incubator=["A", "A", None])))
    two = SimpleNamespace(readings=pd.DataFrame(dict(incubator=["A", "B"])))
    named = [machine_air.incubator_of(one, {"incubator": name}) for name in ("B", " ", None)]
    assert named == ["B", "A", "A"] and machine_air.incubator_of(two, {}) is None


def test_the_row_at_which_a_time_falls():
    found = machine_air.position(pd.DatetimeIndex([hour(0), hour(1), hour(1), hour(2)]), hour(1))
    after = machine_air.position(pd.DatetimeIndex([hour(0), hour(1), hour(1), hour(2)]), hour(1), side="right")
    assert (found, after) == (1, 3)


def found_of(*rows):
    table = pd.DataFrame(rows, columns=["name", "tray", "day", "grams"])
    return table.assign(eggs_weighed=1.0)


def eggs_of(*rows, batch="1"):
    return pd.DataFrame(rows, columns=["egg", "tray", "weight_g"]).assign(batch=batch)


def test_an_egg_of_one_name_on_two_trays_is_told_by_its_tray():
    made = SimpleNamespace(eggs=eggs_of(("7", "a", 60.0), ("7", "b", 50.0), ("8", "a", 60.0)))
    found = weighings._with_tray(
        found_of(("7", "a", 3.0, 58.0), ("7", "", 3.0, 58.0), ("8", "a", 3.0, 58.0), ("", "a", 3.0, 58.0)), made, "1"
    )
    assert found["egg"].tolist() == ["tray a: 7", "7", "8", ""]
    assert found["namesakes"].tolist() == [False, True, False, False]
    assert found["whole"].tolist() == [False, False, False, True]
    other = weighings._with_tray(found_of(("7", "a", 3.0, 58.0)), made, "2")  # another batch has one tray only
    assert other["egg"].tolist() == ["7"]


@pytest.mark.parametrize(("second", "namesakes"), [(60.6, False), (60.61, True)])
def test_two_weights_at_once_beyond_a_hundredth_are_two_eggs(second, namesakes):
    rows = [("7", "", 3.0, 60.0), ("7", "", 3.0, second), ("7", "", 9.0, 57.0), ("8", "", 3.0, 50.0)]
    found = weighings._with_tray(found_of(*rows), SimpleNamespace(eggs=eggs_of()), "1")
    assert found["namesakes"].tolist() == [namesakes] * 3 + [False]


@pytest.mark.parametrize(("day", "kept"), [(0.49, ["8"]), (-0.49, ["8"]), (0.5, ["7", "8"]), (-0.5, ["7", "8"])])
def test_an_egg_weighed_within_half_a_day_of_setting_needs_no_weight_of_the_egg_sheet(day, kept):
    made = SimpleNamespace(eggs=eggs_of(("7", "a", 60.0), ("8", "a", 61.0), ("9", "a", NAN)))
    for tray in ("a", ""):
        parts = [found_of(("7", tray, day, 60.0))]
        found = weighings._set_weights(made, dict(batch="1"), parts)
        assert found["name"].tolist() == kept and found["day"].eq(0).all() and found["eggs_weighed"].eq(1).all()
    other = weighings._set_weights(made, dict(batch="1"), [found_of(("7", "b", day, 60.0))])
    assert other["name"].tolist() == ["7", "8"]
    assert weighings._set_weights(made, dict(batch="1"), [])["grams"].tolist() == [60, 61]


@pytest.mark.parametrize(("share", "gap", "verdict"), [
    (0.7, 12.0, "on time"), (0.7, -12.0, "on time"), (0.7, 12.01, "late"), (0.7, -12.01, "early"),
    (0.69, 40.0, "cannot tell"),
])  # fmt: skip
def test_early_or_late_beyond_the_band_and_with_enough_logged(share, gap, verdict):
    figures = dict(incubation_days=21.0)
    track = pd.DataFrame(dict(age_days=np.arange(600) / 24, hours=1.0, rate=1.0))
    seen = hour(500 + gap)
    out = dict(expected_at=hour(500), share_logged=share, first_hatch_at=seen, last_hatch_at=seen)
    found = clock._compare(out, dict(set_at=SET_AT), figures, track, due=500.0, half=12.0)
    assert (found["verdict"], found["difference_h"], found["middle_at"]) == (verdict, pytest.approx(gap), seen)
    if verdict in ("early", "late"):
        error = 10 * math.log((500 + gap) / 500) / math.log(1.85)
        assert found["probe_error_c"] == pytest.approx(error)
    else:
        assert "probe_error_c" not in found


@pytest.mark.parametrize(("species", "stored", "half"), [
    ("chicken", 3.0, 10 + 22.5 + 7.5), ("chicken", NAN, None), ("goose", 3.0, None), ("quail", 3.0, None),
])  # fmt: skip
def test_the_row_of_the_clock_by_hand(monkeypatch, species, stored, half):
    """250 h logged at a rate of 1.1: 25 h gained; without readings the rest; band 10 h, a tenth of it, 0.3 x 25."""
    track = pd.DataFrame(dict(age_days=np.arange(250) / 24, hours=1.0, rate=1.1))
    monkeypatch.setattr(clock, "batch_track", lambda season, batch: track)
    made = season(batches=[dict(species=species, stored_days=stored)])
    found = clock.hatch_clock(made).iloc[0]
    figures = made.species_table.loc[species]
    days, delay = float(figures["incubation_days"]), float(figures["storage_delay_hours_per_day"])
    due = days * 24 - 4 * days / 21
    want = max(10 * days / 21, 8) + 0.1 * (due - 25 - 250) + 0.3 * 25 + (3 * delay if math.isnan(stored) else 0)
    assert half is None or want == pytest.approx(half)
    assert found["expected_at"] == pytest.approx(hour(due - 25), abs=pd.Timedelta(seconds=1))
    assert (found["expected_high_at"] - found["expected_at"]) / pd.Timedelta(hours=1) == pytest.approx(want, abs=1e-3)
    assert (found["expected_at"] - found["expected_low_at"]) / pd.Timedelta(hours=1) == pytest.approx(want, abs=1e-3)
    assert found["temperature_h"] == pytest.approx(-25) and found["storage_h"] == 0 and found["verdict"] == "not seen"
    assert found["share_logged"] == pytest.approx(250 / (due - 25))
    assert found["usual_at"] == pytest.approx(hour(due), abs=pd.Timedelta(seconds=1))


def test_stored_eggs_are_usual_earlier_than_they_are_due(monkeypatch):
    track = pd.DataFrame(dict(age_days=np.arange(600) / 24, hours=1.0, rate=1.0))
    monkeypatch.setattr(clock, "batch_track", lambda season, batch: track)
    made = season(batches=[dict(stored_days=13.0)])
    found, delay = clock.hatch_clock(made).iloc[0], made.species_table.at["chicken", "storage_delay_hours_per_day"]
    assert found["storage_h"] == pytest.approx(10 * delay) and found["share_logged"] == 1
    assert (found["expected_at"] - found["usual_at"]) / pd.Timedelta(hours=1) == pytest.approx(10 * delay)


def air_track(rh, days=(1.0, 5.0, 18.0, 18.01), hours=(1.0, 3, 0, 9)):
    return pd.DataFrame(dict(age_days=days, rh_pct=rh, egg_c=37.5, air_c=37.5, hours=hours))


@pytest.mark.parametrize(("species", "eggs", "reason"), [("chicken", None, "by_kind"), ("duck", 80.0, "by_size")])
def test_what_shells_of_the_kind_would_lose_in_the_logged_air(species, eggs, reason):
    """40 and 60 % for one and three hours: 55 %. Chicken 0.34, 0.27 to 0.43; other birds by the size of the egg."""
    sheet = None if eggs is None else pd.DataFrame(dict(batch=["1"], egg="1", weight_g=eggs))
    brought = {"incubators": {"A": {"eggs_brought_in": True, "altitude_m": 1500}}}
    full = saturation_pressure(37.5) / 0.1333224
    torr = 0.45 * full
    for settings, factor in ((None, 1.0), (brought, 101.325 / standard_pressure(1500.0))):
        made = season(batches=[dict(species=species)], eggs=sheet, settings=settings)
        row, figures = made.batches.iloc[0], made.species_table.loc[species]
        found = water_loss._indication(made, row, figures, air_track([40.0, 60, 90, 90]), 18.0)
        want = [each * torr * 18 / 1000 for each in (0.34, 0.27, 0.43)]
        if eggs:
            middle = 0.384 * eggs**0.814 * torr * 18 / 1000 / eggs
            want = [middle, middle / 2, middle * 2]
        assert [found[f"projected_{name}"] for name in ("share", "low", "high")] == pytest.approx(
            [factor * each for each in want]
        )
        assert (found["torr"], found["rh_pct"]) == pytest.approx((torr, 55.0)) and found["reason"] == reason
    for setting in ({"eggs_brought_in": True}, {"altitude_m": 1500}):
        made = season(batches=[dict(species="chicken")], settings={"incubators": {"A": setting}})
        found = water_loss._indication(made, made.batches.iloc[0], made.species_table.loc["chicken"],
                                       air_track([55.0] * 4), 18.0)  # fmt: skip
        assert found["projected_share"] == pytest.approx(0.34 * torr * 18 / 1000)


def test_nothing_is_said_of_air_that_is_nearly_as_moist_as_the_egg_or_not_logged():
    made = season()
    row, figures = made.batches.iloc[0], made.species_table.loc["chicken"]
    edge = 100 - 100 * 5.0 * 0.1333224 / saturation_pressure(37.5)
    for rh, reason in ((edge - 1e-6, "by_kind"), (edge + 1e-6, "no_humidity"), (NAN, "no_humidity")):
        found = water_loss._indication(made, row, figures, air_track([rh] * 4), 18.0)
        assert found["reason"] == reason and found["verdict"] == "no weighings"
    assert water_loss._met(air_track([50.0] * 4), 5.1, 18.0) is None  # what was read then spoke for no time
    assert water_loss._met(air_track([50.0, 60, 70, 80]), 5.0, 18.01)["rh_pct"] == pytest.approx(75)


@pytest.mark.parametrize(("last", "weighed"), [(3.0, "eggs"), (2.99, "no")])
def test_weighings_three_days_apart_say_something(last, weighed):
    weights = [("1", egg, hour(24 * day), grams, 1.0) for egg in "78" for day, grams in ((0, 60.0), (last, 58.8))]
    assert water_loss.batch_water_loss(season(weights=weights))["weighed"].tolist() == [weighed]


@pytest.mark.parametrize(("single", "weighed", "series"), [(4, "tray", 1), (5, "eggs", 5)])
def test_five_single_eggs_say_more_than_their_tray(single, weighed, series):
    names = [*map(str, range(single)), ""]
    weights = [("1", egg, hour(24 * day), grams * (1 if egg else 30), 1.0 if egg else 30.0)
               for egg in names for day, grams in ((0, 60.0), (10, 56.0))]  # fmt: skip
    found = water_loss.batch_water_loss(season(weights=weights)).iloc[0]
    assert (found["weighed"], found["series"], found["left_out"]) == (weighed, series, 0)


@pytest.mark.parametrize(("times", "reason"), [(1.59, False), (1.61, True)])
def test_eggs_too_heavy_for_their_kind_may_have_been_weighed_with_their_tray(times, reason):
    usual = float(season().species_table.at["chicken", "egg_grams"])
    weights = [("1", str(egg), hour(24 * day), usual * times * (1 - 0.0067 * day), 1.0)
               for egg in range(6) for day in (0, 17)]  # fmt: skip
    found = water_loss.batch_water_loss(season(weights=weights)).iloc[0]
    assert (found["reason"] == "heavy") == reason and found["set_g"] == pytest.approx(usual * times)
