"""What each batch is called: the keeper's own name, told apart by breed, machine, date or year only where needed."""

from __future__ import annotations

import re

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.sheets.lexicon import tokens
from hatchkit.records.words import plain


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
        fits = by_key.get(name_key(name), []) if name is not None and not _none(name) else []
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


def _none(value) -> bool:
    return value is None or value is pd.NaT or isinstance(value, float) and np.isnan(value)


def _agree(known: dict, row: dict, kind: str) -> bool:
    """Whether a row of a further table can tell of a known batch."""
    if kind == "batches" and known["kind"] == "batches":
        same_count = _none(row.get("eggs_set")) or row.get("eggs_set") == known["eggs_set"]
        other_sheet = row["table"] != known["table"]
        same_day = _none(row.get("set_at")) or _none(known["set_at"]) or row["set_at"] == known["set_at"]
        return _none(row.get("eggs_set")) and other_sheet or same_count and same_day and other_sheet
    start, other = known["set_at"], row.get("set_at")
    return _none(start) or _none(other) or abs(pd.Timestamp(start) - pd.Timestamp(other)) <= pd.Timedelta(days=1)


def remember(frame: pd.DataFrame, by_key: dict, offset: int, item) -> None:
    """Keep the names of new batches for later tables."""
    for place, (row, name) in enumerate(zip(frame.to_dict("records"), _called(frame), strict=True)):
        if not _none(name):
            by_key.setdefault(name_key(name), []).append(
                dict(
                    place=offset + place,
                    set_at=row.get("set_at"),
                    eggs_set=row.get("eggs_set"),
                    kind=item.kind,
                    table=row["table"],
                )
            )


def unusable(table: pd.DataFrame) -> list:
    """Rows that can be no batch: without a number of eggs, without a day of setting, or of birds not told apart."""
    for name in ("eggs_set", "set_at"):
        if name not in table:
            table[name] = np.nan if name == "eggs_set" else pd.NaT
    eggs = pd.to_numeric(table["eggs_set"], errors="coerce")
    bad = eggs.isna() | (eggs <= 0) | pd.to_datetime(table["set_at"]).isna() | table["species"].isna()
    return list(table.index[bad])


def keys(table: pd.DataFrame, keep, found: list) -> pd.Series:
    """A readable unique key for each batch."""
    if "name" in table and table["name"].notna().all() and not table["name"].duplicated().any() and "part" not in table:
        return table["name"].astype(str).str.strip().astype("object")
    rows = table.to_dict("records")
    base = [_base(row) for row in rows]
    for tell in (_with_part, _with_year, _with_breed, _with_machine, _with_day, _with_sheet):
        taken = pd.Series(base)[np.asarray(keep)]
        double = set(taken[taken.duplicated(keep=False)])
        if not double:
            break
        longer = [tell(name, row) if name in double else name for name, row in zip(base, rows, strict=True)]
        # What all of the same name share tells none of them apart.
        useful = {
            name
            for name in double
            if len({new for new, old, kept in zip(longer, base, keep, strict=True) if old == name and kept}) > 1
        }
        if tell in (_with_year, _with_day, _with_sheet):
            # Numbers of one table are told in one way: "1, 2025" beside "3, 2025", not beside "3".
            tables = {row.get("table") for row, name in zip(rows, base, strict=True) if name in useful}
            useful |= {
                name for name, row in zip(base, rows, strict=True) if row.get("table") in tables and name.isdigit()
            }
            longer = [tell(name, row) for name, row in zip(base, rows, strict=True)]
        base = [new if old in useful else old for new, old in zip(longer, base, strict=True)]
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


def _base(row) -> str:
    name = row.get("name")
    if not _none(name) and str(name).strip():
        return str(name).strip()
    kind = next(
        (
            str(row[c]).strip()
            for c in ("breed", "species_text", "pen")
            if not _none(row.get(c)) and str(row[c]).strip()
        ),
        "",
    )
    day = _day(row)
    return " ".join(filter(None, (kind[:40], day))) or f"row {row['row']}"


def _day(row) -> str:
    when = row.get("set_at")
    return "" if _none(when) else f"{pd.Timestamp(when):%Y-%m-%d}"


def _with_year(name, row) -> str:
    year = _day(row)[:4]
    return f"{name}, {year}" if year and year not in name else name


def _with_part(name, row) -> str:
    return name if not row.get("part") else _with_breed(name, row)


def _with_breed(name, row) -> str:
    kind = next(
        (str(row[c]) for c in ("breed", "species_text", "pen") if not _none(row.get(c)) and str(row[c]).strip()), ""
    )
    return f"{name}, {kind[:40]}" if kind and kind not in name else name


def _with_machine(name, row) -> str:
    kind = row.get("incubator") if not _none(row.get("incubator")) else row.get("pen")
    return f"{name}, {kind}" if not _none(kind) and kind and str(kind) not in name else name


def _with_day(name, row) -> str:
    day = _day(row)
    return f"{name}, {day}" if day and day not in name else name


def _with_sheet(name, row) -> str:
    return f"{name}, {row['sheet']}" if row.get("sheet") else name


def linked(frame: pd.DataFrame, batches: pd.DataFrame, found: list) -> pd.DataFrame:
    """Rows of a further table (weights) with the batch they belong to; a row of no known batch is lost and told."""
    if frame.empty:
        return frame
    by_key: dict = {}
    for key, name in zip(batches["batch"], batches.get("name", batches["batch"]), strict=True):
        for text in {key, name if not _none(name) else key}:
            by_key.setdefault(name_key(text), set()).add(key)
    only = batches["batch"].iloc[0] if len(batches) == 1 else None
    names = frame["name"] if "name" in frame else pd.Series([None] * len(frame), index=frame.index)
    meant = []
    for name in names:
        fits = by_key.get(name_key(name), set()) if not _none(name) else set()
        meant.append(next(iter(fits)) if len(fits) == 1 else only if _none(name) else None)
    frame = frame.assign(batch=meant)
    for _, row in frame[frame["batch"].isna()].iterrows():
        found.append(
            problem(
                "lost",
                code="no_such_batch",
                facts=dict(name="" if _none(row.get("name")) else row["name"]),
                file=row["file"],
                sheet=row["sheet"],
                row=row["row"],
                column="batch",
            )
        )
    return frame[frame["batch"].notna()].reset_index(drop=True)
