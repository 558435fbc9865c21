"""Did the excursions go together with something else: incubator, species, flock, storage, season?"""

from math import comb

import numpy as np
import pandas as pd

from hatchkit.relate.permutation import arrangements_count
from hatchkit.relate.verdict import rules

COLUMNS = ["factor", "batches", "explained", "levels", "levels_exposed", "levels_mixed", "apart", "how", "hit"]
GROUPS = ("incubator", "species", "flock", "season", "keeper")
#: Squared correlation with the exposure below which an amount hardly goes with it, and from which it does so
#: not only in part: r of 0.32 and 0.71 (the kit's own limits).
HARDLY, MUCH = 0.1, 0.5
#: `start` is the time of the season.
AMOUNTS = ("stored_days", "flock_age_weeks", "start")


def confounding(design) -> pd.DataFrame:
    """One row for each factor in the records beside which exposed and unexposed batches can be laid.

    Returns
    -------
    DataFrame
        factor, batches, explained (share of the variance of the batches' dose that the factor
        explains), levels, levels_exposed (with an exposed batch), levels_mixed (with both kinds), apart
        (False: the data cannot separate the two), how (one_sided, nearly, within: a group's; exact, hardly, in_part,
        together: an amount's), hit (the group's levels with an exposed batch, or "more" or "fewer": on which side the
        exposed batches lie).
    """
    batches = batch_table(design)
    rows = [_group_row(batches, design, column) for column in GROUPS if column in batches]
    rows += [_amount_row(batches, column) for column in AMOUNTS if column in batches]
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


def _group_row(batches, design, column):
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
    hit = levels.index[levels["any"]].tolist()
    how = "one_sided" if mixed == 0 and shared else "within" if apart else "nearly"
    return [column, len(known), explained, len(levels), int(levels["any"].sum()), mixed, apart, how, hit]


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


def _amount_row(batches, column):
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
    how = (
        "exact"
        if split and rare
        else "hardly"
        if explained < HARDLY
        else "together"
        if explained >= MUCH
        else "in_part"
    )
    side = "more" if hit[column].min() > free[column].max() else "fewer"
    return [column, len(known), explained, np.nan, np.nan, np.nan, apart, how, [side]]


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
