"""Evidence that the person's own records hold: storage, flock, tray, rotten eggs, post, height."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice.signs import plain
from hatchkit.climate.machine_air import incubator_of, settings_of
from hatchkit.losses.tray import clustering

#: Weeks of age between which hens hatch well; before and after it wears off (Grochowska et al. 2019 put the
#: best at 31-50 weeks; the wider range is taken so that only plain cases count).
FLOCK_BEST_WEEKS = (26, 60)

#: Fewer eggs than this on the tray, or fewer dead, cannot show a pattern.
TRAY_LEAST_EGGS, TRAY_LEAST_DEAD = 20, 5
TRAY_DRAWS = 1999

#: How a keeper writes that it was not so.
NO = set(reference.small_words("not_so"))

#: Few embryos say little of how many lie wrongly: the share is drawn to the published one as if so many more were seen.
LIE_DRAWN = 5.0

#: Rates of flocks are drawn to the common one as if so many eggs more had been lost at it: one egg makes no flock.
DRAWN = 3.0

#: So many good batches of other flocks must stand beside a flock that laid no other batch.
OTHERS = 2


def find(season, batch, species, placed) -> dict:
    """Values of the items of one batch that need no other batch.

    Parameters
    ----------
    season : Season
    batch : dict
        Its row of batches.
    species : Series
    placed : set
        Batches whose eggs have a place on a tray.
    """
    height = settings_of(season, incubator_of(season, batch)).get("altitude_m")
    return {
        "storage": _beyond(number(batch, "stored_days") - species["storage_best_days"]),
        "flock_age": _outside(number(batch, "flock_age_weeks")) if batch["species"] == "chicken" else float("nan"),
        "tray": _tray(season, batch["batch"]) if str(batch["batch"]) in placed else float("nan"),
        "malpositions": _malpositions(batch),
        "contaminated": number(batch, "contaminated") / batch["eggs_set"],
        "cracked": number(batch, "cracked") / batch["eggs_set"],
        "altitude": float("nan") if height is None else float(height),
        "posted": _yes(batch.get("posted")),
        "clears_opened": _opened(batch),
    }


def number(row, column) -> float:
    """A cell of a row as a number, NaN where there is none."""
    value = row.get(column)
    return float("nan") if value is None or pd.isna(value) else float(value)


def _yes(value) -> float:
    """1 for yes, 0 for no in any of the twelve languages, NaN where not kept; other words (a carrier) mean yes."""
    if value is None or pd.isna(value) or not plain(value):
        return float("nan")
    return float(plain(value) not in NO)


def _beyond(days) -> float:
    """Days stored beyond the best; days within it do little, but trials with game birds saw them: they count half."""
    return days if days > 0 else days / 2


def _outside(weeks) -> float:
    low, high = FLOCK_BEST_WEEKS
    return max(low - weeks, weeks - high, 0.0) if np.isfinite(weeks) else weeks


def _malpositions(row) -> float:
    """Share of the opened late dead that lay wrongly, drawn to the published one; not known below three of them."""
    late, wrong = number(row, "broken_late"), number(row, "malpositioned")
    usual = reference.load("evidence_items").set_index("item").at["malpositions", "published"]
    return (wrong + LIE_DRAWN * usual) / (late + LIE_DRAWN) if late >= 3 and np.isfinite(wrong) else float("nan")


def _opened(row) -> float:
    """Of the clears opened at the first candling the share that held a germ that had died."""
    barren, died = number(row, "opened1_infertile"), number(row, "opened1_dead")
    total = np.nansum([barren, died])
    return float(np.nan_to_num(died) / total) if total >= 3 else float("nan")


def _tray(season, batch) -> float:
    """How rare so gathered or edge-bound a tray is by chance, as -log10 of `losses.tray.clustering`'s chance."""
    table = clustering(season, batch, draws=TRAY_DRAWS)
    if table.empty or table["eggs"].iloc[0] < TRAY_LEAST_EGGS or table["deaths"].iloc[0] < TRAY_LEAST_DEAD:
        return float("nan")
    return float(-np.log10(table.set_index("question").at["together", "chance"]))


def flock_items(batches, counts, counted) -> pd.DataFrame:
    """Clears and early and mid deaths of each flock's other batches against the other flocks', in doublings.

    Parameters
    ----------
    batches : DataFrame
    counts : DataFrame
        Eggs per batch and stage (`tally.Tally.counts`).
    counted : Series of bool
        Whether the clears of a batch were counted: if not, it says nothing of its flock's clears.

    Returns
    -------
    DataFrame, index batch: flock_clears, flock_deaths; missing without a batch of the flock or two of others
    """
    rows = batches.assign(name=batches["batch"].astype(str)).set_index("name")
    rows = rows[rows["flock"].notna() & rows.index.isin(counts.index)] if "flock" in rows else rows.iloc[:0]
    eggs = counts.reindex(rows.index)
    out = pd.DataFrame(index=counts.index, columns=["flock_clears", "flock_deaths"], dtype=float)
    known = pd.Series(counted.reindex(rows.index).to_numpy(dtype=bool), index=rows.index)
    for item, lost, use in (
        ("flock_clears", eggs["clear"], known),
        ("flock_deaths", eggs["early"] + eggs["mid"], known | True),
    ):
        part = pd.DataFrame(
            {
                "species": rows["species"].astype(str),
                "flock": rows["flock"].astype(str),
                "lost": lost.where(use, 0.0),
                "eggs": eggs.sum(axis=1).where(use, 0.0),
                "batches": use.astype(float),
            }
        )
        kind = part.groupby("species")[["lost", "eggs", "batches"]].transform("sum")
        own = part.groupby(["species", "flock"])[["lost", "eggs", "batches"]].transform("sum")
        mates, others = own - part[["lost", "eggs", "batches"]], kind - own
        rate = (kind["lost"] + 0.5) / (kind["eggs"] + 1.0)
        ratio = np.log2(
            (mates["lost"] + DRAWN)
            / (mates["eggs"] + DRAWN / rate)
            / ((others["lost"] + DRAWN) / (others["eggs"] + DRAWN / rate))
        )
        out[item] = ratio.where((mates["batches"] > 0) & (others["batches"] >= 2)).reindex(out.index)
    return out


def other_flock(rows, good) -> dict:
    """{batch: 1 where its flock laid no other batch of its species, 0 where one that did well}; missing elsewhere.

    Parameters
    ----------
    rows : dict
        {batch: its row of batches}.
    good : Series
        How good each batch was, 0 to 1.
    """
    fine = set(good.index[good > 0.5])
    named = {name: (str(row["species"]), str(row["flock"])) for name, row in rows.items() if _kept(row.get("flock"))}
    out = {}
    for batch, key in named.items():
        mates = [name for name, other in named.items() if other == key and name != batch]
        others = [name for name, other in named.items() if other[0] == key[0] and other != key]
        if fine.intersection(mates):
            out[batch] = 0.0
        elif not mates and len(fine.intersection(others)) >= OTHERS:
            out[batch] = 1.0
    return out


def _kept(value) -> bool:
    return value is not None and not pd.isna(value) and bool(str(value).strip())
