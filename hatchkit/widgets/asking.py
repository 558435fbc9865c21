"""The open questions of a season, one by one on the terminal: ``hatchkit check FOLDER --ask``."""

import textwrap
from pathlib import Path

from hatchkit.pages.check_text import printable
from hatchkit.records.answers import keep_answers, load_answers
from hatchkit.records.check import questions_of
from hatchkit.say import text
from hatchkit.say.sheets import question_words

WIDTH = 100


def retry(season, answers: dict):
    """The season read again with answers; how it is shown whether the eggs add up now.

    Parameters
    ----------
    season : Season
    answers : dict
        (file, sheet, heading) -> reading; the answers that were kept before hold besides.

    Returns
    -------
    Season
    """
    from hatchkit.season import load_season

    return load_season(season.folder, answers={**load_answers(season.folder), **answers})


def ask(season, *, again=retry, keep=keep_answers, read=input, show=print, language: str = "en") -> Path | None:
    """Put the questions one by one and keep the answers.

    Parameters
    ----------
    season : Season
    again : callable
        (season, answers) -> season read with them, so that an answer settles what hangs on it.
    keep : callable
        (folder, answers) -> path.
    read, show : callable
        As `input` and `print`. A number chooses, Enter keeps what is taken now, q or the end of the input ends.
    language : str

    Returns
    -------
    Path or None
        Where the answers were kept; None if there are none.
    """
    answers, asked, now = {}, set(), season
    if not questions_of(now):
        show(text("ask_nothing", {}, language))
        return None
    while question := _next(now, asked):
        asked.add(_key(question))
        taken = _one(question, read, show, language)
        if taken is None:
            break
        answers[_key(question)] = taken
        now = again(season, answers)
    left = sum(_key(question) not in answers for question in questions_of(now))
    path = keep(season.folder, answers, language) if answers else None
    if path is not None:
        show("\n" + text("ask_kept", dict(answers=len(answers), path=str(path)), language))
    show(text("ask_left", dict(questions=left), language))
    return path


def _key(question: dict) -> tuple:
    return question["file"], question["sheet"] or "", question["heading"]


def _next(season, asked: set) -> dict | None:
    return next(
        (question for question in questions_of(season) if _key(question) not in asked and question["choices"]), None
    )


def _one(question: dict, read, show, language: str) -> str | None:
    """The answer to one question; None to end."""
    words, choices = question_words(question, language), question["choices"]
    lines = textwrap.wrap(printable(f"{words['ask']} ({words['where']}) {words['rows']}"), WIDTH)
    lines += [printable(f"  {number}  {line}") for number, line in enumerate(words["choices"], start=1)]
    show("\n" + "\n".join(lines))
    prompt = text("ask_number", {}, language) + " "
    while True:
        try:
            typed = read(prompt).strip()
        except EOFError:
            return None
        if typed.lower() == "q":
            return None
        if not typed and question["taken"]:
            return str(question["taken"])
        if typed.isascii() and typed.isdigit() and 1 <= int(typed) <= len(choices):
            return str(choices[int(typed) - 1]["taken"])
        show(text("ask_again", dict(most=len(choices)), language))
