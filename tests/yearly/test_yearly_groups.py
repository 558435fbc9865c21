"""Groups compared: hens, pens, machines; drawn towards all, and honest about what cannot be told."""

from dataclasses import replace

import numpy as np
import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.yearly.groups import eggs_to_tell, of_marked_eggs


@pytest.fixture(scope="module")
def demo(demo_years):
    return demo_years


def test_the_hen_with_clear_eggs_is_found(demo):
    found = hk.groups(demo, "hen", outcome="fertility")
    assert found.table["group"].iloc[-1] == "4" and found.comparisons == 15
    clear = found.pairs[found.pairs["verdict"] == "clear"]
    assert set(clear["worse"]) == {"4"} and len(clear) >= 2
    row = found.table.iloc[-1]
    assert row["share"] < row["pooled"] < found.table["pooled"].iloc[0]


def test_eggs_of_a_hen_are_those_of_the_sheet(demo):
    eggs = of_marked_eggs(demo, "hen")
    counted = demo.eggs[demo.eggs["hen"] == "4"]
    own = eggs[eggs["group"] == "4"]
    assert own["set"].sum() <= len(counted) and own["set"].sum() >= len(counted) - 3
    assert (own["fertile"] <= own["set"]).all() and (own["hatched"] <= own["fertile"]).all()


def test_machines_clearly_differ_and_pens_may(demo):
    machines = hk.groups(demo, "incubator", outcome="hatch_of_fertile")
    assert machines.pairs["verdict"].tolist() == ["clear"] and machines.pairs["better"].tolist() == ["A"]
    pens = hk.groups(demo, "pen", outcome="fertility").pairs.iloc[0]
    assert pens["verdict"] in ("may", "no") and pens["eggs_more"] > 100


def test_hens_with_a_cock_each_cannot_be_told_from_him(demo):
    cocks = demo.eggs["hen"].map({hen: f"cock of {hen}" for hen in "123456"})
    tied = replace(demo, eggs=demo.eggs.assign(cock=cocks))
    found = hk.groups(tied, "hen", outcome="fertility")
    assert found.confounded["with"].tolist() == ["cock"] and len(found.confounded["groups"].iloc[0]) == 6
    assert hk.groups(demo, "hen", outcome="fertility").confounded.empty


def test_one_group_and_no_marks_are_no_error(demo):
    assert hk.groups(demo, "cock", outcome="fertility").comparisons == 0
    bare = replace(demo, eggs=demo.eggs.assign(hen=None))
    assert hk.groups(bare, "hen", outcome="fertility").table.empty
    with pytest.raises(hk.HatchkitError, match="no column 'moon'"):
        hk.groups(demo, "moon")
    with pytest.raises(hk.HatchkitError, match="outcome 'weight' is not known"):
        hk.groups(demo, "pen", outcome="weight")


def test_pens_of_two_keepers_are_two_pens(demo):
    keeper = np.where(demo.batches["incubator"] == "A", "Anna", "Ben")
    club = replace(demo, batches=demo.batches.assign(keeper=pd.Series(keeper, dtype="str")))
    table = hk.groups(club, "pen", outcome="fertility").table
    assert set(table["group"]) == {"Lane, Anna", "Lane, Ben", "Orchard, Anna", "Orchard, Ben"}


def test_eggs_that_would_tell_grow_with_the_square_of_the_difference():
    large, small = (eggs_to_tell([0.8, 0.8 - d], 0.0, 30, d) for d in (0.2, 0.1))
    assert small / large == pytest.approx(4, rel=0.2) and np.isnan(eggs_to_tell([0.8, 0.79], 0.0, 30, 0.01))
    # 2 (2.326 + 0.842)^2 x 0.7 x 0.3 / 0.2^2 = 105.4
    assert eggs_to_tell([0.8, 0.6], 0.0, 30, 0.2) == 106
