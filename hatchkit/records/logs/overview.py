"""What was read, file by file, as facts: the table `logs` of a season."""

from __future__ import annotations

from pathlib import PurePosixPath

import numpy as np
import pandas as pd

from hatchkit.records.marks import gaps, usual_step
from hatchkit.reference import contract

COLUMNS = contract.columns("logs")


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
    rows, asked = [], {}
    for file, code in zip(questions["file"], questions["code"], strict=True):
        asked.setdefault(file, {})[code] = None
    for part in parts:
        for (file, incubator), mine in _by_machine(part):
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
                    asked=list(asked.get(file, ())),
                )
            )
    seen = {str(at) for row in rows for at in (row["file"], *PurePosixPath(row["file"]).parents)}
    for file in facts:
        if file not in seen:
            rows.append(
                dict.fromkeys(COLUMNS)
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
    return pd.DataFrame(rows, columns=COLUMNS)


def _by_machine(part) -> list:
    """(file, incubator) and the readings of it; a log of one machine, as most are, is not taken apart."""
    names = [part[name].unique() for name in ("file", "incubator")]
    if all(len(found) == 1 for found in names):
        return [((names[0][0], names[1][0]), part)]
    return list(part.groupby(["file", "incubator"], sort=False))


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
