"""All sensor files of a season in one table: which log belongs to which incubator, corrected and merged."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pandas as pd

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError, problem
from hatchkit.records.logs import owner
from hatchkit.records.logs.join import empty_readings, join_files
from hatchkit.records.logs.read import Wishes, is_log, read_accounted
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
    owners = owner.Owners(settings, batches)
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
    if any(owner.matches_glob(path.name, pattern) for entry in said for pattern in owner.names(entry, "files")):
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
        from hatchkit.climate import air  # formulas only; see channels

        pressure = float(air.standard_pressure(incubator["altitude_m"]))
    return Wishes(said.get("timezone", timezone), said.get("temp_unit"), said.get("day_first"),
                  pressure_kpa=pressure, still_air=said.get("air") == "still", spans=tuple(spans), shown_in=timezone)


def _with_offset(readings, settings) -> pd.DataFrame:
    """probe_offset_c of season.toml added to temp_c; temp_logged_c keeps what the probe showed."""
    for incubator, said in settings.get("incubators", {}).items():
        offset = said.get("probe_offset_c") if isinstance(said, dict) else None
        if not offset:
            continue
        mine = readings["incubator"] == str(incubator)
        offsets = offset if isinstance(offset, dict) else {None: offset}
        for probe, degrees in offsets.items():
            same = [name for name in readings["probe"].unique() if owner.same_name(name, probe or "")]
            rows = mine if probe is None else mine & readings["probe"].isin(same)
            readings.loc[rows, "temp_c"] += float(degrees)
    return readings

