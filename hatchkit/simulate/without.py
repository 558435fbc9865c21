"""What a planted cause took: the same eggs under the same chance, once more without it."""

import numpy as np
import pandas as pd

from hatchkit.simulate import biology, course

#: Courses whose mean is taken where the same eggs cannot be drawn again (an old flock's embryos).
REPEATS = 40


def losses(plan, plain, eggs, *, batches, chance) -> dict:
    """Eggs of each batch that would have hatched without the cause and did not with it.

    Parameters
    ----------
    plan, plain : SeasonPlan
        With the cause, and as it was before the cause was put in.
    eggs : DataFrame
        The course with the cause, from `course.run`.
    batches : iterable of str
        The batches that the cause touched.
    chance : Generator
        As it was when `course.run` drew `eggs`.

    Returns
    -------
    dict
        Batch -> (eggs lost, text that says in which stages: "early 7, late 3"). The number is chicks
        without the cause less chicks with it, at least 0.
    """
    found = {}
    streams = chance.spawn(len(plan.batches))
    for own, item, bare in zip(streams, plan.batches, plain.batches, strict=True):
        if item.batch in set(batches):
            species = biology.birds().loc[item.species]
            mine = eggs[eggs["batch"] == item.batch].reset_index(drop=True)
            count = _unlike if item.early_factor != bare.early_factor else _alike
            found[item.batch] = count(own, plan, plain, bare, mine, species)
    return found


def is_chick(eggs):
    """Eggs out of which a chick came, whether it was kept or not."""
    return (eggs["out_at"] == "hatch") & eggs["outcome"].isin(["hatched", "culled"])


def stage_of(eggs, species):
    """Stage in which each egg was lost, by what truly became of it; hen days 7 and 14 are the limits."""
    day = eggs["died_day"] * 21 / species["incubation_days"]
    return np.select(
        [eggs["reason"] == "rotten", ~eggs["fertile"], eggs["pipped"], day <= 7, day <= 14],
        ["removed", "infertile", "pipped", "early", "mid"],
        "late",
    )


def _drawn(rng, plan, plain, bare, species):
    _, _, eggs, seen, _ = course.draw_batch(rng, plain, bare, species, drawn_as=plan)
    return pd.concat([eggs, seen.drop(columns="egg")], axis=1)


def _alike(rng, plan, plain, bare, mine, species):
    """The very same eggs, one by one."""
    other = _drawn(rng, plan, plain, bare, species)
    took = mine[is_chick(other) & ~is_chick(mine)]
    lost = int(is_chick(other).sum() - is_chick(mine).sum())
    return max(lost, 0), _in_words(pd.Series(stage_of(took, species)).value_counts())


def _unlike(rng, plan, plain, bare, mine, species):
    """Against the mean of ordinary batches, where the early deaths cannot be drawn egg for egg."""
    others = [_drawn(own, plan, plain, bare, species) for own in rng.spawn(REPEATS)]
    usual = np.mean([is_chick(other).sum() for other in others])
    lost = max(round(float(usual - is_chick(mine).sum())), 0)
    dead = [pd.Series(stage_of(eggs[~is_chick(eggs)], species)).value_counts() for eggs in (mine, *others)]
    more = dead[0].sub(sum(part.reindex(dead[0].index, fill_value=0) for part in dead[1:]) / REPEATS)
    return lost, _in_words(more.round().astype(int))


def _in_words(counts):
    counts = counts[counts > 0].sort_index().sort_values(ascending=False, kind="stable")
    return ", ".join(f"{stage} {count}" for stage, count in counts.items())
