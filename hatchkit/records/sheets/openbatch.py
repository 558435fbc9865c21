"""A batch of a log or diary while its entries come in: eggs set, looks, and the end of the hatch."""

from __future__ import annotations

from typing import Any

from hatchkit.records.sheets.birds import species_in
from hatchkit.records.sheets.entries import Entry, class_of

#: Losses that a look may find, and a hatch.
_BEFORE = frozenset({"clear", "dead", "removed", "left"})


class OpenBatch:
    """A batch while its entries come in."""

    def __init__(self, entry: Entry, name):
        self.row, self.name, self.fields = entry.row, name, dict(entry.fields)
        self.eggs, self.looks, self.end, self.notes, self.early = None, [], {}, [], []
        self.set_at: Any = None
        self.hatch_at: Any = None

    def take(self, entry: Entry, step: str) -> None:
        """Add an entry of which `entries.step_of` says what it does."""
        for key, value in entry.fields.items():
            self.fields.setdefault(key, value)
        if entry.text:
            self.notes.append(entry.text)
        counts = dict(entry.counts)
        known = self.hatch_at is not None and entry.at is not None and "hatched" in self.end
        ended = known and entry.at >= self.hatch_at
        if step == "look" and ended and counts.keys() & {"dead", "clear"}:
            step = "hatch"  # what is found after the chicks is of the eggs that were left
        if step == "set":
            self.set_at = self.set_at or entry.at
            if entry.text and species_in(entry.text):
                self.fields.setdefault("species_text", entry.text[:200])
            eggs = counts.pop("eggs_set", None) or counts.pop("left", None)
            self.eggs = eggs if self.eggs is None else self.eggs
        elif step == "hatch" and "hatched" not in self.end and counts and not counts.keys() - _BEFORE:
            self.early.append((entry, counts))
        elif step == "hatch":
            if "hatched" in counts:
                self._before_chicks(entry.at)
            self.hatch_at = entry.at or self.hatch_at
            self._end(entry, counts)
        elif step in ("look", "transfer"):
            self.looks.append((entry, step == "transfer", counts))

    def close(self) -> None:
        """The end of the entries: what no chick followed was found at the end."""
        for entry, _ in self.early:
            self.hatch_at = entry.at or self.hatch_at
        self._before_chicks(None)

    def _end(self, entry: Entry, counts: dict) -> None:
        """Add what an entry of the hatch counts."""
        if "dead" in counts:
            counts["dis"] = counts.get("dis", 0) + counts.pop("dead")
        if counts.keys() == {"eggs_set"} and class_of(entry.roles) == "hatched":
            counts["hatched"] = counts.pop("eggs_set")  # "ducklings hatched: 23" below the eggs that were left
        for key, value in counts.items():
            if key in ("hatched", "pipped", "dis", "culled", "removed", "clear") and value != "all":
                self.end[key] = self.end.get(key, 0) + value
            elif key == "hatched":
                self.end["all"] = True
        for key, value in entry.within.items():
            if key in ("pipped", "removed", "culled") and key not in self.end:
                self.end[key] = value
                if key != "culled" and self.end.get("dis", 0) >= value:
                    self.end["dis"] -= value

    def _before_chicks(self, at) -> None:
        """Put what was lost while the hatch was awaited at a look before the day of the first chick, or at the end."""
        early, self.early = self.early, []
        for entry, counts in early:
            if at is not None and entry.at is not None and entry.at < at:
                self.looks.append((entry, "transfer" in entry.roles, counts))
            else:
                self._end(entry, counts)
