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
    row = {
        "event": 1,
        "incubator": "A",
        "batch": "1",
        "start": after(100),
        "end": after(106),
        "kind": "cold",
        "extreme_c": 21.0,
        "hours": 6.0,
        "looks_like": "outage",
        "day_start": 4.2,
        "notable": True,
    }
    return pd.DataFrame(
        [
            row,
            row | {"event": 2, "start": after(200), "kind": "cold", "looks_like": "opening", "notable": False},
            row | {"event": 3, "start": after(300), "kind": "warm", "extreme_c": 39.5},
        ]
    )


def timeline(full=True):
    time = pd.date_range(START, periods=400, freq="h")
    air = pd.DataFrame({"time": time, "low_c": 37.3, "middle_c": 37.5, "high_c": 37.7})
    egg = pd.DataFrame({"batch": "1", "time": time, "egg_c": 38.0, "egg_low_c": 37.5, "egg_high_c": 38.5})
    spans = pd.DataFrame(
        {"batch": "1", "stage": ["setting"], "start": [START], "end": [after(300)], "low_c": [37.2], "high_c": [38.05]}
    )
    batches = pd.DataFrame(
        {
            "batch": ["1", "2"],
            "species": "chicken",
            "set_at": [START, after(24)],
            "transfer_at": [after(300), after(324)],
            "end_at": [after(390), after(399)],
            "lane": [0, 1],
        }
    )
    looks = pd.DataFrame({"batch": ["1"], "name": ["candle1"], "looked_at": [after(150)], "lane": [0]})
    gaps = pd.DataFrame({"start": [after(250)], "end": [after(262)]})
    rows = slice(None) if full else slice(0)
    return Timeline(
        "A", "Europe/Rome", air, egg[rows], spans[rows], batches[rows], looks[rows], excursions()[rows], gaps[rows]
    )


def texts(ax):
    return [text.get_text() for text in ax.texts]


def drawn(ax):
    """Words on axes and on the strip below them."""
    return texts(ax) + [text for child in ax.child_axes for text in texts(child)]


def test_timeline_writes_the_worst_of_each_spell_worth_telling_and_names_batches_and_lines():
    ax = pictures.incubator_timeline(timeline())
    ax.figure.canvas.draw()
    assert {"21°, 6 h", "40°, 6 h", "1", "2", "air", "egg (est.)", "wanted", "lid open"} <= set(drawn(ax))
    assert sum("°" in text for text in texts(ax)) == 2
    assert ax.get_title(loc="left") == "Incubator A, °C"
    assert "no readings" in texts(ax)


def test_no_temperature_is_cut_off_and_a_power_cut_is_seen_in_its_depth():
    cold = replace(timeline(), excursions=excursions().assign(extreme_c=[12.0, 21.0, 39.5]))
    ax = pictures.incubator_timeline(cold)
    low, high = ax.get_ylim()
    assert low < 12 < 39.5 < high
    stem = next(line for line in ax.lines if list(line.get_ydata()) == [37.5, 12.0])
    assert stem.get_linewidth() >= 2
    heights = ax.transAxes.inverted().transform(ax.transData.transform([(0, value) for value in (12, 37, 38)]))[:, 1]
    assert heights[0] < 0.15 and heights[2] - heights[1] > 0.05  # the everyday has room too


def test_timeline_with_nothing_but_air():
    ax = pictures.incubator_timeline(timeline(full=False))
    ax.figure.canvas.draw()
    assert texts(ax) == ["air"]


def test_timeline_of_tables_that_never_held_a_row():
    full = timeline()
    bare = {
        name: pd.DataFrame(columns=getattr(full, name).columns, dtype=float)
        for name in ("air", "egg", "spans", "looks", "gaps")
    }
    ax = pictures.incubator_timeline(replace(timeline(full=False), **bare))
    ax.figure.canvas.draw()
    assert texts(ax) == []


@pytest.mark.parametrize(("unit", "middle"), [("C", 37), ("F", 99)])
def test_timeline_in_either_unit(unit, middle):
    ax = pictures.incubator_timeline(timeline(), unit=unit)
    assert ax.get_title(loc="left").endswith(f"°{unit}")
    assert f"{middle}" in [label.get_text() for label in ax.get_yticklabels()]


def test_given_axes_are_used():
    _, ax = plt.subplots()
    assert pictures.incubator_timeline(timeline(), ax) is ax
    assert pictures.hatch_clock(clock_table(), ax) is ax


def track():
    time = pd.date_range(after(96), periods=120, freq="5min")
    frame = pd.DataFrame(
        {
            "time": time,
            "air_c": 37.5,
            "egg_c": 37.4,
            "egg_low_c": 37.0,
            "egg_high_c": 37.8,
            "low_c": 37.2,
            "high_c": 38.05,
            "gap": False,
        }
    )
    frame.loc[60, "gap"] = True
    frame.loc[80:82, "air_c"] = np.nan
    return frame


def test_close_up_does_not_draw_across_a_gap():
    ax = pictures.excursion_close_up(track(), excursions().iloc[0], timezone="Asia/Tokyo")
    ax.figure.canvas.draw()
    air = next(line for line in ax.lines if line.get_label() == "air")
    assert np.isnan(air.get_ydata()[60]) and np.isnan(air.get_ydata()[81]) and np.isfinite(air.get_ydata()[59])
    assert ax.get_title(loc="left") == "Batch 1, day 4.2: too cold"
    assert "6 h" in texts(ax) and "air 37.5 °C\negg 37.4 °C" in texts(ax)


def test_a_short_spell_has_its_words_beside_it():
    short = excursions().assign(end=after(100.5)).iloc[0]
    places = []
    for spell in (short, excursions().iloc[0]):
        ax = pictures.excursion_close_up(track(), spell)
        words = next(text for text in ax.texts if text.get_text().startswith("air 37"))
        places.append(words.get_ha())
    assert places == ["left", "center"]


def summary(**more):
    return pd.Series(
        {
            "batch": "1",
            "weighed": "eggs",
            "projected_share": 0.12,
            "projected_low": 0.11,
            "projected_high": 0.13,
            "target_low": 0.11,
            "target_high": 0.13,
            "transfer_day": 18.0,
        }
        | more
    )


def test_weight_loss_shows_eggs_left_out_apart():
    points = pd.DataFrame(
        {
            "egg": ["1", "1", "2", "2"],
            "day": [0, 7, 0, 7],
            "lost_share": [0, 0.05, 0, 0.14],
            "used": [True, True, False, False],
        }
    )
    ax = pictures.weight_loss_track(points, summary())
    assert {line.get_marker() for line in ax.lines} >= {"o", "x"}
    assert "x  weighed, left out" in texts(ax)
    assert "%" in ax.get_title(loc="left")
    assert any(text.startswith("expected") for text in texts(ax))
    ax.figure.canvas.draw()


def test_weight_loss_without_weighings_shows_a_guess_only():
    none = pd.DataFrame({"egg": [], "day": [], "lost_share": [], "used": pd.Series(dtype=bool)})
    ax = pictures.weight_loss_track(none, summary(weighed="no", projected_low=0.06, projected_high=0.24))
    assert any(text.startswith("a guess") for text in texts(ax))
    assert not any(text.startswith("expected") for text in texts(ax))


def test_water_of_a_season_tells_weighed_unweighed_and_off_target_apart_by_shape():
    table = pd.DataFrame(
        [
            summary(batch="1", verdict="on target"),
            summary(batch="2", verdict="too little"),
            summary(batch="3", verdict="no weighings", weighed="no"),
        ]
    )
    ax = pictures.water_against_target(table)
    looks = {(line.get_marker(), line.get_markerfacecolor()) for line in ax.lines if line.get_marker() in "oD"}
    assert len(looks) == 3
    assert [label.get_text() for label in ax.get_yticklabels()] == ["1", "2", "3"]
    assert pictures.water_against_target(table.assign(projected_share=np.nan)).texts


def probe_table():
    row = dict(
        incubator="A",
        probe="p",
        offset_c=np.nan,
        other_probe="",
        differs_c=np.nan,
        differs_low_c=np.nan,
        differs_high_c=np.nan,
        clock_bias_c=0.4,
        clock_low_c=0.3,
        clock_high_c=0.5,
        clock_batches=4,
    )
    return pd.DataFrame(
        [
            row,
            row
            | dict(
                incubator="B",
                offset_c=-0.2,
                other_probe="q",
                differs_c=0.1,
                differs_low_c=0.0,
                differs_high_c=0.2,
                clock_bias_c=np.nan,
            ),
        ]
    )


def test_what_is_known_of_a_probe_has_a_mark_and_what_is_not_says_so():
    ax = pictures.probe_truth(probe_table())
    words = texts(ax)
    assert "check against ice or a good thermometer: not done" in words
    assert "by when the eggs hatched: not known" in words
    places = [float(line.get_xdata()[0]) for line in ax.lines if line.get_marker() == "D"]
    assert places == pytest.approx([0.4, 0.2, 0.1])  # what must be taken off reads too high
    assert pictures.probe_truth(probe_table(), unit="F").get_xlabel().endswith("°F")


def clock_table():
    base = {
        "species": "chicken",
        "usual_at": after(500),
        "expected_at": after(502),
        "expected_low_at": after(492),
        "expected_high_at": after(512),
        "first_hatch_at": after(495),
        "last_hatch_at": after(515),
        "middle_at": after(505),
        "verdict": "on time",
    }
    return pd.DataFrame(
        [
            base | {"batch": "1"},
            base | {"batch": "2", "middle_at": after(530), "verdict": "late"},
            base
            | {
                "batch": "3",
                "middle_at": pd.NaT,
                "first_hatch_at": pd.NaT,
                "last_hatch_at": pd.NaT,
                "verdict": "not seen",
            },
            base | {"batch": "4", "expected_at": pd.NaT, "verdict": "cannot tell"},
        ]
    )


def test_hatch_clock_lists_batches_in_their_order_and_marks_the_late():
    ax = pictures.hatch_clock(clock_table())
    assert [label.get_text() for label in ax.get_yticklabels()] == ["1", "2", "3"]
    assert ax.yaxis_inverted()
    late = next(line for line in ax.lines if line.get_marker() == "D")
    assert list(late.get_xdata()) == [30.0] and list(late.get_ydata()) == [1]
    ax.figure.canvas.draw()


def test_marks_differ_in_shape_not_only_in_colour():
    ax = pictures.hatch_clock(clock_table())
    assert {"o", "D"} <= {line.get_marker() for line in ax.lines}
    assert pictures.MARKS["warm"] != pictures.MARKS["cold"]
