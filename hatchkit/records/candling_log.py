"""Every look at the eggs in one table, from the batches' own columns and from a log of candlings."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.records.dates import TIME
from hatchkit.records.told import local_minute, of_row
from hatchkit.records.values import TEXT
from hatchkit.records.words import plain, value_words
from hatchkit.spelling import many

COLUMNS = ["batch", "look", "name", "looked_at", "day", "clear", "dead", "removed"]

#: Look -> (its date, its clears, its dead) in batches, and the species figure for its usual day.
WIDE = {"candle1": ("candle1_at", "clear1", "dead1", "candle1_day"),
        "candle2": ("candle2_at", "clear2", "dead2", "candle2_day"),
        "transfer": ("transfer_at", "clear3", "dead3", "transfer_day")}
_SAME_LOOK = pd.Timedelta(hours=36)


def looks_of_batches(batches: pd.DataFrame, species_table: pd.DataFrame):
    """The looks that the columns of batches tell of; the take-off ("hatch") closes every batch.

    Parameters
    ----------
    batches : DataFrame
    species_table : DataFrame

    Returns
    -------
    looks : DataFrame
        `COLUMNS`, and `assumed` (bool): the day is the species' usual one, because no date was kept.
    problems : list of dict
    """
    parts, found = [], []
    start = _wall(batches["set_at"])
    days = {name: species_table[name].reindex(batches["species"]).to_numpy(float)
            for name in ("candle1_day", "candle2_day", "transfer_day", "incubation_days")}
    for name, (at, clear, dead, usual) in WIDE.items():
        kept = (batches[at].notna() | batches[clear].notna() | batches[dead].notna()).to_numpy()
        when, blank = _dated(batches, at, kept, start + _days(days[usual]),
                             f"date for {name}, though its counts were kept", "the species' usual day", found)
        counts = [batches[count].array[kept] for count in (clear, dead)]
        parts.append((name, np.flatnonzero(kept), when, blank, *counts))
    every = np.ones(len(batches), dtype=bool)
    when, blank = _dated(batches, "taken_off_at", every, start + _days(days["incubation_days"] + 1),
                         "date of the take-off", "the day after the usual hatching day", found)
    none = pd.array([pd.NA] * len(batches), dtype="Int64")
    parts.append(("hatch", np.flatnonzero(every), when, blank, none, none))
    place = np.concatenate([part[1] for part in parts])
    names = np.array([part[0] for part in parts], dtype=object).repeat([len(part[1]) for part in parts])
    looks = pd.DataFrame({
        "batch": batches["batch"].array.take(place),
        "name": pd.Series(names, dtype=TEXT),
        "looked_at": pd.Series(np.concatenate([part[2] for part in parts])).dt.tz_localize("UTC").astype(TIME),
        "clear": pd.concat([pd.Series(part[4]) for part in parts], ignore_index=True),
        "dead": pd.concat([pd.Series(part[5]) for part in parts], ignore_index=True),
        "removed": pd.array([pd.NA] * len(place), dtype="Int64"),
        "assumed": np.concatenate([part[3] for part in parts])})
    return numbered(looks, batches), found


def _wall(times: pd.Series) -> np.ndarray:
    return times.dt.tz_localize(None).to_numpy("datetime64[us]")


def _days(days: np.ndarray) -> np.ndarray:
    return (np.nan_to_num(days) * 86_400e6).astype("timedelta64[us]")


def _dated(batches, at: str, kept, usual, what: str, day: str, found: list):
    """Times of one look in the batches where it was kept, and where the usual day had to stand in."""
    when = _wall(batches[at])[kept]
    blank = np.isnat(when)
    if blank.any():
        who = batches.loc[kept, "batch"][blank].tolist()
        first = batches.loc[kept][blank].iloc[0]
        found.append(of_row("note", first, column=at, done=f"Taken as {day}.", mend="Add the date.",
                            found=f"{many(len(who), 'batch', 'batches')} without a {what}: {', '.join(who[:8])}"
                            f"{' ...' if len(who) > 8 else ''}"))
    return np.where(blank, usual[kept], when), blank


def numbered(looks: pd.DataFrame, batches: pd.DataFrame) -> pd.DataFrame:
    """Looks in the order of batches and time, with their order, age and the documented columns."""
    place = pd.Index(batches["batch"]).get_indexer(looks["batch"])
    last = looks["name"].eq("transfer").to_numpy() + 2 * looks["name"].eq("hatch").to_numpy()
    when = _wall(looks["looked_at"])
    order = np.lexsort((when, last, place))
    looks, place, when = looks.iloc[order].reset_index(drop=True), place[order], when[order]
    start = _wall(batches["set_at"])[place]
    looks["day"] = (when - start) / np.timedelta64(1, "D")
    first = np.flatnonzero(np.r_[True, place[1:] != place[:-1]])[: len(looks)]
    count = np.arange(len(looks)) - np.repeat(first, np.diff(np.r_[first, len(looks)])) + 1
    looks["look"] = pd.array(count, dtype="Int64")
    return looks[[*COLUMNS, "assumed"]]


def add_log(looks: pd.DataFrame, batches: pd.DataFrame, log: pd.DataFrame, species_table: pd.DataFrame,
            zone: str = "UTC"):
    """Looks and batches with a log of candlings (one row per visit) worked in.

    Within a batch the visits are candle1, candle2, ... in order of time; the one named so, or the one
    at or after the species' day of transfer, is transfer. What batches already hold stays, and a
    disagreement is told.

    Parameters
    ----------
    looks : DataFrame
        From `looks_of_batches`.
    batches : DataFrame
    log : DataFrame
        batch, name, looked_at, day, clear, dead, removed, left, file, sheet, row; one row per visit.
    species_table : DataFrame
    zone : str
        Zone of the person's wall clock, in which dates are told.

    Returns
    -------
    looks, batches : DataFrame
    problems : list of dict
    """
    found, rest = [], []
    batches = batches.copy()
    by_batch = dict(tuple(looks.groupby("batch", sort=False)))
    for name, visits in log.groupby("batch", sort=False):
        where = batches.index[batches["batch"] == name][0]
        batch = batches.loc[where]
        figures = species_table.loc[batch["species"]]
        visits = _timed(visits, batch, figures, found, zone)
        visits = _fill_counts(visits, batch, _taken_elsewhere(by_batch[name], visits), found)
        mine = _merge(by_batch[name], visits, batch, figures, found)
        by_batch[name] = mine
        _write_back(batches, where, mine)
    rest = pd.concat(list(by_batch.values()), ignore_index=True) if by_batch else looks
    return numbered(rest, batches), batches, found


def _timed(visits, batch, figures, found: list, zone: str):
    """Visits with a time: the date, else the day of incubation; visits with neither are lost and told."""
    by_day = batch["set_at"] + pd.to_timedelta(visits["day"], unit="D")
    visits = visits.assign(looked_at=visits["looked_at"].fillna(by_day).astype(TIME))
    occasions = value_words("occasion")
    visits["occasion"] = [occasions.get(plain(text), "") for text in visits["name"].fillna("")]
    usual = {"transfer": figures["transfer_day"], "hatch": figures["incubation_days"] + 1}
    for index, visit in visits[visits["looked_at"].isna()].iterrows():
        if visit["occasion"]:
            day = float(usual[visit["occasion"]])
            visits.loc[index, "looked_at"] = batch["set_at"] + pd.Timedelta(days=day)
            continue
        text = f"a candling of batch {batch['batch']} has no date: {_visit_text(visit)}"
        found.append(of_row("lost", visit, found=text, done="The row is not used.",
                            mend="Add the date or the day of incubation."))
    visits = visits[visits["looked_at"].notna()].sort_values("looked_at", kind="stable")
    before = visits["looked_at"] < batch["set_at"]
    for _, visit in visits[before].iterrows():
        day = local_minute(visit["looked_at"], zone, day_only=True)
        text = f"batch {batch['batch']} was candled on {day}, before it was set"
        found.append(of_row("doubtful", visit, found=text, done="The visit keeps its date.",
                            mend="Correct the date of setting or of the candling."))
    return visits


def _visit_text(visit) -> str:
    kept = [name for name in ("clear", "dead", "removed", "left") if pd.notna(visit[name])]
    return ", ".join(f"{name} {visit[name]}" for name in kept) or "no counts either"


def _taken_elsewhere(looks, visits) -> list[tuple]:
    """(Time, eggs) of what the batch's own row took out at looks that the log does not hold, in order of time."""
    taken = []
    for look in looks.sort_values("looked_at").to_dict("records"):
        eggs = sum(int(look[name]) for name in ("clear", "dead", "removed") if pd.notna(look[name]))
        if eggs and look["name"] != "hatch" and ((visits["looked_at"] - look["looked_at"]).abs() > _SAME_LOOK).all():
            taken.append((look["looked_at"], eggs))
    return taken


def _fill_counts(visits, batch, elsewhere, found: list):
    """Check the eggs left against what was taken out, and fill the one count that was not written."""
    inside = batch["eggs_set"]
    visits = visits.copy()
    for index, visit in visits.iterrows():
        while elsewhere and elsewhere[0][0] < visit["looked_at"]:
            inside = inside - elsewhere.pop(0)[1]
        out = [visit[name] for name in ("clear", "dead", "removed")]
        kept = sum(int(count) for count in out if pd.notna(count))
        if pd.notna(visit["left"]) and pd.notna(inside):
            missing = int(inside) - int(visit["left"]) - kept
            blank = [name for name in ("clear", "dead", "removed") if pd.isna(visit[name])]
            if missing > 0 and len(blank) == 1 and blank != ["removed"]:
                visits.loc[index, blank[0]] = missing
                found.append(of_row("note", visit, column="left", done=f"{missing} taken, from the eggs left.",
                                    found=f"batch {batch['batch']}: {blank[0]} was not written"))
            elif missing:
                text = (f"batch {batch['batch']}: {int(inside)} eggs were in, {kept} taken out, yet "
                        f"{int(visit['left'])} are said to be left")
                found.append(of_row("doubtful", visit, column="left", found=text, mend="Correct one of the counts.",
                                    done="The counts taken out are used, not the eggs left."))
            inside = int(visit["left"])
        else:
            inside = inside - kept if pd.notna(inside) else inside
    return visits


def _merge(looks, visits, batch, figures, found: list):
    """One batch's looks from both sources, named in order of time."""
    looks, used = looks.copy(), []
    extra = []
    for _, visit in visits.iterrows():
        if visit["occasion"] == "hatch":
            looks.loc[looks["name"] == "hatch", ["looked_at", "assumed"]] = [visit["looked_at"], False]
            continue
        own = looks[(looks["name"] != "hatch") & ~looks.index.isin(used)]
        apart = (own["looked_at"] - visit["looked_at"]).abs()
        same = own.index[apart <= _SAME_LOOK]
        if visit["occasion"] == "transfer" and (own["name"] == "transfer").any():
            same = own.index[own["name"] == "transfer"]
        if len(same):
            index = same[0]
            used.append(index)
            _agree(looks, index, visit, found)
            continue
        kept = visit[["batch", "looked_at", "clear", "dead", "removed"]].to_dict()
        extra.append({**kept, "name": visit["occasion"] or "candle", "assumed": False})
    if extra:
        kinds = dict.fromkeys(("clear", "dead", "removed"), "Int64") | {"looked_at": TIME}
        more = pd.DataFrame(extra).astype(kinds)
        looks = pd.concat([looks, more.reindex(columns=looks.columns)], ignore_index=True)
    looks["assumed"] = looks["assumed"].astype(bool)
    return _named(looks.sort_values("looked_at", kind="stable"), batch, figures)


def _agree(looks, index, visit, found: list) -> None:
    if looks.loc[index, "assumed"]:
        looks.loc[index, ["looked_at", "assumed"]] = [visit["looked_at"], False]
    for name in ("clear", "dead", "removed"):
        if pd.isna(visit[name]):
            continue
        if pd.notna(looks.loc[index, name]) and looks.loc[index, name] != visit[name]:
            text = (f"batch {visit['batch']}: {visit[name]} {name} here, {looks.loc[index, name]} in the table "
                    "of batches")
            found.append(of_row("doubtful", visit, column=name, found=text, done="The log of candlings is used.",
                                mend="Correct one of the two."))
        looks.loc[index, name] = visit[name]


def _named(looks, batch, figures):
    """candle1, candle2, ... in order of time; one transfer at most; hatch last."""
    day = (looks["looked_at"] - batch["set_at"]) / pd.Timedelta(days=1)
    names = looks["name"].tolist()
    if "transfer" not in names:
        late = [place for place, name in enumerate(names)
                if name != "hatch" and day.iloc[place] >= figures["transfer_day"] - 0.5]
        if late:
            names[late[0]] = "transfer"
    number, transfers = 0, 0
    for place, name in enumerate(names):
        if name == "hatch":
            continue
        if name == "transfer" and not transfers:
            transfers += 1
            continue
        number += 1
        names[place] = f"candle{number}"
    return looks.assign(name=names)


def _write_back(batches, where, looks) -> None:
    """Put the looks of one batch into its own columns, so that both tables tell the same."""
    by_name = looks.drop_duplicates("name").set_index("name")
    for name, (at, clear, dead, _) in WIDE.items():
        if name in by_name.index:
            look = by_name.loc[name]
            batches.loc[where, at] = pd.NaT if look["assumed"] else look["looked_at"]
            batches.loc[where, clear] = look["clear"]
            batches.loc[where, dead] = look["dead"]
    if "hatch" in by_name.index and not by_name.loc["hatch", "assumed"]:
        batches.loc[where, "taken_off_at"] = by_name.loc["hatch", "looked_at"]
    total = looks["removed"].sum(min_count=1)
    if pd.notna(total) and (pd.isna(batches.loc[where, "removed"]) or batches.loc[where, "removed"] < total):
        batches.loc[where, "removed"] = total
