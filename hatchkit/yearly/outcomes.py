"""One row per batch: what is compared between years and groups, counted alike everywhere."""

import numpy as np
import pandas as pd

from hatchkit.losses.ledger import ledger, usable

#: Outcome -> (numerator, denominator, whether more is better). Dead embryos are shares of the fertile.
OUTCOMES = {
    "hatch": ("hatched", "set", True),
    "fertility": ("fertile", "set", True),
    "hatch_of_fertile": ("hatched", "fertile", True),
    "early": ("early", "fertile", False),
    "mid": ("mid", "fertile", False),
    "late": ("late", "fertile", False),
}
#: Egg age and flock age are compared in classes (common practice, no source).
CLASSES = {
    "stored_days": (("0-3", 3.5), ("4-7", 7.5), ("8-10", 10.5), ("11 and more", np.inf)),
    "flock_age_weeks": (("to 35", 35.5), ("36-50", 50.5), ("51 and more", np.inf)),
}
_KEPT = [
    "batch",
    "name",
    "keeper",
    "place",
    "season",
    "species",
    "breed",
    "pen",
    "flock",
    "incubator",
    "hatcher",
    "shelf",
    "set_at",
    "stored_days",
    "flock_age_weeks",
]


def outcomes(season) -> pd.DataFrame:
    """Counts of each batch that can enter rates.

    Parameters
    ----------
    season : Season

    Returns
    -------
    DataFrame
        The batch's own columns; month (1-12, of the keeper's calendar); hatch_key (what shares one machine and day of
        setting); set, fertile, hatched, early, mid, late (eggs; late holds those that pipped and died; missing where
        not counted).
    """
    return season.once(("outcomes",), lambda: _outcomes(season))


def _outcomes(season) -> pd.DataFrame:
    book = ledger(season)
    book = book[book["batch"].astype(str).isin(usable(season))]
    own = [
        name
        for name in season.batches
        if name not in _KEPT
        and name not in book.columns
        and season.batches[name].map(lambda cell: cell is None or isinstance(cell, str) or cell != cell).all()
    ]
    table = season.batches.reindex(columns=[*_KEPT, *[n for n in own if n not in ("notes", "signs", "file", "sheet")]])
    table = table.assign(batch=table["batch"].astype(str))
    local = table["set_at"].dt.tz_convert(season.timezone)
    table["month"] = local.dt.month.astype("Int64")
    keeper = table["keeper"].fillna("").astype(str)
    table["hatch_key"] = keeper + "|" + table["incubator"].fillna("").astype(str) + "|" + local.dt.strftime("%Y-%m-%d")
    if book.empty:
        return table.iloc[:0].assign(
            **{name: np.array([], float) for name in ("set", "fertile", "hatched", "early", "mid", "late")}
        )
    wide = book.pivot_table(index="batch", columns="stage", values="eggs", aggfunc="sum", sort=False)
    told = book.pivot_table(index="batch", columns="stage", values="counted", aggfunc="all", sort=False)
    first = book.groupby("batch")[["set", "fertile"]].first()
    counts = pd.DataFrame({"set": first["set"], "fertile": first["fertile"], "hatched": wide["hatched"]})
    for stage in ("early", "mid", "late"):
        counts[stage] = wide[stage].where(told[stage].astype(bool)) if stage in wide else np.nan
    if "pipped_dead" in wide:
        counts["late"] = counts["late"] + wide["pipped_dead"].fillna(0)
    return table[table["batch"].isin(counts.index)].join(counts, on="batch").reset_index(drop=True)


def counted(table, outcome: str) -> tuple[pd.DataFrame, np.ndarray, np.ndarray]:
    """Rows in which an outcome was counted, with the count and what it is out of.

    Returns
    -------
    rows : DataFrame
    count, total : array of float
    """
    above, below, _ = OUTCOMES[outcome]
    count, total = table[above].to_numpy(float), table[below].to_numpy(float)
    known = np.isfinite(count) & (total > 0)
    return table[known], np.minimum(count[known], total[known]), total[known]


def classes(values, name: str) -> pd.Series:
    """Days of storage and weeks of age as classes; other columns as text. Missing stays missing."""
    if name in CLASSES:
        number = pd.to_numeric(values, errors="coerce")
        words = np.full(len(number), None, dtype=object)
        for word, limit in reversed(CLASSES[name]):
            words[(number <= limit).to_numpy()] = word
        return pd.Series(words, index=values.index, dtype=object)
    text = values.astype(object).where(values.notna(), None)
    return text.map(lambda cell: None if cell is None or str(cell).strip() == "" else str(cell).strip())
