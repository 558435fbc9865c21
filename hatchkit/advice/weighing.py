"""Every factor of every cause for one batch, and the eggs that each cause would account for."""

from __future__ import annotations

import numpy as np
import pandas as pd

from hatchkit.advice import score
from hatchkit.advice.cause_words import cause_patterns
from hatchkit.advice.evidence import evidence_links, factor_of
from hatchkit.advice.ordinary import Ordinary
from hatchkit.advice.tally import STAGES

UNNAMED = ("bad_luck", "unlisted")


def weigh(ways, log_weight, usual: Ordinary, items) -> tuple[pd.DataFrame, dict]:
    """Factor of each cause, variant and part, and the eggs that each cause would account for.

    Parameters
    ----------
    ways, log_weight : array
        As `score.ways_to_fall` gives them.
    usual : Ordinary
    items : DataFrame
        `evidence.evidence`.

    Returns
    -------
    sums : DataFrame
        cause, variant, part, found, profile, factor.
    lost : dict
        {(cause, variant): eggs per stage}.
    """
    factors, links = factor_of(), evidence_links()
    kinds = dict(zip(items["item"], items["kind"], strict=True))
    levels = dict(zip(items["item"], items["level"], strict=True))
    patterns = list(cause_patterns().values())
    steps = np.array([[0.0] + [pattern[stage] for stage in STAGES[1:]] for pattern in patterns])
    logs, eggs = score.weigh_patterns(ways, usual.shares, usual.spread, steps, log_weight=log_weight)
    rows, lost = [], {}
    for pattern, log_factor, would_lose in zip(patterns, logs, eggs, strict=True):
        common = dict(cause=pattern["cause"], variant=pattern["variant"])
        rows.append({**common, "part": "pattern", "found": pattern["why"], "profile": "",
                     "factor": np.exp(log_factor)})
        lost[(pattern["cause"], pattern["variant"])] = would_lose
        for link in links[pattern["cause"]]:
            if link["variant"] in (pattern["variant"], "*"):
                level = levels[link["item"]]
                factor = 1.0 if level is None else factors[kinds[link["item"]], link["profile"]][level]
                rows.append({**common, "part": link["item"], "found": level or "not known",
                             "profile": link["profile"], "factor": float(factor)})
    other = score.unlisted_log_factor(ways, usual.shares, usual.spread, log_weight)
    plain = dict(variant="always", part="pattern", profile="")
    rows += [dict(cause="bad_luck", found="as batches differ", factor=1.0, **plain),
             dict(cause="unlisted", found="any pattern", factor=np.exp(other), **plain)]
    columns = ["cause", "variant", "part", "found", "profile", "factor"]
    return pd.DataFrame(rows, columns=columns), lost


def by_variant(sums) -> dict:
    """Log factor of each variant of each cause: {cause: {variant: log factor}}."""
    logs = {}
    for cause, variant, factor in zip(sums["cause"], sums["variant"], np.log(sums["factor"]), strict=True):
        variants = logs.setdefault(cause, {})
        variants[variant] = variants.get(variant, 0.0) + factor
    return logs


def mean_losses(sums, lost) -> dict:
    """Eggs per stage that each cause would account for, averaged over its variants as likely as they are."""
    none = np.zeros(len(STAGES))
    means = {}
    for cause, logs in by_variant(sums).items():
        weight = np.exp(np.array(list(logs.values())) - max(logs.values()))
        means[cause] = (weight / weight.sum()) @ np.stack([lost.get((cause, variant), none) for variant in logs])
    return means


def losses(table, means) -> pd.DataFrame:
    """Eggs put down to each named cause at each stage: what it would account for times its share."""
    rows = [
        dict(cause=cause, stage=stage, eggs=float(eggs * share))
        for cause, share in zip(table["cause"], table["share"], strict=True)
        if cause not in UNNAMED
        for stage, eggs in zip(STAGES[1:], means[cause][1:], strict=True)
    ]
    return pd.DataFrame(rows)
