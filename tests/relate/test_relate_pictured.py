"""Facts of this room's pictures from small tables."""

import math

import pandas as pd

from hatchkit.relate import pictured


def test_the_window_with_the_highest_ratio():
    rows = pd.DataFrame(
        dict(name=["w1", "w2", "w3"], hazard_ratio=[2.0, 3.0, math.nan], low=[1.01, 1.0, 5.0], high=9.0)
    )
    assert pictured.hazard_by_window(rows) == dict(name="w2", ratio=3, low=1, high=9, sure=False, clear=1, count=2)
    assert pictured.hazard_by_window(rows[:1])["sure"]
    none = dict(name=None, ratio=0.0, low=0.0, high=0.0, sure=False, clear=0, count=0)
    assert pictured.hazard_by_window(rows[2:]) == none


def test_batches_that_lost_more_than_unexposed_ones_would():
    rows = pd.DataFrame(
        dict(
            batch=list("abcde"),
            dose=[1.0, 2.0, 0.0, 0.0, math.nan],
            exposed=[True, True, False, False, True],
            share_died=[0.3, 0.4, 0.2, 0.5, 0.9],
            share_expected_high=[0.2, 0.3, 0.2, 0.2, 0.2],
        )
    )
    found = pictured.losses_against_dose(rows)
    assert found == dict(hit=2, above=2, worst="b", worst_share=0.4, worst_high=0.3, free=2, free_above=1)
    calm = pictured.losses_against_dose(rows[2:3])
    assert calm == dict(hit=0, above=0, worst="", worst_share=0.0, worst_high=0.0, free=1, free_above=0)
