"""The test that draws batches anew: what it takes out, what it learns, and small designs that it makes possible."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.relate.design import design
from hatchkit.relate.hazard import relate_counts
from hatchkit.relate.redrawn import SPREADS, foresee, nuisance, projected, redrawn, spread_weights
from hatchkit.relate.verdict import CLEAR, verdict

RNG = np.random.default_rng


def season(seed=1, ratio=1.0, *, seasons=1, machines=2, bad=0.0):
    """Eight batches a season in two machines, two of them struck in the one window."""
    rng, rows = RNG(seed), []
    for year in range(seasons):
        hit = rng.permutation(8)[:2]
        for batch in range(8):
            level = 0.4 * rng.normal() + bad * (batch % machines == 0) + 0.2 * year
            share = 1 - np.exp(-0.07 * np.exp(level) * (ratio if batch in hit else 1.0))
            rows.append(
                (
                    f"{year}-{batch}",
                    1,
                    7.0,
                    32,
                    rng.binomial(32, share),
                    float(batch in hit),
                    f"m{batch % machines}",
                    2020 + year,
                    "me",
                )
            )
    return pd.DataFrame(
        rows, columns=["batch", "window", "days", "at_risk", "died", "dose", "incubator", "season", "keeper"]
    )


def test_what_machines_and_seasons_give_is_taken_out_of_the_dose():
    made = design(season(seasons=3))
    columns = nuisance(made)
    assert columns.shape[1] == 4 == np.linalg.matrix_rank(columns)  # level, machine, two seasons
    weight = RNG(1).uniform(1, 3, len(made.rows))
    left = projected(made.dose, columns, weight)
    assert columns.T @ (weight * left) == pytest.approx(np.zeros(4), abs=1e-9)


def test_the_spread_between_batches_is_learned():
    rng = RNG(3)
    eggs, share, batch = np.full(200, 40.0), np.full(200, 0.2), np.arange(200)
    for spread in (0.1, 0.8):
        hazard = -np.log(0.8) * np.exp(spread * rng.normal(size=200) - spread**2 / 2)
        weight = spread_weights(rng.binomial(40, 1 - np.exp(-hazard)).astype(float), eggs, share, batch)
        assert weight @ SPREADS == pytest.approx(spread, abs=0.12)


def test_one_small_season_can_show_a_large_harm():
    """Where exchange within two machines leaves so few ways that none could be rare."""
    found = [relate_counts(season(seed, 6.0), with_excess=False, detect=False) for seed in range(6)]
    assert all(one.test["smallest"] > 0.05 for one in found)
    assert sum(one.verdict == CLEAR for one in found) >= 3


def test_false_alarms_in_small_seasons_stay_near_five_in_a_hundred():
    rare = [redrawn(design(season(seed, bad=0.7)), draws=400, seed=seed)["more"] <= 0.048 for seed in range(300)]
    assert np.mean(rare) <= 0.08  # 4.8 % and what 300 seasons may add


def test_a_dose_that_is_one_machine_cannot_be_told():
    table = season()
    table["dose"] = (table["incubator"] == "m0").astype(float)
    assert np.isnan(redrawn(design(table))["more"]) and not redrawn(design(table))["apart"]
    told = foresee(design(table))
    assert told["why"] == "levels" and told["doubling"] == 0 and np.isinf(told["detectable"])


def test_what_could_have_been_seen_grows_with_the_seasons():
    one, three = (foresee(design(season(2, seasons=n))) for n in (1, 3))
    assert three["power"][1] > one["power"][1] and (np.diff(one["power"]) >= 0).all()
    assert one["why"] == "few_exposed" and 2 < three["detectable"] < one["detectable"]


def test_the_verdict_asks_both_tests_where_both_can_speak():
    base = dict(low=1.2, high=6.0, floor=1.3, power=0.3)
    assert verdict(drawn=0.03, more=0.3, smallest=0.2, **base)[0] == CLEAR  # exchange could never have been rare
    assert verdict(drawn=0.03, more=0.3, smallest=0.001, **base)[0] != CLEAR
    assert verdict(drawn=0.03, more=0.08, smallest=0.001, **base)[0] == CLEAR
    assert verdict(drawn=0.07, more=0.01, smallest=0.001, **base)[0] != CLEAR


def test_some_sign_needs_an_effect():
    assert "some" not in verdict(drawn=0.08, more=0.08, low=0.3, high=3.4, power=0.1)


def test_seasons_are_strata_of_the_exchange():
    made = design(season(seasons=2))
    assert len(set(made.strata)) == 4 and len(set(design(season()).strata)) == 2
