"""Facts of pictures from small tables, and what to change: boundaries on both sides."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit.advice import pictured, what_to_change

NAN = math.nan
DAY = pd.Timestamp("2025-03-01 23:30", tz="UTC")


def test_the_first_two_causes_and_how_many_tie():
    table = pd.DataFrame(dict(cause=["A", "B", "C"], share=[0.4, 0.3, 0.2], tied=[True, True, False]))
    found = pictured.ranked_causes(SimpleNamespace(table=table, batch="x"))
    assert found == dict(batch="x", first="A", share=0.4, ties=1, second="B", second_share=0.3)


def test_the_largest_stage_and_cause_of_a_season():
    rows = [
        ("stage", "late", "l", 9.4, 4.6),
        ("stage", "clear", "c", 7.0, NAN),
        ("stage", "unaccounted", "u", 30.0, NAN),
        ("cause", "turning", "t", 5.6, NAN),
        ("cause", "fumes", "f", 3.0, NAN),
        ("cause", "usual", "u", 20.0, NAN),
    ]
    table = pd.DataFrame(rows, columns=["block", "key", "name", "eggs", "usual"]).assign(low=NAN, high=NAN)
    found = pictured.what_if(SimpleNamespace(table=table))
    assert (found["stage"], found["eggs"], found["usual"], found["cause"], found["cause_eggs"]) == (
        "late",
        9,
        5,
        "turning",
        6,
    )
    assert (found["spells"], found["chicks"], found["low"], found["high"]) == (False, 0, 0, 0)
    extra = pd.DataFrame([dict(block="excursions", key="excursions", name="e", eggs=4.4, low=-0.6, high=9.6)])
    found = pictured.what_if(SimpleNamespace(table=pd.concat([table[1:], extra])))
    assert (found["spells"], found["chicks"], found["low"], found["high"]) == (True, 4, -1, 10)
    assert found["stage"] == "clear" and found["usual"] is None


def test_a_batchs_ages_beside_the_seasons():
    """Most between day 7 and 14: at most 0.5 by then, at least 0.1 before."""
    mine = pd.DataFrame(dict(day=[0.0, 7, 14, 21], at_least=[0.0, 0.1, 0.4, 0.5], at_most=[0.0, 0.2, 0.5, 0.55]))
    kin = pd.DataFrame(dict(at_least=[0.0, 0.3], band_low=[0.0, 0.2], band_high=[0.0, 0.5]))
    found = pictured.age_against_season("x", mine, kin)
    assert found == dict(
        batch="x",
        lost=0.5,
        kin=0.3,
        low=0.2,
        high=0.5,
        step=pytest.approx(0.4),
        beyond="within",
        day_from=7.0,
        day_to=14.0,
    )
    for low, high, beyond in ((0.2, 0.499, "above"), (0.501, 0.6, "below"), (0.5, 0.6, "within")):
        assert pictured.age_against_season("x", mine, kin.assign(band_low=low, band_high=high))["beyond"] == beyond
    alone = pictured.age_against_season("x", mine.iloc[:1], kin)
    assert (alone["step"], alone["day_from"], alone["day_to"]) == (0.0, 0.0, 0.0)


def test_a_season_at_a_glance():
    batches = pd.DataFrame(
        dict(
            batch=list("abc"),
            machine=["m", "m", "n"],
            share=[0.5, 0.9, NAN],
            set_at=DAY,
            end_at=[DAY + pd.Timedelta(days=d) for d in (21, 30, 25)],
        )
    )
    spells = pd.DataFrame(
        dict(kind=["warm", "cold"], machine=["m", "n"], hours=[3.0, 5.0], degree_hours=[4.0, -9.0], start=[DAY, DAY])
    )
    found = pictured.season_at_a_glance(SimpleNamespace(batches=batches, timezone="Europe/Berlin", spells=spells))
    assert [found[name] for name in ("batches", "machines", "ended", "best", "worst", "spells")] == [
        3,
        2,
        2,
        "b",
        "a",
        2,
    ]
    assert [found[name] for name in ("best_share", "worst_share", "kind", "machine", "hours")] == [
        0.9,
        0.5,
        "cold",
        "n",
        5,
    ]
    assert (found["first"], found["last"]) == (pd.Timestamp("2025-03-02").date(), pd.Timestamp("2025-04-01").date())
    none = SimpleNamespace(batches=batches.assign(share=NAN), timezone="UTC", spells=spells[:0])
    found = pictured.season_at_a_glance(none)
    assert [found[name] for name in ("ended", "best", "best_share", "worst_share", "kind", "hours")] == [
        0,
        "",
        0,
        0,
        "none",
        0,
    ]


def test_eggs_for_three_sureness_and_differences():
    plan = SimpleNamespace(
        eggs=pd.DataFrame(dict(sure=[0.5, 0.66667, 0.95], eggs=[20, 26, None])), basis=dict(sure=0.66667, chicks=12)
    )
    assert pictured.eggs_to_set(plan) == dict(chicks=12, sure=0.6667, half=20, eggs=26, most=None)
    rows = pd.DataFrame(dict(item=["n", "m"], value=[1.26, 9.0], usual=[0.5, 9.0], unit="d", digits=1))
    assert pictured.differences("x", rows) == dict(batch="x", count=2, name="n", value="1.3 d", usual="0.5 d")
    assert pictured.differences("x", rows[:0])["count"] == 0


def one(verdict="cannot tell", share=0.2):
    table = pd.DataFrame(dict(cause=["turning", "bad_luck", "fumes"], share=[share, 0.5, 0.19]))
    return SimpleNamespace(table=table, verdict=verdict, pairs=pd.DataFrame([dict(first="fumes", second="altitude")]))


def test_causes_worth_an_action():
    assert what_to_change._to_act(one()) == {"turning"} and what_to_change._to_act(one(share=0.199)) == set()
    assert what_to_change._to_act(one("two causes")) == {"turning", "fumes", "altitude"}
    assert what_to_change._where(dict(a=one(), b=one(share=0.3), c=one(share=0.1)), "turning") == ["b", "a"]


@pytest.mark.parametrize(
    ("start", "end", "day"),
    [(8.0, 9.0, 11.0), (7.0, 13.0, 15.0), (7.0, 13.1, None), (6.9, 9.0, None), (18.0, 18.1, None)],
)
def test_a_look_two_days_after_a_spell_and_three_before_the_next(start, end, day):
    looks = pd.DataFrame(dict(name=["candle1", "transfer", "hatch"], day_start=[0.0, 7, 18], day_end=[7.0, 18, 26]))
    assert what_to_change._look_between(looks, start, end) == day


def test_settings_that_are_off(monkeypatch):
    """0.3 degC off the wanted 37.5; humidity by 3 points, held between 20 and 85; storage beyond the best days."""
    means = pd.DataFrame(dict(incubator="m", mean_c=[37.8 + 1e-9, 37.79, 37.2 - 1e-9, 37.21]))
    monkeypatch.setattr("hatchkit.climate.probes.steadiness", lambda season: means)
    species = pd.DataFrame(dict(setter_c=[37.5], storage_best_days=7.0), index=["hen"])
    made = SimpleNamespace(
        readings=pd.DataFrame([1]),
        weights=pd.DataFrame([1]),
        species_table=species,
        settings={},
        with_batches=lambda mine: None,
    )
    found = [facts for _, facts in what_to_change._temperature(made, "hen", pd.DataFrame(dict(incubator=["m"])))]
    assert [(one["way"], round(one["off"], 6)) for one in found] == [("high", 0.3), ("low", 0.3)]
    for now, to, want in ((50, 53, 53), (50, 52.9, None), (50, 47, 47), (50, 5, 20), (50, 99, 85)):
        table = pd.DataFrame(
            dict(rh_pct=[now], rh_next_pct=[to], target_low=0.11, target_high=0.13, projected_share=0.15)
        )
        monkeypatch.setattr("hatchkit.climate.water_loss.batch_water_loss", lambda season, table=table: table)
        found = [facts for _, facts in what_to_change._humidity(made, "hen", None)]
        assert [one["to"] for one in found] == ([want] if want else [])
        assert all((one["now"], one["loss"], one["low"], one["high"]) == (now, 0.15, 0.11, 0.13) for one in found)
    days = pd.DataFrame(dict(stored_days=[7.0, 7.5, np.nan, 9.0]))
    assert list(what_to_change._storage(made, "hen", days)) == [("storage", dict(best=7, over=2, known=3, longest=9))]
    assert list(what_to_change._storage(made, "hen", days[:1])) == []
