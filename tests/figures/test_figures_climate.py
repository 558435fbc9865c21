"""Pictures of the climate: drawn from tables, on given axes, in either unit, also when there is little to show."""

from dataclasses import replace

import matplotlib
import numpy as np
import pandas as pd
import pytest

matplotlib.use("Agg")

import matplotlib.pyplot as plt

from hatchkit.climate.timeline import Timeline
from hatchkit.figures import climate as pictures

START = pd.Timestamp("2025-03-01 10:00", tz="UTC")


def after(hours):
    return START + pd.Timedelta(hours=hours)


@pytest.fixture(autouse=True)
def closed():
    yield
    plt.close("all")


def excursions(**more):
    row = {"event": 1, "incubator": "A", "batch": "1", "start": after(100), "end": after(106), "kind": "cold",
           "extreme_c": 21.0, "hours": 6.0, "looks_like": "outage", "day_start": 4.2, "notable": True}
    return pd.DataFrame([row, row | {"event": 2, "start": after(200), "kind": "cold", "looks_like": "opening",
                                     "notable": False}, row | {"event": 3, "start": after(300), "kind": "warm",
                                                               "extreme_c": 39.5}])


def timeline(full=True):
    time = pd.date_range(START, periods=400, freq="h")
    air = pd.DataFrame({"time": time, "low_c": 37.3, "middle_c": 37.5, "high_c": 37.7})
    egg = pd.DataFrame({"batch": "1", "time": time, "egg_c": 38.0, "egg_low_c": 37.5, "egg_high_c": 38.5})
    spans = pd.DataFrame({"batch": "1", "stage": ["setting"], "start": [START], "end": [after(300)],
                          "low_c": [37.2], "high_c": [38.05]})
    batches = pd.DataFrame({"batch": ["1", "2"], "species": "chicken", "set_at": [START, after(24)],
                            "transfer_at": [after(300), after(324)], "end_at": [after(390), after(399)],
                            "lane": [0, 1]})
    looks = pd.DataFrame({"batch": ["1"], "name": ["candle1"], "looked_at": [after(150)], "lane": [0]})
    gaps = pd.DataFrame({"start": [after(250)], "end": [after(262)]})
    rows = slice(None) if full else slice(0)
    return Timeline("A", "Europe/Rome", air, egg[rows], spans[rows], batches[rows], looks[rows], excursions()[rows],
                    gaps[rows])


def texts(ax):
    return [text.get_text() for text in ax.texts]


def test_timeline_numbers_the_notable_and_names_the_batches():
    ax = pictures.incubator_timeline(timeline())
    shown = texts(ax)
    assert "1: 21°" in shown and "3" in shown
    assert not any(text.startswith("2:") for text in shown)
    assert {"1", "2"} <= set(shown)
    assert ax.get_title(loc="left") == "Incubator A"
    ax.figure.canvas.draw()


def test_timeline_with_nothing_but_air():
    ax = pictures.incubator_timeline(timeline(full=False))
    ax.figure.canvas.draw()
    assert texts(ax) == []


def test_timeline_of_tables_that_never_held_a_row():
    full = timeline()
    bare = {name: pd.DataFrame(columns=getattr(full, name).columns, dtype=float)
            for name in ("air", "egg", "spans", "looks", "gaps")}
    ax = pictures.incubator_timeline(replace(timeline(full=False), **bare))
    ax.figure.canvas.draw()
    assert texts(ax) == []


@pytest.mark.parametrize(("unit", "low"), [("C", 30), ("F", 85)])
def test_timeline_in_either_unit(unit, low):
    ax = pictures.incubator_timeline(timeline(), unit=unit)
    assert f"°{unit}" in ax.get_ylabel() and ax.get_ylim()[0] > low
    assert all(tick > ax.get_ylim()[0] for tick in ax.get_yticks())


def test_given_axes_are_used():
    _, ax = plt.subplots()
    assert pictures.incubator_timeline(timeline(), ax) is ax
    assert pictures.hatch_clock(clock_table(), ax) is ax


def track():
    time = pd.date_range(after(96), periods=120, freq="5min")
    frame = pd.DataFrame({"time": time, "air_c": 37.5, "egg_c": 37.4, "egg_low_c": 37.0, "egg_high_c": 37.8,
                          "low_c": 37.2, "high_c": 38.05, "gap": False})
    frame.loc[60, "gap"] = True
    frame.loc[80:82, "air_c"] = np.nan
    return frame


def test_close_up_does_not_draw_across_a_gap():
    ax = pictures.excursion_close_up(track(), excursions().iloc[0], timezone="Asia/Tokyo")
    ax.figure.canvas.draw()
    air = next(line for line in ax.lines if line.get_label() == "air")
    assert np.isnan(air.get_ydata()[60]) and np.isnan(air.get_ydata()[81]) and np.isfinite(air.get_ydata()[59])
    assert ax.get_title(loc="left") == "1: heating lost (power or heater), batch 1, day 4.2"


def summary(**more):
    return pd.Series({"batch": "1", "weighed": "eggs", "projected_share": 0.12, "projected_low": 0.11,
                      "projected_high": 0.13, "target_low": 0.11, "target_high": 0.13, "transfer_day": 18.0} | more)


def test_weight_loss_shows_eggs_left_out_apart():
    points = pd.DataFrame({"egg": ["1", "1", "2", "2"], "day": [0, 7, 0, 7], "lost_share": [0, 0.05, 0, 0.14],
                           "used": [True, True, False, False]})
    ax = pictures.weight_loss_track(points, summary())
    labels = [line.get_label() for line in ax.lines]
    assert "weighed" in labels and "weighed, left out" in labels
    assert "%" in ax.get_ylabel()
    ax.figure.canvas.draw()


def test_weight_loss_without_weighings_shows_the_indication_only():
    none = pd.DataFrame({"egg": [], "day": [], "lost_share": [], "used": pd.Series(dtype=bool)})
    ax = pictures.weight_loss_track(none, summary(weighed="no", projected_low=0.06, projected_high=0.24))
    assert "indication without weighings" in ax.get_legend_handles_labels()[1]


def clock_table():
    base = {"species": "chicken", "usual_at": after(500), "expected_at": after(502), "expected_low_at": after(492),
            "expected_high_at": after(512), "first_hatch_at": after(495), "last_hatch_at": after(515),
            "middle_at": after(505), "verdict": "on time"}
    return pd.DataFrame([base | {"batch": "1"}, base | {"batch": "2", "middle_at": after(530), "verdict": "late"},
                         base | {"batch": "3", "middle_at": pd.NaT, "first_hatch_at": pd.NaT,
                                 "last_hatch_at": pd.NaT, "verdict": "not seen"},
                         base | {"batch": "4", "expected_at": pd.NaT, "verdict": "cannot tell"}])


def test_hatch_clock_lists_batches_in_their_order_and_marks_the_late():
    ax = pictures.hatch_clock(clock_table())
    names = [label.get_text() for label in ax.get_yticklabels()]
    assert names == ["3 (chicken)", "2 (chicken)", "1 (chicken)"]
    late = next(line for line in ax.lines if "later" in line.get_label())
    assert list(late.get_xdata()) == [30.0] and list(late.get_ydata()) == [1]
    ax.figure.canvas.draw()


def test_marks_differ_in_shape_not_only_in_colour():
    ax = pictures.hatch_clock(clock_table())
    markers = {line.get_label(): line.get_marker() for line in ax.lines}
    assert markers["middle, as expected"] != markers["middle, earlier or later than expected"]
    assert pictures.MARKS["warm"] != pictures.MARKS["cold"]
