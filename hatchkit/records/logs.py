"""All sensor files of a season in one table: which log belongs to which incubator, corrected and merged."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError, problem
from hatchkit.records import log_owner
from hatchkit.records.sensors import COLUMNS, Wishes, empty_readings, read_accounted
from hatchkit.records.sensors_lines import many

_ENDINGS = (".csv", ".txt", ".tsv", ".log", ".dat")
_WORKBOOKS = (".xlsx", ".xls", ".ods")


def read_logs(folder, settings, batches, timezone):
    """Read every sensor file of a season folder.

    Parameters
    ----------
    folder : path
        The season folder; logs lie in its folder ``sensors``.
    settings : dict
        season.toml. Used here: ``[incubators.NAME]`` files, probes, probe_offset_c (added to what
        the probe shows; a number, or one per probe), temp_unit, timezone, altitude_m; ``[sensors]``
        temp_unit, day_first, timezone.
    batches : DataFrame
        incubator, set_at and taken_off_at are used: names to match, and times in which readings are expected.
    timezone : str or None
        Zone of the season.

    Returns
    -------
    readings : DataFrame
        Table `readings`, sorted by incubator, probe and time.
    problems : DataFrame
    """
    folder, rows, parts = Path(folder), [], []
    spans = batch_spans(batches)
    owners = log_owner.Owners(settings, batches)
    for path in log_files(folder):
        name = path.relative_to(folder).as_posix()
        if path.suffix.lower() in _WORKBOOKS:
            rows.append(problem("lost", file=name, found="a workbook among the sensor files", done="left out",
                                mend="save the sheet with the readings as CSV"))
            continue
        try:
            readings, account = read_accounted(path, _wishes(settings, owners, name, timezone, spans), name=name)
        except HatchkitError as error:
            rows.append(problem("lost", file=name, found=str(error), done="left out",
                                mend="export the log again as CSV, or take the file out of the folder sensors"))
            continue
        rows.extend(account.rows)
        parts.append(readings)
    parts, found = owners.name_all(parts)
    rows.extend(found)
    readings, found = join_files(parts)
    rows.extend(found)
    readings = _with_offset(readings, settings)
    return readings, _problems.table(rows)


def log_files(folder: Path) -> list[Path]:
    """Files in the folder ``sensors`` (and folders in it) that may be logs, by name."""
    base = next((entry for entry in sorted(folder.iterdir()) if entry.is_dir() and entry.name.lower() == "sensors"),
                None)
    if base is None:
        return []
    return sorted(path for path in base.rglob("*") if path.suffix.lower() in _ENDINGS + _WORKBOOKS
                  and not path.name.startswith((".", "~")))


def batch_spans(batches) -> list[tuple[np.datetime64, np.datetime64]]:
    """Time from setting to take-off of each batch (60 days where the end was not kept)."""
    spans = []
    if batches is None or "set_at" not in batches:
        return spans
    nothing = pd.Series(pd.NaT, index=batches.index)
    ends = batches["taken_off_at"] if "taken_off_at" in batches else nothing
    for start, end in zip(batches["set_at"], ends, strict=True):
        if pd.isna(start):
            continue
        end = start + pd.Timedelta(days=60) if pd.isna(end) else end
        spans.append(tuple(pd.Timestamp(edge).tz_convert(None).to_datetime64() for edge in (start, end)))
    return spans


def _wishes(settings, owners, name, timezone, spans) -> Wishes:
    sensors = settings.get("sensors", {})
    incubator = settings.get("incubators", {}).get(owners.of_file(name)[0] or "", {})
    said = {**sensors, **incubator}
    pressure = 101.325
    if incubator.get("altitude_m"):
        from hatchkit.climate import air  # formulas only; see sensors_channels

        pressure = float(air.standard_pressure(incubator["altitude_m"]))
    return Wishes(said.get("timezone", timezone), said.get("temp_unit"), said.get("day_first"),
                  pressure_kpa=pressure, still_air=said.get("air") == "still", spans=tuple(spans))


def join_files(parts) -> tuple[pd.DataFrame, list]:
    """One table of several files; the same readings exported twice are merged, two loggers kept apart."""
    parts = [part for part in parts if len(part)]
    if not parts:
        return empty_readings(), []
    rows, joined = [], []
    together = pd.concat(parts, ignore_index=True) if len(parts) > 1 else parts[0]
    for (incubator, probe), group in together.groupby(["incubator", "probe"], sort=True):
        files = list(dict.fromkeys(group["file"]))
        if len(files) > 1:
            group, said = _join_probe(incubator, probe, group, files)
            rows.extend(said)
        joined.append(group)
    table = pd.concat(joined, ignore_index=True) if len(joined) > 1 else joined[0]
    return table.sort_values(["incubator", "probe", "time"], kind="stable", ignore_index=True)[COLUMNS], rows


def _join_probe(incubator, probe, group, files):
    """Files that name the same probe: parts of one log, the same log twice, or two loggers."""
    rows, kept = [], []
    for file in files:
        part = group[group["file"] == file]
        name = probe
        for place, other in enumerate(kept):
            if other["probe"].iloc[0] != name:
                continue
            share, count = _shared(other, part)
            if not count:
                continue
            if share < 0.5:
                name = f"{probe} ({Path(file).stem})"
                rows.append(problem("note", file=file,
                                    found=f"{file} and {other['file'].iloc[0]} overlap in time with "
                                    f"different readings of {probe} in incubator {incubator}",
                                    done=f"taken for two probes; this one is called {name}"))
                continue
            same = part["time"].isin(other["time"]) & pd.Series(
                pd.MultiIndex.from_frame(part[["time", "temp_logged_c"]]).isin(
                    pd.MultiIndex.from_frame(other[["time", "temp_logged_c"]])), index=part.index)
            again = f"{many(int(same.sum()), 'reading')} of {probe} that also stand in {other['file'].iloc[0]}"
            rows.append(problem("note", file=file, found=again, done="merged"))
            part = part[~same]
            clash = part["time"].isin(other["time"])
            if clash.any():
                rows.append(problem("doubtful", file=file,
                                    found=f"{many(int(clash.sum()), 'reading')} of {probe} against other values "
                                    f"at the same time in {other['file'].iloc[0]}",
                                    done="both kept and marked \"repeated\"", mend="take the wrong file out"))
                part = part.assign(doubt=part["doubt"].mask(clash & (part["doubt"] == ""), "repeated"))
                back = other["time"].isin(part.loc[clash, "time"]) & (other["doubt"] == "")
                kept[place] = other.assign(doubt=other["doubt"].mask(back, "repeated"))
        kept.append(part.assign(probe=name))
    return pd.concat([part for part in kept if len(part)], ignore_index=True), rows


def _shared(one, two) -> tuple[float, int]:
    """Of the shorter log in the time both cover: share of readings that the other holds too, and their count."""
    start, end = max(one["time"].min(), two["time"].min()), min(one["time"].max(), two["time"].max())
    a, b = (part[(part["time"] >= start) & (part["time"] <= end)] for part in (one, two))
    if not len(a) or not len(b):
        return 0.0, 0
    short, long = (a, b) if len(a) <= len(b) else (b, a)
    same = pd.MultiIndex.from_frame(short[["time", "temp_logged_c"]]).isin(
        pd.MultiIndex.from_frame(long[["time", "temp_logged_c"]]))
    return float(same.mean()), len(short)


def _with_offset(readings, settings) -> pd.DataFrame:
    """probe_offset_c of season.toml added to temp_c; temp_logged_c keeps what the probe showed."""
    for incubator, said in settings.get("incubators", {}).items():
        offset = said.get("probe_offset_c") if isinstance(said, dict) else None
        if not offset:
            continue
        mine = readings["incubator"] == str(incubator)
        offsets = offset if isinstance(offset, dict) else {None: offset}
        for probe, degrees in offsets.items():
            rows = mine if probe is None else mine & readings["probe"].map(
                lambda name, wanted=probe: log_owner.same_name(name, wanted))
            readings.loc[rows, "temp_c"] += float(degrees)
    return readings

