"""One season folder, read and put in order: the table of tables that every other room works on."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from pathlib import Path

import pandas as pd

from hatchkit import problems as _problems
from hatchkit.folders import demo_folder, season_folder


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
    kept: dict = field(default_factory=dict, init=False, repr=False, compare=False)

    def batch(self, batch) -> pd.Series:
        """The row of one batch; HatchkitError lists the batches there are."""
        rows = self.once(("rows",), self._rows)
        if str(batch) not in rows:
            raise _problems.HatchkitError(f"There is no batch {batch!r} in this season; there are: "
                                          f"{', '.join(rows) or 'none'}.")
        return rows[str(batch)].copy()

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

    def words(self) -> str:
        """What was read, in a few sentences."""
        from hatchkit import __version__

        place = "the demo season that ships with hatchkit" if self.folder == demo_folder() else str(self.folder)
        return " ".join([f"{self.title} ({place}), read by hatchkit {__version__}.", self._batches_in_words(),
                         self._readings_in_words(), f"Times are shown as in {self.timezone}."])

    def _batches_in_words(self) -> str:
        if self.batches.empty:
            return "No batches could be used."
        first, last = (f"{day:%d %B %Y}".lstrip("0") for day in
                       self.batches["set_at"].dt.tz_convert(self.timezone).agg(["min", "max"]))
        kinds = ", ".join(sorted(self.batches["species"].unique()))
        count = len(self.batches)
        days = f"set on {first}" if first == last else f"set from {first} to {last}"
        return (f"{count} batch{'es' if count != 1 else ''} with {int(self.batches['eggs_set'].sum())} eggs "
                f"({kinds}), {days}.")

    def _readings_in_words(self) -> str:
        if self.readings.empty:
            return "No temperature readings: what follows says nothing about temperature."
        machines = ", ".join(sorted(self.readings["incubator"].unique()))
        return f"{len(self.readings):,} readings from {machines}."


def load_season(folder, answers: dict | None = None) -> Season:
    """Read a season folder.

    Parameters
    ----------
    folder : path
        Holds batches.xlsx (or .ods, .csv), optionally season.toml and sensors/*.csv; "demo" is the
        demo season that ships with the kit.

    Returns
    -------
    Season

    Raises
    ------
    HatchkitError
        If the folder is missing or holds nothing that can be read; anything less is a row of
        ``season.problems`` and the rest is still read.
    """
    from hatchkit.losses.fates import build_fates
    from hatchkit.records.folder import read_folder
    from hatchkit.records.told import with_headings

    folder = season_folder(folder)
    read = read_folder(folder, answers)
    fates, doubts = build_fates(read["batches"], read["eggs"], read["looks"], read["species_table"])
    read["problems"] = _problems.combine(read["problems"], with_headings(doubts, read.pop("headings")))
    return Season(folder=folder, fates=fates, **read)
