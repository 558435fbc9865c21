"""What each batch is called, told apart by breed, machine, date or year only where needed; and its machine."""

from __future__ import annotations

import re

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.sheets.lexicon import tokens
from hatchkit.records.words import plain
from hatchkit.reference.contract import TEXT


def machines_of(batches: pd.DataFrame, settings: dict):
    """Incubators of the batches and what is to be told of them.

    Parameters
    ----------
    batches : DataFrame
    settings : dict
        season.toml; ``default_incubator`` and ``[incubators.X]``.

    Returns
    -------
    incubators : Series of str
    problems : list of dict
    """
    if batches.empty:
        return batches["incubator"], []
    known = list((settings.get("incubators") or {}).keys())
    by_key = {name_key(name): name for name in known}
    spelt = {}
    for name in batches["incubator"].dropna().unique():
        spelt[name] = by_key.setdefault(name_key(name), name)
    names = batches["incubator"].map(spelt)
    blank = names.isna()
    default = settings.get("default_incubator") or (known[0] if len(known) == 1 else None)
    if default is None and names.nunique() == 1 and blank.mean() < 0.5:
        default = names.dropna().iloc[0]
    if not blank.any():
        return names.astype(TEXT), []
    first = batches[blank].iloc[0]
    found = [
        problem(
            "note" if default or blank.all() else "doubtful",
            code="machine_taken" if default else "machine_missing",
            facts=dict(batches=list(batches.loc[blank, "batch"]), machine=str(default or "")),
            file=first["file"],
            sheet=first["sheet"],
            row=int(first["row"]),
            column="incubator",
        )
    ]
    return (names.fillna(str(default)) if default else names).astype(TEXT), found


def name_key(name) -> str:
    """Names that a person takes for the same: case, spaces, points, leading zeros and the word "batch" aside."""
    text = plain(name)
    if text.isalnum() and len(text) < 6:
        return re.sub(r"(?<!\d)0+(?=\d)", "", text)
    found = tokens(text)
    if len(found) > 1 and found[0].roles & {"batch", "hatch", "set"} and re.search(r"\d|\b[a-z]\b", text):
        text = re.sub(r"^[^\W\d_]+\.?\s*", "", text) if not text[0].isdigit() else text
    bare = re.sub(r"[^a-z0-9]+", "", text) or text
    return re.sub(r"(?<!\d)0+(?=\d)", "", bare)


def places(frame: pd.DataFrame, by_key: dict, kind: str) -> list:
    """For each row the place of the batch that an earlier table told of already, or None for a new batch."""
    if not by_key:
        return [None] * len(frame)
    found = []
    for row, name in zip(frame.to_dict("records"), _called(frame), strict=True):
        fits = by_key.get(name_key(name), []) if name is not None and not none(name) else []
        fits = [known for known in fits if _agree(known, row, kind)]
        found.append(fits[0]["place"] if len(fits) == 1 else None)
    return found


def _called(frame: pd.DataFrame) -> list:
    """What tells the batches of a table apart: their names, else trays or pens if each batch has one of its own."""
    for column in ("name", "shelf", "pen"):
        held = frame[column] if column in frame else pd.Series(dtype=object)
        if column == "name" and held.notna().any():
            return list(held)
        if len(held) > 1 and held.notna().all() and not held.map(name_key).duplicated().any():
            return list(held)
    return [None] * len(frame)


def none(value) -> bool:
    """Whether a cell of a table holds nothing."""
    return value is None or value is pd.NaT or isinstance(value, float) and np.isnan(value) or value == ""


def _agree(known: dict, row: dict, kind: str) -> bool:
    """Whether a row of a further table can tell of a known batch."""
    if kind == "batches" and known["kind"] == "batches":
        same_count = none(row.get("eggs_set")) or row.get("eggs_set") == known["eggs_set"]
        other_sheet = row["table"] != known["table"]
        same_day = none(row.get("set_at")) or none(known["set_at"]) or row["set_at"] == known["set_at"]
        return none(row.get("eggs_set")) and other_sheet or same_count and same_day and other_sheet
    start, other = known["set_at"], row.get("set_at")
    return none(start) or none(other) or abs(pd.Timestamp(start) - pd.Timestamp(other)) <= pd.Timedelta(days=1)


def remember(frame: pd.DataFrame, by_key: dict, offset: int) -> None:
    """Keep the names of new batches for later tables."""
    for place, (row, name) in enumerate(zip(frame.to_dict("records"), _called(frame), strict=True)):
        if not none(name):
            told = {field: row.get(field) for field in ("set_at", "eggs_set", "kind", "table")}
            by_key.setdefault(name_key(name), []).append(dict(told, place=offset + place))


def unusable(table: pd.DataFrame) -> list:
    """Rows that can be no batch: without a number of eggs, without a day of setting, or of birds not told apart."""
    eggs = pd.to_numeric(table["eggs_set"], errors="coerce")
    bad = eggs.isna() | (eggs <= 0) | pd.to_datetime(table["set_at"]).isna() | table["species"].isna()
    return list(table.index[bad])


def keys(table: pd.DataFrame, keep, found: list) -> pd.Series:
    """A readable unique key for each batch."""
    if "name" in table and table["name"].notna().all() and not table["name"].duplicated().any() and "part" not in table:
        return table["name"].astype(str).str.strip().astype("object")
    rows = table.to_dict("records")
    base = [_base(row) for row in rows]
    for tell in (_part, _year, _kind, _machine, _day, _sheet):
        base = _told_apart(base, rows, keep, tell)
    used: set = set()
    result = []
    for name, kept in zip(base, keep, strict=True):
        unique, number = name, 2
        while kept and unique in used:
            unique, number = f"{name}, {number}", number + 1
        if kept and unique != name:
            row = rows[len(result)]
            found.append(
                problem(
                    "note",
                    code="name_twice",
                    facts=dict(name=name, taken=unique),
                    file=row["file"],
                    sheet=row["sheet"],
                    row=row["row"],
                    column="batch",
                )
            )
        used.add(unique if kept else "")
        result.append(unique)
    return pd.Series(result, index=table.index, dtype="object")


def _told_apart(base: list, rows: list, keep, tell) -> list:
    """The names, those of several batches with what `tell` gives of each, where that tells some of them apart."""
    longer = [_longer(name, tell(row)) for name, row in zip(base, rows, strict=True)]
    told: dict = {}
    for name, new, kept in zip(base, longer, keep, strict=True):
        if kept:
            told.setdefault(name, set()).add(new)
    useful = {name for name, new in told.items() if len(new) > 1}
    if tell in (_year, _day, _sheet):
        # Numbers of one table are told in one way: "1, 2025" beside "3, 2025", not beside "3".
        tables = {row.get("table") for row, name in zip(rows, base, strict=True) if name in useful}
        useful |= {name for name, row in zip(base, rows, strict=True) if row.get("table") in tables and name.isdigit()}
    return [new if old in useful else old for new, old in zip(longer, base, strict=True)]


def _longer(name: str, told: str) -> str:
    return f"{name}, {told}" if told and told not in name else name


def _base(row) -> str:
    name = row.get("name")
    if not none(name) and str(name).strip():
        return str(name).strip()
    return " ".join(filter(None, (_kind(row), _day(row)))) or f"row {row['row']}"


def _kind(row) -> str:
    told = (str(row[column]).strip() for column in ("breed", "species_text", "pen") if not none(row.get(column)))
    return next(filter(None, told), "")[:40]


def _part(row) -> str:
    return _kind(row) if row.get("part") else ""


def _day(row) -> str:
    when = row.get("set_at")
    return "" if none(when) else f"{pd.Timestamp(when):%Y-%m-%d}"


def _year(row) -> str:
    return _day(row)[:4]


def _machine(row) -> str:
    return next((str(row[column]) for column in ("incubator", "pen") if not none(row.get(column))), "")


def _sheet(row) -> str:
    return row.get("sheet") or ""


def linked(frame: pd.DataFrame, batches: pd.DataFrame, found: list) -> pd.DataFrame:
    """Rows of a further table (weights) with the batch they belong to; a row of no known batch is lost and told."""
    by_key: dict = {}
    for key, name in zip(batches["batch"], batches.get("name", batches["batch"]), strict=True):
        for text in {key, name if not none(name) else key}:
            by_key.setdefault(name_key(text), set()).add(key)
    only = batches["batch"].iloc[0] if len(batches) == 1 else None
    names = frame["name"] if "name" in frame else pd.Series([None] * len(frame), index=frame.index)
    meant = []
    for name in names:
        fits = by_key.get(name_key(name), set()) if not none(name) else set()
        meant.append(next(iter(fits)) if len(fits) == 1 else only if none(name) else None)
    frame = frame.assign(batch=meant)
    for _, row in frame[frame["batch"].isna()].iterrows():
        found.append(
            problem(
                "lost",
                code="no_such_batch",
                facts=dict(name="" if none(row.get("name")) else row["name"]),
                file=row["file"],
                sheet=row["sheet"],
                row=row["row"],
                column="batch",
            )
        )
    return frame[frame["batch"].notna()].reset_index(drop=True)
