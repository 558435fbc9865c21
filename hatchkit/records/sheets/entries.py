"""Words -> what became of eggs: of one egg, look by look; and of a line of a log or diary, with numbers by class."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cache
from typing import Any

from hatchkit.records.sheets.cells import CLASSES, Mention, text_of
from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.lexicon import all_roles, cell_words, tokens, without_negated
from hatchkit.records.sheets.meanings import look_of, word_for
from hatchkit.records.words import plain

#: A fate as the outcome of an egg.
_IN_SHELL = ("dead", "dead_in_shell", "infertile", "clear", "pipped_dead")
_AT_END = {"dead_in_shell": "dead", "alive": None, "out": "hatched"}
_AT_LOOK = {"infertile": "clear", "dead_in_shell": "dead", "out": "removed"}
#: Days on which eggs of one list came out; more are the ages of the embryos.
MOST_DAYS = 7


def look_list(fates, result) -> list:
    """The looks of a sheet: its columns, and the days that the results name ("dead d7") where there are none."""
    looks = [(look, words) for look, words in fates]
    if looks:
        order = sorted(
            range(len(looks)),
            key=lambda i: (
                looks[i][0].day
                if looks[i][0].day is not None
                else 99
                if looks[i][0].transfer
                else 7 * (looks[i][0].order or i + 1)
            ),
        )
        return [looks[i] for i in order]
    days = sorted(
        {
            fate.look.day
            for fate in result
            if fate is not None and fate.look.day and fate.fate in ("clear", "dead", "removed", "infertile")
        }
    )
    if days and len(days) <= MOST_DAYS:
        return [(Look(day=day), None) for day in days]
    orders = sorted(
        {
            fate.look.order
            for fate in result
            if fate is not None and fate.look.order and fate.fate in ("clear", "dead", "removed", "infertile")
        }
    )
    if orders and orders[-1] <= 4:
        return [(Look(order=number), None) for number in range(1, orders[-1] + 1)]
    if any(fate is not None and (fate.fate == "clear" or fate.fate == "dead" and fate.early) for fate in result):
        return [(Look(order=1), None)]
    return []


def fate_of_egg(said: tuple, looks, ends: set) -> tuple[list, str | None, str | None]:
    """(state at each look, outcome, what the opened shell held) of an egg from its words at looks and its result."""
    at_look: list = [None] * len(looks)
    outcome = opened = None
    gone = False
    for number, fate in enumerate(said[:-1]):
        if fate is None or gone:
            continue
        said_so = "hatched" if fate.fate == "out" and number in ends else fate.fate
        state = _AT_LOOK.get(said_so, said_so)
        if state in ("alive", "clear", "dead", "removed") and number not in ends:
            at_look[number] = state
            gone = state != "alive"
        elif state != "alive":
            outcome, gone = {"clear": "infertile"}.get(state, state), True
    last = said[-1]
    if last is not None and not gone:
        outcome = _end_of_egg(last, looks, at_look)
    elif last is not None and outcome is None and last.fate in _IN_SHELL:
        # Taken out at a look and opened: what the shell held stays beside it.
        opened = _AT_END.get(last.fate, last.fate)
    return at_look, outcome, opened


def _end_of_egg(last: Fate, looks, at_look: list) -> str | None:
    """Put the result of an egg where it belongs: at the look it names, or at the end, which is given back."""
    state = _AT_END.get(last.fate, last.fate)
    days = [look.day for look, _ in looks]
    if last.fate in ("clear", "dead", "removed") and last.look.day in days and last.look.day is not None:
        at_look[days.index(last.look.day)] = state
    elif state == "clear" and looks:
        at_look[0] = "clear"
    elif state == "dead" and last.fate == "dead" and last.look.order and last.look.order <= len(looks):
        at_look[last.look.order - 1] = "dead"
    else:
        return "infertile" if state == "clear" else state
    return None


#: Kit's own words, which the kit's blank workbook offers.
OWN = {"alive", "clear", "dead", "removed", "hatched", "culled", "pipped_dead", "infertile"}


@dataclass(frozen=True)
class Fate:
    """What a cell says of one egg.

    fate: alive, clear, infertile, dead, dead_in_shell, pipped_dead, hatched, culled, removed or out (of the shell at
    the hatch, of the machine before it).
    """

    fate: str
    look: Look = Look()
    early: bool = False


@cache
def fate_of(cell, language: str | None) -> Fate | None:
    """The fate that a cell names, or None.

    Parameters
    ----------
    cell : str
    language : str or None
    """
    text = plain(text_of(cell) or "")
    if text.replace(" ", "_") in OWN:
        return Fate(text.replace(" ", "_"))
    if text == "c":
        return Fate("clear")
    if not text or text in cell_words("unknown"):
        return None
    if text in ("x", "+", "v", "✓", "√", "1", "*"):
        return Fate("alive") if text in ("+", "v", "✓", "√") else None
    found = without_negated(list(tokens(str(cell), language)))
    # A word that only looks like a known one says nothing beside known ones.
    sure = [token for token in found if not token.guessed]
    found = sure if word_for("egg", all_roles(sure)) else found
    roles = all_roles(found)
    fate = word_for("egg", roles)
    return None if fate is None else Fate(fate, look_of(found), bool(roles & {"early"}))


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
