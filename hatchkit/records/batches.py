"""The rows of batches that can be worked with: named once, of a known species, with a date and a number of eggs."""

from __future__ import annotations

from itertools import count

import pandas as pd

from hatchkit.records.batches_species import KNOWN, species_of_batches
from hatchkit.records.likely import content_of, toml_line
from hatchkit.records.linking import name_key
from hatchkit.records.told import local_minute, of_row
from hatchkit.records.values import TEXT, text_of
from hatchkit.spelling import many

NEEDED = {"eggs_set": "number of eggs set", "set_at": "date of setting", "species": "species"}


def usable_batches(frame: pd.DataFrame, settings: dict, species_table: pd.DataFrame, zone: str = "UTC"):
    """Batches with a name of their own, a known species, a date of setting and eggs; the rest is lost and told.

    Parameters
    ----------
    frame : DataFrame
        As read from the sheets.
    settings : dict
        season.toml; ``default_species`` and ``default_incubator`` fill blanks.
    species_table : DataFrame
    zone : str
        Zone of the person's wall clock, in which dates are told.

    Returns
    -------
    batches : DataFrame
    problems : list of dict
    """
    found = []
    if frame.empty:
        return frame, found
    frame = frame.copy()
    written = frame["species"]
    frame["species"] = species_of_batches(frame, settings, species_table, found)
    frame["species_written"] = written
    frame = _without_copies(frame, found)
    short = {name: frame[name].isna() for name in NEEDED}
    short["eggs_set"] |= frame["eggs_set"].eq(0).fillna(False).astype(bool)
    lost = pd.concat(short, axis=1).any(axis=1)
    absent = [name for name in NEEDED if short[name].all()]
    likely = {name: _likely(name, frame) for name in absent if name != "species"} if lost.any() else {}
    for index in frame.index[lost]:
        row = frame.loc[index]
        lacks = [name for name in NEEDED if short[name][index]]
        name = "a batch without a name" if _missing(row["batch"]) else f"batch '{row['batch']}'"
        words = " and no usable ".join(NEEDED[each] for each in lacks)
        found.append(of_row("lost", row, done="The batch is left out.", mend=_mend(lacks, absent, row, likely),
                            found=f"{name} has no usable {words} ({_all_of(row, zone)})"))
    frame = frame[~lost].drop(columns="species_written").reset_index(drop=True)
    frame["incubator"] = _incubators(frame, settings, found)
    frame["batch"] = _names(frame, found)
    return frame, found


def _mend(lacks: list[str], absent: list[str], row, likely: dict) -> str:
    """What to write where, for what one batch lacks; `absent` is what no batch has, `likely` the headings for it."""
    texts = []
    if "species" in lacks and not _missing(row["species_written"]):
        texts.append("Write a species that hatchkit knows, or describe yours in season.toml (more on it below).")
    elif "species" in absent:
        texts.append('Add a column species, or write in season.toml what they are: default_species = "chicken".')
    rest = [name for name in lacks if name in absent and name != "species"]
    for name in rest:
        line = f"such as {toml_line(likely[name], name)}" if likely[name] else "in this way: " + toml_line(
            "Your heading", name)
        texts.append(f"No column was recognised as {name}; add one, or say in season.toml which it is, {line}.")
    blank = [NEEDED[name] for name in lacks if name not in absent and (name != "species" or not texts)]
    return " ".join([*texts, f"Write the {' and the '.join(blank)}." if blank else ""]).strip()


def _likely(name: str, frame: pd.DataFrame) -> str | None:
    """The heading of a column of the person's own that may hold what all batches lack."""
    own = [column for column in frame if column not in KNOWN and column != "species_written"
           and content_of(frame[column]) == {"set_at": "time", "eggs_set": "count"}[name]]
    if name == "eggs_set":  # no count of a batch is larger than its eggs
        own.sort(key=lambda column: -pd.to_numeric(frame[column], errors="coerce").sum())
    return own[0] if own else None


def _all_of(row, zone: str) -> str:
    parts = [f"{name}: {_short(value, zone)}" for name, value in row.items()
             if name not in ("batch", "file", "sheet", "row", "species_written") and not _missing(value)]
    return ", ".join(parts) or "nothing else is in the row"


def _short(value, zone: str) -> str:
    if not isinstance(value, pd.Timestamp):
        return text_of(value)[:60]
    return local_minute(value, zone).removesuffix(" 12:00")  # noon stands for a date without an hour


def _missing(value) -> bool:
    return value is None or (pd.api.types.is_scalar(value) and pd.isna(value))


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
        done = (f"{'Its' if blank.sum() == 1 else 'Their'} losses are counted, but no temperature can be laid "
                "beside them.")
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
    taken = set(names)
    for index in frame.index[names.duplicated()]:
        free = next(name for number in count(2) if (name := f"{names[index]} ({number})") not in taken)
        found.append(of_row("doubtful", frame.loc[index], column="batch", mend="Give each batch a name of its own.",
                            found=f"the name '{names[index]}' is used for another batch already",
                            done=f"This one is called '{free}'."))
        taken.add(free)
        names[index] = free
    return names.astype(TEXT)
