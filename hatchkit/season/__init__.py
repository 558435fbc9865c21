"""One season, or several read together: the table of tables that every other room works on."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from pathlib import Path

import pandas as pd

from hatchkit import problems as _problems
from hatchkit import say
from hatchkit.records.changes import empty_changes
from hatchkit.records.places import below, demo_folder, demo_years, given_paths, holds_table, root_of, season_folder  # noqa: F401 - season_folder is asked for here


@dataclass(frozen=True)
class Season:
    """A season's records as plain tables (columns: ``hatchkit/reference/columns_*.csv``).

    Attributes
    ----------
    folder : Path
    title : str
    timezone : str
        Zone of the person's wall clock; times in the tables are UTC.
    batches, eggs, weights, looks, readings, fates, problems : DataFrame
    species_table : DataFrame
        Wide species figures, with what season.toml changes or adds; index: species.
    settings : dict
        season.toml as read.
    questions, reading, ledger : DataFrame
        What the person is asked; what each column of the sheets was taken for; whether the eggs add up.
    logs : DataFrame
        One row for each logger's file and machine: what was read, and how units are known.
    changes : DataFrame
        What the keeper changed and when (`hatchkit.records.changes`).
    language : str
        Of what is said of it: season.toml's, or that of its sheets.
    parts : tuple of Season
        Where several seasons were read: each by itself, with the keys of the whole; empty for one season.
    kept : dict
        What several rooms ask for again and again (egg temperatures above all), kept by `once`.
    """

    folder: Path
    title: str
    timezone: str
    batches: pd.DataFrame
    eggs: pd.DataFrame
    weights: pd.DataFrame
    looks: pd.DataFrame
    readings: pd.DataFrame
    fates: pd.DataFrame
    problems: pd.DataFrame
    species_table: pd.DataFrame
    settings: dict = field(default_factory=dict)
    questions: pd.DataFrame = field(default_factory=pd.DataFrame)
    reading: pd.DataFrame = field(default_factory=pd.DataFrame)
    ledger: pd.DataFrame = field(default_factory=pd.DataFrame)
    logs: pd.DataFrame = field(default_factory=pd.DataFrame)
    changes: pd.DataFrame = field(default_factory=empty_changes)
    language: str = "en"
    parts: tuple = field(default=(), repr=False)
    kept: dict = field(default_factory=dict, init=False, repr=False, compare=False)

    def batch(self, batch) -> pd.Series:
        """The row of one batch; HatchkitError lists the batches there are."""
        rows = self.once(("rows",), self._rows)
        if str(batch) not in rows:
            import difflib

            lower = {name.lower(): name for name in rows}
            near = [lower[name] for name in difflib.get_close_matches(str(batch).lower(), lower, 1)]
            facts = dict(batch=str(batch), there=list(rows) or None, near=near[0] if near else None)
            raise _problems.HatchkitError("unknown_batch", facts)
        return rows[str(batch)].copy()

    def part(self, batch) -> Season:
        """The season that a batch belongs to, by itself: its own log and settings."""
        if not self.parts:
            return self
        home = self.once(("home",), lambda: {str(key): part for part in self.parts for key in part.batches["batch"]})
        return home.get(str(batch), self)

    @property
    def years(self) -> list[int]:
        """The hatching years in order; empty where no batch is known by its day."""
        if "season" not in self.batches:
            return []
        return sorted(int(year) for year in self.batches["season"].dropna().unique())

    @property
    def keepers(self) -> list[str]:
        """Whose eggs these are, where that was said."""
        return sorted(str(name) for name in self.batches["keeper"].dropna().unique() if str(name))

    def _rows(self) -> dict:
        first = self.batches[~self.batches["batch"].astype(str).duplicated()]
        return {str(row["batch"]): row for _, row in first.iterrows()}

    def species(self, batch) -> pd.Series:
        """The species figures that hold for one batch."""
        return self.species_table.loc[self.batch(batch)["species"]]

    def once(self, key, make):
        """``make()`` the first time it is asked for under `key`, and the same object from then on.

        The tracks of one season are asked for six times in one review, at seconds each time. A
        season made from this one by ``dataclasses.replace`` starts with nothing kept.
        """
        if key not in self.kept:
            self.kept[key] = make()
        return self.kept[key]

    def with_batches(self, batches: pd.DataFrame) -> Season:
        """The season with only some of its `batches` rows; what is kept of their climate stays kept."""
        part = replace(self, batches=batches.reset_index(drop=True))
        part.kept.update({key: value for key, value in self.kept.items() if key[0] in ("air", "track", "readings")})
        return part

    def spoken_in(self, language: str) -> Season:
        """The season with what is said of it in another language."""
        from hatchkit.say import LANGUAGES

        if language not in LANGUAGES:
            raise _problems.HatchkitError("language_unknown", dict(language=language, known=list(LANGUAGES)))
        return replace(self, language=language)

    def words(self) -> str:
        """What was read, in a few sentences."""
        from hatchkit import __version__

        place = {demo_folder(): "demo", demo_years(): "years"}.get(self.folder, "folder")
        read = dict(title=self.title, place=place, folder=str(self.folder), version=__version__)
        told = [("season_read", read), self._batches_told(), self._readings_told()]
        told.append(("check_clock", dict(timezone=self.timezone)))
        return " ".join(say.text(code, facts, self.language) for code, facts in told)

    def _batches_told(self) -> tuple[str, dict]:
        if self.batches.empty:
            return "season_no_batch", {}
        first, last = (day.date() for day in self.batches["set_at"].dt.tz_convert(self.timezone).agg(["min", "max"]))
        return "season_batches", dict(
            count=len(self.batches),
            eggs=int(self.batches["eggs_set"].sum()),
            species=sorted(self.batches["species"].unique()),
            first=first,
            last=None if first == last else last,
        )

    def _readings_told(self) -> tuple[str, dict]:
        if self.readings.empty:
            return "season_no_reading", {}
        machines = sorted(self.readings["incubator"].unique())
        return "season_readings", dict(count=len(self.readings), machines=machines)


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
    from hatchkit.season.joined import none_readable

    root = root_of(paths)
    parts, failed = [], []
    for path in paths:
        _add(parts, failed, path, _said(path, root))
    if not parts:
        raise none_readable(root, failed)
    return _joined(parts, failed, root, title=root.name or str(root), answers={})


def _load(path: Path, answers) -> Season:
    """What lies in one folder or book: a season, or the seasons in its folders."""
    from hatchkit.season.joined import labelled, none_readable

    if path.is_file() or not path.is_dir() or holds_table(path):
        season = _one(path, answers)
        if not path.is_dir() or len(season.batches) or not below(path):
            return labelled(season)
    places = below(path)
    if not places:
        return labelled(_one(path, answers))
    from hatchkit.records.answers import load_answers

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
    from hatchkit.records.answers import load_answers
    from hatchkit.season.joined import Part, unreadable

    try:
        if path.is_dir() and not holds_table(path) and below(path):
            for place in below(path):
                _add(parts, failed, place.folder, f"{said}/{place.said}")
            return
        kept = load_answers(path if path.is_dir() else path.parent)
        parts.append(Part(_one(path, {**kept, **(answers or {})}), said, ""))
    except (_problems.HatchkitError, OSError) as error:
        failed.append(unreadable(said, error))


def _joined(parts, failed, root: Path, *, answers, title: str = "") -> Season:
    from hatchkit.records.changes import is_changes, read_changes
    from hatchkit.records.files import names_in, read_files
    from hatchkit.records.season_toml import read_settings
    from hatchkit.season.joined import join

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
    from hatchkit.losses.fates import build_fates
    from hatchkit.records.folder import read_folder
    from hatchkit.records.told import with_headings
    from hatchkit.records.workbook import TEXTS, WORKBOOKS

    book = path.is_file() and path.suffix.lower() in (*WORKBOOKS, *TEXTS)
    folder = path.parent if book else path
    read = read_folder(folder, answers, only=path.name if book else "")
    fates, doubts = build_fates(read["batches"], read["eggs"], read["looks"], read["species_table"])
    read["problems"] = _problems.combine(read["problems"], with_headings(doubts, read.pop("headings")))
    return Season(folder=folder, fates=fates, **read)
