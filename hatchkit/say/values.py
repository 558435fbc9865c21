"""Numbers, dates, shares, degrees and lists as a language writes them (Babel), and as functions for messages."""

from __future__ import annotations

import datetime as dt
import math

from babel import Locale
from babel.dates import format_date, format_skeleton, format_time
from babel.lists import format_list
from babel.numbers import format_decimal as _format_decimal
from babel.numbers import format_percent
from fluent.runtime.types import FluentInt, FluentType

#: Where a language is spoken in several ways: English as in "3 April 2026".
LOCALES = {"en": "en_GB"}
#: Numbers from here on are no count and no measure; the library that writes numbers has not digits enough for them.
HUGE = 1e15
#: A text longer than this is cut: Fluent refuses more than 2,500 characters, and no reader wants them.
LONGEST = 400


class Several(FluentType):
    """A list of values, which a message shows as "4, 9 and 12" and can count."""

    def __init__(self, items, most: int | None = None, style: str = "standard"):
        self.items, self.most, self.style = list(items), most, style

    def format(self, locale: Locale) -> str:
        """The list in words."""
        shown = [_plainly(item, locale) for item in self.items[: self.most]]
        if len(shown) < len(self.items) or sum(map(len, shown)) > 4 * LONGEST:
            return ", ".join([*shown, "..."])[: 4 * LONGEST]
        return format_list(shown, style=self.style, locale=locale)


class Joined(Several):
    """Clauses or sentences one after the other, which a message shows as "this; that"."""

    def format(self, locale: Locale) -> str:
        """The clauses in a row."""
        return "; ".join(str(item) for item in self.items)


def value_of(value):
    """A fact as Fluent takes it: plain Python numbers (whole where they are whole), texts, times, lists.

    Control characters become spaces; None, "" and what is not a number become "none", True and False "yes" and "no".
    """
    if hasattr(value, "to_pydatetime"):
        value = value.to_pydatetime()
    elif hasattr(value, "item") and getattr(value, "shape", None) == ():
        value = value.item()
    nothing = value is None or type(value).__name__ in ("NaTType", "NAType") or isinstance(value, str) and not value
    if nothing or isinstance(value, float) and math.isnan(value):
        return "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        if abs(value) >= HUGE:
            return f"{value:.3g}"
        return int(value) if value.is_integer() else value
    if isinstance(value, str):
        text = "".join(char if char.isprintable() else " " for char in value[:LONGEST])
        return text + "..." if len(value) > LONGEST else text
    if isinstance(value, (list, tuple, set, frozenset)):
        return Several([value_of(item) for item in value])
    if isinstance(value, dict):
        return Several([f"{name} {value_of(held)}" for name, held in value.items()])
    return value


def format_decimal(value, format=None, locale=None) -> str:
    """A number as its language writes it; one that no keeper means, with the power of ten that makes it short."""
    return _format_decimal(value, format, locale=locale) if abs(value) < HUGE else f"{value:.3g}"


def _plainly(value, locale) -> str:
    """One item of a list: row numbers and years take no mark for thousands."""
    if isinstance(value, (int, float)):
        return format_decimal(value, format="#0.###", locale=locale)
    if isinstance(value, dt.date):
        return format_date(value, "long", locale=locale)
    return str(value)


def functions(language: str, unit: str = "C") -> dict:
    """What messages may call.

    PLAIN, COUNT, LIST, OR, TONGUES, SHARE, EGGS, TENTH, DEGREES, STEP, SIGNED (a step with its sign), HOURS (signed),
    DAY, MINUTE, WHOLE (percent), MONTH (its name), DATE (without its year), HOUR, WEEKDAY.
    """
    locale = Locale.parse(LOCALES.get(language, language).replace("-", "_"))
    percent = "#,##0 %" if language == "en" else None  # as the kit has always written it
    small = "#,##0.0 %" if language == "en" else locale.percent_formats[None].pattern.replace("#,##0", "#,##0.0")

    def share(value):
        """One share, or a range of them ("57 %–60 %"; one where both are written alike)."""
        if isinstance(value, Several):
            return "–".join(dict.fromkeys(map(share, value.items)))
        return format_percent(float(value), percent if value == 0 or value >= 0.0995 else small, locale=locale)

    def degrees(value):
        return format_decimal(float(value), "#,##0.0", locale=locale) + f"\u00a0°{unit}"

    def signed(value, digits):
        """A difference with its sign; none where it rounds to nothing."""
        rounded = round(float(value), digits) + 0.0
        pattern = "#,##0" + ("." + "0" * digits if digits else "")
        return format_decimal(rounded, f"+{pattern};-{pattern}" if rounded else pattern, locale=locale)

    return {
        "PLAIN": lambda value: _plainly(_bare(value), locale),
        "COUNT": lambda several: FluentInt(len(several.items)),
        "LIST": lambda several, most=None: Several(several.items, None if most is None else int(most)),
        "OR": lambda several: Several(several.items, style="or"),
        "TONGUES": lambda several: Several([locale.languages.get(str(code), str(code)) for code in several.items]),
        "SHARE": share,
        "EGGS": lambda value: FluentInt(round(float(value))),
        "WHOLE": lambda value: format_percent(float(value), percent, locale=locale),
        "DATE": lambda value: format_skeleton("MMMMd", value, locale=locale),
        "MONTH": lambda value: locale.months["stand-alone"]["wide"][int(str(value))],
        "HOUR": lambda value: format_time(value, "HH:mm", locale=locale),
        "WEEKDAY": lambda value: format_date(value, "EEE", locale=locale),
        "TENTH": lambda value: format_decimal(float(value), "#,##0.#", locale=locale),
        "DEGREES": lambda value: degrees(value * 9 / 5 + 32 if unit == "F" else value),
        "STEP": lambda value: degrees(value * 9 / 5 if unit == "F" else value),
        "SIGNED": lambda value: signed(value * 9 / 5 if unit == "F" else value, 1) + f"\u00a0°{unit}",
        "HOURS": lambda value: signed(value, 0) + "\u00a0h",
        "DAY": lambda value: format_date(value, "long", locale=locale),
        "MINUTE": lambda value: (
            format_date(value, "long", locale=locale) + " " + format_time(value, "HH:mm", locale=locale)
        ),
    }


def _bare(value):
    """Fluent's own kind of number as Python's, so that its marks for thousands are left out."""
    return float(value) if isinstance(value, float) else int(value) if isinstance(value, int) else value
