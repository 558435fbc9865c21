"""How problem rows are put: numbers with their noun, and rows that point at a row of a typed table."""

from __future__ import annotations

from hatchkit.problems import problem


def of_row(severity: str, row, *, found: str, done: str, mend: str = "", column: str = "") -> dict:
    """A problem row with the place that `row` came from.

    Parameters
    ----------
    severity, found, done, mend, column : str
        As in `hatchkit.problems.problem`.
    row : Series
        A row of batches, eggs, weights or candlings: file, sheet, and sheet_row or row.
    """
    number = row["sheet_row"] if "sheet_row" in row.index else row["row"]
    return problem(severity, file=row["file"], sheet=row["sheet"], row=number, column=column,
                   found=found, done=done, mend=mend)


def many(number, one: str, several: str = "") -> str:
    """"1 reading", "2 readings", "3 batches" (the last with `several` = "batches")."""
    return f"{number} {one}" if number == 1 else f"{number} {several or one + 's'}"
