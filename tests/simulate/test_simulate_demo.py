"""The demo season: same seed, same bytes; what was planted is there; the reader takes it as written."""

from pathlib import Path

import pandas as pd
import pytest

import hatchkit as hk
from hatchkit.simulate import __main__ as command
from hatchkit.simulate import demo, read_answer
from hatchkit.simulate.answer import planted

DEMO = Path(__file__).resolve().parents[2] / "data_demo"


@pytest.fixture(scope="module")
def written(tmp_path_factory):
    """Written by the command that the README names."""
    home = tmp_path_factory.mktemp("demo")
    assert command.main([str(home / "demo"), "--answer", str(home / "answer.json")]) == 0
    return home / "demo", read_answer(home / "answer.json")


def test_the_shipped_folder_is_what_the_seed_gives_byte_for_byte(written):
    folder, _ = written
    made = {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    shipped = {
        path.relative_to(DEMO).as_posix(): path.read_bytes()
        for path in DEMO.rglob("*")
        if path.is_file() and path.name != "README.md" and "years" not in path.relative_to(DEMO).parts
    }
    assert sorted(made) == sorted(shipped)
    assert [name for name in made if made[name] != shipped[name]] == []


def test_written_over_an_earlier_demo_it_is_the_same_again(written, capsys):
    folder, _ = written
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    (folder / "sensors" / "A_2026-04.csv").unlink()
    (folder / "README.md").write_text("kept", encoding="utf-8")
    assert command.main([str(folder)]) == 0
    assert (folder / "README.md").read_text(encoding="utf-8") == "kept"
    (folder / "README.md").unlink()
    assert {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()} == before


@pytest.mark.parametrize("settings", ['title = "Mine"', "title = [", "", None])
def test_a_person_s_own_season_is_never_replaced(tmp_path, capsys, settings):
    (tmp_path / "sensors").mkdir()
    (tmp_path / "sensors" / "mine.csv").write_text("mine", encoding="utf-8")
    (tmp_path / "batches.xlsx").write_text("mine", encoding="utf-8")
    if settings is not None:
        (tmp_path / "season.toml").write_text(settings, encoding="utf-8")
    before = {path: path.read_bytes() for path in tmp_path.rglob("*") if path.is_file()}
    assert command.main([str(tmp_path)]) == 2
    assert {path: path.read_bytes() for path in tmp_path.rglob("*") if path.is_file()} == before
    assert "name a new folder" in capsys.readouterr().err


@pytest.mark.parametrize("season", [[], ["--seed", "3"]])
@pytest.mark.parametrize("answer", ["sim/answer.json", "sim/deep/answer.json", "notes.txt", "nowhere/answer.json"])
def test_the_sealed_answer_stays_out_of_the_season_and_off_other_files(tmp_path, monkeypatch, capsys, season, answer):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "sim").mkdir()
    (tmp_path / "notes.txt").write_text("mine", encoding="utf-8")
    assert command.main(["sim", *season, "--answer", answer]) == 2
    assert len(capsys.readouterr().err.splitlines()) == 1
    assert [path.name for path in tmp_path.rglob("*") if path.is_file()] == ["notes.txt"]
    assert (tmp_path / "notes.txt").read_text(encoding="utf-8") == "mine"


@pytest.mark.parametrize("wish", [["--seed", "-3"], ["--batches", "0"], ["--batches", "some"]])
def test_a_number_of_no_use_is_refused_in_a_sentence(tmp_path, capsys, wish):
    with pytest.raises(SystemExit) as stopped:
        command.main([str(tmp_path / "sim"), *wish])
    assert stopped.value.code == 2
    assert f"argument {wish[0]}: '{wish[1]}' is not a whole number from" in capsys.readouterr().err


def test_it_is_small_and_says_that_it_is_invented():
    assert sum(path.stat().st_size for path in DEMO.rglob("*") if path.is_file()) < 12e6
    assert "made up" in (DEMO / "README.md").read_text(encoding="utf-8")
    assert "invented" in (DEMO / "season.toml").read_text(encoding="utf-8")


def test_fourteen_batches_or_more_of_three_kinds_in_three_incubators_over_five_months(written):
    plan = demo.demo_plan()
    assert len(plan.batches) >= 14
    assert {item.species for item in plan.batches} == {"chicken", "duck", "quail"}
    assert {item.incubator for item in plan.batches} == {"A", "B", "C"}
    begin, end = (f(item.set_at for item in plan.batches) for f in (min, max))
    assert 120 < (end - begin) / pd.Timedelta(days=1) + 21 < 170


def test_every_planted_event_is_in_the_answer_and_took_eggs(written):
    _, answer = written
    causes = answer.causes.set_index("batch")
    assert set(causes["cause"]) == {
        "power_cut",
        "drift_warm",
        "lid_ajar",
        "probe_high",
        "long_storage",
        "low_fertility",
        "none",
    }
    took = causes[~causes["cause"].isin(["none", "probe_high"])]["lost"]
    assert (took >= 4).all(), took.to_dict()


def test_nothing_in_the_folder_names_what_was_planted(written):
    folder, answer = written
    texts = [path.read_text(encoding="utf-8-sig") for path in (folder / "season.toml", DEMO / "README.md")]
    words = [planted(row) for row in answer.causes.to_dict("records")] + list(answer.causes["cause"])
    for text in texts:
        assert not [word for word in words if word != "none" and word in text]
        assert "offset" not in text


def test_the_reader_loses_nothing_of_it():
    season = hk.load_season(DEMO)
    plan = demo.demo_plan()
    assert list(season.batches["batch"]) == [item.batch for item in plan.batches]
    assert "lost" not in set(season.problems["severity"])
    assert (season.problems["severity"] == "doubtful").sum() <= 3
    assert season.fates.groupby("batch")["eggs"].sum().to_dict() == {i.batch: i.eggs_set for i in plan.batches}
    # one hatch was miscounted by one, and one logger failed for three readings
    assert season.fates.query("fate == 'unaccounted'")[["batch", "eggs"]].values.tolist() == [["H6", 1]]
    assert season.readings.query("doubt != ''")[["incubator"]].value_counts().to_dict() == {("C",): 3}
    assert set(season.readings["incubator"]) == {"A", "B", "C"}
    step = season.readings.groupby("incubator")["time"].diff().median()
    assert step == pd.Timedelta(minutes=5)


def test_the_answer_lies_elsewhere(written):
    folder, answer = written
    assert not list(folder.rglob("*.json"))
    assert "drifted" in answer.words()
