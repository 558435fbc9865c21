"""The readings of one probe of a file: put in order, repeats merged, doubts marked."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records import clock_order, marks

_WHY = {"stuck": "never change for hours", "spike": "jump faster than the air of an egg box can",
        "out of range": "show what no incubator has", "repeated": "share their time with another of other value",
        "clock step": "lie where the clock went back or lost its date", "missing code": "have no value"}


def probe_readings(utc, part, mine, name, lines, wishes, account) -> tuple[pd.DataFrame, np.ndarray]:
    """Readings of one probe, and the rows of the file that they stand on.

    Parameters
    ----------
    utc : ndarray of datetime64[us], shape (n,)
        Time of every line.
    part : dict
        temp_c, rh_pct and temp_logged_c of every line.
    mine : ndarray of bool, shape (n,)
        Lines of this probe.
    """
    rows = np.arange(len(mine)) if mine.all() else np.flatnonzero(mine)
    take = slice(None) if len(rows) == len(mine) else rows
    table = {key: part[key][take] for key in ("temp_c", "rh_pct", "temp_logged_c")}
    table["time"] = utc[take]
    order, stepped = clock_order.file_order(table["time"], name, lines[take], account)
    if stepped is not None:
        table["clock step"] = stepped
    if order is not None:
        table, rows = {key: values[order] for key, values in table.items()}, rows[order]
    keep = _merge(table, name, account)
    if keep is not None:
        table, rows = {key: values[keep] for key, values in table.items()}, rows[keep]
    doubts = {"missing code": np.isnan(table["temp_c" if part["wanted"] == "temp" else "rh_pct"])}
    if stepped is not None:
        doubts["clock step"] = table.pop("clock step")
    if wishes.mark:
        doubts |= marks.marks_of(table["time"], table["temp_c"], table["rh_pct"])
    return _frame(name, table, doubts, account), rows


def _merge(table, name, account) -> np.ndarray | None:
    """Rows to keep once readings of one time that say the same, or complete each other, are one.

    Fills the values of the rows that are kept. None where no time comes twice.
    """
    time = table["time"].view(np.int64)
    if not (time[1:] == time[:-1]).any():
        return None
    keep = np.arange(len(time))
    joined = 0
    while True:
        values = [table[key][keep] for key in ("temp_c", "rh_pct", "temp_logged_c")]
        fits = time[keep][1:] == time[keep][:-1]
        for column in values:
            a, b = column[:-1], column[1:]
            fits &= (a == b) | np.isnan(a) | np.isnan(b)
        second = np.flatnonzero(fits) + 1
        # In a run of equal stamps every other join at a time, so that no row is used twice.
        second = second[np.concatenate([[True], np.diff(second) > 1])] if len(second) else second
        if not len(second):
            break
        for key, column in zip(("temp_c", "rh_pct", "temp_logged_c"), values, strict=True):
            first = column[second - 1]
            if np.isnan(first).any():
                table[key] = table[key].copy()
                table[key][keep[second - 1]] = np.where(np.isnan(first), column[second], first)
        joined += len(second)
        keep = np.delete(keep, second)
    if not joined:
        return None
    account.say("note", f"{joined} readings of {name} repeat or complete one of the same time", "merged with it",
                column=name)
    return keep


def _frame(name, table, doubts, account) -> pd.DataFrame:
    doubt = np.full(len(table["time"]), "", dtype=object)
    for reason in ("stuck", "spike", "out of range", "repeated", "clock step", "missing code"):
        where = np.flatnonzero(doubts[reason]) if reason in doubts else ()
        if len(where):
            doubt[where] = reason
            _say_marks(account, reason, name, table["time"][where])
    _say_gaps(account, name, table["time"])
    logged = table["temp_logged_c"]
    # The two columns must not share memory: a correction of one would change the other.
    logged = logged.copy() if np.shares_memory(logged, table["temp_c"]) else logged
    return pd.DataFrame({
        "incubator": "", "probe": name, "time": pd.DatetimeIndex(table["time"]).tz_localize("UTC"),
        "temp_c": table["temp_c"], "rh_pct": table["rh_pct"], "file": account.file, "doubt": doubt,
        "temp_logged_c": logged}, copy=False)


def _say_marks(account, reason, name, times) -> None:
    account.say("doubtful", f"{len(times)} readings of {name} {_WHY[reason]}, "
                f"the first at {_minute(times.min())} UTC, the last at {_minute(times.max())}",
                f"kept and marked \"{reason}\"", column=name)


def _say_gaps(account, name, times) -> None:
    holes = np.flatnonzero(marks.gaps(times))
    if len(holes):
        length = (times[holes] - times[holes - 1]).astype(np.int64) / 3.6e9
        longest = int(np.argmax(length))
        account.say("note", f"{len(holes)} holes in {name}; the longest is {length[longest]:.1f} h from "
                    f"{_minute(times[holes[longest] - 1])} UTC", "nothing is filled in", column=name)


def _minute(time) -> str:
    return str(np.datetime64(time, "m")).replace("T", " ")
