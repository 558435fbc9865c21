"""Logs of kinds that few loggers write: pages, XML, dumps, counts from a start, archives; read exactly or refused."""

import datetime as dt
import gzip
import io
import zipfile

import numpy as np
import openpyxl
import pytest

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.read import read_readings

START = dt.datetime(2026, 4, 13, 22, 30)
TRUTH = [(START + n * dt.timedelta(minutes=10), round(37.5 + (n * 7 % 10) / 10, 1), 50 + n * 3 % 7) for n in range(30)]


def lines(form, head=""):
    body = "".join(form.format(t=t, c=c, f=c * 1.8 + 32, h=h, n=n) + "\n" for n, (t, c, h) in enumerate(TRUTH))
    return (head + "\n" if head else "") + body


def read(tmp_path, data, name="log.csv"):
    path = tmp_path / name
    path.write_bytes(data if isinstance(data, bytes) else data.encode())
    return read_readings(path)


def exact(readings, *, humid=True):
    assert readings["time"].dt.tz_localize(None).dt.to_pydatetime().tolist() == [t for t, _, _ in TRUTH]
    np.testing.assert_allclose(readings["temp_c"], [c for _, c, _ in TRUTH], atol=0.006)
    if humid:
        np.testing.assert_allclose(readings["rh_pct"], [h for _, _, h in TRUTH])
    assert readings["probe"].nunique() == 1 and (readings["doubt"] == "").all()


PLAIN = lines("{t:%Y-%m-%d %H:%M},{c:.1f},{h}", "time,temperature (°C),humidity (%)")
PAGE = (
    "<html><body><h1>Box</h1><table>\n<tr><th>Time</th><th>Temp °C</th><th>RH %</th></tr>\n"
    + lines("<tr><td>{t:%Y-%m-%d %H:%M}</td><td>{c:.1f}</td><td>{h}</td></tr>")
    + "</table></body></html>"
)
XML = (
    "<?xml version='1.0'?>\n<log>\n"
    + lines("<r><when>{t:%Y-%m-%dT%H:%M:%S}</when><temp>{c:.1f}</temp><humidity>{h}</humidity></r>")
    + "</log>"
)
XML_MARKS = "<log>" + lines('<r time="{t:%Y-%m-%d %H:%M}" temp="{c:.1f}" rh="{h}"/>') + "</log>"
SQL = "CREATE TABLE log (id INTEGER, at TEXT, temperature REAL, humidity REAL);\n" + lines(
    "INSERT INTO log VALUES ({n},'{t:%Y-%m-%d %H:%M:%S}',{c:.1f},{h});"
)
MINUTES = lines("{n}0;{c:.1f};{h}", "Start: 2026-04-13 22:30\nElapsed (min);Temp °C;RH %")
SECONDS = lines("{n}00;{c:.1f};{h}", "Start: 13.04.2026 22:30:00\nTime (s);Temp °C;RH %").replace("\n000;", "\n0;")
STEP = lines("{c:.1f};{h}", "Start: 2026-04-13 22:30\nInterval: 10 min\nTemp °C;RH %")
CLOCK_STEP = lines("{c:.1f};{h}", "Start: 2026-04-13 22:30\nInterval: 00:10:00\nTemp °C;RH %")


@pytest.mark.parametrize(
    "text",
    [PAGE, XML, XML_MARKS, SQL, MINUTES, STEP, CLOCK_STEP],
    ids=["page", "xml", "xml attributes", "sql", "minutes", "interval", "interval as a clock"],
)
def test_rare_kinds_are_read_exactly(tmp_path, text):
    exact(read(tmp_path, text)[0])


def test_seconds_that_count_from_the_start(tmp_path):
    readings, _ = read(tmp_path, SECONDS)
    step = readings["time"].diff().dropna().dt.total_seconds().unique().tolist()
    assert step == [100.0] and readings["time"].iloc[0].tz_localize(None) == START


@pytest.mark.parametrize(
    "text, why",
    [
        (lines("{n}0;{c:.1f}", "Elapsed (min);Temp °C"), "refuse_count_unit|refuse_no_start"),
        (lines("{c:.1f};{h}", "Temp °C;RH %"), "refuse_no_date"),
        ("<?xml version='1.0'?>\n<!DOCTYPE x [<!ENTITY a 'b'>]>\n<log><r>&a;</r></log>", "refuse_no_reading"),
    ],
)
def test_what_lacks_its_beginning_is_refused_with_the_reason(tmp_path, text, why):
    with pytest.raises(HatchkitError) as refused:
        read(tmp_path, text)
    assert refused.value.facts["why"]["code"] in why.split("|")


def test_archives_of_logs_and_what_else_lies_in_them(tmp_path):
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w") as archive:
        archive.writestr("readme.pdf", b"%PDF-1.4 x")
        archive.writestr("bytes.bin", bytes(range(32)) * 40)
        archive.writestr("log.csv", PLAIN)
    readings, problems = read(tmp_path, packed.getvalue(), "all.zip")
    exact(readings)
    assert [facts["name"] for facts in problems.loc[problems["code"] == "log_member_left_out", "facts"]] == [
        "readme.pdf",
        "bytes.bin",
    ]
    exact(read(tmp_path, gzip.compress(PLAIN.encode(), mtime=0), "log.csv.gz")[0])


@pytest.mark.parametrize(
    "data, why",
    [
        (gzip.compress(PLAIN.encode(), mtime=0)[:60], "refuse_archive"),
        (b"PK\x03\x04broken", "refuse_archive_locked"),
        (b"PK\x05\x06" + bytes(18), "refuse_bytes|refuse_archive_empty|refuse_archive_locked"),
        (b"", "refuse_empty"),
        (b"%PDF-1.4", "refuse_pdf"),
        (bytes(range(32)) * 40, "refuse_bytes"),
    ],
)
def test_broken_containers_are_refused_with_the_reason(tmp_path, data, why):
    with pytest.raises(HatchkitError) as refused:
        read(tmp_path, data, "log.zip")
    assert refused.value.facts["why"]["code"] in why.split("|")


@pytest.mark.parametrize(
    "clock",
    [
        lambda t: dt.timedelta(hours=t.hour, minutes=t.minute),
        lambda t: t.time(),
        lambda t: dt.datetime(1899, 12, 30, t.hour, t.minute),
    ],
)
@pytest.mark.parametrize("day", [lambda t: t.date(), lambda t: dt.datetime(t.year, t.month, t.day)])
def test_a_workbook_as_a_log_takes_times_in_a_column_of_their_own(tmp_path, day, clock):
    book = openpyxl.Workbook()
    book.active.append(["Day", "Clock", "Temp (°C)", "RH"])
    for t, c, h in TRUTH:
        book.active.append([day(t), clock(t), c, h])
    out = io.BytesIO()
    book.save(out)
    exact(read(tmp_path, out.getvalue(), "log.xlsx")[0])


@pytest.mark.parametrize(
    "day, clock",
    [
        ("{t:%Y-%m-%d} 00:00:00", "{t:%H:%M:%S}"),
        ("{t:%Y-%m-%d}T00:00:00", "{t:%H:%M}"),
        ("{t:%d/%m/%Y} 00:00", "{t:%H.%M}"),
        ("{t:%d/%m/%Y} 12:00:00 AM", "{t:%I:%M:%S %p}"),
        ("{t:%Y-%m-%d} 00:00:00", "1899-12-30 {t:%H:%M:%S}"),
        ("{t:%d.%m.%Y}", "30.12.1899 {t:%H:%M}"),
        ("{t:%Y-%m-%d}", "1900-01-01 {t:%H:%M:%S}"),
    ],
)
def test_a_day_shown_with_midnight_and_a_time_shown_with_the_first_day_are_one_stamp(tmp_path, day, clock):
    exact(read(tmp_path, lines(f"{day};{clock};{{c:.1f}};{{h}}", "Day;Time;Temp °C;RH %"))[0])


def test_readings_at_midnight_alone_keep_their_one_column(tmp_path):
    text = "".join(f"2026-04-{n + 1:02} 00:00:00;12:30;37.{n % 9}\n" for n in range(20))
    readings, _ = read(tmp_path, "Time;lights off;Temp °C\n" + text)
    assert (readings["time"].dt.hour == 0).all() and len(readings) == 20


def test_a_quote_without_a_partner_does_not_swallow_lines(tmp_path):
    text = lines('"{t:%Y-%m-%d %H:%M}",{c:.1f},{h}', "time,temp °C,rh %").splitlines()
    text[7] = text[7].replace('",', ",")
    readings, problems = read(tmp_path, "\n".join(text) + "\n")
    exact(readings)
    assert problems["code"].eq("log_lone_quotes").any()


def test_a_humidity_between_0_and_1_is_a_share(tmp_path):
    text = "".join(f"{t},{c},{h / 100:.2f}\n" for t, c, h in TRUTH)
    exact(read(tmp_path, "time,temp °C,humidity\n" + text)[0])
