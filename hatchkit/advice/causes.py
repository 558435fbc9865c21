"""Why was this batch poor? Candidate causes ranked by how well each explains counts, log and records."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice import cause_words, score
from hatchkit.advice.cause_words import cause_patterns
from hatchkit.advice.evidence import Gathered, evidence, evidence_links, factor_of, gather
from hatchkit.advice.ordinary import STAGES, Ordinary, ordinary
from hatchkit.problems import HatchkitError

UNNAMED = ("bad_luck", "unlisted")


@dataclass(frozen=True)
class Causes:
    """Ranked causes of one batch with everything that led to the ranking.

    Attributes
    ----------
    batch : str
    table : DataFrame
        One row per candidate, likeliest first: rank, cause, name, share, tied, factor_pattern,
        factor_evidence, eggs_lost, fits, against, unknown, check_next.
    sums : DataFrame
        Every factor of every cause and variant: cause, variant, part, found, profile, factor.
    evidence : DataFrame
        The batch's evidence items with value and level.
    pattern : DataFrame
        stage, eggs, usual (eggs of an ordinary batch of this size).
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
    losses: pd.DataFrame
    ordinary: Ordinary
    verdict: str
    limits: tuple

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


def weighed(counts_table, batch, items, season=None) -> Causes:
    """Causes of one batch from the stage counts of its species' batches and its evidence items.

    Parameters
    ----------
    counts_table : DataFrame
        `ordinary.stage_counts`.
    items : DataFrame
        `evidence.evidence`.
    season : Season, optional
        Only for the limits of the verdict (was the probe checked, were eggs opened).
    """
    usual = ordinary(counts_table, batch)
    counts = counts_table.loc[batch].to_numpy()
    sums, lost = _weigh(counts, usual, items)
    table = _rank(sums, counts, usual, items)
    means = _mean_losses(sums, lost)
    table["eggs_lost"] = [means[cause].sum() for cause in table["cause"]]
    pattern = pd.DataFrame({"stage": STAGES, "eggs": counts, "usual": usual.shares * counts.sum()})
    return Causes(
        batch=batch,
        table=table,
        sums=sums,
        evidence=items,
        pattern=pattern,
        ordinary=usual,
        losses=_losses(table, means),
        verdict=_verdict(table),
        limits=() if season is None else cause_words.limits(season, batch, items, usual),
    )


def _eggs(gathered, batch) -> float:
    return float(gathered.counts.loc[batch].sum()) if batch in gathered.counts.index else 0.0


def _same_species(gathered, batch) -> pd.DataFrame:
    batches = gathered.season.batches
    kind = batches.loc[batches["batch"] == batch, "species"].iloc[0]
    same = batches.loc[batches["species"] == kind, "batch"].astype(str)
    return gathered.counts.loc[[name for name in gathered.counts.index if name in set(same)]]


def _weigh(counts, usual: Ordinary, items) -> tuple[pd.DataFrame, dict]:
    """Factor of each cause, variant and part, and the eggs that each cause would account for."""
    factors, links = factor_of(), evidence_links()
    kinds, levels = dict(zip(items["item"], items["kind"], strict=True)), dict(
        zip(items["item"], items["level"], strict=True))
    rows, lost = [], {}
    for pattern in cause_patterns().values():
        doublings = np.array([0.0] + [pattern[stage] for stage in STAGES[1:]])
        log_pattern = score.pattern_log_factor(counts, usual.shares, usual.spread, doublings)
        common = dict(cause=pattern["cause"], variant=pattern["variant"])
        rows.append(
            {**common, "part": "pattern", "found": pattern["why"], "profile": "", "factor": np.exp(log_pattern)}
        )
        lost[(pattern["cause"], pattern["variant"])] = score.eggs_lost(
            counts, usual.shares, usual.spread, doublings
        )
        for link in links[pattern["cause"]]:
            if link["variant"] not in (pattern["variant"], "*"):
                continue
            level = levels[link["item"]]
            factor = 1.0 if level is None else factors[kinds[link["item"]], link["profile"]][level]
            rows.append(
                {
                    **common,
                    "part": link["item"],
                    "found": level or "not known",
                    "profile": link["profile"],
                    "factor": float(factor),
                }
            )
    other = score.unlisted_log_factor(counts, usual.shares, usual.spread)
    rows += [
        dict(cause="bad_luck", variant="always", part="pattern", found="as batches differ", profile="", factor=1.0),
        dict(
            cause="unlisted",
            variant="always",
            part="pattern",
            found="any pattern",
            profile="",
            factor=np.exp(other),
        ),
    ]
    return pd.DataFrame(rows), lost


def _by_variant(sums) -> dict:
    """Log factor of each variant of each cause: {cause: {variant: log factor}}."""
    logs = {}
    for cause, variant, factor in zip(sums["cause"], sums["variant"], np.log(sums["factor"]), strict=True):
        variants = logs.setdefault(cause, {})
        variants[variant] = variants.get(variant, 0.0) + factor
    return logs


def _mean_losses(sums, lost) -> dict:
    """Eggs per stage that each cause would account for, averaged over its variants as likely as they are."""
    none = np.zeros(len(STAGES))
    means = {}
    for cause, logs in _by_variant(sums).items():
        weight = np.exp(np.array(list(logs.values())) - max(logs.values()))
        means[cause] = (weight / weight.sum()) @ np.stack([lost.get((cause, variant), none) for variant in logs])
    return means


def _losses(table, means) -> pd.DataFrame:
    rows = [
        dict(cause=cause, stage=stage, eggs=float(eggs * share))
        for cause, share in zip(table["cause"], table["share"], strict=True)
        if cause not in UNNAMED
        for stage, eggs in zip(STAGES[1:], means[cause][1:], strict=True)
    ]
    return pd.DataFrame(rows)


def _rank(sums, counts, usual, items) -> pd.DataFrame:
    causes = _listed()
    by_pattern = _by_variant(sums[sums["part"] == "pattern"])
    rows = []
    for cause, logs in _by_variant(sums).items():
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
    known = {item["item"]: item for item in items.to_dict("records")}
    told = [cause_words.for_and_against(row, parts[row["cause"], row["variant"]], counts, usual, known)
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
        ]
    ]


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


def _verdict(table) -> str:
    """The one rule: confident from `score.CONFIDENT`, probable from one half, otherwise bad luck or cannot tell."""
    first = table.iloc[0]
    if first["cause"] == "bad_luck":
        return "bad luck" if first["share"] >= 0.5 else "cannot tell"
    if first["cause"] == "unlisted":
        return "cannot tell"
    return (
        "confident" if first["share"] >= score.CONFIDENT else "probable" if first["share"] >= 0.5 else "cannot tell"
    )
