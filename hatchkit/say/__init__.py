"""Facts in, language out: the one place where sentences are made. It imports no room.

Messages lie in ``messages/<language>/<room>.ftl`` (Fluent): a code, its named facts, its words. A language that lacks
a message falls back to English. Importing this package costs nothing; a room's messages are read when first needed.

`season.language` is season.toml's, else that of the words on the sheets (`records/season_toml.py`; English, said once,
where they differ or are in another tongue). `tests/say/test_say_languages.py` walks that every message of English
is in de, fr and es with the same facts, and reads the demo's pages: no English on them.
A new message takes four lines. The blank workbook has the keeper's words as
headings (`col_<sheet>_<column>`); `records/own_sheet.py` knows them again in any language, so that it is read
exactly; words alone read 41 such columns with 14 to 25 faults (tried). Its drop-downs hold words that the reader
knows: a test reads each again. Candling sheet (`pages/candling_sheet.py`) and plan (`pages/next_set.py`) print on one
side of A4 and Letter (`tests/pages/test_pages_paper.py`, Chromium).
"""

from __future__ import annotations

from hatchkit.say.catalogue import FIRST

#: The languages in which everything is said, the first of all first.
LANGUAGES = (FIRST, "de", "fr", "es")


def text(code: str, facts: dict | None = None, language: str = FIRST, unit: str = "C") -> str:
    """The words of one message.

    Parameters
    ----------
    code : str
        The message's name.
    facts : dict, optional
        Name -> value: text, number, date, time, or a list of these. None stands for "none".
    language : str
        Such as "en" or "de".
    unit : {"C", "F"}
        In which temperatures are said; facts hold °C.

    Raises
    ------
    MissingWords
        Where HATCHKIT_STRICT is set (in tests): if no such message is there or a fact is missing. Elsewhere
        the code and its facts are shown as they are.
    """
    from hatchkit.say.speak import message

    return message(code, facts or {}, language, unit)


def problem(code: str, facts: dict | None = None, language: str = FIRST) -> dict:
    """The three sentences of a problem: ``found``, ``done`` and ``fix`` ("" where nothing is to be mended).

    Parameters and errors as in `text`.
    """
    from hatchkit.say.speak import attributes

    return attributes(code, facts or {}, language, ("found", "done"), ("fix",))


def has(code: str, language: str = FIRST) -> bool:
    """Whether there are words for `code` in this language itself."""
    from hatchkit.say.catalogue import source

    return source(code, language) is not None
