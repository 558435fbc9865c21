"""The rows of batches that can be worked with: named once, of a known species, with a date and a number of eggs."""

from __future__ import annotations

import re

import pandas as pd

from hatchkit import reference
from hatchkit.problems import problem
from hatchkit.records.linking import name_key
from hatchkit.records.told import many, of_row
from hatchkit.records.values import TEXT
from hatchkit.records.words import letters_apart, plain, value_words

NEEDED = {"eggs_set": "number of eggs set", "set_at": "date of setting", "species": "species"}


def usable_batches(frame: pd.DataFrame, settings: dict, species_table: pd.DataFrame):
    """Batches with a name of their own, a known species, a date of setting and eggs; the rest is lost and told.

    Parameters
    ----------
    frame : DataFrame
        As read from the sheets.
    settings : dict
        season.toml; ``default_species`` and ``default_incubator`` fill blanks.
    species_table : DataFrame

    Returns
    -------
    batches : DataFrame
    problems : list of dict
    """
    found = []
    if frame.empty:
        return frame, found
    frame = frame.copy()
    frame["species"] = _species(frame, settings, species_table, found)
    frame = _without_copies(frame, found)
    short = {name: frame[name].isna() for name in NEEDED}
    short["eggs_set"] |= frame["eggs_set"].eq(0).fillna(False).astype(bool)
    lost = pd.concat(short, axis=1).any(axis=1)
    absent = [name for name in NEEDED if short[name].all()]
    for index in frame.index[lost]:
        row = frame.loc[index]
        lacks = [NEEDED[name] for name in NEEDED if short[name][index]]
        name = "a batch without a name" if _missing(row["batch"]) else f"batch '{row['batch']}'"
        found.append(of_row("lost", row, done="The batch is left out.", mend=_mend(absent),
                            found=f"{name} has no usable {' and no usable '.join(lacks)}: {_all_of(row)}"))
    frame = frame[~lost].reset_index(drop=True)
    frame["incubator"] = _incubators(frame, settings, found)
    frame["batch"] = _names(frame, found)
    return frame, found


def _mend(absent: list[str]) -> str:
    if "species" in absent:
        return 'Add a column species, or write default_species = "chicken" in season.toml.'
    if absent:
        return (f"No column was recognised as {' or '.join(absent)}; add one, or say in season.toml which it is: "
                f'[headers] "Your heading" = "{absent[0]}".')
    return "Fill in what is missing."


def _all_of(row) -> str:
    parts = [f"{name} {_short(value)}" for name, value in row.items()
             if name not in ("batch", "file", "sheet", "row") and not _missing(value)]
    return ", ".join(parts) or "nothing else is in the row"


def _short(value) -> str:
    return f"{value:%Y-%m-%d %H:%M}" if isinstance(value, pd.Timestamp) else str(value)[:60]


def _missing(value) -> bool:
    return value is None or (pd.api.types.is_scalar(value) and pd.isna(value))


def _species(frame: pd.DataFrame, settings: dict, table: pd.DataFrame, found: list) -> pd.Series:
    default = settings.get("default_species")
    meant, odd = {}, {}
    for text in frame["species"].dropna().unique():
        meant[text], odd[text] = _one_species(text, table)
    keys = frame["species"].map(meant)
    for text, why in odd.items():
        if not why:
            continue
        first = frame[frame["species"] == text].iloc[0]
        done = f"Taken as {meant[text]}." if meant[text] else "Its species counts as unknown."
        mend = "" if meant[text] else (f"Write one of {', '.join(table.index)}; or add to season.toml: "
                                       f'[species."{text}"] based_on = "chicken".')
        found.append(of_row("note" if meant[text] else "doubtful", first, column="species",
                            found=f"species '{text}' {why}", done=done, mend=mend))
    blank = frame["species"].isna()
    if blank.any():
        sheets = [sheet for sheet in frame.loc[blank, "sheet"].dropna().unique() if sheet]
        guess = frame["sheet"].map({sheet: _one_species(sheet, table)[0] for sheet in sheets})
        fill = blank & guess.notna()
        keys = keys.where(~fill, guess)
        if fill.any():
            found.append(of_row("note", frame[fill].iloc[0], column="species", done="Taken from the sheet's name.",
                                found=f"{many(int(fill.sum()), 'batch', 'batches')} without a species"))
        rest = blank & ~fill
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
    words = re.findall(r"[^\W\d_]+", plain(text))
    inside = {reference.species_key(word) or value_words("species").get(word) for word in words} - {None}
    if len(inside) == 1:
        return next(iter(inside)), "names it among other words"
    names = dict(zip(reference.load("species_names")["name"].map(plain), reference.load("species_names")["species"],
                     strict=True))
    names.update(value_words("species"), **own)
    apart = sorted((letters_apart(plain(text), name, 3), name) for name in names)
    best, near = apart[0]
    keys = {names[name] for distance, name in apart if distance == best}
    limit = 1 if len(plain(text)) < 7 else 2
    if best <= limit and len(keys) == 1 and len(plain(text)) > 2:
        return names[near], "looks misspelt"
    return None, f"is not known; the nearest known is {near}" if best <= 3 else "is not known"


def _incubators(frame: pd.DataFrame, settings: dict, found: list) -> pd.Series:
    """Incubator names as season.toml writes them; blanks take the only one there is."""
    if frame.empty:
        return frame["incubator"]
    known = list((settings.get("incubators") or {}).keys())
    by_key = {name_key(name): name for name in known}
    spelt = {}
    for name in frame["incubator"].dropna().unique():
        spelt[name] = by_key.setdefault(name_key(name), name)
    names = frame["incubator"].map(spelt)
    blank = names.isna()
    default = settings.get("default_incubator") or (known[0] if len(known) == 1 else None)
    if default is None and names.nunique() == 1 and blank.mean() < 0.5:
        default = names.dropna().iloc[0]
    if blank.any():
        who = ", ".join(frame.loc[blank, "batch"].fillna("?").head(8))
        done = "Their losses are counted, but no temperature can be laid beside them."
        mend = 'Write the incubator of each batch; if there is only one: default_incubator = "A" in season.toml.'
        if default:
            done, mend = f"Taken as {default}.", "Write the incubator of each batch."
        text = f"{many(int(blank.sum()), 'batch', 'batches')} without an incubator: {who}"
        found.append(of_row("note" if default else "doubtful", frame[blank].iloc[0], column="incubator",
                            found=text, done=done, mend=mend))
        names = names.fillna(str(default)) if default else names
    return names.astype(TEXT)


def _without_copies(frame: pd.DataFrame, found: list) -> pd.DataFrame:
    """Rows that say the same twice (a second copy of the table) are used once."""
    content = frame.drop(columns=["file", "sheet", "row"])
    named = frame["batch"].notna() & frame["batch"].duplicated(keep=False)
    if not named.any():
        return frame
    same = named & content[named].astype(str).duplicated().reindex(frame.index, fill_value=False)
    for index in frame.index[same]:
        row = frame.loc[index]
        found.append(of_row("note", row, column="batch", done="It is used once.", mend="Delete one of them.",
                            found=f"batch '{row['batch']}' is written twice with the same figures"))
    return frame[~same].reset_index(drop=True)


def _names(frame: pd.DataFrame, found: list) -> pd.Series:
    """A name for every batch, each used once."""
    names = frame["batch"].copy()
    blank = names.isna()
    if blank.any():
        severity = "note" if blank.all() else "doubtful"
        names = names.where(~blank, "row " + frame["row"].astype(str))
        found.append(of_row(severity, frame[blank].iloc[0], column="batch", mend="Give each batch a name.",
                            found=f"{many(int(blank.sum()), 'batch', 'batches')} without a name",
                            done="They are named by their row, such as 'row 7'."))
    if not names.duplicated().any():
        return names.astype(TEXT)
    again = names.groupby(names).cumcount() + 1
    for index in frame.index[again > 1]:
        row = frame.loc[index]
        found.append(of_row("doubtful", row, column="batch", mend="Give each batch a name of its own.",
                            found=f"the name '{names[index]}' is used for another batch already",
                            done=f"This one is called '{names[index]} ({again[index]})'."))
    return names.where(again == 1, names + " (" + again.astype(str) + ")").astype(TEXT)
