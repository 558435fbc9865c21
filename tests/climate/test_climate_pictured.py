"""Facts of this room's pictures from small tables."""

import math
from types import SimpleNamespace

import pandas as pd
import pytest

from hatchkit.climate import pictured

NAN = math.nan
DAY = pd.Timestamp("2025-03-01 23:30", tz="UTC")


def test_climate_in_pictures():
    events = pd.DataFrame(
        dict(
            event=[1, 1, 2, 3],
            notable=[True, True, True, False],
            degree_hours=[3.0, 3.0, -8.0, 50.0],
            kind=["warm", "warm", "cold", "warm"],
            extreme_c=[40.0, 40, 20, 50],
            hours=[1.0, 1, 6, 9],
            start=DAY,
        )
    )
    made = SimpleNamespace(
        excursions=events,
        timezone="Europe/Berlin",
        air=pd.DataFrame(dict(middle_c=[37.0, NAN, 39.0])),
        incubator="m",
        batches=[1, 2],
        gaps=[1],
    )
    found = pictured.incubator_timeline(made, unit="F")
    assert (found["spells"], found["everyday"], found["kind"], found["hours"]) == (2, 1, "cold", 6)
    assert (found["degrees"], found["middle"]) == pytest.approx((68.0, 100.4))
    assert found["when"] == pd.Timestamp("2025-03-02").date()
    clock = pd.DataFrame(
        dict(batch=list("abcd"), verdict=["late", "early", "on time", "not seen"], difference_h=[12.0, -15.0, 2.0, NAN])
    )
    found = pictured.hatch_clock(clock)
    assert (found["seen"], found["late"], found["early"], found["furthest"], found["hours"], found["side"]) == (
        3,
        1,
        1,
        "b",
        15,
        "earlier",
    )
    assert pictured.hatch_clock(clock[:1])["side"] == "later"
    water = pd.DataFrame(
        dict(
            batch=list("abcd"),
            weighed=["eggs", "tray", "no", "eggs"],
            projected_share=[0.1, 0.2, 0.1, NAN],
            verdict=["on target", "too much", "no weighings", "cannot tell"],
        )
    )
    found = pictured.water_against_target(water)
    assert [found[name] for name in ("batches", "weighed", "right", "little", "much")] == [4, 2, 1, 0, 1]
    truth = pd.DataFrame(
        dict(
            incubator=["m", "m", "n", "o"],
            probe="1",
            checked=[True, True, False, False],
            verdict=["probes disagree", "probes disagree", "reads low", "reads high"],
            clock_bias_c=[NAN, NAN, -0.6, 0.3],
        )
    )
    found = pictured.probe_truth(truth, unit="F")
    assert [found[name] for name in ("probes", "checked", "told", "disagree")] == [3, 1, 2, 2]
    assert (found["machine"], found["side"], found["error"]) == ("n", "low", pytest.approx(1.08, abs=0.05))


def test_a_picture_without_events_verdicts_or_probes():
    events = pd.DataFrame(dict(event=[1], notable=False, degree_hours=3.0, kind="warm"))
    made = SimpleNamespace(excursions=events, timezone=None, air=pd.DataFrame(dict(middle_c=[NAN])), incubator="m",
                           batches=[1], gaps=[])  # fmt: skip
    assert pictured.incubator_timeline(made) == dict(
        machine="m", batches=1, spells=0, kind="none", when=None, unit="C", degrees=0.0, hours=0.0, everyday=1, gaps=0,
        middle=None,
    )  # fmt: skip
    clock = pd.DataFrame(dict(batch=["a"], verdict=["not seen"], difference_h=[40.0]))
    assert pictured.hatch_clock(clock) == dict(
        batches=1, seen=0, early=0, late=0, early_names=[], late_names=[], furthest="", hours=0.0, side="none"
    )
    truth = pd.DataFrame(dict(incubator=["m"], probe="1", checked=[False], verdict="not checked", clock_bias_c=[0.9]))
    found = pictured.probe_truth(truth)
    assert math.isnan(found.pop("error")) and found == dict(
        probes=1, checked=0, told=0, unit="C", machine="", side="none", disagree=0, disagree_names=[]
    )


def test_one_spell_and_one_batch_by_the_scale():
    row = dict(batch=7, kind="warm", day_start=9.5, start=DAY, hours=3.0, extreme_c=40.0, egg_extreme_c=39.0,
               egg_extreme_low_c=38.5, egg_extreme_high_c=39.5)  # fmt: skip
    found = pictured.excursion_close_up(row, timezone="Europe/Berlin", unit="F")
    assert [found[name] for name in ("air", "egg", "egg_low", "egg_high")] == pytest.approx([104, 102.2, 101.3, 103.1])
    assert (found["batch"], found["kind"], found["day"], found["hours"], found["unit"]) == ("7", "warm", 9.5, 3, "F")
    assert (found["when"], str(found["when"].tz)) == (DAY, "Europe/Berlin")
    water = dict(batch=7, verdict="too much", weighed="no", projected_share=0.15, projected_low=0.14,
                 projected_high=0.16, target_low=0.11, target_high=0.13)  # fmt: skip
    assert pictured.weight_loss_track(water) == water | dict(batch="7", verdict="too_much", weighed=False)
    assert pictured.weight_loss_track(water | dict(weighed="tray"))["weighed"]
