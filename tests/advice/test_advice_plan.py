"""The plan for the next set, its changes, its sheet and its calendar."""

import dataclasses

import icalendar
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import dates
from hatchkit.advice.plan import next_set, own_hatch, published_level
from hatchkit.advice.what_to_change import changes
from hatchkit.pages.next_set import save_next_set
from hatchkit.problems import HatchkitError
from hatchkit.say import plan as words
from hatchkit.simulate.seasons import draw_season
from hatchkit.usual import beta_binomial as predictive


@pytest.fixture(scope="module")
def season():
    return draw_season(seed=71_500, cause="none", batches=4, step_minutes=60)[0]


@pytest.fixture(scope="module")
def plan(season):
    return next_set(season, "hen", 20, sure=0.9, set_at="2026-03-20 18:00")


def test_the_plan_is_the_smallest_set_that_is_sure_enough(season, plan):
    own, level = own_hatch(season, "chicken"), published_level("chicken")
    weight = predictive.learn(own["hatched"], own["eggs_set"], level["share_of_set"], level["sd"])
    eggs = int(plan.eggs.set_index("sure").loc[0.9, "eggs"])
    assert predictive.chance_learned(weight, 20, eggs) >= 0.9 > predictive.chance_learned(weight, 20, eggs - 1)


def test_more_sureness_needs_more_eggs(plan):
    assert plan.eggs["eggs"].is_monotonic_increasing
    assert (plan.eggs["chance"] >= plan.eggs["sure"] - 1e-9).all()


def test_the_words_name_eggs_basis_and_dates_without_stray_decimals(plan):
    said = plan.words()
    assert "good chicks 9 times in 10" in said
    assert "4 own batches" in said and "published level of 70 %" in said
    assert "20 March 2026 at 18:00" in said
    assert ".0 hen" not in said


def test_hours_stay_true_when_the_clocks_change(plan):
    # Europe/Rome goes to summer time on 29 March 2026: 18 days of 24 h after 18:00 is 19:00 on the wall.
    steps = plan.calendar.set_index("step")["starts"]
    assert steps["transfer"] - steps["set"] == pd.Timedelta(days=18)
    assert steps["transfer"].hour == 19


def test_the_calendar_starts_with_collecting_and_ends_with_opening(plan):
    assert plan.calendar["step"].iloc[0] == "collect" and plan.calendar["step"].iloc[-1] == "open_unhatched"
    assert plan.calendar["starts"].is_monotonic_increasing
    assert plan.calendar[["source", "sure"]].notna().all(axis=None)
    for language in ("en", "de", "fr", "es"):
        assert all(words.step(row, language) and words.why(row, language) for row in plan.calendar.to_dict("records"))


def test_long_storage_makes_the_hatch_later():

    hen = reference.species("chicken")
    assert dates.hatch_middle_days(hen, 15) - dates.hatch_middle_days(hen, 3) == pytest.approx(0.5)


def test_saved_files_are_a_calendar_and_a_page(plan, tmp_path):
    calendar, page = save_next_set(plan, tmp_path / "plan")
    events = list(icalendar.Calendar.from_ical(calendar.read_bytes()).walk("VEVENT"))
    assert len(events) == len(plan.calendar)
    text = page.read_text(encoding="utf-8")
    assert text.startswith("<!DOCTYPE html>") and "Take care" in text and "://" not in text
    assert b"\r\n" in calendar.read_bytes()


def test_the_same_plan_gives_the_same_calendar(plan):
    stamp = pd.Timestamp("2026-03-01", tz="UTC")
    assert plan.ics(stamp=stamp) == plan.ics(stamp=stamp)


def test_changes_have_reason_and_sureness(plan):
    assert plan.changes["change"].str.startswith("probe").any()
    for language in ("en", "de", "fr", "es"):
        for told in words.changes(plan.changes, language):
            assert set(told) == {"what", "now", "to", "why", "how_sure"} and all(told.values())


def test_a_probe_that_the_eggs_contradict_is_the_first_change():
    season, answer = draw_season(seed=71_501, cause="probe_high", batches=6, step_minutes=60, severity="moderate")
    machine = season.batch(answer.batch)["incubator"]
    told = next_set(season, "hen", 20).changes
    first = told.loc[told["change"] == "probe_off", "facts"].iloc[0]
    assert (first["machine"], first["way"]) == (machine, "high") and first["off"] > 0


def test_no_own_batch_of_a_species_rests_on_the_published_level(season):
    plan = next_set(season, "quail", 10, set_at="2026-03-20 18:00")
    assert plan.basis["batches"] == 0
    assert "no own batch of this species" in plan.words()


def test_a_wish_that_one_set_cannot_meet_is_said():
    plan_like = type("Plan", (), {})()
    plan_like.basis = dict(sure=0.9, chicks=4999, name="hen", most_eggs=predictive.MOST_EGGS)
    plan_like.eggs = pd.DataFrame({"sure": [0.9], "eggs": pd.array([None], dtype="Int64")})
    assert "cannot be planned in one set" in words.eggs_to_set(plan_like)
    assert predictive.eggs_learned(predictive.learn([], [], 0.5, 0.1), 4999, sure=0.99) is None


@pytest.mark.parametrize(
    ("arguments", "code"),
    [
        (dict(species="dodo"), "not_one_of"),
        (dict(chicks=0), "whole_number"),
        (dict(chicks=2.5), "whole_number"),
        (dict(sure=1.0), "plan_sure"),
        (dict(sure=0), "plan_sure"),
    ],
)
def test_wrong_wishes_get_a_sentence(season, arguments, code):
    with pytest.raises(HatchkitError) as refusal:
        next_set(season, **{"species": "hen", "chicks": 10, **arguments})
    assert refusal.value.code == code


def test_an_empty_season_can_still_plan(season):
    bare = dataclasses.replace(
        season,
        batches=season.batches.iloc[:0],
        readings=season.readings.iloc[:0],
        fates=season.fates.iloc[:0],
        looks=season.looks.iloc[:0],
    )
    plan = next_set(bare, "hen", 12, set_at="2026-03-20 18:00")
    assert plan.changes.empty
    assert int(plan.eggs["eggs"].iloc[0]) > 12
    with pytest.raises(HatchkitError, match="say which species"):
        next_set(bare)


def test_opening_the_lid_and_setting_are_no_accidents_to_candle_after(demo):
    """The demo's deep readings of quail and hens before a look are all openings, or eggs going in."""
    for species in ("chicken", "quail"):
        assert "candling" not in set(changes(demo, species)["change"])
