"""Eggs too many, eggs with rows of their own, and the shares of a group of batches: small cases on both sides."""

import math

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.losses import breakdown, counted, counts, fates
from hatchkit.losses.proportions import dispersion, interval, widened
from hatchkit.losses.schedule import Look

NAN = math.nan
SPECIES = reference.species_table()


def batch(eggs_set, **row):
    record = dict(batch="a", species="chicken", set_at=pd.Timestamp("2025-03-01", tz="UTC"), eggs_set=eggs_set, **row)
    found, problems = fates.batch_fates(record, [], [], SPECIES)
    return {(one["fate"], one["found_at"]): one["eggs"] for one in found}, [one["code"] for one in problems]


@pytest.mark.parametrize(
    ("eggs_set", "hatched", "read"), [(20, 22, True), (20, 23, False), (60, 63, True), (60, 64, False), (59, 62, False)]
)
def test_two_eggs_or_a_twentieth_too_many_are_a_slip(eggs_set, hatched, read):
    found, codes = batch(eggs_set, hatched=hatched)
    assert sum(found.values()) == (hatched if read else eggs_set)
    assert ("too_many_eggs" in codes) == read and ("counts_beyond_set" in codes) != read
    assert (found.get(("hatched", "hatch"), 0) == hatched) == read


def test_eggs_that_nobody_can_explain():
    found, codes = batch(30, hatched=20, dead_in_shell=6)
    assert found["unaccounted", ""] == 4 and "eggs_unexplained" in codes
    found, codes = batch(30)
    assert found == {("unaccounted", ""): 30} and "hatch_not_counted" in codes
    assert batch(0, hatched=3) == ({}, ["eggs_set_missing"]) and batch(1, hatched=1)[0] == {("hatched", "hatch"): 1}


LOOKS = [Look("candle1", 7.0, 5, NAN, 1), Look("hatch", 21.0, 4, 4, 4)]


def test_counts_less_the_eggs_that_have_rows():
    made = counts.read_counts(dict(hatched=20, culled=5, dead_in_shell=6, broken_early=2, broken_infertile=1), LOOKS)
    seen = {
        ("candle1", "clear"): 2.0,
        ("candle1", "dead"): 1.0,
        ("candle1", "removed"): 3.0,
        "hatched": 17.0,
        "culled": 1.0,
        "pipped_dead": 1.0,
        "in_shell": 2.0,
        "infertile": 0.0,
        "early": 1.0,
        "mid": 0.0,
        "late": 0.0,
        "removed": 0.0,
    }
    found = fates._less(made, seen)
    assert (found.looks[0].clear, found.looks[0].removed) == (3, 0) and math.isnan(found.looks[0].dead)
    assert found.looks[1].clear == 4
    assert (found.hatched, found.culled, found.pipped, found.in_shell, found.early) == (3, 3, 0, 4, 1)


def test_rows_for_every_egg_must_equal_the_counts_and_rows_for_some_cannot_exceed_them():
    made = counts.read_counts(dict(hatched=20), LOOKS)
    seen = {
        ("candle1", "clear"): 5.0,
        ("candle1", "dead"): 9.0,
        ("candle1", "removed"): 1.0,
        "hatched": 20.0,
        "culled": 3.0,
        "pipped_dead": 1.0,
    }
    row = dict(batch="a", hatched=20)
    assert fates._disagreements(row, made, seen, whole=True) == []
    for rows, whole, partly in ((19.0, 1, 0), (21.0, 1, 1), (20.0, 0, 0)):
        for is_whole, told in ((True, whole), (False, partly)):
            assert len(fates._disagreements(row, made, seen | {"hatched": rows}, whole=is_whole)) == told


def test_what_the_counts_hold_for_a_message():
    made = counts.read_counts(
        dict(hatched=20, dead_in_shell=3, broken_early=2, broken_late=2, broken_infertile=1, removed=3), LOOKS
    )
    assert dict(zip(*fates._told(made).values(), strict=True)) == dict(
        clear=9, hatched=20, dead_in_shell=4, broken_infertile=1, removed=1
    )


def part(**columns):
    names = ("eggs", "seen", "at_hatch", "set", "fertile", "transferred")
    none = np.zeros(len(columns["eggs"]))
    return {name: np.array(columns.get(name, columns["eggs"]), float) for name in names} | {"excess": none}


def test_sums_and_shares_of_two_batches_by_hand():
    made = part(eggs=[4, 8], seen=[4, 6], at_hatch=[1, 2], set=[40, 60], fertile=[36, NAN], transferred=[30, 50])
    row = breakdown._row(made, np.array([True, True]), "late", True, "wilson")
    assert (row["eggs"], row["seen"], row["shared_out"], row["set"], row["fertile"], row["transferred"]) == (
        12,
        10,
        2,
        100,
        36,
        80,
    )
    phi = dispersion([4, 8], [40, 60])
    want = (0.12, *widened(12, 100, phi, 2))
    assert [row["share_of_set" + end] for end in ("", "_low", "_high")] == pytest.approx(want)
    assert [row["share_of_fertile" + end] for end in ("", "_low", "_high")] == pytest.approx((4 / 36, *interval(4, 36)))
    assert row["share_of_transferred"] == pytest.approx(3 / 80) and row["batches"] == 2
    partly = breakdown._row(made, np.array([True, False]), "late", True, "wilson")
    assert partly["share_of_set"] == 0.12 and math.isnan(partly["share_of_set_low"])
    assert not math.isnan(partly["share_of_fertile_low"])
    for stage, rated, share in (("clear", True, "fertile"), ("infertile", True, "fertile"), ("late", False, "set")):
        found = breakdown._row(made, np.array([True, True]), stage, rated, "wilson")
        assert math.isnan(found["share_of_" + share])
    assert breakdown._row(made, np.array([True, True]), "clear", True, "wilson")["share_of_set"] == 0.12
    assert breakdown._row(made, np.array([True, True]), "infertile", True, "wilson")["share_of_transferred"] > 0
    none = breakdown._row(part(eggs=[0, 0], set=[40, 60]), np.array([False, False]), "late", True, "wilson")
    assert math.isnan(none["eggs"]) and math.isnan(none["share_of_set"])
    assert breakdown._total(np.array([0.0, 1]), np.array([False, False])) == 1
    assert np.isnan(breakdown._share(np.zeros(1), np.zeros(1), 0, "wilson")).all()
    assert breakdown._share(np.array([5.0]), np.array([4.0]), 0, "wilson")[0] == 1


def kinds_of(row, looks=LOOKS, rows=(), eggs=()):
    found = [dict(fate=fate, found_at=at, egg=egg) for fate, at, egg in rows]
    return counted.batch_counted(dict(eggs_set=2) | row, list(looks), list(eggs), found)


def test_what_was_counted_of_a_batch():
    """A blank is no nought: it takes a number, or records that explain every egg."""
    open_ = [("unaccounted", "", "")]
    bare = [Look("candle1", 7.0), Look("hatch", 21.0)]
    assert kinds_of({}, bare, open_) == counted.Counted(frozenset(), frozenset())
    assert kinds_of({}, LOOKS[:1] + bare[1:], open_).kinds == {"clear", "removed"}
    assert kinds_of(dict(hatched=0, culled=0), bare, open_).kinds == {"hatched", "culled"}
    assert kinds_of(dict(dead_in_shell=0), bare, open_).looks == {"hatch"}
    assert kinds_of(dict(cracked=0), bare, open_).kinds == {"removed"}
    closed = kinds_of({}, bare, [("hatched", "hatch", "")])
    assert closed.looks == {"candle1", "hatch"} and closed.kinds == {
        "hatched",
        "clear",
        "dead",
        "pipped_dead",
        "removed",
    }
    unopened = kinds_of({}, bare, [("dead", "hatch", "")])
    assert "clear" not in unopened.kinds and "pipped_dead" not in unopened.kinds and "culled" in unopened.kinds
    assert "clear" in kinds_of(dict(broken_mid=1), bare, [("dead", "hatch", "")]).kinds
    each = kinds_of({}, bare, open_, [dict(outcome="hatched", candle1="alive"), dict()])
    assert {"hatched", "culled", "clear", "pipped_dead", "removed"} <= each.kinds
    assert "hatched" not in kinds_of({}, bare, open_, [dict(outcome="hatched")]).kinds
    known = counted.Counted(frozenset({"clear", "dead"}), frozenset())
    stages = ("infertile", "clear", "early", "mid", "pipped_dead", "hatched", "unaccounted")
    assert [known.stage(name) for name in stages] == [True, True, True, True, False, False, True]
