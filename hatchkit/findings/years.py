"""The findings of several years: how each hatched, what changed, whether changes helped, which groups differ."""

from __future__ import annotations

from hatchkit.findings import more_relate
from hatchkit.findings.counts import COUNTED_SHARE, season_facts, shares_shown
from hatchkit.findings.finding import Finding, Findings, Picture, Said, Table, answers
from hatchkit.findings.records import records
from hatchkit.findings.years_groups import groups, keepers
from hatchkit.problems import HatchkitError
from hatchkit.relate.relation import relate_losses
from hatchkit.say import text
from hatchkit.units import check_unit
from hatchkit.yearly.by_year import by_year, same, what_changed
from hatchkit.yearly.helped import helped as what_helped


def years(season, *, unit: str = "C", progress=None, each=None) -> Findings:
    """What several seasons answer together.

    Parameters
    ----------
    season : Season
        Of several years, or of several keepers.
    unit : {"C", "F"}
    progress, each : callable, optional
        Called with (questions answered, questions in all), and with each finding as soon as it is made.

    Returns
    -------
    Findings
        In order; ``hk.write_page`` makes a page of them. Shares 0-1, eggs as counts.

    Raises
    ------
    HatchkitError
        With one year of one keeper only.

    Notes
    -----
    Source: pooling and intervals as in `hatchkit.yearly` (beta-binomial with stated priors); see there what was
    measured.
    """
    check_unit(unit)
    if len(season.years) < 2 and len(season.keepers) < 2:
        raise HatchkitError("years_one", dict(name=season.title))
    found = answers((each_year, differ, helped, keepers, groups, warmth), season, progress, each)
    facts = dict(
        season_facts(season), years=season.years, keepers=season.keepers, set=float(season.batches["eggs_set"].sum())
    )
    unknown = tuple(Said(f"years_unknown_{name}") for name in ("cause", "choice", "records"))
    return Findings("years", facts, found, records(season), unknown, unit=unit, language=season.language)


def each_year(season):
    """How did each year hatch?"""
    table = by_year(season)
    hatch = table[table["outcome"] == "hatch"].sort_values("season")
    if hatch.empty:
        yield Finding("years_hatch", "years_hatch_none", {}, "cannot_tell")
        return
    told = [
        Said("years_one_year", dict(year=str(row.season), share=row.share, low=row.low, high=row.high))
        for row in hatch.itertuples()
    ]
    highest, lowest = hatch.loc[hatch["share"].idxmax()], hatch.loc[hatch["share"].idxmin()]
    facts = dict(
        told=told,
        highest=str(highest["season"]),
        lowest=str(lowest["season"]),
        high=highest["share"],
        low=lowest["share"],
        number=len(hatch),
        ordered=bool(highest["share"] > lowest["share"]),
        luck=_luck(season),
    )
    shown = table.assign(season=table["season"].astype(str))
    yield Finding(
        "years_hatch",
        "years_hatch_told" if facts["ordered"] else "years_hatch_one",
        facts,
        "sure",
        why_sure=Said("years_interval"),
        do=Said("years_do_changes_kept" if len(season.changes) else "years_do_changes"),
        picture=Picture("years.by_year", table, Said("alt_years", facts)),
        table=Table(
            "years",
            shares_shown(shown),
            ("season", "outcome", "batches", "total", COUNTED_SHARE),
            {"outcome": "outcome"},
        ),
    )


def _luck(season) -> str:
    """Whether the hatch of the years differs "beyond" luck, "within" it, or "untold"."""
    table = what_changed(season)
    hatch = table[(table["outcome"] == "hatch") & table["chance"].notna()]
    if hatch.empty:
        return "untold"
    return "beyond" if hatch["more_than_luck"].iloc[0] else "within"


def differ(season):
    """Do the years differ by more than luck?"""
    table = what_changed(season)
    if table.empty:
        return
    more = table[table["more_than_luck"]]
    told = [
        Said(
            "years_differ_one",
            dict(
                outcome=row.outcome,
                lowest=str(row.lowest),
                low=row.lowest_share,
                highest=str(row.highest),
                high=row.highest_share,
            ),
        )
        for row in more.itertuples()
    ]
    facts = dict(told=told, number=len(more), comparisons=int(table["chance"].notna().sum()))
    tables = []
    for by in ("incubator", "pen", "month"):
        rows = same(season, by)
        rows = rows[rows["outcome"].isin(["fertility", "hatch_of_fertile"])]
        if len(rows):
            names = [text("group_name", dict(by=by, name=one), season.language) for one in rows["group"]]
            shown = shares_shown(rows.assign(season=rows["season"].astype(str), group=names))
            tables.append(
                Table(
                    f"same_{by}",
                    shown,
                    ("group", "season", "outcome", "batches", COUNTED_SHARE),
                    {"outcome": "outcome"},
                )
            )
    code = "years_differ_yes" if len(more) else "years_differ_no"
    if not table["chance"].notna().any():
        code = "years_differ_untold"
    yield Finding(
        "years_differ",
        code,
        facts,
        "likely" if len(more) else "cannot_tell",
        plain=(Said("years_differ_how"),),
        more=tuple(tables),
    )


def helped(season):
    """Did what was changed help?"""
    if not len(season.changes):
        yield Finding("years_helped", "years_helped_none", {}, "cannot_tell")
        return
    table = what_helped(season)
    table = table.assign(date=table["date"].dt.tz_convert(season.timezone))
    lines, best = [], []
    for _, rows in table.groupby(["date", "what"], sort=True):
        known = rows[rows["chance"].notna() & rows["outcome"].isin(["fertility", "hatch_of_fertile"])]
        if known.empty:
            lines.append(Said("change_" + rows["verdict"].iloc[0], _facts(rows.iloc[0])))
            continue
        if rows["about"].iloc[0] in set(known["outcome"]):  # fixed by the place, not by what came of it
            known = known[known["outcome"] == rows["about"].iloc[0]]
        row = known.loc[
            (known["verdict"].map({"helped": 0, "hint": 1, "worse": 2}).fillna(3) + known["chance"]).idxmin()
        ]
        if row["verdict"] == "not_seen":  # then the outcome that moved most is the one that a person looks at
            row = known.loc[(known["after"] - known["before"]).abs().idxmax()]
        best.append(row)
        lines.append(Said("change_" + row["verdict"], _facts(row)))
        if row["beside"] and row["verdict"] in ("helped", "hint"):
            lines.append(Said("change_beside", dict(what=row["what"], others=row["beside"])))
    good = sum(row["verdict"] == "helped" for row in best)
    facts = dict(
        number=len({(row["date"], row["what"]) for row in table.to_dict("records")}),
        helped=good,
        hints=sum(row["verdict"] == "hint" for row in best),
        lines=lines,
    )
    chosen = table.loc[[row.name for row in best]] if best else table.iloc[:0]
    picture = Picture("years.changes", chosen, Said("alt_changes", facts)) if len(chosen) else None
    shown = shares_shown(table.assign(changed=table["date"].dt.strftime("%Y-%m-%d"), change_what=table["what"]))
    yield Finding(
        "years_helped",
        "years_helped_told",
        facts,
        "likely" if good else "cannot_tell",
        plain=(*lines, Said("years_regression")),
        picture=picture,
        table=Table(
            "years_changes",
            shown,
            (
                "changed",
                "change_what",
                "outcome",
                "share_before",
                ("share_expected", "share_expected_low", "share_expected_high"),
                "share_after",
                "verdict",
            ),
            {"outcome": "outcome", "verdict": "verdict"},
        ),
    )


def _facts(row) -> dict:
    return {
        name: row[name]
        for name in (
            "date",
            "what",
            "outcome",
            "before",
            "expected",
            "expected_low",
            "expected_high",
            "after",
            "chance",
        )
    } | {"where": row["where"] or None}


def warmth(season):
    """Did warm and cold spells cost embryos, over all years?"""
    if season.readings.empty:
        return
    try:
        found = relate_losses(season)
    except HatchkitError:
        return
    facts = dict(batches=len(season.batches), years=len(season.years))
    sure = {"clear sign": "likely", "some sign": "guess"}.get(found.verdict, "cannot_tell")
    code = {"clear sign": "years_warmth_clear", "some sign": "years_warmth_some"}.get(found.verdict, "years_warmth_no")
    yield Finding("years_warmth", code, facts, sure, more=tuple(more_relate.relation(found)))
