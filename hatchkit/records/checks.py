"""Do the records agree with themselves? Every disagreement is a problem row; nothing is changed here."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pandas as pd

from hatchkit.problems import problem
from hatchkit.records.told import of_row

_ORDER = {"set_at": "set", "candle1_at": "candled first", "candle2_at": "candled again",
          "transfer_at": "moved to hatch", "first_hatch_at": "first chick out", "last_hatch_at": "last chick out",
          "taken_off_at": "taken off"}
#: A date without its hour stands at noon, so two dates of one day may seem up to half a day out of order.
_SLACK = pd.Timedelta(hours=12)
_UNHATCHED = ["pipped_dead", "dead_in_shell"]
_BROKEN = ["broken_infertile", "broken_early", "broken_mid", "broken_late"]


def check_batches(batches: pd.DataFrame, looks: pd.DataFrame, species_table: pd.DataFrame) -> list[dict]:
    """Counts that can't be and dates that run backwards, one row per batch and fault.

    Parameters
    ----------
    batches, looks : DataFrame
    species_table : DataFrame

    Returns
    -------
    list of dict
    """
    if batches.empty:
        return []
    return [*_check_dates(batches), *_check_ages(batches, species_table), *_check_counts(batches, looks),
            *_check_parts(batches)]


def _rows(batches: pd.DataFrame, wrong) -> list[pd.Series]:
    wrong = wrong.fillna(False).astype(bool)
    return [batches.loc[index] for index in batches.index[wrong]] if wrong.any() else []


def _check_dates(batches: pd.DataFrame):
    times = np.column_stack([batches[name].dt.tz_localize(None).to_numpy("datetime64[us]") for name in _ORDER])
    if not (np.fmax.accumulate(times, axis=1) - times > _SLACK.to_timedelta64()).any():
        return
    for earlier, later in combinations(_ORDER, 2):
        for row in _rows(batches, batches[earlier] - batches[later] > _SLACK):
            yield of_row("doubtful", row, column=later,
                         found=f"batch {row['batch']}: {_ORDER[later]} {row[later]:%Y-%m-%d}, before "
                         f"{_ORDER[earlier]} {row[earlier]:%Y-%m-%d}",
                         done="Both dates are kept; ages that come from them may be wrong.",
                         mend=f"Correct {later} or {earlier}; day and month may be swapped.")


def _check_ages(batches: pd.DataFrame, species_table: pd.DataFrame):
    days = pd.Series(species_table["incubation_days"].reindex(batches["species"]).to_numpy(), batches.index)
    for column, words in (("taken_off_at", "taken off"), ("transfer_at", "moved to hatch")):
        age = (batches[column] - batches["set_at"]) / pd.Timedelta(days=1)
        for row in _rows(batches, (age > days * 1.35) | ((age < days * 0.6) & (age >= 0))):
            text = (f"batch {row['batch']}: {words} at {age[row.name]:.0f} days, though {row['species']} eggs take "
                    f"about {days[row.name]:g} days")
            yield of_row("doubtful", row, column=column, found=text, done="The dates are kept as written.",
                         mend=f"Check set_at and {column}.")


def _check_counts(batches: pd.DataFrame, looks: pd.DataFrame):
    """More out than in: at the looks, hatched, and unhatched; one row per batch, the plainest reason."""
    eggs = batches["eggs_set"]
    place = pd.Index(batches["batch"]).get_indexer(looks["batch"])
    at_looks = np.bincount(place, (looks["clear"].fillna(0) + looks["dead"].fillna(0)).astype(float), len(batches))
    out = pd.Series(at_looks).astype("Int64") + batches["removed"].fillna(0)
    hatched = batches["hatched"].fillna(0)
    # Eggs opened after the hatch are the unhatched seen again, so the larger of the two is added, not both.
    kept = {name: batches[name].fillna(0).astype(int) for name in _UNHATCHED + _BROKEN}
    after = np.maximum(sum(kept[name] for name in _UNHATCHED), sum(kept[name] for name in _BROKEN)).astype("Int64")
    left = eggs - out
    faults = pd.DataFrame({
        "hatched": hatched > eggs,
        "out": out > eggs,
        "left": hatched > left,
        "all": out + hatched + after > eggs,
    }).fillna(False).astype(bool)
    for row in _rows(batches, faults.any(axis=1)):
        i = row.name
        text, column = {
            "hatched": (f"{row['hatched']} hatched from {row['eggs_set']} eggs set", "hatched"),
            "out": (f"{out[i]} eggs taken out, but only {row['eggs_set']} set", "eggs_set"),
            "left": (f"{row['hatched']} hatched, but only {left[i]} eggs were left after {out[i]} were taken out",
                     "hatched"),
            "all": (f"{out[i]} taken out, {hatched[i]} hatched and {after[i]} unhatched make "
                    f"{out[i] + hatched[i] + after[i]} eggs, but {row['eggs_set']} were set", "eggs_set"),
        }[faults.loc[i].idxmax()]
        yield of_row("doubtful", row, column=column, found=f"batch {row['batch']}: {text}",
                     done="The batch stays; what can't be explained counts as unaccounted.",
                     mend="Correct the count that is wrong in this row.")


def _check_parts(batches: pd.DataFrame):
    for part, whole in (("culled", "hatched"), ("malpositioned", "broken_late")):
        for row in _rows(batches, batches[part] > batches[whole]):
            yield of_row("doubtful", row, column=part, done="Both counts are kept.",
                         found=f"batch {row['batch']}: {row[part]} {part}, more than {row[whole]} {whole}",
                         mend=f"{part} are counted among {whole}; correct one of the two.")
    for row in _rows(batches, (batches["stored_days"] < 0) | (batches["stored_days"] > 60)):
        yield of_row("doubtful", row, column="stored_days", done="The figure is kept.",
                     found=f"batch {row['batch']}: eggs stored {row['stored_days']:g} days",
                     mend="Write the days from laying to setting.")


def check_eggs(eggs: pd.DataFrame, batches: pd.DataFrame) -> list[dict]:
    """Egg rows against the counts of their batch, and eggs that are listed twice.

    Parameters
    ----------
    eggs, batches : DataFrame

    Returns
    -------
    list of dict
    """
    if eggs.empty:
        return []
    found = []
    twice = eggs["egg"].notna() & eggs.duplicated(["batch", "egg"], keep="first")
    for row in _rows(eggs, twice):
        found.append(of_row("doubtful", row, column="egg", done="Both rows are kept.",
                            found=f"egg {row['egg']} of batch {row['batch']} is listed a second time",
                            mend="Give each egg of a batch its own number."))
    listed = _tallies(eggs)
    rows = batches.set_index("batch")
    for name in listed:
        counted = rows[name].reindex(listed.index).astype("Float64").astype(float)
        both = counted.notna() & listed[name].notna()
        for batch in listed.index[both & (counted != listed[name])]:
            found.append(of_row("doubtful", rows.loc[batch], column=name, done="The egg rows are used.",
                                found=f"batch {batch}: {name} is {int(counted[batch])}, but its egg rows give "
                                f"{int(listed.loc[batch, name])}", mend="Correct the count, or the egg rows."))
    return found


def _tallies(eggs: pd.DataFrame) -> pd.DataFrame:
    """What the egg rows of each batch add up to; missing where that look was kept for no egg."""
    codes, batches = pd.factorize(eggs["batch"])
    outcome = eggs["outcome"]
    marks = {"hatched": ("outcome", outcome.isin(["hatched", "culled"])),
             "culled": ("outcome", outcome.isin(["culled"])),
             "pipped_dead": ("outcome", outcome.isin(["pipped_dead"]))}
    for number, look in enumerate(("candle1", "candle2", "transfer"), 1):
        marks[f"clear{number}"] = look, eggs[look].isin(["clear"])
        marks[f"dead{number}"] = look, eggs[look].isin(["dead"])
    kept = {look: np.bincount(codes[eggs[look].notna()], minlength=len(batches)) > 0
            for look in ("candle1", "candle2", "transfer", "outcome")}
    tallies = {"eggs_set": np.bincount(codes, minlength=len(batches)).astype(float)}
    for name, (look, mark) in marks.items():
        tallies[name] = np.where(kept[look], np.bincount(codes[mark], minlength=len(batches)), np.nan)
    return pd.DataFrame(tallies, index=pd.Index(batches, name="batch"))


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
    found = [problem("note", column="incubator", found=f"incubator {name} has batches but no log",
                     done="Its temperature counts as not known.",
                     mend="Put its log into the folder sensors, and name it in season.toml: "
                     f'[incubators."{name}"] files = ["sensors/..."].')
             for name in sorted(used - logged)]
    for name in sorted(logged - used):
        file = readings.loc[readings["incubator"] == name, "file"].iloc[0]
        found.append(problem("note", file=file, column="incubator",
                             found=f"a log of incubator {name}, in which no batch was set",
                             done="It is shown, but no batch is laid beside it.",
                             mend="Check how the incubator is spelt among the batches and in season.toml."))
    return found
