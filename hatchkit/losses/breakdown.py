"""Where the eggs went: eggs and shares per stage, for batches, flocks, incubators or the whole season."""

import math

import numpy as np
import pandas as pd

from hatchkit.losses.ledger import ledger, usable
from hatchkit.losses.proportions import dispersion, interval, widened
from hatchkit.losses.windows import left_out
from hatchkit.problems import HatchkitError

SHARES = ("set", "fertile", "transferred")


def breakdown(season, by="batch", *, stages: str = "development", limits=None, method: str = "wilson") -> pd.DataFrame:
    """Eggs and shares per stage with 95 % intervals.

    Parameters
    ----------
    season : Season
        From ``load_season``.
    by : str or None
        Any column of batches (batch, flock, species, incubator, ...); None for the whole season.
    stages : {"development", "candling"}
        By the age at which embryos died, or by the look at which they were found dead.
    limits : None, str or dict
        Limits of early, mid and late, see `stages.limits_for`.
    method : {"wilson", "clopper_pearson", "jeffreys"}
        Interval of a single batch. Over several batches Wilson's interval is widened for the spread between
        them, see `proportions.pooled`.

    Returns
    -------
    DataFrame
        One row per group and stage: the group, stage, eggs = seen + shared_out, then for each of set,
        fertile and transferred the eggs that the share is taken from and share_of_* with _low and _high.
        fertile is set less clears and infertile eggs (candled fertility, not true fertility) of the batches whose
        clears were counted. uncounted: eggs set in batches that hold no count of the stage. By development, eggs
        and share are then the least there can be and the share has no interval, and where no batch of the group
        counted it they are missing; by candling, such batches are left out. Batches that cannot enter rates
        show in ``attrs["left_out"]``; by="batch" lists them with missing shares. ``attrs["not_counted"]``:
        stage -> {batch: eggs set} of the batches used that did not count it. excess: eggs told of beyond those set (a
        slip of counting), by which the intervals reach further down (`proportions.told_share`).

    Raises
    ------
    HatchkitError
        For a column that the batches do not have, limits that do not join, or a method that there is not.

    Notes
    -----
    Source: Wilson 1927 J. Am. Stat. Assoc. 22:209 (and Clopper & Pearson 1934, Jeffreys' prior); limits of the stages
    are rows of ``reference/stage_limits.csv``; deaths across a limit are shared by ages at death (Kuurman et al. 2001).
    """
    check_column(season, by)
    book = ledger(season, stages=stages, limits=limits)
    kept = usable(season)
    name = by or "season"
    if by == "batch":
        groups = {batch: [batch] for batch in book["batch"].unique()}
    else:
        members = season.batches[season.batches["batch"].astype(str).isin(kept)]
        labels = pd.Series("all", index=members.index) if by is None else members[by]
        labels = labels.astype("object").where(labels.notna(), "not given")
        groups = {
            label: list(part.astype(str)) for label, part in members["batch"].groupby(labels, sort=by is not None)
        }
    order = list(book["stage"].unique())
    names = list(book["batch"].unique())
    # The ledger has one block of stages a batch, so its columns fold into batches x stages.
    fold = {
        column: book[column].to_numpy(dtype=float).reshape(len(names), len(order))
        for column in ("eggs", "seen", "at_hatch", "counted", "excess", *SHARES)
    }
    place = {batch: at for at, batch in enumerate(names)}
    rows = []
    for label, batches in groups.items():
        at = [place[batch] for batch in batches]
        rated = all(batch in kept for batch in batches)
        for stage_at, stage in enumerate(order):
            part = {column: values[at, stage_at] for column, values in fold.items()}
            told = part.pop("counted") > 0
            row = {name: label, "stage": stage, "uncounted": part["set"][~told].sum()}
            if stages == "candling":
                part, told = {column: values[told] for column, values in part.items()}, told[told]
            rows.append(row | _row(part, told, stage, rated, method))
    columns = [name, "stage", "eggs", "seen", "shared_out"]
    for share in SHARES:
        columns += [share, f"share_of_{share}", f"share_of_{share}_low", f"share_of_{share}_high"]
    table = pd.DataFrame(rows, columns=[*columns, "uncounted", "batches", "excess"])
    table.attrs["left_out"] = left_out(season).to_dict("records")
    table.attrs["not_counted"] = not_counted(book[book["batch"].isin(kept)])
    table.attrs["batches"] = len(kept)
    return table


def not_counted(book) -> dict[str, dict[str, float]]:
    """stage -> {batch: eggs set} of the batches of a ledger that hold no count of it."""
    parts = book[~book["counted"]].groupby("stage", sort=False)
    return {stage: dict(zip(part["batch"], part["set"], strict=True)) for stage, part in parts}


#: Columns of batches by which people split; other columns work too.
SPLIT_BY = ("batch", "species", "flock", "incubator", "flock_age_weeks", "stored_days")


def check_column(season, by) -> None:
    """Refuse, in the user's words, what the batches cannot be split by."""
    if by is None or (isinstance(by, str) and by in season.batches.columns):
        return
    there = [name for name in SPLIT_BY if name in season.batches.columns]
    if isinstance(by, str):
        raise HatchkitError("no_column", dict(column=by, there=there))
    first = next((name for name in by if isinstance(name, str)), "flock") if np.iterable(by) else "flock"
    raise HatchkitError("one_column", dict(column=first, given=str(by), there=there))


def _row(part, told, stage, rated, method) -> dict:
    """Sums and shares of one stage over the batches of a group (arrays, one entry a batch; told: counted there)."""
    eggs, seen = (_total(part[name], told) for name in ("eggs", "seen"))
    row = {"eggs": eggs, "seen": seen, "shared_out": eggs - seen}
    for share in SHARES:
        there = ~np.isnan(part[share])
        found, out_of = part["at_hatch" if share == "transferred" else "eggs"][there], part[share][there]
        row[share] = out_of.sum() if len(out_of) else math.nan
        # Clears and infertile eggs are no part of the fertile.
        barren = stage == "clear" or (stage == "infertile" and share == "fertile")
        over = part["excess"][there]
        known = rated and not math.isnan(_total(found, told[there])) and not (barren and share != "set")
        shares = _share(found, out_of, over.sum(), method) if known else (math.nan,) * 3
        if not told[there].all():
            shares = (shares[0], math.nan, math.nan)
        row.update(zip((f"share_of_{share}{end}" for end in ("", "_low", "_high")), shares, strict=True))
    return row | {"batches": len(told), "excess": part["excess"].sum()}


def _total(eggs, told) -> float:
    """Eggs of a stage over batches; missing where none of them counted it and none is on record."""
    return eggs.sum() if told.any() or (len(eggs) and eggs.sum() > 0) else math.nan


def _share(found, total, excess, method) -> tuple[float, float, float]:
    """Share and interval; with eggs in `excess` of those set the interval reaches down to the share of all told of."""
    k, n = found.sum(), total.sum()
    if not n > 0:
        return (math.nan,) * 3
    k = min(k, n)
    if len(total) == 1:
        low, high = interval(k, n, method)
        return k / n, interval(k, n + excess, method)[0] if excess else low, high
    spread = dispersion(np.minimum(found, total), total)
    low, high = widened(k, n, spread, len(total))
    return k / n, widened(k, n + excess, spread, len(total))[0] if excess else low, high
