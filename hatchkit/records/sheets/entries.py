"""One line of a log or diary: a day, a batch, what was done, and numbers of eggs by class."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from hatchkit.records.sheets.cells import Mention
from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.wordrules import word_for


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
