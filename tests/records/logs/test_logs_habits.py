"""Habits of loggers and of keepers that save a table anew: an invented log in many writings gives the same readings."""

import datetime as dt
import json

import numpy as np
import pytest

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.names import unit_of
from hatchkit.records.logs.read import Wishes, read_accounted

START = dt.datetime(2026, 3, 1, 18, 0)
#: Time, degC, per cent: a day and a half, so that midnight is passed twice.
TRUTH = [(START + n * dt.timedelta(minutes=30), round(37.4 + n * 7 % 11 / 20, 2), 50 + n * 3 % 7) for n in range(72)]
RECORDS = [{"time": f"{t:%Y-%m-%d %H:%M}", "temp": c, "hum": h} for t, c, h in TRUTH]
DAY_ZERO = dt.datetime(1899, 12, 30)


def lines(form, head=""):
    """The truth in lines of one form, `head` above."""
    body = [
        form.format(
            t=t,
            c=c,
            h=h,
            up=c + 1,
            day=t.strftime("%d.%m.%Y") if n == 0 or t.hour == t.minute == 0 else "",
            serial=(t - DAY_ZERO) / dt.timedelta(days=1),
            yearday=(t - dt.datetime(2025, 12, 31)) / dt.timedelta(days=1),
            count=30 * n,
            n=n + 1,
        )
        for n, (t, c, h) in enumerate(TRUTH)
    ]
    return "\n".join([head, *body] if head else body) + "\n"


def quoted(text):
    """Each whole line in quotes, quotes inside doubled."""
    return "".join('"' + line.replace('"', '""') + '"\n' for line in text.splitlines())


def read(tmp_path, text):
    """The readings of a text, which must leave nothing to ask."""
    path = tmp_path / "log.csv"
    path.write_text(text, encoding="utf-8")
    readings, account = read_accounted(path, Wishes())
    assert not account.questions
    return readings


def exact(readings, *, humid=True):
    assert readings["time"].dt.tz_localize(None).dt.to_pydatetime().tolist() == [t for t, _, _ in TRUTH]
    np.testing.assert_allclose(readings["temp_c"], [c for _, c, _ in TRUTH], atol=0.006)
    if humid:
        np.testing.assert_allclose(readings["rh_pct"], [h for _, _, h in TRUTH])
    assert readings["probe"].nunique() == 1


@pytest.mark.parametrize(
    "names",
    [
        "Temp raw,Temp corrected",
        "Raw temperature (°C),Temperature (°C)",
        "temp_raw,temp",
        "Temp_uncal,Temp_cal",
        "Temperature uncompensated,Temperature compensated",
        "Temperatur Rohwert,Temperatur korrigiert",
        "Température brute,Température corrigée",
    ],
)
def test_a_raw_column_is_not_read_beside_the_corrected_one(tmp_path, names):
    exact(read(tmp_path, lines("{t:%Y-%m-%d %H:%M},{up:.2f},{c:.2f},{h}", f"Time,{names},RH")))


def test_a_raw_humidity_is_not_read_beside_the_corrected_one(tmp_path):
    exact(read(tmp_path, lines("{t:%Y-%m-%d %H:%M},{c:.2f},9,{h}", "Time,Temp,RH raw,RH corrected")))


@pytest.mark.parametrize(
    "names",
    [
        "Current temp,Highest temp,Lowest temp",
        "Temperature actual,High temperature,Low temperature",
        "Temp now,Temp peak,Temp low",
        "Temp current,Temp max,Temp min",
        "Temperatur aktuell,Temperatur höchste,Temperatur niedrigste",
        "Température actuelle,Température haute,Température basse",
    ],
)
def test_highest_and_lowest_are_not_read_beside_the_value_of_the_moment(tmp_path, names):
    exact(read(tmp_path, lines("{t:%Y-%m-%d %H:%M},{c:.2f},39.9,30.1,{h}", f"Time,{names},RH")))


@pytest.mark.parametrize(
    "names", ["Temp high,Temp low", "Temp raw,Temp box raw", "Top current temp,Bottom high temp", "Temp 1 raw,Temp 2"]
)
def test_columns_of_two_places_stay_two_probes(tmp_path, names):
    readings = read(tmp_path, lines("{t:%Y-%m-%d %H:%M},{up:.2f},{c:.2f}", f"Time,{names}"))
    assert readings["probe"].nunique() == 2 and len(readings) == 2 * len(TRUTH)


COMMAS = lines("{t:%Y-%m-%d %H:%M},{c:.2f},{h}", "Time,Temperature (°C),Humidity (%)")


@pytest.mark.parametrize(
    "text",
    [
        quoted(COMMAS),
        quoted(COMMAS).replace("\n", "\r\n"),
        quoted("Room 2, by the door\n" + COMMAS),
        COMMAS.split("\n")[0] + "\n" + quoted(COMMAS.split("\n", 1)[1]),
        quoted(lines('"{t:%Y-%m-%d %H:%M}","{c:.2f}","{h}"', '"Time","Temperature (°C)","Humidity (%)"')),
        quoted(COMMAS.replace(",", ";").replace(".", ",")),
    ],
)
def test_quotes_around_whole_lines_come_off(tmp_path, text):
    exact(read(tmp_path, text))


@pytest.mark.parametrize(
    "text",
    [
        lines("{serial:.6f},{c:.2f},{h}", "Time,Temperature (°C),Humidity (%)"),
        lines("{serial:.6f};{c:.2f};{h}", "Date;Temperature;Humidity").replace(".", ","),
        lines("{c:.2f},{h},{serial:.10f}", "Shed log\n\nTemperature,Humidity,Time"),
    ],
)
def test_a_spreadsheets_numbers_of_the_day_are_times(tmp_path, text):
    exact(read(tmp_path, text))


def test_a_number_of_the_day_with_its_time_apart_is_refused(tmp_path):
    """A fraction of a day in a second column is not read: all readings would be put to midnight."""
    with pytest.raises(HatchkitError, match="Date"):
        read(tmp_path, lines("{serial:.0f},0.{n:03d},{c:.2f}", "Date,Time,Temperature"))


@pytest.mark.parametrize(
    "text",
    [
        lines("{day},{t:%H:%M},{c:.2f},{h}", "Date,Time,Temperature (°C),Humidity (%)"),
        lines("{day}\t{t:%H:%M:%S}\t{c:.2f}\t{h}", "Date\tTime\tTemp\tRH"),
    ],
)
def test_a_date_holds_for_the_readings_below_it(tmp_path, text):
    exact(read(tmp_path, text))


@pytest.mark.parametrize(
    "whole",
    [
        {"readings": RECORDS},
        [{"device": "box 1", "readings": RECORDS}],
        {"data": [{"readings": RECORDS}]},
        [{"readings": RECORDS[:30]}, {"readings": RECORDS[30:]}],
        {name: [record[name] for record in RECORDS] for name in RECORDS[0]},
        [{name: [record[name] for record in RECORDS] for name in RECORDS[0]}],
        [{"time": r["time"], "values": [{"temp": r["temp"]}, {"hum": r["hum"]}]} for r in RECORDS],
        [{**r, "alarms": [{"time": "2026-03-01 20:00", "text": "door"}]} for r in RECORDS],
        [{"time": r["time"], "temp": [r["temp"]], "hum": [r["hum"]]} for r in RECORDS],
    ],
)
def test_lists_inside_records_are_opened(tmp_path, whole):
    exact(read(tmp_path, json.dumps(whole)))


def test_the_moment_of_writing_is_no_time_of_the_readings(tmp_path):
    exact(read(tmp_path, json.dumps([{"exported": "2026-05-01 10:00", "readings": RECORDS}])))


@pytest.mark.parametrize(("heading", "unit"), [("Temp Kelvin", "K"), ("Temperature in kelvin", "K"), ("Temp box", "")])
def test_kelvin_is_a_unit_as_a_word_too(heading, unit):
    assert unit_of(heading) == unit


def test_devices_of_one_document_are_told_apart(tmp_path):
    parts = [{"device": "north", "readings": RECORDS[:30]}, {"device": "south", "readings": RECORDS[30:]}]
    assert read(tmp_path, json.dumps(parts))["probe"].value_counts().to_dict() == {"north": 30, "south": 42}


ROWS = lines("\t('{t:%Y-%m-%d %H:%M}' , {c:.2f} , {h} ),").rstrip(",\n") + ";\n"


@pytest.mark.parametrize(
    "text",
    [
        "INSERT INTO log (ts, temp, hum) VALUES\n" + ROWS,
        "INSERT INTO log (ts, temp, hum) VALUES " + ROWS.lstrip(),
        "CREATE TABLE log (ts text, temp real, hum real);\nINSERT INTO log VALUES\n" + ROWS,
    ],
)
def test_rows_of_one_command_stand_in_lines_of_their_own(tmp_path, text):
    exact(read(tmp_path, text))


@pytest.mark.parametrize(
    "form",
    [
        "time: {t:%Y-%m-%d %H:%M} temp: {c:.2f} hum: {h}",
        "timestamp={t:%Y-%m-%d %H:%M}; temperature={c:.2f}; humidity={h}",
        "Date: {t:%Y-%m-%d}, Time: {t:%H:%M}, Temp: {c:.2f} C, Humidity: {h} %",
        "{t:%Y-%m-%d %H:%M} box1 temp: {c:.2f} hum: {h}",
        "[{t:%Y-%m-%d %H:%M}] INFO box1: temp={c:.2f} hum={h}",
        "temp={c:.2f} hum={h} {t:%Y-%m-%d %H:%M}",
    ],
)
def test_the_stamp_of_a_labelled_line_is_found(tmp_path, form):
    exact(read(tmp_path, lines(form)))


def test_values_in_the_marks_of_an_element_are_read(tmp_path):
    form = '<r><time v="{t:%Y-%m-%d %H:%M}"/><temp v="{c:.2f}"/><humidity v="{h}"/></r>'
    exact(read(tmp_path, "<log>" + lines(form) + "</log>"))


@pytest.mark.parametrize(
    ("form", "head"),
    [
        ("{t:%Y-%m-%d %H:%M},{n},{c:.2f},{h}", "Time,Temp #,Temp,RH"),
        ("{t:%Y-%m-%d %H:%M},{c:.2f},{h},90", "Time,Temp,RH,(%)"),
        ("{t:%Y-%m-%d %H:%M},message {n},{c:.2f},{h}", "Time,Sensor,Temp,RH"),
        ("{t:%Y-%m-%d %H:%M},{c:.2f},{h},39,99", "Time,T,H,T max,H max"),
        ("{n} {t:%Y-%m-%d %H:%M} {c:.2f} {h}", "Timestamp Temp RH"),
        ("2026,{yearday:.6f},{c:.2f},{h}", "Year,DOY,Temp,RH"),
        ("2026,{t:%j},{t:%H%M},{c:.2f},{h}", "Year,Day,HHMM,Temp,RH"),
        ("{count},{c:.2f},{h}", "Started 2026-03-01 18:00, interval 30 min\nElapsed,Temp,RH"),
    ],
)
def test_numbers_beside_the_readings_are_none(tmp_path, form, head):
    exact(read(tmp_path, lines(form, head)))


def test_a_serial_number_beside_the_first_reading_is_no_probe(tmp_path):
    text = lines("{t:%Y-%m-%d %H:%M},,{c:.2f},{h}", "Time,Sensor,Temp,RH").replace(",,", ",4711,", 1)
    exact(read(tmp_path, text))


def test_a_unit_in_each_line_says_which_quantity_it_is(tmp_path):
    text = lines("{t:%Y-%m-%d %H:%M},{c:.2f},C\n{t:%Y-%m-%d %H:%M},{h},%", "Time,Value,Unit")
    exact(read(tmp_path, text))
