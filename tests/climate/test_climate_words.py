"""Sentences and the tables behind pictures: plain words, units, how sure, and the published disagreement."""

import numpy as np
import pandas as pd
import pytest
from climate_seasons import bump, hour, opening, outage, readings, season, with_events

import hatchkit as hk
from hatchkit import reference
from hatchkit.climate import (
    clock,
    dose,
    excursions,
    harm_words,
    probes,
    ranges,
    thermometer_words,
    timeline,
    track,
    water_loss,
    words,
)

EVENTS = with_events(opening(100, 10), outage(200, 8, room=8), bump(290, 6, 5.0, rise=1))
HATCH = {"first_hatch_at": hour(490), "last_hatch_at": hour(512)}
LOOKS = pd.DataFrame(
    {"batch": "1", "look": [1, 2], "name": ["candle1", "transfer"], "looked_at": [hour(168), hour(432)]}
)


@pytest.fixture(scope="module")
def made():
    import dataclasses

    rows = readings(EVENTS)
    rows = rows[~rows["time"].between(hour(350), hour(365))]
    return dataclasses.replace(season(rows, [HATCH, HATCH | {"batch": "2", "set_at": hour(48)}]), looks=LOOKS)


@pytest.fixture(scope="module")
def found(made):
    return hk.find_excursions(made)


def row_like(found, word):
    return found[found["looks_like"] == word].iloc[0]


def test_a_heat_sentence_gives_level_source_and_the_disagreement(found):
    row = row_like(found, "overheating")
    text = words.excursion_words(row, timezone="Europe/Rome")
    assert "Ande & Wilson 1981" in text and "does not predict" in text
    assert "40.6 °C (105 °F) for 15 minutes" in text and "no major harm" in text
    assert "8 chances in 10" in text and "p =" not in text
    assert words.when(row["start"], "Europe/Rome") in text


def test_a_cold_sentence_gives_development_and_the_little_that_is_known(found):
    text = words.excursion_words(row_like(found, "outage"))
    assert "h of development" in text and "below 10 °C" in text and "17-day embryos" in text


@pytest.mark.parametrize("word", ["outage", "overheating"])
def test_degrees_fahrenheit_on_request_and_kelvin_never(found, word):
    row = row_like(found, word)
    for unit, other in (("F", "°C"), ("C", " K ")):
        text = words.excursion_words(row, unit=unit)
        assert other not in text and " K " not in text and f"°{unit}" in text
    fell = words.excursion_words(row_like(found, "outage"), unit="F")
    deepest = 37.5 - row_like(found, "outage")["extreme_c"]
    assert float(fell.split("fell ")[1].split()[0]) == pytest.approx(1.8 * deepest, abs=0.3)


def test_the_young_embryos_warning_in_fahrenheit():
    early = hk.find_excursions(season(readings(with_events(opening(60, 12))))).iloc[0]
    assert "by 14 °F in 10 minutes" in words.excursion_words(early, unit="F")
    assert "by 8 °C in 10 minutes" in words.excursion_words(early)


def test_how_far_out_is_said_and_no_code_is_shown(found):
    text = words.excursion_words(row_like(found, "outage"))
    assert "the air far too cold, at worst" in text and "level" not in text
    little = hk.find_excursions(season(readings(with_events(bump(200, 5, 0.8))))).iloc[0]
    assert "the air a little too warm" in words.excursion_words(little)
    hot = hk.find_excursions(
        season(readings(lambda hours: 39.0 + 0 * hours), settings={"incubators": {"A": {"air": "still"}}})
    ).iloc[0]
    assert "the estimated egg too warm in air of at most 39." in words.excursion_words(hot)


def test_a_machine_beside_its_range_is_told_with_what_is_wanted():
    made = season(
        readings(with_events(outage(259, 2.5, room=18), base=38.0)), settings={"incubators": {"A": {"air": "still"}}}
    )
    table = hk.find_excursions(made)
    assert table["looks_like"].tolist() == ["steady", "outage"]
    row = words.excursion_words(table.iloc[0])
    assert "18.0 days: it ran at about 38.0 °C, steadily 0.3 °C below" in row and "Looks like" not in row


def test_what_the_curve_does_not_tell_is_not_likened_to_anything():
    made = season(readings(with_events(opening(100, 25, back_h=0.5), bump(300, 5, 0.8)), step_min=30.0))
    table = hk.find_excursions(made)
    assert "Not clear from the curve: fell" in words.excursion_words(table.iloc[0])
    assert table["looks_like"].iloc[0] == "unclear"


def test_nothing_rounds_to_minus_nought_or_to_nought_times():
    row = clock.hatch_clock(season(batches=[HATCH])).iloc[0]
    text = words.clock_words(row.to_dict() | {"temperature_h": -0.2, "storage_h": 0.3, "difference_h": 0.2})
    assert "(± 11 h; usually day 20.8, storage 0 h, temperature 0 h) and came then: within" in text
    steady = probes.steadiness(season()).iloc[0].to_dict()
    assert "the log shows no opening." in thermometer_words.steadiness_words(steady)
    assert "opened less than once a month" in thermometer_words.steadiness_words(steady | {"openings_per_day": 0.02})
    assert "opened about 0.7 times a week" in thermometer_words.steadiness_words(steady | {"openings_per_day": 0.1})


def test_a_time_is_no_finer_than_its_doubt():
    stamp = pd.Timestamp("2026-04-19 06:17", tz="UTC")
    assert words.about(stamp, 14) == "19 Apr 06:00 (± 14 h"
    assert words.about(stamp, 53) == "19 Apr (± 2.2 days"
    assert words.about(pd.Timestamp("2026-03-29 00:50", tz="UTC"), 14, "Europe/Rome") == "29 Mar 03:00 (± 14 h"


def test_what_the_clock_does_not_know_is_not_nought():
    row = clock.hatch_clock(season(batches=[{"incubator": "Z", "stored_days": np.nan}])).iloc[0]
    assert "storage not known, temperature not known" in words.clock_words(row)


def test_the_clock_says_why_the_planner_names_another_hour():
    one = words.clock_season_words(clock.hatch_clock(season()))
    assert one.startswith("The one batch has no hatch times: 1.")
    assert "planner" not in one
    mixed = words.clock_season_words(clock.hatch_clock(season(batches=[HATCH, {"batch": "2"}])))
    assert "1 of 2 batches has no hatch times: 2." in mixed
    assert "4 h before the trade's day for hens" in mixed and "planner" in mixed


def test_the_two_kinds_of_unweighed_batches_are_told_apart():
    table = water_loss.batch_water_loss(season(batches=[{}, {"batch": "2", "incubator": "Z"}]))
    text = words.water_season_words(table)
    assert "Not weighed, so known only roughly, from shells of their kind: 1." in text
    assert "Not weighed, so not known: 2. Weigh one tray" in text


def test_early_openings_carry_the_young_embryos_warning():
    early, late = hk.find_excursions(season(readings(with_events(opening(60, 12), opening(300, 12))))).iloc
    assert "right under the shell" in words.excursion_words(early)
    assert "right under the shell" not in words.excursion_words(late)


def test_long_steps_are_said_to_miss_spikes():
    coarse, fine = (probes.steadiness(season(readings(step_min=step))).iloc[0] for step in (30.0, 5.0))
    assert "short spike may be missed" in thermometer_words.steadiness_words(coarse)
    assert "spike" not in thermometer_words.steadiness_words(fine)
    assert 0.5 < coarse["unseen_share"] < 0.7


def test_little_warmth_is_not_called_harm():
    row = hk.find_excursions(season(readings(with_events(bump(200, 5, 0.8))))).iloc[0]
    assert "Too little for the heat harm" in harm_words.heat_words(row)


def test_a_hole_within_an_excursion_is_said():
    rows = readings(with_events(bump(200, 3, 2.0)))
    rows = rows[~rows["time"].between(hour(201), hour(201.4))]
    text = words.excursion_words(hk.find_excursions(season(rows)).iloc[0])
    assert "what happened then is not known" in text


def test_everyday_openings_are_not_notable(found):
    assert not found.loc[found["looks_like"] == "opening", "notable"].any()
    assert found.loc[found["looks_like"] == "outage", "notable"].all()


def test_every_verdict_has_its_sentence(made):
    for row in [*clock.hatch_clock(made).iloc, *clock.hatch_clock(season(batches=[{"species": "dodo"}, {}])).iloc]:
        assert words.clock_words(row).startswith(f"Batch {row['batch']}:")
    late = clock.hatch_clock(season(batches=[{"first_hatch_at": hour(530), "last_hatch_at": hour(545)}])).iloc[0]
    assert "too high would explain it" in words.clock_words(late)
    for row in probes.probe_truth(made).iloc:
        assert "hatch times of 2 batches" in thermometer_words.probe_words(row)
    for row in probes.steadiness(made).iloc:
        text = thermometer_words.steadiness_words(row, unit="F")
        assert "%" in text and "°F" in text


def test_water_words_for_all_verdicts():
    def say(daily, spread=1e-5):
        eggs = [
            {
                "batch": "1",
                "egg": str(n),
                "weighed_at": hour(24 * day),
                "eggs_weighed": 1,
                "grams": 60 * (1 - (daily + spread * n) * day),
            }
            for n in range(-3, 4)
            for day in (0, 7, 14)
        ]
        return words.water_words(water_loss.batch_water_loss(season(weights=eggs)).iloc[0])

    assert "on target" in say(0.0066)
    assert "too much" in say(0.0085) and "%RH from the start" in say(0.0085)
    assert "too little" in say(0.0045)
    assert "cannot tell" in say(0.0059, 4e-4)
    assert "drier air than an incubator can make" in say(0.0020)
    assert "weigh some eggs" in words.water_words(water_loss.batch_water_loss(season()).iloc[0])


def test_the_timeline_holds_what_the_picture_shows(made, found):
    lines = timeline.incubator_timeline(made, "A", found=found)
    assert list(lines.batches["lane"]) == [0, 1]
    assert set(lines.spans["stage"]) == {"setting", "hatching"}
    assert len(lines.gaps) == 1 and (lines.gaps["end"] - lines.gaps["start"]).iloc[0] >= pd.Timedelta(hours=14.9)
    assert list(lines.looks["name"]) == ["candle1", "transfer"]
    hole = lines.air[lines.air["time"].between(hour(352), hour(363))]
    assert len(hole) > 5 and hole["middle_c"].isna().all()
    assert all(part["egg_c"].notna().any() and part["egg_c"].isna().iloc[-1] for _, part in lines.egg.groupby("batch"))
    assert lines.air["high_c"].max() > 42 and lines.air["low_c"].min() < 12
    text = words.timeline_alt(lines)
    assert "1 gap without" in text and "heating lost" in text and "outage" not in text


def test_the_timeline_of_an_incubator_without_batches(made):
    lines = timeline.incubator_timeline(season(readings(incubator="B")), "B")
    assert lines.batches.empty and lines.egg.empty and "0 batches" in words.timeline_alt(lines)


def test_close_up_shows_some_hours_either_side(made, found):
    row = row_like(found, "outage")
    part = timeline.close_up(made, row, hours=4)
    assert part["time"].min() >= row["start"] - pd.Timedelta(hours=4)
    assert part["time"].max() > row["end"] + pd.Timedelta(hours=3.8)
    assert str(row["event"]) in words.close_up_alt(row)


TABLES = reference.load("columns_climate")


def test_every_column_is_documented(made, found):
    loss = water_loss.batch_water_loss(made)
    met = track.batch_track(made, "1")
    tables = {
        "excursions": found,
        "track": met,
        "clock": clock.hatch_clock(made),
        "water_loss": loss,
        "probe_truth": probes.probe_truth(made),
        "steadiness": probes.steadiness(made),
        "state_of_time": excursions.state_of_time(met),
        "loss_points": water_loss.loss_points(made, "1"),
    }
    for name, table in tables.items():
        assert list(table) == list(TABLES.loc[TABLES["table"] == name, "column"]), name
    assert set(dose.window_dose(met, hour(0), hour(100))) == set(TABLES.loc[TABLES["table"] == "dose", "column"])


@pytest.mark.parametrize("name", ["ranges", "egg_physics", "heat_doses", "oxygen_uptake"])
def test_every_figure_has_its_source(name):
    table = reference.load(name)
    assert table["source"].str.len().gt(5).all() and table["sure"].notna().all()


def test_ranges_nest_and_cover_every_species():
    species_table = reference.species_table()
    for species, figures in species_table.iterrows():
        for stage in ("setting", "hatching"):
            for air in ("fan", "strong fan", "still", "egg"):
                limits = ranges.limits(figures, stage=stage, air=air)
                assert (np.diff(limits[:, 0]) < 0).all() and (np.diff(limits[:, 1]) > 0).all(), species


def test_common_settings_lie_in_the_hens_range():
    """37.7 degC setting and 37.2 degC hatching are common practice; 100 degF and 99.5 degF too."""
    hen = reference.species_table().loc["chicken"]
    setting, hatching = (ranges.limits(hen, stage=stage)[0] for stage in ("setting", "hatching"))
    for temp in (37.5, 37.7, 37.8):
        assert setting[0] <= temp <= setting[1]
    for temp in (36.9, 37.2, 37.5):
        assert hatching[0] <= temp <= hatching[1]
