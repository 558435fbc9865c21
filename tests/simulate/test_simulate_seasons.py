"""Drawn seasons: closed counts, repeatable, and every cause takes more eggs the worse it is."""

import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.simulate import __main__ as command
from hatchkit.simulate import cause_names, draw_season, read_answer, simulate_season
from hatchkit.simulate.causes import KILLS


def test_there_are_at_least_ten_causes_and_each_is_explained():
    table = reference.load("simulate_causes")
    assert len(table) >= 11 and set(KILLS) == set(table["cause"]) == set(cause_names())
    known = set(reference.load("causes")["cause"])
    assert set(table["named_by_advice"]) <= known


def test_every_figure_has_a_unit_or_none_a_source_and_how_sure():
    table = reference.load("simulate_parameters")
    assert table["name"].is_unique
    assert table[["value", "meaning", "source", "sure"]].notna().all().all()
    assert set(table["sure"]) <= {"verified", "second-hand", "derived", "invented"}
    # what rests on an invented part must not pass for verified
    doubtful = table["source"].str.contains("invented")
    assert not (table.loc[doubtful, "sure"] == "verified").any()


@pytest.mark.parametrize("cause", cause_names())
def test_counts_of_every_batch_add_up_to_the_eggs_set(cause):
    season, answer = draw_season(seed=11, cause=cause, batches=2, step_minutes=60)
    assert season.fates.groupby("batch")["eggs"].sum().to_dict() == (
        season.batches.set_index("batch")["eggs_set"].to_dict()
    )
    assert not (season.fates["fate"] == "unaccounted").any()
    assert not len(season.problems[season.problems["severity"] == "lost"])
    assert (answer.cause, answer.severity) == (cause, "severe")
    assert answer.batch in set(season.batches["batch"])


@pytest.mark.parametrize("cause", [name for name in cause_names() if name != "none"])
def test_the_worse_the_fault_the_more_eggs_it_takes(cause):
    lost = []
    for severity in ("mild", "moderate", "severe"):
        _, answer = draw_season(
            seed=1, cause=cause, severity=severity, batches=1, incubators=1, eggs=480, step_minutes=60
        )
        lost.append(answer.lost() / answer.causes["eggs_set"].sum())
    assert lost[0] < lost[1] < lost[2]
    assert lost[2] > 0.10


def test_the_same_seed_gives_the_same_season_and_another_seed_another():
    first, again, other = (draw_season(seed=seed, batches=3)[0] for seed in (5, 5, 6))
    pd.testing.assert_frame_equal(first.readings, again.readings)
    pd.testing.assert_frame_equal(first.batches, again.batches)
    assert not first.batches["hatched"].equals(other.batches["hatched"])


def test_what_was_planted_changes_neither_layout_nor_habits():
    plain = draw_season(seed=8, cause="none")[0].batches
    cut = draw_season(seed=8, cause="power_cut")[0].batches
    same = ["batch", "species", "incubator", "set_at", "eggs_set", "stored_days", "flock", "flock_age_weeks", "notes"]
    pd.testing.assert_frame_equal(plain[same], cut[same])


def test_careful_and_careless_candling():
    _, careful = draw_season(seed=2, cause="none", parameters={"miss_rate": 0.0, "false_rate": 0.0})
    _, careless = draw_season(seed=2, cause="none", parameters={"miss_rate": 0.4, "false_rate": 0.05})
    assert careful.eggs["thrown_alive"].sum() == 0
    assert careless.eggs["thrown_alive"].sum() > 5
    assert careful.eggs["missed"].sum() == 0
    assert careless.eggs["missed"].sum() > 10


def test_unknown_parameters_causes_and_severities_are_refused():
    with pytest.raises(ValueError, match="no such simulation parameter: luck"):
        draw_season(seed=1, parameters={"luck": 1})
    with pytest.raises(HatchkitError, match="cause 'magic' is not known"):
        draw_season(seed=1, cause="magic")
    with pytest.raises(HatchkitError, match="mild, moderate and severe"):
        draw_season(seed=1, cause="none", severity="awful")


def test_gaps_take_about_the_share_asked_for():
    whole = draw_season(seed=4, cause="none", batches=4)[0].readings
    holed = draw_season(seed=4, cause="none", batches=4, gaps=0.2)[0].readings
    assert 0.15 < 1 - len(holed) / len(whole) < 0.35


def test_other_birds_hatch_by_their_own_clock():
    for species in ("quail", "duck", "turkey"):
        season, _ = draw_season(seed=3, cause="none", species=species, batches=2)
        days = (season.batches["last_hatch_at"] - season.batches["set_at"]) / pd.Timedelta(days=1)
        assert (days - season.species_table.loc[species, "incubation_days"]).abs().max() < 1.2


def test_a_probe_that_reads_high_hides_in_the_log_and_shows_in_the_hatch():
    plain, _ = draw_season(seed=9, cause="none", batches=2, incubators=1)
    high, _ = draw_season(seed=9, cause="probe_high", severity="moderate", batches=2, incubators=1)
    assert high.readings["temp_c"].mean() == pytest.approx(plain.readings["temp_c"].mean(), abs=0.05)
    late = (high.batches["first_hatch_at"] - plain.batches["first_hatch_at"]) / pd.Timedelta(hours=1)
    # 1.5 degC cool; 3.1 h for each 0.1 degC
    assert late.mean() == pytest.approx(46, abs=10)


def test_an_answer_survives_writing_and_reading(tmp_path):
    _, answer = draw_season(seed=12, cause="drift_warm", batches=2)
    again = read_answer(answer.write(tmp_path / "sealed" / "answer.json"))
    assert again.words() == answer.words() and again.lost() == answer.lost()
    assert list(again.eggs.columns) == list(answer.eggs.columns)
    with pytest.raises(HatchkitError, match="not an answer file"):
        read_answer(tmp_path / "none.json")


def test_columns_of_the_answer_are_listed():
    _, answer = draw_season(seed=12, cause="power_cut", batches=2)
    listed = reference.load("columns_simulate").groupby("table")["column"].apply(list)
    assert list(answer.causes.columns) == listed["planted"]
    assert list(answer.eggs.columns) == listed["true_eggs"]


def test_a_folder_in_use_and_an_answer_inside_it_are_refused(tmp_path):
    (tmp_path / "mine").mkdir()
    (tmp_path / "mine" / "batches.csv").write_text("mine", encoding="utf-8")
    with pytest.raises(HatchkitError, match="not empty"):
        simulate_season(tmp_path / "mine", seed=1)
    with pytest.raises(HatchkitError, match="must not lie"):
        simulate_season(tmp_path / "new", seed=1, answer=tmp_path / "new" / "answer.json")
    with pytest.raises(HatchkitError, match="style 'telegram' is not known"):
        simulate_season(tmp_path / "new2", seed=1, style="telegram")


@pytest.mark.parametrize("wish", [dict(seed=-3), dict(seed="x"), dict(batches=0), dict(eggs=0), dict(incubators=2.5)])
def test_a_number_of_no_use_is_refused_before_anything_is_made(tmp_path, wish):
    with pytest.raises(HatchkitError, match=f"{next(iter(wish))} must be a whole number from"):
        simulate_season(tmp_path / "sim", **{"seed": 3, **wish})
    assert not (tmp_path / "sim").exists()
    with pytest.raises(HatchkitError, match="must be a whole number"):
        draw_season(**{"seed": 3, **wish})


def test_the_command_writes_a_new_season_and_refuses_a_folder_in_use(tmp_path, capsys):
    call = [str(tmp_path / "season"), "--seed", "3", "--cause", "drift_cool", "--batches", "1"]
    assert command.main([*call, "--answer", str(tmp_path / "answer.json")]) == 0
    assert read_answer(tmp_path / "answer.json").cause == "drift_cool"
    assert command.main(call) == 2
    assert "not empty" in capsys.readouterr().err


def test_the_warm_side_of_the_tray_loses_more_to_heat():
    _, answer = draw_season(
        seed=4,
        cause="drift_warm",
        severity="severe",
        batches=1,
        incubators=1,
        eggs=1600,
        step_minutes=60,
        parameters={"position_sd_c": 0.5, "tray_share": 0.9},
    )
    eggs = answer.eggs
    side = (eggs["egg"].to_numpy() - 1) % 8 < 4
    share = [(eggs["died_of"] == "heat")[half].mean() for half in (side, ~side)]
    assert share[1] > 1.2 * share[0]
