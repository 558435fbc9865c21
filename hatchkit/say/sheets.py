"""How a sheet was read, in words: why a column was taken so, the ledger of a row, what is asked, what was assumed.

Each function takes facts (the rows of season.reading, season.ledger, season.questions) and gives texts.
"""

from __future__ import annotations

from hatchkit.say import has, text
from hatchkit.say.speak import reading_words, word

#: Kinds of words for what a question's choices are; a column's meaning has words of its own.
_KINDS = {"species": "species", "mixed_birds": "species"}


def why_words(why, language: str = "en") -> str:
    """What speaks for a reading: "words, adds up in 9 of 9 rows"."""
    return ", ".join(text(f"why_{code}", {"kind": "none", **facts}, language) for code, facts in why)


def heading_words(column: dict, language: str = "en") -> str:
    """A column's heading as the person wrote it, or which column it is if it has none."""
    return str(column["heading"]).strip() or text("check_no_heading", dict(place=int(column["column"]) + 1), language)


def sheet_words(file: str, sheets, language: str = "en") -> str:
    """Which sheet, or which sheets of one file."""
    if len(sheets) > 1:
        return text("check_sheets_alike", dict(file=file, sheets=list(sheets)), language)
    return text("check_sheet", dict(file=file, sheet=sheets[0] or None), language)


def ledger_words(row: dict, language: str = "en") -> str:
    """One row's eggs: "H1, hens: 24 set = 3 clears + 1 dead + 20 hatched: adds up."."""
    kind = word("species", row["species"], language) if isinstance(row.get("species"), str) else ""
    terms = [
        text("ledger_term", dict(eggs=eggs, heading=_term(heading, language)), language)
        for heading, eggs, field in row["terms"]
        if eggs or field == "hatched"
    ]
    total = text(
        "ledger_sum" if terms else "ledger_nothing",
        dict(name=", ".join(filter(None, (row["name"], kind))), set=row["eggs_set"], terms=" + ".join(terms)),
        language,
    )
    if row["rest"] != row["rest"]:
        return text("ledger_unknown", dict(sum=total), language)
    if not terms:
        return text("ledger_unknown", dict(sum=total), language)
    code = "ledger_adds_up" if row["rest"] == 0 else "ledger_short" if row["rest"] > 0 else "ledger_over"
    return text(code, dict(sum=total, rest=row["rest"], over=-row["rest"]), language)


def _term(heading: str, language: str) -> str:
    """A heading as the person wrote it; a key of the kit ("dead@candle2") in words."""
    field, _, look = str(heading).partition("@")
    if not has(f"field_{field}"):
        return str(heading)
    look = f"look{look.removeprefix('candle')}" if look.startswith("candle") else look
    return reading_words(f"{field}@{look}" if look in ("transfer",) or look.startswith("look") else field, language)


def choice_words(code: str, taken, language: str = "en") -> str:
    """What one choice of a question is."""
    if code == "meaning":
        return reading_words(taken, language)
    if taken is None or str(taken) == "":
        return text("value_nothing", {}, language)
    if code == "day_first":
        return word("value", "day_first" if str(taken) == "True" else "month_first", language)
    if code == "log_machine" and taken != "none_of_these":
        return str(taken)
    return word(_KINDS.get(code, "value"), str(taken), language)


def question_words(question: dict, language: str = "en") -> dict:
    """A question in words.

    Parameters
    ----------
    question : dict
        A row of season.questions.

    Returns
    -------
    dict
        ask, where, rows, choices (one line each, for a list to choose from), each (one sentence on what each does).
    """
    code, choices = question["code"], question["choices"]
    asked = f"question_{code}" if has(f"question_{code}") else "question_other"
    heading = _heading(question)
    facts = dict(
        heading=heading,
        file=question["file"],
        choice=choice_words(code, question["taken"], language),
        **_written(question),
    )
    return dict(
        ask=text(asked, facts, language),
        where=text("question_where", dict(file=question["file"], sheet=question["sheet"] or None), language),
        rows=text(
            "question_readings" if code.startswith("log_") else "question_rows",
            dict(rows=question["rows_changed"]),
            language,
        ),
        choices=[choice_line(code, choice, question["taken"], language) for choice in choices],
        each=_each(code, heading, choices, language),
    )


def _heading(question: dict):
    heading = str(question["heading"] or "")
    return None if not heading or heading.startswith("?") else heading


def _written(question: dict) -> dict:
    facts = question.get("facts") or {}
    return dict(written=facts.get("written") or None, names=[name for name in facts.get("names") or [] if name] or None)


def choice_line(code: str, choice: dict, taken, language: str = "en") -> str:
    """One choice, with the rows in which the eggs add up and whether it is what is taken now."""
    line = text(
        "choice_line",
        dict(choice=choice_words(code, choice["taken"], language), adds=choice.get("adds_up"), of=choice.get("of")),
        language,
    )
    return text("choice_now", dict(line=line), language) if choice["taken"] == taken else line


def _each(code: str, heading, choices, language: str) -> str:
    """What each choice does: "If “Left” is eggs left, the eggs add up in 9 of 9 rows; if it is clear, in 2."."""
    tried = [choice for choice in choices if choice.get("adds_up") is not None]
    if tried:
        told = [
            dict(
                choice=choice_words(code, choice["taken"], language),
                adds=choice["adds_up"],
                of=choice["of"],
                heading=heading,
            )
            for choice in tried
        ]
        rest = "; ".join(text("choice_adds_next", facts, language) for facts in told[1:])
        return text("choices_add", dict(first=text("choice_adds", told[0], language), rest=rest or None), language)
    if not choices:
        return ""
    return text(
        "choices_are", dict(choices=[choice_words(code, choice["taken"], language) for choice in choices]), language
    )


def assumed_words(found, language: str = "en") -> str:
    """One line on what was assumed in reading and how sure it is.

    Parameters
    ----------
    found : object
        With how, questions, likely, files, columns, rows_changed, fields, logs and ledger, as `records.check.Assumed`
        has.
    """
    if not found.how:
        return ""
    if found.how == "sure":
        code = "assumed_sure" if found.ledger.of else "assumed_sure_unsummed"
        return text(
            code,
            dict(files=found.files, columns=found.columns, rows=found.ledger.adds_up, of=found.ledger.of),
            language,
        )
    likely = [
        text(
            "assumed_pair",
            dict(heading=heading_words(row, language), taken=reading_words(row["taken"], language)),
            language,
        )
        for row in found.likely[:4]
    ]
    if found.how == "likely":
        return text("assumed_likely", dict(likely=likely), language)
    fields = list(dict.fromkeys(reading_words(field.partition("@")[0], language) for field in found.fields))
    fields += [text("assumed_readings", {}, language)] if found.logs else []
    told = [_assumed_question(question, language) for question in found.questions[:3]]
    return text(
        "assumed_open",
        dict(open=told, rows=found.rows_changed, fields=fields or [text("assumed_everything", {}, language)]),
        language,
    )


def _assumed_question(question: dict, language: str) -> str:
    words = choice_words(question["code"], question["taken"], language)
    heading = _heading(question)
    if heading is not None and (question["code"] == "meaning" or question["code"].startswith("log_")):
        return text("assumed_pair", dict(heading=heading, taken=words), language)
    return text("assumed_value", dict(code=question["code"], taken=words), language)


def place_words(place: dict, language: str = "en") -> str:
    """Where a problem is: "batches.xlsx, sheet batches, rows 4 and 9, column Hatched"."""
    if place["more_files"]:
        return text("place_more_files", dict(file=place["file"], count=place["more_files"]), language)
    parts = [place["file"]] if place["file"] else []
    parts += [text("place_sheet", dict(sheet=place["sheet"]), language)] if place["sheet"] else []
    parts += [text("place_rows", dict(rows=place["rows"]), language)] if place["rows"] else []
    parts += [text("place_columns", dict(columns=place["columns"]), language)] if place["columns"] else []
    return ", ".join(parts)
