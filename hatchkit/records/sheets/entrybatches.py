"""Entries of a log or a diary, in order -> the batches they open, with the looks at each.

An entry that sets eggs opens a batch; the others belong to the batch they name, else to the one that is open.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import pandas as pd

from hatchkit.records.sheets.birds import species_in
from hatchkit.records.sheets.entries import Entry, class_of, step_of
from hatchkit.records.sheets.parts import LOOK_COLUMNS, Part


class OpenBatch:
    """A batch while its entries come in."""

    def __init__(self, entry: Entry, name):
        self.row, self.name, self.fields = entry.row, name, dict(entry.fields)
        self.eggs, self.looks, self.end, self.notes = None, [], {}, []
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
        elif step == "hatch":
            self.hatch_at = entry.at or self.hatch_at
            self._end(entry, counts)
        elif step in ("look", "transfer"):
            self.looks.append((entry, step == "transfer", counts))

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


def batches_of(block, entries: list[Entry], odd) -> Part:
    """The entries of a log, in order, as batches, looks and remarks."""
    batches: list[OpenBatch] = []
    by_name: dict = {}
    current = None
    for entry in entries:
        step = step_of(entry)
        name = entry.batch
        if step == "set" and entry.look.day and name in by_name and by_name[name].eggs is not None:
            step = "look"  # a day of a batch that runs: its number of eggs is of those that went in before
        if step == "set" and (
            name is None
            or name not in by_name
            or by_name[name].set_at is not None
            and by_name[name].eggs is not None
            and entry.counts.keys() & {"eggs_set", "left"}
        ):
            current = OpenBatch(entry, name)
            batches.append(current)
            if name is not None:
                by_name[name] = current
        elif name is not None and name in by_name:
            current = by_name[name]
        elif name is not None:
            current = by_name[name] = OpenBatch(entry, name)
            batches.append(current)
        if current is None:
            block.skipped.append((entry.row, "note", entry.text[:200]))
            continue
        current.take(entry, step)
    return _as_part(block, [batch for batch in batches if batch.eggs is not None or batch.end or batch.looks], odd)


_COUNTED = "eggs_set hatched dead_in_shell pipped_dead culled removed broken_infertile rest".split()


def _as_part(block, batches: list[OpenBatch], odd) -> Part:
    rows, looks = [], []
    for place, batch in enumerate(batches):
        inside = batch.eggs
        ordered = sorted(batch.looks, key=lambda look: (look[0].at or pd.Timestamp.max, look[0].row))
        for number, (entry, transfer, counts) in enumerate(ordered):
            inside = _one_look(looks, place, number, entry, transfer, counts, inside)
        end = dict(batch.end)
        if end.pop("all", False) and inside is not None:
            end["hatched"] = max(int(inside) - sum(v for k, v in end.items() if k != "hatched"), 0)
        derived = False
        if inside is not None and "hatched" in end and "dis" not in end and ordered and "left" in ordered[-1][2]:
            end["dis"], derived = max(int(inside) - sum(end.values()) + end.get("culled", 0), 0), True
        mine = [row for row in looks if row["place"] == place]
        lost = sum(row[key] for row in mine for key in ("clear", "dead", "removed") if not np.isnan(row[key]))
        ends = sum(end.get(key, 0) for key in ("hatched", "dis", "pipped", "removed", "clear"))
        told = np.nan if batch.eggs is None else batch.eggs - lost - ends
        removed = end.get("removed", 0) + sum(row["removed"] for row in mine if not np.isnan(row["removed"]))
        rows.append(
            {
                **batch.fields,
                "name": batch.name,
                "set_at": batch.set_at,
                "set_at_hour": _hour(batch.set_at),
                "taken_off_at": batch.hatch_at,
                "taken_off_at_hour": _hour(batch.hatch_at),
                "eggs_set": batch.eggs,
                "hatched": end.get("hatched"),
                "dead_in_shell": end.get("dis"),
                "pipped_dead": end.get("pipped"),
                "culled": end.get("culled"),
                "removed": removed or None,
                "dis_derived": derived,
                "broken_infertile": end.get("clear"),
                "rest": told,
                "broken": False,
                "notes": "; ".join(batch.notes) or None,
                "row": batch.row,
            }
        )
    frame = pd.DataFrame(rows)
    if frame.empty:
        return Part(frame, pd.DataFrame(columns=LOOK_COLUMNS), odd=odd)
    for name in ("set_at", "taken_off_at"):
        frame[name] = pd.to_datetime(frame[name]).astype("datetime64[us]")
    frame[_COUNTED] = frame[_COUNTED].astype(float)
    frame["file"], frame["sheet"], frame["section"] = block.file, block.sheet, ""
    return Part(frame, pd.DataFrame(looks, columns=LOOK_COLUMNS), odd=odd)


def _hour(stamp) -> bool:
    return stamp is not None and not pd.isna(stamp) and (stamp.hour or stamp.minute) != 0


def _one_look(looks, place, number, entry: Entry, transfer: bool, counts: dict, inside):
    """Add one look, its missing loss worked out from the eggs left; returns the eggs that go on."""
    clear, dead, removed, left = (counts.get(key) for key in ("clear", "dead", "removed", "left"))
    out = sum(value for value in (clear, dead, removed) if isinstance(value, int))
    held = counts.get("eggs_set")
    if left is None and isinstance(held, int) and inside is not None and held < inside + (not out):
        left = counts["left"] = held  # no more than went in before: the eggs that were left
    after = None if inside is None else inside - out
    left = after if left == "all" else left
    derived = left is not None and after is not None and after >= left and dead is None
    if derived and after > left and clear is None and number == 0:
        clear = after - left
    elif derived:
        dead = after - left
    nan = float("nan")
    looks.append(
        dict(
            place=place,
            day=nan if entry.look.day is None or entry.at is not None else entry.look.day,
            order=number + 1,
            transfer=transfer,
            at=np.datetime64("NaT", "us") if entry.at is None else np.datetime64(entry.at, "us"),
            hour=_hour(entry.at),
            clear=nan if clear is None else clear,
            dead=nan if dead is None else dead,
            removed=nan if removed is None else removed,
            left=nan if left is None else left,
            derived=derived,
            row=entry.row,
        )
    )
    return after if left is None or inside is None else left
