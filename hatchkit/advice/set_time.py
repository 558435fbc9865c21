"""When do the eggs go in? The hour as a person writes it, or the next day that makes sense."""

from __future__ import annotations

import datetime as dt

import numpy as np
import pandas as pd

from hatchkit.problems import HatchkitError

#: Hour of setting where none is asked for (hour of the wall clock).
EVENING = 18


def set_time_noted(season, set_at=None, *, species=None, today=None) -> tuple[pd.Timestamp, list]:
    """Hour of setting on the person's clock, and what was assumed about it: codes with their facts.

    Parameters
    ----------
    season : Season
    set_at : str, date or Timestamp, optional
        Read as a cell of a sheet is: the season's order of day and month, noon where no hour is written.
    species : Series, optional
        Row of the species table; its best days of storage are the days that collecting takes.
    today : str or Timestamp, optional
        The day of planning; the clock's if left out.

    Raises
    ------
    HatchkitError
        If `set_at` is no date, can be read two ways, or is an hour that never came or came twice.
    """
    now = _now(today, season.timezone)
    if set_at is None:
        return _next_day(season, species, now)
    when, hour_kept = _read(set_at, season)
    told = [] if hour_kept else [("no_hour", {})]
    told += [("passed", {})] if when < now else []
    return when, told


def _now(today, zone) -> pd.Timestamp:
    now = pd.Timestamp.now(tz="UTC") if today is None else pd.Timestamp(today)
    return now.tz_localize(zone) if now.tzinfo is None else now.tz_convert(zone)


def _next_day(season, species, now) -> tuple[pd.Timestamp, list]:
    """The first evening for which fresh eggs can be collected from now on, and on which no batch is in the machine."""
    collecting = 7.0 if species is None else float(species["storage_best_days"])
    first = now.normalize() + pd.Timedelta(days=int(np.ceil(collecting)))
    busy = _last_end(season)
    day = first if busy is None else max(first, busy.tz_convert(season.timezone).normalize() + pd.Timedelta(days=1))
    why = [("collect", dict(days=round(collecting))) if day == first else ("free", {})]
    wall = day.tz_localize(None) + pd.Timedelta(hours=EVENING)
    return wall.tz_localize(season.timezone), why  # clocks are changed at night, never at this hour


def _last_end(season):
    """When the last batch is taken off, by its record or else by its species' days; None without a batch."""
    batches, table = season.batches, season.species_table
    days = batches["species"].map(table["incubation_days"]).astype(float)
    due = batches["set_at"] + pd.to_timedelta(days.fillna(0) + 1, unit="D")
    ends = batches["taken_off_at"].fillna(due).dropna()
    return ends.max() if len(ends) else None


def _read(set_at, season) -> tuple[pd.Timestamp, bool]:
    if isinstance(set_at, str):
        when, hour_kept = _read_text(set_at.strip(), _day_first(season))
    else:
        try:
            when = pd.Timestamp(set_at)
        except (TypeError, ValueError):
            raise HatchkitError("set_time_none", dict(given=str(set_at))) from None
        hour_kept = isinstance(set_at, dt.datetime) or not isinstance(set_at, dt.date)
    if pd.isna(when) or not 1990 <= when.year <= 2100:
        raise HatchkitError("set_time_none", dict(given=str(set_at)))
    when = when if hour_kept else when + pd.Timedelta(hours=12)
    return (when.tz_convert(season.timezone) if when.tzinfo else on_the_clock(when, season.timezone)), hour_kept


def _day_first(season):
    told = (season.settings.get("sheets") or {}).get("day_first")
    return told if isinstance(told, bool) else None


def _read_text(text, day_first) -> tuple[pd.Timestamp, bool]:
    from hatchkit.records import times

    evidence = times.gather([text])
    order = times.decide(evidence, day_first)
    if day_first is None and evidence.ambiguous and order.how != "dots":
        raise _two_ways(text, *(times.read(evidence, way).moments[0] for way in (True, False)))
    found = times.read(evidence, order, swap=True)
    when, offset = pd.Timestamp(found.moments[0]), 0.0 if found.offset is None else found.offset[0]
    if pd.isna(when) or not abs(offset) < 86_400:
        why = {"year": "year_odd", "no year": "year_none"}.get(found.reasons.get(0), "no_date")
        raise HatchkitError("set_time_misread", dict(given=text, why=why))
    if found.offset is not None:
        when = (when - pd.Timedelta(seconds=offset)).tz_localize("UTC")
    return when, bool(found.hour_written[0])


def _two_ways(text, *ways) -> HatchkitError:
    one, other = (pd.Timestamp(way) for way in ways)
    iso = dict(write_one=f"{one:%Y-%m-%d}", write_other=f"{other:%Y-%m-%d}")
    return HatchkitError("set_time_two_ways", dict(given=text, one=one, other=other, **iso))


def on_the_clock(wall: pd.Timestamp, zone: str) -> pd.Timestamp:
    """A wall-clock time in its zone; HatchkitError for an hour that never comes or comes twice."""
    first = wall.tz_localize(zone, ambiguous=True, nonexistent="NaT")
    if pd.isna(first):
        raise HatchkitError("set_time_skipped", dict(time=wall, zone=zone))
    if first != wall.tz_localize(zone, ambiguous=False, nonexistent="NaT"):
        raise HatchkitError("set_time_twice", dict(time=wall, zone=zone))
    return first
