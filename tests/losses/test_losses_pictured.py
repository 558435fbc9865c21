"""Facts of this room's pictures from small tables."""

import math
from types import SimpleNamespace

import pandas as pd
import pytest

from hatchkit.losses import pictured

NAN = math.nan


def test_losses_in_pictures():
    ledger = pd.DataFrame(dict(stage=["hatched", "clear", "late", "mid", "early"], eggs=[20.0, 4, 6, 0, 5], set=35))
    found = pictured.egg_ledger(ledger)
    assert found == dict(eggs_set=35, chicks=20, stage="late", eggs=6, second="early", second_eggs=5)
    assert pictured.egg_ledger(ledger[:2]) == dict(
        eggs_set=35, chicks=20, stage="clear", eggs=4, second=None, second_eggs=0
    )
    rows = [
        ("a", "hatched", 0.5),
        ("a", "late", 0.3),
        ("a", "mid", 0.1),
        ("b", "hatched", 0.7),
        ("b", "late", 0.2),
        ("c", "hatched", NAN),
    ]
    table = pd.DataFrame(rows, columns=["breed", "stage", "share_of_set"])
    found = pictured.losses_by_group(table.assign(eggs=10 * table["share_of_set"], set=10, excess=0))
    assert found == dict(count=2, best="b", best_share=0.7, worst="a", worst_share=0.5, stage="late", stage_share=0.3)
    curve = pd.DataFrame(
        dict(
            group="all",
            species="hen",
            day=[0.0, 7, 14, 21],
            at_least=[0.0, 0.1, 0.4, 0.5],
            at_most=[0.0, 0.2, 0.5, 0.55],
            band_low=0.3,
            band_high=0.6,
        )
    )
    fits = pd.DataFrame([dict(group="all", species="hen", eggs=40.0, deaths=20.0)])
    found = pictured.death_age(SimpleNamespace(fits=fits, curve=curve))
    assert (found["most_from"], found["most_to"], found["lost"]) == (7, 14, 0.5) and found[
        "most_share"
    ] == pytest.approx(0.4)


@pytest.mark.parametrize(("both", "smallest", "told"), [(0.05, 0.05, "yes"), (0.051, 0.05, "no"), (0.2, 0.051, "few")])
def test_whether_a_place_mattered(both, smallest, told):
    rows = [
        ("neighbours", 4.0, 2.0, 0.04, 0.001),
        ("edge", 0.5, 0.6, 0.3, 0.001),
        ("together", NAN, NAN, both, smallest),
    ]
    table = pd.DataFrame(rows, columns=["question", "seen", "expected", "chance", "smallest"])
    assert pictured._pattern(table) == dict(together=told, question="neighbours", seen=4.0, expected=2.0)
    assert pictured._pattern(table[:0])["together"] == "few"
    places = pd.DataFrame(
        dict(
            tray="1",
            row=[0, 0, 0, 1, 1, 1, 2, 2, 2],
            col=[0, 1, 2] * 3,
            fate="hatched",
            died=[True, False, True] + [False, True, False] + [False] * 3,
        )
    )
    found = pictured.tray_map("x", places, table)
    assert (found["eggs"], found["died"], found["edge"], found["hatched"]) == (9, 3, 2, 9)


def test_a_picture_of_nothing_has_noughts():
    assert pictured._pattern(pd.DataFrame()) == dict(together="few", question="neighbours", seen=0.0, expected=0.0)
    groups = pd.DataFrame(dict(breed=["a"], stage="hatched", share_of_set=[NAN]))
    assert pictured.losses_by_group(groups) == dict(
        count=0, best="", best_share=0.0, worst="", worst_share=0.0, stage="hatched", stage_share=0.0
    )
    assert pictured.tray_season(pd.DataFrame(dict(batches=[], at_risk=[], died=[])), pd.DataFrame()) == dict(
        batches=0, eggs=0, died=0, together="few", question="neighbours", seen=0.0, expected=0.0
    )


def test_a_season_chart_and_the_trays_of_all_batches():
    table = pd.DataFrame(dict(batch=[1, 2, 3], outside=[False, True, False], centre=[0.2, 0.3, 0.3]))
    table.attrs["stage"] = "late"
    assert pictured.season_chart(table) == dict(batches=3, outside=1, names=["2"], mean=0.2, stage="late")
    places = pd.DataFrame(dict(batches=[2, 5, 3], at_risk=[20, 50, 30], died=[1, 2, 4]))
    found = pictured.tray_season(places, pd.DataFrame())
    assert (found["batches"], found["eggs"], found["died"]) == (5, 100, 7)
