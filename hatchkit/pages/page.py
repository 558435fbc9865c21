"""Findings laid out as one HTML page that stands alone: the answer first, the rest folded."""

from __future__ import annotations

import re
from datetime import date
from functools import cache
from importlib import resources
from pathlib import Path

from hatchkit.findings.finding import Findings
from hatchkit.pages import parts
from hatchkit.pages.frame import template
from hatchkit.say import text
from hatchkit.words.cautions import cautions


def page(
    findings: Findings,
    *,
    full: bool = False,
    language: str | None = None,
    today: date | None = None,
    progress=None,
    draw=parts.picture,
) -> str:
    """One HTML page: the first finding on the first screen, the others as sections, the records at the end.

    Parameters
    ----------
    findings : Findings
    full : bool
        Whether what is folded stands open, on paper too.
    language : str, optional
        Another than that of the findings.
    today : date, optional
        The day that the page says it was made on.
    progress : callable, optional
        Called with (findings laid out, findings in all).
    draw : callable, optional
        Gives the HTML of a picture, as `parts.picture` does (`drawing.Drawer` has them drawn already).

    Returns
    -------
    str
    """
    language, unit = language or findings.language, findings.unit
    laid_out = []
    for number, one in enumerate((*findings.found, findings.records), start=1):
        laid_out.append(_section(one, language, unit, draw))
        if progress:
            progress(number, len(findings) + 1)
    *sections, records = laid_out
    for part in sections:
        part["sheet"] = part["id"] == findings.sheet
    first, facts = sections[0], {**findings.facts, "unit": unit}
    facts["today"] = today or date.today()
    about = f"page_{findings.about}"
    return template("page").render(
        language=language,
        style=_style(),
        full=full,
        title=parts.message(f"{about}_title", facts, language, unit),
        counts=parts.message(f"{about}_counts", facts, language, unit),
        made=text("page_made", _version(facts), language),
        first={**first, "lines": _first_lines(findings.first, first, language, unit)},
        sections=sections[1:],
        records=records,
        unknown=[parts.said(one, language, unit) for one in findings.unknown],
        words={
            name: text(f"page_{name}", {}, language)
            for name in ("answer", "contents", "more", "records", "unknown", "care")
        },
    )


def write_page(
    findings: Findings, out, *, full: bool = False, language: str | None = None, progress=None, draw=parts.picture
) -> Path:
    """Write the page of `findings` to the file `out`; HatchkitError if it can't be written.

    Parameters
    ----------
    findings : Findings
        From ``hk.review``, ``hk.poor_hatch`` or ``hk.years``.
    out : path
        An .html file; pictures are inside, nothing is fetched when it is opened.
    full, language, progress, draw
        As in `page`.

    Returns
    -------
    Path
        Absolute path of the file written.

    Raises
    ------
    HatchkitError
        If `out` can't be written.
    """
    from hatchkit.records.writing import safe_output, write_whole

    out = safe_output(out, season=findings.facts.get("folder"), suffix=(".html", ".htm"))
    html = page(findings, full=full, language=language, progress=progress, draw=draw)
    write_whole(out, html)
    return out


def file_name(findings: Findings) -> str:
    """A name for the page that says season and batch, and that every system takes."""
    stem = text(f"page_{findings.about}_file", findings.facts, findings.language)
    return re.sub(r"[^\w.-]+", "_", stem).strip("_")[:80] + ".html"


def _version(facts: dict) -> dict:
    from hatchkit import __version__

    return {"today": facts["today"], "version": __version__}


def _section(one, language: str, unit: str, draw) -> dict:
    """The texts and pictures of one finding."""

    def laid(pieces):
        return [parts.part(piece, language, unit, draw) for piece in pieces]

    more = [one.table, *one.more] if one.table is not None else list(one.more)
    return dict(
        id=one.question,
        ask=parts.message(f"ask_{one.question}", one.facts, language, unit),
        answer=parts.message(one.answer, one.facts, language, unit),
        sure=text(f"how_sure_{one.sure}", {}, language),
        picture=draw(one.picture, language, unit) if one.picture else "",
        plain=laid(one.plain),
        more=laid(more),
        cautions=cautions(*one.cautions, language=language),
    )


def _first_lines(one, section: dict, language: str, unit: str) -> list[dict]:
    """What the first screen says: the answer, how sure, what to do now."""
    lines = [dict(ask=section["ask"], words=section["answer"])]
    for code, piece in (("page_how_sure", one.why_sure), ("page_do_now", one.do)):
        if piece is not None:
            lines.append(dict(ask=text(code, {}, language), words=parts.said(piece, language, unit)))
    return lines


@cache
def _style():
    from hatchkit.figures import dark_css

    return (resources.files(__package__) / "page.css").read_text(encoding="utf-8") + dark_css()
