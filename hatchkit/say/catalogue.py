"""Where the words lie: ``messages/<language>/<room>.ftl``, read a file at a time and only as far as asked for."""

from __future__ import annotations

import re
from functools import cache
from importlib import resources

#: The language that has every message.
FIRST = "en"

_START = re.compile(r"^(-?[a-zA-Z][\w-]*)[ ]*=", re.M)
_END = re.compile(r"^(?=[a-zA-Z#-])", re.M)


class _Shelf:
    """The messages of one language, as text: name -> source."""

    def __init__(self, language: str):
        folder = resources.files(__package__) / "messages" / language
        self.waiting = (
            sorted((file for file in folder.iterdir() if file.name.endswith(".ftl")), key=lambda file: file.name)
            if folder.is_dir()
            else []
        )
        self.found: dict[str, str] = {}
        self.rooms: dict[str, str] = {}

    def source(self, name: str) -> str | None:
        while name not in self.found and self.waiting:
            self._read(self.waiting.pop(0))
        return self.found.get(name)

    def _read(self, file) -> None:
        text = file.read_text(encoding="utf-8").replace("\r\n", "\n")
        for start in _START.finditer(text):
            end = _END.search(text, start.end())
            if start[1] in self.found:
                raise ValueError(f"the message {start[1]} is in {self.rooms[start[1]]} and in {file.name}")
            self.found[start[1]] = text[start.start() : end.start() if end else len(text)]
            self.rooms[start[1]] = file.name


@cache
def _shelf(language: str) -> _Shelf:
    return _Shelf(language if re.fullmatch(r"[a-zA-Z_-]{2,12}", language) else "none")


def source(name: str, language: str) -> str | None:
    """The source of one message or term (a term's name begins with a dash), or None."""
    return _shelf(language).source(name)


def names(language: str) -> dict[str, str]:
    """Every message and term of a language -> the file that holds it."""
    shelf = _shelf(language)
    shelf.source("")
    return dict(shelf.rooms)
