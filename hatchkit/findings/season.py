"""The findings of a season, in the order in which they are read: what cost most first."""

from __future__ import annotations

from functools import cached_property

import numpy as np

from hatchkit.findings import season_climate, season_losses
from hatchkit.findings.counts import season_facts, whole_eggs, with_ranges
from hatchkit.findings.finding import Finding, Findings, Picture, Said, Table, answers, told
from hatchkit.findings.records import records
from hatchkit.problems import HatchkitError

#: Lanes of the calendar that fit on a first screen, the strip of spells above each machine counted as half of one.
MOST_LANES, STRIP = 6.5, 0.5

#: Share of the first cause's eggs from which on a second is told beside it (kit's rule).
EVEN = 0.9


def review(season, *, unit: str = "C", progress=None, each=None) -> Findings:
    """What a season's records answer: what cost most, where the eggs went, whether it is more than luck, and so on.

    Parameters
    ----------
    season : Season
    unit : {"C", "F"}
        Unit in which temperatures are shown.
    progress, each : callable, optional
        Called with (questions answered, questions in all), and with each finding as soon as it is made.

    Returns
    -------
    Findings
        In order; ``["luck"]`` gives the finding of one question. ``hk.write_page`` makes a page of them.
    """
    from hatchkit.units import check_unit

    work = Work(season, check_unit(unit))
    # What is read first takes longest to work out: it is asked last, and the others are drawn meanwhile.
    asked = (*season_losses.ASKED, *season_climate.ASKED, causes, most)
    *found, first = answers(asked, work, progress, each)
    unknown = tuple(
        Said(f"season_unknown_{name}", {"right": 37.5}) for name in ("cause", "clear", "day", "probe", "illness")
    )
    return Findings(
        "season",
        {**season_facts(season), **work.totals},
        (first, *found),
        records(season),
        unknown,
        unit,
        season.language,
        sheet="place",
        asked=tuple(ask.__name__ for ask in asked),
    )


class Work:
    """What several questions of a season ask for, worked out when the first one does."""

    def __init__(self, season, unit):
        self.season, self.unit = season, unit

    @cached_property
    def causes(self) -> dict:
        """Batch -> its ranked causes (``season_causes``)."""
        from hatchkit.advice.causes import season_causes

        return season_causes(self.season)

    @cached_property
    def notes(self):
        """What is worth attention over the season (``season_notes``)."""
        from hatchkit.advice.season_notes import season_notes

        return season_notes(self.season, causes=self.causes)

    @cached_property
    def whole(self):
        """The breakdown of the whole season."""
        from hatchkit.losses.breakdown import breakdown

        return breakdown(self.season, by=None)

    @cached_property
    def by_batch(self):
        """The breakdown by batch."""
        from hatchkit.losses.breakdown import breakdown

        return breakdown(self.season, by="batch")

    @cached_property
    def standing(self):
        """Table of `advice.poor_hatch.standing`, a row per batch."""
        from hatchkit.advice.poor_hatch import standing

        return standing(self.season)

    @cached_property
    def excursions(self):
        """The season's excursions (``find_excursions``)."""
        from hatchkit.climate.excursions import find_excursions

        return find_excursions(self.season)

    @cached_property
    def relation(self):
        """The relation of losses and temperature; None where it cannot be asked."""
        from hatchkit.relate.relation import relate_losses

        try:
            return relate_losses(self.season)
        except HatchkitError:
            return None

    @cached_property
    def calendar(self):
        """The season at a glance, drawn; None where no batch has its day of setting."""
        from hatchkit.advice import pictured
        from hatchkit.advice.glance import glance

        if self.season.batches["set_at"].isna().all():
            return None
        table = glance(self.season, found=self.excursions)
        return told("glance.season_at_a_glance", table, facts=pictured.season_at_a_glance(table), unit=self.unit)

    @cached_property
    def calendar_first(self) -> bool:
        """Whether the calendar is low enough for the first screen; else the ledger of eggs stands there."""
        if self.calendar is None or self.ledger is None:
            return True
        lanes = self.calendar.table[0].batches.groupby("machine")["lane"].max() + 1
        return float((lanes + STRIP).sum()) <= MOST_LANES

    @cached_property
    def ledger(self) -> Picture | None:
        """From eggs set to good chicks, in whole eggs, drawn; None where no hatch is over."""
        from hatchkit.losses import pictured

        if self.whole.empty or not self.totals["hatched"] >= 0:
            return None
        shown = self.whole.assign(eggs=whole_eggs(self.whole["eggs"]))
        shown = shown[shown["eggs"].notna()]
        return told("losses.egg_ledger", shown, facts=pictured.egg_ledger(shown))

    @property
    def lost(self) -> float:
        """Eggs that gave no good chick; with a count too many, as many as the stages hold."""
        excess = self.whole["excess"].iloc[0] if len(self.whole) else 0.0
        return float(self.totals["set"] + excess - self.totals["hatched"])

    @cached_property
    def totals(self) -> dict:
        """Eggs set and hatched, with both shares; where no hatch is over, only the eggs set."""
        row = with_ranges(self.whole).set_index("stage").loc["hatched"] if len(self.whole) else {}
        if not row.get("set", 0) > 0:
            return dict(
                set=float(self.season.batches["eggs_set"].sum()),
                hatched=np.nan,
                share_of_set=np.nan,
                share_of_developing=np.nan,
            )
        return dict(
            set=row["set"],
            hatched=row["eggs"],
            share_of_set=row["share_of_set"],
            share_of_developing=row["share_of_fertile"],
        )


def most(work) -> Finding:
    """What cost most, how sure that is, and what to do now."""
    notes = work.notes
    if notes.empty:
        return _nothing(work)
    rows = notes.to_dict("records")
    first, rest = rows[0], [_short(row) for row in rows[1:]]
    facts = dict(first, batches=_names(first), eggs=first["eggs_lost"], lost=work.lost)
    sure = {"firm": "likely", "counted": "sure", "assumed": "likely", "probable": "likely"}.get(first["sure"], "guess")
    weight = (
        {
            name: work.causes[name].table.set_index("cause")["share"].get(first["key"], np.nan)
            for name in facts["batches"]
        }
        if first["kind"] == "cause"
        else {}
    )
    best = max(weight, key=weight.get, default="")
    tied = _tied(work, best, first) if first["sure"] == "guess" else []
    facts |= dict(batch=best, tied=[Said("cause_alone", dict(key=key)) for key in tied])
    why = Said(f"most_sure_{first['kind']}_{first['sure']}", dict(batch=best, share=weight.get(best, np.nan)))
    answer = "most_cause_shared" if len(tied) > 1 else f"most_{first['kind']}"
    if answer == "most_cause" and _even(rows[:2]):
        answer, facts["second"], rest = "most_cause_even", Said("cause_alone", dict(key=rows[1]["key"])), rest[1:]
    return Finding(
        "most",
        answer,
        facts,
        sure,
        first["eggs_lost"],
        why_sure=why,
        do=_do(first),
        cautions=_cautions(first),
        plain=(Said("most_rest", dict(rest=rest)),) if rest else (),
        **_pictures(work),
    )


def _even(rows) -> bool:
    """Whether two causes cost about as many eggs: no account tells which of two within `EVEN` cost more."""
    if [row["kind"] for row in rows] != ["cause", "cause"]:
        return False
    most, next_most = (round(row["eggs_lost"]) for row in rows)
    return next_most >= EVEN * most


def _tied(work, batch, first) -> list:
    """The causes that weigh as good as the same in a batch, the one that cost most first."""
    table = work.causes[batch].table
    tied = table.loc[table["tied"].astype(bool), "cause"].tolist()
    return [first["key"], *(key for key in tied if key != first["key"])][:3] if first["key"] in tied else []


def _nothing(work) -> Finding:
    if not work.causes:
        answer, batches, sure, do = "most_none_finished", [], "cannot_tell", "do_unaccounted"
    elif unusual := list(work.notes.attrs.get("unusual", [])):
        answer, batches, sure, do = "most_unusual", unusual, "likely", "do_unlisted"
    elif poor := _poor(work):
        answer, batches, sure, do = "most_poor", poor, "likely", "do_unlisted"
    else:
        answer, batches, sure, do = "most_nothing", [], "likely", "do_nothing"
    return Finding(
        "most",
        answer,
        dict(batches=batches, number=len(work.causes)),
        sure,
        why_sure=Said(f"{answer}_sure"),
        do=Said(do),
        **_pictures(work),
    )


def _poor(work) -> list:
    """Batches below what is usual, and those of which no egg hatched."""
    table = work.standing
    bad = table["poor"].isin(["embryos", "clears", "removed"]) | (table["hatched"] == 0)
    return table.loc[bad, "batch"].astype(str).tolist()


def _short(row) -> Said:
    """One of the notes that come after the first, in a few words."""
    return Said(f"most_short_{row['kind']}", dict(row, eggs=row["eggs_lost"], batches=_names(row)))


def _names(row) -> list:
    return [name for name in row["batches"].split(", ") if name]


def _do(row) -> Said:
    return Said({"cause": f"do_{row['key']}", "stage": f"do_stage_{row['key']}"}.get(row["kind"], "do_unaccounted"))


def _cautions(row) -> tuple:
    """Tasks that what is to be done asks of the reader."""
    if row["key"] in ("infertile", "clear", "early", "late", "unlisted"):
        return ("opening_eggs",)
    return ("machine",) if row["key"].endswith(("spell", "throughout")) else ()


def _pictures(work) -> dict:
    """The picture of the first screen, and the calendar folded where it is too high to stand there."""
    if work.calendar_first:
        return dict(picture=work.calendar)
    return dict(picture=work.ledger, more=(work.calendar,))


def causes(work) -> Finding | None:
    """What was lost to what: the season's account, and the season without its warm and cold spells."""
    from hatchkit.advice import pictured
    from hatchkit.advice.account import account, of_causes
    from hatchkit.advice.what_if import what_if

    if not work.causes:
        return None
    table = account(work.causes)
    named = of_causes(table)[lambda rows: rows["eggs"] >= 0.5]
    rest = table[table["kind"] != "cause"].set_index("kind")["eggs"]
    facts = dict(
        usual=rest["usual"],
        not_explained=rest["not_explained"],
        lost=work.lost,
        number=len(named),
        causes=[Said("eggs_of_cause", row) for row in named.head(3)[["key", "eggs"]].to_dict("records")],
    )
    shown = table[table["eggs"] >= 0.5].assign(
        eggs=lambda rows: rows["eggs"].round(), batches=lambda rows: rows["batches"].map(", ".join)
    )
    rows = Table("account", shown, ("key", "eggs", "batches"), {"key": "cause"})
    result = what_if(work.season, causes=work.causes, relation=work.relation)
    picture = told("advice.what_if", result.table, facts=pictured.what_if(result))
    return Finding(
        "causes",
        "causes_account",
        facts,
        "likely" if len(named) else "cannot_tell",
        float(named["eggs"].sum()),
        table=rows,
        more=(picture, Said("causes_method")),
    )
