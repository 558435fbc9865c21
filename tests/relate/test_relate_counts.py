"""relate_counts: the verdict on tables of counts, also on those that no model can take."""

import re

import numpy as np
import pandas as pd
import pytest

from hatchkit.findings import more_relate
from hatchkit.pages.parts import said
from hatchkit.relate.design import design
from hatchkit.relate.hazard import relate_counts

QUICK = dict(detect=False, with_excess=False)


def codes(found):
    """What is told of it, by code."""
    return [one.code for one in more_relate.counts(found)]


def season(batches=20, exposed=5, *, eggs=48, ratio=1.0, base=0.02, spread=0.4, windows=1, seed=1, **more):
    """A made season: a quarter of the batches exposed in one window each."""
    rng = np.random.default_rng(seed)
    rows = []
    for batch in range(batches):
        effect, left, hit = spread * rng.normal(), eggs, rng.integers(windows)
        for window in range(windows):
            dose = float(batch < exposed and window == hit)
            share = -np.expm1(-np.exp(np.log(-np.log1p(-base)) + effect + np.log(ratio) * dose))
            died = rng.binomial(left, share)
            rows.append((f"b{batch}", window + 1, 7.0, left, died, dose))
            left -= died
    return pd.DataFrame(rows, columns=["batch", "window", "days", "at_risk", "died", "dose"]).assign(**more)


def test_a_sixfold_hazard_in_a_quarter_of_twenty_batches_is_a_clear_sign():
    found = relate_counts(season(ratio=6.0))
    assert found.verdict == "clear sign"
    assert found.effect["low"] > 1 < found.effect["hazard_ratio"]
    total = found.excess.iloc[-1]
    assert total["excess_low"] > 0
    assert total["excess"] == pytest.approx(total["observed"] - total["expected"])
    assert codes(found)[:2] == ["relate_clear_sign", "relate_size"]


def test_a_clear_sign_in_small_records_says_that_the_true_difference_is_probably_smaller():
    small = relate_counts(season(12, 3, ratio=8.0, base=0.05, spread=0.2))
    large = relate_counts(season(60, 20, eggs=150, ratio=3.0, base=0.05, spread=0.1, seed=2))
    assert small.verdict == large.verdict == "clear sign"
    assert small.detectable["doubling"] < 0.5 < large.detectable["doubling"]
    assert "relate_winner" in codes(small) and "relate_winner" not in codes(large)


def test_no_effect_in_a_large_season_says_that_a_doubling_would_have_shown():
    found = relate_counts(season(60, 20, eggs=150, base=0.05, spread=0.1, seed=2))
    assert found.verdict == "no sign"
    assert found.detectable["doubling"] >= 0.8 and found.detectable["detectable"] < 2


def test_a_small_season_says_how_often_it_would_have_missed_a_doubling():
    found = relate_counts(season(8, 2, seed=3))
    assert found.verdict == "cannot tell" and found.because["missed"] >= 8


def test_false_alarms_of_a_middling_season_stay_rare():
    said = [relate_counts(season(12, 3, seed=seed, base=0.05), **QUICK).verdict for seed in range(60)]
    assert said.count("clear sign") <= 5  # at a true 5 % more than 5 of 60 come in 8 of 100 runs


def test_a_threefold_hazard_is_found_in_most_seasons_of_40_batches():
    said = [relate_counts(season(40, 10, ratio=3.0, seed=seed, base=0.03), **QUICK).verdict for seed in range(15)]
    assert said.count("clear sign") >= 12


def test_intervals_hold_the_truth_in_nearly_all_small_seasons():
    held = []
    for seed in range(25):
        effect = relate_counts(season(8, 2, ratio=3.0, seed=seed, base=0.05), **QUICK).effect
        held.append(effect["low"] <= 3.0 <= effect["high"])
    assert np.mean(held) >= 0.9


def test_when_one_incubator_had_all_the_exposure_the_two_cannot_be_told_apart():
    table = season(20, 5, ratio=6.0)
    table["incubator"] = np.where(table["dose"] > 0, "A", "B")
    found = relate_counts(table)
    assert (found.verdict, found.because) == ("not apart", dict(factor="incubator"))
    assert "relate_one_sided" in codes(found)


def test_exposure_within_incubators_is_compared_within_them():
    table = season(24, 6, ratio=6.0)
    table["incubator"] = np.where(np.arange(24) % 2 == 0, "A", "B")
    found = relate_counts(table)
    assert found.verdict == "clear sign"
    assert found.adjusted == ["incubator"]


def test_storage_that_goes_with_exposure_is_said_aloud():
    table = season(20, 5, ratio=6.0)
    table["stored_days"] = np.where(table["dose"] > 0, 14.0, 4.0)
    found = relate_counts(table)
    assert (found.verdict, found.because) == ("not apart", dict(factor="stored_days"))
    assert "relate_exact" in codes(found)


def degenerate():
    base = season(20, 5, ratio=3.0)
    return {
        "all doses equal": base.assign(dose=2.0),
        "no dose at all": base.assign(dose=0.0),
        "no deaths": base.assign(died=0),
        "all dead": base.assign(died=base["at_risk"]),
        "all exposed dead": base.assign(died=np.where(base["dose"] > 0, base["at_risk"], 0)),
        "one batch": base.iloc[:1],
        "one batch, three windows": season(1, 1, windows=3),
        "nothing logged": base.assign(dose=np.nan),
        "a single exposed batch": season(12, 1, ratio=5.0),
        "two batches": base.iloc[[0, 10]],
        "no rows": base.iloc[:0],
        "nothing counted": base.assign(died=np.nan),
        "more dead than eggs": base.assign(died=99),
        "no eggs": base.assign(at_risk=0, died=0),
        "no days": base.assign(days=np.nan),
        "half logged": base.assign(dose=np.where(np.arange(20) % 2, np.nan, base["dose"])),
        "each batch its own incubator": base.assign(incubator=base["batch"]),
        "each batch its own species": base.assign(species=base["batch"]),
        "one incubator": base.assign(incubator="A"),
        "deaths only unexposed": base.assign(died=np.where(base["dose"] > 0, 0, 2)),
        "one egg a batch": base.assign(at_risk=1, died=np.arange(20) % 2),
        "whole numbers with missing": base.assign(died=base["died"].astype("Int64").where(base.index != 3)),
    }


@pytest.mark.parametrize("name", list(degenerate()))
def test_degenerate_seasons_give_a_verdict_in_words_and_no_exception(name):
    found = relate_counts(degenerate()[name])
    assert found.verdict
    for language in ("en", "de"):
        words = " ".join(said(one, language, "C") for one in more_relate.counts(found))
        assert words.endswith(".") and not {"nan", "inf", "none"} & set(re.findall(r"\w+", words))
    if name not in (
        "half logged",
        "each batch its own incubator",
        "one incubator",
        "whole numbers with missing",
        "all exposed dead",
        "one egg a batch",
    ):
        assert found.verdict in ("cannot tell", "not apart", "no sign"), found.verdict


def test_a_missing_column_is_named():
    with pytest.raises(ValueError, match="at_risk, dose"):
        relate_counts(season().drop(columns=["at_risk", "dose"]))


def test_rows_left_out_are_counted_with_the_reason():
    table = season(20, 5)
    table.loc[0, "died"] = 99
    table.loc[1, "at_risk"] = np.nan
    found = relate_counts(table, **QUICK)
    assert sorted(found.left_out["why"]) == ["not_counted", "too_many_dead"]
    assert codes(found).count("relate_left_out") == 2


def test_the_order_of_rows_does_not_matter():
    table = season(20, 5, ratio=3.0, windows=3)
    one, other = relate_counts(table), relate_counts(table.sample(frac=1, random_state=3))
    assert one.verdict == other.verdict
    assert one.effect["hazard_ratio"] == pytest.approx(other.effect["hazard_ratio"], rel=1e-9)
    assert one.test["more"] == pytest.approx(other.test["more"], abs=0.01)


def test_the_unit_of_the_dose_does_not_matter():
    table = season(20, 5, ratio=3.0, windows=2)
    one, other = relate_counts(table), relate_counts(table.assign(dose=60 * table["dose"]))
    assert one.effect["hazard_ratio"] == pytest.approx(other.effect["hazard_ratio"], rel=1e-9)
    assert other.step == pytest.approx(60 * one.step)


def test_histories_are_exchanged_only_between_batches_with_the_same_looks():
    table = season(12, 4, windows=3, seed=4)
    lost = (table["window"] == 2) & table["batch"].isin(["b0", "b5", "b9"]) | (table["window"] == 3) & (
        table["batch"] == "b7"
    )
    pools = design(table[~lost]).pools
    batches = design(table[~lost]).batches
    alike = {batch: pool for batch, pool in zip(batches, pools, strict=True)}
    assert alike["b0"] == alike["b5"] == alike["b9"] != alike["b1"]
    assert alike["b7"].endswith("mixed") and list(pools).count(alike["b7"]) == 1
    assert len({alike[f"b{i}"] for i in (1, 2, 3, 4, 6, 8, 10, 11)}) == 1
