"""Each year beside the others: hatch, fertility and losses, and whether they differ by more than luck."""

import numpy as np
import pandas as pd

from hatchkit.losses.proportions import pooled, widened
from hatchkit.relate.relation import holm
from hatchkit.yearly.outcomes import OUTCOMES, classes, counted, outcomes

YEAR_COLUMNS = ["season", "outcome", "batches", "count", "total", "share", "low", "high"]
CHANGE_COLUMNS = [
    "outcome",
    "years",
    "lowest",
    "lowest_share",
    "highest",
    "highest_share",
    "chance",
    "chance_adjusted",
    "more_than_luck",
]
SAME_COLUMNS = ["by", "group", "season", "outcome", "batches", "count", "total", "share", "low", "high"]
#: A difference between years is called more than luck at this share of chance, adjusted for the outcomes looked at.
LUCK = 0.05


def by_year(season) -> pd.DataFrame:
    """Each year's shares with intervals that allow for the batches.

    Returns
    -------
    DataFrame
        season, outcome (`OUTCOMES`), batches, count, total, share, low, high. The spread between batches is taken from
        all years together, since one year alone shows little of it.
    """
    table = outcomes(season)
    rows = []
    for outcome in OUTCOMES:
        own, count, total = counted(table[table["season"].notna()], outcome)
        if len(own):
            year = own["season"].to_numpy(int)
            phi, freedom = dispersion_within(count, total, year)
            rows += [
                _row(year == label, count, total, phi, freedom, [int(label), outcome]) for label in np.unique(year)
            ]
    return pd.DataFrame(rows, columns=YEAR_COLUMNS)


def _row(mine, count, total, phi, freedom, keys) -> list:
    k, n = count[mine].sum(), total[mine].sum()
    if freedom < 1:
        share, low, high = pooled(count[mine], total[mine])[:3]
    else:
        share, (low, high) = k / n, widened(k, n, phi, freedom + 1)
    return [*keys, int(mine.sum()), k, n, share, low, high]


def dispersion_within(count, total, group) -> tuple[float, int]:
    """Pearson dispersion of batches about their group's share (at least 1), and its degrees of freedom."""
    squares, freedom = 0.0, 0
    for label in np.unique(group):
        own = group == label
        share = count[own].sum() / total[own].sum()
        if own.sum() > 1 and 0 < share < 1:
            squares += ((count[own] - total[own] * share) ** 2 / (total[own] * share * (1 - share))).sum()
            freedom += int(own.sum()) - 1
    return max(1.0, squares / freedom) if freedom else 1.0, freedom


def what_changed(season, *, draws: int = 4999, seed: int = 1) -> pd.DataFrame:
    """Whether the years differ by more than luck, one row per outcome.

    Batches are dealt to the years at random, machine by machine and pen by pen where these were there in several years,
    so that a year with more eggs of a poor pen is not called poor for that. Only batches are dealt, never eggs.

    Returns
    -------
    DataFrame
        outcome, years, lowest and highest (year) with their shares, chance, chance_adjusted (Holm over the outcomes),
        more_than_luck.
    """
    key = ("years differ", draws, seed)
    return season.once(key, lambda: _what_changed(outcomes(season), draws, seed)).copy(deep=False)


def _what_changed(table, draws, seed) -> pd.DataFrame:
    rows = []
    for outcome in OUTCOMES:
        own, count, total = counted(table[table["season"].notna()], outcome)
        year = own["season"].to_numpy(int)
        years = np.unique(year)
        if len(years) < 2:
            continue
        shares = {int(label): count[year == label].sum() / total[year == label].sum() for label in years}
        low, high = min(shares, key=shares.get), max(shares, key=shares.get)
        chance = years_by_luck(count, total, year, _strata(own), draws=draws, seed=seed)
        rows.append([outcome, len(years), low, shares[low], high, shares[high], chance])
    found = pd.DataFrame(rows, columns=CHANGE_COLUMNS[:7])
    found["chance_adjusted"] = holm(found["chance"].to_numpy(float))
    found["more_than_luck"] = found["chance_adjusted"] <= LUCK
    return found[CHANGE_COLUMNS]


def _strata(rows) -> np.ndarray:
    """Keeper, species, machine and pen of each batch."""
    names = ["keeper", "species", "incubator", "pen"]
    return rows[names].astype(object).where(rows[names].notna(), "").astype(str).agg("|".join, axis=1).to_numpy()


def years_by_luck(count, total, year, strata, *, draws=4999, seed=1) -> float:
    """Share of dealings of the batches to years that put the years as far apart; missing where none is possible.

    Statistic: squares of the years' sums of residuals about the stratum's share, over their variance.
    """
    sums = pd.DataFrame({"count": count, "total": total}).groupby(strata).transform("sum")
    share = (sums["count"] / sums["total"]).to_numpy()
    residual, variance = count - total * share, total * share * (1 - share)
    where = [np.flatnonzero(strata == label) for label in np.unique(strata)]
    where = [places for places in where if len(np.unique(year[places])) > 1]
    if not where or variance.sum() == 0:
        return float("nan")
    _, code = np.unique(year, return_inverse=True)
    rng = np.random.default_rng(seed)
    dealt = np.tile(code, (draws + 1, 1))
    for places in where:
        order = np.argsort(rng.random((draws, len(places))), axis=1)
        dealt[1:, places] = code[places][order]
    score = np.zeros(draws + 1)
    for label in range(code.max() + 1):
        mine = dealt == label
        score += (mine @ residual) ** 2 / np.maximum(mine @ variance, 1e-12)
    return float((score >= score[0] * (1 - 1e-12)).mean())


def same(season, by: str) -> pd.DataFrame:
    """The same machine, pen or month in each year: groups that were there in two years or more.

    Parameters
    ----------
    by : str
        A column of the batches, or "month".

    Returns
    -------
    DataFrame
        by, group, season, outcome, batches, count, total, share, low, high.
    """
    table = outcomes(season)
    table = table[table["season"].notna()].assign(group=classes(table[by], by)) if by in table else table.iloc[:0]
    rows = []
    for outcome in OUTCOMES if len(table) else ():
        own, count, total = counted(table[table["group"].notna()], outcome)
        year, group = own["season"].to_numpy(int), own["group"].to_numpy(str)
        cells = np.char.add(np.char.add(group, "|"), year.astype(str))
        phi, freedom = dispersion_within(count, total, cells)
        for label in np.unique(group):
            years = np.unique(year[group == label])
            if len(years) > 1:
                rows += [
                    _row((group == label) & (year == one), count, total, phi, freedom, [by, label, int(one), outcome])
                    for one in years
                ]
    return pd.DataFrame(rows, columns=SAME_COLUMNS)
