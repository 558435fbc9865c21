"""Breeds, pens, cocks, hens, machines, shelves, people, egg ages, months: which differ, by partial pooling."""

from dataclasses import dataclass, field

import numpy as np
import pandas as pd

from hatchkit.losses.proportions import pooled
from hatchkit.problems import HatchkitError, one_of
from hatchkit.usual.mixed import expit, pool
from hatchkit.yearly.outcomes import OUTCOMES, classes, counted, outcomes

COLUMNS = ["group", "batches", "count", "total", "share", "pooled", "low", "high"]
PAIRS = ["better", "worse", "difference", "low", "high", "chance", "verdict", "eggs_more"]
#: Columns of the egg rows by which eggs are told apart.
OF_EGGS = ("hen", "cock")
#: Groups that belong to one keeper each: pen 1 of one is not pen 1 of another.
OF_A_KEEPER = ("pen", "flock", "shelf", "hen", "cock", "hatcher")
#: Clearly differ: this share of the draws on one side; may differ: this one.
CLEAR, MAY = 0.99, 0.9
#: Normal quantiles of a power of 80 % at the clear limit.
_REACH = 2.326 + 0.842

#: Columns that a keeper is likely to mean.
LIKELY_GROUPS = (
    "breed",
    "pen",
    "incubator",
    "shelf",
    "season",
    "month",
    "keeper",
    "stored_days",
    "flock_age_weeks",
)


@dataclass(frozen=True)
class Groups:
    """Groups compared.

    Attributes
    ----------
    by, outcome : str
    table : DataFrame
        group, batches (rows), count, total, share (as counted), pooled (drawn towards all), low, high (95 %); best
        first.
    pairs : DataFrame
        better, worse, difference (of pooled shares) with low and high, chance (that it is the other way round), verdict
        (clear, may, no), eggs_more (eggs for each of the two that would show such a difference in 8 of 10 cases;
        missing where it is clear already or too small to matter).
    comparisons : int
        How many pairs were compared.
    confounded : DataFrame
        with (column), groups: groups that cannot be told from one of another column, since all their eggs are that
        one's.
    spread : dict
        Spread between groups, hatches and rows (sd of the log odds).
    """

    by: str
    outcome: str
    table: pd.DataFrame
    pairs: pd.DataFrame
    comparisons: int
    confounded: pd.DataFrame
    spread: dict = field(default_factory=dict)


def groups(season, by: str, *, outcome: str = "hatch", least: int = 5, seed: int = 1) -> Groups:
    """Compare groups of eggs.

    Parameters
    ----------
    season : Season
    by : str
        A column of the batches (breed, pen, incubator, shelf, stored_days, ...), "month", or "hen" or "cock" where
        eggs are marked. A column of the keeper's own, such as who turned the eggs, works too.
    outcome : str
        One of hatch, fertility, hatch_of_fertile, early, mid, late. For hens and cocks fertility, hatch and
        hatch_of_fertile.
    least : int
        Groups of fewer eggs are left out.
    seed : int

    Returns
    -------
    Groups
        ``.table``: one row per group with eggs, share (0-1), low and high of the 95 % interval; ``.confounded`` what
        goes with it.

    Raises
    ------
    HatchkitError
        For a column or outcome that there is not.

    Notes
    -----
    The hatch (one machine, one day) is a level of its own: two breeds in one hatch are not two independent batches, and
    are compared within it. Where there are several years, years are a level too.

    Source: log odds with normal spreads on a grid of stated priors (`hatchkit.usual.mixed`); what is "clearly" and
    "may" are the kit's own limits, 99 % and 90 % of the draws.
    """
    one_of("outcome", outcome, OUTCOMES)
    rows, count, total = _rows(season, by, outcome)
    kept = rows["group"].notna().to_numpy()
    rows, count, total = rows[kept], count[kept], total[kept]
    eggs = pd.Series(total).groupby(rows["group"].to_numpy()).sum()
    enough = rows["group"].isin(eggs.index[eggs >= least]).to_numpy()
    rows, count, total = rows[enough], count[enough], total[enough]
    names, code = np.unique(rows["group"].to_numpy(str), return_inverse=True) if len(rows) else ([], np.array([], int))
    if len(names) < 2:
        return Groups(by, outcome, _alone(names, code, count, total), pd.DataFrame(columns=PAIRS), 0, _no_mix(), {})
    factors = {"group": code}
    if by != "season" and rows["season"].nunique() > 1:
        factors["season"] = np.unique(rows["season"].fillna(0).to_numpy(int), return_inverse=True)[1]
    found = pool(count, total, factors, hatch=rows["hatch_key"].to_numpy(), seed=seed)
    draws = expit(found.level[:, None] + found.effects["group"])
    table, better = _table(names, code, count, total, draws), OUTCOMES[outcome][2]
    table = table.sort_values("pooled", ascending=not better, kind="stable", ignore_index=True)
    pairs = _pairs(names, code, total, draws, found.spread, better)
    return Groups(
        by, outcome, table, pairs, len(names) * (len(names) - 1) // 2, _confounded(season, rows, by), found.spread
    )


def _rows(season, by, outcome):
    """Rows to compare with their group, and count and total of each."""
    if by in OF_EGGS:
        one_of("outcome", outcome, ("hatch", "fertility", "hatch_of_fertile"))
        rows, count, total = counted(of_marked_eggs(season, by), outcome)
        return rows.reset_index(drop=True), count, total
    table = outcomes(season)
    if by not in table:
        there = [name for name in LIKELY_GROUPS if name in table]
        raise HatchkitError("no_column", dict(column=by, there=there))
    rows, count, total = counted(table, outcome)
    return rows.assign(group=_labels(rows, by)).reset_index(drop=True), count, total


def _labels(rows, by) -> pd.Series:
    """Names of the groups, with the keeper's where one name is used by several."""
    label = classes(rows[by], by)
    if by in OF_A_KEEPER and "keeper" in rows and rows["keeper"].nunique() > 1:
        label = label.where(label.isna() | rows["keeper"].isna(), label.astype(str) + ", " + rows["keeper"].astype(str))
    return label


def of_marked_eggs(season, by: str) -> pd.DataFrame:
    """Eggs with a mark, one row per batch and hen (or cock).

    Returns
    -------
    DataFrame
        batch, group, season, keeper, hatch_key, set, fertile, hatched: eggs whose fate is known.
    """
    columns = ["batch", "group", "season", "keeper", "hatch_key", "set", "fertile", "hatched"]
    eggs = season.eggs
    if not len(eggs) or by not in eggs or eggs[by].notna().sum() == 0:
        return pd.DataFrame(columns=columns).astype({name: float for name in columns[-3:]})
    marked = eggs[eggs[by].notna() & (eggs[by].astype(str).str.strip() != "")]
    marked = marked.assign(batch=marked["batch"].astype(str), egg=marked["egg"].astype(str))
    fates = season.fates[season.fates["egg"].astype(str) != ""]
    fates = fates.assign(batch=fates["batch"].astype(str), egg=fates["egg"].astype(str))[["batch", "egg", "fate"]]
    known = marked.drop(columns="fate", errors="ignore").merge(fates, on=["batch", "egg"])
    known = known[~known["fate"].isin(["unaccounted", "removed"])]
    barren = known["fate"].isin(["clear", "infertile"])
    own = outcomes(season).drop_duplicates("batch").set_index("batch")
    known = known.assign(set=1.0, fertile=(~barren).astype(float), hatched=(known["fate"] == "hatched").astype(float))
    for name in ("season", "keeper", "hatch_key"):
        known[name] = known["batch"].map(own[name])
    known = known[known["hatch_key"].notna()]
    known["group"] = _labels(known, by)
    return known.groupby(["batch", "group", "hatch_key"], as_index=False).agg(
        season=("season", "first"),
        keeper=("keeper", "first"),
        set=("set", "sum"),
        fertile=("fertile", "sum"),
        hatched=("hatched", "sum"),
    )[columns]


def _table(names, code, count, total, draws) -> pd.DataFrame:
    low, middle, high = np.quantile(draws, [0.025, 0.5, 0.975], axis=0)
    found, eggs = np.bincount(code, count), np.bincount(code, total)
    columns = [list(map(str, names)), np.bincount(code), found, eggs, found / eggs, middle, low, high]
    return pd.DataFrame(dict(zip(COLUMNS, columns, strict=True)))


def _alone(names, code, count, total) -> pd.DataFrame:
    """One group, or none: shares as counted, nothing to draw it towards."""
    rows = []
    for place, name in enumerate(names):
        share, low, high = pooled(count[code == place], total[code == place])[:3]
        rows.append([str(name), int((code == place).sum()), count.sum(), total.sum(), share, share, low, high])
    return pd.DataFrame(rows, columns=COLUMNS)


def _pairs(names, code, total, draws, spread, better) -> pd.DataFrame:
    """Every pair, the clearest first."""
    rows = []
    for one in range(len(names)):
        for other in range(one):
            gap = draws[:, one] - draws[:, other]
            up = (gap > 0).mean() if better else (gap < 0).mean()
            first, second = (one, other) if up >= 0.5 else (other, one)
            gap = draws[:, first] - draws[:, second]
            sure = max(up, 1 - up)
            verdict = "clear" if sure >= CLEAR else "may" if sure >= MAY else "no"
            low, middle, high = np.quantile(gap, [0.025, 0.5, 0.975])
            more = (
                np.nan
                if verdict == "clear"
                else eggs_to_tell(draws[:, [first, second]].mean(axis=0), spread["rows"], np.median(total), abs(middle))
            )
            rows.append([str(names[first]), str(names[second]), middle, low, high, 1 - sure, verdict, more])
    return pd.DataFrame(rows, columns=PAIRS).sort_values("chance", kind="stable", ignore_index=True)


def eggs_to_tell(shares, rows_spread, batch_eggs, difference) -> float:
    """Eggs of each of two groups that would show a difference clearly in 8 of 10 cases; missing below 3 points.

    n = 2 (z + z')^2 p (1 - p) deff / d^2, the design effect deff from batches of the usual size (Hayes & Bennett 1999,
    Int J Epidemiol 28:319, from memory).
    """
    if difference < 0.03:
        return np.nan
    share = float(np.mean(shares))
    effect = 1 + max(batch_eggs - 1, 0) * min(rows_spread**2 * share * (1 - share), 0.5)
    return float(np.ceil(2 * _REACH**2 * share * (1 - share) * effect / difference**2))


def _no_mix() -> pd.DataFrame:
    return pd.DataFrame({"with": pd.Series(dtype=object), "groups": pd.Series(dtype=object)})


def _confounded(season, rows, by) -> pd.DataFrame:
    """Groups all of whose eggs belong to one group of another column that no group shares with them."""
    others = ("hen", "cock") if by in OF_EGGS else ("breed", "pen", "incubator", "species", "flock", "shelf")
    found = []
    for other in others:
        pairs = _crossed(season, rows, by, other)
        if other == by or pairs is None or pairs["other"].nunique() < 2 or pairs["group"].equals(pairs["other"]):
            continue
        per_group = pairs.groupby("group")["other"].nunique()
        per_other = pairs.groupby("other")["group"].nunique()
        mate = pairs.drop_duplicates("group").set_index("group")["other"]
        tied = [name for name in per_group.index[per_group == 1] if per_other[mate[name]] == 1]
        if tied:
            found.append([other, tied])
    return pd.DataFrame(found, columns=["with", "groups"]) if found else _no_mix()


def _crossed(season, rows, by, other):
    """Each group with each group of another column that it met."""
    if by in OF_EGGS:
        eggs = season.eggs
        if other not in eggs or other == by:
            return None
        return eggs[[by, other]].dropna().astype(str).set_axis(["group", "other"], axis=1).drop_duplicates()
    if other not in rows:
        return None
    return pd.DataFrame({"group": rows["group"], "other": classes(rows[other], other)}).dropna().drop_duplicates()
