"""The readings of one probe of a file: put in order, repeats merged, doubts marked."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records import marks
from hatchkit.records.marks import limit

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
        temp_c, rh_pct, temp_logged_c and marked of every line.
    mine : ndarray of bool, shape (n,)
        Lines of this probe.
    """
    rows = None if mine.all() else np.flatnonzero(mine)
    take = slice(None) if rows is None else rows
    table = {key: part[key][take] for key in ("temp_c", "rh_pct", "temp_logged_c", "marked")}
    table["time"] = utc[take]
    order, table["clock step"] = file_order(table, name, rows, lines, account)
    if order is not None:
        table, rows = _take(table, rows, order)
    keep = _merge(table, name, account)
    if keep is not None:
        table, rows = _take(table, rows, keep)
    doubts = {"missing code": np.isnan(table["temp_c" if part["wanted"] == "temp" else "rh_pct"])}
    if part["in_turn"]:
        # One value a line: a line with humidity alone lacks no temperature.
        doubts["missing code"] &= np.isnan(table["rh_pct"])
    doubts |= {"marked": table["marked"], "clock step": table["clock step"]}
    doubts |= marks.marks_of(table["time"], table["temp_c"], table["rh_pct"])
    return _frame(name, table, doubts, account), rows


def _take(table, rows, order):
    return {key: values[order] for key, values in table.items()}, order if rows is None else rows[order]


def _merge(table, name, account) -> np.ndarray | None:
    """Rows to keep once readings of one time that say the same, or complete each other, are one.

    Fills the values of the rows that are kept. None where no time comes twice.
    """
    time = table["time"].view(np.int64)
    again = np.flatnonzero(time[1:] == time[:-1])
    if not len(again):
        return None
    keys, rows = ["temp_c", "rh_pct", "temp_logged_c"], np.union1d(again, again + 1)
    twice = pd.DataFrame({"time": time[rows]} | {key: table[key][rows] for key in keys}, index=rows)
    kept = twice.drop_duplicates()
    values = kept.groupby("time")[keys]
    # Where a time has one value of each quantity at most, its readings complete each other.
    alike = (values.transform("max") == values.transform("min")) | values.transform("max").isna()
    whole = values.transform("first")[alike.all(axis=1)]
    for key in keys:
        table[key] = table[key].copy()
        table[key][whole.index] = whole[key]
    kept = kept.drop(whole.index[kept.loc[whole.index].duplicated("time")])
    gone = np.setdiff1d(rows, kept.index)
    if not len(gone):
        return None
    account.say("note", "log_merged", column=name, count=len(gone), name=name)
    return np.delete(np.arange(len(time)), gone)


def _frame(name, table, doubts, account) -> pd.DataFrame:
    count = len(table["time"])
    marked = {reason: np.flatnonzero(doubts[reason]) for reason in _WEAKEST_FIRST}
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


_DAY = 86_400_000_000
_HOUR = 3_600_000_000
_MOST_PIECES = 300


def file_order(table, name, rows, lines, account) -> tuple[np.ndarray | None, np.ndarray]:
    """Order that sorts the readings of a probe, and which readings a clock step puts in doubt.

    Parameters
    ----------
    table : dict
        time, datetime64[us], and what was read then, temp_logged_c and rh_pct, in the order of the file, shape (n,);
        a reading exported twice is no step of the clock.
    rows : ndarray of int or None
        Places of these readings in `lines` (None: all); `lines` are line numbers, to be told.
    account : Account

    Returns
    -------
    order : ndarray of int or None
        None where the readings are in order already.
    stepped : ndarray of bool
        In the order of the file.
    """
    micros = table["time"].view(np.int64)
    step, stepped = np.diff(micros), np.zeros(len(micros), dtype=bool)
    if not len(step) or (step.min() >= 0 and step.max() <= limit("far_off_days") * _DAY):
        return None, stepped

    def line(place):
        return int(lines[place if rows is None else rows[place]])

    way = slice(None)
    back = np.flatnonzero(step < 0) + 1
    if len(back) > 0.5 * len(step):
        way = slice(None, None, -1)
        account.say("note", "log_newest_first", name=name)
    again = pd.DataFrame({key: table[key][way] for key in ("time", "temp_logged_c", "rh_pct")}).duplicated().to_numpy()
    micros = micros[way]
    back = np.flatnonzero(micros[1:] < micros[:-1]) + 1
    if len(back) > max(50, len(micros) // 20) and not _is_overlap(micros, again):
        first = np.arange(len(micros))[way][back[0]]
        account.say("doubtful", "log_times_back", name=name, count=len(back), line=line(first))
    else:
        stepped = _without_repeats(micros, ~again)[way]
        if stepped.any():
            where = line(int(np.argmax(stepped)))
            facts = dict(name=name, line=where, count=int(stepped.sum()))
            account.say("doubtful", "log_clock_step", row=where, **facts)
    order = np.argsort(table["time"], kind="stable") if (step < 0).any() else None
    return order, stepped


def _is_overlap(micros, again) -> bool:
    """Whether most of what goes back was there already: exports put one below the other."""
    kept = micros[~again]
    return bool(again.any() and (np.diff(kept) < 0).sum() <= max(50, len(kept) // 20))


def _without_repeats(micros, first) -> np.ndarray:
    """The readings that a clock step puts in doubt; those that stand there twice alike are none of them."""
    kept = np.flatnonzero(first)
    stepped = np.zeros(len(micros), dtype=bool)
    back = np.flatnonzero(np.diff(micros[kept]) < 0) + 1
    if len(back) or len(_far_jumps(micros[kept])):
        stepped[kept] = _doubted(micros[kept], back)
    return stepped


def _far_jumps(micros: np.ndarray) -> np.ndarray:
    return np.flatnonzero(np.abs(np.diff(micros)) > limit("far_off_days") * _DAY) + 1


def _doubted(micros: np.ndarray, back: np.ndarray) -> np.ndarray:
    """Readings outside the longest chain of stretches in which time goes on and makes no far jump."""
    cuts = np.union1d(back, _far_jumps(micros))
    if len(back):
        # Where the clock goes back it may have run ahead before, so holes part the stretches too.
        holes = np.flatnonzero(np.diff(micros) > max(_HOUR, 3 * np.median(np.abs(np.diff(micros))))) + 1
        cuts = np.union1d(cuts, holes) if len(holes) + len(cuts) <= _MOST_PIECES else cuts
    edges = np.concatenate([[0], cuts, [len(micros)]]).astype(int)
    pieces = [(a, b, int(micros[a]), int(micros[b - 1])) for a, b in zip(edges, edges[1:], strict=False)]
    best = [b - a for a, b, _, _ in pieces]
    previous: list = [None] * len(pieces)
    far = limit("far_off_days") * _DAY
    for j, (a, b, start, _) in enumerate(pieces):
        for i in range(j):
            if pieces[i][3] <= start and start - pieces[i][3] <= far and best[i] + b - a > best[j]:
                best[j], previous[j] = best[i] + b - a, i
    doubted = np.ones(len(micros), dtype=bool)
    at = int(np.argmax(best))
    while at is not None:
        doubted[pieces[at][0] : pieces[at][1]] = False
        at = previous[at]
    return doubted
