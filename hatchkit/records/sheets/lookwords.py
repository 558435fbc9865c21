"""Words -> the look at the eggs that they name."""

from __future__ import annotations

from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.lexicon import Token, all_roles

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
