"""Is it more than bad luck? Each batch and stage against the person's other batches and a published level."""

import numpy as np
import pandas as pd

from hatchkit.losses.ledger import ledger, usable
from hatchkit.losses.norms import level_for, norms
from hatchkit.losses.predictive import count_for, distribution, log_likelihoods, missing, summary, weights
from hatchkit.losses.schedule import species_by_batch

#: A comparison is called unusual when its chance, allowed for all comparisons made, is at most this.
UNUSUAL = 0.10

#: ... and it must lie outside the range that is told beside it, 95 % with one half of the rest on each side.
OUTSIDE = 0.025

#: What each stage is a share of; deaths and culls are of the (apparently) fertile.
OF_SET = ("hatched", "clear", "removed")


def bad_luck(season) -> pd.DataFrame:
    """Each batch and stage: how many were lost, how many to expect, and how rare that is.

    Returns
    -------
    DataFrame
        One row per batch and stage (stage clear: clear or infertile). eggs lost (for hatched: chicks) out_of eggs;
        others: batches of the same species that counted the stage, which the expectation is from; expected, low,
        high: the range that holds 95 % of batches like them; chance: of a count at least as bad; adjusted: the
        chance allowed for looking at many batches and stages (Benjamini-Hochberg); unusual; unusual_from: the least
        count (chicks: the largest) that would be called unusual among these comparisons. The norm_* columns are the
        same against a published level (the keeper's own, else the first in ``reference/norms.csv`` that fits) with the
        spread between the person's batches. Missing where there is nothing to expect.
        Batches that hold no count of a stage, or of the eggs that it is a share of, are not compared in it:
        ``attrs["not_counted"]``, stage -> batches.

    Notes
    -----
    A count that is rare is unusual, no more: it names no cause.
    Source: predictive distribution of the beta-binomial averaged over mean and spread; Benjamini & Hochberg 1995
    J. R. Stat. Soc. B 57:289-300.
    """
    book = ledger(season)
    book = book[book["batch"].isin(usable(season))]
    known = comparable(book)
    left = {stage: list(part) for stage, part in book[~known].groupby("stage", sort=False)["batch"]}
    book = _combined(book[known])
    species = species_by_batch(season.batches)
    levels = norms(own=season.settings.get("norms"))
    rows, expected = [], []
    for kind, part in book.groupby(book["batch"].map(species), sort=False):
        limits_name = "weeks" if kind == "chicken" else "thirds"
        for stage, table in part.groupby("stage", sort=False):
            found = _stage_rows(table.to_dict("records"), stage, level_for(levels, kind, stage, limits_name))
            rows += [row for row, _ in found]
            expected += [chance for _, chance in found]
    table = pd.DataFrame(rows, columns=COLUMNS)
    for before in ("", "norm_"):
        table[before + "adjusted"] = adjusted(table[before + "chance"].to_numpy(dtype=float))
        table[before + "unusual"] = (table[before + "adjusted"] <= UNUSUAL) & (table[before + "chance"] <= OUTSIDE)
    table["unusual_from"] = _unusual_from(table, expected)
    order = {batch: place for place, batch in enumerate(season.batches["batch"].astype(str))}
    table = table.sort_values("batch", key=lambda names: names.map(order), kind="stable").reset_index(drop=True)
    table.attrs["not_counted"] = left
    return table


COLUMNS = [
    "batch",
    "stage",
    "eggs",
    "out_of",
    "others",
    "expected",
    "low",
    "high",
    "chance",
    "norm",
    "norm_name",
    "norm_share",
    "norm_of",
    "norm_expected",
    "norm_low",
    "norm_high",
    "norm_chance",
    "norm_source",
]


def _unusual_from(table, expected) -> list[float]:
    """The count from which each batch and stage would be called unusual, all other comparisons as they are."""
    made, flagged = table["chance"].notna().sum(), table["unusual"].sum()
    out = []
    for chance, found, stage in zip(expected, table["unusual"], table["stage"], strict=True):
        rare = min(OUTSIDE, UNUSUAL * (flagged if found else flagged + 1) / max(made, 1))
        out.append(np.nan if chance is None else count_for(chance, rare, fewer=stage == "hatched"))
    return out


def adjusted(chance) -> np.ndarray:
    """Chances allowed for the number of comparisons (Benjamini-Hochberg); missing stays missing."""
    chance = np.asarray(chance, dtype=float)
    out = np.full(len(chance), np.nan)
    known = np.isfinite(chance)
    order = np.argsort(chance)[: known.sum()][::-1]  # missing chances come last
    raised = chance[order] * known.sum() / np.arange(known.sum(), 0, -1)
    out[order] = np.minimum(np.minimum.accumulate(raised), 1.0)
    return out


def comparable(book: pd.DataFrame) -> pd.Series:
    """Rows of a ledger that hold a count of the stage and of the eggs that it is a share of."""
    return book["counted"] & (book["fertile"].notna() | book["stage"].isin(OF_SET))


def _combined(book: pd.DataFrame) -> pd.DataFrame:
    """Clears and infertile eggs as one stage, since not everybody opens the clears."""
    book = book[book["stage"] != "unaccounted"].copy()
    book["stage"] = book["stage"].replace({"infertile": "clear"})
    sums = {"eggs": "sum", "at_hatch": "sum", "set": "first", "fertile": "first", "transferred": "first"}
    return book.groupby(["batch", "stage"], sort=False, as_index=False).agg(sums)


def _stage_rows(records, stage, level) -> list[tuple[dict, np.ndarray | None]]:
    """Rows of one species and stage, each batch against all the others, and the chances of its counts."""
    column = "set" if stage in OF_SET else "fertile"
    records = [row for row in records if row[column] > 0]
    counts, totals = (np.array([row[name] for row in records], dtype=float) for name in ("eggs", column))
    # A slip of counting may tell of more eggs than were set.
    counts = np.minimum(counts, totals)
    # A stage at which nobody lost an egg cannot be unusual, and would only dilute the others.
    if not counts.sum():
        return []
    likelihood = log_likelihoods(counts, totals)
    whole = likelihood.sum(axis=0)
    fewer, rows = stage == "hatched", []
    for place, (record, count, total) in enumerate(zip(records, counts, totals, strict=True)):
        weight = weights(whole - likelihood[place])
        chance = distribution(int(total), weight) if len(records) > 1 else None
        own = missing() if chance is None else summary(chance, count, fewer=fewer)
        row = {"batch": record["batch"], "stage": stage, "eggs": count, "out_of": total, "others": len(records) - 1}
        rows.append(({**row, **own, **_against_level(level, record, count, weight, fewer)}, chance))
    return rows


def _against_level(level, row, count, weight, fewer) -> dict:
    names = {"norm": "", "norm_name": "", "norm_share": np.nan, "norm_of": "", "norm_source": ""}
    if level is None or not row[level["denominator"]] > 0:
        return {**names, **{f"norm_{name}": value for name, value in missing().items()}}
    found = row["at_hatch"] if level["denominator"] == "transferred" else count
    chance = distribution(int(row[level["denominator"]]), weight, share=level["share"])
    names = {
        "norm": level["norm"],
        "norm_name": level["name"],
        "norm_share": level["share"],
        "norm_of": level["denominator"],
        "norm_source": level["source"],
    }
    return {**names, **{f"norm_{name}": value for name, value in summary(chance, found, fewer=fewer).items()}}
