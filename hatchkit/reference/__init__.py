"""Figures of the trade with their sources, and the one loader that reads them.

Every table is a CSV file in this folder with a `source` column and, where figures can be doubted,
a `sure` column: verified, second-hand, derived, memory, or common practice (no source).
"""

from __future__ import annotations

from functools import cache
from importlib import resources

import pandas as pd

from hatchkit.problems import HatchkitError


@cache
def _load(name: str) -> pd.DataFrame:
    path = resources.files(__package__) / f"{name}.csv"
    # Only an empty cell is missing: "NA" and "n/a" are words that the readers look up.
    return pd.read_csv(path, keep_default_na=False, na_values=[""])


def load(name: str) -> pd.DataFrame:
    """A copy of the reference table `name` (the file ``reference/<name>.csv``)."""
    return _load(name).copy()


def small_words(use: str) -> list[str]:
    """Words of one use (denial, number words, ...) in order, from ``reference/small_words.csv``."""
    table = load("small_words").set_index("use")["words"]
    return str(table[use]).split()


def species_table() -> pd.DataFrame:
    """One row per species, one column per figure (wide form of ``species.csv``); index: species."""
    facts = load("species")
    wide = facts.pivot(index="species", columns="item", values="value")
    wide.columns.name = None
    names = load("species_names")
    wide.insert(0, "name", names.drop_duplicates("species").set_index("species")["name"])
    days = load("species_days").set_index("species")[["days_low", "days_high"]].reindex(wide.index)
    for name in days:  # printed by other texts or breeds; a bird without such a text has its one figure
        wide[name] = days[name].fillna(wide["incubation_days"]).astype(float)
    return wide


def species_key(text) -> str | None:
    """The species that a person means by `text` ("Hen eggs", "quails", "Muscovy"), or None.

    Case, spaces and a plural s do not matter; near misses are left to the caller, which may ask.
    """
    names = load("species_names")
    known = {_plain(n): s for n, s in zip(names["name"], names["species"], strict=True)}
    known.update({_plain(s): s for s in names["species"]})
    plain = _plain(text)
    return known.get(plain) or known.get(plain.removesuffix(" egg"))


def _plain(text) -> str:
    words = str(text).replace("_", " ").replace("-", " ").lower().split()
    return " ".join(word.removesuffix("s") for word in words)


def species(key: str) -> pd.Series:
    """The figures of one species; HatchkitError names the known ones if there is no such species."""
    wide = species_table()
    found = species_key(key)
    if found is None:
        raise HatchkitError(
            f"There is no species {key!r} in hatchkit's table; known are "
            f"{', '.join(wide.index)}. Add it to season.toml under [species]."
        )
    return wide.loc[found]
