"""Simulated folders come back through the reader as they were drawn, in every export style."""

import pytest

import hatchkit as hk
from hatchkit.simulate import draw_season, simulate_season
from hatchkit.simulate.habits import HABITS
from hatchkit.simulate.loggers import EXPORTS

KEPT = [
    "eggs_set",
    "clear1",
    "dead1",
    "clear2",
    "dead2",
    "clear3",
    "dead3",
    "removed",
    "hatched",
    "culled",
    "pipped_dead",
    "broken_late",
]


@pytest.mark.parametrize(("number", "style"), list(enumerate(EXPORTS)))
def test_reading_gives_back_what_was_drawn(number, style, tmp_path):
    settings = dict(seed=40 + number, cause="power_cut", batches=1, incubators=1, step_minutes=30)
    simulate_season(tmp_path / "season", style=style, gaps=0.0, **settings)
    read = hk.load_season(tmp_path / "season")
    drawn, _ = draw_season(**settings)
    assert "lost" not in set(read.problems["severity"])
    assert read.timezone == drawn.timezone
    left, right = (season.batches.set_index("batch")[KEPT] for season in (read, drawn))
    assert left.astype("Int64").equals(right.loc[left.index].astype("Int64"))
    minute = (read.batches.set_index("batch")["set_at"] - drawn.batches.set_index("batch")["set_at"]).abs().max()
    assert minute.total_seconds() == 0
    assert len(read.readings) == len(drawn.readings)
    assert (read.readings["temp_c"] - drawn.readings["temp_c"]).abs().max() < 0.06
    assert read.readings["time"].equals(drawn.readings["time"].astype(read.readings["time"].dtype))


def test_all_habits_come_up_and_are_read(tmp_path):
    seen = set()
    for seed in range(4):
        folder = tmp_path / str(seed)
        simulate_season(folder, seed=seed, cause="none", batches=1, incubators=1, step_minutes=60, style="utc")
        season = hk.load_season(folder)
        assert len(season.batches) == 1
        assert not season.batches["flock"].eq("").any()
        assert "lost" not in set(season.problems["severity"])
        first = [
            name
            for name, habit in HABITS.items()
            if _first_heading(folder) in (habit.headings["batch"], *habit.title_rows)
        ]
        seen.update(first[:1])
    assert len(seen) >= 2


def _first_heading(folder):
    from openpyxl import load_workbook

    return load_workbook(folder / "batches.xlsx")["batches"].cell(1, 1).value
