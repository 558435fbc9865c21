"""A split trial: drawn by lot within sets and blocks, judged by its own plan."""

import numpy as np
import pandas as pd
import pytest
from statsmodels.stats.contingency_tables import StratifiedTable

import hatchkit as hk
from hatchkit.say.trial import plan_words, result_words
from hatchkit.trials import sheet
from hatchkit.trials.analysis import analyse, chance_of, risk_difference
from hatchkit.trials.plan import eggs_needed


@pytest.fixture(scope="module")
def plan():
    return hk.trial(arms=("by hand", "by machine"), eggs=40, blocks={"hen 1": 13, "hen 2": 27}, sets=6, seed=5)


def filled(plan, shares, seed=1):
    rng = np.random.default_rng(seed)
    share = plan.sheet["arm"].map(dict(zip(plan.arms, shares, strict=True)))
    return plan.sheet.assign(result=np.where(rng.random(len(share)) < share, "hatched", "dead"))


def test_every_set_and_block_is_split_in_halves(plan):
    counts = plan.sheet.groupby(["set", "block", "arm"]).size().unstack()
    assert (counts.max(axis=1) - counts.min(axis=1) <= 1).all() and len(plan.sheet) == 240
    assert (counts.loc[(slice(None), "hen 2"), :].sum(axis=1) == 27).all()


def test_the_lot_is_drawn_anew_for_another_seed_and_the_same_for_the_same():
    def drawn(seed):
        return hk.trial(eggs=20, sets=3, seed=seed).sheet["arm"].tolist()

    assert drawn(1) == drawn(1) != drawn(2)


def test_eggs_needed_are_those_of_the_textbook():
    """0.7 against 0.8 at 5 % and 80 %: 293 to 294 in each group (usual tables without correction for continuity)."""
    assert eggs_needed(0.7, 0.1) in (290, 291, 292, 293, 294)


def test_the_plan_takes_what_is_usual_from_the_keepers_own_years(demo_years):
    season = demo_years
    own = hk.trial(season, outcome="fertility", seed=1, sets=2)
    share = (
        1 - season.fates[season.fates["fate"].isin(["clear", "infertile"])]["eggs"].sum() / season.fates["eggs"].sum()
    )
    assert (
        own.usual == pytest.approx(share, abs=0.02) and own.usual != hk.trial(outcome="fertility", seed=1, sets=2).usual
    )


def test_a_large_difference_is_found_and_none_is_not(plan):
    found = analyse(plan, filled(plan, (0.55, 0.85)))
    assert found.verdict == "better" and found.low > 0 and found.chance < 0.001
    assert "did better" in result_words(found)
    none = analyse(plan, filled(plan, (0.7, 0.7), seed=3))
    assert none.verdict == "not_told" and none.low < 0 < none.high
    assert "No difference" in result_words(none) and "8" in plan_words(plan)


def test_false_alarms_of_the_analysis_are_at_most_five_in_a_hundred(plan):
    rng = np.random.default_rng(4)
    new = (plan.sheet["arm"] == plan.arms[1]).to_numpy()
    strata = (plan.sheet["set"].astype(str) + plan.sheet["block"]).to_numpy()
    found = 0
    for _ in range(400):
        level = rng.normal(0.8, 0.8, 7)[plan.sheet["set"]]
        good = rng.random(240) < 1 / (1 + np.exp(-level))
        found += chance_of(good, new, strata, draws=199, seed=int(rng.integers(1e9))) <= 0.05
    assert found <= 31  # 5 % of 400, and what chance adds to it (one-sided 99 %)


def test_the_chance_is_that_of_fishers_exact_test_in_one_set():
    from scipy.stats import hypergeom

    good = np.r_[np.ones(9), np.zeros(3), np.ones(4), np.zeros(8)].astype(bool)
    new = np.arange(24) < 12
    exact = sum(p for k in range(13) if abs(k - 6.5) >= 2.5 - 1e-9 for p in [hypergeom.pmf(k, 24, 13, 12)])
    assert chance_of(good, new, np.zeros(24), draws=40_000) == pytest.approx(exact, abs=0.01)


def test_the_difference_beside_a_librarys_stratified_table():
    rng = np.random.default_rng(2)
    strata, new = np.repeat(np.arange(5), 60), np.tile([True, False], 150)
    good = rng.random(300) < np.where(new, 0.75, 0.6)
    tables = [
        np.array([[((strata == s) & (new == a) & (good == g)).sum() for g in (True, False)] for a in (True, False)])
        for s in range(5)
    ]
    library = StratifiedTable(tables)
    difference, low, high = risk_difference(good, new, strata)
    assert difference == pytest.approx(good[new].mean() - good[~new].mean(), abs=0.01)
    assert (low > 0) == (library.oddsratio_pooled_confint()[0] > 1) and high - low == pytest.approx(0.21, abs=0.02)


def test_plan_and_sheet_come_back_from_the_folder(plan, tmp_path):
    paths = sheet.save(plan, tmp_path / "trial")
    again, empty = sheet.load(tmp_path / "trial")
    assert again.sheet.equals(plan.sheet) and (empty["result"].astype(str) == "").all()
    table = pd.read_csv(paths[1], dtype=str)
    table["Result"] = filled(plan, (0.5, 0.9))["result"]
    table.loc[0, "Result"] = "eaten by a fox"
    table.loc[1, "Arm"] = next(arm for arm in plan.arms if arm != table.loc[1, "Arm"])
    table.to_csv(paths[1], index=False)
    found = analyse(*sheet.load(tmp_path / "trial"))
    assert found.verdict == "better" and found.unread == 1 and found.moved == 1
    with pytest.raises(hk.HatchkitError, match="holds something"):
        sheet.save(plan, tmp_path / "trial")


@pytest.mark.parametrize(
    "asked",
    [
        dict(arms=("a", "a")),
        dict(outcome="weight"),
        dict(difference=0.9),
        dict(eggs=2),
        dict(eggs=40, blocks={"hen": 3}),
    ],
)
def test_what_cannot_be_planned_is_one_sentence(asked):
    with pytest.raises(hk.HatchkitError):
        hk.trial(**asked)


def test_the_command_plans_and_judges(tmp_path, capsys):
    from hatchkit.cli import main

    assert (
        main(
            [
                "trial",
                "demo-years",
                "--compare",
                "as before",
                "twice a day",
                "--sets",
                "2",
                "--save",
                str(tmp_path / "t"),
            ]
        )
        == 0
    )
    assert "Split trial" in capsys.readouterr().out
    assert main(["trial", str(tmp_path / "t")]) == 0
    assert "Too few" in capsys.readouterr().out
