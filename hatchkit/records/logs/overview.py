"""What was read, file by file: the one screen of the check for logs."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records.marks import gaps, usual_step
from hatchkit.records.told import local_minute
from hatchkit.spelling import many

COLUMNS = ["file", "incubator", "probes", "start", "end", "step_minutes", "readings", "doubtful", "gaps",
           "longest_gap_h",
           "channels", "asked"]
_MOST_PROBES = 4


def files_table(parts, facts: dict, questions: pd.DataFrame) -> pd.DataFrame:
    """One row for each file and machine.

    Parameters
    ----------
    parts : list of DataFrame
        Readings of each file, with their incubator.
    facts : dict
        File -> what its account holds: "channels" is a list of (probe, quantity, unit, how it is known).
    questions : DataFrame

    Returns
    -------
    DataFrame
        file; incubator ("" where the file could not be read); probes, readings, doubtful (counts); start, end (UTC);
        step_minutes (the usual); gaps and the longest in hours; channels (text); asked (codes of its questions).
    """
    rows = []
    for part in parts:
        for (file, incubator), mine in part.groupby(["file", "incubator"], sort=False):
            whole = str(file).split("/")
            known = next((facts[name] for n in range(len(whole), 0, -1) if (name := "/".join(whole[:n])) in facts), {})
            holes = [_gaps(probe["time"]) for _, probe in mine.groupby("probe", sort=False)]
            first = mine[mine["probe"] == mine["probe"].iloc[0]]["time"].dt.tz_localize(None).to_numpy()
            rows.append(dict(
                file=file, incubator=incubator, probes=mine["probe"].nunique(), start=mine["time"].min(),
                end=mine["time"].max(), step_minutes=usual_step(first) / 6e7, readings=len(mine),
                doubtful=int((mine["doubt"] != "").sum()), gaps=sum(len(found) for found in holes),
                longest_gap_h=max((float(found.max()) for found in holes if len(found)), default=0.0),
                channels=_channels(mine, known), asked=", ".join(questions.loc[questions["file"] == file,
                                                                               "code"].unique())))
    seen = {str(row["file"]) for row in rows}
    for file in facts:
        if not any(name == file or name.startswith(f"{file}/") for name in seen):
            rows.append(dict.fromkeys(COLUMNS) | dict(file=file, incubator="", probes=0, readings=0, doubtful=0, gaps=0,
                                                      channels="not read", asked=""))
    return pd.DataFrame(rows, columns=COLUMNS)


def _gaps(time) -> np.ndarray:
    time = time.dt.tz_localize(None).to_numpy()
    rows = np.flatnonzero(gaps(time))
    return (time[rows] - time[rows - 1]).astype("timedelta64[s]").astype(float) / 3600


def _channels(mine, known) -> str:
    said = [f"{name} {quantity} {unit} ({how})".replace("  ", " ") for name, quantity, unit,
            how in known.get("channels", [])]
    if not said:
        said = [str(name) for name in mine["probe"].unique()]
    more = f" and {len(said) - _MOST_PROBES} more" if len(said) > _MOST_PROBES else ""
    return "; ".join(said[:_MOST_PROBES]) + more


def overview(files: pd.DataFrame, zone: str | None = None) -> list[str]:
    """The table as lines of text: file, machine, from, to, step, channels, gaps, what was asked."""
    lines = []
    for row in files.to_dict("records"):
        if not row["readings"]:
            lines.append(f"{row['file']}: {row['channels'] or 'no readings'}")
            continue
        step = "one reading" if row["readings"] == 1 else f"every {row['step_minutes']:.3g} min"
        holes = f", {many(row['gaps'], 'gap')}, the longest of {row['longest_gap_h']:.1f} h" if row["gaps"] else ""
        doubt = f", {row['doubtful']:,} doubtful" if row["doubtful"] else ""
        asked = f"; asked: {row['asked']}" if row["asked"] else ""
        lines.append(f"{row['file']}: {row['incubator']}, {local_minute(row['start'], zone)} to "
                     f"{local_minute(row['end'], zone)}, {step}, {row['readings']:,} readings{doubt}{holes}; "
                     f"{row['channels']}{asked}")
    return lines
