"""A heading -> what it may mean: a field, the look it belongs to, and how much its words speak for it (`fields`).

What roles of words say together is told by the first rule that fits (``reference/word_rules.csv``). Each row needs one
role of every group in `needs` (`a|b` is one group) and none of `but`; `only` admits no others, and `look` asks for a
look of a kind (none, named, day, day0, transfer, before the transfer). Of a step of the work `#dead` is a number of
dead. Readings are a field and its weight; `@` gives it the heading's look (`@1`, `@2`, `@t` one of its own), `~` makes
it a part where the heading says "of which", `~~` always. Behind `on` further rules add theirs; behind `lost` the losses
told beside the eggs left do.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import cache

from hatchkit.records.sheets.fields import OWN, PLAIN, PLAIN_OWN, Look, Meaning, own_heading
from hatchkit.records.sheets.lexicon import Token, all_roles, tokens, without_negated
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


_ORDER = {"first": 1, "second": 2, "third": 3, "fourth": 4}


def _of_the_next(found: list[Token], place: int) -> bool:
    """Whether the word for day behind a number belongs to the number that follows it ("candle 1 (d8)")."""
    before = found[place - 1].roles if place else frozenset()
    after = found[place + 1 : place + 3]
    return len(after) == 2 and "day" in after[0].roles and after[1].number is not None and "candle" in before


def look_of(found: list[Token]) -> Look:
    """The look that tokens name: "day 7", "D10", "7 j", "1st candling", "candling 2", "lockdown d18"."""
    day = order = None
    roles = all_roles(found)
    for place, token in enumerate(found):
        near = [found[i] for i in (place - 1, place + 1) if 0 <= i < len(found)]
        if token.number is not None and not token.roles & set(_ORDER):
            digits = token.text.isdigit()
            if not digits and token.number <= 4 and any("candle" in other.roles for other in near):
                order = token.number  # "candle two (day 14)"
            elif any("day" in other.roles for other in near) and not _of_the_next(found, place):
                day = token.number if day is None else day
            elif any("week" in other.roles for other in near):
                day = token.number * 7
        for word, number in _ORDER.items():
            if word in token.roles:
                order = number
    if day is None and order is None:
        numbers = [token.number for token in found if token.number is not None]
        if len(numbers) == 1 and roles & {"candle", "dead", "clear", "left", "alive", "weight", "transfer"}:
            if numbers[0] <= 4 and not roles & {"weight"}:
                order = numbers[0]
            elif 4 < numbers[0] <= 45:
                day = numbers[0]
    if day is not None and day > 60:
        day = None
    return Look(day, order, "transfer" in roles)


def meanings(heading: str, group: str, language: str | None) -> list[Meaning]:
    """The readings that a heading's own words allow, the likeliest first; empty where no word is known.

    Parameters
    ----------
    heading, group : str
        The heading and the heading that spans it ("" for none).
    language : str or None
    """
    if (
        not group
        and heading.strip() in OWN
        and ("_" in heading or any(c.isdigit() for c in heading) or heading in PLAIN_OWN)
    ):
        return own_heading(heading.strip())
    if re.search(r"[€$£]|\bz[łl]\b", heading):
        return [Meaning("ignore", weight=PLAIN)]
    own = _clean(tokens(heading, language))
    above = _clean(tokens(group, language)) if group and group != heading else []
    found = _read(own)
    if above:
        look = look_of(above)
        inherited = _read(above + own)
        if not found:
            found = [replace(meaning, weight=meaning.weight - 0.3) for meaning in inherited]
        else:
            from_both = {m.field for m in inherited}
            found = [
                replace(m, look=m.look.within(look), weight=m.weight + (0.3 if m.field in from_both else 0.0))
                for m in found
            ]
            found += [replace(m, weight=m.weight - 0.5) for m in inherited if m.field not in {f.field for f in found}]
            # "Date" below a look is the look's own.
            found = [Meaning("look_at", look, PLAIN) if look and m.field == "date" else m for m in found]
    if any(token.guessed for token in own):
        found = [replace(meaning, weight=meaning.weight - 1.0) for meaning in found]
    return sorted(found, key=lambda meaning: -meaning.weight)


def _clean(found: tuple[Token, ...]) -> list[Token]:
    silent = {"zero", "all", "unknown", "yes", "word number"}
    return [Token(t.text, t.roles - silent, t.languages, _number(t), t.guessed) for t in found]


def _number(token: Token) -> int | None:
    """The number of a word; "un", "ein", "en" are mostly none in a heading."""
    if token.text.isdigit():
        return int(token.text) if len(token.text) < 6 else token.number
    return None if token.number == 1 and len(token.text) < 4 else token.number


#: Days of hatching (common practice, no source): quail 17, hens 21, pheasants 24, ducks 28, geese 30, Muscovies 35.
_HATCHING = range(20, 37)


def _last_days(found: list[Token]) -> frozenset:
    """ "Dead d18-21" is of the days after the move."""
    days = [token.number for token in found if token.text.isdigit() and token.number is not None]
    last = len(days) == 2 and days[0] >= 14 and 2 <= days[1] - days[0] <= 7 and days[1] in _HATCHING
    return frozenset({"stretch"} if last else ())


def _read(found: list[Token]) -> list[Meaning]:
    found = without_negated(found)
    roles = all_roles(found) | _last_days(found)
    unknown = sum(not token.roles and token.number is None for token in found)
    if not roles:
        return []
    told = readings(roles, look_of(found))
    return [replace(meaning, weight=meaning.weight - 0.4 * min(unknown, 3)) for meaning in told]
