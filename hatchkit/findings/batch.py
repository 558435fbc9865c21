"""The findings of one batch: why its hatch was poor, how sure that is, and what to change."""

from __future__ import annotations

from functools import cached_property

import numpy as np
import pandas as pd

from hatchkit.advice import pictured
from hatchkit.findings import batch_climate, batch_next, more_losses
from hatchkit.findings.batch_why import why, worst_spell
from hatchkit.findings.counts import eggs_of, losses, season_facts, standing_shares, whole_eggs
from hatchkit.findings.finding import Finding, Findings, Picture, Said, Table, Told, answers, told
from hatchkit.findings.records import records
from hatchkit.losses import pictured as lost
from hatchkit.problems import HatchkitError
from hatchkit.say import text


def poor_hatch(season, batch: str = "", *, unit: str = "C", progress=None, each=None) -> Findings:
    """What a season's records say of one batch: why it was poor, how sure that is, what to change.

    Parameters
    ----------
    season : Season
    batch : str
        Left out, the poorest batch is taken.
    unit : {"C", "F"}
        Unit in which temperatures are shown.
    progress, each : callable, optional
        Called with (questions answered, questions in all), and with each finding as soon as it is made.

    Returns
    -------
    Findings
        In order; ``["why"]`` gives the finding of one question.

    Raises
    ------
    HatchkitError
        If there is no such batch, or none has its end on record.
    """
    from hatchkit.advice.poor_hatch import poorest_batch
    from hatchkit.units import check_unit

    name = str(season.batch(batch)["batch"]) if batch else poorest_batch(season)
    work = Work(season, name, check_unit(unit))
    # The look into unhatched eggs comes last on the page; asked first, its many drawings are made meanwhile.
    *others, last = batch_next.ASKED
    asked = (last, why, standing, fate, evidence, *batch_climate.ASKED, *others)
    last, *found = answers(asked, work, progress, each)
    unknown = tuple(Said(f"batch_unknown_{what}") for what in ("proof", "list", "clear", "illness"))
    facts = {**season_facts(season), **work.facts}
    return Findings(
        "batch",
        facts,
        (*found, last),
        records(season),
        unknown,
        unit=unit,
        language=season.language,
        asked=tuple(ask.__name__ for ask in asked),
    )


class Work:
    """What several questions of one batch ask for, worked out when the first one does."""

    def __init__(self, season, batch, unit):
        self.season, self.batch, self.unit = season, batch, unit

    @cached_property
    def alone(self):
        """The season with this batch alone."""
        from hatchkit.advice.poor_hatch import one_batch

        return one_batch(self.season, self.batch)

    @cached_property
    def causes(self):
        """`advice.causes.Causes`; None where nothing is known of the end."""
        from hatchkit.advice.causes import likely_causes

        try:
            return likely_causes(self.season, self.batch)
        except HatchkitError:
            return None

    @cached_property
    def standings(self) -> pd.DataFrame:
        """Table of `advice.poor_hatch.standing`, a row per batch."""
        from hatchkit.advice.poor_hatch import standing

        return standing(self.season)

    @cached_property
    def standing(self):
        """The batch's row of `advice.poor_hatch.standing`; None where its end is not known."""
        rows = self.standings[self.standings["batch"].astype(str) == self.batch]
        return rows.iloc[0].to_dict() if len(rows) else None

    @cached_property
    def breakdown(self) -> pd.DataFrame:
        """The batch's rows of the breakdown by batch."""
        from hatchkit.losses.breakdown import breakdown

        table = breakdown(self.season, by="batch")
        return table[table["batch"].astype(str) == self.batch].reset_index(drop=True)

    @cached_property
    def ledger(self) -> Picture:
        """From eggs set to good chicks, in whole eggs."""
        table = self.breakdown.assign(eggs=whole_eggs(self.breakdown["eggs"]))
        return told("losses.egg_ledger", table, facts=lost.egg_ledger(table))

    @cached_property
    def excursions(self) -> pd.DataFrame:
        """The batch's excursions (``find_excursions``)."""
        from hatchkit.climate.excursions import find_excursions

        return find_excursions(self.alone)

    @cached_property
    def facts(self) -> dict:
        """What the title and the line of counts say."""
        row = self.season.batch(self.batch)
        facts = dict(self.standing) if self.standing else dict(poor="unknown", hatched=None, set=row["eggs_set"])
        set_at = None if pd.isna(row["set_at"]) else row["set_at"].tz_convert(self.season.timezone)
        kind = Said("species_of", dict(key=row["species"]))
        if self.standing:
            facts.update(standing_shares(facts))
        return {**facts, "batch": self.batch, "set_at": set_at, "kind": kind}


def standing(work) -> Finding | None:
    """How poor the hatch was, of eggs set and of developing eggs."""
    row, table = work.standing, work.standings
    if row is None:
        return None
    worse = table[["away", "away_of_set"]].min(axis=1)
    place = int((worse < min(row["away"], row["away_of_set"])).sum()) + 1
    far = "far" if np.nanmin([row["away"], row["away_of_set"]]) <= -2 else "below"
    facts = dict(row, batch=work.batch, place=place, of=len(table), far=far, **standing_shares(row))
    shares = pd.DataFrame([standing_shares(one) for one in table.to_dict("records")], table.index, dtype=object)
    shown = table.assign(eggs=table["hatched"], usual_of_set_share=table["usual_of_set"], usual_share=table["usual"])
    shown = shown.assign(**shares)
    rows = Table(
        "standing",
        shown,
        ("batch", "set", "eggs", "share_of_set", "share_hatched", "usual_of_set_share", "usual_share", "poor"),
        {"poor": "poor"},
    )
    left = () if row["clears_counted"] else (Said("standing_clears_not_counted"),)
    return Finding(
        "standing",
        f"standing_{row['poor']}",
        facts,
        "cannot_tell" if row["poor"] == "unknown" else "sure",
        float(row["usual_of_set"] * row["set"] - row["hatched"]),
        plain=left,
        table=rows,
        more=(Said("poor_method"),),
    )


def fate(work) -> Finding | None:
    """What became of the eggs, beside what is usual."""
    table, causes = work.breakdown, work.causes
    if table.empty or table["share_of_set"].isna().all():
        return None
    # Without a spell close up, the first screen shows the ledger already.
    first = causes is None or worst_spell(work, causes.table["cause"].iloc[0]) is None
    usual = None
    if causes is not None:
        pattern = causes.pattern
        rows = pattern.assign(eggs=whole_eggs(pattern["eggs"]), usual_eggs=pattern["usual"].round())
        usual = Table("pattern", rows, ("stage", "eggs", "usual_eggs"), {"stage": "stage"})
    row = table.set_index("stage").loc["hatched"]
    facts = dict(set=row["set"], hatched=row["eggs"], lost=eggs_of(losses(table)))
    return Finding(
        "fate", "fate_eggs", facts, "sure", picture=None if first else work.ledger, table=usual, more=_ages(work)
    )


def _ages(work) -> tuple:
    from hatchkit.advice.poor_hatch import kin
    from hatchkit.losses.death_age import age_at_death

    try:
        mine, others = (age_at_death(part, draws=100) for part in (work.alone, kin(work.season, work.batch)))
    except HatchkitError:
        return ()
    if mine.fits.empty or others.fits.empty:
        return ()
    picture = told(
        "advice.age_against_season",
        mine.curve,
        others.curve,
        name=work.batch,
        other=species_word(work),
        facts=pictured.age_against_season(work.batch, mine.curve, others.curve),
    )
    return (picture, *more_losses.ages(mine))


def species_word(work) -> str:
    """What the batch's birds are called, as the picture's line of all of them is named."""
    return text("species_of", dict(key=work.season.batch(work.batch)["species"]), work.season.language)


def evidence(work) -> Finding | None:
    """What speaks for each cause and what against, and what was different this time."""
    from hatchkit.advice.evidence_ladder import ladder

    causes = work.causes
    if causes is None:
        return None
    first = causes.table.head(2)[["cause", "share"]].to_dict("records")
    facts = dict(causes=[Said("eggs_of_cause_weight", row) for row in first], share=causes.table["share"].iloc[0])
    shown = causes.table.head(4).rename(columns={"share": "share_weight"})
    for name in ("fits", "against", "unknown"):
        shown[name] = [Told("causes.reasons", pieces) if pieces else None for pieces in shown[name]]
    shown["check_next"] = [Said(f"do_{cause}") for cause in shown["cause"]]
    rows = Table(
        "evidence",
        shown,
        ("cause", "share_weight", "fits", "against", "unknown", "check_next"),
        {"cause": "cause"},
    )
    rungs = ladder(causes)
    picture = told("advice.ladder", rungs, facts=pictured.ladder(causes, rungs))
    weights = told("advice.ranked_causes", causes.table, facts=pictured.ranked_causes(causes))
    unlike = told("advice.differences", causes.different, facts=pictured.differences(work.batch, causes.different))
    return Finding(
        "evidence",
        "evidence_weights",
        facts,
        "likely" if causes.table["share"].iloc[0] >= 0.5 else "cannot_tell",
        picture=picture,
        plain=(Told("causes.different", causes),),
        table=rows,
        more=(
            unlike,
            weights,
            Told("causes.verdict", causes),
            Told("causes.arithmetic", (causes, causes.first_named())),
            Said("evidence_method"),
        ),
    )
