"""Where the eggs went: eggs and shares per stage, for batches, flocks, incubators or the whole season."""

from __future__ import annotations

import math

import numpy as np
import pandas as pd

from hatchkit.losses.ledger import ledger, usable
from hatchkit.losses.proportions import dispersion, interval, widened
from hatchkit.losses.windows import left_out
from hatchkit.problems import HatchkitError

SHARES = ("set", "fertile", "transferred")


def breakdown(
    season, by="batch", *, stages: str = "development", limits=None, method: str = "wilson"
) -> pd.DataFrame:
    """Eggs and shares per stage with 95 % intervals.

    Parameters
    ----------
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
        fertile is set less clears and infertile eggs: candled fertility, not true fertility. Batches that
        cannot enter rates show in ``attrs["left_out"]``; by="batch" lists them with missing shares.
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
        for column in ("eggs", "seen", "at_hatch", *SHARES)
    }
    place = {batch: at for at, batch in enumerate(names)}
    rows = []
    for label, batches in groups.items():
        at = [place[batch] for batch in batches]
        rated = all(batch in kept for batch in batches)
        for stage_at, stage in enumerate(order):
            part = {column: values[at, stage_at] for column, values in fold.items()}
            rows.append({name: label, "stage": stage, **_row(part, stage, rated, method)})
    columns = [name, "stage", "eggs", "seen", "shared_out"]
    for share in SHARES:
        columns += [share, f"share_of_{share}", f"share_of_{share}_low", f"share_of_{share}_high"]
    table = pd.DataFrame(rows, columns=[*columns, "batches"])
    out = left_out(season)
    table.attrs["left_out"] = [f"{batch}: {why}" for batch, why in out.to_numpy()]
    return table


#: Columns of batches by which people split; other columns work too.
SPLIT_BY = ("batch", "species", "flock", "incubator", "flock_age_weeks", "stored_days")


def check_column(season, by) -> None:
    """Refuse, in the user's words, what the batches cannot be split by."""
    if by is None or (isinstance(by, str) and by in season.batches.columns):
        return
    there = ", ".join(name for name in SPLIT_BY if name in season.batches.columns)
    if isinstance(by, str):
        raise HatchkitError(f"The batches have no column {by!r} to split by; there are, for example, {there}.")
    first = next((name for name in by if isinstance(name, str)), "flock") if np.iterable(by) else "flock"
    raise HatchkitError(
        f"Batches are split by one column at a time: by={first!r}, not by={by!r}. For two at once, add a column to "
        f"the batches that holds both. There are, for example, {there}."
    )


def _row(part, stage, rated, method) -> dict:
    """Sums and shares of one stage over the batches of a group (arrays, one entry a batch)."""
    known = ~np.isnan(part["eggs"])
    part = {column: values[known] for column, values in part.items()}
    eggs, seen = (part[name].sum() if known.any() else math.nan for name in ("eggs", "seen"))
    row = {"eggs": eggs, "seen": seen, "shared_out": eggs - seen, "batches": int(known.sum())}
    for share in SHARES:
        moved = ~np.isnan(part[share])
        found, out_of = part["at_hatch" if share == "transferred" else "eggs"][moved], part[share][moved]
        row[share] = out_of.sum() if len(out_of) else math.nan
        # Clears and infertile eggs are no part of the fertile.
        barren = stage == "clear" or (stage == "infertile" and share == "fertile")
        shares = (
            _share(found, out_of, method)
            if rated and len(found) and not (barren and share != "set")
            else (math.nan,) * 3
        )
        row.update(zip((f"share_of_{share}{end}" for end in ("", "_low", "_high")), shares, strict=True))
    return row


def _share(found, total, method) -> tuple[float, float, float]:
    k, n = found.sum(), total.sum()
    if not n > 0:
        return (math.nan,) * 3
    k = min(k, n)
    if len(total) == 1:
        return (k / n, *interval(k, n, method))
    return (k / n, *widened(k, n, dispersion(found, total), len(total)))
