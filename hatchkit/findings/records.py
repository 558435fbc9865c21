"""What was read and what was assumed in reading it: the last section of every page."""

from __future__ import annotations

from hatchkit.findings.counts import season_facts
from hatchkit.findings.finding import Finding, Said, Table, Told


def records(season) -> Finding:
    """Assumptions, counts of what was read and of what could not be taken as written, and the list of that."""
    from hatchkit.problems import SEVERITIES, in_language
    from hatchkit.records import check

    assumed = check.assumed(season)
    counts = season.problems["severity"].value_counts()
    facts = dict(
        season_facts(season),
        readings=len(season.readings),
        assumed=assumed.how or "nothing",
        machines=sorted(season.readings["incubator"].astype(str).unique()),
        questions=len(assumed.questions),
        unlike=int(counts.get("lost", 0) + counts.get("doubtful", 0)),
        **{name: int(counts.get(name, 0)) for name in SEVERITIES},
    )
    plain = (Told("sheets.assumed_words", assumed),) if assumed.how else ()
    table = None
    if len(season.problems):
        columns = ("severity", "file", "row", "found", "done", "fix")
        told = in_language(season.problems, season.language)
        table = Table("problems", told[list(columns)].astype(object), columns, {"severity": "severity"})
    return Finding(
        "records",
        "records_read",
        facts,
        _sure(assumed.how),
        plain=plain,
        table=table,
        more=(Said("records_how", facts), Said("records_see")),
    )


def _sure(how: str) -> str:
    return {"sure": "sure", "likely": "likely", "open": "guess"}.get(how, "cannot_tell")
