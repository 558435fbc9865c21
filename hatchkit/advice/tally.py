"""How many eggs of each batch were lost at each stage, and how much of that is not known.

A death between two looks may belong to either of two stages, and some eggs have no known end. Neither is settled
here: `Tally` keeps what is sure apart from what is only bounded.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import NamedTuple

import numpy as np
import pandas as pd

from hatchkit.advice.habits import believed_fates
from hatchkit.advice.published import STAGES, loss_shares, published_shares


class Between(NamedTuple):
    """Deaths known to lie between two days that belong to more than one stage.

    `columns` are places in `STAGES`; `within` is, per column, the part of that stage's deaths that the published
    course of deaths (Kuurman et al. 2001) puts between these days, `mass` the part of all deaths.
    """

    columns: tuple
    within: tuple
    mass: tuple
    eggs: float
    after_day: float
    by_day: float


@dataclass(frozen=True)
class Tally:
    """Eggs per batch and stage of the finished batches of a season.

    Attributes
    ----------
    counts : DataFrame
        Rows: batches; columns: `STAGES`. Deaths between stages are shared by the published course of deaths.
    sure : DataFrame
        The same without these deaths.
    between : dict
        {batch: list of `Between`}.
    unaccounted : Series
        Eggs without a known end, per batch.
    clears_counted : Series
        Whether the clears were counted (`losses.counted`).
    """

    counts: pd.DataFrame
    sure: pd.DataFrame
    between: dict
    unaccounted: pd.Series
    clears_counted: pd.Series

    def only(self, batches) -> Tally:
        """The same for some batches, in the order of the table."""
        wanted = set(batches)
        names = [name for name in self.counts.index if name in wanted]
        return Tally(
            self.counts.loc[names],
            self.sure.loc[names],
            self.between,
            self.unaccounted.loc[names],
            self.clears_counted.loc[names],
        )

    def filled(self, shares=None) -> pd.DataFrame:
        """`counts` with the eggs without a known end spread over the loss stages as `shares` fall.

        They are no chicks: left out they would make a batch look better than it was. `shares` are the published
        ledger's where left out. Where clears were counted, none of them is taken for a clear.
        """
        shares = published_shares() if shares is None else shares
        gone = self.unaccounted.to_numpy()[:, None]
        return (
            self.counts + gone * np.stack([loss_shares(shares, known) for known in self.clears_counted])
            if len(self.counts)
            else self.counts
        )


def tally(season) -> Tally:
    """`Tally` of the finished batches of a season.

    A death whose interval crosses a stage limit is shared by the published two-phase shape (Kuurman et al.
    2001), not by this season's own ages at death: those already hold the trouble that is looked for. Noughts at looks
    at which nothing is ever found are not believed (`habits.believed_fates`).
    """
    from hatchkit.losses.counted import counted
    from hatchkit.losses.windows import left_out

    skip = set(left_out(season)["batch"].astype(str))
    lengths = season.species_table["incubation_days"]
    kinds = season.batches.set_index(season.batches["batch"].astype(str))["species"]
    counts, sure, between, gone, told = {}, {}, {}, {}, {}
    known = counted(season)
    for name, part in believed_fates(season).groupby("batch", sort=False):
        batch = str(name)
        if batch in skip or kinds.get(batch) not in lengths.index:
            continue
        rows = part.to_dict("records")
        sure[batch], between[batch] = _batch_tally(rows, kinds[batch], float(lengths[kinds[batch]]))
        counts[batch] = shared(sure[batch], between[batch])
        gone[batch] = sum(row["eggs"] for row in rows if row["fate"] == "unaccounted")
        told[batch] = "clear" in known[batch].kinds
    return Tally(_table(counts), _table(sure), between, pd.Series(gone, dtype=float), pd.Series(told, dtype=bool))


def _table(rows) -> pd.DataFrame:
    return pd.DataFrame.from_dict(rows, orient="index", columns=list(STAGES)).astype(float)


def _batch_tally(fates, species, days) -> tuple[np.ndarray, list[Between]]:
    from hatchkit.losses.stages import limits_for

    limits, found, open_rows = limits_for(species, days), dict.fromkeys(STAGES, 0.0), {}
    for row in fates:
        if row["fate"] == "dead":
            inside = _within(float(row["after_day"]), float(row["by_day"]), tuple(limits), days)
            if len(inside) == 1:
                found[inside[0][0]] += row["eggs"]
            else:
                key = (inside, float(row["after_day"]), float(row["by_day"]))
                open_rows[key] = open_rows.get(key, 0.0) + row["eggs"]
        elif row["fate"] in ("clear", "infertile"):
            found["clear"] += row["eggs"]
        elif row["fate"] in found:
            found[row["fate"]] += row["eggs"]
    between = [
        Between(
            tuple(STAGES.index(stage) for stage, _, _ in inside),
            tuple(part for _, part, _ in inside),
            tuple(mass for _, _, mass in inside),
            eggs,
            after,
            by,
        )
        for (inside, after, by), eggs in open_rows.items()
    ]
    return np.array(list(found.values())), between


@cache
def _within(after_day, by_day, limits, days) -> tuple:
    """Stages that (after_day, by_day] reaches into, as in `Between`: ((stage, within, mass), ...)."""
    from hatchkit.losses.stages import share_between
    from hatchkit.losses.two_phase_shape import cumulative

    def deaths_by(day):
        return float(cumulative(min(day, 100.0), days))

    masses = share_between(after_day, by_day, limits, deaths_by)
    parts = []
    for (stage, after, to), mass in zip(limits, masses, strict=True):
        low, high = max(after, after_day), min(to, by_day)
        if mass > 0:
            whole = deaths_by(to) - deaths_by(after)
            inside = deaths_by(high) - deaths_by(low)
            parts.append((stage, min(inside / whole, 1.0) if min(inside, whole) > 1e-12 else 1.0, float(mass)))
    return tuple(parts)


def shared(sure, between) -> np.ndarray:
    """Stage counts with the deaths between stages shared by the published course of deaths."""
    counts = np.array(sure, dtype=float)
    for group in between:
        counts[list(group.columns)] += group.eggs * np.array(group.mass) / sum(group.mass)
    return counts
