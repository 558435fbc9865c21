"""Roles of words -> what they say together, by the first rule that fits (``reference/word_rules.csv``).

Each row needs one role of every group in `needs` (`a|b` is one group) and none of `but`; `only` admits no others, and
`look` asks for a look of a kind (none, named, day, day0, transfer, before the transfer). Of a step of the work `#dead`
is a number of dead. Readings are a field and its weight;
`@` gives it the heading's look (`@1`, `@2`, `@t` one of its own), `~` makes it a part where the heading says "of
which", `~~` always. Behind `on` further rules add theirs; behind `lost` the losses told beside the eggs left do.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from hatchkit.records.sheets.fields import Look, Meaning
from hatchkit.records.words import csv_rows

#: Looks that a reading names by itself.
_NO_LOOK = Look()
_OWN_LOOKS = {"@1": Look(order=1), "@2": Look(order=2), "@t": Look(transfer=True)}
#: Words that say that fewer eggs are left, less which a heading tells of the loss itself.
_OF_LEFT = frozenset({"left", "removed", "out"})
#: How much less a loss weighs that is told to say why fewer eggs are left.
TOLD_BESIDE = 1.5


@dataclass(frozen=True)
class _Rule:
    needs: tuple
    but: frozenset
    look: str
    only: frozenset
    readings: tuple
    then: str

    def fits(self, roles: frozenset, look: Look) -> bool:
        """Whether roles and a look are those of the rule."""
        if roles & self.but or self.only and not roles <= self.only or not all(roles & group for group in self.needs):
            return False
        return not self.look or self.look in _kinds(look)


def _kinds(look: Look) -> set:
    """The kinds of looks that a look is one of."""
    if not look:
        return {"none"}
    day = set() if look.day is None else {"day", f"day{look.day}"}
    return {"named", "transfer" if look.transfer else "before", *day}


@cache
def _rules(of: str) -> tuple[_Rule, ...]:
    return tuple(
        _Rule(
            tuple(frozenset(group.split("|")) for group in row["needs"].split()),
            frozenset(row["but"].split()),
            row["look"],
            frozenset(row["only"].split()),
            tuple(row["readings"].split("; ")),
            row["then"],
        )
        for row in csv_rows("word_rules")
        if row["of"] == of
    )


@cache
def word_for(of: str, roles: frozenset, look: Look = _NO_LOOK) -> str | None:
    """The kit's word for what roles say of an "egg", a "count" of eggs or a "step" of the work, or None."""
    rule = next((rule for rule in _rules(of) if rule.fits(roles, look)), None)
    return rule.readings[0] or None if rule else None


def readings(roles: frozenset, look: Look) -> list[Meaning]:
    """What a column may hold whose heading has these roles and names this look."""
    found: list[Meaning] = []
    for rule in _rules("column"):
        if not rule.fits(roles, look):
            continue
        found += [_meaning(told, look, "ofwhich" in roles) for told in rule.readings]
        if rule.then == "lost":
            losses = readings(roles - _OF_LEFT, look)
            found += [replace(loss, weight=loss.weight - TOLD_BESIDE) for loss in losses]
        if rule.then != "on":
            break
    return found


def _meaning(told: str, look: Look, within: bool) -> Meaning:
    """ "dead 4 @ ~" as a reading."""
    field, weight, *marks = told.split()
    own = next((_OWN_LOOKS[mark] for mark in marks if mark in _OWN_LOOKS), Look())
    part = "~~" in marks or within and "~" in marks
    return Meaning(field, look if "@" in marks else own, float(weight), part)
