"""Axes of time and of temperature: dates on the person's clock, and a scale that shows both a swing and a power cut."""

import calendar
import re

import numpy as np
import pandas as pd
from babel.dates import get_month_names
from matplotlib.dates import AutoDateLocator, ConciseDateFormatter

from hatchkit.figures import style
from hatchkit.figures.rows import apart
from hatchkit.units import shown

#: Middle of the temperature scale and the distance from it up to which it is nearly even, degC and K.
MIDDLE_C, EVEN_K = 37.5, 0.6
#: Least that the scale shows, degC.
LEAST_C = (36.3, 39.0)
#: Candidates for marks on the scale, the first ones first.
MARKS = {
    "C": (37, 38, 36, 39, 30, 20, 42, 35, 40, 10, 33, 25, 15, 45, 50, 5, 0, 60),
    "F": (99, 101, 97, 103, 90, 70, 108, 95, 105, 50, 80, 60, 115, 120, 40, 32, 140),
}


def utc(times):
    """Times as numpy keeps them: matplotlib turns zoned times into dates one by one, which costs as much as drawing."""
    return pd.to_datetime(times, utc=True).dt.tz_convert(None).to_numpy()


def dates(ax, zone, *, most=6, language="en"):
    """Dates on the person's clock along the bottom, no more than have room."""
    locator = AutoDateLocator(tz=zone, minticks=2, maxticks=most)
    ax.xaxis.set_major_locator(locator)
    form = ConciseDateFormatter(
        locator,
        tz=zone,
        zero_formats=["", "%Y", "%b", "%d %b", "%H:%M", "%H:%M"],
        offset_formats=["", "%Y", "%b %Y", "%d %b %Y", "%d %b %Y", "%d %b %Y"],
    )
    if language != "en":
        _with_months(form, language)
    ax.xaxis.set_major_formatter(form)


def _with_months(form, language):
    """Let a formatter write the months in another language (Unicode CLDR, by Babel)."""
    names = get_month_names("abbreviated", context="stand-alone", locale=language)
    months = {name: names[number] for number, name in enumerate(calendar.month_abbr) if name}
    plain, offset, pattern = form.format_ticks, form.get_offset, re.compile("|".join(months))

    def translated(values):
        return [pattern.sub(lambda found: months[found[0]], word) for word in plain(values)]

    form.format_ticks = translated
    form.get_offset = lambda: pattern.sub(lambda found: months[found[0]], offset())


def bent_scale(ax, low_c, high_c, unit):
    """A scale of temperature that is even near 37.5 degC and drawn together further away, so that nothing is cut off.

    Parameters
    ----------
    low_c, high_c : float
        Lowest and highest temperature that must be seen, degC.
    unit : {"C", "F"}

    Returns
    -------
    function
        From a temperature in `unit` to its height, 0 to 1.
    """
    middle, even = shown(MIDDLE_C, unit), EVEN_K * (1.8 if unit == "F" else 1.0)

    def there(value):
        return np.arcsinh((np.asarray(value, float) - middle) / even)

    def back(height):
        return np.sinh(np.asarray(height, float)) * even + middle

    ends = np.nanmin([low_c, LEAST_C[0]]), np.nanmax([high_c, LEAST_C[1]])
    low, high = there(shown(ends[0], unit)), there(shown(ends[1], unit))
    low, high = low - 0.07 * (high - low), high + 0.07 * (high - low)
    ax.set_yscale("function", functions=(there, back))
    ax.set_ylim(back(low), back(high))
    tall = ax.get_window_extent().height * 72 / ax.figure.dpi if ax.figure else 200.0
    kept = []
    for mark in MARKS[unit]:
        far = (there(mark) - low) / (high - low)
        if 0.0 <= far <= 1.0 and all(abs(far - other) * tall > 1.5 * style.TEXT for _, other in kept):
            kept.append((mark, far))
    marks = sorted(mark for mark, _ in kept)
    ax.set_yticks(marks, map(str, marks))
    ax.minorticks_off()
    return lambda value: float((there(value) - low) / (high - low))


def names_at_right(ax, places, words):
    """Names of lines right of the axes, where the lines end.

    Parameters
    ----------
    places : sequence of float
        Heights, 0 to 1; names are moved apart where lines end together.
    words : sequence of str
    """
    lines = max((text.count("\n") + 1 for text in words), default=1)
    for place, text in zip(apart(places, 0.075 * lines), words, strict=True):
        style.write(ax, 1.015, place, text, transform=ax.transAxes, clip_on=False)
