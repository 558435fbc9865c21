"""A heading -> what it may mean: a field, the look it belongs to, and how much its words speak for it (`fields`)."""

from __future__ import annotations

import re
from dataclasses import replace

from hatchkit.records.sheets.classes import by_class, ends_of_hatch
from hatchkit.records.sheets.fields import PLAIN, POSSIBLE, USUAL, WEAK, Look, Meaning
from hatchkit.records.sheets.lexicon import Token, all_roles, tokens, without_negated
from hatchkit.records.sheets.lookwords import look_of
from hatchkit.records.sheets.own_columns import OWN, PLAIN_OWN, own_heading


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
    days = [token.number for token in found if token.text.isdigit()]
    last = len(days) == 2 and days[0] >= 14 and 2 <= days[1] - days[0] <= 7 and days[1] in _HATCHING
    return frozenset({"stretch"} if last else ())


def _read(found: list[Token]) -> list[Meaning]:
    found = without_negated(found)
    roles = all_roles(found) | _last_days(found)
    unknown = sum(not token.roles and token.number is None for token in found)
    if not roles:
        return []
    look = look_of(found)
    result = by_class(roles, look) or _by_field(roles, look, found)
    return [replace(meaning, weight=meaning.weight - 0.4 * min(unknown, 3)) for meaning in result]


def _by_field(roles: frozenset, look: Look, found: list[Token]) -> list[Meaning]:
    """Readings by what is told of the eggs, where no class of eggs is named."""
    has = roles.__contains__
    several = []
    if roles & {"batch", "hatch", "set", "egg", "number"}:
        several = _ambiguous(roles)
    if look and has("date") and not look.transfer:
        return [Meaning("look_at", look, PLAIN)]
    if has("hatcher") and not look and not has("candle"):
        moved = Look(transfer=True)
        return [Meaning("hatcher", weight=PLAIN), Meaning("left", moved, POSSIBLE), Meaning("look_at", moved, POSSIBLE)]
    if look.transfer:
        if has("date"):
            return [Meaning("look_at", look, PLAIN)]
        if roles & {"number", "egg", "set", "in"}:
            return [Meaning("left", look, PLAIN), Meaning("look_at", look, POSSIBLE)]
        return [Meaning("look_at", look, USUAL), Meaning("left", look, USUAL), Meaning("fate", look, USUAL)]
    if has("candle") or look.day is not None and not several:
        if has("date"):
            return [Meaning("look_at", look, PLAIN)]
        return [
            Meaning("look_at", look, USUAL),
            Meaning("fate", look, USUAL),
            Meaning("look_day", look, POSSIBLE),
            Meaning("left", look, 0.0),
            Meaning("dead", look, WEAK),
        ]
    for role, field, weight in (
        ("incubator", "incubator", PLAIN),
        ("tray", "tray", PLAIN),
        ("row", "tray_row", USUAL),
        ("column", "tray_col", USUAL),
        ("notes", "notes", PLAIN),
        ("signs", "signs", PLAIN),
        ("breed", "breed", PLAIN),
        ("result", "result", USUAL),
        ("posted", "posted", USUAL),
        ("broody", "broody", USUAL),
        ("keeper", "keeper", USUAL),
    ):
        if has(role) and not (role == "keeper" and has("pen")):
            second = {
                "breed": [Meaning("species", weight=POSSIBLE)],
                "result": [Meaning("notes", weight=POSSIBLE), Meaning("hatched", weight=WEAK)],
                "keeper": [Meaning("pen", weight=POSSIBLE)],
                "incubator": [Meaning("set_at", weight=USUAL if roles & {"set", "in", "date"} else POSSIBLE)],
            }.get(role, [])
            return [Meaning(field, look, weight), *second]
    if has("age"):
        return [Meaning("flock_age_weeks", weight=USUAL), Meaning("ignore", weight=POSSIBLE)]
    if has("species"):
        return [Meaning("species", weight=PLAIN), Meaning("breed", weight=POSSIBLE), Meaning("what", weight=WEAK)]
    if has("hen") or has("cock"):
        return [Meaning("hen" if has("hen") else "cock", weight=USUAL), Meaning("pen", weight=POSSIBLE)]
    if has("pen"):
        return [Meaning("pen", weight=USUAL + 0.5), Meaning("breed", weight=WEAK)]
    if several:
        return several
    if has("what"):
        return [Meaning("what", weight=USUAL), Meaning("notes", weight=POSSIBLE)]
    if has("date"):
        return [Meaning("date", weight=USUAL), Meaning("set_at", weight=USUAL if has("in") else POSSIBLE)]
    if has("year"):
        return [Meaning("year", weight=USUAL)]
    if has("place"):
        return [Meaning("place", weight=USUAL)]
    if has("day"):
        return [Meaning("look_day", weight=POSSIBLE), Meaning("date", weight=POSSIBLE)]
    if has("total"):
        return [Meaning("eggs_set", weight=POSSIBLE), Meaning("ignore", weight=POSSIBLE)]
    if roles == {"in"}:
        return [Meaning("eggs_set", weight=USUAL), Meaning("set_at", weight=USUAL)]
    return []


def _ambiguous(roles: frozenset) -> list[Meaning]:
    """Words that name a count, a date or a batch alike: set, hatch, egg, number."""
    has = roles.__contains__
    if has("set"):
        if has("date") or has("time"):
            return [Meaning("set_at", weight=PLAIN)]
        if has("day") and not roles & {"egg", "number"}:
            return [Meaning("look_day", weight=USUAL), Meaning("set_at", weight=USUAL)]
        if has("batch") and not has("egg"):
            return [Meaning("batch", weight=USUAL), Meaning("set_at", weight=WEAK), Meaning("eggs_set", weight=WEAK)]
        if roles & {"egg", "number"}:
            return [
                Meaning("eggs_set", weight=PLAIN),
                Meaning("set_at", weight=POSSIBLE),
                Meaning("batch", weight=WEAK),
            ]
        return [Meaning("set_at", weight=USUAL), Meaning("eggs_set", weight=USUAL), Meaning("batch", weight=WEAK)]
    if has("hatch"):
        if has("date"):
            return [Meaning("hatch_at", weight=PLAIN), Meaning("due", weight=WEAK)]
        if has("batch"):
            return [Meaning("batch", weight=PLAIN), Meaning("hatched", weight=WEAK)]
        if has("egg"):
            return [Meaning("hatched", weight=POSSIBLE), Meaning("eggs_set", weight=WEAK)]
        return [
            *ends_of_hatch(roles),
            Meaning("hatched", weight=USUAL),
            Meaning("hatch_at", weight=USUAL),
            Meaning("batch", weight=USUAL),
        ]
    if has("egg"):
        if has("in"):
            return [Meaning("eggs_set", weight=PLAIN)]
        if roles & {"batch"} or has("number"):
            return [Meaning("eggs_set", weight=USUAL + (0.5 if has("number") else 0.0)), Meaning("egg", weight=USUAL)]
        return [Meaning("eggs_set", weight=USUAL + 0.5), Meaning("egg", weight=POSSIBLE + 0.5)]
    if has("batch"):
        return [Meaning("batch", weight=USUAL + 0.5), Meaning("egg", weight=0.0)]
    if has("date"):
        return []
    if has("count"):
        return [Meaning("eggs_set", weight=USUAL), Meaning("egg", weight=WEAK)]
    return [Meaning("batch", weight=POSSIBLE), Meaning("egg", weight=POSSIBLE), Meaning("eggs_set", weight=POSSIBLE)]
