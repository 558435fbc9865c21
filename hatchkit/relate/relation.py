"""Did the excursions cost embryos? A season's losses related to its temperatures, in tables and words."""

from dataclasses import dataclass

import numpy as np
import pandas as pd

from hatchkit.losses.windows import candling_windows
from hatchkit.relate.design import design as make_design
from hatchkit.relate.excess import unexposed_hazard
from hatchkit.relate.exposure import doses_by_part
from hatchkit.relate.hazard import CountsRelation, relate_counts
from hatchkit.relate.late import later_losses, next_windows, ratios_by_window
from hatchkit.relate.measures import known_dose
from hatchkit.relate.turns import batches_overlap, log_rates, turned_doses

FACTORS = ["species", "incubator", "season", "keeper", "flock", "stored_days", "flock_age_weeks"]


@dataclass(frozen=True, kw_only=True)
class Relation(CountsRelation):
    """The answer for one season: what its counts say of the primary question, and what is looked at beside it.

    Attributes
    ----------
    verdict, because, effect, test, excess, detectable, confounding, ...
        As in `hazard.CountsRelation`: a window's dose and the losses of that same window.
    exposure : DataFrame
        Windows with doses and, in `dose`, the primary dose's score (missing where not known).
    windows : DataFrame
        The same question window by window (columns: `relate_windows` in ``reference/columns_relate.csv``).
    later : DataFrame
        A window's dose and the losses of that and all later windows, since deaths may come late.
    next_window : DataFrame
        The window right after each exposed one beside what unexposed batches lose there (`late.next_windows`).
    batches : DataFrame
        Each batch: dose, losses in its exposed (or all) windows, and what such batches lose unexposed.
    """

    exposure: pd.DataFrame
    windows: pd.DataFrame
    later: pd.DataFrame
    next_window: pd.DataFrame
    batches: pd.DataFrame


def relate_losses(season, *, seed=1, draws=10_000) -> Relation:
    """Relate the season's losses to its temperature excursions.

    Parameters
    ----------
    season : Season
    seed : int
    draws : int
        Arrangements to sample where they are too many to count out.

    Returns
    -------
    Relation
        ``.verdict`` and its code; ``.batches``, ``.windows`` and ``.exposure`` as tables (shares 0-1, doses as asked
        for); hazard ratio with its 95 % interval.

    Notes
    -----
    Source: permutation within strata after Fisher 1935; quasi-binomial with weights of Williams 1982 Appl. Stat.
    31:144; limits of the verdict are rows of ``reference/verdict_rules.csv``. False alarms and power:
    ``tests/benchmarks/results/relate.md``.
    """
    windows = candling_windows(season)
    overlap = batches_overlap(with_factors(windows, season.batches)) if season.parts else True
    doses, tracks = doses_by_part(season, windows, keep_tracks=overlap)
    exposed = with_factors(doses, season.batches)
    return relate_exposure(exposed, tracks=tracks, seed=seed, draws=draws)


def with_factors(exposure, batches) -> pd.DataFrame:
    """The exposure table with the factors that the records hold for each batch, and its days."""
    factors = batches.assign(batch=batches["batch"].astype(str)).drop_duplicates("batch").set_index("batch")
    factors = factors.reindex(columns=FACTORS)
    table = exposure.join(factors, on="batch")
    return table.assign(days=table["day_end"] - table["day_start"])


def relate_exposure(exposure, *, tracks=None, seed=1, draws=10_000) -> Relation:
    """`relate_losses` from an exposure table with factors; tracks serve to turn the log of shared machines."""
    table = exposure.assign(dose=known_dose(exposure), window=exposure["name"])
    counts = relate_counts(table, turned=_turned(exposure, tracks), seed=seed, draws=draws)
    design = make_design(table)
    return Relation(
        **vars(counts),
        exposure=exposure.assign(dose=table["dose"]),
        windows=ratios_by_window(design, seed),
        later=later_losses(table, seed),
        next_window=next_windows(design, seed=seed),
        batches=_by_batch(design, seed),
    )


def _turned(exposure, tracks):
    """Doses under turns of the log where batches overlap in one machine, else None."""
    if not tracks or not batches_overlap(exposure):
        return None
    # Each year's log is turned by itself: between two seasons nothing was logged.
    exposure = exposure.assign(incubator=_log_of(exposure))
    machine = exposure.drop_duplicates("batch").set_index("batch")["incubator"]
    rates = {}
    for incubator in machine.dropna().unique():
        own = [tracks[batch] for batch in machine.index[machine == incubator] if tracks.get(batch) is not None]
        if own:
            rates[incubator] = log_rates(own)
    return turned_doses(exposure, rates) if rates else None


def _log_of(exposure):
    """The log that a batch has: its machine's, of its season where there are several."""
    machine = exposure["incubator"].astype(object)
    if "season" not in exposure or exposure["season"].nunique() < 2:
        return machine
    named = machine.astype(str) + "|" + exposure["season"].astype(object).astype(str)
    return named.where(machine.notna() & (machine.astype(str) != ""), machine)


def holm(shares):
    """Shares of chance adjusted for their number (Holm 1979, Scand J Stat 6:65, from memory); missing stays missing.

    By hand, since the library's call collects all garbage of the session first, a quarter of a second.
    """
    order = np.argsort(shares, kind="stable")[: np.isfinite(shares).sum()]  # missing shares come last
    out = np.full(len(shares), np.nan)
    out[order] = np.minimum(np.maximum.accumulate(shares[order] * np.arange(len(order), 0, -1)), 1.0)
    return out


BATCH_COLUMNS = [
    "batch",
    "exposed",
    "dose",
    "at_risk",
    "died",
    "share_died",
    "share_expected",
    "share_expected_low",
    "share_expected_high",
]


def _by_batch(design, seed) -> pd.DataFrame:
    """Deaths of each batch over its counted windows beside what unexposed batches would lose."""
    if not len(design.rows) or not (design.known & ~design.exposed).any():
        return pd.DataFrame(columns=BATCH_COLUMNS)
    log_hazard, _ = unexposed_hazard(design, seed=seed)
    rows = []
    for code, batch in enumerate(design.batches):
        own = np.flatnonzero(design.batch == code)
        eggs, died = design.at_risk[own].max(), design.died[own].sum()
        share = -np.expm1(-np.exp(log_hazard[:, own]).sum(axis=1))
        rng = np.random.default_rng(seed)
        low, middle, high = np.percentile(rng.binomial(int(eggs), share), [2.5, 50, 97.5]) / eggs
        known = np.isfinite(design.dose[own])
        rows.append(
            [
                batch,
                bool(design.exposed[own].any()),
                design.dose[own][known].sum() if known.any() else np.nan,
                eggs,
                died,
                died / eggs,
                middle,
                low,
                high,
            ]
        )
    return pd.DataFrame(rows, columns=BATCH_COLUMNS)
