"""What is known of one column from its heading, its unit, the legend above and its first cells."""

from __future__ import annotations

import re

import numpy as np

from hatchkit.records.logs.cells import is_number
from hatchkit.records.logs.head import Head
from hatchkit.records.logs.names import MEASURES, is_share, other_unit, plain, role_of, statistic_of, unit_of
from hatchkit.records.logs.plan import Column

#: Names that only number the columns: field 1, channel 2, sensor 3.
_NUMBERED = re.compile(
    r"(?:[a-z]{1,8} )?(?:field|column|col|ch|channel|kanal|canal|canale|value|val|wert|data|input|"
    r"sensor|probe|fuhler|sonde|sonda|capteur|var|in|ai?|s|x|v) ?\d{1,2}"
)


def legend_of(preamble) -> dict:
    """Short name of a column -> what the lines above the readings say it is: "T = temperature in 0.1 degrees C"."""
    found = {}
    for line in preamble:
        if match := re.match(r"[\W_]*(\w{1,12})\s*[=:]\s*(\D.{3,})$", line):
            found[match[1]] = match[2].strip()
    return found


_TENTHS = re.compile(
    r"\b0[.,]1\s*(?:°|deg|grad|graus|stop|st\b|%|c\b|f\b|k\b)|tenths?|zehntel|dixi[eè]mes?|decimi|"
    r"d[eé]cimas|tiende|dziesi|desetin|tiond|tiend|tized",
    re.IGNORECASE,
)


def column_of(head: Head, n: int, legend: dict) -> Column:
    """The n-th column below a head, with what heading and legend say of it."""
    name = head.header[n] if head.header and n < len(head.header) else ""
    said = legend.get(name, "")
    name = (
        f"{name} {said}"
        if said and role_of(said) in (*MEASURES, "other") and not (role_of(name) in MEASURES and unit_of(name))
        else name
    )
    scale = 0.1 if _TENTHS.search(name) else 1.0
    cells = [row[n].strip('"') if n < len(row) else "" for row in head.sample]
    unit_cell = head.units[n] if n < len(head.units) else ""
    role, unit = role_of(name) if name else "", unit_of(unit_cell) or unit_of(name)
    role = "" if role in ("quantity", "probe", "value", "record") and _NUMBERED.fullmatch(plain(name)) else role
    role = "" if not any(cells) else role
    if is_share(unit_cell) and role in ("", "probe", "machine", "value"):
        role, unit = "rh", ""
    elif unit_of(unit_cell) and role in ("", "probe", "machine", "record", "mean", "minimum", "maximum"):
        role = "temp"
    if (
        role in ("", "probe", "record", "machine", "temp", "rh", "value")
        and (other_unit(unit_cell) or other_unit(name, heading=True))
        and not (unit_of(name) or unit_of(unit_cell))
    ):
        role = "other"
    values = np.array([_value(cell) for cell in cells if cell and is_number(cell)], dtype=float)
    return Column(n, name, role, unit, statistic_of(name), cells, values * scale, scale)


_PLAIN = re.compile(r"[+-]?\d+(?:\.\d+)?")


def _value(cell: str) -> float:
    if _PLAIN.fullmatch(cell):
        return float(cell)
    return float(re.sub(r"[^\d.+-]", "", re.sub(r"(?<=\d)[eE].*$", "", cell.replace(",", "."))))
