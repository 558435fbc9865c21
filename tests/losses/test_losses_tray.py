"""The tray: a map of fates, and tests of place that know how little a small tray can tell."""

import numpy as np
import pytest
from tiny_season import tiny_season

from hatchkit.findings import more_losses
from hatchkit.losses.tray import at_edge, clustering, tray_map
from hatchkit.problems import HatchkitError


def season(dead, rows=4, cols=6, batch="1", clear=()):
    eggs = []
    for n in range(rows * cols):
        marks = (
            dict(candle1="clear") if n in clear else dict(candle1="alive", outcome="dead" if n in dead else "hatched")
        )
        eggs.append(dict(batch=batch, egg=str(n), tray="left", row=n // cols + 1, col=n % cols + 1, **marks))
    return tiny_season([dict(batch=batch, eggs_set=rows * cols, day1=7)], eggs=eggs)


def test_the_map_holds_every_egg_with_its_fate():
    table = tray_map(season({0, 1}, clear={5}), "1")
    assert len(table) == 24 and table["died"].sum() == 2 and (~table["at_risk"]).sum() == 1
    assert table.iloc[0][["tray", "row", "col", "fate"]].tolist() == ["left", 1, 1, "dead"]


def test_numbers_that_begin_anew_on_each_tray_are_two_eggs():
    eggs = [
        dict(batch="1", egg=str(n), tray=tray, row=1, col=n, candle1="alive", outcome=outcome)
        for tray, outcome in (("top", "dead"), ("bottom", "hatched"))
        for n in range(1, 13)
    ]
    table = tray_map(tiny_season([dict(batch="1", eggs_set=24, day1=7)], eggs=eggs), "1")
    assert table.groupby("tray")["died"].sum().to_dict() == {"top": 12, "bottom": 0}


def test_a_block_of_dead_is_told_from_chance():
    table = clustering(season({0, 1, 2, 8, 9, 10, 16, 17}, rows=6, cols=8), "1").set_index("question")
    assert table.loc["neighbours", "chance"] < 0.01 and table.loc["together", "chance"] < 0.02
    assert table.loc["neighbours", "seen"] > 2 * table.loc["neighbours", "expected"]
    assert more_losses.place_answer(table.reset_index()) == "pattern"


def test_dead_all_around_the_edge_are_found():
    grid = np.arange(48).reshape(6, 8)
    edge = set(grid[0]) | set(grid[-1][::2])
    table = clustering(season(edge, rows=6, cols=8), "1").set_index("question")
    assert table.loc["edge", "seen"] == 1.0 and table.loc["edge", "chance"] < 0.01


def test_two_dead_on_a_small_tray_cannot_tell_anything():
    table = clustering(season({0, 1}), "1")
    together = table.set_index("question").loc["together"]
    assert together["smallest"] > 0.05
    assert more_losses.place(table).facts["answer"] == "few"


@pytest.mark.parametrize("dead", [set(), {3}, set(range(24))])
def test_none_one_or_all_dead_say_so(dead):
    table = clustering(season(dead), "1")
    assert table.empty
    assert more_losses.place(table).code == "place_few"


def test_a_batch_without_egg_rows_says_that_no_places_were_kept():
    with_rows = season({0, 1, 2})
    other = tiny_season([dict(batch=1, eggs_set=12, hatched=9, dead_in_shell=3)])
    for one in (other, with_rows):
        with pytest.raises(HatchkitError, match="no batch '7'"):
            clustering(one, "7")
    table = clustering(other, "1")
    assert table.empty and table.attrs["places"] == 0
    both = tiny_season(
        [dict(batch="1", eggs_set=24, day1=7), dict(batch="2", eggs_set=12, hatched=9, dead_in_shell=3)],
        eggs=with_rows.eggs.to_dict("records"),
    )
    assert clustering(both, "2").attrs["places"] == 0
    assert more_losses.place(clustering(both, "1")).facts["eggs"] == 24


def test_when_place_does_not_matter_few_trays_look_clustered():
    random, one = np.random.default_rng(2), season({0}, rows=6, cols=8)
    chances = []
    for _ in range(60):
        dead = {str(n) for n in random.choice(48, 9, replace=False)}
        one.fates["fate"] = ["dead" if egg in dead else "hatched" for egg in one.fates["egg"]]
        chances.append(clustering(one, "1", draws=199).set_index("question").loc["together", "chance"])
    assert np.mean(np.array(chances) <= 0.05) <= 0.12


def test_the_same_records_give_the_same_answer():
    assert clustering(season({0, 1, 9}), "1").equals(clustering(season({0, 1, 9}), "1"))


def test_without_places_there_is_no_map():
    assert tray_map(tiny_season([dict(batch=1, eggs_set=12, hatched=12)])).empty


def test_the_edge_of_a_3_by_3_tray_is_all_but_the_middle():
    row, col = np.meshgrid([1, 2, 3], [1, 2, 3], indexing="ij")
    assert at_edge(row.ravel(), col.ravel()).sum() == 8
