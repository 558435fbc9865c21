"""The candling sheet: one printed page for one batch, with the days of its looks and boxes to tick for its signs."""

from __future__ import annotations

import re

from hatchkit import reference
from hatchkit.pages.frame import template
from hatchkit.say import text
from hatchkit.say.speak import word
from hatchkit.words.cautions import cautions

#: Looks of a batch as its species' usual days have them, and blank lines for more.
LOOKS, SPARE = ("candle1", "candle2", "transfer", "hatch"), 3
#: Birds whose usual days stand on a sheet for any batch.
BIRDS = ("chicken", "duck", "muscovy", "goose", "turkey", "quail", "guinea", "pheasant")


def candling_sheet(season=None, batch=None, *, plan=None, language: str | None = None) -> str:
    """A sheet to take along to the candling, as an HTML page that prints on one side of A4 or Letter.

    Parameters
    ----------
    season : Season, optional
        With `batch`: whose eggs are candled; the days and dates of its looks then stand on the sheet.
    batch : str, optional
    plan : Plan, optional
        Of a set that is still to come, instead.
    language : {"en", "de", "fr", "es"}, optional
        That of the season if left out.

    Returns
    -------
    str
    """
    language = language or (season.language if season is not None else "en")

    def say(code, **facts):
        return text(code, facts, language)

    head, looks = _of_plan(plan, language) if plan is not None else _of_batch(season, batch, language)
    signs = reference.load("signs")
    signs = [say(f"sign_{sign}") for sign in signs.loc[signs["kind"] == "seen", "sign"]]
    return template("candling_sheet").render(
        language=language,
        title=say("paper_candling"),
        head=head,
        looks=looks,
        signs=signs,
        heads=[say(f"paper_{name}") for name in ("look", "day", "when", "clear", "dead", "other", "left", "notes")],
        ticks=say("paper_ticks"),
        explained=[say(f"paper_explain_{name}") for name in ("clear", "blank", "copy")],
        usual="" if any(look["when"] for look in looks) else say("paper_usual", birds=_usual_days(language)),
        care=say("take_care"),
        cautions=[*cautions("opening_eggs", language=language)[1:], *cautions("hatch", language=language)[:1]],
    )


def _of_batch(season, batch, language: str):
    """Facts for the head of the sheet, and its lines, of a batch that is in the season; blanks without one."""
    if season is None or batch is None:
        return _head(language), _lines(language)
    row, figures = season.batch(batch), season.species(batch)
    birds = f"{row['eggs_set']:.0f}"
    start = row["set_at"].tz_convert(season.timezone)
    kind = word("species", str(row["species"]), language)
    return (
        _head(
            language, name=row.get("name") or row["batch"], machine=row["incubator"], eggs=birds, kind=kind, start=start
        ),
        _lines(language, start, _days(row, figures)),
    )


def _days(row, figures) -> dict:
    """The day of each look: as it was written down, else as its species' looks usually are."""
    usual = dict(
        candle1=figures["candle1_day"],
        candle2=figures["candle2_day"],
        transfer=figures["transfer_day"],
        hatch=figures["incubation_days"],
    )
    kept = dict(candle1="candle1_at", candle2="candle2_at", transfer="transfer_at", hatch="taken_off_at")
    seen = {look: (row[column] - row["set_at"]).total_seconds() / 86400 for look, column in kept.items()}
    return {look: float(day) if seen[look] != seen[look] else seen[look] for look, day in usual.items()}


def _of_plan(plan, language: str):
    steps = plan.calendar.set_index("step")
    start = steps.at["set", "starts"]
    days = {name: float(steps.at[name, "day"]) for name in LOOKS[:3]} | {"hatch": float(steps.at["take_off", "day"])}
    wanted = plan.eggs.loc[plan.eggs["sure"] == round(plan.basis["sure"], 4), "eggs"].iloc[0]
    kind = word("species", plan.basis["species"], language)
    return _head(language, eggs=f"{wanted}", kind=kind, start=start), _lines(language, start, days)


def _head(language: str, *, name=None, machine=None, eggs=None, kind=None, start=None) -> list[tuple[str, str]]:
    """What stands above the table: words and value, "" where it is to be written in."""
    values = dict(batch=name, kind=kind, machine=machine, eggs=eggs, set=start)
    return [(text(f"paper_head_{code}", {}, language), _shown(value, language)) for code, value in values.items()]


def _shown(value, language: str) -> str:
    if value is None or value != value or not str(value):
        return ""
    return text("shown_time", dict(time=value), language) if hasattr(value, "tz_convert") else str(value)


def _lines(language: str, start=None, days=None) -> list[dict]:
    """Each look: its name, day and date."""
    from pandas import Timedelta

    lines = []
    for look in LOOKS:
        day = days[look] if days else None
        when = "" if day is None else text("paper_date", dict(day=start + Timedelta(days=day)), language)
        shown = "" if day is None else text("shown_number", dict(number=day), language)
        lines.append(dict(name=text(f"stage_{look}", {}, language), day=shown, when=when))
    return lines + [dict(name="", day="", when="")] * SPARE


def _usual_days(language: str) -> list[str]:
    table = reference.species_table()
    return [
        text(
            "paper_bird",
            dict(
                bird=word("species", bird, language),
                days=[
                    text("shown_number", dict(number=float(table.at[bird, column])), language)
                    for column in ("candle1_day", "candle2_day", "transfer_day", "incubation_days")
                ],
            ),
            language,
        )
        for bird in BIRDS
        if bird in table.index
    ]


def write_candling_sheet(out, season=None, batch=None, *, plan=None):
    """Write `candling_sheet` to the HTML file `out`; returns its path.

    Parameters
    ----------
    out : path
        Left out, a file in the working folder that is named after the batch.
    season, batch, plan
        As in `candling_sheet`.
    """
    from hatchkit.records.writing import safe_output, write_whole

    out = out or f"candling-sheet-{re.sub('[^A-Za-z0-9_.-]+', '_', str(batch or 'blank'))[:60]}.html"
    out = safe_output(out, season=season.folder if season is not None else None, suffix=(".html", ".htm"))
    language = plan.language if plan is not None else None
    html = candling_sheet(season, batch or None, plan=plan, language=language)
    write_whole(out, html)
    return out
