"""What a reading speaks for, which stretches are one, when a machine ran beside its range, probes: by hand."""

import math

import numpy as np
import pandas as pd
import pytest

from hatchkit.climate import excursions, machine_air, probes, steady


def test_what_a_reading_speaks_for():
    """Steps of 0.1 h: a next reading after 0.19 h counts, after 0.2 not; a gap is over half an hour or 3 steps."""
    hours = np.array([0.0, 0.1, 0.29, 0.49, 0.99, 1.495, 1.6])
    known = np.array([True, True, True, True, True, True, False])
    speaks, gap = machine_air.coverage(hours, known, 0.1)
    assert speaks == pytest.approx([0.1, 0.19, 0, 0, 0, 0.105, 0])
    assert gap.tolist() == [False, False, False, False, False, True, False]
    assert machine_air.gap_limit(0.1) == 0.5 and machine_air.gap_limit(0.2) == pytest.approx(0.6)
    assert machine_air.gap_limit(np.nan) == 0.5
    assert machine_air.coverage([0.0, 1.0], [True, True], np.nan)[0].tolist() == [0.0, 0.0]


def runs_of(clock_h, side, step=0.1, gap=()):
    columns = dict(clock_h=np.asarray(clock_h), gap=np.isin(np.arange(len(clock_h)), gap))
    return excursions._runs(columns, np.asarray(side), step)


def test_short_returns_do_not_end_an_excursion():
    """Half an hour and one step of 0.1 h between two readings out of range is still one; with steps of 0.4, two."""
    assert runs_of([0, 0.6, 1.21], [1, 1, 1]) == [(0, 1, 1), (2, 2, 1)]
    assert runs_of([0, 0.1, 0.2], [1, -1, -1]) == [(0, 0, 1), (1, 2, -1)]
    assert runs_of([0, 0.1, 0.2], [1, 1, 1], gap=(1,)) == [(0, 0, 1), (1, 2, 1)]
    assert runs_of([0, 1.2, 2.41], [1, 1, 1], step=0.4) == [(0, 1, 1), (2, 2, 1)]
    assert runs_of([0, 0.5, 1.01], [1, 1, 1], step=np.nan) == [(0, 1, 1), (2, 2, 1)]
    assert runs_of([0, 0.1], [0, 0]) == []


def test_what_counts_and_what_the_egg_shows_after_it():
    columns = dict(clock_h=np.array([0.0, 1.0, 1.9]), hours=np.full(3, 0.1), level=np.array([1, -1, 1]))
    assert excursions._length(columns, (0, 2, 1)) == pytest.approx(2.0)
    assert excursions._counts(columns, 0, 2, 1) and not excursions._counts(columns, 0, 1, 1)
    assert excursions._counts(columns | dict(level=np.array([1, -2, 1])), 0, 1, 1)
    columns = dict(clock_h=np.arange(20.0))
    taken = [(5.0, 8.0, "warm")]
    for run, follows in (((11, 12, 1), True), ((12, 13, 1), False), ((3, 5, 1), True), ((3, 4, 1), False),
                         ((6, 7, -1), False)):  # fmt: skip
        assert excursions._follows(columns, run, taken) == follows


def days_of(off, *, stage="setting", step=1.0):
    """Columns of hourly readings, one offset beside a range of 37 to 38 for each day."""
    off = np.repeat(np.asarray(off, float), int(24 / step))
    air = np.where(off > 0, 38 + off, np.where(off < 0, 37 + off, 37.5))
    size = len(air)
    return dict(clock_h=step * np.arange(size), air_c=air, low_c=np.full(size, 37.0), high_c=np.full(size, 38.0),
                hours=np.full(size, step), level=np.sign(off).astype(int), stage=np.full(size, stage))  # fmt: skip


def stretches_of(columns):
    runs = excursions._runs(columns | dict(gap=np.zeros(len(columns["air_c"]), bool)), columns["level"], 1.0)
    return [(one.first, one.last, one.side) for one in steady.stretches(columns, runs)]


def test_from_two_days_on_a_machine_runs_beside_its_range():
    """Three days are one stretch, two days less one hour are none; one other day between does not end it, two do."""
    assert stretches_of(days_of([0, 1, 1, 1, 0])) == [(24, 95, 1)]
    assert stretches_of(days_of([0, 1, 1, 0])) == []
    longer = days_of([0, -1, -1, 0, 0])
    longer["air_c"][72], longer["level"][72] = 36.0, -1
    assert stretches_of(longer) == [(24, 72, -1)]
    assert stretches_of(days_of([1, 0, 1, 1])) == [(0, 95, 1)]
    assert stretches_of(days_of([1, 1, 1, 0, 0, 1, 1, 1])) == [(0, 71, 1), (120, 191, 1)]
    assert stretches_of(days_of([4.0, 4.0, 4.0])) == [(0, 71, 1)] and stretches_of(days_of([4.1, 4.1, 4.1])) == []
    assert stretches_of(days_of([-4.1, 1, 1, 1])) == [(24, 95, 1)]


def test_a_stretch_needs_a_day_of_readings_out_of_its_range():
    for spoken, there in ((24.0, True), (23.0, False)):
        columns = days_of([1, 1, 1])
        columns["hours"] = np.full(72, spoken / 72)
        assert bool(stretches_of(columns)) == there


def test_events_beside_where_the_machine_ran():
    """It ran at 39; events reach 1.1 K beyond at alarm level, and last while 0.6 K beyond."""
    columns = days_of([1, 1, 1])
    columns["air_c"][30:34] = [39.7, 40.2, 39.65, 39.5]
    columns["level"][31] = 2
    columns["air_c"][50], columns["level"][50] = 40.05, 2
    stretch = steady.Stretch(0, 71, 1, np.full(72, 39.0))
    found = steady.events(columns, stretch, lambda mark: runs_of(columns["clock_h"], mark, step=1.0))
    assert found == [(30, 32, 1)]
    columns["level"][31] = 1
    assert steady.events(columns, stretch, lambda mark: runs_of(columns["clock_h"], mark, step=1.0)) == []


def test_day_less_night_by_hand():
    """Days from 10 to 18 h at 38, nights from 22 to 6 h at 37, all else at 60; each day and night has its median."""
    time = pd.date_range("2025-03-01 00:30", periods=24 * 4, freq="h", tz="UTC")
    hour = time.hour
    air = np.where((hour >= 10) & (hour < 18), 38.0, np.where((hour >= 22) | (hour < 6), 37.0, 60.0))
    assert probes.day_night(time, air, "UTC") == pytest.approx(1.0)
    assert math.isnan(probes.day_night(time[:48], air[:48], "UTC"))
    assert probes.day_night(time[:72], air[:72], None) == pytest.approx(1.0)
    # The night belongs to the evening on which it began: three cold nights of five are not two halves each.
    cold = air.copy()
    cold[(time >= "2025-03-01 22:00") & (time < "2025-03-02 06:00")] = 30.0
    nights = [37.0, 30.0, 37.0, 37.0, 37.0]
    assert probes.day_night(time, cold, "UTC") == pytest.approx(38 - np.median(nights))
    assert probes._spread(pd.Series([0.0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, np.nan])) == pytest.approx(8.0)


def test_two_probes_compared_at_most_half_a_step_apart():
    time = pd.date_range("2025-03-01", periods=11, freq="6min", tz="UTC")
    own = pd.DataFrame(dict(time=time, temp_c=37.5 + 0.1 * np.arange(11)))
    for shift, compared in (("3min", 11), ("-3min", 11)):
        found = probes._difference(own, own.assign(time=time + pd.Timedelta(shift), temp_c=37.0))
        assert found["compared"] == compared
        assert [found[f"differs{end}_c"] for end in ("_low", "", "_high")] == pytest.approx([0.6, 1.0, 1.4])
    alone = own.iloc[:1]
    assert probes._difference(alone, alone.assign(time=time[0] + pd.Timedelta("31s")))["compared"] == 0
    assert probes._difference(alone, alone.assign(time=time[0] + pd.Timedelta("29s")))["compared"] == 1


@pytest.mark.parametrize(("row", "verdict"), [
    (dict(clock_bias_c=0.25, clock_low_c=0.1, clock_high_c=0.4), "reads high"),
    (dict(clock_bias_c=-0.25, clock_low_c=-0.4, clock_high_c=-0.1), "reads low"),
    (dict(clock_bias_c=0.24, clock_low_c=0.1, clock_high_c=0.4), "not checked"),
    (dict(clock_bias_c=0.9, clock_low_c=-0.1, clock_high_c=1.9), "not checked"),
    (dict(compared=4, differs_c=-0.31), "probes disagree"), (dict(compared=4, differs_c=0.3), "probes agree"),
    (dict(checked=True), "checked"), (dict(checked=True, compared=4, differs_c=0.31), "probes disagree"),
])  # fmt: skip
def test_where_the_verdict_on_a_probe_turns(row, verdict):
    blank = dict(
        clock_bias_c=np.nan, clock_low_c=np.nan, clock_high_c=np.nan, compared=0, differs_c=np.nan, checked=False
    )
    assert probes._verdict(blank | row) == verdict
