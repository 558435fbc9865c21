"""A new season folder: a workbook to fill in, season.toml with comments, a candling sheet to print."""

from __future__ import annotations

from pathlib import Path

from hatchkit import reference
from hatchkit.problems import HatchkitError
from hatchkit.records.template import WORKBOOK, workbook_bytes
from hatchkit.records.writing import whole_file
from hatchkit.say import text

SETTINGS, CANDLING = "season.toml", "candling-sheet.html"


def start_folder(folder, language: str = "en") -> list[Path]:
    """Write a blank workbook, season.toml and a candling sheet into a folder; nothing is ever overwritten.

    Parameters
    ----------
    folder : path
        Made if it is not there.
    language : {"en", "de", "fr", "es"}
        Of all three; season.toml names it where it is not English.

    Returns
    -------
    list of Path
        The files written; those that were there already are left as they are.

    Raises
    ------
    HatchkitError
        If the folder can't be made or written to.
    """
    from hatchkit.pages.candling_sheet import candling_sheet

    folder, written = Path(folder), []
    make = {
        WORKBOOK: lambda: workbook_bytes(language),
        SETTINGS: lambda: settings_text(language).encode(),
        CANDLING: lambda: candling_sheet(language=language).encode(),
    }
    try:
        (folder / "sensors").mkdir(parents=True, exist_ok=True)
        for name, content in make.items():
            if not (folder / name).exists():
                with whole_file(folder / name, new=True) as part:
                    part.write_bytes(content())
                written.append(folder / name)
    except FileExistsError as error:
        raise HatchkitError("start_in_the_way", dict(path=str(error.filename))) from error
    except OSError as error:
        raise HatchkitError("start_unwritable", dict(folder=str(folder), why=str(error.strerror))) from error
    return written


def settings_text(language: str = "en") -> str:
    """season.toml with every setting behind a mark, and what each is for in words."""

    def note(code, **facts):
        return "".join(f"# {line}\n" for line in text(code, facts, language).splitlines())

    def aside(setting, code):
        return f"# {setting:<32}# {text(code, {}, language)}\n"

    species = ", ".join(reference.species_table().index)
    tongue = f'language = "{language}"\n' if language != "en" else '# language = "de"\n'
    return "\n".join(
        [
            note("toml_head"),
            f'title = "{text("toml_title", {}, language)}"\n',
            note("toml_language") + tongue,
            note("toml_timezone") + '# timezone = "Europe/Rome"\n',
            note("toml_default", species=species) + '# default_species = "chicken"\n# default_incubator = "A"\n',
            note("toml_incubators")
            + "# [incubators.A]\n"
            + aside('files = ["sensors/a*.csv"]', "toml_files")
            + aside('air = "fan"', "toml_air")
            + aside("set_point_c = 37.5", "toml_set_point")
            + aside("probe_offset_c = -0.3", "toml_offset")
            + aside("altitude_m = 200", "toml_altitude"),
            note("toml_sensors")
            + "# [sensors]\n"
            + aside('temp_unit = "F"', "toml_unit")
            + aside("day_first = true", "toml_day_first"),
            note("toml_sheets") + "# [sheets]\n# day_first = true\n",
            note("toml_headers") + f'# [headers]\n# "{text("toml_heading", {}, language)}" = "eggs_set"\n',
            note("toml_species") + '# [species.my_bantam]\n# based_on = "chicken"\n# incubation_days = 20\n',
        ]
    )
