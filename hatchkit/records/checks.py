"""Do the records agree with themselves? Every disagreement is a problem row; nothing is changed here."""

from __future__ import annotations

import pandas as pd

from hatchkit.problems import problem

_ORDER = [("set_at", "set"), ("candle1_at", "candled first"), ("candle2_at", "candled again"),
          ("transfer_at", "moved to hatch"), ("first_hatch_at", "first chick"), ("last_hatch_at", "last chick"),
          ("taken_off_at", "taken off")]
_OUT = ["clear1", "dead1", "clear2", "dead2", "clear3", "dead3"]
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
    found = []
    _check_dates(batches, found)
    _check_ages(batches, species_table, found)
    _check_counts(batches, looks, found)
    return found


def _tell(found: list, row, column: str, text: str, done: str, mend: str, severity: str = "doubtful") -> None:
    found.append(problem(severity, file=row["file"], sheet=row["sheet"], row=row["row"], column=column,
                         found=f"batch {row['batch']}: {text}", done=done, mend=mend))


def _check_dates(batches: pd.DataFrame, found: list) -> None:
    for place, (later, later_words) in enumerate(_ORDER):
        for earlier, words in _ORDER[:place]:
            wrong = (batches[later] < batches[earlier]).fillna(False)
            for _, row in batches[wrong].iterrows():
                _tell(found, row, later, f"{later_words} {_day(row[later])}, before {words} {_day(row[earlier])}",
                      "Both dates are kept; ages that come from them may be wrong.",
                      f"Correct {later} or {earlier}; day and month may be swapped.")


def _day(when) -> str:
    return f"{when:%Y-%m-%d}"


def _check_ages(batches: pd.DataFrame, species_table: pd.DataFrame, found: list) -> None:
    days = species_table["incubation_days"].reindex(batches["species"]).to_numpy()
    for column, words in (("taken_off_at", "taken off"), ("transfer_at", "moved to hatch")):
        age = (batches[column] - batches["set_at"]) / pd.Timedelta(days=1)
        far = (age > days * 1.35).fillna(False)
        early = (age < days * 0.6).fillna(False) & (age >= 0).fillna(False)
        for index in batches.index[far | early]:
            row = batches.loc[index]
            _tell(found, row, column, f"{words} at {age[index]:.0f} days, though {row['species']} eggs take about "
                  f"{days[index]:g} days", "The dates are kept as written.", f"Check set_at and {column}.")


def _sum(batches: pd.DataFrame, names) -> pd.Series:
    return batches[names].astype("Int64").sum(axis=1, min_count=0).astype("Int64")


def _check_counts(batches: pd.DataFrame, looks: pd.DataFrame, found: list) -> None:
    eggs = batches["eggs_set"]
    at_looks = looks.groupby("batch")[["clear", "dead"]].sum().sum(axis=1)
    out = batches["batch"].map(at_looks).fillna(0).astype("Int64") + batches["removed"].fillna(0)
    hatched = batches["hatched"].fillna(0)
    moved = eggs - out
    broken = _sum(batches, _BROKEN)
    unhatched = _sum(batches, _UNHATCHED)
    # Opened late and mid dead are the dead in shell seen again, so only the larger of the two is added.
    after = pd.concat([unhatched, broken], axis=1).max(axis=1)
    mend = "Correct the count that is wrong in this row."
    left = "The batch stays; eggs that can't be explained count as unaccounted."
    for index in batches.index[(hatched > eggs).fillna(False)]:
        row = batches.loc[index]
        _tell(found, row, "hatched", f"{row['hatched']} hatched from {row['eggs_set']} eggs set", left, mend)
    above = ((hatched > moved) & (hatched <= eggs)).fillna(False)
    for index in batches.index[above]:
        row = batches.loc[index]
        _tell(found, row, "hatched", f"{row['hatched']} hatched, but only {moved[index]} eggs were left after "
              f"{out[index]} were taken out", left, mend)
    for index in batches.index[((out > eggs) & ~above & (hatched <= eggs)).fillna(False)]:
        row = batches.loc[index]
        _tell(found, row, "eggs_set", f"{out[index]} eggs taken out, but only {row['eggs_set']} set", left, mend)
    total = (out + hatched + after).astype("Int64")
    for index in batches.index[((total > eggs) & (hatched <= moved) & (out <= eggs)).fillna(False)]:
        row = batches.loc[index]
        _tell(found, row, "eggs_set", f"{total[index]} eggs in the counts ({out[index]} taken out, {hatched[index]} hatched, "
              f"{after[index]} unhatched), but {row['eggs_set']} set", left, mend)
    for part, whole in (("culled", "hatched"), ("malpositioned", "broken_late")):
        for index in batches.index[(batches[part] > batches[whole]).fillna(False)]:
            row = batches.loc[index]
            _tell(found, row, part, f"{row[part]} {part}, more than the {row[whole]} {whole}",
                  "Both counts are kept.", f"{part} are counted among {whole}; correct one of the two.")
    for index in batches.index[(batches["stored_days"] < 0).fillna(False) | (batches["stored_days"] > 60).fillna(False)]:
        row = batches.loc[index]
        _tell(found, row, "stored_days", f"eggs stored {row['stored_days']:g} days", "The figure is kept.",
              "Write the days from laying to setting.")


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
    for _, row in eggs[twice].iterrows():
        found.append(problem("doubtful", file=row["file"], sheet=row["sheet"], row=row["sheet_row"], column="egg",
                             found=f"egg {row['egg']} of batch {row['batch']} is listed a second time",
                             done="Both rows are kept.", mend="Give each egg of a batch its own number."))
    tallies = pd.DataFrame({"eggs_set": eggs.groupby("batch").size()})
    outcome = eggs["outcome"]
    for name, mark in {"hatched": outcome.isin(["hatched", "culled"]), "culled": outcome.eq("culled"),
                       "pipped_dead": outcome.eq("pipped_dead"),
                       **{f"clear{n}": eggs[look].eq("clear") for n, look in enumerate(("candle1", "candle2", "transfer"), 1)},
                       **{f"dead{n}": eggs[look].eq("dead") for n, look in enumerate(("candle1", "candle2", "transfer"), 1)},
                       }.items():
        source = {"1": "candle1", "2": "candle2", "3": "transfer"}.get(name[-1], "outcome")
        kept = eggs[source].notna().groupby(eggs["batch"]).any()
        tallies[name] = mark.astype("boolean").fillna(False).groupby(eggs["batch"]).sum().where(kept)
    rows = batches.set_index("batch")
    for name in tallies:
        counted = rows[name].reindex(tallies.index).astype("Float64")
        listed = tallies[name].astype("Float64")
        for batch in tallies.index[(counted != listed).fillna(False)]:
            row = rows.loc[batch]
            found.append(problem("doubtful", file=row["file"], sheet=row["sheet"], row=row["row"], column=name,
                                 found=f"batch {batch}: {name} is {int(counted[batch])}, but its egg rows give "
                                 f"{int(listed[batch])}", done="The egg rows are used.",
                                 mend="Correct the count, or the egg rows."))
    return found


def check_logs(batches: pd.DataFrame, readings: pd.DataFrame) -> list[dict]:
    """Incubators without a log while batches were in them, and logs of incubators that hold no batch."""
    if batches.empty:
        return []
    used = set(batches["incubator"].dropna())
    logged = set(readings["incubator"].dropna()) if len(readings) else set()
    found = [problem("note", column="incubator", found=f"incubator {name} has batches but no log",
                     done="Its temperature counts as not known.",
                     mend=f'Put its log into the folder sensors, and name it: [incubators."{name}"] files = ["sensors/..."].')
             for name in sorted(used - logged)]
    for name in sorted(logged - used):
        file = readings.loc[readings["incubator"] == name, "file"].iloc[0]
        found.append(problem("note", file=file, column="incubator", found=f"a log of incubator {name}, in which no batch was set",
                             done="It is shown, but no batch is laid beside it.",
                             mend="Check the spelling of the incubator in the table of batches and in season.toml."))
    return found
