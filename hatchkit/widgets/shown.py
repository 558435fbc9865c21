"""Findings as a notebook shows them: the answer in bold, its picture, its table folded beneath."""

import html
import textwrap

from hatchkit.findings.finding import Finding, Findings, Picture
from hatchkit.pages import parts
from hatchkit.say import text

WIDTH = 100


class Shown:
    """HTML for Jupyter, with plain lines where there is none (a terminal, a comparison of stored results)."""

    def __init__(self, markup: str, lines):
        self.markup, self.lines = markup, list(lines)

    def _repr_html_(self) -> str:
        return self.markup

    def __repr__(self) -> str:
        return "\n".join(textwrap.fill(line, WIDTH) for line in self.lines)


def answer(findings: Findings, *, picture: bool = True) -> Shown:
    """The first screen of a page: what it is about, the answer, how sure, what to do now, one picture.

    Parameters
    ----------
    findings : Findings
        From ``hk.review``, ``hk.poor_hatch`` or ``hk.years``.
    picture : bool
        Whether the first picture is shown.

    Returns
    -------
    Shown
    """
    one, language, unit = findings.first, findings.language, findings.unit
    title, counts = (
        parts.message(f"page_{findings.about}_{what}", findings.facts, language, unit) for what in ("title", "counts")
    )
    lines = [
        (
            parts.message(f"ask_{one.question}", one.facts, language, unit),
            parts.message(one.answer, one.facts, language, unit),
        )
    ]
    for code, piece in (("page_how_sure", one.why_sure), ("page_do_now", one.do)):
        if piece is not None:
            lines.append((text(code, {}, language), parts.said(piece, language, unit)))
    markup = [f"<p><strong>{_safe(title)}</strong><br>{_safe(counts)}</p>"]
    markup += [
        f"<p><em>{_safe(ask)}</em><br>{'<strong>' if not place else ''}{_safe(words)}"
        f"{'</strong>' if not place else ''}</p>"
        for place, (ask, words) in enumerate(lines)
    ]
    markup += [_picture(one.picture, language, unit)] if one.picture and picture else []
    return Shown("".join(markup), [title, counts, *(f"{ask} {words}" for ask, words in lines)])


def show(finding: Finding, findings: Findings, *, more: bool = False) -> Shown:
    """One finding: answer, picture, cautions, and folded its table; with `more` everything that is known of it.

    Parameters
    ----------
    finding : Finding
    findings : Findings
        Whose unit and language are used.
    more : bool
    Everything that is known, not the answer alone.

    Returns
    -------
    Shown
    """
    from hatchkit.words.cautions import cautions

    language, unit = findings.language, findings.unit
    words = parts.message(finding.answer, finding.facts, language, unit)
    sure = text(f"how_sure_{finding.sure}", {}, language)
    lines = [f"{words} {sure}"]
    markup = [f"<p><strong>{_safe(words)}</strong> {_safe(sure)}</p>"]
    plain = list(finding.plain) + ([finding.do] if finding.do and finding is not findings.first else [])
    for piece in plain:
        told = parts.said(piece, language, unit).splitlines()
        lines += told
        markup += [f"<p>{_safe(line)}</p>" for line in told]
    if finding.picture:
        markup.append(_picture(finding.picture, language, unit))
    if finding.cautions:
        told = "".join(f"<li>{_safe(line)}</li>" for line in cautions(*finding.cautions, language=language))
        markup.append(f"<p><strong>{_safe(text('page_care', {}, language))}</strong></p><ul>{told}</ul>")
    folded = ([finding.table] if finding.table is not None else []) + (list(finding.more) if more else [])
    markup += [_piece(piece, language, unit) for piece in folded]
    return Shown("".join(markup), lines)


def tell(pieces, *, language: str = "en", unit: str = "C") -> Shown:
    """Things to be said, a line each (``findings.more_climate`` and its neighbours give them).

    Parameters
    ----------
    pieces : iterable of Said or Told
    language : str
    unit : {"C", "F"}

    Returns
    -------
    Shown
    """
    lines = [parts.said(piece, language, unit) for piece in pieces]
    return Shown("".join(f"<p>{_safe(line)}</p>" for line in lines), lines)


def _piece(piece, language: str, unit: str) -> str:
    if isinstance(piece, Picture):
        return _picture(piece, language, unit)
    laid = parts.part(piece, language, unit)
    if laid["kind"] == "table":
        return _table(laid)
    return "".join(f"<p>{_safe(line)}</p>" for line in laid["lines"])


def _picture(piece: Picture, language: str, unit: str) -> str:
    """A picture as a notebook keeps it: PNG, since SVG within HTML is left out where a notebook is not trusted."""
    from hatchkit.figures.chart import chart

    caption = parts.said(piece.caption, language, unit) if piece.caption else ""
    drawn = parts.axes_of(piece, language)
    return chart(drawn, alt=parts.said(piece.alt, language, unit), caption=caption, dpi=110)._repr_html_()


def _table(laid: dict) -> str:
    """A folded table, words to the left: Jupyter sets all to the right unless each cell says otherwise."""

    def cell(tag, words, number):
        return f'<{tag} style="text-align:{"right" if number else "left"}">{_safe(words)}</{tag}>'

    numbers = [head["number"] for head in laid["heads"]]
    heads = "".join(cell("th", head["words"], head["number"]) for head in laid["heads"])
    rows = "".join(
        "<tr>" + "".join(cell("td", words, number) for words, number in zip(row, numbers, strict=True)) + "</tr>"
        for row in laid["rows"]
    )
    return (
        f"<details><summary>{_safe(laid['caption'])}</summary>"
        f"<table><thead><tr>{heads}</tr></thead><tbody>{rows}</tbody></table></details>"
    )


def _safe(words: str) -> str:
    return html.escape("".join(char if char.isprintable() or char == "\u00a0" else " " for char in str(words)))


def show_all(findings: Findings, begins: str, *, more: bool = False) -> Shown:
    """Every finding whose question begins so, each under its question; a line that says so where there is none.

    Parameters
    ----------
    findings : Findings
    begins : str
        Such as "groups_".
    more : bool

    Returns
    -------
    Shown
    """
    markup, lines = [], []
    for one in findings:
        if one.question.startswith(begins):
            ask = parts.message(f"ask_{one.question}", one.facts, findings.language, findings.unit)
            shown = show(one, findings, more=more)
            markup += [f"<p><em>{_safe(ask)}</em></p>", shown.markup]
            lines += [ask, *shown.lines]
    if not lines:
        none = text("shown_not_asked", {}, findings.language)
        return Shown(f"<p>{_safe(none)}</p>", [none])
    return Shown("".join(markup), lines)
