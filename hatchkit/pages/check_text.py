"""`hatchkit check` on a terminal: how the sheets were read, whether the eggs add up, what is asked, what to fix."""

from __future__ import annotations

import re
import textwrap

from hatchkit.problems import SEVERITIES, in_language
from hatchkit.records import check
from hatchkit.say import text
from hatchkit.say.logs import log_words
from hatchkit.say.sheets import (
    assumed_words,
    heading_words,
    ledger_words,
    place_words,
    question_words,
    sheet_words,
    why_words,
)
from hatchkit.say.speak import reading_words

#: Lines in all where nothing is asked, and those for the columns and for the ledger of them.
MOST_LINES, MOST_READ, MOST_LEDGER = 40, 18, 3
#: Groups of loggers' files, and lines of each, where not all are asked for.
MOST_LOGS, MOST_LOG_LINES = 3, 2
#: At least so many lines are left to what is to be mended.
LEAST_PROBLEMS = 9
#: Widest text of heading, reading, example, sureness, in characters; the reason gets what is left.
_WIDEST = (22, 25, 16, 8)


def check_text(season, *, width: int = 100, full: bool = False, language: str = "en") -> str:
    """What `hatchkit check` shows.

    Parameters
    ----------
    season : Season
    width : int
        Characters a line.
    full : bool
        Every column and every remark, however many lines.
    language : {"en", "de", "fr", "es"}

    Returns
    -------
    str
        At most `MOST_LINES` lines where nothing is asked and `full` is not set.
    """
    logs = _logs(season, width, full, language)
    lines = _counts(season, width, language)
    lines += _reading(season, width, full, MOST_READ - len(logs), language)
    lines += _ledger(season, width, full, language)
    lines += logs
    lines += _questions(season, width, language)
    left = None if full else max(MOST_LINES - len(lines), LEAST_PROBLEMS)
    return "\n".join(lines + _problems(season.problems, width, left, language))


def assumed_line(season, language: str = "en") -> str:
    """One line on what was assumed in reading the sheets, how sure it is, and what hangs on it.

    Parameters
    ----------
    season : Season
    language : {"en", "de", "fr", "es"}

    Returns
    -------
    str
    """
    return printable(assumed_words(check.assumed(season), language))


def printable(words) -> str:
    """Text without control characters, which a terminal would obey."""
    return "".join(char if char.isprintable() else " " for char in str(words))


def _wrapped(words: str, width: int, most: int | None = None, first: str = "", then: str = "  ") -> list[str]:
    lines = textwrap.wrap(printable(words), width, initial_indent=first, subsequent_indent=then, break_on_hyphens=False)
    if most is not None and len(lines) > most:
        lines = [*lines[: most - 1], lines[most - 1][: width - 4] + " ..."]
    return lines


def _counts(season, width: int, language: str) -> list[str]:
    counts = {name: len(getattr(season, name)) for name in ("batches", "eggs", "weights", "readings")}
    lines = _wrapped(text("check_counts", dict(title=season.title, **counts), language), width, 2)
    if season.timezone != "UTC":
        lines += _wrapped(text("check_clock", dict(timezone=season.timezone), language), width, 1)
    return lines


# ---- how the sheets were read -----------------------------------------------------------------------------


def _reading(season, width: int, full: bool, most_read: int, language: str) -> list[str]:
    sheets = check.sheets_read(season)
    if not sheets:
        return []
    shown = sheets if full else _sheets_shown(sheets)
    rows = {}
    spare = most_read - 2 * len(shown) - sum(sheet.doubts for sheet in shown)
    for number, sheet in enumerate(shown):
        most = len(sheet.columns) if full else sheet.doubts + max(0, spare) // (len(shown) - number)
        if not full and len(sheet.columns) > most:
            most -= 1  # the line of what is left out
        rows[number] = check.columns_shown(sheet, most)
        spare -= max(0, len(rows[number][0]) - sheet.doubts) + bool(rows[number][1])
    cells = {number: [_cells(column, language) for column in shown_here] for number, (shown_here, _) in rows.items()}
    head = tuple(text(f"check_head_{name}", {}, language) for name in ("heading", "taken", "example", "sure", "why"))
    widths = _widths([head, *(row for part in cells.values() for row in part)], width)
    lines = ["", text("check_i_read", {}, language)]
    for number, sheet in enumerate(shown):
        lines += _wrapped(sheet_words(sheet.file, sheet.sheets, language) + ":", width, 1)
        if cells[number] and number == 0:
            lines.append(_line(head, widths))
        lines += [_line(row, widths) for row in cells[number]]
        if rows[number][1]:
            lines += _wrapped(_besides(rows[number][1], language), width, 2 if len(shown) == 1 else 1, "  ", "  ")
    if len(shown) < len(sheets):
        lines += _wrapped(text("check_more_sheets", dict(sheets=len(sheets) - len(shown)), language), width, 1)
    return lines


def _sheets_shown(sheets: list) -> list:
    """The sheets to be shown: those with a doubt first to be kept, and no more than their titles have room for."""
    kept = sorted(range(len(sheets)), key=lambda number: -sheets[number].doubts)[:4]
    doubtful = [number for number in range(len(sheets)) if sheets[number].doubts]
    return [sheets[number] for number in sorted({*kept, *doubtful[:8]})]


def _cells(column: dict, language: str) -> tuple:
    return (
        heading_words(column, language),
        reading_words(column["taken"], language),
        example_of(column),
        text(f"sure_{column['how_sure']}", {}, language),
        why_words(column["why"], language),
    )


def example_of(column: dict) -> str:
    """A column's example; a time without its seconds, a day without midnight."""
    return re.sub(
        r"^(\d{4}-\d\d-\d\d)(?: 00:00:00|( \d\d:\d\d):00)$", lambda m: m[1] + (m[2] or ""), str(column["example"])
    )


def _widths(rows: list[tuple], width: int) -> list[int]:
    widest = [min(max(len(row[place]) for row in rows), most) for place, most in enumerate(_WIDEST)]
    return [*widest, max(10, width - 2 - sum(widest) - 2 * len(widest))]


def _line(cells: tuple, widths: list[int]) -> str:
    shown = [printable(cell) for cell in cells]
    cut = [cell if len(cell) <= most else cell[: most - 3] + "..." for cell, most in zip(shown, widths, strict=True)]
    return ("  " + "  ".join(cell.ljust(most) for cell, most in zip(cut, widths, strict=True))).rstrip()


def _besides(columns: list[dict], language: str) -> str:
    pairs = [
        text(
            "check_pair",
            dict(heading=heading_words(column, language), taken=reading_words(column["taken"], language)),
            language,
        )
        for column in columns
    ]
    return text("check_plain", dict(pairs=pairs), language)


# ---- the ledger and the questions -------------------------------------------------------------------------


def _ledger(season, width: int, full: bool, language: str) -> list[str]:
    ledger = check.ledger_of(season)
    if not ledger.of:
        return []
    lines = ["", text("ledger_head", {}, language)]
    rows = ledger.rows
    if not full:
        rows = sorted(rows, key=lambda row: not (row["terms"] and row["rest"]))[:MOST_LEDGER]
    for row in rows:
        lines += _wrapped(ledger_words(row, language), width, None if full else 2, "  ", "    ")
    more = max(ledger.of, len(ledger.rows)) - len(rows)
    lines += ["  " + text("ledger_more", dict(count=more), language)] if more > 0 and rows else []
    return [*lines, "  " + text("ledger_total", dict(rows=ledger.adds_up, of=ledger.of), language)]


def _logs(season, width: int, full: bool, language: str) -> list[str]:
    """A line or two for each logger's file, those of one machine that are alike together."""
    logs = check.logs_read(season, alike=not full)
    if not logs:
        return []
    shown = logs if full or len(logs) <= MOST_LOGS + 1 else sorted(logs, key=lambda log: not log["asked"])[:MOST_LOGS]
    lines = ["", text("logs_head", {}, language)]
    for log in shown:
        most = None if full or log["asked"] else MOST_LOG_LINES
        lines += _wrapped(log_words(log, language), width, most, "  ", "    ")
    if len(shown) < len(logs):
        lines += _wrapped(text("logs_more", dict(more=len(logs) - len(shown)), language), width, 1, "  ")
    return lines


def _questions(season, width: int, language: str) -> list[str]:
    questions = check.questions_of(season)
    if not questions:
        return []
    lines = ["", text("questions_head", dict(count=len(questions)), language)]
    for number, question in enumerate(questions, start=1):
        words = question_words(question, language)
        first = f"{number}. "
        lines += _wrapped(f"{words['ask']} ({words['where']}) {words['rows']}", width, None, first, "   ")
        lines += _wrapped(words["each"], width, None, "   ", "   ")
    return [*lines, *_wrapped(text("questions_how", {}, language), width)]


# ---- what to fix -----------------------------------------------------------------------------------------


def _problems(problems, width: int, most: int | None, language: str) -> list[str]:
    groups = check.group_problems(in_language(problems, language))
    if groups.empty:
        return [text("problems_none", {}, language)]
    lines, told, kinds = [], 0, 0
    for severity in SEVERITIES:
        part = groups[groups["severity"] == severity].to_dict("records")
        if not part:
            continue
        head = ["", text(f"problems_{severity}", dict(count=sum(row["times"] for row in part)), language)]
        for row in part:
            block = _problem(row, width, most is not None, language)
            kinds += 1
            if most is not None and len(lines) + len(head) + len(block) > most - 1:
                continue
            lines, head, told = lines + head + block, [], told + 1
    if told < kinds:
        lines += _wrapped(text("problems_folded", dict(count=kinds - told), language), width, 1)
    return lines


def _problem(row: dict, width: int, short: bool, language: str) -> list[str]:
    """One group of problems; where lines are few, a note is told in one or two, and what was done in what was found."""
    if short and row["severity"] == "note":
        return _wrapped(" ".join(problem_texts(row, language)[:2]), width, 2, "- ")
    lines, texts = [], problem_texts(row, language)
    if short and len(texts) in (2, 3):
        texts = [" ".join(texts[:2]), *texts[2:]]
    for number, words in enumerate(texts):
        lines += _wrapped(words, width, None, "  " if number else "- ")
    return lines


def problem_texts(group: dict, language: str = "en") -> list[str]:
    """One group of `records.check.group_problems` in sentences: where and what, what was done, how to fix it."""
    where = place_words(group["place"], language)
    where = f"{where}: " if where else ""
    each = [
        (text("place_rows", dict(rows=[row]), language) + ": " if row is not None else "") + found
        for row, found in group["each"]
    ]
    if len(set(each)) > 1:
        left = group["times"] - len(each)
        more = [text("problems_more_like", dict(count=left), language) + "."] if left else []
        texts = [where.strip(), *(words.rstrip(".") + "." for words in each), *more]
    else:
        more = group["times"] - 1
        like = " (" + text("problems_more_like", dict(count=more), language) + ")" if more else ""
        texts = [f"{where}{str(group['found']).rstrip('.')}{like}."]
    if group["done"]:
        texts.append(group["done"][:1].upper() + group["done"][1:].rstrip(".") + ".")
    return [*texts, text("problems_fix", dict(fix=group["fix"]), language)] if group["fix"] else texts
