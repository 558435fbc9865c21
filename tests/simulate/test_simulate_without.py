"""Eggs lost to a cause: what the same eggs would have given without it, and nothing else."""

import numpy as np
import pytest

from hatchkit.simulate import cause_names, course, draw_season, seasons
from hatchkit.simulate.causes import KILLS
from hatchkit.simulate.without import is_chick

PASSING = [name for name in cause_names() if name not in ("none", "old_flock")]


def _chicks(answer, batch=None):
    eggs = answer.eggs[answer.eggs["batch"] == (batch or answer.batch)]
    return int(is_chick(eggs).sum()), eggs


@pytest.mark.parametrize("cause", PASSING)
def test_the_same_seed_without_the_cause_gives_just_so_many_more_chicks(cause):
    kept = dict(seed=23, batches=2, eggs=40, step_minutes=60)
    _, with_it = draw_season(cause=cause, **kept)
    _, bare = draw_season(cause="none", **kept)
    here, eggs = _chicks(with_it)
    there, others = _chicks(bare, with_it.batch)
    # a lid ajar draws noise of its own, so the season without it is not of the very same eggs
    if cause != "lid_ajar":
        assert np.array_equal(eggs["weight_g"], others["weight_g"])
        assert with_it.lost() == max(there - here, 0)
    assert here + with_it.lost() <= len(eggs)


def test_an_egg_that_would_have_died_anyway_is_not_the_cause_s():
    """Of the eggs that the heat killed first, some would have failed to hatch without it."""
    fewer = 0
    for seed in range(6):
        _, answer = draw_season(seed=seed, cause="overheating", batches=1, incubators=1, step_minutes=60)
        eggs = answer.eggs
        killed = int(eggs["died_of"].isin(KILLS["overheating"]).sum())
        assert answer.lost() <= killed
        fewer += answer.lost() < killed
    assert fewer >= 3


def test_a_lid_ajar_meets_the_same_eggs_as_no_lid_ajar():
    kept = dict(
        cause="lid_ajar",
        severity="severe",
        times=1,
        batches=2,
        eggs=40,
        species="chicken",
        incubators=1,
        step_minutes=60,
        gaps=0.0,
        parameters=None,
    )
    plan, _, answer = seasons._drawn(5, **kept)
    bare, _, _ = seasons._drawn(5, **kept | {"cause": "none"})
    place = int(answer.batch) - 1
    own = seasons.streams(5)["chance"].spawn(2)[place]
    species = course.biology.birds().loc["chicken"]
    eggs = course.draw_batch(own, bare, bare.batches[place], species, drawn_as=plan)[2]
    mine = answer.eggs[answer.eggs["batch"] == answer.batch]
    assert np.allclose(eggs["weight_g"], mine["weight_g"])


def test_an_old_flock_is_held_against_the_mean_of_ordinary_batches():
    lost, more = [], []
    for seed in range(8):
        _, answer = draw_season(seed=seed, cause="old_flock", batches=1, incubators=1, step_minutes=60)
        _, bare = draw_season(seed=seed + 100, cause="none", batches=1, incubators=1, step_minutes=60)
        lost.append(answer.lost() / answer.causes["eggs_set"].iloc[0])
        more.append(_chicks(bare)[0] / len(bare.eggs) - _chicks(answer)[0] / len(answer.eggs))
    assert np.mean(lost) == pytest.approx(np.mean(more), abs=0.06)


@pytest.mark.parametrize(
    ("cause", "stage"),
    [("low_fertility", "infertile"), ("dry_hatch", "pipped"), ("contaminated", "removed"), ("probe_high", "late")],
)
def test_the_stages_say_where_these_eggs_were_lost(cause, stage):
    _, answer = draw_season(seed=3, cause=cause, batches=2, step_minutes=60)
    row = answer.causes.set_index("batch").loc[answer.batch]
    assert row["stages"].split()[0] == stage
    counts = [int(part.split()[1]) for part in row["stages"].split(", ")]
    assert sum(counts) >= row["lost"] and f"{row['lost']} more of the {row['eggs_set']}" in answer.words()


def test_who_takes_the_other_batches_for_the_usual_comes_near_the_eggs_lost():
    """Question, guide and truth are one quantity: chicks that were to be expected, less those that came.

    Of 320 such cases 95 % were within a tenth of the eggs; of fourteen, three outside would be rare.
    """
    off = []
    for place, cause in enumerate(PASSING):
        season, answer = draw_season(seed=300 + place, cause=cause, severity="moderate", batches=6, step_minutes=60)
        rows = season.batches.set_index("batch")
        usual = rows.drop(index=list(answer.causes["batch"]))
        share = usual["hatched"].sum() / usual["eggs_set"].sum()
        row = rows.loc[answer.batch]
        off.append((share * row["eggs_set"] - row["hatched"] - answer.lost()) / row["eggs_set"])
    assert np.sum(np.abs(off) > 0.1) <= 2
    assert abs(np.mean(off)) < 0.04
