"""Every reference table says where its figures come from and how sure they are."""

from pathlib import Path

import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.problems import HatchkitError

FOLDER = Path(reference.__file__).parent
TABLES = sorted(path.stem for path in FOLDER.glob("*.csv"))
SURE = {"verified", "second-hand", "derived", "memory", "common practice", "invented"}


@pytest.mark.parametrize("name", [name for name in TABLES if not name.startswith("columns_")])
def test_each_table_has_a_source_in_every_row(name):
    table = reference.load(name)
    assert "source" in table.columns
    assert table["source"].notna().all()


@pytest.mark.parametrize("name", [name for name in TABLES if not name.startswith("columns_")])
def test_how_sure_a_figure_is_uses_one_set_of_words(name):
    table = reference.load(name)
    if "sure" in table.columns:
        assert set(table["sure"]) <= SURE


@pytest.mark.parametrize("name", [name for name in TABLES if name.startswith("columns_")])
def test_each_documented_column_has_kind_and_meaning(name):
    table = reference.load(name)
    assert list(table.columns) == ["table", "column", "unit", "kind", "meaning"]
    assert table[["table", "column", "kind", "meaning"]].notna().all(axis=None)
    assert set(table["kind"]) <= {"text", "number", "count", "time", "yes/no"}
    assert not table.duplicated(["table", "column"]).any()


def test_no_table_column_is_documented_twice_in_two_files():
    every = pd.concat([reference.load(name) for name in TABLES if name.startswith("columns_")])
    assert not every.duplicated(["table", "column"]).any()


def test_every_species_has_every_figure():
    wide = reference.species_table()
    assert wide.notna().all(axis=None)
    assert (wide["transfer_day"] < wide["incubation_days"]).all()
    assert (wide["candle1_day"] < wide["candle2_day"]).all()
    assert (wide["candle2_day"] < wide["transfer_day"]).all()


@pytest.mark.parametrize(
    ("written", "key"),
    [
        ("hen", "chicken"),
        ("Hens ", "chicken"),
        ("hen eggs", "chicken"),
        ("Muscovy Ducks", "muscovy"),
        ("Quails", "quail"),
        ("Japanese  quail", "quail"),
        ("geese", "goose"),
        ("guinea-fowl", "guinea"),
    ],
)
def test_species_are_known_by_their_everyday_names(written, key):
    assert reference.species_key(written) == key


def test_an_unknown_species_is_named_with_the_known_ones():
    with pytest.raises(HatchkitError, match="known are bobwhite, button_quail, chicken"):
        reference.species("dodo")


def test_a_loaded_table_can_be_changed_without_harm():
    mine = reference.load("species")
    mine["value"] = 0
    assert (reference.load("species")["value"] != 0).all()
