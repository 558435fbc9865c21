"""The eggs must add up: losses told outright, by eggs left, or both ways, whatever their numbers."""

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from hatchkit.records.sheets.fields import Look, Meaning
from hatchkit.records.sheets.layout import layout_of
from hatchkit.records.sheets.ledger import FEW, ROW_ADDS_UP, ROW_OVER, ROW_OVER_BY_FEW, account, evidence
from hatchkit.records.sheets.profile import Column

COUNT = st.integers(0, 30)


def laid_out(*fields):
    meanings = [Meaning(name, look) for name, look in fields]
    return layout_of(meanings, [Column(place, "", "", []) for place in range(len(fields))])


def accounted(fields, *rows):
    layout = laid_out(*fields)
    return account(layout, [np.array(column, dtype=float) for column in zip(*rows, strict=True)]), layout


FIRST, SECOND, MOVE = Look(order=1), Look(order=2), Look(transfer=True)
OUTRIGHT = [("eggs_set", Look()), ("clear", FIRST), ("dead", FIRST), ("dead", SECOND), ("dead", MOVE), ("dis", Look()),
            ("pipped", Look()), ("hatched", Look())]  # fmt: skip


@settings(max_examples=60, deadline=None, derandomize=True)
@given(st.lists(COUNT, min_size=7, max_size=7))
def test_losses_told_outright_add_up_to_the_eggs_set(counts):
    result, _ = accounted(OUTRIGHT, [sum(counts), *counts])
    assert result.rest.tolist() == [0] and result.tested.tolist() == [True] and not result.broken.any()


@settings(max_examples=60, deadline=None, derandomize=True)
@given(st.lists(COUNT, min_size=7, max_size=7), st.integers(1, 40))
def test_an_egg_too_few_or_too_many_is_seen(counts, error):
    more, _ = accounted(OUTRIGHT, [sum(counts) + error, *counts])
    fewer, _ = accounted(OUTRIGHT, [sum(counts) - error, *counts])
    assert more.rest.tolist() == [error] and fewer.rest.tolist() == [-error]


@settings(max_examples=60, deadline=None, derandomize=True)
@given(COUNT, COUNT, COUNT, COUNT, COUNT)
def test_eggs_left_give_the_losses_that_are_not_written(clear, dead, later, dis, hatched):
    eggs = clear + dead + later + dis + hatched
    fields = [("eggs_set", Look()), ("clear", FIRST), ("left", FIRST), ("left", SECOND)]
    fields += [("dis", Look()), ("hatched", Look())]
    result, _ = accounted(fields, [eggs, clear, eggs - clear - dead, eggs - clear - dead - later, dis, hatched])
    assert result.looks[0]["dead"].tolist() == [dead] and result.looks[1]["dead"].tolist() == [later]
    assert result.rest.tolist() == [0] and not result.broken.any()


def test_more_eggs_left_than_there_were_is_broken():
    fields = [("eggs_set", Look()), ("left", FIRST), ("hatched", Look())]
    assert accounted(fields, [20, 24, 15])[0].broken.tolist() == [True]


def test_what_the_rows_say_for_a_reading_is_stated_in_one_place():
    layout = laid_out(*OUTRIGHT)
    row = [40, 4, 2, 1, 0, 3, 1, 29]

    def weighed(*rows):
        return evidence(account(layout, [np.array(column, float) for column in zip(*rows, strict=True)]), layout)

    assert weighed(row) == ROW_ADDS_UP and weighed(row, row) == 2 * ROW_ADDS_UP
    assert weighed([40 - FEW, *row[1:]]) == ROW_OVER_BY_FEW and weighed([40 - FEW - 1, *row[1:]]) == ROW_OVER
    # Beyond eight rows more of the same say nothing new.
    assert weighed(*[row] * 8) == weighed(*[row] * 20)


def test_clears_beside_the_dead_of_a_named_day_are_of_one_look():
    layout = laid_out(("eggs_set", Look()), ("clear", Look()), ("dead", Look(day=7)), ("hatched", Look()))
    assert [sorted(look.fields) for look in layout.looks] == [["clear", "dead"]] and layout.looks[0].look.day == 7


def test_two_columns_of_dead_are_two_looks_never_one():
    layout = laid_out(("eggs_set", Look()), ("dead", Look()), ("dead", Look()))
    assert len(layout.looks) == 2
