"""When the eggs go in: read as a sheet is read, not in the past unasked; what is no time gets one plain sentence."""

import dataclasses
import datetime as dt

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice.plan import next_set, own_hatch
from hatchkit.advice.set_time import set_time_noted
from hatchkit.problems import HatchkitError
from hatchkit.simulate.seasons import draw_season
from hatchkit.usual.beta_binomial import MOST_EGGS, MU, RHO, eggs_learned, learn

TODAY = "2026-11-26 09:00"


@pytest.fixture(scope="module")
def season():
    drawn = draw_season(seed=71_500, cause="none", batches=4, step_minutes=60)[0]
    return dataclasses.replace(drawn, timezone="Europe/London", settings={})


@pytest.mark.parametrize(("text", "message"), [
    ("gestern", "is not a date"), ("2027-02-30", "is not a date"), ("5", "is not a date"), ("nat", "is not a date"),
    ("46000", "is not a date"), ("1066-01-01", "a year that cannot be right"), ("3 April", "has no year"),
    ("2027-03-28T01:30", "never comes in Europe/London"), ("2027-10-31T01:30", "comes twice in Europe/London"),
    ("04/05/2027", "can be 4 May or 5 April: write 2027-05-04 or 2027-04-05"), ("2027-04-03T18:00+99:00", "no"),
    (pd.NaT, "no time to set eggs"), (object(), "no time to set eggs"), (pd.Timestamp("1800-01-01"), "no time to set"),
])  # fmt: skip
def test_what_is_no_time_gets_one_plain_sentence(season, text, message):
    with pytest.raises(HatchkitError, match=message) as told:
        set_time_noted(season, text, today=TODAY)
    assert "\n" not in str(told.value)


@pytest.mark.parametrize(("text", "wall"), [
    ("04.05.2027", "2027-05-04 12:00"), ("13/05/2027 7pm", "2027-05-13 19:00"),
    ("2027-04-03T18:00", "2027-04-03 18:00"),
    ("4 May 2027", "2027-05-04 12:00"), ("2027-04-03T18:00+02:00", "2027-04-03 17:00"),
    (dt.date(2027, 5, 4), "2027-05-04 12:00"), (dt.datetime(2027, 5, 4, 6, 30), "2027-05-04 06:30"),
    (pd.Timestamp("2027-05-04 06:30", tz="UTC"), "2027-05-04 07:30"),
])  # fmt: skip
def test_times_are_read_as_the_sheets_are(season, text, wall):
    when, _ = set_time_noted(season, text, today=TODAY)
    assert when == pd.Timestamp(wall, tz="Europe/London")


def test_the_order_of_day_and_month_is_the_seasons(season):
    american = dataclasses.replace(season, settings={"sheets": {"day_first": False}})
    assert set_time_noted(american, "04/05/2027", today=TODAY)[0].month == 4
    british = dataclasses.replace(season, settings={"sheets": {"day_first": True}})
    assert set_time_noted(british, "04/05/2027", today=TODAY)[0].month == 5


def test_what_is_assumed_is_said(season):
    assert set_time_noted(season, "2027-05-04", today=TODAY)[1] == [("no_hour", {})]
    assert set_time_noted(season, "2020-05-04 18:00", today=TODAY)[1] == [("passed", {})]
    plan = next_set(season, "hen", 10, set_at="2027-05-04", today=TODAY)
    assert "Eggs in on 4 May 2027 at 12:00 (no hour was given, so noon is taken, as in the sheets)" in plan.words()


def test_the_day_that_nobody_named_lies_ahead(season):
    hen = reference.species("chicken")
    when, why = set_time_noted(season, species=hen, today=TODAY)
    assert when == pd.Timestamp("2026-12-03 18:00", tz="Europe/London") and why == [("collect", {"days": 7})]
    blank = dataclasses.replace(season, batches=season.batches.iloc[:0])
    assert set_time_noted(blank, species=hen, today=TODAY)[0] == when


def test_a_batch_still_in_the_machine_comes_out_first(season):
    rows = season.batches.copy()
    rows["set_at"] = pd.Timestamp("2026-11-25 18:00", tz="UTC")
    rows["taken_off_at"] = pd.Series(pd.NaT, index=rows.index).dt.tz_localize("UTC")
    busy = dataclasses.replace(season, batches=rows)
    when, why = set_time_noted(busy, species=reference.species("chicken"), today=TODAY)
    assert when == pd.Timestamp("2026-12-18 18:00", tz="Europe/London") and why == [("free", {})]


def test_a_million_chicks_are_answered_at_once(season):
    assert eggs_learned(learn([], [], 0.7, 0.15), 1_000_000, sure=0.9) is None
    weight = np.zeros((len(MU), len(RHO)))
    weight[-1, 0] = 1.0
    assert eggs_learned(weight, MOST_EGGS, sure=0.5) is None
    assert eggs_learned(weight, MOST_EGGS - 100, sure=0.5) <= MOST_EGGS
    assert "1,000,000 chicks" in next_set(season, "hen", 1_000_000, today=TODAY).words()


def test_batches_left_out_of_rates_are_left_out_of_the_plan(season):
    name = str(season.batches["batch"].iloc[0])
    fates = season.fates[season.fates["batch"] != name]
    whole = pd.DataFrame([dict(batch=name, egg="", eggs=40.0, fate="unaccounted", after_day=0.0)])
    batches = season.batches.assign(hatched=season.batches["hatched"].mask(season.batches["batch"] == name, 99))
    lost = dataclasses.replace(season, batches=batches, fates=pd.concat([fates, whole], ignore_index=True))
    assert name in set(own_hatch(season, "chicken")["batch"])
    assert name not in set(own_hatch(lost, "chicken")["batch"])
    assert (
        f"Batch {name} is left out: the records contradict themselves."
        in next_set(lost, "hen", 10, today=TODAY).words()
    )


def test_the_words_do_not_speak_of_batches_that_are_not_there(season):
    none = next_set(season, "quail", 10, today=TODAY).words()
    assert "yours did" not in none and "nothing can be said of your settings" in none
    one = dataclasses.replace(season, batches=season.batches.iloc[:1])
    said = next_set(one, "hen", 10, today=TODAY).words()
    assert "1 own batch (" in said and "one batch shows no spread" in said and "last 1 batches" not in said


def test_one_disaster_that_drives_the_number_is_named(season):
    rows = season.batches.copy()
    rows[["hatched", "culled"]] = rows[["hatched", "culled"]].astype("Int64")
    rows.loc[0, ["hatched", "culled"]] = [2, 0]
    struck = dataclasses.replace(season, batches=rows)
    said = next_set(struck, "hen", 20, today=TODAY).words()
    assert f"One batch drives this number: without {rows['batch'].iloc[0]} (2 good chicks of" in said
    assert "drives this number" not in next_set(season, "hen", 20, today=TODAY).words()


def test_what_to_write_down_is_an_instruction(season):
    bare = dataclasses.replace(season, readings=season.readings.iloc[:0], weights=season.weights.iloc[:0])
    told = next_set(bare, "hen", 10, today=TODAY).changes
    needs = [facts["need"] for facts in told.loc[told["change"] == "record", "facts"]]
    assert needs and not any(
        word in need for need in needs for word in ("two batches or more", "temperature", "humidity")
    )
    assert "no_log" in set(told["change"])


def test_the_plan_says_that_the_clock_puts_the_middle_earlier(season):
    facts = next_set(season, "hen", 10, today=TODAY).calendar.set_index("step").at["first_hatch", "facts"]
    assert round(facts["earlier_h"]) == 4
