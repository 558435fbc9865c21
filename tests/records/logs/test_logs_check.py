"""What a person sees of the loggers' files: one screen, what is asked of them, and answers that hold."""

import datetime as dt

import numpy as np
import pytest

import hatchkit as hk
from hatchkit.pages.check_page import check_page
from hatchkit.pages.check_text import MOST_LINES, check_text
from hatchkit.records.answers import keep_answers
from hatchkit.records.check import logs_read, questions_of
from hatchkit.records.sheets.shown import QUESTIONS

START = dt.datetime(2026, 4, 3, 20)


@pytest.fixture
def folder(tmp_path):
    (tmp_path / "sensors").mkdir()
    (tmp_path / "season.toml").write_text('timezone = "Europe/Rome"\nspecies = "chicken"\n')
    (tmp_path / "batches.csv").write_text(
        "batch,species,incubator,set_at,eggs_set,hatched\n"
        "D1,chicken,Red,2026-04-03,24,18\nD2,chicken,Blue,2026-04-05,30,25\n"
    )
    return tmp_path


def put(folder, name, form, head, count=500, without=range(0), start=START):
    noise, out = np.random.default_rng(0), [head]
    for n in range(count):
        c, h = 37.6 + noise.normal(0, 0.1), 52 + noise.normal(0, 1)
        if n not in without:
            out.append(form.format(t=start + n * dt.timedelta(minutes=15), c=c, f=c * 1.8 + 32, h=h))
    (folder / "sensors" / name).write_text("\n".join(out) + "\n")


def strange(folder):
    put(folder, "xyz.csv", "{t:04/05/2026 %H:%M},{h:.0f},{c:.1f}", "when,field1,field2", 90)


def logs_part(season, **how):
    lines = check_text(season, **how).splitlines()
    start = lines.index("The loggers' files")
    return " ".join(line.strip() for line in lines[start : lines.index("", start)])


def test_each_file_has_machine_times_step_channels_gaps(folder):
    put(folder, "red.csv", "{t:%Y-%m-%d %H:%M},{c:.1f},{h:.0f}", "time,temp (°C),rh (%)", without=range(300, 340))
    (folder / "sensors" / "letter.txt").write_text("Dear all\n")
    season = hk.load_season(folder)
    assert season.logs["file"].tolist() == ["sensors/red.csv", "sensors/letter.txt"] and season.logs["gaps"][0] == 1
    told = logs_part(season)
    assert told == (
        "The loggers' files sensors/red.csv: Red (by the file's name), 3 April 2026 20:00 to 9 April 2026 "
        "00:45, every 15 min, 460 readings, one gap of 10.2 h; temp: °C and humidity by the heading. "
        "Not read: sensors/letter.txt."
    )
    assert "temp: °C and humidity by the heading" in check_page(season)


def test_files_of_one_machine_that_are_alike_stand_together_and_the_screen_is_one(folder):
    for month in range(1, 10):
        for name in ("red", "blue"):
            put(
                folder,
                f"{name}_2026-0{month}.csv",
                "{t:%Y-%m-%d %H:%M},{c:.1f}",
                "time,temp (°C)",
                30,
                start=START.replace(month=month),
            )
    season = hk.load_season(folder)
    assert [(log["incubator"], len(log["files"]), log["readings"]) for log in logs_read(season)] == [
        ("Blue", 9, 270),
        ("Red", 9, 270),
    ]
    assert len(logs_part(season, full=True).split("sensors/")) == 19
    assert len(check_text(season).splitlines()) <= MOST_LINES


def test_more_groups_than_fit_are_counted(folder):
    for number in range(9):
        put(folder, f"box{number}.csv", "{t:%Y-%m-%d %H:%M},{c:.1f}", "time,temp (°C)", 30)
    told = logs_part(hk.load_season(folder))
    assert told.endswith("6 more files or groups of files: hatchkit check FOLDER --full.")


def test_what_is_open_in_a_log_is_asked_with_the_sheets_and_an_answer_holds(folder):
    strange(folder)
    season = hk.load_season(folder)
    assert list(season.questions.columns) == QUESTIONS and season.logs["asked"][0] == [
        "log_column",
        "log_date_order",
        "log_machine",
    ]
    asked = {question["heading"]: question for question in questions_of(season)}
    assert {"field1", "field2", "when", "?log_machine"} <= set(asked)
    assert "Asked: what its columns are, its dates and its machine." in logs_part(season)
    answers = {"field1": "rh", "field2": "temp_C", "when": "mdy", "?log_machine": "Blue"}
    for heading, answer in answers.items():
        assert answer in [choice["taken"] for choice in asked[heading]["choices"]]
    keep_answers(folder, {("sensors/xyz.csv", "", heading): answer for heading, answer in answers.items()})
    season = hk.load_season(folder)
    assert not [question for question in questions_of(season) if question["code"].startswith("log_")]
    assert set(season.readings["time"].dt.tz_convert("Europe/Rome").dt.month) == {4}
    assert set(season.readings["incubator"]) == {"Blue"} and season.readings["rh_pct"].between(45, 60).all()


def test_where_two_code_pages_make_sense_the_person_is_asked_and_the_answer_holds(folder):
    text = "time;T¹;rh\n" + "".join(f"2026-04-{n + 10} 10:00;37.{n};50\n" for n in range(9))
    (folder / "sensors" / "red.csv").write_bytes(text.encode("cp1252"))
    season = hk.load_season(folder)
    assert season.readings["temp_c"].notna().all()
    question = next(row for row in questions_of(season) if row["code"] == "log_encoding")
    assert question["taken"] == "cp1252" and len(question["choices"]) == 2
    told = " ".join(line.strip() for line in check_text(season).splitlines())
    assert "read: “time;T¹;rh” (cp1252) or “time;Tš;rh” (iso8859_2)? Taken for now: cp1252." in told
    keep_answers(folder, {("sensors/red.csv", "", question["heading"]): "iso8859_2"})
    season = hk.load_season(folder)
    assert season.questions[season.questions["code"] == "log_encoding"].empty
    assert season.readings["temp_c"].isna().all() and (season.readings["rh_pct"] == 50).all()


def test_each_question_on_a_log_is_said_in_whole_words(folder):
    strange(folder)
    put(folder, "cold.csv", "{t:%Y-%m-%d %H:%M},60.{h:.0f},52", "time,temp,rh")
    put(folder, "bare.csv", "{t:%Y-%m-%d %H:%M},37{h:.0f},52", "time,temp,rh")
    season = hk.load_season(folder)
    assert {"log_column", "log_date_order", "log_machine", "log_unit", "log_scale"} <= set(season.questions["code"])
    told = " ".join(line.strip() for line in check_text(season).splitlines())
    for words in (
        "In which unit is “temp”? Taken for now: temperature in °F.",
        "seems to lack its decimal mark.",
        "divided by 100 or as it stands",
        "It may be: Red, Blue or none of these.",
        "Which machine does the log sensors/xyz.csv belong to?",
        "What is the column “field1” of the log? Taken for now: humidity in %.",
        "It may be: day, month, year or month, day, year.",
        "90 readings depend on it.",
    ):
        assert words in told, words
