"""season.toml: what a person says once about the season, its clock, its species and its headings."""

from __future__ import annotations

import difflib
import tomllib
from pathlib import Path
from zoneinfo import ZoneInfo

from hatchkit import reference
from hatchkit.problems import problem
from hatchkit.records.workbook import decode

FILE = "season.toml"
_KNOWN = {"title", "timezone", "incubators", "headers", "species", "sensors", "sheets", "default_species",
          "default_incubator"}


def read_settings(folder):
    """season.toml of a folder, checked.

    Parameters
    ----------
    folder : Path

    Returns
    -------
    settings : dict
        As written; empty if there is no file or it can't be read.
    title : str
    timezone : str
        A zone of the time zone database; "UTC" where none is given (the wall clock as it stands).
    species_table : DataFrame
        The figures of the kit with what the file changes or adds.
    problems : list of dict
    """
    folder, found = Path(folder), []
    settings = _load(folder / FILE, found)
    for key in settings:
        if key not in _KNOWN:
            near = difflib.get_close_matches(key, _KNOWN, 1)
            found.append(problem("note", file=FILE, column=key, found=f"{key} is not a setting that hatchkit knows",
                                 done="It is not used.", mend=f"Did you mean {near[0]}?" if near else ""))
    for key in ("incubators", "headers", "species", "sensors", "sheets"):
        if key in settings and not isinstance(settings[key], dict):
            found.append(problem("doubtful", file=FILE, column=key, done="It is not used.",
                                 found=f"{key} = {settings[key]!r} is no section",
                                 mend=f"Write it as a section: [{key}]"))
            del settings[key]
    title = str(settings.get("title") or folder.resolve().name)
    return settings, title, _zone(settings, found), _species(settings, found), found


def _load(path: Path, found: list) -> dict:
    if not path.is_file():
        return {}
    try:
        with open(path, "rb") as handle:
            text = decode(handle.read(1_000_000)) or ""
        return tomllib.loads(text.replace("\r\n", "\n"))
    except tomllib.TOMLDecodeError as error:
        where = str(error)
        line = "".join(c for c in where.partition("line ")[2].partition(",")[0] if c.isdigit())
        found.append(problem("lost", file=FILE, row=int(line) if line else None,
                             found=f"the file can't be read: {where}",
                             done="The season is read without its settings.",
                             mend='Correct that line; text needs quotes, as in timezone = "Europe/Rome".'))
    except OSError as error:
        found.append(problem("lost", file=FILE, found=f"the file can't be opened ({error.strerror})",
                             done="The season is read without its settings.", mend="Close it in other programs."))
    return {}


def _zone(settings: dict, found: list) -> str:
    given = settings.get("timezone")
    if given is None:
        found.append(problem("note", file=FILE, column="timezone", found="no time zone is given",
                             done="Your wall clock is taken as it stands, without summer time.",
                             mend='Write timezone = "Europe/Rome" (your own zone) in season.toml.'))
        return "UTC"
    try:
        ZoneInfo(given)
        return given
    except Exception:  # a wrong name, a path, a number: several kinds of error, one meaning
        from zoneinfo import available_timezones

        near = difflib.get_close_matches(str(given), sorted(available_timezones()), 1, 0.6)
        found.append(problem("doubtful", file=FILE, column="timezone", found=f"{given!r} is not a known time zone",
                             done="Your wall clock is taken as it stands, without summer time.",
                             mend=f'Did you mean "{near[0]}"?' if near else 'Write it like "Europe/Rome".'))
        return "UTC"


def _species(settings: dict, found: list):
    table = reference.species_table()
    figures = [name for name in table.columns if name != "name"]
    for name, given in (settings.get("species") or {}).items():
        where = f"species.{name}"

        def tell(text, done, mend="", where=where):
            found.append(problem("doubtful", file=FILE, column=where, found=text, done=done, mend=mend))

        if not isinstance(given, dict):
            tell(f"species.{name} is no section", "It is not used.", f"Write [species.{name}], its figures below.")
            continue
        given = dict(given)
        based_on = given.pop("based_on", None)
        origin = reference.species_key(based_on) if based_on else name if name in table.index else None
        if origin is None:
            why = f"is based on {based_on!r}, which is not known" if based_on else "does not say based_on what"
            known = ", ".join(reference.species_table().index)
            tell(f"[species.{name}] {why}", "It is not used.", f'Write based_on = "chicken" (known: {known}).')
            continue
        row = table.loc[origin].copy()
        if name != origin:
            row["name"] = str(given.pop("name", name.replace("_", " ")))
        given.pop("name", None)
        for figure, value in given.items():
            if figure not in figures:
                near = difflib.get_close_matches(figure, figures, 1)
                tell(f"{figure} is not a figure that hatchkit knows", "It is not used.",
                     f"Did you mean {near[0]}?" if near else f"Known are: {', '.join(figures)}.")
            elif isinstance(value, bool) or not isinstance(value, (int, float)):
                tell(f"{figure} = {value!r} is no number", "The kit's own figure is used.", "Write a plain number.")
            else:
                row[figure] = float(value)
        table.loc[name] = row
    return table
