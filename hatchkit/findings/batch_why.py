"""Why a batch's hatch was poor: the likeliest cause, the stage and spell that speak for it, and what to do now."""

from __future__ import annotations

import pandas as pd

from hatchkit.findings.finding import Finding, Picture, Said, told

#: A stage of whose eggs more than this share is only assumed is told as "about".
ASSUMED = 0.2


def why(work) -> Finding:
    """The likeliest cause, how sure it is, and what to do now."""
    causes = work.causes
    if causes is None:
        return Finding(
            "why",
            "why_not_over",
            dict(batch=work.batch, poor="unknown"),
            "cannot_tell",
            do=Said("do_unaccounted"),
            why_sure=Said("why_sure_not_over"),
        )
    first, spell = causes.table.iloc[0], worst_spell(work, causes.table["cause"].iloc[0])
    tied = [Said("eggs_of_cause_weight", row) for row in causes.table[causes.table["tied"]].to_dict("records")][:3]
    facts = dict(
        batch=work.batch,
        key=first["cause"],
        share=first["share"],
        poor=work.facts["poor"],
        tied=tied,
        unaccounted=causes.unaccounted,
        reason=_reason(causes, spell),
        **_pair(causes),
    )
    if facts["poor"] == "no":
        # Where no more was lost than is usual, nothing is laid to a cause, whatever was noted.
        named = causes.first_named()
        facts |= dict(
            hatched=work.facts["hatched"],
            set=work.facts["set"],
            key=named,
            share=causes.table.set_index("cause").at[named, "share"],
        )
        return Finding(
            "why",
            "why_not_poor",
            facts,
            "sure",
            do=Said("do_bad_luck"),
            why_sure=Said("why_sure_not_poor", facts),
            picture=_picture(work, spell),
        )
    code = causes.verdict.replace(" ", "_")
    sure = {"confident": "likely", "probable": "likely", "two_causes": "likely", "bad_luck": "likely"}.get(
        code, "cannot_tell"
    )
    key = causes.first_named() if first["cause"] in ("bad_luck", "unlisted") else first["cause"]
    do = Said("do_bad_luck") if code == "bad_luck" else Said(f"do_{key}")
    return Finding(
        "why",
        f"why_{code}",
        facts,
        sure,
        float(first["eggs_lost"]),
        do=do,
        why_sure=Said(f"why_sure_{code}", dict(facts, next=_second(causes))),
        picture=_picture(work, spell),
    )


def _reason(causes, spell) -> Said:
    """The stage that lost most beyond the usual, and the spell that came before it."""
    rows = causes.pattern[causes.pattern["stage"] != "hatched"]
    row = rows.loc[(rows["eggs"] - rows["usual"]).idxmax()]
    if causes.unaccounted > max(row["eggs"] - row["usual"], 0.0):
        return Said("reason_unaccounted", dict(eggs=causes.unaccounted))
    if row["eggs"] - row["usual"] < 1 and spell is None:
        return Said("reason_none")
    about = "yes" if row["assumed"] > ASSUMED * max(row["eggs"], 1.0) else "no"
    facts = dict(stage=row["stage"], eggs=row["eggs"], usual=row["usual"], about=about)
    if spell is None:
        return Said("reason_stage", facts)
    return Said("reason_spell", {**facts, "spell": Said("reason_of_spell", spell)})


def _pair(causes) -> dict:
    if causes.verdict != "two causes":
        return {}
    pair = causes.pairs.iloc[0]
    return dict(
        first=pair["first"], second=pair["second"], eggs_first=pair["eggs_first"], eggs_second=pair["eggs_second"]
    )


def _second(causes) -> Said:
    row = causes.table.iloc[1]
    return Said("eggs_of_cause_weight", dict(cause=row["cause"], share=row["share"]))


def worst_spell(work, cause) -> dict | None:
    """The worst spell of the batch of the kind that the cause speaks of."""
    kind = {"cold_spell": "cold", "heat_spell": "warm"}.get(cause)
    found = work.excursions
    found = found[(found["kind"] == kind) & found["notable"].astype(bool)]
    if found.empty:
        return None
    return found.loc[found["degree_hours"].abs().idxmax()].to_dict()


def _picture(work, spell) -> Picture | None:
    """The spell close up, or where the eggs went."""
    from hatchkit.climate import pictured
    from hatchkit.climate.timeline import close_up

    if spell is not None:
        row = pd.Series(spell)
        options = dict(unit=work.unit, timezone=work.season.timezone)
        return told(
            "climate.excursion_close_up",
            close_up(work.alone, row),
            row,
            facts=pictured.excursion_close_up(row, **options),
            **options,
        )
    if work.breakdown.empty:
        return None
    return work.ledger
