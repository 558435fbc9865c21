"""The frame of every page: one head, sealed against scripts and requests, and one plain look that a page may change."""

from __future__ import annotations

from functools import cache
from importlib import resources

from jinja2 import Environment, FunctionLoader

from hatchkit.records.writing import SEALED


@cache
def template(name: str, room: str = "hatchkit.pages"):
    """A Jinja2 template ``<name>.html.j2`` of a room, which extends ``frame.html.j2``; all that it is given is escaped.

    Parameters
    ----------
    name, room : str

    Returns
    -------
    jinja2.Template
        To be rendered with `title`, `language` (English if left out) and what the page itself wants.
    """

    def source(wanted):
        where = __package__ if wanted == "frame" else room
        return (resources.files(where) / f"{wanted}.html.j2").read_text(encoding="utf-8")

    made = Environment(
        autoescape=True, trim_blocks=True, lstrip_blocks=True, finalize=clean, loader=FunctionLoader(source)
    )
    made.globals["sealed"] = SEALED
    return made.get_template(name)


def clean(value):
    """A text without control characters; they have no business in a page."""
    if type(value) is not str:
        return value
    return "".join(char if char.isprintable() or char == "\u00a0" else " " for char in value)
