"""What is told of losses and temperature to who looks further: the verdict's reasons, as codes and numbers."""

from __future__ import annotations

import numpy as np

from hatchkit.findings.finding import Said
from hatchkit.relate.verdict import CLEAR, NONE, SOME, rules

#: How many windows after an excursion are told one by one.
MOST = 3


def counts(found) -> list[Said]:
    """The verdict of a ``CountsRelation`` and its reasons."""
    told = [_verdict(found)]
    if found.effect and found.effect["method"] != "none":
        told += [*_size(found), *_chance(found.test), *_interval(found), *_could_show(found), *_excess(found.excess)]
        told += _together(found.confounding)
        told += [Said("relate_allowed", dict(factors=found.adjusted))] if found.adjusted else []
        told += [Said("relate_not_allowed", dict(factors=found.not_carried))] if found.not_carried else []
    why = found.left_out["why"].value_counts()
    return told + [Said("relate_left_out", dict(why=reason, windows=number)) for reason, number in why.items()]


def relation(found) -> list[Said]:
    """The same for a season's ``Relation``, with the question first asked and the limits last."""
    told = counts(found)
    if not (found.exposure["share_logged"] > 0).any():
        return told
    told.append(Said("relate_asked"))
    told += _too_few(found.effect)
    unknown = int(found.exposure["dose"].isna().sum()) if "dose" in found.exposure else 0
    told += [Said("relate_unlogged", dict(unknown=unknown, windows=len(found.exposure)))] if unknown else []
    told += _right_after(found.next_window) or _to_the_end(found)
    return told + ([Said("relate_not_the_cause")] if found.verdict in (CLEAR, SOME) else [])


def _verdict(found) -> Said:
    facts = found.because
    if "why" in facts:
        return Said(f"relate_why_{facts['why']}", facts)
    return Said(f"relate_{found.verdict.replace(' ', '_')}", facts)


def _size(found) -> list[Said]:
    effect = found.effect
    told = [
        Said(
            "relate_size",
            dict(
                exposed=int(effect["exposed"]),
                batches=int(effect["batches"]),
                **{name: _bounded(effect[name]) for name in ("hazard_ratio", "low", "high")},
            ),
        )
    ]
    # Of small records only those with a large difference by luck give a clear sign (simulated: 3 where 2 is true).
    if found.verdict == CLEAR and found.detectable.get("doubling", 1.0) < 0.5:
        told.append(Said("relate_winner"))
    return told


def _bounded(value):
    """A ratio without false precision: none beyond 20, two decimals below 1; missing where there is no number."""
    if not np.isfinite(value):
        return None
    return 21.0 if value > 20 else round(float(value), 2 if value < 1 else 1)


def in_many(share) -> dict:
    """A share as so many in 10, 100 or 1000, the shortest that does not round by much (`many` 0: fewer than 1)."""
    out_of = 10 if share >= 0.15 else 100 if share >= 0.01 else 1000
    return dict(many=round(share * out_of) if share >= 0.001 else 0, out_of=out_of)


def _chance(test) -> list[Said]:
    if test["kind"] == "none" or not np.isfinite(test["more"]):
        return []
    if test["arrangements"] <= 1:
        return [Said("relate_no_arrangement")]
    told = [Said("relate_chance", dict(in_many(test["more"]), turned=test["kind"] == "log turned"))]
    if test["smallest"] > rules()["clear_chance"]:
        told.append(Said("relate_smallest", in_many(test["smallest"])))
    if np.isfinite(test.get("drawn", np.nan)):
        told.append(Said("relate_drawn", in_many(test["drawn"])))
    return told


def _interval(found) -> list[Said]:
    if found.verdict == SOME:
        return [Said("relate_less_than_clear")]
    return [Said("relate_harm_not_size")] if found.verdict == CLEAR and found.effect["low"] <= 1 else []


def _could_show(found) -> list[Said]:
    able = found.detectable
    if found.verdict == CLEAR or not able or not len(able["ratios"]):
        return []
    least = able["detectable"]
    ratio = _bounded(least)
    if found.verdict == NONE:
        return [Said("relate_would_show", dict(ratio=ratio))]
    return [Said("relate_shows_from", dict(ratio=ratio, why=able.get("why", "")))]


def _excess(excess) -> list[Said]:
    return [Said("relate_excess", excess.iloc[-1].to_dict())] if len(excess) else []


def _together(table) -> list[Said]:
    """The factors that go with the exposure, the more so those that cannot be told from it."""
    if not len(table):
        return []
    weak = table[~table["apart"].astype(bool) | table["how"].isin(["together", "in_part", "exact"])]
    return [Said(f"relate_{row['how']}", row) for row in weak.to_dict("records")]


def _too_few(effect) -> list[Said]:
    limit = rules()
    if not effect or effect["method"] == "none":
        return []
    if effect["exposed"] == 1:
        return [Said("relate_one_exposed")]
    if effect["batches"] < limit["least_batches"]:
        return [Said("relate_few_batches", dict(batches=int(effect["batches"])))]
    return (
        [Said("relate_few_deaths", dict(deaths=effect["deaths"]))] if effect["deaths"] < limit["least_deaths"] else []
    )


def _right_after(table) -> list[Said]:
    """Deaths in the window after one with an excursion, where they are more than plausible."""
    if not len(table) or table.iloc[-1]["died"] <= table.iloc[-1]["high"]:
        return []
    total, rows = table.iloc[-1], table.iloc[:-1]
    rows = rows[rows["died"] > rows["expected"]].sort_values("chance", kind="stable")
    where = [Said("relate_after_one", row) for row in rows.head(MOST)[["batch", "died", "at_risk"]].to_dict("records")]
    facts = dict(in_many(total["chance"]), died=total["died"], expected=total["expected"], where=where)
    return [Said("relate_after", dict(facts, others=max(len(rows) - MOST, 0)))]


def _to_the_end(found) -> list[Said]:
    table = found.later
    strong = table[(table["low"] > 1) & (table["exposed"] >= rules()["least_exposed"])]
    same = set(found.windows.loc[found.windows["low"] > 1, "name"])
    late = [name for name in strong["name"] if name not in same]
    return [Said("relate_later", dict(looks=late))] if late else []
