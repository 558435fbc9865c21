"""season.toml: what a person says once about the season, its clock, its species and its headings."""

from __future__ import annotations

import difflib
import tomllib
from pathlib import Path

from hatchkit import reference
from hatchkit.problems import problem
from hatchkit.records.code_pages import decode
from hatchkit.records.settings_check import FILE, check_settings, is_zone

#: A figure of one's own may lie this many times below or above those of all birds that the kit knows.
_FAR = 2.0


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
    settings = check_settings(_load(folder / FILE, found), found)
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
        row = int(line) if line else None
        found.append(problem("lost", file=FILE, row=row, code="set_unreadable", facts=dict(why=where)))
    except RecursionError:
        found.append(problem("lost", file=FILE, code="set_nested"))
    except OSError as error:
        found.append(problem("lost", file=FILE, code="set_not_opened", facts=dict(why=error.strerror)))
    return {}


def _zone(settings: dict, found: list) -> str:
    given = settings.get("timezone")
    if given is None:
        found.append(problem("note", file=FILE, column="timezone", code="set_no_zone"))
        return "UTC"
    if is_zone(given):
        return given
    from zoneinfo import available_timezones

    near = difflib.get_close_matches(str(given), sorted(available_timezones()), 1, 0.6)
    facts = dict(zone=repr(given), near=near[0] if near else None)
    found.append(problem("doubtful", file=FILE, column="timezone", code="set_unknown_zone", facts=facts))
    return "UTC"


def _species(settings: dict, found: list):
    table = reference.species_table()
    figures = [name for name in table.columns if name != "name"]
    span = table[figures].agg(["min", "max"])
    if not isinstance(settings.get("species", {}), dict):
        facts = dict(name=None)
        found.append(problem("doubtful", file=FILE, column="species", code="set_species_no_section", facts=facts))
        settings["species"] = {}
    for name, given in (settings.get("species") or {}).items():
        where = f"species.{name}"

        def tell(code, where=where, **facts):
            found.append(problem("doubtful", file=FILE, column=where, code=code, facts=facts))

        if not isinstance(given, dict):
            tell("set_species_no_section", name=name)
            continue
        given = dict(given)
        based_on = given.pop("based_on", None)
        origin = reference.species_key(str(based_on)) if based_on else name if name in table.index else None
        if origin is None:
            known = list(reference.species_table().index)
            tell("set_based_on", name=name, based_on=repr(based_on) if based_on else None, known=known)
            continue
        row = table.loc[origin].copy()
        if name != origin:
            row["name"] = str(given.pop("name", name.replace("_", " ")))
        given.pop("name", None)
        for figure, value in given.items():
            if figure not in figures:
                near = difflib.get_close_matches(figure, figures, 1)
                tell("set_unknown_figure", figure=figure, near=near[0] if near else None, known=figures)
            elif isinstance(value, bool) or not isinstance(value, (int, float)):
                tell("set_figure_no_number", figure=figure, value=repr(value))
            elif not span[figure]["min"] / _FAR <= value <= span[figure]["max"] * _FAR:  # also what is no number at all
                tell("set_figure_far", figure=figure, value=repr(value))
            else:
                row[figure] = float(value)
        if not row["candle1_day"] < row["candle2_day"] < row["transfer_day"] < row["incubation_days"]:
            tell("set_days_disorder", name=name)
            row = table.loc[origin].copy()
        table.loc[name] = row
    return table
