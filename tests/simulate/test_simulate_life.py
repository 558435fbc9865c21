"""What happens to everybody is drawn whatever the cause, and causes come with replacement."""

import numpy as np
import pytest

from hatchkit.problems import HatchkitError
from hatchkit.simulate.life import LEVELS, draw_lived, level

SMALL = dict(batches=3, eggs=30, step_minutes=60)


@pytest.fixture(scope="module")
def seasons():
    return [draw_lived(seed, level_name="exam", **SMALL) for seed in range(24)]


def test_with_one_seed_life_is_the_same_whatever_was_planted():
    for seed in (3, 4, 5):
        one, two = (
            draw_lived(seed, level_name="exam", cause=cause, severity="severe", **SMALL)
            for cause in ("none", "turning_fault")
        )
        for first, second in zip(one.plain.batches, two.plain.batches, strict=True):
            assert first == second
        assert {key: one.troubles[key] for key in ("clock", "no_log")} == {
            key: two.troubles[key] for key in ("clock", "no_log")
        }
        assert one.tables["batches"]["stored_days"].tolist() == two.tables["batches"]["stored_days"].tolist()


def test_the_same_seed_gives_the_same_season():
    one, two = (draw_lived(9, level_name="second", **SMALL) for _ in range(2))
    assert one.causes == two.causes and one.tables["batches"].equals(two.tables["batches"])


def test_old_hens_and_long_storage_come_without_being_causes(seasons):
    ordinary = [item for season in seasons for item in season.plain.batches]
    assert any(item.flock_age_weeks >= 58 for item in ordinary)
    assert any(item.stored_days > 12 for item in ordinary)
    assert all(item.storage_harm < 1 for item in ordinary if item.stored_days > 8)


def test_troubles_of_every_kind_come_up(seasons):
    for name in ("clock", "miscount", "no_log", "gap"):
        assert any(season.troubles[name] for season in seasons) and not all(season.troubles[name] for season in seasons)
    assert any(len(season.causes) == 2 for season in seasons) and any(not season.causes for season in seasons)
    assert len({season.plain.batches[0].species for season in seasons}) >= 5


def test_causes_come_with_replacement(seasons):
    first = [season.causes[0] for season in seasons if season.causes]
    assert len(set(first)) < len(first)


def test_two_causes_never_cost_more_than_the_eggs_without_a_chick(seasons):
    for season in seasons:
        row = season.tables["batches"].set_index("batch").loc[season.answer.batch]
        assert 0 <= season.answer.lost() <= int(row["eggs_set"])


def test_the_wrong_clock_moves_the_log_of_one_machine_alone():
    season = next(
        one
        for one in (draw_lived(seed, level_name="exam", **SMALL) for seed in range(40))
        if one.troubles["clock"] and not one.troubles["no_log"] and not one.troubles["gap"]
    )
    machine, hours = season.troubles["clock"]
    starts = season.tables["readings"].groupby("incubator")["time"].min()
    sets = season.tables["batches"].groupby("incubator")["set_at"].min()
    off = {name: (starts[name] - sets[name]).total_seconds() / 3600 + 12 for name in starts.index}
    assert off[machine] == pytest.approx(hours, abs=1.1)
    assert all(abs(value) < 1.1 for name, value in off.items() if name != machine)


@pytest.mark.parametrize("name", LEVELS)
def test_every_level_has_its_figures(name):
    assert level(name).between(0, 5).all()


def test_another_level_is_refused():
    with pytest.raises(HatchkitError, match="first, second and exam"):
        draw_lived(1, level_name="expert")


def test_levels_grow_harder():
    table = np.array([level(name).to_numpy(dtype=float) for name in LEVELS])
    harder = table[2] >= table[0]
    assert harder.mean() > 0.9
