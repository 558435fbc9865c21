"""Each entry of season.toml beside what it may be: what does not fit is taken out and told."""

from __future__ import annotations

import difflib
import math
from zoneinfo import ZoneInfo

from hatchkit import reference
from hatchkit.problems import problem
from hatchkit.records.sheets.fields import OWN_COLUMNS

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
    if kind == "text" and not isinstance(value, str):
        return kind
    if kind == "yes_no" and not isinstance(value, bool):
        return kind
    if kind == "choice" and str(value).replace(" ", "_") not in row["choices"].split():
        return kind
    if kind == "zone" and not is_zone(value):
        return kind
    if kind == "names" and not (isinstance(value, str) or _all(value, list, str)):
        return kind
    if kind == "number":
        return _wrong_number(value, row)
    if kind == "number_or_probes":
        numbers = list(value.values()) if isinstance(value, dict) else [value]
        return next(filter(None, (_wrong_number(number, row) for number in numbers)), "")
    return ""


def _all(value, kind, inner) -> bool:
    return isinstance(value, kind) and all(isinstance(one, inner) for one in value)


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
