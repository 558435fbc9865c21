"""Which groups of eggs differ over the years: keepers, machines, pens, breeds, shelves, egg ages, months, birds."""

from __future__ import annotations

import numpy as np

from hatchkit.findings.counts import POOLED_SHARE, shares_shown
from hatchkit.findings.finding import Finding, Picture, Said, Table
from hatchkit.say import text
from hatchkit.yearly.groups import groups as compare

#: What is compared by itself: column and outcome.
COMPARED = (
    ("incubator", "hatch_of_fertile"),
    ("pen", "fertility"),
    ("breed", "hatch"),
    ("shelf", "hatch_of_fertile"),
    ("stored_days", "hatch_of_fertile"),
    ("month", "hatch"),
    ("hen", "fertility"),
    ("cock", "fertility"),
)


def keepers(season):
    """Whose machine or room stands out?"""
    if len(season.keepers) < 2:
        return
    yield from _compared(season, "keeper", "hatch_of_fertile")


def groups(season):
    """Which groups differ?"""
    for by, outcome in COMPARED:
        yield from _compared(season, by, outcome)


def _compared(season, by, outcome):
    if by in season.batches or by in ("month", "hen", "cock"):
        found = compare(season, by, outcome=outcome)
        if len(found.table) > 1:
            yield _groups_finding(found, season.language)


def _groups_finding(found, language) -> Finding:
    clear, may = (found.pairs[found.pairs["verdict"] == name] for name in ("clear", "may"))

    def name(group):
        return Said("group_name", dict(by=found.by, name=group))

    def told(pairs, most):
        return [
            Said("groups_pair", dict(better=name(row.better), worse=name(row.worse)))
            for row in pairs.head(most).itertuples()
        ]

    # One message for all columns; the heading alone names the column.
    rest = found.pairs[found.pairs["verdict"] != "clear"]
    more = rest["eggs_more"].dropna()
    low = found.table.iloc[-1]
    facts = dict(
        by=found.by,
        outcome=found.outcome,
        comparisons=found.comparisons,
        groups=len(found.table),
        clear=len(clear),
        may=len(may),
        clear_told=told(clear, 4),
        may_told=told(may, 4),
        eggs_more=more.iloc[0] if len(more) else np.nan,
        lowest_name=name(low["group"]),
        count=low["count"],
        total=low["total"],
        missed=low["total"] - low["count"],
        share=low["share"],
        pooled=low["pooled"],
    )
    # Months and hens by their names, in picture and table as in the sentences.
    shown = found.table.assign(group=[text("group_name", name(one).facts, language) for one in found.table["group"]])
    code = "groups_clear" if len(clear) else "groups_may" if len(may) else "groups_none"
    plain = [
        Said("groups_mixed", dict(column=row["with"], groups=list(row["groups"])))
        for row in found.confounded.to_dict("records")
    ]
    if found.by in ("hen", "cock") and found.outcome == "fertility":
        plain.insert(0, Said("groups_lowest", facts))
    return Finding(
        f"groups_{found.by}",
        code,
        facts,
        "likely" if len(clear) else "guess" if len(may) else "cannot_tell",
        why_sure=Said("groups_how", facts),
        plain=tuple(plain),
        picture=Picture("years.groups", shown, Said("alt_groups", facts)),
        table=Table(
            "groups",
            shares_shown(shown),
            ("group", "batches", "total", "share_counted", POOLED_SHARE),
        ),
    )
