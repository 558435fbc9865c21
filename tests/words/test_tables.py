"""What a reader sees: percent with interval, local time, units, and "not known" instead of a blank."""

import pandas as pd

from hatchkit.words.tables import percent, reader_table, share_interval

TABLE = pd.DataFrame(
    {
        "batch": ["A<1>", None],
        "eggs": pd.array([30, None], dtype="Int64"),
        "share_of_set": [0.125, None],
        "low": [0.05, None],
        "high": [0.24, None],
        "extreme_c": [38.94, None],
        "start": pd.to_datetime(["2026-07-01 10:00", None], utc=True),
    }
)


def _texts(**settings):
    return reader_table(
        TABLE,
        {
            "batch": "Batch",
            "eggs": "Eggs",
            ("share_of_set", "low", "high"): "Share",
            "extreme_c": "Extreme (°)",
            "start": "Start",
        },
        **settings,
    )


def test_each_kind_of_column_is_worded_for_the_reader():
    first = _texts(timezone="Europe/Rome").texts.iloc[0].to_dict()
    assert first == {
        "Batch": "A<1>",
        "Eggs": "30",
        "Share": "12 % (5 to 24 %)",
        "Extreme (°C)": "38.9",
        "Start": "2026-07-01 12:00",
    }


def test_what_is_missing_is_said():
    assert set(_texts().texts.iloc[1]) == {"not known"}


def test_fahrenheit_changes_number_and_heading():
    assert _texts(unit="F").texts["Extreme (°F)"].iloc[0] == "102.1"


def test_html_escapes_what_a_person_typed():
    shown = _texts()._repr_html_()
    assert "A&lt;1&gt;" in shown and "A<1>" not in shown
    assert shown.count("<tr>") == 3


def test_shares_without_interval_are_shown_alone():
    assert share_interval(0.5, None, None) == "50 %"
    assert percent(0.0251, 1) == "2.5 %"


def test_keys_of_the_kit_are_shown_in_the_readers_words():
    table = pd.DataFrame({"stage": ["pipped_dead", "early"], "note": ["pipped_dead", "early"]})
    texts = reader_table(table, {"stage": "Stage", "note": "Note"}).texts
    assert texts["Stage"].tolist() == ["pipped, died", "early dead"]
    assert texts["Note"].tolist() == ["pipped_dead", "early"]


def test_degree_hours_follow_the_unit_of_the_picture():
    table = pd.DataFrame({"egg_degree_hours_cold": [10.0]})
    in_f, in_c = (reader_table(table, {"egg_degree_hours_cold": "Egg too cold (°·h)"}, unit=unit) for unit in "FC")
    assert in_f.texts.iloc[0].to_dict() == {"Egg too cold (°F·h)": "18"}
    assert in_c.texts.iloc[0].to_dict() == {"Egg too cold (°C·h)": "10"}


def test_a_difference_of_temperatures_gets_no_32():
    table = pd.DataFrame({"swing_c": [0.5], "differs_c": [-0.5], "mean_c": [37.5]})
    names = {"swing_c": "Swing (°)", "differs_c": "Differs (°)", "mean_c": "Mean (°)"}
    texts = reader_table(table, names, unit="F").texts
    assert texts.iloc[0].to_dict() == {"Swing (°F)": "0.9", "Differs (°F)": "-0.9", "Mean (°F)": "99.5"}
