"""Do the records agree with themselves? Every disagreement is a problem row; nothing is changed here."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.told import local_minute, of_row

_ORDER = {
    "set_at": "set",
    "candle1_at": "candled first",
    "candle2_at": "candled again",
    "transfer_at": "moved to hatch",
    "first_hatch_at": "first chick out",
    "last_hatch_at": "last chick out",
    "taken_off_at": "taken off",
}
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
    names = list(_ORDER)
    for index, place in np.argwhere(late):
        row, later = batches.iloc[index], names[place]
        before = [name for name in names[:place] if row[name] - row[later] > _SLACK]
        day = {name: local_minute(row[name], zone, day_only=True) for name in (later, *before)}
        past = " and ".join(f"{_ORDER[name]} {day[name]}" for name in before)
        swapped = [name for name in day if _right_if_swapped(row, name, later, before, zone)]
        hint = f"; day and month may be swapped in {' or '.join(swapped)}" if swapped else ""
        yield of_row(
            "doubtful",
            row,
            column=later,
            found=f"batch {row['batch']}: {_ORDER[later]} {day[later]}, before {past}",
            done="The dates stay as written; ages that come from them may be wrong.",
            fix=f"Correct {later} or {' or '.join(before)}{hint}.",
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
    for column, words in (("taken_off_at", "taken off"), ("transfer_at", "moved to hatch")):
        age = (batches[column] - batches["set_at"]) / pd.Timedelta(days=1)
        for row in _rows(batches, (age > days * 1.35) | ((age < days * 0.6) & (age >= 0))):
            text = (
                f"batch {row['batch']}: {words} at {age[row.name]:.0f} days, though {row['species']} eggs take "
                f"about {days[row.name]:g} days"
            )
            yield of_row(
                "doubtful",
                row,
                column=column,
                found=text,
                done="The dates are kept as written.",
                fix=f"Check set_at and {column}.",
            )


def _check_parts(batches: pd.DataFrame):
    for part, whole in (("culled", "hatched"), ("malpositioned", "broken_late")):
        for row in _rows(batches, batches[part] > batches[whole]):
            yield of_row(
                "doubtful",
                row,
                column=part,
                done="Both counts are kept.",
                found=f"batch {row['batch']}: {row[part]} {part}, more than {row[whole]} {whole}",
                fix=f"{part} are counted among {whole}; correct one of the two.",
            )
    for row in _rows(batches, (batches["stored_days"] < 0) | (batches["stored_days"] > 60)):
        yield of_row(
            "doubtful",
            row,
            column="stored_days",
            done="The figure is kept.",
            found=f"batch {row['batch']}: eggs stored {row['stored_days']:g} days",
            fix="Write the days from laying to setting.",
        )


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
        of_row(
            "doubtful",
            row,
            column="egg",
            done="Both rows are kept.",
            found=f"egg {row['egg']} of batch {row['batch']} is listed a second time",
            fix="Give each egg of a batch its own number.",
        )
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
        problem(
            "note",
            column="incubator",
            found=f"incubator {name} has batches but no log",
            done="Its temperature counts as not known.",
            fix="Put its log into the folder sensors, and name it in season.toml: "
            f'[incubators."{name}"] files = ["sensors/..."].',
        )
        for name in sorted(used - logged)
    ]
    for name in sorted(logged - used):
        file = readings.loc[readings["incubator"] == name, "file"].iloc[0]
        found.append(
            problem(
                "note",
                file=file,
                column="incubator",
                found=f"a log of incubator {name}, in which no batch was set",
                done="It is shown, but no batch is laid beside it.",
                fix="Check how the incubator is spelt among the batches and in season.toml.",
            )
        )
    return found
