"""The table of tables that every other room works on."""

from __future__ import annotations

import difflib
from dataclasses import dataclass, field, replace
from pathlib import Path

import pandas as pd

from hatchkit import __version__, say
from hatchkit.problems import HatchkitError
from hatchkit.records.changes import empty_changes
from hatchkit.records.places import demo_folder, demo_years


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
            lower = {name.lower(): name for name in rows}
            near = [lower[name] for name in difflib.get_close_matches(str(batch).lower(), lower, 1)]
            facts = dict(batch=str(batch), there=list(rows) or None, near=near[0] if near else None)
            raise HatchkitError("unknown_batch", facts)
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
        if language not in say.LANGUAGES:
            raise HatchkitError("language_unknown", dict(language=language, known=list(say.LANGUAGES)))
        spoken = replace(self, language=language)
        spoken.kept.update(self.kept)  # facts know no language
        return spoken

    def words(self) -> str:
        """What was read, in a few sentences."""
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
