"""Readings of several files in one table; readings exported twice are merged, two loggers kept apart."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pandas as pd

from hatchkit.problems import problem
from hatchkit.reference import contract

#: What a file tells of its readings; whose and of which year they are is said when seasons are joined.
COLUMNS = [name for name in contract.columns("readings") if name not in ("keeper", "season")]


def empty_readings() -> pd.DataFrame:
    """A readings table without rows."""
    frame = pd.DataFrame({name: pd.Series(dtype="str") for name in COLUMNS})
    frame["time"] = pd.Series(dtype="datetime64[us, UTC]")
    for name in ("temp_c", "rh_pct", "temp_logged_c"):
        frame[name] = pd.Series(dtype=float)
    return frame


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
    return [
        ((str(incubator), str(probe)), piece)
        for (incubator, probe), piece in part.groupby(["incubator", "probe"], sort=True)
    ]


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
    same = part["time"].isin(held["time"]) & pd.Series(
        pd.MultiIndex.from_frame(part[["time", "temp_logged_c"]]).isin(
            pd.MultiIndex.from_frame(held[["time", "temp_logged_c"]])
        ),
        index=part.index,
    )
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
    same = pd.MultiIndex.from_frame(short[["time", "temp_logged_c"]]).isin(
        pd.MultiIndex.from_frame(long[["time", "temp_logged_c"]])
    )
    return float(same.mean()), len(short)
