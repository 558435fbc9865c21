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
