"""Weighings put in order: one series per egg or tray, tray taken off, days since setting, like with like."""

import numpy as np
import pandas as pd

from hatchkit.climate.egg_heat import constant
from hatchkit.climate.ranges import stages

#: An egg that loses more than this many times the middle of its batch is taken for cracked.
CRACKED_TIMES = 2.0
#: Fates of eggs that do not lose water as living eggs do.
NOT_ALIVE = ("infertile", "clear", "removed")
#: Weight per egg, next to the species' usual egg, above which a tray was probably left on the scale.
HEAVY_TIMES = 1.6
#: Loss is straight in time within this share of itself.
STRAIGHT = 0.10
#: Two weights of one egg at one time that differ by more than this share are those of two eggs of one name.
TWO_EGGS = 0.01

COLUMNS = ["egg", "name", "whole", "day", "grams", "eggs_weighed", "namesakes"]


def weighings(season, row, figures) -> pd.DataFrame:
    """All weighings of one batch until transfer.

    Parameters
    ----------
    season : Season
    row, figures : Series
        The batch and its species' figures.

    Returns
    -------
    DataFrame
        egg (blank: whole tray; with its tray where the batch has that name on several), name (as
        written), whole (a tray, not one egg), day (since setting), grams (per egg), eggs_weighed,
        namesakes (the name stands for several eggs, and which was weighed is not told); by egg and day.
        The weight at setting of the egg sheet counts as a weighing on day 0.
    """
    table = season.weights
    own = table[table["batch"] == row["batch"]] if len(table) else table
    parts = []
    if len(own):
        count = pd.to_numeric(own["eggs_weighed"], errors="coerce").astype(float)
        count = count.where(count > 0, 1.0)
        parts.append(
            pd.DataFrame(
                {
                    "name": _names(own["egg"]).to_numpy(),
                    "tray": _trays(own),
                    "day": ((own["weighed_at"] - row["set_at"]) / pd.Timedelta(days=1)).to_numpy(float),
                    "grams": (own["grams"].astype(float) / count).to_numpy(),
                    "eggs_weighed": count.to_numpy(),
                }
            )
        )
    parts.append(_set_weights(season, row, parts))
    found = pd.concat([part for part in parts if len(part)] or [parts[-1]], ignore_index=True)
    found = found.astype({"day": float, "grams": float, "eggs_weighed": float})
    when = stages(row, figures)
    until = (when["transfer_at"] - when["set_at"]) / pd.Timedelta(days=1) + 0.5
    found = _with_tray(found[found["grams"].gt(0) & found["day"].between(-0.5, until)], season, row["batch"])
    found = found.sort_values(["egg", "day", "eggs_weighed"], ascending=[True, True, False], kind="stable")
    return found[COLUMNS].reset_index(drop=True)


def _with_tray(found, season, batch) -> pd.DataFrame:
    """Which series each weighing belongs to: the egg's name, with the tray where the name alone is not enough."""
    own = season.eggs[season.eggs["batch"] == batch] if len(season.eggs) else season.eggs
    both = pd.DataFrame({"name": [*_names(own["egg"]), *found["name"]], "tray": [*_trays(own), *found["tray"]]})
    trays = both[both["tray"] != ""].groupby("name")["tray"].nunique()
    several = found["name"].isin(trays.index[trays > 1])
    whole, placed = found["name"].eq(""), found["tray"].ne("")
    label = found["name"].where(~whole, "the whole")
    named = found["name"].where(~(placed & several), "tray " + found["tray"] + ": " + label)
    found = found.assign(egg=named, whole=whole)
    at_once = found.groupby(["egg", "day"])["grams"]
    apart = at_once.transform("max") > at_once.transform("min") * (1 + TWO_EGGS)
    unsure = ~whole & ((several & ~placed) | apart)
    return found.assign(namesakes=unsure.groupby(found["egg"]).transform("any") if len(found) else unsure)


def _set_weights(season, row, parts) -> pd.DataFrame:
    blank = pd.DataFrame(columns=["name", "tray", "day", "grams", "eggs_weighed"])
    eggs = season.eggs
    if not len(eggs) or "weight_g" not in eggs:
        return blank
    own = eggs[(eggs["batch"] == row["batch"]) & eggs["weight_g"].notna()]
    found = pd.DataFrame(
        {
            "name": _names(own["egg"]).to_numpy(),
            "tray": _trays(own),
            "day": 0.0,
            "grams": own["weight_g"].to_numpy(float),
            "eggs_weighed": 1.0,
        }
    )
    if not parts:
        return found
    at_setting = parts[0][parts[0]["day"].abs() < 0.5]
    told = set(zip(at_setting["name"], at_setting["tray"], strict=True))
    again = [
        (name, tray) in told or (name, "") in told for name, tray in zip(found["name"], found["tray"], strict=True)
    ]
    return found[~np.array(again, bool)]


def _names(column) -> pd.Series:
    """Egg names as text, blank where missing (a column of nothing but blanks is read as numbers)."""
    return column.astype(object).where(column.notna(), "").astype(str)


def _trays(table) -> np.ndarray:
    """Trays as text, blank where none is written down."""
    return _names(table["tray"]).to_numpy() if "tray" in table else np.full(len(table), "", dtype=object)


def egg_lines(series: pd.DataFrame) -> pd.DataFrame:
    """A straight line through each egg's (or tray's) weighings.

    Returns
    -------
    DataFrame
        Index egg: n, name, whole, namesakes, eggs (fewest on the scale), first_day, last_day, set_g
        (weight at day 0 on the line), slope_g_day (positive = loss), taken_off_g_day (sd of the slope
        because eggs were taken off between weighings; 0 where none was). Only eggs weighed twice or more.
    """
    grouped = series.groupby("egg")
    lines = grouped.agg(
        n=("day", "size"),
        name=("name", "first"),
        whole=("whole", "first"),
        namesakes=("namesakes", "any"),
        eggs=("eggs_weighed", "min"),
        most=("eggs_weighed", "max"),
        first_day=("day", "min"),
        last_day=("day", "max"),
    )
    day, grams = series["day"], series["grams"]
    middle_day, middle_g = grouped["day"].transform("mean"), grouped["grams"].transform("mean")
    parts = pd.DataFrame(
        {"egg": series["egg"], "xx": (day - middle_day) ** 2, "xy": (day - middle_day) * (grams - middle_g)}
    )
    sums = parts.groupby("egg").sum()
    lines["slope_g_day"] = -sums["xy"] / sums["xx"].where(sums["xx"] > 0)
    lines["set_g"] = grouped["grams"].mean() + lines["slope_g_day"] * grouped["day"].mean()
    lines["taken_off_g_day"] = 0.0
    lines = lines[lines["slope_g_day"].notna()].astype({"set_g": float, "slope_g_day": float})
    for egg in lines.index[lines["most"] > lines["eggs"]]:
        lines.loc[egg, ["slope_g_day", "set_g", "taken_off_g_day"]] = _fewer_each_time(
            series[series["egg"] == egg], lines.at[egg, "slope_g_day"]
        )
    return lines.drop(columns="most")


def _fewer_each_time(series, rough):
    """Slope, weight at setting and the slope's sd for a tray whose eggs became fewer; `rough` is a first slope.

    The mean of k eggs left of n is off the mean of the n by sd x sqrt(1/k - 1/n), sd being the spread of egg
    weight in a flock. Stretches between two weighings count by the doubt of their loss a day: from eggs taken off,
    the scale, and loss that is straight within a tenth. A stretch with the same eggs counts most.

    Source: weighted least squares on the differences; sampling without replacement (Cochran 1977, section 2.6).
    """
    day, grams, eggs = (series[name].to_numpy(float) for name in ("day", "grams", "eggs_weighed"))
    step, lost = np.diff(day), -np.diff(grams)
    taken = (constant("egg_weight_cv") * grams.mean()) ** 2 * np.abs(np.diff(1 / eggs))
    scale = constant("scale_g") ** 2 * (1 / eggs[1:] ** 2 + 1 / eggs[:-1] ** 2)
    doubt = taken + scale + (STRAIGHT / 2 * abs(rough) * step) ** 2
    weight = np.sum(step**2 / doubt)
    slope = float(np.sum(step * lost / doubt) / weight)
    return slope, float(grams[0] + slope * day[0]), float(1 / np.sqrt(weight))


def left_out(lines: pd.DataFrame, fates: pd.DataFrame, *, batch, alive_until: float) -> pd.Series:
    """Why an egg's line is not used: a reason per egg, empty where it is used.

    Infertile, early dead and removed eggs lose water differently from living ones, cracked eggs lose
    far more; they are left out wherever the records tell. Fates know an egg by its name alone: of eggs
    of one name on several trays all are left out if one of them did not live.
    """
    reason = pd.Series("", index=lines.index, dtype=object)
    if len(fates) and {"egg", "fate", "by_day"} <= set(fates.columns):
        own = fates[(fates["batch"] == batch) & _names(fates["egg"]).ne("")]
        dead = own["fate"].eq("dead") & (own["by_day"] <= alive_until)
        gone = own.loc[own["fate"].isin(NOT_ALIVE) | dead, ["egg", "fate"]].drop_duplicates("egg")
        fate = dict(zip(gone["egg"].astype(str), gone["fate"], strict=True))
        for egg, name in lines["name"].items():
            twin = " or its namesake" if egg != name else ""
            reason[egg] = fate[name] + twin if name in fate else ""
    reason[lines["namesakes"].astype(bool)] = "namesakes"
    kept = lines.loc[reason == "", "slope_g_day"]
    if len(kept) >= 5:
        cracked = kept[kept > CRACKED_TIMES * kept.median()].index
        reason[cracked] = "cracked"
    return reason
