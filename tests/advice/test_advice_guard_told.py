"""What is worth telling and what is not: eggs without an end, least eggs, the same birds, still air; by hand."""

from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import season_notes as notes
from hatchkit.advice.different import _by_name
from hatchkit.advice.reasons import Counted
from hatchkit.advice.seen import seen
from hatchkit.advice.what_to_change import _wanted
from hatchkit.say.causes import arithmetic


def test_eggs_set_are_those_with_a_known_end_and_those_without():
    batch = Counted(np.array([3.0, 4.0]), (), 2.0)
    assert batch.eggs_set == 9.0
    assert batch.mostly_unknown(0.2) and not batch.mostly_unknown(0.25)  # 2 of 9 are 22 %


def test_from_three_eggs_on_a_loss_is_worth_a_note(monkeypatch):
    rows = [dict.fromkeys(notes.COLUMNS[1:], "") | {"eggs_lost": eggs} for eggs in (2.9, 3.0)]
    for name, found in (("_from_causes", []), ("_from_stages", []), ("_from_records", rows)):
        monkeypatch.setattr(notes, name, lambda causes, found=found: found)
    assert notes.season_notes(None, causes={})["eggs_lost"].tolist() == [3.0]


def test_another_flock_is_told_beside_good_batches_of_the_same_birds_only():
    rows = (
        {"bad": {"species": "chicken", "flock": "X"}}
        | {f"hen{number}": {"species": "chicken", "flock": "Y"} for number in range(3)}
        | {f"duck{number}": {"species": "duck", "flock": "Z"} for number in range(4)}
    )
    good = {name: 1.0 for name in rows if name != "bad"}
    told = _by_name(SimpleNamespace(rows=rows, good=good), "bad")
    assert [(row["value"], row["usual"], row["good_batches"]) for row in told] == [("X", "Y", 3)]


@pytest.mark.parametrize(("air", "degrees"), [("still", (38.3 + 39.15) / 2), ("fan", 37.5)])
def test_still_air_is_held_at_the_middle_of_its_own_range(air, degrees):
    season = SimpleNamespace(settings={"incubators": {"A": {"air": air}}})
    assert _wanted(season, reference.species_table().loc["chicken"], "A") == pytest.approx(degrees)


@pytest.mark.parametrize(("variants", "mean"), [(["early"], False), (["early", "late"], True)])
def test_a_mean_over_ages_is_told_only_where_there_are_several(variants, mean):
    parts = pd.DataFrame({"variant": variants, "part": "pattern", "factor": 2.0, "found": "", "once": False})
    causes = SimpleNamespace(
        table=pd.DataFrame({"cause": ["heat_spell"], "variant": ["early"], "prior": 0.1, "share": 0.2}),
        evidence=pd.DataFrame({"item": []}),
        arithmetic=lambda cause: parts,
    )
    assert ("is the mean over its" in arithmetic((causes, "heat_spell"))) == mean


def test_clears_opened_at_the_first_candling_are_shared_out_egg_by_egg():
    """1 without a germ and 3 that died, among 2 clears of one look and 3 of the next: 1 + 1, then 2 and 1 unopened."""
    looks = [
        dict(fate="clear", eggs=eggs, after_day=after, by_day=after + 7.0, found_at="candling", egg="")
        for eggs, after in ((2, 0.0), (3, 7.0))
    ]
    row = {"opened1_infertile": 1, "opened1_dead": 3}
    told = seen(looks, row, frozenset({"clear", "dead", "hatched"}), 21.0)
    assert told.eggs.tolist() == [1.0, 1.0, 2.0, 1.0]
