"""Counts as findings tell them: whole eggs that still add up, and the facts that every page opens with."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.findings.finding import Said
from hatchkit.losses.breakdown import SHARES
from hatchkit.losses.proportions import told_share

#: A share of the years' tables with its interval, shown as one column.
COUNTED_SHARE = ("share_counted", "share_low", "share_high")
POOLED_SHARE = ("share_pooled", "share_low", "share_high")
#: Columns of the years' tables that are shares, and the names by which a reader is shown them as such.
_SHARES_SHOWN = {
    "share": "share_counted",
    "low": "share_low",
    "high": "share_high",
    "pooled": "share_pooled",
    "before": "share_before",
    "expected": "share_expected",
    "after": "share_after",
    "expected_low": "share_expected_low",
    "expected_high": "share_expected_high",
}


def shares_shown(table: pd.DataFrame) -> pd.DataFrame:
    """A table of the years with its columns of shares (0 to 1) named so that they are shown as such."""
    return table.rename(columns=_SHARES_SHOWN)


def whole_eggs(eggs) -> np.ndarray:
    """Eggs shared out between stages as whole eggs with the same sum (largest remainders are rounded up).

    Parameters
    ----------
    eggs : array of float
        Missing stays missing.

    Returns
    -------
    ndarray of float
    """
    eggs = np.asarray(eggs, dtype=float)
    out = np.floor(eggs + 1e-9)
    known = np.flatnonzero(~np.isnan(eggs))
    short = int(round(np.nansum(eggs) - np.nansum(out)))
    for place in known[np.argsort(-(eggs - out)[known], kind="stable")][: max(short, 0)]:
        out[place] += 1
    return out


def with_ranges(rows: pd.DataFrame) -> pd.DataFrame:
    """Rows of a breakdown whose shares are (least, most) where more eggs than were set are on record."""
    if not (rows["excess"] > 0).any():
        return rows
    told = {}
    for share in SHARES:
        name = f"share_of_{share}"
        eggs = rows["eggs"] if share == "set" else rows[name] * rows[share]
        told[name] = [
            told_share(*one) if one[-1] > 0 and known == known else known
            for known, *one in zip(rows[name], eggs, rows[share], rows["excess"], strict=True)
        ]
    return rows.assign(**{name: pd.Series(cells, rows.index, dtype=object) for name, cells in told.items()})


def standing_shares(row: dict) -> dict:
    """The two shares of a row of `standing` as they are told (`proportions.told_share`)."""
    shares = {"share_of_set": row["share_of_set"], "share_hatched": row["share_hatched"]}
    if row["excess"] > 0:
        for name, out_of in (("share_of_set", "set"), ("share_hatched", "developing")):
            if shares[name] == shares[name]:
                shares[name] = told_share(row["hatched"], row[out_of], row["excess"])
    return shares


def losses(breakdown: pd.DataFrame) -> pd.DataFrame:
    """The losses of a breakdown of one group, most first, in whole eggs; clears and opened infertile eggs are one.

    Returns
    -------
    DataFrame
        stage, eggs, share_of_set.
    """
    rows = breakdown.assign(
        eggs=whole_eggs(breakdown["eggs"]), stage=breakdown["stage"].replace({"infertile": "clear"})
    )
    rows = rows[(rows["stage"] != "hatched") & rows["eggs"].notna()]
    rows = rows.groupby("stage", sort=False, as_index=False).agg({"eggs": "sum", "set": "first"})
    rows["share_of_set"] = rows["eggs"] / rows["set"]
    return rows[rows["eggs"] > 0].sort_values("eggs", ascending=False, kind="stable").reset_index(drop=True)


def eggs_of(rows: pd.DataFrame) -> list:
    """Eggs by stage as things to be said: "18 late dead"."""
    return [Said(f"eggs_{stage}", dict(eggs=eggs)) for stage, eggs in zip(rows["stage"], rows["eggs"], strict=True)]


def season_facts(season) -> dict:
    """What every page says of its season: name, folder, days of setting, kinds of birds, zone."""
    days = season.batches["set_at"].dropna()
    first, last = days.dt.tz_convert(season.timezone).agg(["min", "max"]) if len(days) else (None, None)
    kinds = sorted(season.batches["species"].dropna().astype(str).unique())
    return dict(
        name=season.title,
        folder=season.folder,
        first=first,
        last=last,
        days=1 if first is None else 1 + (last.date() - first.date()).days,
        batches=len(season.batches),
        birds=[Said("species_of", dict(key=kind)) for kind in kinds],
        timezone=season.timezone,
    )
