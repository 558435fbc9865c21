"""The order of a log's stamps: newest first, out of order, clock set back, date lost."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records.marks import limit

_DAY = 86_400_000_000
_HOUR = 3_600_000_000
_MOST_PIECES = 300


def file_order(time, step, name, rows, lines, account, values=()) -> tuple[np.ndarray | None, np.ndarray | None]:
    """Order that sorts the readings of a probe, and which readings a clock step puts in doubt.

    Parameters
    ----------
    time : ndarray of datetime64[us], shape (n,)
        In the order of the file.
    step : ndarray of int, shape (n - 1,)
        Microseconds from each to the next.
    values : sequence of ndarray, shape (n,)
        What was read at each time; a reading exported twice is no step of the clock.
    rows : ndarray of int or None
        Places of these readings in `lines` (None: all); `lines` are line numbers, to be told.
    account : Account

    Returns
    -------
    order : ndarray of int or None
        None where the readings are in order already.
    stepped : ndarray of bool or None
        In the order of the file; None where there is no step.
    """
    if not len(step) or (step.min() >= 0 and step.max() <= limit("far_off_days") * _DAY):
        return None, None

    def line(place):
        return int(lines[place if rows is None else rows[place]])

    micros = time.view(np.int64)
    back = np.flatnonzero(step < 0) + 1
    flipped = len(back) > 0.5 * len(step)
    if flipped:
        micros = micros[::-1]
        back = np.flatnonzero(micros[1:] < micros[:-1]) + 1
        account.say("note", "log_newest_first", name=name)
    stepped = None
    if len(back) > max(50, len(micros) // 20) and not _is_overlap(micros, values):
        first = len(micros) - 1 - back[0] if flipped else back[0]
        account.say("doubtful", "log_times_back", name=name, count=len(back), line=line(first))
    else:
        stepped = _without_repeats(micros, [v[::-1] if flipped else v for v in values])
        stepped = stepped[::-1] if flipped else stepped
        if stepped.any():
            where = line(int(np.argmax(stepped)))
            facts = dict(name=name, line=where, count=int(stepped.sum()))
            account.say("doubtful", "log_clock_step", row=where, **facts)
    order = np.argsort(time, kind="stable") if flipped or len(back) else None
    return order, stepped


def _is_overlap(micros, values) -> bool:
    """Whether most of what goes back was there already: exports put one below the other."""
    twice = _twice(micros, values)
    kept = micros[~twice]
    return bool(twice.sum() and (np.diff(kept) < 0).sum() <= max(50, len(kept) // 20))


def _twice(micros, values) -> np.ndarray:
    table = pd.DataFrame({"time": micros, **{str(n): v for n, v in enumerate(values)}})
    return table.duplicated().to_numpy() if len(values) else np.zeros(len(micros), dtype=bool)


def _without_repeats(micros, values) -> np.ndarray:
    """The readings that a clock step puts in doubt; those that stand there twice alike are none of them."""
    kept = np.flatnonzero(~_twice(micros, values))
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
