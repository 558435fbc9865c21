"""How a logger exports: separators, decimal signs, time stamps, headings, one file or several.

The styles are general ones; none is that of a real maker.
"""

from dataclasses import dataclass
from pathlib import Path

import pandas as pd

from hatchkit.records.writing import write_whole


@dataclass(frozen=True)
class Export:
    """One export style.

    stamp : strftime pattern, local wall clock; "%z" adds the offset, "utc" writes ISO with Z
    split : "all" (one file), "month" or "run" (a file each)
    """

    name: str
    sep: str = ","
    decimal: str = "."
    stamp: str = "%Y-%m-%d %H:%M:%S"
    headings: tuple = ("time", "temperature (°C)", "humidity (%RH)")
    preamble: tuple = ()
    unit: str = "C"
    split: str = "month"
    numbered: bool = False
    width: int = 0
    encoding: str = "utf-8"
    newline: str = "\n"


EXPORTS = {
    style.name: style
    for style in (
        Export("iso_comma"),
        Export("iso_offset", stamp="%Y-%m-%dT%H:%M:%S%z", headings=("timestamp", "temp_c", "rh")),
        Export("utc", stamp="utc", headings=("time_utc", "temperature_c", "humidity_pct"), split="all"),
        Export(
            "semicolon",
            sep=";",
            decimal=",",
            stamp="%d.%m.%Y %H:%M",
            headings=("Date/Time", "Temperature [°C]", "Humidity [%]"),
            split="run",
            encoding="utf-8-sig",
            newline="\r\n",
        ),
        Export(
            "numbered",
            numbered=True,
            headings=("No.", "Date and time", "Temp (°C)", "RH (%)"),
            stamp="%Y/%m/%d %H:%M:%S",
            preamble=("Logger export", "Readings: {count}", ""),
            split="all",
        ),
        Export("tab", sep="\t", stamp="%d/%m/%Y %H:%M", headings=("Date", "Temp C", "Hum %"), split="month"),
        Export(
            "fahrenheit", unit="F", width=5, stamp="%Y-%m-%d %H:%M", headings=("Time", "Temp (°F)", "RH %"), split="run"
        ),
    )
}


def _stamps(time: pd.Series, style: Export, zone: str) -> pd.Series:
    if style.stamp == "utc":
        return time.dt.strftime("%Y-%m-%dT%H:%M:%SZ")
    text = time.dt.tz_convert(zone).dt.strftime(style.stamp)
    if "%z" in style.stamp:
        text = text.str.replace(r"(\d\d)(\d\d)$", r"\1:\2", regex=True)
    return text


def _numbers(values: pd.Series, style: Export, digits: int) -> pd.Series:
    # whole arrays at once: a format call per reading would take most of the time of a season
    text = values.round(digits).astype(str) if digits else values.astype("Int64").astype(str)
    # one width for all: otherwise the size of a file would tell how warm it was
    text = text.where(values.notna(), "").str.rjust(style.width if digits else 0)
    return text.str.replace(".", style.decimal, regex=False) if style.decimal != "." else text


def _parts(readings: pd.DataFrame, style: Export, zone: str):
    """(label, rows) for each file that the readings of one incubator are split into."""
    if style.split == "all":
        yield "", readings
    elif style.split == "month":
        month = readings["time"].dt.tz_convert(zone).dt.strftime("%Y-%m")
        for label, rows in readings.groupby(month, sort=True):
            yield f"_{label}", rows
    else:
        new = (readings["time"].diff() > pd.Timedelta(hours=33)).cumsum()
        for number, (_, rows) in enumerate(readings.groupby(new, sort=True), start=1):
            yield f"_{number:02d}", rows


def write_export(folder, readings: pd.DataFrame, *, stem, style: Export, timezone) -> list[str]:
    """Write the readings of one incubator; returns the paths as seen from the season folder.

    Parameters
    ----------
    folder : path
        Season folder; files go to its ``sensors`` folder.
    readings : DataFrame
        time (UTC), temp_c, rh_pct; sorted.
    stem : str
        Beginning of each file name.
    """
    sensors = Path(folder) / "sensors"
    sensors.mkdir(parents=True, exist_ok=True)
    written = []
    for label, rows in _parts(readings.reset_index(drop=True), style, timezone):
        temp = rows["temp_c"] * 1.8 + 32 if style.unit == "F" else rows["temp_c"]
        parts = [_stamps(rows["time"], style, timezone), _numbers(temp, style, 1), _numbers(rows["rh_pct"], style, 0)]
        if style.numbered:
            parts.insert(0, pd.Series(range(1, len(rows) + 1), index=rows.index).astype(str))
        lines = [line.format(count=len(rows)) for line in style.preamble]
        lines.append(style.sep.join(style.headings))
        lines += map(style.sep.join, zip(*(part.tolist() for part in parts), strict=True))
        path = sensors / f"{stem}{label}.csv"
        write_whole(path, style.newline.join([*lines, ""]), encoding=style.encoding)
        written.append(path.relative_to(folder).as_posix())
    return written
