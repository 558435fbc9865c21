"""How far a "no" reaches, what bounds a verdict, days of the breakout guide, whose batches a plan rests on; by hand."""

from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import plan, reasons, signs
from hatchkit.advice.breakout import breakout_guide
from hatchkit.problems import HatchkitError


@pytest.mark.parametrize(("text", "read"), [
    ("no long bad power cut", False), ("no very long bad power cut", True), ("no. power cut", True),
    ("power cut, no rain", True), ("no power cut, then a power cut", True),
])  # fmt: skip
def test_a_no_reaches_three_words_within_its_clause(text, read):
    assert ("power_cut" in signs.read(text)) == read


@pytest.mark.parametrize(("between", "there"), [(40, True), (41, False)])
def test_two_stems_belong_together_within_forty_letters(between, there):
    pattern = signs._pattern("chick+weak")
    text = "chick" + "x" * (between - 1) + " weak"
    assert (
        bool(pattern.search(text)) == there and bool(pattern.search("weak" + "x" * (between - 1) + " chick")) == there
    )
    assert not pattern.search("chick, weak")


def test_a_word_may_go_on_from_four_letters_on_and_the_last_one_always():
    assert signs._words(["cell", "air", "red"]) == [r"cell\w*", "air", "red"]
    assert signs._pattern("no power").search("no powers") is None and signs._pattern("no power").search("no power")
    assert signs._pattern("power cut").search("power was badly cuts")
    assert signs._pattern("power cut").search("power was so badly cut") is None


def test_signs_weigh_for_and_against_as_the_table_says(monkeypatch):
    table = dict(a={"for": "heat_spell:3 fumes:1.5", "against": "turning:0.5"}, b={"for": "fumes:2", "against": np.nan})
    monkeypatch.setattr(signs, "_table", lambda: table)
    assert signs.factors.__wrapped__() == dict(a=dict(heat_spell=3.0, fumes=1.5, turning=0.5), b=dict(fumes=2.0))


ITEMS = pd.DataFrame(dict(item=["log_level", "heat", "cold", "storage"], value=[np.nan, 0.1, np.nan, 3.0]))


@pytest.mark.parametrize(("row", "items", "settings", "batches", "told"), [
    (dict(broken_early=1), ITEMS, {"m": {"probe_offset_c": 0.0}}, 4, []),
    (dict(broken_late=0), ITEMS, {"m": {}}, 4, ["limit_probe"]),
    (dict(broken_mid=2), ITEMS, {"m": {"probe_offset_c": 0.0}}, 3, ["limit_few", "limit_not_opened"]),
    (dict(broken_late=0), ITEMS[3:], {}, 4, ["limit_no_log"]),
])  # fmt: skip
def test_what_bounds_every_verdict(row, items, settings, batches, told):
    items = pd.concat([items, ITEMS[~ITEMS["item"].isin(items["item"])].assign(value=np.nan)])
    made = SimpleNamespace(settings={"incubators": settings})
    found = reasons.limits(made, dict(incubator="m") | row, items, SimpleNamespace(batches=batches))
    assert [code for code, _ in found] == told
    assert dict(found).get("limit_few", dict(batches=3)) == dict(batches=3)


def guide_of(monkeypatch, *days):
    rows = pd.DataFrame(days, columns=["chicken_day_low", "chicken_day_high"]).assign(
        order=range(len(days)), part="age"
    )
    names = ("look", "see", "means", "write_down", "drawing", "source", "sure")
    table = rows.assign(**{name: None for name in names})
    monkeypatch.setattr("hatchkit.advice.breakout.reference.load", lambda name: table)


def test_days_of_the_guide_for_hens_and_for_longer_eggs(monkeypatch):
    """Hens: day d stands for d - 1/2 to d + 1/2. 28 days: from 2.5 to 4.5 x 4/3 are days 4 to 6; none beyond day 28."""
    guide_of(monkeypatch, (0, 0), (3, 4), (18, 30))
    hen = pd.Series(dict(incubation_days=21.0, embryo_care_day=18.0))
    duck = pd.Series(dict(incubation_days=28.0, embryo_care_day=6.0))
    monkeypatch.setattr("hatchkit.advice.breakout.reference.species", lambda name: hen)
    for bird, days, care in ((None, [[0, 0], [3, 4], [18, 21]], [False, False, True]),
                             (duck, [[0, 0], [4, 6], [24, 28]], [False, True, True])):  # fmt: skip
        found = breakout_guide(bird)
        assert found[["day_low", "day_high"]].to_numpy().tolist() == days and found["care"].tolist() == care
        assert list(found.index) == [0, 1, 2]
    quail = pd.Series(dict(incubation_days=10.5, embryo_care_day=9.0))
    assert breakout_guide(quail)[["day_low", "day_high"]].to_numpy().tolist() == [[0, 0], [2, 2], [9, 10]]
    assert len(breakout_guide(part="age")) == 3 and len(breakout_guide(part=["sign", "position"])) == 0


def season(**more):
    counts = dict(hatched=[30, 41, 0, None, 9], culled=[2, None, 1, 1, 0], eggs_set=[40, 40, 40, 40, 0])
    rows = pd.DataFrame({name: pd.array(values, "Int64") for name, values in counts.items()})
    rows = rows.assign(batch=list("abcde"), species=["hen"] * 4 + ["duck"])
    return SimpleNamespace(batches=rows.assign(**more), once=lambda key, make: {"c"})


def test_the_batches_a_plan_rests_on():
    """Culled chicks are not good ones; one more chick than eggs is a slip; none below nought, none without eggs."""
    found = plan.own_hatch(season(), "hen")
    assert found.to_numpy().tolist() == [["a", 40, 28], ["b", 40, 40]] and plan.own_hatch(season(), "duck").empty
    assert plan.own_hatch(season(culled=pd.array([30, 0, 0, 0, 0], "Int64")), "hen")["hatched"].tolist() == [0, 40]
    assert plan.own_hatch(season(culled=pd.array([31, 0, 0, 0, 0], "Int64")), "hen")["hatched"].tolist() == [40]
    assert plan.unusable(season(), "hen") == ["c"] and plan.unusable(season(), "duck") == []


def test_a_plan_is_for_the_bird_with_most_batches_or_one_that_is_known():
    made = season(species_table=None)
    made.species_table = reference.species_table()
    assert plan._species(made, None) == "hen" and plan._species(made, "chicken") == "chicken"
    with pytest.raises(HatchkitError) as told:
        plan._species(made, "dodo")
    assert told.value.code == "not_one_of"
    made.batches = made.batches.iloc[:0]
    with pytest.raises(HatchkitError) as told:
        plan._species(made, None)
    assert told.value.code == "plan_no_species"


def test_the_published_range_is_read_as_the_middle_four_fifths(monkeypatch):
    table = pd.DataFrame(dict(species=["any", "hen"], share_of_set=[0.6, 0.7], low=[0.4, 0.5], high=[0.8, 0.756],
                              source="s"))  # fmt: skip
    monkeypatch.setattr(plan.reference, "load", lambda name: table)
    assert plan.published_level("hen") == dict(share_of_set=0.7, sd=pytest.approx(0.1), source="s")
    assert plan.published_level("dodo")["share_of_set"] == 0.6
