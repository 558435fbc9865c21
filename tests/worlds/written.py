"""Cases written by hand: a few batches with their counts, a log, the answer expected. Shared by textbook, trials,
base_rates.

A batch is told in the order of the ledger; what is not named is 0 (or the species' usual air). Counts must close.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pandas as pd

from . import air, writing
from .codes import BIRDS

LOGGER = {"minutes": 60, "offset": 0.0, "lid": 0.0, "noise": 0.06, "swing": 0.1, "rh_noise": 1.0, "two": False}
COUNTS = (
    "clear1",
    "dead1",
    "clear2",
    "dead2",
    "removed",
    "pipped_dead",
    "broken_infertile",
    "broken_early",
    "broken_mid",
    "broken_late",
    "dead_in_shell",
    "hatched",
)


@dataclass(frozen=True)
class Case:
    """One written season with the answer.

    Attributes
    ----------
    name, source, note : what it is, where it comes from, what in it is ours
    batches : list of dicts of `batch`
    asked : index of the poor batch
    expected : codes any of which is right as the first; empty when no cause should be named with confidence
    never : codes that must not be named first
    """

    name: str
    source: str
    batches: list
    asked: int
    expected: tuple
    never: tuple = ()
    note: str = ""
    species: str = "chicken"
    altitude_m: float = 250.0
    machine_each: bool = False  # trials set side by side: every batch in a machine of its own, on the same day


def batch(size, hatched, *, air=None, hatch=None, **values):
    """One batch.

    Parameters
    ----------
    size, hatched : eggs set, chicks out of the shell
    air : dict of what differs in the air: offset, rh_set, rh_hatch, spread, hot, cold (see surroundings.draw_batch)
    hatch : (hours of the first chick, hours of the last) against the due hour
    values : further columns of the batch table; counts not named are 0

    Raises
    ------
    ValueError
        When the counts do not close to the eggs set.
    """
    counts = {name: int(values.get(name, 0)) for name in COUNTS if name != "hatched"}
    if sum(counts.values()) + hatched != size:
        raise ValueError(f"{sum(counts.values()) + hatched} eggs told, {size} set")
    return {"eggs_set": size, "hatched": hatched, "air": air or {}, "hatch": hatch or (-14, 14)} | values | counts


def rows_of(case):
    """Rows of the batch table and the true air of every batch."""
    bird, start = BIRDS[case.species], pd.Timestamp("2025-03-01 08:00", tz="UTC")
    rows = []
    for i, told in enumerate(case.batches):
        set_at = start if case.machine_each else start + pd.Timedelta(days=(np.ceil(bird.days) + 5) * i)
        machine = chr(ord("A") + i) if case.machine_each else "A"
        first, last = (writing.due(bird, set_at, h) for h in told["hatch"])
        counts = {n: told[n] for n in COUNTS if told[n] or n not in ("removed", "dead_in_shell", "clear2", "dead2")}
        if told["dead_in_shell"]:  # nothing was opened: leave those columns empty
            counts = {n: v for n, v in counts.items() if not n.startswith("broken")}
        rows.append(
            {
                "batch": str(i + 1),
                "species": case.species,
                "incubator": machine,
                "set_at": set_at,
                "candle1_at": set_at + pd.Timedelta(days=bird.look1),
                "candle2_at": set_at + pd.Timedelta(days=bird.look2),
                "transfer_at": set_at + pd.Timedelta(days=bird.transfer),
                "first_hatch_at": first if told["hatched"] else None,
                "last_hatch_at": last if told["hatched"] else None,
                "taken_off_at": max(last, set_at + pd.Timedelta(days=bird.days + 1)) + pd.Timedelta(hours=8),
            }
            | {k: v for k, v in told.items() if k not in ("air", "hatch") and k not in COUNTS}
            | counts
        )
    return rows


def write_case(case, folder, seed=0):
    """Write a case's folder.

    Returns
    -------
    dict : folder, batch (name of the poor one), expected, never
    """
    draw, bird = np.random.default_rng([6, seed]), BIRDS[case.species]
    rows, logs = rows_of(case), {}
    for row, told in zip(rows, case.batches, strict=True):
        found = {
            "offset": 0.0,
            "rh_set": bird.rh_set,
            "rh_hatch": bird.rh_hatch,
            "spread": 0.0,
            "hot": None,
            "cold": None,
        } | told["air"]
        real = air.batch_air(bird, found, row["set_at"], row["taken_off_at"], 60, draw)
        for number, frame in enumerate(air.shown(real, LOGGER | {"two": found["spread"] > 0}, draw, found["spread"])):
            logs.setdefault(row["incubator"], {}).setdefault(number, []).append(frame)
    whole = {m: [pd.concat(p, ignore_index=True) for p in probes.values()] for m, probes in logs.items()}
    settings = {
        "zone": "Europe/London",
        "language": "en",
        "altitude_m": case.altitude_m,
        "incubators": {m: {"set_point_c": bird.set_c} for m in whole},
    }
    writing.write_season(folder, rows, whole, settings)
    return {"folder": str(folder), "batch": rows[case.asked]["batch"], "expected": case.expected, "never": case.never}
