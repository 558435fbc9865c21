"""One record of everything that could not be taken as it was written.

Every reader and check returns its findings in the same table, so that a person sees in one place
what was found, what hatchkit did about it and how to fix it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from hatchkit import say

if TYPE_CHECKING:
    import pandas as pd

#: A problem told by a code keeps it with its facts, so that it can be said in another language; else "" and None.
COLUMNS = ["severity", "file", "sheet", "row", "column", "found", "done", "fix", "code", "facts"]

#: lost = cannot be used at all; doubtful = used, but may be wrong; note = an assumption to know about.
SEVERITIES = ("lost", "doubtful", "note")


class HatchkitError(Exception):
    """Work cannot go on; the message is one plain sentence for the person at the keyboard.

    Parameters
    ----------
    message : str
        The sentence, or with `facts` the code of a message of `hatchkit.say`.
    facts : dict, optional
    """

    def __init__(self, message: str, facts: dict | None = None):
        super().__init__(message, *([] if facts is None else [facts]))
        self.code, self.facts = ("", None) if facts is None else (message, facts)

    def words(self, language: str = "en") -> str:
        """The sentence in a language."""
        return say.text(self.code, self.facts, language) if self.code else str(self.args[0])

    def reason(self) -> dict | str:
        """As a fact of another message, which says it in its own language."""
        return dict(code=self.code, facts=self.facts) if self.code else str(self.args[0])

    def __str__(self) -> str:
        return self.words()


def one_of(name: str, given, known) -> None:
    """Refuse a choice that there is not, with those that there are."""
    if given not in known:
        raise HatchkitError("not_one_of", dict(name=name, given=str(given), known=list(known)))


def problem(
    severity, *, code=None, facts=None, found=None, done=None, fix="", file="", sheet="", row=None, column=""
) -> dict:
    """One row of the problems table.

    Parameters
    ----------
    severity : {"lost", "doubtful", "note"}
    code : str, optional
        A message of `hatchkit.say`, which gives what was found, what was done and how to fix it.
    facts : dict, optional
        The facts of that message.
    found, done, fix : str
        Without a code: what was found, what hatchkit did with it, how the person can fix it.
    file, sheet, column : str
        Where; empty where it does not apply. `file` is the path as seen from the season folder.
    row : int, optional
        Row or line number as the person's own program shows it (first row is 1).
    """
    if severity not in SEVERITIES:
        raise ValueError(f"severity must be one of {SEVERITIES}, not {severity!r}")
    if code is not None:
        facts = facts or {}
        found, done, fix = say.problem(code, facts).values()
    elif found is None or done is None:
        raise TypeError("a problem needs a code, or what was found and done")
    return dict(
        severity=severity,
        file=file,
        sheet=sheet,
        row=row,
        column=column,
        found=found,
        done=done,
        fix=fix,
        code=code or "",
        facts=facts,
    )


def table(rows) -> pd.DataFrame:
    """Problem rows as a DataFrame with the documented columns, also when there are none."""
    import pandas as pd  # here, so that a message on the command line does not wait for it

    frame = pd.DataFrame(list(rows), columns=COLUMNS)
    frame["row"] = frame["row"].astype("Int64")
    return frame.astype({name: "object" for name in COLUMNS if name != "row"})


def in_language(problems: pd.DataFrame, language: str) -> pd.DataFrame:
    """The same problems, said in a language; one without a code stays as it was said."""
    if language == "en" or problems.empty:
        return problems
    words = [
        say.problem(row["code"], row["facts"] or {}, language)
        if row["code"]
        else {name: row[name] for name in ("found", "done", "fix")}
        for row in problems.to_dict("records")
    ]
    return problems.assign(**{name: [one[name] for one in words] for name in ("found", "done", "fix")})


def combine(*tables) -> pd.DataFrame:
    """Problems tables put together: the lost first, then the doubtful, then the notes."""
    import pandas as pd

    rows = [row for part in tables for row in part.to_dict("records")]
    rows = [{**row, "row": None if pd.isna(row["row"]) else int(row["row"])} for row in rows]
    return table(sorted(rows, key=lambda row: SEVERITIES.index(row["severity"])))
