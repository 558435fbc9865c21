"""Weighings that count, eggs that are left out, trays that lose eggs, events that touch: worked by hand."""

import numpy as np
import pandas as pd
import pytest
from climate_seasons import hour, season

from hatchkit.climate.excursions import _number
from hatchkit.climate.weighings import _fewer_each_time, left_out, weighings


@pytest.mark.parametrize(("day", "kept"), [(-0.4, True), (-0.6, False), (18.4, True), (18.6, False)])
def test_weighings_count_from_half_a_day_before_setting_to_half_a_day_after_transfer(day, kept):
    made = season(weights=[("1", "7", hour(24 * day), 60.0, 1.0), ("1", "7", hour(24 * 9), 56.0, 1.0)])
    row = made.batches.iloc[0]
    found = weighings(made, row, made.species_table.loc["chicken"])
    assert (found["day"].round(1) == day).any() == kept and len(found) == 1 + kept


@pytest.mark.parametrize(("by_day", "used"), [(18.0, False), (18.1, True)])
def test_an_egg_dead_by_the_day_asked_for_is_left_out_that_day_included(by_day, used):
    lines = pd.DataFrame({"name": ["7"], "namesakes": False, "slope_g_day": 0.4}, index=["7"])
    fates = pd.DataFrame({"batch": ["1"], "egg": ["7"], "fate": ["dead"], "by_day": [by_day]})
    assert (left_out(lines, fates, batch="1", alive_until=18.0)["7"] == "") == used


def test_a_tray_that_loses_eggs_is_weighed_by_the_doubt_of_each_stretch():
    """10, 10 and 5 eggs at 60, 57 and 55 g each on days 1, 8, 15; first slope 0.4 g a day.

    Doubt of the first stretch: scale 1/100 + 1/100, straight (0.05 x 0.4 x 7)^2 = 0.0196, together 0.0396; of the
    second: eggs taken off (0.08 x 57.33)^2 x (1/5 - 1/10) = 2.10375, scale 1/25 + 1/100, straight, together 2.17335.
    Weight 49/0.0396 + 49/2.17335 = 1259.9; slope (7 x 3/0.0396 + 7 x 2/2.17335) / 1259.9 = 0.42601.
    """
    series = pd.DataFrame({"day": [1.0, 8.0, 15.0], "grams": [60.0, 57.0, 55.0], "eggs_weighed": [10.0, 10.0, 5.0]})
    slope, set_g, doubt = _fewer_each_time(series, 0.4)
    assert slope == pytest.approx(0.42601, abs=2e-5)
    assert set_g == pytest.approx(60.42601, abs=2e-5)
    assert doubt == pytest.approx(1 / np.sqrt(1259.9), rel=1e-4)


def test_rows_that_touch_are_one_disturbance_and_rows_apart_are_two():
    at = [(0, 2), (2, 3), (3.01, 4)]
    table = pd.DataFrame(
        {
            "incubator": "A",
            "kind": "warm",
            "looks_like": "outage",
            "start": [hour(start) for start, _ in at],
            "end": [hour(end) for _, end in at],
        }
    )
    assert _number(table)["event"].tolist() == [1, 1, 2]
