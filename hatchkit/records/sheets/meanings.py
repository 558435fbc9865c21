"""A heading -> what it may mean: a field, the look it belongs to, and how much its words speak for it (`fields`)."""

from __future__ import annotations

import re
from dataclasses import replace

from hatchkit.records.sheets.fields import PLAIN, Meaning
from hatchkit.records.sheets.lexicon import Token, all_roles, tokens, without_negated
from hatchkit.records.sheets.lookwords import look_of
from hatchkit.records.sheets.own_columns import OWN, PLAIN_OWN, own_heading
from hatchkit.records.sheets.wordrules import readings


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
    told = readings(roles, look_of(found))
    return [replace(meaning, weight=meaning.weight - 0.4 * min(unknown, 3)) for meaning in told]
