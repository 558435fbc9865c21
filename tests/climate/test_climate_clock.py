"""The hatch clock: early and late only after storage and temperature, and what a wrong probe would do."""

import numpy as np
import pytest
from climate_seasons import bump, hour, level, outage, readings, season, with_events

from hatchkit.climate.clock import due_hours, hatch_clock, hours_until
from hatchkit.climate.probes import probe_truth
from hatchkit.climate.track import batch_track
from hatchkit.reference import species_table


def clock(temp=None, *, middle=500, window=20, **batch):
    """Hen eggs; from transfer on the machine stands at the hatching temperature."""
    air = temp or level(37.5)
    rows = readings(lambda h: air(h) - np.where(h >= 18 * 24, 37.5 - 36.94, 0))
    hatch = (
        {}
        if middle is None
        else {"first_hatch_at": hour(middle - window / 2), "last_hatch_at": hour(middle + window / 2)}
    )
    return hatch_clock(season(rows, [hatch | batch])).iloc[0]


def hours_of(row, name):
    return (row[name] - row["set_at"]).total_seconds() / 3600


def test_an_ordinary_hatch_is_on_time():
    row = clock()
    assert row["verdict"] == "on time" and np.isnan(row["probe_error_c"])
    assert hours_of(row, "expected_at") == pytest.approx(500, abs=0.5)
    assert row["temperature_h"] == pytest.approx(0, abs=0.5)


def test_the_band_is_never_narrower_than_eight_hours_each_way():
    for species in ("chicken", "quail", "goose"):
        row = hatch_clock(season(batches=[{"species": species}])).iloc[0]
        assert (row["expected_high_at"] - row["expected_at"]).total_seconds() / 3600 >= 8


def test_three_hours_for_each_tenth_of_a_degree():
    """3.1 h per 0.1 degC for hens at Q10 = 1.85 (1.6 gives 2.4, 2.2 gives 4.0)."""
    for off, hours in ((-0.5, 15.7), (0.5, -15.3), (-0.1, 3.1)):
        assert clock(level(37.5 + off))["temperature_h"] == pytest.approx(hours, abs=0.6)


def test_a_cool_machine_makes_a_late_hatch_expected_not_late():
    row = clock(level(36.7), middle=526)
    assert row["verdict"] == "on time"


def test_stored_eggs_may_hatch_later():
    assert clock(middle=515, stored_days=18.0)["verdict"] == "on time"
    assert clock(middle=515)["verdict"] == "late"


def test_unknown_storage_widens_the_band():
    known, unknown = clock(), clock(stored_days=np.nan)
    assert unknown["expected_high_at"] - unknown["expected_at"] > known["expected_high_at"] - known["expected_at"]
    assert unknown["storage_h"] == 0


@pytest.mark.parametrize("error", [-0.7, 0.4, 0.8])
def test_the_probe_error_that_would_explain_a_late_hatch_is_found(error):
    """The eggs lived at 37.5 - error; the log says 37.5; the hatch came when the eggs were ready."""
    ready = hours_of(clock(level(37.5 - error)), "expected_at")
    row = clock(middle=ready)
    assert row["verdict"] == ("late" if error > 0 else "early")
    assert row["probe_error_c"] == pytest.approx(error, abs=0.03)


def test_batches_that_agree_accuse_the_probe():
    hatches = [
        {"batch": str(n), "first_hatch_at": hour(514 + n), "last_hatch_at": hour(534 + n)} for n in (-1, 0, 1, 2)
    ]
    row = probe_truth(season(batches=hatches)).iloc[0]
    assert row["verdict"] == "reads high"
    assert row["clock_batches"] == 4 and row["clock_low_c"] > 0.5


def test_batches_that_disagree_accuse_nothing():
    hatches = [{"batch": str(n), "first_hatch_at": hour(490 + n), "last_hatch_at": hour(510 + n)} for n in (-30, 0, 40)]
    assert probe_truth(season(batches=hatches)).iloc[0]["verdict"] == "not checked"


def test_no_hatch_times_no_verdict_but_a_forecast():
    row = clock(middle=None)
    assert row["verdict"] == "not seen" and hours_of(row, "expected_at") == pytest.approx(500, abs=1)


def test_one_end_of_the_hatch_is_enough():
    first = hatch_clock(season(batches=[{"first_hatch_at": hour(490)}])).iloc[0]
    last = hatch_clock(season(batches=[{"last_hatch_at": hour(514)}])).iloc[0]
    assert hours_of(first, "middle_at") == hours_of(last, "middle_at") == 502


def test_an_outage_delays_by_about_its_length():
    row = clock(with_events(outage(200, 12)))
    assert row["temperature_h"] == pytest.approx(10, abs=3)


def test_too_little_logged_cannot_tell():
    rows = readings()
    rows = rows[rows["time"] < hour(200)]
    made = season(rows, [{"first_hatch_at": hour(530), "last_hatch_at": hour(540)}])
    row = hatch_clock(made).iloc[0]
    assert row["verdict"] == "cannot tell" and row["share_logged"] < 0.5
    assert (row["expected_high_at"] - row["expected_at"]).total_seconds() / 3600 > 30


def test_no_log_at_all_still_gives_the_usual_day():
    row = hatch_clock(season(batches=[{"incubator": "Z"}])).iloc[0]
    assert row["share_logged"] == 0 and hours_of(row, "expected_at") == pytest.approx(500)


def test_an_unknown_species_is_left_open():
    row = hatch_clock(season(batches=[{"species": "dodo"}])).iloc[0]
    assert row["verdict"] == "cannot tell" and row.isna()["expected_at"]


def test_the_clock_counts_development_up_to_the_hour():
    met = batch_track(season(readings(with_events(bump(-50, 400, -2.0)), noise=0.0)), "1")
    age = met["age_days"].to_numpy() * 24
    hours, unknown = hours_until(300.0, age, met["rate"].to_numpy(), met["hours"].to_numpy())
    slow = 1.85**-0.2
    assert hours == pytest.approx(300 / slow, rel=0.003) and unknown == pytest.approx(0, abs=0.01)


def test_storage_counts_from_the_usual_three_days():
    figures = species_table().loc["duck"]
    delay = figures["storage_delay_hours_per_day"]
    assert due_hours(figures, 10.0)[1] == pytest.approx(7 * delay)
    assert due_hours(figures, 0.0)[1] == pytest.approx(-3 * delay)
