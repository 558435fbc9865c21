"""What a column may hold: the fields of a sheet, the look that one belongs to, and one reading of a column.

Weights are natural logarithms of odds against "something else": 4 = the words say it plainly, 2 = usual reading,
0 = possible, below = only if the values and the arithmetic ask for it.
"""

from __future__ import annotations

import re
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
TEXTS = (
    "batch",
    "breed",
    "species",
    "pen",
    "keeper",
    "incubator",
    "hatcher",
    "tray",
    "hen",
    "cock",
    "notes",
    "what",
    "fate",
    "egg",
    "place",
    "signs",
    "posted",
    "broody",
    "result",
)
MEASURES = (
    "tray_row",
    "tray_col",
    "stage_day",
    "eggs_weighed",
    "weight",
    "stored_days",
    "flock_age_weeks",
    "look_day",
    "temperature",
    "humidity",
    "percent",
    "year",
    "hour",
)

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
        One of COUNTS, DATES, TEXTS, MEASURES, or "ignore".
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


#: The kit's own headings, as its blank workbook has them.
OWN = {
    "batch": "batch",
    "species": "species",
    "incubator": "incubator",
    "hatcher": "hatcher",
    "set_at": "set_at",
    "eggs_set": "eggs_set",
    "stored_days": "stored_days",
    "flock": "pen",
    "flock_age_weeks": "flock_age_weeks",
    "candle1_at": "look_at@look1",
    "clear1": "clear@look1",
    "dead1": "dead@look1",
    "candle2_at": "look_at@look2",
    "clear2": "clear@look2",
    "dead2": "dead@look2",
    "transfer_at": "look_at@transfer",
    "clear3": "clear@transfer",
    "dead3": "dead@transfer",
    "removed": "removed",
    "taken_off_at": "hatch_at",
    "first_hatch_at": "first_hatch_at",
    "last_hatch_at": "last_hatch_at",
    "hatched": "hatched",
    "culled": "culled",
    "pipped_dead": "pipped",
    "dead_in_shell": "dis",
    "broken_infertile": "broken_infertile",
    "broken_early": "broken_early",
    "broken_mid": "broken_mid",
    "broken_late": "broken_late",
    "contaminated": "contaminated",
    "cracked": "cracked_of",
    "malpositioned": "malpos",
    "notes": "notes",
    "signs": "signs",
    "posted": "posted",
    "broody": "broody",
    "breed": "breed",
    "pen": "pen",
    "keeper": "keeper",
    "place": "place",
    "shelf": "tray",
    "season": "year",
    "opened1_infertile": "opened1_infertile",
    "opened1_dead": "opened1_dead",
    "egg": "egg",
    "hen": "hen",
    "cock": "cock",
    "tray": "tray",
    "row": "tray_row",
    "col": "tray_col",
    "weight_g": "weight@day0",
    "candle1": "fate@look1",
    "candle2": "fate@look2",
    "transfer": "fate@transfer",
    "outcome": "result",
    "stage_day": "stage_day",
    "weighed_at": "date",
    "grams": "weight",
    "eggs_weighed": "eggs_weighed",
    "looked_at": "date",
    "day": "look_day",
    "clear": "clear",
    "dead": "dead",
    "left": "left",
    "name": "what",
}


#: The kit's own columns, which season.toml may name under [headers].
OWN_COLUMNS = frozenset(OWN)


PLAIN_OWN = frozenset(
    {"contaminated", "outcome", "grams", "malpositioned", "culled", "flock", "posted", "broody", "signs"}
)


def own_key(column: str) -> str:
    """The reading that one of the kit's own column names stands for ("clear3" -> "clear@transfer")."""
    return OWN.get(column, column)


def meaning_of(key: str, weight: float) -> Meaning:
    """A reading as `key_of` spells it: "dead@day7", "left@transfer", "pipped~within", "clear@day7+look1"."""
    name, within, day, order, transfer = re.fullmatch(
        r"([^~@]*)(~within)?@?(?:day(\d+))?\+?(?:look(\d+))?\+?(transfer)?.*", key
    ).groups()
    look = Look(None if day is None else int(day), None if order is None else int(order), transfer is not None)
    return Meaning(name, look, weight, within is not None)


def key_of(meaning: Meaning) -> str:
    """A reading as one word that answers.toml can keep: "dead@day7", "left@transfer", "pipped~within"."""
    day = "" if meaning.look.day is None else f"day{meaning.look.day}"
    order = "" if meaning.look.order is None else f"look{meaning.look.order}"
    look = "+".join(filter(None, (day, order, "transfer" if meaning.look.transfer else "")))
    return meaning.field + ("~within" if meaning.within else "") + (f"@{look}" if look else "")


def own_heading(heading: str) -> list[Meaning]:
    """The reading of one of the kit's own headings."""
    found = meaning_of(OWN[heading], PLAIN + 2.0)
    return [found, Meaning("fate", found.look, WEAK)] if heading == "transfer_at" else [found]
