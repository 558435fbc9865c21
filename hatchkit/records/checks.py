"""Do the records agree with themselves? Every disagreement is a problem row; nothing is changed here."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.told import local_minute, of_row

_ORDER = ("set_at", "candle1_at", "candle2_at", "transfer_at", "first_hatch_at", "last_hatch_at", "taken_off_at")
#: A date without its hour stands at noon, so two dates of one day may seem up to half a day out of order.
_SLACK = pd.Timedelta(hours=12)
#: No egg of the species table lies longer from setting to the take-off.
_LONGEST = pd.Timedelta(days=80)


def check_batches(batches: pd.DataFrame, species_table: pd.DataFrame, zone: str = "UTC") -> list[dict]:
    """Dates that run backwards or can't be right, and counts that are larger than what they are part of.

    Whether all counts of a batch add up to the eggs set is the matter of its fates, which say so.

    Parameters
    ----------
    batches : DataFrame
    species_table : DataFrame
    zone : str
        Zone of the person's wall clock, in which dates are told.

    Returns
    -------
    list of dict
    """
    if batches.empty:
        return []
    return [*_check_dates(batches, zone), *_check_ages(batches, species_table), *_check_parts(batches)]


def _rows(batches: pd.DataFrame, wrong) -> list[pd.Series]:
    wrong = wrong.fillna(False).astype(bool)
    return [batches.loc[index] for index in batches.index[wrong]] if wrong.any() else []


def _check_dates(batches: pd.DataFrame, zone: str):
    """One row per batch and date that lies before dates that should precede it."""
    times = np.column_stack([batches[name].dt.tz_localize(None).to_numpy("datetime64[us]") for name in _ORDER])
    late = np.fmax.accumulate(times, axis=1) - times > _SLACK.to_timedelta64()
    for index, place in np.argwhere(late):
        row, later = batches.iloc[index], _ORDER[place]
        before = [name for name in _ORDER[:place] if row[name] - row[later] > _SLACK]
        day = {name: local_minute(row[name], zone, day_only=True) for name in (later, *before)}
        yield of_row(
            "doubtful",
            row,
            "check_dates",
            column=later,
            batch=row["batch"],
            later=later,
            day=day[later],
            before=[dict(code="check_event_day", facts=dict(event=name, day=day[name])) for name in before],
            columns=[later, *before],
            columns_swapped=[name for name in day if _right_if_swapped(row, name, later, before, zone)],
        )


def _right_if_swapped(row, name: str, later: str, before: list[str], zone: str) -> bool:
    """Whether the dates would follow each other if day and month of one of them changed places."""
    when = row[name].tz_convert(zone).tz_localize(None)
    if when.day > 12 or when.day == when.month:
        return False
    swapped = {each: row[each].tz_convert(zone).tz_localize(None) for each in (later, *before)}
    swapped[name] = when.replace(day=when.month, month=when.day)
    ages = [swapped[later] - swapped[each] for each in before]
    return all(-_SLACK <= age <= _LONGEST for age in ages)


def _check_ages(batches: pd.DataFrame, species_table: pd.DataFrame):
    days = pd.Series(species_table["incubation_days"].reindex(batches["species"]).to_numpy(), batches.index)
    for column in ("taken_off_at", "transfer_at"):
        age = (batches[column] - batches["set_at"]) / pd.Timedelta(days=1)
        for row in _rows(batches, (age > days * 1.35) | ((age < days * 0.6) & (age >= 0))):
            yield of_row(
                "doubtful",
                row,
                "check_days",
                column=column,
                batch=row["batch"],
                event=column,
                days=round(age[row.name]),
                species=row["species"],
                usual=float(days[row.name]),
                columns=["set_at", column],
            )


def _check_parts(batches: pd.DataFrame):
    for part, whole in (("culled", "hatched"), ("malpositioned", "broken_late")):
        for row in _rows(batches, batches[part] > batches[whole]):
            yield of_row(
                "doubtful",
                row,
                "check_part",
                column=part,
                batch=row["batch"],
                eggs=row[part],
                of=row[whole],
                part=part,
                whole=whole,
                column_part=part,
                column_whole=whole,
            )
    for row in _rows(batches, (batches["stored_days"] < 0) | (batches["stored_days"] > 60)):
        facts = dict(batch=row["batch"], days=float(row["stored_days"]))
        yield of_row("doubtful", row, "check_stored", column="stored_days", **facts)


def check_eggs(eggs: pd.DataFrame) -> list[dict]:
    """Eggs that are listed twice in one batch.

    Parameters
    ----------
    eggs : DataFrame

    Returns
    -------
    list of dict
    """
    if eggs.empty:
        return []
    twice = eggs["egg"].notna() & eggs.duplicated(["batch", "egg"], keep="first")
    return [
        of_row("doubtful", row, "check_egg_twice", column="egg", egg=row["egg"], batch=row["batch"])
        for row in _rows(eggs, twice)
    ]


def check_logs(batches: pd.DataFrame, readings: pd.DataFrame) -> list[dict]:
    """Incubators without a log while batches were in them, and logs of incubators that hold no batch.

    Parameters
    ----------
    batches, readings : DataFrame

    Returns
    -------
    list of dict
    """
    if batches.empty:
        return []
    used = set(batches["incubator"].dropna().unique())
    logged = set(readings["incubator"].dropna().unique())
    found = [
        problem("note", column="incubator", code="check_no_log", facts=dict(machine=name))
        for name in sorted(used - logged)
    ]
    for name in sorted(logged - used):
        file = readings.loc[readings["incubator"] == name, "file"].iloc[0]
        found.append(problem("note", file=file, column="incubator", code="check_no_eggs", facts=dict(machine=name)))
    return found
