"""What `hatchkit check` is about, as facts: how sheets were read, whether eggs add up, what is asked, what is wrong.

Selection and grouping only; the words are in `hatchkit.say`, the layout in `hatchkit.pages`.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import pandas as pd

from hatchkit.problems import COLUMNS, SEVERITIES

#: So many findings of one group are listed each in its own line.
MOST_LISTED = 12
#: Columns that look best when some must be left out: the numbers of the analysis, then what tells batches apart.
_FIRST = (
    "eggs_set",
    "hatched",
    "set_at",
    "clear",
    "dead",
    "left",
    "fertile",
    "dis",
    "pipped",
    "unhatched",
    "culled",
    "hatch_at",
    "fate",
    "result",
    "batch",
    "species",
    "breed",
)
_DOUBT = {"open": 0, "likely": 1}


@dataclass(frozen=True)
class SheetRead:
    """One sheet as it was read, or several that were read alike.

    Attributes
    ----------
    file : str
    sheets : tuple of str
    columns : tuple of dict
        place, heading, taken, example, how_sure, why, in the order of the sheet.
    """

    file: str
    sheets: tuple
    columns: tuple

    @property
    def doubts(self) -> int:
        """Columns of which the reading is not sure."""
        return sum(column["how_sure"] != "sure" for column in self.columns)


@dataclass(frozen=True)
class Ledger:
    """Whether the eggs add up.

    Attributes
    ----------
    rows : tuple of dict
        name, eggs_set, terms, rest of every row.
    adds_up, of : int
        Rows in which nothing is left and nothing is too much, and all rows.
    """

    rows: tuple
    adds_up: int
    of: int


@dataclass(frozen=True)
class Assumed:
    """What was assumed in reading: open questions, likely columns, or nothing.

    Attributes
    ----------
    how : str
        open, likely, sure, or "" where no sheet was read.
    questions, likely : list of dict
    files : list of str
    columns, rows_changed : int
    fields : list of str
        Keys of the readings that an open question may change; empty if it may change all.
    logs : bool
        Whether a question is on a logger's file.
    ledger : Ledger
    """

    how: str
    questions: list = field(default_factory=list)
    likely: list = field(default_factory=list)
    files: list = field(default_factory=list)
    columns: int = 0
    rows_changed: int = 0
    fields: list = field(default_factory=list)
    logs: bool = False
    ledger: Ledger = Ledger((), 0, 0)


def _rows(season, name: str) -> list[dict]:
    table = getattr(season, name, None)
    return [] if table is None or table.empty else table.to_dict("records")


def sheets_read(season) -> list[SheetRead]:
    """How each sheet was read; sheets of one file that have the same headings and readings are one.

    Parameters
    ----------
    season : Season

    Returns
    -------
    list of SheetRead
    """
    groups: dict = {}
    for row in _rows(season, "reading"):
        groups.setdefault((row["file"], _text(row["sheet"])), []).append(row)
    alike: dict = {}
    for (file, sheet), columns in groups.items():
        key = (file, *((column["heading"], column["taken"], column["how_sure"]) for column in columns))
        alike.setdefault(key, ([], columns))[0].append(sheet)
    return [SheetRead(key[0], tuple(sheets), tuple(columns)) for key, (sheets, columns) in alike.items()]


def columns_shown(sheet: SheetRead, most: int) -> tuple[list, list]:
    """The columns of a sheet to be shown in full, at most `most` unless more are in doubt, and the others.

    Returns
    -------
    shown, others : list of dict
        Each in the order of the sheet.
    """
    fields = [column["taken"].partition("@")[0].partition("~")[0] for column in sheet.columns]
    rank = sorted(
        range(len(fields)),
        key=lambda i: (
            _DOUBT.get(sheet.columns[i]["how_sure"], 2),
            _FIRST.index(fields[i]) if fields[i] in _FIRST else len(_FIRST),
        ),
    )
    kept = set(rank[: max(most, sheet.doubts)])
    shown = [column for i, column in enumerate(sheet.columns) if i in kept]
    return shown, [column for i, column in enumerate(sheet.columns) if i not in kept]


def ledger_of(season) -> Ledger:
    """Whether the eggs of each row add up: the rows that are shown, and how many of all do."""
    rows = _rows(season, "ledger")
    tried, block, before = {}, 0, (None, None, -1)
    for row in _rows(season, "reading"):
        here = (row["file"], _text(row["sheet"]), row["column"])
        # A sheet of several tables: the columns of each are counted from the left anew.
        block += here[:2] != before[:2] or here[2] <= before[2]
        before = here
        for code, facts in row["why"]:
            if code == "adds_up":
                tried[block] = (facts["rows"], facts["of"])
    if tried:
        return Ledger(tuple(rows), sum(adds for adds, _ in tried.values()), sum(of for _, of in tried.values()))
    return Ledger(tuple(rows), sum(row["rest"] == 0 for row in rows), len(rows))


def questions_of(season) -> list[dict]:
    """What the person is asked, the most consequential first.

    Returns
    -------
    list of dict
        The rows of season.questions; each choice has taken, adds_up and of, the last two None where nothing was tried.
    """
    questions = _rows(season, "questions")
    for row in questions:
        row["choices"] = [
            choice if isinstance(choice, dict) else dict(taken=choice, adds_up=None, of=None)
            for choice in row["choices"]
        ]
        row["sheet"], row["facts"] = _text(row["sheet"]), row["facts"] if isinstance(row.get("facts"), dict) else {}
    return questions


def assumed(season) -> Assumed:
    """What was assumed in reading the season's sheets, and how sure it is."""
    reading, questions = _rows(season, "reading"), questions_of(season)
    likely = [row for row in reading if row["how_sure"] != "sure" and row["changes_numbers"]]
    if not reading and not questions:
        return Assumed("")
    asked = {(row["file"], row["sheet"], row["heading"]) for row in questions}
    likely = [row for row in likely if (row["file"], _text(row["sheet"]), row["heading"]) not in asked]
    fields = [
        choice["taken"]
        for row in questions
        if row["code"] == "meaning"
        for choice in row["choices"]
        if choice["taken"] != "ignore"
    ]
    logs = [row for row in questions if row["code"].startswith("log_")]
    whole = any(row["code"] != "meaning" and row not in logs for row in questions)
    return Assumed(
        "open" if questions else "likely" if likely else "sure",
        questions,
        likely,
        list(dict.fromkeys(row["file"] for row in reading)),
        len(reading),
        max((int(row["rows_changed"]) for row in questions), default=0),
        [] if whole else list(dict.fromkeys(fields)),
        bool(logs and not whole),
        ledger_of(season),
    )


def logs_read(season, *, alike: bool = True) -> list[dict]:
    """What was read of each logger's file; files of one machine that are alike stand together.

    Parameters
    ----------
    season : Season
    alike : bool
        False: each file by itself.

    Returns
    -------
    list of dict
        The columns of season.logs, with files (list) for file; times as on the person's clock. Files that could not be
        read come last.
    """
    groups: dict = {}
    for number, row in enumerate(_rows(season, "logs")):
        units = str([{name: channel[name] for name in ("quantity", "unit", "how")} for channel in row["channels"]])
        alone = number if row["asked"] else None
        key = (row["incubator"], row["known_by"], units, alone, _step(row)) if alike else number
        groups.setdefault(("",) if alike and not row["readings"] else key, []).append(row)
    return sorted((_together(rows, season.timezone) for rows in groups.values()), key=lambda log: not log["readings"])


def _step(row: dict):
    """The usual step to the minute; a file of one reading goes with any."""
    return round(row["step_minutes"]) if row["readings"] > 1 else None


def _together(rows: list[dict], zone: str) -> dict:
    first = rows[0]
    probes = {(channel["probe"], channel["quantity"]): channel for row in rows for channel in row["channels"]}
    summed = {name: sum(row[name] for row in rows) for name in ("readings", "doubtful", "gaps")}
    times = (
        dict(
            start=min(row["start"] for row in rows).tz_convert(zone),
            end=max(row["end"] for row in rows).tz_convert(zone),
        )
        if first["readings"]
        else {}
    )
    return dict(
        first,
        files=[row["file"] for row in rows],
        channels=list(probes.values()),
        longest_gap_h=max(row["longest_gap_h"] or 0.0 for row in rows),
        **summed,
        **times,
    )


def _text(value) -> str:
    return "" if value is None or value != value else str(value)


def group_problems(problems: pd.DataFrame) -> pd.DataFrame:
    """Problems of the same kind together, the gravest first and, among those, the commonest first.

    What was done and how to fix it mark the kind. A note groups over all files, anything graver within
    its file, sheet and column.

    Parameters
    ----------
    problems : DataFrame
        The table `problems`.

    Returns
    -------
    DataFrame
        severity, place (dict: file, more_files, sheet, rows, columns), times, found (of the first), done, fix,
        each (row and found of the first few, for anything graver than a note).
    """
    kept = problems.fillna({name: "" for name in COLUMNS if name not in ("row", "facts")})
    place = kept["file"].astype(str) + "\n" + kept["sheet"].astype(str) + "\n" + kept["column"].astype(str)
    kept = kept.assign(place=place.where(kept["severity"] != "note", ""))
    groups = []
    for values, part in kept.groupby(["severity", "place", "done", "fix"], sort=False):
        groups.append(
            dict(
                severity=values[0],
                place=_place(part),
                times=len(part),
                found=part["found"].iloc[0],
                done=values[2],
                fix=values[3],
                each=_each(part) if values[0] != "note" else [],
            )
        )
    table = pd.DataFrame(groups, columns=["severity", "place", "times", "found", "done", "fix", "each"])
    order = table["severity"].map(list(SEVERITIES).index)
    return (
        table.assign(order=order)
        .sort_values(["order", "times"], ascending=[True, False], kind="stable")
        .drop(columns="order")
        .reset_index(drop=True)
    )


def _each(part: pd.DataFrame) -> list[tuple]:
    """What was found in each row of a group, so that none is hidden behind the first."""
    return [
        (None if pd.isna(row["row"]) else int(row["row"]), str(row["found"]))
        for row in part.head(MOST_LISTED).to_dict("records")
    ]


def _place(part: pd.DataFrame) -> dict:
    """Where a group of problems is."""
    first = part.iloc[0]
    more = len(part["file"].drop_duplicates()) - 1
    if more:
        return dict(file=str(first["file"]), more_files=more, sheet="", rows=[], columns=[])
    sheet = str(first["sheet"]) if first["sheet"] and part["sheet"].nunique() == 1 else ""
    return dict(
        file=str(first["file"]),
        more_files=0,
        sheet=sheet,
        rows=sorted(part["row"].dropna().astype(int).drop_duplicates().tolist()),
        columns=part["column"].replace("", pd.NA).dropna().drop_duplicates().tolist(),
    )


def place_of(row) -> dict:
    """Where one problem is, as the places of `group_problems`."""
    return dict(
        file=_text(row["file"]),
        more_files=0,
        sheet=_text(row["sheet"]),
        rows=[] if pd.isna(row["row"]) else [int(row["row"])],
        columns=[row["column"]] if _text(row["column"]) else [],
    )
