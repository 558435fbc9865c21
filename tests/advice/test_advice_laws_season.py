"""Looks that are nobody's, the season's calendar and the hours of a plan, on both sides of each limit; by hand."""

from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import account, course, dates, glance, habits, seen
from hatchkit.advice.published import STAGES

SET_AT = pd.Timestamp("2025-03-01 18:00", tz="UTC")


def fates(*rows):
    return pd.DataFrame(rows, columns=["batch", "eggs", "fate", "found_at", "after_day"])


def idle(rows, **opened):
    batches = pd.DataFrame(dict(batch=["a", "b", "c"], species=["hen", "hen", "duck"]))
    return habits._idle(SimpleNamespace(fates=fates(*rows), batches=batches.assign(**opened)))


def chicks(batch, eggs):
    return (batch, eggs, "hatched", "hatch", 21.0)


@pytest.mark.parametrize(("eggs", "nobodys"), [(25.0, True), (24.9, False)])
def test_noughts_are_not_believed_where_five_were_due(monkeypatch, eggs, nobodys):
    """A fifth of the eggs clear or early dead: of 25 five are due."""
    shares = {"hatched": 0.6, "clear": 0.12, "early": 0.08, "late": 0.2}
    monkeypatch.setattr(habits, "published_shares", lambda: np.array([shares.get(stage, 0.0) for stage in STAGES]))
    rows = [chicks("a", eggs - 10), ("a", 5.0, "dead", "hatch", 7.0), chicks("b", 5.0), chicks("c", 500.0)]
    assert idle(rows) == ({"a", "b", "c"} if nobodys else {"c"})
    assert idle([*rows, ("c", 1.0, "clear", "candle1", 0.0)]) == ({"a", "b"} if nobodys else set())


@pytest.mark.parametrize(("fate", "found_at", "look"), [
    ("clear", "candle1", True), ("infertile", "candle1", True), ("dead", "transfer", True),
    ("removed", "candle2", True), ("removed", "", False), ("dead", "hatch", False), ("unaccounted", "candle1", False),
])  # fmt: skip
def test_what_shows_that_there_was_a_look(fate, found_at, look):
    rows = [chicks("a", 400.0), chicks("b", 400.0), ("b", 1.0, fate, found_at, 3.0)]
    assert idle(rows) == (set() if look else {"a", "b"})


def test_a_batch_whose_eggs_were_opened_knows_their_ages():
    rows = [chicks("a", 400.0), chicks("b", 400.0)]
    assert idle(rows, broken_mid=[2.0, np.nan, np.nan]) == {"b"} and idle([]) == frozenset()


def test_only_unopened_dead_of_the_take_off_may_be_of_any_day():
    rows = fates(
        ("a", 4.0, "dead", "hatch", 9.0), ("a", 3.0, "dead", "candle2", 8.0),
        ("a", 2.0, "pipped_dead", "hatch", 20.0), ("b", 4.0, "dead", "hatch", 9.0),
    )  # fmt: skip
    made = SimpleNamespace(fates=rows, once=lambda key, make: frozenset("a"))
    assert habits._believed(made)["after_day"].tolist() == [0, 8, 20, 9]
    none = SimpleNamespace(fates=rows, once=lambda key, make: frozenset())
    assert habits._believed(none) is rows
    other = SimpleNamespace(fates=rows[1:3], once=lambda key, make: frozenset("a"))
    assert habits._believed(other)["after_day"].tolist() == [8, 20]


def test_a_calendar_of_machines_with_shares_of_the_eggs_set_or_of_all_told_of(monkeypatch):
    """Batch x: 18 chicks of 20 set, where 24 are told of: 3/4 of these; y: 9 of 12; z is not over."""
    table = pd.DataFrame(dict(batch=["x", "x", "y"], stage=["hatched", "late", "hatched"], eggs=[18.0, 6, 9],
                              share_of_set=[0.9, 0.3, 0.75], set=[20, 20, 12], excess=[4, 4, 0]))  # fmt: skip
    monkeypatch.setattr(glance, "breakdown", lambda season, by: table)
    rows = dict(batch=list("zyxnm"), species=["chicken"] * 4 + ["dodo"], incubator=["B", "A", "A", "A", "A"],
                set_at=[SET_AT, SET_AT + pd.Timedelta(days=2), SET_AT, pd.NaT, SET_AT], eggs_set=[30, 12, 20, 9, 9],
                transfer_at=pd.NaT, taken_off_at=pd.NaT)  # fmt: skip
    made = SimpleNamespace(batches=pd.DataFrame(rows), species_table=reference.species_table())
    found = glance._batches(made)
    assert found[["machine", "batch", "lane"]].to_numpy().tolist() == [["A", "x", 0], ["A", "y", 1], ["B", "z", 0]]
    assert found["share"].tolist() == pytest.approx([0.9, 0.75, np.nan], nan_ok=True)
    assert found["least"].tolist() == pytest.approx([0.75, 0.75, np.nan], nan_ok=True)
    assert found["chicks"].tolist() == pytest.approx([18, 9, np.nan], nan_ok=True)
    assert found["eggs_set"].tolist() == [20, 12, 30]


def test_a_calendar_step_starts_on_the_hour_and_ends_its_hours_later():
    table = pd.DataFrame(dict(step=["b", "a"], day=[1.02, -0.5], facts=[{}, {}], hours=[2.0, 1.5], source="", sure=""))
    found = dates._table(table, SET_AT.tz_convert("Europe/Berlin"))
    assert found["step"].tolist() == ["a", "b"]
    assert found["starts"].tolist() == [SET_AT - pd.Timedelta(hours=12), SET_AT + pd.Timedelta(hours=24)]
    assert ((found["ends"] - found["starts"]) / pd.Timedelta(hours=1)).tolist() == [1.5, 2.0]
    assert str(found["starts"].dt.tz) == "Europe/Berlin"


def test_waterfowl_eggs_are_cooled_an_hour_at_a_time_and_others_not():
    table = reference.species_table()
    own = reference.load("handling").query("item == 'cooling'")
    for species in ("goose", "chicken"):
        found = dates._cooling(table.loc[species])
        days = own.loc[own["species"] == species, "day_from"].tolist()
        assert [day for part in found for day in part["day"]] == days
        assert all((part["hours"] == 1).all() and part["facts"].iloc[0]["water_c"] == 20 for part in found)
    assert dates._cooling(table.loc["chicken"]) == []


@pytest.mark.parametrize(("stored", "hours"), [(3.0, 4.0), (1.0, 4.0), (10.0, 4.0)])
def test_the_clock_puts_the_middle_four_hours_earlier(stored, hours):
    """Hens: the trade's 21 days less 4 h; the delay for storage is the same in both."""
    assert dates.clock_earlier_hours(reference.species("chicken"), stored) == pytest.approx(hours)


def one(share, eggs, *, firm=True, late=6.0, usual=2.0, gone=0.0):
    pattern = pd.DataFrame(dict(stage=STAGES, eggs=[late * (stage == "late") for stage in STAGES],
                                usual=[usual * (stage == "late") for stage in STAGES]))  # fmt: skip
    table = pd.DataFrame(dict(cause=["turning", "fumes"], share=[share, 0.05], firm=[firm, True]))
    losses = pd.DataFrame(dict(cause=["turning", "fumes"], stage="late", eggs=[eggs, 0.3]))
    return SimpleNamespace(pattern=pattern, table=table, losses=losses, unaccounted=gone)


@pytest.mark.parametrize(("share", "eggs", "put_down", "usual", "rest"), [
    (0.5, 3.0, 3.0, 2.0, 1.0), (0.5, 5.0, 5.0, 1.0, 0.0), (0.1, 3.0, 3.0, 2.0, 1.0), (0.09, 3.0, 0.0, 2.0, 4.0),
])  # fmt: skip
def test_every_lost_egg_is_put_down_once(share, eggs, put_down, usual, rest):
    """6 late dead: those of causes with a tenth of the weight, of the rest up to 2 the usual ones, then none's."""
    table = account.account(dict(a=one(share, eggs, gone=1.5))).set_index("key")["eggs"]
    assert table[table > 0].to_dict() == {
        name: number
        for name, number in dict(turning=put_down, usual=usual, not_explained=rest, unaccounted=1.5).items()
        if number
    }


def test_a_cause_is_as_firm_as_in_its_firmest_batch():
    """0.9 where the records allow a firm verdict; where they do not, at most 0.79."""
    for firm, share in ((True, 0.9), (False, 0.79)):
        table = account.account(dict(a=one(0.9, 1.0, firm=firm), b=one(0.3, 1.0))).set_index("key")
        assert table.at["turning", "firmest"] == pytest.approx(share)
        assert table.at["turning", "batches"] == ["a", "b"] and table.at["turning", "eggs"] == 2
        assert table.at["fumes", "firmest"] == 0.05 and table.at["fumes", "batches"] == []
    assert table.index[0] == "turning" and np.isnan(table.at["usual", "firmest"])
    assert account.of_causes(table.reset_index())["key"].iloc[-1] not in account.REST


def test_a_look_within_a_sixth_of_a_day_of_the_end_hides_no_death():
    """Up to 0.15 of a day before the hen's last one a look misses what died just before it; from there on all count."""
    end = course.DAYS - seen.NEAR
    assert (seen._inside(0.0, end) == 1.0).all() and (seen._inside(0.0, end + 0.1) == 1.0).all()
    before = seen._inside(0.0, end - 0.01)
    assert before[-1] < 0.9 and before[0] > 0.9
