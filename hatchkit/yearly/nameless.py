"""A season without names: what identifies keepers, places, birds and machines is numbered, free text is left out."""

from dataclasses import replace
from pathlib import Path

import pandas as pd

from hatchkit.reference import contract
from hatchkit.say import text

#: Columns whose values are replaced by a word and a number: column -> word.
_NUMBERED = {
    "keeper": "keeper",
    "place": "place",
    "pen": "pen",
    "flock": "flock",
    "breed": "breed",
    "incubator": "machine",
    "hatcher": "machine",
    "shelf": "shelf",
}
_OF_EGGS = {"hen": "hen", "cock": "cock", "tray": "tray"}
#: Free text, and where a row came from.
_BLANK = ("notes", "signs", "posted", "broody", "file", "sheet")


def without_names(season):
    """The same season without names.

    Parameters
    ----------
    season : Season

    Returns
    -------
    season : Season
        Keepers, places, pens, flocks, breeds, machines, shelves, hens, cocks, batches, probes and files are numbered;
        notes, columns of the keeper's own, changes in words, questions, remarks on the reading, settings, title and
        folder are
        left out. Kinds of birds, days and counts stay.
    names : dict
        Old batch key -> new one.
    """
    books = _books(season)
    batches = {str(key): f"batch {number}" for number, key in enumerate(season.batches["batch"], start=1)}
    return _renamed(season, books, batches), batches


def _books(season) -> dict:
    """Word -> {old name: new name}; one book for every column that may hold the same names."""
    found: dict = {}
    tables = [
        (season.batches, _NUMBERED),
        (season.eggs, _OF_EGGS),
        (season.weights, _OF_EGGS),
        (season.readings, {"incubator": "machine", "keeper": "keeper", "probe": "probe"}),
    ]
    for table, columns in tables:
        for column, word in columns.items():
            if column in table:
                book = found.setdefault(word, {})
                for name in sorted(str(name) for name in table[column].dropna().unique() if str(name)):
                    book.setdefault(name, f"{word} {len(book) + 1}")
    return found


def _renamed(season, books: dict, batches: dict):
    changes = season.changes
    if len(changes):
        known = {name: new for book in books.values() for name, new in book.items()}
        lower = {name.lower(): new for name, new in known.items()}
        changes = changes.assign(
            what=[f"change {number}" for number in range(1, len(changes) + 1)],
            where=[
                _where(lower, where, keeper) for where, keeper in zip(changes["where"], changes["keeper"], strict=True)
            ],
            keeper=changes["keeper"].map(lambda name: books.get("keeper", {}).get(str(name), "")),
            file="",
            sheet="",
        )
    incubators = (season.settings.get("incubators") or {}).items()
    machines = books.get("machine", {})
    settings = {"incubators": {machines[name]: _numbers(value) for name, value in incubators if name in machines}}
    nothing = {name: getattr(season, name).iloc[:0] for name in ("questions", "reading", "ledger", "problems", "logs")}
    return replace(
        season,
        folder=Path(),
        title=text("years_nameless", {}, season.language),
        settings=settings,
        changes=changes,
        batches=_batches(season.batches, books, batches),
        eggs=_eggs(season.eggs, books, batches),
        weights=_eggs(season.weights, books, batches),
        looks=_keyed(season.looks, batches),
        fates=_keyed(season.fates, batches),
        readings=_readings(season.readings, books),
        parts=tuple(_renamed(part, books, batches) for part in season.parts),
        **nothing,
    )


def _where(known: dict, where, keeper) -> str:
    """The number of the place of a change: a machine of a club bears its keeper's name. No place stays none."""
    where = str(where or "").strip().lower()
    return known.get(f"{where}, {str(keeper).lower()}", known.get(where, "elsewhere")) if where else ""


def _numbers(setting) -> dict:
    """What is known of a machine without a name in it: kind of air, set point, height, one correction."""
    kept = ("air", "set_point_c", "altitude_m", "eggs_brought_in", "damped_probe")
    told = {key: value for key, value in setting.items() if key in kept}
    offset = setting.get("probe_offset_c")
    return told | ({"probe_offset_c": offset} if isinstance(offset, (int, float)) else {})


def _keyed(table, batches):
    return table.assign(batch=table["batch"].astype(str).map(batches)) if len(table) else table


def _batches(table, books, batches):
    # What is no column of the kit is the keeper's own, and may hold anything.
    known = contract.columns("batches")
    keys = table["batch"].astype(str).map(batches)
    kept = table[[name for name in table if name in known]]
    return _numbered(kept, books, _NUMBERED, _BLANK).assign(batch=keys, name=keys)


def _eggs(table, books, batches):
    if not len(table):
        return table
    return _numbered(_keyed(table, batches), books, _OF_EGGS, ("notes", "file", "sheet"))


def _numbered(table, books, words: dict, blank):
    """The table with numbers for the names in some columns (column -> word), and nothing in others."""
    new = {column: _mapped(table[column], books.get(word, {})) for column, word in words.items() if column in table}
    for column in table.columns.intersection(blank):
        new[column] = pd.Series([None] * len(table), index=table.index, dtype=table[column].dtype)
    return table.assign(**new)


def _readings(table, books):
    if not len(table):
        return table
    return table.assign(
        incubator=_mapped(table["incubator"], books["machine"]),
        keeper=_mapped(table["keeper"], books.get("keeper", {})),
        probe=_mapped(table["probe"], books.get("probe", {})),
        file=pd.Categorical.from_codes([0] * len(table), [""]),
    )


def _mapped(column, book: dict):
    codes, names = pd.factorize(column.astype(object))
    new = pd.Series([book.get(str(name), "") for name in names] + [None], dtype=object)
    return pd.Series(new.to_numpy()[codes], index=column.index).astype("str")
