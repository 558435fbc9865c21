"""Settings and habits to change for the next set, each with its reason."""

from __future__ import annotations

import pandas as pd

COLUMNS = ["what", "now", "to", "why", "how_sure"]


def changes(season, species) -> pd.DataFrame:
    """What the season's records call for, most telling first: what, now, to, why, how_sure."""
    rows = [row for find in _FINDERS for row in find(season, species)]
    return pd.DataFrame(rows, columns=COLUMNS)


def _weighing(season, species):
    if season.weights.empty:
        yield dict(what="Weigh the eggs at setting, at each candling and at transfer", now="no weights kept",
                   to="whole tray or ten numbered eggs, tray taken off",
                   why="Only weights tell whether the humidity suits these shells.", how_sure="certain: nothing was kept")


_FINDERS = [_weighing]
