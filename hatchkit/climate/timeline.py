"""Tables behind the pictures: an incubator's season at the width of a page, and one excursion close up."""

from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit.climate import excursions, machine_air, ranges
from hatchkit.climate.track import batch_track

#: Steps of time across the picture: one for each point of its width.
BINS = 360


@dataclass(frozen=True)
class Timeline:
    """One incubator from its first setting to its last take-off.

    Attributes
    ----------
    incubator, timezone : str
    air : DataFrame
        time, low_c, middle_c, high_c per step of time; missing where nothing usable was logged.
    egg : DataFrame
        batch, time, egg_c, egg_low_c, egg_high_c per step of time; each batch ends with a step without
        values, so that one line can be drawn for all.
    spans : DataFrame
        batch, stage, start, end, low_c, high_c: the range in force.
    batches : DataFrame
        batch, species, set_at, transfer_at, end_at, lane (batches that overlap lie in lanes 0, 1, ...).
    looks : DataFrame
        batch, name, looked_at, lane.
    excursions : DataFrame
        Rows of ``find_excursions`` for this incubator.
    gaps : DataFrame
        start, end of stretches without usable readings while eggs were in.
    """

    incubator: str
    timezone: str
    air: pd.DataFrame
    egg: pd.DataFrame
    spans: pd.DataFrame
    batches: pd.DataFrame
    looks: pd.DataFrame
    excursions: pd.DataFrame
    gaps: pd.DataFrame


def incubator_timeline(season, incubator, *, found=None, bins=BINS) -> Timeline:
    """Tables for ``figures.climate.incubator_timeline``.

    Parameters
    ----------
    season : Season
    incubator : str
    found : DataFrame, optional
        ``find_excursions(season)`` when it is already at hand.
    bins : int
        Steps of time.
    """
    rows = dict(excursions.by_incubator(season)).get(incubator)
    air = machine_air.machine_air(season, incubator)
    step = air.attrs["step_h"]
    batches, spans, eggs, gaps = [], [], [], []
    for _, row in rows.iterrows() if rows is not None else ():
        if row["species"] not in season.species_table.index or pd.isna(row["set_at"]):
            continue
        when = ranges.stages(row, season.species_table.loc[row["species"]])
        batches.append({"batch": row["batch"], "species": row["species"], **when})
        track = batch_track(season, row["batch"])
        gaps.append(gaps_of(track, when, step))
        if not track.empty:
            spans.append(_spans(track, row["batch"], when))
            eggs.append(track.assign(batch=row["batch"]))
    names = ["batch", "species", "set_at", "transfer_at", "end_at"]
    batches = pd.DataFrame(batches, columns=names).sort_values("set_at", ignore_index=True)
    batches["lane"] = lanes(batches)
    width = _width(batches, air, bins)
    found = excursions.find_excursions(season) if found is None else found
    return Timeline(
        incubator=str(incubator),
        timezone=season.timezone,
        air=_binned_air(air, batches, width),
        egg=_binned_egg(eggs, width),
        batches=batches,
        spans=_all(spans, ["batch", "stage", "start", "end", "low_c", "high_c"]),
        looks=looks_of(season, batches),
        excursions=found[found["incubator"] == incubator].reset_index(drop=True),
        gaps=_all(gaps, ["start", "end"]).drop_duplicates(ignore_index=True),
    )


def close_up(season, excursion, *, hours=6.0) -> pd.DataFrame:
    """The track of the batch around one row of ``find_excursions``, some hours before and after."""
    track = batch_track(season, excursion["batch"])
    start, end = excursion["start"] - pd.Timedelta(hours=hours), excursion["end"] + pd.Timedelta(hours=hours)
    return track[track["time"].between(start, end)].reset_index(drop=True)


def _all(parts, names):
    parts = [part for part in parts if len(part)]
    return pd.concat(parts, ignore_index=True)[names] if parts else pd.DataFrame(columns=names, dtype=float)


def _width(batches, air, bins):
    edges = [batches["set_at"].min(), batches["end_at"].max()] if len(batches) else list(air["time"].iloc[[0, -1]])
    return max((edges[1] - edges[0]) / bins, pd.Timedelta(minutes=1))


def _binned_air(air, batches, width):
    if len(batches):
        air = air[air["time"].between(batches["set_at"].min(), batches["end_at"].max())]
    binned = air.groupby(air["time"].dt.floor(width))["air_c"].agg(["min", "median", "max"])
    # Steps without any reading must be missing, or a line would be drawn across the hole.
    if len(binned):
        binned = binned.reindex(pd.date_range(binned.index[0], binned.index[-1], freq=width, name="time"))
    binned = binned.rename(columns={"min": "low_c", "median": "middle_c", "max": "high_c"})
    return binned.astype(float).rename_axis("time").reset_index()


def _binned_egg(tracks, width):
    names = ["batch", "time", "egg_c", "egg_low_c", "egg_high_c"]
    parts = []
    for track in tracks:
        grouped = track.groupby(track["time"].dt.floor(width))
        binned = grouped.agg(
            egg_c=("egg_c", "median"), egg_low_c=("egg_low_c", "min"), egg_high_c=("egg_high_c", "max")
        )
        binned = binned.reindex(pd.date_range(binned.index[0], binned.index[-1] + width, freq=width, name="time"))
        parts.append(binned.reset_index().assign(batch=track["batch"].iloc[0])[names])
    return _all(parts, names)


def _spans(track, batch, when):
    """The range in force by stage, from setting to transfer to the end."""
    edges = {"setting": ("set_at", "transfer_at"), "hatching": ("transfer_at", "end_at")}
    first = track.drop_duplicates("stage").set_index("stage")
    return pd.DataFrame(
        {
            "batch": batch,
            "stage": first.index,
            "start": [when[edges[stage][0]] for stage in first.index],
            "end": [when[edges[stage][1]] for stage in first.index],
            "low_c": first["low_c"].to_numpy(),
            "high_c": first["high_c"].to_numpy(),
        }
    )


def gaps_of(track, when, step) -> pd.DataFrame:
    """start, end of stretches longer than the gap limit without a usable reading, from setting to the end."""
    states = excursions.state_of_time(track, when["set_at"], when["end_at"])
    length = (states["end"] - states["start"]) / pd.Timedelta(hours=1)
    long = states[(states["state"] == "not known") & (length > machine_air.gap_limit(step))]
    return long[["start", "end"]]


def lanes(batches) -> np.ndarray:
    """The first free lane, 0 and up, for each batch in the order of setting (set_at, end_at)."""
    ends, taken = [], []
    for row in batches.itertuples():
        free = [lane for lane, end in enumerate(ends) if end <= row.set_at]
        lane = free[0] if free else len(ends)
        ends[lane : lane + 1] = [row.end_at]
        taken.append(lane)
    return np.array(taken, dtype=int)


def looks_of(season, batches) -> pd.DataFrame:
    """batch, name, looked_at, lane of every look at these batches (batch, lane)."""
    names = ["batch", "name", "looked_at", "lane"]
    looks = season.looks
    if looks is None or "looked_at" not in looks or looks.empty:
        return pd.DataFrame(columns=names)
    own = looks.merge(batches[["batch", "lane"]], on="batch")
    return own.loc[own["looked_at"].notna(), names].reset_index(drop=True)
