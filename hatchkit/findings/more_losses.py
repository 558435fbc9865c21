"""What is told of losses to who looks further: not counted, near misses, ages, places, course, as codes and numbers."""

from __future__ import annotations

import math

import pandas as pd

from hatchkit.findings.finding import Said

#: Chance below which a comparison that is not called unusual is named all the same.
NEAR = 0.02
#: With fewer others of the species little can be called unusual.
FEW_OTHERS = 5


def odds(chance) -> int:
    """A chance as 1 in so many, to two figures."""
    value = 1 / max(chance, 1e-4)
    digits = 10 ** max(int(math.log10(value)) - 1, 0)
    return int(round(value / digits) * digits)


def not_counted(table: pd.DataFrame) -> list[Said]:
    """What a breakdown of the whole season could not count, and which batches it leaves out."""
    told, others = [], {}
    for stage, batches in table.attrs["not_counted"].items():
        if stage == "clear":
            told.append(Said("clears_left_uncounted", dict(batches=list(batches), eggs=sum(batches.values()))))
        elif stage != "infertile":
            others.setdefault(tuple(batches), []).append(stage)
    number = table.attrs["batches"]
    for batches, stages in others.items():
        facts = dict(stages=stages, batches=list(batches), all=len(batches) == number > 1, number=number)
        told.append(Said("lost_uncounted", facts))
    return told + [Said(f"left_out_{row['why']}", row) for row in table.attrs["left_out"]]


def luck(table: pd.DataFrame) -> list[Said]:
    """What stands beside the unusual comparisons of ``bad_luck``: near misses, few others, published levels."""
    own, against = table[table["chance"].notna()], table[table["norm_chance"].notna()]
    told = []
    if len(own):
        expected = len(own) / 20
        # Counts are whole eggs, so fewer than 1 in 20 reach so small a chance (2.6 to 4.3 % were simulated).
        facts = dict(rare=int((own["chance"] <= 0.05).sum()), by_luck=round(expected) if expected >= 0.95 else 0)
        told.append(Said("luck_own", dict(facts, comparisons=len(own))))
        near = own[~own["unusual"].astype(bool) & (own["chance"] <= NEAR)].sort_values("chance").head(3)
        if len(near):
            rows = [Said("luck_near_one", dict(row, eggs=round(row["eggs"]))) for row in near.to_dict("records")]
            told.append(Said("luck_near", dict(near=rows)))
        few = own.loc[own["others"] < FEW_OTHERS, "batch"].nunique()
        told += [Said("luck_wide", dict(number=few, fewest=FEW_OTHERS))] if few else []
    told += _not_compared(table.attrs.get("not_counted", {}), set(own["stage"]))
    if len(against):
        found = against[against["norm_unusual"].astype(bool)].sort_values("norm_chance")
        rows = [
            Said(
                "luck_published_one",
                dict(
                    batch=row["batch"],
                    stage=row["stage"],
                    eggs=round(row["eggs"]),
                    low=row["norm_low"],
                    high=row["norm_high"],
                    one_in=odds(row["norm_chance"]),
                ),
            )
            for row in found.to_dict("records")
        ]
        levels = [Said("level_named", dict(level=level)) for level in against["norm"].unique()]
        told.append(
            Said("luck_published", dict(levels=levels, comparisons=len(against), number=len(found), unusual=rows))
        )
    return [*told, Said("luck_not_why")]


def _not_compared(left: dict, compared: set) -> list[Said]:
    """Stages of batches that were not compared for want of a count."""
    told: dict[tuple, list] = {}
    for stage, batches in left.items():
        # A sheet without a column of culls, say, is no news; one that has it only here and there is.
        if stage not in ("infertile", "unaccounted", "culled", "pipped_dead", "removed") or stage in compared:
            told.setdefault(tuple(batches), []).append(stage)
    return [Said("luck_uncounted", dict(stages=stages, batches=list(names))) for names, stages in told.items()]


def ages(result) -> list[Said]:
    """What an ``AgeAtDeath`` tells of each species: how many died, when the risk was highest, what is not known."""
    told = []
    for fit in result.fits.to_dict("records"):
        curve, hazard, table = (_of(part, fit) for part in (result.curve, result.hazard, result.table))
        if fit["deaths"] == 0:
            told.append(Said("ages_alive", dict(fit, most=curve["band_high"].max())))
            continue
        end = curve.iloc[-1]
        share = dict(share=end["at_least"], low=end["band_low"], high=end["band_high"])
        told.append(Said("ages_died", dict(fit, **share)))
        plain = fit["deaths"] / fit["eggs"]
        if fit["removed"] and _shows(end["at_least"], plain):
            told.append(Said("ages_removed", dict(removed=fit["removed"])))
        most = (fit["deaths"] + fit["unaccounted"]) / (fit["eggs"] + fit["unaccounted"])
        if fit["unaccounted"] and _shows(most, plain):
            told.append(Said("ages_unaccounted", dict(unaccounted=fit["unaccounted"], most=most)))
        told += _risk(hazard) + _wide(table)
    return [*told, Said("ages_method" if told else "ages_none")]


def _of(table, fit):
    return table[(table["group"] == fit["group"]) & (table["species"] == fit["species"])]


def _shows(share, other) -> bool:
    """Whether two shares differ by more than rounding."""
    return round(share, 2) != round(other, 2)


def _risk(hazard) -> list[Said]:
    if len(hazard) < 2:
        return []
    worst = hazard.loc[hazard["daily_high"].idxmax()]
    facts = dict(
        daily_low=worst["daily_low"],
        daily_high=worst["daily_high"],
        low=worst["band_low"],
        high=worst["band_high"],
        after=worst["after_day"],
        by=worst["by_day"],
        alone=worst["band_low"] > hazard.drop(index=worst.name)["band_high"].max(),
    )
    return [Said("ages_risk", facts)]


def _wide(table) -> list[Said]:
    wide = table[(table["share"] > 0.002) & (table["by_day"] - table["after_day"] > 3)]
    spans = [Said("ages_span", dict(after=row["after_day"], by=row["by_day"])) for row in wide.to_dict("records")]
    return [Said("ages_wide", dict(spans=spans))] if spans else []


def place_answer(table: pd.DataFrame) -> str:
    """What the tests of ``tray.clustering`` answer: "few", "pattern" or "no_sign"."""
    together = table.set_index("question").loc["together"]
    return "few" if together["smallest"] > 0.05 else "pattern" if together["chance"] <= 0.05 else "no_sign"


def place(table: pd.DataFrame) -> Said:
    """The counts behind the answer on places."""
    if table.empty:
        return Said("place_few")
    rows = table.set_index("question")
    near, edge = rows.loc["neighbours"], rows.loc["edge"]
    return Said(
        "place_counts",
        dict(
            rows.iloc[0][["eggs", "deaths", "trays"]].astype(int).to_dict(),
            pairs=near["seen"],
            pairs_expected=near["expected"],
            edge=edge["seen"],
            edge_expected=edge["expected"],
            chance=rows.at["together", "chance"],
            answer=place_answer(table),
        ),
    )


def course(table: pd.DataFrame) -> list[Said]:
    """What a season chart shows beside its answer: the level, batches outside, what it leaves out."""
    about, outside = table.attrs, table.loc[table["outside"], "batch"].astype(str).tolist()
    no_limits = ((table["low"] <= 0) & (table["high"] >= 1)).all()
    facts = dict(
        stage=about["stage"],
        species=about["species"],
        of=about["of"],
        centre=table["centre"].iloc[0],
        batches=len(table),
        outside=outside,
        limits="none" if no_limits else "outside" if outside else "inside",
    )
    told = [Said("course_centre", facts)]
    if about["provisional"]:
        told.append(Said("course_provisional", dict(fewest=20)))
    if about["not_counted"]:
        told.append(Said("course_uncounted", dict(batches=about["not_counted"])))
    kinds = [Said("course_other", dict(species=kind, batches=number)) for kind, number in about["others"].items()]
    return told + ([Said("course_others", dict(kinds=kinds))] if kinds else [])
