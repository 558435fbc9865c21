"""Further ways in which loggers, apps, boards, networks and databases write: the same readings, or the reason."""

import datetime as dt
import json
import sqlite3

import numpy as np
import pandas as pd
import pytest

from hatchkit.problems import HatchkitError
from hatchkit.records.logs.read import Wishes, read_accounted

NOISE = np.random.default_rng(5)
START = dt.datetime(2025, 9, 11, 22, 5)
TRUTH = [
    (START + n * dt.timedelta(minutes=10), float(c), int(h))
    for n, (c, h) in enumerate(
        zip(np.round(37.5 + NOISE.normal(0, 0.15, 200), 1), np.round(54 + NOISE.normal(0, 1.5, 200)), strict=True)
    )
]


def lines(form, head="", truth=TRUTH):
    """Head and a line a reading; {t} time, {c} °C, {cc} with a comma, {f} °F, {h} %, {n} number, {s} Unix seconds."""
    body = "".join(
        form.format(
            t=t,
            c=c,
            cc=f"{c:.1f}".replace(".", ","),
            f=c * 1.8 + 32,
            h=h,
            n=n,
            m=t.minute,
            s=int(t.replace(tzinfo=dt.UTC).timestamp()),
            doy=t.timetuple().tm_yday,
        )
        + "\n"
        for n, (t, c, h) in enumerate(truth)
    )
    return (head + "\n" if head else "") + body


def read(tmp_path, data, name="log.csv", **wishes):
    path = tmp_path / name
    path.write_bytes(data if isinstance(data, bytes) else data.encode())
    return read_accounted(path, Wishes(**wishes))


def exact(readings, hours=0, truth=TRUTH):
    """Whether the readings are the truth, its clock `hours` ahead of UTC; a probe of humidity alone may stand apart."""
    temps = readings[readings["temp_c"].notna()].sort_values("time")
    damp = readings[readings["rh_pct"].notna()].sort_values("time")
    times = [t - dt.timedelta(hours=hours) for t, _, _ in truth]
    for table in (temps, damp):
        assert table["time"].dt.tz_localize(None).dt.to_pydatetime().tolist() == times
    np.testing.assert_allclose(temps["temp_c"], [c for _, c, _ in truth], atol=0.006)
    np.testing.assert_allclose(damp["rh_pct"], [h for _, _, h in truth])


def pairs(form):
    return "".join(form.format(t=t, c=c, h=h) for t, c, h in TRUTH)


ISO = "{t:%Y-%m-%d %H:%M},"
AS_SHOWN = {
    "finnish, klo and a dot": lines(
        "{t.day}.{t.month}.{t.year} klo {t:%H.%M};{cc};{h}", "Aika;Lämpötila (°C);Suhteellinen kosteus (%)"
    ),
    "turkish": lines("{t:%d.%m.%Y};{t:%H:%M};{cc};{h}", "Tarih;Saat;Sıcaklık (°C);Nem (%)"),
    "words for degrees": lines("{t:%d/%m/%Y};{t:%H:%M};{cc};{h}", "Giorno;Ora;Gradi;Umidità"),
    "columns of blanks, units below some": lines(
        "{t:%Y %m %d %H %M} 30   {c:5.2f}   {h}   25.1",
        " YYYY MM DD HH MI SS    TAIR    RH    TDEW\n"
        " ---- -- -- -- -- --  -----  ----  ------\n                        degC     %    degC",
    ).replace(" 30   ", " 00   "),
    "day of the year": lines("{t.year},{doy},{t:%H%M},{c},{h}", "Year,DOY,HHMM,T_air,RH"),
    "date, hour, minute": lines("{t:%d.%m.%Y};{t.hour};{m};{cc};{h}", "Datum;Stunde;Minute;Temperatur;Feuchte"),
    "line protocol": lines(
        "climate,host=attic,place=hatch\\ box battery=95i,humidity={h}.0,temperature={c} {s}000000000", "# DML"
    ),
    "series in nanoseconds": lines("box,{s}000000000,{c},{h}", "name,time,temperature,humidity"),
    "two lines about the log": lines(
        "{t:%Y-%m-%dT%H:%M:%S}.000+00:00,{c},{h}",
        "Location,File date,Correction\nbarn box,2025-09-31T17:00:00+00:00,1.0\ntime,temp,rh",
    ),
    "records of three lines": pairs("Time: {t:%Y-%m-%d %H:%M}\nTemperature: {c} C\nHumidity: {h} %\n\n"),
    "yaml": pairs("- time: {t:%Y-%m-%d %H:%M}\n  temperature: {c}\n  humidity: {h}\n"),
    "mean of each interval by its name": "statistic_id,unit,start,mean,min,max\n"
    + pairs(
        "sensor.box_temperature,°C,{t:%Y-%m-%d %H:%M:%S},{c},30,40\n"
        "sensor.box_humidity,%,{t:%Y-%m-%d %H:%M:%S},{h},1,99\n"
    ),
    "scraped metrics": "# HELP temperature_celsius air\n"
    + lines('temperature_celsius{{room="box"}} {c} {s}000\nrelative_humidity_percent{{room="box"}} {h} {s}000'),
    "a cell of JSON": lines('{t:%Y-%m-%d %H:%M:%S},"{{""temp"": {c}, ""hum"": {h}}}"', "time,payload"),
    "no year, dots": lines("{t:%d.%m.} {t:%H:%M};{c};{h}", "2025\nDatum;Temp;Feuchte"),
    "process and set values": lines(
        "{t:%Y-%m-%d},{t:%H:%M},{c},37.8,{h},55,42", "Date,Time,Temp PV,Temp SV,Hum PV,Hum SV,Heater %"
    ),
    "means and changes beside": lines(
        ISO + "{c},{h},37.4,0.1,54.2", "time,Temp °C,RH %,Temp 1h avg,Temp change,RH 1h avg"
    ),
    "elapsed hours": "Start 11.09.2025 22:05\nElapsed;Temp;Hum\n"
    + "".join(f"{n * 10 // 60}:{n * 10 % 60:02d}:00;{c};{h}\n" for n, (_, c, h) in enumerate(TRUTH)),
    "count of milliseconds": "started 2025-09-11 22:05:00\nmillis,temp,hum\n"
    + "".join(f"{n * 600_000},{c},{h}\n" for n, (_, c, h) in enumerate(TRUTH)),
    "downloaded in another zone": lines(ISO + "{c},{h}", "Downloaded: 2025-09-20 08:00:00 UTC\nTime,Temp (°C),RH (%)"),
}
DOCUMENTS = {
    "columns and values": {
        "series": [
            {
                "columns": ["time", "temperature", "humidity"],
                "values": [[f"{t:%Y-%m-%dT%H:%M:%SZ}", c, h] for t, c, h in TRUTH],
            }
        ]
    },
    "labels and data": {
        "labels": [f"{t:%Y-%m-%d %H:%M}" for t, _, _ in TRUTH],
        "datasets": [
            {"label": "Humidity %", "data": [h for _, _, h in TRUTH]},
            {"label": "Temp °C", "data": [c for _, c, _ in TRUTH]},
        ],
    },
    "by moment": {str(int(t.replace(tzinfo=dt.UTC).timestamp())): {"temp": c, "hum": h} for t, c, h in TRUTH},
    "series apart": {
        "humidity": [{"ts": int(t.replace(tzinfo=dt.UTC).timestamp() * 1000), "value": str(h)} for t, _, h in TRUTH],
        "temperature": [{"ts": int(t.replace(tzinfo=dt.UTC).timestamp() * 1000), "value": str(c)} for t, c, _ in TRUTH],
    },
    "points": [
        {
            "target": "box.temperature",
            "datapoints": [[c, int(t.replace(tzinfo=dt.UTC).timestamp())] for t, c, _ in TRUTH],
        },
        {"target": "box.humidity", "datapoints": [[h, int(t.replace(tzinfo=dt.UTC).timestamp())] for t, _, h in TRUTH]},
    ],
}
ZONED = {
    "offset in a column": (lines(ISO + "+02:00,{c},{h}", "time,utc_offset,temperature,humidity"), 2),
    "hours of offset": (lines(ISO + "2,{c},{h}", "time,UTC offset (h),temperature,humidity"), 2),
    "name of a zone in a column": (lines(ISO + "CEST,{c},{h}", "time,timezone,temperature,humidity"), 2),
    "region in a column": (lines(ISO + "Europe/Rome,{c},{h}", "time,timezone,temperature,humidity"), 2),
    "region above": (lines(ISO + "{c},{h}", "Timezone: Europe/Rome\ntime,temperature,humidity"), 2),
    "letters in the heading": (lines("{t:%Y-%m-%d %H:%M};{c};{h}", "Zeitpunkt (MESZ);Temperatur [°C];rF [%]"), 2),
    "zone in the lines above": (lines(ISO + "{c},{h}", "Logger,7\nTime zone,(UTC+02:00)\nTime,Temp,RH"), 2),
    "the start with its zone": (
        lines(ISO + "{c},{h}", "Start: 2025-09-11 22:05:00 GMT+02:00\nTime,Temp (°C),RH (%)"),
        2,
    ),
    "local time beside UTC": (
        "local_time,utc_time,temp,rh\n"
        + "".join(
            f"{t + dt.timedelta(hours=2):%Y-%m-%d %H:%M:%S},{t:%Y-%m-%d %H:%M:%S},{c},{h}\n" for t, c, h in TRUTH
        ),
        0,
    ),
    "local time beside Unix seconds": (
        "date,unixtime,temp,rh\n"
        + "".join(
            f"{t + dt.timedelta(hours=2):%Y-%m-%d %H:%M:%S},{int(t.replace(tzinfo=dt.UTC).timestamp())},{c},{h}\n"
            for t, c, h in TRUTH
        ),
        0,
    ),
}


@pytest.mark.parametrize("name", AS_SHOWN)
def test_further_layouts_are_read_exactly(tmp_path, name):
    exact(read(tmp_path, AS_SHOWN[name])[0])


@pytest.mark.parametrize("name", DOCUMENTS)
def test_documents_of_other_shapes(tmp_path, name):
    exact(read(tmp_path, json.dumps(DOCUMENTS[name]), "log.json")[0])


@pytest.mark.parametrize("name", ZONED)
def test_the_zone_that_a_file_names_is_never_an_hour_off(tmp_path, name):
    text, hours = ZONED[name]
    exact(read(tmp_path, text)[0], hours)


def test_a_database_file_is_read_by_its_tables_and_a_damaged_one_refused(tmp_path):
    path = tmp_path / "log.db"
    base = sqlite3.connect(path)
    base.execute("create table device (id integer, label text)")
    base.execute("insert into device values (3, 'kitchen box')")
    base.execute("create table readings (id integer primary key, time_ms integer, temp_c real, rh real)")
    base.executemany(
        "insert into readings (time_ms, temp_c, rh) values (?, ?, ?)",
        [(int(t.replace(tzinfo=dt.UTC).timestamp() * 1000), c, h) for t, c, h in TRUTH],
    )
    base.commit()
    base.close()
    data = path.read_bytes()
    exact(read_accounted(path, Wishes())[0])
    assert path.read_bytes() == data
    with pytest.raises(HatchkitError, match="damaged or locked database"):
        read(tmp_path, data[:1500] + b"\xff" * 3000, "broken.db")


CUT = "a comma parts both"
REFUSED = {
    "one comma for both": (lines(ISO + "{cc},{h}", "time,temperature,humidity"), CUT),
    "one comma for both, without a heading": (lines(ISO + "{cc},{h},0"), CUT),
    "twelve hours": (lines("{t:%m/%d/%Y %I:%M},{c},{h}", "time,temp,rh"), "neither am nor pm"),
    "minutes of the day": (
        "date,time,temp,rh\n" + "".join(f"{t:%Y-%m-%d},{t.hour * 60 + t.minute},{c},{h}\n" for t, c, h in TRUTH),
        "minutes since midnight",
    ),
    "stretches of an hour": (
        "date,hour,temp,rh\n" + "".join(f"{t:%Y-%m-%d},{t.hour}-{t.hour + 1},{c},{h}\n" for t, c, h in TRUTH[::6]),
        "stretches of an hour",
    ),
    "days in ten figures": (lines("{t:%y%m%d%H%M},{c},{h}", "time,temp,hum"), "can be days with times"),
    "an elapsed time without a unit": (
        "Start: 2025-09-11 22:05\nElapsed,Temp,Hum\n"
        + "".join(f"{n * 10},{c},{h}\n" for n, (_, c, h) in enumerate(TRUTH)),
        "does not say whether in seconds",
    ),
    "times of day that run backwards": (
        lines("{t:%H:%M};{c};{h}", "Date: 2025-09-12\nTime;Temp;RH", TRUTH[::-1]),
        "run backwards",
    ),
    "six figures for a date": (lines("{t:%d%m%y},{t:%H%M},{c},{h}", "date,time,temp,hum"), "read as no date"),
    "two nameless kinds of values": (
        "last_changed,entity_id,state\n"
        + pairs("{t:%Y-%m-%dT%H:%M:%S}Z,sensor.x1,{c}\n{t:%Y-%m-%dT%H:%M:%S}Z,sensor.x2,{h}\n"),
        "values of several kinds",
    ),
}


@pytest.mark.parametrize("name", REFUSED)
def test_what_could_be_read_wrongly_is_refused_with_the_reason(tmp_path, name):
    text, why = REFUSED[name]
    with pytest.raises(HatchkitError, match=why):
        read(tmp_path, text)


@pytest.mark.parametrize(
    "text, code",
    [
        (lines(ISO + "{c},{h}", "time,Humidity (%),Temperature (°C)"), "log_column"),
        (lines(ISO + "{h}", "time,value"), "log_column"),
        (lines(ISO + "{c},{h}", "time,T,F"), "log_column"),
        (
            lines(
                "{t:%d.%m.%Y %H:%M};{cc};{h}", "Zeitzone: (UTC+01:00) Mitteleuropa, Sommerzeit ein\nZeit;Temp;Feuchte"
            ),
            "log_zone",
        ),
        (lines(ISO + "{c},{h}", "time,temp,hum", TRUTH[:120]) + lines(ISO + "{h},{c}", "", TRUTH[120:]), "log_column"),
    ],
    ids=["headings exchanged", "a value alone", "T and F", "summer time", "exchanged halfway"],
)
def test_what_stays_open_is_asked(tmp_path, text, code):
    readings, account = read(tmp_path, text)
    assert code in {question["code"] for question in account.questions}
    assert any(row["severity"] == "doubtful" for row in account.rows) or code == "log_column"


def test_an_answer_on_the_zone_holds(tmp_path):
    text = lines("{t:%d.%m.%Y %H:%M};{cc};{h}", "Zeitzone: UTC+01:00, Sommerzeit ein\nZeit;Temp;Feuchte")
    readings, account = read(tmp_path, text, answers={("log.csv", "?log_zone"): "UTC+02:00"})
    exact(readings, 2)
    assert not account.questions
    exact(read(tmp_path, text, timezone="Europe/Berlin")[0], 2)
    exact(read(tmp_path, text.replace("ein", "aus"))[0], 1)


@pytest.mark.parametrize("hours, digits", [(0.25, 2), (0.5, 1), (0.5, 2)])
def test_parts_of_an_hour_and_hours_with_minutes_are_told_apart_by_their_steps(tmp_path, hours, digits):
    truth = [(dt.datetime(2025, 9, 11, 22) + n * dt.timedelta(hours=hours), c, h) for n, (_, c, h) in enumerate(TRUTH)]
    parts = "date,time,temp,rh\n" + "".join(
        f"{t:%Y-%m-%d},{t.hour + t.minute / 60:.{digits}f},{c},{h}\n" for t, c, h in truth
    )
    exact(read(tmp_path, parts)[0], truth=truth)
    clocks = "date,time,temp,rh\n" + "".join(f"{t:%Y-%m-%d},{t.hour}.{t:%M},{c},{h}\n" for t, c, h in truth)
    exact(read(tmp_path, clocks)[0], truth=truth)


def test_a_day_written_among_times_of_day_counts_from_there(tmp_path):
    truth = [one for n, one in enumerate(TRUTH) if not 40 < n < 200 - 20]
    text = "Time;Temp;RH\n" + "".join(
        (f"Date: {t:%Y-%m-%d}\n" if n == 0 or t.date() != truth[n - 1][0].date() else "") + f"{t:%H:%M};{c};{h}\n"
        for n, (t, c, h) in enumerate(truth)
    )
    exact(read(tmp_path, text)[0], truth=truth)


def test_two_logs_below_each_other_with_titles_are_two_probes(tmp_path):
    text = lines(ISO + "{c},{h}", "# box A\ntime,temp,hum") + lines(ISO + "36.1,{h}", "# box B\ntime,temp,hum")
    readings, _ = read(tmp_path, text)
    assert readings.groupby("probe").size().tolist() == [200, 200] and (readings["doubt"] != "clock step").all()


def test_one_impossible_number_for_both_is_no_reading(tmp_path):
    text = lines(ISO + "{c},{h}", "time,temp,rh") + "2025-09-13 07:25,120,120\n2025-09-13 07:35,0.0,0.0\n"
    readings, _ = read(tmp_path, text)
    assert readings["temp_c"].notna().sum() == 200 and (readings["doubt"] == "missing code").sum() == 2


@pytest.mark.parametrize("spring", [True, False])
@pytest.mark.parametrize("step", [5, 60])
def test_a_clock_put_right_by_hand_days_after_the_change_of_the_hour(tmp_path, spring, step):
    start = dt.datetime(2026, 3, 27) if spring else dt.datetime(2026, 10, 23)
    before, after = (1, 2) if spring else (2, 1)
    mended = start + dt.timedelta(days=5, hours=9)
    utc = [start + n * dt.timedelta(minutes=step) for n in range(10 * 1440 // step)]
    text = "time,temp (°C),rh (%)\n" + "".join(
        f"{u + dt.timedelta(hours=before if u < mended else after):%Y-%m-%d %H:%M},{37.4 + n % 3 / 10:.1f},"
        f"{50 + n % 5}\n"
        for n, u in enumerate(utc)
    )
    readings, account = read(tmp_path, text, timezone="Europe/Rome")
    assert pd.DatetimeIndex(readings["time"]).tz_localize(None).to_pydatetime().tolist() == utc
    assert [question["code"] for question in account.questions] == ["log_clock"]
    kept, account = read(tmp_path, text, timezone="Europe/Rome", answers={("log.csv", "?log_clock"): "kept_old_time"})
    assert not account.questions and abs((kept["time"].iloc[-1] - readings["time"].iloc[-1]).total_seconds()) == 3600
