"""The season's calendar: where each batch lay, how it hatched, which spells it met."""

import sys
from dataclasses import replace
from pathlib import Path

import pandas as pd
import pytest

import hatchkit as hk
from hatchkit import reference
from hatchkit.advice import pictured
from hatchkit.advice.glance import SPELLS, glance

sys.path.insert(0, str(Path(__file__).parents[1] / "losses"))
from tiny_season import tiny_season


@pytest.fixture(scope="module")
def season(demo):
    return demo


@pytest.fixture(scope="module")
def calendar(season):
    return glance(season)


def test_every_batch_has_its_machine_its_time_and_its_hatch(season, calendar):
    table = calendar.batches.set_index("batch")
    assert len(table) == len(season.batches)
    assert table.at["H2", "machine"] == "A" and table.at["H2", "share"] == pytest.approx(17 / 48)
    assert (table["set_at"] < table["transfer_at"]).all() and (table["transfer_at"] < table["end_at"]).all()
    assert table["machine"].is_monotonic_increasing


def test_the_column_list_names_them(calendar):
    listed = reference.load("columns_advice")
    for name in ("batches", "spells"):
        assert list(getattr(calendar, name)) == list(listed.loc[listed["table"] == f"glance_{name}", "column"])


def test_batches_in_one_lane_do_not_overlap(calendar):
    for _, part in calendar.batches.groupby(["machine", "lane"]):
        assert (part["set_at"].iloc[1:].to_numpy() >= part["end_at"].iloc[:-1].to_numpy()).all()


def test_only_spells_worth_telling_are_there_once_each(season, calendar):
    found = hk.find_excursions(season)
    assert list(calendar.spells["event"]) == list(found.loc[found["notable"], "event"].drop_duplicates())
    assert list(calendar.spells.columns) == SPELLS
    facts = pictured.season_at_a_glance(calendar)
    assert (facts["spells"], facts["kind"], facts["machine"]) == (4, "cold", "A")
    assert (facts["worst"], facts["best"]) == ("H2", "H1")


def test_a_batch_that_is_not_over_has_no_share_and_a_season_without_a_log_has_a_calendar(season):
    done = dict(batch="1", eggs_set=20, day1=7, clear1=2, dead1=1, hatched=15)
    small = tiny_season([done, dict(batch="2", eggs_set=20, day1=7, taken_off_day=None)])
    calendar = glance(replace(small, readings=season.readings[:0]))
    table = calendar.batches.set_index("batch")
    assert table.at["1", "share"] == pytest.approx(15 / 20) and pd.isna(table.at["2", "share"])
    assert calendar.spells.empty and calendar.gaps.empty
    facts = pictured.season_at_a_glance(calendar)
    assert (facts["batches"], facts["ended"], facts["kind"]) == (2, 1, "none")


def test_a_season_without_batches_has_a_calendar(season):
    none = replace(season, batches=season.batches[:0], looks=season.looks[:0], fates=season.fates[:0])
    facts = pictured.season_at_a_glance(glance(none, found=hk.find_excursions(season)[:0]))
    assert facts["batches"] == 0 and facts["first"] is None
