"""Readings of several files in one table; readings exported twice are merged, two loggers kept apart."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path, PurePosixPath

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.marks import gaps, usual_step
from hatchkit.reference import contract

#: What a file tells of its readings; whose and of which year they are is said when seasons are joined.
COLUMNS = [name for name in contract.columns("readings") if name not in ("keeper", "season")]


def empty_readings() -> pd.DataFrame:
    """A readings table without rows."""
    return contract.empty("readings")[COLUMNS]


def join_files(parts) -> tuple[pd.DataFrame, list]:
    """One table of several files; the same readings exported twice are merged, two loggers kept apart."""
    rows, groups, joined = [], {}, {}
    for part in parts:
        for key, piece in _apart(part, ["incubator", "probe"]):
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


def _apart(part, names: list) -> list:
    """Each (value of the one, value of the other column) and its readings; a log of one, as most are, stays whole."""
    if len(part) and all(len(part[name].unique()) == 1 for name in names):
        return [(tuple(part[names].iloc[0]), part)]
    return list(part.groupby(names, sort=False))


def _in_time(pieces) -> pd.DataFrame:
    """Readings of one probe from several files, in the order of time."""
    table = pd.concat(pieces, ignore_index=True) if len(pieces) > 1 else pieces[0]
    if table["time"].is_monotonic_increasing:
        return table
    return table.sort_values("time", kind="stable")


@dataclass
class _Log:
    """Readings of one file under the name of their probe, and the time that they span."""

    probe: str
    table: pd.DataFrame

    def __post_init__(self):
        self.file = self.table["file"].iloc[0]
        self.first, self.last = self.table["time"].min(), self.table["time"].max()


def _join_probe(incubator, probe, pieces) -> tuple[list, list]:
    """Files that name the same probe: parts of one log, the same log twice, or two loggers."""
    rows, kept = [], []
    for piece in pieces:
        log = _Log(probe, piece)
        for other in kept:
            # Logs kept a file a day are many, and none of them meets the others: their spans tell it without a look.
            if other.probe != log.probe or log.first > other.last or log.last < other.first:
                continue
            share, count = _shared(other.table, log.table)
            if not count:
                continue
            if share < 0.5:
                log.probe = f"{probe} ({Path(log.file).stem})"
                rows.append(
                    problem(
                        "note",
                        file=log.file,
                        code="log_two_probes",
                        facts=dict(file=log.file, other=other.file, probe=probe, machine=incubator, taken=log.probe),
                    )
                )
                continue
            left = _merged(probe, other, log, rows)
            if not len(left):
                break
            log = _Log(log.probe, left)
        else:
            kept.append(log)
    return [log.table if log.probe == probe else log.table.assign(probe=log.probe) for log in kept], rows


def _merged(probe: str, other: _Log, log: _Log, rows: list) -> pd.DataFrame:
    """The readings of `log` that `other` does not hold; those against other values at the same time are doubted."""
    part, held = log.table, other.table
    same = _held(part, held)
    again = dict(count=int(same.sum()), probe=probe, other=other.file)
    rows.append(problem("note", file=log.file, code="log_again", facts=again))
    part = part[~same]
    clash = part["time"].isin(held["time"])
    if clash.any():
        facts = dict(count=int(clash.sum()), probe=probe, other=other.file)
        rows.append(problem("doubtful", file=log.file, code="log_clash", facts=facts))
        part = part.assign(doubt=part["doubt"].mask(clash & (part["doubt"] == ""), "repeated"))
        back = held["time"].isin(part.loc[clash, "time"]) & (held["doubt"] == "")
        other.table = held.assign(doubt=held["doubt"].mask(back, "repeated"))
    return part


def _shared(one, two) -> tuple[float, int]:
    """Of the shorter log in the time both cover: share of readings that the other holds too, and their count."""
    start, end = max(one["time"].min(), two["time"].min()), min(one["time"].max(), two["time"].max())
    a, b = (part[(part["time"] >= start) & (part["time"] <= end)] for part in (one, two))
    if not len(a) or not len(b):
        return 0.0, 0
    short, long = (a, b) if len(a) <= len(b) else (b, a)
    return float(_held(short, long).mean()), len(short)


def _held(part, other) -> np.ndarray:
    """Which readings of a log another one holds too."""
    one, two = (pd.MultiIndex.from_frame(table[["time", "temp_logged_c"]]) for table in (part, other))
    return one.isin(two)


#: Of the table `logs`.
FILES = contract.columns("logs")


def files_table(parts, facts: dict, questions: pd.DataFrame, known_by: dict) -> pd.DataFrame:
    """One row for each file and machine.

    Parameters
    ----------
    parts : list of DataFrame
        Readings of each file, with their incubator.
    facts : dict
        File -> what its account holds: "channels" is a list of (probe, quantity, unit, how it is known).
    questions : DataFrame
    known_by : dict
        (file, incubator) -> how it is known whose the log is; see `owner.Owners`.

    Returns
    -------
    DataFrame
        file; incubator ("" where the file could not be read); known_by; probes, readings, doubtful (counts); start,
        end (UTC);
        step_minutes (the usual); gaps and the longest in hours; channels (list of dict: probe, quantity "temp", "rh",
        "wet_bulb" or "dew_point", unit "C", "F", "K" or "", how its kind and unit are known); asked (codes of its open
        questions).
    """
    rows: list[dict] = []
    asked = {file: list(dict.fromkeys(codes)) for file, codes in questions.groupby("file")["code"]}
    for part in parts:
        for (file, incubator), mine in _apart(part, ["file", "incubator"]):
            whole = str(file).split("/")
            known = next((facts[name] for n in range(len(whole), 0, -1) if (name := "/".join(whole[:n])) in facts), {})
            times = _by_probe(mine)
            holes = [_gaps(time) for time in times.values()]
            rows.append(
                dict(
                    file=file,
                    incubator=incubator,
                    known_by=known_by.get((file, incubator), ""),
                    probes=len(times),
                    start=mine["time"].min(),
                    end=mine["time"].max(),
                    step_minutes=usual_step(next(iter(times.values()))) / 6e7,
                    readings=len(mine),
                    doubtful=int((mine["doubt"] != "").sum()),
                    gaps=sum(len(found) for found in holes),
                    longest_gap_h=max((float(found.max()) for found in holes if len(found)), default=0.0),
                    channels=_channels(times, known),
                    asked=asked.get(file, []),
                )
            )
    seen = {str(at) for row in rows for at in (row["file"], *PurePosixPath(row["file"]).parents)}
    for file in facts:
        if file not in seen:
            rows.append(
                dict.fromkeys(FILES)
                | dict(
                    file=file,
                    incubator="",
                    known_by="",
                    probes=0,
                    start=pd.NaT,
                    end=pd.NaT,
                    readings=0,
                    doubtful=0,
                    gaps=0,
                    channels=[],
                    asked=[],
                )
            )
    return pd.DataFrame(rows, columns=FILES)


def _by_probe(mine) -> dict:
    """Probe -> times of its readings (datetime64, UTC), in the order of the log."""
    times, probes = mine["time"].dt.tz_localize(None).to_numpy(), mine["probe"].unique()
    if len(probes) == 1:
        return {probes[0]: times}
    return {probe: times[(mine["probe"] == probe).to_numpy()] for probe in probes}


def _gaps(time) -> np.ndarray:
    rows = np.flatnonzero(gaps(time))
    return (time[rows] - time[rows - 1]).astype("timedelta64[s]").astype(float) / 3600


def _channels(probes, known) -> list[dict]:
    """What the file's account says of its channels; of several parts in one file only what this machine has."""
    said = [dict(zip(("probe", "quantity", "unit", "how"), fact, strict=True)) for fact in known.get("channels", [])]
    return [fact for fact in said if fact["probe"] in probes] or said
