"""Laws that hold for any records: everything adds up, and no bookkeeping changes an answer."""

import numpy as np
import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from tiny_season import tiny_season

from hatchkit.losses.breakdown import breakdown
from hatchkit.losses.death_age import age_at_death, age_at_death_from
from hatchkit.losses.windows import candling_windows, too_many

#: The same examples each time; a failing one is shown as found, since making it smaller takes minutes.
QUIET = settings(deadline=None, derandomize=True, database=None, phases=(Phase.explicit, Phase.generate))


def law(max_examples):
    return settings(QUIET, max_examples=max_examples)


small = st.integers(0, 6)
kept = st.one_of(st.none(), small)
MARKS = st.sampled_from([None, "alive", "clear", "dead", "removed"])
OUTCOMES = st.sampled_from([None, "hatched", "culled", "pipped_dead", "dead", "infertile", "clear", "removed"])

count_names = [
    "clear1",
    "dead1",
    "clear2",
    "dead2",
    "dead3",
    "removed",
    "hatched",
    "culled",
    "pipped_dead",
    "dead_in_shell",
    "broken_infertile",
    "broken_early",
    "broken_mid",
    "broken_late",
    "contaminated",
    "cracked",
]
any_batch = st.fixed_dictionaries({"eggs_set": st.integers(1, 40), **{name: kept for name in count_names}})
any_egg = st.fixed_dictionaries(
    {"candle1": MARKS, "candle2": MARKS, "outcome": OUTCOMES, "stage_day": st.one_of(st.none(), st.integers(0, 21))}
)


def drop_missing(batch):
    return {name: value for name, value in batch.items() if value is not None}


@law(max_examples=40)
@given(
    batch=any_batch,
    eggs=st.lists(any_egg, max_size=12),
    species=st.sampled_from(["chicken", "duck", "quail"]),
    days=st.sampled_from([{}, {"day1": 7.25}, {"day1": 5, "day2": 11}, {"day1": 5, "day2": 9, "day3": 14}]),
)
def test_any_mixture_of_counts_and_egg_rows_adds_up_to_the_eggs_set_and_a_slip_of_counting(batch, eggs, species, days):
    rows = [{"batch": "1", "egg": str(n), **egg} for n, egg in enumerate(eggs)]
    season = tiny_season([{"batch": 1, "species": species, **drop_missing(batch), **days}], eggs=rows)
    slips = season.problems[season.problems["code"] == "too_many_eggs"]["facts"]
    excess = sum(facts["excess"] for facts in slips)
    assert season.fates["eggs"].sum() == pytest.approx(batch["eggs_set"] + excess)
    assert excess <= max(2, 0.05 * batch["eggs_set"]) and (season.fates["eggs"] > 0).all()
    dead = season.fates[season.fates["fate"].isin(("dead", "pipped_dead"))]
    assert (dead["after_day"] < dead["by_day"]).all() and (dead["after_day"] >= 0).all()
    table = breakdown(season)
    readable = not (season.fates["fate"] == "unaccounted").all() or not too_many(season, "1")
    assert not readable or table["eggs"].sum() == pytest.approx(batch["eggs_set"] + excess)
    assert (table["excess"] == excess).all()
    for of in ("set", "fertile", "transferred"):
        shares = table[f"share_of_{of}"].dropna()
        assert shares.between(0, 1).all()
        assert (table[f"share_of_{of}_low"].fillna(0) <= table[f"share_of_{of}"].fillna(1) + 1e-9).all()
    windows = candling_windows(season).dropna(subset="at_risk")  # not known where the clears were not counted
    assert (windows["died"].fillna(0) <= windows["at_risk"] + 1e-9).all()


closed_batch = st.fixed_dictionaries(
    {
        "dead1": small,
        "dead2": small,
        "dead3": small,
        "clear1": small,
        "dead_in_shell": small,
        "hatched": st.integers(0, 30),
    }
).filter(lambda batch: sum(batch.values()) > 0)


def closed(name, batch, **more):
    days = {"day1": 7, "day2": 14, "day3": 18}
    return {"batch": name, "eggs_set": sum(batch.values()), "culled": 0, "pipped_dead": 0, **days, **batch, **more}


@law(max_examples=10)
@given(batch=closed_batch, other=closed_batch)
def test_splitting_a_batch_in_two_and_pooling_again_changes_no_share_and_no_age(batch, other):
    half = {name: value // 2 for name, value in batch.items()}
    rest = {name: batch[name] - half[name] for name in batch}
    parts = [closed(name, part) for name, part in (("b", half), ("c", rest)) if sum(part.values())]
    whole, split = tiny_season([closed("a", batch), closed("d", other)]), tiny_season([*parts, closed("d", other)])
    columns = ["stage", "eggs", "set", "share_of_set", "share_of_fertile", "share_of_transferred"]
    for stages in ("development", "candling"):
        one, two = breakdown(whole, by=None, stages=stages), breakdown(split, by=None, stages=stages)
        assert one["stage"].tolist() == two["stage"].tolist()
        for column in columns[1:]:
            assert two[column].to_numpy() == pytest.approx(one[column].to_numpy(), nan_ok=True)
    first, second = age_at_death(whole, draws=0), age_at_death(split, draws=0)
    assert second.table["share"].to_numpy() == pytest.approx(first.table["share"].to_numpy(), abs=1e-6)


@law(max_examples=8)
@given(batches=st.lists(closed_batch, min_size=2, max_size=5), order=st.randoms(use_true_random=False))
def test_relabelling_and_reordering_batches_changes_nothing(batches, order):
    named = [closed(f"a{n}", batch) for n, batch in enumerate(batches)]
    other = [{**batch, "batch": f"z{n}"} for n, batch in enumerate(named)]
    order.shuffle(other)
    one, two = breakdown(tiny_season(named), by=None), breakdown(tiny_season(other), by=None)
    numbers = one.select_dtypes("number").columns
    assert two[numbers].to_numpy(dtype=float) == pytest.approx(one[numbers].to_numpy(dtype=float), nan_ok=True)
    first, second = (age_at_death(tiny_season(rows), draws=0) for rows in (named, other))
    assert second.table["share"].to_numpy() == pytest.approx(first.table["share"].to_numpy(), abs=1e-6)


@law(max_examples=40)
@given(
    ends=st.lists(st.tuples(st.integers(0, 20), st.integers(1, 6)), min_size=1, max_size=15),
    which=st.integers(0, 14),
    more=st.integers(1, 10),
)
def test_a_longer_interval_never_lowers_the_likelihood_and_never_makes_an_estimate_surer(ends, which, more):
    after = np.array([start for start, _ in ends], dtype=float)
    by = after + np.array([length for _, length in ends])
    sharp = age_at_death_from(after, by)
    after[which % len(ends)] = max(0.0, after[which % len(ends)] - more)
    by[which % len(ends)] += more
    blunt = age_at_death_from(after, by)
    assert blunt.log_likelihood >= sharp.log_likelihood - 1e-6
    assert blunt.mass.sum() == pytest.approx(1) and sharp.mass.sum() == pytest.approx(1)


@law(max_examples=10)
@given(batch=closed_batch)
def test_with_fewer_looks_the_range_of_loss_holds_that_with_more(batch):
    # The same eggs looked at on days 7, 14, 18 or only on day 18: what was known stays possible.
    fine = tiny_season([closed("a", batch)])
    merged = {
        "clear3": batch["clear1"],
        "dead3": batch["dead1"] + batch["dead2"] + batch["dead3"],
        "dead_in_shell": batch["dead_in_shell"],
        "hatched": batch["hatched"],
    }
    coarse = tiny_season([{"batch": "a", "eggs_set": sum(batch.values()), "day3": 18, **merged}])
    curves = [age_at_death(season, draws=0).curve for season in (fine, coarse)]
    if curves[0].empty:
        assert curves[1].empty
        return
    for day in (7.0, 14.0, 18.0, 21.5):
        least, most = zip(*(_at(curve, day) for curve in curves), strict=True)
        assert least[1] <= least[0] + 1e-6 and most[1] >= most[0] - 1e-6


def _at(curve, day):
    """Least and most loss by a day: the last edge before it, and the first after it."""
    before, after = curve[curve["day"] <= day], curve[curve["day"] >= day]
    return before["at_least"].max(), (after if len(after) else before)["at_most"].iloc[0 if len(after) else -1]
