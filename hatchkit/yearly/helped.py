"""Did a change help? What was to be expected without it, from all years and from what was not changed."""

import numpy as np
import pandas as pd

from hatchkit.usual.mixed import expit, pool
from hatchkit.yearly.outcomes import OUTCOMES, counted, outcomes

COLUMNS = [
    "date",
    "what",
    "where",
    "outcome",
    "before",
    "before_total",
    "expected",
    "expected_low",
    "expected_high",
    "after",
    "after_total",
    "chance",
    "by_itself",
    "gain",
    "verdict",
    "beside",
    "about",
]
#: What is asked of a change: fertility where it was about hens, the hatch of the fertile where it was about machines.
ASKED = ("fertility", "hatch_of_fertile", "late")
#: Columns in which the place of a change may stand.
PLACES = ("incubator", "pen", "flock", "breed", "shelf", "hatcher", "keeper", "place")
#: What a change of such a place is about, fixed before any egg is counted.
ABOUT = {
    "pen": "fertility",
    "flock": "fertility",
    "breed": "fertility",
    "incubator": "hatch_of_fertile",
    "hatcher": "hatch_of_fertile",
    "shelf": "hatch_of_fertile",
}
#: Helped: at most this chance of as much without the change; a hint: at most the second.
HELPED, HINT = 0.025, 0.1


def helped(season, *, draws: int = 4000, seed: int = 1) -> pd.DataFrame:
    """Each change and what followed, beside what was to be expected without it.

    Parameters
    ----------
    season : Season
        With ``changes``.

    Returns
    -------
    DataFrame
        date, what, where; outcome; before and after (shares of the batches concerned in the year before the change and
        in the years since, up to the next change of the same place) with their eggs; expected, expected_low,
        expected_high (share since then without the change, 95 % of a predictive draw); chance (of as good a share
        without the change); by_itself (how far the share
        was expected to move by itself, towards the usual); gain (after less expected); verdict: helped, hint, not_seen,
        worse, too_few, no_before, no_after; beside (other changes between the two that a quarter or more of these
        batches met too: the two cannot be told apart); about (the outcome that a change of such a place is asked
        for, "" where the place does not tell).

    Notes
    -----
    A change is mostly made after a poor year, and a poor year is usually followed by a better one (regression to the
    mean). So the year before is not the measure. A model of all earlier batches and of the later ones that the change
    did not concern (effects of year, of the place and of single batches, drawn towards all: `usual.mixed`) says what
    the place would have had; the year after gets a year's own luck besides.
    """
    table = outcomes(season)
    rows = []
    changes = season.changes.to_dict("records")
    for change in changes:
        mine = _concerned(table, change)
        for outcome in ASKED:
            rows.append(
                [
                    change["date"],
                    change["what"],
                    change["where"],
                    outcome,
                    *_one(table, mine, change["date"], _until(changes, change), outcome, draws, seed),
                    _beside(table, mine, change, changes),
                    _about(table, change),
                ]
            )
    return pd.DataFrame(rows, columns=COLUMNS)


def _until(changes, change):
    """The day of the next change of the same place; None if there is none."""
    later = [
        other["date"]
        for other in changes
        if other["where"] == change["where"] and other["keeper"] == change["keeper"] and other["date"] > change["date"]
    ]
    return min(later, default=None)


def _beside(table, mine, change, changes) -> list[str]:
    """Other changes since the year before that a good part of the same batches met."""
    set_at = table["set_at"]
    last = set_at[mine & (set_at < change["date"]).to_numpy()].max()
    after = mine & (set_at >= change["date"]).to_numpy()
    found = []
    for other in changes:
        if other is change or not after.any() or pd.isna(last) or other["date"] <= last:
            continue
        met = after & _concerned(table, other) & (set_at >= other["date"]).to_numpy()
        if met.sum() >= 0.25 * after.sum():
            found.append(str(other["what"]))
    return found


def _concerned(table, change) -> np.ndarray:
    """Batches that a change was about: those of its machine, pen or breed, and of its keeper; all if it names none."""
    mine = np.ones(len(table), bool)
    if change.get("keeper"):
        mine &= (table["keeper"].astype(object) == change["keeper"]).to_numpy()
    if _where(change):
        mine &= np.any([_named(table, name, change) for name in PLACES if name in table], axis=0)
    return mine


def _where(change) -> str:
    return str(change["where"] or "").strip().lower()


def _named(table, column, change) -> np.ndarray:
    """Batches whose place of this column is the change's; a machine of a club bears its keeper's name besides."""
    names = table[column].astype(object).map(lambda cell: str(cell).strip().lower()).to_numpy(str)
    keeper = table["keeper"].astype(object).map(lambda cell: str(cell).strip().lower()).to_numpy(str)
    where = _where(change)
    return (names == where) | (names == np.char.add(f"{where}, ", keeper))


def _about(table, change) -> str:
    """What a change of such a place is asked for; "" where it was for all eggs, or the place does not tell."""
    return next(
        (
            about
            for column, about in ABOUT.items()
            if _where(change) and column in table and _named(table, column, change).any()
        ),
        "",
    )


def _one(table, mine, date, until, outcome, draws, seed) -> list:
    """Figures from `before` on for one change and outcome."""
    rows, count, total = counted(table, outcome)
    mine = mine[table.index.get_indexer(rows.index)]
    later = (rows["set_at"] >= date).to_numpy()
    year = rows["season"].to_numpy(float)
    known = np.isfinite(year)
    before_year = year[mine & ~later & known].max() if (mine & ~later & known).any() else np.nan
    before = mine & ~later & (year == before_year)
    after = mine & later & known & (True if until is None else (rows["set_at"] < until).to_numpy())
    sums = [_share(count, total, before), total[before].sum()]
    later_sums = [_share(count, total, after), total[after].sum()]
    nothing = [np.nan] * 3
    if not before.any() or not after.any():
        return [*sums, *nothing, *later_sums, np.nan, np.nan, np.nan, "no_before" if not before.any() else "no_after"]
    expected = _expected(rows, count, total, mine, after, ~(mine & later), draws, seed)
    seen, (low, middle, high) = later_sums[0], np.quantile(expected, [0.025, 0.5, 0.975])
    better = OUTCOMES[outcome][2]
    tie = 0.5 * (np.abs(expected - seen) < 1e-9).mean()
    chance = float(((expected > seen + 1e-9) if better else (expected < seen - 1e-9)).mean() + tie)
    gain = (seen - middle) * (1 if better else -1)
    return [
        *sums,
        middle,
        low,
        high,
        *later_sums,
        chance,
        middle - sums[0],
        gain,
        _verdict(chance, total[after].sum()),
    ]


def _share(count, total, own) -> float:
    return float(count[own].sum() / total[own].sum()) if own.any() and total[own].sum() > 0 else np.nan


def _verdict(chance, eggs) -> str:
    if eggs < 20:
        return "too_few"
    if chance <= HELPED:
        return "helped"
    return "hint" if chance <= HINT else "worse" if chance >= 1 - HELPED else "not_seen"


def _expected(rows, count, total, mine, after, teach, draws, seed) -> np.ndarray:
    """Draws of the share since the change, had nothing been changed."""
    place, years = _places(rows, mine), rows["season"].to_numpy(float)
    names, codes = np.unique(years[teach], return_inverse=True)
    places, own = np.unique(place, return_inverse=True)
    cells = np.unique(np.char.add(place.astype(str), years.astype(str))[teach], return_inverse=True)[1]
    found = pool(
        count[teach], total[teach], {"place": own[teach], "season": codes, "cell": cells}, draws=draws, seed=seed
    )
    rng = np.random.default_rng(seed + 1)
    base = found.level + found.effects["place"][:, int(np.flatnonzero(places == "changed")[0])]
    year_sd, cell_sd = _spread(found.effects["season"]), _spread(found.effects["cell"])
    sums = np.zeros(draws)
    for year in np.unique(years[after]):
        # A year that the unchanged batches tell of has its effect; else a year's luck is drawn anew.
        known = np.flatnonzero(names == year)
        effect = found.effects["season"][:, known[0]] if len(known) else rng.standard_normal(draws) * year_sd
        share = expit(base + effect + rng.standard_normal(draws) * cell_sd)
        size = 1 / np.clip(max(found.spread["rows"], 0.05) ** 2 * share * (1 - share), 1e-6, 0.5) - 1
        for eggs in np.round(total[after & (years == year)]).astype(int):
            sums += rng.binomial(eggs, rng.beta(np.maximum(share * size, 1e-6), np.maximum((1 - share) * size, 1e-6)))
    return sums / np.round(total[after]).sum()


def _spread(effects) -> np.ndarray:
    """Spread (sd) of the effects of each draw, as a new one would have it."""
    return np.sqrt((effects**2).mean(axis=1))


def _places(rows, mine) -> np.ndarray:
    """Where each batch lay: the place that was changed is one, the others by machine and pen."""
    other = rows["incubator"].fillna("").astype(str) + "|" + rows["pen"].fillna("").astype(str)
    return np.where(mine, "changed", other.to_numpy(str))
