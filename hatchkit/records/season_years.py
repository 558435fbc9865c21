"""The hatching year of a batch: of seasons across New Year, and of several years in one book."""

from __future__ import annotations

import re

import numpy as np
import pandas as pd

#: Days in the circle of the year.
_ROUND = 365.25


def season_years(set_at, zone: str = "UTC") -> np.ndarray:
    """Hatching year of each batch.

    A new season begins after the longest stretch of the calendar in which no batch was ever set, so that hatching
    from November to February is one season. It bears the year in which most of its batches were set.

    Parameters
    ----------
    set_at : Series of datetime64, UTC
    zone : str
        Zone of the keeper's wall clock.

    Returns
    -------
    float array (batches,)
        Missing where the day of setting is.
    """
    local = pd.to_datetime(pd.Series(set_at)).dt.tz_convert(zone).reset_index(drop=True)
    years = local.dt.year.to_numpy(float)
    known = np.isfinite(years)
    if not known.any():
        return years
    day = local.dt.day_of_year.to_numpy(float)
    begins = _begin(day[known])
    # Days since the beginning of the season; those before it belong to the season of the year before.
    season = np.where(day >= begins, years, years - 1)
    out = np.full(len(years), np.nan)
    for start in np.unique(season[known]):
        own = season == start
        named, count = np.unique(years[own], return_counts=True)
        out[own] = named[np.argmax(count)]
    # Two seasons must not bear one year: then each has the year in which it began.
    names = {start: out[season == start][0] for start in np.unique(season[known])}
    return out if len(set(names.values())) == len(names) else season + (begins > 182)


def _begin(days) -> float:
    """The day of the year after the longest stretch without a setting; 1 where that holds New Year."""
    there = np.unique(days)
    gaps = np.diff(np.append(there, there[0] + _ROUND))
    last = int(np.argmax(gaps))
    after = there[(last + 1) % len(there)]
    return 1.0 if last == len(there) - 1 else float(after)


def year_in(name: str) -> int | None:
    """The year that a folder's name tells: "2024", "hatching 2024", "2024-25" (the first of the two)."""
    found = re.search(r"(?<!\d)((?:19|20)\d\d)(?!\d)", str(name))
    return int(found[1]) if found else None
