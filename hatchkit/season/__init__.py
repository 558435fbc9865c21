"""One season, or several read together."""

from pathlib import Path

from hatchkit.losses.fates import build_fates
from hatchkit.problems import HatchkitError, combine
from hatchkit.records.answers import load_answers
from hatchkit.records.changes import empty_changes, is_changes, read_changes
from hatchkit.records.files import names_in, read_files
from hatchkit.records.folder import read_folder
from hatchkit.records.places import below, demo_folder, given_paths, holds_table, root_of, season_folder
from hatchkit.records.season_toml import read_settings
from hatchkit.records.told import with_headings
from hatchkit.records.workbook import PLAIN, TEXTS, WORKBOOKS
from hatchkit.season.joined import Part, join, labelled, none_readable, unreadable
from hatchkit.season.table import Season

__all__ = ["Season", "demo_folder", "load_season", "season_folder"]


def load_season(folder, answers: dict | None = None) -> Season:
    """Read a season, or any set of seasons as one.

    Parameters
    ----------
    folder : path or list of paths
        A season folder (it holds batches.xlsx, .ods or .csv, optionally season.toml and sensors/*.csv), a folder of
        such folders (years, keepers, or years of keepers), several of these, or one book by itself; "demo" is the demo
        season that ships with the kit, "demo-years" its three years.
    answers : dict, optional
        (file, sheet, heading) -> what the person confirmed; without it what was kept in the folder is read.

    Returns
    -------
    Season
        Of several, one Season: `batch` is a key that no other batch has, `name` the keeper's own, and batches and
        readings know their keeper and hatching year.

    Raises
    ------
    HatchkitError
        If the folder is missing or holds nothing that can be read; anything less is a row of
        ``season.problems`` and the rest is still read. A season among several that can't be read does not stop the
        others.
    """
    paths = given_paths(folder)
    if len(paths) == 1:
        return _load(paths[0], answers)
    root = root_of(paths)
    parts, failed = [], []
    for path in paths:
        _add(parts, failed, path, _said(path, root))
    if not parts:
        raise none_readable(root, failed)
    return _joined(parts, failed, root, title=root.name or str(root), answers={})


def _load(path: Path, answers) -> Season:
    """What lies in one folder or book: a season, or the seasons in its folders."""
    if path.is_file() or not path.is_dir() or holds_table(path):
        season = _one(path, answers)
        if not path.is_dir() or len(season.batches) or not below(path):
            return labelled(season)
    places = below(path)
    if not places:
        return labelled(_one(path, answers))
    answers = load_answers(path) if answers is None else answers
    parts, failed = [], []
    for place in places:
        own = {
            (file.removeprefix(f"{place.said}/"), sheet, heading): taken
            for (file, sheet, heading), taken in answers.items()
            if file.startswith(f"{place.said}/")
        }
        _add(parts, failed, place.folder, place.said, own)
    if not parts:
        raise none_readable(path, failed)
    return _joined(parts, failed, path, answers=answers)


def _add(parts, failed, path, said, answers=None) -> None:
    """Read one season of several; one that can't be read is told of, and the others are read all the same."""
    try:
        if path.is_dir() and not holds_table(path) and below(path):
            for place in below(path):
                _add(parts, failed, place.folder, f"{said}/{place.said}")
            return
        kept = load_answers(path if path.is_dir() else path.parent)
        parts.append(Part(_one(path, {**kept, **(answers or {})}), said, ""))
    except (HatchkitError, OSError) as error:
        failed.append(unreadable(said, error))


def _joined(parts, failed, root: Path, *, answers, title: str = "") -> Season:
    settings, changes = {}, empty_changes()
    if root.is_dir() and not title:
        settings, title, _, _, found = read_settings(root)
        zone = parts[0].season.timezone
        # What season.toml says of a zone, each season says for itself.
        failed += [row for row in found if row["column"] != "timezone"]
        grids, _ = read_files(root, names_in(root), [])
        changes = read_changes([grid for grid in grids if is_changes(grid)], settings, zone, failed)
    return join(parts, root=root, title=title, failed=failed, settings=settings, answers=answers, changes=changes)


def _said(path: Path, root: Path) -> str:
    try:
        return path.relative_to(root).as_posix()
    except ValueError:
        return path.as_posix()


def _one(path: Path, answers) -> Season:
    """One season folder, or one book of it, by itself."""
    book = path.is_file() and path.suffix.lower() in (*WORKBOOKS, *TEXTS, PLAIN)
    folder = path.parent if book else path
    read = read_folder(folder, answers, only=path.name if book else "")
    fates, doubts = build_fates(read["batches"], read["eggs"], read["looks"], read["species_table"])
    read["problems"] = combine(read["problems"], with_headings(doubts, read.pop("headings")))
    return Season(folder=folder, fates=fates, **read)
