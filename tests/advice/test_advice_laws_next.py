"""The evening that nobody named, years that can be, and what a season lost to what; worked by hand."""

from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import set_time, what_if
from hatchkit.advice.published import STAGES
from hatchkit.problems import HatchkitError
from hatchkit.relate.verdict import CLEAR, SOME

NOW = "2026-11-26 09:00"


def season(*batches, **more):
    rows = pd.DataFrame(batches, columns=["batch", "species", "set_at", "taken_off_at"], dtype=object)
    for name in ("set_at", "taken_off_at"):
        rows[name] = pd.to_datetime(rows[name], utc=True)
    table = reference.species_table()
    return SimpleNamespace(batches=rows, species_table=table, timezone="UTC", settings={}, **more)


@pytest.mark.parametrize(("days", "evening"), [(None, "2026-12-03"), (6.0, "2026-12-02"), (6.1, "2026-12-03")])
def test_collecting_takes_whole_days_seven_where_the_bird_is_not_known(days, evening):
    bird = None if days is None else pd.Series(dict(storage_best_days=days))
    when, why = set_time.set_time_noted(season(), species=bird, today=NOW)
    assert (f"{when:%Y-%m-%d %H}", why) == (f"{evening} 18", [("collect", dict(days=7 if days is None else 6))])


@pytest.mark.parametrize(("set_at", "off", "evening", "why"), [
    # A bird without figures is out a day after setting, the machine free the day after that.
    ("2026-12-10 20:00", None, "2026-12-12", "free"), ("2026-12-01", None, "2026-12-03", "collect"),
    ("2026-12-02", None, "2026-12-04", "free"),
    ("2026-12-01", "2026-12-02 23:00", "2026-12-03", "collect"), ("2026-12-01", "2026-12-03", "2026-12-04", "free"),
])  # fmt: skip
def test_the_machine_is_free_the_day_after_the_last_batch(set_at, off, evening, why):
    found, told = set_time.set_time_noted(season(("a", "dodo", set_at, off)), today=NOW)
    assert (f"{found:%Y-%m-%d}", told[0][0]) == (evening, why)


@pytest.mark.parametrize(("when", "can_be"), [
    ("1989-12-31 23:00", False), ("1990-01-01", True), ("2100-12-31", True), ("2101-01-01", False),
])  # fmt: skip
def test_years_that_can_be(when, can_be):
    if can_be:
        assert set_time.set_time_noted(season(), pd.Timestamp(when), today=NOW)[0] == pd.Timestamp(when, tz="UTC")
    else:
        with pytest.raises(HatchkitError) as told:
            set_time.set_time_noted(season(), pd.Timestamp(when), today=NOW)
        assert told.value.code == "set_time_none"


def test_only_an_hour_before_now_is_past():
    now, before = (set_time.set_time_noted(season(), pd.Timestamp(when), today=NOW)[1]
                   for when in (NOW, "2026-11-26 08:59"))  # fmt: skip
    assert (now, before) == ([], [("passed", {})])


def causes_of(stage_eggs, *, eggs_set=40.0, unaccounted=0.0, share=0.5):
    pattern = pd.DataFrame(dict(stage=STAGES, eggs=[stage_eggs.get(name, 0.0) for name in STAGES], usual=1.0,
                                assumed=[0.5 * (name == "late") for name in STAGES]))  # fmt: skip
    losses = pd.DataFrame(dict(cause=["heat_spell"], stage=["late"], eggs=[2.0]))
    table = pd.DataFrame(dict(cause=["heat_spell"], share=[share], firm=True))
    return SimpleNamespace(pattern=pattern, losses=losses, table=table, eggs_set=eggs_set, unaccounted=unaccounted)


def relation(verdict, *, excess=True):
    rows = [dict(batch="a", chicks_lost=9.0), dict(batch="all", chicks_lost=5.0, chicks_low=2.0, chicks_high=8.0)]
    return SimpleNamespace(excess=pd.DataFrame(rows if excess else []), verdict=verdict)


def told(verdict=CLEAR, excess=True, share=0.5):
    """Two batches of 40: 30 chicks each; 8 late, 1 without an end in one of them; a third batch is left out."""
    one = causes_of(dict(hatched=30, clear=2, late=8), share=share)
    two = causes_of(dict(hatched=30, clear=1, late=8), unaccounted=1.0, share=share)
    made = SimpleNamespace(batches=pd.DataFrame(dict(batch=["a", "b", "c", "d"], eggs_set=[40, 40, 12, np.nan])))
    return what_if.what_if(made, causes=dict(a=one, b=two), relation=relation(verdict, excess=excess))


def test_what_a_season_lost_to_what():
    """Per batch 2 eggs by heat; of the 6 + 2 and 6 + 1 left 1 each stage is usual: 2 + 2; not explained 6 + 5."""
    found = told()
    stages = found.table[found.table["block"] == "stage"].set_index("key")["eggs"]
    assert stages[stages > 0].to_dict() == dict(clear=3, late=16, unaccounted=1)
    assert found.table[found.table["block"] == "cause"].set_index("key")["eggs"].to_dict() == dict(
        heat_spell=4, usual=4, not_explained=11, unaccounted=1
    )
    facts = found.facts
    assert (facts["eggs_set"], facts["hatched"], facts["unaccounted"], facts["assumed"]) == (80, 60, 1, 1)
    assert (facts["left_out"], facts["left_out_eggs"], facts["probable"]) == (["c", "d"], 12, "heat_spell")
    assert told(share=0.499).facts["probable"] is None


def test_a_stage_without_an_unknown_end_has_no_row_for_it():
    rows = what_if._stages(dict(a=causes_of(dict(late=8))))
    assert [row["key"] for row in rows] == list(STAGES[1:])


@pytest.mark.parametrize(("verdict", "excess", "back"), [
    (CLEAR, True, 5), (SOME, True, 5), ("no sign", True, None), (CLEAR, False, None),
])  # fmt: skip
def test_chicks_back_are_told_where_there_is_some_sign(verdict, excess, back):
    found = told(verdict, excess)
    rows = found.table[found.table["block"] == "excursions"]
    assert found.facts["verdict"] == verdict
    if back is None:
        assert rows.empty and np.isnan([found.facts[f"chicks_{end}"] for end in ("back", "low", "high")]).all()
    else:
        assert rows[["eggs", "low", "high"]].values.tolist() == [[5, 2, 8]]
        assert [found.facts[f"chicks_{end}"] for end in ("back", "low", "high")] == [5, 2, 8]


def test_the_published_ledger_for_as_many_eggs():
    ledger = reference.load("ordinary_ledger").set_index("stage")["share_of_set"]
    causes = dict(a=causes_of({}), b=causes_of({}, eggs_set=60.0))
    assert what_if.published_eggs("late", causes) == pytest.approx(100 * ledger["late"] / ledger.sum())
    assert sum(what_if.published_eggs(stage, causes) for stage in ledger.index) == pytest.approx(100)
