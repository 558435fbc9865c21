"""Weighings put in order: one series per egg or tray, tray taken off, days since setting, like with like."""

from __future__ import annotations

import numpy as np
import pandas as pd

#: An egg that loses more than this many times the middle of its batch is taken for cracked.
CRACKED_TIMES = 2.0
#: Fates of eggs that do not lose water as living eggs do.
NOT_ALIVE = ("infertile", "clear", "removed")
#: Weight per egg, next to the species' usual egg, above which a tray was probably left on the scale.
HEAVY_TIMES = 1.6

COLUMNS = ["egg", "day", "grams", "eggs_weighed"]


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
        egg (blank: whole tray), day (since setting), grams (per egg), eggs_weighed; by egg and day.
        The weight at setting of the egg sheet counts as a weighing on day 0.
    """
    table = season.weights
    own = table[table["batch"] == row["batch"]] if len(table) else table
    parts = []
    if len(own):
        count = pd.to_numeric(own["eggs_weighed"], errors="coerce").astype(float)
        count = count.where(count > 0, 1.0)
        parts.append(pd.DataFrame({
            "egg": _names(own["egg"]).to_numpy(),
            "day": ((own["weighed_at"] - row["set_at"]) / pd.Timedelta(days=1)).to_numpy(float),
            "grams": (own["grams"].astype(float) / count).to_numpy(), "eggs_weighed": count.to_numpy()}))
    parts.append(_set_weights(season, row, parts))
    found = pd.concat([part for part in parts if len(part)] or [pd.DataFrame(columns=COLUMNS)], ignore_index=True)
    found = found.astype({"day": float, "grams": float, "eggs_weighed": float})
    until = _transfer_day(row, figures) + 0.5
    found = found[found["grams"].gt(0) & found["day"].between(-0.5, until)]
    return found.sort_values(["egg", "day"], kind="stable", ignore_index=True)


def _set_weights(season, row, parts) -> pd.DataFrame:
    eggs = season.eggs
    if not len(eggs) or "weight_g" not in eggs:
        return pd.DataFrame(columns=COLUMNS)
    own = eggs[(eggs["batch"] == row["batch"]) & eggs["weight_g"].notna()]
    names = _names(own["egg"])
    if parts:
        weighed = parts[0]
        names_on_day_0 = set(weighed.loc[weighed["day"].abs() < 0.5, "egg"])
        own, names = own[~names.isin(names_on_day_0)], names[~names.isin(names_on_day_0)]
    return pd.DataFrame({"egg": names.to_numpy(), "day": 0.0, "grams": own["weight_g"].to_numpy(float),
                         "eggs_weighed": 1.0})


def _names(column) -> pd.Series:
    """Egg names as text, blank where missing (a column of nothing but blanks is read as numbers)."""
    return column.astype(object).where(column.notna(), "").astype(str)


def _transfer_day(row, figures) -> float:
    if pd.notna(row.get("transfer_at", pd.NaT)):
        return (row["transfer_at"] - row["set_at"]) / pd.Timedelta(days=1)
    return float(figures["transfer_day"])


def egg_lines(series: pd.DataFrame) -> pd.DataFrame:
    """A straight line through each egg's (or tray's) weighings.

    Returns
    -------
    DataFrame
        Index egg: n, first_day, last_day, set_g (weight at day 0 on the line), slope_g_day (positive
        = loss), residual_sd_g (missing for two weighings). Only eggs weighed twice or more.
    """
    if series.empty:
        names = ["n", "first_day", "last_day", "set_g", "slope_g_day", "residual_sd_g"]
        return pd.DataFrame(columns=names, index=pd.Index([], name="egg"), dtype=float)
    grouped = series.groupby("egg", sort=True)
    day, grams = series["day"], series["grams"]
    middle_day, middle_g = grouped["day"].transform("mean"), grouped["grams"].transform("mean")
    parts = pd.DataFrame({"egg": series["egg"], "xx": (day - middle_day) ** 2,
                          "xy": (day - middle_day) * (grams - middle_g)})
    sums = parts.groupby("egg", sort=True).sum()
    lines = pd.DataFrame({"n": grouped.size(), "first_day": grouped["day"].min(), "last_day": grouped["day"].max()})
    spread = sums["xx"].where(sums["xx"] > 0)
    lines["slope_g_day"] = -sums["xy"] / spread
    lines["set_g"] = grouped["grams"].mean() + lines["slope_g_day"] * grouped["day"].mean()
    fitted = lines["set_g"].reindex(series["egg"]).to_numpy() - (
        lines["slope_g_day"].reindex(series["egg"]).to_numpy() * day.to_numpy())
    squares = pd.Series((grams.to_numpy() - fitted) ** 2).groupby(series["egg"].to_numpy()).sum()
    free = (lines["n"] - 2).where(lines["n"] > 2)
    lines["residual_sd_g"] = np.sqrt(squares.reindex(lines.index) / free)
    return lines[lines["slope_g_day"].notna()]


def left_out(lines: pd.DataFrame, fates: pd.DataFrame, *, batch, alive_until: float) -> pd.Series:
    """Why an egg's line is not used: a reason per egg, empty where it is used.

    Infertile, early dead and removed eggs lose water differently from living ones, cracked eggs lose
    far more; they are left out wherever the records tell.
    """
    reason = pd.Series("", index=lines.index, dtype=object)
    if len(fates) and {"egg", "fate", "by_day"} <= set(fates.columns):
        own = fates[(fates["batch"] == batch) & _names(fates["egg"]).ne("")]
        dead = own["fate"].eq("dead") & (own["by_day"] <= alive_until)
        gone = own.loc[own["fate"].isin(NOT_ALIVE) | dead, ["egg", "fate"]].drop_duplicates("egg")
        told = gone.set_index(gone["egg"].astype(str))["fate"]
        reason.update(told[told.index.isin(reason.index)].astype(object))
    kept = lines.loc[reason == "", "slope_g_day"]
    if len(kept) >= 5:
        cracked = kept[kept > CRACKED_TIMES * kept.median()].index
        reason[cracked] = "loses over twice the middle of the batch: cracked?"
    return reason
