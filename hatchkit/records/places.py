"""Where seasons lie: one folder, several, a folder of folders, a book by itself, and what ships with the kit."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path

from hatchkit.problems import HatchkitError

#: Folders below the one given that are looked into: keeper, year, and one between.
DEEPEST = 3
#: Folders that are part of a season, or of a program.
_NO_SEASON = {"sensors", "notebooks", "__pycache__", "node_modules"}
#: What the kit itself wrote into a season.
OWN_FILES = {"problems.csv"}


@dataclass(frozen=True)
class Place:
    """One season as it lies on disk.

    Attributes
    ----------
    folder : Path
    file : str
        The one file in it that is the book, "" where all are.
    said : str
        As the person finds it from the folder given ("2024", "Anna/2024"); "" where it is that folder itself.
    """

    folder: Path
    file: str = ""
    said: str = ""


def given_paths(given) -> list[Path]:
    """What a person named, as paths: one, several, or several in one text as PATH has them.

    Parameters
    ----------
    given : path, text or sequence of these
    """
    if isinstance(given, (list, tuple, set)):
        return [path for one in given for path in given_paths(one)]
    if isinstance(given, str) and os.pathsep in given and not Path(given).expanduser().exists():
        return [season_folder(part) for part in given.split(os.pathsep) if part]
    return [season_folder(given)]


def root_of(paths) -> Path:
    """The folder that holds all that was given."""
    if len(paths) == 1:
        return paths[0].parent if paths[0].is_file() else paths[0]
    try:
        return Path(os.path.commonpath([str(path.parent) for path in paths]))
    except ValueError:  # on two drives
        return paths[0].parent


def holds_table(folder: Path) -> bool:
    """Whether a file at the top of a folder could be a table of batches (which one, only reading tells)."""
    return any(path.is_file() and may_be_table(path) for path in _entries(folder))


def may_be_table(path: Path) -> bool:
    """Whether a file is named like a book or a table of text, and is not what the kit or the keeper keeps beside."""
    from hatchkit.records.changes import NAMES
    from hatchkit.records.workbook import TEXTS, WORKBOOKS

    own = path.name in OWN_FILES or path.stem.lower() in NAMES
    return path.suffix.lower() in (*WORKBOOKS, *TEXTS) and not own


def below(folder: Path, said: str = "", depth: int = 0) -> list[Place]:
    """The seasons in the folders of a folder, in the order of their names."""
    found = []
    for path in _entries(folder):
        if not path.is_dir() or path.name.lower() in _NO_SEASON or _leads_up(path):
            continue
        name = f"{said}/{path.name}" if said else path.name
        if holds_table(path) or any(entry.name.lower() == "sensors" for entry in _entries(path)):
            found.append(Place(path, said=name))
        elif depth + 1 < DEEPEST:
            found += below(path, name, depth + 1)
    return found


def _leads_up(path: Path) -> bool:
    """Whether a link leads to a folder that holds it: read through, it would never end."""
    return path.is_symlink() and path.parent.resolve().is_relative_to(path.resolve())


def _entries(folder: Path) -> list[Path]:
    try:
        return sorted(
            (path for path in folder.iterdir() if not path.name.startswith((".", "~"))), key=lambda path: path.name
        )
    except OSError:
        return []


def folders_and_batch(words) -> tuple[list[str], str]:
    """Folders, and the batch if the last word is no folder."""
    *folders, last = words
    try:
        is_batch = bool(folders) and not season_folder(last).exists()
    except OSError:  # longer than any file's name
        is_batch = True
    return (folders, last.strip()) if is_batch else ([*words], "")


def demo_folder() -> Path:
    """The invented demo season that ships with the kit, found from any working folder."""
    return _shipped("data_demo", "demo_missing")


def demo_years() -> Path:
    """The three invented years beside the demo season."""
    return demo_folder() / "years"


def notebooks_folder() -> Path:
    """Where the kit keeps its own notebooks."""
    return _shipped("notebooks", "notebooks_missing")


def _shipped(name: str, missing: str) -> Path:
    """A folder beside the package (source checkout) or inside it (installed copy)."""
    here = Path(__file__).resolve().parents[1]
    for home in (here.parent / name, here / name):
        if home.is_dir():
            return home
    raise HatchkitError(missing, {})


def environment(**settings) -> dict:
    """The environment for a Python that is started from this one: it finds this very hatchkit, installed or not."""
    home = str(Path(__file__).resolve().parents[2])
    paths = os.pathsep.join(filter(None, [home, os.environ.get("PYTHONPATH", "")]))
    return {**os.environ, "PYTHONPATH": paths, **settings}


def season_folder(folder) -> Path:
    """`folder` as a path; "demo" and "demo-years" mean those that ship with the kit unless such a folder is there."""
    path = Path(folder).expanduser()
    shipped = {"demo": demo_folder, "demo-years": demo_years}.get(str(folder))
    return shipped() if shipped and not path.is_dir() else path.resolve()
