"""Why was this batch poor? Candidate causes ranked by how well each explains counts, log and records."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice import cause_words, score, weighing
from hatchkit.advice.evidence import Gathered, evidence, gather
from hatchkit.advice.ordinary import Ordinary, ordinary
from hatchkit.advice.tally import STAGES, Tally, loss_shares
from hatchkit.advice.weighing import UNNAMED
from hatchkit.problems import HatchkitError


@dataclass(frozen=True)
class Causes:
    """Ranked causes of one batch with everything that led to the ranking.

    Attributes
    ----------
    batch : str
    table : DataFrame
        One row per candidate, likeliest first: rank, cause, name, variant, share, tied, prior, factor_pattern,
        factor_evidence, fits, against, unknown, check_next, firm, eggs_lost.
    sums : DataFrame
        Every factor of every cause and variant: cause, variant, part, found, profile, factor.
    evidence : DataFrame
        The batch's evidence items with value and level.
    pattern : DataFrame
        stage, eggs, assumed (of these, eggs that died between two looks and are put to the stage by the published
        course of deaths), usual (eggs of an ordinary batch of this size).
    unaccounted : float
        Eggs set that have no known end; `pattern` is without them.
    remark : str
        What the person wrote about the batch.
    losses : DataFrame
        cause, stage, eggs: eggs that the cause would account for, times its share.
    ordinary : Ordinary
    verdict : str
        confident, probable, bad luck or cannot tell.
    limits : tuple of str
        What bounds every verdict on this batch (a probe never checked, unopened eggs, ...).
    """

    batch: str
    table: pd.DataFrame
    sums: pd.DataFrame
    evidence: pd.DataFrame
    pattern: pd.DataFrame
    unaccounted: float
    remark: str
    losses: pd.DataFrame
    ordinary: Ordinary
    verdict: str
    limits: tuple

    @property
    def eggs_set(self) -> float:
        """Eggs set, those without a known end among them."""
        return float(self.pattern["eggs"].sum() + self.unaccounted)

    def words(self) -> str:
        """The verdict in a few sentences."""
        return cause_words.verdict(self)

    def arithmetic(self, cause) -> pd.DataFrame:
        """How the share of one cause comes about: each factor, their product, and prior times product."""
        rows = self.sums[self.sums["cause"] == cause]
        if rows.empty:
            raise HatchkitError(f"There is no cause {cause!r}; there are {', '.join(self.sums['cause'].unique())}.")
        return rows.drop(columns="cause").reset_index(drop=True)

    def first_named(self) -> str:
        """Key of the likeliest cause that has a name (neither bad luck nor unlisted)."""
        return str(self.table.loc[~self.table["cause"].isin(UNNAMED), "cause"].iloc[0])

    def summary(self, most=5) -> pd.DataFrame:
        """The first rows in words: cause, weight, fits because, speaks against, not known, check next."""
        return cause_words.summary(self.table.head(most))


def likely_causes(season, batch) -> Causes:
    """Candidate causes of one batch's losses, ranked by a stated Bayes factor.

    Parameters
    ----------
    season : Season
    batch : str

    Returns
    -------
    Causes

    Raises
    ------
    HatchkitError
        If there is no such batch, or nothing is known of how it ended.

    Notes
    -----
    The score is described in `hatchkit.advice.score`; ``.arithmetic(cause)`` shows it for one cause.
    """
    season.batch(batch)
    return batch_causes(gather(season, only=str(batch)), str(batch))


def season_causes(season) -> dict:
    """`likely_causes` of every batch whose end is known; the season-wide tables are made once."""
    gathered = gather(season)
    named = [str(batch) for batch in season.batches["batch"]]
    return {batch: batch_causes(gathered, batch) for batch in named if _eggs(gathered, batch) > 0}


def batch_causes(gathered: Gathered, batch: str) -> Causes:
    """`likely_causes` on tables that are already made."""
    if _eggs(gathered, batch) <= 0:
        raise HatchkitError(f"Nothing is known of how batch {batch!r} ended, so no cause can be weighed.")
    return weighed(_same_species(gathered, batch), batch, evidence(gathered, batch), gathered.season)


def weighed(tally: Tally, batch, items, season=None) -> Causes:
    """Causes of one batch from the eggs of its species' batches and its evidence items.

    Parameters
    ----------
    tally : Tally
        `tally.tally`, the batches of one species.
    items : DataFrame
        `evidence.evidence`.
    season : Season, optional
        Only for the limits of the verdict (was the probe checked, were eggs opened) and the person's remark.

    Notes
    -----
    Eggs without a known end are no chicks: for the score they are spread over the loss stages as usual.
    """
    usual = ordinary(tally.filled(), batch)
    gone, between = float(tally.unaccounted[batch]), tally.between[batch]
    spread = gone * loss_shares(usual.shares, tally.clears_counted[batch])
    sums, lost = weighing.weigh(*score.ways_to_fall(tally.sure.loc[batch].to_numpy() + spread, between), usual, items)
    seen = cause_words.Seen(tally.counts.loc[batch].to_numpy(), tuple(between), gone)
    table = _rank(sums, seen, usual, items)
    means = weighing.mean_losses(sums, lost)
    table["eggs_lost"] = [means[cause].sum() for cause in table["cause"]]
    row = {} if season is None else season.batch(batch)
    return Causes(
        batch=batch,
        table=table,
        sums=sums,
        evidence=items,
        pattern=pd.DataFrame({"stage": STAGES, "eggs": seen.counts, "assumed": seen.assumed(),
                              "usual": usual.shares * seen.eggs_set}),
        unaccounted=gone,
        remark=cause_words.remark(row),
        ordinary=usual,
        losses=weighing.losses(table, means),
        verdict=_verdict(table, seen),
        limits=() if season is None else cause_words.limits(season, row, items, usual),
    )


def _eggs(gathered, batch) -> float:
    return float(gathered.counts.loc[batch].sum()) if batch in gathered.counts.index else 0.0


def _same_species(gathered, batch) -> Tally:
    batches = gathered.season.batches
    kind = batches.loc[batches["batch"] == batch, "species"].iloc[0]
    return gathered.tally.only(batches.loc[batches["species"] == kind, "batch"].astype(str))


def _rank(sums, seen, usual, items) -> pd.DataFrame:
    causes, known = _listed(), {item["item"]: item for item in items.to_dict("records")}
    by_pattern = weighing.by_variant(sums[sums["part"] == "pattern"])
    enough = not seen.mostly_unknown(score.MOST_UNACCOUNTED)
    rows = []
    for cause, logs in weighing.by_variant(sums).items():
        best = max(logs, key=logs.get)
        rows.append(
            dict(
                cause=cause,
                name=causes[cause]["name"],
                variant=best,
                log_factor=score.combine_variants(np.array(list(logs.values()))),
                factor_pattern=float(np.exp(by_pattern[cause][best])),
                factor_evidence=float(np.exp(logs[best] - by_pattern[cause][best])),
                check_next=causes[cause]["check_next"],
                firm=enough and _may_be_firm(causes[cause]["firm_with"], known),
            )
        )
    table = pd.DataFrame(rows)
    table["prior"] = priors(table["cause"])
    table["share"] = score.posterior(table["log_factor"], table["prior"])
    table = table.sort_values("share", ascending=False, kind="stable").reset_index(drop=True)
    table["rank"] = table["share"].rank(ascending=False, method="min").astype(int)
    table["tied"] = table["share"] * score.TIE >= table["share"].iloc[0]
    parts = {}
    for line in sums.to_dict("records"):
        parts.setdefault((line["cause"], line["variant"]), []).append(line)
    told = [cause_words.for_and_against(row, parts[row["cause"], row["variant"]], seen, usual, known)
            for row in table.to_dict("records")]
    table[["fits", "against", "unknown"]] = pd.DataFrame(told, index=table.index)
    return table[
        [
            "rank",
            "cause",
            "name",
            "variant",
            "share",
            "tied",
            "prior",
            "factor_pattern",
            "factor_evidence",
            "fits",
            "against",
            "unknown",
            "check_next",
            "firm",
        ]
    ]


def _may_be_firm(firm_with, known) -> bool:
    """Whether one of the items that a firm verdict rests on is known; causes without such items need none."""
    return not isinstance(firm_with, str) or any(known[item]["level"] is not None for item in firm_with.split())


@cache
def _listed() -> dict:
    """The candidates as they stand in the reference: {cause: its row}."""
    return reference.load("causes").set_index("cause").to_dict("index")


def priors(names) -> np.ndarray:
    """Prior shares: bad luck and "not on the list" as stated in `score`, the rest by commonness."""
    weight = np.array([_listed()[name]["commonness"] for name in names], dtype=float)
    rest = 1 - score.PRIOR_BAD_LUCK - score.PRIOR_UNLISTED
    fixed = {"bad_luck": score.PRIOR_BAD_LUCK, "unlisted": score.PRIOR_UNLISTED}
    return np.array([fixed.get(name, rest * w / weight.sum()) for name, w in zip(names, weight, strict=True)])


def _verdict(table, seen) -> str:
    """The one rule: confident from `score.CONFIDENT` if `firm`, probable from one half, else bad luck or cannot tell.

    With more than `score.MOST_UNACCOUNTED` of the eggs without a known end it is not called bad luck either.
    """
    first = table.iloc[0]
    if first["cause"] == "unlisted" or first["share"] < 0.5:
        return "cannot tell"
    if first["cause"] == "bad_luck":
        return "cannot tell" if seen.mostly_unknown(score.MOST_UNACCOUNTED) else "bad luck"
    return "confident" if first["share"] >= score.CONFIDENT and first["firm"] else "probable"
