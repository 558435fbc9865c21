"""Sensor files as loggers and spreadsheets write them: each is the same twelve readings, written otherwise."""

import os

import numpy as np
import pandas as pd
import pytest

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.read import Wishes, read_accounted, read_readings

TIMES = pd.date_range("2026-04-13 22:30", periods=12, freq="10min")
TEMPS = np.array([37.5, 37.6, 37.7, 37.8, 37.7, 37.6, 37.5, 37.4, 37.6, 37.7, 37.8, 37.9])
RH = np.array([51.5, 51.6, 51.7, 52.0, 52.1, 52.2, 52.3, 52.4, 52.5, 52.6, 52.7, 52.8])


def lines(stamp, *, sep=",", comma=False, quote=False, temps=TEMPS, rh=RH, tail=""):
    """The readings as lines of text."""
    out = []
    for time, temp, humidity in zip(TIMES, temps, rh, strict=True):
        cells = [f"{temp:.1f}", f"{humidity:.1f}"]
        cells = [cell.replace(".", ",") for cell in cells] if comma else cells
        cells = [f'"{cell}"' for cell in cells] if quote else cells
        out.append(sep.join([time.strftime(stamp), *cells]) + tail)
    return "\n".join(out) + "\n"


FILES = {
    "comma and ISO": "time,temperature (°C),humidity (%)\n" + lines("%Y-%m-%d %H:%M:%S"),
    "ISO with T": "time,temperature (°C),humidity (%)\n" + lines("%Y-%m-%dT%H:%M:%S"),
    "ISO with Z": "time,temperature (°C),humidity (%)\n" + lines("%Y-%m-%dT%H:%M:%SZ"),
    "ISO with thousandths and Z": "time,temperature (°C),humidity (%)\n" + lines("%Y-%m-%dT%H:%M:%S.000Z"),
    "ISO without seconds": "time,temp C,rh\n" + lines("%Y-%m-%d %H:%M"),
    "semicolon, decimal comma, day first": "Zeit;Temperatur °C;Feuchte %\n"
    + lines("%d.%m.%Y %H:%M:%S", sep=";", comma=True),
    "semicolon, decimal dot": "Zeit;Temperatur °C;Feuchte %\n" + lines("%d.%m.%Y %H:%M", sep=";"),
    "comma, quoted decimal comma": "Time,Temp °C,RH %\n" + lines("%d/%m/%Y %H:%M", comma=True, quote=True),
    "tab": "date time\tcelsius\thumidity\n" + lines("%Y/%m/%d %H:%M:%S", sep="\t"),
    "bar": "date time|celsius|humidity\n" + lines("%Y.%m.%d %H:%M:%S", sep="|"),
    "spaces": "date time temp_c rh\n" + lines("%Y-%m-%d %H:%M:%S", sep="   "),
    "month first": "Date/Time,Temp(C),RH(%)\n" + lines("%m/%d/%Y %H:%M:%S"),
    "month first, 12 hours": "Date/Time,Temp(C),RH(%)\n" + lines("%m/%d/%Y %I:%M:%S %p"),
    "day first, 12 hours, small letters": "Date/Time,Temp(C),RH(%)\n"
    + "".join(
        line.replace("AM", "a.m.").replace("PM", "p.m.") + "\n" for line in lines("%d/%m/%Y %I:%M %p").splitlines()
    ),
    "12 hours in Greek": "Date/Time,Temp(C),RH(%)\n"
    + "".join(line.replace("AM", "πμ").replace("PM", "μμ") + "\n" for line in lines("%d/%m/%Y %I:%M %p").splitlines()),
    "2-digit year": "Date/Time,Temp(C),RH(%)\n" + lines("%d.%m.%y %H:%M"),
    "2-digit year first": "Date/Time,Temp(C),RH(%)\n" + lines("%y-%m-%d %H:%M"),
    "month names": "Date/Time,Temp(C),RH(%)\n" + lines("%d %b %Y %H:%M"),
    "month names first": "Date/Time;Temp(C);RH(%)\n" + lines("%b %d, %Y %H:%M", sep=";"),
    "date and time apart": "Datum;Uhrzeit;Temp. [°C];r.F. [%]\n" + lines("%d.%m.%Y;%H:%M:%S", sep=";", comma=True),
    "date, time and half of the day apart": "Date,Time,AM/PM,Temp C,RH\n" + lines("%m/%d/%Y,%I:%M:%S,%p"),
    "Unix seconds": "timestamp,temp_c,rh\n"
    + "".join(f"{int(t.timestamp())},{c},{h}\n" for t, c, h in zip(TIMES, TEMPS, RH, strict=True)),
    "Unix milliseconds": "timestamp,temp_c,rh\n"
    + "".join(f"{int(t.timestamp() * 1000)},{c},{h}\n" for t, c, h in zip(TIMES, TEMPS, RH, strict=True)),
    "no header": lines("%Y-%m-%d %H:%M:%S"),
    "no header, with a running number": "".join(
        f"{n},{line}\n" for n, line in enumerate(lines("%Y-%m-%d %H:%M:%S").splitlines(), 1)
    ),
    "running number": "#,Date-Time,Ch:1 - Temperature (°C),Ch:2 - RH (%)\n"
    + "".join(f"{n},{line}\n" for n, line in enumerate(lines("%m/%d/%Y %H:%M:%S").splitlines(), 1)),
    "preamble": "Logger report\nSerial: 0012\nStarted 2026-04-13 22:30:00\n\nUnit;C\n\nTime;Temp °C;RH %\n"
    + lines("%d.%m.%Y %H:%M:%S", sep=";", comma=True),
    "line of units": "Time;Temperature;Humidity\n;°C;%RH\n" + lines("%d.%m.%Y %H:%M:%S", sep=";", comma=True),
    "phantom last column": "Time;Temp °C;RH %;\n" + lines("%d.%m.%Y %H:%M:%S", sep=";", comma=True, tail=";"),
    "phantom column not in the header": "Time;Temp °C;RH %\n" + lines("%d.%m.%Y %H:%M", sep=";", tail=";"),
    "separator named": "sep=;\nTime;Temp °C;RH %\n" + lines("%d.%m.%Y %H:%M:%S", sep=";", comma=True),
    "units in the cells": "Time,Temperature,Humidity\n"
    + "".join(f"{t:%Y-%m-%d %H:%M},{c}°C,{h}%\n" for t, c, h in zip(TIMES, TEMPS, RH, strict=True)),
    "all cells quoted": '"Time","Temp (°C)","RH (%)"\n'
    + "".join(f'"{t:%Y-%m-%d %H:%M:%S}","{c}","{h}"\n' for t, c, h in zip(TIMES, TEMPS, RH, strict=True)),
    "weekday before the date": "Time;Temp (°C);RH (%)\n" + lines("%a %d.%m.%Y %H:%M", sep=";"),
    "more columns": "Time;Temp (°C);Alarm high (°C);RH (%);Battery (V)\n"
    + "".join(f"{t:%Y-%m-%d %H:%M};{c};39.5;{h};3.1\n" for t, c, h in zip(TIMES, TEMPS, RH, strict=True)),
    "single digits": "Time;Temp (°C);RH (%)\n"
    + "".join(
        f"{t.day}/{t.month}/{t.year} {t.hour}:{t.minute:02d};{c};{h}\n"
        for t, c, h in zip(TIMES, TEMPS, RH, strict=True)
    ),
    "humidity before temperature": "Time,RH (%),Temp (°C)\n"
    + "".join(f"{t:%Y-%m-%d %H:%M},{h},{c}\n" for t, c, h in zip(TIMES, TEMPS, RH, strict=True)),
    "one quantity a line": "time,parameter,value,unit\n"
    + "".join(
        f"{t:%Y-%m-%d %H:%M},Temperature,{c},°C\n{t:%Y-%m-%d %H:%M},Humidity,{h},%\n"
        for t, c, h in zip(TIMES, TEMPS, RH, strict=True)
    ),
}


def read(tmp_path, text, encoding="utf-8", **said):
    path = tmp_path / "log.csv"
    path.write_bytes(text.encode(encoding))
    return read_readings(path, **said)


def assert_truth(readings, *, temps=TEMPS, rh=RH):
    assert list(readings["time"]) == list(TIMES.tz_localize("UTC"))
    np.testing.assert_allclose(readings["temp_c"], temps, atol=0.051)
    np.testing.assert_allclose(readings["rh_pct"], rh, atol=0.051)
    assert (readings["doubt"] == "").all()


@pytest.mark.parametrize("name", FILES)
def test_the_same_readings_come_out_of_every_way_to_write_them(tmp_path, name):
    readings, problems = read(tmp_path, FILES[name])
    assert_truth(readings)
    assert not (problems["severity"] == "lost").any()


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252"])
def test_every_usual_encoding_is_read(tmp_path, encoding):
    readings, _ = read(tmp_path, FILES["semicolon, decimal comma, day first"], encoding)
    assert_truth(readings)


@pytest.mark.parametrize("ending", ["\r\n", "\r"])
def test_every_line_ending_is_read(tmp_path, ending):
    readings, _ = read(tmp_path, FILES["preamble"].replace("\n", ending))
    assert_truth(readings)


@pytest.mark.parametrize("count", [0, 1, 7, 40])
def test_a_preamble_of_any_length_is_skipped(tmp_path, count):
    above = "".join(f"Note {n}: kept in the hall, 3 trays\n" for n in range(count))
    readings, problems = read(tmp_path, above + FILES["comma and ISO"])
    assert_truth(readings)
    # One line of names above the readings is as it should be; more than that is said.
    assert any(facts.get("count") == count + 1 for facts in problems["facts"]) == (count > 0)


def test_fahrenheit_and_kelvin_are_turned_into_celsius(tmp_path):
    for header, temps in (("Temp (°F)", TEMPS * 1.8 + 32), ("Temp (K)", TEMPS + 273.15)):
        readings, _ = read(tmp_path, f"Time,{header},RH\n" + lines("%Y-%m-%d %H:%M", temps=temps))
        assert_truth(readings)


def test_a_unit_that_is_not_said_is_taken_from_the_range_and_noted(tmp_path):
    readings, problems = read(tmp_path, "Time,Temp,RH\n" + lines("%Y-%m-%d %H:%M", temps=TEMPS * 1.8 + 32))
    assert_truth(readings)
    assert problems.loc[problems["code"] == "log_unit_guessed", "severity"].tolist() == ["note"]


def test_a_unit_that_cannot_be_is_doubted(tmp_path):
    readings, problems = read(tmp_path, "Time,Temp (°C),RH\n" + lines("%Y-%m-%d %H:%M", temps=TEMPS * 1.8 + 32))
    assert_truth(readings)
    assert problems.loc[problems["code"] == "log_unit_against", "severity"].tolist() == ["doubtful"]


def test_the_unit_the_person_names_wins(tmp_path):
    readings, _ = read(tmp_path, "Time,Temp,RH\n" + lines("%Y-%m-%d %H:%M"), temp_unit="F")
    np.testing.assert_allclose(readings["temp_c"], (TEMPS - 32) / 1.8)


def test_a_unit_column_holds_row_by_row(tmp_path):
    text = "Time,Temp,Unit,RH\n" + "".join(
        f"{t:%Y-%m-%d %H:%M},{c if n % 2 else c * 1.8 + 32:.2f},{'C' if n % 2 else 'F'},{h}\n"
        for n, (t, c, h) in enumerate(zip(TIMES, TEMPS, RH, strict=True))
    )
    readings, _ = read(tmp_path, text)
    assert_truth(readings)


def test_local_time_becomes_utc(tmp_path):
    readings, _ = read(tmp_path, FILES["month first"], timezone="Europe/Rome")
    assert list(readings["time"]) == list(TIMES.tz_localize("Europe/Rome").tz_convert("UTC"))


@pytest.mark.parametrize("header", ["Time (UTC+02:00)", "Date Time, GMT+02:00", "Time [GMT+2]"])
def test_a_zone_in_the_header_wins(tmp_path, header):
    text = f"{header};Temp °C;RH %\n" + lines("%d.%m.%Y %H:%M", sep=";")
    readings, _ = read(tmp_path, text, timezone="Asia/Tokyo")
    assert list(readings["time"]) == list((TIMES - pd.Timedelta(hours=2)).tz_localize("UTC"))


def test_a_zone_above_the_header_is_used(tmp_path):
    readings, _ = read(tmp_path, "Time zone: UTC-05:00\nTime;Temp °C;RH %\n" + lines("%d.%m.%Y %H:%M", sep=";"))
    assert list(readings["time"]) == list((TIMES + pd.Timedelta(hours=5)).tz_localize("UTC"))


def test_an_offset_in_every_stamp_is_used(tmp_path):
    readings, _ = read(tmp_path, "time,temp C,rh\n" + lines("%Y-%m-%dT%H:%M:%S+02:00"))
    assert list(readings["time"]) == list((TIMES - pd.Timedelta(hours=2)).tz_localize("UTC"))


def test_without_a_zone_the_clock_stands_and_a_note_says_so(tmp_path):
    readings, problems = read(tmp_path, FILES["month first"])
    assert_truth(readings)
    assert problems["code"].eq("log_zone_none").sum() == 1


def test_lines_add_up_with_blank_event_summary_and_header_lines_between(tmp_path):
    body = lines("%Y-%m-%d %H:%M").splitlines()
    header = "time,temp C,rh"
    text = [
        header,
        *body[:4],
        "",
        "2026-04-13 23:11,door opened,",
        header,
        *body[4:8],
        ",,",
        *body[8:],
        "Average,37.7,52.1",
        "no,37.9,52",
        "end of data",
        "",
    ]
    path = tmp_path / "log.csv"
    path.write_text("\n".join(text))
    readings, account = read_accounted(path, Wishes())
    assert_truth(readings)
    counted = {kind: number for kind, number in account.lines.items() if kind != "lines"}
    assert counted == {
        "header": 1,
        "blank": 2,
        "repeated_header": 1,
        "events": 1,
        "words": 2,
        "untimed": 1,
        "readings": 12,
    }
    assert sum(counted.values()) == account.lines["lines"] and counted["readings"] == len(readings)


def test_a_line_that_cannot_be_dated_is_named(tmp_path):
    text = "time;temp C\n" + "".join(f"{t:%d.%m.%Y %H:%M};{c}\n" for t, c in zip(TIMES, TEMPS, strict=True))
    readings, problems = read(tmp_path, text + "31.02.2026 10:00;37,7\n")
    assert len(readings) == 12
    lost = problems[problems["severity"] == "lost"]
    assert lost["row"].tolist() == [14] and "31.02.2026" in lost["facts"].iloc[0]["example"]


def test_two_probes_keep_their_names_and_their_humidity(tmp_path):
    text = "Time,Temp A (°C),RH A (%),Temp B (°C),RH B (%)\n" + "".join(
        f"{t:%Y-%m-%d %H:%M},{c},{h},{c - 1},{h + 5}\n" for t, c, h in zip(TIMES, TEMPS, RH, strict=True)
    )
    readings, _ = read(tmp_path, text)
    assert_truth(readings[readings["probe"] == "Temp A"])
    assert_truth(readings[readings["probe"] == "Temp B"], temps=TEMPS - 1, rh=RH + 5)
    only, _ = read(tmp_path, text, channel="temp b")
    assert_truth(only, temps=TEMPS - 1, rh=RH + 5)


def test_two_columns_under_the_same_header_are_told_apart(tmp_path):
    text = "Time,Temperature (°C),Temperature (°C)\n" + "".join(
        f"{t:%Y-%m-%d %H:%M},{c},{c - 1}\n" for t, c in zip(TIMES, TEMPS, strict=True)
    )
    readings, _ = read(tmp_path, text)
    np.testing.assert_allclose(readings.loc[readings["probe"] == "Temperature 2", "temp_c"], TEMPS - 1)


def test_a_probe_column_names_the_probes(tmp_path):
    text = "Time,Sensor,Temp (°C),RH (%)\n" + "".join(
        f"{t:%Y-%m-%d %H:%M},top,{c},{h}\n{t:%Y-%m-%d %H:%M},bottom,{c - 1},{h + 5}\n"
        for t, c, h in zip(TIMES, TEMPS, RH, strict=True)
    )
    readings, _ = read(tmp_path, text)
    assert_truth(readings[readings["probe"] == "top"])
    assert_truth(readings[readings["probe"] == "bottom"], temps=TEMPS - 1, rh=RH + 5)


def test_two_loggers_in_turn_with_blanks_are_two_probes(tmp_path):
    text = "Time;T1 °C;T2 °C\n" + "".join(
        f"{t:%Y-%m-%d %H:%M};{c};\n{t + pd.Timedelta('3min'):%Y-%m-%d %H:%M};;{c - 1}\n"
        for t, c in zip(TIMES, TEMPS, strict=True)
    )
    readings, _ = read(tmp_path, text)
    one, two = (readings[readings["probe"] == name] for name in ("T1", "T2"))
    assert len(one) == len(two) == 12 and (readings["doubt"] == "").all()
    np.testing.assert_allclose(two["temp_c"], TEMPS - 1)


def test_wet_bulb_becomes_humidity_with_pressure_and_ventilation_said(tmp_path):
    # Dry 37.5 °C, wet 29.0 °C at 101.325 kPa, ventilated: 53 % by the psychrometer equation.
    text = "Time;Dry bulb °F;Wet bulb °F\n" + "".join(f"{t:%Y-%m-%d %H:%M};99.5;84.2\n" for t in TIMES)
    readings, problems = read(tmp_path, text)
    assert readings["rh_pct"].between(51, 55).all()
    [facts] = problems.loc[problems["code"] == "log_humidity_wet_bulb", "facts"]
    assert (facts["air"], facts["pressure"]) == ("fan", 101.3)


def test_dew_point_becomes_humidity(tmp_path):
    text = "Time;Temp °C;Dew point °C\n" + "".join(f"{t:%Y-%m-%d %H:%M};37.5;26.0\n" for t in TIMES)
    readings, _ = read(tmp_path, text)
    assert readings["rh_pct"].between(51, 53.5).all()


@pytest.mark.parametrize("code", ["", "NA", "--", "Err", "-200", "85.0", "9999", "-127", "--.-"])
def test_missing_codes_are_kept_and_marked(tmp_path, code):
    rows = lines("%Y-%m-%d %H:%M").splitlines()
    rows[5] = f"{TIMES[5]:%Y-%m-%d %H:%M},{code},{RH[5]}"
    readings, problems = read(tmp_path, "time,temp (°C),rh\n" + "\n".join(rows))
    assert len(readings) == 12
    assert readings["doubt"].tolist() == [""] * 5 + ["missing code"] + [""] * 6
    assert np.isnan(readings["temp_c"].iloc[5]) and readings["rh_pct"].iloc[5] == RH[5]
    assert (problems["severity"] == "doubtful").any()


def test_a_header_without_readings_says_no_readings(tmp_path):
    readings, problems = read(tmp_path, "Time;Temp °C;RH %\n")
    assert readings.empty and problems["code"].iloc[0] == "log_lines_no_readings"
    assert problems["severity"].tolist() == ["lost"]


@pytest.mark.parametrize(
    ("content", "why"),
    [
        (b"", "empty"),
        (b"\n\n\n", "empty"),
        (b"PK\x03\x04 and more", "workbook"),
        (b"%PDF-1.7", "PDF"),
        (bytes(range(256)) * 40, "no text"),
        (b"batch,eggs\n1,30\n2,40\n", "no line of it"),
        (b"date,eggs laid by\n2026-04-01 10:00,Anna\n", "no line|no column"),
    ],
)
def test_a_file_that_is_no_log_says_why(tmp_path, content, why):
    path = tmp_path / "odd.csv"
    path.write_bytes(content)
    with pytest.raises(HatchkitError, match=f"odd.csv cannot be read as a sensor log.*(?:{why})"):
        read_readings(path)


def test_a_file_that_cannot_be_opened_says_so(tmp_path):
    with pytest.raises(HatchkitError, match="cannot be opened"):
        read_readings(tmp_path / "none.csv")
    with pytest.raises(HatchkitError, match="cannot be opened"):
        read_readings(tmp_path)


def test_missing_values_in_the_first_lines_are_readings_not_title(tmp_path):
    rows = lines("%Y-%m-%d %H:%M").splitlines()
    rows[:2] = [f"{t:%Y-%m-%d %H:%M},Err,--" for t in TIMES[:2]]
    readings, problems = read(tmp_path, "time,temp (°C),rh\n" + "\n".join(rows))
    assert readings["doubt"].tolist() == ["missing code"] * 2 + [""] * 10
    assert not problems["code"].eq("log_lines_top").any()


def test_a_single_quote_mark_does_not_swallow_the_rest(tmp_path):
    rows = ['"' + line.replace(",", '","') + '"' for line in lines("%Y-%m-%d %H:%M").splitlines()]
    rows[5] = rows[5][1:]
    readings, problems = read(tmp_path, '"time","temp (°C)","rh"\n' + "\n".join(rows))
    assert_truth(readings)
    rows[7] = '"' + rows[7].replace('"', "")
    readings, problems = read(tmp_path, '"time","temp (°C)","rh"\n' + "\n".join(rows))
    assert_truth(readings)
    assert problems["code"].eq("log_lone_quotes").sum() == 1


def test_zeros_after_a_power_cut_are_one_blank_line(tmp_path):
    path = tmp_path / "log.csv"
    path.write_bytes(FILES["comma and ISO"].encode() + b"\x00" * 4000)
    readings, problems = read_readings(path)
    assert_truth(readings)
    assert problems.loc[problems["code"] == "log_lines_blank", "facts"].iloc[0]["count"] == 1


def test_a_line_cut_off_at_the_end_is_kept_as_far_as_it_goes(tmp_path):
    readings, _ = read(tmp_path, FILES["semicolon, decimal comma, day first"][:-3])
    assert len(readings) == 12 and (readings["doubt"] == "").all()


def test_decimal_commas_between_commas_are_refused_with_the_way_out(tmp_path):
    text = "Time,Temp °C,RH %\n" + lines("%Y-%m-%d %H:%M", comma=True)
    with pytest.raises(HatchkitError, match="with semicolons or with decimal points"):
        read(tmp_path, text)


def test_columns_with_names_of_their_own_are_probes(tmp_path):
    text = "Zeit;Kasten oben;Kasten unten\n" + lines("%d.%m.%Y %H:%M", sep=";", comma=True, rh=TEMPS - 1)
    readings, problems = read(tmp_path, text)
    assert sorted(readings["probe"].unique()) == ["Kasten oben", "Kasten unten"]
    assert problems["code"].eq("log_by_behaviour").sum() == 1


def test_a_table_of_batches_is_no_log(tmp_path):
    rows = "".join(f"{d},hen,{d}.04.2026,30,20\n" for d in range(10, 30))
    text = "batch,species,set_at,eggs_set,hatched\n" + rows
    with pytest.raises(HatchkitError, match="dates without a time of day"):
        read(tmp_path, text)


def test_a_file_that_grows_meanwhile_is_read_as_it_was(tmp_path, monkeypatch):
    path = tmp_path / "log.csv"
    path.write_text(FILES["comma and ISO"], encoding="utf-8")
    seen = os.fstat

    def grow(handle):
        found = seen(handle)
        with open(path, "a", encoding="utf-8") as more:
            more.write("2026-04-14 00:30:00,37.7,52.9\n")
        return found

    monkeypatch.setattr("hatchkit.records.logs.texts.os.fstat", grow)
    readings, _ = read_readings(path)
    assert_truth(readings)


def test_too_large_a_file_is_refused_before_it_is_read(tmp_path):
    path = tmp_path / "log.csv"
    with open(path, "wb") as file:
        file.truncate(600_000_000)
    with pytest.raises(HatchkitError, match="larger than 500 MB"):
        read_readings(path)


@pytest.mark.parametrize("filling", [b"x\n", b"some words and more of them\n", b"z"])
def test_a_file_that_is_a_log_only_at_its_head_is_refused_quickly(tmp_path, filling):
    path = tmp_path / "log.csv"
    path.write_bytes(FILES["comma and ISO"].encode() + filling * (20_000_000 // len(filling)))
    with pytest.raises(HatchkitError, match="begins like a log|no text"):
        read_readings(path)


def test_a_wrong_unit_in_season_toml_is_named(tmp_path):
    with pytest.raises(HatchkitError, match="temp_unit is 'X'"):
        read(tmp_path, FILES["comma and ISO"], temp_unit="X")


def test_a_folder_that_may_not_be_read_is_a_sentence(tmp_path, monkeypatch):
    def refuse(*_, **__):
        raise PermissionError(13, "Permission denied")

    (tmp_path / "log.csv").write_text(FILES["comma and ISO"], encoding="utf-8")
    monkeypatch.setattr("builtins.open", refuse)
    with pytest.raises(HatchkitError, match="cannot be opened .Permission denied."):
        read_readings(tmp_path / "log.csv")


def long_lines(form):
    return "".join(form.format(t=f"{t:%Y-%m-%d %H:%M}", c=c, h=h) for t, c, h in zip(TIMES, TEMPS, RH, strict=True))


@pytest.mark.parametrize(
    "text",
    [
        "time,sensor,value\n" + long_lines("{t},Temp low,{c}\n{t},Hum low,{h}\n"),
        "entity,state,last changed\n" + long_lines("hall_temperature,{c},{t}\nhall_humidity,{h},{t}\n"),
        "time,value,unit\n" + long_lines("{t},{c},°C\n{t},{h},%\n"),
    ],
)
def test_names_that_hold_the_quantity_make_one_probe(tmp_path, text):
    readings, _ = read(tmp_path, text)
    assert_truth(readings)


def test_of_two_stamps_the_one_that_names_its_zone_is_taken(tmp_path):
    local = TIMES + pd.Timedelta(hours=2)
    text = "Local time,UTC time,Temp C,RH\n" + "".join(
        f"{a:%Y-%m-%d %H:%M},{t:%Y-%m-%d %H:%M},{c},{h}\n" for a, t, c, h in zip(local, TIMES, TEMPS, RH, strict=True)
    )
    readings, _ = read(tmp_path, text, timezone="Asia/Tokyo")
    assert_truth(readings)


def test_set_points_and_the_same_value_in_another_unit_are_no_probes(tmp_path):
    text = "Time,Set temp,Temp (°C),Temp (°F),Set RH,RH\n" + "".join(
        f"{t:%Y-%m-%d %H:%M},37.7,{c},{c * 1.8 + 32:.2f},55,{h}\n" for t, c, h in zip(TIMES, TEMPS, RH, strict=True)
    )
    readings, problems = read(tmp_path, text)
    assert_truth(readings)
    told = problems.set_index("code")["facts"]
    assert told["log_unused"] == dict(names=["Set temp", "Set RH"]) and told["log_twins"] == dict(names=["Temp (°F)"])


def test_a_correction_of_one_column_leaves_the_logged_value(tmp_path):
    readings, _ = read(tmp_path, FILES["comma and ISO"])
    readings["temp_c"] += 1
    readings.loc[0, "temp_c"] = 0.0
    readings.loc[0, "incubator"] = "A"
    np.testing.assert_allclose(readings["temp_logged_c"], TEMPS)
    assert (readings["doubt"] == "").all() and readings["incubator"].tolist() == ["A"] + [""] * 11
