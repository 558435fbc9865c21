"""A log (a row per look) or a diary (a line of words per day) -> batches and their looks.

Both become entries: a day, a batch, what was done, and numbers of eggs by class. An entry that sets eggs opens a batch;
the others belong to the batch they name, else to the one that is open.
"""

from __future__ import annotations

from copy import deepcopy
from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.records.sheets import typed
from hatchkit.records.sheets.cells import mentions
from hatchkit.records.sheets.entries import Entry, add_mention, class_of, step_of
from hatchkit.records.sheets.fields import Look
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.lookwords import look_of
from hatchkit.records.sheets.openbatch import OpenBatch
from hatchkit.records.sheets.parts import LOOK_COLUMNS, TEXT_FIELDS, Context, Part


def read_log(block, chosen, context: Context) -> Part:
    """The batches of a table with a row per look.

    Parameters
    ----------
    block : Block
    chosen : list of Meaning or None
    context : Context
    """
    odd, n = [], len(block.rows)
    entries = [Entry(row) for row in block.rows]
    numbered = np.full(n, np.nan)
    fields = {meaning.field for meaning in chosen if meaning is not None}
    # "Live ones" beside the dead in shell are the chicks.
    at_the_end = bool(fields & {"dis", "pipped"}) and not fields & {"hatched", "clear", "dead"}
    columns = block.columns
    remarks: list = []
    for place, meaning in enumerate(chosen):
        if meaning is None:
            continue
        name, cells = meaning.field, columns[place]
        mark = typed.Odd(block.headings[place], name)
        odd.append(mark)
        if name in ("date", "set_at", "look_at", "hatch_at"):
            stamps, _ = typed.times(cells, block.rows, context.day_first, context.year, mark)
            for i in range(n):
                if not np.isnat(stamps[i]):
                    entries[i].at = pd.Timestamp(stamps[i])
        elif name == "batch":
            for entry, text in zip(entries, typed.texts(cells), strict=True):
                entry.batch = text
        elif name in ("what", "notes", "result"):
            for entry, text in zip(entries, typed.texts(cells), strict=True):
                remarks += [(entry, mention) for mention in _words(entry, text, name, context)]
        elif name in TEXT_FIELDS:
            for entry, text in zip(entries, typed.texts(cells), strict=True):
                if text:
                    entry.fields[TEXT_FIELDS[name]] = text
        elif name == "look_day":
            for entry, day in zip(entries, typed.measures(cells, block.rows, {"": 1.0, "d": 1.0}, mark), strict=True):
                if not np.isnan(day):
                    entry.look = Look(day=int(day)).within(entry.look)
        elif meaning.field in _LEDGER:
            read = typed.counts(cells, block.rows, context.language, mark)
            key = "hatched" if name == "left" and at_the_end else _LEDGER[meaning.field]
            for i in range(n):
                if not np.isnan(read.values[i]):
                    entries[i].counts[key] = entries[i].counts.get(key, 0) + int(read.values[i])
                elif not np.isnan(read.everything[i]):
                    entries[i].counts[key] = "all"
        elif name == "number":
            numbered = typed.counts(cells, block.rows, context.language, mark).values
    for entry, count in zip(entries, numbered, strict=True):
        kind = class_of(entry.roles)
        if not np.isnan(count) and kind is not None:
            entry.counts = {key: value for key, value in entry.counts.items() if key != kind}
            entry.counts[kind] = int(count)
            if kind != "eggs_set":
                entry.counts.pop("left", None)
        if entry.looks_again and "dis" in entry.counts and not entry.counts.get("hatched"):
            # One column of dead for all looks, though its heading speaks of the last: the row says which look.
            entry.counts["dead"] = entry.counts.get("dead", 0) + entry.counts.pop("dis")
    return _with_remarks(block, entries, remarks, context, odd)


def _with_remarks(block, entries, remarks, context: Context, odd) -> Part:
    """The batches of a log; what remarks count is added only where the eggs add up with it and do not without.

    Where they add up without, a remark can only tell of what a count already holds ("of these 1 pipped").
    """
    if not remarks or not any(entry.counts for entry in entries):
        for entry, mention in remarks:
            add_mention(entry, mention, remark=True)
        return batches_of(block, entries, context, odd)
    fuller = deepcopy(entries)
    of = {id(entry): full for entry, full in zip(entries, fuller, strict=True)}
    for entry, mention in remarks:
        add_mention(of[id(entry)], mention, remark=True)
    rest, mended = (_rest_by_name(block, some, context) for some in (entries, fuller))
    for entry, mention in remarks:
        if rest.get(entry.batch) == 0 and entry.counts and mention.roles & {"pipped"}:
            add_mention(entry, replace(mention, within=True), remark=True)
    with_remarks = {name for name in mended if mended[name] == 0 != rest.get(name)}
    derived = {name for name in mended if rest.get(name) is None and mended[name] is not None}
    with_remarks |= {name for name in derived if mended[name] >= 0}
    taken = [of[id(entry)] if entry.batch in with_remarks else entry for entry in entries]
    return batches_of(block, taken, context, odd)


def _rest_by_name(block, entries, context: Context) -> dict:
    """Name of each batch -> eggs that its entries leave open: None where they had to add up, below 0 for too many."""
    table = batches_of(replace(block, skipped=[]), deepcopy(entries), context, []).batches
    if table.empty:
        return {}
    rest = table["rest"].astype(object).where(~(table["dis_derived"].astype(bool) & table["rest"].ge(0)), None)
    return dict(zip(table["name"], rest, strict=True))


_LEDGER = {
    "eggs_set": "eggs_set",
    "clear": "clear",
    "dead": "dead",
    "left": "left",
    "fertile": "left",
    "removed": "removed",
    "rotten": "removed",
    "cracked": "removed",
    "pipped": "pipped",
    "dis": "dis",
    "unhatched": "dis",
    "hatched": "hatched",
    "culled": "culled",
}


def _words(entry: Entry, text, name: str, context: Context) -> list:
    """Take the words of what was done; what a remark counts is given back."""
    if not text:
        return []
    found = tokens(text, context.language)
    roles = all_roles(found)
    if name == "what":
        entry.roles |= roles
        entry.look = look_of(list(found)).within(entry.look)
    entry.text = "; ".join(filter(None, (entry.text, text)))
    counted = list(mentions(text, context.language))
    for mention in counted if name == "what" else ():
        add_mention(entry, mention, remark=False)
    return counted if name != "what" else []


def batches_of(block, entries: list[Entry], context: Context, odd) -> Part:
    """The entries of a log, in order, as batches, looks and remarks."""
    batches: list[OpenBatch] = []
    by_name: dict = {}
    current = None
    for entry in entries:
        step = step_of(entry)
        name = entry.batch
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
    for batch in batches:
        batch.close()
    return _as_part(
        block, [batch for batch in batches if batch.eggs is not None or batch.end or batch.looks], context, odd
    )


def _as_part(block, batches: list[OpenBatch], context: Context, odd) -> Part:
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
                "clear_end": end.get("clear"),
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
    for name in ("eggs_set", "hatched", "dead_in_shell", "pipped_dead", "culled", "removed", "rest"):
        frame[name] = frame[name].astype(float)
    if frame["clear_end"].notna().any():
        frame["broken_infertile"] = frame["clear_end"].astype(float)
    frame = frame.drop(columns="clear_end")
    frame["file"], frame["sheet"] = block.file, block.sheet
    frame["section"] = ""
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
    derived = False
    if left == "all":
        left = None if inside is None else inside - out
    if left is not None and inside is not None:
        gap = inside - out - left
        if gap > 0 and dead is None:
            if clear is None and number == 0:
                clear, derived = gap, True
            else:
                dead, derived = gap, True
        elif gap == 0 and dead is None:
            dead, derived = 0, True
        inside = left
    elif inside is not None:
        inside -= out
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
    return inside
