"""A table with a row per egg -> egg rows, and the batches and looks that follow from them."""

from __future__ import annotations

import re
from dataclasses import replace

import numpy as np
import pandas as pd

from hatchkit.records.sheets import typed
from hatchkit.records.sheets.around import fill_from_around
from hatchkit.records.sheets.cells import is_empty, text_of
from hatchkit.records.sheets.entries import fate_of, fate_of_egg, look_list
from hatchkit.records.sheets.parts import LOOK_COLUMNS, TEXT_FIELDS, TIME_FIELDS, Context, Part

_MEASURES = {"tray_row": "row", "tray_col": "col", "stage_day": "stage_day"}
#: Machines or pens that part the eggs of one list into batches.
MOST_GROUPS = 6
_ONE_PER_BATCH = {"breed", "species_text", "incubator", "hatcher", "pen", "place", "keeper"}


def read_eggs(block, chosen, context: Context) -> Part:
    """Egg rows, and a batch per name, date or section with its looks.

    Parameters
    ----------
    block : Block
    chosen : list of Meaning or None
    context : Context
    """
    n, odd = len(block.rows), []
    frame: dict = {}
    fates, result, days, out_at = [], None, None, None
    dated = any(meaning.field == "set_at" for meaning in chosen)
    for meaning, cells, heading in zip(chosen, block.columns, block.headings, strict=True):
        name = meaning.field
        mark = typed.Odd(heading, name)
        odd.append(mark)
        if name in TEXT_FIELDS and name != "tray":
            frame[TEXT_FIELDS[name]] = typed.texts(cells)
        elif name == "date" and dated:
            out_at = typed.times(cells, block.rows, context.day_first, context.year, mark)[0]
        elif name in TIME_FIELDS:
            target = TIME_FIELDS[name]
            frame[target], frame[f"{target}_hour"] = typed.times(
                cells, block.rows, context.day_first, context.year, mark
            )
        elif name in ("egg", "tray", "hen", "cock"):
            frame[name] = typed.texts(cells)
        elif name in _MEASURES:
            frame[_MEASURES[name]] = typed.measures(_letters_counted(cells), block.rows, {"": 1.0}, mark)
        elif name == "weight":
            frame.setdefault("weights", {})[meaning.look.day or 0] = typed.measures(
                cells, block.rows, typed.GRAMS, mark
            )
        elif name == "fate":
            fates.append((meaning.look, _words(cells, block.rows, context, mark)))
        elif name == "result":
            result = _words(cells, block.rows, context, mark)
        elif name == "look_day":
            days = typed.counts(cells, block.rows, context.language, mark).values
        elif name == "notes":
            frame["notes"] = typed.texts(cells)
    if out_at is not None:
        days = (out_at - frame["set_at"]) / np.timedelta64(1, "D")
    if result is not None and days is not None:
        of = pd.DataFrame({name: frame[name] for name in ("name", "set_at") if name in frame}, index=range(n))
        result = _on_days(result, days, list(of.itertuples(index=False, name=None)))
    weights = frame.pop("weights", {})
    eggs = pd.DataFrame(frame, index=range(n))
    alone = "set_at" not in frame and "name" not in frame
    eggs["section"] = [section or (block.titles[-1] if block.titles and alone else "") for section in block.sections]
    eggs["sheet_row"] = block.rows
    if "name" not in eggs and {"egg", "set_at"} <= set(eggs):
        _named_by_codes(eggs)
    said = np.array(
        [
            any(found[i] is not None for _, found in fates) or result is not None and result[i] is not None
            for i in range(n)
        ],
        dtype=bool,
    )
    named = eggs["egg"].notna().to_numpy() if "egg" in eggs else np.zeros(n, bool)
    weighed = np.any([~np.isnan(grams) for grams in weights.values()], axis=0) if weights else np.zeros(n, bool)
    keep = said | named | weighed
    kept = np.flatnonzero(keep)
    eggs = eggs.iloc[kept].reset_index(drop=True)
    fates = [(look, [found[i] for i in kept]) for look, found in fates]
    result = [result[i] for i in kept] if result is not None else [None] * len(kept)
    weights = {day: grams[kept] for day, grams in weights.items()}
    return _grouped(block, eggs, fates, result, weights, odd, context)


def _on_days(result: list, days, batch_of: list) -> list:
    """The results with the day on which each egg came out; dead from a batch's first chick on are dead in shell."""
    first: dict = {}
    for fate, day, batch in zip(result, days, batch_of, strict=True):
        if fate is not None and fate.fate == "hatched" and day == day:
            first[batch] = min(day, first.get(batch, day))
    return [
        fate
        if fate is None or fate.look.day is not None or day != day or day >= first.get(batch, np.inf)
        else replace(fate, look=replace(fate.look, day=int(day)))
        for fate, day, batch in zip(result, days, batch_of, strict=True)
    ]


def _named_by_codes(eggs: pd.DataFrame) -> None:
    """What the codes of all eggs of one setting begin with ("P-01", "P-02") is the batch's name."""
    letters = eggs["egg"].astype(str).str.extract(r"^\s*([^\W\d_]+)[-. /]*\d+\s*$")[0]
    pairs = pd.DataFrame({"letters": letters, "set_at": eggs["set_at"]}).drop_duplicates()
    if letters.notna().all() and pairs["set_at"].notna().all() and len(pairs) == pairs["set_at"].nunique() > 1:
        if len(pairs) == letters.nunique():
            eggs["name"] = letters


def _letters_counted(cells) -> list:
    """Rows of a tray that are lettered: A, B, C -> 1, 2, 3."""
    lettered = re.compile(r"\s*[A-Za-z]\s*")
    return [
        float(ord(cell.strip().upper()) - 64) if isinstance(cell, str) and lettered.fullmatch(cell) else cell
        for cell in cells
    ]


def _words(cells, rows, context: Context, mark) -> list:
    known = {cell: None if is_empty(cell) else fate_of(text_of(cell), context.language) for cell in set(cells)}
    odd = {cell for cell, fate in known.items() if not is_empty(cell) and (fate is None or "?" in text_of(cell))}
    for row, cell in zip(rows, cells, strict=True) if odd else ():
        if cell in odd:
            mark.add("no fate" if known[cell] is None else "unsure", row, cell)
    return [known[cell] for cell in cells]


def _grouped(block, eggs, fates, result, weights, odd, context: Context) -> Part:
    key = _batch_key(eggs)
    groups = {name: place for place, name in enumerate(dict.fromkeys(key))}
    batch_of = np.array([groups[name] for name in key], dtype=int)
    looks = look_list(fates, result)
    # A column in which eggs hatched is the end: its dead are dead in shell.
    ends = {n for n, (_, words) in enumerate(looks) if words and any(w and w.fate == "hatched" for w in words)}
    # Eggs of which the same was said have the same fate: it is worked out once.
    told = [*(words if words is not None else [None] * len(eggs) for _, words in looks), result]
    said = list(zip(*(map(id, words) for words in told), strict=True))
    firsts = dict(zip(said, zip(*told, strict=True), strict=True))
    known = {one: fate_of_egg(fates, looks, ends) for one, fates in firsts.items()}
    fates_of = [known[one] for one in said]
    at_look = [[fate[0][number] for fate in fates_of] for number in range(len(looks))]
    outcome = [fate[1] for fate in fates_of]
    opened = [fate[2] for fate in fates_of]
    part = _as_part(block, eggs, groups, batch_of, looks, at_look, outcome, weights, odd)
    part.eggs["outcome"] = [end or inside for end, inside in zip(outcome, opened, strict=True)]
    fill_from_around(part.batches, block, context)
    return part


def _batch_key(eggs: pd.DataFrame) -> list:
    """What parts the eggs into batches: their name, filled down; else the section, else the day of setting."""
    parts = []
    if "name" in eggs and eggs["name"].notna().any():
        parts.append(eggs["name"].ffill().bfill())
        if "set_at" in eggs and eggs.groupby(parts[0])["set_at"].nunique().gt(1).any():
            parts.append(eggs["set_at"].ffill().astype(str))
    elif any(eggs["section"]):
        parts.append(eggs["section"])
        name = next((name for name in ("incubator", "pen") if name in eggs and eggs["section"].nunique() == 1), None)
        if name is not None and 1 < eggs[name].nunique() <= MOST_GROUPS:
            parts.append(eggs[name].ffill().fillna(""))
    elif "set_at" in eggs and eggs["set_at"].notna().any():
        parts.append(eggs["set_at"].ffill().astype(str))
        for name in ("breed", "species_text"):
            if name in eggs and eggs[name].notna().any():
                parts.append(eggs[name].ffill())
    else:
        name = next((name for name in ("pen", "breed", "incubator") if name in eggs), None)
        parts += [] if name is None else [eggs[name].ffill().fillna("")]
    if not parts:
        return [""] * len(eggs)
    return list(zip(*parts, strict=True))


def _as_part(block, eggs, groups, batch_of, looks, at_look, outcome, weights, odd) -> Part:
    m = len(groups)
    first = [int(np.flatnonzero(batch_of == place)[0]) for place in range(m)]
    batches = pd.DataFrame({"eggs_set": np.bincount(batch_of, minlength=m).astype(float)})
    times = ("set_at", "set_at_hour", "taken_off_at", "taken_off_at_hour", "section", "due_at")
    for name in ("name", *_ONE_PER_BATCH, *times):
        if name in eggs:
            filled = eggs[name].groupby(batch_of).first()
            batches[name] = filled.reindex(range(m)).to_numpy()
    end = np.array(outcome, dtype=object)
    for target, state in (
        ("hatched", ("hatched", "culled")),
        ("culled", ("culled",)),
        ("pipped_dead", ("pipped_dead",)),
        ("dead_in_shell", ("dead",)),
        ("broken_infertile", ("infertile",)),
    ):
        batches[target] = np.bincount(batch_of, weights=np.isin(end, state), minlength=m)
    if not np.isin(end, ("infertile",)).any():
        batches = batches.drop(columns="broken_infertile")
    removed = np.isin(end, ("removed",)).astype(float)
    rows = []
    for number, (look, words) in enumerate(looks):
        state = np.array(at_look[number], dtype=object)
        removed += np.isin(state, ("removed",))
        counts = {
            name: np.bincount(batch_of, weights=np.isin(state, (name,)), minlength=m)
            for name in ("clear", "dead", "removed")
        }
        seen = [True] * m if words is None else np.bincount(batch_of, [word is not None for word in words], m)
        for place in np.flatnonzero(seen):
            rows.append(
                dict(
                    place=place,
                    day=np.nan if look.day is None else look.day,
                    order=look.order or number + 1,
                    transfer=look.transfer,
                    at=np.datetime64("NaT", "us"),
                    hour=False,
                    **{name: counts[name][place] for name in counts},
                    left=np.nan,
                    derived=False,
                    row=block.rows[0],
                )
            )
    batches["removed"] = np.bincount(batch_of, weights=removed, minlength=m)
    batches["rest"], batches["broken"], batches["dis_derived"] = 0.0, False, False
    batches["row"] = [block.rows[0] if i >= len(block.rows) else eggs["sheet_row"].iloc[i] for i in first]
    batches["file"], batches["sheet"], batches["notes"] = block.file, block.sheet, None
    if not any(value is not None for value in outcome):
        batches[["hatched", "dead_in_shell", "pipped_dead"]] = np.nan
    names = ["candle1", "candle2", "transfer"]
    table = pd.DataFrame(
        {
            "place": batch_of,
            "egg": eggs.get("egg"),
            "hen": eggs.get("hen"),
            "cock": eggs.get("cock"),
            "tray": eggs.get("tray"),
            **{name: eggs.get(name) for name in _MEASURES.values()},
            "weight_g": weights.get(0, np.nan),
            "outcome": outcome,
            "notes": eggs.get("notes"),
            "sheet_row": eggs["sheet_row"],
        }
    )
    for number, name in enumerate(_names(looks)):
        if name in names:
            table[name] = at_look[number]
    table["file"], table["sheet"] = block.file, block.sheet
    part = Part(batches, pd.DataFrame(rows, columns=LOOK_COLUMNS), eggs=table, odd=odd)
    part.weights = _weights(table, weights)
    return part


def _names(looks) -> list[str]:
    """candle1, candle2, ... and transfer, in the order of the looks."""
    found, number = [], 0
    for look, _ in looks:
        if look.transfer:
            found.append("transfer")
            continue
        number += 1
        found.append(f"candle{number}")
    return found


def _weights(table: pd.DataFrame, weights: dict) -> pd.DataFrame:
    """Weighings of single eggs by day since setting; the weight at setting stays with the egg itself."""
    weights = {day: grams for day, grams in weights.items() if day}
    if not weights:
        return pd.DataFrame()
    parts = [
        pd.DataFrame(
            {
                "place": table["place"],
                "egg": table["egg"],
                "day": float(day),
                "grams": grams,
                "eggs_weighed": 1.0,
                "row": table["sheet_row"],
            }
        )[~np.isnan(grams)]
        for day, grams in sorted(weights.items())
    ]
    return pd.concat(parts, ignore_index=True)
