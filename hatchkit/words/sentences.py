"""Sentences as a reader sees them: paragraphs and lists in Jupyter and in a report, wrapped lines elsewhere."""

from __future__ import annotations

import html
import textwrap

WIDTH = 100


class Sentences:
    """Lines of text; a line that starts with ``- `` is a point of a list.

    JupyterLab breaks a long printed line in the middle of a word; shown this way it breaks between words.
    """

    def __init__(self, lines):
        self.lines = list(lines)

    def _repr_html_(self) -> str:
        parts, points = [], []
        for line in [*self.lines, None]:
            if line is not None and line.startswith("- "):
                points.append(f"<li>{html.escape(line[2:])}</li>")
                continue
            if points:
                parts.append(f"<ul>{''.join(points)}</ul>")
                points = []
            if line:
                parts.append(f"<p>{html.escape(line)}</p>")
        return "".join(parts)

    def __repr__(self) -> str:
        return "\n".join(
            textwrap.fill(line, WIDTH, subsequent_indent="  " if line.startswith("- ") else "") for line in self.lines
        )


def sentences(*texts) -> Sentences:
    """What functions of words gave back, ready to be shown.

    Parameters
    ----------
    *texts : str or iterable of str
        Sentences; each line of a text becomes a paragraph or a point.
    """
    flat = [text for part in texts for text in ([part] if isinstance(part, str) else part)]
    return Sentences(line.strip() for text in flat for line in text.splitlines() if line.strip())
