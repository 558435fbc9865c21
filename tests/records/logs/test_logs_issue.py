"""What went wrong with real exports, one test each: crashes, swapped columns, false reasons, lost files."""

import datetime as dt
import gzip

import numpy as np
import pandas as pd
import pytest

from hatchkit.problems import HatchkitError
from hatchkit.records import marks
from hatchkit.records.logs.read import Wishes, read_accounted, read_readings
from hatchkit.records.logs.season import log_files, read_all
from hatchkit.records.sheets.shown import QUESTIONS

START = dt.datetime(2026, 4, 13, 22, 30)


def lines(form, count=60, step=30, head=""):
    noise = np.random.default_rng(2)
    out = [head] if head else []
    for n in range(count):
        t = START + n * dt.timedelta(minutes=step)
        c, h = 37.6 + noise.normal(0, 0.2), 52 + noise.normal(0, 2)
        out.append(form.format(t=t, c=c, f=c * 1.8 + 32, h=h, n=n + 1))
    return "\n".join(out) + "\n"


def put(path, text, encoding="utf-8"):
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(text.encode(encoding))
    return path


def batches(*names, start="2026-04-13"):
    return pd.DataFrame(
        {
            "batch": range(len(names)),
            "incubator": names,
            "set_at": pd.to_datetime([start] * len(names), utc=True),
            "taken_off_at": pd.to_datetime([start] * len(names), utc=True) + pd.Timedelta(days=22),
        }
    )


def test_a_temperature_column_of_nothing_but_words_is_no_traceback(tmp_path):
    text = lines("{t:%Y-%m-%d %H:%M},Failed to read", head="time,temperature")
    readings, problems = read_readings(put(tmp_path / "a.csv", text))
    assert readings["temp_c"].isna().all() and (problems["severity"] != "note").any()


def test_row_numbers_under_the_name_of_the_machine_are_no_probes(tmp_path):
    put(
        tmp_path / "sensors" / "Incubator A.csv",
        lines("{n},{t:%Y-%m-%d %H:%M},{c:.1f},{h:.0f}", 300, head="Incubator A,Time,Temperature,Humidity"),
    )
    logs = read_all(tmp_path, {}, batches("A", "B"), "UTC")
    assert logs.readings["probe"].nunique() == 1 and len(logs.readings) == 300 and len(logs.problems) < 8


@pytest.mark.parametrize(
    "head, unused",
    [
        ("time,temperature,humidity,UV,{n}", "UV"),
        ("time,temperature,humidity,Zeitzone,{n}", "Zeitzone"),
        ("time,temperature,humidity,latitude,{n}", "latitude"),
        ("time,temperature,humidity,Feels Like,{n}", "Feels Like"),
        ("time,temperature,humidity,DPT(℃),{n}", "DPT(℃)"),
        ("time,temperature,humidity,battery V,{n}", "battery V"),
    ],
)
def test_a_named_column_of_another_kind_is_never_air(tmp_path, head, unused):
    text = lines("{t:%Y-%m-%d %H:%M},{c:.1f},{h:.0f},37.5,1", head=head.replace(",{n}", ",status"))
    readings, problems = read_readings(put(tmp_path / "a.csv", text))
    assert readings["probe"].unique().tolist() == ["temperature"] and readings["temp_c"].between(36, 39).all()
    assert unused in problems.set_index("code")["facts"]["log_unused"]["names"]


def test_humidity_that_stands_before_temperature_is_not_swapped_by_its_values(tmp_path):
    text = "Date,Time,Humidity,Temperature\n,,,\n(dd/mm/yyyy),(hh:mm),(%),(C)\n" + lines(
        "{t:%d/%m/%Y},{t:%H:%M},37.2,{c:.1f}"
    )
    readings, _ = read_readings(put(tmp_path / "a.csv", text))
    assert (readings["rh_pct"] == 37.2).all() and readings["temp_c"].nunique() > 3


@pytest.mark.parametrize(
    "text, why",
    [
        ("Time;Temp;RH\n" + "x;37.5;55\n" * 40, "refuse_nothing_below"),
        ("2026-05-01\nnothing\n" * 20, "refuse_no_reading"),
        ("a;b\n1.5;2.5\n" * 9, "refuse_no_reading"),
        ("Time;Temp\n" + "".join(f"{h:02}:00;37.5\n" for h in range(24)), "refuse_no_day"),
        ("millis,temp\n" + "".join(f"{n * 60000},37.{n % 9}\n" for n in range(50)), "refuse_no_start"),
        ("date,temp\n" + "2026-05-01,37.5\n" * 30, "refuse_no_time_several"),
    ],
)
def test_a_refusal_names_the_true_reason(tmp_path, text, why):
    with pytest.raises(HatchkitError) as refused:
        read_readings(put(tmp_path / "a.csv", text))
    assert refused.value.facts["why"]["code"] == why


@pytest.mark.parametrize("bad", ["12/13/2026 10:00", "31/02/2026 10:00", "01/04/9999 10:00", "20/04/2026 25:10"])
def test_one_bad_line_is_one_problem_row_with_its_line(tmp_path, bad):
    good = lines("{t:%d/%m/%Y %H:%M},{c:.1f}", head="time,temp (C)").splitlines()
    good.insert(20, f"{bad},37.5")
    readings, problems = read_readings(put(tmp_path / "a.csv", "\n".join(good) + "\n"))
    assert len(readings) == 60
    assert problems.loc[problems["severity"] == "lost", "row"].tolist() == [21]


@pytest.mark.parametrize(
    "encoding", ["utf-16-le", "utf-16-be", "utf-32-le", "utf-32-be", "cp1250", "cp852", "utf-8-sig"]
)
def test_encodings_with_and_without_a_mark(tmp_path, encoding):
    text = lines("{t:%d.%m.%Y %H:%M};{c:.1f};{h:.0f}", head="Datum a čas;Teplota °C;Vlhkost vzduchu %")
    readings, _ = read_readings(put(tmp_path / "a.csv", text, encoding))
    assert readings["probe"].unique().tolist() == ["Teplota"] and readings["rh_pct"].notna().all()
    assert len(readings) == 60


def test_a_head_cut_within_a_degree_sign_does_not_turn_the_encoding(tmp_path):
    for pad in range(4):
        head = "#" + "x" * (65_536 - 40 + pad) + "\n" + "note °°°°°°°°°\n" * 5 + "time,temp °C,rh %"
        with pytest.raises(HatchkitError, match="too far down|no line|date"):
            # 64 KiB of title are no log; what is looked at is that no mark is misread on the way.
            read_readings(put(tmp_path / "a.csv", head + "\n"))
    body = lines("{t:%Y-%m-%d %H:%M},{c:.1f} °C,{h:.0f} %", 5000, 1, head="time,temp,rh")
    readings, problems = read_readings(put(tmp_path / "b.csv", body))
    assert len(readings) == 5000 and not problems["code"].eq("log_encoding_open").any()


def test_nothing_in_sensors_is_passed_over(tmp_path):
    put(
        tmp_path / "sensors" / "a.jsonl",
        "".join(f'{{"time": "{START + dt.timedelta(minutes=n)}", "temp": 37.{n % 9}}}\n' for n in range(50)),
    )
    put(tmp_path / "sensors" / "photo.heic", "xx")
    put(tmp_path / "sensors" / "noending", lines("{t:%Y-%m-%d %H:%M},{c:.1f}", head="time,temp"))
    (tmp_path / "sensors" / "b.csv.gz").write_bytes(
        gzip.compress(lines("{t:%Y-%m-%d %H:%M},{c:.1f}", head="time,temp").encode())
    )
    logs = read_all(tmp_path, {}, batches("A", "B"), "UTC")
    told = set(logs.readings["file"]) | set(logs.problems["file"])
    assert {path.relative_to(tmp_path).as_posix() for path in log_files(tmp_path)} <= told and len(told) == 4
    assert len(logs.readings) == 170


@pytest.mark.parametrize(
    "name",
    [
        "log (1).csv",
        "log - Kopie.csv",
        "log - Copy (2).csv",
        "log_export_2025-05.csv",
        "Copy of log.csv",
        "log 2025-05-03.csv",
    ],
)
def test_a_copy_stays_with_its_machine(tmp_path, name):
    put(tmp_path / "sensors" / name, lines("{t:%Y-%m-%d %H:%M},{c:.1f}", head="time,temp"))
    logs = read_all(tmp_path, {"incubators": {"B": {"files": ["log.csv"]}}}, batches("A", "B"), "UTC")
    assert logs.readings["incubator"].unique().tolist() == ["B"]


def test_a_machine_that_only_fits_by_dates_is_asked(tmp_path):
    put(tmp_path / "sensors" / "xyz.csv", lines("{t:%Y-%m-%d %H:%M},{c:.2f}", 100, head="time,temp"))
    table = pd.concat([batches("Red", start="2026-04-13"), batches("Blue", start="2026-08-13")], ignore_index=True)
    logs = read_all(tmp_path, {}, table, "UTC")
    question = logs.questions[logs.questions["code"] == "log_machine"].iloc[0]
    assert question["taken"] == "Red" and [c["taken"] for c in question["choices"]] == ["Red", "Blue", "none_of_these"]
    answered = read_all(tmp_path, {}, table, "UTC", answers={("sensors/xyz.csv", "", "?log_machine"): "Blue"})
    assert answered.readings["incubator"].unique().tolist() == ["Blue"]
    assert answered.questions[answered.questions["code"] == "log_machine"].empty


def test_a_setter_and_a_hatcher_each_have_their_log(tmp_path):
    for name in ("setter", "hatcher"):
        put(tmp_path / "sensors" / f"{name}.csv", lines("{t:%Y-%m-%d %H:%M},{c:.1f}", head="time,temp"))
    table = batches("Setter").assign(hatcher=["Hatcher"])
    assert sorted(read_all(tmp_path, {}, table, "UTC").readings["incubator"].unique()) == ["Hatcher", "Setter"]


def test_answers_settle_columns_and_the_order_of_dates(tmp_path):
    put(
        tmp_path / "sensors" / "a.csv", lines("{t:04/05/2026 %H:%M},{c:.1f},{h:.0f}", 40, 30, head="when,field1,field2")
    )
    asked = read_all(tmp_path, {}, batches(), "UTC").questions
    assert {"log_column", "log_date_order"} <= set(asked["code"]) and list(asked.columns) == QUESTIONS
    answers = {
        ("sensors/a.csv", "", "field1"): "rh",
        ("sensors/a.csv", "", "field2"): "not_used",
        ("sensors/a.csv", "", "when"): "mdy",
    }
    logs = read_all(tmp_path, {}, batches(), "UTC", answers=answers)
    assert logs.readings["temp_c"].isna().all() and logs.readings["rh_pct"].between(36, 39).all()
    assert set(logs.readings["time"].dt.month) == {4} and logs.questions.empty


@pytest.mark.parametrize("step", [0.1, 0.2, 0.25, 0.5])
@pytest.mark.parametrize("minutes", [1, 10, 30])
def test_clean_logs_of_coarse_probes_are_hardly_marked(step, minutes):
    noise, count = np.random.default_rng(5), 6000
    time = np.datetime64("2026-04-01", "us") + np.arange(count) * np.timedelta64(minutes, "m")
    temp = 37.7 + 0.1 * np.sin(np.arange(count) * minutes / 25) + noise.normal(0, 0.05, count)
    temp = np.round(np.round(temp / step) * step, 3)
    rh = np.round(52 + 3 * np.sin(np.arange(count) * minutes / 700) + noise.normal(0, 0.3, count))
    for humidity in (rh, np.full(count, np.nan)):
        found = marks.marks_of(time, temp, humidity)
        assert sum(found[name].sum() for name in ("stuck", "spike", "out of range")) <= count / 1000


def test_an_export_put_below_an_overlapping_one_is_no_clock_step(tmp_path):
    whole = lines("{t:%Y-%m-%d %H:%M},{c:.2f}", 200, 10).splitlines()
    text = "\n".join(["time,temp", *whole[:120], *whole[80:]]) + "\n"
    readings, _ = read_readings(put(tmp_path / "a.csv", text))
    assert len(readings) == 200 and (readings["doubt"] == "").all()


def test_sensors_that_take_turns_are_two_probes_without_a_clock_that_goes_back(tmp_path):
    text = lines(
        "{t:%Y-%m-%d %H:%M:%S};top;{c:.1f}\n{t:%Y-%m-%d %H:%M}:01;bottom;36.{n:02d}", head="time;where;temp °C"
    )
    readings, problems = read_readings(put(tmp_path / "a.csv", text))
    assert (
        sorted(readings["probe"].unique()) == ["bottom", "top"]
        and not problems["code"].isin(["log_times_back", "log_clock_step"]).any()
    )


def test_two_logs_side_by_side_keep_their_own_times(tmp_path):
    text = lines(
        "{t:%Y-%m-%d %H:%M};{c:.1f};2026-06-01 {t:%H:%M};30.{n:02d}", 40, 30, head="Time 1;Temp 1;Time 2;Temp 2"
    )
    readings, _ = read_accounted(put(tmp_path / "a.csv", text), Wishes())
    assert set(readings.loc[readings["probe"] == "Temp 1", "time"].dt.month) == {4}
    assert set(readings.loc[readings["probe"] == "Temp 2", "time"].dt.month) == {6}


def test_values_without_their_decimal_mark_are_asked(tmp_path):
    readings, account = read_accounted(
        put(
            tmp_path / "a.csv",
            lines("{t:%Y-%m-%d %H:%M},{c:.2f}", head="time,temp").replace("37.", "37").replace("38.", "38"),
        ),
        Wishes(),
    )
    assert readings["temp_c"].between(36, 39).all() and [q["code"] for q in account.questions] == ["log_scale"]


def test_quoted_stamps_between_blanks_as_r_writes_them(tmp_path):
    text = '"when" "temp" "hum"\n' + lines('"{n}" "{t:%Y-%m-%d %H:%M}" {c:.1f} {h:.0f}')
    readings, _ = read_readings(put(tmp_path / "a.txt", text))
    assert len(readings) == 60 and readings["temp_c"].between(36, 39).all() and (readings["rh_pct"] > 40).all()


def test_more_headings_than_columns_is_a_doubt(tmp_path):
    text = lines("{t:%Y-%m-%d %H:%M},{h:.0f},1.5,{c:.1f}", head="time,humidity,Sensor depth, feet,temperature")
    readings, problems = read_readings(put(tmp_path / "a.csv", text))
    assert readings["temp_c"].isna().all() and (readings["rh_pct"] > 40).all()
    said = problems[problems["code"] == "log_headings_more"]
    assert said["severity"].tolist() == ["doubtful"] and "temperature" in said["facts"].iloc[0]["names"]


@pytest.mark.parametrize(
    "heading",
    [
        "Ingestelde temperatuur",
        "gewenste temperatuur",
        "önskad temperatur",
        "indstillet temperatur",
        "beállított hőmérséklet",
        "nastavená teplota",
        "temperatura docelowa",
        "temperatura de consigna",
        "température cible",
        "temperatura desejada",
        "temperatura obiettivo",
        "Solltemperatur",
    ],
)
def test_a_set_point_is_no_probe_in_any_language(tmp_path, heading):
    text = lines("{t:%Y-%m-%d %H:%M};37.5;{c:.2f}", head=f"time;{heading};temp")
    assert read_readings(put(tmp_path / "a.csv", text))[0]["probe"].unique().tolist() == ["temp"]


def test_each_bad_line_is_one_problem_with_its_own_reason_and_none_is_asked(tmp_path):
    text = lines("{t:%Y-%m-%d %H:%M},{c:.1f}", head="time,temp").splitlines()
    for place, stamp in ((50, "9999-01-01 10:00"), (30, "31.02.2026 10:00"), (20, "12/13/2026 10:00")):
        text.insert(place, f"{stamp},37.5")
    readings, account = read_accounted(put(tmp_path / "a.csv", "\n".join(text)), Wishes())
    lost = [row for row in account.rows if row["severity"] == "lost"]
    assert len(readings) == 60 and not account.questions and [row["row"] for row in lost] == [21, 32, 53]
    for row, why in zip(lost, ("order", "no_such_day", "year"), strict=True):
        assert row["facts"]["why"] == why


@pytest.mark.parametrize("head", ["time,Temp F,Temp C", "time,T1,T2", "time,Temp (°F),Temp (°C)"])
def test_one_temperature_in_two_units_is_one_probe(tmp_path, head):
    values = [37.6 + n % 5 / 10 for n in range(40)]
    text = "".join(f"{START + n * dt.timedelta(minutes=5)},{c * 1.8 + 32:.2f},{c:.1f}\n" for n, c in enumerate(values))
    readings, problems = read_readings(put(tmp_path / "a.csv", f"{head}\n{text}"))
    assert len(readings) == 40 and readings["temp_c"].between(37.5, 38.1).all()
    assert problems["code"].eq("log_twins").any()


@pytest.mark.parametrize("unit, celsius", [("temp_C", 60.0), ("temp_F", (60 - 32) / 1.8)])
def test_an_answer_on_the_unit_holds_and_is_not_asked_again(tmp_path, unit, celsius):
    put(tmp_path / "sensors" / "a.csv", "".join(["time,temp\n", *(f"2026-04-13 {n:02}:00,60.0\n" for n in range(24))]))
    question = read_all(tmp_path, {}, batches(), "UTC").questions.iloc[0]
    assert question["code"] == "log_unit"
    logs = read_all(tmp_path, {}, batches(), "UTC", answers={("sensors/a.csv", "", question["heading"]): unit})
    np.testing.assert_allclose(logs.readings["temp_logged_c"], celsius)
    assert logs.questions.empty and logs.files["channels"][0][0]["how"] == "answer"


def test_an_answer_on_the_decimal_mark_holds_and_one_for_another_file_does_not(tmp_path):
    text = lines("{t:%Y-%m-%d %H:%M},{c:.1f}", head="time,temp").replace("37.", "37").replace("38.", "38")
    put(tmp_path / "sensors" / "a.csv", text)
    question = read_all(tmp_path, {}, batches(), "UTC").questions.iloc[0]
    assert question["code"] == "log_scale" and question["taken"] == "divided_by_10"
    key = ("sensors/a.csv", "", question["heading"])
    kept = read_all(tmp_path, {}, batches(), "UTC", answers={key: "divided_by_10"})
    assert kept.readings["temp_c"].between(36, 39).all() and kept.questions.empty
    as_is = read_all(tmp_path, {}, batches(), "UTC", answers={key: "as_it_stands"})
    assert not as_is.readings["temp_logged_c"].between(36, 39).any()
    other = read_all(tmp_path, {}, batches(), "UTC", answers={("sensors/b.csv", *key[1:]): "as_it_stands"})
    assert len(other.questions) == 1


def test_of_a_file_with_a_known_probe_only_the_other_is_asked(tmp_path):
    put(
        tmp_path / "sensors" / "both.csv",
        lines("{t:%Y-%m-%d %H:%M},{c:.1f},36.{n:02d}", head="time,Red (°C),attic (°C)"),
    )
    table = batches("Red", "Blue")
    asked = read_all(tmp_path, {}, table, "UTC").questions
    assert asked["heading"].tolist() == ["attic"]
    logs = read_all(tmp_path, {}, table, "UTC", answers={("sensors/both.csv", "", "attic"): "none_of_these"})
    assert logs.questions.empty and "Red" in set(logs.readings["incubator"])


def test_the_files_are_a_table_of_facts(tmp_path):
    for name in ("A", "B"):
        put(
            tmp_path / "sensors" / f"{name}.csv",
            lines("{t:%Y-%m-%d %H:%M},{c:.1f},{h:.0f}", head="time,temp (°C),rh (%)"),
        )
    put(tmp_path / "sensors" / "letter.txt", "Dear all")
    files = read_all(tmp_path, {}, batches("A", "B"), "UTC").files
    assert files["incubator"].tolist() == ["A", "B", ""] and files["readings"].tolist() == [60, 60, 0]
    assert files["step_minutes"][0] == 30 and files["start"][0] == pd.Timestamp("2026-04-13 22:30", tz="UTC")
    assert files["channels"][0] == [
        dict(probe="temp", quantity="temp", unit="C", how="heading"),
        dict(probe="temp", quantity="rh", unit="", how="heading"),
    ]
