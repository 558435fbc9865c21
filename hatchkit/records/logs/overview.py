"""What was read, file by file, as facts: the table `logs` of a season."""

from __future__ import annotations

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
    rows = []
    for part in parts:
        for (file, incubator), mine in part.groupby(["file", "incubator"], sort=False):
            whole = str(file).split("/")
            known = next((facts[name] for n in range(len(whole), 0, -1) if (name := "/".join(whole[:n])) in facts), {})
            holes = [_gaps(probe["time"]) for _, probe in mine.groupby("probe", sort=False)]
            first = mine[mine["probe"] == mine["probe"].iloc[0]]["time"].dt.tz_localize(None).to_numpy()
            rows.append(
                dict(
                    file=file,
                    incubator=incubator,
                    known_by=known_by.get((file, incubator), ""),
                    probes=mine["probe"].nunique(),
                    start=mine["time"].min(),
                    end=mine["time"].max(),
                    step_minutes=usual_step(first) / 6e7,
                    readings=len(mine),
                    doubtful=int((mine["doubt"] != "").sum()),
                    gaps=sum(len(found) for found in holes),
                    longest_gap_h=max((float(found.max()) for found in holes if len(found)), default=0.0),
                    channels=_channels(mine, known),
                    asked=list(questions.loc[questions["file"] == file, "code"].unique()),
                )
            )
    seen = {str(row["file"]) for row in rows}
    for file in facts:
        if not any(name == file or name.startswith(f"{file}/") for name in seen):
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


def _gaps(time) -> np.ndarray:
    time = time.dt.tz_localize(None).to_numpy()
    rows = np.flatnonzero(gaps(time))
    return (time[rows] - time[rows - 1]).astype("timedelta64[s]").astype(float) / 3600


def _channels(mine, known) -> list[dict]:
    """What the file's account says of its channels; of several parts in one file only what this machine has."""
    said = [dict(zip(("probe", "quantity", "unit", "how"), fact, strict=True)) for fact in known.get("channels", [])]
    names = set(mine["probe"].unique())
    return [fact for fact in said if fact["probe"] in names] or said
