"""Tables as a reader sees them: few columns, plain headings, units, local time, percent with interval."""

from __future__ import annotations

import html
from functools import cache

import pandas as pd

from hatchkit import reference
from hatchkit.units import shown, shown_step
from hatchkit.words.stage_names import label

NOT_KNOWN = "not known"

#: Columns whose values are keys of the kit, to be shown in the reader's words.
KEYS = {"stage", "name", "found_at", "fate", "looks_like"}


class ReaderTable:
    """A table of ready-made texts, shown as plain HTML in Jupyter and as text elsewhere."""

    def __init__(self, texts: pd.DataFrame, left: set, caption: str = ""):
        self.texts, self.left, self.caption = texts, left, caption

    def _repr_html_(self) -> str:
        def cell(tag, heading, text):
            scope = ' scope="col"' if tag == "th" else ""
            kind = ' class="text"' if heading in self.left else ""
            return f"<{tag}{scope}{kind}>{html.escape(text)}</{tag}>"

        headings = "".join(cell("th", name, name) for name in self.texts.columns)
        rows = "".join(
            "<tr>" + "".join(cell("td", name, text) for name, text in row.items()) + "</tr>"
            for row in self.texts.to_dict("records")
        )
        caption = f"<caption>{html.escape(self.caption)}</caption>" if self.caption else ""
        return f"<table>{caption}<thead><tr>{headings}</tr></thead><tbody>{rows}</tbody></table>"

    def __repr__(self) -> str:
        return self.texts.to_string(index=False) if len(self.texts) else "(no rows)"


def reader_table(
    table: pd.DataFrame, columns: dict, *, unit: str = "C", timezone: str = "UTC", caption: str = ""
) -> ReaderTable:
    """Choose, rename and word the columns of `table`.

    Parameters
    ----------
    table : DataFrame
    columns : dict
        {column: heading}. A key may be a triple of columns (share, low, high): shown as
        ``12 % (5 to 24 %)``. ``(°)`` and ``(°·h)`` in a heading get the unit of display.
    unit : {"C", "F"}
        Columns that end in ``_c`` and degree-hours are shown in it.
    timezone : str
        Zone in which times are shown.
    caption : str
        A line above the table.

    Returns
    -------
    ReaderTable
        Shows itself as HTML in a notebook and as lines elsewhere.

    Notes
    -----
    The wording follows the column's name and type: ``share_*`` as percent, ``*_c`` as temperature, ``*_step_c`` and
    ``*degree_hours*`` as differences, times in local time, numbers with one decimal unless they are whole, what is
    missing as "not known".
    """
    texts, left = {}, set()
    for key, heading in columns.items():
        heading = heading.replace("(°)", f"(°{unit})").replace("(°·h)", f"(°{unit}·h)")
        if isinstance(key, tuple):
            texts[heading] = [share_interval(*row) for row in table[list(key)].itertuples(index=False)]
        else:
            texts[heading] = _worded(table[key], key, unit, timezone)
            if not pd.api.types.is_numeric_dtype(table[key]):
                left.add(heading)
    return ReaderTable(pd.DataFrame(texts, columns=list(texts), dtype=object), left, caption)


@cache
def _differences() -> frozenset:
    """Columns that hold a difference of temperatures: a step of 1 °C is 1.8 °F, and no 32 is added."""
    facts = reference.load("columns_climate")
    return frozenset(facts.loc[facts["unit"] == "K", "column"])


def percent(share, digits: int = 0) -> str:
    """A share (0 to 1) as percent."""
    return NOT_KNOWN if pd.isna(share) else f"{100 * share:.{digits}f} %"


def share_interval(share, low, high) -> str:
    """A share with its 95 % interval: ``12 % (5 to 24 %)``."""
    if pd.isna(share):
        return NOT_KNOWN
    if pd.isna(low) or pd.isna(high):
        return percent(share)
    return f"{100 * share:.0f} % ({100 * low:.0f} to {100 * high:.0f} %)"


def _worded(column: pd.Series, name: str, unit: str, timezone: str) -> list[str]:
    if isinstance(column.dtype, pd.DatetimeTZDtype):
        local = column.dt.tz_convert(timezone)
        return [NOT_KNOWN if pd.isna(time) else f"{time:%Y-%m-%d %H:%M}" for time in local]
    if not pd.api.types.is_numeric_dtype(column) or pd.api.types.is_bool_dtype(column):
        word = label if name in KEYS else str
        return [NOT_KNOWN if pd.isna(value) or value == "" else word(value) for value in column]
    if name.startswith("share_") or name.endswith("_share"):
        return [percent(value) for value in column]
    if name.endswith("_step_c") or "degree_hours" in name or name in _differences():
        column = shown_step(column, unit)
    elif name.endswith("_c"):
        column = shown(column, unit)
    if name.endswith("_c"):
        return [NOT_KNOWN if pd.isna(value) else f"{value:.1f}" for value in column]
    return [NOT_KNOWN if pd.isna(value) else f"{value:.1f}".removesuffix(".0") for value in column]
