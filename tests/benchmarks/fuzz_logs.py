"""Build sensor logs from known truth, break them as loggers and people do, and read them back.

Run as a script for the long version: ``python tests/benchmarks/fuzz_logs.py 2000``. It prints how many
files were read, and which ways of writing and breaking they held.
"""

from __future__ import annotations

import collections
import dataclasses
import datetime as dt
import sys
import tempfile
import warnings
from pathlib import Path

import numpy as np
import pandas as pd
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from hatchkit.records.logs.read import Wishes, read_accounted

STAMPS = {
    "ISO": "{y}-{m}-{d} {H}:{M}:{S}",
    "ISO T": "{y}-{m}-{d}T{H}:{M}:{S}",
    "ISO Z": "{y}-{m}-{d}T{H}:{M}:{S}Z",
    "ISO offset": "{y}-{m}-{d}T{H}:{M}:{S}+00:00",
    "ISO short": "{y}-{m}-{d} {H}:{M}",
    "slashes": "{y}/{m}/{d} {H}:{M}:{S}",
    "dots, year first": "{y}.{m}.{d} {H}:{M}",
    "day first": "{d}/{m}/{y} {H}:{M}:{S}",
    "dots": "{d}.{m}.{y} {H}:{M}:{S}",
    "dashes": "{d}-{m}-{y} {H}:{M}",
    "2-digit year": "{d}.{m}.{yy} {H}:{M}",
    "month first": "{m}/{d}/{y} {H}:{M}:{S}",
    "12 hours": "{m}/{d}/{y} {h}:{M}:{S} {AM}",
    "12 hours, day first": "{d}/{m}/{y} {h}:{M} {a.m.}",
    "single digits": "{d1}.{m1}.{y} {H1}:{M}",
    "month name": "{d} {name} {y} {H}:{M}",
    "Unix seconds": "{unix}",
    "Unix milliseconds": "{unix}000",
}
SURE = {
    "ISO",
    "ISO T",
    "ISO Z",
    "ISO offset",
    "ISO short",
    "slashes",
    "dots, year first",
    "month name",
    "Unix seconds",
    "Unix milliseconds",
}
HEADERS = {
    "en": ("Date/Time", "Date", "Time", "Temperature", "Humidity"),
    "short": ("Timestamp", "Date", "Time", "Temp", "RH"),
    "de": ("Zeitpunkt", "Datum", "Uhrzeit", "Temperatur", "Feuchte"),
    "fr": ("Horodatage", "Date", "Heure", "Température", "Humidité"),
    "it": ("Data e ora", "Data", "Ora", "Temperatura", "Umidità"),
    "es": ("Fecha y hora", "Fecha", "Hora", "Temperatura", "Humedad"),
    "nl": ("Tijdstip", "Datum", "Tijd", "Temperatuur", "Vochtigheid"),
}
MISSING = ["", "NA", "--", "Err", "-200", "9999", "n/a", "NaN", "---"]


@dataclasses.dataclass
class Log:
    """One generated file: its bytes, the readings it holds, and the ways it was written and broken."""

    data: bytes
    truth: dict
    missing: set
    lines: int
    ways: tuple
    unsure_order: bool


def stamp_text(time: dt.datetime, style: str) -> str:
    parts = {
        "y": f"{time.year}",
        "yy": f"{time.year % 100:02d}",
        "m": f"{time.month:02d}",
        "d": f"{time.day:02d}",
        "m1": time.month,
        "d1": time.day,
        "H": f"{time.hour:02d}",
        "H1": time.hour,
        "M": f"{time.minute:02d}",
        "S": f"{time.second:02d}",
        "h": f"{(time.hour - 1) % 12 + 1:02d}",
        "AM": "AM" if time.hour < 12 else "PM",
        "a.m.": "a.m." if time.hour < 12 else "p.m.",
        "name": time.strftime("%b"),
        "unix": int(time.replace(tzinfo=dt.UTC).timestamp()),
    }
    text = STAMPS[style]
    for key, value in parts.items():
        text = text.replace("{" + key + "}", str(value))
    return text


@st.composite
def logs(draw) -> Log:
    """A log with everything drawn: truth, way of writing, and faults."""
    count, step = draw(st.integers(6, 40)), draw(st.sampled_from([2, 6, 10, 30]))
    start = dt.datetime(2021, 1, 1) + dt.timedelta(minutes=draw(st.integers(0, 3_000_000)))
    probes, humid = draw(st.integers(1, 3)), draw(st.booleans())
    noise = np.random.default_rng(draw(st.integers(0, 10_000)))
    temps = np.round(37.6 + noise.normal(0, 0.3, (count, probes)), 1)
    rh = np.round(53 + noise.normal(0, 2, (count, probes)), 1)
    style, unit = draw(st.sampled_from(list(STAMPS))), draw(st.sampled_from(["C", "C", "F", "K"]))
    separator = draw(st.sampled_from([",", ";", "\t", "|", "  "]))
    comma = draw(st.booleans())
    quote = draw(st.booleans()) and separator != "  " or (comma and separator == ",")
    layout = draw(st.sampled_from(["wide", "wide", "probe column", "in turn", "one value a line"]))
    if separator == "  " and (
        layout == "in turn" or "{AM}" in STAMPS[style] or "{name}" in STAMPS[style] or "a.m." in STAMPS[style]
    ):
        separator = ";"
    apart = draw(st.booleans()) and " " in STAMPS[style] and style not in ("month name",) and separator != "  "
    words = HEADERS[draw(st.sampled_from(list(HEADERS)))]
    units = draw(st.sampled_from(["header", "header", "line", "none"]))
    heading = draw(st.sampled_from([True, True, True, False]))
    if not heading and (probes > 1 or layout != "wide"):
        heading = True
    numbered = draw(st.booleans()) and separator != "  "
    writer = _Writer(separator, comma, quote, style, apart, numbered, unit)
    rows, truth, missing = _rows(draw, writer, start, step, temps, rh if humid else None, layout)
    body = _broken(draw, writer, rows)
    head = _head_lines(writer, words, layout, probes, humid, unit, units, separator) if heading else []
    above = [f"Note {n}: hall 3, tray {n}" for n in range(draw(st.sampled_from([0, 0, 1, 4, 40])))]
    if heading and draw(st.booleans()):
        body.insert(draw(st.integers(1, len(body))), head[0])
        writer.ways.append("header again")
    text = draw(st.sampled_from(["\n", "\r\n"])).join(above + head + body)
    text += draw(st.sampled_from(["", "\n", "\n\n"]))
    encoding = draw(st.sampled_from(["utf-8", "utf-8-sig", "utf-16", "cp1252"]))
    ways = (
        style,
        layout,
        encoding,
        f"separator {separator!r}",
        "decimal comma" if comma else "decimal dot",
        f"unit {unit} {units}",
        *writer.ways,
        *(["no header"] if not heading else []),
    )
    data = text.encode(encoding)
    return Log(data, truth, missing, text.count("\n") + (not text.endswith("\n")), ways, style not in SURE)


class _Writer:
    """Cells into lines."""

    def __init__(self, separator, comma, quote, style, apart, numbered, unit):
        self.separator, self.comma, self.quote = separator, comma, quote
        self.style, self.apart, self.numbered, self.unit = style, apart, numbered, unit
        self.ways, self.number = [], 0

    def cell(self, value) -> str:
        text = value if isinstance(value, str) else f"{value:.2f}"
        text = text.replace(".", ",") if self.comma and not isinstance(value, str) else text
        return f'"{text}"' if self.quote else text

    def temp(self, celsius) -> float:
        return {"C": celsius, "F": celsius * 1.8 + 32, "K": celsius + 273.15}[self.unit]

    def line(self, time, cells, *, count=True) -> str:
        text = stamp_text(time, self.style)
        stamp = text.split(" ", 1) if self.apart else [text]
        self.number += count
        first = [str(self.number)] if self.numbered else []
        return self.separator.join([*first, *stamp, *cells])


def _rows(draw, writer, start, step, temps, rh, layout):
    """Lines of readings, what they hold as (probe, time) -> (temp, rh), and which values are missing."""
    lines, truth, missing = [], {}, set()
    codes = draw(st.lists(st.tuples(st.integers(0, len(temps) - 1), st.sampled_from(MISSING)), max_size=3))
    codes = {row: code for row, code in codes if layout == "wide" and not (writer.separator == "  " and not code)}
    if codes:
        writer.ways.append("missing codes")
    for n in range(len(temps)):
        time = start + dt.timedelta(minutes=step * n)
        wide = []
        for p in range(temps.shape[1]):
            shown = dt.timedelta(minutes=step // 2) * (p > 0) * (layout == "in turn")
            key = (p, time + shown if layout == "in turn" else time)
            truth[key] = (temps[n, p], np.nan if rh is None else rh[n, p])
            temp = writer.cell(writer.temp(temps[n, p]))
            if p == 0 and n in codes:
                temp = codes[n]
                missing.add(key)
                truth[key] = (np.nan, truth[key][1])
            humidity = [] if rh is None else [writer.cell(rh[n, p])]
            if layout == "wide":
                wide += [temp, *humidity]
            elif layout == "probe column":
                lines.append(writer.line(time, [f"P{p + 1}", temp, *humidity]))
            elif layout == "one value a line":
                lines.append(writer.line(time, [f"P{p + 1}", "temperature", temp]))
                if rh is not None:
                    lines.append(writer.line(time, [f"P{p + 1}", "humidity", writer.cell(rh[n, p])]))
            else:
                width = 1 + (rh is not None)
                lines.append(
                    writer.line(key[1], [""] * width * p + [temp, *humidity] + [""] * width * (temps.shape[1] - 1 - p))
                )
        if layout == "wide":
            lines.append(writer.line(time, wide))
    return lines, truth, missing


def _broken(draw, writer, lines):
    """Faults between and after the lines."""
    lines = list(lines)
    for fault in draw(st.lists(st.sampled_from(["blank", "event", "twice", "undated"]), max_size=3)):
        at = draw(st.integers(3, len(lines) - 1))
        writer.ways.append(fault)
        if fault == "blank":
            lines.insert(at, "")
        elif fault == "event":
            lines.insert(at, writer.separator.join(["Event", "lid_opened"]))
        elif fault == "twice":
            lines.insert(at, lines[at - 1])
        else:
            lines.insert(at, writer.separator.join(["????", *lines[at - 1].split(writer.separator)[1:]]))
    if draw(st.booleans()):
        writer.ways.append("summary")
        lines += [writer.separator.join(["Average", writer.cell(writer.temp(37.6))]), "End_of_data"]
    if writer.separator != "  " and draw(st.booleans()):
        writer.ways.append("phantom column")
        lines = [line + writer.separator if line and "Event" not in line else line for line in lines]
    return lines


def _head_lines(writer, words, layout, probes, humid, unit, units, separator):
    """The header and perhaps a line of units."""
    blank = "_" if separator == "  " else " "
    shown = {"C": "°C", "F": "°F", "K": "K"}[unit]
    stamp = [words[1], words[2]] if writer.apart else [words[0].replace(" ", blank)]
    names, below = ["No"] * writer.numbered + stamp, [""] * (writer.numbered + len(stamp))
    if layout in ("probe column", "one value a line"):
        names, below = [*names, "Sensor"], [*below, ""]
    if layout == "one value a line":
        names, below = [*names, "Parameter", "Value"], [*below, "", ""]
        columns = []
    else:
        columns = range(probes if layout in ("wide", "in turn") else 1)
    for p in columns:
        tail = f"{blank}{p + 1}" if len(columns) > 1 else ""
        names.append(words[3] + tail + (f"{blank}({shown})" if units == "header" else ""))
        below.append(shown)
        if humid:
            names.append(words[4] + tail + (f"{blank}(%)" if units == "header" else ""))
            below.append("%")
    names = [f'"{name}"' for name in names] if writer.quote else names
    if units == "line" and separator != "  " and layout != "one value a line":
        return [separator.join(names), separator.join(below)]
    return [separator.join(names)]


def check(log: Log, folder) -> None:
    """Read a log back; AssertionError where the truth is lost without a word."""
    path = Path(folder) / "log.csv"
    path.write_bytes(log.data)
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        readings, account = read_accounted(path, Wishes())
    counted = {kind: number for kind, number in account.lines.items() if kind != "lines"}
    assert account.lines["lines"] == log.lines, (account.lines, log.lines)
    assert sum(counted.values()) == log.lines, counted
    for kind, number in counted.items():
        assert kind in ("readings", "header") or any(
            (row["code"], row["facts"].get("count")) == (f"log_lines_{kind}", number) for row in account.rows
        ), kind
    doubted_order = any((row["severity"], row["code"]) == ("doubtful", "log_order_open") for row in account.rows)
    if log.unsure_order and doubted_order:
        assert len(readings) == len(log.truth)
        return
    names = sorted(readings["probe"].unique())
    keys = [
        (names.index(probe), time.to_pydatetime().replace(tzinfo=None))
        for probe, time in zip(readings["probe"], readings["time"], strict=True)
    ]
    found = dict(zip(keys, zip(readings["temp_c"], readings["rh_pct"], strict=True), strict=True))
    assert set(found) == set(log.truth), sorted(set(found) ^ set(log.truth))[:5]
    for key, (temp, rh) in log.truth.items():
        np.testing.assert_allclose(found[key], (temp, rh), atol=0.011, err_msg=str(key))
    marked = {key for key, doubt in zip(keys, readings["doubt"], strict=True) if doubt == "missing code"}
    assert marked == log.missing
    assert len(readings) == len(log.truth)
    assert pd.Series(readings["doubt"]).isin(["", "missing code", "stuck"]).all()


def main(count: int) -> None:
    """Read `count` generated files and print what they held."""
    held: collections.Counter = collections.Counter()
    doubted = []

    with tempfile.TemporaryDirectory() as folder:

        @settings(max_examples=count, deadline=None, database=None, suppress_health_check=list(HealthCheck))
        @given(logs())
        def run(log):
            check(log, folder)
            held.update(log.ways)
            doubted.append(log.unsure_order)

        run()
    print(f"{len(doubted)} files read, {sum(doubted)} with stamps whose order had to be found")
    for way, number in sorted(held.items()):
        print(f"{number:6d}  {way}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 2000)
