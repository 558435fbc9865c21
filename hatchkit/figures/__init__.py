"""Tables in, matplotlib axes out; nothing here computes.

``figures.svg(ax, alt=...)`` makes an SVG of axes for a page, ``figures.dark_css()`` the rules that show it on a dark
page, and ``figures.chart.chart`` a picture for a notebook.
"""

from __future__ import annotations

from hatchkit.figures.output import dark_css, svg

__all__ = ["dark_css", "svg"]
