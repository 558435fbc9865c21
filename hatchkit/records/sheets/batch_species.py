"""The species of every batch, and what is to be asked about birds."""

from __future__ import annotations

import re

import pandas as pd

from hatchkit.records.sheets import names as naming
from hatchkit.records.sheets.birds import species_in
from hatchkit.records.sheets.species import species_of
from hatchkit.records.words import plain

#: How a species was found -> the question that leaves.
_ASKED_OF_SPECIES = (
    ("hens", "species"),
    ("days_open", "species"),
    ("unknown_word", "species"),
    ("mixed", "mixed_birds"),
)


def with_species(table: pd.DataFrame, settings, species_table):
    """Species of each batch; what is not known is asked, and several birds in one batch are kept out by name."""
    known = _explained_words(table)
    read = _each_once(
        table, lambda row: species_of(known(row), [t for t in row["titles"] if t][::-1], settings, species_table)
    )
    table["species"] = [species for species, _ in read]
    table["species_how"] = [how for _, how in read]
    opened = []
    usable = set(table.index) - set(naming.unusable(table.assign(species="")))
    for how, code in _ASKED_OF_SPECIES:
        mine = [i for i, (_, own) in enumerate(read) if own == how and i in usable]
        if mine:
            rows = {i: table.iloc[i].to_dict() for i in mine}
            first = rows[mine[0]]
            opened.append(
                dict(
                    code=code,
                    how=how,
                    file=first["file"],
                    sheet=first["sheet"],
                    heading="",
                    taken=read[mine[0]][0] or "",
                    rows=[rows[i]["row"] for i in mine],
                    names=[str(rows[i].get("name") or "") for i in mine],
                    written=str(rows[mine[0]].get("species_text") or rows[mine[0]].get("breed") or ""),
                )
            )
    return table, opened


def _explained_words(table: pd.DataFrame):
    """Words that one cell explains in brackets hold in the others too: "kanga (guinea)", then "kanga"."""
    words = {}
    for name in ("species_text", "breed"):
        for cell in table[name].dropna().unique() if name in table else ():
            match = re.fullmatch(r"\s*([^()]{2,30}?)\s*\(([^()]+)\)\s*", str(cell))
            if match and species_in(match[2]) and not species_in(match[1]):
                words[plain(match[1])] = str(cell)

    def explained(row: dict) -> dict:
        for name in ("species_text", "breed") if words else ():
            if plain(row.get(name) or "") in words:
                row = {**row, name: words[plain(row[name])]}
        return row

    return explained


def _each_once(table: pd.DataFrame, read) -> list:
    """`read` of each row, worked out once for rows that tell the same of their bird."""
    told = [
        table[name].tolist()
        for name in ("species_text", "breed", "section", "pen", "notes", "sheet", "titles")
        if name in table
    ]
    if "name" in table:
        told.append([name if isinstance(name, str) and species_in(name) else "" for name in table["name"]])
    for name in ("due_at", "taken_off_at"):
        if name in table and "set_at" in table:
            told.append((pd.to_datetime(table[name]) - pd.to_datetime(table["set_at"])).dt.days.tolist())
    known: dict = {}
    found = []
    for place, key in enumerate(zip(*told, strict=True)):
        key = tuple(None if part != part else part for part in key)
        if key not in known:
            known[key] = read(table.iloc[place].to_dict())
        found.append(known[key])
    return found
