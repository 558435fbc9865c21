"""Headings by composition of words, in twelve languages; keepers' wordings (common practice, no source)."""

import re

import pytest

from hatchkit.records.sheets.entries import fate_of
from hatchkit.records.sheets.fields import key_of
from hatchkit.records.sheets.lexicon import tokens
from hatchkit.records.sheets.meanings import meanings, word_for
from hatchkit.records.sheets.parts import Block
from hatchkit.records.sheets.profile import profile
from hatchkit.records.sheets.understand import language_of
from hatchkit.records.words import csv_rows

HEADINGS = [
    ("en", "Clears 1st candling", "clear@look1"),
    ("en", "D10 dead", "dead@day10"),
    ("en", "Still in after 2nd candling", "left@look2"),
    ("en", "Full term, no pip", "dis"),
    ("en", "out (live)", "hatched"),
    ("en", "First hatch", "first_hatch_at"),
    ("en", "Taken off", "hatch_at"),
    ("en", "Weighed on", "date"),
    ("en", "Eggs on scale", "eggs_weighed"),
    ("en", "Incubation day", "look_day"),
    ("en", "Price per chick $", "ignore"),
    ("en", "Ring colour", "ignore"),
    ("de", "abgest. 18. Tag", "dead@day18"),
    ("de", "angepickt, nicht geschl.", "pipped"),
    ("de", "stecken gebl.", "dis"),
    ("fr", "Bêchés morts", "pipped"),
    ("nl", "Dood in ei", "dis"),
    ("es", "Picados sin salir", "pipped"),
    ("it", "morti nell'uovo", "dis"),
    ("pt", "Mortos na casca", "dis"),
    ("pl", "Zamarłe wczesne", "dead@look1"),
    ("cs", "Vylíhlo", "hatched"),
    ("sv", "Döda i ägget", "dis"),
    ("da", "Døde ved 2. gennemlysning", "dead@look2"),
    ("hu", "Befulladt", "dis"),
]


@pytest.mark.parametrize("language, heading, key", HEADINGS)
def test_a_heading_is_first_what_its_words_say(language, heading, key):
    assert key_of(meanings(heading, "", language)[0]) == key


def test_a_heading_above_gives_the_look_to_those_below_it():
    assert key_of(meanings("dead", "Candling day 14", "en")[0]) == "dead@day14"
    assert key_of(meanings("clear", "2nd candling", "en")[0]) == "clear@look2"


def test_a_misspelt_word_weighs_less_than_a_right_one():
    right, wrong = meanings("candling", "", "en")[0], meanings("candlnig", "", "en")[0]
    assert right.field == wrong.field and wrong.weight < right.weight


@pytest.mark.parametrize(
    "language, word, fate",
    [
        ("en", "blood ring", "dead"),
        ("en", "c", "clear"),
        ("en", "pipped, died", "pipped_dead"),
        ("pt", "eclodiu", "hatched"),
        ("cs", "uhynulo ve skořápce", "dead_in_shell"),
        ("de", "unbefruchtet", "clear"),
        ("da", "levende", "alive"),
    ],
)
def test_what_became_of_an_egg_is_told_by_its_words(language, word, fate):
    assert fate_of(word, language).fate == fate


@pytest.mark.parametrize("text", ["x7", "?", "2026", "", "banana bread"])
def test_what_says_nothing_of_an_egg_is_no_fate(text):
    assert fate_of(text, "en") is None


def test_a_word_in_every_row_does_not_decide_the_language():
    cells = ["lote", "fecha de carga", "huevos puestos", "nacidos", *[f"{n} eggs" for n in range(30)]]
    assert language_of(cells) == "es"


def test_words_of_another_language_are_not_read_into_short_ones():
    assert not tokens("lote", "en")[0].roles and tokens("lote", "es")[0].roles == {"batch"}


def test_each_rule_speaks_of_roles_looks_and_fields_that_there_are():
    roles = {row["role"] for row in csv_rows("sheet_words")} | {"stretch"}
    counts = {f"#{name}" for name in "eggs_set clear dead left removed pipped dis hatched culled".split()}
    for row in csv_rows("word_rules"):
        asked = set(f"{row['needs']} {row['but']} {row['only']}".replace("|", " ").split())
        assert asked <= (roles | counts if row["of"] == "step" else roles)
        assert row["look"] in ("", "none", "named", "day", "day0", "transfer", "before") and row["source"]
    for table in ("egg", "count", "step"):
        assert word_for(table, frozenset({"hatched"})) in ("hatched", "hatch")


def test_each_rule_of_cells_measures_what_a_column_has():
    column = profile(Block("table", "", "", ["a"], [""], [[1.0, 2.0]], [1, 2]), "en")[0]
    for row in csv_rows("column_rules"):
        for told in row["when"].split():
            name, limit = re.fullmatch(r"(\w+)(?:<=|>=|<|>|=)(-?[\d.]+)", told).groups()
            assert name == "weight" or float(getattr(column, name)) >= 0 <= float(limit)
        assert row["weight"] == "out" or float(row["weight"])


def test_a_number_of_any_length_in_a_heading_is_no_day():
    assert meanings("dead 99999999999-21", "", "en")[0].field == "dead"
