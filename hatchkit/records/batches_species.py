"""Which kind of bird a batch is, however it is spelt and wherever it is written."""

from __future__ import annotations

import re
from pathlib import Path

import pandas as pd

from hatchkit import reference
from hatchkit.problems import problem
from hatchkit.records.headers import known_columns
from hatchkit.records.likely import toml_line
from hatchkit.records.told import of_row
from hatchkit.records.values import TEXT
from hatchkit.records.words import letters_apart, plain, value_words
from hatchkit.spelling import many

#: Columns of a table of batches that are none of the person's own.
KNOWN = frozenset(known_columns("batches")) | {"file", "sheet", "row"}


def species_of_batches(frame: pd.DataFrame, settings: dict, table: pd.DataFrame, found: list) -> pd.Series:
    """The species of each batch by its key in the species table; missing where it is not known.

    A blank takes, and tells: a column of kinds of birds under another heading, the name of the sheet,
    ``default_species``, the name of the file.

    Parameters
    ----------
    frame : DataFrame
        Batches as read.
    settings : dict
        season.toml.
    table : DataFrame
        Species table.
    found : list of dict
        Problem rows are added to it.
    """
    default = settings.get("default_species")
    written = _written(frame, table, found, exact=default is not None)
    meant, odd = {}, {}
    for text in written.dropna().unique():
        meant[text], odd[text] = _one_species(text, table)
    keys = written.map(meant)
    for text, why in odd.items():
        if not why:
            continue
        first = frame[written == text].iloc[0]
        done = f"Taken as {meant[text]}." if meant[text] else "Its species counts as unknown."
        mend = "" if meant[text] else (f"Write one of {', '.join(table.index)}; or add to season.toml: "
                                       f'[species."{text}"] based_on = "chicken".')
        found.append(of_row("note" if meant[text] else "doubtful", first, column="species",
                            found=f"species '{text}' {why}", done=done, mend=mend))
    blank = written.isna()
    if blank.any():
        sheets = [sheet for sheet in frame.loc[blank, "sheet"].dropna().unique() if sheet]
        guess = frame["sheet"].map({sheet: _one_species(sheet, table)[0] for sheet in sheets})
        fill = blank & guess.notna()
        keys = keys.where(~fill, guess)
        if fill.any():
            found.append(of_row("note", frame[fill].iloc[0], column="species", done="Taken from the sheet's name.",
                                found=f"{many(int(fill.sum()), 'batch', 'batches')} without a species"))
        rest = blank & ~fill
        if default is None and rest.any():
            keys = _from_file_names(keys, frame, rest, table, found)
        if default and rest.any():
            key = _one_species(str(default), table)[0]
            if key is None:
                found.append(problem("doubtful", file="season.toml", column="default_species",
                                     found=f"default_species = '{default}' is not known", done="It is not used.",
                                     mend=f"Write one of {', '.join(table.index)}."))
            else:
                keys = keys.where(~rest, key)
    return keys.astype(TEXT)


def _one_species(text: str, table: pd.DataFrame) -> tuple[str | None, str]:
    """(key, what to say): by name, by a foreign word, by a word within, by one or two wrong letters."""
    own = {plain(name).replace("_", " "): name for name in table.index}
    spaced = plain(text).replace("_", " ")
    key = own.get(spaced) or reference.species_key(text) or value_words("species").get(spaced)
    if key in table.index:
        return key, ""
    sure = text.rstrip("?!. ")
    if sure and sure != text and (found := _one_species(sure, table))[0]:
        return found[0], found[1] or ("is marked as unsure" if "?" in text else "")
    words = re.findall(r"[^\W\d_]+", plain(text))
    inside = {reference.species_key(word) or value_words("species").get(word) for word in words} - {None}
    if len(inside) == 1:
        return next(iter(inside)), "holds a known name among other words"
    names = dict(zip(reference.load("species_names")["name"].map(plain), reference.load("species_names")["species"],
                     strict=True))
    names.update(value_words("species"), **own)
    apart = sorted((letters_apart(plain(text), name, 3), name) for name in names)
    best, near = apart[0]
    keys = {names[name] for distance, name in apart if distance == best}
    limit = 1 if len(plain(text)) < 7 else 2
    if best <= limit and len(keys) == 1 and len(plain(text)) > 2:
        return names[near], "looks misspelt"
    # Three letters of four changed are another word, so a name is offered only where most of it is the same.
    return None, f"is not known; the nearest known is {near}" if best <= 3 and best * 3 <= len(text) else "is not known"


def _written(frame: pd.DataFrame, table: pd.DataFrame, found: list, *, exact: bool) -> pd.Series:
    """The column species; where it is blank, a column of kinds of birds under a heading that is not known.

    With `exact` a cell must be the name alone: "Duck house" does not outweigh a default_species.
    """
    written = frame["species"]
    own = [name for name in frame if name not in KNOWN]
    for name in own:
        cells = frame[name].map(lambda cell: cell if isinstance(cell, str) and cell.strip() else None)
        open_cells = cells[written.isna()].dropna()
        if not _mostly_birds(list(open_cells.unique()[:20]), table, exact):
            continue
        kinds = {text: _surely(text, table, exact) for text in open_cells.unique()}
        if open_cells.map(kinds).notna().mean() >= 0.8:
            first = frame.loc[open_cells.index[0]]
            found.append(of_row("note", first, column=name, done="Read as the species.",
                                found=f"kinds of birds under another heading: {', '.join(list(kinds)[:6])}",
                                mend=f"If that is wrong, say in season.toml what it is: {toml_line(name, 'notes')}."))
            written = written.where(written.notna() | ~written.index.isin(open_cells.index), cells)
    return written


def _surely(text: str, table: pd.DataFrame, exact: bool) -> str | None:
    """The species that a text names, without a guess at its spelling."""
    key, doubt = _one_species(text, table)
    return None if doubt == "looks misspelt" or exact and doubt else key


def _mostly_birds(texts: list[str], table: pd.DataFrame, exact: bool) -> bool:
    return bool(texts) and sum(_surely(text, table, exact) is not None for text in texts) >= 0.8 * len(texts)


def _from_file_names(keys, frame: pd.DataFrame, rest, table: pd.DataFrame, found: list) -> pd.Series:
    """Species of the batches that say nothing, where the name of their file names one kind of bird."""
    for file in frame.loc[rest, "file"].unique():
        words = re.findall(r"[^\W\d_]+", Path(file).stem)
        kinds = {key for key, doubt in (_one_species(word, table) for word in words) if not doubt} - {None}
        here = rest & (frame["file"] == file)
        if len(kinds) == 1:
            found.append(of_row("note", frame[here].iloc[0], column="species", done="Taken from the file's name.",
                                found=f"{many(int(here.sum()), 'batch', 'batches')} without a species",
                                mend='If they are another kind: default_species = "chicken" (say) in season.toml.'))
            keys = keys.where(~here, kinds.pop())
    return keys
