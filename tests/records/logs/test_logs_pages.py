"""Printed pages, marks behind values, dates that change their order, names that look like units."""

import datetime as dt

import numpy as np
import pandas as pd
import pytest

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.cells import is_number, without_mark
from hatchkit.records.logs.read import Wishes, read_accounted
from hatchkit.records.times import gather, two_orders

START = dt.datetime(2025, 1, 8, 15, 30)
NOISE = np.random.default_rng(3)
TEMP, RH = np.round(37.7 + NOISE.normal(0, 0.1, 300), 1), np.round(52 + NOISE.normal(0, 1, 300), 1)
TIMES = [START + n * dt.timedelta(minutes=30) for n in range(300)]


def read(tmp_path, lines, name="log.txt"):
    (tmp_path / name).write_text("\n".join(lines) + "\n", encoding="utf-8")
    return read_accounted(tmp_path / name, Wishes())


def assert_whole(readings):
    readings = readings.sort_values("time")
    assert readings["time"].dt.tz_localize(None).dt.to_pydatetime().tolist() == TIMES
    np.testing.assert_allclose(readings["temp_c"], TEMP)
    np.testing.assert_allclose(readings["rh_pct"], RH)


@pytest.mark.parametrize("newest_first", [False, True])
@pytest.mark.parametrize("above", [[], [""], ["", "Pagina {}", ""], ["Page {} of 4  Box (invented)"]])
@pytest.mark.parametrize("separator", ["   ", ";", "\t"])
@pytest.mark.parametrize("units", [False, True])
def test_a_heading_repeated_on_each_page_is_read_by_the_columns_of_the_first(
    tmp_path, separator, units, above, newest_first
):
    head = [separator.join(["Data", "Ora", "Temperatura", "Umidità"])]
    below = " " * 19 + "°C            %" if separator == "   " else separator.join(["", "", "°C", "%"])
    head += [below] if units else []
    rows = list(zip(TIMES, TEMP, RH, strict=True))
    lines = ["Incubatrice 12 (inventata)", ""]
    for place, (time, temp, rh) in enumerate(rows[::-1] if newest_first else rows):
        if place % 80 == 0:
            lines += [line.format(place // 80 + 1) for line in above if place] + head + [""]
        lines.append(separator.join([f"{time:%d/%m/%Y}", f"{time:%H.%M}", f"{temp:.1f}", f"{rh:.1f}"]))
    readings, account = read(tmp_path, lines)
    assert_whole(readings)
    assert not account.questions
    assert not [row for row in account.rows if row["severity"] == "lost"]


def test_other_units_below_the_same_headings_are_another_section(tmp_path):
    head, lines = ["Date;Time;Temperature;Humidity"], []
    for place, (time, temp, rh) in enumerate(zip(TIMES, TEMP, RH, strict=True)):
        if place % 150 == 0:
            lines += head + [";;°F;%" if place else ";;°C;%"]
        shown = temp * 1.8 + 32 if place >= 150 else temp
        lines.append(f"{time:%d/%m/%Y};{time:%H:%M};{shown:.2f};{rh:.1f}")
    readings, _ = read(tmp_path, lines)
    np.testing.assert_allclose(readings.sort_values("time")["temp_c"], TEMP, atol=0.006)


@pytest.mark.parametrize("mark", ["*", " !", " H", "LO", " ?"])
@pytest.mark.parametrize("separator, decimal", [(";", ","), ("   ", "."), ("   ", ","), (",", ".")])
def test_a_value_with_a_mark_behind_it_is_read_with_a_doubt(tmp_path, separator, decimal, mark):
    lines = [separator.join(["Date", "Time", "Temperature", "Humidity"])]
    for place, (time, temp, rh) in enumerate(zip(TIMES, TEMP, RH, strict=True)):
        shown = [f"{temp:.1f}" + (mark if 50 < place < 60 else ""), f"{rh:.1f}" + (mark if place == 200 else "")]
        lines.append(
            separator.join([f"{time:%d/%m/%Y}", f"{time:%H:%M}", *(cell.replace(".", decimal) for cell in shown)])
        )
    readings, account = read(tmp_path, lines)
    assert_whole(readings)
    marked = readings.sort_values("time")["doubt"].to_numpy() == "marked"
    assert np.flatnonzero(marked).tolist() == [*range(51, 60), 200]
    assert any((row["row"], row["code"]) == (53, "log_marked") for row in account.rows)


def test_a_mark_that_nearly_all_values_bear_doubts_none_of_them(tmp_path):
    lines = [
        "Date,Time,Temperature,Humidity",
        *(f"{t:%Y-%m-%d},{t:%H:%M},{c:.1f}*,{h:.1f}" for t, c, h in zip(TIMES, TEMP, RH, strict=True)),
    ]
    readings, account = read(tmp_path, lines)
    assert_whole(readings)
    assert not readings["doubt"].isin(["marked"]).any()
    assert any(row["code"] == "log_marked" for row in account.rows)


def test_letters_are_a_mark_behind_a_decimal_only():
    assert without_mark("37.5 H") == "37.5" and without_mark("37,5 °C!") == "37,5 °C"
    assert not is_number("24 h") and not is_number("24 H") and not is_number("H") and not is_number("*")


def dated(first, second, cut, days=40, start=dt.datetime(2025, 7, 13)):
    lines = ["Date;Time;Temperature;Humidity"]
    for place in range(days * 24):
        time = start + dt.timedelta(hours=place)
        form = first if place < cut * 24 else second
        lines.append(f"{time:{form}};{time:%H:%M};{TEMP[place % 300]};{RH[place % 300]}")
    return lines


DMY, MDY = "%d/%m/%Y", "%m/%d/%Y"


@pytest.mark.parametrize(
    "first, second, cut, days, start",
    [
        (DMY, MDY, 20, 40, dt.datetime(2025, 7, 13)),
        (MDY, DMY, 20, 40, dt.datetime(2025, 7, 13)),
        (DMY, MDY, 19, 21, dt.datetime(2025, 7, 13)),
        (MDY, DMY, 2, 21, dt.datetime(2025, 8, 1)),
        (DMY, MDY, 5, 10, dt.datetime(2025, 8, 1)),
        ("%d/%m/%y", "%m/%d/%y", 20, 40, dt.datetime(2025, 7, 13)),
    ],
)
def test_a_log_whose_dates_change_their_order_is_refused(tmp_path, first, second, cut, days, start):
    with pytest.raises(HatchkitError, match="change their order"):
        read(tmp_path, dated(first, second, cut, days, start))


@pytest.mark.parametrize("form", [DMY, MDY, "%d.%m.%y"])
def test_a_log_of_one_order_is_read_whole_and_a_stray_date_is_one_row(tmp_path, form):
    lines = dated(form, form, 0, 200)
    readings, _ = read(tmp_path, lines)
    assert len(readings) == 4800 and not (readings["doubt"] == "clock step").any()
    stray = "13/12/2026" if form == MDY else "12/13/2026"
    readings, account = read(tmp_path, [*lines[:900], f"{stray};10:00;37.5;52", *lines[900:]])
    assert len(readings) == 4800
    assert [row["row"] for row in account.rows if row["severity"] == "lost"] == [901]


def test_holes_of_a_month_are_no_change_of_order():
    days = [dt.date(2025, month, day) for month in (3, 4, 5, 6) for day in (4, 5)]
    assert two_orders(gather([f"{day:%d/%m/%Y} 10:00" for day in days])) is None


def test_names_with_a_unit_at_their_end_are_no_line_of_units(tmp_path):
    lines = [
        "# node3 log v2",
        "# unixtime t_inc_C t_room_C rh_inc vbat_mV",
        *(
            f"{int(t.replace(tzinfo=dt.UTC).timestamp())} {c:.1f} 23.4 {h:.1f} 3700"
            for t, c, h in zip(TIMES, TEMP, RH, strict=True)
        ),
    ]
    readings, account = read(tmp_path, lines)
    assert_whole(readings[readings["probe"] == "t_inc_C"])
    assert not account.questions
    assert set(pd.unique(readings["probe"])) == {"t_inc_C", "t_room_C"}
