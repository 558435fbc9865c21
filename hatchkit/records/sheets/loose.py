"""Numbers in the sentences of a diary that no word beside them explains: eggs set, eggs moved, what a batch lacks."""

from __future__ import annotations

from hatchkit.records.sheets.cells import CLASSES
from hatchkit.records.sheets.entries import Entry, class_of, step_of

#: What may have become of "the rest".
_LOST = frozenset({"clear", "dead", "dis", "pipped", "removed"})


def take_what_lacks(rest: int, entries: list[Entry]) -> None:
    """Take the one loose number that is just what a batch lacks, or what is said of the rest; of two fits, none."""
    fits = [(entry, kind) for entry in entries for count, kind in entry.loose if count in (rest, None)]
    if len(fits) == 1:
        entry, kind = fits[0]
        entry.counts = {**entry.counts, kind: entry.counts.get(kind, 0) + rest}


def numbers_in(found) -> list[tuple[int, int]]:
    """Place and value of the numbers among tokens that count no days."""
    return [
        (place, token.number)
        for place, token in enumerate(found)
        if token.number is not None
        and not token.roles - {"word number"}
        and not any("day" in other.roles for other in found[max(place - 1, 0) : place + 2])
    ]


def loose_in(entry: Entry, found) -> list[tuple[int, str | None]]:
    """Numbers that no class claims, with the class that the sentence names; in a sentence of the hatch, chicks."""
    numbers = [number for _, number in numbers_in(found) if number > 0]
    hatching = step_of(entry) == "hatch"
    for name, count in (*entry.counts.items(), *entry.within.items()):
        if count in numbers and not (hatching and name == "left"):  # "one egg was left, dead in shell"
            numbers.remove(count)
    kind = class_of(entry.roles & CLASSES)
    if hatching and "hatched" not in entry.counts and kind in (None, *entry.counts):
        kind = "hatched"
    elif kind in (*entry.counts, "left", "eggs_set"):
        kind = None
    # "The rest dead in shell"; but "the other three" are three.
    places = [place for place, token in enumerate(found) if "others" in token.roles]
    counted = any(token.number is not None for place in places for token in found[place + 1 : place + 3])
    rest = None if places and not counted and kind in _LOST else 0
    return [(number, kind) for number in [*numbers, rest] if kind and number != 0]


def moved_in(found, counts: dict) -> int | None:
    """The eggs that went on in a sentence of the move ("Lockdown, 23 in"): the one number that no class claims."""
    numbers = [number for _, number in numbers_in(found)]
    for count in counts.values():
        if count in numbers:
            numbers.remove(count)
    return numbers[0] if len(numbers) == 1 and numbers[0] > 0 else None


def eggs_set_in(found) -> int | None:
    """The number of eggs in a sentence of setting: the one before the eggs, else the first that is no day."""
    numbers = numbers_in(found)
    if not numbers:
        return None
    before = [number for place, number in numbers if any("egg" in token.roles for token in found[place : place + 5])]
    eggs = next((place for place, token in enumerate(found) if "egg" in token.roles), None)
    near = [number for place, number in numbers if eggs is not None and place < eggs]
    return near[-1] if before and near else before[0] if before else numbers[0][1]
