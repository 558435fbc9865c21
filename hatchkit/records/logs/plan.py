"""What each column of a log is taken for: small values that the steps hand on."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

import numpy as np

from hatchkit.records.logs.cells import is_number
from hatchkit.records.logs.head import Head
from hatchkit.records.logs.names import MEASURES, is_share, other_unit, plain, role_of, statistic_of, unit_of

#: What a person can answer to "what is this column?"; the first three also to "which unit?".
CHOICES = ("temp_C", "temp_F", "temp_K", "rh", "not_used")
UNIT_CHOICES = CHOICES[:3]
#: And to "which comes first in these dates?".
ORDER_CHOICES = ("dmy", "mdy")
AS_IT_STANDS = "as_it_stands"


@dataclass
class Channel:
    """One probe: its name, and the column number of each quantity it logs."""

    name: str
    columns: dict = field(default_factory=dict)
    units: dict = field(default_factory=dict)
    scales: dict = field(default_factory=dict)


@dataclass
class Plan:
    """What each column is taken for; column numbers count from 0.

    Attributes
    ----------
    stamp : list of int
        The stamp; or date and time, and perhaps AM/PM.
    parts : dict
        year, month, day, hour ... -> column, where they stand apart.
    epoch, clock_only : bool
    channels : list of Channel
    unit, probe, quantity : int or None
        Columns that say of each line which unit, probe or quantity it has.
    minute : int or None
        Minutes of a stamp whose time of day is the hour only.
    zone : int or None
        Column that says of each line in which zone its clock stood; `zone_numbers`: as a number of hours.
    text, unused : list of int
    said : list
        What is said of it: severity, code and facts, as `lines.Account.say` takes them.
    asked : list of (heading, taken, choices)
        Questions.
    """

    stamp: list
    parts: dict = field(default_factory=dict)
    epoch: bool = False
    clock_only: bool = False
    since: bool = False
    channels: list = field(default_factory=list)
    unit: int | None = None
    probe: int | None = None
    quantity: int | None = None
    minute: int | None = None
    zone: int | None = None
    zone_numbers: bool = False
    text: list = field(default_factory=list)
    unused: list = field(default_factory=list)
    said: list = field(default_factory=list)
    asked: list = field(default_factory=list)
    by_behaviour: bool = False
    unit_above: str = ""


@dataclass
class Column:
    """What is known of one column from its heading and from its cells in the first lines."""

    n: int
    name: str
    role: str
    unit: str
    statistic: str
    cells: list
    values: np.ndarray
    scale: float = 1.0

    @property
    def numeric(self) -> bool:
        """Whether at least half of the filled cells are numbers."""
        filled = [cell for cell in self.cells if cell]
        return bool(filled) and len(self.values) >= 0.5 * len(filled)


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
