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
        found.append(
            problem(
                "lost",
                file=FILE,
                row=int(line) if line else None,
                found=f"the file can't be read: {where}",
                done="The season is read without its settings.",
                fix='Correct that line; text needs quotes, as in timezone = "Europe/Rome".',
            )
        )
    except RecursionError:
        found.append(
            problem(
                "lost",
                file=FILE,
                found="the file holds brackets within brackets without end",
                done="The season is read without its settings.",
                fix="Write it anew.",
            )
        )
    except OSError as error:
        found.append(
            problem(
                "lost",
                file=FILE,
                found=f"the file can't be opened ({error.strerror})",
                done="The season is read without its settings.",
                fix="Close it in other programs.",
            )
        )
    return {}


def _zone(settings: dict, found: list) -> str:
    given = settings.get("timezone")
    if given is None:
        found.append(
            problem(
                "note",
                file=FILE,
                column="timezone",
                found="no time zone is given",
                done="Your wall clock is taken as it stands, without summer time.",
                fix='Write timezone = "Europe/Rome" (your own zone) in season.toml.',
            )
        )
        return "UTC"
    if is_zone(given):
        return given
    from zoneinfo import available_timezones

    near = difflib.get_close_matches(str(given), sorted(available_timezones()), 1, 0.6)
    found.append(
        problem(
            "doubtful",
            file=FILE,
            column="timezone",
            found=f"{given!r} is not a known time zone",
            done="Your wall clock is taken as it stands, without summer time.",
            fix=f'Did you mean "{near[0]}"?' if near else 'Write it like "Europe/Rome".',
        )
    )
    return "UTC"


def _species(settings: dict, found: list):
    table = reference.species_table()
    figures = [name for name in table.columns if name != "name"]
    span = table[figures].agg(["min", "max"])
    if not isinstance(settings.get("species", {}), dict):
        found.append(
            problem(
                "doubtful",
                file=FILE,
                column="species",
                found="species is no section",
                done="It is not used.",
                fix="Write [species.my_bird], its figures below.",
            )
        )
        settings["species"] = {}
    for name, given in (settings.get("species") or {}).items():
        where = f"species.{name}"

        def tell(text, done, fix="", where=where):
            found.append(problem("doubtful", file=FILE, column=where, found=text, done=done, fix=fix))

        if not isinstance(given, dict):
            tell(f"species.{name} is no section", "It is not used.", f"Write [species.{name}], its figures below.")
            continue
        given = dict(given)
        based_on = given.pop("based_on", None)
        origin = reference.species_key(str(based_on)) if based_on else name if name in table.index else None
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
                tell(
                    f"{figure} is not a figure that hatchkit knows",
                    "It is not used.",
                    f"Did you mean {near[0]}?" if near else f"Known are: {', '.join(figures)}.",
                )
            elif isinstance(value, bool) or not isinstance(value, (int, float)):
                tell(f"{figure} = {value!r} is no number", "The kit's own figure is used.", "Write a plain number.")
            elif not span[figure]["min"] / _FAR <= value <= span[figure]["max"] * _FAR:  # also what is no number at all
                tell(
                    f"{figure} = {value!r} is far from that of any bird that hatchkit knows",
                    "The kit's own figure is used.",
                    "Correct the figure.",
                )
            else:
                row[figure] = float(value)
        if not row["candle1_day"] < row["candle2_day"] < row["transfer_day"] < row["incubation_days"]:
            tell(
                f"[species.{name}]: candlings, transfer and hatch do not follow each other",
                "The kit's own figures are used.",
                "Correct the days; each must come after the one before.",
            )
            row = table.loc[origin].copy()
        table.loc[name] = row
    return table
