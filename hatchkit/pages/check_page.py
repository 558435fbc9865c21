"""`hatchkit check --html`: the same as on the terminal, as one page; all text from the files is escaped."""

from __future__ import annotations

from hatchkit.pages.check_text import assumed_line, example_of
from hatchkit.pages.frame import template
from hatchkit.problems import COLUMNS, SEVERITIES, in_language
from hatchkit.records import check
from hatchkit.say import text
from hatchkit.say.logs import log_words
from hatchkit.say.sheets import heading_words, ledger_words, place_words, question_words, sheet_words, why_words
from hatchkit.say.speak import reading_words

#: A page of more rows than this opens slowly; the CSV holds them all.
MOST_ROWS = 2_000


def check_page(season, *, language: str | None = None) -> str:
    """How the sheets were read, the ledger, what is asked and every problem, as one HTML page.

    Parameters
    ----------
    season : Season
    language : str, optional
        Another than that of the season.

    Returns
    -------
    str
    """
    language = language or season.language

    def say(code, **facts):
        return text(code, facts, language)

    counts = {name: len(getattr(season, name)) for name in ("batches", "eggs", "weights", "readings")}
    ledger, questions = check.ledger_of(season), check.questions_of(season)
    facts = dict(
        language=language,
        title=say("check_title", title=season.title),
        assumed=assumed_line(season, language),
        counts=say("check_counts", title=season.title, **counts),
        clock=say("check_clock", timezone=season.timezone) if season.timezone != "UTC" else "",
        i_read=say("check_i_read"),
        head=[say(f"check_head_{name}") for name in ("heading", "taken", "example", "sure", "why")],
        sheets=[_sheet(sheet, language) for sheet in check.sheets_read(season)],
        questions=[question_words(question, language) for question in questions],
        questions_head=say("questions_head", count=len(questions)),
        questions_how=say("questions_how"),
        ledger=[ledger_words(row, language) for row in ledger.rows[:MOST_ROWS]],
        ledger_head=say("ledger_head"),
        ledger_total=say("ledger_total", rows=ledger.adds_up, of=ledger.of),
        logs=[log_words(log, language) for log in check.logs_read(season, alike=False)[:MOST_ROWS]],
        logs_head=say("logs_head"),
        problems=_problems(season.problems, language),
        problems_none=say("problems_none"),
        problem_head=[say(f"problems_head_{name}") for name in ("where", "found", "done", "fix")],
    )
    return template("check").render(facts)


def _sheet(sheet, language: str) -> dict:
    rows = [
        dict(
            sure=column["how_sure"],
            cells=[
                heading_words(column, language),
                reading_words(column["taken"], language),
                example_of(column),
                text(f"sure_{column['how_sure']}", {}, language),
                why_words(column["why"], language),
            ],
        )
        for column in sheet.columns
    ]
    return dict(name=sheet_words(sheet.file, sheet.sheets, language), rows=rows)


def _problems(problems, language: str) -> list[dict]:
    parts = []
    kept = in_language(problems, language).fillna({name: "" for name in COLUMNS if name not in ("row", "facts")})
    for severity in SEVERITIES:
        part = kept[kept["severity"] == severity]
        if part.empty:
            continue
        rows = [
            [place_words(check.place_of(row), language), row["found"], row["done"], row["fix"]]
            for row in part.head(MOST_ROWS).to_dict("records")
        ]
        more = text("problems_first", dict(most=MOST_ROWS), language) if len(part) > MOST_ROWS else ""
        parts.append(dict(head=text(f"problems_{severity}", dict(count=len(part)), language), rows=rows, more=more))
    return parts
