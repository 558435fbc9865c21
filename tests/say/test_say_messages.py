"""Facts in, language out: every message is whole, counts agree with their nouns, nothing that a file holds can harm."""

import datetime as dt
import importlib
import re
import subprocess
import sys
from pathlib import Path

import numpy as np
import pandas as pd
import pytest

from hatchkit import say
from hatchkit.problems import COLUMNS
from hatchkit.say import catalogue, speak, values
from hatchkit.say.readings import parts_of

ROOT = Path(__file__).resolve().parents[2]
COUNTS = dict(title="Spring", batches=2, eggs=3, weights=4, readings=107_764)


@pytest.fixture
def german(monkeypatch):
    """A shelf of German with one message of its own, under the name of an English one."""
    shelf = catalogue._Shelf("none")
    shelf.found["place_rows"] = (
        "place_rows = { COUNT($rows) ->\n    [one] Zeile { $rows }\n   *[other] Zeilen { $rows }\n  }\n"
    )
    plain = catalogue._shelf
    monkeypatch.setattr(catalogue, "_shelf", lambda language: shelf if language == "de" else plain(language))
    speak._speaker.cache_clear()
    yield
    speak._speaker.cache_clear()


def test_every_message_can_be_parsed_and_none_is_there_twice():
    speaker = speak._Speaker("en")
    assert len(catalogue.names("en")) > 100
    for name in catalogue.names("en"):
        assert speaker.learn(name), name


@pytest.mark.parametrize(
    "count, words",
    [
        (0, "0 batches"),
        (1, "1 batch"),
        (2, "2 batches"),
        (1.0, "1 batch"),
        (np.int64(1), "1 batch"),
        (1_234, "1,234 batches"),
    ],
)
def test_counts_agree_with_their_nouns(count, words):
    assert say.text("check_counts", {**COUNTS, "batches": count}).startswith(f"Spring: read {words}, 3 egg rows")


def test_row_numbers_take_no_mark_for_thousands_and_long_lists_are_cut():
    assert say.text("place_rows", dict(rows=[14, 20_001])) == "rows 14 and 20001"
    assert say.text("place_rows", dict(rows=range_list(9))) == "rows 1, 2, 3, 4, 5, 6, 7, 8, ..."
    assert say.text("place_rows", dict(rows=[4])) == "row 4"


def range_list(last):
    return list(range(1, last + 1))


def test_a_message_that_is_not_there_or_lacks_a_fact_is_an_error_in_tests():
    with pytest.raises(speak.MissingWords, match="no_such_code"):
        say.text("no_such_code", {})
    with pytest.raises(speak.MissingWords, match="readings"):
        say.text("check_counts", {name: 1 for name in COUNTS if name != "readings"})
    with pytest.raises(speak.MissingWords, match="lacks a part"):
        say.problem("check_clock", dict(timezone="UTC"))


def test_a_person_sees_the_facts_where_words_are_missing(monkeypatch):
    monkeypatch.delenv("HATCHKIT_STRICT")
    assert say.text("too_many_eggs", dict(batch="H2")) == "too many eggs (batch H2)"
    assert set(say.problem("too_many_eggs", dict(batch="H2"))) == {"found", "done", "fix"}


def test_another_language_counts_in_its_own_way_and_falls_back_to_english(german):
    assert say.text("place_rows", dict(rows=[4, 9]), "de") == "Zeilen 4 und 9"
    assert say.text("place_sheet", dict(sheet="2025"), "de") == "sheet 2025"
    assert say.has("place_rows", "de") and not say.has("place_sheet", "de")
    assert say.text("place_sheet", dict(sheet="2025"), "../../etc") == "sheet 2025"


@pytest.mark.parametrize("text", ["{ $title }", "\x1b[2J{", "x" * 9_000, "a\u202eb", "*[other]"])
def test_text_of_a_file_is_never_taken_for_a_message(text):
    said = say.text("check_clock", dict(timezone=text))
    assert said.startswith("Times are shown as in ") and said.isprintable() and len(said) < 450
    assert text[:1] in said or not text[:1].isprintable()


def test_what_is_missing_has_a_word_of_its_own():
    for nothing in (None, "", float("nan"), pd.NaT, pd.NA):
        assert values.value_of(nothing) == "none"
    assert values.value_of(True) == "yes" and values.value_of(np.float64(2.5)) == 2.5


def test_numbers_dates_shares_and_degrees_are_written_as_the_language_does():
    english, german, french = (values.functions(language) for language in ("en", "de", "fr"))
    day = values.value_of(pd.Timestamp("2026-04-03 18:05"))
    assert isinstance(day, dt.datetime)
    assert english["DAY"](day) == "3 April 2026" and german["DAY"](day) == "3. April 2026"
    assert english["MINUTE"](day) == "3 April 2026 18:05" and french["DAY"](day) == "3 avril 2026"
    assert english["SHARE"](0.12) == "12 %" and english["SHARE"](0.034) == "3.4 %" and english["SHARE"](0) == "0 %"
    assert german["SHARE"](0.034) == "3,4\u00a0%" and german["DEGREES"](37.5) == "37,5\u00a0°C"


@pytest.mark.parametrize(
    "taken, words",
    [
        ("eggs_set", "eggs set"),
        ("clear@day7", "clear, day 7"),
        ("dead@look2", "dead, 2nd look"),
        ("left@day18+transfer", "eggs left, day 18 (transfer)"),
        ("left@transfer", "eggs left, at transfer"),
        ("dead@look11", "dead, look 11"),
        ("pipped~within", "pipped, died, part of the column before"),
        ("some_field", "some field"),
        ("<b>", "<b>"),
    ],
)
def test_a_reading_is_put_in_words(taken, words):
    assert speak.reading_words(taken) == words


def test_a_key_of_a_reading_is_taken_apart():
    assert parts_of("dead~within@day18+look2+transfer") == dict(
        field="dead", within="yes", day=18, order=2, transfer="yes"
    )


def test_every_field_of_the_sheets_has_words():
    reader = importlib.import_module("hatchkit.records.sheets.fields")
    fields = {*reader.COUNTS, *reader.DATES, *reader.TEXTS, *reader.MEASURES, "ignore", "number"}
    assert {field for field in fields if not say.has(f"field_{field}")} == set()


def test_a_fact_that_is_a_message_is_said_in_the_language_of_the_whole():
    why = dict(code="refuse_pdf", facts={})
    assert "PDF" in say.text("log_refused", dict(name="a.csv", why=why), "de")
    for language in say.LANGUAGES:
        inner, whole = say.text("refuse_pdf", {}, language), say.text("log_refused", dict(name="a", why=why), language)
        assert inner in whole
    found, fix = (dict(code="file_refused", facts=dict(why=why, fix="anew"), part=part) for part in ("found", "fix"))
    told = say.text("folder_only_lost", dict(file="a.xlsx", sheet="", found=found, fix=fix), "de")
    assert say.text("refuse_pdf", {}, "de") in told and "speichern" in told
    days = [dict(code="check_event_day", facts=dict(event="set_at", day=day)) for day in ("2026-03-01", "2026-03-05")]
    facts = dict(
        batch="H1", later="taken_off_at", day="2026-02-01", before=days, columns=["a", "b"], columns_swapped=[]
    )
    assert "set 2026-03-01 and set 2026-03-05" in say.problem("check_dates", facts)["found"]


def test_a_long_list_is_cut():
    assert len(values.Several(["x" * 400] * 30).format("en")) == 4 * values.LONGEST


def test_importing_say_costs_nothing_and_no_room_is_imported():
    code = (
        "import sys, hatchkit.say; print(sorted({'fluent', 'babel', 'pandas'} & set(sys.modules))); "
        "hatchkit.say.text('place_rows', {'rows': [1]}); "
        "print(sorted(name for name in sys.modules if name.startswith('hatchkit.') and 'say' not in name))"
    )
    printed = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=ROOT)
    assert printed.stdout.splitlines() == ["[]", "[]"]


def test_readers_are_told_to_fix_and_never_to_mend():
    texts = (path.read_text(encoding="utf-8") for path in (Path(say.__file__).parent / "messages" / "en").glob("*.ftl"))
    assert not [text for text in texts if re.search(r"\bmend", text, re.IGNORECASE)] and "fix" in COLUMNS
