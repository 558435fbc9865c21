"""Which kind of bird each batch is: as written, by breed, titles or the days it took, else hens, asked."""

from __future__ import annotations

import re

import pandas as pd

from hatchkit import reference
from hatchkit.records.sheets import names as naming
from hatchkit.records.sheets.birds import likeliest, misspelt, species_in
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
    told = table[[name for name in _TELLING if name in table]].copy()
    if "name" in table:
        told["name"] = [name if isinstance(name, str) and species_in(name) else "" for name in table["name"]]
    for name in ("due_at", "taken_off_at"):
        if name in table and "set_at" in table:
            told[name] = (pd.to_datetime(table[name]) - pd.to_datetime(table["set_at"])).dt.days
    number = told.groupby(list(told), sort=False, dropna=False).ngroup()
    known = [read(row) for row in table[~number.duplicated()].to_dict("records")]
    return [known[place] for place in number]


#: Columns that may tell of the bird, beside the name and the days it took.
_TELLING = ("species_text", "breed", "section", "pen", "notes", "sheet", "titles")


#: Two different birds in one cell, each with a number: "6 goose + 10 duck".
_MIXED = re.compile(r"\d+\s*[^\d+&,/]+(?:\+|&|,|/|\band\b|\bund\b|\bet\b|\by\b|\be\b|\bi\b|\boch\b|\bog\b)\s*\d+")


def species_of(row, titles, settings: dict, table: pd.DataFrame) -> tuple[str | None, str]:
    """The species of a batch and where it was found.

    Parameters
    ----------
    row : dict
        A batch as read: species_text, breed, name, pen, section, notes, set_at, taken_off_at, due_at.
    titles : list of str
        Texts above the table, the sheet's and the file's name.
    settings : dict
        season.toml.
    table : DataFrame
        Species figures, index species.

    Returns
    -------
    species : str or None
        None if several birds share the batch.
    how : str
        written, breed, name, title, default, days, days_open, hens, mixed, unknown_word.
    """
    own = {plain(name).replace("_", " "): name for name in table.index}
    for name, how in _WHERE.items():
        told = _named(name, row, titles, own, table)
        if told is not None:
            species, written = told
            return species, written or how
    default = str(settings.get("default_species") or "")
    key = default and (own.get(plain(default)) or reference.species_key(default))
    if key in table.index:
        return key, "default"
    for title in map(_text, titles):
        found = _known(re.sub(r"\([^)]*\)", " ", title), table) or _known(title, table)
        best, share = likeliest(found)
        if best and share > 0.75:
            return best, "title"
    return _unnamed(row, table)


#: Columns that may name the bird, in order, and how the bird is then known.
_WHERE = dict(species_text="written", breed="breed", name="name", section="name", pen="name", sheet="name")


def _named(name: str, row, titles, own: dict, table) -> tuple[str | None, str] | None:
    """The species that one column names and how, where not as usual; None where it names none."""
    text, told = _text(row.get(name)), name in ("species_text", "breed")
    key = own.get(plain(text).replace("_", " ")) if told else None
    key = key or (reference.species_key(text) if name == "species_text" else None)
    if key in table.index:
        return key, "written"
    first = text.partition(",")[0] if name == "breed" else text
    found = _known(first, table) or _known(text, table)
    if told and _MIXED.search(text) and len(found) > 1:
        return None, "mixed"
    return (likeliest(_with_context(found, row, titles, table))[0], "") if found else None


def _unnamed(row, table: pd.DataFrame) -> tuple[str, str]:
    """By the days it took, else hens; a word for a bird that nobody knows is asked about in any case."""
    written = _text(row.get("species_text"))
    species, how = _by_days(row, table)
    unknown = any(letter.isalpha() for letter in written)
    near = misspelt(written) if unknown else None
    if near is None and how == "hens":
        # Nothing tells the bird but perhaps a misspelt word of a name: asked about all the same.
        words = [word for name in ("species_text", "breed", "name") for word in _text(row.get(name)).split()]
        species = next((bird for bird in map(misspelt, words) if bird in table.index), species)
    return (near if near in table.index else species, "unknown_word") if unknown else (species, how)


def _text(value) -> str:
    return "" if value is None or value is pd.NaT or isinstance(value, float) else str(value)


def _known(text: str, table: pd.DataFrame) -> dict:
    """The species of the table that a text names."""
    return {species: weight for species, weight in species_in(text).items() if species in table.index}


def _with_context(found: dict, row, titles, table) -> dict:
    """A name of two birds ("Pekin") settled by the other words about the batch, the titles, and the days it took."""
    if len(found) < 2:
        return found
    found = dict(found)
    texts = [row.get(name) for name in ("species_text", "breed", "name", "section", "notes", "pen")] + list(titles)
    for text in texts:
        for species, weight in species_in(_text(text)).items():
            if species in found and weight >= 2.0:
                found[species] *= 1.0 + weight
    days = _days(row)
    if days is not None:
        for species in found:
            apart = abs(days - float(table.loc[species, "incubation_days"]))
            found[species] *= 3.0 if apart <= 2 else 0.3
    return found


def _days(row) -> float | None:
    """Days from setting to the hatch or to the day it was due."""
    start = row.get("set_at")
    for name in ("due_at", "taken_off_at"):
        end = row.get(name)
        if start is not None and end is not None and not pd.isna(start) and not pd.isna(end):
            days = (pd.Timestamp(end) - pd.Timestamp(start)) / pd.Timedelta(days=1)
            if 10 < days < 60:
                return float(days)
    return None


#: Birds with the days from setting to hatch that no other common bird takes (common practice, no source).
_OWN_DAYS = {"chicken": (19.5, 23.5), "quail": (15.5, 18.7), "muscovy": (33.0, 37.0)}


def _by_days(row, table: pd.DataFrame) -> tuple[str, str]:
    """By the days it took, where only one common bird takes so long; else hens."""
    days = _days(row) or 0.0
    for bird, (least, most) in _OWN_DAYS.items():
        if least <= days <= most and bird in table.index:
            return bird, "days"
    # Turkeys share the days of ducks, which more people keep; geese take two days more. Asked about.
    near = [bird for bird in ("duck", "goose") if bird in table.index]
    if 26 <= days <= 32 and near:
        return min(near, key=lambda bird: abs(days - float(table.loc[bird, "incubation_days"]))), "days_open"
    return "chicken", "hens"
