"""Likely causes on seasons with a known answer, and on odd ones."""

import dataclasses

import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.advice.causes import TIE, likely_causes, season_causes
from hatchkit.advice.poor_hatch import poorest_batch, standing
from hatchkit.advice.tally import tally
from hatchkit.problems import HatchkitError
from hatchkit.simulate.seasons import draw_season

SEED = 71_000


@pytest.fixture(scope="module")
def humid():
    return draw_season(seed=SEED + 8, cause="humidity_high")


@pytest.fixture(scope="module")
def humid_causes(humid):
    season, answer = humid
    return likely_causes(season, answer.batch)


@pytest.mark.parametrize(
    ("planted", "meant"),
    [
        ("dry_hatch", "dry_hatch"),
        ("probe_low", "warm_throughout"),
        ("humidity_low", "too_dry"),
        ("contaminated", "contamination"),
        ("drift_cool", "cold_spell"),
        ("overheating", "heat_spell"),
    ],
)
def test_a_severe_planted_cause_is_among_the_first_three(planted, meant):
    season, answer = draw_season(seed=SEED, cause=planted)
    table = likely_causes(season, answer.batch).table
    assert meant in set(table["cause"].head(3))


def test_the_humid_batch_is_told_with_reason_doubt_and_what_to_do(humid_causes):
    first = humid_causes.table.iloc[0]
    assert first["cause"] == "too_humid"
    assert "rh_set" in {facts["item"] for code, facts in first["fits"] if code == "item"}
    assert ("limit_probe", {}) in humid_causes.limits


def test_a_season_without_a_cause_gets_no_confident_verdict():
    season, answer = draw_season(seed=SEED + 1, cause="none")
    assert likely_causes(season, answer.batch).verdict != "confident"


def test_the_arithmetic_adds_up_to_the_share(humid_causes):
    table = humid_causes.table
    products = {}
    for cause in table["cause"]:
        rows = humid_causes.arithmetic(cause)
        ways = rows.groupby("variant")
        products[cause] = (ways["chance"].first() * ways["factor"].prod()).sum()
    weight = table.set_index("cause")["prior"] * pd.Series(products)
    assert (weight / weight.sum()).reindex(table["cause"]).to_numpy() == pytest.approx(table["share"].to_numpy())


def test_shares_add_up_and_ties_stay_ties(humid_causes):
    table = humid_causes.table
    assert table["share"].sum() == pytest.approx(1)
    assert (table["tied"] == (table["share"] * TIE >= table["share"].iloc[0])).all()
    assert {"bad_luck", "unlisted"} <= set(table["cause"])


def test_what_was_not_kept_is_named_and_weighs_nothing(humid):
    season, answer = humid
    bare = dataclasses.replace(season, weights=season.weights.iloc[:0], readings=season.readings.iloc[:0])
    told = likely_causes(bare, answer.batch)
    rows = told.arithmetic("too_humid")
    assert (rows.loc[rows["found"] == "not known", "factor"] == 1).all()
    line = told.table.set_index("cause").loc["too_humid"]
    assert {("lacking", "water_loss"), ("lacking", "rh_set")} <= {
        (code, facts["item"]) for code, facts in line["unknown"]
    }
    assert ("limit_no_log", {}) in told.limits


def test_the_seal_is_not_read(humid):
    season, answer = humid
    renamed = dataclasses.replace(season, title="other", settings={**season.settings, "title": "other"})
    first, second = likely_causes(season, answer.batch), likely_causes(renamed, answer.batch)
    pd.testing.assert_frame_equal(first.table, second.table)


def test_a_checked_probe_lifts_the_limit(humid):
    season, answer = humid
    machines = {name: {**item, "probe_offset_c": 0.0} for name, item in season.settings["incubators"].items()}
    checked = dataclasses.replace(season, settings={**season.settings, "incubators": machines})
    assert ("limit_probe", {}) not in likely_causes(checked, answer.batch).limits


def test_stage_counts_hold_every_egg_of_a_finished_batch(humid):
    season, _ = humid
    counts = tally(season).counts
    loose = season.fates[season.fates["fate"] == "unaccounted"].groupby("batch")["eggs"].sum()
    eggs = season.batches.set_index("batch")["eggs_set"].astype(float)
    assert counts.sum(axis=1).to_numpy() == pytest.approx((eggs - loose.reindex(eggs.index).fillna(0)).to_numpy())


def test_poorest_batch_is_the_one_furthest_below(humid):
    season, _ = humid
    table = standing(season)
    assert poorest_batch(season) == table["batch"].iloc[0]
    assert table[["away", "away_of_set"]].min(axis=1).is_monotonic_increasing


def test_unknown_and_unfinished_batches_get_a_sentence(humid):
    season, answer = humid
    with pytest.raises(HatchkitError, match="There is no batch"):
        likely_causes(season, "nowhere")
    blank = season.batches.copy()
    counts = [
        "hatched",
        "culled",
        "pipped_dead",
        "dead_in_shell",
        "clear1",
        "dead1",
        "clear2",
        "dead2",
        "clear3",
        "dead3",
    ]
    blank.loc[blank["batch"] == answer.batch, counts] = pd.NA
    fates = season.fates[season.fates["batch"] != answer.batch]
    with pytest.raises(HatchkitError, match="Nothing is known of how batch"):
        likely_causes(dataclasses.replace(season, batches=blank, fates=fates), answer.batch)


def test_the_face_of_the_kit_leads_here():
    assert hk.likely_causes is likely_causes


def test_season_causes_agree_with_the_single_question(humid, humid_causes):
    season, answer = humid
    every = season_causes(season)
    pd.testing.assert_frame_equal(every[answer.batch].table, humid_causes.table)
    assert set(every) == set(season.batches["batch"])
