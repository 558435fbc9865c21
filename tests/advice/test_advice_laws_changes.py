"""What is told to be changed, finder by finder, on both sides of each limit; worked by hand on small tables."""

from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import what_to_change as change

MINE = pd.DataFrame(dict(batch=["a", "b"], species="chicken", incubator=["m", "n"]))
SPECIES = reference.species_table()


def season(**more):
    told = dict(readings=pd.DataFrame([1]), settings={}, species_table=SPECIES, with_batches=lambda mine: None)
    return SimpleNamespace(**(told | more))


def probes(*rows):
    names = ["incubator", "verdict", "checked", "clock_bias_c", "clock_batches"]
    return lambda season: pd.DataFrame(rows, columns=names)


def test_a_probe_that_the_hatching_hours_contradict_is_told_with_its_correction(monkeypatch):
    rows = [
        ("m", "reads high", False, 0.46, 5),
        ("m", "reads high", False, 0.9, 9),  # a machine is told once
        ("n", "reads low", True, -0.34, 3),
        ("o", "reads low", True, -0.34, 3),  # no batch of this kind lay in it
    ]
    monkeypatch.setattr("hatchkit.climate.probes.probe_truth", probes(*rows))
    assert list(change._probe(season(), "chicken", MINE)) == [
        ("probe_off", dict(machine="m", batches=5, way="high", off=0.5, write="-0.5", right=37.5)),
        ("probe_off", dict(machine="n", batches=3, way="low", off=0.3, write="+0.3", right=37.5)),
    ]
    assert list(change._probe(season(readings=pd.DataFrame()), "chicken", MINE)) == []


def test_a_probe_that_nobody_checked(monkeypatch):
    rows = [("m", "reads high", False, 0.5, 5), ("n", "no sign", False, 0.1, 5), ("n", "no sign", False, 0.1, 5),
            ("o", "no sign", False, 0.1, 5)]  # fmt: skip
    monkeypatch.setattr("hatchkit.climate.probes.probe_truth", probes(*rows))
    assert list(change._unchecked(season(), "chicken", MINE)) == [("probe_unchecked", dict(machine="n", right=37.5))]
    monkeypatch.setattr("hatchkit.climate.probes.probe_truth", probes(("n", "no sign", True, 0.1, 5)))
    assert list(change._unchecked(season(), "chicken", MINE)) == []
    assert list(change._unchecked(season(readings=pd.DataFrame()), "chicken", MINE)) == [("no_log", {})]


def test_a_look_that_would_have_parted_deaths_counts_each_event_once(monkeypatch):
    """Looks on days 7 and 18: spells ending on days 9 and 11 want one on days 11 and 13, 12 in the middle."""
    spells = pd.DataFrame(
        [("e1", "a", 8.0, 9.0, True, "alarm"), ("e1", "b", 9.0, 13.0, True, "alarm"), ("e2", "a", 10.0, 11.0, True,
         "serious"), ("e3", "a", 12.0, 12.5, True, "watch"), ("e4", "a", 12.0, 12.5, False, "alarm")],
        columns=["event", "batch", "day_start", "day_end", "notable", "level"],
    )  # fmt: skip
    looks = pd.DataFrame(dict(batch=["a", "a", "b", "b"], name=["candle1", "transfer"] * 2, day_start=[0.0, 7] * 2,
                              day_end=[7.0, 18] * 2))  # fmt: skip
    monkeypatch.setattr("hatchkit.climate.excursions.find_excursions", lambda season: spells)
    monkeypatch.setattr("hatchkit.losses.windows.candling_windows", lambda season: looks)
    assert list(change._candling(season(), "chicken", MINE)) == [("candling", dict(day=12.0, times=2))]
    assert list(change._candling(season(readings=pd.DataFrame()), "chicken", MINE)) == []
    monkeypatch.setattr("hatchkit.climate.excursions.find_excursions", lambda season: spells[3:])
    assert list(change._candling(season(), "chicken", MINE)) == []


def test_records_are_asked_for_by_what_they_would_have_told(monkeypatch):
    """Lacking in the last four of six batches: heat in one (worth 0.25 x 8), turns in all (1 x 3), water in none."""
    items = pd.DataFrame(dict(item=["heat", "chill", "turns", "water", "spread"],
                              write_down=["temperature", "temperature", "turning", "weights", None]))  # fmt: skip
    values = pd.DataFrame(
        dict(heat=[np.nan, np.nan, np.nan, 1.0, 1, 1], chill=[np.nan, np.nan, np.nan, np.nan, 1, 1], turns=np.nan,
             water=1.0, spread=np.nan), index=list("fedcba"),
    )  # fmt: skip
    mine = pd.DataFrame(dict(batch=list("abcdefz"), set_at=[6, 5, 4, 3, 2, 1, 7]))
    monkeypatch.setattr("hatchkit.advice.evidence.gather", lambda season: SimpleNamespace(values=values))
    monkeypatch.setattr(change.reference, "load", lambda name: items)
    worth = pd.Series(dict(heat=8.0, chill=1.0, turns=3.0, water=9.0, spread=50.0))
    monkeypatch.setattr(change, "_most_told", lambda: worth)
    turning = ("record", dict(need="turning", lacking=4, asked=4))
    warmth = ("record", dict(need="temperature", lacking=2, asked=4))
    assert list(change._records(season(), "chicken", mine)) == [turning, warmth]
    assert list(change._records(season(readings=pd.DataFrame()), "chicken", mine)) == [turning]


def test_what_an_item_can_tell_is_its_largest_factor_summed_over_causes(monkeypatch):
    rows = {"x": [("heat", "f", None, np.log([0.5, 4.0]), ""), ("turns", "g", None, np.log([2.0, 1.0]), "")],
            "y": [("heat", "f", None, np.log([3.0, 1.0]), "")]}  # fmt: skip
    monkeypatch.setattr("hatchkit.advice.evidence.links", lambda: rows)
    assert change._most_told().to_dict() == pytest.approx(dict(heat=np.log(12), turns=np.log(2)))


@pytest.mark.parametrize(("cause", "target"), [
    ("heat_spell", ("temperature", dict(wanted=37.5, machine="m"))),
    ("dry_hatch", ("humidity_range", dict(low=SPECIES.at["chicken", "hatcher_rh_low_pct"],
                                          high=SPECIES.at["chicken", "hatcher_rh_high_pct"], where="hatcher"))),
    ("too_dry", ("humidity_range", dict(low=SPECIES.at["chicken", "setter_rh_low_pct"],
                                        high=SPECIES.at["chicken", "setter_rh_high_pct"], where="setter"))),
    ("long_storage", ("storage", dict(best=SPECIES.at["chicken", "storage_best_days"]))), ("turning", None),
])  # fmt: skip
def test_the_figure_to_go_to(cause, target):
    assert change._target(season(weights=pd.DataFrame()), cause, MINE, "m") == target


def test_humidity_to_go_to_is_the_eggs_own_where_they_were_weighed(monkeypatch):
    monkeypatch.setattr(change, "_humidity", lambda *asked: iter([("humidity", dict(to=52.0, now=45.0))]))
    assert change._target(season(), "too_dry", MINE, "m") == ("humidity", dict(to=52.0))


def causes_of(share, eggs):
    table = pd.DataFrame(dict(cause=["turning", "fumes"], share=[share, 0.1], eggs_lost=[eggs, 9.0], fits=[["s"], []]))
    sums = pd.DataFrame(columns=["cause", "part", "found", "factor"])
    return SimpleNamespace(table=table, sums=sums, verdict="probable", pairs=pd.DataFrame(), evidence=None)


@pytest.mark.parametrize(("share", "sure"), [
    (0.8, "very"), (0.799, "probable"), (0.5, "probable"), (0.499, "several"), (0.2, "several"), (0.199, None),
])  # fmt: skip
def test_how_sure_a_cause_is_that_is_acted_against(monkeypatch, share, sure):
    monkeypatch.setattr("hatchkit.advice.causes.likely_causes", lambda season, batch: causes_of(share, 4.0))
    made = season(batch=lambda name: dict(incubator="m"))
    found = change._against(made, MINE, "a")
    assert [(cause, facts["sure"], facts["machine"], facts["shown"]) for cause, (_, facts) in found] == (
        [("turning", sure, "m", "s")] if sure else []
    )


@pytest.mark.parametrize(("eggs", "firmest", "told"), [(1.0, 0.2, True), (0.99, 0.9, False), (9.0, 0.199, False)])
def test_a_season_acts_against_a_cause_from_one_egg_on(monkeypatch, eggs, firmest, told):
    table = pd.DataFrame(dict(key=["turning"], kind="cause", eggs=[eggs], firmest=[firmest], batches=[[]]))
    monkeypatch.setattr("hatchkit.advice.account.account", lambda causes: table)
    monkeypatch.setattr(
        "hatchkit.advice.causes.season_causes", lambda season: dict(b=causes_of(0.3, 1), z=causes_of(0.9, 1))
    )
    found = change._against(season(batch=lambda name: dict(incubator=None)), MINE, None)
    assert [(facts["where"], facts["machine"], facts["eggs"]) for _, (_, facts) in found] == (
        [(["b"], None, eggs)] if told else []
    )


@pytest.mark.parametrize(("factor", "found", "item"), [(1.5, "known", True), (1.49, "known", False), (9, "no", False)])
def test_what_shows_a_cause_is_the_item_that_speaks_for_it_most(monkeypatch, factor, found, item):
    one = causes_of(0.5, 3.0)
    one.sums = pd.DataFrame(dict(cause=["turning", "turning", "fumes"], part=["habit", "turns", "air"],
                                 found=["known", found, "known"], factor=[1.0, factor, 50.0]))  # fmt: skip
    one.evidence = pd.DataFrame(dict(item=["habit", "turns", "air"]))
    monkeypatch.setattr(change, "item_facts", lambda row: row["item"])
    assert change._shown(one, "turning") == (("item", "turns") if item else "s")


def test_causes_come_first_settings_that_they_do_not_tell_next_and_two_lines_of_records(monkeypatch):
    made = season(batches=MINE.assign(set_at=[1, 2]))
    monkeypatch.setattr(change, "_against", lambda season, mine, batch: [("too_dry", ("cause", {}))])
    settings = [(set(), "probe"), ({"too_dry", "too_humid"}, "humidity"), ({"long_storage"}, "storage")]
    monkeypatch.setattr(
        change, "_SETTINGS", [(causes, lambda *asked, code=code: [(code, {})]) for causes, code in settings]
    )
    records = [lambda *asked, code=code: [(code, {}), (code, {})] for code in ("no_log", "record")]
    monkeypatch.setattr(change, "_RECORDS", records)
    assert change.changes(made, "chicken")["change"].tolist() == ["cause", "probe", "storage", "no_log", "no_log"]
    assert change.changes(made, "duck").empty


def test_three_causes_at_most_are_acted_against(monkeypatch):
    names = ["turning", "fumes", "heat_spell", "cold_spell"]
    table = pd.DataFrame(dict(cause=names, share=0.25, eggs_lost=2.0, fits=[[]] * 4))
    one = causes_of(0.3, 1.0)
    one.table = table
    monkeypatch.setattr("hatchkit.advice.causes.likely_causes", lambda season, batch: one)
    found = change._against(season(batch=lambda name: dict(incubator="m")), MINE, "a")
    assert [cause for cause, _ in found] == names[:3]
    account = pd.DataFrame(dict(key=names, kind="cause", eggs=3.0, firmest=0.5, batches=[[]] * 4))
    monkeypatch.setattr("hatchkit.advice.account.account", lambda causes: account)
    monkeypatch.setattr("hatchkit.advice.causes.season_causes", lambda season: dict(a=one))
    found = change._against(season(batch=lambda name: dict(incubator="m")), MINE, None)
    assert [cause for cause, _ in found] == names[:3]
