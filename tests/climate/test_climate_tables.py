"""What is told of the climate and the tables behind pictures: units, how sure, and the published disagreement."""

import numpy as np
import pandas as pd
import pytest
from climate_seasons import bump, hour, opening, outage, readings, season, with_events

import hatchkit as hk
from hatchkit import reference
from hatchkit.climate import clock, dose, excursions, probes, ranges, timeline, track, water_loss
from hatchkit.findings import more_climate
from hatchkit.pages.parts import said

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


def codes(told):
    return [one.code for one in told]


def spoken(told, unit="C", language="en"):
    return " ".join(said(one, language, unit) for one in told)


def test_heat_gives_level_source_and_the_disagreement(found):
    told = more_climate.spell(row_like(found, "overheating"), "Europe/Rome")
    assert codes(told) == ["spell_told", "heat_told", "heat_common"]
    assert "Ande & Wilson 1981" in told[1].facts["source"] and told[1].facts["heat_band"] == "watch"
    assert told[0].facts["start"].tzinfo is None


def test_cold_gives_development_and_the_little_that_is_known(found):
    told = more_climate.spell(row_like(found, "outage"))
    assert codes(told) == ["spell_told", "cold_cost", "cold_below_10"] and told[1].facts["lost_hours"] > 1


@pytest.mark.parametrize("word", ["outage", "overheating"])
@pytest.mark.parametrize("language", ["en", "de", "fr", "es"])
def test_degrees_fahrenheit_on_request_and_kelvin_never(found, word, language):
    told = more_climate.spell(row_like(found, word))
    for unit, other in (("F", "°C"), ("C", "°F")):
        text = spoken(told, unit, language).replace("\u00a0", " ")
        assert other not in text and " K " not in text and f"°{unit}" in text and "none" not in text.split()


def test_a_machine_beside_its_range_is_told_with_what_is_wanted():
    made = season(readings(lambda hours: 38.0 + 0 * hours), settings={"incubators": {"A": {"air": "still"}}})
    told = more_climate.spell(hk.find_excursions(made).iloc[0])
    assert told[0].code == "spell_beside" and told[0].facts["evidence"].code == "evidence_beside"
    assert "steadily 0.5 °F below the range for still air" in spoken(told, "F")


def test_nothing_rounds_to_minus_nought_or_to_nought_times():
    row = clock.hatch_clock(season(batches=[HATCH])).iloc[0]
    told = more_climate.clock(row.to_dict() | {"temperature_h": -0.2, "storage_h": 0.3, "difference_h": 0.2})
    assert told.facts["came"] == "then" and "storage 0\u00a0h, temperature 0\u00a0h" in spoken([told])
    steady = probes.steadiness(season()).iloc[0].to_dict()
    for per_day, opened in ((0.0, "never"), (0.02, "seldom"), (0.1, "often")):
        assert more_climate.machine(steady | {"openings_per_day": per_day})[0].facts["opened"] == opened


def test_a_time_is_no_finer_than_its_doubt():
    row = clock.hatch_clock(season(batches=[HATCH])).iloc[0].to_dict()
    stamp = pd.Timestamp("2026-03-29 00:50", tz="UTC")
    for half, by_day in ((14, False), (53, True)):
        facts = more_climate.clock(
            row | {"expected_at": stamp, "expected_high_at": stamp + pd.Timedelta(hours=half)}, "Europe/Rome"
        ).facts
        assert facts["by_day"] == by_day and facts["expected_at"] == pd.Timestamp("2026-03-29 03:00")


def test_what_the_clock_does_not_know_is_not_nought():
    row = clock.hatch_clock(season(batches=[{"incubator": "Z", "stored_days": np.nan}])).iloc[0]
    facts = more_climate.clock(row).facts
    assert facts["storage_h"] is None and facts["temperature_h"] is None


def test_the_clock_says_why_the_planner_names_another_hour():
    assert codes(more_climate.clock_season(clock.hatch_clock(season()))) == ["clock_names"]
    mixed = more_climate.clock_season(clock.hatch_clock(season(batches=[HATCH, {"batch": "2"}])))
    assert [one.facts["batches"] for one in mixed[:2]] == [["1"], ["2"]] and mixed[-1].facts["before_h"] == 4


def test_the_two_kinds_of_unweighed_batches_are_told_apart():
    told = more_climate.water_season(
        water_loss.batch_water_loss(season(batches=[{}, {"batch": "2", "incubator": "Z"}]))
    )
    assert codes(told) == ["water_roughly", "water_not_known", "water_weigh"]
    assert [one.facts["batches"] for one in told[:2]] == [["1"], ["2"]]


def test_early_openings_carry_the_young_embryos_warning():
    early, late = hk.find_excursions(season(readings(with_events(opening(60, 12), opening(300, 12))))).iloc
    assert "cold_young" in codes(more_climate.spell(early)) and "cold_young" not in codes(more_climate.spell(late))


def test_long_steps_are_said_to_miss_spikes():
    coarse, fine = (probes.steadiness(season(readings(step_min=step))).iloc[0] for step in (30.0, 5.0))
    assert codes(more_climate.machine(coarse)) == ["machine_steady", "machine_coarse"]
    assert codes(more_climate.machine(fine)) == ["machine_steady"]
    assert 0.5 < coarse["unseen_share"] < 0.7


def test_little_warmth_is_not_called_harm():
    row = hk.find_excursions(season(readings(with_events(bump(200, 5, 0.8))))).iloc[0]
    assert codes(more_climate.heat(row)) == ["heat_little"]


def test_a_hole_within_an_excursion_is_said():
    rows = readings(with_events(bump(200, 3, 2.0)))
    rows = rows[~rows["time"].between(hour(201), hour(201.4))]
    assert "spell_hole" in codes(more_climate.spell(hk.find_excursions(season(rows)).iloc[0]))


def test_everyday_openings_are_not_notable(found):
    assert not found.loc[found["looks_like"] == "opening", "notable"].any()
    assert found.loc[found["looks_like"] == "outage", "notable"].all()


def test_every_verdict_of_clock_and_probes_is_told(made):
    dodo = clock.hatch_clock(season(batches=[{"species": "dodo"}, {}]))
    assert [more_climate.clock(row).code for row in dodo.iloc] == ["clock_not_expected", "clock_told"]
    late = clock.hatch_clock(season(batches=[{"first_hatch_at": hour(530), "last_hatch_at": hour(545)}])).iloc[0]
    assert (more_climate.clock(late).facts["verdict"], more_climate.clock(late).facts["reads"]) == ("off", "high")
    for row in probes.probe_truth(made).to_dict("records"):
        assert more_climate.probe(row)[0].facts["told"][-1].facts["clock_batches"] == 2


def test_water_is_told_for_all_verdicts():
    def told(daily, spread=1e-5):
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
        return more_climate.water(water_loss.batch_water_loss(season(weights=eggs)).iloc[0])

    for daily, verdict in ((0.0066, "on_target"), (0.0085, "too_much"), (0.0045, "too_little")):
        assert told(daily)[0].facts["verdict"] == verdict
    assert codes(told(0.0085)) == ["water_told", "water_next"] and told(0.0020)[1].facts["next"] == "too_dry"
    assert told(0.0059, 4e-4)[0].facts["verdict"] == "cannot_tell"
    assert codes(more_climate.water(water_loss.batch_water_loss(season()).iloc[0])) == ["water_from_shells"]


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


def test_the_timeline_of_an_incubator_without_batches(made):
    lines = timeline.incubator_timeline(season(readings(incubator="B")), "B")
    assert lines.batches.empty and lines.egg.empty


def test_close_up_shows_some_hours_either_side(made, found):
    row = row_like(found, "outage")
    part = timeline.close_up(made, row, hours=4)
    assert part["time"].min() >= row["start"] - pd.Timedelta(hours=4)
    assert part["time"].max() > row["end"] + pd.Timedelta(hours=3.8)


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
    doses = {"dose": dose.window_dose(met, hour(0), hour(100))}
    for name, keys in doses.items():
        assert set(keys) == set(TABLES.loc[TABLES["table"] == name, "column"])


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
