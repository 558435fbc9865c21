"""Several seasons read together: one set of tables, in which each row knows its keeper and its year."""

from collections import Counter
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import numpy as np
import pandas as pd

from hatchkit import problems as _problems
from hatchkit.problems import HatchkitError, problem
from hatchkit.records.season_years import season_years, year_in
from hatchkit.season.names import batch_keys, keepers, machine_names, note_probes
from hatchkit.season.table import Season

#: Tables whose rows name their batch.
_BY_BATCH = ("batches", "eggs", "weights", "looks", "fates")
#: Tables whose rows name their file.
_BY_FILE = ("batches", "eggs", "questions", "reading", "ledger", "logs", "problems", "changes", "readings")


@dataclass(frozen=True)
class Part:
    """One season that was read, with where it lies and whose it is."""

    season: Any
    said: str
    keeper: str


def labelled(season, keeper: str = ""):
    """One season with keeper, place and hatching year on its batches and readings."""
    settings, batches = season.settings, season.batches
    keeper = str(settings.get("keeper") or keeper or "")
    batches = batches.assign(season=pd.array(season_years(batches["set_at"], season.timezone), dtype="Int64"))
    for column, told in (("keeper", keeper), ("place", str(settings.get("place") or ""))):
        if told:
            batches[column] = batches[column].fillna(told)
    readings = season.readings
    if "season" not in readings or len(readings) and readings["season"].isna().all():
        years = _years_of_readings(batches, readings, season.timezone)
        readings = readings.assign(
            keeper=pd.Series(keeper, readings.index, dtype="category"), season=pd.array(years, dtype="Int64")
        )
    return replace(season, batches=batches, readings=readings)


def _years_of_readings(batches, readings, zone):
    """The season of each reading: that of the batches, where they are of one; else of the batch set last before it."""
    years = batches["season"].dropna().unique()
    if len(readings) == 0 or len(years) <= 1:
        return np.full(len(readings), years[0] if len(years) else pd.NA, dtype=object)
    order = batches.dropna(subset=["season", "set_at"]).sort_values("set_at")
    starts = order["set_at"].astype("datetime64[us, UTC]").astype("int64").to_numpy()
    stamps = readings["time"].astype("datetime64[us, UTC]").astype("int64").to_numpy()
    at = np.clip(np.searchsorted(starts, stamps, side="right") - 1, 0, len(order) - 1)
    return order["season"].to_numpy(dtype=object)[at]


def join(
    parts: list[Part],
    *,
    root: Path,
    title: str,
    failed: list[dict],
    settings: dict,
    answers: dict,
    changes: pd.DataFrame,
):
    """One Season of several.

    Parameters
    ----------
    parts : list of Part
        Seasons that could be read.
    root : Path
    title : str
    failed : list of dict
        Problem rows of those that could not, and of the folder itself.
    settings : dict
        season.toml of the folder that holds them.
    answers : dict
        (file, sheet, heading) -> what was confirmed.
    changes : DataFrame
        Changes noted beside the seasons.

    Returns
    -------
    Season
    """
    found = list(failed)
    parts = [replace(part, season=labelled(part.season, part.keeper)) for part in keepers(parts, found)]
    parts = [_by_year(part) for part in parts]
    keys = batch_keys(parts)
    machines, questions = machine_names(parts, answers, found)
    note_probes(parts, machines, found)
    seasons = [_renamed(part, keys[at], machines[at]) for at, part in enumerate(parts)]
    tables = {
        name: _stacked([getattr(season, name) for season in seasons])
        for name in (*_BY_BATCH, "reading", "ledger", "logs")
    }
    tables["readings"], slices = _one_log([season.readings for season in seasons])
    asked = _stacked([season.questions for season in seasons] + [questions])
    zones = Counter(season.timezone for season in seasons)
    if len(zones) > 1:
        found.append(
            problem("note", code="zones_differ", facts=dict(zones=sorted(zones), zone=zones.most_common(1)[0][0]))
        )
    spoken = {season.language for season in seasons}
    return Season(
        folder=root,
        title=title,
        timezone=zones.most_common(1)[0][0],
        species_table=_species(seasons, found),
        settings=_settings(settings, seasons),
        questions=asked,
        language=settings.get("language") or (spoken.pop() if len(spoken) == 1 else "en"),
        changes=_stacked([season.changes for season in seasons] + [changes]).sort_values(
            "date", kind="stable", ignore_index=True
        ),
        problems=_problems.combine(_problems.table(found), *(season.problems for season in seasons)),
        parts=tuple(
            replace(season, readings=tables["readings"].iloc[own], parts=())
            for season, own in zip(seasons, slices, strict=True)
        ),
        **tables,
    )


def _by_year(part):
    """A season whose folder bears a year, and whose batches all lie about it, has that year."""
    year, batches = year_in(part.said.rsplit("/", 1)[-1]), part.season.batches
    if year is None or batches["season"].nunique() != 1 or abs(int(batches["season"].dropna().iloc[0]) - year) > 1:
        return part
    readings = part.season.readings
    return replace(
        part,
        season=replace(
            part.season,
            batches=batches.assign(season=pd.array([year] * len(batches), dtype="Int64")),
            readings=readings.assign(season=pd.array([year] * len(readings), dtype="Int64")),
        ),
    )


def _renamed(part, keys: dict, machines: dict):
    """A part with the keys and machines of the whole, and files named from the folder that holds all."""
    season, tables = part.season, {}
    for name in {*_BY_BATCH, *_BY_FILE}:
        table = getattr(season, name)
        changed = {}
        if name in _BY_BATCH and len(table):
            changed["batch"] = table["batch"].astype(str).map(keys).fillna(table["batch"].astype(str))
        if name in _BY_FILE and part.said and "file" in table and len(table):
            changed["file"] = _prefixed(table["file"], part.said)
        for column in ("incubator", "hatcher"):
            if column in table and len(table):
                changed[column] = _mapped(table[column], machines)
        tables[name] = table.assign(**changed) if changed else table
    # A batch without a name of the keeper's own bears the key that it had in its season.
    old = season.batches["batch"].astype(object)
    tables["batches"]["name"] = (
        tables["batches"]["name"]
        .astype(object)
        .where(season.batches["name"].notna(), old)
        .astype(season.batches["name"].dtype)
    )
    settings = dict(season.settings)
    if "incubators" in settings:
        settings["incubators"] = {machines.get(name, name): value for name, value in settings["incubators"].items()}
    if part.keeper and len(tables["changes"]):
        tables["changes"] = tables["changes"].assign(keeper=part.keeper)
    return replace(season, settings=settings, **tables)


def _prefixed(files, said: str):
    """File names from the folder that holds all; categories once each, not once a reading."""
    if len(files) > 1000:
        codes, names = pd.factorize(files)
        return pd.Categorical.from_codes(codes, [f"{said}/{name}" for name in names])
    return [f"{said}/{file}" if isinstance(file, str) and file else said for file in files]


def _mapped(column, names: dict):
    if len(column) > 1000:
        codes, old = pd.factorize(column)
        new = [names.get(str(name), str(name)) for name in old]
        known = list(dict.fromkeys(new))
        place = np.array([known.index(name) for name in new] + [-1])
        return pd.Categorical.from_codes(place[codes], known)
    return column.astype(object).map(lambda name: names.get(name, name)).astype(column.dtype)


def _stacked(tables) -> pd.DataFrame:
    full = [table for table in tables if len(table)]
    return pd.concat(full, ignore_index=True) if full else tables[0].reset_index(drop=True)


#: Columns of readings that are few words, again and again.
_WORDS = ("keeper", "incubator", "probe", "file", "doubt")


def _one_log(readings):
    """All readings in one table, words as categories, and which rows are whose: the parts then hold views of it."""
    ends = np.cumsum([0] + [len(part) for part in readings])
    slices = [slice(int(first), int(last)) for first, last in zip(ends[:-1], ends[1:], strict=True)]
    columns = {}
    for name in dict.fromkeys(name for part in readings for name in part.columns):
        pieces = [part[name] if name in part else pd.Series(np.nan, part.index) for part in readings if len(part)]
        if not pieces:
            columns[name] = readings[0][name]
        elif name in _WORDS:
            words = pd.api.types.union_categoricals([_as_words(piece) for piece in pieces])
            columns[name] = pd.Series(words)
        else:
            columns[name] = pd.concat(pieces, ignore_index=True)
    return pd.DataFrame(columns, copy=False), slices


def _as_words(piece) -> pd.Categorical:
    """Few words, as text: a log without a line has categories of no kind, which do not join those of others."""
    if piece.dtype == "category":
        words = piece.array
    else:
        words = pd.Categorical(piece.astype(object).where(piece.notna(), ""))
    return words.rename_categories(words.categories.astype("str"))


def _species(seasons, found) -> pd.DataFrame:
    """The figures of all birds; where years differ, the last one's."""
    table = seasons[0].species_table
    for season in seasons[1:]:
        other = season.species_table
        both = table.index.intersection(other.index)
        differ = [name for name in both if not table.loc[name].equals(other.loc[name])]
        for name in differ:
            found.append(problem("note", code="species_differ", facts=dict(species=name)))
        table = pd.concat([table.drop(index=both), other])
    return table


def _settings(own: dict, seasons) -> dict:
    """Settings of the whole: those of the folder, over those of the last season; all machines of all seasons."""
    last = {key: value for season in seasons for key, value in season.settings.items()}
    machines = {name: value for season in seasons for name, value in season.settings.get("incubators", {}).items()}
    return {**last, **own, "incubators": machines}


def unreadable(said: str, error) -> dict:
    """The problem row of a season that could not be read."""
    return problem(
        "lost",
        code="season_unreadable",
        facts=dict(place=said, why=error.reason() if isinstance(error, HatchkitError) else str(error)),
        file=said,
    )


def none_readable(root: Path, failed: list[dict]) -> HatchkitError:
    """The error where not one of several seasons could be read."""
    why = dict(code=failed[0]["code"], facts=failed[0]["facts"], part="found") if failed else ""
    return HatchkitError("no_season_readable", dict(folder=str(root), why=why))
