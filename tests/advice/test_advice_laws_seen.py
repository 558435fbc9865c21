"""How far a hatch lies below the usual, and how an egg of each end is put down: by hand."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.advice import poor_hatch
from hatchkit.advice.published import STAGES
from hatchkit.advice.seen import seen
from hatchkit.usual.stages import Usual

LOGITS, SPREAD = np.zeros(7), np.ones(7)


def test_how_far_a_hatch_lies_below_the_usual():
    """12 of 20 where 0.8 is usual, correlation 0.05: (0.6 - 0.8) / root(0.16 / 20 x 1.95)."""
    assert poor_hatch._away(0.6, 0.8, 20, 0.05) == pytest.approx(-0.2 / np.sqrt(0.0156))


@pytest.mark.parametrize(("away", "of_set", "more", "poor"), [
    ((-3, -2, -1.0), 0, (0, 0), "embryos"), ((-3, -2, -0.99), 0, (0, 0), "unknown"),
    ((-1.0, -0.5, 0), -5, (9, 0), "unknown"), ((-0.99, 0, 0), -1.0, (2, 2), "clears"),
    ((-0.99, 0, 0), -1.0, (2, 3), "removed"), ((-0.99, 0, 0), -0.99, (2, 3), "no"),
])  # fmt: skip
def test_a_hatch_is_poor_from_one_deviation_on(away, of_set, more, poor):
    assert poor_hatch._poor(list(away), of_set, dict(zip(("clear", "removed"), more, strict=True))) == poor


def test_a_batch_stands_beside_the_usual_of_what_developed():
    """40 set: 10 chicks, 6 clear, 2 removed, 16 dead, 6 without an end: 26 developed, up to 32 if all 6 were embryos.

    Usual 0.7 of the set with 0.1 clear and 0.05 removed: 0.7 / 0.85 of the developing.
    """
    row = dict.fromkeys(STAGES, 0.0) | dict(hatched=10.0, clear=6.0, removed=2.0, early=16.0)
    usual = Usual(np.array([0.7, 0.1, 0.05, 0.15, 0, 0, 0, 0]), LOGITS, SPREAD, 0.05, 4, 99, 0.9)
    found = poor_hatch._standing("a", "chicken", pd.Series(row), 6.0, True, usual, 40)
    share = 0.7 / 0.85
    assert (found["set"], found["developing"], found["hatched"]) == (40, 26, 10)
    assert [found["share_low"], found["share_high"], found["share_of_set"]] == pytest.approx([10 / 32, 10 / 26, 0.25])
    assert found["usual"] == pytest.approx(share) and np.isnan(found["share_hatched"])
    for name, eggs in (("away_low", 32), ("away", 29), ("away_high", 26)):
        away = (10 / eggs - share) / np.sqrt(share * (1 - share) / eggs * (1 + (eggs - 1) * 0.05))
        assert found[name] == pytest.approx(away)
    assert found["away_of_set"] == pytest.approx(-0.45 / np.sqrt(0.7 * 0.3 / 40 * (1 + 39 * 0.05)))
    assert found["poor"] == "embryos"


EVERY = frozenset({"clear", "culled", "dead", "pipped_dead", "hatched", "removed"})


@pytest.mark.parametrize(("fate", "at", "kinds", "cells"), [
    ("clear", "candle1", EVERY, {0: 1, 2: 0.95, 3: 0.75, 4: 0.4, 5: 0.1}),
    ("infertile", "hatch", EVERY, {0: 1, 2: 0.8, 3: 0.4, 4: 0.1}),
    ("removed", "candle1", EVERY, {1: 1}), ("pipped_dead", "hatch", EVERY, {23: 1}),
    ("culled", "hatch", EVERY, {24: 1}),
    ("hatched", "hatch", EVERY, {25: 1}), ("hatched", "hatch", EVERY - {"culled"}, {24: 1, 25: 1}),
    ("dead", "hatch", EVERY, {2: 0.2, 3: 0.6, 4: 0.9} | dict.fromkeys(range(5, 23), 1)),
    ("dead", "hatch", EVERY - {"pipped_dead"}, {2: 0.2, 3: 0.6, 4: 0.9} | dict.fromkeys(range(5, 24), 1)),
    ("dead", "hatch", EVERY - {"clear"}, dict.fromkeys([0, *range(2, 23)], 1)),
    ("unaccounted", "hatch", EVERY, dict.fromkeys([1, *range(2, 24)], 1)),
    ("unaccounted", "hatch", EVERY - {"clear"}, dict.fromkeys(range(24), 1)),
])  # fmt: skip
def test_how_an_egg_of_each_end_is_put_down(fate, at, kinds, cells):
    rows = [dict(fate=fate, eggs=3, after_day=0.0, by_day=np.nan, found_at=at, egg="")]
    want = np.zeros(26)
    want[list(cells)] = list(cells.values())
    assert seen(rows, {}, kinds, 21.0).ways[0] == pytest.approx(want)


def test_opened_clears_are_groups_of_their_own():
    """Of 7 clears in two rows 3 were opened without a germ and 2 with a dead one; a disc is easily taken for barren."""
    rows = [dict(fate="clear", eggs=n, after_day=0.0, by_day=np.nan, found_at="candle1", egg="") for n in (4, 3)]
    found = seen(rows, dict(opened1_infertile=3, opened1_dead=2), EVERY, 21.0)
    assert sorted(found.eggs) == [2, 2, 3] and found.eggs.sum() == 7
    barren = found.ways[list(found.eggs).index(3)]
    assert barren[[0, 2, 3, 4]] == pytest.approx([1, 0.5, 0.2, 0.05]) and not barren[5:].any()
    assert (found.stages == STAGES.index("clear")).all()
    germs = [row for row in found.ways if row[0] == 0][0]
    assert germs[2:7] == pytest.approx([0.95, 0.75, 0.4, 0.1, 0])
