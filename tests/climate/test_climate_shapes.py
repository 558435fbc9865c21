"""Where the word for a curve turns, on both sides of each limit, and what is measured of it, by hand."""

import math

import numpy as np
import pytest

from hatchkit.climate import shapes

#: A cold stretch of 5 K that fell within 20 minutes and lasted an hour, and a warm one.
COLD = dict(age_h=100.0, hours=1.0, base_c=37.5, extreme_c=32.5, depth_k=5.0, to_extreme_h=0.5, to_80_h=0.3,
            rate_k_min=0.1, rh_change_pct=0.0, step_h=0.1, level=2, back=True, known_before=True)  # fmt: skip


@pytest.mark.parametrize(("word", "curve"), [
    ("loading", dict(age_h=2.99, hours=12.0)), ("unclear", dict(age_h=3.0, known_before=False)),
    ("unclear", dict(age_h=2.0, hours=12.01, known_before=False)), ("outage", {}),
    # Slow and shallow is drift: 80 % of the fall in over 0.4 h (or two steps), down to 3 K.
    ("drift", dict(to_80_h=0.41, depth_k=3.0)), ("outage", dict(to_80_h=0.41, depth_k=3.01)),
    ("opening", dict(to_80_h=0.40, depth_k=3.0)), ("outage", dict(to_80_h=0.40, depth_k=3.01)),
    ("opening", dict(to_80_h=0.5, step_h=0.25, depth_k=2.0)), ("drift", dict(to_80_h=0.51, step_h=0.25, depth_k=2.0)),
    # ... or creeping: up to 8 K at under 2.5 K per hour.
    ("drift", dict(to_80_h=2.57, depth_k=8.0)), ("outage", dict(to_80_h=2.55, depth_k=8.0)),
    ("outage", dict(to_80_h=5.0, depth_k=8.01)),
    # An opening falls by 0.25 K per minute; a slow fall has to rush twice as fast somewhere.
    ("opening", dict(rate_k_min=0.25)), ("outage", dict(rate_k_min=0.249)),
    ("opening", dict(to_80_h=0.41, rate_k_min=0.5)), ("outage", dict(to_80_h=0.41, rate_k_min=0.499)),
    ("unclear", dict(to_80_h=0.4, step_h=0.201, rate_k_min=0.3)), ("outage", dict(to_80_h=0.4, step_h=0.2)),
    ("opening", dict(to_80_h=0.4, step_h=0.2, rate_k_min=0.3)),
    # Humidity tells from 5 %RH on: risen it speaks against an opening that rushed only somewhere, fallen for one.
    ("outage", dict(to_80_h=0.41, rate_k_min=0.5, rh_change_pct=5.0)),
    ("opening", dict(rate_k_min=0.25, rh_change_pct=9)),
    ("opening", dict(to_80_h=0.41, rate_k_min=0.5, rh_change_pct=4.9)), ("opening", dict(rh_change_pct=-5.0)),
    ("outage", dict(rh_change_pct=-4.9)), ("outage", dict(rh_change_pct=math.nan)),
    ("outage", dict(hours=0.5)), ("unclear", dict(hours=0.49)),
    ("outage", dict(depth_k=3.0, rh_change_pct=5.0)), ("unclear", dict(depth_k=2.99, rh_change_pct=5.0)),
    ("outage", dict(to_80_h=0.5, step_h=0.21)),
])  # fmt: skip
def test_where_the_word_for_a_cold_stretch_turns(word, curve):
    assert shapes._cold(COLD | curve)[0] == word


@pytest.mark.parametrize(("word", "curve"), [
    ("drift", dict(to_80_h=1.0, depth_k=2.0)), ("overheating", dict(to_80_h=0.99, depth_k=2.0)),
    ("overheating", dict(to_80_h=1.0, depth_k=2.01)), ("drift", dict(level=1, hours=2.0)),
    ("unclear", dict(level=1, hours=1.99)), ("overheating", dict(hours=9.0)),
    ("overheating", dict(known_before=False)),
])  # fmt: skip
def test_where_the_word_for_a_warm_stretch_turns(word, curve):
    assert shapes._warm(COLD | curve)[0] == word


def curve_of(inside, *, step=0.1, gaps=(), rh=None, spread=None, air=None, usual=None):
    """Columns of ten hours at 37.5 degC with `inside` from reading 70 on; range 37 to 38.4."""
    size = 100
    made = np.full(size, 37.5) if air is None else air
    made[70 : 70 + len(inside)] = inside
    gap = np.zeros(size, bool)
    gap[list(gaps)] = True
    level = np.where(made < 36.5, -2, np.where(made > 39, 2, 0))
    return dict(
        clock_h=step * np.arange(size), air_c=made, gap=gap, hours=np.full(size, step), level=level,
        rh_pct=np.full(size, 50.0) if rh is None else rh, usual=level == 0 if usual is None else usual,
        low_c=np.full(size, 37.0), high_c=np.full(size, 38.4),
        probe_spread_c=np.full(size, np.nan) if spread is None else spread,
    )  # fmt: skip


def test_a_curve_is_measured_by_hand():
    """A fall of 1, 2, 1 and 0.5 K in steps of six minutes, back by 1 and 2 K and a last 1.5."""
    rh, spread = np.full(100, 50.0), np.full(100, 0.1)
    rh[71:75], spread[71:75] = 60.0, 0.5
    found = shapes.measure(
        curve_of([36.5, 34.5, 33.5, 33.0, 34.0, 36.0], rh=rh, spread=spread), 70, 75, False, 0.1
    )  # fmt: skip
    want = dict(age_h=7.0, hours=0.6, base_c=37.5, extreme_c=33.0, depth_k=4.5, to_extreme_h=0.4, to_80_h=0.3,
                rate_k_min=2 / 6, jump_in_k=1.0, jump_out_k=1.5, rh_change_pct=10.0, probes_part_k=0.4)  # fmt: skip
    assert {name: found[name] for name in want} == pytest.approx(want)
    assert found["back"] and found["known_before"] and not found["jumped"] and found["level"] == 2


def test_what_was_not_logged_beside_a_curve_is_no_part_of_it():
    found = shapes.measure(curve_of([33.5, 33.0], gaps=(70, 72)), 70, 71, False, 0.1)
    assert not found["back"] and not found["known_before"]
    assert found["jump_in_k"] == found["jump_out_k"] == 0.0
    assert (found["to_extreme_h"], found["rate_k_min"]) == pytest.approx((0.1, 0.5 / 6))
    at_the_end = shapes.measure(curve_of(np.full(30, 33.0)), 70, 99, False, 0.1)
    assert not at_the_end["back"] and at_the_end["known_before"]


def test_the_base_is_the_middle_of_the_usual_readings_of_six_hours():
    """32 readings of 37.4 within six hours before, 28 of 37.5; before those only 37.5 again."""
    air = np.full(100, 37.5)
    air[10:42] = 37.4
    assert shapes.measure(curve_of([33.0], air=air.copy()), 70, 70, False, 0.1)["base_c"] == pytest.approx(37.4)
    few = np.zeros(100, bool)
    few[[12, 13, 14]] = True
    made = curve_of([33.0], air=air.copy(), usual=few)
    assert shapes.measure(made, 70, 70, False, 0.1)["base_c"] == pytest.approx(37.4)
    few[14] = False  # of fewer than three the middle of the range stands in
    assert shapes.measure(made, 70, 70, False, 0.1)["base_c"] == pytest.approx(37.7)


def test_from_four_hours_on_depth_is_that_of_the_upper_quarter():
    """39 readings of 2 K and one of 10: 3.9 h are as deep as their extreme, 4.0 h as their upper quarter."""
    made = curve_of([], air=np.r_[np.full(30, 37.5), np.full(10, 35.5), 27.5, np.full(29, 35.5), np.full(30, 37.5)])
    assert shapes.measure(made, 31, 69, False, 0.1)["depth_k"] == pytest.approx(10)
    assert shapes.measure(made, 30, 69, False, 0.1)["depth_k"] == pytest.approx(2)


@pytest.mark.parametrize(("warm", "size", "step", "jumped"), [
    (False, 7.3, 0.1, True), (False, 7.1, 0.1, False), (True, 7.3, 0.1, True), (True, 7.1, 0.1, False),
    (False, 3.0, 0.02, True), (False, 2.9, 0.02, False),
])  # fmt: skip
def test_a_jump_is_square_of_three_kelvin_and_faster_than_a_heater(warm, size, step, jumped):
    """1.2 K per minute are 7.2 K in six minutes, 1.44 K in 72 seconds."""
    made = curve_of(np.full(6, 37.5 + (size if warm else -size) * (1 + 1e-9)), step=step)
    assert shapes.measure(made, 70, 75, warm, step)["jumped"] == jumped
    assert (shapes.looks_like(made, 70, 75, warm, step)[0] == "sensor") == jumped


def test_a_jump_is_flat():
    """What changes by three tenths of the depth within is a curve."""
    for last, jumped in ((-7.5, True), (-7.3, True), (-6.9, False)):
        made = curve_of(37.5 + np.array([-10.0, -10, -10, last]))
        assert shapes.measure(made, 70, 73, False, 0.1)["jumped"] == jumped


@pytest.mark.parametrize(("depth", "apart", "sensor"), [(1.0, 1.0, True), (1.0, 0.99, False), (4.0, 3.6, True),
                                                        (4.0, 3.59, False)])  # fmt: skip
def test_probes_that_part_by_nearly_the_whole_depth(depth, apart, sensor):
    spread = np.full(100, 0.25)
    spread[70:76] = 0.25 + apart + 1e-9
    made = curve_of(np.full(6, 37.5 - depth), spread=spread)
    assert (shapes.looks_like(made, 70, 75, False, 0.1)[0] == "sensor") == sensor
