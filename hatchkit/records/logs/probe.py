"""The readings of one probe of a file: put in order, repeats merged, doubts marked."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records import marks
from hatchkit.records.logs.order import file_order

#: Doubts that are told here; the others are where they are found.
_TOLD = ("stuck", "spike", "out of range", "repeated", "missing code")
_WEAKEST_FIRST = ("marked", "stuck", "spike", "out of range", "repeated", "clock step", "missing code")


def probe_readings(utc, part, mine, name, lines, account) -> tuple[pd.DataFrame, np.ndarray]:
    """Readings of one probe, and the rows of the file that they stand on.

    The rows are None where they are all lines in their order.

    Parameters
    ----------
    utc : ndarray of datetime64[us], shape (n,)
        Time of every line.
    part : dict
        temp_c, rh_pct and temp_logged_c of every line.
    mine : ndarray of bool, shape (n,)
        Lines of this probe.
    """
    rows = None if mine.all() else np.flatnonzero(mine)
    take = slice(None) if rows is None else rows
    table = {key: part[key][take] for key in ("temp_c", "rh_pct", "temp_logged_c")}
    table["time"] = utc[take]
    step = np.diff(table["time"].view(np.int64))
    order, stepped = file_order(
        table["time"], step, name, rows, lines, account, (table["temp_logged_c"], table["rh_pct"])
    )
    if order is not None:
        table, rows = _take(table, rows, order)
        stepped = None if stepped is None else stepped[order]
        step = np.diff(table["time"].view(np.int64))
    keep = _merge(table, step, name, account)
    if keep is not None:
        table, rows = _take(table, rows, keep)
        stepped = None if stepped is None else stepped[keep]
    doubts = {"missing code": np.isnan(table["temp_c" if part["wanted"] == "temp" else "rh_pct"])}
    if part["in_turn"]:
        # One value a line: a line with humidity alone lacks no temperature.
        doubts["missing code"] &= np.isnan(table["rh_pct"])
    if part["marked"] is not None:
        doubts["marked"] = part["marked"] if rows is None else part["marked"][rows]
    if stepped is not None:
        doubts["clock step"] = stepped
    doubts |= marks.marks_of(table["time"], table["temp_c"], table["rh_pct"])
    return _frame(name, table, doubts, account), rows


def _take(table, rows, order):
    return {key: values[order] for key, values in table.items()}, order if rows is None else rows[order]


def _merge(table, step, name, account) -> np.ndarray | None:
    """Rows to keep once readings of one time that say the same, or complete each other, are one.

    Fills the values of the rows that are kept. None where no time comes twice.
    """
    if not (step == 0).any():
        return None
    time = table["time"].view(np.int64)
    keys = ("temp_c", "rh_pct", "temp_logged_c")
    table.update({key: table[key].copy() for key in keys})
    keep, joined = np.arange(len(time)), 0
    while True:
        values = [table[key][keep] for key in keys]
        fits = time[keep][1:] == time[keep][:-1]
        for column in values:
            a, b = column[:-1], column[1:]
            fits &= (a == b) | np.isnan(a) | np.isnan(b)
        second = np.flatnonzero(fits) + 1
        if not len(second):
            break
        # In a run of equal stamps no two joins may touch the same row in one round.
        second = second[_apart(second)]
        for key, column in zip(keys, values, strict=True):
            first = column[second - 1]
            table[key][keep[second - 1]] = np.where(np.isnan(first), column[second], first)
        joined += len(second)
        keep = np.delete(keep, second)
    if not joined:
        return None
    account.say("note", "log_merged", column=name, count=joined, name=name)
    return keep


def _apart(places: np.ndarray) -> np.ndarray:
    """Of each run of neighbouring numbers the first, third, fifth and so on."""
    starts = np.concatenate([[0], np.flatnonzero(np.diff(places) > 1) + 1])
    return (places - np.repeat(places[starts], np.diff(starts, append=len(places)))) % 2 == 0


def _frame(name, table, doubts, account) -> pd.DataFrame:
    count = len(table["time"])
    marked = {reason: np.flatnonzero(doubts[reason]) for reason in _WEAKEST_FIRST if reason in doubts}
    marked = {reason: where for reason, where in marked.items() if len(where)}
    for reason, where in marked.items():
        if reason in _TOLD:
            _say_marks(account, reason, name, table["time"][where])
    _say_gaps(account, name, table["time"], doubts["gap"])
    time = pd.Series(table["time"], copy=False).dt.tz_localize("UTC")
    frame = pd.DataFrame(
        {
            "incubator": _same_text("", count),
            "probe": _same_text(name, count),
            "time": time,
            "temp_c": table["temp_c"],
            "rh_pct": table["rh_pct"],
            "file": _same_text(account.file, count),
        },
        copy=False,
    )
    # A column taken over from another costs nothing until one of the two is changed.
    frame["doubt"] = frame["incubator"]
    if marked:
        doubt = _same_text("", count)
        for reason, where in marked.items():
            doubt[where] = reason
        frame["doubt"] = doubt
    same = table["temp_logged_c"] is table["temp_c"] or np.shares_memory(table["temp_logged_c"], table["temp_c"])
    frame["temp_logged_c"] = frame["temp_c"] if same else table["temp_logged_c"]
    return frame


def _same_text(text: str, count: int):
    """A column of one text; pieces put together are quicker than letting pandas look at every cell."""
    piece = pd.Series(pd.array([text], dtype="str").repeat(min(count, 50_000)))
    if count == len(piece):
        return piece.array
    return pd.concat([piece] * (count // len(piece)) + [piece.iloc[: count % len(piece)]], ignore_index=True).array


def _say_marks(account, reason, name, times) -> None:
    first, last = account.clock(times.min()), account.clock(times.max())
    facts = dict(count=len(times), name=name, doubt=reason.replace(" ", "_"), start=first, end=last, mark=reason)
    account.say("doubtful", "log_doubted", column=name, **facts)


def _say_gaps(account, name, times, gap) -> None:
    holes = np.flatnonzero(gap)
    if len(holes):
        length = (times[holes] - times[holes - 1]).astype(np.int64) / 3.6e9
        longest = int(np.argmax(length))
        start, end = (account.clock(times[holes[longest] - before]) for before in (1, 0))
        hours = round(float(length[longest]), 1)
        account.say("note", "log_gaps", column=name, count=len(holes), name=name, hours=hours, start=start, end=end)
