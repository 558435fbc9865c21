"""What heat and cold did each batch meet between two looks at the eggs?"""

import pandas as pd

from hatchkit.climate.dose import MISSING, window_dose
from hatchkit.climate.track import batch_track
from hatchkit.losses.windows import candling_windows

#: Dose columns that are added to the windows table (meaning and unit: ``reference/columns_relate.csv``).
DOSE_COLUMNS = ["hours", "hours_logged", "share_logged", *MISSING]


def exposure(season) -> pd.DataFrame:
    """Losses and dose of heat and cold, one row per batch and candling window.

    Parameters
    ----------
    season : Season

    Returns
    -------
    DataFrame
        The columns of the windows table (batch, window, name, day_start, day_end, start, end,
        at_risk, died, clear) and the dose columns `DOSE_COLUMNS`. A window with no reading in it has
        missing doses and ``share_logged`` 0: not known is never nought.

    Notes
    -----
    Doses are degree-hours (K h) and hours of the estimated egg beyond its range, and hours at 43 degC in the worst 24
    h. Source: see `hatchkit.climate.dose` (Ande & Wilson 1981) and ``reference/dose_measures.csv``.
    """
    return doses_by_part(season, candling_windows(season))[0]


#: What turning a log needs of a track (`turns.log_rates`).
_OF_A_TRACK = ["time", "hours", "egg_c", "egg_range_low_c", "egg_range_high_c"]


def doses_by_part(season, windows: pd.DataFrame, *, keep_tracks=False) -> tuple[pd.DataFrame, dict]:
    """The windows with their doses, and the tracks.

    Of several seasons the logs are gone through one after the other, and of each only what is needed is kept: 3,000
    batches' tracks would be gigabytes.

    Parameters
    ----------
    season : Season
    windows : DataFrame
    keep_tracks : bool
        Whether the tracks of several seasons are kept, as far as turning the log needs them.
    """
    if not season.parts:
        tracks = batch_tracks(season, windows["batch"].unique())
        return add_doses(windows, tracks), tracks
    tables, kept = [], {}
    for part in season.parts:
        own = windows[windows["batch"].isin(part.batches["batch"].astype(str))]
        tracks = batch_tracks(part, own["batch"].unique())
        tables.append(add_doses(own, tracks))
        if keep_tracks:
            kept |= {batch: None if track is None else track[_OF_A_TRACK].copy() for batch, track in tracks.items()}
        part.kept.clear()
    full = [table for table in tables if len(table)]
    return (pd.concat(full).reindex(windows.index) if full else add_doses(windows, {})), kept


def batch_tracks(season, batches) -> dict:
    """The temperature track of each batch; a batch that has none (no incubator, no log) maps to None."""
    tracks = {batch: batch_track(season, batch) for batch in batches}
    return {batch: None if track.empty else track for batch, track in tracks.items()}


def add_doses(windows: pd.DataFrame, tracks: dict) -> pd.DataFrame:
    """The windows table with the dose columns that the tracks give.

    Parameters
    ----------
    windows : DataFrame
        At least batch, start, end.
    tracks : dict
        Batch to track table or None (see `batch_tracks`).
    """
    doses = [_window_doses(tracks.get(row.batch), row.start, row.end) for row in windows.itertuples()]
    doses = pd.DataFrame(doses, index=windows.index, columns=DOSE_COLUMNS)
    doses = doses.astype({name: float for name in DOSE_COLUMNS if name != "heat_band"})
    return pd.concat([windows, doses], axis=1)


def _window_doses(track, start, end) -> dict:
    if pd.isna(start) or pd.isna(end):
        return {"share_logged": 0.0}
    hours = (end - start).total_seconds() / 3600
    if track is None:
        return {"hours": hours, "hours_logged": 0.0, "share_logged": 0.0}
    return {"hours": hours, **window_dose(track, start, end)}
