"""Did the excursions go together with something else: incubator, species, flock, storage, season?"""

from __future__ import annotations

from math import comb

import numpy as np
import pandas as pd

from hatchkit.relate.permutation import arrangements_count
from hatchkit.relate.verdict import rules

COLUMNS = ["factor", "batches", "explained", "levels", "levels_exposed", "levels_mixed", "apart", "says"]
GROUPS = {"incubator": "incubator", "species": "species", "flock": "flock", "season": "season", "keeper": "keeper"}
#: Squared correlation with the exposure below which an amount hardly goes with it, and from which it does so
#: not only in part: r of 0.32 and 0.71 (the kit's own limits).
HARDLY, MUCH = 0.1, 0.5
AMOUNTS = {"stored_days": "days of storage", "flock_age_weeks": "age of the flock", "start": "time of the season"}


def confounding(design) -> pd.DataFrame:
    """One row for each factor in the records beside which exposed and unexposed batches can be laid.

    Returns
    -------
    DataFrame
        factor, batches, explained (share of the variance of the batches' dose that the factor
        explains), levels, levels_exposed (with an exposed batch), levels_mixed (with both kinds), apart
        (False: the data cannot separate the two), says (a sentence).
    """
    batches = batch_table(design)
    rows = [_group_row(batches, design, column, word) for column, word in GROUPS.items() if column in batches]
    rows += [_amount_row(batches, column, word) for column, word in AMOUNTS.items() if column in batches]
    return pd.DataFrame([row for row in rows if row], columns=COLUMNS)


def batch_table(design) -> pd.DataFrame:
    """One row per batch with known exposure: total dose, exposed, and the factors in the table."""
    rows = design.rows.assign(code=design.batch, hit=design.exposed)[design.known]
    named = {name: "first" for name in [*GROUPS, "stored_days", "flock_age_weeks"] if name in rows}
    if "start" in rows:
        named["start"] = "min"
    return rows.groupby("code").agg(
        dose=("dose", "sum"), exposed=("hit", "any"), **{name: (name, how) for name, how in named.items()}
    )


def _group_row(batches, design, column, word):
    known = batches[batches[column].notna() & (batches[column].astype(str) != "")]
    levels = known.groupby(known[column].astype(str))["exposed"].agg(["any", "all", "size"])
    if len(levels) < 2 or not known["exposed"].any() or known["exposed"].all():
        return None
    mixed = int((levels["any"] & ~levels["all"]).sum())
    # A name that each batch has to itself is the batch, not a factor.
    shared = bool((levels.loc[levels["any"], "size"] > 1).any()) or column == "incubator"
    explained = _between_share(known["dose"].to_numpy(float), known[column].astype(str).to_numpy())
    alone = int(levels["any"].sum()) == 1
    apart = not (
        shared
        and (mixed == 0 or explained >= rules()["explained_share"] or (alone and not _can_show_inside(design, column)))
    )
    hit = ", ".join(levels.index[levels["any"]])
    if mixed == 0 and shared:
        says = (
            f"All exposed batches share {word} {hit}, and no other batch does: this compares {word}s, "
            f"and cannot say what the temperature did."
        )
    elif not apart:
        says = (
            f"Nearly all batches of {word} {hit} were exposed and the others were not: too few can be "
            f"compared within one {word}."
        )
    else:
        says = f"Exposed and unexposed batches are compared within each {word} with both: {mixed} of {len(levels)}."
        if column == "flock":
            says = f"{mixed} of {len(levels)} flocks had both exposed and unexposed batches."
    return [word, len(known), explained, len(levels), int(levels["any"].sum()), mixed, apart, says]


def _can_show_inside(design, column):
    """Whether comparisons inside the factor could reach a clear sign where those across it could."""
    if column not in ("incubator", "species"):
        return True
    chance = rules()["clear_chance"]
    kinds = design.grid(np.where(design.known, design.dose, -1.0))
    _, ids = np.unique(np.nan_to_num(kinds, nan=-2.0), axis=0, return_inverse=True)
    inside = arrangements_count(ids.ravel(), design.strata)
    place = 1 if column == "incubator" else 0
    split = [text.split("|") for text in design.strata]
    other = np.array(["|".join(part for at, part in enumerate(parts) if at != place) for parts in split])
    across = arrangements_count(ids.ravel(), other)
    return inside * chance >= 1 or across * chance < 1


def _amount_row(batches, column, word):
    known = batches[batches[column].notna()]
    hit, free = known[known["exposed"]], known[~known["exposed"]]
    if len(hit) < 2 or len(free) < 2:
        return None
    value = known[column]
    number = value.astype("int64").to_numpy(float) if column == "start" else value.to_numpy(float)
    if np.ptp(number) == 0:
        return None
    explained = float(np.corrcoef(number, known["exposed"].to_numpy(float))[0, 1] ** 2)
    split = bool(hit[column].min() > free[column].max() or hit[column].max() < free[column].min())
    rare = comb(len(known), len(hit)) >= 40
    apart = not (split and rare and column != "start")
    if split and rare:
        which = "the later" if hit[column].min() > free[column].max() else "the earlier"
        which = which if column == "start" else ("those with more" if which == "the later" else "those with fewer")
        says = (
            f"The exposed batches were exactly {which} by {word}: what changed with {word} cannot be "
            f"separated from the temperature."
        )
    else:
        shared = f"{100 * explained:.0f} % shared"
        together = f"go together ({shared if explained >= MUCH else 'in part: ' + shared})"
        says = (
            f"Exposure and {word} hardly go together: {shared}."
            if explained < HARDLY
            else f"Exposure and {word} {together}: part of a difference may be due to {word}."
        )
    return [word, len(known), explained, np.nan, np.nan, np.nan, apart, says]


def _between_share(value, level):
    total = ((value - value.mean()) ** 2).sum()
    if total == 0:
        return 0.0
    means = pd.Series(value).groupby(level).transform("mean").to_numpy()
    return float(((means - value.mean()) ** 2).sum() / total)


def not_apart(table) -> str:
    """The first factor that cannot be told from the exposure; "" if there is none."""
    bad = table.loc[~table["apart"].astype(bool), "factor"] if len(table) else []
    return next(iter(bad), "")
