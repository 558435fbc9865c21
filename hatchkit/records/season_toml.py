"""season.toml: what a person says once about the season, its clock, its species and its headings."""

from __future__ import annotations

import difflib
import math
import tomllib
from pathlib import Path
from zoneinfo import ZoneInfo

from hatchkit import reference
from hatchkit.problems import problem
from hatchkit.records.code_pages import decode
from hatchkit.records.sheets.fields import OWN_COLUMNS
from hatchkit.say import LANGUAGES

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


FILE = "season.toml"

#: Sections that hold one further section for each name, and those that are lists of entries.
_NAMED, _LISTED = ("incubators",), {"norms": {"species", "stage", "share"}, "changes": {"date", "what"}}


def check_settings(settings: dict, found: list) -> dict:
    """The settings without entries that cannot be used; each of these becomes a problem row.

    Parameters
    ----------
    settings : dict
        season.toml as read; not changed.
    found : list of dict
        Problem rows are added here.

    Notes
    -----
    What each key may hold is ``reference/settings.csv``. [species] is looked at where it is used and
    [headers] against the columns of the kit.
    """
    table = reference.load("settings").fillna({"section": "", "choices": ""})
    known = {section: part.set_index("key").to_dict("index") for section, part in table.groupby("section")}
    kept = {}
    for key, value in settings.items():
        if key == "species":
            kept[key] = value
        elif key == "headers":
            kept[key] = _headers(value, found)
        elif key in known[""]:
            _entry(kept, key, value, known[""], key, found)
        elif key in _LISTED:
            kept[key] = _list(key, value, known[key], found)
        elif key not in known:
            _unknown(key, key, {*known[""], *known, "species", "headers"} - {""}, found)
        elif not isinstance(value, dict):
            _not_used(key, found, "set_no_section", where=key, value=repr(value))
        elif key in _NAMED:
            kept[key] = {name: _section(f"{key}.{name}", entries, known[key], found) for name, entries in value.items()}
        else:
            kept[key] = _section(key, value, known[key], found)
    return kept


def _section(where: str, entries, known: dict, found: list) -> dict:
    if not isinstance(entries, dict):
        _not_used(where, found, "set_no_section", where=where, value=repr(entries))
        return {}
    kept = {}
    for key, value in entries.items():
        _entry(kept, key, value, known, f"{where}.{key}", found)
    return kept


def _list(where: str, entries, known: dict, found: list) -> list:
    """Entries that hold all that a level needs; the others are told."""
    if not isinstance(entries, list) or not all(isinstance(entry, dict) for entry in entries):
        _not_used(where, found, "set_no_list", where=where)
        return []
    kept = []
    for number, entry in enumerate(entries, start=1):
        entry = _section(f"{where} {number}", entry, known, found)
        if _LISTED[where] <= set(entry):
            kept.append(entry)
        else:
            _not_used(f"{where} {number}", found, "set_lacks", list=where)
    return kept


def _headers(value, found: list) -> dict:
    if not isinstance(value, dict):
        _not_used("headers", found, "set_no_section", where="headers", value=repr(value))
        return {}
    columns = set(OWN_COLUMNS)
    kept = {}
    for heading, column in value.items():
        if column in columns:
            kept[heading] = column
            continue
        near = difflib.get_close_matches(str(column), sorted(columns), 1)
        facts = dict(taken=repr(column), heading=heading, near=near[0] if near else None)
        _not_used(f"headers.{heading}", found, "set_unknown_column", **facts)
    return kept


def _entry(kept: dict, key: str, value, known: dict, where: str, found: list) -> None:
    if key not in known:
        _unknown(key, where, set(known), found)
        return
    row = known[key]
    wrong = _wrong(value, row)
    if wrong:
        facts = dict(choices=row["choices"].split(), low=row["low"], high=row["high"], example=row["example"])
        _not_used(where, found, "set_wrong", key=key, value=repr(value), wrong=wrong, **facts)
    else:
        kept[key] = value


def _wrong(value, row: dict) -> str:
    """What is wrong with a value: its kind, "number" or "range"; empty where it can be used."""
    kind = row["kind"]
    if kind == "number":
        return _wrong_number(value, row)
    if kind == "number_or_probes":
        numbers = value.values() if isinstance(value, dict) else [value]
        return next(filter(None, (_wrong_number(number, row) for number in numbers)), "")
    names = value if isinstance(value, list) else [value]
    fits = {
        "text": isinstance(value, str),
        "yes_no": isinstance(value, bool),
        "choice": str(value).replace(" ", "_") in row["choices"].split(),
        "zone": is_zone(value),
        "names": all(isinstance(name, str) for name in names),
    }
    return "" if fits.get(kind, True) else kind


def _wrong_number(value, row: dict) -> str:
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not math.isfinite(value):
        return "number"
    if not row["low"] <= value <= row["high"]:
        return "range"
    return ""


def is_zone(name) -> bool:
    """Whether it is a name of the time zone database."""
    try:
        ZoneInfo(name)
    except Exception:  # a wrong name, a path, a number: several kinds of error, one meaning
        return False
    return True


def _unknown(key: str, where: str, known: set, found: list) -> None:
    near = difflib.get_close_matches(str(key), sorted(known), 1)
    facts = dict(where=where, near=near[0] if near else None)
    found.append(problem("note", file=FILE, column=where, code="set_unknown", facts=facts))


def _not_used(column: str, found: list, code: str, **facts) -> None:
    found.append(problem("doubtful", file=FILE, column=column, code=code, facts=facts))


def language_of_season(settings: dict, understood: list) -> tuple[str, list[dict]]:
    """The language of a season's surfaces.

    Parameters
    ----------
    settings : dict
        season.toml; its `language` decides.
    understood : list of Understood
        The tables read, each with the language of its words.

    Returns
    -------
    language : str
        One of `LANGUAGES`; English where the sheets differ or are in another tongue.
    problems : list of dict
        A note on that, once; empty otherwise.
    """
    told = str(settings.get("language") or "")
    if told in LANGUAGES:
        return told, []
    spoken = sorted({item.language for item in understood if item.kind and item.language})
    if len(spoken) == 1 and spoken[0] in LANGUAGES:
        return spoken[0], []
    if not spoken:
        return LANGUAGES[0], []
    code = "language_other" if len(spoken) == 1 else "language_mixed"
    return LANGUAGES[0], [problem("note", code=code, facts=dict(tongues=spoken))]
