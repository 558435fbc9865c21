"""A cell that tells of several looks in words ("d7: 3 clear, 1 ring. d14: 1 quit. d18: 19 moved") -> counts by look."""

from __future__ import annotations

import re
from functools import cache

from hatchkit.records.sheets.cells import mentions
from hatchkit.records.sheets.entries import class_of
from hatchkit.records.sheets.lexicon import all_roles, phrases, tokens
from hatchkit.records.sheets.lookwords import look_of
from hatchkit.records.words import plain

#: Classes that belong to a look; the others are told of once.
_AT_LOOKS = frozenset({"clear", "dead", "left", "removed"})


def counts_by_look(cell, language: str | None) -> dict[tuple[str, str], float]:
    """What a cell counts: (group that names the look, class) -> eggs; the group is "" for what belongs to no look.

    A day in front of a clause holds until the next one, a day at its end for that clause. Where no day parts them, a
    class told of once more is of the next look.

    Parameters
    ----------
    cell : object
    language : str or None
    """
    text = re.sub(rf"(\d{{1,2}})\.\s*(?=(?:{_day_words()})\b)", r"\1 ", plain(str(cell))[:600])
    found: dict[tuple[str, str], float] = {}
    current, order = "", 1
    for clause in re.split(r"[;,\n]|\.(?=\s|$)|\s[-–/]\s", text):
        words = tokens(clause, language)
        look = look_of(list(words))
        # In "5 clear" the five counts eggs; a day is called one.
        timed = look.day is not None and all_roles(words) & {"day", "week", "candle"}
        group = f"day {look.day}" if timed else ""
        if group and any("day" in token.roles for token in words[:2]):
            current = group
        elif "transfer" in all_roles(words):
            current = ""
        group = group or current or ("transfer" if "transfer" in all_roles(words) else "")
        told = list(mentions(clause, language))
        for mention in told:
            name = class_of(mention.roles)
            if name is None:
                continue
            if name not in _AT_LOOKS:
                found["", name] = found.get(("", name), 0.0) + mention.count
                continue
            if not group and (f"candling {order}", name) in found:
                order += 1
            key = (group or f"candling {order}", name)
            found[key] = found.get(key, 0.0) + mention.count
        if not told and words:
            _lone(words, group, found)
        if group.startswith("day"):
            found.setdefault((group, ""), 0.0)
    return found


def _lone(words, group: str, found: dict) -> None:
    """A number without a class: the eggs that went on at the move, or those that were set ("24 in")."""
    roles = all_roles(words)
    days = [token for token in words if token.number is not None and not token.roles - {"word number"}]
    numbers = [t.number for t in days if f"day {t.number}" != group]
    if len(numbers) != 1:
        return
    if "transfer" in roles:
        found[group or "transfer", "left"] = float(numbers[0])
    elif roles & {"in", "egg"} and not found:
        found["", "eggs_set"] = float(numbers[0])


@cache
def _day_words() -> str:
    words = [key for key, roles in phrases().items() if "day" in roles and " " not in key]
    words.sort(key=len, reverse=True)
    return "|".join(map(re.escape, words))
