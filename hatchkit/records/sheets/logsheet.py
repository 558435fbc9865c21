"""A log (a row per look) or a diary (a line of words per day) -> batches and their looks.

Both become entries: a day, a batch, what was done, and numbers of eggs by class; `entrybatches` makes batches of them.
A table of weights becomes weighings: a column per day, or a date and a weight in each row.
"""

from __future__ import annotations

from copy import deepcopy
from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.records.sheets import typed
from hatchkit.records.sheets.cells import mentions
from hatchkit.records.sheets.entries import Entry, add_mention, class_of
from hatchkit.records.sheets.entrybatches import batches_of
from hatchkit.records.sheets.fields import PLAIN, Look, Meaning
from hatchkit.records.sheets.kinds import SEVERAL, best_of_each
from hatchkit.records.sheets.lexicon import all_roles, tokens
from hatchkit.records.sheets.meanings import look_of
from hatchkit.records.sheets.parts import TEXT_FIELDS, Context, Part


def columns_of_weights(columns, options) -> list:
    """One reading per column of a table of weights.

    "Egg" and "Eggs" are one word: the column whose cells differ names the egg, the other counts the eggs on the scale.
    """
    chosen = best_of_each(options, {"weight": 3.0, "date": 1.0}, several=(*SEVERAL, "weight"))
    eggs = [i for i, found in enumerate(options) if _of_eggs(chosen[i], found)]
    # "Eggs on the scale" says it plainly; "egg" and "eggs" do not.
    open_ = [i for i in eggs if chosen[i].field != "eggs_weighed"]
    named = max(open_, key=lambda i: columns[i].distinct, default=None)
    if len(eggs) == 1 and named is not None and chosen[named].field != "egg" and _whole_trays(columns, chosen):
        named = None
    for place in eggs:
        chosen[place] = Meaning("egg" if place == named else "eggs_weighed", weight=PLAIN)
    return chosen


def _of_eggs(meaning, found) -> bool:
    fields = {m.field for m in found if m.weight > 0}
    return (
        bool(fields & {"egg", "eggs_set", "eggs_weighed"})
        and "weight" not in fields
        and meaning.field in ("egg", "eggs_set", "eggs_weighed", "left")
    )


def _whole_trays(columns, chosen) -> bool:
    """Whether more than one egg lay on the scale: no egg of the kit's birds weighs above 250 g (memory, no source)."""
    grams = [
        value * typed.factor_in(column.heading, typed.GRAMS)
        for column, meaning in zip(columns, chosen, strict=True)
        if meaning.field == "weight"
        for value in typed.measures(column.cells, range(len(column.cells)), typed.GRAMS, typed.Odd("", ""))
    ]
    return bool(grams) and np.nanmedian(grams) > 250


def read_weights(block, chosen, context: Context) -> Part | None:
    """Weighings of eggs or trays: name (batch as written), egg, tray, day, at, grams, eggs_weighed, row; None if none.

    Parameters
    ----------
    block : Block
    chosen : list of Meaning
    context : Context
    """
    odd, parts, base = [], [], {}
    days: dict = {}
    for place, meaning in enumerate(chosen):
        mark = typed.Odd(block.headings[place], meaning.field)
        odd.append(mark)
        cells = block.columns[place]
        if meaning.field == "batch":
            base["name"] = pd.Series(typed.texts(cells), dtype=object).ffill()
        elif meaning.field in ("egg", "tray"):
            base[meaning.field] = typed.texts(cells)
        elif meaning.field in ("date", "look_at", "set_at"):
            base["at"] = typed.times(cells, block.rows, context.day_first, context.year, mark)[0]
        elif meaning.field == "look_day":
            base["day"] = typed.measures(cells, block.rows, typed.DAYS, mark)
        elif meaning.field in ("eggs_weighed", "eggs_set", "left"):
            base["eggs_weighed"] = typed.measures(cells, block.rows, {"": 1.0}, mark)
        elif meaning.field == "weight":
            days[place] = (
                meaning.look.day,
                typed.measures(cells, block.rows, typed.GRAMS, mark) * typed.factor_in(mark.heading, typed.GRAMS),
            )
    for day, grams in days.values():
        frame = pd.DataFrame(base, index=range(len(block.rows)))
        if day is not None:
            frame["day"] = float(day)
        elif "at" not in frame and "day" not in frame:
            frame["day"] = 0.0
        frame["grams"], frame["row"], frame["section"] = grams, block.rows, block.sections
        parts.append(frame[~np.isnan(grams)])
    table = pd.concat(parts, ignore_index=True) if parts else pd.DataFrame()
    if table.empty:
        return None
    if "eggs_weighed" not in table and "egg" in table:
        table["eggs_weighed"] = np.where(table["egg"].notna(), 1.0, np.nan)
    table["file"], table["sheet"] = block.file, block.sheet
    return Part(pd.DataFrame(), pd.DataFrame(), weights=table, odd=odd)


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
    fields = {meaning.field for meaning in chosen}
    # "Live ones" beside the dead in shell are the chicks.
    at_the_end = bool(fields & {"dis", "pipped"}) and not fields & {"hatched", "clear", "dead"}
    remarks: list = []
    for meaning, cells, heading in zip(chosen, block.columns, block.headings, strict=True):
        name = meaning.field
        mark = typed.Odd(heading, name)
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
    return _with_remarks(block, entries, remarks, odd)


def _with_remarks(block, entries, remarks, odd) -> Part:
    """The batches of a log; what remarks count is added only where the eggs add up with it and do not without.

    Where they add up without, a remark can only tell of what a count already holds ("of these 1 pipped").
    """
    if not remarks or not any(entry.counts for entry in entries):
        for entry, mention in remarks:
            add_mention(entry, mention, remark=True)
        return batches_of(block, entries, odd)
    fuller = deepcopy(entries)
    of = {id(entry): full for entry, full in zip(entries, fuller, strict=True)}
    for entry, mention in remarks:
        add_mention(of[id(entry)], mention, remark=True)
    rest, mended = (_rest_by_name(block, some) for some in (entries, fuller))
    for entry, mention in remarks:
        if rest.get(entry.batch) == 0 and entry.counts and mention.roles & {"pipped"}:
            add_mention(entry, replace(mention, within=True), remark=True)
    with_remarks = {name for name in mended if mended[name] == 0 != rest.get(name)}
    derived = {name for name in mended if rest.get(name) is None and mended[name] is not None}
    with_remarks |= {name for name in derived if mended[name] >= 0}
    taken = [of[id(entry)] if entry.batch in with_remarks else entry for entry in entries]
    return batches_of(block, taken, odd)


def _rest_by_name(block, entries) -> dict:
    """Name of each batch -> eggs that its entries leave open: None where they had to add up, below 0 for too many."""
    table = batches_of(replace(block, skipped=[]), deepcopy(entries), []).batches
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
