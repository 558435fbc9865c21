"""One record of everything that could not be taken as it was written.

Every reader and check returns its findings in the same table, so that a person sees in one place
what was found, what hatchkit did about it and how to mend it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import pandas as pd

COLUMNS = ["severity", "file", "sheet", "row", "column", "found", "done", "mend"]

#: lost = cannot be used at all; doubtful = used, but may be wrong; note = an assumption to know about.
SEVERITIES = ("lost", "doubtful", "note")


class HatchkitError(Exception):
    """Work cannot go on; the message is one plain sentence for the person at the keyboard."""


def problem(severity, *, code=None, facts=None, found=None, done=None, mend="", file="", sheet="", row=None, column="") -> dict:
    """One row of the problems table.

    Parameters
    ----------
    severity : {"lost", "doubtful", "note"}
    found, done, mend : str
        What was found, what hatchkit did with it, how the person can mend it.
    file, sheet, column : str
        Where; empty where it does not apply. `file` is the path as seen from the season folder.
    row : int, optional
        Row or line number as the person's own program shows it (first row is 1).
    """
    if severity not in SEVERITIES:
        raise ValueError(f"severity must be one of {SEVERITIES}, not {severity!r}")
    if code is not None:
        found, done, mend = f"[{code}] {facts}", "", ""
    return dict(severity=severity, file=file, sheet=sheet, row=row, column=column,
                found=found, done=done, mend=mend)


def table(rows) -> pd.DataFrame:
    """Problem rows as a DataFrame with the documented columns, also when there are none."""
    import pandas as pd  # here, so that a message on the command line does not wait for it

    frame = pd.DataFrame(list(rows), columns=COLUMNS)
    frame["row"] = frame["row"].astype("Int64")
    return frame.astype({name: "object" for name in COLUMNS if name != "row"})


def combine(*tables) -> pd.DataFrame:
    """Problems tables put together: the lost first, then the doubtful, then the notes."""
    import pandas as pd

    rows = [row for part in tables for row in part.to_dict("records")]
    rows = [{**row, "row": None if pd.isna(row["row"]) else int(row["row"])} for row in rows]
    return table(sorted(rows, key=lambda row: (SEVERITIES.index(row["severity"]), row["row"] is None)))
