"""The demo season as a stranger would load it, and the words that open every notebook."""

import shutil

import pytest

import hatchkit as hk
from hatchkit.records.places import demo_folder, season_folder


def test_the_demo_is_found_from_any_working_folder(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    assert season_folder("demo") == demo_folder()
    (tmp_path / "demo").mkdir()
    assert season_folder("demo") == tmp_path / "demo"


def test_the_demo_holds_what_a_season_holds(demo):
    assert len(demo.batches) >= 14
    assert set(demo.batches["species"]) == {"chicken", "duck", "quail"}
    assert demo.batches["incubator"].nunique() == 3
    assert (demo.batches["set_at"].max() - demo.batches["set_at"].min()).days > 100
    assert len(demo.eggs) and len(demo.weights) and len(demo.readings)


def test_the_demo_says_that_it_is_invented(demo):
    assert "invented" in demo.title
    assert "invented" in (demo_folder() / "README.md").read_text(encoding="utf-8")


def test_eggs_add_up_in_every_batch(demo):
    counted = demo.fates.groupby("batch")["eggs"].sum()
    assert counted.astype(int).to_dict() == demo.batches.set_index("batch")["eggs_set"].astype(int).to_dict()


def test_nothing_in_the_demo_is_lost(demo):
    assert not (demo.problems["severity"] == "lost").any()


def test_the_opening_words_name_what_was_read(demo):
    words = demo.words()
    assert f"{len(demo.batches)} batches" in words
    assert "Europe/Rome" in words and "hens, ducks and quails" in words
    assert str(demo.folder) not in words


def test_a_batch_and_its_species_are_looked_up_by_name(demo):
    name = demo.batches["batch"].iloc[0]
    assert demo.batch(name)["batch"] == name
    assert demo.species(name)["incubation_days"] > 10
    with pytest.raises(hk.HatchkitError, match="There is no batch 'nope'"):
        demo.batch("nope")


def test_a_season_without_sensor_files_says_so(tmp_path):
    for name in ("batches.xlsx", "season.toml"):
        shutil.copy(demo_folder() / name, tmp_path / name)
    season = hk.load_season(tmp_path)
    assert len(season.batches) >= 14
    assert "No temperature readings" in season.words()


def test_a_row_handed_out_is_the_caller_s_own(demo):
    row = demo.batch("H1")
    row["incubator"] = "another"
    assert demo.batch("H1")["incubator"] == "A"
