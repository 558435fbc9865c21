"""What each column of a log is taken for: small values that the steps hand on."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

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
    serial: bool = False
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
