"""Losses through the season: batches in the order of setting, with limits that allow for the usual spread."""

import math

import numpy as np
import pandas as pd

from hatchkit.losses.bad_luck import OF_SET, comparable
from hatchkit.losses.ledger import ledger, usable
from hatchkit.losses.predictive import chances
from hatchkit.losses.schedule import species_by_batch
from hatchkit.problems import HatchkitError

#: Tails beyond the limits: 3 standard deviations of a normal distribution on either side.
TAIL = 0.00135

#: With fewer batches than this, limits are provisional.
PROVISIONAL = 20

#: Fewer batches than this cannot show a slide.
FEWEST = 4


def usual_spread(counts, totals) -> float:
    """Spread from batch to batch in units of chance, by the median moving range of z scores.

    The moving range sees the spread between neighbours only, so that a slow slide does not widen the limits; the
    median keeps one bad batch from hiding itself. 0.954 is the median range of two standard normal values
    (0.6745 x 1.4142).

    Source: Laney 2002 Quality Engineering 14:531-537, with the median for the mean.
    """
    k, n = np.asarray(counts, dtype=float), np.asarray(totals, dtype=float)
    centre = k.sum() / n.sum()
    if len(n) < 2 or not 0 < centre < 1:
        return math.nan
    z = (k / n - centre) / np.sqrt(centre * (1 - centre) / n)
    return float(np.median(np.abs(np.diff(z))) / 0.954)


def season_chart(
    season, stage: str = "late", *, species: str | None = None, limits=None, draws: int = 4999, seed: int = 1
) -> pd.DataFrame:
    """Losses of one stage per batch in set order, with centre, limits and a test for a slow slide.

    Parameters
    ----------
    stage : str
        Any stage of the breakdown (clear: clear or infertile).
    species : str, optional
        The species to chart; the one with most batches that counted the stage when left out.

    Returns
    -------
    DataFrame
        batch, set_at, eggs, out_of, share, centre, low, high (limits, quantiles of the beta-binomial with the
        usual spread floored at chance), outside; attrs: stage, species, of, spread, provisional, slide (rank
        correlation of the losses with the order of setting, -1 to 1), slide_chance (of a slide at least as
        strong in either direction when the order of the batches means nothing), others (species -> batches that
        are not in this chart), not_counted (batches of the species without a count of the stage), timezone (in
        which the person reads set_at).
    """
    records = season.batches.assign(
        batch=season.batches["batch"].astype(str), species=list(species_by_batch(season.batches).values())
    )
    records = records[records["batch"].isin(usable(season))]
    if records.empty:
        raise HatchkitError("no_hatch_to_chart", {})
    book = ledger(season, limits=limits)
    book = book.assign(stage=book["stage"].replace({"infertile": "clear"}))
    if stage not in set(book["stage"]):
        raise HatchkitError("no_such_stage", dict(stage=stage, known=book["stage"].unique().tolist()))
    of = "set" if stage in OF_SET else "fertile"
    book = book[comparable(book) & (book["stage"] == stage)].groupby("batch")
    book = book.agg(eggs=("eggs", "sum"), out_of=(of, "first"))
    told = records["batch"].isin(book.index)
    kinds = records["species"].value_counts()
    if not told.any():
        raise HatchkitError("stage_not_counted", dict(stage=stage))
    species = species or records.loc[told, "species"].mode().iloc[0]
    left = records.loc[~told & (records["species"] == species), "batch"].tolist()
    records = records[told & (records["species"] == species)].sort_values("set_at", kind="stable")
    table = records[["batch", "set_at"]].join(book, on="batch")
    table = table[table["out_of"] > 0].reset_index(drop=True)
    table["eggs"] = np.minimum(table["eggs"], table["out_of"])
    if table.empty:
        raise HatchkitError("no_eggs_to_chart", dict(species=species))
    spread = usual_spread(table["eggs"], table["out_of"])
    low, high, centre = _quantile_limits(table["eggs"].to_numpy(), table["out_of"].to_numpy(), spread)
    table = table.assign(share=table["eggs"] / table["out_of"], centre=centre, low=low, high=high)
    table["outside"] = (table["share"] > table["high"] + 1e-9) | (table["share"] < table["low"] - 1e-9)
    slide, chance = slide_test(table["eggs"], table["out_of"], draws=draws, seed=seed)
    table.attrs.update(
        stage=stage,
        species=species,
        of=of,
        spread=spread,
        provisional=len(table) < PROVISIONAL,
        others=kinds.drop(species).sort_index().to_dict(),
        not_counted=left,
        slide=slide,
        slide_chance=chance,
        timezone=season.timezone,
    )
    return table


def _quantile_limits(eggs, out_of, spread):
    """Limits as shares: beta-binomial quantiles whose variance is that of a p' chart."""
    centre = eggs.sum() / out_of.sum()
    if not 0 < centre < 1:
        return np.full(len(eggs), np.nan), np.full(len(eggs), np.nan), centre
    phi = 1.0 if math.isnan(spread) else max(1.0, spread) ** 2
    sizes, place = np.unique(np.maximum(out_of.astype(int), 1), return_inverse=True)
    ends = np.array([_limits_of(int(size), centre, phi) for size in sizes])
    return ends[place, 0], ends[place, 1], centre


def _limits_of(size: int, centre: float, phi: float) -> tuple[float, float]:
    """Limits of a batch of `size` eggs, as shares."""
    # Below 1e-7 the beta-binomial is the binomial.
    rho = float(np.clip((phi - 1) / max(size - 1, 1), 1e-7, 0.95))
    a, b = centre * (1 - rho) / rho, (1 - centre) * (1 - rho) / rho
    running = np.cumsum(chances(size, np.array([a]), np.array([b]))[:, 0])
    low, high = np.searchsorted(running, (TAIL, 1 - TAIL))
    return low / size, min(int(high), size) / size


def slide_test(counts, totals, *, draws: int = 4999, seed: int = 1) -> tuple[float, float]:
    """Rank correlation of the losses with the order of the batches, and how rare it is by chance.

    Batches are put into every order at random; losses are standardised for the size of the batch first.
    """
    k, n = np.asarray(counts, dtype=float), np.asarray(totals, dtype=float)
    centre = k.sum() / n.sum()
    if len(n) < FEWEST or not 0 < centre < 1:
        return math.nan, math.nan
    ranks = pd.Series((k - n * centre) / np.sqrt(n * centre * (1 - centre))).rank().to_numpy()
    ranks, order = ranks - ranks.mean(), np.arange(len(n)) - (len(n) - 1) / 2
    size = math.sqrt(np.sum(ranks**2) * np.sum(order**2))
    if size == 0:
        return math.nan, math.nan
    seen = float(np.sum(ranks * order)) / size
    drawn = np.random.default_rng(seed).permuted(np.tile(ranks, (draws, 1)), axis=1) @ order / size
    return seen, float((1 + np.sum(np.abs(drawn) >= abs(seen) - 1e-12)) / (1 + draws))
