"""All sensor files of a season in one table: which log belongs to which incubator, corrected and merged."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError, problem
from hatchkit.records import log_owner
from hatchkit.records.sensors import COLUMNS, Wishes, empty_readings, is_log, read_accounted
from hatchkit.spelling import many

_ENDINGS = (".csv", ".txt", ".tsv", ".log", ".dat")
_WORKBOOKS = (".xlsx", ".xls", ".ods")


def read_logs(folder, settings, batches, timezone, *, loose=()):
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
    loose : sequence of str
        Names of texts at the top of the season folder; those that are plainly logs are read too.

    Returns
    -------
    readings : DataFrame
        Table `readings`, sorted by incubator, probe and time.
    problems : DataFrame
    """
    folder, rows, parts = Path(folder), [], []
    spans = batch_spans(batches)
    owners = log_owner.Owners(settings, batches)
    for path in log_files(folder) + [folder / name for name in loose if _is_log(folder / name, settings)]:
        name = path.relative_to(folder).as_posix()
        if path.parent == folder:
            rows.append(problem("note", file=name, found=f"{name} is a log and lies beside the table of batches",
                                done="read like the logs in the folder sensors",
                                mend="put it into a folder named sensors"))
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


def _is_log(path: Path, settings) -> bool:
    """Whether a text at the top of the folder is plainly a log, or season.toml says that it is one."""
    said = [entry for entry in settings.get("incubators", {}).values() if isinstance(entry, dict)]
    if any(log_owner.matches_glob(path.name, pattern) for entry in said for pattern in log_owner.names(entry, "files")):
        return True
    return is_log(path)


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
                  pressure_kpa=pressure, still_air=said.get("air") == "still", spans=tuple(spans), shown_in=timezone)


def join_files(parts) -> tuple[pd.DataFrame, list]:
    """One table of several files; the same readings exported twice are merged, two loggers kept apart."""
    rows, groups, joined = [], {}, {}
    for part in parts:
        for key, piece in _pieces(part):
            groups.setdefault(key, []).append(piece)
    if not groups:
        return empty_readings(), []
    for (incubator, probe), pieces in sorted(groups.items()):
        kept, said = _join_probe(incubator, probe, pieces)
        rows.extend(said)
        for piece in kept:
            joined.setdefault((incubator, piece["probe"].iloc[0]), []).append(piece)
    whole = [_in_time(pieces) for _, pieces in sorted(joined.items())]
    table = pd.concat(whole, ignore_index=True) if len(whole) > 1 else whole[0].reset_index(drop=True)
    return table[COLUMNS], rows


def _pieces(part):
    """(incubator, probe) and the readings of it, for all that one file holds."""
    if not len(part):
        return []
    names = [part[name].unique() for name in ("incubator", "probe")]
    if all(len(found) == 1 for found in names):
        return [((str(names[0][0]), str(names[1][0])), part)]
    return [((str(incubator), str(probe)), piece) for (incubator, probe), piece in
            part.groupby(["incubator", "probe"], sort=True)]


def _in_time(pieces) -> pd.DataFrame:
    """Readings of one probe from several files, in the order of time."""
    table = pd.concat(pieces, ignore_index=True) if len(pieces) > 1 else pieces[0]
    if table["time"].is_monotonic_increasing:
        return table
    return table.sort_values("time", kind="stable")


def _join_probe(incubator, probe, pieces) -> tuple[list, list]:
    """Files that name the same probe: parts of one log, the same log twice, or two loggers."""
    rows, kept = [], []
    for part in pieces:
        name, file = probe, part["file"].iloc[0]
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
        if len(part):
            kept.append(part if name == probe else part.assign(probe=name))
    return kept, rows


def _shared(one, two) -> tuple[float, int]:
    """Of the shorter log in the time both cover: share of readings that the other holds too, and their count."""
    start, end = max(one["time"].min(), two["time"].min()), min(one["time"].max(), two["time"].max())
    if start > end:
        return 0.0, 0
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
            same = [name for name in readings["probe"].unique() if log_owner.same_name(name, probe or "")]
            rows = mine if probe is None else mine & readings["probe"].isin(same)
            readings.loc[rows, "temp_c"] += float(degrees)
    return readings

