"""What a column may hold: the fields of a sheet, the look that one belongs to, and one reading of a column.

Weights are natural logarithms of odds against "something else": 4 = the words say it plainly, 2 = usual reading,
0 = possible, below = only if the values and the arithmetic ask for it.
"""

from __future__ import annotations

from dataclasses import dataclass

PLAIN, USUAL, POSSIBLE, WEAK = 4.0, 2.5, 1.0, -1.5


#: Fields that hold a number of eggs.
COUNTS = (
    "eggs_set",
    "clear",
    "dead",
    "left",
    "fertile",
    "removed",
    "rotten",
    "cracked",
    "pipped",
    "dis",
    "unhatched",
    "hatched",
    "culled",
    "weak",
    "malpos",
    "broken_infertile",
    "broken_early",
    "broken_mid",
    "broken_late",
    "healthy",
    "total_dead",
    "contaminated",
    "cracked_of",
    "opened1_infertile",
    "opened1_dead",
)


DATES = ("set_at", "look_at", "hatch_at", "first_hatch_at", "last_hatch_at", "due", "date", "laid_at")
#: Fields of which a table may hold only one.
ONCE = frozenset(
    {
        "set_at",
        "eggs_set",
        "hatched",
        "dis",
        "unhatched",
        "hatch_at",
        "batch",
        "species",
        "incubator",
        "hatcher",
        "egg",
        "due",
        "fertile",
        "date",
        "what",
        "breed",
        "result",
        "first_hatch_at",
        "last_hatch_at",
        "healthy",
    }
)


@dataclass(frozen=True)
class Look:
    """Which look at the eggs a heading names: its day, its order (1, 2 ...) and whether it is the transfer."""

    day: int | None = None
    order: int | None = None
    transfer: bool = False

    def within(self, other: Look) -> Look:
        """The look with what `other`, which spans it, says of its day and order."""
        return Look(
            other.day if self.day is None else self.day,
            other.order if self.order is None else self.order,
            self.transfer or other.transfer,
        )

    def __bool__(self) -> bool:
        return self.day is not None or self.order is not None or self.transfer


@dataclass(frozen=True)
class Meaning:
    """One reading of a column.

    Attributes
    ----------
    field : str
        One of COUNTS, DATES, a text or measure of `parts` and `tables`, or "ignore".
    look : Look
        Empty where the heading names none.
    weight : float
        What the words say for it.
    within : bool
        The eggs are part of the column before ("of which pipped").
    """

    field: str
    look: Look = Look()
    weight: float = USUAL
    within: bool = False
