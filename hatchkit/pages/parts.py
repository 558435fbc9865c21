"""The pieces of a finding as a page or a notebook shows them: sentences, tables, pictures."""

from __future__ import annotations

import html
from importlib import import_module
from inspect import signature

import pandas as pd

from hatchkit.findings.finding import Composed, Picture, Said, Table, Told
from hatchkit.say import text
from hatchkit.say.cells import cell, heading, is_number


def said(piece: Said | Told | Composed, language: str, unit: str) -> str:
    """A sentence; one that a room composed itself is taken as it is."""
    if isinstance(piece, Composed):
        return piece.words
    if isinstance(piece, Told):
        room, _, name = piece.by.rpartition(".")
        speak = getattr(import_module(f"hatchkit.say.{room}"), name)
        return speak(piece.given, language, **({"unit": unit} if "unit" in signature(speak).parameters else {}))
    return message(piece.code, piece.facts, language, unit)


def message(code: str, facts: dict, language: str, unit: str) -> str:
    """The words of a message whose facts may be things to be said themselves, or lists of these."""

    def plain(value):
        if isinstance(value, (Said, Told, Composed)):
            return said(value, language, unit)
        return [plain(item) for item in value] if isinstance(value, (list, tuple)) else value

    return text(code, {name: plain(value) for name, value in facts.items()}, language, unit)


def part(piece, language: str, unit: str, draw=None) -> dict:
    """One piece, as the template takes it: kind, and lines, heads and rows, or html (by `draw`, else `picture`)."""
    if isinstance(piece, Table):
        return {"kind": "table", **table(piece, language, unit)}
    if isinstance(piece, Picture):
        return {"kind": "picture", "html": (draw or picture)(piece, language, unit)}
    lines = said(piece, language, unit).splitlines()
    return {"kind": "words", "lines": [line.strip().removeprefix("- ") for line in lines if line.strip()]}


def table(piece: Table, language: str, unit: str) -> dict:
    """Caption, headings (words, whether of numbers) and rows of texts."""
    rows = piece.rows.to_dict("records")
    heads, columns = [], []
    for column in piece.columns:
        names = column if isinstance(column, tuple) else (column,)
        kind = piece.keys.get(names[0], "")
        values = piece.rows[names[0]]
        number = not kind and (
            pd.api.types.is_numeric_dtype(values) and not pd.api.types.is_bool_dtype(values) or is_number(names[0])
        )
        heads.append(dict(words=heading(names[0], language, unit), number=number))
        columns.append([_cell([row[name] for name in names], names[0], kind, language, unit) for row in rows])
    return dict(
        caption=text(f"table_{piece.name}", {}, language),
        heads=heads,
        rows=[list(row) for row in zip(*columns, strict=True)],
    )


def _cell(values: list, column: str, kind: str, language: str, unit: str) -> str:
    """A cell, which may be something to be said."""
    if isinstance(values[0], (Said, Told)):
        values = [said(values[0], language, unit)]
    return cell(values, column, kind, language, unit)


def picture(piece: Picture, language: str, unit: str) -> str:
    """The figure drawn as SVG within a page, with its alt text: HTML that needs no escaping."""
    from hatchkit.figures import svg

    drawing = svg(axes_of(piece, language), alt=said(piece.alt, language, unit), most=piece.most)
    caption = f"<figcaption>{html.escape(said(piece.caption, language, unit))}</figcaption>" if piece.caption else ""
    return f"<figure>{drawing}{caption}</figure>"


def axes_of(piece: Picture, language: str):
    """What the figure's function draws."""
    room, _, name = piece.figure.rpartition(".")
    draw = getattr(import_module(f"hatchkit.figures.{room}"), name)
    tongue = {"language": language} if "language" in signature(draw).parameters else {}
    return draw(*(piece.table if isinstance(piece.table, list) else [piece.table]), **piece.options, **tongue)
