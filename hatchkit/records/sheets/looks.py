"""Every look at the eggs of every batch in one table, named in order: candle1, candle2, ..., transfer, hatch."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.problems import problem

COLUMNS = ["batch", "look", "name", "looked_at", "day", "clear", "dead", "removed"]
#: Look -> (its date, its clears, its dead) among the columns of batches.
WIDE = {
    "candle1": ("candle1_at", "clear1", "dead1"),
    "candle2": ("candle2_at", "clear2", "dead2"),
    "transfer": ("transfer_at", "clear3", "dead3"),
}
#: Looks closer than this are one look.
SAME_HOURS = 36  # between two sources; two looks of one table are two looks


def build(batches: pd.DataFrame, looks: pd.DataFrame, species_table: pd.DataFrame, found: list) -> pd.DataFrame:
    """The looks table on the wall clock; the columns of `batches` that tell of looks are filled from it.

    Parameters
    ----------
    batches : DataFrame
        batch, species, set_at (wall clock), taken_off_at; changed in place.
    looks : DataFrame
        `tables.LOOK_COLUMNS`; place is the row of `batches`.
    species_table : DataFrame
    found : list of dict
        Problem rows are added to it.
    """
    figures = species_table.loc[batches["species"]].reset_index(drop=True)
    noon = batches["set_at"] = _noon(batches["set_at"], batches.get("set_at_hour"))
    parts = []
    if len(looks):
        table = looks.copy()
        place = table["place"].to_numpy(int)
        at = _noon(table["at"], table["hour"])
        by_day = pd.Series(noon.to_numpy()[place]) + pd.to_timedelta(table["day"].astype(float), unit="D")
        usual = pd.Series(noon.to_numpy()[place]) + pd.to_timedelta(_usual_day(table, figures.iloc[place]), unit="D")
        table["assumed"] = (at.isna() & by_day.isna()).to_numpy()
        times = at.astype("datetime64[us]").fillna(by_day.astype("datetime64[us]"))
        table["looked_at"] = times.fillna(usual.astype("datetime64[us]")).to_numpy()
        table["sort"] = table["transfer"].astype(bool).astype(int)
        parts.append(_dated_elsewhere(table))
    end, kept = _take_off(batches, noon, figures, found)
    hatch = pd.DataFrame(
        {
            "place": np.arange(len(batches)),
            "looked_at": end,
            "transfer": False,
            "sort": 2,
            "order": 99,
            "clear": np.nan,
            "dead": np.nan,
            "removed": np.nan,
            "assumed": ~kept,
        }
    )
    parts.append(hatch)
    table = pd.concat(parts, ignore_index=True).sort_values(["place", "sort", "looked_at", "order"], kind="stable")
    table["hatch"] = table["sort"] == 2
    table = _one_per_day(table, batches, found)
    _tell_assumed(table, batches, found)
    table = _from_left(table, batches, found)
    table["day"] = (table["looked_at"].to_numpy() - noon.to_numpy()[table["place"].to_numpy(int)]) / np.timedelta64(
        1, "D"
    )
    table["name"] = _named(table, figures["transfer_day"].to_numpy(float))
    table = table.sort_values(["place", "looked_at", "sort"], kind="stable").reset_index(drop=True)
    table["look"] = table.groupby("place").cumcount() + 1
    table["batch"] = batches["batch"].to_numpy()[table["place"].to_numpy(int)]
    _write_back(batches, table)
    return table[[*COLUMNS, "assumed", "place"]]


def _dated_elsewhere(table: pd.DataFrame) -> pd.DataFrame:
    """Looks without a date that another table dates: its first candling is theirs, its transfer theirs."""
    if not table["assumed"].any() or table["assumed"].all() or table["table"].nunique() < 2:
        return table
    transfer = table["transfer"].astype(bool)
    ordered = table.sort_values(["place", "table", "looked_at"], kind="stable")
    rank = (~transfer[ordered.index]).groupby([ordered["place"], ordered["table"]]).cumsum()
    table["rank"] = rank.where(~transfer, 0)
    dated = table[~table["assumed"]].drop_duplicates(["place", "rank"]).set_index(["place", "rank"])["looked_at"]
    at = pd.Series(list(zip(table["place"], table["rank"], strict=True)), table.index).map(dated)
    table.loc[table["assumed"] & at.notna(), "looked_at"] = at
    return table.drop(columns="rank")


def _noon(times: pd.Series, hours) -> pd.Series:
    """Noon where no hour was written."""
    times = pd.to_datetime(times)
    kept = False if hours is None else pd.Series(hours).fillna(False).astype(bool).set_axis(times.index)
    return times.where(kept | times.isna(), times + pd.Timedelta(hours=12))


def _usual_day(table: pd.DataFrame, figures: pd.DataFrame) -> np.ndarray:
    """The species' usual day of a look that has neither date nor day."""
    order = table["order"].astype(float).to_numpy()
    first, second = figures["candle1_day"].to_numpy(float), figures["candle2_day"].to_numpy(float)
    last = figures["transfer_day"].to_numpy(float)
    many = order > 2
    step = np.where(
        many, second + (last - second) * (order - 2) / np.maximum(order - 1, 2), np.where(order > 1, second, first)
    )
    return np.where(table["transfer"].astype(bool), last, step)


def _take_off(batches: pd.DataFrame, noon: pd.Series, figures: pd.DataFrame, found: list):
    """When each hatch was taken off: as written, else the day after the usual hatching day."""
    if "taken_off_at" not in batches:
        batches["taken_off_at"] = pd.NaT
    written = batches["taken_off_at"] = _noon(batches["taken_off_at"], batches.get("taken_off_at_hour"))
    usual = noon + pd.to_timedelta(figures["incubation_days"].to_numpy(float) + 1.0, unit="D")
    blank = written.isna()
    if blank.any():
        first = batches[blank].iloc[0]
        found.append(
            problem(
                "note",
                code="hatch_without_date",
                facts=dict(batches=list(batches.loc[blank, "batch"])),
                file=first["file"],
                sheet=first["sheet"],
                row=int(first["row"]),
            )
        )
    return written.fillna(usual).to_numpy(), written.notna().to_numpy()


def _one_per_day(table: pd.DataFrame, batches: pd.DataFrame, found: list) -> pd.DataFrame:
    """One look told of twice, in a table and in a log or egg by egg, is one look; the later source wins."""
    table = table.reset_index(drop=True)
    source = table["source"] if "source" in table else pd.Series(0, table.index)
    near = (
        table["place"].eq(table["place"].shift())
        & ~table["hatch"]
        & ~table["hatch"].shift(fill_value=True)
        & (table["table"].ne(table["table"].shift()) if "table" in table else False)
        & ((table["looked_at"] - table["looked_at"].shift()).abs() <= pd.Timedelta(hours=SAME_HOURS))
    )
    for i in np.flatnonzero(near):
        batch = batches.iloc[int(table.at[i, "place"])]
        egg_rows = max(source[i], source[i - 1]) == 2  # what these say otherwise is told with the fates
        first = source[i] <= source[i - 1]
        for name in ("clear", "dead", "removed"):
            one, other = table.loc[[i - 1, i], name].astype(float)
            newer, older = (one, other) if first else (other, one)
            if (egg_rows or batch.get("rest") == 0) and not np.isnan(older):
                # Egg rows may be of a part of the eggs; and a table that adds up is right with its own figure.
                newer, older = older, newer
            if not egg_rows and not np.isnan(one + other) and one != other:
                facts = dict(batch=batch["batch"], field=name, one=int(older), other=int(newer))
                found.append(_doubt("look_told_twice", facts, batch))
            table.at[i, name] = older if np.isnan(newer) else newer
        table.at[i, "transfer"] = bool(table.at[i, "transfer"]) or bool(table.at[i - 1, "transfer"])
        if table.at[i, "assumed"] and not table.at[i - 1, "assumed"]:
            table.loc[i, ["looked_at", "assumed"]] = [table.at[i - 1, "looked_at"], False]
    kept = ~near.shift(-1, fill_value=False)
    return table[kept].reset_index(drop=True)


def _tell_assumed(table: pd.DataFrame, batches: pd.DataFrame, found: list) -> None:
    """One note per sheet for the looks that have neither date nor day."""
    assumed = table[table["assumed"] & ~table["hatch"]]
    if assumed.empty:
        return
    for (file, sheet), blank in assumed.groupby(["file", "sheet"], sort=False):
        names = list(dict.fromkeys(batches["batch"].to_numpy()[blank["place"].to_numpy(int)]))
        row = int(blank["row"].iloc[0])
        found.append(
            problem("note", code="look_without_date", facts=dict(batches=names), file=file, sheet=sheet, row=row)
        )


def _from_left(table: pd.DataFrame, batches: pd.DataFrame, found: list) -> pd.DataFrame:
    """Losses from the eggs left where only the batch's own table says how many were set, and what does not fit."""
    if "left" not in table:
        return table
    linked = table["source"].eq(1) & table["left"].notna() & ~table["derived"].fillna(False).astype(bool)
    for place in dict.fromkeys(table.loc[linked, "place"]):
        inside = float(batches["eggs_set"].iloc[int(place)])
        for i in table.index[table["place"].eq(place) & ~table["hatch"]]:
            inside -= np.nansum(table.loc[i, ["clear", "dead", "removed"]].to_numpy(float))
            left = float(table.at[i, "left"])
            if np.isnan(left):
                continue
            if linked[i] and inside > left and np.isnan(float(table.at[i, "dead"])):
                first = i == table.index[table["place"].eq(place)][0] and np.isnan(float(table.at[i, "clear"]))
                table.at[i, "clear" if first else "dead"] = inside - left
            elif linked[i] and inside != left:
                facts = dict(batch=batches["batch"].iloc[int(place)], left=int(left), inside=int(inside))
                found.append(_doubt("left_differs", facts, table.loc[i]))
            inside = left
    return table


def _doubt(code: str, facts: dict, row) -> dict:
    where = dict(file=row["file"], sheet=row["sheet"], row=int(row["row"]))
    return problem("doubtful", code=code, facts=facts, **where)


def _named(table: pd.DataFrame, transfer_day: np.ndarray) -> np.ndarray:
    """candle1, candle2, ... in order; the move named so, else the first late look, is transfer; hatch is last."""
    place = table["place"].to_numpy(int)
    hatch, said = table["hatch"].to_numpy(bool), table["transfer"].to_numpy(bool)
    told = np.zeros(place.max() + 1, bool)
    told[place[said]] = True
    late = ~hatch & ~told[place] & (table["day"].to_numpy(float) >= transfer_day[place] - 0.5)
    first = np.zeros(len(table), bool)
    first[pd.Series(place)[late].drop_duplicates().index.to_numpy()] = True
    moved = said | first
    number = pd.Series(~hatch & ~moved).groupby(place).cumsum().to_numpy(int)
    names = np.array([f"candle{count}" for count in range(number.max() + 1)], dtype=object)[number]
    names[moved] = "transfer"
    names[hatch] = "hatch"
    return names


def _write_back(batches: pd.DataFrame, table: pd.DataFrame) -> None:
    """The first two candlings and the transfer as columns of batches."""
    for name, (at, clear, dead) in WIDE.items():
        mine = table[table["name"] == name].drop_duplicates("place").set_index("place")
        for column, source in ((at, "looked_at"), (clear, "clear"), (dead, "dead")):
            values = mine[source]
            if source == "looked_at":
                values = values.where(~mine["assumed"])
            batches[column] = values.reindex(range(len(batches))).to_numpy()
