"""One line of a log or diary: a day, a batch, what was done, and numbers of eggs by class or without a word for one."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from hatchkit.records.sheets.cells import CLASSES, Mention
from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.meanings import word_for

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


@dataclass
class Entry:
    """One line of a log or diary.

    `loose` are numbers of which no word beside them says what they count, each with the class that the sentence names.
    """

    row: int
    at: Any = None
    batch: str | None = None
    roles: frozenset = frozenset()
    look: Look = Look()
    counts: dict = field(default_factory=dict)
    within: dict = field(default_factory=dict)
    text: str = ""
    fields: dict = field(default_factory=dict)
    loose: list = field(default_factory=list)

    @property
    def looks_again(self) -> bool:
        """Whether the words name a look at eggs that were set before: its number of eggs is of those that went in."""
        return bool(self.roles & {"candle", "transfer"}) and "set" not in self.roles


def class_of(roles: frozenset) -> str | None:
    """The ledger's name for a class of eggs in words."""
    return word_for("count", roles)


def add_mention(entry: Entry, mention: Mention, *, remark: bool) -> None:
    """Book a count told in words to an entry, in the class that its words mean."""
    kind = class_of(mention.roles)
    if kind is None or mention.roles & {"weak", "fresh"}:
        return
    if kind == "hatched" and mention.roles == {"out"} and (entry.look.day or entry.roles & {"cracked", "rotten"}):
        kind = "removed"  # "cracked 1, out it went" at a look
    if kind == "hatched" and mention.roles == {"out"} and "candle" in entry.roles:
        return  # "took the four out" says again what was found
    if mention.within:
        entry.within[kind] = mention.count
    elif kind not in entry.counts or not remark:
        entry.counts[kind] = entry.counts.get(kind, 0) + mention.count if kind != "left" else mention.count


def step_of(entry: Entry) -> str:
    """What an entry does: set, look, transfer, hatch or note."""
    # A log that parts a cell's words into columns writes 0 for what its cell does not name.
    counts = [name for name, count in entry.counts.items() if count] or entry.counts
    return word_for("step", entry.roles | {f"#{name}" for name in counts}, entry.look)
