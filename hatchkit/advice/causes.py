"""Why was this batch poor? Candidate causes ranked by how well each explains counts, log, records and signs."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
import pandas as pd

from hatchkit import reference
from hatchkit.advice import cause_weights, course, reasons, signs
from hatchkit.advice.cause_weights import UNNAMED
from hatchkit.advice.different import different
from hatchkit.advice.evidence import ORDER, Gathered, evidence, gather, told
from hatchkit.advice.harm import by_stage, patterns
from hatchkit.advice.published import STAGES
from hatchkit.advice.seen import seen
from hatchkit.problems import HatchkitError
from hatchkit.usual.stages import Usual

#: A cause is named with confidence from this share on; within this factor of the first it ties.
CONFIDENT, TIE = 0.8, 3.0

#: With more than this share of the eggs set without a known end no cause is named with confidence, nor bad luck.
MOST_UNACCOUNTED = 0.15

#: A cause may be firm only if something other than the counts speaks for it by this factor.
TRACE = 2.5

#: A loss is called one of clears when these are this part of what was lost beyond the usual, and beyond it by this
#: many standard deviations of a batch.
CLEAR_PART, CLEAR_SD = 0.6, 2.0

#: Two causes are told when pairs have at least this much of the weight together; the heaviest pair is named.
TOLD_PAIR = 0.5


@dataclass(frozen=True)
class Causes:
    """Ranked causes of one batch with everything that led to the ranking.

    Attributes
    ----------
    batch : str
    table : DataFrame
        One row per candidate, likeliest first: rank, cause, variant, share, tied, prior, factor_pattern,
        factor_evidence, fits, against, unknown (tuples of code and facts), firm, eggs_lost.
    pairs : DataFrame
        Two causes together: first, second, share, eggs_first, eggs_second; heaviest first.
    different : DataFrame
        In which items the batch differs from the keeper's good ones, most first (`different.different`).
    signs : DataFrame
        Signs read from ticks and remarks: sign, kind, fact, said, column.
    sums : DataFrame
        Every factor of every cause and way: cause, variant, chance, part, found, factor, once (the same fact
        counts in another row).
    evidence : DataFrame
        The batch's evidence items (`evidence.evidence`).
    pattern : DataFrame
        stage, eggs, assumed (of these, eggs that died between two looks and are put to the stage by the published
        course of deaths), usual (eggs of an ordinary batch of this size).
    unaccounted : float
        Eggs set that have no known end; `pattern` is without them.
    remark : str
        What the person wrote about the batch.
    losses : DataFrame
        cause, stage, eggs: eggs put down to the cause alone and in pairs, each times its weight.
    usual : Usual
    verdict : str
        confident, probable, two causes, bad luck or cannot tell.
    mostly_clears : bool
        Whether what was lost beyond the usual is clears in the main: sure, whatever made them clear.
    limits : tuple of (code, facts)
        What bounds every verdict on this batch (a probe never checked, unopened eggs, ...).
    """

    batch: str
    table: pd.DataFrame
    pairs: pd.DataFrame
    different: pd.DataFrame
    signs: pd.DataFrame
    sums: pd.DataFrame
    evidence: pd.DataFrame
    pattern: pd.DataFrame
    unaccounted: float
    remark: str
    losses: pd.DataFrame
    usual: Usual
    verdict: str
    mostly_clears: bool
    limits: tuple

    @property
    def eggs_set(self) -> float:
        """Eggs set, those without a known end among them."""
        return float(self.pattern["eggs"].sum() + self.unaccounted)

    def arithmetic(self, cause) -> pd.DataFrame:
        """How the share of one cause comes about: each factor, their product, and prior times product."""
        rows = self.sums[self.sums["cause"] == cause]
        if rows.empty:
            raise HatchkitError("not_one_of", dict(name="cause", given=cause, known=list(self.sums["cause"].unique())))
        return rows.drop(columns="cause").reset_index(drop=True)

    def first_named(self) -> str:
        """Key of the likeliest cause that has a name (neither bad luck nor unlisted)."""
        return str(self.table.loc[~self.table["cause"].isin(UNNAMED), "cause"].iloc[0])


def likely_causes(season, batch) -> Causes:
    """Candidate causes of one batch's losses, ranked by a stated Bayes factor.

    Parameters
    ----------
    season : Season
    batch : str

    Returns
    -------
    Causes
        ``.table``: one row per cause with its share of the weight (0-1) and the eggs put down to it; ``.verdict``:
        one of
    five words.

    Raises
    ------
    HatchkitError
        If there is no such batch, or nothing is known of how it ended.

    Notes
    -----
    The score is described in `hatchkit.advice.cause_weights`; ``.arithmetic(cause)`` shows it for one cause.

    Source: the shapes of the causes and what speaks for them are rows of ``reference/cause_patterns.csv`` and
    ``cause_evidence.csv`` (each with its source and how sure); ordinary deaths by age Kuurman et al. 2001 Poult. Sci.
    80:710-717; half doses of heat Ande & Wilson 1981. How often it is right: ``tests/benchmarks/results/causes.md``.
    """
    season.batch(batch)
    return batch_causes(gather(season), str(batch))


def season_causes(season) -> dict:
    """`likely_causes` of every batch whose end is known; the season-wide tables are made once."""
    gathered = gather(season)
    named = dict.fromkeys(str(batch) for batch in season.batches["batch"])
    return {batch: batch_causes(gathered, batch) for batch in named if _eggs(gathered, batch) > 0}


def batch_causes(gathered: Gathered, batch: str) -> Causes:
    """`likely_causes` on tables that are already made."""
    if _eggs(gathered, batch) <= 0:
        raise HatchkitError("end_not_known", dict(batch=batch))
    season, row = gathered.season, gathered.rows[batch]
    usual, items = gathered.usual[batch], evidence(gathered, batch)
    lines = told(gathered, batch, items)
    days = float(season.species_table.at[row["species"], "incubation_days"])
    what = seen(gathered.fates[batch], row, gathered.kinds[batch], days)
    known = {cause: float(sum(np.log(line.factor) for line in parts)) for cause, parts in lines.items()}
    weighed = cause_weights.weigh(what, usual, gathered.doses[batch], known)
    tally = gathered.tally
    counted = reasons.Counted(
        tally.counts.loc[batch].to_numpy(), tuple(tally.between[batch]), float(tally.unaccounted[batch])
    )
    pattern = pd.DataFrame(
        {
            "stage": STAGES,
            "eggs": counted.counts,
            "assumed": counted.assumed(),
            "usual": _in_stage_order(usual.shares) * counted.eggs_set,
        }
    )
    table = _rank(weighed, lines, counted, pattern, usual, items)
    pairs = pd.DataFrame(weighed.pairs, columns=["first", "second", "share", "eggs_first", "eggs_second"])
    return Causes(
        batch=batch,
        table=table,
        pairs=pairs,
        different=different(gathered, batch, items),
        signs=signs.found(row),
        sums=_sums(weighed, lines),
        evidence=items,
        pattern=pattern,
        unaccounted=counted.unaccounted,
        remark=reasons.remark(row),
        losses=_losses(weighed.expected, pattern),
        usual=usual,
        verdict=_verdict(table, pairs, counted),
        mostly_clears=_mostly_clears(pattern, counted, usual),
        limits=reasons.limits(season, row, items, usual),
    )


def _eggs(gathered, batch) -> float:
    return float(gathered.counts.loc[batch].sum()) if batch in gathered.counts.index else 0.0


def _in_stage_order(shares) -> np.ndarray:
    """Shares of the eggs set as `usual` gives them (rest first, then `ORDER`), in the order of `STAGES`."""
    by_stage = dict(zip(("hatched", *ORDER), shares, strict=True))
    return np.array([by_stage[stage] for stage in STAGES])


def _rank(weighed, lines, counted, pattern, usual, items) -> pd.DataFrame:
    causes, known = _listed(), {item["item"]: item for item in items.to_dict("records")}
    enough = not counted.mostly_unknown(MOST_UNACCOUNTED)
    prior, rows = cause_weights.priors(), []
    for cause, share in weighed.shares.items():
        variants = weighed.ways.get(cause, {"always": (1.0, 0.0)})
        best = max(variants, key=lambda name: np.log(variants[name][0]) + variants[name][1])
        factor = float(np.prod([line.factor for line in lines.get(cause, [])]))
        rows.append(
            dict(
                cause=cause,
                variant=best,
                share=share,
                prior=prior[cause],
                factor_pattern=float(np.exp(variants[best][1])),
                factor_evidence=factor,
                firm=enough and (cause in UNNAMED or _firm(causes[cause]["firm_with"], lines[cause])),
                eggs_lost=float(weighed.lost[cause].sum()),
            )
        )
    table = pd.DataFrame(rows).sort_values("share", ascending=False, kind="stable", ignore_index=True)
    table["rank"] = table["share"].rank(ascending=False, method="min").astype(int)
    table["tied"] = table["share"] * TIE >= table["share"].iloc[0]
    nothing = np.zeros(course.HAZARDS)
    found = [
        reasons.for_and_against(
            row | {"by_stage": by_stage(weighed.kernels.get(row["cause"], nothing))},
            lines.get(row["cause"], []),
            counted,
            pattern,
            usual,
            known,
        )
        for row in table.to_dict("records")
    ]
    for name in ("fits", "against", "unknown"):
        table[name] = pd.Series([one[name] for one in found], index=table.index, dtype=object)
    return table[
        [
            "rank",
            "cause",
            "variant",
            "share",
            "tied",
            "prior",
            "factor_pattern",
            "factor_evidence",
            "fits",
            "against",
            "unknown",
            "firm",
            "eggs_lost",
        ]
    ]


def _firm(firm_with, lines) -> bool:
    """Whether something other than the counts speaks for a cause: one of `firm_with`, or anything where that is blank.

    A cause that leaves no trace in any record may be probable, never firm.
    """
    wanted = firm_with.split() if isinstance(firm_with, str) else None
    return any(line.alone >= TRACE and (wanted is None or line.part in wanted) for line in lines)


@cache
def _listed() -> dict:
    """The candidates as they stand in the reference: {cause: its row}."""
    return reference.load("causes").set_index("cause").to_dict("index")


def _sums(weighed, lines) -> pd.DataFrame:
    """`Causes.sums`: prior x sum over ways (chance x product of the factors) goes as the shares."""
    rows = []
    for cause, variants in weighed.ways.items():
        if cause in UNNAMED:
            continue
        for variant, (chance, log) in variants.items():
            common = dict(cause=cause, variant=variant, chance=chance)
            why = patterns().get((cause, variant), (None, "dose"))[1]
            second = weighed.shares[cause] / max(weighed.alone[cause], 1e-300)
            rows.append({**common, "part": "pattern", "found": why, "factor": float(np.exp(log)), "once": False})
            rows += [
                {
                    **common,
                    "part": line.part,
                    "factor": line.factor,
                    "found": line.found,
                    "once": line.factor != line.alone,
                }
                for line in lines[cause]
            ]
            rows.append({**common, "part": "second", "found": "", "factor": second, "once": False})
    plain = dict(variant="always", chance=1.0, part="pattern", once=False)
    other = float(np.exp(weighed.ways["unlisted"]["always"][1]))
    rows += [
        dict(cause="bad_luck", found="as batches differ", factor=1.0, **plain),
        dict(cause="unlisted", found="any pattern", factor=other, **plain),
    ]
    return pd.DataFrame(rows, columns=["cause", "variant", "chance", "part", "found", "factor", "once"])


def _losses(expected, pattern) -> pd.DataFrame:
    """Eggs put down to each named cause at each stage, never more at a stage than were lost there."""
    rows = [
        dict(cause=cause, stage=stage, eggs=float(eggs))
        for cause, by_stage in expected.items()
        for stage, eggs in zip(STAGES[1:], by_stage[1:], strict=True)
    ]
    out = pd.DataFrame(rows, columns=["cause", "stage", "eggs"])
    most = pattern.set_index("stage")["eggs"] / out.groupby("stage")["eggs"].sum().replace(0, np.nan)
    out["eggs"] *= out["stage"].map(most.clip(upper=1.0).fillna(1.0))
    return out


def _mostly_clears(pattern, counted, usual) -> bool:
    rows = pattern.set_index("stage")
    beyond = (rows["eggs"] - rows["usual"]).drop("hatched")
    expected, total = rows.at["clear", "usual"], counted.eggs_set
    share = expected / total
    sd = np.sqrt(total * share * (1 - share) * (1 + (total - 1) * usual.spread[0] ** 2 * share * (1 - share)))
    return bool(beyond["clear"] > CLEAR_SD * sd and beyond["clear"] >= CLEAR_PART * beyond.clip(lower=0).sum())


def _verdict(table, pairs, counted) -> str:
    """The one rule of the verdict.

    Confident from `CONFIDENT` if `firm`, probable from one half, else two causes, bad luck or cannot tell.

    With more than `MOST_UNACCOUNTED` of the eggs without a known end it is not called bad luck either.
    """
    first = table.iloc[0]
    two = pairs["share"].sum() >= TOLD_PAIR and not counted.mostly_unknown(MOST_UNACCOUNTED)
    if two and first["cause"] in {pairs.at[0, "first"], pairs.at[0, "second"]}:
        return "two causes"
    if first["cause"] == "unlisted" or first["share"] < 0.5:
        return "cannot tell"
    if first["cause"] == "bad_luck":
        return "cannot tell" if counted.mostly_unknown(MOST_UNACCOUNTED) else "bad luck"
    return "confident" if first["share"] >= CONFIDENT and first["firm"] else "probable"
