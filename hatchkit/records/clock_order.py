"""The order of a log's stamps: newest first, out of order, clock set back, date lost."""

from __future__ import annotations

import numpy as np

from hatchkit.records.marks import limit

_DAY = 86_400_000_000


def file_order(time, name, lines, account) -> tuple[np.ndarray | None, np.ndarray | None]:
    """Order that sorts the readings of a probe, and which readings a clock step puts in doubt.

    Parameters
    ----------
    time : ndarray of datetime64[us]
        In the order of the file.
    lines : ndarray of int
        Line numbers, for the words.
    account : Account

    Returns
    -------
    order : ndarray of int or None
        None where the readings are in order already.
    stepped : ndarray of bool or None
        In the order of the file; None where there is no step.
    """
    micros = time.view(np.int64) if time.flags.c_contiguous else time.astype(np.int64)
    back = np.flatnonzero(micros[1:] < micros[:-1]) + 1
    flipped = len(back) > 0.5 * len(micros)
    if flipped:
        micros = micros[::-1]
        back = np.flatnonzero(micros[1:] < micros[:-1]) + 1
        account.say("note", f"{name} is written newest first", "put in order of time")
    stepped = None
    if len(back) > max(50, len(micros) // 20):
        account.say("doubtful",
                    f"the times of {name} go back {len(back)} times, the first in line {lines[back[0]]}",
                    "put in order of time", "check that the file holds one probe only")
    elif len(micros) > 1 and (len(back) or _far_jumps(micros).size):
        stepped = _doubted(micros, back)
        if stepped is not None and stepped.any():
            first = int(np.argmax(stepped))
            where = lines[len(lines) - 1 - first] if flipped else lines[first]
            account.say("doubtful", f"the clock of {name} went back or lost its date in line {where}",
                        "kept and marked \"clock step\"", "correct the times in the file", row=int(where))
    if stepped is not None and flipped:
        stepped = stepped[::-1]
    order = None
    if flipped or len(back):
        order = np.argsort(time, kind="stable")
    return order, stepped


def _far_jumps(micros: np.ndarray) -> np.ndarray:
    if micros.max() - micros.min() < limit("far_off_days") * _DAY:
        return np.array([], dtype=int)
    return np.flatnonzero(np.abs(np.diff(micros)) > limit("far_off_days") * _DAY) + 1


def _doubted(micros: np.ndarray, back: np.ndarray) -> np.ndarray:
    """Readings outside the longest chain of stretches in which time goes on and makes no far jump."""
    cuts = np.union1d(back, _far_jumps(micros))
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
        doubted[pieces[at][0]: pieces[at][1]] = False
        at = previous[at]
    return doubted
